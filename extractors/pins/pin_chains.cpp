// Numbers that stand above each other and count by one are followed from each
// start; the longest chain is taken first. Tested by
// tests/extractors/pins/pin_drawing_test.cpp.
#include "extractors/pins/pin_chains.h"

#include <algorithm>
#include <cmath>

#include "extractors/pins/pin_names.h"

namespace standin::pins {

namespace {

// In heights of the numbers.
constexpr model::Points kAligned = 0.75F;  // centres of a chain
constexpr model::Points kSameEdge = 0.3F;
constexpr model::Points kFurthestNext = 9;  // from one number of a chain to the next
constexpr model::Points kLikeHeight = 1.5F;
constexpr float kMostUneven = 2.2F;  // one distance in a chain to the one before
constexpr int kMostBetween = 40;     // numbers that are filled in

using Indices = std::vector<std::size_t>;

std::vector<Piece> piecesOf(model::PageLayout const& page, std::span<std::uint32_t const> words, Axis axis) {
    std::vector<Piece> pieces;
    for (auto const w : words) {
        auto const& word = page.words[w];
        auto piece = pieceOf(word.box, std::max(word.size, 1.0F), axis);
        piece.value = plainNumber(word.text).value_or(0);
        piece.word = w;
        pieces.push_back(std::move(piece));
    }
    std::sort(pieces.begin(), pieces.end(), [](auto const& a, auto const& b) { return a.along != b.along ? a.along < b.along : a.across0 < b.across0; });
    return pieces;
}

bool aligned(Piece const& a, Piece const& b) {
    auto const height = std::min(a.height, b.height);
    if (std::max(a.height, b.height) > kLikeHeight * height) return false;
    return std::abs(a.across() - b.across()) <= kAligned * height || std::abs(a.across1 - b.across1) <= kSameEdge * height || std::abs(a.across0 - b.across0) <= kSameEdge * height;
}

Indices follow(std::vector<Piece> const& pieces, std::vector<bool> const& used, std::size_t start, int step) {
    Indices members{start};
    model::Points pitch = 0;
    for (std::size_t i = start + 1; i < pieces.size(); ++i) {
        auto const& last = pieces[members.back()];
        auto const gap = pieces[i].along - last.along;
        if (gap > kFurthestNext * last.height) break;
        if (used[i] || pieces[i].value != last.value + step || !aligned(last, pieces[i])) continue;
        if (gap < 0.5F * last.height || (pitch > 0 && (gap > kMostUneven * pitch || pitch > kMostUneven * gap))) continue;
        pitch = gap;
        members.push_back(i);
    }
    return members;
}

void addLongest(std::vector<Piece> const& pieces, std::vector<bool>& used, Axis axis, std::vector<Chain>& chains) {
    for (;;) {
        Indices best;
        int bestStep = 0;
        for (std::size_t start = 0; start < pieces.size(); ++start) {
            if (used[start]) continue;
            for (int const step : {1, -1}) {
                auto members = follow(pieces, used, start, step);
                if (members.size() <= best.size()) continue;
                best = std::move(members);
                bestStep = step;
            }
        }
        if (best.size() < 2) return;
        Chain chain{{}, bestStep, axis, false};
        for (auto const index : best) {
            used[index] = true;
            chain.numbers.push_back(pieces[index]);
        }
        chains.push_back(std::move(chain));
    }
}

Piece shifted(Piece piece, model::Points by, int value, Axis axis) {
    piece.along += by;
    piece.value = value;
    auto const x = axis == Axis::Rows ? by : 0;
    auto const y = axis == Axis::Columns ? by : 0;
    piece.box = {piece.box.x0 + x, piece.box.y0 + y, piece.box.x1 + x, piece.box.y1 + y};
    return piece;
}

// "1 … 4" and "8 … 5", numbers at the corners only.
Chain filledChain(Piece const& first, Piece const& last, Axis axis) {
    int const between = std::abs(last.value - first.value);
    auto const pitch = (last.along - first.along) / static_cast<float>(between);
    Chain chain{{first}, last.value > first.value ? 1 : -1, axis, true};
    for (int n = 1; n < between; ++n) chain.numbers.push_back(shifted(first, pitch * static_cast<float>(n), first.value + chain.step * n, axis));
    chain.numbers.push_back(last);
    return chain;
}

bool mayBeCorners(Piece const& first, Piece const& last) {
    int const between = std::abs(last.value - first.value);
    if (between < 2 || between > kMostBetween || !aligned(first, last)) return false;
    auto const pitch = (last.along - first.along) / static_cast<float>(between);
    return pitch >= 0.9F * first.height && pitch <= kFurthestNext * first.height;
}

void addCorners(std::vector<Piece> const& pieces, std::vector<bool>& used, Axis axis, std::vector<Chain>& chains) {
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        if (used[i]) continue;
        for (std::size_t k = i + 1; k < pieces.size(); ++k) {
            if (used[k] || !mayBeCorners(pieces[i], pieces[k])) continue;
            chains.push_back(filledChain(pieces[i], pieces[k], axis));
            used[i] = used[k] = true;
            break;
        }
    }
}

}  // namespace

model::Points Chain::pitch() const { return numbers.size() > 1 ? std::abs(numbers[1].along - numbers[0].along) : 4 * numbers[0].height; }

Piece pieceOf(model::Rect const& box, model::Points height, Axis axis) {
    Piece piece;
    piece.box = box;
    piece.height = height;
    auto const centre = box.centre();
    piece.along = axis == Axis::Columns ? centre.y : centre.x;
    piece.across0 = axis == Axis::Columns ? box.x0 : box.y0;
    piece.across1 = axis == Axis::Columns ? box.x1 : box.y1;
    return piece;
}

std::vector<Chain> chainsOf(model::PageLayout const& page, std::span<std::uint32_t const> words, Axis axis) {
    auto const pieces = piecesOf(page, words, axis);
    std::vector<bool> used(pieces.size(), false);
    std::vector<Chain> chains;
    addLongest(pieces, used, axis, chains);
    addCorners(pieces, used, axis, chains);
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        if (!used[i]) chains.push_back({{pieces[i]}, 0, axis, false});
    }
    return chains;
}

}  // namespace standin::pins

// Drawings that touch are one sign (a circle and a C are "°C"). A sign is set against the
// lines of its height, nearest word first; in tables it may stand in a cell alone.
//
// Tested by tests/extractors/figures/drawn_signs_test.cpp.
#include "extractors/figures/drawn_signs.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include <fmt/format.h>

namespace standin::figures {

namespace {

using model::PageLayout;
using model::Points;
using model::Rect;
using model::TextLine;
using model::Word;

// In font sizes of the text beside it.
constexpr Points kTallest = 1.3F;
constexpr Points kWidest = 2.2F;
constexpr Points kLeast = 0.2F;      // a smaller one is a speck or a dot
constexpr Points kThinnest = 0.12F;  // a thinner one is a line
constexpr Points kOffCentre = 0.5F;  // of its middle from the middle of the line
constexpr Points kGap = 0.9F;        // to the word beside it
constexpr Points kJoint = 0.15F;     // between parts of one sign
constexpr std::size_t kMostDrawings = 4000;  // of a page: more are a plot or a picture

constexpr Points kDrawingNear = 1.0F;  // larger drawings so near make it a part of theirs

bool isSmall(Rect const& box, Points size) { return box.height() <= kTallest * size && box.width() <= kWidest * size; }

bool isSign(Rect const& box, Points size) {
    return std::max(box.width(), box.height()) >= kLeast * size && std::min(box.width(), box.height()) >= kThinnest * size;
}

// Small drawings joined where they touch, top to bottom.
std::vector<Rect> smallShapes(PageLayout const& page) {
    std::vector<Rect> shapes;
    if (page.bodySize <= 0 || page.drawings.size() > kMostDrawings) return shapes;
    std::vector<Rect> parts;
    std::vector<Rect> large;
    for (auto const& drawing : page.drawings) (isSmall(drawing.box, 2 * page.bodySize) ? parts : large).push_back(drawing.box);
    auto const isPart = [&](Rect const& part) {
        return std::any_of(large.begin(), large.end(), [&](Rect const& drawing) { return drawing.grown(kDrawingNear * page.bodySize).intersects(part); });
    };
    std::erase_if(parts, isPart);
    std::sort(parts.begin(), parts.end(), [](Rect const& a, Rect const& b) { return a.x0 < b.x0; });
    for (auto const& part : parts) {
        // Sorted from left to right: only what lies a little to the left can touch.
        auto const joint = kJoint * page.bodySize;
        auto const touching = std::find_if(shapes.begin(), shapes.end(), [&](Rect const& shape) { return shape.grown(joint).intersects(part); });
        if (touching == shapes.end()) shapes.push_back(part);
        else *touching = model::united(*touching, part);
    }
    std::sort(shapes.begin(), shapes.end(), [](Rect const& a, Rect const& b) { return std::pair(a.y0, a.x0) < std::pair(b.y0, b.x0); });
    return shapes;
}

struct Neighbour {
    Word const* word = nullptr;
    Points gap = 0;
    bool lone = false;  // that word is all of its line
};

// The nearest words on the sign's height, where they are near enough.
struct Neighbours {
    std::optional<Neighbour> left, right;
    bool read = false;  // a word stands where the sign is drawn: recognised, or text below its outline
};

class Page {
public:
    Page(PageLayout const& page, std::vector<model::Table const*> tables, std::vector<Rect> figures) : m_page(page), m_tables(std::move(tables)), m_figures(std::move(figures)) {}

    void find(std::vector<model::PlacedText>& signs) const {
        std::size_t count = 0;
        for (auto const& shape : smallShapes(m_page)) {
            if (count == kMostDrawnSigns || inFigure(shape)) continue;
            auto const said = placeOf(shape);
            if (!said) continue;
            signs.push_back({*said, m_page.page, shape});
            ++count;
        }
    }

private:
    bool inFigure(Rect const& shape) const {
        return std::any_of(m_figures.begin(), m_figures.end(), [&](Rect const& figure) { return figure.contains(shape.centre()); });
    }

    model::Cell const* cellAt(Rect const& shape) const {
        for (auto const* table : m_tables) {
            if (!table->box.contains(shape.centre())) continue;
            for (auto const& cell : table->cells) {
                if (cell.box.contains(shape.centre())) return &cell;
            }
        }
        return nullptr;
    }

    Neighbours wordsBeside(Rect const& shape) const {
        Neighbours beside;
        for (auto const& line : m_page.lines) {
            Points const middle = line.baseline - 0.35F * line.size;
            bool const ofItsHeight = line.direction == model::Direction::Right && std::abs(shape.centre().y - middle) <= kOffCentre * line.size;
            if (!ofItsHeight || !isSmall(shape, line.size) || !isSign(shape, line.size)) continue;
            for (std::uint32_t w = line.firstWord; w < line.firstWord + line.wordCount; ++w) {
                Word const& word = m_page.words[w];
                if (word.hidden || word.owner == model::Owner::Furniture || word.owner == model::Owner::Figure || word.dotLeader) continue;
                beside.read = beside.read || word.box.contains(shape.centre());
                bool const before = word.box.centre().x < shape.centre().x;
                auto& nearest = before ? beside.left : beside.right;
                Points const gap = before ? shape.x0 - word.box.x1 : word.box.x0 - shape.x1;
                if (gap <= kGap * line.size && (!nearest || gap < nearest->gap)) nearest = Neighbour{&word, gap, line.wordCount == 1};
            }
        }
        return beside;
    }

    // Where the sign stands, in words; nothing where it is none.
    std::optional<std::string> placeOf(Rect const& shape) const {
        auto const beside = wordsBeside(shape);
        if (beside.read) return std::nullopt;
        auto const* cell = cellAt(shape);
        if (!beside.left && !beside.right) {
            if (cell == nullptr || !cell->text.empty() || !isSmall(shape, m_page.bodySize) || !isSign(shape, m_page.bodySize)) return std::nullopt;
            return "alone in a cell of a table";
        }
        // Outside of tables: a bullet, or an arrow at the lettering of a drawing.
        if (cell == nullptr && (!beside.left || (!beside.right && beside.left->lone))) return std::nullopt;
        bool const behind = beside.left && (!beside.right || beside.left->gap <= beside.right->gap);
        return fmt::format("{} \"{}\"", behind ? "behind" : "before", (behind ? beside.left : beside.right)->word->text);
    }

    PageLayout const& m_page;
    std::vector<model::Table const*> m_tables;
    std::vector<Rect> m_figures;
};

}  // namespace

std::vector<model::PlacedText> drawnSigns(std::span<PageLayout const> pages, std::span<model::Table const> tables, std::span<model::Figure const> figures) {
    std::vector<model::PlacedText> signs;
    for (auto const& page : pages) {
        if (page.drawings.empty()) continue;
        std::vector<model::Table const*> ofPage;
        for (auto const& table : tables) {
            if (table.page == page.page) ofPage.push_back(&table);
        }
        std::vector<Rect> drawn;
        for (auto const& figure : figures) {
            if (figure.page == page.page) drawn.push_back(figure.box);
        }
        Page(page, std::move(ofPage), std::move(drawn)).find(signs);
    }
    return signs;
}

}  // namespace standin::figures

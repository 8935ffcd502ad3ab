// Every printed line is broken into runs (words nearer than kBridge). For each
// point of x the lines that cover it are counted; a gutter is a stretch that
// (nearly) no line covers and that parts runs of one line at least twice. Then
// titles that still share a column are parted where fewest lines cross.
// Tested by tests/extractors/tables/find_tables_test.cpp.
#include "extractors/tables/columns.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "extractors/tables/head_words.h"
#include "extractors/tables/text_shape.h"

namespace standin::tables {

using model::PageLayout;
using model::Points;
using model::Rect;

namespace {

// In font heights.
constexpr float kBridge = 0.72F;  // a narrower gap is a word space
constexpr float kNarrowestGutter = 0.4F;
constexpr float kSameBaseline = 0.45F;
constexpr float kTitleGap = 0.25F;       // titles this far apart may stand in two columns
constexpr float kStartTogether = 0.35F;  // runs that start this near stand in one column
constexpr float kLonelyRun = 0.45F;      // share of the width: a longer run alone on its line may be a heading
constexpr float kBesideTitle = 0.1F;     // from a title to a cut beside it
constexpr float kOverMiddle = 0.8F;      // from the middle of the variants' titles to a value for all of them
constexpr float kSlots = 4;              // a point, of the places that are looked at in an open area; one inside a ruled column
constexpr float kCrossingShare = 0.06F;  // of the lines may cross a gutter

struct Run {
    Piece piece;
    int line = 0;
    ColumnTitle title = ColumnTitle::None;
};

struct Gutter {
    Points x0 = 0;
    Points x1 = 0;
};

// A second column of text: at least three runs, nearly all of which start at one x.
bool startTogether(std::vector<Points>& starts, Points fontHeight) {
    if (starts.size() < 3) return false;
    std::sort(starts.begin(), starts.end());
    std::size_t most = 0;
    for (std::size_t i = 0, j = 0; i < starts.size(); ++i) {
        while (starts[i] - starts[j] > kStartTogether * fontHeight) ++j;
        most = std::max(most, i - j + 1);
    }
    return most * 10 >= starts.size() * 8;
}

std::ptrdiff_t countTitles(std::vector<std::uint32_t> const& line, std::vector<Run> const& runs) {
    return std::count_if(line.begin(), line.end(), [&](auto r) { return runs[r].title != ColumnTitle::None; });
}

// The last line that holds two titles; -1: none.
int lastLineOfTitles(std::vector<std::vector<std::uint32_t>> const& runsOf, std::vector<Run> const& runs) {
    for (std::size_t i = runsOf.size(); i > 0; --i) {
        if (countTitles(runsOf[i - 1], runs) >= 2) return static_cast<int>(i) - 1;
    }
    return -1;
}

// A title set off its column (centred over a column of symbols) makes none of its own: where nothing but a title
// stands between two cuts, and no title over the columns on one side, the cut on that side goes. One that no list
// knows is told by its place: among the titles, its lines one over the other ("To" over "(output)").
void uniteTitlesWithTheirColumns(std::vector<std::vector<std::uint32_t>> const& runsOf, std::vector<Run> const& runs, std::vector<Points>& cuts) {
    if (cuts.size() < 2) return;
    std::vector<int> titled(cuts.size() + 1, 0);
    std::vector<int> other(cuts.size() + 1, 0);
    std::vector<std::vector<Rect>> among(cuts.size() + 1);  // runs beside and between the titles
    int const lastTitles = lastLineOfTitles(runsOf, runs);
    for (auto const& line : runsOf) {
        for (auto const r : line) {
            Rect const& box = runs[r].piece.box;
            auto const column = static_cast<std::size_t>(std::upper_bound(cuts.begin(), cuts.end(), box.centre().x) - cuts.begin());
            (runs[r].title != ColumnTitle::None ? titled : other)[column] += 1;
            if (runs[r].line <= lastTitles) among[column].push_back(box);
        }
    }
    auto const headless = [&](std::size_t column) { return titled[column] == 0 && other[column] >= 2; };
    auto const stacked = [&](std::size_t column) {
        auto const& lines = among[column];
        bool const only = lines.size() >= 2 && lines.size() == static_cast<std::size_t>(titled[column] + other[column]);
        return only && std::all_of(lines.begin(), lines.end(), [&](Rect const& b) { return model::overlap(b.x0, b.x1, lines[0].x0, lines[0].x1) > 0; });
    };
    auto const bare = [&](std::size_t column) { return headless(column) && among[column].empty(); };
    std::vector<Points> kept;
    std::size_t joined = cuts.size() + 1;  // the column that was joined to the one before
    for (std::size_t k = 0; k < cuts.size(); ++k) {
        auto const lone = [&](std::size_t column) { return titled[column] == 1 && other[column] == 0; };
        bool const set = (headless(k) && lone(k + 1)) || (lone(k) && headless(k + 1));
        bool const unite = joined != k && (set || (bare(k) && stacked(k + 1)) || (stacked(k) && bare(k + 1)));
        if (unite) {
            joined = k + 1;
        } else {
            kept.push_back(cuts[k]);
        }
    }
    cuts = std::move(kept);
}

// Titles set to the left of their columns and values to the right (or the other way) make each title share a column
// with the values of its neighbour: the first title has no values and the last values have no title. Cuts right beside
// the titles part them, unless they cross what is printed.
void cutBesideTitles(std::vector<std::vector<std::uint32_t>> const& runsOf, std::vector<Run> const& runs, Points fontHeight, std::vector<Points>& cuts) {
    if (cuts.size() < 2) return;
    std::vector<std::vector<Run const*>> titled(cuts.size() + 1);
    std::vector<int> other(cuts.size() + 1, 0);
    std::vector<char> headed(cuts.size() + 1, 0);  // by words that no list of titles knows
    int lastTitles = -1;
    for (auto const& run : runs) lastTitles = run.title != ColumnTitle::None ? std::max(lastTitles, run.line) : lastTitles;
    for (auto const& line : runsOf) {
        for (auto const r : line) {
            Points const x = runs[r].piece.box.centre().x;
            auto const column = static_cast<std::size_t>(std::upper_bound(cuts.begin(), cuts.end(), x) - cuts.begin());
            if (runs[r].title != ColumnTitle::None) {
                titled[column].push_back(&runs[r]);
            } else {
                ++other[column];
                if (runs[r].line <= lastTitles) headed[column] = 1;
            }
        }
    }
    auto const full = [&](std::size_t c) { return titled[c].size() == 1 && other[c] > 0; };
    auto const lone = [&](std::size_t c) { return titled[c].size() == 1 && other[c] == 0; };
    auto const headless = [&](std::size_t c) { return titled[c].empty() && headed[c] == 0 && other[c] >= 2; };
    for (std::size_t first = 0; first + 2 < cuts.size() + 1; ++first) {
        bool const leftTitles = lone(first);
        if (!leftTitles && !headless(first)) continue;
        std::size_t last = first + 1;
        while (last < cuts.size() && full(last)) ++last;
        if (last == first + 1 || !(leftTitles ? headless(last) : lone(last))) continue;
        std::vector<Points> moved;
        for (std::size_t c = first + 1; c < last; ++c) {
            auto const& box = titled[c].front()->piece.box;
            moved.push_back(leftTitles ? box.x0 - kBesideTitle * fontHeight : box.x1 + kBesideTitle * fontHeight);
        }
        bool const crossed = std::any_of(runsOf.begin(), runsOf.end(), [&](auto const& line) {
            return line.size() > 1 && std::any_of(line.begin(), line.end(), [&](auto r) {
                       auto const& box = runs[r].piece.box;
                       return std::any_of(moved.begin(), moved.end(), [&](Points x) { return box.x0 < x - 0.1F * fontHeight && box.x1 > x + 0.1F * fontHeight; });
                   });
        });
        if (crossed) return;
        cuts.erase(cuts.begin() + static_cast<std::ptrdiff_t>(first), cuts.begin() + static_cast<std::ptrdiff_t>(last));
        cuts.insert(cuts.begin() + static_cast<std::ptrdiff_t>(first), moved.begin(), moved.end());
        return;
    }
}

// "UF1A", "1N4001", "Industrial", but neither "25 °C" nor "VCC = 5 V".
bool namesVariant(std::string const& text) {
    if (text.find('=') != std::string::npos || text.find("\u00B0") != std::string::npos) return false;
    if (shapeOf(text) == Shape::Words) return true;
    auto const letter = std::find_if(text.begin(), text.end(), [](char c) { return c >= 'A' && c <= 'Z'; });
    return std::any_of(letter, text.end(), [](char c) { return c >= '0' && c <= '9'; });
}

// Titles side by side, each of them the name of a variant.
struct Variants {
    std::size_t line = 0;
    std::size_t first = 0;  // of the line's runs
    std::size_t count = 0;
    Points from = 0;
    Points to = 0;
};

Variants variantsOf(PageLayout const& page, std::vector<std::vector<std::uint32_t>> const& runsOf, std::vector<Run> const& runs, std::size_t headLines) {
    Variants found;
    for (std::size_t i = 0; i < headLines; ++i) {
        auto const& line = runsOf[i];
        if (countTitles(line, runs) < 2) continue;
        for (std::size_t k = 0; k < line.size(); ++k) {
            std::size_t end = k;
            while (end < line.size() && runs[line[end]].title == ColumnTitle::None && namesVariant(textOf(page, runs[line[end]].piece))) ++end;
            if (end - k >= 2) {
                Points const from = runs[line[k]].piece.box.x0;
                return {i, k, end - k, from, runs[line[end - 1]].piece.box.x1};
            }
            k = end;
        }
    }
    return found;
}

// Values that stand alone below the middle of the titles, where every other line has a value for each variant.
// An even number of variants has no title in the middle: there the other lines may leave out some.
std::vector<std::uint32_t> valuesForAll(PageLayout const& page, std::vector<std::vector<std::uint32_t>> const& runsOf, std::vector<Run> const& runs, Variants const& variants,
                                        Points fontHeight) {
    std::vector<std::uint32_t> shared;
    Points const middle = (variants.from + variants.to) / 2;
    int full = 0;
    int some = 0;
    for (std::size_t i = variants.line + 1; i < runsOf.size(); ++i) {
        std::vector<std::uint32_t> own;
        for (auto const r : runsOf[i]) {
            Points const x = runs[r].piece.box.centre().x;
            if (x > variants.from - fontHeight && x < variants.to + fontHeight) own.push_back(r);
        }
        if (own.empty()) continue;
        bool const values = std::all_of(own.begin(), own.end(), [&](auto r) { return isValueLike(shapeOf(textOf(page, runs[r].piece))); });
        if (!values) return {};
        bool const centred = own.size() == 1 && std::abs(runs[own[0]].piece.box.centre().x - middle) <= kOverMiddle * fontHeight;
        if (centred) {
            shared.push_back(own[0]);
        } else {
            ++(own.size() == variants.count ? full : some);
        }
    }
    if (full == 0 || (some > 0 && variants.count % 2 != 0)) return {};
    return shared;
}

constexpr float kTitleSpace = 0.42F;  // more than a word space
constexpr std::uint32_t kMostTitleWords = 12;
constexpr std::uint32_t kLongestTitleWords = 4;

// Without its box.
Piece wordsOf(Piece const& piece, std::uint32_t from, std::uint32_t to) {
    Piece part = piece;
    part.first = piece.first + from;
    part.count = to - from;
    return part;
}

Piece partOf(PageLayout const& page, Piece const& piece, std::uint32_t from, std::uint32_t to) {
    Piece part = wordsOf(piece, from, to);
    part.box = {};
    for (std::uint32_t i = part.first; i < part.first + part.count; ++i) part.box = united(part.box, page.words[i].box);
    return part;
}

}  // namespace

void cutAtTitles(PageLayout const& page, Piece const& piece, std::vector<Piece>& out) {
    if (piece.count < 2 || piece.count > kMostTitleWords) {
        out.push_back(piece);
        return;
    }
    std::vector<Piece> titles;
    bool const one = columnTitle(textOf(page, piece)) != ColumnTitle::None;
    for (std::uint32_t at = 0; at < piece.count;) {
        std::uint32_t end = std::min(at + kLongestTitleWords, piece.count);
        // "Symbol   Parameter" is a title as a whole, but not where more than a word space parts it
        for (std::uint32_t i = at + 1; one && i < end; ++i) {
            if (page.words[piece.first + i].box.x0 - page.words[piece.first + i - 1].box.x1 >= kTitleSpace * piece.size) end = i;
        }
        while (end > at && columnTitle(textOf(page, wordsOf(piece, at, end))) == ColumnTitle::None) --end;
        if (end == at) {
            titles.clear();
            break;
        }
        titles.push_back(partOf(page, piece, at, end));
        at = end;
    }
    // "IO max" is a symbol with its limit, not the titles "I/O" and "Max"
    bool const symbol = titles.size() == 2 && columnTitle(textOf(page, titles[0])) == ColumnTitle::PinType && isValueTitle(columnTitle(textOf(page, titles[1])));
    if (titles.size() < 2 || symbol) titles.assign(1, piece);
    out.insert(out.end(), titles.begin(), titles.end());
}

std::vector<PrintedLine> groupByBaseline(std::span<Piece const> pieces, Points tolerance) {
    std::vector<std::uint32_t> order(pieces.size());
    std::iota(order.begin(), order.end(), 0U);
    std::sort(order.begin(), order.end(),
              [&](std::uint32_t a, std::uint32_t b) { return pieces[a].baseline != pieces[b].baseline ? pieces[a].baseline < pieces[b].baseline : a < b; });
    std::vector<PrintedLine> lines;
    Points last = 0;
    for (auto const i : order) {
        Points const y = pieces[i].baseline;
        if (lines.empty() || y - lines.back().baseline > tolerance || y - last > tolerance) lines.push_back({y, {}});
        lines.back().pieces.push_back(i);
        last = y;
    }
    for (auto& line : lines) {
        std::sort(line.pieces.begin(), line.pieces.end(), [&](std::uint32_t a, std::uint32_t b) { return pieces[a].box.x0 < pieces[b].box.x0; });
    }
    return lines;
}

Cuts findCuts(PageLayout const& page, std::span<Piece const> pieces, Points x0, Points x1, Points fontHeight, Gutters gutters) {
    if (pieces.size() < 2 || x1 - x0 < 2 * fontHeight) return {};
    auto const lines = groupByBaseline(pieces, kSameBaseline * fontHeight);
    std::vector<Run> runs;
    std::vector<std::vector<std::uint32_t>> runsOf(lines.size());
    std::vector<Piece> coarse;
    std::vector<Piece> cut;
    std::size_t const headLines = std::min<std::size_t>(lines.size(), 6);
    bool parted = false;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        coarse.clear();
        cut.clear();
        for (auto const p : lines[i].pieces) {
            if (!pieces[p].turned) cutAtGaps(page, pieces[p], kBridge * fontHeight, coarse);
        }
        if (i < headLines && gutters == Gutters::OpenArea) {
            for (auto const& piece : coarse) cutAtTitles(page, piece, cut);
        } else {
            cut = coarse;
        }
        std::sort(cut.begin(), cut.end(), [](Piece const& a, Piece const& b) { return a.box.x0 < b.box.x0; });
        for (auto const& run : cut) {
            runsOf[i].push_back(static_cast<std::uint32_t>(runs.size()));
            runs.push_back({run, static_cast<int>(i), ColumnTitle::None});
        }
        parted = parted || cut.size() > 1;
    }
    if (!parted) return {};
    int titles = 0;
    for (std::size_t i = 0; i < headLines; ++i) {
        for (auto const r : runsOf[i]) {
            runs[r].title = columnTitle(textOf(page, runs[r].piece));
            titles += runs[r].title != ColumnTitle::None ? 1 : 0;
        }
    }

    Cuts result;
    std::vector<char> overVariants(runs.size(), 0);
    if (gutters == Gutters::OpenArea && titles >= 2) {
        auto const variants = variantsOf(page, runsOf, runs, headLines);
        auto const values = variants.count >= 2 ? valuesForAll(page, runsOf, runs, variants, fontHeight) : std::vector<std::uint32_t>{};
        for (auto const r : values) {
            auto const& line = runsOf[variants.line];
            overVariants[r] = 1;
            result.shared.push_back({runs[r].piece.first, runs[line[variants.first]].piece.box.centre().x, runs[line[variants.first + variants.count - 1]].piece.box.centre().x});
        }
    }
    Points const width = x1 - x0;
    float const slots = gutters == Gutters::OpenArea ? kSlots : 1.0F;
    auto const cells = static_cast<std::size_t>(std::ceil(width * slots)) + 1;
    std::vector<int> cover(cells + 1, 0);
    int voting = 0;
    auto slot = [&](Points x) { return static_cast<std::size_t>(std::clamp(x - x0, 0.0F, width) * slots); };
    auto placeOf = [&](std::size_t at) { return x0 + static_cast<Points>(at) / slots; };
    for (std::size_t i = 0; i < lines.size(); ++i) {
        if (runsOf[i].size() == 1 && runs[runsOf[i][0]].piece.box.width() > kLonelyRun * width) continue;
        // a bold line alone over the first columns is a heading
        if (runsOf[i].size() == 1 && gutters == Gutters::OpenArea && runs[runsOf[i][0]].piece.bold && i > 0 && runs[runsOf[i][0]].piece.box.x0 < x0 + 2 * fontHeight) continue;
        ++voting;
        for (auto const r : runsOf[i]) {
            if (overVariants[r] != 0) continue;
            ++cover[slot(runs[r].piece.box.x0)];
            --cover[std::min(cells, slot(runs[r].piece.box.x1) + 1)];
        }
    }
    std::partial_sum(cover.begin(), cover.end(), cover.begin());
    int const mayCross = static_cast<int>(kCrossingShare * static_cast<float>(voting));

    std::vector<Gutter> found;
    for (std::size_t begin = 0; begin < cells;) {
        if (cover[begin] > mayCross) {
            ++begin;
            continue;
        }
        std::size_t end = begin;
        // The narrowest part of a gutter decides where it is cut: prefer the stretch that no line crosses.
        while (end < cells && cover[end] <= mayCross) ++end;
        Points const left = placeOf(begin);
        Points const right = placeOf(end);
        if (begin > 0 && end < cells && right - left >= kNarrowestGutter * fontHeight) {
            std::size_t bestBegin = begin;
            std::size_t bestEnd = begin;
            for (std::size_t i = begin; i < end;) {
                if (cover[i] > 0) {
                    ++i;
                    continue;
                }
                std::size_t j = i;
                while (j < end && cover[j] == 0) ++j;
                if (j - i > bestEnd - bestBegin) {
                    bestBegin = i;
                    bestEnd = j;
                }
                i = j;
            }
            if (placeOf(bestEnd) - placeOf(bestBegin) >= kNarrowestGutter * fontHeight) {
                found.push_back({placeOf(bestBegin), placeOf(bestEnd)});
            } else {
                found.push_back({left, right});
            }
        }
        begin = end;
    }

    auto& cuts = result.xs;
    for (auto const& gutter : found) {
        Points const middle = (gutter.x0 + gutter.x1) / 2;
        int both = 0;
        int values = 0;
        bool betweenTitles = false;
        std::vector<Points> starts;  // of the runs right of the gutter
        for (auto const& ofLine : runsOf) {
            for (std::size_t k = 1; k < ofLine.size(); ++k) {
                auto const& left = runs[ofLine[k - 1]];
                auto const& right = runs[ofLine[k]];
                if (left.piece.box.centre().x >= middle || right.piece.box.centre().x <= middle) continue;
                ++both;
                starts.push_back(right.piece.box.x0);
                betweenTitles = betweenTitles || (left.title != ColumnTitle::None && right.title != ColumnTitle::None);
                if (gutters == Gutters::InsideRuledColumn && left.title == ColumnTitle::None && isValueLike(shapeOf(textOf(page, left.piece))) &&
                    isValueLike(shapeOf(textOf(page, right.piece)))) {
                    ++values;
                }
                break;
            }
        }
        bool const take =
            gutters == Gutters::OpenArea ? both >= 2 || betweenTitles : betweenTitles || (values >= 2 && values * 10 >= both * 7) || startTogether(starts, fontHeight);
        if (take) cuts.push_back(middle);
    }

    if (titles >= 2) {
        std::vector<Points> more;
        auto part = [&](Run const& left, Run const& right) {
            Points const from = left.piece.box.x1;
            Points const to = right.piece.box.x0;
            if (to - from < kTitleGap * fontHeight) return;
            auto const between = [&](Points x) { return x > left.piece.box.centre().x && x < right.piece.box.centre().x; };
            if (std::any_of(cuts.begin(), cuts.end(), between) || std::any_of(more.begin(), more.end(), between)) return;
            std::size_t best = slot(from);
            Points const middle = (from + to) / 2;
            for (std::size_t s = slot(from); s <= slot(to); ++s) {
                auto const distance = [&](std::size_t at) { return std::abs(placeOf(at) - middle); };
                if (cover[s] < cover[best] || (cover[s] == cover[best] && distance(s) < distance(best))) best = s;
            }
            more.push_back(placeOf(best));
        };
        Run const* lastUnit = nullptr;
        Run const* lastLimit = nullptr;
        for (std::size_t i = 0; i < headLines; ++i) {
            for (std::size_t k = 0; k < runsOf[i].size(); ++k) {
                auto const& run = runs[runsOf[i][k]];
                if (k > 0 && runs[runsOf[i][k - 1]].title != ColumnTitle::None && run.title != ColumnTitle::None) part(runs[runsOf[i][k - 1]], run);
                if (run.title == ColumnTitle::Unit) lastUnit = &run;
                bool const limit = run.title == ColumnTitle::Min || run.title == ColumnTitle::Typ || run.title == ColumnTitle::Max;
                if (limit && (lastLimit == nullptr || run.piece.box.x1 > lastLimit->piece.box.x1)) lastLimit = &run;
            }
        }
        // "Unit" stands higher than the limits where groups stand over them
        if (lastUnit != nullptr && lastLimit != nullptr && lastLimit->piece.box.x1 < lastUnit->piece.box.x0) part(*lastLimit, *lastUnit);
        cuts.insert(cuts.end(), more.begin(), more.end());
        std::sort(cuts.begin(), cuts.end());
        uniteTitlesWithTheirColumns(runsOf, runs, cuts);
        cutBesideTitles(runsOf, runs, fontHeight, cuts);
    }
    return result;
}

}  // namespace standin::tables

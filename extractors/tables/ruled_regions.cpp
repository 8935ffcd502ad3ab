// Each network's lattice is filled with the middles of the words. Bands that one
// area spans and that hold running text part tables; so does a repeated head.
// What is left must look like a table: text in most areas, few words across
// rules, few areas that are no rectangles.
// Tested by tests/extractors/tables/find_tables_test.cpp.
#include "extractors/tables/ruled_regions.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "extractors/tables/head_words.h"
#include "extractors/tables/pieces.h"

namespace standin::tables {

using model::PageLayout;
using model::Points;
using model::Rect;

namespace {

// In font heights.
constexpr float kDoubleRule = 0.3F;
constexpr float kTextBand = 4.6F;     // a full-width band at least this high holds running text, not a heading
constexpr float kFrameGap = 1.2F;     // between the frames of a head and of its rows
constexpr float kHeadingGap = 2.6F;   // between two parts of one table
constexpr float kLeastLoose = 2.5F;   // a shorter loose rule is an underline
constexpr float kLeastBand = 0.4F;
constexpr float kWordBar = 0.5F;      // how near a bar and the ends of its word are

constexpr int kTextLines = 3;         // as many lines in a full-width band are running text
constexpr std::size_t kMostNetworks = 200;  // more is a drawing
constexpr int kMostGroupRows = 3;
constexpr float kLeastFilled = 0.3F;  // share of areas with text
constexpr std::size_t kShortText = 3;  // bytes in an area, on average: no words
constexpr float kMostCrossing = 0.2F; // share of words that cross a rule

struct AreaText {
    int lines = 0;
    int words = 0;
    int crossing = 0;  // words whose box reaches over the side of the area
    std::string text;  // cut off when long
};

struct Filling {
    std::vector<AreaText> areas;
    int words = 0;
};

Filling fill(PageLayout const& page, Lattice const& lattice, std::vector<std::uint32_t> const& lines) {
    Filling filling;
    filling.areas.resize(lattice.areas.size());
    std::vector<std::uint32_t> lastLine(lattice.areas.size(), 0xFFFFFFFFU);
    for (auto const index : lines) {
        auto const& line = page.lines[index];
        for (std::uint32_t i = line.firstWord; i < line.firstWord + line.wordCount; ++i) {
            auto const& word = page.words[i];
            if (!isTableWord(word)) continue;
            auto const centre = word.box.centre();
            int const row = lattice.rowAt(centre.y);
            int const column = lattice.columnAt(centre.x);
            if (row < 0 || column < 0) continue;
            int const area = lattice.areaOf[static_cast<std::size_t>(row * lattice.columns() + column)];
            auto& text = filling.areas[static_cast<std::size_t>(area)];
            if (lastLine[static_cast<std::size_t>(area)] != index) {
                lastLine[static_cast<std::size_t>(area)] = index;
                ++text.lines;
            }
            ++text.words;
            ++filling.words;
            if (text.text.size() < 64) {
                if (!text.text.empty()) text.text += ' ';
                text.text += word.text;
            }
            auto const& a = lattice.areas[static_cast<std::size_t>(area)];
            Rect const box = lattice.box(a);
            Points const slack = 0.25F * word.box.width();
            if (word.direction == model::Direction::Right && (word.box.x0 < box.x0 - slack || word.box.x1 > box.x1 + slack)) ++text.crossing;
        }
    }
    return filling;
}

Lattice sliced(Lattice const& from, int row0, int row1, int column0, int column1) {
    Lattice lattice;
    lattice.xs.assign(from.xs.begin() + column0, from.xs.begin() + column1 + 2);
    lattice.ys.assign(from.ys.begin() + row0, from.ys.begin() + row1 + 2);
    std::vector<int> renamed(from.areas.size(), -1);
    lattice.areaOf.assign(static_cast<std::size_t>(lattice.rows() * lattice.columns()), -1);
    for (int row = row0; row <= row1; ++row) {
        for (int column = column0; column <= column1; ++column) {
            int const old = from.areaOf[static_cast<std::size_t>(row * from.columns() + column)];
            int& name = renamed[static_cast<std::size_t>(old)];
            if (name < 0) {
                name = static_cast<int>(lattice.areas.size());
                auto const& a = from.areas[static_cast<std::size_t>(old)];
                lattice.areas.push_back({std::max(a.row0, row0) - row0, std::min(a.row1, row1) - row0, std::max(a.column0, column0) - column0,
                                         std::min(a.column1, column1) - column0, a.irregular});
            }
            lattice.areaOf[static_cast<std::size_t>((row - row0) * lattice.columns() + column - column0)] = name;
        }
    }
    return lattice;
}

class NetworkReader {
public:
    NetworkReader(PageLayout const& page, Lattice lattice, std::vector<std::uint32_t> const& lines)
        : m_page(page), m_lattice(std::move(lattice)), m_lines(lines), m_filling(fill(page, m_lattice, lines)) {}

    void findRegions(std::vector<Region>& out) {
        if (m_filling.words < 4) return;
        int const rows = m_lattice.rows();
        // Used columns: those in which an area with text begins and ends.
        int first = 0;
        int last = m_lattice.columns() - 1;
        auto blank = [&](int column) {
            for (int row = 0; row < rows; ++row) {
                auto const& a = areaAt(row, column);
                if (a.column0 == a.column1 && textAt(row, column).words > 0) return false;
            }
            return true;
        };
        while (first < last && blank(first)) ++first;
        while (last > first && blank(last)) --last;
        m_first = first;
        m_last = last;
        int start = -1;
        for (int row = 0; row <= rows; ++row) {
            bool const end = row == rows || isBreak(row);
            // A head further down starts another table, unless what stands above it is no table
            // of its own (group titles).
            bool const head = !end && start >= 0 && row > start + 1 && titlesIn(row) >= 3 && titlesIn(row - 1) < 2 &&
                              (row - start > kMostGroupRows || titlesIn(start) >= 2) && !reachesInto(row);
            if (end || head) {
                if (start >= 0) emit(start, lastBefore(start, row), out);
                start = head ? row : -1;
            } else if (start < 0) {
                start = row;
            }
        }
    }

private:
    PageLayout const& m_page;
    Lattice m_lattice;
    std::vector<std::uint32_t> const& m_lines;
    Filling m_filling;
    int m_first = 0;
    int m_last = 0;

    [[nodiscard]] int indexAt(int row, int column) const { return m_lattice.areaOf[static_cast<std::size_t>(row * m_lattice.columns() + column)]; }
    [[nodiscard]] RuledArea const& areaAt(int row, int column) const { return m_lattice.areas[static_cast<std::size_t>(indexAt(row, column))]; }
    [[nodiscard]] AreaText const& textAt(int row, int column) const { return m_filling.areas[static_cast<std::size_t>(indexAt(row, column))]; }
    [[nodiscard]] bool spansAll(int row) const {
        auto const& a = areaAt(row, m_first);
        return a.column0 <= m_first && a.column1 >= m_last;
    }

    [[nodiscard]] bool isBreak(int row) const {
        if (!spansAll(row)) return false;
        auto const& a = areaAt(row, m_first);
        Rect const box = m_lattice.box(a);
        auto const& text = textAt(row, m_first);
        if (text.words == 0) return box.height() > kLeastBand * m_page.bodySize * 2;
        return text.lines >= kTextLines || box.height() >= kTextBand * m_page.bodySize;
    }

    [[nodiscard]] int titlesIn(int row) const {
        int titles = 0;
        for (int column = m_first; column <= m_last;) {
            auto const& a = areaAt(row, column);
            if (a.row0 == row) titles += columnTitle(textAt(row, column).text) != ColumnTitle::None ? 1 : 0;
            column = a.column1 + 1;
        }
        return titles;
    }

    // A merged area lies over the line above the row.
    [[nodiscard]] bool reachesInto(int row) const {
        for (int column = m_first; column <= m_last; ++column) {
            if (areaAt(row, column).row0 < row) return true;
        }
        return false;
    }

    // Full-width lines right above a repeated head belong to neither table.
    [[nodiscard]] int lastBefore(int start, int row) const {
        int last = row - 1;
        if (row < m_lattice.rows() && titlesIn(row) >= 3) {
            while (last > start && spansAll(last)) --last;
        }
        return last;
    }

    void emit(int row0, int row1, std::vector<Region>& out) const {
        // A heading line on top, above the head, is the table's caption.
        while (row0 < row1 && spansAll(row0)) ++row0;
        if (row1 <= row0 && m_last - m_first < 1) return;
        int column0 = m_first;
        int column1 = m_last;
        int filled = 0;
        int blankAreas = 0;
        std::size_t letters = 0;
        int titles = 0;
        int irregular = 0;
        int words = 0;
        int crossing = 0;
        std::vector<char> seen(m_lattice.areas.size(), 0);
        int rowsWithText = 0;
        std::vector<char> columnsWithText(static_cast<std::size_t>(m_lattice.columns()), 0);
        for (int row = row0; row <= row1; ++row) {
            bool any = false;
            for (int column = column0; column <= column1; ++column) {
                auto const index = static_cast<std::size_t>(indexAt(row, column));
                bool const text = m_filling.areas[index].words > 0;
                any = any || text;
                if (seen[index] != 0) continue;
                seen[index] = 1;
                (text ? filled : blankAreas) += 1;
                irregular += m_lattice.areas[index].irregular ? 1 : 0;
                words += m_filling.areas[index].words;
                crossing += m_filling.areas[index].crossing;
                letters += m_filling.areas[index].text.size();
                titles += columnTitle(m_filling.areas[index].text) != ColumnTitle::None ? 1 : 0;
                if (text) columnsWithText[static_cast<std::size_t>(column)] = 1;
            }
            rowsWithText += any ? 1 : 0;
        }
        auto const usedColumns = std::count(columnsWithText.begin(), columnsWithText.end(), 1);
        if (filled < 3 || usedColumns < 2 || rowsWithText < 1) return;
        // Labels in a diagram.
        if (titles < 2 && filled < 6 && blankAreas > 0) return;
        // Pin numbers around a drawn package.
        if (titles < 2 && letters < kShortText * static_cast<std::size_t>(filled) && filled * 10 < (filled + blankAreas) * 9) return;
        if (static_cast<float>(filled) < kLeastFilled * static_cast<float>(filled + blankAreas)) return;
        if (irregular > 2 + (filled + blankAreas) / 4) return;
        if (static_cast<float>(crossing) > kMostCrossing * static_cast<float>(words) + 1) return;
        Region region;
        region.lattice = sliced(m_lattice, row0, row1, column0, column1);
        region.ruledColumns = true;
        region.ruledRows = rowsWithText >= 3;
        region.lines = m_lines;
        out.push_back(std::move(region));
    }
};

// A bar over a word or a line under it, as long as the word.
bool marksWord(PageLayout const& page, Segment const& rule, Points font) {
    return std::any_of(page.words.begin(), page.words.end(), [&](model::Word const& word) {
        if (rule.at < word.box.y0 - kWordBar * font || rule.at > word.box.y1 + kWordBar * font) return false;
        return std::abs(word.box.x0 - rule.from) <= kWordBar * font && std::abs(word.box.x1 - rule.to) <= kWordBar * font;
    });
}

// Rules that lie inside a network without touching it (drawn with gaps at the corners) belong to it.
void takeLoose(PageLayout const& page, Network& network, RuleNetworks const& rules, Points font) {
    Rect const inside = network.box.grown(1);
    for (auto const& s : rules.looseHorizontal) {
        bool const within = s.length() >= kLeastLoose * font && s.at > inside.y0 && s.at < inside.y1 && s.from >= inside.x0 && s.to <= inside.x1;
        if (within && !marksWord(page, s, font)) network.horizontal.push_back(s);
    }
    for (auto const& s : rules.looseVertical) {
        if (s.length() >= font && s.at > inside.x0 && s.at < inside.x1 && s.from >= inside.y0 && s.to <= inside.y1) network.vertical.push_back(s);
    }
}

// Most column rules of the one stand where the other has some.
bool columnsAmong(Network const& one, Network const& other) {
    auto const shared = std::count_if(one.vertical.begin(), one.vertical.end(), [&](Segment const& s) {
        return std::any_of(other.vertical.begin(), other.vertical.end(), [&](Segment const& o) { return std::abs(o.at - s.at) < 1.5F; });
    });
    return shared * 10 >= static_cast<std::ptrdiff_t>(one.vertical.size()) * 8;
}

// How many cells between two heights read as column titles.
int titlesBetween(PageLayout const& page, Network const& network, Points top, Points bottom) {
    std::vector<Points> xs;
    for (Segment const& s : network.vertical) xs.push_back(s.at);
    std::sort(xs.begin(), xs.end());
    int titles = 0;
    for (std::size_t i = 0; i + 1 < xs.size(); ++i) {
        std::string text;
        for (auto const& word : page.words) {
            if (Rect{xs[i], top, xs[i + 1], bottom}.contains(word.box.centre())) text += (text.empty() ? "" : " ") + word.text;
        }
        titles += columnTitle(text) != ColumnTitle::None ? 1 : 0;
    }
    return titles;
}

// Below the first rule across that is not the top of its frame.
Points endOfFirstRow(Network const& network, Points font) {
    Points end = network.box.y1;
    for (Segment const& s : network.horizontal) {
        if (s.at > network.box.y0 + font / 2) end = std::min(end, s.at);
    }
    return end;
}

// A head in a frame of its own, set a little above the frame of its rows, which has none.
bool isHeadOf(PageLayout const& page, Network const& above, Network const& below, Points font) {
    auto const lines =
        std::count_if(above.horizontal.begin(), above.horizontal.end(), [&](Segment const& s) { return s.at > above.box.y0 + font / 2 && s.at < above.box.y1 - font / 2; });
    if (lines > 0 || below.box.y0 - above.box.y1 >= kFrameGap * font || !columnsAmong(above, below)) return false;
    int const titles = titlesBetween(page, above, above.box.y0, above.box.y1);
    return titles > 0 && titles > titlesBetween(page, below, below.box.y0, endOfFirstRow(below, font));
}

// Networks that stand right below each other with the same sides are one table
// whose heading lines have no side rules; the sides are closed.
std::vector<Network> stacked(PageLayout const& page, RuleNetworks const& rules, Points font) {
    std::vector<Network> all = rules.networks;
    if (all.size() > kMostNetworks) all.resize(kMostNetworks);
    for (auto& network : all) takeLoose(page, network, rules, font);
    std::sort(all.begin(), all.end(), [](Network const& a, Network const& b) { return a.box.y0 < b.box.y0; });
    std::vector<Network> out;
    for (auto& network : all) {
        Network* above = nullptr;
        for (auto& candidate : out) {
            Points const gap = network.box.y0 - candidate.box.y1;
            bool const sides = std::abs(candidate.box.x0 - network.box.x0) < 1.5F && std::abs(candidate.box.x1 - network.box.x1) < 1.5F;
            if (sides && gap > 0 && gap < kHeadingGap * font && candidate.vertical.size() > 2 && network.vertical.size() > 2) above = &candidate;
        }
        if (above != nullptr) {
            int texts = 0;
            Rect const between{network.box.x0, above->box.y1, network.box.x1, network.box.y0};
            for (auto const& line : page.lines) texts += line.wordCount > 0 && between.contains(line.box.centre()) ? 1 : 0;
            bool const joined = texts == 1 ? columnsAmong(network, *above) : texts == 0 && isHeadOf(page, *above, network, font);
            if (!joined) above = nullptr;
        }
        if (above == nullptr) {
            out.push_back(std::move(network));
            continue;
        }
        for (Points const x : {network.box.x0, network.box.x1}) above->vertical.push_back({x, above->box.y1, network.box.y0});
        above->horizontal.insert(above->horizontal.end(), network.horizontal.begin(), network.horizontal.end());
        above->vertical.insert(above->vertical.end(), network.vertical.begin(), network.vertical.end());
        above->box = united(above->box, network.box);
    }
    std::stable_sort(out.begin(), out.end(), [](Network const& a, Network const& b) { return a.box.area() < b.box.area(); });
    return out;
}

}  // namespace

std::vector<Region> findRuledRegions(PageLayout const& page, RuleNetworks const& rules) {
    std::vector<Region> regions;
    Points const font = page.bodySize > 1 ? page.bodySize : 10;
    for (auto const& network : stacked(page, rules, font)) {
        if (network.box.width() < 4 * font || network.box.height() < 1.2F * font) continue;
        if (network.horizontal.size() < 2 || network.vertical.empty()) continue;
        std::vector<std::uint32_t> lines;
        for (std::uint32_t i = 0; i < page.lines.size(); ++i) {
            if (page.lines[i].box.intersects(network.box)) lines.push_back(i);
        }
        if (lines.size() < 2) continue;
        auto lattice = makeLattice(network, std::clamp(kDoubleRule * font, 1.5F, 4.0F));
        if (lattice.xs.size() < 3 || lattice.ys.size() < 2) continue;
        NetworkReader(page, std::move(lattice), lines).findRegions(regions);
    }
    return regions;
}

}  // namespace standin::tables

// The page is divided into squares of about a font height. Everything drawn
// marks the squares that it covers; squares that touch, also at a corner, are
// one cluster, found by the runs of squares in each row. Rules as long as the page
// or its text are left out first, since they would join everything: they are
// frames and separators unless they close a box. Tested by tests/extractors/figures/page_clusters_test.cpp.
#include "extractors/figures/page_clusters.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace standin::figures {

namespace {

constexpr model::Points kSmallestSquare = 4;
constexpr model::Points kUsualSize = 10;  // where a page has no text to tell its size
constexpr int kMostSquares = 400;         // a side
constexpr model::Points kFrameShare = 0.72F;       // of the page's height or width: a frame's side
constexpr model::Points kSeparatorShare = 0.5F;    // of the page's width: a separator unless it closes a box
constexpr double kBackgroundShare = 0.55;          // of the page's area
constexpr model::Points kTouch = 0.4F;             // font heights between rules that meet

enum class Kind : std::uint8_t { Image, Drawing, Horizontal, Vertical };

struct Element {
    model::Rect box;
    Kind kind = Kind::Drawing;
    std::uint64_t shape = 0;
};

std::uint64_t mixed(std::uint64_t hash, std::uint64_t value) {
    // FNV-1a over the value's bytes.
    for (int i = 0; i < 8; ++i) {
        hash ^= (value >> (8 * i)) & 0xFF;
        hash *= 0x100000001B3ULL;
    }
    return hash;
}

bool inTable(model::Rect const& box, std::span<model::Rect const> tables) {
    auto const centre = box.centre();
    return std::any_of(tables.begin(), tables.end(), [&](auto const& table) { return table.contains(centre) || table.contains(box); });
}

bool isBackground(model::Rect const& box, model::PageLayout const& page) {
    return box.area() > kBackgroundShare * page.width * page.height || (box.width() > kFrameShare * page.width && box.height() > kFrameShare * page.height);
}

bool isPageSide(model::Rule const& rule, model::PageLayout const& page) {
    return rule.axis == model::Rule::Axis::Vertical ? rule.box.height() > kFrameShare * page.height : false;
}

// A long horizontal rule belongs to a drawing only where upright rules meet
// both of its ends.
bool closesBox(model::Rule const& rule, std::span<model::Rule const* const> upright, model::Points touch) {
    bool left = false;
    bool right = false;
    for (auto const* other : upright) {
        if (other->box.y0 > rule.box.y1 + touch || other->box.y1 < rule.box.y0 - touch) continue;
        left = left || std::abs(other->box.centre().x - rule.box.x0) <= touch;
        right = right || std::abs(other->box.centre().x - rule.box.x1) <= touch;
        if (left && right) return true;
    }
    return false;
}

std::vector<Element> elementsOf(model::PageLayout const& page, std::span<model::Rect const> tables, model::Points size) {
    std::vector<Element> elements;
    elements.reserve(page.images.size() + page.drawings.size() + page.rules.size());
    model::Rect const paper{0, 0, page.width, page.height};
    auto const add = [&](model::Rect const& box, Kind kind, std::uint64_t shape) {
        auto const seen = model::intersection(box, paper);
        if (!(seen.x1 >= seen.x0 && seen.y1 >= seen.y0)) return;  // outside, or no number at all
        elements.push_back({seen, kind, shape});
    };
    for (auto const& image : page.images) {
        if (inTable(image.box, tables)) continue;
        add(image.box, Kind::Image, mixed(static_cast<std::uint64_t>(image.pixelWidth) << 32 | static_cast<std::uint32_t>(image.pixelHeight), image.content));
    }
    for (auto const& drawing : page.drawings) {
        if (isBackground(drawing.box, page) || inTable(drawing.box, tables)) continue;
        add(drawing.box, Kind::Drawing, drawing.shape);
    }
    std::vector<model::Rule const*> upright;
    for (auto const& rule : page.rules) {
        if (rule.axis == model::Rule::Axis::Vertical && !isPageSide(rule, page) && !inTable(rule.box, tables)) upright.push_back(&rule);
    }
    // Many upright rules: only those long enough to be a box's side matter, and
    // the search stays short.
    constexpr std::size_t kMostSides = 400;
    std::vector<model::Rule const*> sides;
    for (auto const* rule : upright) {
        if (rule->box.height() >= 2 * size && sides.size() < kMostSides) sides.push_back(rule);
    }
    for (auto const* rule : upright) add(rule->box, Kind::Vertical, 0);
    for (auto const& rule : page.rules) {
        if (rule.axis != model::Rule::Axis::Horizontal || inTable(rule.box, tables)) continue;
        if (rule.box.width() > kSeparatorShare * page.width && !closesBox(rule, sides, kTouch * size)) continue;
        add(rule.box, Kind::Horizontal, 0);
    }
    return elements;
}

class Squares {
public:
    Squares(model::PageLayout const& page, model::Points size) {
        auto const largest = std::max({page.width, page.height, 1.0F});
        m_side = std::max({size * 0.9F, kSmallestSquare, largest / kMostSquares});
        m_columns = std::clamp(static_cast<int>(page.width / m_side) + 1, 1, kMostSquares + 1);
        m_rows = std::clamp(static_cast<int>(page.height / m_side) + 1, 1, kMostSquares + 1);
        m_cluster.assign(static_cast<std::size_t>(m_columns) * static_cast<std::size_t>(m_rows), -1);
    }

    void mark(model::Rect const& box) {
        int const left = column(box.x0);
        int const width = column(box.x1) - left + 1;
        int const bottom = row(box.y1);
        for (int row = this->row(box.y0); row <= bottom; ++row) std::fill_n(m_cluster.begin() + index(row, left), width, kMarked);
    }

    // Numbers the groups of marked squares from 0; gives their count.
    int number() {
        auto const runs = groupedRuns();
        int count = 0;
        std::vector<int> numbers(runs.size());
        for (std::size_t i = 0; i < runs.size(); ++i) {
            numbers[i] = runs[i].group == i ? count++ : numbers[runs[i].group];
            std::fill(m_cluster.begin() + runs[i].first, m_cluster.begin() + runs[i].end, numbers[i]);
        }
        return count;
    }

    [[nodiscard]] int clusterAt(model::Rect const& box) const { return m_cluster[static_cast<std::size_t>(index(row(box.y0), column(box.x0)))]; }

private:
    static constexpr int kMarked = -2;

    // Marked squares beside each other in one row.
    struct Run {
        std::ptrdiff_t first = 0;
        std::ptrdiff_t end = 0;
        std::size_t group = 0;  // index of a run before it that it goes with, or its own
    };

    // Row by row; `group` is the first run of all that go together.
    [[nodiscard]] std::vector<Run> groupedRuns() const {
        std::vector<Run> runs;
        std::size_t above = 0;  // first run of the row before
        for (int row = 0; row < m_rows; ++row) {
            std::size_t const begin = runs.size();
            takeRow(row, runs);
            std::size_t k = above;
            for (std::size_t i = begin; i < runs.size(); ++i) {
                // Runs that touch, also at a corner. The last of them may touch the next run as well.
                while (k < begin && runs[k].end + m_columns < runs[i].first) ++k;
                for (std::size_t other = k; other < begin && runs[other].first + m_columns <= runs[i].end; ++other) unite(runs, i, other);
            }
            above = begin;
        }
        for (std::size_t i = 0; i < runs.size(); ++i) runs[i].group = firstOf(runs, i);
        return runs;
    }

    void takeRow(int row, std::vector<Run>& runs) const {
        auto const end = m_cluster.begin() + index(row, m_columns);
        auto const marked = [](int square) { return square == kMarked; };
        for (auto from = std::find(m_cluster.begin() + index(row, 0), end, kMarked); from != end;) {
            auto const to = std::find_if_not(from, end, marked);
            runs.push_back({from - m_cluster.begin(), to - m_cluster.begin(), runs.size()});
            from = std::find(to, end, kMarked);
        }
    }

    static std::size_t firstOf(std::vector<Run>& runs, std::size_t run) {
        while (runs[run].group != run) run = runs[run].group = runs[runs[run].group].group;
        return run;
    }

    static void unite(std::vector<Run>& runs, std::size_t a, std::size_t b) {
        a = firstOf(runs, a);
        b = firstOf(runs, b);
        runs[std::max(a, b)].group = std::min(a, b);
    }

    [[nodiscard]] int column(model::Points x) const { return std::clamp(static_cast<int>(x / m_side), 0, m_columns - 1); }
    [[nodiscard]] int row(model::Points y) const { return std::clamp(static_cast<int>(y / m_side), 0, m_rows - 1); }
    [[nodiscard]] int index(int row, int column) const { return row * m_columns + column; }

    model::Points m_side = kUsualSize;
    int m_columns = 1;
    int m_rows = 1;
    std::vector<int> m_cluster;  // -1: nothing drawn there
};

std::uint64_t placeOf(model::Rect const& box, model::Rect const& of) {
    auto const part = [](model::Points distance) { return static_cast<std::uint64_t>(std::lround(std::max(0.0F, distance)) & 0xFFFF); };
    return part(box.x0 - of.x0) << 48 | part(box.y0 - of.y0) << 32 | part(box.width()) << 16 | part(box.height());
}

}  // namespace

std::vector<Cluster> clustersOf(model::PageLayout const& page, std::span<model::Rect const> tables) {
    auto const size = page.bodySize > 0 ? page.bodySize : kUsualSize;
    auto const elements = elementsOf(page, tables, size);
    if (elements.empty()) return {};
    Squares squares(page, size);
    // A background picture or a watermark would join all; it stands alone.
    std::vector<Cluster> clusters;
    for (auto const& element : elements) {
        if (!isBackground(element.box, page)) squares.mark(element.box);
    }
    clusters.resize(static_cast<std::size_t>(squares.number()));
    std::vector<std::vector<std::size_t>> members(clusters.size());
    for (std::size_t i = 0; i < elements.size(); ++i) {
        auto const& element = elements[i];
        if (isBackground(element.box, page)) {
            Cluster alone;
            alone.box = element.box;
            alone.images = 1;
            alone.imageArea = element.box.area();
            alone.shape = element.shape;
            clusters.push_back(alone);
            members.emplace_back();
            continue;
        }
        auto const number = static_cast<std::size_t>(squares.clusterAt(element.box));
        auto& cluster = clusters[number];
        members[number].push_back(i);
        // united() takes an all-zero box for none; thin rules are no such box.
        cluster.box = model::united(cluster.box, element.box);
        switch (element.kind) {
            case Kind::Image:
                ++cluster.images;
                cluster.imageArea += element.box.area();
                break;
            case Kind::Drawing: ++cluster.drawings; break;
            case Kind::Horizontal:
                ++cluster.horizontal;
                cluster.longestHorizontal = std::max(cluster.longestHorizontal, element.box.width());
                break;
            case Kind::Vertical:
                ++cluster.vertical;
                cluster.longestVertical = std::max(cluster.longestVertical, element.box.height());
                break;
        }
    }
    std::vector<std::pair<std::uint64_t, std::uint64_t>> parts;
    for (std::size_t k = 0; k < clusters.size(); ++k) {
        if (members[k].empty()) continue;
        parts.clear();
        for (auto const i : members[k]) parts.emplace_back(placeOf(elements[i].box, clusters[k].box), elements[i].shape + static_cast<std::uint64_t>(elements[i].kind));
        std::sort(parts.begin(), parts.end());
        std::uint64_t hash = 0xCBF29CE484222325ULL;
        for (auto const& [place, shape] : parts) hash = mixed(mixed(hash, place), shape);
        clusters[k].shape = hash;
    }
    std::stable_sort(clusters.begin(), clusters.end(), [](auto const& a, auto const& b) { return a.box.y0 != b.box.y0 ? a.box.y0 < b.box.y0 : a.box.x0 < b.box.x0; });
    return clusters;
}

}  // namespace standin::figures

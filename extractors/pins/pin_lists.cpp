// The rows of all lines (pin_list_rows.h) are chained down the page while they count
// up; several lists may stand beside each other. A list that goes on in a column to
// its right is joined to it. Tested by tests/extractors/pins/pin_lists_test.cpp.
#include "extractors/pins/pin_lists.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "extractors/pins/pin_captions.h"
#include "extractors/pins/pin_list_rows.h"
#include "text/utf8.h"

namespace standin::pins {

namespace {

constexpr std::size_t kFewestPins = 3;
constexpr std::size_t kMostRows = 400;  // of a page

// In font heights.
constexpr model::Points kNearFigure = 6;
constexpr model::Points kLineDistance = 3.2F;      // between lines of one list
constexpr model::Points kBareLineDistance = 1.6F;  // of numbers without a sign, which need to be close
constexpr model::Points kLeftEdge = 1;             // such rows stand below each other
constexpr model::Points kNextColumn = 20;          // from a list to its next column

struct Chain {
    std::vector<ListEntry> entries;
    bool bare = false;
    std::size_t rows = 0;
    std::size_t titled = 0;  // rows that open with a word for pins
    model::Rect last;        // its last row
    model::Rect box;
    [[nodiscard]] int first() const { return entries.front().number; }
};

class Lists {
public:
    Lists(model::PageLayout const& page, std::span<model::Section const> sections) : m_page(page), m_sections(sections) {}

    std::vector<std::vector<model::Pin>> find() {
        for (auto& row : rowsDownThePage()) add(std::move(row));
        for (auto& chain : m_chains) sortEntries(chain);
        std::erase_if(m_chains, [](auto const& chain) { return chain.entries.empty(); });
        joinColumns();
        std::vector<std::vector<model::Pin>> lists;
        for (auto const& chain : m_chains) {
            if (isListOfPins(chain)) lists.push_back(pinsOf(chain));
        }
        return lists;
    }

private:
    [[nodiscard]] std::vector<ListRow> rowsDownThePage() const {
        auto rows = listRowsOf(m_page);
        if (rows.size() > kMostRows) return {};
        std::stable_sort(rows.begin(), rows.end(), [](auto const& a, auto const& b) { return a.box.y0 != b.box.y0 ? a.box.y0 < b.box.y0 : a.box.x0 < b.box.x0; });
        return rows;
    }

    void add(ListRow row) {
        Chain* best = nullptr;
        for (auto& chain : m_chains) {
            if (goesOn(chain, row) && (best == nullptr || chain.last.y0 > best->last.y0)) best = &chain;
        }
        if (best == nullptr) best = &m_chains.emplace_back(Chain{{}, row.bare, 0, 0, {}, {}});
        ++best->rows;
        if (row.saysPins) ++best->titled;
        best->last = row.box;
        best->box = model::united(best->box, row.box);
        best->entries.insert(best->entries.end(), std::make_move_iterator(row.entries.begin()), std::make_move_iterator(row.entries.end()));
    }

    [[nodiscard]] static bool goesOn(Chain const& chain, ListRow const& row) {
        if (chain.bare != row.bare) return false;
        auto const& last = chain.last;
        auto const height = std::max(std::min(last.height(), row.box.height()), 1.0F);
        auto const down = row.box.y0 - last.y1;
        if (row.bare) {
            bool const below = down < kBareLineDistance * height && row.box.y0 > last.centre().y && std::abs(row.box.x0 - chain.box.x0) <= kLeftEdge * height;
            auto const isNew = [&chain](auto const& entry) {
                return std::none_of(chain.entries.begin(), chain.entries.end(), [&entry](auto const& known) { return known.number == entry.number; });
            };
            return below && std::all_of(row.entries.begin(), row.entries.end(), isNew);
        }
        if (row.entries.front().number != chain.entries.back().number + 1) return false;
        bool const below = down < kLineDistance * height && model::overlap(chain.box.x0, chain.box.x1, row.box.x0, row.box.x1) > -2 * height;
        bool const beside = std::abs(row.box.y0 - last.y0) < height && row.box.x0 - last.x1 < kNextColumn * height;
        return below || beside;
    }

    // Numbers without a gap, or no list.
    static void sortEntries(Chain& chain) {
        std::stable_sort(chain.entries.begin(), chain.entries.end(), [](auto const& a, auto const& b) { return a.number < b.number; });
        for (std::size_t i = 0; i < chain.entries.size(); ++i) {
            if (chain.entries[i].number == chain.first() + static_cast<int>(i)) continue;
            chain.entries.clear();
            return;
        }
    }

    // The nearest list to the right, at its height, that begins with the next number.
    [[nodiscard]] std::size_t nextColumnOf(Chain const& chain) const {
        auto const height = std::max(chain.last.height(), 1.0F);
        std::size_t best = m_chains.size();
        for (std::size_t i = 0; i < m_chains.size(); ++i) {
            auto const& other = m_chains[i];
            auto const gap = other.box.x0 - chain.box.x1;
            bool const follows = other.bare == chain.bare && other.first() == chain.entries.back().number + 1;
            if (!follows || gap < 0 || gap > kNextColumn * height || model::overlap(chain.box.y0, chain.box.y1, other.box.y0, other.box.y1) < 0.5F * other.box.height()) continue;
            if (best == m_chains.size() || other.box.x0 < m_chains[best].box.x0) best = i;
        }
        return best;
    }

    void joinColumns() {
        for (std::size_t i = 0; i < m_chains.size();) {
            auto const next = m_chains[i].first() == 1 ? nextColumnOf(m_chains[i]) : m_chains.size();
            if (next == m_chains.size()) {
                ++i;
                continue;
            }
            auto& chain = m_chains[i];
            auto const& other = m_chains[next];
            chain.entries.insert(chain.entries.end(), other.entries.begin(), other.entries.end());
            chain.box = model::united(chain.box, other.box);
            m_chains.erase(m_chains.begin() + static_cast<std::ptrdiff_t>(next));
            if (next < i) --i;
        }
    }

    [[nodiscard]] bool isListOfPins(Chain const& chain) const {
        if (chain.entries.size() < kFewestPins || chain.first() != 1) return false;
        if (chain.rows > 1 && chain.titled == chain.rows) return false;  // "Pin 1: …" a line: descriptions
        auto const& name = chain.entries.front().name;
        bool const different = std::any_of(chain.entries.begin(), chain.entries.end(), [&name](auto const& entry) { return entry.name != name; });
        return different && aboutPins(chain);
    }

    [[nodiscard]] std::vector<model::Pin> pinsOf(Chain const& chain) const {
        auto const caption = captionOf(m_page, chain.box);
        std::vector<model::Pin> pins;
        for (auto const& entry : chain.entries) pins.push_back({std::to_string(entry.number), entry.name, {}, caption, m_page.page, entry.box});
        return pins;
    }

    [[nodiscard]] bool aboutPins(Chain const& chain) const {
        auto const height = m_page.bodySize > 0 ? m_page.bodySize : 10;
        auto const around = chain.box.grown(kNearFigure * height);
        bool said = chain.titled > 0;
        if (isStyle(chain.box, height)) return false;
        for (auto const& word : m_page.words) {
            if (!around.intersects(word.box)) continue;
            if (word.owner == model::Owner::Figure && chain.box.grown(height).intersects(word.box)) return true;
            bool const isAbove = word.box.y1 <= chain.box.y0 + height && word.box.x0 < chain.box.x1;
            if (isAbove && isPinWord(word.text)) said = true;
        }
        auto const* section = sectionAbove(chain.box);
        bool const drawn = nearDrawing(chain.box, height) || (section != nullptr && section->kind == model::SectionKind::Package);
        bool const listed = said || (section != nullptr && section->kind == model::SectionKind::Pins);
        return chain.bare ? drawn : listed || nearDrawing(chain.box, height);
    }

    // "STYLE 5:" above: one of the ways in which a package is used, for any part.
    [[nodiscard]] bool isStyle(model::Rect const& box, model::Points height) const {
        return std::any_of(m_page.words.begin(), m_page.words.end(), [&](auto const& word) {
            bool const above = word.box.y1 <= box.y0 + height && word.box.y1 > box.y0 - 2 * height && word.box.x1 > box.x0 - 6 * height && word.box.x0 < box.x1;
            return above && text::asciiLower(word.text) == "style";
        });
    }

    [[nodiscard]] bool nearDrawing(model::Rect const& box, model::Points height) const {
        auto const around = box.grown(kNearFigure * height);
        auto const isNear = [&](auto const& drawn) { return drawn.box.intersects(around) && drawn.box.height() > 2 * height && drawn.box.height() < m_page.height / 2; };
        return std::any_of(m_page.drawings.begin(), m_page.drawings.end(), isNear) || std::any_of(m_page.images.begin(), m_page.images.end(), isNear);
    }

    [[nodiscard]] model::Section const* sectionAbove(model::Rect const& box) const {
        model::Section const* last = nullptr;
        for (auto const& section : m_sections) {
            bool const before = section.page < m_page.page || (section.page == m_page.page && section.box.y0 <= box.y0);
            if (before) last = &section;
        }
        return last;
    }

    model::PageLayout const& m_page;
    std::span<model::Section const> m_sections;
    std::vector<Chain> m_chains;
};

}  // namespace

std::vector<std::vector<model::Pin>> pinsOfLists(model::PageLayout const& page, std::span<model::Section const> sections) { return Lists(page, sections).find(); }

}  // namespace standin::pins

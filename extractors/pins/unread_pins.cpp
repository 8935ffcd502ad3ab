// Tested by tests/extractors/pins/unread_pins_test.cpp.
#include "extractors/pins/unread_pins.h"

#include <algorithm>
#include <array>
#include <map>
#include <string>

#include <fmt/format.h>

#include "extractors/pins/pin_captions.h"
#include "text/utf8.h"

namespace standin::pins {

namespace {

constexpr std::size_t kMostAnnouncements = 8;

using Terminals = std::array<std::string_view, 3>;
constexpr std::array<Terminals, 8> kTerminals{{{"G", "D", "S"},
                                               {"B", "C", "E"},
                                               {"A", "K", "G"},
                                               {"gate", "drain", "source"},
                                               {"base", "collector", "emitter"},
                                               {"anode", "cathode", "gate"},
                                               {"input", "output", "ground"},
                                               {"input", "output", "adjust"}}};

// How many pins each package has that was read.
std::map<std::string, int> countsOf(std::span<model::Pin const> pins) {
    std::map<std::string, int> counts;
    for (auto const& pin : pins) {
        if (!pin.number.empty()) ++counts[pin.package];
    }
    return counts;
}

void addUnnamed(std::span<model::Pin const> pins, std::vector<model::PlacedText>& unread) {
    for (auto const& pin : pins) {
        if (pin.name.empty() && !pin.number.empty()) unread.push_back({fmt::format("pin {}", pin.number), pin.page, pin.box});
    }
}

void addDrawings(std::span<model::Pin const> pins, std::span<DrawingOfPage const> drawings, std::vector<model::PlacedText>& unread) {
    auto const counts = countsOf(pins);
    for (auto const& [page, drawing] : drawings) {
        bool const known = std::any_of(counts.begin(), counts.end(), [leads = drawing.leads](auto const& package) { return package.second == leads; });
        if (!known) unread.push_back({fmt::format("pins 1 to {}", drawing.leads), page, drawing.box});
    }
}

// A heading about pins stands for its page, else the first line that announces them.
void addAnnouncements(std::span<model::PageLayout const> pages, std::span<model::Section const> sections, std::vector<model::PlacedText>& unread) {
    std::size_t count = 0;
    for (auto const& page : pages) {
        if (count >= kMostAnnouncements) return;
        bool const known = std::any_of(unread.begin(), unread.end(), [&page](auto const& place) { return place.page == page.page; });
        if (known) continue;
        auto const section = std::find_if(sections.begin(), sections.end(), [&page](auto const& s) { return s.page == page.page && s.kind == model::SectionKind::Pins; });
        if (section != sections.end()) {
            unread.push_back({section->title, page.page, section->box});
            ++count;
            continue;
        }
        auto announcements = pinAnnouncements(page);
        if (announcements.empty()) continue;
        unread.push_back(std::move(announcements.front()));
        ++count;
    }
}

// A single letter as printed, a word in any case.
bool isTerminal(std::string_view printed, std::string_view terminal) { return printed == terminal || (terminal.size() > 1 && text::asciiLower(printed) == terminal); }

// Terminals lettered at the leads of an outline or at a symbol, each a line by itself.
void addTerminals(model::PageLayout const& page, std::vector<model::PlacedText>& unread) {
    for (auto const& terminals : kTerminals) {
        std::array<bool, 3> found{};
        model::Rect box;
        for (auto const& line : page.lines) {
            if (line.wordCount != 1) continue;
            auto const& word = page.words[line.firstWord];
            if (word.owner != model::Owner::None && word.owner != model::Owner::Figure) continue;
            for (std::size_t t = 0; t < terminals.size(); ++t) {
                if (!isTerminal(word.text, terminals[t])) continue;
                found[t] = true;
                box = model::united(box, word.box);
            }
        }
        if (!found[0] || !found[1] || !found[2]) continue;
        unread.push_back({fmt::format("{}, {}, {} without numbers", terminals[0], terminals[1], terminals[2]), page.page, box});
        return;
    }
}

}  // namespace

std::vector<model::PlacedText> unreadPins(std::span<model::Pin const> pins, std::span<DrawingOfPage const> drawings, std::span<model::PageLayout const> pages,
                                          std::span<model::Section const> sections) {
    std::vector<model::PlacedText> unread;
    addUnnamed(pins, unread);
    addDrawings(pins, drawings, unread);
    bool const numbered = std::any_of(pins.begin(), pins.end(), [](auto const& pin) { return !pin.number.empty(); });
    if (!numbered) {
        addAnnouncements(pages, sections, unread);
        for (auto const& page : pages) {
            if (unread.empty() && page.page <= kPagesBehindTitle) addTerminals(page, unread);
        }
    }
    std::stable_sort(unread.begin(), unread.end(), [](auto const& a, auto const& b) { return a.page < b.page; });
    return unread;
}

}  // namespace standin::pins

// Tables first; a sheet without a table of numbered pins is searched for lists
// beside drawings and for drawings, page by page from the front, in sections
// about pins first. A table that names pins without numbers gives its functions
// to the pins of the drawing; one with names that are pictures takes them from it.
// Tested by tests/extractors/pins/read_pins_test.cpp.
#include "extractors/pins/read_pins.h"

#include <algorithm>
#include <iterator>
#include <string>
#include <string_view>
#include <unordered_map>
#include <utility>

#include "extractors/pins/pin_captions.h"
#include "extractors/pins/pin_descriptions.h"
#include "extractors/pins/pin_drawing.h"
#include "extractors/pins/pin_lists.h"
#include "extractors/pins/pin_table.h"
#include "extractors/pins/unread_pins.h"

namespace standin::pins {

namespace {

constexpr std::size_t kFewestAgreeing = 2;  // names in a drawing and a table, to take it for the same package

struct TablePins {
    std::vector<model::Pin> pins;
    bool headed = false;  // column titles say what is what
    bool said = false;    // that they are pins
};

std::vector<model::Pin> fromTables(std::span<model::Table const> tables) {
    std::vector<TablePins> read;
    PinColumns before;
    std::string beforeId;
    bool beforeHeaded = false;
    bool beforeSaid = false;
    for (auto const& table : tables) {
        if (table.kind != model::TableKind::Pins) continue;
        bool const goesOn =
            table.headRows == 0 && !table.continues.empty() && table.continues == beforeId && before.roles.size() == static_cast<std::size_t>(std::max(0, table.columns));
        auto columns = goesOn ? before : pinColumnsOf(table);
        auto found = pinsOfTable(table, columns);
        bool const headed = table.headRows > 0 || (goesOn && beforeHeaded);
        bool const said = saysPins(table) || (goesOn && beforeSaid);
        if (!found.empty() && !contradictsItself(found)) read.push_back({std::move(found), headed, said});
        before = std::move(columns);
        beforeId = table.id;
        beforeHeaded = headed;
        beforeSaid = said;
    }
    // A drawing of the package may look like a small table without titles; a list
    // of numbered things may stand in the section of the pins.
    bool const anyHeaded = std::any_of(read.begin(), read.end(), [](auto const& table) { return table.headed; });
    bool const anySaid = std::any_of(read.begin(), read.end(), [](auto const& table) { return table.said; });
    auto const isNumbered = [](auto const& table) { return std::any_of(table.pins.begin(), table.pins.end(), [](auto const& pin) { return !pin.number.empty(); }); };
    bool const anyNumbered = std::any_of(read.begin(), read.end(), isNumbered);
    std::vector<model::Pin> pins;
    for (auto& table : read) {
        if ((anyHeaded && !table.headed) || (anySaid && !table.said) || (anyNumbered && !isNumbered(table))) continue;
        pins.insert(pins.end(), std::make_move_iterator(table.pins.begin()), std::make_move_iterator(table.pins.end()));
    }
    return pins;
}

// What is printed twice, in a list and beside the drawing, is one; pins of another
// package are pins of their own, however many of them are alike.
void addNew(std::vector<model::Pin> found, std::vector<model::Pin>& pins) {
    auto const isKnown = [&pins](model::Pin const& pin) {
        return std::any_of(pins.begin(), pins.end(), [&pin](auto const& other) {
            bool const samePackage = other.package == pin.package || pin.package.empty() || other.package.empty();
            return other.number == pin.number && other.name == pin.name && samePackage;
        });
    };
    if (std::all_of(found.begin(), found.end(), isKnown)) return;
    pins.insert(pins.end(), std::make_move_iterator(found.begin()), std::make_move_iterator(found.end()));
}

struct PagesPins {
    std::vector<model::Pin> pins;
    std::vector<DrawingOfPage> unread;
};

bool hasPinSection(model::PageLayout const& page, std::span<model::Section const> sections) {
    return std::any_of(sections.begin(), sections.end(), [&page](auto const& section) { return section.page == page.page && section.kind == model::SectionKind::Pins; });
}

PagesPins fromPages(std::span<model::PageLayout const> pages, std::span<model::Section const> sections) {
    PagesPins result;
    for (auto const& page : pages) {
        bool const wanted = result.pins.empty() && (page.page <= kPagesBehindTitle || !pinAnnouncements(page).empty());
        if (!wanted && !hasPinSection(page, sections)) continue;
        for (auto& list : pinsOfLists(page, sections)) addNew(std::move(list), result.pins);
        addNew(pinsOfDescriptions(page), result.pins);
        auto drawn = pinsOfDrawings(page);
        for (auto& drawing : drawn.packages) addNew(std::move(drawing), result.pins);
        for (auto const& drawing : drawn.unread) result.unread.push_back({page.page, drawing});
    }
    return result;
}

// Is there a word of character recognition at the pin that is `wanted`?
template <class Wanted>
bool anyRecognisedAt(model::Pin const& pin, std::span<model::PageLayout const> pages, Wanted const& wanted) {
    return std::any_of(pages.begin(), pages.end(), [&](auto const& page) {
        return page.page == pin.page &&
               std::any_of(page.words.begin(), page.words.end(), [&](auto const& word) { return word.recognised && pin.box.contains(word.box.centre()) && wanted(word); });
    });
}

bool restsOnRecognised(model::Pin const& pin, std::span<model::PageLayout const> pages) {
    return anyRecognisedAt(pin, pages, [](model::Word const&) { return true; });
}

struct DrawnName {
    std::string text;         // empty: drawings disagree
    bool recognised = false;  // in each of them
};

// A name that a table prints as a picture stands as text in a drawing that names the
// other pins of the table alike.
void nameFromDrawings(std::vector<model::Pin>& pins, std::vector<model::Pin> const& drawn, std::span<model::PageLayout const> pages) {
    std::unordered_map<std::string, DrawnName> names;  // by number
    for (auto const& pin : drawn) {
        bool const recognised = restsOnRecognised(pin, pages);
        auto const [known, isNew] = names.emplace(pin.number, DrawnName{pin.name, recognised});
        if (isNew) continue;
        auto& name = known->second;
        if (name.text != pin.name) name.text.clear();
        name.recognised = name.recognised && recognised;
    }
    std::size_t agreeing = 0;
    for (auto const& pin : pins) {
        auto const found = names.find(pin.number);
        if (pin.name.empty() || found == names.end()) continue;
        if (found->second.text != pin.name) return;
        ++agreeing;
    }
    if (agreeing < kFewestAgreeing) return;
    for (auto& pin : pins) {
        auto const found = names.find(pin.number);
        if (!pin.name.empty() || found == names.end()) continue;
        pin.name = found->second.text;
        pin.recognised = found->second.recognised;
    }
}

// True where `word` stands in `name`, whole: a recognised "A" is no part of a printed "VBAT".
bool hasWord(std::string_view name, std::string_view word) {
    if (word.empty()) return false;
    for (auto at = name.find(word); at != std::string_view::npos; at = name.find(word, at + 1)) {
        bool const begins = at == 0 || name[at - 1] == ' ';
        bool const ends = at + word.size() == name.size() || name[at + word.size()] == ' ';
        if (begins && ends) return true;
    }
    return false;
}

// Names that were recognised in a picture, taken out of the pins; one a pin, empty where it is print.
std::vector<std::string> takeRecognisedNames(std::vector<model::Pin>& pins, std::span<model::PageLayout const> pages) {
    std::vector<std::string> names(pins.size());
    for (auto const& page : pages) {
        for (auto const& word : page.words) {
            if (!word.recognised) continue;
            for (std::size_t i = 0; i < pins.size(); ++i) {
                auto& pin = pins[i];
                bool const isName = pin.page == page.page && pin.box.contains(word.box.centre()) && hasWord(pin.name, word.text);
                if (isName) names[i] = std::exchange(pin.name, {});
            }
        }
    }
    return names;
}

// "S" of "S1" and of "S2"; empty for other names.
std::string_view stemBefore(std::string_view name, std::string_view endings) {
    if (name.size() < 2 || endings.find(name.back()) == std::string_view::npos) return {};
    name.remove_suffix(1);
    return name;
}

bool isRecognisedName(model::Pin const& pin, std::span<model::PageLayout const> pages) {
    return anyRecognisedAt(pin, pages, [&pin](model::Word const& word) { return hasWord(pin.name, word.text); });
}

// In a picture the digit of "S1" looks like a letter; where the package has an "S2" it is a digit.
// Beside an "S1" an "SI" is a name of its own; names in capitals have no "l" or "i".
void readFirstOfNumbered(std::vector<model::Pin>& pins, std::span<model::PageLayout const> pages) {
    std::vector<std::string> read;  // by pin; empty: as it is
    for (auto const& pin : pins) {
        auto const stem = stemBefore(pin.name, "lIi|");
        auto const hasNumbered = [&](std::string_view digit) {
            return std::any_of(pins.begin(), pins.end(), [&](auto const& other) { return other.package == pin.package && stemBefore(other.name, digit) == stem; });
        };
        bool const isFirst = !stem.empty() && hasNumbered("2") && (stemBefore(pin.name, "I|").empty() || !hasNumbered("1"));
        read.push_back(isFirst && isRecognisedName(pin, pages) ? std::string(stem) + '1' : std::string());
    }
    for (std::size_t i = 0; i < pins.size(); ++i) {
        if (!read[i].empty()) pins[i].name = std::move(read[i]);
    }
}

// A table that names pins without numbers tells what those of the drawing do.
void takeFunctions(std::vector<model::Pin> const& named, std::vector<model::Pin>& drawn) {
    std::unordered_map<std::string, std::string> functions;
    for (auto const& pin : named) functions.emplace(pin.name, pin.function);
    for (auto& pin : drawn) {
        auto const known = functions.find(pin.name);
        if (known != functions.end()) pin.function = known->second;
    }
}

// One package only: its name on every pin says nothing.
void clearSinglePackage(std::vector<model::Pin>& pins) {
    if (pins.empty()) return;
    bool const one = std::all_of(pins.begin(), pins.end(), [&pins](auto const& pin) { return pin.package == pins.front().package; });
    if (one)
        for (auto& pin : pins) pin.package.clear();
}

}  // namespace

PinReading readPins(std::span<model::Table const> tables, std::span<model::PageLayout const> pages, std::span<model::Section const> sections) {
    PinReading reading{fromTables(tables), {}};
    auto& pins = reading.pins;
    std::vector<DrawingOfPage> drawings;
    bool const numbered = std::any_of(pins.begin(), pins.end(), [](auto const& pin) { return !pin.number.empty(); });
    if (!numbered) {
        auto drawn = fromPages(pages, sections);
        drawings = std::move(drawn.unread);
        if (!drawn.pins.empty()) {
            takeFunctions(pins, drawn.pins);
            pins = std::move(drawn.pins);
        }
    } else {
        auto const recognised = takeRecognisedNames(pins, pages);  // what is printed elsewhere goes before it
        if (std::any_of(pins.begin(), pins.end(), [](auto const& pin) { return pin.name.empty(); })) nameFromDrawings(pins, fromPages(pages, sections).pins, pages);
        for (std::size_t i = 0; i < pins.size(); ++i) {
            if (pins[i].name.empty()) pins[i].name = recognised[i];
        }
    }
    readFirstOfNumbered(pins, pages);
    clearSinglePackage(pins);
    reading.unread = unreadPins(pins, drawings, pages, sections);
    return reading;
}

}  // namespace standin::pins

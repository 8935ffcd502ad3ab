// Pins are grouped by package; groups correspond by package name, by being the only
// ones, or by having as many pins; inside a group pins meet by number, the rest by name.
//
// Tested by tests/src/compare/pin_findings_test.cpp.
#include "compare/pin_findings.h"

#include <algorithm>
#include <charconv>
#include <map>
#include <set>
#include <string>
#include <utility>

#include "compare/device_codes.h"
#include "compare/feature_findings.h"
#include "compare/node_names.h"
#include "compare/ordered_version.h"
#include "compare/pin_handling.h"
#include "compare/prose.h"
#include "text/boundaries.h"
#include "text/fold.h"
#include "text/utf8.h"

namespace standin::compare {

namespace {

using model::FindingKind;
using model::Pin;
using model::Relation;

constexpr std::size_t kJoinedText = 480;

struct PinGroup {
    std::string package;  // folded
    std::vector<Pin const*> pins;
};

PinGroup const* generalOf(std::vector<PinGroup> const& groups) {
    auto const general = std::find_if(groups.begin(), groups.end(), [](auto const& group) { return group.package.empty(); });
    return general == groups.end() ? nullptr : &*general;
}

bool sharesANumber(PinGroup const& a, PinGroup const& b) {
    auto const hasNumber = [&b](Pin const* pin) {
        return !pin->number.empty() && std::any_of(b.pins.begin(), b.pins.end(), [pin](auto const* other) { return spaceless(other->number) == spaceless(pin->number); });
    };
    return std::any_of(a.pins.begin(), a.pins.end(), hasNumber);
}

// What one sheet prints for all packages the other does too, not for some of them.
bool generalPinsMeet(std::vector<PinGroup> const& reference, std::vector<PinGroup> const& candidate) {
    auto const* r = generalOf(reference);
    auto const* c = generalOf(candidate);
    if (r == nullptr || c == nullptr) return false;
    auto const inAPackage = [](std::vector<PinGroup> const& groups, PinGroup const& general) {
        return std::any_of(groups.begin(), groups.end(), [&](auto const& group) { return !group.package.empty() && sharesANumber(group, general); });
    };
    return !inAPackage(reference, *c) && !inAPackage(candidate, *r);
}

// A table with a number column for each package leaves out the package of a pin that has one
// number in all: it is a pin of each. Where a package has one of these numbers itself, they
// are another table, which stays.
void shareAmongPackages(std::vector<PinGroup>& groups) {
    auto const* found = generalOf(groups);
    if (found == nullptr || groups.size() == 1) return;
    PinGroup const general = *found;
    bool inEach = true;
    for (auto& group : groups) {
        if (group.package.empty()) continue;
        if (sharesANumber(group, general)) inEach = false;
        else group.pins.insert(group.pins.end(), general.pins.begin(), general.pins.end());
    }
    if (inEach) std::erase_if(groups, [](auto const& group) { return group.package.empty(); });
}

// By number; a pin with a letter, or without a number, behind the others in the order of print.
int placeOf(Pin const& pin) {
    constexpr int kLast = 100000;
    int number = 0;
    auto const [end, error] = std::from_chars(pin.number.data(), pin.number.data() + pin.number.size(), number);
    return error == std::errc() && end == pin.number.data() + pin.number.size() ? std::min(number, kLast) : kLast;
}

std::vector<PinGroup> groupsOf(model::Datasheet const& sheet) {
    std::vector<PinGroup> groups;
    for (auto const& pin : sheet.pins) {
        std::string const package = text::foldKey(pin.package);
        auto found = std::find_if(groups.begin(), groups.end(), [&](auto const& group) { return group.package == package; });
        if (found == groups.end()) found = groups.insert(groups.end(), {package, {}});
        found->pins.push_back(&pin);
    }
    // Sheets print one row for two pins in either order; what is told of the row is told of its first.
    for (auto& group : groups) std::stable_sort(group.pins.begin(), group.pins.end(), [](auto const* a, auto const* b) { return placeOf(*a) < placeOf(*b); });
    return groups;
}

std::string describe(Pin const& pin) {
    std::string text = pin.number;
    for (std::string const& part : {pin.name, pin.function}) {
        if (part.empty()) continue;
        if (!text.empty()) text += " | ";
        text += part;
    }
    return text;
}

// Two or three pins, each named as a terminal: only there is a "C" a collector.
bool namesTerminals(PinGroup const& group) {
    return group.pins.size() >= 2 && group.pins.size() <= 3 && std::all_of(group.pins.begin(), group.pins.end(), [](auto const* pin) { return !terminalKey(pin->name).empty(); });
}

bool hasAmplifierInputs(PinGroup const& group) {
    auto const has = [&](std::string_view name) { return std::any_of(group.pins.begin(), group.pins.end(), [&](auto const* pin) { return nodeKey(pin->name) == nodeKey(name); }); };
    return has("IN+") && has("IN-");
}

bool hasNode(PinGroup const& group, std::string_view key) {
    return std::any_of(group.pins.begin(), group.pins.end(), [key](auto const* pin) { return nodeKey(pin->name) == key; });
}

bool isProtector(PinGroup const& group) {
    bool const charge = hasNode(group, "charge-gate") || hasNode(group, "oc");
    return charge && hasNode(group, "discharge-gate") && hasNode(group, "supply-minus");
}

Draft pinDraft(Relation relation, Pin const* r, Pin const* c) {
    auto side = [](Pin const* pin) -> std::optional<model::Side> {
        if (pin == nullptr) return std::nullopt;
        return sideOf(pin->page, pin->box, describe(*pin));
    };
    return makeDraft(FindingKind::Pin, Rank::Pin, relation, side(r), side(c));
}

// "inputs 1" -> {"1", "input"}: sorted, without the plural.
std::vector<std::string> nameWords(std::string_view name) {
    std::vector<std::string> words;
    std::string const folded = text::asciiLower(text::foldForComparison(name));
    for (std::string_view word : text::words(folded)) words.emplace_back(text::singular(word));
    std::sort(words.begin(), words.end());
    return words;
}

// One name for several pins of a group, "Inputs 1", where the other sheet tells them apart ("Inverting input 1").
bool namesTogether(Pin const& pin, PinGroup const& group, Pin const& exact) {
    auto const sharesName = [&pin](Pin const* other) { return other->name == pin.name && other->number != pin.number; };
    if (std::none_of(group.pins.begin(), group.pins.end(), sharesName)) return false;
    auto const general = nameWords(pin.name);
    auto const all = nameWords(exact.name);
    return general.size() >= 2 && general.size() < all.size() && std::includes(all.begin(), all.end(), general.begin(), general.end());
}

class PinComparison {
public:
    PinComparison(SheetPair const& sheets, std::vector<Draft>& drafts) : m_sheets(sheets), m_drafts(drafts) {}

    void compareGroups(PinGroup const& reference, PinGroup const& candidate) {
        m_terminals = namesTerminals(reference) && namesTerminals(candidate);
        m_amplifiers = hasAmplifierInputs(reference) && hasAmplifierInputs(candidate);
        std::vector<char> met(candidate.pins.size(), 0);
        auto const sameNumber = [](Pin const& r, Pin const& c) { return spaceless(c.number) == spaceless(r.number); };
        m_protectors = isProtector(reference) && isProtector(candidate);
        auto const sameName = [&](Pin const& r, Pin const& c) { return nameKey(c, candidate) == nameKey(r, reference); };
        auto const same = [&](Pin const& r, Pin const& c) { return sameNumber(r, c) && !(r.number.empty() && r.name.empty()) && sameName(r, c); };
        auto const numberOnly = [&](Pin const& r, Pin const& c) { return !r.number.empty() && sameNumber(r, c); };
        auto free = meet(reference.pins, candidate.pins, met, same, [this](auto const* r, auto const* c) { compare(*r, *c); });
        // Another name at the same number before the same name at another number, for all
        // pins: in the other direction the same ones are left over.
        auto const differ = [&](auto const* r, auto const* c) {
            bool const together = namesTogether(*r, reference, *c) || namesTogether(*c, candidate, *r);
            tellDifferent(r, c, together ? Relation::Reworded : Relation::MeaningChanged);
        };
        free = meet(free, candidate.pins, met, numberOnly, differ);
        free = meet(free, candidate.pins, met, sameName, differ);
        for (auto const* r : free) {
            if (isNew(r, nullptr)) m_drafts.push_back(pinDraft(Relation::OnlyReference, r, nullptr));
        }
        for (std::size_t j = 0; j < candidate.pins.size(); ++j) {
            if (met[j] == 0 && isNew(nullptr, candidate.pins[j])) m_drafts.push_back(pinDraft(Relation::OnlyCandidate, nullptr, candidate.pins[j]));
        }
    }

private:
    // Pins of several packages meet in each of them.
    bool isNew(Pin const* r, Pin const* c) { return m_compared.emplace(r, c).second; }

    // Beside the cell's minus and the gates "V-" and "CS" are the charger's side, beside "OD"
    // "OC" is the gate for charging.
    static std::string protectorKey(std::string key, PinGroup const& group) {
        if ((key == "v-" || key == "cs") && hasNode(group, "supply-minus") && !hasNode(group, "pack-minus")) {
            bool const other = std::any_of(group.pins.begin(), group.pins.end(), [&key](auto const* pin) { return nodeKey(pin->name) == (key == "cs" ? "v-" : "cs"); });
            return key == "v-" || !other ? "pack-minus" : key;
        }
        return key == "oc" && hasNode(group, "discharge-gate") && !hasNode(group, "charge-gate") ? "charge-gate" : key;
    }

    [[nodiscard]] std::string nameKey(Pin const& pin, PinGroup const& group) const {
        if (m_terminals) return std::string(terminalKey(pin.name));
        std::string key = nodeKey(pin.name);
        if (m_amplifiers && key == "v-") return nodeKey("VCC-");
        return m_protectors ? protectorKey(std::move(key), group) : key;
    }

    // Gives back the pins of the reference that met none.
    template <class Predicate, class Meeting>
    static std::vector<Pin const*> meet(std::vector<Pin const*> const& reference, std::vector<Pin const*> const& candidate, std::vector<char>& met, Predicate&& correspond,
                                        Meeting&& meeting) {
        std::vector<Pin const*> free;
        for (auto const* r : reference) {
            std::size_t j = 0;
            while (j < candidate.size() && (met[j] != 0 || !correspond(*r, *candidate[j]))) ++j;
            if (j == candidate.size()) {
                free.push_back(r);
                continue;
            }
            met[j] = 1;
            meeting(r, candidate[j]);
        }
        return free;
    }

    // A name that is only a picture says nothing: the coverage account lists it.
    void tellDifferent(Pin const* r, Pin const* c, Relation relation) {
        if (r->name.empty() != c->name.empty() || !isNew(r, c)) return;
        m_drafts.push_back(pinDraft(relation, r, c));
        if (relation == Relation::Reworded) m_drafts.back().finding.classes = {model::WordingClass::Pin};
    }

    void compare(Pin const& r, Pin const& c) {
        if (!isNew(&r, &c)) return;
        if (!m_sheets.oneText() || !m_sheets.sameLanguage) {
            compareHandling(r, c);
            return;
        }
        bool const same = spaceless(r.name) == spaceless(c.name) && spaceless(r.function) == spaceless(c.function);
        if (same) return;
        Wording wording = wordingOf(m_sheets, describe(r), describe(c));
        if (wording.relation == Relation::Same) return;
        Draft draft = pinDraft(wording.relation, &r, &c);
        draft.finding.classes = std::move(wording.classes);
        hangUnderFirstOfRow(draft, r, c);
        m_drafts.push_back(std::move(draft));
    }

    // Two makers describe a pin in words of their own; what the board has to do with it counts.
    void compareHandling(Pin const& r, Pin const& c) {
        if (relateHandling(r.name + " | " + r.function, c.name + " | " + c.function) == HandlingChange::None) return;
        Draft draft = pinDraft(Relation::MeaningChanged, &r, &c);
        draft.finding.classes = {model::WordingClass::Pin};
        hangUnderFirstOfRow(draft, r, c);
        m_drafts.push_back(std::move(draft));
    }

    // One row for several numbers ("10, 11"): a change in it is one change.
    void hangUnderFirstOfRow(Draft& draft, Pin const& r, Pin const& c) {
        auto const sameRow = [](Pin const& a, Pin const& b) { return a.page == b.page && a.box == b.box && a.name == b.name && a.function == b.function; };
        auto const first = std::find_if(m_changed.begin(), m_changed.end(), [&](auto const& one) { return sameRow(*one.reference, r) && sameRow(*one.candidate, c); });
        if (first != m_changed.end()) draft.cause = first->draft;
        else m_changed.push_back({&r, &c, static_cast<int>(m_drafts.size())});
    }

    SheetPair const& m_sheets;
    std::vector<Draft>& m_drafts;
    std::set<std::pair<Pin const*, Pin const*>> m_compared;
    struct ChangedRow {
        Pin const* reference;
        Pin const* candidate;
        int draft;  // the first about it
    };
    std::vector<ChangedRow> m_changed;
    bool m_terminals = false;   // of the groups at hand
    bool m_protectors = false;  // cells are watched there: a gate each for charging and discharging
    bool m_amplifiers = false;  // V- is the negative supply there
};

// Which packages correspond; what corresponds to nothing is listed.
class PackageComparison {
public:
    PackageComparison(SheetPair const& sheets, std::vector<PinGroup> const& reference, std::vector<PinGroup> const& candidate, std::vector<Draft>& drafts)
        : m_reference(reference), m_candidate(candidate), m_metReference(reference.size(), 0), m_metCandidate(candidate.size(), 0), m_pins(sheets, drafts), m_drafts(drafts) {}

    template <class Predicate>
    void compareWhere(Predicate&& correspond) {
        for (std::size_t i = 0; i < m_reference.size(); ++i) {
            for (std::size_t j = 0; j < m_candidate.size() && m_metReference[i] == 0; ++j) {
                if (m_metCandidate[j] == 0 && correspond(m_reference[i], m_candidate[j])) compare(i, j);
            }
        }
    }

    // All pins of the group were compared in other packages.
    [[nodiscard]] bool isShown(PinGroup const& group) const {
        return std::all_of(group.pins.begin(), group.pins.end(), [this](auto const* pin) { return m_shown.count(pin) != 0; });
    }

    // A pin of several packages is told once.
    void listTheRest() {
        for (auto const& group : m_reference) {
            for (auto const* pin : group.pins) {
                if (m_shown.insert(pin).second) m_drafts.push_back(pinDraft(Relation::OnlyReference, pin, nullptr));
            }
        }
        for (auto const& group : m_candidate) {
            for (auto const* pin : group.pins) {
                if (m_shown.insert(pin).second) m_drafts.push_back(pinDraft(Relation::OnlyCandidate, nullptr, pin));
            }
        }
    }

private:
    void compare(std::size_t i, std::size_t j) {
        m_metReference[i] = m_metCandidate[j] = 1;
        m_pins.compareGroups(m_reference[i], m_candidate[j]);
        m_shown.insert(m_reference[i].pins.begin(), m_reference[i].pins.end());
        m_shown.insert(m_candidate[j].pins.begin(), m_candidate[j].pins.end());
    }

    std::vector<PinGroup> const& m_reference;
    std::vector<PinGroup> const& m_candidate;
    std::vector<char> m_metReference, m_metCandidate;
    PinComparison m_pins;
    std::vector<Draft>& m_drafts;
    std::set<Pin const*> m_shown;
};

std::string packageKey(model::Package const& package) { return text::foldKey(package.canonical.empty() ? package.name : package.canonical); }

model::Side sideOfPackage(model::Package const& package) { return sideOf(package.page, package.box, package.name); }

std::map<std::string, model::Package const*> packagesOf(model::Datasheet const& sheet) {
    std::map<std::string, model::Package const*> packages;
    for (auto const& package : sheet.packages) packages.emplace(packageKey(package), &package);
    return packages;
}

std::string describe(model::OrderingLine const& line) {
    std::string text = line.code;
    for (auto const& [title, value] : line.attributes) {
        if (value.empty() || value == line.code) continue;
        if (!text.empty()) text += " | ";
        text += value;
    }
    return text;
}

Draft orderingDraft(Relation relation, model::OrderingLine const* r, model::OrderingLine const* c) {
    auto side = [](model::OrderingLine const* line) -> std::optional<model::Side> {
        if (line == nullptr) return std::nullopt;
        return sideOf(line->page, line->box, describe(*line));
    };
    return makeDraft(FindingKind::Ordering, Rank::Ordering, relation, side(r), side(c));
}

// Equal texts or, in words of two languages, equal states of a feature.
bool sameInEveryCell(SheetPair const& sheets, model::OrderingLine const& r, model::OrderingLine const& c) {
    if (wordingOf(sheets, r.code, c.code).relation != Relation::Same || r.attributes.size() != c.attributes.size()) return false;
    for (std::size_t i = 0; i < r.attributes.size(); ++i) {
        if (keyOf(r.attributes[i].second) != keyOf(c.attributes[i].second) && !stateTheSame(sheets, r.attributes[i], c.attributes[i])) return false;
    }
    return true;
}

// What a line says of its version: its code left out.
std::string describeVersion(model::OrderingLine const& line) {
    std::string text = describe(line);
    if (!line.code.empty() && text.starts_with(line.code + " | ")) text.erase(0, line.code.size() + 3);
    return text;
}

// The lines of the chosen versions, whatever their codes.
void compareChosen(SheetPair const& sheets, std::vector<Draft>& drafts) {
    auto const* r = lineOfVersion(sheets.reference, sheets.options.referenceVariant);
    auto const* c = lineOfVersion(sheets.candidate, sheets.options.candidateVariant);
    if (r == nullptr || c == nullptr || spaceless(r->code) == spaceless(c->code)) return;
    Wording wording = wordingOf(sheets, describeVersion(*r), describeVersion(*c));
    if (wording.relation == Relation::Same) return;
    bool const shown = std::any_of(drafts.begin(), drafts.end(), [&](Draft const& draft) {
        auto const& finding = draft.finding;
        return finding.reference && finding.candidate && finding.reference->page == r->page && finding.reference->box == r->box && finding.candidate->page == c->page &&
               finding.candidate->box == c->box;
    });
    if (shown) return;
    Draft draft = orderingDraft(wording.relation, r, c);
    draft.finding.classes = std::move(wording.classes);
    drafts.push_back(std::move(draft));
}

// The cell from which a line has the text, or null. Lines may share it, one over several rows or one beside two codes.
model::Cell const* cellOf(model::Datasheet const& sheet, model::OrderingLine const& line, std::string_view text) {
    auto const table = std::find_if(sheet.tables.begin(), sheet.tables.end(), [&](auto const& one) { return one.id == line.table; });
    if (table == sheet.tables.end()) return nullptr;
    Key const key = keyOf(text);
    float const y = line.box.centre().y;
    auto const cell =
        std::find_if(table->cells.begin(), table->cells.end(), [&](auto const& one) { return !one.header && one.box.y0 <= y && y <= one.box.y1 && keyOf(one.text) == key; });
    return cell == table->cells.end() ? nullptr : &*cell;
}

// Where two lines differ in one cell only: that cell.
std::pair<model::Cell const*, model::Cell const*> changedCells(SheetPair const& sheets, model::OrderingLine const& r, model::OrderingLine const& c) {
    if (keyOf(r.code) != keyOf(c.code) || r.attributes.size() != c.attributes.size()) return {};
    int changed = -1;
    for (std::size_t i = 0; i < r.attributes.size(); ++i) {
        if (keyOf(r.attributes[i].second) == keyOf(c.attributes[i].second)) continue;
        if (changed >= 0) return {};
        changed = static_cast<int>(i);
    }
    if (changed < 0) return {};
    auto const at = static_cast<std::size_t>(changed);
    return {cellOf(sheets.reference, r, r.attributes[at].second), cellOf(sheets.candidate, c, c.attributes[at].second)};
}

// All lines of one sheet in as few findings as can show them.
void listLines(model::Datasheet const& sheet, std::vector<int> const& lines, Relation relation, std::vector<Draft>& drafts) {
    Draft* head = nullptr;
    for (int const index : lines) {
        auto const& line = sheet.ordering[static_cast<std::size_t>(index)];
        bool const inReference = relation == Relation::OnlyReference;
        if (head != nullptr) {
            auto& finding = head->finding;
            auto& side = inReference ? *finding.reference : *finding.candidate;
            std::string const text = describe(line);
            if (side.page == line.page && side.text.size() + text.size() < kJoinedText) {
                side.text += " / " + text;
                side.box = model::united(side.box, line.box);
                (inReference ? head->referencePlaces : head->candidatePlaces).push_back({line.page, line.box});
                ++head->numberBearers;
                continue;
            }
        }
        drafts.push_back(orderingDraft(relation, inReference ? &line : nullptr, inReference ? nullptr : &line));
        head = &drafts.back();
    }
}

}  // namespace

std::vector<Draft> findPinDifferences(SheetPair const& sheets) {
    std::vector<Draft> drafts;
    auto reference = groupsOf(sheets.reference);
    auto candidate = groupsOf(sheets.candidate);
    if (reference.empty() || candidate.empty()) {
        // No pin table was found in one of them: the coverage account says so.
        return drafts;
    }
    if (!generalPinsMeet(reference, candidate)) {
        shareAmongPackages(reference);
        shareAmongPackages(candidate);
    }
    PackageComparison packages(sheets, reference, candidate, drafts);
    packages.compareWhere([](auto const& r, auto const& c) { return r.package == c.package; });
    if (reference.size() == 1 && candidate.size() == 1) packages.compareWhere([](auto const&, auto const&) { return true; });
    packages.compareWhere([&](auto const& r, auto const& c) { return r.pins.size() == c.pins.size() && !packages.isShown(r) && !packages.isShown(c); });
    packages.listTheRest();
    return drafts;
}

std::vector<Draft> findPackageDifferences(SheetPair const& sheets) {
    std::vector<Draft> drafts;
    auto const reference = packagesOf(sheets.reference);
    auto const candidate = packagesOf(sheets.candidate);
    if (reference.empty() || candidate.empty()) return drafts;
    std::vector<model::Package const*> onlyReference;
    std::vector<model::Package const*> onlyCandidate;
    for (auto const& [key, package] : reference) {
        if (candidate.count(key) == 0) onlyReference.push_back(package);
    }
    for (auto const& [key, package] : candidate) {
        if (reference.count(key) == 0) onlyCandidate.push_back(package);
    }
    if (onlyReference.size() == 1 && onlyCandidate.size() == 1) {
        drafts.push_back(makeDraft(FindingKind::Package, Rank::Package, Relation::MeaningChanged, sideOfPackage(*onlyReference.front()), sideOfPackage(*onlyCandidate.front())));
        return drafts;
    }
    for (auto const* package : onlyReference) {
        drafts.push_back(makeDraft(FindingKind::Package, Rank::Package, Relation::OnlyReference, sideOfPackage(*package), std::nullopt));
    }
    for (auto const* package : onlyCandidate) {
        drafts.push_back(makeDraft(FindingKind::Package, Rank::Package, Relation::OnlyCandidate, std::nullopt, sideOfPackage(*package)));
    }
    return drafts;
}

std::vector<Draft> findOrderingDifferences(SheetPair const& sheets) {
    std::vector<Draft> drafts;
    auto keysOf = [](model::Datasheet const& sheet) {
        std::vector<Key> keys;
        for (auto const& line : sheet.ordering) keys.push_back(keyOf(describe(line)));
        return keys;
    };
    auto const& reference = sheets.reference.ordering;
    auto const& candidate = sheets.candidate.ordering;
    auto const referenceKeys = keysOf(sheets.reference);
    auto const candidateKeys = keysOf(sheets.candidate);
    auto const codesOf = [](std::vector<model::OrderingLine> const& lines) {
        std::vector<std::string> codes;
        for (auto const& line : lines) codes.push_back(line.code);
        return codes;
    };
    struct Line {
        std::string code;  // without spaces
        LetterPairs letters;
        LetterPairs all;
    };
    auto const linesOf = [](std::vector<model::OrderingLine> const& lines) {
        std::vector<Line> list;
        for (auto const& line : lines) list.push_back({spaceless(line.code), LetterPairs(line.code), LetterPairs(describe(line))});
        return list;
    };
    auto const referenceLines = linesOf(reference);
    auto const candidateLines = linesOf(candidate);
    DeviceCodes const devices(codesOf(reference), codesOf(candidate));
    Likeness const likeness = [&](int i, int j) {
        if (devices.areOthers(reference[static_cast<std::size_t>(i)].code, candidate[static_cast<std::size_t>(j)].code)) return 0.0;
        auto const& r = referenceLines[static_cast<std::size_t>(i)];
        auto const& c = candidateLines[static_cast<std::size_t>(j)];
        double const codes = r.code == c.code ? 1.0 : 0.9 * letterSimilarity(r.letters, c.letters);
        double const lines = letterSimilarity(r.all, c.all);
        return std::max(codes, 0.5 * (codes + lines));
    };
    Likeness const sameCode = [&](int i, int j) { return referenceLines[static_cast<std::size_t>(i)].code == candidateLines[static_cast<std::size_t>(j)].code ? 1.0 : 0.0; };
    auto pairs = alignSequences(referenceKeys, candidateKeys, sheets.oneText() ? likeness : sameCode, {.threshold = 0.5});
    pairMoved(referenceKeys, candidateKeys, pairs);
    std::map<std::pair<model::Cell const*, model::Cell const*>, int> firstOfCell;  // draft by the cell that differs
    for (auto const pair : pairs) {
        if (referenceKeys[static_cast<std::size_t>(pair.reference)] == candidateKeys[static_cast<std::size_t>(pair.candidate)]) continue;
        auto const& r = reference[static_cast<std::size_t>(pair.reference)];
        auto const& c = candidate[static_cast<std::size_t>(pair.candidate)];
        Wording wording = wordingOf(sheets, describe(r), describe(c));
        if (wording.relation == Relation::Same || sameInEveryCell(sheets, r, c)) continue;
        Draft draft = orderingDraft(wording.relation, &r, &c);
        draft.finding.classes = std::move(wording.classes);
        if (auto const changed = changedCells(sheets, r, c); changed.first != nullptr && changed.second != nullptr) {
            auto const [first, isNew] = firstOfCell.emplace(changed, static_cast<int>(drafts.size()));
            if (!isNew) draft.cause = first->second;
        }
        drafts.push_back(std::move(draft));
    }
    compareChosen(sheets, drafts);
    auto freeOf = [](std::vector<int> const& partners) {
        std::vector<int> list;
        for (std::size_t i = 0; i < partners.size(); ++i) {
            if (partners[i] < 0) list.push_back(static_cast<int>(i));
        }
        return list;
    };
    listLines(sheets.reference, freeOf(partnersOfReference(pairs, reference.size())), Relation::OnlyReference, drafts);
    listLines(sheets.candidate, freeOf(partnersOfCandidate(pairs, candidate.size())), Relation::OnlyCandidate, drafts);
    return drafts;
}

model::OrderingLine const* orderingLineAt(std::vector<model::OrderingLine> const& lines, model::Side const& side) {
    auto const found = std::find_if(lines.begin(), lines.end(), [&](auto const& line) { return line.page == side.page && line.box == side.box; });
    return found == lines.end() ? nullptr : &*found;
}

}  // namespace standin::compare

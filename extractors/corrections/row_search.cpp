// Texts first, then the place: a later version of the program may read a row
// otherwise, but it stands where it stood. Tested by
// tests/extractors/corrections/apply_corrections_test.cpp.
#include "extractors/corrections/row_search.h"

#include <algorithm>
#include <vector>

#include "extractors/parameters/text_forms.h"
#include "model/names.h"

namespace standin::corrections {

namespace {

constexpr float kLeastShare = 0.5F;  // of the lower one's height that two rows at one place have in common

std::string withoutBlanks(std::string_view text) {
    std::string key = parameters::folded(text);
    std::erase(key, ' ');
    return key;
}

std::string textOf(std::optional<model::Value> const& value) { return value ? value->text : std::string(); }

// Read so, or already as the entry wants it.
bool agrees(model::Parameter const& parameter, FieldText const& wanted, Entry const& entry) {
    auto const read = textOf(parameter, wanted.field);
    if (sameText(read, wanted.text)) return true;
    return entry.action == Action::Set && std::any_of(entry.texts.begin(), entry.texts.end(), [&](auto const& set) { return set.field == wanted.field && sameText(read, set.text); });
}

std::size_t countAgreeing(model::Parameter const& parameter, Entry const& entry) {
    return static_cast<std::size_t>(std::count_if(entry.row.begin(), entry.row.end(), [&](auto const& wanted) { return agrees(parameter, wanted, entry); }));
}

// The height of the line is that of its values: a name may stand beside several.
bool standsAt(model::Parameter const& parameter, model::Rect const& box) {
    model::Rect line;
    for (auto const* value : {&parameter.min, &parameter.typ, &parameter.max}) {
        if (*value) line = model::united(line, (*value)->box);
    }
    if (line.empty()) line = parameter.box;
    if (line.empty()) return false;
    auto const common = model::overlap(line.y0, line.y1, box.y0, box.y1);
    bool const level = common >= kLeastShare * std::min(line.height(), box.height());
    auto const whole = model::united(parameter.box, line);
    return level && model::overlap(whole.x0, whole.x1, box.x0, box.x1) > 0;
}

FoundRow onlyOne(std::vector<std::size_t> const& rows) {
    if (rows.empty()) return {Found::None, 0};
    return rows.size() == 1 ? FoundRow{Found::One, rows.front()} : FoundRow{Found::Several, 0};
}

}  // namespace

std::string textOf(model::Parameter const& parameter, Field field) {
    switch (field) {
        case Field::Kind: return std::string(model::nameOf(parameter.kind));
        case Field::Name: return parameter.name;
        case Field::Symbol: return parameter.symbol;
        case Field::Condition: return parameter.condition;
        case Field::TableCondition: return parameter.tableCondition;
        case Field::Variant: return parameter.variant;
        case Field::Min: return textOf(parameter.min);
        case Field::Typ: return textOf(parameter.typ);
        case Field::Max: return textOf(parameter.max);
        case Field::Unit: return parameter.unit;
        case Field::Printed: return parameter.printed;
    }
    return {};
}

bool sameText(std::string_view a, std::string_view b) { return a == b || withoutBlanks(a) == withoutBlanks(b); }

FoundRow findRow(model::Datasheet const& sheet, Entry const& entry) {
    std::vector<std::size_t> worded;  // all texts agree
    std::vector<std::size_t> placed;  // at the box, with the most texts that agree
    std::size_t most = 0;
    for (std::size_t i = 0; i < sheet.parameters.size(); ++i) {
        auto const& parameter = sheet.parameters[i];
        if (parameter.page != entry.page) continue;
        auto const count = countAgreeing(parameter, entry);
        if (!entry.row.empty() && count == entry.row.size()) worded.push_back(i);
        if (!entry.box || !standsAt(parameter, *entry.box)) continue;
        if (count > most) placed.clear();
        most = std::max(most, count);
        if (count == most) placed.push_back(i);
    }
    if (worded.size() == 1 || !entry.box) return onlyOne(worded);
    return onlyOne(placed);
}

FoundRow findAdded(model::Datasheet const& sheet, Entry const& entry) {
    for (std::size_t i = 0; i < sheet.parameters.size(); ++i) {
        auto const& parameter = sheet.parameters[i];
        bool const same = parameter.page == entry.page &&
                          std::all_of(entry.texts.begin(), entry.texts.end(), [&](auto const& text) { return sameText(textOf(parameter, text.field), text.text); });
        if (same) return {Found::One, i};
    }
    return {Found::None, 0};
}

}  // namespace standin::corrections

// A column belongs to a symbol by the symbol in its title, else by what the vocabulary says
// that its title names. The cells of the row are then read again with the symbol's value.
// Tested by tests/src/compare/ordered_version_test.cpp.
#include "compare/ordered_version.h"

#include <algorithm>
#include <array>
#include <map>
#include <optional>
#include <set>
#include <string_view>
#include <utility>

#include <fmt/format.h>

#include "compare/variant_choice.h"
#include "compare/variant_words.h"
#include "compare/wording_phrases.h"
#include "quantity/cell.h"
#include "quantity/condition.h"
#include "quantity/unit.h"
#include "text/fold.h"
#include "text/utf8.h"

namespace standin::compare {

namespace {

using model::OrderingLine;
using model::Parameter;
using quantity::Decimal;

using Lines = std::vector<OrderingLine const*>;

Lines linesFor(model::Datasheet const& sheet, std::string const& variant) {
    Lines lines;
    std::string const wanted = codeKey(variant);
    for (auto const& line : sheet.ordering) {
        if (variant.empty() || codeKey(line.code) == wanted) lines.push_back(&line);
    }
    if (!lines.empty()) return lines;
    for (auto const& line : sheet.ordering) {
        if (!line.code.empty() && !isOtherVariant(line.code, variant)) lines.push_back(&line);
    }
    return lines;
}

// "VCU" of "VCU-0.025" and of "tCU×0.8"; no supply and no pin.
bool refersToRow(Parameter const& row) {
    if (!row.interval || row.interval->relativeTo.empty() || row.kind == model::ParameterKind::Rating) return false;
    return row.interval->relativeTo.find(',') == std::string::npos && !isCommonPinName(text::asciiLower(row.interval->relativeTo));
}

std::set<std::string> symbolsReferredTo(model::Datasheet const& sheet) {
    std::set<std::string> symbols;
    for (auto const& row : sheet.parameters) {
        if (refersToRow(row)) symbols.insert(row.interval->relativeTo);
    }
    return symbols;
}

bool namesSymbol(std::string_view title, std::string_view symbol) {
    std::string const wanted = quantity::symbolKey(symbol);
    for (std::size_t at = 0; at < title.size();) {
        std::size_t const end = std::min(title.find_first_of(" ,;:/[]()", at), title.size());
        if (end > at && quantity::symbolKey(title.substr(at, end - at)) == wanted) return true;
        at = end + 1;
    }
    return false;
}

// "… [V]", "… (ms)": the unit of a column.
std::string unitIn(std::string_view title) {
    for (auto const& [open, close] : {std::pair{'[', ']'}, std::pair{'(', ')'}}) {
        std::size_t const begin = title.rfind(open);
        std::size_t const end = title.rfind(close);
        if (begin == std::string_view::npos || end == std::string_view::npos || end < begin) continue;
        std::string_view const unit = title.substr(begin + 1, end - begin - 1);
        if (quantity::parseUnit(unit)) return std::string(unit);
    }
    return {};
}

class Columns {
public:
    Columns(model::Datasheet const& sheet, vocabulary::Vocabulary const& vocabulary) : m_sheet(sheet), m_vocabulary(vocabulary) {}

    // What the line states for the symbol; none where it does not, or in two columns.
    std::optional<Decimal> valueOf(OrderingLine const& line, std::string const& symbol) {
        Owner const& owner = ownerOf(symbol);
        std::optional<Decimal> found;
        for (auto const& [title, cell] : line.attributes) {
            if (!belongs(title, symbol, owner)) continue;
            auto const value = quantity::parseValue(cell, {.unit = unitIn(title), .expected = owner.unit});
            if (!value.typ || !value.relativeTo.empty() || value.unitConflict) continue;
            if (found && *found != *value.typ) return std::nullopt;
            found = value.typ;
        }
        return found;
    }

private:
    // The row that has the symbol as its own.
    struct Owner {
        std::string canonical;
        std::string unit;  // coherent
    };

    Owner const& ownerOf(std::string const& symbol) {
        auto const [entry, isNew] = m_owners.try_emplace(symbol);
        if (!isNew) return entry->second;
        for (auto const& row : m_sheet.parameters) {
            if (row.canonical.empty() || quantity::symbolKey(row.symbol) != quantity::symbolKey(symbol)) continue;
            auto const* known = m_vocabulary.find(row.canonical);
            entry->second = {row.canonical, known == nullptr ? std::string() : known->unit};
            break;
        }
        return entry->second;
    }

    bool belongs(std::string const& title, std::string const& symbol, Owner const& owner) {
        auto const [entry, isNew] = m_belongs.try_emplace({title, symbol}, false);
        if (isNew) {
            entry->second = namesSymbol(title, symbol);
            if (!entry->second && !owner.canonical.empty()) {
                vocabulary::Query query;
                query.name = title;
                query.unit = owner.unit;
                query.kind = model::ParameterKind::Characteristic;
                auto const match = m_vocabulary.match(query);
                entry->second = match && match->id == owner.canonical;
            }
        }
        return entry->second;
    }

    model::Datasheet const& m_sheet;
    vocabulary::Vocabulary const& m_vocabulary;
    std::map<std::string, Owner> m_owners;
    std::map<std::pair<std::string, std::string>, bool> m_belongs;
};

// What all the lines state alike.
std::optional<Decimal> agreedValue(Lines const& lines, std::string const& symbol, Columns& columns) {
    std::optional<Decimal> agreed;
    for (auto const* line : lines) {
        auto const value = columns.valueOf(*line, symbol);
        if (!value || (agreed && *agreed != *value)) return std::nullopt;
        agreed = value;
    }
    return agreed;
}

std::string textOf(std::optional<model::Value> const& value) { return value ? value->text : std::string(); }

// `shown`: "VCU = 4.28 V by the line of QX7-A".
bool readAgain(Parameter& row, Decimal value, std::string_view unit, std::string const& shown) {
    std::vector<std::pair<std::string_view, Decimal>> const known = {{row.interval->relativeTo, value}};
    auto const texts = std::array{textOf(row.min), textOf(row.typ), textOf(row.max)};
    auto cell = quantity::parseCell({.min = texts[0], .typ = texts[1], .max = texts[2], .unit = row.unit, .expected = unit, .known = known});
    if (!cell.interval || !cell.interval->relativeTo.empty() || !cell.interval->factor.empty() || cell.unitConflict) return false;
    if (cell.interval->unit.empty()) cell.interval->unit = std::string(unit);
    row.interval = std::move(cell.interval);
    for (auto const& [printed, number] : {std::pair{&row.min, &cell.minValue}, std::pair{&row.typ, &cell.typValue}, std::pair{&row.max, &cell.maxValue}}) {
        if (*printed) (*printed)->value = *number;
    }
    if (!row.printed.empty()) row.printed += fmt::format(" ({})", shown);
    row.notes.push_back(shown);
    return true;
}

bool takeValues(model::Datasheet& sheet, Lines const& lines, vocabulary::Vocabulary const& vocabulary) {
    Columns columns(sheet, vocabulary);
    std::map<std::string, Decimal> values;
    for (auto const& symbol : symbolsReferredTo(sheet)) {
        if (auto const value = agreedValue(lines, symbol, columns)) values.emplace(symbol, *value);
    }
    bool any = false;
    for (auto& row : sheet.parameters) {
        auto const value = refersToRow(row) ? values.find(row.interval->relativeTo) : values.end();
        if (value == values.end()) continue;
        auto const* entry = row.canonical.empty() ? nullptr : vocabulary.find(row.canonical);
        std::string const unit = entry != nullptr ? entry->unit : row.interval->unit;
        std::string const shown = fmt::format("{} = {}{}{}", value->first, value->second.toShortString(), unit.empty() ? "" : " " + unit,
                                              lines.size() == 1 && !lines.front()->code.empty() ? ", " + lines.front()->code : std::string());
        any = readAgain(row, value->second, unit, shown) || any;
    }
    return any;
}

// The modes that the lines give, by feature: each state once.
std::map<std::string, std::set<std::string>> statesOf(Lines const& lines, vocabulary::Vocabulary const& vocabulary) {
    std::map<std::string, std::set<std::string>> states;
    for (auto const* line : lines) {
        for (auto const& [title, cell] : line->attributes) {
            if (auto const stated = vocabulary.statement(title, cell)) states[stated->feature].insert(stated->state);
        }
    }
    return states;
}

bool takeModes(model::Datasheet& sheet, Lines const& chosen, vocabulary::Vocabulary const& vocabulary) {
    auto const before = sheet.features;
    std::erase_if(sheet.features, [&sheet](model::Feature const& feature) { return isOfOrderingLine(feature, sheet); });
    for (auto const* line : chosen) {
        for (auto const& [title, cell] : line->attributes) {
            auto const stated = vocabulary.statement(title, cell);
            if (!stated) continue;
            model::Feature feature{.canonical = stated->feature, .state = stated->state, .page = line->page, .box = line->box, .text = title + ": " + cell};
            if (std::find(sheet.features.begin(), sheet.features.end(), feature) == sheet.features.end()) sheet.features.push_back(std::move(feature));
        }
    }
    return sheet.features != before;
}

}  // namespace

model::OrderingLine const* lineOfVersion(model::Datasheet const& sheet, std::string const& variant) {
    if (variant.empty()) return nullptr;
    auto const lines = linesFor(sheet, variant);
    return lines.size() == 1 ? lines.front() : nullptr;
}

bool isOfOrderingLine(model::Feature const& feature, model::Datasheet const& sheet) {
    return std::any_of(sheet.ordering.begin(), sheet.ordering.end(), [&](OrderingLine const& line) { return feature.page == line.page && feature.box == line.box; });
}

bool refersToVersions(model::Datasheet const& sheet, std::string const& variant) {
    return !sheet.ordering.empty() && (!variant.empty() || std::any_of(sheet.parameters.begin(), sheet.parameters.end(), refersToRow));
}

bool takeOrderedVersion(model::Datasheet& sheet, std::string const& variant, vocabulary::Vocabulary const& vocabulary) {
    if (!refersToVersions(sheet, variant)) return false;
    auto const lines = linesFor(sheet, variant);
    if (lines.empty()) return false;
    bool const values = takeValues(sheet, lines, vocabulary);
    bool const modes = !variant.empty() && takeModes(sheet, lines, vocabulary);
    return values || modes;
}

std::vector<std::string> undecidedVersions(model::Datasheet const& sheet, vocabulary::Vocabulary const& vocabulary) {
    auto const lines = linesFor(sheet, {});
    if (lines.size() < 2) return {};
    bool undecided = false;
    for (auto const& [feature, states] : statesOf(lines, vocabulary)) undecided = undecided || states.size() > 1;
    Columns columns(sheet, vocabulary);
    for (auto const& symbol : symbolsReferredTo(sheet)) {
        if (undecided) break;
        bool const stated = std::any_of(lines.begin(), lines.end(), [&](auto const* line) { return columns.valueOf(*line, symbol).has_value(); });
        undecided = stated && !agreedValue(lines, symbol, columns);
    }
    std::vector<std::string> codes;
    for (auto const* line : lines) {
        if (undecided && !line->code.empty()) codes.push_back(line->code);
    }
    return codes;
}

}  // namespace standin::compare

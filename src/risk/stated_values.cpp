// The temperature of a row is its own where it prints one, else its table's; rows
// without any hold at room temperature.
// Tested by tests/src/risk/stated_values_test.cpp.
#include "risk/stated_values.h"

#include <algorithm>
#include <optional>
#include <set>

#include <fmt/format.h>

#include "compare/ordered_version.h"
#include "compare/variant_choice.h"
#include "model/recognised.h"
#include "quantity/condition.h"
#include "text/fold.h"

namespace standin::risk {

namespace {

using model::Parameter;
using quantity::Decimal;
using quantity::Limits;

// Room temperature, and what is meant by it.
Decimal const kRoomLow = 20;
Decimal const kRoomHigh = 27;

struct Temperature {
    std::optional<Decimal> lo, hi;
    [[nodiscard]] bool range() const { return lo && hi && *lo < *hi; }
    [[nodiscard]] bool room() const { return !lo || !hi || (*lo <= kRoomHigh && *hi >= kRoomLow); }
    [[nodiscard]] Decimal width() const { return range() ? *hi - *lo : Decimal(0); }
};

std::optional<Decimal> decimal(std::optional<std::string> const& text) { return text ? Decimal::parse(*text) : std::nullopt; }

std::optional<Temperature> temperatureIn(std::string const& condition) {
    if (condition.find('C') == std::string::npos && condition.find("\u2103") == std::string::npos) return std::nullopt;
    for (auto const& part : quantity::parseCondition(condition)) {
        if (!part.understood || part.interval.unit != "degC") continue;
        Temperature found{decimal(part.interval.lo), decimal(part.interval.hi)};
        if (auto const point = decimal(part.interval.typ); point && !found.lo && !found.hi) found = {point, point};
        return found;
    }
    return std::nullopt;
}

Temperature temperatureOf(Parameter const& row) {
    if (auto const own = temperatureIn(row.condition)) return *own;
    return temperatureIn(row.tableCondition).value_or(Temperature{});
}

Limits limitsOf(Parameter const& row) {
    if (!row.interval) return {};
    return {.lo = decimal(row.interval->lo), .typ = decimal(row.interval->typ), .hi = decimal(row.interval->hi)};
}

bool absolute(Parameter const& row) { return row.interval && row.interval->relativeTo.empty() && row.interval->factor.empty(); }

constexpr int kWidestTolerance = 2;  // as a ratio of the bounds

// What resistors on the board set within a range ("1.2 V to 37 V") has no tolerance in
// the sheet: nothing is worked out with the range.
bool isRangeOfSettings(Limits const& limits) {
    return !limits.typ && limits.lo && limits.hi && limits.lo->sign() > 0 && *limits.hi >= *limits.lo * Decimal(kWidestTolerance);
}

template <class Row, class Keep>
void keepOnly(std::vector<Row>& rows, Keep keep) {
    if (std::any_of(rows.begin(), rows.end(), keep)) std::erase_if(rows, [&](Row const& row) { return !keep(row); });
}

}  // namespace

std::string printedValues(Parameter const& row) {
    auto const one = [](std::optional<model::Value> const& value) { return value ? value->text : std::string("–"); };
    std::string text = fmt::format("{} / {} / {}", one(row.min), one(row.typ), one(row.max));
    return row.unit.empty() ? text : text + " " + row.unit;
}

StatedValues::StatedValues(model::Datasheet const& sheet, std::string_view variant, vocabulary::Vocabulary const& vocabulary) : m_sheet(sheet), m_vocabulary(vocabulary) {
    m_chosen = !variant.empty();
    for (auto const& row : sheet.parameters) {
        if (row.canonical.empty()) continue;
        if (compare::isOtherVariant(row.variant, variant)) continue;
        m_rows[row.canonical].push_back(&row);
    }
}

std::vector<Parameter const*> const& StatedValues::rows(std::string_view canonical) const {
    static std::vector<Parameter const*> const kNone;
    auto const found = m_rows.find(canonical);
    return found == m_rows.end() ? kNone : found->second;
}

model::Feature const* StatedValues::feature(std::string_view canonical, std::string_view worst) const {
    model::Feature const* first = nullptr;
    for (auto const& feature : m_sheet.features) {
        if (feature.canonical != canonical || feature.state == "unstated") continue;
        if (feature.state == worst) return &feature;
        if (first == nullptr) first = &feature;
    }
    return first;
}

bool StatedValues::differsByVersion(std::string_view canonical) const {
    std::set<std::string_view> states;
    for (auto const& feature : m_sheet.features) {
        if (feature.canonical == canonical && compare::isOfOrderingLine(feature, m_sheet)) states.insert(feature.state);
    }
    return states.size() > 1;
}

bool StatedValues::isRecognised(model::Input const& input) const { return input.page > 0 && model::isRecognised(m_sheet.coverage, input.page, input.box); }

bool StatedValues::hasOverTemperature(std::string_view canonical) const {
    auto const& all = rows(canonical);
    std::set<std::pair<std::string_view, std::string_view>> asked;  // many rows share their conditions
    return std::any_of(all.begin(), all.end(), [&asked](auto const* row) {
        bool const asks = absolute(*row) && limitsOf(*row).limited() && asked.emplace(row->condition, row->tableCondition).second;
        return asks && temperatureOf(*row).range();
    });
}

StatedValue StatedValues::find(std::string_view canonical, Scope scope) const {
    StatedValue made;
    auto const& all = rows(canonical);
    if (all.empty()) {
        made.why = "not stated";
        return made;
    }
    std::set<std::string_view> variants;
    for (auto const* row : all) {
        if (!row->variant.empty()) variants.insert(row->variant);
    }
    if (variants.size() > 1 && !m_chosen) {
        made.why = "stated for several versions, none of which was selected";
        return made;
    }
    struct Row {
        Parameter const* row;
        Limits limits;
        Temperature temperature;
    };
    std::vector<Row> taken;
    for (auto const* row : all) {
        if (absolute(*row) && !limitsOf(*row).empty()) taken.push_back({row, limitsOf(*row), temperatureOf(*row)});
    }
    if (taken.empty()) {
        auto const relative = std::find_if(all.begin(), all.end(), [](auto const* row) { return row->interval && !absolute(*row); });
        made.why = relative == all.end() ? "printed without a number that could be used" : fmt::format("stated relative to {} only", (*relative)->interval->relativeTo);
        return made;
    }
    auto const* entry = m_vocabulary.find(canonical);
    if (entry != nullptr && entry->setByCircuit) std::erase_if(taken, [](Row const& row) { return isRangeOfSettings(row.limits); });
    if (taken.empty()) {
        made.why = "stated as a range that the circuit sets";
        return made;
    }
    keepOnly(taken, [](Row const& row) { return row.limits.limited(); });
    std::string const unit = taken.front().row->interval->unit;
    std::erase_if(taken, [&](Row const& row) { return row.row->interval->unit != unit; });
    if (scope == Scope::OverTemperature) {
        Decimal widest = 0;
        for (auto const& row : taken) widest = std::max(widest, row.temperature.width());
        keepOnly(taken, [&](Row const& row) { return row.temperature.width() == widest; });
        made.overTemperature = widest > Decimal(0);
    } else {
        keepOnly(taken, [](Row const& row) { return !row.temperature.range() && row.temperature.room(); });
        keepOnly(taken, [](Row const& row) { return row.temperature.room(); });
    }
    made.unit = unit;
    if (auto const known = quantity::dimensionOf(unit)) {
        made.dimension = known->dimension;
    } else {
        made.why = fmt::format("stated in {}, which cannot be computed with", unit.empty() ? "no unit" : unit);
        return made;
    }
    if (!variants.empty() && !m_chosen) made.version = *variants.begin();
    made.ofSeveralParts = std::any_of(taken.begin(), taken.end(), [&](Row const& row) {
        Parameter const& first = *taken.front().row;
        return row.row->table != first.table && !first.table.empty() && !row.row->table.empty() && row.limits != taken.front().limits &&
               text::foldKey(row.row->condition + row.row->tableCondition) == text::foldKey(first.condition + first.tableCondition);
    });
    made.limits = taken.front().limits;
    for (auto const& row : taken) {
        if (&row != &taken.front() && row.limits == taken.front().limits) continue;  // printed twice
        made.limits = made.rows == 0 ? row.limits : quantity::enclosing(made.limits, row.limits);
        ++made.rows;
        made.inputs.push_back({.name = std::string(canonical), .parameter = row.row->id, .page = row.row->page, .box = row.row->box, .text = printedValues(*row.row)});
    }
    return made;
}

}  // namespace standin::risk

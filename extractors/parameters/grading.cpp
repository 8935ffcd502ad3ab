#include "extractors/parameters/grading.h"

// Confidence multiplies the table's own by a factor for each thing that often
// goes with a misreading. Tested by tests/extractors/parameters/grading_test.cpp.

#include <algorithm>
#include <array>
#include <charconv>
#include <optional>

#include "extractors/parameters/shapes.h"
#include "extractors/parameters/text_forms.h"
#include "quantity/cell.h"

namespace standin::parameters {

namespace {

// Temperatures named in a text, as numbers in front of "°C".
std::vector<std::string> temperaturesIn(std::string const& text) {
    std::vector<std::string> out;
    for (std::size_t at = text.find("°C"); at != std::string::npos; at = text.find("°C", at + 1)) {
        std::size_t end = at;
        while (end > 0 && text[end - 1] == ' ') --end;
        std::size_t start = end;
        while (start > 0 && ((text[start - 1] >= '0' && text[start - 1] <= '9') || text[start - 1] == '.' || text[start - 1] == '-' || text[start - 1] == '+')) --start;
        if (start < end) out.push_back(text.substr(start, end - start));
    }
    return out;
}

bool only25(std::string const& text) {
    std::vector<std::string> const temperatures = temperaturesIn(text);
    return !temperatures.empty() && std::ranges::all_of(temperatures, [](std::string const& t) { return t == "25" || t == "+25"; });
}

std::optional<double> numberOf(std::optional<model::Value> const& value) {
    if (!value) return std::nullopt;
    std::string_view text = value->text;
    if (text.starts_with("+")) text.remove_prefix(1);
    double out = 0;
    auto const result = std::from_chars(text.data(), text.data() + text.size(), out);
    if (result.ec != std::errc{} || result.ptr != text.data() + text.size()) return std::nullopt;
    return out;
}

// A letter symbol by its first letter that isSymbolLike() does not know: "tdis",
// "fosc", "Istby". A word of ordinary language rarely stands in a symbol column.
bool mayBeSymbol(std::string const& symbol) {
    constexpr std::size_t kLongest = 8;
    return symbol.size() >= 2 && symbol.size() <= kLongest && std::string_view("tfVIRCTPQG").find(symbol.front()) != std::string_view::npos &&
           std::ranges::all_of(symbol, [](char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9'); });
}

}  // namespace

bool headedNominal(ColumnPlan const& plan) {
    return std::ranges::any_of(plan.groups, [&](ValueGroup const& group) {
        if (group.typ < 0 || static_cast<std::size_t>(group.typ) >= plan.titles.size()) return false;
        std::string const title = folded(plan.titles[static_cast<std::size_t>(group.typ)]);
        constexpr std::array kNominal = {"nom", "标称", "標稱", "公称", "ном"};
        return std::ranges::any_of(kNominal, [&](std::string_view word) { return title.starts_with(word); });
    });
}

void fillInterval(model::Parameter& parameter) {
    auto text = [](std::optional<model::Value> const& value) { return value ? std::string_view(value->text) : std::string_view{}; };
    bool capitals = parameter.unit.size() >= 2;
    for (char c : parameter.unit) capitals = capitals && c >= 'A' && c <= 'Z';
    quantity::ParsedCell const parsed = quantity::parseCell(
        {.min = text(parameter.min), .typ = text(parameter.typ), .max = text(parameter.max), .unit = parameter.unit, .expected = {}, .allCapitals = capitals});
    parameter.interval = parsed.interval;
    if (parameter.min) parameter.min->value = parsed.minValue;
    if (parameter.typ) parameter.typ->value = parsed.typValue;
    if (parameter.max) parameter.max->value = parsed.maxValue;
}

bool ByDesign::isSaidIn(std::string const& text) {
    if (text.empty()) return false;
    auto const [known, fresh] = m_known.try_emplace(text, false);
    if (!fresh) return known->second;
    constexpr std::array kByDesign = {"by design", "by characteri", "not production tested", "not tested in production", "not 100% tested", "by correlation", "by statistical",
                                      "设计保证", "设计值", "設計保証", "不做量产测试", "konstruktionsbedingt", "durch design", "не тестируется"};
    std::string const said = folded(text);
    known->second = std::ranges::any_of(kByDesign, [&](std::string_view words) { return contains(said, words); });
    return known->second;
}

model::Grade gradeOf(model::Parameter const& parameter, bool nominal, ByDesign& byDesign) {
    if (parameter.kind == model::ParameterKind::Rating) return model::Grade::A;
    auto const saidByDesign = [&](std::string const& text) { return byDesign.isSaidIn(text); };
    if (saidByDesign(parameter.condition) || saidByDesign(parameter.tableCondition) || std::ranges::any_of(parameter.notes, saidByDesign)) return model::Grade::GD;
    if (parameter.typ && !parameter.min && !parameter.max) {
        bool const tolerance = parameter.typ->text.find("±") != std::string::npos;
        if (!tolerance) return nominal ? model::Grade::N : model::Grade::T;
    }
    std::string const own = parameter.condition;
    if (!temperaturesIn(own).empty()) return only25(own) ? model::Grade::G25 : model::Grade::G;
    return only25(parameter.tableCondition) ? model::Grade::G25 : model::Grade::G;
}

model::Grade gradeOf(model::Parameter const& parameter, bool nominal) {
    ByDesign byDesign;
    return gradeOf(parameter, nominal, byDesign);
}

model::Confidence confidenceOf(model::Parameter const& parameter, PrintedRow const& row, ColumnPlan const& plan, model::Table const& table) {
    model::Confidence out;
    out.score = 0.99;
    auto lower = [&](double factor, std::string reason) {
        out.score *= factor;
        if (std::ranges::find(out.reasons, reason) == out.reasons.end()) out.reasons.push_back(std::move(reason));
    };
    if (table.confidence > 0) {
        if (table.confidence < 0.5) {
            lower(0.6, "the grid of the table is uncertain");
        } else if (table.confidence < 0.6) {
            lower(0.88, "the grid of the table is not quite certain");
        }
    }
    if (!plan.headed) lower(0.7, "no column titles");
    if (plan.carried) lower(0.97, "column titles from the page before");
    if (plan.transposed) lower(0.85, "columns are parameters");
    for (std::string const& doubt : row.doubts) lower(0.85, doubt);
    if (row.words) lower(0.88, "words in a value column");
    if (!parameter.symbol.empty() && !isSymbolLike(parameter.symbol) && !mayBeSymbol(parameter.symbol)) lower(0.85, "the symbol does not read as one");
    if (parameter.symbol.empty() && plan.has(ColumnRole::Symbol)) lower(0.95, "no symbol printed");
    if (parameter.unit.empty() && !row.words) lower(0.85, "no unit");
    if (!parameter.unit.empty() && !isUnitLike(parameter.unit)) lower(0.8, "the unit is not known");
    if (parameter.name.empty() && parameter.symbol.empty()) lower(0.5, "no name and no symbol");
    std::optional<double> const min = numberOf(parameter.min);
    std::optional<double> const typ = numberOf(parameter.typ);
    std::optional<double> const max = numberOf(parameter.max);
    bool const negative = max && *max < 0;
    if (min && max && *min > *max && !negative) lower(0.7, "minimum above maximum");
    bool const outside = (min && typ && *typ < *min) || (typ && max && *typ > *max);
    // Where only one limit is printed it may be a demand on the user: a pulse that
    // the part needs is typically shorter than the least that must be given.
    if (outside && !negative) lower(min && max ? 0.85 : 0.93, "typical value outside of the limits");
    if (!table.evidence.ruledRows && !table.evidence.ruledColumns) lower(0.95, "no ruling lines");
    return out;
}

void doubtRowsWithDrawnSigns(std::span<model::Parameter> parameters, std::span<model::PlacedText const> signs, std::span<model::Table const> tables) {
    constexpr double kScore = 0.5;
    constexpr model::Points kMargin = 2;  // a sign may reach beyond the box of the words
    for (auto& parameter : parameters) {
        model::Rect row = parameter.box;
        auto const table = std::ranges::find(tables, parameter.table, &model::Table::id);
        if (table != tables.end() && !parameter.table.empty()) {
            row.x0 = std::min(row.x0, table->box.x0);
            row.x1 = std::max(row.x1, table->box.x1);
        }
        bool const within = std::ranges::any_of(signs, [&](model::PlacedText const& sign) {
            if (sign.page != parameter.page || sign.box == model::Rect{}) return false;
            auto const reach = parameter.unit.empty() ? std::max(kMargin, row.height()) : kMargin;
            return model::Rect{row.x0 - kMargin, row.y0 - reach, row.x1 + kMargin, row.y1 + reach}.contains(sign.box.centre());
        });
        if (!within) continue;
        parameter.confidence.score = std::min(parameter.confidence.score, kScore);
        parameter.confidence.reasons.emplace_back("a sign in the row is a drawing and was not read");
    }
}

}  // namespace standin::parameters

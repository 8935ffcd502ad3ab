// Tested by tests/src/report/csv_report_test.cpp.
#include "report/csv_report.h"

#include <initializer_list>
#include <string_view>

#include <fmt/format.h>

#include "model/names.h"
#include "report/finding_view.h"
#include "text/visible.h"

namespace standin::report {

using namespace model;

namespace {

// A leading = + - @ (or a tab) makes a spreadsheet compute. Plain numbers may
// keep their sign; everything else gets an apostrophe in front.
bool startsFormula(std::string_view cell) {
    if (cell.empty()) return false;
    char const c = cell.front();
    if (c == '=' || c == '@') return true;
    if (c != '+' && c != '-') return false;
    return cell.size() == 1 || cell.substr(1).find_first_not_of("0123456789.") != std::string_view::npos;
}

std::string quoted(std::string_view foreign) {
    auto text = text::visible(foreign);
    if (startsFormula(text)) text.insert(0, 1, '\'');
    if (text.find_first_of(",\"") == std::string::npos) return text;
    std::string cell = "\"";
    for (char const c : text) {
        cell += c;
        if (c == '"') cell += '"';
    }
    return cell + "\"";
}

void appendLine(std::string& out, std::initializer_list<std::string_view> cells) {
    bool first = true;
    for (auto const cell : cells) {
        if (!first) out += ',';
        out += quoted(cell);
        first = false;
    }
    out += "\r\n";
}

std::string textOf(std::optional<Value> const& value) { return value ? value->text : std::string{}; }
// In a picture, some of the row at least.
std::string_view recognisedOf(Parameter const& parameter) { return parameter.recognised ? "yes" : ""; }
std::string pageOf(Parameter const* parameter) { return parameter != nullptr ? fmt::format("{}", parameter->page) : std::string{}; }

}  // namespace

std::string pairsCsv(Comparison const& comparison, Datasheet const& reference, Datasheet const& candidate) {
    auto const ofReference = parametersById(reference);
    auto const ofCandidate = parametersById(candidate);
    std::string out;
    appendLine(out,
               {"parameter",         "relation",      "judgement",     "confidence",     "reference name", "reference symbol", "reference condition",  "reference variant",
                "reference min",     "reference typ", "reference max", "reference unit", "reference page", "candidate name",   "candidate symbol",     "candidate condition",
                "candidate variant", "candidate min", "candidate typ", "candidate max",  "candidate unit", "candidate page",   "reference recognised", "candidate recognised"});
    static Parameter const blank;
    for (auto const& pair : comparison.pairs) {
        auto const find = [](auto const& byId, std::string const& id) {
            auto const found = byId.find(id);
            return found == byId.end() ? nullptr : found->second;
        };
        auto const* r = find(ofReference, pair.reference);
        auto const* c = find(ofCandidate, pair.candidate);
        auto const& rp = r != nullptr ? *r : blank;
        auto const& cp = c != nullptr ? *c : blank;
        appendLine(out, {pair.canonical,
                         nameOf(pair.relation),
                         nameOf(pair.judgement),
                         fmt::format("{:.2f}", pair.confidence),
                         rp.name,
                         rp.symbol,
                         conditionOf(rp),
                         rp.variant,
                         textOf(rp.min),
                         textOf(rp.typ),
                         textOf(rp.max),
                         rp.unit,
                         pageOf(r),
                         cp.name,
                         cp.symbol,
                         conditionOf(cp),
                         cp.variant,
                         textOf(cp.min),
                         textOf(cp.typ),
                         textOf(cp.max),
                         cp.unit,
                         pageOf(c),
                         recognisedOf(rp),
                         recognisedOf(cp)});
    }
    return out;
}

std::string parametersCsv(Datasheet const& datasheet) {
    std::string out;
    appendLine(out,
               {"id", "page", "kind", "parameter", "name", "symbol", "condition", "table condition", "variant", "min", "typ", "max", "unit", "grade", "confidence", "recognised"});
    for (auto const& p : datasheet.parameters) {
        appendLine(out, {p.id, fmt::format("{}", p.page), nameOf(p.kind), p.canonical, p.name, p.symbol, p.condition, p.tableCondition, p.variant, textOf(p.min), textOf(p.typ),
                         textOf(p.max), p.unit, nameOf(p.grade), fmt::format("{:.2f}", p.confidence.score), recognisedOf(p)});
    }
    return out;
}

}  // namespace standin::report

// Field by field, in the order of the schema. Tested by
// tests/src/model/comparison_json_test.cpp.
#include "model/comparison_json.h"

#include "model/json_parts.h"

namespace standin::model {

using namespace json_parts;

namespace {

constexpr char const* kSchema = "standin.comparison/1";

Json sideJson(std::optional<Side> const& side) {
    if (!side) return nullptr;
    return {{"page", side->page},           {"box", boxJson(side->box)},    {"text", side->text},
            {"min", textOrNull(side->min)}, {"typ", textOrNull(side->typ)}, {"max", textOrNull(side->max)},
            {"unit", textOrNull(side->unit)}, {"condition", textOrNull(side->condition)}};
}

Json classJson(std::vector<WordingClass> const& classes) { return classes.empty() ? Json(nullptr) : Json(nameOf(classes.front())); }

Json findingJson(Finding const& f) {
    Json classes = Json::array();
    for (auto const c : f.classes) classes.push_back(nameOf(c));
    return {{"id", f.id},
            {"kind", nameOf(f.kind)},
            {"relation", nameOf(f.relation)},
            {"judgement", nameOf(f.judgement)},
            {"class", classJson(f.classes)},
            {"classes", classes},
            {"severity", nameOf(f.severity)},
            {"hazard_side", f.hazardSide == HazardSide::None ? Json(nullptr) : Json(nameOf(f.hazardSide))},
            {"level", f.level},
            {"open", f.open},
            {"canonical", textOrNull(f.canonical)},
            {"section", textOrNull(f.section)},
            {"variant", textOrNull(f.variant)},
            {"title", f.title},
            {"explanation", f.explanation},
            {"caution", textOrNull(f.caution)},
            {"consequence_of", textOrNull(f.consequenceOf)},
            {"affects", f.affects},
            {"reference", sideJson(f.reference)},
            {"candidate", sideJson(f.candidate)}};
}

}  // namespace

std::string toJson(Comparison const& comparison) {
    Json cautions = Json::array();
    for (auto const& c : comparison.cautions) cautions.push_back({{"id", c.id}, {"text", c.text}, {"findings", c.findings}});
    Json findings = Json::array();
    for (auto const& f : comparison.findings) findings.push_back(findingJson(f));
    Json pairs = Json::array();
    for (auto const& p : comparison.pairs) {
        pairs.push_back({{"canonical", textOrNull(p.canonical)},
                         {"reference", textOrNull(p.reference)},
                         {"candidate", textOrNull(p.candidate)},
                         {"relation", nameOf(p.relation)},
                         {"judgement", nameOf(p.judgement)},
                         {"confidence", p.confidence}});
    }
    Json sections = Json::array();
    for (auto const& s : comparison.sections) {
        sections.push_back({{"reference", textOrNull(s.reference)}, {"candidate", textOrNull(s.candidate)}, {"similarity", s.similarity}, {"findings", s.findings}});
    }
    auto const& v = comparison.verdict;
    return dumped({{"schema", kSchema},
                   {"reference", documentJson(comparison.reference)},
                   {"candidate", documentJson(comparison.candidate)},
                   {"verdict",
                    {{"level", nameOf(v.level)},
                     {"incomplete", v.incomplete},
                     {"incomplete_reasons", v.incompleteReasons},
                     {"sentence", v.sentence},
                     {"reasons", v.reasons}}},
                   {"cautions", cautions},
                   {"statements", comparison.statements},
                   {"findings", findings},
                   {"pairs", pairs},
                   {"sections", sections},
                   {"derived", Json::array()},
                   {"cell", Json::array()},
                   {"coverage",
                    {{"reference", coverageJson(comparison.coverage.reference)},
                     {"candidate", coverageJson(comparison.coverage.candidate)},
                     {"compared", comparison.coverage.compared},
                     {"listed", comparison.coverage.listed},
                     {"unaccounted", comparison.coverage.unaccounted}}}});
}

}  // namespace standin::model

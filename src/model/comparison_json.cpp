// Field by field, in the order of the schema. Tested by
// tests/src/model/comparison_json_test.cpp.
#include "model/comparison_json.h"

#include "model/derived_json.h"
#include "model/in_halves.h"
#include "model/json_parts.h"

namespace standin::model {

using namespace json_parts;

namespace {

constexpr char const* kSchema = "standin.comparison/1";

Json sideJson(std::optional<Side> const& side) {
    if (!side) return nullptr;
    return Members()
        .add("page", side->page)
        .add("box", boxJson(side->box))
        .add("text", side->text)
        .add("min", textOrNull(side->min))
        .add("typ", textOrNull(side->typ))
        .add("max", textOrNull(side->max))
        .add("unit", textOrNull(side->unit))
        .add("condition", textOrNull(side->condition))
        .take();
}

Json classJson(std::vector<WordingClass> const& classes) { return classes.empty() ? Json(nullptr) : Json(nameOf(classes.front())); }

Json findingJson(Finding const& f) {
    Json classes = Json::array();
    for (auto const c : f.classes) classes.push_back(nameOf(c));
    Members members;
    members.add("id", f.id)
        .add("kind", nameOf(f.kind))
        .add("relation", nameOf(f.relation))
        .add("judgement", nameOf(f.judgement))
        .add("class", classJson(f.classes))
        .add("classes", classes)
        .add("severity", nameOf(f.severity))
        .add("hazard_side", f.hazardSide == HazardSide::None ? Json(nullptr) : Json(nameOf(f.hazardSide)))
        .add("level", f.level)
        .add("open", f.open)
        .add("canonical", textOrNull(f.canonical))
        .add("section", textOrNull(f.section))
        .add("variant", textOrNull(f.variant))
        .add("title", f.title)
        .add("explanation", f.explanation)
        .add("caution", textOrNull(f.caution))
        .add("consequence_of", textOrNull(f.consequenceOf))
        .add("affects", f.affects)
        .add("reference", sideJson(f.reference))
        .add("candidate", sideJson(f.candidate));
    // Left out where there are none: records of earlier versions keep their bytes.
    if (!f.regarding.empty()) members.add("regarding", f.regarding);
    return std::move(members).take();
}

Json verdictJson(Verdict const& v) {
    return Members()
        .add("level", nameOf(v.level))
        .add("incomplete", v.incomplete)
        .add("incomplete_reasons", v.incompleteReasons)
        .add("sentence", v.sentence)
        .add("reasons", v.reasons)
        .take();
}

Json comparisonCoverageJson(ComparisonCoverage const& coverage, bool hasReference) {
    return Members()
        .add("reference", hasReference ? coverageJson(coverage.reference) : Json(nullptr))
        .add("candidate", coverageJson(coverage.candidate))
        .add("compared", coverage.compared)
        .add("listed", coverage.listed)
        .add("unaccounted", coverage.unaccounted)
        .take();
}

}  // namespace

std::string toJson(Comparison const& comparison) {
    Json cautions = Json::array();
    for (auto const& c : comparison.cautions) cautions.push_back(Members().add("id", c.id).add("text", c.text).add("findings", c.findings).take());
    Json::array_t findings(comparison.findings.size());
    inHalves(findings.size(), [&](std::size_t first, std::size_t last) {
        for (std::size_t i = first; i < last; ++i) findings[i] = findingJson(comparison.findings[i]);
    });
    Json pairs = Json::array();
    for (auto const& p : comparison.pairs) {
        pairs.push_back(Members()
                            .add("canonical", textOrNull(p.canonical))
                            .add("reference", textOrNull(p.reference))
                            .add("candidate", textOrNull(p.candidate))
                            .add("relation", nameOf(p.relation))
                            .add("judgement", nameOf(p.judgement))
                            .add("confidence", p.confidence)
                            .take());
    }
    Json sections = Json::array();
    for (auto const& s : comparison.sections) {
        sections.push_back(
            Members().add("reference", textOrNull(s.reference)).add("candidate", textOrNull(s.candidate)).add("similarity", s.similarity).add("findings", s.findings).take());
    }
    return dumped(Members()
                      .add("schema", kSchema)
                      .add("reference", comparison.hasReference() ? documentJson(comparison.reference) : Json(nullptr))
                      .add("candidate", documentJson(comparison.candidate))
                      .add("verdict", verdictJson(comparison.verdict))
                      .add("cautions", std::move(cautions))
                      .add("statements", comparison.statements)
                      .add("findings", std::move(findings))
                      .add("pairs", std::move(pairs))
                      .add("sections", std::move(sections))
                      .add("derived", derivedJson(comparison.derived))
                      .add("cell", cellJson(comparison.cell))
                      .add("cell_name", textOrNull(comparison.cellName))
                      .add("circuit_name", textOrNull(comparison.circuitName))
                      .add("coverage", comparisonCoverageJson(comparison.coverage, comparison.hasReference()))
                      .take());
}

}  // namespace standin::model

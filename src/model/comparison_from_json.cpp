// The way back of comparison_json.cpp. Tested by tests/src/model/comparison_from_json_test.cpp.
#include "model/comparison_json.h"
#include "model/derived_json.h"
#include "model/json_parts.h"

namespace standin::model {

using namespace json_parts;

namespace {

constexpr std::string_view kSchema = "standin.comparison/1";

Json const& memberOf(Json const& object, char const* key) {
    static Json const none;
    auto const found = object.find(key);
    return found == object.end() ? none : *found;
}

std::optional<Side> sideOf(Json const& json) {
    if (!json.is_object()) return std::nullopt;
    Side side;
    side.page = intOf(json, "page");
    side.box = boxOf(json);
    side.text = textOf(json, "text");
    side.min = textOf(json, "min");
    side.typ = textOf(json, "typ");
    side.max = textOf(json, "max");
    side.unit = textOf(json, "unit");
    side.condition = textOf(json, "condition");
    side.recognised = boolOf(json, "recognised");
    return side;
}

Finding findingOf(Json const& json) {
    Finding f;
    f.id = textOf(json, "id");
    f.kind = enumOf(json, "kind", FindingKind::Parameter);
    f.relation = enumOf(json, "relation", Relation::NotComparable);
    f.judgement = enumOf(json, "judgement", Judgement::Open);
    for (auto const& name : textsOf(json, "classes")) {
        if (auto const found = fromName<WordingClass>(name)) f.classes.push_back(*found);
    }
    f.severity = enumOf(json, "severity", Severity::Note);
    f.hazardSide = enumOf(json, "hazard_side", HazardSide::None);
    f.level = intOf(json, "level");
    f.open = boolOf(json, "open");
    f.canonical = textOf(json, "canonical");
    f.section = textOf(json, "section");
    f.variant = textOf(json, "variant");
    f.title = textOf(json, "title");
    f.explanation = textOf(json, "explanation");
    f.caution = textOf(json, "caution");
    f.consequenceOf = textOf(json, "consequence_of");
    f.affects = textsOf(json, "affects");
    f.regarding = textsOf(json, "regarding");
    f.reference = sideOf(memberOf(json, "reference"));
    f.candidate = sideOf(memberOf(json, "candidate"));
    return f;
}

Verdict verdictOf(Json const& json) {
    Verdict verdict;
    if (!json.is_object()) return verdict;
    verdict.level = enumOf(json, "level", VerdictLevel::NoDifference);
    verdict.incomplete = boolOf(json, "incomplete");
    verdict.incompleteReasons = textsOf(json, "incomplete_reasons");
    verdict.sentence = textOf(json, "sentence");
    verdict.reasons = textsOf(json, "reasons");
    return verdict;
}

Pair pairOf(Json const& json) {
    return {textOf(json, "canonical"), textOf(json, "reference"), textOf(json, "candidate"), enumOf(json, "relation", Relation::NotComparable), enumOf(json, "judgement", Judgement::Open),
            doubleOf(json, "confidence")};
}

ComparisonCoverage comparisonCoverageOf(Json const& json) {
    ComparisonCoverage coverage;
    if (!json.is_object()) return coverage;
    if (auto const& reference = memberOf(json, "reference"); reference.is_object()) coverage.reference = coverageOf(reference);
    if (auto const& candidate = memberOf(json, "candidate"); candidate.is_object()) coverage.candidate = coverageOf(candidate);
    coverage.compared = intOf(json, "compared");
    coverage.listed = intOf(json, "listed");
    coverage.unaccounted = intOf(json, "unaccounted");
    return coverage;
}

}  // namespace

Result<Comparison> comparisonFromJson(std::string_view text, std::string const& file) {
    auto const json = parsed(text, file);
    if (!json) return tl::unexpected(json.error());
    if (!json->is_object() || textOf(*json, "schema") != kSchema) return tl::unexpected(Error{ErrorKind::Usage, "is no comparison (standin.comparison/1)", file});
    Comparison comparison;
    auto const& reference = memberOf(*json, "reference");
    comparison.kind = reference.is_object() ? ComparisonKind::TwoSheets : ComparisonKind::CandidateAlone;
    if (reference.is_object()) comparison.reference = documentOf(reference);
    if (auto const& candidate = memberOf(*json, "candidate"); candidate.is_object()) comparison.candidate = documentOf(candidate);
    comparison.verdict = verdictOf(memberOf(*json, "verdict"));
    for (auto const& c : arrayOf(*json, "cautions")) comparison.cautions.push_back({textOf(c, "id"), textOf(c, "text"), textsOf(c, "findings")});
    comparison.statements = textsOf(*json, "statements");
    for (auto const& f : arrayOf(*json, "findings")) comparison.findings.push_back(findingOf(f));
    for (auto const& p : arrayOf(*json, "pairs")) comparison.pairs.push_back(pairOf(p));
    for (auto const& s : arrayOf(*json, "sections")) {
        comparison.sections.push_back({textOf(s, "reference"), textOf(s, "candidate"), doubleOf(s, "similarity"), intOf(s, "findings")});
    }
    comparison.derived = derivedOf(arrayOf(*json, "derived"));
    comparison.cell = cellOf(arrayOf(*json, "cell"));
    comparison.cellName = textOf(*json, "cell_name");
    comparison.circuitName = textOf(*json, "circuit_name");
    comparison.coverage = comparisonCoverageOf(memberOf(*json, "coverage"));
    return comparison;
}

}  // namespace standin::model

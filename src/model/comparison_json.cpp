// Field by field, in the order of the schema. Tested by
// tests/src/model/comparison_from_json_test.cpp.
#include "model/comparison_json.h"

#include "model/crew.h"
#include "model/derived_json.h"
#include "model/json_parts.h"
#include "model/json_text.h"

namespace standin::model {

using namespace json_parts;

namespace {

constexpr char const* kSchema = "standin.comparison/1";

void writeSide(JsonText& out, std::optional<Side> const& side) {
    if (!side) {
        out.value(nullptr);
        return;
    }
    out.beginObject()
        .member("page", side->page)
        .member("box", cornersOf(side->box))
        .member("text", side->text)
        .textOrNull("min", side->min)
        .textOrNull("typ", side->typ)
        .textOrNull("max", side->max)
        .textOrNull("unit", side->unit)
        .textOrNull("condition", side->condition);
    if (side->recognised) out.member("recognised", true);
    out.endObject();
}

void writeClasses(JsonText& out, std::vector<WordingClass> const& classes) {
    out.key("class");
    if (classes.empty()) out.value(nullptr);
    else out.value(nameOf(classes.front()));
    out.key("classes").beginArray();
    for (auto const c : classes) out.value(nameOf(c));
    out.endArray();
}

void writeFinding(JsonText& out, Finding const& f) {
    out.beginObject().member("id", f.id).member("kind", nameOf(f.kind)).member("relation", nameOf(f.relation)).member("judgement", nameOf(f.judgement));
    writeClasses(out, f.classes);
    out.member("severity", nameOf(f.severity))
        .textOrNull("hazard_side", f.hazardSide == HazardSide::None ? std::string_view() : nameOf(f.hazardSide))
        .member("level", f.level)
        .member("open", f.open)
        .textOrNull("canonical", f.canonical)
        .textOrNull("section", f.section)
        .textOrNull("variant", f.variant)
        .member("title", f.title)
        .member("explanation", f.explanation)
        .textOrNull("caution", f.caution)
        .textOrNull("consequence_of", f.consequenceOf)
        .member("affects", f.affects);
    writeSide(out.key("reference"), f.reference);
    writeSide(out.key("candidate"), f.candidate);
    // Left out where there are none: records of earlier versions keep their bytes.
    if (!f.regarding.empty()) out.member("regarding", f.regarding);
    out.endObject();
}

void writeFindings(JsonText& out, std::vector<Finding> const& findings) {
    out.key("findings").beginArray();
    JsonText rest = JsonText::partOf(out);
    std::size_t const middle = findings.size() / 2;
    auto const write = [&findings](JsonText& half, std::size_t first, std::size_t last) {
        for (std::size_t i = first; i < last; ++i) writeFinding(half, findings[i]);
    };
    together([&] { write(out, 0, middle); }, [&] { write(rest, middle, findings.size()); });
    out.append(rest).endArray();
}

void writePairs(JsonText& out, std::vector<Pair> const& pairs) {
    out.key("pairs").beginArray();
    for (auto const& p : pairs) {
        out.beginObject()
            .textOrNull("canonical", p.canonical)
            .textOrNull("reference", p.reference)
            .textOrNull("candidate", p.candidate)
            .member("relation", nameOf(p.relation))
            .member("judgement", nameOf(p.judgement))
            .member("confidence", p.confidence)
            .endObject();
    }
    out.endArray();
}

void writeSections(JsonText& out, std::vector<SectionPair> const& sections) {
    out.key("sections").beginArray();
    for (auto const& s : sections) {
        out.beginObject().textOrNull("reference", s.reference).textOrNull("candidate", s.candidate).member("similarity", s.similarity).member("findings", s.findings).endObject();
    }
    out.endArray();
}

void writeCautions(JsonText& out, std::vector<Caution> const& cautions) {
    out.key("cautions").beginArray();
    for (auto const& c : cautions) out.beginObject().member("id", c.id).member("text", c.text).member("findings", c.findings).endObject();
    out.endArray();
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
    JsonText out;
    out.beginObject()
        .member("schema", kSchema)
        .member("reference", comparison.hasReference() ? documentJson(comparison.reference) : Json(nullptr))
        .member("candidate", documentJson(comparison.candidate))
        .member("verdict", verdictJson(comparison.verdict));
    writeCautions(out, comparison.cautions);
    out.member("statements", comparison.statements);
    writeFindings(out, comparison.findings);
    writePairs(out, comparison.pairs);
    writeSections(out, comparison.sections);
    out.member("derived", derivedJson(comparison.derived))
        .member("cell", cellJson(comparison.cell))
        .textOrNull("cell_name", comparison.cellName)
        .textOrNull("circuit_name", comparison.circuitName)
        .member("coverage", comparisonCoverageJson(comparison.coverage, comparison.hasReference()))
        .endObject();
    return out.take() + "\n";
}

}  // namespace standin::model

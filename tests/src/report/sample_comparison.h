// An invented comparison with one finding of each severity, for report tests.
#pragma once

#include "model/comparison.h"

namespace standin::report {

struct Sample {
    model::Datasheet reference;
    model::Datasheet candidate;
    model::Comparison comparison;
};

[[nodiscard]] inline Sample sampleComparison() {
    using namespace model;
    Sample sample;
    auto& [reference, candidate, comparison] = sample;
    reference.document.file = "ref.pdf";
    reference.document.pages = 4;
    reference.document.partNumbers = {"XK104"};
    reference.document.maker = "Tarn Devices";
    reference.document.revision = "1.4";
    candidate.document.file = "cand.pdf";
    candidate.document.pages = 1;
    candidate.document.partNumbers = {"YL204"};

    Parameter r;
    r.id = "p1";
    r.name = "Overcharge detection voltage";
    r.symbol = "VCU";
    r.condition = "VDD slow ramp";
    r.tableCondition = "Ta = 25 °C";
    r.min = Value{"4.245", "4.245", "4.245", {}};
    r.typ = Value{"4.275", "4.275", "4.275", {}};
    r.max = Value{"4.305", "4.305", "4.305", {}};
    r.unit = "V";
    r.interval = Interval{"4.245", "4.275", "4.305", false, false, "V", "", ""};
    r.page = 3;
    auto c = r;
    c.id = "p7";
    c.max = Value{"4.340", "4.340", "4.340", {}};
    c.interval->hi = "4.340";
    c.page = 1;
    reference.parameters = {r};
    candidate.parameters = {c};

    comparison.reference = reference.document;
    comparison.candidate = candidate.document;
    comparison.verdict = {VerdictLevel::BenchTest, true, {"page 2 of the candidate has no text layer"}, "1 difference lies on a hazard side.", {"aaaaaaaaaaaa"}};
    comparison.cautions = {{"C-OC", "The candidate may let the cell charge to a higher voltage than the reference.", {"aaaaaaaaaaaa"}}};
    comparison.statements = {"The comparison covers printed documents only; it is not a test and not an approval."};
    comparison.pairs = {{"overcharge-detect-voltage", "p1", "p7", Relation::ReachesHigher, Judgement::HazardSide, 0.98}};

    Finding hazard;
    hazard.id = "aaaaaaaaaaaa";
    hazard.relation = Relation::ReachesHigher;
    hazard.severity = Severity::Hazard;
    hazard.hazardSide = HazardSide::Higher;
    hazard.title = "Overcharge detection voltage reaches higher by 35 mV";
    hazard.explanation = "The candidate may let the cell charge further.";
    hazard.caution = "C-OC";
    hazard.pair = 0;
    hazard.reference = Side{3, {60, 300, 540, 312}, "Overcharge detection voltage | VCU", "4.245", "4.275", "4.305", "V", "Ta = 25 °C"};
    hazard.candidate = Side{1, {60, 200, 540, 212}, "Overcharge detection voltage | VCU", "4.245", "4.275", "4.340", "V", "Ta = 25 °C"};
    Finding follows;
    follows.id = "bbbbbbbbbbbb";
    follows.kind = FindingKind::Derived;
    follows.severity = Severity::Function;
    follows.title = "Hysteresis is larger";
    follows.consequenceOf = hazard.id;
    follows.candidate = Side{2, {}, "0.150", "", "", "", "", ""};
    Finding wording;
    wording.id = "cccccccccccc";
    wording.kind = FindingKind::Wording;
    wording.relation = Relation::MeaningChanged;
    wording.severity = Severity::Function;
    wording.title = "Pin 4 <must> be left open";
    wording.reference = Side{2, {60, 500, 200, 510}, "Pin 4 may be left open.", "", "", "", "", ""};
    wording.candidate = Side{2, {60, 520, 200, 530}, "Pin 4 must be left open <script>alert(1)</script>.", "", "", "", "", ""};
    Finding editorial;
    editorial.id = "dddddddddddd";
    editorial.kind = FindingKind::Wording;
    editorial.relation = Relation::Reworded;
    editorial.severity = Severity::Editorial;
    editorial.title = "Spelling of colour";
    comparison.findings = {hazard, follows, wording, editorial};
    comparison.coverage.compared = 120;
    comparison.coverage.listed = 3;
    return sample;
}

}  // namespace standin::report

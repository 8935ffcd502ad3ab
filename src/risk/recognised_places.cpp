// Tested by tests/src/risk/recognised_places_test.cpp.
#include "risk/recognised_places.h"

#include <algorithm>

#include "model/recognised.h"
#include "risk/texts.h"

namespace standin::risk {

namespace {

void mark(std::optional<model::Side>& side, model::Coverage const& coverage) {
    // A sentence over several places knows of all of them, its side only of the first.
    if (side && !side->box.empty()) side->recognised = side->recognised || model::isRecognised(coverage, side->page, side->box);
}

void note(std::optional<model::WorkedValue>& value, model::Coverage const& coverage) {
    if (!value) return;
    bool const rests = std::any_of(value->inputs.begin(), value->inputs.end(), [&](model::Input const& input) { return model::isRecognised(coverage, input.page, input.box); });
    if (rests) value->notes.push_back(texts::restsOnRecognised());
}

}  // namespace

void markRecognised(model::Comparison& comparison, model::Datasheet const& reference, model::Datasheet const& candidate) {
    if (reference.coverage.recognised.empty() && candidate.coverage.recognised.empty()) return;
    for (auto& finding : comparison.findings) {
        if (finding.kind == model::FindingKind::Coverage) continue;  // says so itself
        mark(finding.reference, reference.coverage);
        mark(finding.candidate, candidate.coverage);
    }
    for (auto& derived : comparison.derived) {
        note(derived.reference, reference.coverage);
        note(derived.candidate, candidate.coverage);
    }
}

}  // namespace standin::risk

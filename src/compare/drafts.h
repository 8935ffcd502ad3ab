// Findings while they are being collected: what was found by several readings of
// the same printed place is brought together, so that one printed change gives
// one finding and what follows from it hangs under it.
#pragma once

#include <string>
#include <vector>

#include "model/comparison.h"
#include "model/datasheet.h"

namespace standin::compare {

// Which reading of a place speaks for it: the first of these that saw it.
// Conflict, Package and Document are conclusions from places that others show.
enum class Rank : std::uint8_t { Parameter, Feature, Pin, Ordering, Table, Wording, Figure, Section, Furniture, Conflict, Package, Document, Coverage };

struct Draft {
    model::Finding finding;
    Rank rank = Rank::Table;
    int cause = -1;        // index of the draft it follows from
    bool dropped = false;  // another draft shows the same
    bool weak = false;     // no difference by itself: only the other half of another draft, or nothing
    std::vector<model::Place> referencePlaces;  // every place the text stands at
    std::vector<model::Place> candidatePlaces;
    int numberBearers = 1;  // how many printed things (rows, sentences) it stands for
};

[[nodiscard]] model::Side sideOf(int page, model::Rect const& box, std::string text);

// Both sides given: two-sided; a relation of OnlyReference or OnlyCandidate has one.
[[nodiscard]] Draft makeDraft(model::FindingKind kind, Rank rank, model::Relation relation, std::optional<model::Side> reference,
                              std::optional<model::Side> candidate);

// Do two drafts show the same printed place on the side?
[[nodiscard]] bool shareReferencePlace(Draft const& a, Draft const& b);
[[nodiscard]] bool shareCandidatePlace(Draft const& a, Draft const& b);

// Where a lower reading repeats what a higher one shows (a table row whose
// parameter is a finding, a sentence that states a changed feature), the lower one
// is dropped or made a consequence. A package or document property read out of a
// printed place that is a finding follows from that finding. Afterwards no cause
// is itself dropped or a consequence.
void absorb(std::vector<Draft>& drafts);

// Texts under 600 characters with the difference in view, ids, causes by id;
// dropped drafts left out; in document order.
[[nodiscard]] std::vector<model::Finding> finish(std::vector<Draft>& drafts);

}  // namespace standin::compare

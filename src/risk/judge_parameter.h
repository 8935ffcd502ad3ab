// What the relation of two values means by the parameter's role and hazard bound.
//
//     auto terms = termsOf(vocabulary.find(canonical, family), parameter.kind);
//     auto judged = judgeParameter({.relation = …, .conditions = …}, reference, candidate, terms);
//     judged.level.level      // 0 … 4
#pragma once

#include <optional>

#include "model/comparison.h"
#include "model/datasheet.h"
#include "quantity/decimal.h"
#include "risk/levels.h"
#include "vocabulary/vocabulary.h"

namespace standin::risk {

// How one parameter is to be judged.
struct Terms {
    vocabulary::Role role = vocabulary::Role::Window;
    vocabulary::Bound bound = vocabulary::Bound::Both;
    model::Severity severity = model::Severity::Function;
    bool chargerPin = false;
    bool polar = false;  // the sign is a polarity (P-channel, negative supply): higher means the larger magnitude
    bool known = false;  // of a vocabulary entry: what a lone limit under Min or Max means is known
    bool operator==(Terms const&) const = default;
};

// Of a vocabulary entry; without one by the kind of the row: a rating is a
// withstand, an operating condition an operating range, all else a window.
[[nodiscard]] Terms termsOf(vocabulary::ParameterEntry const* entry, model::ParameterKind kind);

struct Facts {
    model::Relation relation = model::Relation::Same;
    model::ConditionRelation conditions = model::ConditionRelation::Same;
};

enum class Bounding : std::uint8_t { Maximum, Minimum, Typical };

// By how much the candidate lies beyond (or short of) the reference.
struct Distance {
    Bounding of = Bounding::Maximum;
    bool higher = true;        // the candidate's bound is the higher one
    quantity::Decimal amount;  // magnitude, in the coherent unit
};

struct ParameterJudgement {
    Outcome outcome = Outcome::Equal;
    model::Judgement judgement = model::Judgement::Complies;
    Level level;
    model::HazardSide hazardSide = model::HazardSide::None;
    std::optional<Distance> distance;  // of the bound that decided
    bool typicalOnly = false;          // no limit stands behind it
    bool turned = false;               // of magnitudes, since values are negative: higher is the larger one
};

// Either parameter may be null (found in one sheet only, or not known to the
// caller: then the relation alone decides).
[[nodiscard]] ParameterJudgement judgeParameter(Facts const& facts, model::Parameter const* reference, model::Parameter const* candidate, Terms const& terms);

}  // namespace standin::risk

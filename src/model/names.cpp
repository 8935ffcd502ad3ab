// One array a type, in the order of the enum. Tested by tests/src/model/names_test.cpp.
#include "model/names.h"

#include <array>

namespace standin::model {

namespace {

using Words = std::string_view;

constexpr std::array kTextLayer{Words{"full"}, Words{"partial"}, Words{"none"}};
constexpr std::array kCorrectionOutcome{Words{"applied"}, Words{"not-needed"}, Words{"not-found"}, Words{"ambiguous"}};
constexpr std::array kSectionKind{
    Words{"features"}, Words{"description"}, Words{"ordering"}, Words{"selection"}, Words{"marking"}, Words{"pins"},
    Words{"block-diagram"}, Words{"ratings"}, Words{"operating-conditions"}, Words{"thermal"}, Words{"characteristics"},
    Words{"timing"}, Words{"test-circuit"}, Words{"curves"}, Words{"function"}, Words{"application"},
    Words{"precautions"}, Words{"package"}, Words{"packing"}, Words{"revision"}, Words{"legal"}, Words{"other"}};
constexpr std::array kTableKind{Words{"specification"}, Words{"pins"}, Words{"ordering"}, Words{"package"}, Words{"revision"}, Words{"other"}};
constexpr std::array kParameterKind{Words{"rating"}, Words{"operating-condition"}, Words{"thermal"}, Words{"characteristic"},
                                    Words{"timing"}, Words{"mechanical"}, Words{"other"}};
constexpr std::array kGrade{Words{"G"}, Words{"G25"}, Words{"GD"}, Words{"T"}, Words{"C"}, Words{"N"}, Words{"A"}};
constexpr std::array kFigureReading{Words{"text"}, Words{"vector"}, Words{"image"}};
constexpr std::array kFurnitureKind{Words{"running-head"}, Words{"page-number"}, Words{"watermark"}};
constexpr std::array kFindingKind{Words{"parameter"}, Words{"table"}, Words{"wording"}, Words{"pin"}, Words{"package"},
                                  Words{"ordering"}, Words{"feature"}, Words{"figure"}, Words{"section"}, Words{"document"},
                                  Words{"derived"}, Words{"cell"}, Words{"coverage"}};
constexpr std::array kRelation{
    Words{"same"}, Words{"inside"}, Words{"wider"}, Words{"reaches-higher"}, Words{"reaches-lower"}, Words{"clear-above"},
    Words{"clear-below"}, Words{"one-sided"}, Words{"typ-equal"}, Words{"typ-differs"}, Words{"conditions-differ"},
    Words{"not-comparable"}, Words{"only-reference"}, Words{"only-candidate"}, Words{"unit-conflict"},
    Words{"conflict-in-document"}, Words{"unread"}, Words{"reworded"}, Words{"meaning-changed"}, Words{"mode-same"},
    Words{"mode-differs"}, Words{"mode-unstated"}, Words{"moved"}};
constexpr std::array kJudgement{Words{"complies"}, Words{"nuisance-side"}, Words{"hazard-side"}, Words{"worse"}, Words{"better"}, Words{"open"}};
constexpr std::array kWordingClass{Words{"NEG"}, Words{"MOD"}, Words{"PERM"}, Words{"TRIG"}, Words{"CONN"}, Words{"NUM"},
                                   Words{"PIN"}, Words{"TEMP"}, Words{"SCOPE"}, Words{"GRADE"}, Words{"ORD"}, Words{"TIME"},
                                   Words{"COND"}, Words{"EDIT"}, Words{"STYLE"}};
constexpr std::array kSeverity{Words{"editorial"}, Words{"note"}, Words{"margin"}, Words{"function"}, Words{"hazard"}};
constexpr std::array kHazardSide{Words{"none"}, Words{"higher"}, Words{"lower"}, Words{"both"}, Words{"unknown"}};
constexpr std::array kVerdictLevel{Words{"no-difference"}, Words{"small-differences"}, Words{"confirm-function"}, Words{"bench-test"},
                                   Words{"do-not-substitute"}};
constexpr std::array kConditionRelation{Words{"same"}, Words{"harsher"}, Words{"milder"}, Words{"unordered"}, Words{"one-unstated"}, Words{"other-sign"}, Words{"at-bound"}};
constexpr std::array kCheckOutcome{Words{"holds"}, Words{"violated"}, Words{"open"}};

// A value added to an enum without its word is a compile error here.
static_assert(kTextLayer.size() == static_cast<std::size_t>(TextLayer::None) + 1);
static_assert(kFurnitureKind.size() == static_cast<std::size_t>(Furniture::Kind::Watermark) + 1);
static_assert(kHazardSide.size() == static_cast<std::size_t>(HazardSide::Unknown) + 1);
static_assert(kCorrectionOutcome.size() == static_cast<std::size_t>(CorrectionOutcome::Ambiguous) + 1);
static_assert(kSectionKind.size() == static_cast<std::size_t>(SectionKind::Other) + 1);
static_assert(kTableKind.size() == static_cast<std::size_t>(TableKind::Other) + 1);
static_assert(kParameterKind.size() == static_cast<std::size_t>(ParameterKind::Other) + 1);
static_assert(kGrade.size() == static_cast<std::size_t>(Grade::A) + 1);
static_assert(kFindingKind.size() == static_cast<std::size_t>(FindingKind::Coverage) + 1);
static_assert(kRelation.size() == static_cast<std::size_t>(Relation::Moved) + 1);
static_assert(kJudgement.size() == static_cast<std::size_t>(Judgement::Open) + 1);
static_assert(kWordingClass.size() == static_cast<std::size_t>(WordingClass::Style) + 1);
static_assert(kSeverity.size() == static_cast<std::size_t>(Severity::Hazard) + 1);
static_assert(kVerdictLevel.size() == static_cast<std::size_t>(VerdictLevel::DoNotSubstitute) + 1);
static_assert(kConditionRelation.size() == static_cast<std::size_t>(ConditionRelation::AtBound) + 1);
static_assert(kCheckOutcome.size() == static_cast<std::size_t>(CheckOutcome::Open) + 1);

}  // namespace

template <> std::span<std::string_view const> namesOf<TextLayer>() { return kTextLayer; }
template <> std::span<std::string_view const> namesOf<CorrectionOutcome>() { return kCorrectionOutcome; }
template <> std::span<std::string_view const> namesOf<SectionKind>() { return kSectionKind; }
template <> std::span<std::string_view const> namesOf<TableKind>() { return kTableKind; }
template <> std::span<std::string_view const> namesOf<ParameterKind>() { return kParameterKind; }
template <> std::span<std::string_view const> namesOf<Grade>() { return kGrade; }
template <> std::span<std::string_view const> namesOf<FigureReading>() { return kFigureReading; }
template <> std::span<std::string_view const> namesOf<Furniture::Kind>() { return kFurnitureKind; }
template <> std::span<std::string_view const> namesOf<FindingKind>() { return kFindingKind; }
template <> std::span<std::string_view const> namesOf<Relation>() { return kRelation; }
template <> std::span<std::string_view const> namesOf<Judgement>() { return kJudgement; }
template <> std::span<std::string_view const> namesOf<WordingClass>() { return kWordingClass; }
template <> std::span<std::string_view const> namesOf<Severity>() { return kSeverity; }
template <> std::span<std::string_view const> namesOf<HazardSide>() { return kHazardSide; }
template <> std::span<std::string_view const> namesOf<VerdictLevel>() { return kVerdictLevel; }
template <> std::span<std::string_view const> namesOf<ConditionRelation>() { return kConditionRelation; }
template <> std::span<std::string_view const> namesOf<CheckOutcome>() { return kCheckOutcome; }

Relation mirrored(Relation relation) {
    switch (relation) {
        case Relation::Inside: return Relation::Wider;
        case Relation::Wider: return Relation::Inside;
        case Relation::ReachesHigher: return Relation::ReachesLower;
        case Relation::ReachesLower: return Relation::ReachesHigher;
        case Relation::ClearAbove: return Relation::ClearBelow;
        case Relation::ClearBelow: return Relation::ClearAbove;
        case Relation::OnlyReference: return Relation::OnlyCandidate;
        case Relation::OnlyCandidate: return Relation::OnlyReference;
        default: return relation;
    }
}

}  // namespace standin::model

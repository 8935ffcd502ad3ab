#include "model/names.h"

#include <set>

#include <gtest/gtest.h>

namespace standin::model {
namespace {

template <class Enum>
void expectRoundTrip() {
    std::set<std::string_view> seen;
    auto const names = namesOf<Enum>();
    for (std::size_t i = 0; i < names.size(); ++i) {
        EXPECT_EQ(fromName<Enum>(names[i]), static_cast<Enum>(i));
        EXPECT_TRUE(seen.insert(names[i]).second) << names[i];
    }
    EXPECT_EQ(fromName<Enum>("no such word"), std::nullopt);
}

TEST(Names, EveryWordLeadsBackToItsValue) {
    expectRoundTrip<CorrectionOutcome>();
    expectRoundTrip<SectionKind>();
    expectRoundTrip<TableKind>();
    expectRoundTrip<ParameterKind>();
    expectRoundTrip<FindingKind>();
    expectRoundTrip<Relation>();
    expectRoundTrip<WordingClass>();
    expectRoundTrip<Severity>();
    expectRoundTrip<VerdictLevel>();
}

TEST(Names, SpotChecks) {
    EXPECT_EQ(nameOf(Severity::Hazard), "hazard");
    EXPECT_EQ(nameOf(Relation::ReachesHigher), "reaches-higher");
    EXPECT_EQ(nameOf(VerdictLevel::DoNotSubstitute), "do-not-substitute");
    EXPECT_EQ(nameOf(SectionKind::TestCircuit), "test-circuit");
}

TEST(Mirrored, TwiceGivesTheSameRelation) {
    for (std::size_t i = 0; i < namesOf<Relation>().size(); ++i) {
        auto const relation = static_cast<Relation>(i);
        EXPECT_EQ(mirrored(mirrored(relation)), relation);
    }
    EXPECT_EQ(mirrored(Relation::Inside), Relation::Wider);
    EXPECT_EQ(mirrored(Relation::OnlyReference), Relation::OnlyCandidate);
    EXPECT_EQ(mirrored(Relation::OneSided), Relation::OneSided);
}

}  // namespace
}  // namespace standin::model

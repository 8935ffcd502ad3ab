#include "risk/levels.h"

#include <gtest/gtest.h>

namespace standin::risk {
namespace {

using model::Severity;

TEST(Levels, TheWholeTable) {
    struct Row {
        Outcome outcome;
        Level hazard, function, margin, note;
    };
    Row const rows[] = {
        {Outcome::Equal, {0, false}, {0, false}, {0, false}, {0, false}},
        {Outcome::Better, {1, false}, {1, false}, {1, false}, {1, false}},
        {Outcome::NuisanceOverlap, {2, false}, {2, false}, {1, false}, {1, false}},
        {Outcome::HazardOverlap, {3, false}, {2, false}, {1, false}, {1, false}},
        {Outcome::WiderBoth, {3, false}, {2, false}, {1, false}, {1, false}},
        {Outcome::ClearHazard, {4, false}, {3, false}, {2, false}, {1, false}},
        {Outcome::ClearNuisance, {3, false}, {3, false}, {2, false}, {1, false}},
        {Outcome::HazardBoundOpen, {3, true}, {2, true}, {1, false}, {1, false}},
        {Outcome::TypicalOnly, {3, true}, {2, true}, {1, false}, {1, false}},
        {Outcome::TypicalOnlyBeyond, {4, true}, {2, true}, {1, false}, {1, false}},
        {Outcome::TypicalDiffers, {3, true}, {2, true}, {1, false}, {1, false}},
        {Outcome::TypicalEqual, {0, true}, {0, false}, {0, false}, {0, false}},
        {Outcome::OnlyReference, {3, true}, {2, true}, {1, false}, {1, false}},
        {Outcome::OnlyCandidate, {1, true}, {1, false}, {1, false}, {1, false}},
        {Outcome::NeitherEssential, {0, true}, {0, false}, {0, false}, {0, false}},
        {Outcome::HarsherComplies, {1, false}, {1, false}, {1, false}, {1, false}},
        {Outcome::ConditionsOpen, {3, true}, {2, true}, {1, false}, {1, false}},
        {Outcome::ModeDiffersGrave, {4, false}, {2, false}, {1, false}, {1, false}},
        {Outcome::ModeDiffers, {3, false}, {2, false}, {1, false}, {1, false}},
        {Outcome::ModeUnstated, {3, true}, {2, true}, {1, false}, {1, false}},
        {Outcome::NotEnclosing, {3, false}, {3, false}, {2, false}, {1, false}},
        {Outcome::NotEnclosingCharger, {4, false}, {3, false}, {2, false}, {1, false}},
        {Outcome::SignLost, {2, true}, {1, true}, {1, true}, {1, true}},
        {Outcome::NotComparable, {3, true}, {2, true}, {1, true}, {1, true}},
        {Outcome::Misfit, {4, false}, {4, false}, {4, false}, {4, false}},
    };
    for (auto const& row : rows) {
        auto const number = static_cast<int>(row.outcome);
        EXPECT_EQ(levelOf(row.outcome, Severity::Hazard), row.hazard) << number;
        EXPECT_EQ(levelOf(row.outcome, Severity::Function), row.function) << number;
        EXPECT_EQ(levelOf(row.outcome, Severity::Margin), row.margin) << number;
        EXPECT_EQ(levelOf(row.outcome, Severity::Note), row.note) << number;
    }
}

TEST(Levels, SeverityIsLimitedByTheLevel) {
    EXPECT_EQ(severityAt(4, Severity::Hazard), Severity::Hazard);
    EXPECT_EQ(severityAt(3, Severity::Hazard), Severity::Hazard);
    EXPECT_EQ(severityAt(2, Severity::Hazard), Severity::Function);
    EXPECT_EQ(severityAt(1, Severity::Hazard), Severity::Margin);
    EXPECT_EQ(severityAt(1, Severity::Note), Severity::Note);
    EXPECT_EQ(severityAt(3, Severity::Note), Severity::Note);
    EXPECT_EQ(severityAt(0, Severity::Hazard), Severity::Editorial);
    EXPECT_EQ(worse({1, true}, {3, false}), (Level{3, true}));
}

}  // namespace
}  // namespace standin::risk

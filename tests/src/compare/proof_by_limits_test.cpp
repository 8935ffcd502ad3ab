#include "compare/proof_by_limits.h"

#include <gtest/gtest.h>

namespace standin::compare {
namespace {

struct Row {
    std::string min, typ, max;
};
using Rows = std::vector<Row>;
using Pairs = std::vector<CandidatePair>;
using Proofs = std::vector<Proof>;

Row row(int, std::string const& min, std::string const& typ, std::string const& max) { return {min, typ, max}; }

// All rows are of one kin.
Proofs proofsOf(Rows const& reference, Rows const& candidate, Pairs pairs) {
    auto const numbers = [](Rows const& rows) {
        RowNumbers made;
        for (std::size_t k = 0; k < rows.size(); ++k) {
            made[static_cast<int>(k)] = {quantity::Decimal::parse(rows[k].min), quantity::Decimal::parse(rows[k].typ), quantity::Decimal::parse(rows[k].max)};
        }
        return made;
    };
    for (CandidatePair& pair : pairs) {
        for (std::size_t k = 0; k < reference.size(); ++k) pair.kinReference.push_back(static_cast<int>(k));
        for (std::size_t k = 0; k < candidate.size(); ++k) pair.kinCandidate.push_back(static_cast<int>(k));
    }
    return proofs(numbers(reference), numbers(candidate), pairs);
}

TEST(ProofByLimits, ALimitThatStandsOnceInEachSheetTellsTheRow) {
    Rows const reference{row(0, "", "61", ""), row(1, "58", "72", "")};
    Rows const candidate{row(0, "", "64", ""), row(1, "58", "77", "")};
    EXPECT_EQ(proofsOf(reference, candidate, Pairs{{0, 0}, {1, 1}}), (Proofs{Proof::ByElimination, Proof::ByLimit}));
}

TEST(ProofByLimits, ATypicalValueProvesNothing) {
    Rows const reference{row(0, "", "61", ""), row(1, "", "72", "")};
    EXPECT_EQ(proofsOf(reference, reference, Pairs{{0, 0}, {1, 1}}), (Proofs{Proof::None, Proof::None}));
}

TEST(ProofByLimits, ALimitOfTwoRowsTellsNone) {
    Rows const reference{row(0, "58", "61", ""), row(1, "58", "72", "")};
    Rows const candidate{row(0, "58", "64", ""), row(1, "60", "77", "")};
    EXPECT_EQ(proofsOf(reference, candidate, Pairs{{0, 0}, {1, 1}}), (Proofs{Proof::None, Proof::None}));
}

TEST(ProofByLimits, AnotherLimitThatDiffersRefutes) {
    Rows const reference{row(0, "2", "", "9"), row(1, "4", "", "8")};
    Rows const candidate{row(0, "2", "", "7"), row(1, "5", "", "6")};
    EXPECT_EQ(proofsOf(reference, candidate, Pairs{{0, 0}, {1, 1}}), (Proofs{Proof::None, Proof::None}));
}

TEST(ProofByLimits, NothingIsLeftWhereASheetHasMoreRows) {
    Rows const reference{row(0, "", "61", ""), row(1, "58", "72", "")};
    Rows const candidate{row(0, "", "64", ""), row(1, "58", "77", ""), row(2, "", "66", "")};
    EXPECT_EQ(proofsOf(reference, candidate, Pairs{{0, 0}, {1, 1}}), (Proofs{Proof::None, Proof::ByLimit}));
}

TEST(ProofByLimits, OpposedConditionsAreNoneOfIt) {
    Rows const reference{row(0, "", "61", ""), row(1, "58", "72", "")};
    EXPECT_EQ(proofsOf(reference, reference, Pairs{{0, 0}, {1, 1, true}}), (Proofs{Proof::None, Proof::None}));
    EXPECT_EQ(proofsOf(reference, reference, Pairs{{0, 0, true}, {1, 1}}), (Proofs{Proof::None, Proof::ByLimit}));
}

// 35 of one version is 35 of another by chance.
TEST(ProofByLimits, ARivalThatIsNotToldLeavesDoubt) {
    Rows const reference{row(0, "", "15", "35"), row(1, "", "17", "49")};
    Rows const candidate{row(0, "", "17", "30"), row(1, "", "21", "35")};
    EXPECT_EQ(proofsOf(reference, candidate, Pairs{{1, 0}, {0, 1, false, false, {}, {}, {}, {0}}}), (Proofs{Proof::None, Proof::None}));
    Rows const told{row(0, "", "17", "49"), row(1, "", "21", "35")};
    EXPECT_EQ(proofsOf(reference, told, Pairs{{1, 0}, {0, 1, false, false, {}, {}, {}, {0}}}), (Proofs{Proof::ByLimit, Proof::ByLimit}));
    Rows const without{row(0, "", "17", ""), row(1, "", "21", "35")};
    EXPECT_EQ(proofsOf(reference, without, Pairs{{1, 0, true}, {0, 1, false, false, {}, {}, {}, {0}}})[1], Proof::ByLimit);
}

TEST(ProofByLimits, WhatIsSureForAnotherReasonLeavesTheRestToo) {
    Rows const reference{row(0, "", "61", ""), row(1, "", "72", "")};
    EXPECT_EQ(proofsOf(reference, reference, Pairs{{0, 0, false, true}, {1, 1}}), (Proofs{Proof::None, Proof::ByElimination}));
}

}  // namespace
}  // namespace standin::compare

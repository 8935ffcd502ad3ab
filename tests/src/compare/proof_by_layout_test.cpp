#include "compare/proof_by_layout.h"

#include <gtest/gtest.h>

#include <deque>

namespace standin::compare {
namespace {

struct RowOf {
    std::string condition;
    int partner = -1;
};

std::vector<char> told(std::vector<RowOf> const& reference, std::vector<RowOf> const& candidate) {
    ConditionMemo memo;
    std::deque<StatedConditions> stated;
    auto rowsOf = [&](std::vector<RowOf> const& rows) {
        std::vector<LaidOutRow> list;
        for (RowOf const& row : rows) list.push_back({"on-resistance", &stated.emplace_back(stateConditions({row.condition, ""}, memo)), row.partner});
        return list;
    };
    auto const r = rowsOf(reference);
    auto const c = rowsOf(candidate);
    return toldByLayout(r, c);
}

using Told = std::vector<char>;

TEST(ProofByLayout, OneQuantityOfItsOwnInEveryRowTellsThemAll) {
    EXPECT_EQ(told({{"VGS=-9V, ID=-4A", 0}, {"VGS=-5V, ID=-3A", 1}}, {{"VGS = -9 V, ID = -4.4 A"}, {"VGS = -5 V, ID = -4 A"}}), (Told{1, 1}));
    EXPECT_EQ(told({{"VGS=9V, ID=4A", 0}, {"VGS=5V, ID=3A", 1}, {"VGS=2V, ID=1A"}}, {{"VGS=9V, ID=6A"}, {"VGS=5V, ID=5A"}, {"VGS=3V, ID=1A"}}), (Told{1, 1, 0}));
}

TEST(ProofByLayout, WhatHasNoPartnerNeedNotStateIt) {
    EXPECT_EQ(told({{"VGS=9V, ID=4A", 0}, {"TJ=125°C"}, {"VGS=5V, ID=3A", 1}}, {{"VGS=9V, ID=6A"}, {"VGS=5V, ID=5A"}}), (Told{1, 0, 1}));
    EXPECT_EQ(told({{"VGS=9V, ID=4A", 0}, {"TJ=125°C", 2}, {"VGS=5V, ID=3A", 1}}, {{"VGS=9V, ID=6A"}, {"VGS=5V, ID=5A"}, {"TJ=100°C"}}), (Told{0, 0, 0}));
}

TEST(ProofByLayout, TwoRowsOfOneValueTellNone) {
    EXPECT_EQ(told({{"VGS=9V, ID=4A", 0}, {"VGS=5V, ID=3A", 1}}, {{"VGS=9V, ID=6A"}, {"VGS=5V, ID=5A"}, {"VGS=5V, ID=1A"}}), (Told{0, 0}));
}

TEST(ProofByLayout, APairOfTwoValuesRefutes) {
    EXPECT_EQ(told({{"VGS=9V", 0}, {"VGS=5V", 1}}, {{"VGS=9V"}, {"VGS=4V"}}), (Told{0, 0}));
    EXPECT_EQ(told({{"VGS=9V", 0}, {"VGS=5V"}}, {{"VGS=9V"}, {"VGS=4V"}}), (Told{0, 0})) << "one pair is no layout";
}

}  // namespace
}  // namespace standin::compare

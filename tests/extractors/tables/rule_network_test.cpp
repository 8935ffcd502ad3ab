#include "extractors/tables/rule_network.h"

#include <gtest/gtest.h>

#include "extractors/tables/page_builder.h"

namespace standin::tables {
namespace {

TEST(RuleNetwork, joinsPiecesDrawnCellByCell) {
    test::PageBuilder page;
    page.horizontal(100, 50, 100).horizontal(100, 100.5F, 150).horizontal(120, 50, 150);
    page.vertical(50, 100, 110).vertical(50, 110, 120).vertical(150, 100, 120);
    auto const found = findRuleNetworks(page.layout());
    ASSERT_EQ(found.networks.size(), 1U);
    EXPECT_EQ(found.networks[0].horizontal.size(), 2U);
    EXPECT_EQ(found.networks[0].vertical.size(), 2U);
}

TEST(RuleNetwork, keepsWhatDoesNotTouchApart) {
    test::PageBuilder page;
    page.grid({50, 100, 150}, {100, 120}).grid({50, 100, 150}, {200, 220}).horizontal(300, 50, 400).vertical(500, 10, 60);
    auto const found = findRuleNetworks(page.layout());
    EXPECT_EQ(found.networks.size(), 2U);
    ASSERT_EQ(found.looseHorizontal.size(), 1U);
    EXPECT_FLOAT_EQ(found.looseHorizontal[0].at, 300);
    EXPECT_EQ(found.looseVertical.size(), 1U);
}

TEST(RuleNetwork, boundsDrawings) {
    test::PageBuilder page;
    for (int i = 0; i < 20000; ++i) {
        auto const x = static_cast<float>(i % 500);
        auto const y = static_cast<float>(i % 700);
        page.vertical(x, y, y + 4).horizontal(y, x, x + 4);
    }
    page.grid({50, 250, 450}, {100, 120});
    auto const found = findRuleNetworks(page.layout());
    std::size_t rules = found.looseHorizontal.size() + found.looseVertical.size();
    for (auto const& n : found.networks) rules += n.horizontal.size() + n.vertical.size();
    EXPECT_LE(rules, kMostRules);
}

}  // namespace
}  // namespace standin::tables

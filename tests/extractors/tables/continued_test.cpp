#include <gtest/gtest.h>

#include "extractors/tables/find_tables.h"
#include "extractors/tables/page_builder.h"

namespace standin::tables {
namespace {


model::Table table(int page, float y0, float y1, int headRows, char const* title) {
    model::Table t;
    t.page = page;
    t.box = {50, y0, 550, y1};
    t.rows = 3;
    t.columns = 2;
    t.headRows = headRows;
    model::Cell cell;
    cell.text = title;
    t.cells.push_back(cell);
    return t;
}

std::vector<model::PageLayout> pages(int count) {
    std::vector<model::PageLayout> out;
    for (int i = 1; i <= count; ++i) out.push_back(test::PageBuilder(i).layout());
    return out;
}

TEST(Continued, joinsByPlaceAndHead) {
    auto const sheet = pages(2);
    std::vector<model::Table> tables{table(1, 500, 750, 1, "Parameter"), table(2, 60, 300, 1, "Parameter")};
    joinContinued(tables, sheet);
    EXPECT_EQ(tables[0].id, "t1");
    EXPECT_TRUE(tables[0].continues.empty());
    EXPECT_EQ(tables[1].continues, "t1");
}

TEST(Continued, withoutARepeatedHead) {
    auto const sheet = pages(2);
    std::vector<model::Table> tables{table(1, 500, 750, 1, "Parameter"), table(2, 60, 300, 0, "Delay")};
    joinContinued(tables, sheet);
    EXPECT_EQ(tables[1].continues, "t1");
}

TEST(Continued, notAcrossOtherHeadsPlacesOrCaptions) {
    auto const sheet = pages(3);
    std::vector<model::Table> otherHead{table(1, 500, 750, 1, "Parameter"), table(2, 60, 300, 1, "Pin")};
    joinContinued(otherHead, sheet);
    EXPECT_TRUE(otherHead[1].continues.empty());
    std::vector<model::Table> middle{table(1, 500, 750, 1, "Parameter"), table(2, 400, 600, 1, "Parameter")};
    joinContinued(middle, sheet);
    EXPECT_TRUE(middle[1].continues.empty());
    std::vector<model::Table> captioned{table(1, 500, 750, 1, "Parameter"), table(2, 60, 300, 1, "Parameter")};
    captioned[1].caption = "Table 9. Another part";
    joinContinued(captioned, sheet);
    EXPECT_TRUE(captioned[1].continues.empty());
    std::vector<model::Table> farPage{table(1, 500, 750, 1, "Parameter"), table(3, 60, 300, 1, "Parameter")};
    joinContinued(farPage, sheet);
    EXPECT_TRUE(farPage[1].continues.empty());
}

}  // namespace
}  // namespace standin::tables

#include "compare/revision_order.h"

#include <gtest/gtest.h>

namespace standin::compare {
namespace {

TEST(RevisionOrder, RevisionsFollowEachOther) {
    EXPECT_EQ(compareRevisions("B", "C"), -1);
    EXPECT_EQ(compareRevisions("Z", "AA"), -1);
    EXPECT_EQ(compareRevisions("1.9", "1.10"), -1);
    EXPECT_EQ(compareRevisions("15.0", "15"), 0);
    EXPECT_EQ(compareRevisions("*", "A"), -1);
    EXPECT_FALSE(compareRevisions("3", "C"));
    EXPECT_FALSE(compareRevisions("", "C"));
}

TEST(RevisionOrder, Dates) {
    struct Case {
        std::string_view printed;
        int number;
    };
    for (auto const& [printed, number] :
         {Case{"2022-03-30", 20220330}, Case{"20150126", 20150126}, Case{"30.03.2022", 20220330}, Case{"09-Nov-2004", 20041109}, Case{"October 2021", 20211000},
          Case{"12 May 2021", 20210512}, Case{"2019年3月5日", 20190305}, Case{"05/2021", 20210500}, Case{"Lamp current 5 mA", 0}}) {
        EXPECT_EQ(dateNumber(printed), number) << printed;
    }
}

}  // namespace
}  // namespace standin::compare

#include "compare/finding_id.h"

#include <gtest/gtest.h>

namespace standin::compare {
namespace {

model::Finding findingOf(std::string reference, std::string candidate, int page = 1) {
    model::Finding finding;
    finding.canonical = "overcharge-delay";
    finding.reference = model::Side{page, {}, std::move(reference), "", "", "", "", ""};
    finding.candidate = model::Side{page, {}, std::move(candidate), "", "", "", "", ""};
    return finding;
}

TEST(FindingId, HasTwelveHexDigitsAndIgnoresThePage) {
    std::vector<model::Finding> a{findingOf("1.2 s", "1.3 s")};
    std::vector<model::Finding> b{findingOf("1.2 s", "1.3 s", 7)};
    nameFindings(a);
    nameFindings(b);
    EXPECT_EQ(a[0].id, b[0].id);
    EXPECT_EQ(a[0].id.size(), 12U);
    EXPECT_EQ(a[0].id.find_first_not_of("0123456789abcdef"), std::string::npos);
}

TEST(FindingId, TellsEqualFindingsApartByTheirOrdinal) {
    std::vector<model::Finding> list{findingOf("a", "b"), findingOf("a", "b"), findingOf("a", "c")};
    nameFindings(list);
    EXPECT_NE(list[0].id, list[1].id);
    EXPECT_NE(list[0].id, list[2].id);
}

}  // namespace
}  // namespace standin::compare

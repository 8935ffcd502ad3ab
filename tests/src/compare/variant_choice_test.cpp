#include "compare/variant_choice.h"

#include <gtest/gtest.h>

namespace standin::compare {
namespace {

TEST(IsOtherVariant, KeepsRowsThatHoldForTheChosenOne) {
    struct Case {
        char const* printed;
        char const* chosen;
        bool other;
    };
    Case const cases[] = {
        {"", "XQ20B", false},
        {"XQ20B", "", false},
        {"XQ20B", "XQ20B", false},
        {"XQ20A, XQ20B", "XQ20B", false},
        {"xq20-b", "XQ20B", false},
        {"XQ20", "XQ20-B5", false},
        {"XQ20A", "XQ20B", true},
        {"XQ21A, XQ21C", "XQ20B", true},
        {"XQ20+G", "XQ20-G", true},
        {"XQ20-G", "XQ20+G", true},
        {"XQ20+", "XQ20+G", false},
        {"XQ20AS, XQ21AS", "XQ20AS", false},
        {"XQ20AS", "XQ20AT", true},
        {"XQ20_C", "XQ204CD", false},
        {"XQ20_C", "XQ204ACD", true},
        {"XQ78XX", "XQ7805CT", false},
        {"XQ78XXA", "XQ7805CT", true},
        {"XQ204I,M,AC", "XQ204ACD", false},
        {"XQ204I,M,AC", "XQ204BCD", true},
        {"XQ20A, XQ20B", "XQ20A-TR", false},
        {"XQ20B, XQ20C", "XQ20A-TR", true},
        // A family whose first version has no letter.
        {"XQ20-G", "XQ20A-G", true},
        {"XQ20A-G", "XQ20-G", true},
        {"XQ20-G", "XQ20-G", false},
        {"XQ20A-G", "XQ20A-TR", false},
        // Versions by number, in any packing.
        {"XQ20-33", "XQ20-28", true},
        {"XQ20-33", "XQ20-28-TR", true},
        {"XQ20-28", "XQ20-28-TR", false},
        {"XQ20-28, XQ20-33", "XQ20-33-TR", false},
        {"XQ20-28, XQ20-33", "XQ20-50-TR", true},
        {"XQ20 -40 to 85 °C", "XQ20-28", false},
        {"XQ20", "XQ20-28", false},
        {"XQ20-G", "XQ20-28", false},
        {"XQ20-28/33", "XQ20-33", false},
        {"XQ20-28/33", "XQ20-33-TR", false},
        {"XQ20-28/33", "XQ20-50", true},
        {"XQ20-28 to XQ20-50", "XQ20-33-TR", false},
        {"XQ20-28 to 50", "XQ20-33", false},
        {"XQ20-28, -40 to 85 °C", "XQ20-33", true},
        // Versions by a letter, or a letter and a number; "-TR" may be a packing.
        {"XQ20-A", "XQ20-B", true},
        {"XQ20-A", "XQ20-B-TR", true},
        {"XQ20-A-TR", "XQ20-B-TR", true},
        {"XQ20-B", "XQ20-B-TR", false},
        {"XQ20-A, XQ20-B", "XQ20-B", false},
        {"XQ20-A, XQ20-B", "XQ20-B-TR", false},
        {"XQ20-A/B", "XQ20-B-TR", false},
        {"XQ20-A, -B", "XQ20-B-TR", false},
        {"XQ20-A and B", "XQ20-B-TR", false},
        {"XQ20-A/C", "XQ20-B-TR", true},
        {"XQ20-A to XQ20-D", "XQ20-B", false},
        {"XQ20-A to D", "XQ20-B", false},
        {"XQ20-A~D", "XQ20-B", false},
        {"XQ20-A1", "XQ20-B2", true},
        {"XQ20-A1", "XQ20-A1-TR", false},
        {"XQ20-A", "XQ20-TR", false},
        {"XQ20-TR", "XQ20-TE", false},
        {"XQ20-A, XQ21", "XQ20-B", true},
        {"XQ20, XQ20-A", "XQ20-B", false},
        {"XQ20-x", "XQ20-B", false},
        // The next versions by what is different of their code.
        {"XQ20A/B", "XQ20B", false},
        {"XQ20A/B/C", "XQ20C-TR", false},
        {"XQ20A, B, C", "XQ20C", false},
        {"XQ20A/B", "XQ20C", true},
        {"XQ2001/02", "XQ2002", false},
        {"XQ2001/02", "XQ2003", true},
        {"XQ20A to XQ20D", "XQ20B", false},
        {"XQ20A to D", "XQ20B-TR", false},
        {"XQ20A to XQ20D", "XQ21B", true},
        // The next versions to both ends of a range; what lies outside is another.
        {"XQ20A to XQ20D", "XQ20F", true},
        {"XQ20E to XQ20H", "XQ20B", true},
        {"XQ20-A to XQ20-D", "XQ20-F", true},
        {"XQ20-28 to XQ20-50", "XQ20-60", true},
        {"XQ20-A – XQ20-D", "XQ20-B", false},
        {"XQ20-A–D", "XQ20-B", false},
        {"XQ20-A .. D", "XQ20-B", false},
        {"XQ20–A", "XQ20-B", true},
        {"XQ20-5 to 12", "XQ20-9", false},
        {"XQ20A, B to D", "XQ20C", false},
        {"XQ20-C or later", "XQ20-D", false},
        {"XQ20-C or later", "XQ20-B", true},
        {"XQ20A, XQ20B and XQ20C", "XQ20C-TR", false},
        {"XQ205/7 at 5 V", "XQ207", false},
        // Values and words beside a version are no further ones.
        {"XQ20A, 5 V", "XQ20V", true},
        {"XQ20A, C = 1 µF", "XQ20C", true},
        {"XQ20A at 25 °C, V", "XQ20V", true},
        {"XQ20AB in DC mode", "XQ20DC", true},
        {"XQ205, 7 V", "XQ207", true},
        {"XQ204, 25 °C", "XQ225", true},
        {"XQ20A to 85 °C", "XQ20B", true},
        {"XQ20-33, 28 V", "XQ20-28", true},
        {"XQ20-1 at 2 V", "XQ20-2", true},
        {"XQ20-28 to 85 °C", "XQ20-33", true},
        {"XQ20-A (package B)", "XQ20-B", true},
        // The whole family, in words behind a hyphen.
        {"XQ20-Series", "XQ20A-G", false},
        {"XQ20-Serie", "XQ20A-G", false},
        {"XQ20-Familie", "XQ20A-G", false},
        {"XQ20-xx", "XQ20A-G", false},
        {"XQ20 series", "XQ20A-G", false},
    };
    for (auto const& c : cases) EXPECT_EQ(isOtherVariant(c.printed, c.chosen), c.other) << c.printed << " / " << c.chosen;
}

}  // namespace
}  // namespace standin::compare

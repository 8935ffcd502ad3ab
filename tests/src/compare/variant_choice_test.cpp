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

#include "extractors/packages/package_names.h"

#include <gtest/gtest.h>

#include "extractors/packages/read_packages.h"

namespace {

using standin::packages::canonicalPackage;
using standin::packages::findPackageName;

struct Case {
    char const* printed;
    char const* canonical;
};

TEST(PackageNames, OneCanonicalNameForEverySpelling) {
    constexpr Case kCases[] = {
        {"SOT-23-6", "SOT-23-6"}, {"SOT23-6", "SOT-23-6"}, {"SOT-26", "SOT-23-6"}, {"sot 23-6L", "SOT-23-6"}, {"SOT - 23 - 6", "SOT-23-6"},
        {"SOT\u201323\u20136", "SOT-23-6"}, {"SOT-25", "SOT-23-5"}, {"SOT-23 (5)", "SOT-23-5"}, {"SC-74A", "SOT-23-5"}, {"SOT23", "SOT-23"},
        {"TO-236AB", "SOT-23"}, {"TSOT23-5", "TSOT-23-5"}, {"TSOT-26", "TSOT-23-6"}, {"SC-88A", "SC-70-5"}, {"SOT-363", "SC-70-6"}, {"SC70-5", "SC-70-5"},
        {"SOT-89-3", "SOT-89"}, {"SOT-89-5", "SOT-89-5"}, {"SOIC-8", "SO-8"}, {"SOP8", "SO-8"}, {"SO-8", "SO-8"}, {"SOIC (14)", "SO-14"},
        {"8-lead SOIC", "SO-8"}, {"14-Pin TSSOP", "TSSOP-14"}, {"TSSOP-08", "TSSOP-8"}, {"PDIP-8", "DIP-8"}, {"DIP8", "DIP-8"}, {"MSOP-8", "MSOP-8"},
        {"ESOP8", "HSOP-8"}, {"TO-92", "TO-92"}, {"TO-220AB", "TO-220"}, {"TO-220FM", "TO-220F"}, {"TO-252", "TO-252"}, {"DPAK", "TO-252"}, {"D2PAK", "TO-263"},
        {"QFN-16", "QFN-16"}, {"WSON-6", "WSON-6"}, {"DFN8", "DFN-8"}, {"(SOT-23-5)", "SOT-23-5"}, {"SOT-223", "SOT-223"},
    };
    for (auto const& [printed, canonical] : kCases) EXPECT_EQ(canonicalPackage(printed), canonical) << printed;
}

TEST(PackageNames, OtherWordsAreNoPackages) {
    for (char const* word : {"", "SO", "so that", "DIP", "SOIC", "DFN 2x2", "QX2301", "SONIC 5", "to 3 V", "total 18", "SOT2301", "TO", "BSC74", "SON"}) {
        EXPECT_EQ(canonicalPackage(word), "") << word;
    }
}

TEST(PackageNames, PlaceAndLeads) {
    auto const name = findPackageName("QX71-SOT23-5L reel");
    ASSERT_TRUE(name);
    EXPECT_EQ(name->begin, 5U);
    EXPECT_EQ(name->end, 13U);
    EXPECT_EQ(name->pins, 5);
    auto const before = findPackageName("in 8-lead SOIC");
    ASSERT_TRUE(before);
    EXPECT_EQ(before->begin, 3U);
    EXPECT_EQ(before->pins, 8);
}

TEST(PackageNames, WordsThatMayBeginOneAreTold) {
    using standin::packages::mayBeginPackageName;
    struct Words {
        char const* word;
        char const* next;
    };
    for (auto const& [word, next] : {Words{"SOT-23", ""}, Words{"(sot23)", ""}, Words{"D", "2PAK"}, Words{"QX71-TSSOP", "8"}, Words{"8-lead", "SOIC"}, Words{"14", "Pin"},
                                     Words{"8", "-lead"}, Words{"8L", ""}}) {
        EXPECT_TRUE(mayBeginPackageName(word, next)) << word << ' ' << next;
    }
    for (auto const& [word, next] : {Words{"", ""}, Words{"3.3", "V"}, Words{"Ambient", "temperature"}, Words{"VCC", "5"}, Words{"10", ""}, Words{"BSOT", ""}}) {
        EXPECT_FALSE(mayBeginPackageName(word, next)) << word << ' ' << next;
    }
}

}  // namespace

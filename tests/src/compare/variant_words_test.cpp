#include "compare/variant_words.h"

#include <gtest/gtest.h>

namespace standin::compare {
namespace {

struct Case {
    std::string_view reference;
    std::string_view candidate;
    VariantRelation relation;
};

constexpr Case kCases[] = {
    {"", "", VariantRelation::Same},
    {"LQ20A", "lq20a", VariantRelation::Same},
    {"LQ20A", "", VariantRelation::OneUnstated},
    {"LQ20A, LQ20B", "LQ20B/LQ21", VariantRelation::Shares},
    {"LQ20A", "LQ20B", VariantRelation::Apart},
    {"QX7 -40 °C to +85 °C", "Tamb (°C) -40 to +85", VariantRelation::Shares},
    {"QX7 -40 °C to +85 °C", "Tamb (°C) -40 to +125", VariantRelation::Apart},
    {"QX7 25 °C", "Tamb (°C) +25", VariantRelation::Shares},
    {"QX7 25 °C", "RV7 25 °C", VariantRelation::Apart},
    {"+25°", "TA = 25°C", VariantRelation::Shares},
    {"+85°C", "-40 to 85°C", VariantRelation::Meets},
    {"-40°C", "-40 to 85°C", VariantRelation::Apart},
    {"-55 to 125°C", "-40 °C to +125 °C", VariantRelation::Meets},
    {"-55 to 125°C", "-55 °C to +85 °C", VariantRelation::Apart},
    {"+25°C", "-40 to 85°C", VariantRelation::Apart},
    {"QX7 -40 °C to +85 °C", "RV7 -40 °C to +85 °C", VariantRelation::Apart},
    {"74XC20 -40 °C to +85 °C", "74XC -40 °C to +85 °C", VariantRelation::Shares},
    {"74XC20 -40 °C to +85 °C", "74XCT -40 °C to +85 °C", VariantRelation::Apart},
    {"74XC20", "74XCT20", VariantRelation::Apart},
    {"LQ2", "LQ20", VariantRelation::Apart},
    {"3.3 V", "3.3", VariantRelation::Shares},
    {"LQ20_C", "LQ204C", VariantRelation::Shares},
    {"LQ20_C", "LQ204AC", VariantRelation::Apart},
    {"LQ20_AC", "LQ204C, AC, BC", VariantRelation::Shares},
    {"LQ20_BC", "LQ204I,M,AC,AI", VariantRelation::Apart},
    {"LQ78XX", "LQ7805", VariantRelation::Shares},
    {"LQ78xx", "LQ78L05", VariantRelation::Apart},
    {"LQ20x", "LQ20A", VariantRelation::Apart},
    {"LQX5", "LQ25", VariantRelation::Apart},
    {"LQ20A/B", "LQ20B", VariantRelation::Shares},
    {"standard", "low power", VariantRelation::Apart},
};

TEST(VariantWords, MeetByCodeOrByTheNumbersOfTheColumn) {
    for (auto const& c : kCases) {
        EXPECT_EQ(relateVariants(variantWords(c.reference), variantWords(c.candidate)), c.relation) << c.reference << " : " << c.candidate;
        EXPECT_EQ(relateVariants(variantWords(c.candidate), variantWords(c.reference)), c.relation) << "exchanged " << c.reference << " : " << c.candidate;
    }
}

TEST(StandsForCode, WhereAFamilyIsOpen) {
    EXPECT_TRUE(standsForCode("xq20_c", "xq204cd"));
    EXPECT_TRUE(standsForCode("xq78xx", "xq7805ct"));
    EXPECT_FALSE(standsForCode("xq20_c", "xq204acd"));
    EXPECT_FALSE(standsForCode("xq78xx", "xq78l05"));
    EXPECT_FALSE(standsForCode("xq20", "xq204c"));  // nothing is open
    EXPECT_FALSE(standsForCode("xq20_c", "xq"));
}

}  // namespace
}  // namespace standin::compare

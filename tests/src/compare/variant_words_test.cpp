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
    {"standard", "low power", VariantRelation::Apart},
};

TEST(VariantWords, MeetByCodeOrByTheNumbersOfTheColumn) {
    for (auto const& c : kCases) {
        EXPECT_EQ(relateVariants(variantWords(c.reference), variantWords(c.candidate)), c.relation) << c.reference << " : " << c.candidate;
        EXPECT_EQ(relateVariants(variantWords(c.candidate), variantWords(c.reference)), c.relation) << "exchanged " << c.reference << " : " << c.candidate;
    }
}

}  // namespace
}  // namespace standin::compare

#include "model/recognised.h"

#include <gtest/gtest.h>

namespace standin::model {
namespace {

TEST(IsRecognised, GoesByPlace) {
    Coverage coverage;
    coverage.recognised = {{"4.5 ms", 2, {40, 10, 90, 20}}};
    EXPECT_TRUE(isRecognised(coverage, 2, {10, 9, 100, 21}));
    EXPECT_TRUE(isRecognised(coverage, 2, {50, 12, 60, 18}));
    EXPECT_FALSE(isRecognised(coverage, 1, {10, 9, 100, 21})) << "another page";
    EXPECT_FALSE(isRecognised(coverage, 2, {10, 18.5F, 100, 30})) << "the line below";
    EXPECT_FALSE(isRecognised(coverage, 2, {91, 10, 100, 20})) << "beside it";
    EXPECT_FALSE(isRecognised({}, 2, {40, 10, 90, 20}));
}

}  // namespace
}  // namespace standin::model

#include "compare/device_codes.h"

#include <gtest/gtest.h>

namespace standin::compare {
namespace {

TEST(DeviceCodes, TellTheDevicesOfASeriesApart) {
    DeviceCodes const codes({"qx2472RGT", "qx2473RGT", "VBAT"}, {"QX2472", "QX2473", "QX2478"});
    EXPECT_TRUE(codes.areOthers("qx2473RGT", "QX2478")) << "the first has its own row there";
    EXPECT_TRUE(codes.areOthers("qx2472RGT", "QX2473"));
    EXPECT_FALSE(codes.areOthers("qx2472RGT", "QX2472"));
    EXPECT_FALSE(codes.areOthers("VBAT", "QX2478")) << "no code";
    EXPECT_FALSE(codes.areOthers("SOT-23-6", "QX2478")) << "known to neither";
}

TEST(DeviceCodes, ACodeThatWasChangedInOneSignStaysInItsRow) {
    DeviceCodes const codes({"QX2472A", "QX2472B"}, {"QX2472B", "QX2472B"});
    EXPECT_FALSE(codes.areOthers("QX2472A", "QX2472B"));
}

TEST(DeviceCodes, ANewSeriesIsNoOtherDevice) {
    DeviceCodes const codes({"QX2472A", "QX2473A"}, {"ZL9901", "ZL9902"});
    EXPECT_FALSE(codes.areOthers("QX2472A", "ZL9901")) << "neither meets a row of its own";
}

}  // namespace
}  // namespace standin::compare

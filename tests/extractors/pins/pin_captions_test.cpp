#include "extractors/pins/pin_captions.h"

#include <gtest/gtest.h>

#include "extractors/pins/page_builder.h"

namespace {

using namespace standin::pins;
using standin::pins::testing::PageBuilder;
namespace model = standin::model;

constexpr model::Rect kBox{150, 150, 200, 200};

TEST(PinCaptions, ThePackageNamePrintedNearest) {
    PageBuilder page;
    page.line(150, 100, "SOT-23-6").line(150, 215, "DFN-8 (top view)").line(400, 205, "SOT-89-3");
    EXPECT_EQ(captionOf(page.page(), kBox), "DFN-8");
}

TEST(PinCaptions, TheFirstWordsOfTheFrame) {
    PageBuilder page;
    page.frame({100, 100, 300, 250}).frame({300, 100, 500, 250}).line(105, 104, "PQ1").line(200, 106, "Connection").line(305, 104, "PQ2").line(105, 220, "Top view");
    EXPECT_EQ(captionOf(page.page(), kBox), "PQ1");
    // of the frame, not of a drawing whose lines meet nothing
    page.frame({145, 140, 205, 141});
    EXPECT_EQ(captionOf(page.page(), kBox), "PQ1");
}

TEST(PinCaptions, NoneWithoutAFrameOrInOneAroundThePage) {
    PageBuilder page;
    page.line(105, 104, "PQ1");
    EXPECT_EQ(captionOf(page.page(), kBox), "");
    page.frame({20, 20, 580, 780}).line(25, 24, "Data sheet");
    EXPECT_EQ(captionOf(page.page(), kBox), "");
}

}  // namespace

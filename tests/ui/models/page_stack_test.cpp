#include "ui/models/page_stack.h"

#include <gtest/gtest.h>

namespace standin::ui {
namespace {

PageStack twoPages() {
    PageStack stack;
    stack.setPages({{0, 0, 200, 300}, {0, 0, 400, 100}});
    return stack;
}

TEST(PageStack, PagesStandBelowEachOtherInTheMiddle) {
    auto const stack = twoPages();
    EXPECT_LT(stack.rectOf(1).bottom(), stack.rectOf(2).top());
    EXPECT_NEAR(stack.rectOf(1).center().x(), stack.rectOf(2).center().x(), 1);
    EXPECT_GE(stack.size().width(), 400);
}

TEST(PageStack, PlacesComeBackInEveryTurn) {
    auto stack = twoPages();
    stack.setZoom(1.5);
    model::Rect const box{20, 30, 60, 50};
    for (int quarter = 0; quarter < 4; ++quarter) {
        for (int page = 1; page <= 2; ++page) {
            auto const place = stack.toStack(page, box);
            EXPECT_TRUE(stack.rectOf(page).contains(place)) << quarter;
            auto const back = stack.toPage(place.center());
            ASSERT_TRUE(back);
            EXPECT_EQ(back->page, page);
            EXPECT_NEAR(back->point.x, 40, 0.01);
            EXPECT_NEAR(back->point.y, 40, 0.01);
        }
        stack.turn();
    }
    EXPECT_EQ(stack.quarters(), 0);
}

TEST(PageStack, ATurnedPageIsWideWhereItWasHigh) {
    auto stack = twoPages();
    stack.turn();
    EXPECT_EQ(stack.rectOf(1).size(), QSizeF(300, 200));
    // Clockwise: what was at the top left is at the top right.
    auto const corner = stack.toStack(1, {0, 0, 10, 10});
    EXPECT_EQ(corner.right(), stack.rectOf(1).right());
    EXPECT_EQ(corner.top(), stack.rectOf(1).top());
}

TEST(PageStack, FitsWidthAndPage) {
    auto stack = twoPages();
    stack.setRoom(500);
    stack.setZoom(stack.zoomForWidth(500));
    EXPECT_LE(stack.size().width(), 500.5);
    EXPECT_GT(stack.rectOf(2).width(), 470);
    stack.setZoom(stack.zoomForPage(1, {500, 400}));
    EXPECT_LE(stack.rectOf(1).height(), 400);
}

TEST(PageStack, FindsThePageAtAHeight) {
    auto const stack = twoPages();
    EXPECT_EQ(stack.pageAt(-50), 1);
    EXPECT_EQ(stack.pageAt(stack.rectOf(1).center().y()), 1);
    EXPECT_EQ(stack.pageAt(stack.rectOf(2).center().y()), 2);
    EXPECT_EQ(stack.pageAt(1e6), 2);
    EXPECT_FALSE(stack.toPage({-5, 50}));
}

TEST(PageStack, WithoutPagesThereIsNothing) {
    PageStack stack;
    EXPECT_EQ(stack.pageAt(10), 0);
    EXPECT_FALSE(stack.size().isValid() && stack.size().height() > 0);
}

TEST(PageStack, ZoomIsBoundedAndAnUnreadablePageHasRoom) {
    PageStack stack;
    stack.setPages({{}});
    stack.setZoom(1e9);
    EXPECT_EQ(stack.zoom(), kLargestZoom);
    EXPECT_GT(stack.rectOf(1).height(), 100);
}

}  // namespace
}  // namespace standin::ui

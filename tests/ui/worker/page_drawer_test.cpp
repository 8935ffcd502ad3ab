// Pictures of pages drawn in the background, and wishes that are given up.
#include "ui/worker/page_drawer.h"

#include <QTest>
#include <QThread>

#include <gtest/gtest.h>

#include "ui/support/desk_test.h"
#include "ui/worker/pair_worker.h"

namespace standin::ui {
namespace {

using testing::demoRequest;

constexpr int kLongestMs = 60000;
constexpr int kLongEnoughToDrawMs = 300;  // mostly

PairPointer const& demoPair() {
    static PairPointer const pair = *readAndCompare(demoRequest(), {});
    return pair;
}

struct Heard {
    std::vector<PictureWish> drawn;
    std::vector<PicturePointer> pictures;
    std::vector<DocumentSide> opened;
    QStringList failed;

    explicit Heard(PageDrawer& drawer) {
        QObject::connect(&drawer, &PageDrawer::drawn, &drawer, [this](PictureWish const& wish, PicturePointer const& picture) {
            drawn.push_back(wish);
            pictures.push_back(picture);
        });
        QObject::connect(&drawer, &PageDrawer::opened, &drawer, [this](DocumentSide side) { opened.push_back(side); });
        QObject::connect(&drawer, &PageDrawer::failed, &drawer, [this](DocumentSide, int, QString const& why) { failed += why; });
    }
};

TEST(PageDrawer, OpensBothAndDrawsWhatIsWished) {
    PageDrawer drawer;
    Heard heard(drawer);
    drawer.setPair(demoPair());
    ASSERT_TRUE(QTest::qWaitFor([&] { return heard.opened.size() == 2; }, kLongestMs));
    ASSERT_EQ(drawer.pageBoxes(DocumentSide::Reference).size(), static_cast<std::size_t>(demoPair()->reference.document.pages));
    PictureWish const wish{DocumentSide::Candidate, 2, {50, 50, 250, 150}, 1.5};
    drawer.want(&drawer, {wish});
    QThread::msleep(kLongEnoughToDrawMs);
    EXPECT_FALSE(drawer.isIdle()) << "until it has come";
    ASSERT_TRUE(QTest::qWaitFor([&] { return !heard.drawn.empty() && drawer.isIdle(); }, kLongestMs));
    EXPECT_EQ(heard.drawn.front(), wish);
    EXPECT_EQ(heard.pictures.front()->width, 300);
    EXPECT_EQ(heard.pictures.front()->height, 150);
}

TEST(PageDrawer, GivenUpWishesAreNotDrawn) {
    PageDrawer drawer;
    Heard heard(drawer);
    drawer.setPair(demoPair());
    ASSERT_TRUE(QTest::qWaitFor([&] { return heard.opened.size() == 2; }, kLongestMs));
    std::vector<PictureWish> many;
    for (int page = 1; page <= demoPair()->reference.document.pages; ++page) many.push_back({DocumentSide::Reference, page, drawer.pageBoxes(DocumentSide::Reference).front(), 2});
    drawer.want(&drawer, many);
    PictureWish const last{DocumentSide::Reference, 1, {0, 0, 60, 60}, 1};
    drawer.want(&drawer, {last});
    ASSERT_TRUE(QTest::qWaitFor([&] { return !heard.drawn.empty() && heard.drawn.back() == last; }, kLongestMs));
    EXPECT_EQ(drawer.waiting(), 0U);
    EXPECT_LT(heard.drawn.size(), many.size()) << "what was under way, and the last";
}

TEST(PageDrawer, EachClientKeepsItsOwnWishes) {
    PageDrawer drawer;
    Heard heard(drawer);
    drawer.setPair(demoPair());
    QObject one;
    QObject other;
    drawer.want(&one, {{DocumentSide::Reference, 1, {0, 0, 60, 60}, 1}});
    drawer.want(&other, {{DocumentSide::Reference, 1, {0, 0, 90, 60}, 1}});
    EXPECT_TRUE(QTest::qWaitFor([&] { return heard.drawn.size() == 2; }, kLongestMs));
}

TEST(PageDrawer, NothingComesForAPairThatWasLeft) {
    PageDrawer drawer;
    Heard heard(drawer);
    drawer.setPair(demoPair());
    drawer.want(&drawer, {{DocumentSide::Reference, 1, {0, 0, 500, 700}, 3}});
    drawer.setPair(nullptr);
    QTest::qWait(200);
    EXPECT_TRUE(heard.opened.empty());
    EXPECT_TRUE(heard.drawn.empty());
}

TEST(PageDrawer, MayBeDestroyedWhileItDraws) {
    auto drawer = std::make_unique<PageDrawer>();
    drawer->setPair(demoPair());
    drawer->want(drawer.get(), {{DocumentSide::Reference, 1, {0, 0, 500, 700}, 3}});
    drawer.reset();
    QTest::qWait(20);  // nothing that is still queued may come
    SUCCEED();
}

TEST(PageDrawer, TellsThatADocumentHasNoPages) {
    auto pair = std::make_shared<ReadPair>(*demoPair());
    pair->referenceBytes.clear();
    pair->candidateBytes = "%PDF-1.4 and no more";
    PageDrawer drawer;
    Heard heard(drawer);
    drawer.setPair(pair);
    ASSERT_TRUE(QTest::qWaitFor([&] { return heard.failed.size() == 2; }, kLongestMs));
    EXPECT_FALSE(drawer.trouble(DocumentSide::Reference).empty());
    EXPECT_FALSE(drawer.trouble(DocumentSide::Candidate).empty());
}

TEST(PageDrawer, APageThatDoesNotExistIsToldByItself) {
    PageDrawer drawer;
    Heard heard(drawer);
    drawer.setPair(demoPair());
    drawer.want(&drawer, {{DocumentSide::Reference, 999, {0, 0, 50, 50}, 1}, {DocumentSide::Reference, 1, {0, 0, 50, 50}, 1}});
    ASSERT_TRUE(QTest::qWaitFor([&] { return heard.drawn.size() == 1; }, kLongestMs));
    EXPECT_EQ(heard.failed.size(), 1);
    EXPECT_TRUE(drawer.trouble(DocumentSide::Reference).empty());
}

}  // namespace
}  // namespace standin::ui

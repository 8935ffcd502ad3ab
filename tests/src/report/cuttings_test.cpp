#include "report/cuttings.h"

#include <gtest/gtest.h>

#include "sheet_pictures.h"

namespace standin::report {
namespace {

using model::Rect;
using model::Side;

Side sideAt(int page, Rect const& box) { return {page, box, "4.275 V", "", "", "", "", ""}; }

TEST(Cuttings, ShowThePlaceWithWhatIsAroundIt) {
    SheetPictures pictures(3);
    Cuttings cuttings({&pictures, nullptr});
    struct Case {
        char const* what;
        Rect box;
    };
    for (auto const& c : {Case{"a row", {60, 300, 540, 312}}, Case{"a word", {280, 400, 300, 410}}, Case{"a word at the left edge", {0, 10, 20, 20}},
                          Case{"a word at the bottom right", {575, 832, 595, 842}}, Case{"a figure", {50, 100, 545, 800}}}) {
        auto const* cutting = cuttings.of(DocumentSide::Reference, sideAt(2, c.box));
        ASSERT_NE(cutting, nullptr) << c.what;
        EXPECT_EQ(cutting->page, 2);
        EXPECT_TRUE(cutting->picture.box.grown(0.1F).contains(c.box)) << c.what;
        EXPECT_TRUE(cutting->picture.box.grown(0.1F).contains(cutting->place)) << c.what;
        EXPECT_TRUE(cutting->place.grown(0.1F).contains(c.box)) << c.what;
        EXPECT_GE(cutting->picture.box.width(), 300) << c.what;
        EXPECT_LE(cutting->picture.width, 1101) << c.what;
        EXPECT_LE(cutting->picture.height, 641) << c.what;
    }
}

TEST(Cuttings, DrawEachPlaceOnceForAllReports) {
    SheetPictures pictures(3);
    Cuttings cuttings({&pictures, &pictures});
    auto const* first = cuttings.of(DocumentSide::Reference, sideAt(1, {60, 300, 540, 312}));
    EXPECT_EQ(cuttings.of(DocumentSide::Reference, sideAt(1, {60.1F, 300, 540, 312})), first);
    EXPECT_EQ(pictures.drawn, 1);
    auto const* other = cuttings.of(DocumentSide::Candidate, sideAt(1, {60, 300, 540, 312}));
    ASSERT_NE(other, nullptr);
    EXPECT_NE(other->number, first->number);
    EXPECT_EQ(pictures.drawn, 2);
}

TEST(Cuttings, HaveNoneWhereNothingCanBeShown) {
    SheetPictures pictures(3);
    Cuttings cuttings({&pictures, nullptr});
    EXPECT_EQ(cuttings.of(DocumentSide::Candidate, sideAt(1, {60, 300, 540, 312})), nullptr);  // given as JSON
    EXPECT_EQ(cuttings.of(DocumentSide::Reference, sideAt(0, {60, 300, 540, 312})), nullptr);  // no page
    EXPECT_EQ(cuttings.of(DocumentSide::Reference, sideAt(9, {60, 300, 540, 312})), nullptr);  // not such a page
    EXPECT_EQ(cuttings.of(DocumentSide::Reference, sideAt(1, {})), nullptr);                   // no place
    EXPECT_EQ(cuttings.of(DocumentSide::Reference, sideAt(1, {700, 300, 740, 312})), nullptr);
    EXPECT_FALSE(cuttings.full());
}

TEST(Cuttings, AreBoundedAndSaySo) {
    SheetPictures pictures(3);
    Cuttings cuttings({&pictures, nullptr});
    int shown = 0;
    for (int i = 0; i < 400; ++i) shown += cuttings.of(DocumentSide::Reference, sideAt(1, {60, static_cast<float>(i * 2), 540, static_cast<float>(i * 2 + 10)})) != nullptr ? 1 : 0;
    EXPECT_GT(shown, 100);
    EXPECT_LE(shown, 200);
    EXPECT_TRUE(cuttings.full());
    EXPECT_EQ(pictures.drawn, shown);
}

TEST(ShowsCuttings, ForHazardFunctionAndFigures) {
    model::Finding finding;
    for (auto const severity : {model::Severity::Hazard, model::Severity::Function}) {
        finding.severity = severity;
        EXPECT_TRUE(showsCuttings(finding));
    }
    finding.severity = model::Severity::Margin;
    EXPECT_FALSE(showsCuttings(finding));
    finding.kind = model::FindingKind::Figure;
    EXPECT_TRUE(showsCuttings(finding));
}

}  // namespace
}  // namespace standin::report

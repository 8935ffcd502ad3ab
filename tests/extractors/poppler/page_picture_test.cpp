// Pictures of tiny pages: the pixel under a known mark is dark, its neighbours
// outside are not; crop box, rotation, bounds, errors, threads.
#include "extractors/poppler/page_picture.h"

#include <limits>
#include <thread>

#include <gtest/gtest.h>

#include "extractors/poppler/read_helper.h"
#include "support/encrypted_pdf.h"

namespace standin::poppler {
namespace {

using model::ErrorKind;
using model::Picture;
using model::Rect;
using testing::PdfPage;
using testing::PdfWriter;

std::unique_ptr<PagePicture> opened(PdfPage const& page) {
    PdfWriter pdf;
    pdf.page(page);
    auto pictures = PagePicture::open(pdf.bytes(), {});
    if (!pictures) {
        ADD_FAILURE() << pictures.error().message;
        return nullptr;
    }
    return std::move(*pictures);
}

enum class Shade { Dark, Light, Between };

Shade shadeAt(Picture const& picture, model::Points x, model::Points y) {
    auto const place = (static_cast<std::size_t>(picture.row(y)) * static_cast<std::size_t>(picture.width) + static_cast<std::size_t>(picture.column(x))) * 3;
    int const sum = picture.rgb.at(place) + picture.rgb.at(place + 1) + picture.rgb.at(place + 2);
    if (sum < 60) return Shade::Dark;
    return sum > 700 ? Shade::Light : Shade::Between;
}

// A black square of 20 points at (40, 30) from the top left of a 200 by 100 page.
constexpr char const* kSquare = "0 0 0 rg 40 50 20 20 re f";

TEST(PagePicture, PutsAMarkWhereItStandsOnThePage) {
    auto const pictures = opened({.content = kSquare, .mediaBox = "0 0 200 100"});
    ASSERT_TRUE(pictures);
    EXPECT_EQ(pictures->pageCount(), 1);
    EXPECT_EQ(*pictures->pageBox(1), (Rect{0, 0, 200, 100}));
    for (double const scale : {0.5, 1.0, 2.0, 3.7}) {
        auto const whole = pictures->render(1, {0, 0, 200, 100}, scale);
        ASSERT_TRUE(whole) << scale;
        EXPECT_EQ(whole->rgb.size(), static_cast<std::size_t>(whole->width) * static_cast<std::size_t>(whole->height) * 3);
        EXPECT_NEAR(whole->width, 200 * scale, 1) << scale;
        EXPECT_EQ(shadeAt(*whole, 50, 40), Shade::Dark) << scale;
        EXPECT_EQ(shadeAt(*whole, 36, 40), Shade::Light) << scale;
        EXPECT_EQ(shadeAt(*whole, 50, 54), Shade::Light) << scale;
    }
}

TEST(PagePicture, ShowsOnlyTheBoxAndSaysWhichPartItShows) {
    auto const pictures = opened({.content = kSquare, .mediaBox = "0 0 200 100"});
    ASSERT_TRUE(pictures);
    auto const cutting = pictures->render(1, {45, 35, 75, 45}, 2);
    ASSERT_TRUE(cutting);
    EXPECT_EQ(cutting->width, 60);
    EXPECT_EQ(cutting->height, 20);
    EXPECT_EQ(cutting->box, (Rect{45, 35, 75, 45}));
    EXPECT_EQ(shadeAt(*cutting, 46, 36), Shade::Dark);
    EXPECT_EQ(shadeAt(*cutting, 58, 44), Shade::Dark);
    EXPECT_EQ(shadeAt(*cutting, 62, 40), Shade::Light);
    EXPECT_EQ(cutting->column(45), 0);
    EXPECT_EQ(cutting->column(60), 30);
    EXPECT_EQ(cutting->row(45), 20);
}

TEST(PagePicture, WidensABoxToWholePixels) {
    auto const pictures = opened({.content = kSquare, .mediaBox = "0 0 200 100"});
    ASSERT_TRUE(pictures);
    auto const cutting = pictures->render(1, {45.3F, 35.6F, 74.2F, 44.1F}, 1);
    ASSERT_TRUE(cutting);
    EXPECT_EQ(cutting->box, (Rect{45, 35, 75, 45}));
    EXPECT_EQ(cutting->width, 30);
}

TEST(PagePicture, CutsOffWhatLiesOutsideThePage) {
    auto const pictures = opened({.content = kSquare, .mediaBox = "0 0 200 100"});
    ASSERT_TRUE(pictures);
    auto const corner = pictures->render(1, {-50, -50, 20, 10}, 1);
    ASSERT_TRUE(corner);
    EXPECT_EQ(corner->box, (Rect{0, 0, 20, 10}));
    for (Rect const& outside : {Rect{300, 10, 340, 20}, Rect{-40, 10, -5, 20}, Rect{10, 100, 20, 120}, Rect{}, Rect{20, 20, 10, 10}}) {
        auto const none = pictures->render(1, outside, 1);
        ASSERT_FALSE(none);
        EXPECT_EQ(none.error().kind, ErrorKind::Usage);
        EXPECT_EQ(none.error().page, 1);
    }
}

TEST(PagePicture, AppliesRotationAndCropBoxLikeTheReading) {
    // The square is read at the same place as it is drawn, whichever way the page is turned.
    for (std::string const turned : {"0", "90", "180", "270"}) {
        PdfPage const page{.content = kSquare, .entries = "/CropBox [20 10 180 90] /Rotate " + turned, .mediaBox = "0 0 200 100"};
        auto const content = readPage(page);
        ASSERT_EQ(content.fills.size(), 1U) << turned;
        Rect const box = content.fills.front().box;
        auto const pictures = opened(page);
        ASSERT_TRUE(pictures);
        auto const whole = pictures->pageBox(1);
        ASSERT_TRUE(whole);
        EXPECT_EQ(whole->width(), content.width) << turned;
        EXPECT_EQ(whole->height(), content.height) << turned;
        auto const picture = pictures->render(1, box.grown(8), 2);
        ASSERT_TRUE(picture) << turned;
        EXPECT_EQ(shadeAt(*picture, box.x0 + 2, box.y0 + 2), Shade::Dark) << turned;
        EXPECT_EQ(shadeAt(*picture, box.x1 - 2, box.y1 - 2), Shade::Dark) << turned;
        EXPECT_EQ(shadeAt(*picture, box.x0 - 4, box.y0 + 4), Shade::Light) << turned;
        EXPECT_EQ(shadeAt(*picture, box.x1 + 4, box.y1 - 4), Shade::Light) << turned;
    }
}

TEST(PagePicture, SmoothsEdges) {
    auto const pictures = opened({.content = "0 0 0 rg 10 10 m 90 80 l 10 80 l h f"});
    ASSERT_TRUE(pictures);
    auto const picture = pictures->render(1, {0, 110, 100, 200}, 1);
    ASSERT_TRUE(picture);
    auto const between = [&] {
        int count = 0;
        for (std::uint8_t const value : picture->rgb) count += value > 20 && value < 235 ? 1 : 0;
        return count;
    }();
    EXPECT_GT(between, 60);
}

TEST(PagePicture, DrawsAnEnormousPageSmaller) {
    auto const pictures = opened({.content = "0 0 0 rg 0 0 7000 14000 re f", .mediaBox = "0 0 14000 14000"});
    ASSERT_TRUE(pictures);
    auto const picture = pictures->render(1, {0, 0, 14000, 14000}, 8);
    ASSERT_TRUE(picture);
    EXPECT_LT(static_cast<double>(picture->width) * picture->height, 25e6);
    EXPECT_EQ(shadeAt(*picture, 3000, 3000), Shade::Dark);
    EXPECT_EQ(shadeAt(*picture, 11000, 3000), Shade::Light);
}

TEST(PagePicture, RefusesScalesThatAreNone) {
    auto const pictures = opened({.content = kSquare});
    ASSERT_TRUE(pictures);
    for (double const scale : {0.0, -1.0, std::numeric_limits<double>::infinity(), std::numeric_limits<double>::quiet_NaN()}) {
        EXPECT_FALSE(pictures->render(1, {0, 0, 10, 10}, scale)) << scale;
    }
    // Only a narrow place at a huge scale: still within the bounds.
    for (Rect const& narrow : {Rect{10, 10, 12, 12}, Rect{190, 10, 190.01F, 10.01F}}) {
        auto const huge = pictures->render(1, narrow, 1e9);
        ASSERT_TRUE(huge);
        EXPECT_LT(static_cast<double>(huge->width) * huge->height, 25e6);
        EXPECT_TRUE(huge->box.grown(0.01F).contains(narrow));
    }
}

TEST(PagePicture, SaysWhatIsWrong) {
    auto const pictures = opened({.content = kSquare});
    ASSERT_TRUE(pictures);
    for (int const page : {0, 2, -1}) {
        auto const none = pictures->render(page, {0, 0, 10, 10}, 1);
        ASSERT_FALSE(none);
        EXPECT_EQ(none.error().kind, ErrorKind::Usage);
        EXPECT_FALSE(pictures->pageBox(page));
    }
    auto const damaged = PagePicture::open("%PDF-1.4 and nothing else", {});
    ASSERT_FALSE(damaged);
    EXPECT_EQ(damaged.error().kind, ErrorKind::Damaged);
    EXPECT_FALSE(PagePicture::open({}, {}));
}

TEST(PagePicture, OpensWithThePassword) {
    auto const bytes = testing::encryptedPdf("open sesame", "42 mV");
    auto const none = PagePicture::open(bytes, {});
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error().kind, ErrorKind::Encrypted);
    auto const pictures = PagePicture::open(bytes, "open sesame");
    ASSERT_TRUE(pictures);
    EXPECT_TRUE((*pictures)->render(1, {0, 0, 200, 200}, 1));
}

TEST(PagePicture, GivesTheSamePixelsAgainAndInOtherThreads) {
    PdfWriter pdf;
    for (int page = 0; page < 4; ++page) pdf.page({fmt::format("BT /F1 14 Tf 20 {} Td (Overcharge 4.2{} V) Tj ET 0 0 0 RG 10 10 180 90 re S", 150 - 20 * page, page)});
    auto const bytes = pdf.bytes();
    auto const drawAll = [&bytes] {
        std::vector<Picture> all;
        auto pictures = PagePicture::open(bytes, {});
        if (!pictures) return all;
        for (int page = 1; page <= (*pictures)->pageCount(); ++page) {
            if (auto picture = (*pictures)->render(page, {0, 0, 200, 200}, 2)) all.push_back(std::move(*picture));
        }
        return all;
    };
    auto const expected = drawAll();
    ASSERT_EQ(expected.size(), 4U);
    EXPECT_NE(expected[0], expected[1]);
    std::vector<Picture> first;
    std::vector<Picture> second;
    std::thread one([&] { first = drawAll(); });
    std::thread two([&] { second = drawAll(); });
    one.join();
    two.join();
    EXPECT_EQ(first, expected);
    EXPECT_EQ(second, expected);
}

}  // namespace
}  // namespace standin::poppler

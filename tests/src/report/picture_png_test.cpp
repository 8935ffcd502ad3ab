#include "report/picture_png.h"

#include <gtest/gtest.h>
#include <png.h>

namespace standin::report {
namespace {

using model::Picture;

// What another reader of PNG makes of the bytes, as RGB.
std::vector<std::uint8_t> decoded(std::string const& bytes, int& width, int& height) {
    png_image image{};
    image.version = PNG_IMAGE_VERSION;
    if (png_image_begin_read_from_memory(&image, bytes.data(), bytes.size()) == 0) return {};
    image.format = PNG_FORMAT_RGB;
    std::vector<std::uint8_t> pixels(PNG_IMAGE_SIZE(image));
    if (png_image_finish_read(&image, nullptr, pixels.data(), 0, nullptr) == 0) return {};
    width = static_cast<int>(image.width);
    height = static_cast<int>(image.height);
    return pixels;
}

Picture striped(int width, int height, std::uint8_t red, std::uint8_t green, std::uint8_t blue) {
    Picture picture{width, height, {0, 0, 10, 10}, {}};
    for (int i = 0; i < width * height; ++i) {
        bool const marked = i % 3 == 0;
        picture.rgb.push_back(marked ? red : 255);
        picture.rgb.push_back(marked ? green : 255);
        picture.rgb.push_back(marked ? blue : 255);
    }
    return picture;
}

TEST(PngOf, KeepsColoursExactly) {
    for (auto const& picture : {striped(7, 5, 200, 30, 10), striped(1, 1, 0, 0, 255), striped(64, 3, 1, 2, 3)}) {
        int width = 0;
        int height = 0;
        EXPECT_EQ(decoded(pngOf(picture), width, height), picture.rgb);
        EXPECT_EQ(width, picture.width);
        EXPECT_EQ(height, picture.height);
    }
}

TEST(PngOf, KeepsGreyToASixteenth) {
    for (int const width : {7, 8}) {
        auto const picture = striped(width, 5, 100, 100, 100);
        int readWidth = 0;
        int readHeight = 0;
        auto const pixels = decoded(pngOf(picture), readWidth, readHeight);
        ASSERT_EQ(pixels.size(), picture.rgb.size());
        for (std::size_t i = 0; i < pixels.size(); ++i) EXPECT_NEAR(pixels[i], picture.rgb[i], 9) << i;
    }
}

TEST(PngOf, HoldsNoTimeAndIsTheSameEachTime) {
    auto const png = pngOf(striped(30, 30, 100, 100, 100));
    EXPECT_EQ(png, pngOf(striped(30, 30, 100, 100, 100)));
    EXPECT_EQ(png.find("tIME"), std::string::npos);
}

TEST(PngOf, IsEmptyForAnEmptyOrContradictoryPicture) {
    EXPECT_TRUE(pngOf({}).empty());
    EXPECT_TRUE(pngDataUri({}).empty());
    auto picture = striped(4, 4, 0, 0, 0);
    picture.height = 5;
    EXPECT_TRUE(pngOf(picture).empty());
}

TEST(PngDataUri, IsBase64) {
    auto const uri = pngDataUri(striped(3, 3, 9, 9, 9));
    EXPECT_EQ(uri.rfind("data:image/png;base64,iVBORw0KGgo", 0), 0U);
    EXPECT_EQ(uri.find('\0'), std::string::npos);
    EXPECT_EQ((uri.size() - 22) % 4, 0U);
}

}  // namespace
}  // namespace standin::report

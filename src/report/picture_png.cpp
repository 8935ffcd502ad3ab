// A page is mostly black on white: sixteen shades of grey show its lettering as
// well as 256 do and take less than half the room. libpng's failures leave by
// longjmp; nothing that has to be destroyed may be made between here and there,
// so the buffers are made before.
//
// Tested by tests/src/report/picture_png_test.cpp.
#include "report/picture_png.h"

#include <csetjmp>
#include <cstdint>
#include <vector>

#include <openssl/evp.h>
#include <png.h>

namespace standin::report {

namespace {

constexpr int kGreyBits = 4;
constexpr int kColourBits = 8;

bool isGrey(model::Picture const& picture) {
    for (std::size_t i = 0; i + 2 < picture.rgb.size(); i += 3) {
        if (picture.rgb[i] != picture.rgb[i + 1] || picture.rgb[i] != picture.rgb[i + 2]) return false;
    }
    return true;
}

// Two pixels a byte, rows from whole bytes.
std::vector<std::uint8_t> packedGrey(model::Picture const& picture, std::size_t rowBytes) {
    std::vector<std::uint8_t> packed(rowBytes * static_cast<std::size_t>(picture.height));
    auto const width = static_cast<std::size_t>(picture.width);
    for (std::size_t row = 0; row < static_cast<std::size_t>(picture.height); ++row) {
        for (std::size_t column = 0; column < width; ++column) {
            constexpr int kStep = 255 / 15;
            auto const shade = static_cast<std::uint8_t>((picture.rgb[(row * width + column) * 3] + kStep / 2) / kStep);
            packed[row * rowBytes + column / 2] |= static_cast<std::uint8_t>(column % 2 == 0 ? shade << 4 : shade);
        }
    }
    return packed;
}

void append(png_structp png, png_bytep bytes, png_size_t count) {
    static_cast<std::string*>(png_get_io_ptr(png))->append(reinterpret_cast<char const*>(bytes), count);
}

void writeRows(png_structp png, png_infop info, model::Picture const& picture, int colourType, int bits, std::uint8_t const* rows, std::size_t rowBytes) {
    png_set_IHDR(png, info, static_cast<png_uint_32>(picture.width), static_cast<png_uint_32>(picture.height), bits, colourType, PNG_INTERLACE_NONE,
                 PNG_COMPRESSION_TYPE_DEFAULT, PNG_FILTER_TYPE_DEFAULT);
    png_set_compression_level(png, 9);
    png_write_info(png, info);
    for (int row = 0; row < picture.height; ++row) png_write_row(png, rows + static_cast<std::size_t>(row) * rowBytes);
    png_write_end(png, info);
}

}  // namespace

std::string pngOf(model::Picture const& picture) {
    auto const width = static_cast<std::size_t>(picture.width);
    if (picture.width <= 0 || picture.height <= 0 || picture.rgb.size() != width * static_cast<std::size_t>(picture.height) * 3) return {};
    bool const grey = isGrey(picture);
    std::size_t const rowBytes = grey ? (width + 1) / 2 : width * 3;
    auto const packed = grey ? packedGrey(picture, rowBytes) : std::vector<std::uint8_t>{};
    std::string bytes;
    png_structp png = png_create_write_struct(PNG_LIBPNG_VER_STRING, nullptr, [](png_structp failed, png_const_charp) { png_longjmp(failed, 1); }, [](png_structp, png_const_charp) {});
    if (png == nullptr) return {};
    png_infop info = png_create_info_struct(png);
    if (info == nullptr || setjmp(png_jmpbuf(png)) != 0) {
        png_destroy_write_struct(&png, &info);
        return {};
    }
    png_set_write_fn(png, &bytes, append, nullptr);
    writeRows(png, info, picture, grey ? PNG_COLOR_TYPE_GRAY : PNG_COLOR_TYPE_RGB, grey ? kGreyBits : kColourBits, grey ? packed.data() : picture.rgb.data(), rowBytes);
    png_destroy_write_struct(&png, &info);
    return bytes;
}

std::string pngDataUri(model::Picture const& picture) {
    auto const png = pngOf(picture);
    if (png.empty()) return {};
    std::string uri = "data:image/png;base64,";
    auto const start = uri.size();
    uri.resize(start + (png.size() + 2) / 3 * 4 + 1);  // and the zero that OpenSSL ends with
    int const length = EVP_EncodeBlock(reinterpret_cast<unsigned char*>(uri.data() + start), reinterpret_cast<unsigned char const*>(png.data()), static_cast<int>(png.size()));
    uri.resize(start + static_cast<std::size_t>(length));
    return uri;
}

}  // namespace standin::report

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

struct Rows {
    std::uint8_t const* first = nullptr;
    std::size_t bytes = 0;  // of a row
    int colourType = PNG_COLOR_TYPE_RGB;
    int bits = kColourBits;
};

// False where libpng gives up: it comes back to the setjmp, so nothing that this
// function sets itself is read after it.
bool writeRows(png_structp png, png_infop info, model::Picture const& picture, Rows const& rows, std::string& bytes) {
    if (setjmp(png_jmpbuf(png)) != 0) return false;
    png_set_write_fn(png, &bytes, append, nullptr);
    png_set_IHDR(png, info, static_cast<png_uint_32>(picture.width), static_cast<png_uint_32>(picture.height), rows.bits, rows.colourType, PNG_INTERLACE_NONE,
                 PNG_COMPRESSION_TYPE_DEFAULT, PNG_FILTER_TYPE_DEFAULT);
    png_set_compression_level(png, 9);
    png_write_info(png, info);
    for (int row = 0; row < picture.height; ++row) png_write_row(png, rows.first + static_cast<std::size_t>(row) * rows.bytes);
    png_write_end(png, info);
    return true;
}

}  // namespace

std::string pngOf(model::Picture const& picture) {
    auto const width = static_cast<std::size_t>(picture.width);
    if (picture.width <= 0 || picture.height <= 0 || picture.rgb.size() != width * static_cast<std::size_t>(picture.height) * 3) return {};
    Rows rows{.first = picture.rgb.data(), .bytes = width * 3};
    std::vector<std::uint8_t> packed;
    if (isGrey(picture)) {
        packed = packedGrey(picture, (width + 1) / 2);
        rows = {.first = packed.data(), .bytes = (width + 1) / 2, .colourType = PNG_COLOR_TYPE_GRAY, .bits = kGreyBits};
    }
    png_structp png = png_create_write_struct(PNG_LIBPNG_VER_STRING, nullptr, [](png_structp failed, png_const_charp) { png_longjmp(failed, 1); }, [](png_structp, png_const_charp) {});
    if (png == nullptr) return {};
    png_infop info = png_create_info_struct(png);
    std::string bytes;
    bool const written = info != nullptr && writeRows(png, info, picture, rows, bytes);
    png_destroy_write_struct(&png, &info);
    return written ? bytes : std::string{};
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

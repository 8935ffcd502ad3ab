// What was compressed comes back; what is damaged, cut short or too long does not.
#include "extractors/poppler/lzw.h"

#include <gtest/gtest.h>

#include "extractors/poppler/read_helper.h"
#include "support/lzw.h"

namespace standin::poppler {
namespace {

constexpr std::size_t kPlenty = 1U << 24U;

std::optional<std::string> unpackedText(std::string const& bytes, std::size_t most = kPlenty) {
    return unpackedLzw({reinterpret_cast<unsigned char const*>(bytes.data()), bytes.size()}, most);
}

std::string varied(std::size_t length, unsigned kinds) {
    std::string text;
    std::uint32_t state = 7;
    while (text.size() < length) {
        state = state * 1664525 + 1013904223;
        text += static_cast<char>((state >> 16U) % kinds);
    }
    return text;
}

TEST(Lzw, GivesBackWhatWasCompressed) {
    // Repetitions of one byte are the codes that are used before they are known; many kinds make all lengths of codes
    // and clear the table.
    for (std::string const& text : {std::string{}, std::string("4"), std::string("42 mV"), std::string(100000, 'a'), varied(300, 2), varied(60000, 3), varied(100000, 256)}) {
        EXPECT_EQ(unpackedText(testing::packedLzw(text)), text) << text.size();
    }
}

TEST(Lzw, KnowsTheExampleOfTheStandard) {
    unsigned char const packed[] = {0x80, 0x0B, 0x60, 0x50, 0x22, 0x0C, 0x0C, 0x85, 0x01};
    EXPECT_EQ(unpackedLzw(packed, kPlenty), "\x2D\x2D\x2D\x2D\x2D\x41\x2D\x2D\x2D\x42");
}

TEST(Lzw, IgnoresWhatFollowsTheEnd) { EXPECT_EQ(unpackedText(testing::packedLzw("42 mV") + "\r\nendstream"), "42 mV"); }

TEST(Lzw, RefusesWhatIsDamagedOrCutShort) {
    std::string const whole = testing::packedLzw(varied(5000, 20));
    EXPECT_FALSE(unpackedText(""));
    EXPECT_FALSE(unpackedText(whole.substr(0, whole.size() / 2)));
    EXPECT_FALSE(unpackedText(whole.substr(0, whole.size() - 2)));
    EXPECT_FALSE(unpackedText("\xFF\xFF\xFF"));          // no such code yet
    EXPECT_FALSE(unpackedText(std::string(9000, 'a')));  // never cleared
}

TEST(Lzw, RefusesMoreThanAllowed) {
    std::string const bytes = testing::packedLzw(std::string(10000, 'a'));
    EXPECT_TRUE(unpackedText(bytes, 10000));
    EXPECT_FALSE(unpackedText(bytes, 9999));
    EXPECT_FALSE(unpackedText(bytes, 0));
}

// Pages of old files read the same through it and, where it gives up, through Poppler.
TEST(Lzw, PagesAreReadThroughIt) {
    std::string const content = "BT /F1 10 Tf 20 100 Td (42 mV) Tj ET\n";
    std::string const packed = testing::packedLzw(content);
    testing::PdfWriter pdf;
    auto const page = [&pdf](std::string const& entries, std::string const& data) { pdf.page({.contents = fmt::format("{} 0 R", pdf.stream(entries, data))}); };
    page("/Filter /LZWDecode", packed);
    page("/Filter [/LZWDecode]", packed.substr(0, packed.size() - 1));
    page("/Filter /LZWDecode /DecodeParms << /EarlyChange 1 >>", packed);
    for (int number = 1; number <= 3; ++number) {
        auto const read = readPage(pdf.bytes(), number);
        EXPECT_EQ(textOf(read), "42 mV") << number;
        EXPECT_TRUE(read.notes.empty()) << number;
    }
}

}  // namespace
}  // namespace standin::poppler

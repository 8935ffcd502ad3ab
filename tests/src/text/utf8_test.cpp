#include "text/utf8.h"

#include <string>

#include <gtest/gtest.h>

namespace standin::text {
namespace {

TEST(Utf8, LowerCaseOfEveryByteAtEveryPlace) {
    for (int value = 0; value < 256; ++value) {
        char const byte = static_cast<char>(value);
        char const expected = isAsciiUpper(byte) ? static_cast<char>(byte + ('a' - 'A')) : byte;
        for (std::size_t place = 0; place < 17; ++place) {
            std::string printed =
                "\xFF"
                "Az@[`{\x80"
                "Zx\x7F"
                "AB9_-\xC3";
            std::string lower =
                "\xFF"
                "az@[`{\x80"
                "zx\x7F"
                "ab9_-\xC3";
            printed[place] = byte;
            lower[place] = expected;
            ASSERT_EQ(asciiLower(printed), lower) << value << " at " << place;
        }
    }
    EXPECT_EQ(asciiLower(""), "");
}

TEST(Utf8, DecodesWhatItAppends) {
    for (char32_t const code : {U'\0', U'A', U'\x7F', U'\x80', U'µ', U'\u07FF', U'\u0800', U'电', U'\uFFFF', U'\U00010000', U'\U0010FFFF'}) {
        std::string utf8 = "x";
        append(utf8, code);
        std::size_t at = 1;
        EXPECT_EQ(decodeNext(utf8, at), code);
        EXPECT_EQ(at, utf8.size());
    }
    std::string utf8;
    append(utf8, 0xD800);
    append(utf8, 0x110000);
    EXPECT_EQ(utf8, "\uFFFD\uFFFD");
}

TEST(Utf8, DecodingMovesByOneOverWhatStartsNothing) {
    for (std::string const& broken :
         {std::string("\x80"), std::string("\xC3"), std::string("\xC0\xAF"), std::string("\xE2\x82"), std::string("\xED\xA0\x80"), std::string("\xF5\x80\x80\x80")}) {
        std::size_t at = 0;
        EXPECT_EQ(decodeNext(broken, at), kReplacementCharacter);
        EXPECT_EQ(at, 1U);
    }
}

TEST(Utf8, TrimsSpacesOfAllKindsAtBothEnds) {
    struct Case {
        std::string_view text;
        std::string_view trimmed;
    };
    for (auto const& [printed, expected] : {Case{"", ""}, Case{"a", "a"}, Case{" a b ", "a b"}, Case{"\u00A0\u3000VDD\t\n", "VDD"}, Case{"µA", "µA"}, Case{" µA\u2009", "µA"},
                                            Case{" \u200B ", ""}, Case{"V\x7F", "V\x7F"}, Case{"\xC2 V", "\xC2 V"}}) {
        EXPECT_EQ(trimmed(printed), expected);
    }
}

}  // namespace
}  // namespace standin::text

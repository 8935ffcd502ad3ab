#include "extractors/poppler/to_unicode_map.h"

#include <algorithm>

#include <gtest/gtest.h>

namespace standin::poppler {
namespace {

std::string codesIn(std::string_view map) {
    auto const codes = codesOfMap(map);
    std::string out;
    for (std::size_t code = 0; code < codes.size(); ++code) {
        if (codes[code]) out += static_cast<char>(code);
    }
    return out;
}

TEST(ToUnicodeMap, ListsTheCodesOfBothKindsOfSections) {
    EXPECT_EQ(codesIn("2 beginbfchar <41> <0042> <43> <0044> endbfchar"), "AC");
    EXPECT_EQ(codesIn("beginbfrange <61> <63> <0041> <70> <71> [<0041> <0042>] endbfrange"), "abcpq");
    EXPECT_EQ(codesIn("% <41> is a comment\nbeginbfchar<41><0042>endbfchar beginbfrange<61><62><0030>endbfrange"), "Aab");
    EXPECT_EQ(codesIn("1 begincodespacerange <00> <FF> endcodespacerange"), "");
}

TEST(ToUnicodeMap, SkipsWhatIsMalformed) {
    EXPECT_EQ(codesIn("beginbfchar <zz> <0041> <0141> <0041> <42> <0041> endbfchar"), "B");
    EXPECT_EQ(codesIn("beginbfrange <63> <61> <0041> endbfrange"), "");
    EXPECT_EQ(codesIn("beginbfrange <61> <62> [<0041>"), "ab");
    EXPECT_EQ(codesIn("beginbfchar <41"), "");
    EXPECT_EQ(codesIn(""), "");
}

}  // namespace
}  // namespace standin::poppler

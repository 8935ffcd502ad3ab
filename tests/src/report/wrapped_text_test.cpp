#include "report/wrapped_text.h"

#include <gtest/gtest.h>

#include "text/visible.h"

namespace standin::report {
namespace {

TEST(AppendWrapped, NextLinesHangUnderTheFirst) {
    std::string out;
    appendWrapped(out, "label  ", std::string(70, 'a') + " bbbb");
    EXPECT_EQ(out, "label  " + std::string(70, 'a') + "\n       bbbb\n");
}

TEST(AppendWrapped, WordsLongerThanALineAndWideCharactersAreBroken) {
    std::string out;
    appendWrapped(out, "", std::string(200, 'x'));
    std::string wide;
    for (int i = 0; i < 60; ++i) wide += "电";
    appendWrapped(out, "  ", wide);
    std::size_t begin = 0;
    while (begin < out.size()) {
        auto const end = out.find('\n', begin);
        EXPECT_LE(text::columnWidth(out.substr(begin, end - begin)), kColumns);
        begin = end + 1;
    }
}

TEST(AppendWrapped, HiddenCharactersOfForeignTextAreShown) {
    std::string out;
    appendWrapped(out, "", "4.2\u202E5");
    EXPECT_EQ(out, "4.2⟨U+202E⟩5\n");
}

}  // namespace
}  // namespace standin::report

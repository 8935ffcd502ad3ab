#include "model/page_layout.h"

#include <gtest/gtest.h>

namespace standin::model {
namespace {

TEST(LineText, KeepsTheGapsThatArePrinted) {
    PageLayout page;
    for (auto const& [text, gap] : {std::pair{"SOT", true}, std::pair{"-23", false}, std::pair{"tape", true}, std::pair{"next", true}}) {
        Word word;
        word.text = text;
        word.spaceBefore = gap;
        page.words.push_back(word);
    }
    TextLine line;
    line.wordCount = 3;
    EXPECT_EQ(lineText(page, line), "SOT-23 tape");
    line.firstWord = 3;
    EXPECT_EQ(lineText(page, line), "next") << "and no word that is not there";
}

}  // namespace
}  // namespace standin::model

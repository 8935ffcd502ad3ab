// Tested by tests/src/model/page_layout_test.cpp.
#include "model/page_layout.h"

#include <algorithm>

namespace standin::model {

std::string lineText(PageLayout const& page, TextLine const& line) {
    std::string text;
    auto const end = std::min<std::size_t>(line.firstWord + line.wordCount, page.words.size());
    for (std::size_t w = line.firstWord; w < end; ++w) {
        if (!text.empty() && page.words[w].spaceBefore) text += ' ';
        text += page.words[w].text;
    }
    return text;
}

}  // namespace standin::model

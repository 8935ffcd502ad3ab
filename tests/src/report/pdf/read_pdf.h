// Reads back what the report wrote, with the reader of datasheets.
#pragma once

#include <string>
#include <vector>

#include "extractors/poppler/read_helper.h"

namespace standin::report {

// The text of each page, blanks as drawn.
inline std::vector<std::string> pageTexts(std::string const& pdf) {
    auto reader = poppler::DocumentReader::open(std::as_bytes(std::span(pdf)), {});
    if (!reader) {
        ADD_FAILURE() << reader.error().message;
        return {};
    }
    std::vector<std::string> texts;
    for (int page = 1; page <= reader->pageCount(); ++page) texts.push_back(poppler::textOf(*reader->readPage(page)));
    return texts;
}

inline std::string allText(std::string const& pdf) {
    std::string text;
    for (auto const& page : pageTexts(pdf)) text += page + "\n";
    return text;
}

}  // namespace standin::report

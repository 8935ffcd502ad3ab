// Our pass against the words of Poppler's own text interface: the same
// characters, page by page.
#ifdef STANDIN_HAS_ORACLE

#include <algorithm>
#include <map>
#include <memory>

#include <gtest/gtest.h>
#include <poppler-document.h>
#include <poppler-page.h>

#include "extractors/poppler/read_helper.h"

namespace standin::poppler {
namespace {

using testing::PdfPage;
using testing::PdfWriter;

using Counts = std::map<char32_t, int>;

Counts oursOf(model::PageContent const& page) {
    Counts counts;
    for (auto const& glyph : page.glyphs) {
        if (glyph.code != U' ' && !glyph.outside) ++counts[glyph.code];
    }
    return counts;
}

Counts theirsOf(std::string const& bytes, int page) {
    Counts counts;
    std::unique_ptr<::poppler::document> const document(::poppler::document::load_from_raw_data(bytes.data(), static_cast<int>(bytes.size())));
    std::unique_ptr<::poppler::page> const source(document->create_page(page - 1));
    for (auto const& word : source->text_list()) {
        auto const utf8 = word.text().to_utf8();
        std::string_view const text(utf8.data(), utf8.size());
        for (char32_t c : charactersOfTextString(std::string("\xEF\xBB\xBF") + std::string(text))) ++counts[c];
    }
    return counts;
}

TEST(TextOracle, HasTheSameCharactersAsTheTextInterface) {
    PdfWriter pdf;
    pdf.page({"BT /F1 10 Tf 20 150 Td (Delay 1.2 ms at 25 \\260C) Tj 0 -20 Td [(V) -200 (in) 100 (= 3.3)] TJ ET"});
    pdf.page({"BT /FS 10 Tf 20 150 Td (abc \\243) Tj /F2 8 Tf 3 Tc (spread) Tj ET"});
    PdfPage turned;
    turned.content = "BT /F1 10 Tf 0 1 -1 0 100 20 Tm (sideways 90) Tj ET";
    turned.entries = "/Rotate 90 /CropBox [10 10 190 190]";
    pdf.page(turned);
    std::string const bytes = pdf.bytes();
    for (int page = 1; page <= 3; ++page) {
        Counts const ours = oursOf(readPage(bytes, page));
        EXPECT_FALSE(ours.empty());
        EXPECT_EQ(ours, theirsOf(bytes, page)) << page;
    }
}

}  // namespace
}  // namespace standin::poppler

#endif

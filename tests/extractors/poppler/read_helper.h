// Reads a PDF made by a test, for the tests of this folder.
#pragma once

#include <string>

#include <gtest/gtest.h>

#include "extractors/poppler/actual_text.h"
#include "extractors/poppler/document_reader.h"
#include "support/pdf_writer.h"

namespace standin::poppler {

inline model::PageContent readPage(std::string const& bytes, int page = 1) {
    auto reader = DocumentReader::open(std::as_bytes(std::span(bytes)), {});
    if (!reader) {
        ADD_FAILURE() << reader.error().message;
        return {};
    }
    auto content = reader->readPage(page);
    if (!content) {
        ADD_FAILURE() << content.error().message;
        return {};
    }
    return *content;
}

inline model::PageContent readPage(testing::PdfPage const& page) {
    testing::PdfWriter pdf;
    pdf.page(page);
    return readPage(pdf.bytes());
}

// The characters in the order in which they are drawn, as UTF-8.
inline std::string textOf(model::PageContent const& page) {
    std::u32string text;
    for (model::Glyph const& glyph : page.glyphs) text += glyph.code;
    return utf8(text);
}

// True within a twentieth of a point.
inline ::testing::AssertionResult near(model::Rect const& box, model::Rect const& expected) {
    auto const close = [](model::Points a, model::Points b) { return std::abs(a - b) <= 0.05F; };
    if (close(box.x0, expected.x0) && close(box.y0, expected.y0) && close(box.x1, expected.x1) && close(box.y1, expected.y1)) return ::testing::AssertionSuccess();
    return ::testing::AssertionFailure() << fmt::format("[{} {} {} {}] instead of [{} {} {} {}]", box.x0, box.y0, box.x1, box.y1, expected.x0, expected.y0, expected.x1,
                                                        expected.y1);
}

}  // namespace standin::poppler

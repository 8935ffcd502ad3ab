// Replacement text ("ActualText"): what a stretch of the page is said to read.
// Private to extractors/poppler/; no Poppler.
//
// The glyphs of the stretch arrive as well. They are what is printed, so they
// win wherever digits disagree, and a note tells it; the replacement wins for
// ligatures, hyphens of a line's end and characters that the font cannot tell.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include "model/page_content.h"

namespace standin::poppler {

// A PDF text string (UTF-16 or UTF-8 with its mark, or PDFDocEncoding) as code
// points; what is invalid becomes U+FFFD.
[[nodiscard]] std::u32string charactersOfTextString(std::string_view bytes);

// The same as UTF-8 without control characters.
[[nodiscard]] std::string utf8OfTextString(std::string_view bytes);

[[nodiscard]] std::string utf8(std::u32string_view text);

class ActualTextSpan {
public:
    // A stretch begins; a stretch within a stretch is taken as part of it.
    void begin(std::u32string text, model::PageContent const& page);

    // It ends: `drawn` is the box of the drawings within it, used where the
    // stretch has no glyphs; `font` is the page font given to glyphs made then.
    void end(model::PageContent& page, model::Rect const& drawn);

    void reset() { m_depth = 0; }
    [[nodiscard]] bool active() const { return m_depth > 0; }

private:
    std::u32string m_text;
    std::size_t m_first = 0;
    int m_depth = 0;
};

}  // namespace standin::poppler

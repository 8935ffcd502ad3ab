// Words out of one line of runs: where words end, what joins a symbol and what is
// a mark beside it.
//
//     WordBuilder builder(content, found, frame, verticalRules);
//     builder.appendWords(line, words);     // words from left to right
#pragma once

#include <vector>

#include "extractors/layout/glyph_runs.h"
#include "extractors/layout/line_builder.h"
#include "extractors/layout/rule_index.h"
#include "model/page_layout.h"

namespace standin::layout {

// A word with its place in the frame; `word.box` is on the page.
struct WordDraft {
    model::Word word;
    model::Rect flow;
    model::Points baseline = 0;  // of its line, in the frame
    bool barBefore = false;  // a vertical rule stands between it and the word before
};

class WordBuilder {
public:
    // All arguments have to outlive the builder.
    WordBuilder(model::PageContent const& content, GlyphRuns const& found, Frame frame, RuleIndex const& bars);

    // Appends the words of `line`. Spaces are told by drawn white space and by
    // gaps relative to the font size; a vertical rule between two glyphs always
    // parts them. Letter-spaced headings are closed. Subscripts join their symbol,
    // exponents become Unicode superscripts, a raised "o" or "0" before C becomes
    // "°"; other superscripts are words of their own with spaceBefore = false.
    void appendWords(RunLine const& line, std::vector<WordDraft>& words);

private:
    enum class Joint { Joined, Touching, Spaced, Barred };

    void start(GlyphRun const& run, Joint joint);
    void extend(GlyphRun const& run, bool asExponent, bool asDegree);
    void finish(std::vector<WordDraft>& words);
    [[nodiscard]] Joint jointBetween(GlyphRun const& left, GlyphRun const& right) const;
    [[nodiscard]] char32_t firstCode(GlyphRun const& run) const;
    [[nodiscard]] char32_t lastCode(GlyphRun const& run) const;
    void readCodes(GlyphRun const& run);
    void findSpacedLetters(RunLine const& line);
    [[nodiscard]] bool isExponent(GlyphRun const* next) const;
    [[nodiscard]] bool isDegree(GlyphRun const* next) const;
    [[nodiscard]] bool joinsAsSuperscript() const;

    model::PageContent const& m_content;
    GlyphRuns const& m_found;
    Frame m_frame;
    RuleIndex const& m_bars;
    WordDraft m_draft;
    bool m_open = false;
    bool m_compose = false;
    std::u32string m_codes;      // of the run at hand
    std::u32string m_wordCodes;  // of the word at hand
    std::vector<Joint> m_spaced;      // for letter-spaced stretches: the joint before each run of the line
    std::vector<bool> m_inSpaced;
};

}  // namespace standin::layout

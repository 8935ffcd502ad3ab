// Runs of a line are taken from left to right. Between two of them stands one of
// four joints: joined, touching (two words without a space), spaced, barred (a
// vertical rule). The joint follows from drawn white space, the gap in font heights
// and the kind of characters on both sides. Superscripts are read by what they
// hold and what they follow. Tested by layout_test.cpp.
#include "extractors/layout/word_builder.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>

#include "extractors/layout/characters.h"
#include "text/fold.h"
#include "text/utf8.h"

namespace standin::layout {

namespace {

using model::Points;
using model::Script;

// In font heights of the bigger neighbour.
constexpr Points kGapNoSpaces = 0.16F;     // words are parted by movement only
constexpr Points kGapSpacesDrawn = 0.24F;  // white space is drawn: a bare gap may be kerning
constexpr Points kGapInNumber = 0.3F;      // around a decimal point
constexpr Points kGapTwoNumbers = 0.12F;   // between two numbers that both have a point
constexpr Points kGapDrawnSpace = 0.05F;   // a drawn space that takes no room is none
constexpr Points kGapSubscript = 0.28F;
constexpr Points kGapCjk = 0.5F;
constexpr Points kGapCjkDrawnSpace = 0.2F;
constexpr Points kGapTouching = 0.1F;
constexpr Points kOverprint = 0.5F;        // further back: another word on top
constexpr Points kBarSlack = 0.12F;
constexpr Points kBarHeight = 0.6F;        // a bar has to cover this much above the baseline
constexpr Points kSpacedFrom = 0.1F;       // letter-spaced stretches: gap between letters
constexpr Points kSpacedTo = 0.95F;
constexpr float kSpacedBreak = 1.6F;       // times the usual gap: a word ends
constexpr Points kSmallFigure = 0.8F;      // a figure this much smaller than the one before is a mark
constexpr std::size_t kSpacedLetters = 5;

bool isMinus(char32_t c) { return c == U'-' || c == 0x2212 || c == 0x2013 || c == 0x2010 || c == 0x2011 || c == 0xAD || c == 0x2012; }
bool isPoint(char32_t c) { return c == U'.' || c == U','; }

char32_t superscriptOf(char32_t c) {
    static constexpr std::array<char32_t, 10> kDigits{0x2070, 0xB9, 0xB2, 0xB3, 0x2074, 0x2075, 0x2076, 0x2077, 0x2078, 0x2079};
    if (isDigit(c)) return kDigits[c - U'0'];
    if (isMinus(c)) return 0x207B;
    if (c == U'+') return 0x207A;
    return c;
}

bool isDegreeShape(char32_t c) {
    return c == U'o' || c == U'O' || c == U'0' || c == 0xBA || c == 0x2DA || c == 0xB0 || c == 0x25E6 || c == 0x25CB || c == 0x2070 || c == 0x1D52;
}

char32_t cleanedCode(char32_t c) {
    if (c >= 0x20 && c < 0x7F) return c;
    if (c < 0x20 || (c >= 0x7F && c < 0xA0) || c > 0x10FFFF || (c >= 0xD800 && c <= 0xDFFF)) return model::kUnknownCharacter;
    if (c >= 0xF000 && c <= 0xF0FF && isBullet(c)) return 0x2022;
    return c;
}

// "-----------" between a name and its value.
bool isDashLeader(std::string_view word) {
    constexpr std::size_t kLeast = 8;
    return word.size() >= kLeast && word.find_first_not_of('-') == std::string_view::npos;
}

bool endsWithUnit(std::u32string_view word, std::u32string_view unit) {
    if (word.size() < unit.size() || word.substr(word.size() - unit.size()) != unit) return false;
    return word.size() == unit.size() || !isLetterLike(word[word.size() - unit.size() - 1]);
}

}  // namespace

WordBuilder::WordBuilder(model::PageContent const& content, GlyphRuns const& found, Frame frame, RuleIndex const& bars)
    : m_content(content), m_found(found), m_frame(frame), m_bars(bars) {}

char32_t WordBuilder::firstCode(GlyphRun const& run) const { return m_content.glyphs[m_found.glyphs[run.first]].code; }
char32_t WordBuilder::lastCode(GlyphRun const& run) const { return m_content.glyphs[m_found.glyphs[run.first + run.count - 1]].code; }

void WordBuilder::readCodes(GlyphRun const& run) {
    m_codes.resize(run.count);
    for (std::uint32_t i = 0; i < run.count; ++i) m_codes[i] = cleanedCode(m_content.glyphs[m_found.glyphs[run.first + i]].code);
}

WordBuilder::Joint WordBuilder::jointBetween(GlyphRun const& left, GlyphRun const& right) const {
    Points const size = std::max(left.size, right.size);
    Points const gap = (right.flow.x0 - left.flow.x1) / size;
    bool const spaceDrawn = left.spaceAfter || right.spaceBefore;
    if (gap > -kBarSlack && !m_bars.empty()) {
        Points const from = std::min(left.flow.x1, right.flow.x0) - kBarSlack * size;
        Points const to = std::max(left.flow.x1, right.flow.x0) + kBarSlack * size;
        GlyphRun const& main = left.size >= right.size ? left : right;
        if (m_bars.between(from, to, main.baseline - kBarHeight * size, main.baseline)) return Joint::Barred;
    }
    if (gap < -kOverprint) return Joint::Spaced;
    if (left.leader != right.leader) return gap <= kGapTouching && !spaceDrawn ? Joint::Touching : Joint::Spaced;
    bool const neutral = left.neutral || right.neutral;
    if (left.cjk != right.cjk && !neutral) return gap <= kGapCjkDrawnSpace && !spaceDrawn ? Joint::Touching : gap > kGapDrawnSpace ? Joint::Spaced : Joint::Touching;
    if ((left.cjk || left.neutral) && isSentenceEnd(lastCode(left))) return gap > kGapCjk ? Joint::Spaced : Joint::Touching;
    if (left.cjk || right.cjk) return gap > kGapCjk || (spaceDrawn && gap > kGapCjkDrawnSpace) ? Joint::Spaced : Joint::Joined;
    if (spaceDrawn && gap > kGapDrawnSpace) return Joint::Spaced;
    bool const inSequence = right.order == left.order + 1;
    Points allowed = inSequence && m_found.spacesDrawn ? kGapSpacesDrawn : kGapNoSpaces;
    if (right.script == Script::Subscript && left.script == Script::Normal) allowed = kGapSubscript;
    char32_t const last = lastCode(left);
    char32_t const first = firstCode(right);
    if ((isDigit(last) || isPoint(last)) && (isDigit(first) || isPoint(first))) {
        auto const hasPoint = [&](GlyphRun const& run) {
            for (std::uint32_t i = 0; i < run.count; ++i)
                if (isPoint(m_content.glyphs[m_found.glyphs[run.first + i]].code)) return true;
            return false;
        };
        bool const leftPoint = hasPoint(left);
        bool const rightPoint = hasPoint(right);
        if (leftPoint && rightPoint)
            allowed = kGapTwoNumbers;
        else if (inSequence && (isPoint(last) || isPoint(first)) && left.count > 1)
            allowed = kGapInNumber;
    }
    return gap > allowed ? Joint::Spaced : Joint::Joined;
}

// "F E A T U R E S", or "FEATURES" with wide character spacing: single letters at
// even gaps. Sets m_inSpaced and m_spaced for every run but the first of a stretch.
void WordBuilder::findSpacedLetters(RunLine const& line) {
    std::size_t const count = line.runs.size();
    m_inSpaced.assign(count, false);
    m_spaced.assign(count, Joint::Spaced);
    std::size_t first = 0;
    while (first < count) {
        std::size_t last = first + 1;
        GlyphRun const& head = m_found.runs[line.runs[first]];
        auto const fits = [&](GlyphRun const& run) {
            return run.count == 1 && !run.cjk && !run.leader && run.font == head.font && std::abs(run.size - head.size) < 0.02F * head.size && run.script == Script::Normal;
        };
        if (!fits(head)) {
            ++first;
            continue;
        }
        Points least = kSpacedTo;
        while (last < count) {
            GlyphRun const& run = m_found.runs[line.runs[last]];
            Points const gap = (run.flow.x0 - m_found.runs[line.runs[last - 1]].flow.x1) / head.size;
            if (!fits(run) || gap < kSpacedFrom || gap > 2 * kSpacedTo) break;
            least = std::min(least, gap);
            ++last;
        }
        std::size_t const length = last - first;
        if (length >= kSpacedLetters) {
            std::size_t letters = 0;
            std::size_t breaks = 0;
            bool ascending = true;
            char32_t previous = 0;
            for (std::size_t i = first; i < last; ++i) {
                GlyphRun const& run = m_found.runs[line.runs[i]];
                char32_t const code = firstCode(run);
                letters += isLetterLike(code) ? 1U : 0U;
                if (i > first) {
                    Points const gap = (run.flow.x0 - m_found.runs[line.runs[i - 1]].flow.x1) / head.size;
                    breaks += gap > kSpacedBreak * least ? 1U : 0U;
                    ascending = ascending && (code == previous + 1 || code == previous);
                }
                previous = code;
            }
            // Mostly letters, words of three letters and more on the average, and no "A B C D E".
            if (letters * 10 >= length * 7 && (breaks + 1) * 3 <= length && !ascending) {
                for (std::size_t i = first + 1; i < last; ++i) {
                    Points const gap = (m_found.runs[line.runs[i]].flow.x0 - m_found.runs[line.runs[i - 1]].flow.x1) / head.size;
                    m_inSpaced[i] = true;
                    m_spaced[i] = gap > kSpacedBreak * least ? Joint::Spaced : Joint::Joined;
                }
            }
        }
        first = last;
    }
}

bool WordBuilder::isDegree(GlyphRun const* next) const {
    if (m_codes.size() != 1 || !isDegreeShape(m_codes[0])) return false;
    char32_t const code = m_codes[0];
    if (next != nullptr && next->script == Script::Normal) {
        char32_t const after = firstCode(*next);
        if ((after == U'C' || after == U'F' || after == U'c' || after == 0x421) && (next->count == 1 || !isAsciiLower(m_content.glyphs[m_found.glyphs[next->first + 1]].code)))
            return true;
    }
    return m_open && code != U'0' && code != U'O' && code != 0x2070 && !m_wordCodes.empty() && isDigit(m_wordCodes.back());
}

bool WordBuilder::isExponent(GlyphRun const* next) const {
    std::u32string_view digits = m_codes;
    bool const negative = !digits.empty() && isMinus(digits.front());
    if (negative || (!digits.empty() && digits.front() == U'+')) digits.remove_prefix(1);
    if (digits.empty() || digits.size() > 2 || !std::all_of(digits.begin(), digits.end(), isDigit)) return false;
    std::u32string_view const word = m_wordCodes;
    if (word.size() >= 2 && word.substr(word.size() - 2) == U"10" && (word.size() == 2 || !(isDigit(word[word.size() - 3]) || isPoint(word[word.size() - 3])))) return true;
    if (word.empty()) return false;
    if (negative) return isLetterLike(word.back());
    if (digits != U"2" && digits != U"3") return false;
    static constexpr std::array<std::u32string_view, 11> kLengths{U"m", U"cm", U"mm", U"dm", U"km", U"\u00B5m", U"\u03BCm", U"um", U"in", U"inch", U"mil"};
    for (std::u32string_view unit : kLengths)
        if (endsWithUnit(word, unit)) return true;
    if (word.size() >= 2 && word.back() == U's' && word[word.size() - 2] == U'/') return true;
    if (next == nullptr) return false;
    char32_t const after = firstCode(*next);
    if (word.back() == U'A' || word.back() == U'I' || word.back() == U'i') {
        bool const alone = word.size() == 1 || !isLetterLike(word[word.size() - 2]);
        if (alone && (after == U's' || after == U'S' || after == U't' || after == U'C' || after == U'R')) return true;
    }
    // "D²PAK", "E²PROM": a letter alone, and letters that go on without a gap.
    bool const alone = isAsciiUpper(word.back()) && (word.size() == 1 || !isLetterLike(word[word.size() - 2]));
    return alone && isAsciiUpper(after) && !next->spaceBefore && next->flow.x0 - m_draft.flow.x1 < kGapSubscript * 2 * next->size;
}

bool WordBuilder::joinsAsSuperscript() const {
    if (m_wordCodes.empty()) return false;
    bool const signs = std::all_of(m_codes.begin(), m_codes.end(), [](char32_t c) { return isMinus(c) || c == U'+' || c == U'/' || c == 0xAE || c == 0x2122 || c == U'\'' || c == 0x2019; });
    if (signs) return isLetterLike(m_wordCodes.back()) || m_wordCodes.back() == U')';
    if (m_codes == U"TM" || m_codes == U"SM") return true;
    return isDigit(m_wordCodes.back()) && (m_codes == U"th" || m_codes == U"st" || m_codes == U"nd" || m_codes == U"rd");
}

void WordBuilder::start(GlyphRun const& run, Joint joint) {
    m_open = true;
    m_compose = false;
    m_wordCodes.clear();
    m_draft = {};
    model::Word& word = m_draft.word;
    model::Font const* font = run.font < m_content.fonts.size() ? &m_content.fonts[run.font] : nullptr;
    word.size = run.size;
    word.font = run.font;
    word.colour = run.colour;
    word.direction = m_frame.direction;
    word.script = run.script;
    word.bold = run.doubled || (font != nullptr && font->bold);
    word.italic = font != nullptr && font->italic;
    word.hidden = run.hidden;
    word.dotLeader = run.leader;
    word.spaceBefore = joint == Joint::Spaced || joint == Joint::Barred;
    model::Point const onBaseline = m_frame.toPage(model::Point{run.flow.x0, run.baseline});
    word.baseline = m_frame.sideways() ? onBaseline.x : onBaseline.y;
    m_draft.flow = run.flow;
    m_draft.barBefore = joint == Joint::Barred;
}

void WordBuilder::extend(GlyphRun const& run, bool asExponent, bool asDegree) {
    model::Word& word = m_draft.word;
    m_draft.flow = model::united(m_draft.flow, run.flow);
    word.recognised = word.recognised || (run.font < m_content.fonts.size() && m_content.fonts[run.font].recognised);
    if (asDegree) m_codes.assign(1, 0xB0);
    if (run.script == Script::Superscript && m_codes == U"TM") m_codes.assign(1, 0x2122);
    for (char32_t code : m_codes) {
        char32_t const c = asExponent ? superscriptOf(code) : code;
        m_wordCodes.push_back(c);
        if (c >= 0x20 && c < 0x7F) {
            word.text.push_back(static_cast<char>(c));
            continue;
        }
        word.unknown = word.unknown || isUnknown(c);
        m_compose = m_compose || needsComposition(c);
        text::append(word.text, c);
    }
    // The main part of a word is its biggest: "V" of "VCU".
    if (run.size > word.size && run.script == Script::Normal) {
        word.size = run.size;
        model::Point const onBaseline = m_frame.toPage(model::Point{run.flow.x0, run.baseline});
        word.baseline = m_frame.sideways() ? onBaseline.x : onBaseline.y;
        if (word.script != Script::Normal) word.script = Script::Normal;
    }
}

void WordBuilder::finish(std::vector<WordDraft>& words) {
    if (!m_open) return;
    m_open = false;
    if (m_compose) m_draft.word.text = text::toNfc(m_draft.word.text);
    m_draft.word.box = m_frame.toPage(m_draft.flow);
    words.push_back(std::move(m_draft));
}

void WordBuilder::appendWords(RunLine const& line, std::vector<WordDraft>& words) {
    std::size_t const firstWord = words.size();
    findSpacedLetters(line);
    GlyphRun const* previous = nullptr;
    std::size_t groupEnd = 0;  // behind the superscript runs that are judged as one
    bool inGroup = false;
    bool groupExponent = false;
    bool markBefore = false;  // the word at hand is a mark: nothing joins it
    for (std::size_t i = 0; i < line.runs.size(); ++i) {
        GlyphRun const& run = m_found.runs[line.runs[i]];
        GlyphRun const* next = i + 1 < line.runs.size() ? &m_found.runs[line.runs[i + 1]] : nullptr;
        readCodes(run);
        if (run.script == Script::Superscript && groupEnd <= i) {
            // A superscript drawn in pieces ("-" and "7") is judged as a whole.
            groupEnd = i + 1;
            while (groupEnd < line.runs.size()) {
                GlyphRun const& more = m_found.runs[line.runs[groupEnd]];
                GlyphRun const& last = m_found.runs[line.runs[groupEnd - 1]];
                if (more.script != Script::Superscript || jointBetween(last, more) != Joint::Joined) break;
                for (std::uint32_t g = 0; g < more.count; ++g) m_codes.push_back(cleanedCode(m_content.glyphs[m_found.glyphs[more.first + g]].code));
                ++groupEnd;
            }
            if (groupEnd > i + 1) next = groupEnd < line.runs.size() ? &m_found.runs[line.runs[groupEnd]] : nullptr;
        }
        Joint joint = previous != nullptr ? jointBetween(*previous, run) : Joint::Spaced;
        if (m_inSpaced[i] && joint != Joint::Barred) joint = m_spaced[i];
        bool asExponent = false;
        bool asDegree = false;
        bool mark = false;
        if (run.script == Script::Superscript && i > 0 && inGroup && i < groupEnd) {
            asExponent = groupExponent;
            mark = markBefore;
        } else if (run.script == Script::Superscript) {
            bool const beside = m_open && previous != nullptr && joint != Joint::Barred && run.flow.x0 - previous->flow.x1 < kGapSubscript * previous->size;
            if (isDegree(next)) {
                asDegree = true;
            } else if (beside && !markBefore && isExponent(next)) {
                asExponent = true;
                joint = Joint::Joined;
            } else if (beside && !markBefore && joinsAsSuperscript()) {
                joint = Joint::Joined;
            } else {
                mark = true;
                joint = beside ? Joint::Touching : joint == Joint::Joined ? Joint::Touching : joint;
            }
        } else if (markBefore && joint == Joint::Joined) {
            joint = Joint::Touching;
        } else if (previous != nullptr && joint == Joint::Joined && run.script == Script::Normal && run.size < kSmallFigure * previous->size &&
                   isDigit(firstCode(run)) && isDigit(lastCode(*previous))) {
            mark = true;
            joint = Joint::Touching;
        }
        if (!m_open || joint != Joint::Joined) {
            finish(words);
            start(run, joint);
            if (asDegree) m_draft.word.script = Script::Normal;
            if (mark) m_draft.word.script = Script::Superscript;
        }
        if (run.script == Script::Superscript && i + 1 < groupEnd) {
            inGroup = true;
            groupExponent = asExponent;
        } else {
            inGroup = false;
        }
        if (m_codes.size() != run.count) readCodes(run);  // of a superscript in pieces: this one
        extend(run, asExponent, asDegree);
        markBefore = mark;
        previous = &run;
    }
    finish(words);
    if (firstWord < words.size()) words[firstWord].word.spaceBefore = true;
    // Behind its name; alone in a cell it says that there is no value.
    for (std::size_t i = firstWord + 1; i + 1 < words.size(); ++i) {
        bool const follows = !words[i].barBefore && words[i].flow.x0 - words[i - 1].flow.x1 <= words[i].word.size;
        words[i].word.dotLeader = words[i].word.dotLeader || (follows && isDashLeader(words[i].word.text));
    }
    // Leaders of spaced dots: ". . . . ."
    std::size_t kept = firstWord;
    for (std::size_t i = firstWord; i < words.size();) {
        auto const dotsOnly = [&](std::size_t w) {
            std::string const& s = words[w].word.text;
            return words[w].word.dotLeader || (s.size() <= 3 && (s == "." || s == "\u00B7" || s == "\u2026" || s == ".." || s == "..."));
        };
        std::size_t last = i;
        while (last < words.size() && dotsOnly(last)) ++last;
        if (last - i >= 2) {
            std::size_t bytes = 0;
            for (std::size_t w = i; w < last; ++w) bytes += words[w].word.text.size();
            if (bytes >= 4) {
                WordDraft leader = std::move(words[i]);
                for (std::size_t w = i + 1; w < last; ++w) {
                    leader.word.text += words[w].word.text;
                    leader.flow = model::united(leader.flow, words[w].flow);
                }
                leader.word.dotLeader = true;
                leader.word.box = m_frame.toPage(leader.flow);
                words[kept++] = std::move(leader);
                i = last;
                continue;
            }
        }
        if (kept != i) words[kept] = std::move(words[i]);
        ++kept;
        ++i;
    }
    words.resize(kept);
    for (std::size_t i = firstWord; i < words.size(); ++i) words[i].baseline = line.baseline;
}

}  // namespace standin::layout

#include "text/boundaries.h"

#include <algorithm>
#include <array>
#include <memory>
#include <string>

#include <unicode/brkiter.h>
#include <unicode/utext.h>

#include "text/script.h"
#include "text/utf8.h"

// Words: one pass by hand, because numbers with units, pin names and codes have
// to stay whole; runs of CJK go to ICU's dictionary. Sentences: by hand as well,
// ICU's rules break after "approx.", "(min." and at each newline. A full stop
// ends a sentence when white space and something that can begin one follow and
// the word before is no abbreviation.
// Tested by tests/src/text/boundaries_test.cpp.

namespace standin::text {

namespace {

bool isSpace(char32_t code) {
    return code == U' ' || (code >= 9 && code <= 13) || code == 0x85 || code == 0xA0 || (code >= 0x2000 && code <= 0x200B) || code == 0x2028 || code == 0x2029 || code == 0x202F ||
           code == 0x205F || code == 0x3000 || code == 0xFEFF;
}

bool isDigit(char32_t code) { return (code >= U'0' && code <= U'9') || (code >= 0xFF10 && code <= 0xFF19); }

bool isMinus(char32_t code) { return code == U'-' || code == 0x2212 || code == 0x2010 || code == 0x2011 || code == 0x2013 || code == 0xFF0D; }

bool isSuperscript(char32_t code) { return code == 0xB2 || code == 0xB3 || code == 0xB9 || (code >= 0x2070 && code <= 0x208E); }

// Letters of a word outside CJK, and the signs that units are made of.
bool isWordLetter(char32_t code) {
    if (code < 0x80) return isAsciiLetter(static_cast<char>(code)) || code == U'_';
    return (isLetter(code) && !isCjk(code)) || code == 0xB5 || code == 0x2126 || code == 0x2206 || (code >= 0x300 && code <= 0x36F) || isSuperscript(code);
}

bool isUnitSign(char32_t code) { return code == 0xB0 || code == 0xBA || code == U'%' || code == 0x2103 || code == 0x2109 || code == 0x2030 || code == 0x221A; }

// Bytes that a word goes on with, whatever stands around them: ASCII letters, digits, "_".
constexpr std::array<bool, 256> kGoesOn = [] {
    std::array<bool, 256> goesOn{};
    for (unsigned byte = 0; byte < 0x80; ++byte) {
        char const c = static_cast<char>(byte);
        goesOn[byte] = isAsciiLetter(c) || isAsciiDigit(c) || c == '_';
    }
    return goesOn;
}();

class WordScanner {
public:
    explicit WordScanner(std::string_view text) : m_text(text) {}

    std::vector<std::string_view> scan() {
        m_words.reserve(m_text.size() / 5 + 1);
        while (m_at < m_text.size()) {
            if (isAsciiLetter(m_text[m_at])) {
                takeWord();
                continue;
            }
            std::size_t next = m_at;
            char32_t const code = decodeNext(m_text, next);
            if (isSpace(code)) {
                m_at = next;
            } else if (isCjkWordLetter(code)) {
                takeCjkRun();
            } else if (startsNumber(code, next)) {
                takeNumber();
            } else if (isWordLetter(code)) {
                takeWord();
            } else if (isUnitSign(code)) {
                std::size_t end = next;
                while (end < m_text.size() && (isWordLetter(codeAt(end)) || isUnitSign(codeAt(end)))) (void)decodeNext(m_text, end);
                finish(end);
            } else {
                finish(next);
            }
        }
        return std::move(m_words);
    }

private:
    static bool isCjkWordLetter(char32_t code) {
        if (code < 0x1100) return false;
        Writing const writing = writingOf(code);
        return writing == Writing::Han || writing == Writing::Kana || writing == Writing::Hangul;
    }

    [[nodiscard]] char32_t codeAt(std::size_t at) const {
        if (at >= m_text.size()) return 0;
        return decodeNext(m_text, at);
    }
    [[nodiscard]] std::size_t after(std::size_t at) const {
        (void)decodeNext(m_text, at);
        return at;
    }

    // The character before m_at belongs to a word that this one touches.
    [[nodiscard]] bool touchesWord() const {
        if (m_at == 0) return false;
        std::size_t before = m_at;
        char32_t const code = decodePrevious(m_text, before);
        return isDigit(code) || isWordLetter(code) || code == U')';
    }

    [[nodiscard]] bool startsNumber(char32_t code, std::size_t next) const {
        if (isDigit(code)) return true;
        if ((code == U'.' || code == U',') && isDigit(codeAt(next))) return code == U'.' && !touchesWord();
        bool const sign = code == U'+' || isMinus(code);
        if (!sign || touchesWord()) return false;
        char32_t const following = codeAt(next);
        return isDigit(following) || (following == U'.' && isDigit(codeAt(after(next))));
    }

    void takeNumber() {
        std::size_t end = m_at;
        char32_t code = decodeNext(m_text, end);
        bool seenDigit = isDigit(code);
        while (end < m_text.size()) {
            code = codeAt(end);
            if (isDigit(code)) {
                seenDigit = true;
                end = after(end);
            } else if ((code == U'.' || code == U',' || code == 0xFF0E || code == 0xFF0C) && isDigit(codeAt(after(end)))) {
                end = after(end);
            } else if ((code == U'e' || code == U'E') && seenDigit && startsExponent(after(end))) {
                end = after(after(end));
            } else {
                break;
            }
        }
        takeUnit(end);
    }

    [[nodiscard]] bool startsExponent(std::size_t at) const {
        char32_t const sign = codeAt(at);
        return (sign == U'+' || isMinus(sign)) && isDigit(codeAt(after(at)));
    }

    void takeUnit(std::size_t end) {
        while (end < m_text.size()) {
            char32_t const code = codeAt(end);
            if (isWordLetter(code) || isUnitSign(code) || isDigit(code)) {
                end = after(end);
            } else if (code == U'/' && (isWordLetter(codeAt(after(end))) || isUnitSign(codeAt(after(end))))) {
                end = after(end);
            } else {
                break;
            }
        }
        finish(end);
    }

    void takeWord() {
        std::size_t end = m_at;
        while (end < m_text.size()) {
            if (kGoesOn[static_cast<unsigned char>(m_text[end])]) {
                ++end;
                continue;
            }
            char32_t const code = codeAt(end);
            if (isWordLetter(code) || isDigit(code)) {
                end = after(end);
                continue;
            }
            std::size_t const next = after(end);
            char32_t const following = codeAt(next);
            if (code == U'-' || code == 0x2010 || code == 0x2011) {
                bool const joins = isWordLetter(following) || (isDigit(following) && !isDecimalAt(next));
                if (joins) {
                    end = next;
                    continue;
                }
                if (isShortCapitals(end) && !isDigit(following)) end = next;
                break;
            }
            if (code == U'+' && isShortCapitals(end) && !isDigit(following)) {
                end = next;
                break;
            }
            bool const apostrophe = code == U'\'' || code == 0x2019;
            if (apostrophe && isWordLetter(following)) {
                end = next;
                continue;
            }
            if (code == U'.' && isDigit(following) && isDigit(previousOf(end))) {
                end = next;
                continue;
            }
            if (code == U'.' && end - m_at == 1 && isWordLetter(following) && codeAt(after(next)) == U'.') {  // "e.g."
                end = after(after(next));
                break;
            }
            if (code == U'(') {
                std::size_t const closing = shortBracketEnd(next);
                if (closing != 0) {
                    end = closing;
                    continue;
                }
            }
            break;
        }
        finish(end);
    }

    [[nodiscard]] char32_t previousOf(std::size_t at) const { return at == 0 ? 0 : decodePrevious(m_text, at); }

    // "0.3" in "VDD-0.3": an expression, not a code.
    [[nodiscard]] bool isDecimalAt(std::size_t at) const {
        while (isDigit(codeAt(at))) at = after(at);
        return codeAt(at) == U'.' && isDigit(codeAt(after(at)));
    }

    // "V", "P", "BAT": a pin name may end in a sign. No letter may follow it.
    [[nodiscard]] bool isShortCapitals(std::size_t end) const {
        if (end - m_at > 3) return false;
        return std::all_of(m_text.begin() + static_cast<std::ptrdiff_t>(m_at), m_text.begin() + static_cast<std::ptrdiff_t>(end), isAsciiUpper) && !isWordLetter(codeAt(end + 1));
    }

    // Behind "(on)", "(s)", "(th)"; 0 where it is another kind of bracket.
    [[nodiscard]] std::size_t shortBracketEnd(std::size_t at) const {
        constexpr int kLongest = 6;
        int letters = 0;
        while (letters <= kLongest && (isWordLetter(codeAt(at)) || isDigit(codeAt(at)))) {
            at = after(at);
            ++letters;
        }
        return letters > 0 && letters <= kLongest && codeAt(at) == U')' ? at + 1 : 0;
    }

    void takeCjkRun() {
        std::size_t end = m_at;
        while (end < m_text.size() && isCjkWordLetter(codeAt(end))) end = after(end);
        std::string_view const run = m_text.substr(m_at, end - m_at);
        constexpr std::size_t kLongestRun = 20000;  // longer runs are no prose: single characters
        if (run.size() > kLongestRun || !splitByDictionary(run)) {
            while (m_at < end) finish(after(m_at));
        }
        m_at = end;
    }

    bool splitByDictionary(std::string_view run) {
        thread_local std::unique_ptr<icu::BreakIterator> iterator = [] {
            UErrorCode status = U_ZERO_ERROR;
            std::unique_ptr<icu::BreakIterator> made(icu::BreakIterator::createWordInstance(icu::Locale::getRoot(), status));
            return U_SUCCESS(status) != 0 ? std::move(made) : nullptr;
        }();
        if (iterator == nullptr) return false;
        UErrorCode status = U_ZERO_ERROR;
        UText* text = utext_openUTF8(nullptr, run.data(), static_cast<std::int64_t>(run.size()), &status);
        if (U_SUCCESS(status) != 0) iterator->setText(text, status);
        bool const good = U_SUCCESS(status) != 0;
        if (good) {
            std::int32_t from = iterator->first();
            for (std::int32_t to = iterator->next(); to != icu::BreakIterator::DONE; to = iterator->next()) {
                m_words.push_back(run.substr(static_cast<std::size_t>(from), static_cast<std::size_t>(to - from)));
                from = to;
            }
        }
        utext_close(text);
        return good;
    }

    void finish(std::size_t end) {
        m_words.push_back(m_text.substr(m_at, end - m_at));
        m_at = end;
    }

    std::string_view m_text;
    std::vector<std::string_view> m_words;
    std::size_t m_at = 0;
};

// In lower case, without the full stop.
bool isAbbreviation(std::string_view word, std::string_view language) {
    static constexpr std::array<std::string_view, 45> kCommon{"approx", "typ", "min", "max",  "fig",  "figs", "no", "nos", "e.g",  "i.e",    "eg",   "ie",  "cf",  "vs",  "sec",
                                                              "ref",    "eq",  "tab", "resp", "incl", "excl", "ca", "abs", "temp", "char",   "spec", "ext", "int", "dia", "vol",
                                                              "rev",    "pt",  "par", "ch",   "st",   "mr",   "dr", "nom", "freq", "resist", "cap",  "viz", "al",  "app", "par."};
    static constexpr std::array<std::string_view, 12> kGerman{"z.b", "d.h", "bzw", "ggf", "abb", "nr", "inkl", "evtl", "usw", "u.a", "zul", "siehe"};
    if (std::find(kCommon.begin(), kCommon.end(), word) != kCommon.end()) return true;
    return language == "de" && std::find(kGerman.begin(), kGerman.end(), word) != kGerman.end();
}

class SentenceScanner {
public:
    SentenceScanner(std::string_view text, std::string_view language) : m_text(text), m_language(language) {}

    std::vector<std::string_view> scan() {
        std::size_t at = 0;
        while (at < m_text.size()) {
            std::size_t next = at;
            char32_t const code = decodeNext(m_text, next);
            if (code == U'(' || code == U'[' || code == 0xFF08) {
                ++m_depth;
                m_opened = at;
            } else if ((code == U')' || code == U']' || code == 0xFF09) && m_depth > 0) {
                --m_depth;
            }
            if (code == 0x3002 || code == 0xFF0E || code == 0xFF01 || code == 0xFF1F || code == 0xFF61) {
                bool const point = code == 0xFF0E && next < m_text.size() && isDigit(codeAt(next));
                if (std::size_t const number = code == 0xFF0E ? listNumberAt(at) : kNone; !point && number != kNone) {
                    close(number);
                } else if (!point) {
                    next = behindClosing(next);
                    close(next);
                }
            } else if (code == 0x2022 || code == 0x25CF || code == 0x25A0) {
                close(at);
            } else if ((code == U'.' || code == U'!' || code == U'?') && endsSentence(at, next, code)) {
                next = behindClosing(next);
                close(next);
            }
            at = next;
        }
        close(m_text.size());
        return std::move(m_sentences);
    }

private:
    static constexpr std::size_t kNone = std::string_view::npos;

    // "；4．": where the number of a list begins that the stop at `stop` belongs to.
    [[nodiscard]] std::size_t listNumberAt(std::size_t stop) const {
        constexpr std::size_t kMostDigits = 2;
        std::size_t begin = stop;
        while (begin > m_start && stop - begin <= kMostDigits && isAsciiDigit(m_text[begin - 1])) --begin;
        if (begin == stop || stop - begin > kMostDigits) return kNone;
        std::size_t before = begin;
        while (before > m_start && m_text[before - 1] == ' ') --before;
        if (before == m_start) return begin;
        char32_t const sign = decodePrevious(m_text, before);
        return sign == U';' || sign == 0xFF1B ? begin : kNone;
    }

    [[nodiscard]] char32_t codeAt(std::size_t at) const { return at < m_text.size() ? decodeNext(m_text, at) : 0; }

    [[nodiscard]] std::size_t behindClosing(std::size_t at) const {
        while (at < m_text.size()) {
            std::size_t next = at;
            char32_t const code = decodeNext(m_text, next);
            bool const closing = code == U')' || code == U']' || code == U'"' || code == U'\'' || code == 0x201D || code == 0x2019 || code == 0x300D || code == 0xFF09;
            if (!closing) break;
            at = next;
        }
        return at;
    }

    [[nodiscard]] std::string wordBefore(std::size_t at) const {
        constexpr std::size_t kLongestAbbreviation = 8;
        std::size_t begin = at;
        while (begin > m_start && at - begin < kLongestAbbreviation && (isAsciiLetter(m_text[begin - 1]) || m_text[begin - 1] == '.' || isAsciiDigit(m_text[begin - 1]))) --begin;
        return asciiLower(m_text.substr(begin, at - begin));
    }

    [[nodiscard]] bool endsSentence(std::size_t stop, std::size_t behind, char32_t code) const {
        constexpr std::size_t kFarBracket = 200;  // an opening bracket that is never closed must not join a page
        behind = behindClosing(behind);
        bool const bracketed = m_depth > 0 && stop - m_opened < kFarBracket && behind == stop + 1;
        if (bracketed) return false;
        std::size_t next = behind;
        while (next < m_text.size() && isSpace(codeAt(next))) (void)decodeNext(m_text, next);
        if (next >= m_text.size()) return false;  // the end closes it anyway
        char32_t const following = codeAt(next);
        if (next == behind) return isCjk(following) && code != U'.';
        if (code != U'.') return true;
        if (isAsciiLower(static_cast<char>(following < 0x80 ? following : 0))) return false;
        if (following == U',' || following == U';' || following == U':' || following == U')' || following == U'.') return false;
        if (isLeader(stop) && isDigit(following)) return false;
        std::string const word = wordBefore(stop);
        if (isAbbreviation(word, m_language)) return onlyOnceAbbreviation(word) && isUnitBefore(stop - word.size()) && isAsciiUpper(static_cast<char>(following));
        bool const number = !word.empty() && std::all_of(word.begin(), word.end(), [](char c) { return isAsciiDigit(c) || c == '.'; });
        // "1. Overview": a numeral that opens the sentence is its number.
        if (number && trimmed(m_text.substr(m_start, stop - m_start)).size() == word.size()) return false;
        return true;
    }

    // The last of the points that lead from an entry to its page.
    [[nodiscard]] bool isLeader(std::size_t stop) const {
        constexpr std::size_t kFewestPoints = 4;
        return stop + 1 >= kFewestPoints && m_text.substr(stop + 1 - kFewestPoints, kFewestPoints) == "....";
    }

    // "min", "max", "typ" can close a sentence behind a unit ("0.1 µA max. The …").
    [[nodiscard]] static bool onlyOnceAbbreviation(std::string_view word) { return word == "max" || word == "min" || word == "typ"; }

    [[nodiscard]] bool isUnitBefore(std::size_t at) const {
        std::string_view const before = trimmed(m_text.substr(m_start, at - m_start));
        if (before.empty()) return false;
        std::size_t begin = before.rfind(' ');
        std::string_view const word = before.substr(begin == std::string_view::npos ? 0 : begin + 1);
        bool const short_ = codePointCount(word) <= 3 || isAsciiDigit(word.front());
        return short_ && (isAsciiDigit(word.front()) || (begin != std::string_view::npos && begin > 0 && isAsciiDigit(before[begin - 1])));
    }

    void close(std::size_t end) {
        std::string_view const sentence = trimmed(m_text.substr(m_start, end - m_start));
        if (!sentence.empty()) m_sentences.push_back(sentence);
        m_start = end;
        m_depth = 0;
    }

    std::string_view m_text;
    std::string_view m_language;
    std::vector<std::string_view> m_sentences;
    std::size_t m_start = 0;
    std::size_t m_opened = 0;
    int m_depth = 0;
};

}  // namespace

std::vector<std::string_view> words(std::string_view utf8) { return WordScanner(utf8).scan(); }

std::vector<std::string_view> splitSentences(std::string_view utf8, std::string_view language) { return SentenceScanner(utf8, language).scan(); }

}  // namespace standin::text

#include "extractors/parameters/text_forms.h"

// One pass over code points for each form; no tables beyond a few switches.
// Tested by tests/extractors/parameters/text_forms_test.cpp.

#include <algorithm>

#include "text/dashes.h"
#include "text/utf8.h"

namespace standin::parameters {

namespace {

bool isSpace(char32_t c) {
    return c == U' ' || c == U'\t' || c == U'\n' || c == U'\r' || c == U'\u00A0' || c == U'\u3000' ||
           (c >= U'\u2000' && c <= U'\u200A') || c == U'\u202F' || c == U'\u205F';
}

constexpr std::string_view kCyrillicEs = "\xD0\xA1";  // reads like a Latin C and is one behind a degree sign

bool isInvisible(char32_t c) { return c == U'\u200B' || c == U'\uFEFF' || c == U'\u2060' || c == U'\u200D'; }

bool isDash(char32_t c) { return standin::text::isDash(c) || c == U'\uFE63' || c == U'\u00AD'; }

bool isDegree(char32_t c) { return c == U'\u00B0' || c == U'\u00BA' || c == U'\u02DA' || c == U'\u2070'; }

char32_t lowered(char32_t c) {
    if (c >= U'A' && c <= U'Z') return c + 32;
    if (c >= U'\u0410' && c <= U'\u042F') return c + 32;
    if (c >= U'\u00C0' && c <= U'\u00DE' && c != U'\u00D7') return c + 32;
    return c;
}

char32_t superscriptPlain(char32_t c) {
    switch (c) {
        case U'\u2070': return U'0';
        case U'\u00B9': return U'1';
        case U'\u00B2': return U'2';
        case U'\u00B3': return U'3';
        case U'\u207A': return U'+';
        case U'\u207B': return U'-';
        default: return c >= U'\u2074' && c <= U'\u2079' ? U'0' + (c - U'\u2070') : 0;
    }
}

}  // namespace

std::u32string decoded(std::string_view utf8) { return standin::text::toUtf32(utf8); }
std::string encoded(std::u32string_view codes) { return standin::text::toUtf8(codes); }
void append(std::string& utf8, char32_t code) { standin::text::append(utf8, code); }

bool isCjk(char32_t c) {
    return (c >= 0x3000 && c <= 0x30FF) || (c >= 0x3400 && c <= 0x9FFF) || (c >= 0xF900 && c <= 0xFAFF) ||
           (c >= 0xAC00 && c <= 0xD7A3) || (c >= 0xFF00 && c <= 0xFFEF) || (c >= 0x20000 && c <= 0x2FA1F);
}

bool isDigit(char32_t c) { return c >= U'0' && c <= U'9'; }
bool isLatinLetter(char32_t c) { return (c >= U'A' && c <= U'Z') || (c >= U'a' && c <= U'z'); }
bool isGreek(char32_t c) { return (c >= 0x0370 && c <= 0x03FF) || c == U'\u2206' || c == U'\u2126' || c == U'\u00B5'; }

std::string trimmed(std::string_view text) {
    auto plainSpace = [](char c) { return c == ' ' || c == '\t' || c == '\n' || c == '\r'; };
    while (!text.empty() && plainSpace(text.front())) text.remove_prefix(1);
    while (!text.empty() && plainSpace(text.back())) text.remove_suffix(1);
    auto const isGap = [](char32_t c) { return isSpace(c) || isInvisible(c); };
    while (!text.empty() && static_cast<unsigned char>(text.front()) >= 0x80) {
        std::size_t next = 0;
        if (!isGap(standin::text::decodeNext(text, next))) break;
        text.remove_prefix(next);
        while (!text.empty() && plainSpace(text.front())) text.remove_prefix(1);
    }
    while (!text.empty() && static_cast<unsigned char>(text.back()) >= 0x80) {
        std::size_t last = text.size();
        if (!isGap(standin::text::decodePrevious(text, last))) break;
        text = text.substr(0, last);
        while (!text.empty() && plainSpace(text.back())) text.remove_suffix(1);
    }
    return std::string(text);
}

namespace {

bool isPlainSpace(char c) { return c == ' ' || c == '\t' || c == '\n' || c == '\r'; }

// Whether a byte above ASCII may open a character that tidied() changes: gaps, dashes,
// degrees and signs are among those that begin with C2, CB, E2, E3 80 and EF.
bool mayOpenUntidy(std::string_view text, std::size_t at) {
    switch (static_cast<unsigned char>(text[at])) {
        case 0xC2:
        case 0xCB:
        case 0xE2:
        case 0xEF: return true;
        case 0xE3: return text.substr(at + 1, 1) == "\x80";
        default: return false;
    }
}

// The first place from `at` on that is no gap.
std::size_t behindSpaces(std::string_view text, std::size_t at) {
    while (at < text.size()) {
        std::size_t next = at;
        if (!isSpace(standin::text::decodeNext(text, next))) break;
        at = next;
    }
    return at;
}

// Whether a byte may open a character beyond ASCII that folded() changes: Latin and
// Cyrillic capitals, quotes and wide forms.
bool mayOpenUnfolded(char c) {
    auto const byte = static_cast<unsigned char>(c);
    return byte == 0xC3 || byte == 0xD0 || byte == 0xE2 || byte == 0xEF;
}

std::string tidiedAscii(std::string_view text) {
    std::string out;
    out.reserve(text.size());
    bool space = false;
    for (char c : text) {
        if (isPlainSpace(c)) {
            space = !out.empty();
            continue;
        }
        if (space) out.push_back(' ');
        space = false;
        out.push_back(c);
    }
    return out;
}

}  // namespace

bool isTidy(std::string_view text) {
    char before = ' ';
    for (std::size_t at = 0; at < text.size(); ++at) {
        char const c = text[at];
        auto const byte = static_cast<unsigned char>(c);
        if (byte >= 0x80 ? mayOpenUntidy(text, at) : isPlainSpace(c) && (c != ' ' || before == ' ')) return false;
        before = c;
    }
    return text.empty() || before != ' ';
}

std::string tidied(std::string_view text) {
    if (isTidy(text)) return std::string(text);
    if (standin::text::isAscii(text)) return tidiedAscii(text);
    std::string out;
    out.reserve(text.size());
    bool gap = false;
    for (std::size_t at = 0; at < text.size();) {
        char32_t const c = standin::text::decodeNext(text, at);
        if (isInvisible(c)) continue;
        if (isSpace(c)) {
            gap = !out.empty();
            continue;
        }
        if (gap) out.push_back(' ');
        gap = false;
        if (c < 0x80) {
            out.push_back(static_cast<char>(c));
        } else if (isDash(c)) {
            out.push_back('-');
        } else if (c == U'\u2103') {
            out += "°C";
        } else if (c == U'\u2109') {
            out += "°F";
        } else if (isDegree(c) && (c != U'\u2070' || text.substr(at, 1) == "C")) {
            out += "°";
            // "° C" is one sign in print
            std::size_t const next = behindSpaces(text, at);
            if (text.substr(next, 1) == "C") at = next;
            if (text.substr(next, kCyrillicEs.size()) == kCyrillicEs) {
                out.push_back('C');
                at = next + kCyrillicEs.size();
            }
        } else if (c == U'\u301C' || c == U'\u223C' || c == U'\uFF5E' || c == U'\u2053' || c == U'\u02DC') {
            out.push_back('~');
        } else if (c == U'\u2126') {
            out += "Ω";
        } else if (c == U'\u2206') {
            out += "Δ";
        } else {
            append(out, c);
        }
    }
    return out;
}

std::string folded(std::string_view text) {
    std::string held;
    if (!isTidy(text)) text = held = tidied(text);
    if (standin::text::isAscii(text) || std::ranges::none_of(text, mayOpenUnfolded)) return standin::text::asciiLower(text);
    std::string out;
    out.reserve(text.size());
    for (std::size_t at = 0; at < text.size();) {
        char32_t c = standin::text::decodeNext(text, at);
        if (c >= 0xFF01 && c <= 0xFF5E) c -= 0xFEE0;
        if (c == U'\u2018' || c == U'\u2019') c = U'\'';
        if (c == U'\u201C' || c == U'\u201D') c = U'"';
        standin::text::append(out, lowered(c));
    }
    return out;
}

std::string closedNumbers(std::string_view text) {
    std::string out;
    out.reserve(text.size());
    auto digit = [](char c) { return c >= '0' && c <= '9'; };
    auto digitsFrom = [&](std::size_t at) {
        std::size_t n = 0;
        while (at + n < text.size() && digit(text[at + n])) ++n;
        return n;
    };
    std::size_t closedAt = 0;  // where the last group of three was joined on
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (text[i] != ' ' || out.empty() || i + 1 >= text.size()) {
            out.push_back(text[i]);
            continue;
        }
        char const before = out.back();
        char const after = text[i + 1];
        bool close = false;
        if (before == '.' && out.size() >= 2 && digit(out[out.size() - 2]) && digit(after)) close = true;
        if (digit(before) && after == '.' && i + 2 < text.size() && digit(text[i + 2])) close = true;
        // groups of exactly three digits
        if (digit(before) && digit(after) && digitsFrom(i + 1) == 3) {
            std::size_t run = 0;
            while (run < out.size() - closedAt && digit(out[out.size() - 1 - run])) ++run;
            bool const fraction = run < out.size() && (out[out.size() - 1 - run] == '.' || out[out.size() - 1 - run] == ',');
            bool const further = closedAt > 0 && run == 3 && out.size() == closedAt + 3;
            close = further || (run >= 1 && run <= 3 && !fraction && out[out.size() - run] != '0');
            if (close) closedAt = out.size();
        }
        // a sign that opens a number
        if ((before == '-' || before == '+') && digit(after)) {
            bool const opens = out.size() == 1 || (out.size() >= 2 && (out[out.size() - 2] == ' ' || out[out.size() - 2] == '~'));
            // "a - 5": a sign between operands stays a minus of the expression
            bool operand = false;
            if (out.size() >= 3 && out[out.size() - 2] == ' ') {
                std::size_t k = out.size() - 2;
                while (k > 0 && out[k - 1] == ' ') --k;
                std::size_t w = k;
                while (w > 0 && out[w - 1] != ' ') --w;
                std::string_view const word(out.data() + w, k - w);
                operand = !(word == "to" || word == "~" || word == "and" || word == "bis" || word == "...");
            }
            close = opens && !operand;
        }
        if (out.size() >= 2 && out.compare(out.size() - 2, 2, "±") == 0 && digit(after)) close = true;
        if (!close) out.push_back(' ');
    }
    return out;
}

std::string plainExponents(std::string_view text) {
    if (standin::text::isAscii(text)) return std::string(text);
    std::u32string const codes = decoded(text);
    std::string out;
    out.reserve(text.size());
    bool raised = false;
    for (char32_t c : codes) {
        char32_t const plain = superscriptPlain(c);
        if (plain != 0 && !raised && !out.empty()) out.push_back('^');
        raised = plain != 0;
        append(out, plain != 0 ? plain : c);
    }
    return out;
}

bool saysNothing(std::string_view text) {
    for (char c : text) {
        if (standin::text::isAsciiLetter(c) || standin::text::isAsciiDigit(c)) return false;
    }
    for (std::size_t at = 0; at < text.size();) {
        char32_t const c = standin::text::decodeNext(text, at);
        if (isSpace(c) || isInvisible(c) || isDash(c)) continue;
        if (c == U'.' || c == U'\u2026' || c == U'\u2025' || c == U'/' || c == U'_' || c == U'\u30FC' || c == U'\u4E00' || c == U'*') continue;
        return false;
    }
    return true;
}

std::string joined(std::string_view left, std::string_view right) {
    if (left.empty()) return std::string(right);
    if (right.empty()) return std::string(left);
    std::size_t last = left.size();
    std::size_t first = 0;
    bool const cjk = static_cast<unsigned char>(left.back()) >= 0x80 && isCjk(standin::text::decodePrevious(left, last)) && isCjk(standin::text::decodeNext(right, first));
    std::string out;
    out.reserve(left.size() + 1 + right.size());
    out += left;
    if (!cjk) out.push_back(' ');
    out += right;
    return out;
}

std::vector<std::string> splitAtSpaces(std::string_view text) {
    std::vector<std::string> out;
    std::size_t at = 0;
    while (at < text.size()) {
        std::size_t const end = std::min(text.find(' ', at), text.size());
        if (end > at) out.emplace_back(text.substr(at, end - at));
        at = end + 1;
    }
    return out;
}

bool contains(std::string_view text, std::string_view part) { return text.find(part) != std::string_view::npos; }

}  // namespace standin::parameters

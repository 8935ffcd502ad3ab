#include "text/script.h"

#include <algorithm>
#include <array>

#include "text/utf8.h"

// Ranges by hand instead of a property look-up per character: the scripts met in
// datasheets are few. Languages of the Latin script are told by their commonest
// short words. Tested by tests/src/text/script_test.cpp.

namespace standin::text {

Writing writingOf(char32_t code) {
    if (code < 0x80) return isAsciiLetter(static_cast<char>(code)) ? Writing::Latin : Writing::Common;
    if (code < 0x250) return code >= 0xC0 && code != 0xD7 && code != 0xF7 ? Writing::Latin : Writing::Common;
    if (code >= 0x370 && code < 0x400) return Writing::Greek;
    if (code >= 0x400 && code < 0x530) return Writing::Cyrillic;
    if (code >= 0x1E00 && code < 0x1F00) return Writing::Latin;
    if ((code >= 0x3041 && code <= 0x30FA) || code == 0x30FC || code == 0x30FD || (code >= 0x31F0 && code <= 0x31FF) || (code >= 0xFF66 && code <= 0xFF9F)) return Writing::Kana;
    if ((code >= 0x3400 && code <= 0x9FFF) || (code >= 0xF900 && code <= 0xFAFF) || (code >= 0x20000 && code <= 0x3FFFF) || code == 0x3005) return Writing::Han;
    if ((code >= 0xAC00 && code <= 0xD7A3) || (code >= 0x1100 && code <= 0x11FF) || (code >= 0x3131 && code <= 0x318E)) return Writing::Hangul;
    if (code >= 0xFF21 && code <= 0xFF5A) return (code <= 0xFF3A || code >= 0xFF41) ? Writing::Latin : Writing::Common;
    if ((code >= 0x530 && code < 0x1100) || (code >= 0x1200 && code < 0x1E00)) return Writing::Other;
    return Writing::Common;
}

bool isCjk(char32_t code) {
    if (code < 0x1100) return false;
    return (code >= 0x3000 && code <= 0x303F) || (code >= 0xFF01 && code <= 0xFFEE) || code == 0x30FB ||
           writingOf(code) == Writing::Han || writingOf(code) == Writing::Kana || writingOf(code) == Writing::Hangul;
}

bool isLetter(char32_t code) { return writingOf(code) != Writing::Common; }

bool isCjk(std::string_view utf8) {
    if (isAscii(utf8)) return false;
    int cjk = 0;
    int other = 0;
    for (std::size_t at = 0; at < utf8.size();) {
        char32_t const code = decodeNext(utf8, at);
        if (isCjk(code)) ++cjk;
        else if (isLetter(code)) ++other;
    }
    return cjk > 0 && cjk * 3 > other;  // a CJK character says about as much as three letters
}

namespace {

// Characters that only one of the two forms of Chinese writes.
constexpr std::u32string_view kTraditional = U"電壓過檢測點開關應輸時間這個種號產規範圍極聯測試測態離認義體變狀線參數單值負護應動項資訊溫濕";
constexpr std::u32string_view kSimplified = U"电压过检测点开关应输时间这个种号产规范围极联试态离认义体变状线参数单值负护动项资讯温湿";

template <std::size_t N>
bool contains(std::array<std::string_view, N> const& sorted, std::string_view word) {
    return std::find(sorted.begin(), sorted.end(), word) != sorted.end();
}

bool isEnglishWord(std::string_view word) {
    static constexpr std::array<std::string_view, 22> kWords{"the", "of", "and", "is", "to", "in", "for", "with", "this", "be", "by",
                                                             "are", "at", "when", "or", "from", "not", "a", "on", "voltage", "current", "that"};
    return contains(kWords, word);
}

bool isGermanWord(std::string_view word) {
    static constexpr std::array<std::string_view, 22> kWords{"der", "die", "das", "und", "ist", "mit", "von", "zu", "den", "wird", "bei",
                                                             "nicht", "ein", "eine", "für", "auf", "des", "dem", "durch", "oder", "werden", "spannung"};
    return contains(kWords, word);
}

}  // namespace

std::string detectLanguage(std::string_view utf8) {
    std::size_t latin = 0, cyrillic = 0, han = 0, kana = 0, hangul = 0, traditional = 0, simplified = 0;
    int english = 0, german = 0;
    std::string word;
    auto const endWord = [&] {
        if (isEnglishWord(word)) ++english;
        if (isGermanWord(word)) ++german;
        word.clear();
    };
    for (std::size_t at = 0; at < utf8.size();) {
        char32_t const code = decodeNext(utf8, at);
        Writing const writing = writingOf(code);
        if (writing == Writing::Latin) {
            ++latin;
            if (word.size() < 24) append(word, code < 0x80 && isAsciiUpper(static_cast<char>(code)) ? code + 32 : code);
            continue;
        }
        if (!word.empty()) endWord();
        switch (writing) {
            case Writing::Cyrillic: ++cyrillic; break;
            case Writing::Kana: ++kana; break;
            case Writing::Hangul: ++hangul; break;
            case Writing::Han:
                ++han;
                // A character listed in both strings tells nothing.
                if (kTraditional.find(code) != std::u32string_view::npos) {
                    if (kSimplified.find(code) == std::u32string_view::npos) ++traditional;
                } else if (kSimplified.find(code) != std::u32string_view::npos) {
                    ++simplified;
                }
                break;
            default: break;
        }
    }
    endWord();
    std::size_t const cjk = han + kana + hangul;
    if (latin + cyrillic + cjk == 0) return {};
    if (cjk * 3 >= latin + cyrillic) {
        if (hangul * 2 > cjk) return "ko";
        if (kana * 12 >= cjk) return "ja";
        return traditional > simplified ? "zh-Hant" : "zh";
    }
    if (cyrillic > latin) return "ru";
    return german > english ? "de" : "en";
}

}  // namespace standin::text

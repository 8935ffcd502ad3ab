#include "quantity/numbers.h"

#include <algorithm>

#include "text/fold.h"
#include "text/script.h"
#include "text/utf8.h"

// One forward scan. Counting must be cheap (every word of every page passes
// here), so bytes that start no digit, sign or point are skipped without
// decoding. Tested by tests/src/quantity/numbers_test.cpp.

namespace standin::quantity {

namespace {

// Length of a digit at `at` (ASCII 1, full width 3), 0 where none is.
std::size_t digitLength(std::string_view text, std::size_t at) {
    if (at >= text.size()) return 0;
    if (text::isAsciiDigit(text[at])) return 1;
    // U+FF10 … U+FF19 is EF BC 90 … EF BC 99
    if (at + 2 < text.size() && text[at] == '\xEF' && text[at + 1] == '\xBC') {
        unsigned char const last = static_cast<unsigned char>(text[at + 2]);
        if (last >= 0x90 && last <= 0x99) return 3;
    }
    return 0;
}

// Point or comma, also full width (U+FF0E, U+FF0C).
std::size_t separatorLength(std::string_view text, std::size_t at) {
    if (at >= text.size()) return 0;
    if (text[at] == '.' || text[at] == ',') return 1;
    if (at + 2 < text.size() && text[at] == '\xEF' && text[at + 1] == '\xBC' && (text[at + 2] == '\x8E' || text[at + 2] == '\x8C')) return 3;
    return 0;
}

// Plus, hyphen, U+2010 … U+2013, U+2212, U+FF0B, U+FF0D.
std::size_t signLength(std::string_view text, std::size_t at) {
    if (at >= text.size()) return 0;
    if (text[at] == '+' || text[at] == '-') return 1;
    if (at + 2 >= text.size()) return 0;
    std::string_view const three = text.substr(at, 3);
    if (three == "\u2212" || three == "\u2010" || three == "\u2011" || three == "\u2012" || three == "\u2013" || three == "\uFF0B" || three == "\uFF0D") return 3;
    return 0;
}

bool signCounts(std::string_view text, std::size_t sign) {
    if (sign == 0) return true;
    unsigned char const before = static_cast<unsigned char>(text[sign - 1]);
    if (before < 0x80) return !(text::isAsciiLetter(static_cast<char>(before)) || text::isAsciiDigit(static_cast<char>(before)) || before == ')' || before == ']' || before == '%');
    std::size_t at = sign;
    char32_t const code = text::decodePrevious(text, at);
    return !(text::isLetter(code) || code == 0xB0 || code == 0x2103 || (code >= 0xFF10 && code <= 0xFF19) || code == 0x2126 || code == 0xB5);
}

template <class Sink>
void scan(std::string_view text, Sink&& sink) {
    std::size_t at = 0;
    std::size_t const size = text.size();
    while (at < size) {
        std::size_t digit = digitLength(text, at);
        if (digit == 0) {
            ++at;
            continue;
        }
        std::size_t begin = at;
        // A leading point (".5") and a sign before it, if they stand free.
        if (begin > 0 && text[begin - 1] == '.' && (begin == 1 || (!text::isAsciiDigit(text[begin - 2]) && !text::isAsciiLetter(text[begin - 2]) && text[begin - 2] != '.')))
            --begin;
        for (std::size_t const length : {std::size_t{1}, std::size_t{3}}) {
            if (begin >= length && signLength(text, begin - length) == length) {
                if (signCounts(text, begin - length)) begin -= length;
                break;
            }
        }
        std::size_t end = at;
        while (true) {
            if ((digit = digitLength(text, end)) > 0) {
                end += digit;
                continue;
            }
            if (std::size_t const separator = separatorLength(text, end); separator > 0 && digitLength(text, end + separator) > 0) {
                end += separator;
                continue;
            }
            if (end < size && (text[end] == 'e' || text[end] == 'E')) {
                std::size_t const sign = signLength(text, end + 1);
                if (sign > 0 && digitLength(text, end + 1 + sign) > 0) {
                    end += 1 + sign;
                    continue;
                }
            }
            break;
        }
        sink(begin, end);
        at = end;
    }
}

}  // namespace

std::vector<NumberSpan> findNumbers(std::string_view utf8) {
    std::vector<NumberSpan> spans;
    scan(utf8, [&](std::size_t begin, std::size_t end) { spans.push_back({begin, end}); });
    return spans;
}

std::size_t countNumbers(std::string_view utf8) {
    std::size_t count = 0;
    scan(utf8, [&](std::size_t, std::size_t) { ++count; });
    return count;
}

namespace {

// Superscript digits and minus as plain ones; nullopt where another character is met.
std::optional<std::string> superscriptDigits(std::string_view utf8) {
    std::string plain;
    for (std::size_t at = 0; at < utf8.size();) {
        char32_t const code = text::decodeNext(utf8, at);
        if (code == 0xB9) plain.push_back('1');
        else if (code == 0xB2) plain.push_back('2');
        else if (code == 0xB3) plain.push_back('3');
        else if (code == 0x2070 || (code >= 0x2074 && code <= 0x2079)) plain.push_back(static_cast<char>('0' + (code - 0x2070)));
        else if (code == 0x207B) plain.push_back('-');
        else if (code != 0x207A) return std::nullopt;
    }
    return plain;
}

bool groupsOfThree(std::string_view digits, char separator) {
    std::size_t at = digits.find(separator);
    if (at == std::string_view::npos || at == 0 || at > 3) return false;
    while (at < digits.size()) {
        if (digits[at] != separator || at + 4 > digits.size()) return false;
        for (std::size_t i = 1; i <= 3; ++i) {
            if (!text::isAsciiDigit(digits[at + i])) return false;
        }
        at += 4;
    }
    return true;
}

void drop(std::string& text, char c) { text.erase(std::remove(text.begin(), text.end(), c), text.end()); }

}  // namespace

std::optional<ParsedNumber> parseNumber(std::string_view utf8, CommaReading comma) {
    constexpr std::size_t kLongest = 80;
    if (utf8.empty() || utf8.size() > kLongest) return std::nullopt;
    std::string text = text::foldForComparison(utf8);
    ParsedNumber number;

    // "2×10⁻³", "2*10^-3", "10⁻³"
    std::string exponent;
    for (std::string_view const ten : {"×10", "x10", "*10", "· 10", "× 10", "x 10"}) {
        std::size_t const at = text.find(ten);
        if (at == std::string::npos || at == 0) continue;
        std::string_view tail = std::string_view(text).substr(at + ten.size());
        if (!tail.empty() && tail.front() == '^') tail.remove_prefix(1);
        if (tail.empty()) break;
        auto const raised = superscriptDigits(tail);
        exponent = raised ? *raised : std::string(tail);
        text.resize(at);
        while (!text.empty() && text.back() == ' ') text.pop_back();
        break;
    }

    if (exponent.empty()) {  // "10^-7", "10⁻⁷"
        std::size_t const ten = !text.empty() && (text.front() == '-' || text.front() == '+') ? 1 : 0;
        if (std::string_view(text).substr(ten, 2) == "10" && text.size() > ten + 2) {
            std::string_view tail = std::string_view(text).substr(ten + 2);
            bool const caret = tail.front() == '^';
            if (caret) tail.remove_prefix(1);
            auto const raised = superscriptDigits(tail);
            if (raised && !raised->empty()) exponent = *raised;
            else if (caret) exponent = std::string(tail);
            if (!exponent.empty()) text.replace(ten, std::string::npos, "1");
        }
    }
    if (!text.empty() && (text.front() == '-' || text.front() == '+')) {
        while (text.size() > 1 && text[1] == ' ') text.erase(1, 1);
    }
    bool const signedText = !text.empty() && (text.front() == '-' || text.front() == '+');
    std::string const sign = signedText ? text.substr(0, 1) : "";
    std::string digits = signedText ? text.substr(1) : text;
    if (digits.empty()) return std::nullopt;

    if (digits.find(' ') != std::string::npos) {
        std::string_view const whole = std::string_view(digits).substr(0, digits.find_first_of(".,"));
        if (!groupsOfThree(whole, ' ')) return std::nullopt;
        drop(digits, ' ');
        number.note = "spaces read as thousands";
    }
    if (digits.find('\'') != std::string::npos) {
        if (!groupsOfThree(std::string_view(digits).substr(0, digits.find_first_of(".,")), '\'')) return std::nullopt;
        drop(digits, '\'');
        number.note = "apostrophes read as thousands";
    }
    std::size_t const point = digits.find('.');
    std::size_t const commaAt = digits.find(',');
    if (commaAt != std::string::npos && point != std::string::npos) {
        bool const commaFirst = commaAt < point;
        char const thousands = commaFirst ? ',' : '.';
        std::size_t const decimal = commaFirst ? point : commaAt;
        if (!groupsOfThree(std::string_view(digits).substr(0, decimal), thousands)) return std::nullopt;
        drop(digits, thousands);
        std::replace(digits.begin(), digits.end(), ',', '.');
        number.note = commaFirst ? "commas read as thousands" : "comma read as decimal, points as thousands";
    } else if (commaAt != std::string::npos) {
        std::size_t const commas = static_cast<std::size_t>(std::count(digits.begin(), digits.end(), ','));
        bool const thousandsForm = groupsOfThree(digits, ',');
        bool const leadingZero = digits.front() == '0';
        bool asDecimal = commas == 1 && (!thousandsForm || leadingZero || comma == CommaReading::Decimal);
        if (comma == CommaReading::Thousands && thousandsForm) asDecimal = false;
        if (!asDecimal && !thousandsForm) return std::nullopt;
        if (asDecimal) {
            std::replace(digits.begin(), digits.end(), ',', '.');
            number.note = "comma read as decimal";
        } else {
            drop(digits, ',');
            number.note = "commas read as thousands";
        }
    } else if (std::count(digits.begin(), digits.end(), '.') > 1) {
        if (!groupsOfThree(digits, '.')) return std::nullopt;
        drop(digits, '.');
        number.note = "points read as thousands";
    }
    auto const value = Decimal::parse(sign + digits + (exponent.empty() ? "" : "e" + exponent));
    if (!value) return std::nullopt;
    number.value = *value;
    return number;
}

namespace {

// "8.9-kΩ resistor", "5-V supply"; "figure 5-A" and "5-A2" are codes.
bool isHyphenatedUnit(std::string_view utf8, std::size_t hyphen) {
    if (hyphen + 1 >= utf8.size() || utf8[hyphen] != '-') return false;
    std::size_t length = 0;
    std::string_view const rest = utf8.substr(hyphen + 1);
    if (text::isAsciiDigit(rest.front()) || !parseUnitPrefix(rest, {}, length)) return false;
    std::string_view const behind = rest.substr(std::min(length, rest.size()));
    if (!behind.empty() && (behind.front() == '-' || text::isAsciiDigit(behind.front()))) return false;
    return length > 1 || (behind.size() > 1 && behind.front() == ' ' && behind[1] >= 'a' && behind[1] <= 'z');
}

}  // namespace

std::vector<QuantitySpan> findQuantities(std::string_view utf8) {
    std::vector<QuantitySpan> result;
    scan(utf8, [&](std::size_t begin, std::size_t end) {
        // Inside a code ("A12", "SOT-23-6"): no quantity.
        if (begin > 0) {
            std::size_t at = begin;
            char32_t const before = text::decodePrevious(utf8, at);
            bool const minusCode = before == U'-' && at > 0 && (text::isAsciiLetter(utf8[at - 1]) || text::isAsciiDigit(utf8[at - 1]));
            bool const latin = text::isLetter(before) && !text::isCjk(before);
            if (latin || before == U'_' || minusCode) return;
        }
        auto const number = parseNumber(utf8.substr(begin, end - begin));
        if (!number) return;
        QuantitySpan span{begin, end, number->value, std::nullopt};
        std::size_t unitAt = end;
        if (unitAt < utf8.size() && utf8[unitAt] == ' ') ++unitAt;
        else if (utf8.substr(std::min(unitAt, utf8.size()), 2) == "\u00A0") unitAt += 2;
        else if (isHyphenatedUnit(utf8, unitAt)) ++unitAt;
        std::size_t length = 0;
        if (unitAt < utf8.size()) {
            auto unit = parseUnitPrefix(utf8.substr(unitAt), {}, length);
            // "at 3 a time", "5 in series", "2 s": a lone lower-case word needs to touch, real unit letters do not.
            std::string_view const printed = utf8.substr(unitAt, length);
            bool const apart = unitAt != end;
            bool const doubtful = printed == "in" || printed == "a" || printed == "h" || printed == "m" || printed == "c" || printed == "R" || printed == "B" || printed == "\"" ||
                                  printed == "times" || printed == "v";
            if (unit && !(apart && doubtful) && !(printed == "\"")) {
                span.unit = unit;
                span.end = unitAt + length;
                span.value = toCoherent(number->value, *unit);
            }
        }
        result.push_back(std::move(span));
    });
    return result;
}

}  // namespace standin::quantity

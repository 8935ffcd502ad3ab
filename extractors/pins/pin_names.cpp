// Written by hand, since pin cells mix commas, dashes, words and both widths.
// Tested by tests/extractors/pins/pin_names_test.cpp.
#include "extractors/pins/pin_names.h"

#include <algorithm>
#include <array>
#include <cstdlib>

#include "text/dashes.h"
#include "text/utf8.h"

namespace standin::pins {

namespace {

constexpr int kMostPins = 999;
constexpr int kLongestRange = 128;
constexpr std::size_t kLongestName = 32;
constexpr std::size_t kMostNameWords = 4;

bool isDash(char32_t code) { return text::isDash(code) || code == 0x30FC || code == U'~' || code == 0xFF5E || code == 0x301C; }

bool isSeparator(char32_t code) {
    return code == U',' || code == U';' || code == U'/' || code == U' ' || code == 0xFF0C || code == 0x3001 || code == 0xA0 || code == U'&' || code == U'\n' || code == U'+' || code == 0x3000;
}

// One part between separators: a number, an array place or a pad.
bool isPart(std::u32string_view part) {
    if (part.empty() || part.size() > 4) return false;
    std::size_t at = 0;
    if (part[0] >= U'A' && part[0] <= U'Z' && part.size() >= 2 && part.size() <= 3) at = 1;
    return std::all_of(part.begin() + static_cast<std::ptrdiff_t>(at), part.end(), [](char32_t c) { return c >= U'0' && c <= U'9'; });
}

int valueOf(std::u32string_view part) {
    int value = 0;
    for (char32_t const c : part) {
        if (c < U'0' || c > U'9') return 0;
        value = value * 10 + static_cast<int>(c - U'0');
    }
    return value;
}

char32_t halfWidth(char32_t code) {
    if (code >= 0xFF10 && code <= 0xFF19) return U'0' + (code - 0xFF10);
    return code;
}

std::string lowered(std::string_view text) { return text::asciiLower(text::trimmed(text)); }

}  // namespace

bool isBlank(std::string_view cell) {
    for (std::size_t at = 0; at < cell.size();) {
        char32_t const code = text::decodeNext(cell, at);
        if (!isDash(code) && code != U' ' && code != U'/' && code != 0xA0) return false;
    }
    return true;
}

bool isPad(std::string_view words) {
    auto const text = lowered(words);
    constexpr std::array<std::string_view, 20> kPads{"ep", "pad", "epad", "e-pad", "tab", "exposed pad", "thermal pad", "powerpad", "exp", "dap", "back", "bottom pad",
                                                     "衬底", "底部焊盘", "散热片", "散热焊盘", "裸露焊盘", "焊盘", "thermal", "die pad"};
    return std::find(kPads.begin(), kPads.end(), text) != kPads.end();
}

std::optional<int> plainNumber(std::string_view text) {
    text = text::trimmed(text);
    if (text.empty() || text.size() > 9) return std::nullopt;
    int value = 0;
    for (std::size_t at = 0; at < text.size();) {
        char32_t const code = halfWidth(text::decodeNext(text, at));
        if (code >= 0x2460 && code <= 0x2473 && value == 0 && at == text.size()) return static_cast<int>(code - 0x2460) + 1;  // circled
        if (code < U'0' || code > U'9') return std::nullopt;
        value = value * 10 + static_cast<int>(code - U'0');
        if (value > kMostPins) return std::nullopt;
    }
    if (value == 0) return std::nullopt;
    return value;
}

std::vector<std::string> pinNumbers(std::string_view cell) {
    cell = text::trimmed(cell);
    if (cell.empty() || cell.size() > 200) return {};
    if (auto const circled = plainNumber(cell)) return {std::to_string(*circled)};
    if (isPad(cell)) return {std::string(cell)};
    std::vector<std::string> numbers;
    std::u32string part;
    int rangeFrom = 0;
    bool valid = true;
    bool range = false;
    std::vector<std::string> other;  // letters of a pad's name
    auto const close = [&] {
        if (part.empty()) return;
        auto const utf8 = text::toUtf8(part);
        if (isPart(part)) {
            int const value = valueOf(part);
            if (range && rangeFrom > 0 && value > rangeFrom && value - rangeFrom <= kLongestRange) {
                for (int between = rangeFrom + 1; between <= value; ++between) numbers.push_back(std::to_string(between));
            } else {
                numbers.push_back(utf8);
            }
            rangeFrom = value;
        } else if (isPad(utf8)) {
            numbers.push_back(utf8);
            rangeFrom = 0;
        } else if (lowered(utf8) != "and" && lowered(utf8) != "to" && lowered(utf8) != "pin" && lowered(utf8) != "pins") {
            valid = false;
        } else if (lowered(utf8) == "to") {
            range = true;
            part.clear();
            return;
        }
        range = false;
        part.clear();
    };
    for (std::size_t at = 0; at < cell.size() && valid;) {
        char32_t const code = halfWidth(text::decodeNext(cell, at));
        if (isDash(code)) {
            close();
            range = true;
        } else if (isSeparator(code)) {
            bool const pending = range && part.empty();
            close();
            range = pending || (range && code == U' ');
        } else if (code == U'(' || code == U')') {
            close();
        } else {
            part.push_back(code);
        }
    }
    close();
    if (!valid) return {};
    std::vector<std::string> different;
    for (auto& number : numbers) {
        if (std::find(different.begin(), different.end(), number) == different.end()) different.push_back(std::move(number));
    }
    return different;
}

std::vector<std::string> pinNamesFor(std::string_view cell, std::size_t count) {
    std::vector<std::string> const whole(count, std::string(cell));
    if (count < 2) return whole;
    std::vector<std::string> names;
    for (std::size_t at = 0; at <= cell.size();) {
        auto const end = std::min({cell.find(',', at), cell.find(';', at), cell.find("\u3001", at), cell.find("\uFF0C", at), cell.size()});
        auto const name = text::trimmed(cell.substr(at, end - at));
        if (name.empty()) return whole;
        names.emplace_back(name);
        at = end + (end < cell.size() && static_cast<unsigned char>(cell[end]) >= 0x80 ? 3 : 1);
    }
    if (names.size() == count) return names;
    if (names.size() > 1) return whole;
    // "Q0 to Q7": the same letters, a number that counts up or down.
    for (std::string_view const to : {" to ", "\u2026", "...", "~", "-", "\u2013", "\uFF5E"}) {
        auto const place = cell.find(to);
        if (place == std::string_view::npos) continue;
        auto const first = text::trimmed(cell.substr(0, place));
        auto const last = text::trimmed(cell.substr(place + to.size()));
        auto const firstDigits = first.find_last_not_of("0123456789") + 1;
        auto const lastDigits = last.find_last_not_of("0123456789") + 1;
        if (firstDigits >= first.size() || lastDigits >= last.size() || first.size() - firstDigits > 3 || last.size() - lastDigits > 3) continue;
        auto const letters = first.substr(0, firstDigits);
        if ((lastDigits > 0 && last.substr(0, lastDigits) != letters) || (letters.empty() && to != " to ")) continue;
        auto const valueOfDigits = [](std::string_view digits) {
            int value = 0;
            for (char const c : digits) value = value * 10 + (c - '0');
            return value;
        };
        int const from = valueOfDigits(first.substr(firstDigits));
        int const until = valueOfDigits(last.substr(lastDigits));
        if (static_cast<std::size_t>(std::abs(until - from)) + 1 != count) continue;
        names.clear();
        for (std::size_t i = 0; i < count; ++i) names.push_back(std::string(letters) + std::to_string(from + (until < from ? -1 : 1) * static_cast<int>(i)));
        return names;
    }
    return whole;
}

std::string withoutMarks(std::string name) {
    while (!name.empty()) {
        std::size_t at = name.size();
        char32_t const last = text::decodePrevious(name, at);
        bool const raised = last == 0xB9 || last == 0xB2 || last == 0xB3 || last == 0x2070 || (last >= 0x2074 && last <= 0x2079);
        if (!raised || at == 0) break;
        name.resize(at);
    }
    return std::string(text::trimmed(name));
}

bool looksLikePinName(std::string_view text) {
    text = text::trimmed(text);
    if (text.empty() || text.size() > kLongestName || isBlank(text)) return false;
    if (plainNumber(text)) return false;
    auto const spaces = static_cast<std::size_t>(std::count(text.begin(), text.end(), ' '));
    if (spaces >= kMostNameWords) return false;
    bool letter = false;
    for (char const c : text) {
        letter = letter || text::isAsciiLetter(c) || static_cast<unsigned char>(c) >= 0x80;
        if (c == '=' || c == ';' || c == '%' || c == '?' || c == '@') return false;
    }
    if (!letter && text != "+" && text != "-") return false;
    // Values: "25°", "10 Ω".
    for (std::string_view const sign : {"\u00B0", "\u2103", "\u00B1", "\u03A9", "\u2126", "\u00B5", "\u03BC", "\u02DA"}) {
        if (text.find(sign) != std::string_view::npos) return false;
    }
    char const last = text.back();
    if (last == ':' || (last == '.' && text.size() > 8)) return false;
    // Names begin with a capital, a sign, a digit ("1Y") or another script; a
    // small first letter stands alone at most ("nRST", "d1").
    char const first = text.front();
    if (text::isAsciiLower(first)) {
        auto const word = text.substr(0, text.find(' '));
        return std::any_of(word.begin(), word.end(), [](char c) { return text::isAsciiUpper(c) || text::isAsciiDigit(c); }) || word.size() <= 3;
    }
    return true;
}

}  // namespace standin::pins

#include "text/utf8.h"

#include <cstdint>
#include <cstring>

// Decoding by hand: the tables of the Unicode standard (3.9, D92) as comparisons.
// Tested by tests/src/text/utf8_test.cpp.

namespace standin::text {

namespace {

bool isContinuation(unsigned char byte) { return (byte & 0xC0U) == 0x80U; }

}  // namespace

char32_t decodeSequence(std::string_view utf8, std::size_t& at) {
    std::size_t const left = utf8.size() - at;
    auto const byteAt = [&](std::size_t i) { return static_cast<unsigned char>(utf8[at + i]); };
    unsigned char const first = byteAt(0);
    if (first < 0x80) {
        ++at;
        return first;
    }
    auto const tail = [&](std::size_t i) { return static_cast<char32_t>(byteAt(i) & 0x3FU); };
    if (first >= 0xC2 && first <= 0xDF && left >= 2 && isContinuation(byteAt(1))) {
        char32_t const code = (first & 0x1FU) << 6U | tail(1);
        at += 2;
        return code;
    }
    if (first >= 0xE0 && first <= 0xEF && left >= 3 && isContinuation(byteAt(1)) && isContinuation(byteAt(2))) {
        char32_t const code = (first & 0x0FU) << 12U | tail(1) << 6U | tail(2);
        if (code >= 0x800 && (code < 0xD800 || code > 0xDFFF)) {  // neither overlong nor a surrogate
            at += 3;
            return code;
        }
    }
    if (first >= 0xF0 && first <= 0xF4 && left >= 4 && isContinuation(byteAt(1)) && isContinuation(byteAt(2)) && isContinuation(byteAt(3))) {
        char32_t const code = (first & 0x07U) << 18U | tail(1) << 12U | tail(2) << 6U | tail(3);
        if (code >= 0x10000 && code <= 0x10FFFF) {
            at += 4;
            return code;
        }
    }
    ++at;
    return kReplacementCharacter;
}

char32_t decodePrevious(std::string_view utf8, std::size_t& at) {
    std::size_t start = at - 1;
    for (int back = 0; back < 3 && start > 0 && isContinuation(static_cast<unsigned char>(utf8[start])); ++back) --start;
    std::size_t end = start;
    char32_t const code = decodeNext(utf8, end);
    if (end == at) {
        at = start;
        return code;
    }
    --at;
    return static_cast<unsigned char>(utf8[at]) < 0x80 ? static_cast<char32_t>(utf8[at]) : kReplacementCharacter;
}

void appendSequence(std::string& utf8, char32_t code) {
    if ((code >= 0xD800 && code <= 0xDFFF) || code > 0x10FFFF) code = kReplacementCharacter;
    if (code < 0x80) {
        utf8.push_back(static_cast<char>(code));
        return;
    }
    auto const put = [&](char32_t byte) { utf8.push_back(static_cast<char>(byte)); };
    if (code < 0x800) {
        put(0xC0U | code >> 6U);
    } else if (code < 0x10000) {
        put(0xE0U | code >> 12U);
        put(0x80U | (code >> 6U & 0x3FU));
    } else {
        put(0xF0U | code >> 18U);
        put(0x80U | (code >> 12U & 0x3FU));
        put(0x80U | (code >> 6U & 0x3FU));
    }
    put(0x80U | (code & 0x3FU));
}

std::u32string toUtf32(std::string_view utf8) {
    std::u32string codes(utf8.size(), U'\0');
    std::size_t count = 0;
    for (std::size_t at = 0; at < utf8.size();) {
        unsigned char const byte = static_cast<unsigned char>(utf8[at]);
        if (byte < 0x80) {
            codes[count++] = byte;
            ++at;
        } else {
            codes[count++] = decodeNext(utf8, at);
        }
    }
    codes.resize(count);
    return codes;
}

std::string toUtf8(std::u32string_view codes) {
    std::string utf8;
    utf8.reserve(codes.size());
    for (char32_t const code : codes) append(utf8, code);
    return utf8;
}

bool isAscii(std::string_view utf8) {
    constexpr std::uint64_t kHighBits = 0x8080808080808080U;
    std::size_t at = 0;
    for (; at + sizeof(std::uint64_t) <= utf8.size(); at += sizeof(std::uint64_t)) {
        std::uint64_t eight = 0;
        std::memcpy(&eight, utf8.data() + at, sizeof(eight));
        if ((eight & kHighBits) != 0) return false;
    }
    for (; at < utf8.size(); ++at) {
        if (static_cast<unsigned char>(utf8[at]) >= 0x80) return false;
    }
    return true;
}

std::string cleaned(std::string_view utf8) {
    // Nearly all text is valid: only what follows the first invalid byte is written anew.
    std::size_t at = 0;
    while (at < utf8.size()) {
        std::size_t next = at;
        if (decodeNext(utf8, next) == kReplacementCharacter && next == at + 1) break;
        at = next;
    }
    std::string result(utf8.substr(0, at));
    while (at < utf8.size()) append(result, decodeNext(utf8, at));
    return result;
}

std::size_t codePointCount(std::string_view utf8) {
    std::size_t count = 0;
    for (std::size_t at = 0; at < utf8.size(); ++count) (void)decodeNext(utf8, at);
    return count;
}

namespace {

constexpr char kCaseBit = 0x20;

// Eight bytes in lower case at once. The sums set the high bit of a byte from 'A' on
// and of one beyond 'Z'; without its own high bit no byte carries into the next.
std::uint64_t eightLowered(std::uint64_t bytes) {
    constexpr std::uint64_t kEach = 0x0101010101010101U;
    std::uint64_t const low = bytes & (kEach * 0x7F);
    std::uint64_t const fromA = low + kEach * (0x80 - 'A');
    std::uint64_t const beyondZ = low + kEach * (0x80 - 'Z' - 1);
    std::uint64_t const upper = fromA & ~beyondZ & ~bytes & (kEach * 0x80);
    return bytes | upper >> 2U;  // 0x80 becomes the bit of the case
}

}  // namespace

std::string asciiLower(std::string_view utf8) {
    std::string lower(utf8);
    constexpr std::size_t kEight = sizeof(std::uint64_t);
    if (lower.size() < kEight) {
        for (char& c : lower) c = static_cast<char>(isAsciiUpper(c) ? c | kCaseBit : c);
        return lower;
    }
    auto const lowerEightAt = [&](std::size_t at) {
        std::uint64_t eight = 0;
        std::memcpy(&eight, lower.data() + at, kEight);
        eight = eightLowered(eight);
        std::memcpy(lower.data() + at, &eight, kEight);
    };
    for (std::size_t at = 0; at + kEight < lower.size(); at += kEight) lowerEightAt(at);
    lowerEightAt(lower.size() - kEight);  // some of them once more, which changes nothing
    return lower;
}

namespace {

bool isSpace(char32_t code) {
    return code == U' ' || (code >= 9 && code <= 13) || code == 0xA0 || (code >= 0x2000 && code <= 0x200B) || code == 0x2028 ||
           code == 0x2029 || code == 0x202F || code == 0x205F || code == 0x3000 || code == 0xFEFF;
}

}  // namespace

std::string_view trimmed(std::string_view utf8) {
    auto const isPlainEnd = [](char c) { return c > ' ' && c <= '~'; };
    if (!utf8.empty() && isPlainEnd(utf8.front()) && isPlainEnd(utf8.back())) return utf8;
    std::size_t begin = 0;
    while (begin < utf8.size()) {
        std::size_t next = begin;
        if (!isSpace(decodeNext(utf8, next))) break;
        begin = next;
    }
    std::size_t end = utf8.size();
    while (end > begin) {
        std::size_t previous = end;
        if (!isSpace(decodePrevious(utf8, previous))) break;
        end = previous;
    }
    return utf8.substr(begin, end - begin);
}

}  // namespace standin::text

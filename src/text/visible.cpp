#include "text/visible.h"

#include <unicode/uchar.h>

#include <fmt/format.h>

#include "text/utf8.h"

// One pass; only characters beyond ASCII ask ICU.
// Tested by tests/src/text/visible_test.cpp.

namespace standin::text {

namespace {

bool isHarmful(char32_t code) {
    if (code < 0x20 || code == 0x7F) return true;
    if (code < 0xA0) return code >= 0x80;
    if (code == 0xAD) return true;
    if ((code >= 0x200B && code <= 0x200F) || (code >= 0x2028 && code <= 0x202E) || (code >= 0x2060 && code <= 0x206F) || code == 0xFEFF || code == 0x061C) return true;
    if (code < 0x2000 && code >= 0xA0 && code < 0x300) return false;
    auto const category = static_cast<UCharCategory>(u_charType(static_cast<UChar32>(code)));
    return category == U_CONTROL_CHAR || category == U_FORMAT_CHAR || category == U_UNASSIGNED || category == U_SURROGATE || category == U_PRIVATE_USE_CHAR;
}

int cellsOf(char32_t code) {
    if (code < 0x20) return 0;
    if (code < 0x300) return 1;
    switch (u_charType(static_cast<UChar32>(code))) {
        case U_NON_SPACING_MARK:
        case U_ENCLOSING_MARK:
        case U_FORMAT_CHAR: return 0;
        default: break;
    }
    int const width = u_getIntPropertyValue(static_cast<UChar32>(code), UCHAR_EAST_ASIAN_WIDTH);
    return width == U_EA_WIDE || width == U_EA_FULLWIDTH ? 2 : 1;
}

}  // namespace

std::string visible(std::string_view utf8) {
    std::string result;
    result.reserve(utf8.size());
    for (std::size_t at = 0; at < utf8.size();) {
        char32_t const code = decodeNext(utf8, at);
        if (code == U'\t' || code == U'\n' || code == U'\r') {
            result.push_back(' ');
        } else if (isHarmful(code)) {
            result += fmt::format("⟨U+{:04X}⟩", static_cast<unsigned>(code));
        } else {
            append(result, code);
        }
    }
    return result;
}

int columnWidth(std::string_view utf8) {
    int columns = 0;
    for (std::size_t at = 0; at < utf8.size();) columns += cellsOf(decodeNext(utf8, at));
    return columns;
}

std::string clippedTo(std::string_view utf8, int columns) {
    if (columnWidth(utf8) <= columns) return std::string(utf8);
    if (columns <= 0) return {};
    int used = 0;
    std::size_t end = 0;
    while (end < utf8.size()) {
        std::size_t next = end;
        int const cells = cellsOf(decodeNext(utf8, next));
        if (used + cells > columns - 1) break;
        used += cells;
        end = next;
    }
    return std::string(utf8.substr(0, end)) + "…";
}

}  // namespace standin::text

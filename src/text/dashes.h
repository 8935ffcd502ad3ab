// The dashes that sheets are printed with, told in one place.
//
// Tested by tests/src/text/fold_test.cpp.
#pragma once

namespace standin::text {

// A hyphen, a minus sign, or a dash of any length; U+2500, U+23AF and U+F8E7 are long ones of symbol fonts.
[[nodiscard]] constexpr bool isDash(char32_t code) {
    return code == U'-' || (code >= 0x2010 && code <= 0x2015) || code == 0x2212 || code == 0x23AF || code == 0x2500 || code == 0xF8E7 || code == 0xFF0D;
}

}  // namespace standin::text

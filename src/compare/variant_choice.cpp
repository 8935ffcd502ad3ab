// Tested by tests/src/compare/variant_choice_test.cpp.
#include "compare/variant_choice.h"

#include <algorithm>
#include <string>

#include "compare/variant_words.h"

namespace standin::compare {

namespace {

// "qx01" is in "qx01a", and not in "qx01+a".
bool holdsCode(std::string_view key, std::string_view code) {
    for (auto at = key.find(code); at != std::string_view::npos; at = key.find(code, at + 1)) {
        std::size_t const end = at + code.size();
        if (end == key.size() || key[end] != '+') return true;
    }
    return false;
}

}  // namespace

bool isOtherVariant(std::string_view printed, std::string_view chosen) {
    if (printed.empty() || chosen.empty()) return false;
    std::string const row = codeKey(printed);
    std::string const wanted = codeKey(chosen);
    if (row.find(wanted) != std::string::npos || wanted.find(row) != std::string::npos) return false;
    // "HX20A, HX20B" of the title of a table that holds for both, "HX20A-TR" chosen.
    auto const codes = variantWords(printed).codes;
    return std::none_of(codes.begin(), codes.end(), [&](std::string const& code) { return holdsCode(wanted, code); });
}

}  // namespace standin::compare

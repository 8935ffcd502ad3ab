// Tested by tests/src/compare/variant_choice_test.cpp.
#include "compare/variant_choice.h"

#include <algorithm>
#include <string>

#include "compare/variant_words.h"
#include "text/fold.h"

namespace standin::compare {

bool isOtherVariant(std::string_view printed, std::string_view chosen) {
    if (printed.empty() || chosen.empty()) return false;
    std::string const row = text::foldKey(printed);
    std::string const wanted = text::foldKey(chosen);
    if (row.find(wanted) != std::string::npos || wanted.find(row) != std::string::npos) return false;
    // "HX20A, HX20B" of the title of a table that holds for both, "HX20A-TR" chosen.
    auto const codes = variantWords(printed).codes;
    return std::none_of(codes.begin(), codes.end(), [&](std::string const& code) { return wanted.find(code) != std::string::npos; });
}

}  // namespace standin::compare

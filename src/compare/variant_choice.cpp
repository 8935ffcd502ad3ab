// Tested by tests/src/compare/variant_choice_test.cpp.
#include "compare/variant_choice.h"

#include <string>

#include "text/fold.h"

namespace standin::compare {

bool isOtherVariant(std::string_view printed, std::string_view chosen) {
    if (printed.empty() || chosen.empty()) return false;
    std::string const row = text::foldKey(printed);
    std::string const wanted = text::foldKey(chosen);
    return row.find(wanted) == std::string::npos && wanted.find(row) == std::string::npos;
}

}  // namespace standin::compare

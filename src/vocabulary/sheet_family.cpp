// Gathers what Vocabulary::detectFamily wants to know. Tested by
// tests/src/vocabulary/sheet_family_test.cpp.
#include "vocabulary/sheet_family.h"

#include <vector>

namespace standin::vocabulary {

std::string familyOf(model::Datasheet const& sheet, Vocabulary const& vocabulary) {
    constexpr std::size_t kHead = 4 * 1024;  // bytes of text
    std::vector<std::string> names;
    std::vector<std::string> symbols;
    for (auto const& parameter : sheet.parameters) {
        if (!parameter.name.empty()) names.push_back(parameter.name);
        if (!parameter.symbol.empty()) symbols.push_back(parameter.symbol);
    }
    std::string head = sheet.document.title;
    for (auto const& sentence : sheet.text) {
        if (head.size() > kHead) break;
        head += ' ';
        head += sentence.text;
    }
    return vocabulary.detectFamily(names, symbols, head);
}

}  // namespace standin::vocabulary

// Tested by tests/extractors/recognition/missing_signs_test.cpp.
#include "extractors/recognition/missing_signs.h"

#include <cctype>

namespace standin::recognition {

std::string withOhms(std::string const& text) {
    if (text.size() < 2 || text.back() != 'Q') return text;
    char const before = text[text.size() - 2];
    bool const prefix = before == 'm' || before == 'k' || before == 'M';
    bool const value = std::isdigit(static_cast<unsigned char>(before)) != 0;
    bool const alone = text.size() == 2 || (text.size() > 2 && std::isdigit(static_cast<unsigned char>(text[text.size() - 3])) != 0);
    if (!(prefix && alone) && !(value && std::isdigit(static_cast<unsigned char>(text.front())) != 0)) return text;
    return text.substr(0, text.size() - 1) + "\u03A9";
}

}  // namespace standin::recognition

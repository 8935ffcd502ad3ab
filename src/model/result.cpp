// Wording of errors. Tested by tests/src/model/result_test.cpp.
#include "model/result.h"

#include <algorithm>

#include <fmt/format.h>

namespace standin::model {

std::string describe(Error const& error) {
    std::string text;
    if (!error.file.empty()) text += error.file + ": ";
    if (error.page > 0) text += fmt::format("page {}: ", error.page);
    text += error.message;
    std::replace(text.begin(), text.end(), '\n', ' ');
    return text;
}

}  // namespace standin::model

// Foreign text made harmless in HTML. Private to report/.
#pragma once

#include <string>
#include <string_view>

namespace standin::report {

// For element content and for attributes in double quotes.
[[nodiscard]] std::string escaped(std::string_view foreign);

}  // namespace standin::report

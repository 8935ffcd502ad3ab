// Signs that the data of the Latin languages do not have.
#pragma once

#include <string>

namespace standin::recognition {

// Ω comes back as Q: "75mQ", "120Q" and "kQ" are no words otherwise and get their Ω; "Q" alone may be
// the name of an output and stays.
[[nodiscard]] std::string withOhms(std::string const& text);

}  // namespace standin::recognition

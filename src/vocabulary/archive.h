// A Store as bytes and back, for the data that is compiled in. Not a file format:
// writer and reader are always of the same build.
#pragma once

#include <string>
#include <string_view>

#include "vocabulary/store.h"

namespace standin::vocabulary {

[[nodiscard]] std::string pack(Vocabulary::Store& store);

// False where the bytes are not what pack() wrote; the store is spoilt then.
[[nodiscard]] bool unpack(std::string_view bytes, Vocabulary::Store& store);

}  // namespace standin::vocabulary

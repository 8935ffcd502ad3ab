// The one door through which files come in: each is read into memory once, and
// what is hashed is what is parsed.
//
//     auto content = readFile("cell.json", kLongestUserFile);
//     if (!content) …  // content.error().file is the name as given
#pragma once

#include <cstddef>
#include <string>

#include "model/result.h"

namespace standin::model {

inline constexpr std::size_t kLongestUserFile = std::size_t{16} << 20;  // bytes of a file that a person writes
inline constexpr std::size_t kLongestDocument = std::size_t{1} << 30;   // bytes of a PDF or of a datasheet as JSON

// The bytes of the file. Errors (with `path` as the file): Unreadable where it
// cannot be opened or read, Usage where it is longer than `longest` bytes.
[[nodiscard]] Result<std::string> readFile(std::string const& path, std::size_t longest);

}  // namespace standin::model

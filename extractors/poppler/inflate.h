// Undoes the compression of PDF streams (RFC 1950). Private to
// extractors/poppler/; no Poppler. The only user of zlib.
//
//     if (auto const text = inflated(bytes, kLargest)) use(*text);
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <string>

namespace standin::poppler {

// The bytes that were compressed into `deflated`; what follows their end is
// ignored. None when they are damaged, cut short, or more than `most` bytes.
// Linear in the result.
[[nodiscard]] std::optional<std::string> inflated(std::span<unsigned char const> deflated, std::size_t most);

// The first `length` bytes (at most 65536) of it, though `deflated` is cut short. None
// when they are damaged or there are fewer.
[[nodiscard]] std::optional<std::string> inflatedStart(std::span<unsigned char const> deflated, std::size_t length);

}  // namespace standin::poppler

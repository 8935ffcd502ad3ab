// Undoes the LZW compression of old PDF streams (ISO 32000-1, 7.4.4). Private to
// extractors/poppler/; no Poppler.
//
//     if (auto const text = unpackedLzw(bytes, kLargest)) use(*text);
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <string>

namespace standin::poppler {

// The bytes that were compressed into `packed` with codes that grow early, as they do
// unless a stream says otherwise; what follows their end is ignored. None when they
// are damaged, have no end, or are more than `most` bytes. Linear in the result.
[[nodiscard]] std::optional<std::string> unpackedLzw(std::span<unsigned char const> packed, std::size_t most);

}  // namespace standin::poppler

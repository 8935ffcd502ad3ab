// SHA-256, for document identification and the stable ids of findings.
#pragma once

#include <cstddef>
#include <span>
#include <string>
#include <string_view>

namespace standin::model {

// 64 lower-case hexadecimal digits.
[[nodiscard]] std::string sha256Hex(std::span<std::byte const> bytes);
[[nodiscard]] std::string sha256Hex(std::string_view text);

}  // namespace standin::model

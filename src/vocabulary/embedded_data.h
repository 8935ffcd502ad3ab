// The files of vocabulary/data/, compiled into the program by embed.cmake.
#pragma once

#include <string_view>
#include <vector>

namespace standin::vocabulary {

struct EmbeddedFile {
    std::string_view name;  // "lithium_protection.json"
    std::string_view json;  // lives as long as the program
};

// In the order of their names.
[[nodiscard]] std::vector<EmbeddedFile> embeddedFiles();

}  // namespace standin::vocabulary

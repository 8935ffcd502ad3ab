// Compresses text the way PDF's FlateDecode undoes.
#pragma once

#include <stdexcept>
#include <string>

#include <zlib.h>

namespace standin::testing {

inline std::string deflated(std::string const& text) {
    auto length = compressBound(text.size());
    std::string bytes(length, '\0');
    if (compress(reinterpret_cast<Bytef*>(bytes.data()), &length, reinterpret_cast<Bytef const*>(text.data()), text.size()) != Z_OK) throw std::runtime_error("zlib");
    bytes.resize(length);
    return bytes;
}

}  // namespace standin::testing

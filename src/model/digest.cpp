// SHA-256 by libcrypto. Tested by tests/src/model/digest_test.cpp.
#include "model/digest.h"

#include <array>

#include <openssl/sha.h>

namespace standin::model {

std::string sha256Hex(std::span<std::byte const> bytes) {
    std::array<unsigned char, SHA256_DIGEST_LENGTH> digest{};
    SHA256(reinterpret_cast<unsigned char const*>(bytes.data()), bytes.size(), digest.data());
    constexpr std::string_view kHex = "0123456789abcdef";
    std::string text;
    text.reserve(2 * digest.size());
    for (unsigned char const byte : digest) {
        text += kHex[byte >> 4];
        text += kHex[byte & 15];
    }
    return text;
}

std::string sha256Hex(std::string_view text) {
    return sha256Hex(std::as_bytes(std::span{text.data(), text.size()}));
}

}  // namespace standin::model

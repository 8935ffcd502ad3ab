// SHA-256 by libcrypto's plain functions: those of the newer interface look for a
// provider first, which takes longer than hashing a usual datasheet. Tested by
// tests/src/model/digest_test.cpp.
#include "model/digest.h"

#include <array>

#define OPENSSL_API_COMPAT 0x10100000L  // declares them without a warning
#include <openssl/sha.h>

namespace standin::model {

std::string sha256Hex(std::span<std::byte const> bytes) {
    std::array<unsigned char, SHA256_DIGEST_LENGTH> digest{};
    SHA256_CTX context;
    SHA256_Init(&context);
    SHA256_Update(&context, bytes.data(), bytes.size());
    SHA256_Final(digest.data(), &context);
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

// A PDF of one page, encrypted with the standard handler, version 1 (40 bits):
// the oldest scheme, simple enough to be written down here.
#pragma once

#include <array>
#include <cstdint>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include <fmt/format.h>
#include <openssl/evp.h>

namespace standin::testing {

namespace detail {

inline std::string md5(std::string_view text) {
    std::array<unsigned char, EVP_MAX_MD_SIZE> digest{};
    unsigned length = 0;
    EVP_Digest(text.data(), text.size(), digest.data(), &length, EVP_md5(), nullptr);
    return {reinterpret_cast<char const*>(digest.data()), length};
}

inline std::string rc4(std::string_view key, std::string_view text) {
    std::array<std::uint8_t, 256> state{};
    for (std::size_t i = 0; i < 256; ++i) state[i] = static_cast<std::uint8_t>(i);
    for (std::size_t i = 0, j = 0; i < 256; ++i) {
        j = (j + state[i] + static_cast<std::uint8_t>(key[i % key.size()])) % 256;
        std::swap(state[i], state[j]);
    }
    std::string out;
    std::size_t i = 0;
    std::size_t j = 0;
    for (char c : text) {
        i = (i + 1) % 256;
        j = (j + state[i]) % 256;
        std::swap(state[i], state[j]);
        out += static_cast<char>(static_cast<std::uint8_t>(c) ^ state[static_cast<std::uint8_t>(state[i] + state[j])]);
    }
    return out;
}

inline std::string padded(std::string_view password) {
    static constexpr unsigned char kPadding[32] = {0x28, 0xBF, 0x4E, 0x5E, 0x4E, 0x75, 0x8A, 0x41, 0x64, 0x00, 0x4E, 0x56, 0xFF, 0xFA, 0x01, 0x08,
                                                   0x2E, 0x2E, 0x00, 0xB6, 0xD0, 0x68, 0x3E, 0x80, 0x2F, 0x0C, 0xA9, 0xFE, 0x64, 0x53, 0x69, 0x7A};
    std::string out(password.substr(0, 32));
    out.append(reinterpret_cast<char const*>(kPadding), 32 - out.size());
    return out;
}

inline std::string hex(std::string_view bytes) {
    std::string out = "<";
    for (char c : bytes) out += fmt::format("{:02X}", static_cast<unsigned>(static_cast<unsigned char>(c)));
    return out + ">";
}

}  // namespace detail

// `text` in Helvetica on the only page, readable with `password`.
inline std::string encryptedPdf(std::string const& password, std::string const& text) {
    std::string const id = "0123456789abcdef";
    std::string const owner = detail::rc4(detail::md5(detail::padded("owner")).substr(0, 5), detail::padded(password));
    std::string const permissions = "\xFC\xFF\xFF\xFF";  // -4
    std::string const key = detail::md5(detail::padded(password) + owner + permissions + id).substr(0, 5);
    std::string const user = detail::rc4(key, detail::padded({}));
    std::string const content = fmt::format("BT /F1 12 Tf 20 150 Td ({}) Tj ET", text);
    int const contentNumber = 4;
    std::string const sealed = detail::rc4(detail::md5(key + std::string{static_cast<char>(contentNumber), 0, 0, 0, 0}).substr(0, 10), content);
    std::vector<std::string> const objects = {
        "<< /Type /Catalog /Pages 2 0 R >>",
        "<< /Type /Pages /Count 1 /Kids [3 0 R] >>",
        "<< /Type /Page /Parent 2 0 R /MediaBox [0 0 200 200] /Contents 4 0 R /Resources << /Font << /F1 5 0 R >> >> >>",
        fmt::format("<< /Length {} >>\nstream\n{}\nendstream", sealed.size(), sealed),
        "<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica /Encoding /WinAnsiEncoding >>",
        fmt::format("<< /Filter /Standard /V 1 /R 2 /P -4 /O {} /U {} >>", detail::hex(owner), detail::hex(user)),
    };
    std::string out = "%PDF-1.4\n";
    std::string table;
    for (std::size_t i = 0; i < objects.size(); ++i) {
        table += fmt::format("{:010} 00000 n \n", out.size());
        out += fmt::format("{} 0 obj\n{}\nendobj\n", i + 1, objects[i]);
    }
    std::size_t const start = out.size();
    out += fmt::format("xref\n0 {}\n0000000000 65535 f \n{}trailer\n<< /Size {} /Root 1 0 R /Encrypt 6 0 R /ID [{} {}] >>\nstartxref\n{}\n%%EOF\n", objects.size() + 1, table,
                       objects.size() + 1, detail::hex(id), detail::hex(id), start);
    return out;
}

}  // namespace standin::testing

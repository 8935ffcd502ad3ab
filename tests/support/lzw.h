// LZW as old PDF files have it, for tests.
#pragma once

#include <cstdint>
#include <map>
#include <string>

namespace standin::testing {

inline std::string packedLzw(std::string const& text) {
    std::string out;
    std::uint32_t buffer = 0;
    unsigned held = 0;
    unsigned bits = 9;
    auto const put = [&](std::uint32_t code) {
        buffer = buffer << bits | code;
        held += bits;
        for (; held >= 8; held -= 8) out += static_cast<char>(buffer >> (held - 8) & 0xFFU);
    };
    std::map<std::string, std::uint32_t> known;
    std::uint32_t count = 0;
    auto const clear = [&] {
        put(256);
        known.clear();
        for (std::uint32_t byte = 0; byte < 256; ++byte) known[std::string(1, static_cast<char>(byte))] = byte;
        count = 258;
        bits = 9;
    };
    clear();
    std::string sequence;
    for (char const c : text) {
        if (known.contains(sequence + c)) {
            sequence += c;
            continue;
        }
        put(known[sequence]);
        known[sequence + c] = count++;
        if (count == 512 || count == 1024 || count == 2048) ++bits;
        if (count == 4094) clear();
        sequence = c;
    }
    if (!sequence.empty()) put(known[sequence]);
    // Who unpacks knows one code more by now.
    if (!sequence.empty() && (count == 511 || count == 1023 || count == 2047)) ++bits;
    put(257);
    if (held > 0) out += static_cast<char>(buffer << (8 - held) & 0xFFU);
    return out;
}

}  // namespace standin::testing

// Each code stands for the sequence before it and one byte more, which is the first of
// the sequence after it: both lie one behind the other in what was unpacked, so that a
// code is a place there and a length.
//
// Tested by tests/extractors/poppler/lzw_test.cpp.
#include "extractors/poppler/lzw.h"

#include <array>
#include <cstdint>
#include <cstring>
#include <utility>

namespace standin::poppler {

namespace {

constexpr std::uint32_t kClear = 256;
constexpr std::uint32_t kEnd = 257;
constexpr std::uint32_t kFirst = 258;  // of the codes for sequences
constexpr std::uint32_t kCodes = 4096;
constexpr unsigned kShortest = 9;  // bits
constexpr unsigned kLongest = 12;

class Codes {
public:
    explicit Codes(std::span<unsigned char const> packed) : m_packed(packed) {}

    // The next code of `bits` bits, most significant first; kEnd behind the last byte
    // and then `cut` is set.
    std::uint32_t next(unsigned bits) {
        while (m_held < bits) {
            if (m_at == m_packed.size()) {
                cut = true;
                return kEnd;
            }
            m_buffer = m_buffer << 8U | m_packed[m_at++];
            m_held += 8;
        }
        m_held -= bits;
        return m_buffer >> m_held & ((1U << bits) - 1);
    }

    bool cut = false;

private:
    std::span<unsigned char const> m_packed;
    std::size_t m_at = 0;
    std::uint32_t m_buffer = 0;
    unsigned m_held = 0;  // bits of the buffer that are still to be read
};

struct Sequence {
    std::size_t start = 0;
    std::size_t length = 0;
};

// What was unpacked, in memory that grows by doubling.
class Output {
public:
    [[nodiscard]] std::size_t size() const { return m_size; }

    [[nodiscard]] char at(std::size_t place) const { return m_bytes[place]; }

    void add(char byte) {
        makeRoom(1);
        m_bytes[m_size++] = byte;
    }

    // A piece of what is there. Most are short: a word at a time, of which the last may
    // be too long, is fastest.
    void repeat(Sequence piece) {
        makeRoom(piece.length + kWord);
        char* const to = m_bytes.data() + m_size;
        char const* const from = m_bytes.data() + piece.start;
        for (std::size_t i = 0; i < piece.length; i += kWord) std::memmove(to + i, from + i, kWord);
        m_size += piece.length;
    }

    std::string take() {
        m_bytes.resize(m_size);
        return std::move(m_bytes);
    }

private:
    static constexpr std::size_t kLeast = 1U << 15U;  // more than any piece has
    static constexpr std::size_t kWord = 8;

    void makeRoom(std::size_t more) {
        if (m_size + more > m_bytes.size()) m_bytes.resize(2 * m_size + kLeast);
    }

    std::string m_bytes;
    std::size_t m_size = 0;
};

}  // namespace

std::optional<std::string> unpackedLzw(std::span<unsigned char const> packed, std::size_t most) {
    Output text;
    std::array<Sequence, kCodes> sequences;
    std::uint32_t known = kFirst;  // codes that have a meaning
    unsigned bits = kShortest;
    Sequence last;  // empty behind a clearing
    Codes codes(packed);
    while (text.size() <= most) {
        std::uint32_t const code = codes.next(bits);
        std::size_t const start = text.size();
        if (code < kClear) {
            text.add(static_cast<char>(code));
        } else if (code == kEnd) {
            return codes.cut ? std::nullopt : std::optional(text.take());
        } else if (code == kClear) {
            known = kFirst;
            bits = kShortest;
            last = {};
            continue;
        } else if (code < known) {
            text.repeat(sequences[code]);
        } else if (code == known && last.length > 0) {
            text.repeat(last);
            text.add(text.at(last.start));
        } else {
            return std::nullopt;
        }
        if (last.length > 0) {
            if (known == kCodes) return std::nullopt;  // a clearing was due
            sequences[known++] = {last.start, last.length + 1};
            if (bits < kLongest && known + 1 == 1U << bits) ++bits;
        }
        last = {start, text.size() - start};
    }
    return std::nullopt;
}

}  // namespace standin::poppler

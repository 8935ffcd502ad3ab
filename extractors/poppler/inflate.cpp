// Inflated piece by piece into one place: a text gets its memory when its length is
// known, and none of it is filled twice. The checksum behind the data is not worked
// out: Poppler, which reads what is refused here, does not look at it either.
//
// Tested by tests/extractors/poppler/inflate_test.cpp.
#include "extractors/poppler/inflate.h"

#include <algorithm>
#include <array>
#include <limits>
#include <utility>

#include <zlib.h>

namespace standin::poppler {

namespace {

constexpr std::size_t kPiece = 1U << 16U;
constexpr std::size_t kHeaderBytes = 2;
constexpr uInt kChecksumBytes = 4;
constexpr int kWithoutHeader = -MAX_WBITS;  // zlib takes the data alone, and checks no sum

// By deflate, with no dictionary that both sides know.
bool isHeader(std::span<unsigned char const> bytes) {
    constexpr unsigned kDeflate = 8;
    constexpr unsigned kDictionary = 0x20;
    unsigned const method = bytes[0];
    unsigned const flags = bytes[1];
    return (method & 0x0FU) == kDeflate && (method >> 4U) + 8 <= MAX_WBITS && (method << 8U | flags) % 31 == 0 && (flags & kDictionary) == 0;
}

class Inflater {
public:
    Inflater() { m_good = inflateInit2(&m_state, kWithoutHeader) == Z_OK; }
    Inflater(Inflater const&) = delete;
    Inflater& operator=(Inflater const&) = delete;
    ~Inflater() {
        if (m_good) inflateEnd(&m_state);
    }

    std::optional<std::string> run(std::span<unsigned char const> deflated, std::size_t most) {
        if (!begin(deflated)) return std::nullopt;
        std::string text;
        while (true) {
            std::size_t const room = std::min(kPiece, most - text.size());
            int const state = inflateInto(m_piece.data(), room);
            text.append(m_piece.data(), room - m_state.avail_out);
            if (state == Z_STREAM_END) return m_state.avail_in < kChecksumBytes ? std::nullopt : std::optional(std::move(text));
            bool const full = m_state.avail_out == 0 && text.size() < most;
            if (state != Z_OK || !full) return std::nullopt;
        }
    }

    std::optional<std::string> start(std::span<unsigned char const> deflated, std::size_t length) {
        if (!begin(deflated)) return std::nullopt;
        std::size_t const room = std::min(kPiece, length);
        int const state = inflateInto(m_piece.data(), room);
        if ((state != Z_OK && state != Z_STREAM_END) || m_state.avail_out != 0) return std::nullopt;
        return std::string(m_piece.data(), room);
    }

private:
    bool begin(std::span<unsigned char const> deflated) {
        if (!m_good || deflated.size() < kHeaderBytes || deflated.size() > std::numeric_limits<uInt>::max() || !isHeader(deflated)) return false;
        auto const data = deflated.subspan(kHeaderBytes);
        m_state.next_in = const_cast<unsigned char*>(data.data());  // zlib's interface; it writes nothing there
        m_state.avail_in = static_cast<uInt>(data.size());
        return true;
    }

    int inflateInto(char* out, std::size_t room) {
        m_state.next_out = reinterpret_cast<unsigned char*>(out);
        m_state.avail_out = static_cast<uInt>(room);
        return inflate(&m_state, Z_NO_FLUSH);
    }

    z_stream m_state{};
    bool m_good = false;
    std::array<char, kPiece> m_piece;  // filled by zlib, and nobody else
};

}  // namespace

std::optional<std::string> inflated(std::span<unsigned char const> deflated, std::size_t most) {
    Inflater inflater;
    return inflater.run(deflated, most);
}

std::optional<std::string> inflatedStart(std::span<unsigned char const> deflated, std::size_t length) {
    Inflater inflater;
    return inflater.start(deflated, length);
}

}  // namespace standin::poppler

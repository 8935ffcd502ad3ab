// Inflated piece by piece into one place: a text gets its memory when its length is
// known, and none of it is filled twice.
//
// Tested by tests/extractors/poppler/inflate_test.cpp.
#include "extractors/poppler/inflate.h"

#include <algorithm>
#include <array>
#include <limits>

#include <zlib.h>

namespace standin::poppler {

namespace {

constexpr std::size_t kPiece = 1U << 16U;

class Inflater {
public:
    Inflater() { m_good = inflateInit(&m_state) == Z_OK; }
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
            if (state == Z_STREAM_END) return text;
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
        if (!m_good || deflated.size() > std::numeric_limits<uInt>::max()) return false;
        m_state.next_in = const_cast<unsigned char*>(deflated.data());  // zlib's interface; it writes nothing there
        m_state.avail_in = static_cast<uInt>(deflated.size());
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

// Tested by tests/extractors/poppler/inflate_test.cpp.
#include "extractors/poppler/inflate.h"

#include <algorithm>
#include <limits>

#include <zlib.h>

namespace standin::poppler {

namespace {

constexpr std::size_t kUsualGrowth = 6;  // of the text of a page
constexpr std::size_t kLeast = 1024;

class Inflater {
public:
    Inflater() { m_good = inflateInit(&m_state) == Z_OK; }
    Inflater(Inflater const&) = delete;
    Inflater& operator=(Inflater const&) = delete;
    ~Inflater() {
        if (m_good) inflateEnd(&m_state);
    }

    std::optional<std::string> run(std::span<unsigned char const> deflated, std::size_t most) {
        if (!m_good || deflated.size() > std::numeric_limits<uInt>::max()) return std::nullopt;
        m_state.next_in = const_cast<unsigned char*>(deflated.data());  // zlib's interface; it writes nothing there
        m_state.avail_in = static_cast<uInt>(deflated.size());
        std::string text;
        std::size_t length = 0;
        std::size_t room = std::max(kLeast, deflated.size() * kUsualGrowth);
        while (true) {
            text.resize(std::min(room, most));
            m_state.next_out = reinterpret_cast<unsigned char*>(text.data()) + length;
            m_state.avail_out = static_cast<uInt>(text.size() - length);
            int const state = inflate(&m_state, Z_NO_FLUSH);
            length = text.size() - m_state.avail_out;
            if (state == Z_STREAM_END) break;
            bool const full = m_state.avail_out == 0 && text.size() < most;
            if (state != Z_OK || !full) return std::nullopt;
            room = text.size() * 2;
        }
        text.resize(length);
        return text;
    }

private:
    z_stream m_state{};
    bool m_good = false;
};

}  // namespace

std::optional<std::string> inflated(std::span<unsigned char const> deflated, std::size_t most) {
    Inflater inflater;
    return inflater.run(deflated, std::min<std::size_t>(most, std::numeric_limits<uInt>::max()));
}

}  // namespace standin::poppler

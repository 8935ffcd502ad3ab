// Tested by tests/extractors/poppler/page_paint_test.cpp.
#include "extractors/poppler/image_content.h"

#include <algorithm>
#include <array>
#include <cstring>

#include <Object.h>
#include <Stream.h>

namespace standin::poppler {

namespace {

constexpr std::uint64_t kLongestImage = std::uint64_t{64} << 20;  // bytes; what follows is not looked at

class Mixer {
public:
    void add(unsigned char const* bytes, std::size_t count) {
        for (; count >= 8; bytes += 8, count -= 8) {
            std::uint64_t word = 0;
            std::memcpy(&word, bytes, 8);
            mix(word);
        }
        std::uint64_t rest = count;
        for (std::size_t i = 0; i < count; ++i) rest = rest << 8U | bytes[i];
        mix(rest);
    }
    [[nodiscard]] std::uint64_t value() const { return m_value; }

private:
    void mix(std::uint64_t word) {
        m_value = (m_value ^ word) * 0x9E3779B97F4A7C15U;
        m_value ^= m_value >> 29U;
    }
    std::uint64_t m_value = 0xcbf29ce484222325U;
};

// Reads to the end or to `length`, in steps of one size so that the same bytes mix
// the same.
std::uint64_t digestOf(Stream& stream, std::uint64_t length) {
    Mixer mixer;
    std::array<unsigned char, 4096> buffer;
    stream.reset();
    while (length > 0) {
        int const wanted = static_cast<int>(std::min<std::uint64_t>(length, buffer.size()));
        int const got = stream.doGetChars(wanted, buffer.data());
        if (got <= 0) break;
        mixer.add(buffer.data(), static_cast<std::size_t>(got));
        length -= static_cast<std::uint64_t>(got);
        if (got < wanted) break;
    }
    stream.close();
    return mixer.value();
}

}  // namespace

std::uint64_t ImageContents::of(Object const* reference, Stream& image) {
    Stream* const stored = image.getUndecodedStream();
    if (stored == nullptr) return 0;
    if (reference == nullptr || !reference->isRef()) return digestOf(*stored, kLongestImage);
    auto const [known, isNew] = m_known.try_emplace(reference->getRefNum(), 0);
    if (isNew) known->second = digestOf(*stored, kLongestImage);
    return known->second;
}

std::uint64_t ImageContents::takeInline(Stream& image, std::uint64_t length) { return digestOf(image, length); }

}  // namespace standin::poppler

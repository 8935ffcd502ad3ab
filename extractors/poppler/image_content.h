// What an image holds, as a number: for telling a changed picture from the same
// one. Private to extractors/poppler/; includes Poppler.
#pragma once

#include <cstdint>
#include <map>

class Object;
class Stream;

namespace standin::poppler {

// Numbers the images of one document. Equal numbers: the same bytes as stored,
// still compressed, which costs no decoding; a program that compresses them anew
// gives another number, so what differs is still to be looked at.
class ImageContents {
public:
    // `reference` is the image's object where it has one; each is read once.
    [[nodiscard]] std::uint64_t of(Object const* reference, Stream& image);

    // An image within the page's program: takes its `length` bytes from there, as
    // every device has to.
    [[nodiscard]] static std::uint64_t takeInline(Stream& image, std::uint64_t length);

private:
    std::map<int, std::uint64_t> m_known;  // by object number
};

}  // namespace standin::poppler

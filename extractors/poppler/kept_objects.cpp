// An entry of Poppler's table of objects may hold the object itself, which is
// then given out instead of what stands in the file.
//
// Tested by tests/extractors/poppler/kept_objects_test.cpp.
#include "extractors/poppler/kept_objects.h"

#include <algorithm>
#include <optional>
#include <string_view>

#include <Page.h>
#include <Stream.h>
#include <XRef.h>

#include "extractors/poppler/inflate.h"
#include "extractors/poppler/lzw.h"
#include "extractors/poppler/poppler_library.h"

namespace standin::poppler {

namespace {

constexpr std::size_t kStreamCost = 48U << 10U;  // of a compressed stream that stays open
constexpr int kReadAtOnce = 1 << 16;
constexpr std::size_t kBeginning = 1024;  // of a font program, which tells its kind
constexpr int kHoldsBeginning = 8192;     // compressed bytes

bool isCompressed(Object const& stream) {
    StreamKind const kind = stream.getStream()->getKind();
    return kind == strFlate || kind == strLZW;
}

// By one filter, without a predictor: below another one the bytes may be any number.
bool isPlainlyCompressed(Object const& stream) {
    if (!isCompressed(stream)) return false;
    Dict const& dictionary = *stream.streamGetDict();
    Object const filter = dictionary.lookup("Filter");
    bool const one = filter.isName() || (filter.isArray() && filter.arrayGetLength() == 1);
    return one && dictionary.lookupNF("DecodeParms").isNull() && dictionary.lookupNF("DP").isNull();
}

// All bytes before decompression. Memory for them is laid out (and filled) at once,
// for Poppler knows how many there are.
std::vector<unsigned char> packedBytes(Stream& stream) {
    auto const length = std::clamp<Goffset>(stream.getBaseStream()->getLength(), 1, kReadAtOnce);
    return stream.getNextStream()->toUnsignedChars(static_cast<int>(length), kReadAtOnce);
}

// At most `most` of them.
std::vector<unsigned char> firstPackedBytes(Stream& stream, int most) {
    std::vector<unsigned char> bytes(static_cast<std::size_t>(most));
    Stream& packed = *stream.getNextStream();
    packed.reset();
    bytes.resize(static_cast<std::size_t>(packed.doGetChars(most, bytes.data())));
    return bytes;
}

bool isWhite(char c) { return c == ' ' || c == '\n' || c == '\r' || c == '\t' || c == '\f' || c == '\0'; }

// Calls `take` with each name that the program draws: "/Fm1 Do". What stands in a text or
// a picture may look like one.
template <class Take>
void drawnNames(std::string_view program, Take const& take) {
    for (std::size_t found = program.find("Do"); found != std::string_view::npos; found = program.find("Do", found + 2)) {
        std::size_t end = found;
        while (end > 0 && isWhite(program[end - 1])) --end;
        std::size_t begin = end;
        while (begin > 0 && !isWhite(program[begin - 1]) && program[begin - 1] != '/') --begin;
        if (begin > 0 && begin < end && program[begin - 1] == '/') take(std::string(program.substr(begin, end - begin)));
    }
}

bool isTrueType(std::string_view program) { return program.starts_with(std::string_view("\0\1\0\0", 4)) || program.starts_with("true"); }

void readFrom(Object& stream, std::string const& bytes) {
    stream = Object(static_cast<Stream*>(new MemStream(bytes.data(), 0, static_cast<Goffset>(bytes.size()), stream.getStream()->getDictObject()->copy())));
}

}  // namespace

void forgetKept(XRef& table, Ref place) {
    if (place.num >= 0 && place.num < table.getNumObjects()) table.getEntry(place.num)->obj.setToNull();
}

void KeptObjects::takePage(Page& page) {
    Dict const* resources = page.getResourceDict();
    keepFonts(resources);
    Object const dictionary = m_table.fetch(page.getRef());
    if (!dictionary.isDict()) return;
    Object const& contents = dictionary.dictLookupNF("Contents");
    if (contents.isRef()) {
        auto const complaints = complaintsSoFar();
        Object found = contents.fetch(&m_table);
        if (found.isArray()) {
            takePrograms(found, resources);
        } else if (complaintsSoFar() == complaints) {
            takeProgram(contents.getRef(), std::move(found), resources, 0);
        }
    } else if (contents.isArray()) {
        takePrograms(contents, resources);
    }
}

void KeptObjects::takePrograms(Object const& parts, Dict const* resources) {
    for (int i = 0; i < parts.arrayGetLength(); ++i) {
        Object const& part = parts.arrayGetNF(i);
        if (!part.isRef()) continue;
        auto const complaints = complaintsSoFar();
        Object program = part.fetch(&m_table);
        if (complaintsSoFar() == complaints) takeProgram(part.getRef(), std::move(program), resources, 0);
    }
}

void KeptObjects::releasePage() {
    for (Ref const part : m_pageParts) forgetKept(m_table, part);
    m_pageParts.clear();
    m_pagePrograms.clear();
    m_pageForms.clear();
}

// `forms`: how many forms it stands in.
void KeptObjects::takeProgram(Ref place, Object program, Dict const* resources, int forms) {
    if (!program.isStream()) return;
    std::size_t room = kMostPageBytes;
    for (auto const& other : m_pagePrograms) room -= other.size();
    std::size_t const known = m_pagePrograms.size();
    unpack(program, m_pagePrograms, room);
    if (isCompressed(program)) return;
    m_table.getEntry(place.num)->obj = std::move(program);
    m_pageParts.push_back(place);
    if (m_pagePrograms.size() > known && forms < kDeepestForm) takeForms(m_pagePrograms.back(), resources, forms);
}

// The forms that a program draws are programs with fonts of their own.
void KeptObjects::takeForms(std::string_view program, Dict const* resources, int forms) {
    if (resources == nullptr) return;
    Object const known = resources->lookup("XObject");
    if (!known.isDict()) return;
    drawnNames(program, [&](std::string const& name) {
        Object const& place = known.dictLookupNF(name.c_str());
        if (!place.isRef() || !m_pageForms.emplace(place.getRef().num, place.getRef().gen).second) return;
        auto const complaints = complaintsSoFar();
        Object form = place.fetch(&m_table);
        if (complaintsSoFar() != complaints || !form.isStream()) return;
        Object const kind = form.streamGetDict()->lookup("Subtype");
        if (!kind.isName("Form")) return;
        Object const own = form.streamGetDict()->lookup("Resources");
        Dict const* const used = own.isDict() ? own.getDict() : nullptr;
        keepFonts(used);
        takeProgram(place.getRef(), std::move(form), used, forms + 1);
    });
}

void KeptObjects::keepFonts(Dict const* resources) {
    if (resources == nullptr) return;
    Object const fonts = keep(resources->lookupNF("Font"));
    if (!fonts.isDict()) return;
    for (int i = 0; i < fonts.dictGetLength(); ++i) {
        Object const& font = fonts.getDict()->getValNF(i);
        if (font.isRef() && !m_known.contains({font.getRef().num, font.getRef().gen})) keepFont(keep(font));
    }
}

// Takes what Poppler looks up in a font, and nothing else: looking for what is
// missing makes it search the whole file.
void KeptObjects::keepFont(Object const& font) {
    if (!font.isDict()) return;
    keepParts(font);
    Object const descendants = keep(font.dictLookupNF("DescendantFonts"));
    if (!descendants.isArray() || descendants.arrayGetLength() == 0) return;
    Object const descendant = keep(descendants.arrayGetNF(0));
    if (descendant.isDict()) keepParts(descendant);  // whose own descendants nobody asks for
}

void KeptObjects::keepParts(Object const& font) {
    for (char const* key : {"Encoding", "ToUnicode", "Widths", "W", "W2", "CIDSystemInfo", "CIDToGIDMap"}) keep(font.dictLookupNF(key));
    keepDescriptor(keep(font.dictLookupNF("FontDescriptor")));
}

void KeptObjects::keepDescriptor(Object const& descriptor) {
    if (!descriptor.isDict()) return;
    keep(descriptor.dictLookupNF("FontFile"));
    keep(descriptor.dictLookupNF("FontFile2"), Streams::TrueType);
    keep(descriptor.dictLookupNF("FontFile3"));
}

Object KeptObjects::keep(Object const& object, Streams streams) {
    if (!object.isRef()) return object.copy();
    Ref const place = object.getRef();
    auto const complaints = complaintsSoFar();
    Object found = object.fetch(&m_table);
    if (complaintsSoFar() != complaints || found.isNull() || !m_known.emplace(place.num, place.gen).second) return found;
    if (found.isStream()) {
        if (m_fontRoom < kStreamCost) return found;
        m_fontRoom -= kStreamCost;
        if (streams == Streams::Unpacked) unpack(found, m_fontPrograms, m_fontRoom);
        if (streams == Streams::TrueType) shorten(found);
    }
    m_table.getEntry(place.num)->obj = found.copy();
    return found;
}

void KeptObjects::unpack(Object& stream, std::list<std::string>& programs, std::size_t& room) {
    if (!isPlainlyCompressed(stream)) return;
    auto const packed = packedBytes(*stream.getStream());
    auto text = stream.getStream()->getKind() == strLZW ? unpackedLzw(packed, room) : inflated(packed, room);
    if (!text) return;
    room -= text->size();
    programs.push_back(std::move(*text));
    readFrom(stream, programs.back());
}

void KeptObjects::shorten(Object& stream) {
    if (!isPlainlyCompressed(stream) || stream.getStream()->getKind() != strFlate || m_fontRoom < kBeginning) return;
    auto beginning = inflatedStart(firstPackedBytes(*stream.getStream(), kHoldsBeginning), kBeginning);
    if (!beginning || !isTrueType(*beginning)) return;
    m_fontRoom -= beginning->size();
    m_fontPrograms.push_back(std::move(*beginning));
    readFrom(stream, m_fontPrograms.back());
}

}  // namespace standin::poppler

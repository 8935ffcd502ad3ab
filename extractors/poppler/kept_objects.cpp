// An entry of Poppler's table of objects may hold the object itself, which is
// then given out instead of what stands in the file.
//
// Tested by tests/extractors/poppler/kept_objects_test.cpp.
#include "extractors/poppler/kept_objects.h"

#include <optional>

#include <Page.h>
#include <Stream.h>
#include <XRef.h>

#include "extractors/poppler/inflate.h"
#include "extractors/poppler/poppler_library.h"

namespace standin::poppler {

namespace {

constexpr std::size_t kStreamCost = 48U << 10U;  // of a compressed stream that stays open
constexpr int kReadAtOnce = 1 << 16;

// By one filter, without a predictor: below another one the bytes may be any number.
bool isPlainlyCompressed(Object const& stream) {
    if (stream.getStream()->getKind() != strFlate) return false;
    Dict const& dictionary = *stream.streamGetDict();
    Object const filter = dictionary.lookup("Filter");
    bool const one = filter.isName() || (filter.isArray() && filter.arrayGetLength() == 1);
    return one && dictionary.lookupNF("DecodeParms").isNull() && dictionary.lookupNF("DP").isNull();
}

}  // namespace

void KeptObjects::takePage(Page& page) {
    keepFonts(page);
    Object const dictionary = m_table.fetch(page.getRef());
    if (!dictionary.isDict()) return;
    Object const contents = dictionary.getDict()->lookup("Contents");
    if (!contents.isArray()) {
        takeProgram(dictionary.dictLookupNF("Contents"));
        return;
    }
    for (int i = 0; i < contents.arrayGetLength(); ++i) takeProgram(contents.arrayGetNF(i));
}

void KeptObjects::releasePage() {
    for (Ref const part : m_pageParts) {
        if (part.num < m_table.getNumObjects()) m_table.getEntry(part.num)->obj.setToNull();
    }
    m_pageParts.clear();
    m_pagePrograms.clear();
}

void KeptObjects::takeProgram(Object const& part) {
    if (!part.isRef()) return;
    auto const complaints = complaintsSoFar();
    Object program = part.fetch(&m_table);
    if (!program.isStream() || complaintsSoFar() != complaints) return;
    std::size_t room = kMostPageBytes;
    for (auto const& other : m_pagePrograms) room -= other.size();
    inflate(program, m_pagePrograms, room);
    if (program.getStream()->getKind() == strFlate) return;
    m_table.getEntry(part.getRef().num)->obj = std::move(program);
    m_pageParts.push_back(part.getRef());
}

void KeptObjects::keepFonts(Page& page) {
    Dict const* resources = page.getResourceDict();
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
    // Only the beginning of a TrueType program is read for each page.
    keep(descriptor.dictLookupNF("FontFile2"), Streams::AsTheyAre);
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
        if (streams == Streams::Inflated) inflate(found, m_fontPrograms, m_fontRoom);
    }
    m_table.getEntry(place.num)->obj = found.copy();
    return found;
}

void KeptObjects::inflate(Object& stream, std::list<std::string>& programs, std::size_t& room) {
    if (!isPlainlyCompressed(stream)) return;
    auto const deflated = stream.getStream()->getNextStream()->toUnsignedChars(kReadAtOnce, kReadAtOnce);
    auto text = inflated(deflated, room);
    if (!text) return;
    room -= text->size();
    programs.push_back(std::move(*text));
    auto const& kept = programs.back();
    stream = Object(static_cast<Stream*>(new MemStream(kept.data(), 0, static_cast<Goffset>(kept.size()), stream.getStream()->getDictObject()->copy())));
}

}  // namespace standin::poppler

// Spares Poppler work that it would do again for each page: the objects that
// describe a font stay parsed in the table of objects, and the programs of pages, forms
// and fonts stand there unpacked, since Poppler decompresses byte by byte. Of a
// TrueType program it is the beginning, which tells what it is: whoever needs more
// calls forgetKept() first. What is drawn stays the same. Private to extractors/poppler/; includes Poppler.
//
//     KeptObjects kept(*pdf.getXRef());
//     kept.takePage(page);
//     pdf.displayPage(...);
//     kept.releasePage();
#pragma once

#include <cstddef>
#include <list>
#include <set>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include <Object.h>

class Page;
class XRef;

namespace standin::poppler {

// Makes `table` read the object anew from the file: whole, where only its beginning was
// kept.
void forgetKept(XRef& table, Ref place);

// Serves one document. The table refers to bytes in here from then on: no page
// may be drawn after this object is gone.
class KeptObjects {
public:
    explicit KeptObjects(XRef& table) : m_table(table) {}
    KeptObjects(KeptObjects const&) = delete;
    KeptObjects& operator=(KeptObjects const&) = delete;

    // Before a page is drawn. What is damaged, or not plainly compressed, is left
    // to Poppler, which deals with it as if this had not been called.
    void takePage(Page& page);
    // After it was drawn: lets go of its program, keeps its fonts.
    void releasePage();

private:
    enum class Streams { Unpacked, TrueType };

    void takePrograms(Object const& parts, Dict const* resources);
    void takeProgram(Ref place, Object program, Dict const* resources, int forms);
    void takeForms(std::string_view program, Dict const* resources, int forms);
    void keepFonts(Dict const* resources);  // null: none
    void keepFont(Object const& font);
    void keepParts(Object const& font);
    void keepDescriptor(Object const& descriptor);
    // What `object` refers to, kept unless Poppler complained of it; an object that
    // is no reference comes back as it is.
    Object keep(Object const& object, Streams streams = Streams::Unpacked);
    // Makes `stream` read from unpacked bytes, if there is room.
    static void unpack(Object& stream, std::list<std::string>& programs, std::size_t& room);
    // Makes the program of a TrueType font end behind its beginning.
    void shorten(Object& stream);

    static constexpr std::size_t kMostFontBytes = 16U << 20U;
    static constexpr std::size_t kMostPageBytes = 32U << 20U;
    static constexpr int kDeepestForm = 8;  // forms within forms

    XRef& m_table;
    std::set<std::pair<int, int>> m_known;  // number and generation of what was looked at
    std::list<std::string> m_fontPrograms;
    std::size_t m_fontRoom = kMostFontBytes;
    std::list<std::string> m_pagePrograms;
    std::vector<Ref> m_pageParts;
    std::set<std::pair<int, int>> m_pageForms;  // what was looked at
};

}  // namespace standin::poppler

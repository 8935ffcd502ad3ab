// A link that stands in the file as it is usually written is told by these bytes; with
// any other annotation Poppler looks at all of the page. So it does with links to a
// place in a document, since its complaints of bad places are notes.
//
// Tested by tests/extractors/poppler/link_annotations_test.cpp.
#include "extractors/poppler/link_annotations.h"

#include <algorithm>

#include <fmt/format.h>

#include <Catalog.h>
#include <PDFDoc.h>
#include <Page.h>
#include <XRef.h>

namespace standin::poppler {

namespace {

constexpr std::size_t kSearched = 1024;  // bytes of an object
constexpr std::string_view kWhite = std::string_view(" \t\r\n\f\0", 6);
constexpr std::string_view kKey = "/Subtype";
constexpr std::string_view kLink = "/Link";

// Behind the text that begins at `at`; the end, if it does not end.
std::size_t behindText(std::string_view object, std::size_t at) {
    int open = 0;
    for (; at < object.size(); ++at) {
        if (object[at] == '\\') ++at;
        else if (object[at] == '(') ++open;
        else if (object[at] == ')' && --open == 0) return at + 1;
    }
    return object.size();
}

// What follows the key of the outermost dictionary, and not of an array in it; nothing where it is not plainly there.
std::string_view kindOf(std::string_view object) {
    constexpr int kOutermost = 2;
    int depth = 0;  // counts each of "<<", and "[" for two
    for (std::size_t at = 0; at < object.size();) {
        char const c = object[at];
        if (c == '%') return {};
        if (c == '(') {
            at = behindText(object, at);
            continue;
        }
        if (c == '<') ++depth;
        if (c == '[') depth += 2;
        if (c == ']') depth -= 2;
        if (c == '>' && --depth == 0) return {};
        if (c == '/' && depth == kOutermost && object.substr(at).starts_with(kKey)) return object.substr(at + kKey.size());
        ++at;
    }
    return {};
}

// "<< /Type /Annot /Subtype /Link ... >>".
bool isWrittenAsLink(std::string_view object) {
    std::string_view kind = kindOf(object);
    kind.remove_prefix(std::min(kind.find_first_not_of(kWhite), kind.size()));
    if (!kind.starts_with(kLink)) return false;
    kind.remove_prefix(kLink.size());
    return !kind.empty() && (kind.front() == '/' || kind.front() == '>' || kWhite.find(kind.front()) != std::string_view::npos);
}

// To an address of the network, and not to a place in a document.
bool leadsElsewhere(std::string_view link) {
    auto const names = [link](std::string_view key) { return link.find(key) != std::string_view::npos; };
    return names("/URI") && !names("/Dest") && !names("/GoTo");
}

bool isWrittenAsLink(Ref place, XRef& table, std::string_view file) {
    if (place.num < 0 || place.num >= table.getNumObjects()) return false;
    XRefEntry const& entry = *table.getEntry(place.num);
    if (entry.type != xrefEntryUncompressed || entry.gen != place.gen || !entry.obj.isNull()) return false;
    if (entry.offset < 0 || static_cast<std::size_t>(entry.offset) >= file.size()) return false;
    std::string_view object = file.substr(static_cast<std::size_t>(entry.offset), kSearched);
    std::string const head = fmt::format("{} {} obj", place.num, place.gen);
    if (!object.starts_with(head)) return false;
    object = object.substr(head.size());
    std::size_t const end = object.find("endobj");
    return end != std::string_view::npos && isWrittenAsLink(object) && leadsElsewhere(object.substr(0, end));
}

}  // namespace

bool hasOnlyLinks(PDFDoc& pdf, Page& page, std::string_view file) {
    if (pdf.getCatalog()->getForm() != nullptr) return false;
    Object const annotations = page.getAnnotsObject();
    if (!annotations.isArray()) return annotations.isNull();
    for (int i = 0; i < annotations.arrayGetLength(); ++i) {
        Object const& annotation = annotations.arrayGetNF(i);
        if (!annotation.isRef() || !isWrittenAsLink(annotation.getRef(), *pdf.getXRef(), file)) return false;
    }
    return true;
}

}  // namespace standin::poppler

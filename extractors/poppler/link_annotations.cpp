// A link that stands in the file as it is usually written is told by these bytes; with
// any other annotation Poppler looks at all of the page. So it does with a link to a
// place in a document that is not plainly written, since its complaints of bad places
// are notes.
//
// Tested by tests/extractors/poppler/link_annotations_test.cpp.
#include "extractors/poppler/link_annotations.h"

#include <algorithm>
#include <charconv>
#include <optional>

#include <fmt/format.h>

#include <Catalog.h>
#include <PDFDoc.h>
#include <Page.h>
#include <XRef.h>

namespace standin::poppler {

namespace {

constexpr std::size_t kSearched = 1024;  // bytes of an object
constexpr std::string_view kWhite = std::string_view(" \t\r\n\f\0", 6);
constexpr std::string_view kBrackets = "()<>[]";
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

// The next name, number, word or bracket, which is taken off.
std::string_view takeToken(std::string_view& rest) {
    rest.remove_prefix(std::min(rest.find_first_not_of(kWhite), rest.size()));
    if (rest.empty()) return {};
    auto const ends = [](char c) { return c == '/' || c == '%' || kBrackets.find(c) != std::string_view::npos || kWhite.find(c) != std::string_view::npos; };
    bool const bracket = kBrackets.find(rest.front()) != std::string_view::npos;
    auto const end = bracket ? rest.begin() + 1 : std::find_if(rest.begin() + 1, rest.end(), ends);
    std::string_view const token(rest.begin(), end);
    rest.remove_prefix(token.size());
    return token;
}

bool isWhole(std::string_view token) {
    return !token.empty() && token.size() <= 9 && std::all_of(token.begin(), token.end(), [](char c) { return c >= '0' && c <= '9'; });
}

bool isNumber(std::string_view token) {
    if (token.starts_with('-')) token.remove_prefix(1);
    std::size_t const point = std::min(token.find('.'), token.size());
    bool const fraction = point + 1 >= token.size() || isWhole(token.substr(point + 1));
    return isWhole(token.substr(0, point)) && fraction;
}

// "4 0 R"; taken off.
std::optional<Ref> takeReference(std::string_view& rest) {
    std::string_view const number = takeToken(rest);
    std::string_view const generation = takeToken(rest);
    if (!isWhole(number) || !isWhole(generation) || takeToken(rest) != "R") return std::nullopt;
    Ref place{};
    std::from_chars(number.data(), number.data() + number.size(), place.num);
    std::from_chars(generation.data(), generation.data() + generation.size(), place.gen);
    return place;
}

// What follows the key; empty: there is none.
std::string_view behindKey(std::string_view object, std::string_view key) {
    for (std::size_t at = object.find(key); at != std::string_view::npos; at = object.find(key, at + 1)) {
        std::string_view rest = object.substr(at);
        if (takeToken(rest) == key) return rest;
    }
    return {};
}

// "[4 0 R /XYZ 0 null 1.5]", "[4 0 R /Fit]" or "(a name)": nothing that Poppler could complain of.
bool isPlainPlace(std::string_view written) {
    std::string_view const begin = takeToken(written);
    if (begin == "(") return true;
    if (begin != "[" || !takeReference(written)) return false;
    std::string_view const kind = takeToken(written);
    if (kind != "/XYZ" && kind != "/Fit") return false;
    std::string_view token = takeToken(written);
    while (token == "null" || isNumber(token)) token = takeToken(written);
    return token == "]";
}

// To an address of the network, or to a plain place in the document.
bool leadsSomewhere(std::string_view link) {
    auto const names = [link](std::string_view key) { return link.find(key) != std::string_view::npos; };
    bool const address = names("/URI");
    bool const place = names("/Dest") || names("/GoTo");
    if (!place || address) return address && !place;
    if (names("/GoToR") || names("/GoToE") || names("/Next")) return false;
    return isPlainPlace(behindKey(link, names("/Dest") ? "/Dest" : "/D"));
}

// From behind "4 0 obj" up to "endobj"; empty where it does not plainly stand there.
std::string_view objectAt(Ref place, XRef& table, std::string_view file) {
    if (place.num < 0 || place.num >= table.getNumObjects()) return {};
    XRefEntry const& entry = *table.getEntry(place.num);
    if (entry.type != xrefEntryUncompressed || entry.gen != place.gen || !entry.obj.isNull()) return {};
    if (entry.offset < 0 || static_cast<std::size_t>(entry.offset) >= file.size()) return {};
    std::string_view object = file.substr(static_cast<std::size_t>(entry.offset), kSearched);
    std::string const head = fmt::format("{} {} obj", place.num, place.gen);
    if (!object.starts_with(head)) return {};
    object = object.substr(head.size());
    std::size_t const end = object.find("endobj");
    return end != std::string_view::npos ? object.substr(0, end) : std::string_view{};
}

bool isWrittenAsLink(Ref place, XRef& table, std::string_view file) {
    std::string_view const link = objectAt(place, table, file);
    if (!isWrittenAsLink(link)) return false;
    std::string_view action = behindKey(link, "/A");
    auto const elsewhere = behindKey(link, "/Dest").empty() ? takeReference(action) : std::nullopt;
    return leadsSomewhere(elsewhere ? objectAt(*elsewhere, table, file) : link);
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

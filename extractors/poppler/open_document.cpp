// The bytes are given to Poppler as a memory stream; what it says when that
// fails becomes one sentence for the user.
//
// Tested by tests/extractors/poppler/document_reader_test.cpp.
#include "extractors/poppler/open_document.h"

#include <algorithm>
#include <limits>
#include <string_view>

#include <Annot.h>
#include <ErrorCodes.h>
#include <Stream.h>

#include "extractors/poppler/poppler_library.h"

namespace standin::poppler {

using model::Error;
using model::ErrorKind;

namespace {

constexpr std::size_t kHeaderSearched = 1024;
constexpr std::size_t kLargestFile = std::numeric_limits<int>::max();  // Poppler's stream positions

bool startsLikePdf(std::string_view bytes) { return bytes.substr(0, kHeaderSearched).find("%PDF-") != std::string_view::npos; }

bool startsLikeWebPage(std::string_view bytes) {
    std::string_view const head = bytes.substr(0, kHeaderSearched);
    return head.find("<html") != std::string_view::npos || head.find("<HTML") != std::string_view::npos || head.find("<!DOCTYPE") != std::string_view::npos ||
           head.find("<!doctype") != std::string_view::npos;
}

bool mentions(std::vector<std::string> const& messages, std::string_view words) {
    return std::any_of(messages.begin(), messages.end(), [&](std::string const& message) { return message.find(words) != std::string::npos; });
}

Error failure(PDFDoc& document, std::string_view bytes, bool hasPassword, std::vector<std::string> const& messages) {
    if (mentions(messages, "security handler") || mentions(messages, "Unsupported version/revision")) {
        return {ErrorKind::Unsupported, "is encrypted in a way that cannot be read here; save it without encryption and use that file", {}, 0};
    }
    if (document.getErrorCode() == errEncrypted) {
        return hasPassword ? Error{ErrorKind::Encrypted, "the password is wrong; give the right one with --password-file", {}, 0}
                           : Error{ErrorKind::Encrypted, "is protected by a password; give it with --password-file", {}, 0};
    }
    if (!startsLikePdf(bytes)) {
        if (startsLikeWebPage(bytes)) return {ErrorKind::Unsupported, "is a web page and not a PDF; download the datasheet itself", {}, 0};
        return {ErrorKind::Unsupported, "is not a PDF; give the datasheet as a PDF file", {}, 0};
    }
    return {ErrorKind::Damaged, "is damaged and cannot be read; get the file again", {}, 0};
}

}  // namespace

model::Result<std::unique_ptr<PDFDoc>> openDocument(std::span<std::byte const> bytes, std::optional<std::string> const& password,
                                                    std::vector<std::string>& messages) {
    if (bytes.empty()) return tl::unexpected(Error{ErrorKind::Unsupported, "is empty; get the file again", {}, 0});
    if (bytes.size() > kLargestFile) return tl::unexpected(Error{ErrorKind::Unsupported, "is larger than 2 GB and cannot be read; split it", {}, 0});
    ensureLibrary();
    MessageSink const sink(messages);
    std::optional<GooString> key;
    if (password) key.emplace(*password);
    auto const* text = reinterpret_cast<char const*>(bytes.data());
    auto* stream = new MemStream(text, 0, static_cast<Goffset>(bytes.size()), Object(objNull));  // owned by the document
    auto pdf = std::make_unique<PDFDoc>(stream, key, key);
    if (!pdf->isOk()) return tl::unexpected(failure(*pdf, {text, bytes.size()}, password.has_value(), messages));
    if (pdf->getNumPages() < 1) return tl::unexpected(Error{ErrorKind::Damaged, "is damaged: it has no pages; get the file again", {}, 0});
    return pdf;
}

bool mayHaveProfiles(std::string_view file) { return file.find("ICCBased") != std::string_view::npos || file.find("ObjStm") != std::string_view::npos; }

bool isShown(Annot* annotation, void*) {
    return annotation->getType() != Annot::typeLink && annotation->getType() != Annot::typePopup && annotation->getType() != Annot::typeText;
}

}  // namespace standin::poppler

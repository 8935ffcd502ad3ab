// The bytes are given to Poppler as a memory stream. Each page is drawn on a
// PageDevice; complaints of Poppler in this thread become notes. What may go on
// for too long (damaged or hostile pages) is stopped by Poppler's abort hook,
// which counts the page's operators.
//
// Tested by tests/extractors/poppler/document_reader_test.cpp.
#include "extractors/poppler/document_reader.h"

#include <algorithm>
#include <string_view>

#include <fmt/format.h>

#include <Catalog.h>
#include <Gfx.h>
#include <PDFDoc.h>
#include <Page.h>

#include "extractors/poppler/actual_text.h"
#include "extractors/poppler/font_table.h"
#include "extractors/poppler/kept_objects.h"
#include "extractors/poppler/link_annotations.h"
#include "extractors/poppler/open_document.h"
#include "extractors/poppler/page_device.h"
#include "extractors/poppler/poppler_library.h"

namespace standin::poppler {

using model::Error;
using model::ErrorKind;
using model::Note;
using model::PageContent;

namespace {

constexpr double kPointsAnInch = 72;
constexpr std::uint64_t kMostChecks = 1000000;  // calls of the abort hook on one page, each some ten operators
constexpr std::size_t kMostNotes = 40;

// What Poppler says, in words for the user. Empty: of no interest, for nothing
// is lost by it.
std::string noteOf(std::string const& message) {
    static constexpr std::string_view kCjk[] = {"language pack", "CMap file for", "Unknown character collection"};
    for (std::string_view words : kCjk) {
        if (message.find(words) != std::string::npos) {
            return "Text in a Chinese, Japanese or Korean font may be missing: install the package poppler-data and read the file again.";
        }
    }
    return fmt::format("The file breaks the rules of PDF and something may be missing here ({}).", message);
}

void addNote(std::vector<Note>& notes, int page, std::string text) {
    Note note{page, std::move(text)};
    if (notes.size() < kMostNotes && std::find(notes.begin(), notes.end(), note) == notes.end()) notes.push_back(std::move(note));
}

struct Watch {
    PageDevice const* device = nullptr;
    std::uint64_t checks = 0;
    bool stopped = false;
};

bool shouldStop(void* data) {
    auto& watch = *static_cast<Watch*>(data);
    if (++watch.checks > kMostChecks || watch.device->full()) watch.stopped = true;
    return watch.stopped;
}

// The page's contents, and its annotations where there are some that may be drawn.
void draw(PDFDoc& pdf, Page& page, PageDevice& device, Watch& watch, std::string_view file) {
    if (!hasOnlyLinks(pdf, page, file)) {
        pdf.displayPage(&device, page.getNum(), kPointsAnInch, kPointsAnInch, 0, false, true, false, shouldStop, &watch, isShown, nullptr);
        return;
    }
    constexpr int kWhole = -1;
    std::unique_ptr<Gfx> const program(page.createGfx(&device, kPointsAnInch, kPointsAnInch, 0, false, true, kWhole, kWhole, kWhole, kWhole, false, shouldStop, &watch));
    page.display(program.get());
}

}  // namespace

struct DocumentReader::Document {
    std::string_view file;
    std::vector<Note> notes;
    std::vector<std::string> messages;
    std::unique_ptr<PDFDoc> pdf;
    std::unique_ptr<KeptObjects> kept;
    std::unique_ptr<FontTable> fonts;
    std::unique_ptr<PageDevice> device;
    int pages = 0;
};

DocumentReader::DocumentReader(std::unique_ptr<Document> document) : m_document(std::move(document)) {}
DocumentReader::DocumentReader(DocumentReader&&) noexcept = default;
DocumentReader& DocumentReader::operator=(DocumentReader&&) noexcept = default;
DocumentReader::~DocumentReader() = default;

model::Result<DocumentReader> DocumentReader::open(std::span<std::byte const> bytes, OpenOptions const& options) {
    auto document = std::make_unique<Document>();
    auto pdf = openDocument(bytes, options.password, document->messages);
    if (!pdf) return tl::unexpected(pdf.error());
    document->pdf = std::move(*pdf);
    document->file = {reinterpret_cast<char const*>(bytes.data()), bytes.size()};
    document->pages = document->pdf->getNumPages();
    for (std::string const& message : document->messages) addNote(document->notes, 0, noteOf(message));
    document->messages.clear();
    document->kept = std::make_unique<KeptObjects>(*document->pdf->getXRef());
    document->fonts = std::make_unique<FontTable>(document->pdf->getXRef());
    document->device = std::make_unique<PageDevice>(*document->fonts, mayHaveProfiles(document->file) ? PageDevice::Profiles::Some : PageDevice::Profiles::None);
    return DocumentReader(std::move(document));
}

int DocumentReader::pageCount() const { return m_document->pages; }

Metadata DocumentReader::metadata() const {
    MessageSink const sink(m_document->messages);
    PDFDoc& pdf = *m_document->pdf;
    Metadata metadata;
    metadata.encrypted = pdf.isEncrypted();
    Object const information = pdf.getDocInfo();
    auto const entry = [&information](char const* key) {
        if (!information.isDict()) return std::string{};
        Object const value = information.dictLookup(key);
        return value.isString() ? utf8OfTextString(value.getString()->toStr()) : std::string{};
    };
    metadata.producer = entry("Producer");
    metadata.creator = entry("Creator");
    metadata.title = entry("Title");
    metadata.subject = entry("Subject");
    metadata.keywords = entry("Keywords");
    Object const root = pdf.getXRef()->getCatalog();
    if (root.isDict()) {
        Object const language = root.dictLookup("Lang");
        if (language.isString()) metadata.language = utf8OfTextString(language.getString()->toStr());
    }
    return metadata;
}

model::Result<PageContent> DocumentReader::readPage(int page) {
    if (page < 1 || page > m_document->pages) {
        return tl::unexpected(Error{ErrorKind::Usage, fmt::format("page {} does not exist; the document has {}", page, m_document->pages), {}, page});
    }
    PageContent content;
    content.page = page;
    std::vector<std::string> messages;
    PDFDoc& pdf = *m_document->pdf;
    {
        MessageSink const sink(messages);
        Page* const source = pdf.getPage(page);
        if (source == nullptr || !source->isOk()) {
            content.notes.push_back({page, "This page is damaged and could not be read."});
            return content;
        }
        content.rotation = source->getRotate();
        PageDevice& device = *m_document->device;
        device.begin(content);
        Watch watch{&device, 0, false};
        m_document->kept->takePage(*source);
        draw(pdf, *source, device, watch, m_document->file);
        m_document->kept->releasePage();
        device.finish();
        if (watch.stopped || device.full()) content.notes.push_back({page, "This page draws more than can be taken in; the rest of it was not read."});
    }
    for (std::string const& message : messages) addNote(content.notes, page, noteOf(message));
    return content;
}

std::vector<Note> DocumentReader::notes() const { return m_document->notes; }

}  // namespace standin::poppler

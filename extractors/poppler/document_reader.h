// The door to Poppler: opens a PDF that lies in memory and gives what is drawn
// on each page as plain values. This folder is the only one that may include
// Poppler's headers; it includes model/ besides. No type of Poppler's is visible
// here.
//
// Defines: OpenOptions, Metadata, DocumentReader.
//
//     auto reader = DocumentReader::open(bytes, {});
//     if (!reader) return tl::unexpected(reader.error());
//     for (int page = 1; page <= reader->pageCount(); ++page) {
//         auto content = reader->readPage(page);
//         ...
//     }
//
// Threads: a reader belongs to one thread at a time. Several readers, also over
// the same bytes, may work at the same time in different threads.
#pragma once

#include <cstddef>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "model/page_content.h"
#include "model/result.h"

namespace standin::poppler {

struct OpenOptions {
    std::optional<std::string> password;  // tried as the user's and as the owner's
};

// What the document says of itself; UTF-8, empty where it says nothing.
struct Metadata {
    std::string producer;
    std::string creator;
    std::string title;
    std::string subject;
    std::string keywords;
    std::string language;  // of the catalogue, BCP 47 as written there
    bool encrypted = false;
};

class DocumentReader {
public:
    // Reads the file's structure. `bytes` is not copied and must outlive the
    // reader. Errors, without a file name: Encrypted (password missing or
    // wrong), Damaged, Unsupported (empty, no PDF, unknown encryption).
    [[nodiscard]] static model::Result<DocumentReader> open(std::span<std::byte const> bytes, OpenOptions const& options);

    DocumentReader(DocumentReader&&) noexcept;
    DocumentReader& operator=(DocumentReader&&) noexcept;
    ~DocumentReader();

    // At least 1.
    [[nodiscard]] int pageCount() const;

    [[nodiscard]] Metadata metadata() const;

    // One pass over page `page` (from 1). Linear in what the page draws, and
    // bounded: what exceeds the bounds is cut off with a Note. A broken page
    // gives what could be read and a Note. Error: Usage for a page that does
    // not exist.
    [[nodiscard]] model::Result<model::PageContent> readPage(int page);

    // Trouble met so far that concerns the document as a whole (page 0).
    // The trouble of a page is in its PageContent::notes.
    [[nodiscard]] std::vector<model::Note> notes() const;

private:
    struct Document;
    explicit DocumentReader(std::unique_ptr<Document> document);

    std::unique_ptr<Document> m_document;
};

}  // namespace standin::poppler

// The first half of reading: several documents, page by page, over a few
// threads. Private to extractors/reading.
#pragma once

#include <cstddef>
#include <functional>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "extractors/read_datasheet.h"
#include "model/page_layout.h"
#include "model/table.h"

namespace standin::reading {

// One page as its own stages leave it.
struct ReadPage {
    model::PageLayout layout;
    std::vector<model::Table> tables;  // without ids
};

struct ReadDocument {
    model::DocumentInfo info;
    std::vector<ReadPage> pages;  // in page order
};

struct FileBytes {
    std::string file;  // as given
    std::string bytes;
};

// Opens and reads every document. The threads start at different documents, help each
// other out at the end, and hand over each document that is read: `whenRead` gets its
// place in `files`, on the thread that is free for it while others may still read the next.
// The result has one entry a file: why it was not handed over.
[[nodiscard]] std::vector<std::optional<model::Error>> readPages(std::span<FileBytes const> files, ReadOptions const& options,
                                                                 std::function<void(std::size_t, ReadDocument)> const& whenRead);

}  // namespace standin::reading

// The first half of reading: several documents, page by page, over a few
// threads. Private to extractors/reading.
#pragma once

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

// Opens and reads every document; the result has one entry a file. The threads
// start at different documents and help each other out at the end.
[[nodiscard]] std::vector<model::Result<ReadDocument>> readPages(std::span<FileBytes const> files, ReadOptions const& options);

}  // namespace standin::reading

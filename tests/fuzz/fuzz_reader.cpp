// A whole PDF through the page stages. Bounded, because a fuzzer finds the slow
// inputs first and learns nothing from them: at most four pages and 256 KB.
#include <algorithm>
#include <cstddef>
#include <cstdint>

#include "extractors/layout/layout.h"
#include "extractors/poppler/document_reader.h"
#include "extractors/tables/find_tables.h"

extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* bytes, std::size_t size) {
    using namespace standin;
    constexpr std::size_t kLargest = 256 << 10;
    constexpr int kMostPages = 4;
    if (size > kLargest) return 0;
    auto reader = poppler::DocumentReader::open({reinterpret_cast<std::byte const*>(bytes), size}, {});
    if (!reader) return 0;
    for (int page = 1; page <= std::min(kMostPages, reader->pageCount()); ++page) {
        auto const content = reader->readPage(page);
        if (!content) continue;
        auto layout = layout::layOut(*content);
        auto const tables = tables::findTables(layout);
        for (auto const& table : tables) {
            for (auto const& cell : table.cells) {
                bool const inside = cell.row >= 0 && cell.column >= 0 && cell.row + cell.rowSpan <= table.rows && cell.column + cell.columnSpan <= table.columns;
                if (!inside) __builtin_trap();
                for (auto const word : cell.words) {
                    if (word >= layout.words.size()) __builtin_trap();
                }
            }
        }
    }
    return 0;
}

// Joins pieces of ruling lines: pieces that touch become one rule, and rows of
// short pieces at even distances become one dashed rule. Private to
// extractors/poppler/.
//
//     RuleMerger merger;          // kept for many pages: its memory is used again
//     merger.merge(page.rules);
#pragma once

#include <cstdint>
#include <vector>

#include "model/page_content.h"

namespace standin::poppler {

class RuleMerger {
public:
    // Only pieces of one colour, on one line, of like thickness are joined. The
    // order is that of the first piece of each rule. O(n log n).
    void merge(std::vector<model::Rule>& rules);

private:
    struct Piece {
        model::Points from = 0;   // along the line
        model::Points to = 0;
        std::uint32_t order = 0;  // index in the list given
        model::Rule rule;
    };
    // What the sort looks at, kept small.
    struct Key {
        std::uint64_t line = 0;  // axis, dashes, colour and the centre across the line, in one number
        std::uint32_t order = 0;
        model::Points across = 0;  // that centre
    };

    void sortKeys();
    void joinTouching(std::vector<model::Rule> const& rules);
    void joinDashes(std::size_t first);
    static void join(Piece& piece, Piece const& other);

    std::vector<Key> m_keys;
    std::vector<Key> m_sortedKeys;
    std::vector<std::uint64_t> m_line;  // the pieces of one line: where each begins along it, and its order
    std::vector<Piece> m_out;
    std::vector<std::uint32_t> m_places;  // in m_out, by order
};

}  // namespace standin::poppler

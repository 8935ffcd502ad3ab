// The names beside the numbers of a package drawing. Private to this folder.
#pragma once

#include <cstddef>
#include <span>
#include <vector>

#include "extractors/pins/pin_chains.h"
#include "model/page_layout.h"

namespace standin::pins {

// Before: to the left of a column, above a row. Behind: the other side.
enum class Side : std::uint8_t { Before, Behind };

enum class Lettered : std::uint8_t { Outside, Inside };

// One side of a package: its numbers, and where the outside is.
struct PackageSide {
    Chain const* chain = nullptr;
    Side outside = Side::Before;
};

struct Naming {
    std::vector<Piece> names;  // one a number; empty text: none found
    std::size_t found = 0;
};

// Finds names near the sides of one package. `numbers` are all words of the page
// that may number pins: a name does not reach across another number. Names that
// are signs alone count only outside, for inside they belong to an amplifier.
class Lettering {
public:
    Lettering(model::PageLayout const& page, std::span<PackageSide const> sides, std::span<std::uint32_t const> numbers);

    // One naming a side, in the order given; `where` the names stand.
    [[nodiscard]] std::vector<Naming> names(Lettered where) const;

private:
    [[nodiscard]] std::vector<Piece> namesAround(Axis axis) const;
    [[nodiscard]] std::vector<Piece> numberPieces(Axis axis) const;

    model::PageLayout const& m_page;
    std::span<PackageSide const> m_sides;
    std::span<std::uint32_t const> m_numbers;
    model::Rect m_around;
};

// Owned by nobody yet or by a figure, text or table, and with known letters.
[[nodiscard]] bool mayLetter(model::Word const& word);

}  // namespace standin::pins

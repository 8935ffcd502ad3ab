// The lattice of a rule network: where its lines stand, which pieces of them
// are drawn, and the areas that the drawn pieces bound. An area that covers
// several bands or columns is a merged cell: exactly the rule segments inside
// it are missing.
#pragma once

#include <cstdint>
#include <vector>

#include "extractors/tables/rule_network.h"

namespace standin::tables {

// An area bounded by rules: bands row0 … row1 and columns column0 … column1, inclusive.
struct RuledArea {
    int row0 = 0;
    int row1 = 0;
    int column0 = 0;
    int column1 = 0;
    bool irregular = false;  // cut out of an outline that was no rectangle
};

struct Lattice {
    std::vector<model::Points> xs;  // column lines, left to right, at least two
    std::vector<model::Points> ys;  // band lines, top to bottom, at least two
    std::vector<RuledArea> areas;   // cover the lattice, without overlap; by row0, then column0
    std::vector<int> areaOf;        // [row * columns() + column] -> index into areas

    [[nodiscard]] int rows() const { return static_cast<int>(ys.size()) - 1; }
    [[nodiscard]] int columns() const { return static_cast<int>(xs.size()) - 1; }
    [[nodiscard]] int rowAt(model::Points y) const;     // -1 outside
    [[nodiscard]] int columnAt(model::Points x) const;  // -1 outside
    [[nodiscard]] model::Rect box(RuledArea const& area) const;
};

inline constexpr std::size_t kMostColumnLines = 90;
inline constexpr std::size_t kMostRowLines = 260;

// `merge`: lines nearer than this are one (double rules), in points. Gives a
// lattice without lines where the network has more lines than a table can have.
[[nodiscard]] Lattice makeLattice(Network const& network, model::Points merge);

}  // namespace standin::tables

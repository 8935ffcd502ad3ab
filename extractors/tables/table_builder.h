// The steps that make one table of a region, and what they hand on to each other.
// Only build_table.cpp (pieces, columns, cells) and build_rows.cpp (head, bands,
// rows) include this; everybody else calls buildTable().
//
//     TableBuilder(page, region, taken).build();
//
// May include model/ and this folder.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "extractors/tables/build_table.h"
#include "extractors/tables/columns.h"
#include "extractors/tables/pieces.h"
#include "extractors/tables/rows.h"

namespace standin::tables {

// Font heights within which two baselines are one line.
inline constexpr float kSameLine = 0.45F;

enum class Boundaries : std::uint8_t { All, Soft };

// Lives for one call of build(). Borrows all three arguments; marks in `taken` the words of the table it made.
class TableBuilder {
public:
    TableBuilder(model::PageLayout const& page, Region const& region, std::vector<char>& taken)
        : m_page(page), m_region(region), m_lattice(region.lattice), m_taken(taken), m_headBottom(region.headBottom) {}

    [[nodiscard]] std::optional<model::Table> build();

private:
    [[nodiscard]] RuledArea const& area(int index) const { return m_lattice.areas[static_cast<std::size_t>(index)]; }

    // build_table.cpp
    void collectPieces();
    [[nodiscard]] bool goesOnOverColumn(model::Word const& before, model::Word const& word) const;
    [[nodiscard]] int areaAt(model::Point p) const;
    void findColumns();
    [[nodiscard]] int columnAt(model::Points x) const;
    void setColumns(PlacedPiece& placed, int low, int high) const;
    void findSoftLines();
    void placePieces();
    [[nodiscard]] bool isSoft(int edge) const;
    void cutAtColumns(Piece const& piece, int low, int high, float gap, Boundaries boundaries, std::vector<Piece>& parts) const;
    [[nodiscard]] bool standAlone(std::vector<Piece> const& parts) const;
    void settleNeighbours();
    std::optional<model::Table> makeTable();

    // build_rows.cpp
    void findHead();
    void findLeafTitles();
    void spreadRuledGroups();
    [[nodiscard]] model::Points lastTitleLine(std::vector<std::uint32_t> const& members) const;
    int readTitles(std::vector<std::uint32_t> const& members, int band);
    [[nodiscard]] bool isHeadPiece(PlacedPiece const& p) const;
    [[nodiscard]] bool bandIsWholeHead(int band) const;
    void findValueColumns();
    void releaseValueLines();
    [[nodiscard]] std::vector<model::Points> linesOf(std::size_t areaIndex) const;
    [[nodiscard]] int bandOf(PlacedPiece const& p) const;
    void splitBands();
    [[nodiscard]] bool holdsOneName(std::vector<PlacedPiece*> const& pieces, int firstValue) const;
    [[nodiscard]] bool holdsCentredSymbol(std::vector<PlacedPiece*> const& pieces, std::vector<model::Points> const& anchors) const;
    [[nodiscard]] bool holdsSymbolsApart(std::vector<PlacedPiece*> const& pieces, int firstValue) const;
    [[nodiscard]] BandKind kindOf(std::vector<PlacedPiece*> const& pieces, int bodyBands) const;
    int splitHead(std::vector<PlacedPiece*>& pieces);
    [[nodiscard]] bool standsOverLeaves(PlacedPiece const& p, std::vector<PlacedPiece*> const& leaves) const;
    [[nodiscard]] bool isLeafTitle(PlacedPiece const& p) const;
    [[nodiscard]] std::vector<std::size_t> repeatedSets(std::vector<PlacedPiece*>& leaves) const;
    void spreadGroups(std::vector<std::vector<PlacedPiece*>>& lines, std::size_t leaf);
    [[nodiscard]] bool spacedOut(std::vector<model::Points> const& ys) const;
    [[nodiscard]] bool namesOfTheirOwn(std::vector<std::uint32_t> const& members) const;
    [[nodiscard]] static bool sameVariable(std::vector<std::string> const& lines);
    [[nodiscard]] std::vector<std::string> linesOfText(std::vector<std::uint32_t> members) const;
    bool shareOutUnits(std::vector<std::uint32_t> members, int first, int last, std::vector<model::Points> const& baselines);
    void shareOut(std::size_t index, std::vector<model::Points> const& baselines);

    model::PageLayout const& m_page;
    Region const& m_region;
    Lattice const& m_lattice;
    std::vector<char>& m_taken;
    model::Points m_font = 10;
    std::vector<Piece> m_pieces;
    std::vector<int> m_areaOfPiece;
    ColumnModel m_columns;
    std::vector<SharedValue> m_shared;
    std::vector<char> m_weakLine;    // by lattice column line: drawn in less than half of the bands
    std::vector<char> m_softLine;    // by lattice column line: white space goes on where the rule is missing
    std::vector<int> m_firstColumn;  // first final column of each lattice column, and one past the end
    std::vector<PlacedPiece> m_placed;
    std::vector<std::vector<std::uint32_t>> m_inArea;  // placed pieces of each area
    int m_headBands = 0;                               // bands that are head as a whole
    model::Points m_headBottom = -1;                   // baseline of the last head line; that of the region where it knows
    model::Points m_leafTitles = -1;  // baseline of titles below others in an open table
    std::vector<int> m_rowOfBand;                      // first row of each band, and one past the end
    int m_headRows = 0;
    bool m_leaders = false;
    bool m_headWords = false;
    std::vector<char> m_wholeHead;  // by head band: holds no values below its titles
};

}  // namespace standin::tables

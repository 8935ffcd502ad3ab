// The last step from placed pieces to a Table: cells with text, overlapping
// cells united, empty rows and columns dropped, heading lines widened.
#pragma once

#include <optional>
#include <vector>

#include "extractors/tables/pieces.h"
#include "model/table.h"

namespace standin::tables {

struct DraftPiece {
    Piece piece;
    int row0 = 0;
    int row1 = 0;
    int column0 = 0;
    int column1 = 0;
    model::Rect ruledBox;  // the ruled area where the piece's cell fills it, else empty
};

struct GridDraft {
    int rows = 0;
    int columns = 0;
    int headRows = 0;
    bool openColumns = false;  // columns told by white space
    model::Points fontHeight = 10;
    std::vector<DraftPiece> pieces;
};

// Nothing where less than two rows or two columns hold text.
[[nodiscard]] std::optional<model::Table> finishGrid(model::PageLayout const& page, GridDraft const& draft);

}  // namespace standin::tables

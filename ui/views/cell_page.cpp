// Tested by tests/ui/views/table_pages_test.cpp.
#include "ui/views/cell_page.h"

namespace standin::ui {

CellPage::CellPage(Session& session, CellModel& cell, QWidget* parent)
    : TablePage(cell,
                {.reference = CellModel::Reference,
                 .candidate = CellModel::Candidate,
                 .strip = -1,
                 .stretched = {CellModel::Title, CellModel::Limit, CellModel::Why},
                 .widths = {16, 16, 22, 22, 12, 18},
                 .optional = {}},
                tr("Checks against the cell"), parent) {
    auto const refresh = [this, &cell] { setLine(cell.profileLine()); };
    connect(&cell, &QAbstractItemModel::modelReset, this, refresh);
    connect(this, &TablePage::opened, this, [this, &session, &cell](int row) {
        if (cell.rowAt(row).finding.empty()) return;
        session.setCurrentFinding(cell.rowAt(row).finding);
        Q_EMIT findingWanted();
    });
    refresh();
}

}  // namespace standin::ui

// Tested by tests/ui/views/table_pages_test.cpp.
#include "ui/views/coverage_page.h"

namespace standin::ui {

CoveragePage::CoveragePage(Session& session, CoverageModel& coverage, QWidget* parent)
    : TablePage(coverage, {.reference = -1, .candidate = -1, .strip = -1, .stretched = {CoverageModel::What, CoverageModel::Text}, .widths = {13, 7, 20, 20}, .optional = {}},
                tr("What was not compared"), parent) {
    auto const refresh = [this, &coverage] {
        setLine(coverage.accountLine(DocumentSide::Reference) + QLatin1Char('\n') + coverage.accountLine(DocumentSide::Candidate));
    };
    connect(&coverage, &QAbstractItemModel::modelReset, this, refresh);
    connect(this, &TablePage::opened, this, [this, &session, &coverage](int row) {
        auto const& place = coverage.rowAt(row);
        if (!place.finding.empty()) session.setCurrentFinding(place.finding);
        if (place.page < 1) return;
        session.choosePlace(place.side, place.page, place.box);
        Q_EMIT placeWanted();
    });
    refresh();
}

}  // namespace standin::ui

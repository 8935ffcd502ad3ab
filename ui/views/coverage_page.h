// What was not compared, with the account of the numbers of both documents.
#pragma once

#include "ui/models/coverage_model.h"
#include "ui/views/table_page.h"

namespace standin::ui {

class CoveragePage : public TablePage {
    Q_OBJECT

public:
    CoveragePage(Session& session, CoverageModel& coverage, QWidget* parent = nullptr);

Q_SIGNALS:
    void placeWanted();
};

}  // namespace standin::ui

// The checks against the cell profile and the quantities worked out.
#pragma once

#include "ui/models/cell_model.h"
#include "ui/views/table_page.h"

namespace standin::ui {

class CellPage : public TablePage {
    Q_OBJECT

public:
    CellPage(Session& session, CellModel& cell, QWidget* parent = nullptr);

Q_SIGNALS:
    void findingWanted();
};

}  // namespace standin::ui

// All parameter pairs, equal ones too, with their limits on one axis.
#pragma once

#include <QCheckBox>
#include <QLineEdit>

#include "ui/models/parameters_model.h"
#include "ui/views/table_page.h"

namespace standin::ui {

class ParametersPage : public QWidget {
    Q_OBJECT

public:
    ParametersPage(Session& session, ParametersModel& parameters, QWidget* parent = nullptr);
    [[nodiscard]] TablePage* tablePage() const { return m_page; }

Q_SIGNALS:
    void placeWanted();

private:
    void open(int row);
    void showCounts();

    Session& m_session;
    ParametersFilter m_filter;
    TablePage* m_page;
    QLabel* m_counts;
};

}  // namespace standin::ui

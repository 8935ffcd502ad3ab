// Both packages drawn with their pins, and the pins as a table.
#pragma once

#include <QComboBox>

#include "ui/models/pins_model.h"
#include "ui/views/table_page.h"

namespace standin::ui {

class PinsPage : public QWidget {
    Q_OBJECT

public:
    PinsPage(Session& session, PinsModel& pins, QWidget* parent = nullptr);
    [[nodiscard]] TablePage* tablePage() const { return m_page; }

Q_SIGNALS:
    void placeWanted();

private:
    void refreshPackages();
    void open(int row);

    Session& m_session;
    PinsModel& m_pins;
    QComboBox* m_referencePackage;
    QComboBox* m_candidatePackage;
    TablePage* m_page;
};

}  // namespace standin::ui

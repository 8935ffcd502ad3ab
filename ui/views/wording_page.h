// Sentences that differ, side by side, the changed words marked by colour,
// underline and weight.
#pragma once

#include <QCheckBox>
#include <QListView>

#include "ui/models/wording_model.h"
#include "ui/views/panel.h"

namespace standin::ui {

class WordingPage : public QWidget {
    Q_OBJECT

public:
    WordingPage(Session& session, WordingModel& wording, QWidget* parent = nullptr);
    [[nodiscard]] QListView* list() const { return m_list; }

Q_SIGNALS:
    void placeWanted();

private:
    void showCounts();

    Session& m_session;
    WordingModel& m_wording;
    QListView* m_list;
    QCheckBox* m_formOnly;
    QLabel* m_counts;
};

}  // namespace standin::ui

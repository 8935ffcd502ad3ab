// The first page of the desk: the findings with their filter above, evidence and
// meaning of the chosen one below.
#pragma once

#include <QComboBox>
#include <QLineEdit>
#include <QListView>
#include <QSplitter>

#include "ui/models/findings_filter.h"
#include "ui/views/meaning_panel.h"

class QCheckBox;
class QPushButton;

namespace standin::ui {

class FindingsPage : public QWidget {
    Q_OBJECT

public:
    FindingsPage(Session& session, FindingsModel& findings, FindingsFilter& filter, QWidget* parent = nullptr);

    // Stepping stops at the ends.
    void goToNext();
    void goToPrevious();
    void goToFirst();
    void focusText();
    [[nodiscard]] QListView* list() const { return m_list; }
    [[nodiscard]] MeaningPanel* meaning() const { return m_meaning; }
    [[nodiscard]] QSplitter* splitter() const { return m_splitter; }
    [[nodiscard]] QSplitter* lowerSplitter() const { return m_lower; }

Q_SIGNALS:
    // A row was opened (Enter, double click): its place is wanted on the pages.
    void placeWanted();

private:
    [[nodiscard]] QWidget* makeFilterBar();
    void refreshKinds();
    void showCurrent();
    void showHidden();
    void step(int by);

    Session& m_session;
    FindingsFilter& m_filter;
    QListView* m_list;
    QLineEdit* m_text;
    QComboBox* m_kind;
    QComboBox* m_order;
    QCheckBox* m_undecided;
    QLabel* m_hidden;
    QPushButton* m_showAll;
    QLabel* m_none;
    MeaningPanel* m_meaning;
    QSplitter* m_splitter;
    QSplitter* m_lower;
};

}  // namespace standin::ui

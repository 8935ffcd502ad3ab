// The ladder at the left: paired headings with a count; choosing a rung lists its
// findings only (hazard findings stay listed).
#pragma once

#include <QListView>
#include <QStyledItemDelegate>

#include "ui/models/findings_filter.h"
#include "ui/models/sections_model.h"
#include "ui/views/panel.h"

namespace standin::ui {

class RungDelegate : public QStyledItemDelegate {
    Q_OBJECT

public:
    explicit RungDelegate(SectionsModel const& sections, QObject* parent = nullptr);
    void paint(QPainter* painter, QStyleOptionViewItem const& option, QModelIndex const& index) const override;
    [[nodiscard]] QSize sizeHint(QStyleOptionViewItem const& option, QModelIndex const& index) const override;

private:
    SectionsModel const& m_sections;
};

class SectionLadder : public Panel {
    Q_OBJECT

public:
    SectionLadder(SectionsModel& sections, FindingsFilter& filter, QWidget* parent = nullptr);
    [[nodiscard]] QListView* list() const { return m_list; }

private:
    void refresh();

    SectionsModel& m_sections;
    FindingsFilter& m_filter;
    QListView* m_list;
    QLabel* m_wording;
};

}  // namespace standin::ui

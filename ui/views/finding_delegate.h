// Draws one row of the findings list: shape of severity, title and condition,
// both values, the limit strip, the relation and what was decided. A row that
// opens a group carries the group's heading above it.
#pragma once

#include <QStyledItemDelegate>

#include "ui/models/findings_filter.h"

namespace standin::ui {

class FindingDelegate : public QStyledItemDelegate {
    Q_OBJECT

public:
    // Rows come from `filter`, which outlives the delegate.
    explicit FindingDelegate(FindingsFilter const& filter, QObject* parent = nullptr);

    void paint(QPainter* painter, QStyleOptionViewItem const& option, QModelIndex const& index) const override;
    [[nodiscard]] QSize sizeHint(QStyleOptionViewItem const& option, QModelIndex const& index) const override;

private:
    FindingsFilter const& m_filter;
};

}  // namespace standin::ui

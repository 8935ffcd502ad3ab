// A page of the desk that is one table on paper: a line above it, rows that can
// be opened by Enter or a double click, and copied.
#pragma once

#include <functional>
#include <optional>
#include <vector>

#include <QTableView>

#include "report/limit_strip.h"
#include "ui/models/session.h"
#include "ui/views/panel.h"

class QHBoxLayout;

namespace standin::ui {

// Colours the columns of a side, and draws limit strips.
struct TableColumns {
    int reference = -1, candidate = -1, strip = -1;
    std::vector<int> stretched;  // share what room is left
    std::vector<int> widths;     // in average letters, one a column; of stretched ones the least
    std::vector<int> optional;   // left out, in this order, where there is no room for all
};

class TablePage : public QWidget {
    Q_OBJECT

public:
    // `name` is read out by screen readers; the model outlives the page.
    TablePage(QAbstractItemModel& rows, TableColumns columns, QString const& name, QWidget* parent = nullptr);

    [[nodiscard]] QTableView* table() const { return m_table; }
    // For widgets above the table.
    [[nodiscard]] QHBoxLayout* bar() const { return m_bar; }
    void setLine(QString const& text);
    // How a limit strip is found for a row of `rows`.
    void setStrips(std::function<std::optional<report::LimitStrip>(int row)> stripOf);

Q_SIGNALS:
    void opened(int row);
    void chosen(int row);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;

private:
    void layOut();
    void copy() const;

    TableColumns m_columns;
    QTableView* m_table;
    QHBoxLayout* m_bar;
    QLabel* m_line;
};

}  // namespace standin::ui

// Tested by tests/ui/views/table_pages_test.cpp.
#include "ui/views/table_page.h"

#include <algorithm>

#include <QClipboard>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QPainter>
#include <QScrollBar>
#include <QShortcut>
#include <QStyledItemDelegate>
#include <QVBoxLayout>

#include "ui/views/appearance.h"
#include "ui/views/strip_painter.h"

namespace standin::ui {

namespace {

constexpr int kUsualWidth = 12;      // of a column, in average letters
constexpr double kNarrowest = 0.72;  // of the least widths

class TableDelegate : public QStyledItemDelegate {
public:
    TableDelegate(TableColumns const& columns, QObject* parent) : QStyledItemDelegate(parent), m_columns(columns) {}

    std::function<std::optional<report::LimitStrip>(int)> stripOf;

    void paint(QPainter* painter, QStyleOptionViewItem const& option, QModelIndex const& index) const override {
        QStyledItemDelegate::paint(painter, option, index);
        if (index.column() != m_columns.strip || !stripOf) return;
        if (auto const strip = stripOf(index.row())) drawLimitStrip(*painter, QRectF(option.rect).adjusted(2, 4, -2, -4), *strip, coloursFor(option.palette));
    }

protected:
    void initStyleOption(QStyleOptionViewItem* option, QModelIndex const& index) const override {
        QStyledItemDelegate::initStyleOption(option, index);
        auto const& colours = coloursFor(option->palette);
        auto const hue = [&](QColor const& colour) {
            option->palette.setColor(QPalette::Text, colour);
            option->palette.setColor(QPalette::HighlightedText, colour);
        };
        if (index.column() == m_columns.reference) hue(colours.reference);
        if (index.column() == m_columns.candidate) hue(colours.candidate);
    }

private:
    TableColumns m_columns;
};

}  // namespace

TablePage::TablePage(QAbstractItemModel& rows, TableColumns columns, QString const& name, QWidget* parent)
    : QWidget(parent), m_columns(std::move(columns)), m_table(new QTableView), m_bar(new QHBoxLayout), m_line(new QLabel) {
    auto* panel = new Panel;
    auto* inner = new QVBoxLayout(panel);
    inner->setContentsMargins(8, 6, 8, 8);
    m_line->setTextFormat(Qt::PlainText);
    m_line->setWordWrap(true);
    m_line->setFont(fontOf(TextSize::Small));
    makeSoft(*m_line);
    m_line->hide();
    inner->addLayout(m_bar);
    inner->addWidget(m_line);
    inner->addWidget(m_table, 1);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(panel);

    m_table->setModel(&rows);
    m_table->setItemDelegate(new TableDelegate(m_columns, m_table));
    m_table->setAccessibleName(name);
    m_table->setFrameShape(QFrame::NoFrame);
    m_table->setShowGrid(false);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setSelectionMode(QAbstractItemView::ExtendedSelection);
    m_table->setTabKeyNavigation(false);
    m_table->setWordWrap(true);
    m_table->setTextElideMode(Qt::ElideRight);
    m_table->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_table->verticalHeader()->hide();
    m_table->verticalHeader()->setDefaultSectionSize(QFontMetrics(m_table->font()).lineSpacing() * 5 / 2);
    m_table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    m_table->horizontalHeader()->setHighlightSections(false);
    m_table->horizontalHeader()->setMinimumSectionSize(QFontMetrics(m_table->font()).averageCharWidth() * 4);
    auto* copyRows = new QShortcut(QKeySequence::Copy, m_table, nullptr, nullptr, Qt::WidgetShortcut);
    connect(copyRows, &QShortcut::activated, this, &TablePage::copy);
    connect(m_table, &QAbstractItemView::activated, this, [this](QModelIndex const& index) { Q_EMIT opened(index.row()); });
    connect(m_table->selectionModel(), &QItemSelectionModel::currentRowChanged, this, [this](QModelIndex const& index) {
        if (index.isValid()) Q_EMIT chosen(index.row());
    });
    connect(&rows, &QAbstractItemModel::modelReset, this, &TablePage::layOut);
    // The bar at the right takes room when it comes.
    connect(m_table->verticalScrollBar(), &QScrollBar::rangeChanged, this, &TablePage::layOut, Qt::QueuedConnection);
}

void TablePage::setLine(QString const& text) {
    m_line->setText(text);
    m_line->setVisible(!text.isEmpty());
}

void TablePage::setStrips(std::function<std::optional<report::LimitStrip>(int row)> stripOf) {
    static_cast<TableDelegate*>(m_table->itemDelegate())->stripOf = std::move(stripOf);
}

void TablePage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    layOut();
}

void TablePage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    layOut();
}

void TablePage::layOut() {
    int const letter = QFontMetrics(m_table->font()).averageCharWidth();
    int const room = m_table->viewport()->width();
    int const columns = m_table->model()->columnCount();
    auto const isIn = [](std::vector<int> const& list, int column) { return std::find(list.begin(), list.end(), column) != list.end(); };
    auto const least = [&](int column) {
        auto const at = static_cast<std::size_t>(column);
        return letter * (at < m_columns.widths.size() ? m_columns.widths[at] : kUsualWidth);
    };
    int needed = 0;
    for (int column = 0; column < columns; ++column) {
        m_table->setColumnHidden(column, false);
        needed += least(column);
    }
    for (int const column : m_columns.optional) {
        if (needed <= room) break;
        m_table->setColumnHidden(column, true);
        needed -= least(column);
    }
    // Still too much: all get narrower, but not past reading.
    double const scale = needed > room ? std::max(kNarrowest, static_cast<double>(room) / needed) : 1;
    int rest = room;
    for (int column = 0; column < columns; ++column) {
        if (m_table->isColumnHidden(column)) continue;
        m_table->setColumnWidth(column, static_cast<int>(least(column) * scale));
        rest -= m_table->columnWidth(column);
    }
    if (rest <= 0 || m_columns.stretched.empty()) return;
    int left = static_cast<int>(m_columns.stretched.size());
    for (int column = 0; column < columns; ++column) {
        if (!isIn(m_columns.stretched, column)) continue;
        int const share = rest / left--;
        m_table->setColumnWidth(column, m_table->columnWidth(column) + share);
        rest -= share;
    }
}

// The chosen rows, columns parted by tabs.
void TablePage::copy() const {
    auto rows = m_table->selectionModel()->selectedRows();
    std::sort(rows.begin(), rows.end(), [](auto const& a, auto const& b) { return a.row() < b.row(); });
    QStringList lines;
    for (auto const& row : rows) {
        QStringList cells;
        for (int column = 0; column < m_table->model()->columnCount(); ++column) cells += m_table->model()->index(row.row(), column).data().toString();
        lines += cells.join(QLatin1Char('\t'));
    }
    if (!lines.isEmpty()) QGuiApplication::clipboard()->setText(lines.join(QLatin1Char('\n')));
}

}  // namespace standin::ui

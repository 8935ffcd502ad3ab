// Tested by tests/ui/views/findings_page_test.cpp.
#include "ui/views/section_ladder.h"

#include <QItemSelectionModel>
#include <QPainter>
#include <QVBoxLayout>

#include "ui/views/appearance.h"

namespace standin::ui {

RungDelegate::RungDelegate(SectionsModel const& sections, QObject* parent) : QStyledItemDelegate(parent), m_sections(sections) {}

QSize RungDelegate::sizeHint(QStyleOptionViewItem const& option, QModelIndex const& index) const {
    int const line = QFontMetrics(option.font).lineSpacing();
    return {line * 8, m_sections.rungAt(index.row()).all ? line * 3 / 2 : line * 5 / 2};
}

void RungDelegate::paint(QPainter* painter, QStyleOptionViewItem const& option, QModelIndex const& index) const {
    auto const& rung = m_sections.rungAt(index.row());
    auto const& colours = coloursFor(option.palette);
    QFontMetrics const metrics(option.font);
    int const line = metrics.lineSpacing();
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    if (option.state & QStyle::State_Selected) {
        painter->fillRect(option.rect, colours.chosen);
        painter->fillRect(QRect(option.rect.left(), option.rect.top(), 3, option.rect.height()), colours.ink);
    }
    QFont bold = option.font;
    bold.setBold(true);
    QRect area = option.rect.adjusted(line / 2, 0, -line / 2, 0);
    if (rung.findings > 0) {
        QString const count = QString::number(rung.findings);
        int const width = QFontMetrics(bold).horizontalAdvance(count);
        painter->setFont(bold);
        painter->setPen(colours.ink);
        painter->drawText(area, Qt::AlignRight | Qt::AlignVCenter, count);
        area.setRight(area.right() - width - line / 2);
    }
    if (rung.all) {
        painter->setFont(option.font);
        painter->setPen(colours.ink);
        painter->drawText(area, Qt::AlignLeft | Qt::AlignVCenter, metrics.elidedText(m_sections.data(index, Qt::DisplayRole).toString(), Qt::ElideRight, area.width()));
        painter->restore();
        return;
    }
    // Two squares joined by a line: filled where the sheet has the section.
    int const top = area.center().y() - line / 2;
    int const bottom = area.center().y() + line / 2;
    double const half = line * 0.2;
    QPointF const upper(area.left() + half, top);
    QPointF const lower(area.left() + half, bottom);
    painter->setPen(QPen(colours.edge, 1.5));
    painter->drawLine(upper, lower);
    auto const side = [&](QPointF const& centre, QString const& title, QColor const& hue, QColor const& ink) {
        painter->setPen(QPen(hue, 1.4));
        painter->setBrush(title.isEmpty() ? QBrush(colours.paper) : QBrush(hue));
        painter->drawRect(QRectF(centre.x() - half, centre.y() - half, 2 * half, 2 * half));
        painter->setPen(title.isEmpty() ? colours.soft : ink);
        painter->setFont(option.font);
        QRect const text(area.left() + line, static_cast<int>(centre.y()) - line / 2, area.width() - line, line);
        painter->drawText(text, Qt::AlignLeft | Qt::AlignVCenter, metrics.elidedText(title.isEmpty() ? QStringLiteral("–") : title, Qt::ElideRight, text.width()));
    };
    side(upper, rung.reference, colours.reference, colours.ink);
    side(lower, rung.candidate, colours.candidate, colours.soft);
    painter->restore();
}

SectionLadder::SectionLadder(SectionsModel& sections, FindingsFilter& filter, QWidget* parent)
    : Panel(parent), m_sections(sections), m_filter(filter), m_list(new QListView), m_wording(new QLabel) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(2, 8, 2, 8);
    auto* title = new QLabel(tr("Sections, paired"));
    title->setFont(fontOf(TextSize::Small, QFont::Bold));
    title->setContentsMargins(10, 0, 10, 0);
    m_list->setModel(&sections);
    m_list->setItemDelegate(new RungDelegate(sections, m_list));
    m_list->setFrameShape(QFrame::NoFrame);
    m_list->setFont(fontOf(TextSize::Small));
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_list->setAccessibleName(tr("Sections of both documents, paired"));
    m_wording->setFont(fontOf(TextSize::Small));
    m_wording->setWordWrap(true);
    m_wording->setContentsMargins(10, 0, 10, 0);
    makeSoft(*m_wording);
    layout->addWidget(title);
    layout->addWidget(m_list, 1);
    layout->addWidget(m_wording);
    connect(m_list->selectionModel(), &QItemSelectionModel::currentChanged, this, [this](QModelIndex const& current) {
        m_filter.setSection(current.row() > 0 ? std::optional<int>(current.row() - 1) : std::nullopt);
    });
    connect(&sections, &QAbstractItemModel::modelReset, this, &SectionLadder::refresh);
    connect(&filter, &FindingsFilter::filterChanged, this, [this] {
        int const row = m_filter.section() ? *m_filter.section() + 1 : 0;
        if (m_list->currentIndex().row() != row && row < m_sections.rowCount()) m_list->setCurrentIndex(m_sections.index(row));
    });
    refresh();
}

void SectionLadder::refresh() {
    m_wording->setText(m_sections.wordingLine());
    if (m_sections.rowCount() > 0) m_list->setCurrentIndex(m_sections.index(0));
}

}  // namespace standin::ui

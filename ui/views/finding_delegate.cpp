// All lengths follow from the font, so that larger text makes larger rows. The
// columns give way in this order as the window gets narrower: relation, strip.
//
// Tested by tests/ui/views/findings_page_test.cpp.
#include "ui/views/finding_delegate.h"

#include <algorithm>

#include <QPainter>
#include <QTextLayout>

#include "ui/models/words.h"
#include "ui/views/appearance.h"
#include "ui/views/severity_mark.h"
#include "ui/views/strip_painter.h"

namespace standin::ui {

namespace {

constexpr double kRelationFrom = 62;  // widths in font heights from which a column is there
constexpr double kStripFrom = 46;

struct Columns {
    QRect mark, name, values, strip, relation;
};

int lineHeight(QFont const& font) { return QFontMetrics(font).lineSpacing(); }

Columns columnsOf(QRect const& row, QFont const& font) {
    int const em = QFontMetrics(font).height();
    int const gap = em * 2 / 3;
    QRect rest = row.adjusted(em / 2, em / 3, -em / 2, -em / 3);
    Columns columns;
    columns.mark = QRect(rest.left(), rest.top(), em * 5 / 4, em * 5 / 4);
    rest.setLeft(columns.mark.right() + gap);
    if (row.width() >= kRelationFrom * em) {
        int const width = em * 9;
        columns.relation = QRect(rest.right() - width + 1, rest.top(), width, rest.height());
        rest.setRight(columns.relation.left() - gap);
    }
    if (row.width() >= kStripFrom * em) {
        int const width = std::clamp(rest.width() / 4, em * 9, em * 22);
        columns.strip = QRect(rest.right() - width + 1, rest.top(), width, std::min(rest.height(), em * 5 / 2));
        rest.setRight(columns.strip.left() - gap);
    }
    int const name = rest.width() * 11 / 20;
    columns.name = QRect(rest.left(), rest.top(), name - gap, rest.height());
    columns.values = QRect(rest.left() + name, rest.top(), rest.width() - name, rest.height());
    return columns;
}

// Up to `lines` lines, the last one cut with "…". Returns the height used.
int drawLines(QPainter& painter, QRect const& area, QFont const& font, QString const& text, int lines) {
    painter.setFont(font);
    QFontMetrics const metrics(font);
    QTextLayout layout(text, font);
    QTextOption wrap(Qt::AlignLeft);
    wrap.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    layout.setTextOption(wrap);
    layout.beginLayout();
    int y = area.top();
    for (int i = 0; i < lines; ++i) {
        QTextLine line = layout.createLine();
        if (!line.isValid()) break;
        line.setLineWidth(area.width());
        auto const part = i + 1 < lines ? text.mid(line.textStart(), line.textLength()).trimmed() : metrics.elidedText(text.mid(line.textStart()), Qt::ElideRight, area.width());
        painter.drawText(QPoint(area.left(), y + metrics.ascent()), part);
        y += metrics.lineSpacing();
    }
    layout.endLayout();
    return y - area.top();
}

QFont bold(QFont font) {
    font.setBold(true);
    return font;
}

QFont small(QFont font) {
    if (font.pointSizeF() > 0) font.setPointSizeF(font.pointSizeF() * 0.9);
    return font;
}

QString withPage(QString const& text, int page) { return page > 0 ? text + FindingDelegate::tr("  p %1").arg(page) : text; }

void drawValue(QPainter& painter, QRect const& area, QFont const& font, QString const& text, bool hasValues, int page, QColor const& hue) {
    // The page must not be cut off with the text.
    QString const place = withPage({}, page);
    QFontMetrics const metrics(hasValues ? bold(font) : font);
    QFontMetrics const placeMetrics(small(font));
    int const room = area.width() - placeMetrics.horizontalAdvance(place);
    QString const shown = metrics.elidedText(text, Qt::ElideRight, room);
    painter.setPen(hue);
    painter.setFont(hasValues ? bold(font) : font);
    painter.drawText(QPoint(area.left(), area.top() + metrics.ascent()), shown);
    painter.setFont(small(font));
    painter.drawText(QPoint(area.left() + metrics.horizontalAdvance(shown), area.top() + metrics.ascent()), place);
}

}  // namespace

FindingDelegate::FindingDelegate(FindingsFilter const& filter, QObject* parent) : QStyledItemDelegate(parent), m_filter(filter) {}

QSize FindingDelegate::sizeHint(QStyleOptionViewItem const& option, QModelIndex const& index) const {
    int const line = lineHeight(option.font);
    int height = line * 3 + QFontMetrics(option.font).height() * 2 / 3;
    if (!m_filter.headingAt(index.row()).isEmpty()) height += line * 2;
    return {line * 24, height};
}

void FindingDelegate::paint(QPainter* painter, QStyleOptionViewItem const& option, QModelIndex const& index) const {
    auto const& row = m_filter.rowAt(index.row());
    auto const& colours = coloursFor(option.palette);
    painter->save();
    QRect area = option.rect;
    if (auto const heading = m_filter.headingAt(index.row()); !heading.isEmpty()) {
        QRect const top(area.left(), area.top(), area.width(), lineHeight(option.font) * 2);
        area.setTop(top.bottom() + 1);
        QFontMetrics const metrics(bold(option.font));
        int const baseline = top.bottom() - metrics.descent() - metrics.height() / 3;
        painter->setFont(bold(option.font));
        painter->setPen(colours.ink);
        int const left = top.left() + metrics.height() / 2;
        painter->drawText(QPoint(left, baseline), heading);
        if (m_filter.order() == FindingOrder::Severity) {
            painter->setFont(small(option.font));
            painter->setPen(colours.soft);
            auto const meaning = row.severity == model::Severity::Hazard ? tr("cannot be filtered away; %1").arg(severityMeaning(row.severity)) : severityMeaning(row.severity);
            int const at = left + metrics.horizontalAdvance(heading) + metrics.height();
            painter->drawText(QPoint(at, baseline), QFontMetrics(small(option.font)).elidedText(meaning, Qt::ElideRight, top.right() - at - 4));
        }
    }
    if (option.state & QStyle::State_Selected) {
        painter->fillRect(area, colours.chosen);
        painter->fillRect(QRect(area.left(), area.top(), 3, area.height()), colours.ink);
    }
    painter->setPen(colours.edge);
    painter->drawLine(area.topLeft(), area.topRight());

    auto const columns = columnsOf(area, option.font);
    drawSeverityMark(*painter, columns.mark, row.severity, colours.ink, row.severity == model::Severity::Hazard ? MarkFill::Solid : MarkFill::Outline);
    painter->setPen(colours.ink);
    int const used = drawLines(*painter, columns.name, bold(option.font), row.title, 2);
    QStringList lesser;
    if (row.disposition != Disposition::Open) lesser += tr("decided: %1").arg(dispositionWord(row.disposition));
    if (!row.condition.isEmpty()) lesser += row.condition;
    if (columns.relation.isNull()) lesser += row.relation;
    painter->setPen(colours.soft);
    drawLines(*painter, columns.name.adjusted(0, used, 0, 0), small(option.font), lesser.join(QStringLiteral(" · ")), 1);

    drawValue(*painter, columns.values, option.font, row.reference, row.referenceHasValues, row.referencePage, colours.reference);
    drawValue(*painter, columns.values.adjusted(0, lineHeight(option.font) * 5 / 4, 0, 0), option.font, row.candidate, row.candidateHasValues, row.candidatePage, colours.candidate);

    if (row.strip && !columns.strip.isNull()) drawLimitStrip(*painter, columns.strip, *row.strip, colours);
    if (!columns.relation.isNull()) {
        painter->setPen(colours.ink);
        drawLines(*painter, columns.relation, small(option.font), row.relation, 3);
    }
    painter->restore();
}

}  // namespace standin::ui

// Each row is laid out by a QTextDocument: its height follows from the width of
// the view.
//
// Tested by tests/ui/views/table_pages_test.cpp.
#include "ui/views/wording_page.h"

#include <QHBoxLayout>
#include <QPainter>
#include <QStyledItemDelegate>
#include <QTextDocument>
#include <QVBoxLayout>

#include "ui/models/words.h"
#include "ui/views/appearance.h"
#include "ui/views/severity_mark.h"

namespace standin::ui {

namespace {

QString htmlOf(std::vector<MarkedText> const& parts, QColor const& hue, QColor const& tint) {
    if (parts.empty()) return QStringLiteral("–");
    QString html;
    for (auto const& part : parts) {
        auto const text = part.text.toHtmlEscaped();
        html += part.marked ? QStringLiteral("<span style=\"color:%1;background-color:%2;font-weight:bold;text-decoration:underline\">%3</span>").arg(hue.name(), tint.name(), text) : text;
    }
    return html;
}

class WordingDelegate : public QStyledItemDelegate {
public:
    WordingDelegate(WordingModel const& wording, QObject* parent) : QStyledItemDelegate(parent), m_wording(wording) {}

    QSize sizeHint(QStyleOptionViewItem const& option, QModelIndex const& index) const override {
        auto const* view = qobject_cast<QListView const*>(option.widget);
        int const width = view != nullptr ? view->viewport()->width() : option.rect.width();
        QTextDocument document;
        fill(document, option, index, width);
        return {width, static_cast<int>(document.size().height()) + QFontMetrics(option.font).height() / 2};
    }

    void paint(QPainter* painter, QStyleOptionViewItem const& option, QModelIndex const& index) const override {
        auto const& colours = coloursFor(option.palette);
        painter->save();
        if (option.state & QStyle::State_Selected) {
            painter->fillRect(option.rect, colours.chosen);
            painter->fillRect(QRect(option.rect.left(), option.rect.top(), 3, option.rect.height()), colours.ink);
        }
        painter->setPen(colours.edge);
        painter->drawLine(option.rect.topLeft(), option.rect.topRight());
        int const em = QFontMetrics(option.font).height();
        drawSeverityMark(*painter, QRectF(option.rect.left() + em / 2.0, option.rect.top() + em / 3.0, em, em), m_wording.rowAt(index.row()).severity, colours.ink);
        QTextDocument document;
        fill(document, option, index, option.rect.width());
        painter->translate(option.rect.left() + indentOf(option), option.rect.top() + em / 4);
        document.drawContents(painter);
        painter->restore();
    }

private:
    static int indentOf(QStyleOptionViewItem const& option) { return QFontMetrics(option.font).height() * 2; }

    void fill(QTextDocument& document, QStyleOptionViewItem const& option, QModelIndex const& index, int width) const {
        auto const& row = m_wording.rowAt(index.row());
        auto const& colours = coloursFor(option.palette);
        auto const page = [](int number) { return number > 0 ? WordingModel::tr("page %1").arg(number) : QString{}; };
        document.setDefaultFont(option.font);
        document.setDocumentMargin(1);
        document.setTextWidth(width - indentOf(option) - QFontMetrics(option.font).height() / 2);
        document.setHtml(QStringLiteral("<body style=\"color:%1\"><b>%2</b> <span style=\"color:%3\">%4</span>"
                                        "<table width=\"100%\" cellspacing=\"0\" cellpadding=\"3\"><tr><td width=\"50%\"><span style=\"color:%5\">%6 %7</span><br>%8</td>"
                                        "<td width=\"50%\"><span style=\"color:%9\">%10 %11</span><br>%12</td></tr></table></body>")
                             .arg(colours.ink.name(), row.title.toHtmlEscaped(), colours.soft.name(), severityWord(row.severity), colours.reference.name(),
                                  sideWord(DocumentSide::Reference), page(row.referencePage), htmlOf(row.reference, colours.reference, colours.referenceTint),
                                  colours.candidate.name())
                             .arg(sideWord(DocumentSide::Candidate), page(row.candidatePage), htmlOf(row.candidate, colours.candidate, colours.candidateTint)));
    }

    WordingModel const& m_wording;
};

}  // namespace

WordingPage::WordingPage(Session& session, WordingModel& wording, QWidget* parent)
    : QWidget(parent), m_session(session), m_wording(wording), m_list(new QListView), m_formOnly(new QCheckBox(tr("also those that differ in &form only"))), m_counts(new QLabel) {
    auto* panel = new Panel;
    auto* inner = new QVBoxLayout(panel);
    inner->setContentsMargins(4, 6, 4, 4);
    auto* bar = new QHBoxLayout;
    bar->setContentsMargins(8, 0, 8, 0);
    m_counts->setFont(fontOf(TextSize::Small));
    makeSoft(*m_counts);
    bar->addWidget(m_formOnly);
    bar->addStretch();
    bar->addWidget(m_counts);
    inner->addLayout(bar);
    inner->addWidget(m_list, 1);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(panel);
    m_list->setModel(&wording);
    m_list->setItemDelegate(new WordingDelegate(wording, m_list));
    m_list->setFrameShape(QFrame::NoFrame);
    m_list->setResizeMode(QListView::Adjust);
    m_list->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);  // else its coming and going would change the heights
    m_list->setAccessibleName(tr("Sentences that differ"));
    connect(m_formOnly, &QCheckBox::toggled, &wording, &WordingModel::setFormOnlyShown);
    connect(m_list->selectionModel(), &QItemSelectionModel::currentChanged, this, [this](QModelIndex const& current) {
        if (current.isValid()) m_session.setCurrentFinding(m_wording.rowAt(current.row()).finding);
    });
    connect(m_list, &QAbstractItemView::activated, this, &WordingPage::placeWanted);
    connect(&wording, &QAbstractItemModel::modelReset, this, &WordingPage::showCounts);
    showCounts();
}

void WordingPage::showCounts() {
    QString text = tr("%n sentence(s) listed", nullptr, m_wording.rowCount());
    if (m_wording.hiddenCount() > 0) text += tr(", %n that differ in form only hidden", nullptr, m_wording.hiddenCount());
    m_counts->setText(text);
}

}  // namespace standin::ui

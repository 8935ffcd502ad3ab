// Tested by tests/ui/views/findings_page_test.cpp.
#include "ui/views/title_strip.h"

#include <algorithm>
#include <initializer_list>

#include <QHBoxLayout>
#include <QPainter>
#include <QVBoxLayout>

#include "report/finding_view.h"
#include "report/texts.h"
#include "ui/models/qt_text.h"
#include "ui/models/words.h"
#include "ui/views/appearance.h"
#include "ui/views/severity_mark.h"

namespace standin::ui {

DocumentCard::DocumentCard(Session& session, DocumentSide side, QWidget* parent)
    : Panel(parent), m_session(session), m_side(side), m_who(new CutLabel), m_part(new CutLabel), m_maker(new CutLabel), m_detail(new CutLabel) {
    setSide(side);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(14, 6, 10, 6);
    layout->setSpacing(0);
    m_who->setFont(fontOf(TextSize::Small, QFont::Bold));
    m_part->setFont(fontOf(TextSize::Large, QFont::Bold));
    m_part->setSmallest(fontOf(TextSize::Small));
    m_maker->setFont(fontOf(TextSize::Small));
    m_detail->setFont(fontOf(TextSize::Small));
    makeSoft(*m_detail);
    for (auto* label : std::initializer_list<QLabel*>{m_who, m_part, m_maker, m_detail}) layout->addWidget(label);
    m_who->setText(sideWord(side).toUpper());
    connect(&session, &Session::pairChanged, this, &DocumentCard::refresh);
    refresh();
}

void DocumentCard::refresh() {
    QPalette hue = palette();
    hue.setColor(QPalette::WindowText, coloursFor(*this).of(m_side));
    m_who->setPalette(hue);
    if (!m_session.pair()) return;
    auto const& document = sheetOf(*m_session.pair(), m_side).document;
    auto const& variant = m_side == DocumentSide::Reference ? m_session.pair()->request.referenceVariant : m_session.pair()->request.candidateVariant;
    QString const part = partName(document);
    QString const maker = shownText(document.maker);
    QString detail = documentDetail(document);
    if (!variant.empty()) detail += tr(" · variant %1").arg(shownText(variant));
    m_part->setText(part);
    m_maker->setText(maker);
    m_detail->setText(detail);
    setToolTip(tr("%1\nSHA-256 %2").arg(shownText(document.file), toQt(document.sha256)).toHtmlEscaped());
    setAccessibleName(QStringLiteral("%1: %2, %3, %4").arg(sideWord(m_side), part, maker, detail));
}

SeverityCount::SeverityCount(model::Severity severity, QWidget* parent) : QAbstractButton(parent), m_severity(severity) {
    setCheckable(severity != model::Severity::Hazard);
    setFocusPolicy(Qt::StrongFocus);
    connect(this, &QAbstractButton::toggled, this, &SeverityCount::describe);
    describe();
}

void SeverityCount::setCount(int count) {
    m_count = count;
    describe();
    update();
}

void SeverityCount::describe() {
    auto const counted = QStringLiteral("%1 %2").arg(m_count).arg(severityWord(m_severity));
    QString state;
    if (!isCheckable()) state = tr("always listed; goes to the first");
    else state = isChecked() ? tr("listed; press to hide") : tr("hidden; press to list");
    setAccessibleName(tr("%1, %2").arg(counted, state));
    setToolTip(tr("%1: %2\n%3").arg(counted, severityMeaning(m_severity), state));
}

QSize SeverityCount::sizeHint() const {
    QFontMetrics const metrics(fontOf(TextSize::Small));
    int const width = std::max(metrics.horizontalAdvance(severityWord(m_severity)), metrics.horizontalAdvance(tr("hidden"))) + metrics.height() / 2;
    return {width, metrics.height() * 9 / 2};
}

void SeverityCount::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    auto const& colours = coloursFor(*this);
    QFontMetrics const metrics(fontOf(TextSize::Small));
    bool const listed = !isCheckable() || isChecked();
    QColor const ink = listed ? colours.ink : colours.soft;
    int const line = metrics.height();
    QRectF const shape((width() - line * 2.2) / 2, 1, line * 2.2, line * 2.2);
    drawSeverityMark(painter, shape, m_severity, ink);
    painter.setPen(ink);
    painter.setFont(fontOf(TextSize::Small, QFont::Bold));
    double const drop = m_severity == model::Severity::Hazard ? line * 0.28 : 0;  // the triangle's middle lies low
    painter.drawText(shape.translated(0, drop), Qt::AlignCenter, QString::number(m_count));
    painter.setFont(fontOf(TextSize::Small));
    QRect const word(0, static_cast<int>(shape.bottom()) + 2, width(), line);
    painter.drawText(word, Qt::AlignCenter, severityWord(m_severity));
    if (!listed) {
        painter.drawText(word.translated(0, line), Qt::AlignCenter, tr("hidden"));
    }
    if (hasFocus()) {
        painter.setPen(QPen(colours.ink, 1, Qt::DotLine));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(rect().adjusted(0, 0, -1, -1));
    }
}

TitleStrip::TitleStrip(Session& session, FindingsModel& findings, FindingsFilter& filter, QWidget* parent)
    : QWidget(parent), m_session(session), m_findings(findings), m_filter(filter), m_verdict(new CutLabel), m_sentence(new QLabel), m_coverage(new QLabel) {
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(10, 8, 10, 6);
    layout->setSpacing(6);
    layout->addWidget(new DocumentCard(session, DocumentSide::Reference), 10);
    layout->addWidget(new DocumentCard(session, DocumentSide::Candidate), 10);
    layout->addSpacing(6);

    auto* middle = new QVBoxLayout;
    middle->setSpacing(2);
    m_verdict->setFont(fontOf(TextSize::Huge, QFont::Bold));
    m_verdict->setSmallest(fontOf(TextSize::Normal, QFont::Bold));
    for (auto* label : {m_sentence, m_coverage}) {
        label->setFont(fontOf(TextSize::Small));
        label->setTextFormat(Qt::PlainText);
        label->setWordWrap(true);
        label->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
        label->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    }
    makeSoft(*m_coverage);
    middle->addWidget(m_verdict);
    middle->addWidget(m_sentence);
    middle->addWidget(m_coverage);
    middle->addStretch(1);
    layout->addLayout(middle, 22);

    for (auto const severity : report::kSeverities) {
        auto* count = new SeverityCount(severity);
        count->setChecked(filter.isShown(severity));
        if (severity == model::Severity::Hazard) connect(count, &QAbstractButton::clicked, this, &TitleStrip::firstHazardWanted);
        else connect(count, &QAbstractButton::toggled, this, [this, severity](bool shown) { m_filter.setShown(severity, shown); });
        m_counts.push_back(count);
        layout->addWidget(count, 0, Qt::AlignTop);
    }
    connect(&session, &Session::pairChanged, this, &TitleStrip::refresh);
    connect(&filter, &FindingsFilter::filterChanged, this, &TitleStrip::refreshCounts);
    refresh();
}

void TitleStrip::refresh() {
    refreshCounts();
    if (!m_session.pair()) return;
    auto const& comparison = m_session.pair()->comparison;
    QString verdict = toQt(report::texts::levelText(comparison.verdict.level));
    if (comparison.verdict.incomplete) verdict += tr(" (incomplete)");
    m_verdict->setText(verdict);
    QString const detail = shownText(report::verdictDetail(comparison.verdict));
    m_sentence->setText(detail);
    QStringList reasons;
    for (auto const& reason : comparison.verdict.incompleteReasons) reasons += shownText(reason);
    m_sentence->setToolTip((QStringList{detail} + reasons).join(QLatin1Char('\n')).toHtmlEscaped());
    m_coverage->setText(shownText(report::coverageLine(comparison)));
    setAccessibleName(tr("Verdict: %1. %2").arg(verdict, detail));
}

void TitleStrip::refreshCounts() {
    for (auto* count : m_counts) {
        count->setCount(m_findings.count(count->severity()));
        if (count->isCheckable()) count->setChecked(m_filter.isShown(count->severity()));
    }
}

}  // namespace standin::ui

// Tested by tests/ui/views/findings_page_test.cpp.
#include "ui/views/meaning_panel.h"

#include <algorithm>

#include <QFormLayout>
#include <QHBoxLayout>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include "ui/models/qt_text.h"
#include "ui/models/words.h"

namespace standin::ui {

namespace {

constexpr int kTypingPauseMs = 500;

QString paragraph(QString const& text) { return QStringLiteral("<p>%1</p>").arg(text.toHtmlEscaped()); }

}  // namespace

MeaningPanel::MeaningPanel(Session& session, FindingsModel const& findings, QWidget* parent)
    : Panel(parent), m_session(session), m_findings(findings), m_text(new QTextBrowser), m_disposition(new QComboBox), m_remark(new QPlainTextEdit) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(12, 8, 12, 10);
    auto* title = new QLabel(tr("What it means"));
    title->setFont(fontOf(TextSize::Normal, QFont::Bold));
    m_text->setFrameShape(QFrame::NoFrame);
    m_text->setOpenLinks(false);
    m_text->setAccessibleName(tr("What the finding means"));
    m_text->document()->setDocumentMargin(0);
    layout->addWidget(title);
    layout->addWidget(m_text, 1);

    auto* row = new QHBoxLayout;
    auto* label = new QLabel(tr("&Decision"));
    label->setFont(fontOf(TextSize::Normal, QFont::Bold));
    label->setBuddy(m_disposition);
    for (auto const disposition : kDispositions) m_disposition->addItem(dispositionWord(disposition));
    m_disposition->setAccessibleName(tr("Decision on the finding"));
    row->addWidget(label);
    row->addWidget(m_disposition, 1);
    layout->addLayout(row);
    m_remark->setPlaceholderText(tr("Remark: why, under which condition, what to test"));
    m_remark->setAccessibleName(tr("Remark on the decision"));
    m_remark->setTabChangesFocus(true);
    m_remark->setFixedHeight(QFontMetrics(m_remark->font()).lineSpacing() * 3 + 12);
    layout->addWidget(m_remark);

    m_typing.setSingleShot(true);
    m_typing.setInterval(kTypingPauseMs);
    connect(&m_typing, &QTimer::timeout, this, &MeaningPanel::decide);
    connect(m_disposition, &QComboBox::activated, this, &MeaningPanel::decide);
    connect(m_remark, &QPlainTextEdit::textChanged, this, [this] { m_typing.start(); });
    connect(&session, &Session::currentFindingChanged, this, &MeaningPanel::showFinding);
    connect(&session.decisions(), &Decisions::changed, this, &MeaningPanel::showDecision);
    showFinding();
}

void MeaningPanel::focusDecision() { m_disposition->setFocus(Qt::ShortcutFocusReason); }

void MeaningPanel::keepRemark() {
    if (m_typing.isActive()) decide();
}

void MeaningPanel::showFinding() {
    keepRemark();
    auto const* finding = m_session.currentFinding();
    m_finding = finding == nullptr ? std::string{} : finding->id;
    m_disposition->setEnabled(finding != nullptr);
    m_remark->setEnabled(finding != nullptr);
    showDecision();
    if (finding == nullptr) {
        m_text->clear();
        return;
    }
    QString html = QStringLiteral("<p><b>%1</b></p>").arg(shownText(finding->title).toHtmlEscaped());
    if (!finding->explanation.empty()) html += paragraph(shownText(finding->explanation));
    auto const& cautions = m_session.pair()->comparison.cautions;
    auto const caution = std::find_if(cautions.begin(), cautions.end(), [&](auto const& c) { return c.id == finding->caution; });
    if (caution != cautions.end()) html += QStringLiteral("<p><b>%1</b> %2</p>").arg(tr("Caution:"), shownText(caution->text).toHtmlEscaped());
    auto const consequences = m_findings.consequencesOf(finding->id);
    for (auto const& consequence : consequences) html += paragraph(tr("Follows from it: %1").arg(consequence));
    html += paragraph(tr("%1, %2, %3; finding %4").arg(severityWord(finding->severity), kindWord(finding->kind), relationWord(finding->relation), toQt(finding->id)));
    m_text->setHtml(html);
}

void MeaningPanel::showDecision() {
    auto const decision = m_session.decisions().decisionOn(m_finding);
    m_disposition->setCurrentIndex(static_cast<int>(decision.disposition));
    auto const remark = toQt(decision.remark);
    if (m_remark->toPlainText() == remark) return;
    QSignalBlocker const quiet(m_remark);
    m_remark->setPlainText(remark);
}

void MeaningPanel::decide() {
    m_typing.stop();
    if (m_finding.empty()) return;
    Decision const decision{static_cast<Disposition>(m_disposition->currentIndex()), fromQt(m_remark->toPlainText())};
    int const row = m_findings.rowOf(m_finding);
    auto const title = row < 0 ? QString{} : m_findings.rows()[static_cast<std::size_t>(row)].title;
    m_session.decisions().decide(m_finding, decision, tr("decision on “%1”").arg(title));
}

}  // namespace standin::ui

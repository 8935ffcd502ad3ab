// Tested by tests/ui/views/main_window_test.cpp.
#include "ui/views/start_page.h"

#include <QHBoxLayout>
#include <QScrollArea>
#include <QVBoxLayout>

#include "ui/models/qt_text.h"
#include "ui/models/words.h"

namespace standin::ui {

StartPage::StartPage(Session& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_form(new PairForm), m_recent(new QListWidget), m_recentTitle(new QLabel(tr("Opened before"))), m_reading(new QWidget), m_progress(new QProgressBar) {
    auto* column = new QWidget;
    column->setMaximumWidth(QFontMetrics(font()).averageCharWidth() * 110);
    auto* inner = new QVBoxLayout(column);
    inner->setContentsMargins(20, 16, 20, 16);
    inner->setSpacing(12);
    auto* title = new QLabel(tr("Which two parts?"));
    title->setFont(fontOf(TextSize::Huge, QFont::Bold));
    auto* line = new QLabel(tr("Standin reads both datasheets and shows every difference in numbers and wording with its place on the page. It covers printed documents only: it is not a test and not an approval."));
    line->setWordWrap(true);
    makeSoft(*line);
    m_recentTitle->setFont(fontOf(TextSize::Normal, QFont::Bold));
    m_recent->setAccessibleName(tr("Pairs that were opened before"));
    m_recent->setFrameShape(QFrame::NoFrame);
    auto* reading = new QHBoxLayout(m_reading);
    reading->setContentsMargins(0, 0, 0, 0);
    auto* cancel = new QPushButton(tr("Cancel"));
    m_progress->setFormat(tr("reading, page %v of %m"));
    m_progress->setAccessibleName(tr("Progress of reading"));
    reading->addWidget(m_progress, 1);
    reading->addWidget(cancel);
    inner->addWidget(title);
    inner->addWidget(line);
    inner->addWidget(m_form);
    inner->addWidget(m_reading);
    inner->addWidget(m_recentTitle);
    inner->addWidget(m_recent);
    inner->addStretch(1);
    auto* centred = new QWidget;
    auto* row = new QHBoxLayout(centred);
    row->addStretch(1);
    row->addWidget(column, 20);
    row->addStretch(1);
    auto* scroll = new QScrollArea;
    scroll->setWidget(centred);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(scroll);
    connect(m_form, &PairForm::accepted, this, [this] { m_session.open(m_form->request()); });
    connect(cancel, &QPushButton::clicked, &session, &Session::cancel);
    connect(m_recent, &QListWidget::itemActivated, this, [this](QListWidgetItem* item) {
        auto const chosen = static_cast<std::size_t>(m_recent->row(item));
        if (chosen < m_pairs.size()) Q_EMIT recentChosen(m_pairs[chosen]);
    });
    connect(&session, &Session::stateChanged, this, &StartPage::showState);
    connect(&session, &Session::progressed, this, [this](int done, int total) {
        m_progress->setMaximum(total);
        m_progress->setValue(done);
    });
    setRecent({});
    showState();
}

void StartPage::setRecent(std::vector<RecentPair> const& pairs) {
    m_pairs = pairs;
    m_recent->clear();
    for (auto const& pair : pairs) {
        auto* item = new QListWidgetItem(pair.name());
        item->setToolTip(QStringLiteral("%1\n%2").arg(pair.reference, pair.candidate).toHtmlEscaped());
        m_recent->addItem(item);
    }
    m_recent->setFixedHeight(m_recent->sizeHintForRow(0) * std::max(1, m_recent->count()) + 8);
    m_recent->setVisible(!pairs.empty());
    m_recentTitle->setVisible(!pairs.empty());
}

void StartPage::showState() {
    bool const reading = m_session.state() == Session::State::Reading;
    m_reading->setVisible(reading);
    m_form->setEnabled(!reading);
    if (reading) {
        m_progress->setMaximum(0);
        m_form->setTrouble({});
    }
    if (m_session.state() != Session::State::Failed) return;
    m_form->setRequest(m_session.request(), m_session.pair());
    m_form->setTrouble(errorText(*m_session.error()));
    if (m_session.error()->kind == model::ErrorKind::Encrypted) m_form->focusPassword();
}

}  // namespace standin::ui

// The layout and what the session tells; menus and commands are in
// main_window_commands.cpp.
//
// Tested by tests/ui/views/main_window_test.cpp.
#include "ui/views/main_window.h"

#include <QAction>
#include <QCloseEvent>
#include <QFileInfo>
#include <QLabel>
#include <QPushButton>
#include <QSettings>
#include <QSplitter>
#include <QStatusBar>
#include <QVBoxLayout>

#include "ui/models/qt_text.h"
#include "ui/models/words.h"
#include "ui/views/cell_page.h"
#include "ui/views/correcting.h"
#include "ui/views/coverage_page.h"
#include "ui/views/findings_page.h"
#include "ui/views/notice_bar.h"
#include "ui/views/pages_view.h"
#include "ui/views/parameters_page.h"
#include "ui/views/pins_page.h"
#include "ui/views/record_page.h"
#include "ui/views/section_ladder.h"
#include "ui/views/start_page.h"
#include "ui/views/title_strip.h"
#include "ui/views/wording_page.h"

namespace standin::ui {

namespace {

QString const kReadingNotice = QStringLiteral("reading");
QString const kDiskNotice = QStringLiteral("disk");
QString const kDecisionsNotice = QStringLiteral("decisions");

}  // namespace

MainWindow::MainWindow(Session& session, QWidget* parent)
    : QMainWindow(parent),
      m_session(session),
      m_findings(session),
      m_filter(m_findings),
      m_sections(session, m_findings),
      m_parameters(session),
      m_wording(session),
      m_pins(session),
      m_cell(session),
      m_coverage(session),
      m_record(session),
      m_recordLines(m_record),
      m_stack(new QStackedWidget),
      m_pages(new QTabWidget),
      m_notices(new NoticeBar),
      m_startPage(new StartPage(session)),
      m_findingsPage(new FindingsPage(session, m_findings, m_filter)),
      m_pagesView(new PagesView(session)),
      m_reading(new QWidget),
      m_progress(new QProgressBar) {
    setWindowTitle(tr("Standin desk"));
    setAcceptDrops(true);
    setMinimumSize(640, 480);
    auto* desk = new QWidget;
    auto* layout = new QVBoxLayout(desk);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(4);
    auto* title = new TitleStrip(session, m_findings, m_filter);
    layout->addWidget(title);
    m_splitter = new QSplitter;
    m_splitter->setChildrenCollapsible(false);
    m_ladder = new SectionLadder(m_sections, m_filter);
    m_splitter->addWidget(m_ladder);
    makePages();
    m_splitter->addWidget(m_pages);
    m_splitter->setStretchFactor(0, 0);
    m_splitter->setStretchFactor(1, 1);
    auto* body = new QWidget;
    auto* bodyLayout = new QVBoxLayout(body);
    bodyLayout->setContentsMargins(10, 0, 10, 8);
    bodyLayout->addWidget(m_splitter);
    layout->addWidget(body, 1);
    m_stack->addWidget(m_startPage);
    m_stack->addWidget(desk);
    auto* all = new QWidget;
    auto* allLayout = new QVBoxLayout(all);
    allLayout->setContentsMargins(0, 4, 0, 0);
    allLayout->setSpacing(2);
    allLayout->addWidget(m_notices);
    allLayout->addWidget(m_stack, 1);
    setCentralWidget(all);

    auto* reading = new QHBoxLayout(m_reading);
    reading->setContentsMargins(0, 0, 0, 0);
    auto* cancel = new QPushButton(tr("Cancel"));
    m_progress->setFormat(tr("reading, page %v of %m"));
    m_progress->setFixedWidth(QFontMetrics(font()).averageCharWidth() * 34);
    reading->addWidget(m_progress);
    reading->addWidget(cancel);
    statusBar()->addPermanentWidget(m_reading);
    statusBar()->setSizeGripEnabled(false);
    connect(cancel, &QPushButton::clicked, &session, &Session::cancel);
    connect(title, &TitleStrip::firstHazardWanted, this, [this] {
        m_pages->setCurrentWidget(m_findingsPage);
        m_findingsPage->goToFirst();
    });
    makeMenus();
    listenToSession();
    restoreLayout();
    if (m_session.pair()) takePair();
    else showState();
}

MainWindow::~MainWindow() {
    m_findingsPage->meaning()->keepRemark();
    m_export.waitForFinished();
}

void MainWindow::makePages() {
    m_pages->setDocumentMode(true);
    auto* parameters = new ParametersPage(m_session, m_parameters);
    auto* wording = new WordingPage(m_session, m_wording);
    auto* pins = new PinsPage(m_session, m_pins);
    auto* cell = new CellPage(m_session, m_cell);
    auto* coverage = new CoveragePage(m_session, m_coverage);
    m_pages->addTab(m_findingsPage, tr("Findings"));
    m_pages->addTab(parameters, tr("All parameters"));
    m_pages->addTab(wording, tr("Wording"));
    m_pages->addTab(pins, tr("Pins"));
    m_pages->addTab(cell, tr("Cell"));
    m_pages->addTab(m_pagesView, tr("Pages"));
    m_pages->addTab(coverage, tr("Not compared"));
    m_pages->addTab(new RecordPage(m_session, m_record, m_recordLines), tr("Record"));
    connect(m_findingsPage, &FindingsPage::placeWanted, this, &MainWindow::showPlaces);
    connect(wording, &WordingPage::placeWanted, this, &MainWindow::showPlaces);
    connectCorrecting(m_session, *m_pagesView, *parameters, *m_notices);
    auto const toPages = [this] { m_pages->setCurrentWidget(m_pagesView); };
    connect(parameters, &ParametersPage::placeWanted, this, toPages);
    connect(pins, &PinsPage::placeWanted, this, toPages);
    connect(coverage, &CoveragePage::placeWanted, this, toPages);
    connect(cell, &CellPage::findingWanted, this, [this] { m_pages->setCurrentWidget(m_findingsPage); });
}

void MainWindow::listenToSession() {
    connect(&m_session, &Session::stateChanged, this, &MainWindow::showState);
    connect(&m_session, &Session::pairChanged, this, &MainWindow::takePair);
    connect(&m_session, &Session::progressed, this, [this](int done, int total) {
        m_progress->setMaximum(total);
        m_progress->setValue(done);
    });
    connect(&m_session, &Session::fileChangedOnDisk, this, [this](DocumentSide side) {
        auto const path = toQt(pathOf(m_session.pair()->request, side));
        auto const text = QFileInfo::exists(path) ? tr("The file of the %1 changed on disk; what is shown is as it was read: %2") : tr("The file of the %1 is gone from disk; what is shown is as it was read: %2");
        m_notices->show(kDiskNotice, text.arg(sideWord(side), path), tr("Read again"), [this] { m_session.readAgain(); });
    });
    connect(&m_session.decisions(), &Decisions::troubled, this, [this](QString const& message) { m_notices->show(kDecisionsNotice, message); });
    connect(&m_export, &QFutureWatcherBase::finished, this, [this] {
        auto const written = m_export.result();
        auto const text = written.result ? tr("Written: %1").arg(written.path) : tr("Not written. %1").arg(errorText(written.result.error()));
        m_notices->show(QStringLiteral("export"), text);
    });
}

void MainWindow::showState() {
    auto const state = m_session.state();
    bool const shown = m_session.pair() != nullptr;
    m_stack->setCurrentIndex(shown ? 1 : 0);
    statusBar()->setVisible(state == Session::State::Reading && shown);
    if (state == Session::State::Reading) m_progress->setMaximum(0);
    for (auto* action : m_needPair) action->setEnabled(shown);
    // On the start page the form tells what is wrong; over a pair that is shown a notice does.
    if (state == Session::State::Failed && shown) {
        m_notices->show(kReadingNotice, tr("Not read. %1").arg(errorText(*m_session.error())), tr("Open pair…"), [this] { openDialog(); });
    } else {
        m_notices->hide(kReadingNotice);
    }
}

void MainWindow::takePair() {
    auto const& pair = *m_session.pair();
    setWindowTitle(tr("%1 – %2 – Standin desk").arg(partName(pair.reference.document), partName(pair.candidate.document)));
    m_notices->hide(kDiskNotice);
    QSettings settings;
    auto const absolute = [](std::string const& path) { return path.empty() ? QString{} : QFileInfo(toQt(path)).absoluteFilePath(); };
    rememberPair(settings, {absolute(pair.request.reference), absolute(pair.request.candidate), absolute(pair.request.cell), absolute(pair.request.circuit)});
    refreshRecent();
    showState();
    if (focusWidget() == nullptr || !m_pages->isAncestorOf(focusWidget())) m_findingsPage->list()->setFocus();
}

void MainWindow::closeEvent(QCloseEvent* event) {
    QSettings settings;
    settings.setValue(QStringLiteral("window/geometry"), saveGeometry());
    settings.setValue(QStringLiteral("window/sections"), m_splitter->saveState());
    settings.setValue(QStringLiteral("window/findings"), m_findingsPage->splitter()->saveState());
    settings.setValue(QStringLiteral("window/evidence"), m_findingsPage->lowerSplitter()->saveState());
    m_findingsPage->meaning()->keepRemark();
    m_session.cancel();
    event->accept();
}

void MainWindow::restoreLayout() {
    QSettings const settings;
    int const letter = QFontMetrics(font()).averageCharWidth();
    m_splitter->setSizes({letter * 26, letter * 140});
    m_findingsPage->splitter()->setSizes({letter * 54, letter * 40});
    m_findingsPage->lowerSplitter()->setSizes({letter * 80, letter * 46});
    if (!restoreGeometry(settings.value(QStringLiteral("window/geometry")).toByteArray())) resize(letter * 190, letter * 118);
    m_splitter->restoreState(settings.value(QStringLiteral("window/sections")).toByteArray());
    m_findingsPage->splitter()->restoreState(settings.value(QStringLiteral("window/findings")).toByteArray());
    m_findingsPage->lowerSplitter()->restoreState(settings.value(QStringLiteral("window/evidence")).toByteArray());
}

}  // namespace standin::ui

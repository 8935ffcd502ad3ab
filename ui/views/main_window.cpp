// Tested by tests/ui/views/main_window_test.cpp.
#include "ui/views/main_window.h"

#include <QLabel>
#include <QSplitter>
#include <QVBoxLayout>

#include "ui/models/words.h"
#include "ui/views/findings_page.h"
#include "ui/views/pages_view.h"
#include "ui/views/section_ladder.h"
#include "ui/views/title_strip.h"

namespace standin::ui {

MainWindow::MainWindow(Session& session, QWidget* parent)
    : QMainWindow(parent),
      m_session(session),
      m_findings(session),
      m_filter(m_findings),
      m_sections(session, m_findings),
      m_stack(new QStackedWidget),
      m_pages(new QTabWidget),
      m_findingsPage(new FindingsPage(session, m_findings, m_filter)),
      m_pagesView(new PagesView(session)) {
    setWindowTitle(tr("Standin desk"));
    auto* desk = new QWidget;
    auto* layout = new QVBoxLayout(desk);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    auto* title = new TitleStrip(session, m_findings, m_filter);
    layout->addWidget(title);
    auto* splitter = new QSplitter;
    splitter->setContentsMargins(10, 0, 10, 10);
    splitter->addWidget(new SectionLadder(m_sections, m_filter));
    m_pages->setDocumentMode(true);
    m_pages->addTab(m_findingsPage, tr("Findings"));
    m_pages->addTab(m_pagesView, tr("Pages"));
    splitter->addWidget(m_pages);
    splitter->setStretchFactor(0, 0);
    splitter->setStretchFactor(1, 1);
    splitter->setSizes({230, 900});
    layout->addWidget(splitter, 1);
    m_stack->addWidget(new QLabel);
    m_stack->addWidget(desk);
    setCentralWidget(m_stack);
    connect(title, &TitleStrip::firstHazardWanted, m_findingsPage, &FindingsPage::goToFirst);
    connect(&session, &Session::stateChanged, this, &MainWindow::showState);
    showState();
}

MainWindow::~MainWindow() = default;

void MainWindow::showState() { m_stack->setCurrentIndex(m_session.pair() ? 1 : 0); }

}  // namespace standin::ui

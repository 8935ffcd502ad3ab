// Menus, keys and what they do.
//
// Tested by tests/ui/views/main_window_test.cpp.
#include <QAction>
#include <QApplication>
#include <QDialog>
#include <QDragEnterEvent>
#include <QDropEvent>
#include <QFileInfo>
#include <QMenuBar>
#include <QMimeData>
#include <QPrintDialog>
#include <QPrinter>
#include <QSettings>
#include <QVBoxLayout>
#include <QtConcurrent>

#include "ui/models/qt_text.h"
#include "ui/models/words.h"
#include "ui/views/evidence_view.h"
#include "ui/views/findings_page.h"
#include "ui/views/help.h"
#include "ui/views/main_window.h"
#include "ui/views/notice_bar.h"
#include "ui/views/pages_view.h"
#include "ui/views/pair_form.h"
#include "ui/views/printing.h"
#include "ui/views/report_file.h"
#include "ui/views/section_ladder.h"
#include "ui/views/settings.h"
#include "ui/views/start_page.h"

namespace standin::ui {

namespace {

QString const kExportNotice = QStringLiteral("export");

QStringList droppedFiles(QMimeData const* mime) {
    QStringList files;
    for (auto const& url : mime->urls()) {
        if (url.isLocalFile()) files += url.toLocalFile();
    }
    return files;
}

}  // namespace

void MainWindow::makeMenus() {
    enum class Needs { Nothing, Pair };
    auto const add = [this](QMenu* menu, QString const& text, QKeySequence const& keys, Needs needs, auto&& action) {
        auto* entry = menu->addAction(text);
        entry->setShortcut(keys);
        connect(entry, &QAction::triggered, this, action);
        if (needs == Needs::Pair) m_needPair.push_back(entry);
        return entry;
    };
    auto* file = menuBar()->addMenu(tr("&File"));
    add(file, tr("&Open pair…"), QKeySequence::Open, Needs::Nothing, [this] { openDialog(); });
    m_recent = file->addMenu(tr("Opened &before"));
    add(file, tr("E&xchange reference and candidate"), QKeySequence(tr("Ctrl+Shift+X")), Needs::Pair, [this] { m_session.exchange(); });
    add(file, tr("Read a&gain"), QKeySequence::Refresh, Needs::Pair, [this] { m_session.readAgain(); });
    add(file, tr("&Cancel reading"), QKeySequence(Qt::Key_Escape), Needs::Nothing, [this] { m_session.cancel(); });
    file->addSeparator();
    add(file, tr("&Export…"), QKeySequence(tr("Ctrl+E")), Needs::Pair, [this] { chooseExport(); });
    add(file, tr("&Print…"), QKeySequence::Print, Needs::Pair, [this] { print(); });
    file->addSeparator();
    add(file, tr("&Settings…"), QKeySequence::Preferences, Needs::Nothing, [this] { changeSettings(); })->setMenuRole(QAction::PreferencesRole);
    add(file, tr("&Quit"), QKeySequence(tr("Ctrl+Q")), Needs::Nothing, [this] { close(); })->setMenuRole(QAction::QuitRole);

    auto* edit = menuBar()->addMenu(tr("&Edit"));
    auto* undo = m_session.decisions().undoStack().createUndoAction(this, tr("&Undo"));
    undo->setShortcut(QKeySequence::Undo);
    auto* redo = m_session.decisions().undoStack().createRedoAction(this, tr("&Redo"));
    redo->setShortcuts({QKeySequence(tr("Ctrl+Shift+Z")), QKeySequence(tr("Ctrl+Y"))});
    edit->addAction(undo);
    edit->addAction(redo);
    edit->addSeparator();
    add(edit, tr("&Decide on the finding"), QKeySequence(tr("Ctrl+D")), Needs::Pair, [this] {
        m_pages->setCurrentWidget(m_findingsPage);
        m_findingsPage->meaning()->focusDecision();
    });
    add(edit, tr("&Find in findings"), QKeySequence(tr("Ctrl+F")), Needs::Pair, [this] {
        if (m_pages->currentWidget() != m_pagesView) m_pages->setCurrentWidget(m_findingsPage);
        if (m_pages->currentWidget() == m_findingsPage) m_findingsPage->focusText();
        else m_pagesView->focusSearch();
    });
    add(edit, tr("Show &all findings"), QKeySequence(tr("Ctrl+Shift+F")), Needs::Pair, [this] { m_filter.showEverything(); });

    auto* view = menuBar()->addMenu(tr("&View"));
    for (int page = 0; page < m_pages->count(); ++page) {
        add(view, m_pages->tabText(page), QKeySequence(QStringLiteral("Alt+%1").arg(page + 1)), Needs::Pair, [this, page] {
            m_pages->setCurrentIndex(page);
            m_pages->currentWidget()->setFocus();
            if (page == 0) m_findingsPage->list()->setFocus();
        });
    }
    view->addSeparator();
    add(view, tr("&Next finding"), QKeySequence(tr("Ctrl+Down")), Needs::Pair, [this] { step(1); });
    add(view, tr("&Previous finding"), QKeySequence(tr("Ctrl+Up")), Needs::Pair, [this] { step(-1); });
    add(view, tr("Show its p&laces on the pages"), QKeySequence(tr("Ctrl+Return")), Needs::Pair, [this] { showPlaces(); });
    add(view, tr("Go &round the parts"), QKeySequence(Qt::Key_F6), Needs::Pair, [this] { goRound(); });
    view->addSeparator();
    auto* whole = add(view, tr("&Whole screen"), QKeySequence(Qt::Key_F11), Needs::Nothing, [this] { setWindowState(windowState() ^ Qt::WindowFullScreen); });
    whole->setCheckable(true);

    auto* help = menuBar()->addMenu(tr("&Help"));
    add(help, tr("&Help"), QKeySequence::HelpContents, Needs::Nothing, [this] { showHelp(this); });
    add(help, tr("&About the desk"), {}, Needs::Nothing, [this] { showAbout(this); })->setMenuRole(QAction::AboutRole);
    connect(m_startPage, &StartPage::recentChosen, this, &MainWindow::openRecent);
    refreshRecent();
}

void MainWindow::refreshRecent() {
    QSettings settings;
    auto const pairs = recentPairs(settings);
    m_startPage->setRecent(pairs);
    m_recent->clear();
    for (auto const& pair : pairs) {
        auto* entry = m_recent->addAction(pair.name().replace(QLatin1Char('&'), QLatin1String("&&")));
        entry->setToolTip(pair.reference);
        connect(entry, &QAction::triggered, this, [this, pair] { openRecent(pair); });
    }
    m_recent->setEnabled(!pairs.empty());
    if (pairs.empty()) return;
    m_recent->addSeparator();
    connect(m_recent->addAction(tr("&Forget these")), &QAction::triggered, this, [this] {
        QSettings store;
        forgetPairs(store);
        refreshRecent();
    });
}

void MainWindow::openRecent(RecentPair const& pair) {
    PairRequest request;
    request.reference = fromQt(pair.reference);
    request.candidate = fromQt(pair.candidate);
    request.cell = fromQt(pair.cell);
    request.circuit = fromQt(pair.circuit);
    m_session.open(std::move(request));
}

void MainWindow::openDialog(QStringList const& files) {
    if (!m_session.pair()) {  // the form stands on the start page already
        m_startPage->form()->addFiles(files);
        return;
    }
    QDialog dialog(this);
    dialog.setWindowTitle(tr("Open pair"));
    auto* form = new PairForm;
    form->setRequest(m_session.request(), m_session.pair());
    form->addFiles(files);
    if (m_session.error()) form->setTrouble(errorText(*m_session.error()));
    auto* layout = new QVBoxLayout(&dialog);
    layout->addWidget(form);
    connect(form, &PairForm::accepted, &dialog, &QDialog::accept);
    dialog.resize(QFontMetrics(font()).averageCharWidth() * 90, dialog.sizeHint().height());
    if (dialog.exec() == QDialog::Accepted) m_session.open(form->request());
}

void MainWindow::showPlaces() {
    auto const* finding = m_session.currentFinding();
    if (finding == nullptr) return;
    m_pages->setCurrentWidget(m_pagesView);
    for (auto const side : {DocumentSide::Reference, DocumentSide::Candidate}) {
        if (auto const& place = sideOf(*finding, side); place && place->page > 0) m_session.choosePlace(side, place->page, place->box);
    }
}

void MainWindow::step(int by) {
    if (by > 0) m_findingsPage->goToNext();
    else m_findingsPage->goToPrevious();
    if (m_pages->currentWidget() == m_pagesView) showPlaces();
    else m_pages->setCurrentWidget(m_findingsPage);
}

// The parts of the findings page, one after the other.
void MainWindow::goRound() {
    m_pages->setCurrentWidget(m_findingsPage);
    auto* focused = QApplication::focusWidget();
    if (focused == m_ladder->list()) {
        m_findingsPage->list()->setFocus();
    } else if (focused == m_findingsPage->list()) {
        m_findingsPage->lowerSplitter()->widget(0)->setFocus();
        if (QApplication::focusWidget() == focused) m_findingsPage->meaning()->focusDecision();
    } else if (m_findingsPage->lowerSplitter()->widget(0)->isAncestorOf(focused) || focused == m_findingsPage->lowerSplitter()->widget(0)) {
        m_findingsPage->meaning()->focusDecision();
    } else {
        m_ladder->list()->setFocus();
    }
}

void MainWindow::chooseExport() {
    auto const& documents = *m_session.pair();
    auto const names = QStringLiteral("%1-%2").arg(partName(documents.reference.document), partName(documents.candidate.document));
    if (auto const file = askReportFile(this, tr("Export a report"), names, kReportForms)) exportTo(file->path, file->form);
}

void MainWindow::exportTo(QString const& path, ReportForm form) {
    if (m_export.isRunning()) {
        m_notices->show(kExportNotice, tr("An export is under way; wait until it is done."));
        return;
    }
    m_notices->show(kExportNotice, tr("Writing %1 …").arg(path));
    m_export.setFuture(QtConcurrent::run([pair = m_session.pair(), path, form]() -> Written {
        auto bytes = reportBytes(*pair, form);
        if (!bytes) return {path, tl::unexpected(bytes.error())};
        return {path, writeWhole(path, std::move(*bytes))};
    }));
}

void MainWindow::print() {
    QPrinter printer(QPrinter::HighResolution);
    QPrintDialog dialog(&printer, this);
    if (dialog.exec() != QDialog::Accepted) return;
    QApplication::setOverrideCursor(Qt::WaitCursor);
    auto bytes = reportBytes(*m_session.pair(), ReportForm::Pdf);
    auto const printed = bytes ? printPages(std::move(*bytes), printer) : tl::unexpected(bytes.error());
    QApplication::restoreOverrideCursor();
    if (!printed) m_notices->show(QStringLiteral("print"), tr("Not printed. %1").arg(errorText(printed.error())));
}

void MainWindow::changeSettings() {
    SettingsDialog dialog(loadSettings(), QFileInfo(m_session.decisions().filePath()).path(), this);
    if (dialog.exec() != QDialog::Accepted) return;
    saveSettings(dialog.settings());
    applySettings(dialog.settings());
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
    auto const files = droppedFiles(event->mimeData()).size();
    if (files == 1 || files == 2) event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent* event) {
    auto const files = droppedFiles(event->mimeData());
    event->acceptProposedAction();
    if (files.size() == 2) {
        PairRequest request;
        request.reference = fromQt(files[0]);
        request.candidate = fromQt(files[1]);
        m_session.open(std::move(request));
    } else if (files.size() == 1) {
        // Not within the drop: a dialog would hold up the program that the file came from.
        QMetaObject::invokeMethod(this, [this, files] { openDialog(files); }, Qt::QueuedConnection);
    }
}

}  // namespace standin::ui

// The window of the desk: title strip, notices, section ladder and the pages.
// Commands of menus and keys go to the Session or to a page; nothing is decided
// here.
#pragma once

#include <QFutureWatcher>
#include <QMainWindow>
#include <QProgressBar>
#include <QStackedWidget>
#include <QTabWidget>

#include "ui/models/cell_model.h"
#include "ui/models/coverage_model.h"
#include "ui/models/exports.h"
#include "ui/models/findings_filter.h"
#include "ui/models/parameters_model.h"
#include "ui/models/pins_model.h"
#include "ui/models/recent_pairs.h"
#include "ui/models/record_model.h"
#include "ui/models/sections_model.h"
#include "ui/models/session.h"
#include "ui/models/wording_model.h"

class QPushButton;
class QSplitter;

namespace standin::ui {

class EvidenceView;
class FindingsPage;
class NoticeBar;
class PagesView;
class SectionLadder;
class StartPage;
class TitleStrip;

class MainWindow : public QMainWindow {
    Q_OBJECT

public:
    // `session` outlives the window.
    explicit MainWindow(Session& session, QWidget* parent = nullptr);
    ~MainWindow() override;

    [[nodiscard]] FindingsPage* findingsPage() const { return m_findingsPage; }
    [[nodiscard]] PagesView* pagesView() const { return m_pagesView; }
    [[nodiscard]] QTabWidget* pages() const { return m_pages; }
    [[nodiscard]] NoticeBar* notices() const { return m_notices; }
    [[nodiscard]] StartPage* startPage() const { return m_startPage; }

    // Goes to the pages of the documents, at both places of the current finding.
    void showPlaces();
    // Writes a report in the background; tells the outcome as a notice.
    void exportTo(QString const& path, ReportForm form);

protected:
    void closeEvent(QCloseEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

private:
    void makePages();
    void makeMenus();
    void listenToSession();
    void showState();
    void takePair();
    void openDialog(QStringList const& files = {});
    void openRecent(RecentPair const& pair);
    void refreshRecent();
    void chooseExport();
    void print();
    void goRound();
    void changeSettings();
    void step(int by);
    void restoreLayout();

    struct Written {
        QString path;
        model::Result<void> result;
    };

    Session& m_session;
    FindingsModel m_findings;
    FindingsFilter m_filter;
    SectionsModel m_sections;
    ParametersModel m_parameters;
    WordingModel m_wording;
    PinsModel m_pins;
    CellModel m_cell;
    CoverageModel m_coverage;
    RecordBook m_record;
    RecordModel m_recordLines;
    QStackedWidget* m_stack;
    QTabWidget* m_pages;
    NoticeBar* m_notices;
    StartPage* m_startPage;
    SectionLadder* m_ladder = nullptr;
    QSplitter* m_splitter = nullptr;
    FindingsPage* m_findingsPage;
    PagesView* m_pagesView;
    QMenu* m_recent = nullptr;
    QWidget* m_reading;
    QProgressBar* m_progress;
    QFutureWatcher<Written> m_export;
    std::vector<QAction*> m_needPair;  // can be used once a pair is shown
};

}  // namespace standin::ui

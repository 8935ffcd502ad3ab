// The window of the desk: title strip, notices, section ladder and the pages.
// Commands of menus and keys go to the Session or to a page; nothing is decided
// here.
#pragma once

#include <QMainWindow>
#include <QStackedWidget>
#include <QTabWidget>

#include "ui/models/findings_filter.h"
#include "ui/models/sections_model.h"
#include "ui/models/session.h"

namespace standin::ui {

class FindingsPage;
class NoticeBar;
class PagesView;
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

private:
    void showState();

    Session& m_session;
    FindingsModel m_findings;
    FindingsFilter m_filter;
    SectionsModel m_sections;
    QStackedWidget* m_stack;
    QTabWidget* m_pages;
    FindingsPage* m_findingsPage;
    PagesView* m_pagesView;
};

}  // namespace standin::ui

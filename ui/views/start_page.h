// What stands in the window while no pair is shown: the form, the pairs that were
// opened last, the progress of reading.
#pragma once

#include <QListWidget>
#include <QProgressBar>

#include "ui/models/recent_pairs.h"
#include "ui/views/pair_form.h"

namespace standin::ui {

class StartPage : public QWidget {
    Q_OBJECT

public:
    explicit StartPage(Session& session, QWidget* parent = nullptr);

    [[nodiscard]] PairForm* form() const { return m_form; }
    void setRecent(std::vector<RecentPair> const& pairs);

Q_SIGNALS:
    void recentChosen(standin::ui::RecentPair pair);

private:
    void showState();

    Session& m_session;
    PairForm* m_form;
    QListWidget* m_recent;
    QLabel* m_recentTitle;
    QWidget* m_reading;
    QProgressBar* m_progress;
    std::vector<RecentPair> m_pairs;
};

}  // namespace standin::ui

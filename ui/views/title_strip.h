// The top of the desk: both documents, the verdict, what was covered, and the
// counts by severity, which show and hide that severity in the list.
#pragma once

#include <array>
#include <vector>

#include <QAbstractButton>
#include <QWidget>

#include "ui/models/findings_filter.h"
#include "ui/views/panel.h"

namespace standin::ui {

// A document in short: part, maker, revision, pages; its variant can be chosen.
class DocumentCard : public Panel {
    Q_OBJECT

public:
    DocumentCard(Session& session, DocumentSide side, QWidget* parent = nullptr);

private:
    void refresh();

    Session& m_session;
    DocumentSide m_side;
    QLabel* m_who;
    CutLabel* m_part;
    QLabel* m_maker;
    QLabel* m_detail;
};

// The shape of a severity with its count in it and its word below. Pressed: its
// findings are listed. Hazard cannot be hidden; pressing it goes to the first one.
class SeverityCount : public QAbstractButton {
    Q_OBJECT

public:
    explicit SeverityCount(model::Severity severity, QWidget* parent = nullptr);
    void setCount(int count);
    [[nodiscard]] model::Severity severity() const { return m_severity; }
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void describe();

    model::Severity m_severity;
    int m_count = 0;
};

class TitleStrip : public QWidget {
    Q_OBJECT

public:
    TitleStrip(Session& session, FindingsModel& findings, FindingsFilter& filter, QWidget* parent = nullptr);

Q_SIGNALS:
    void firstHazardWanted();

private:
    void refresh();
    void refreshCounts();

    Session& m_session;
    FindingsModel& m_findings;
    FindingsFilter& m_filter;
    CutLabel* m_verdict;
    QLabel* m_sentence;
    QLabel* m_coverage;
    std::vector<SeverityCount*> m_counts;
};

}  // namespace standin::ui

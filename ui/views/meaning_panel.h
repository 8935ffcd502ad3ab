// What the chosen finding means, and what the person decides on it.
#pragma once

#include <QComboBox>
#include <QPlainTextEdit>
#include <QTextBrowser>
#include <QTimer>

#include "ui/models/findings_model.h"
#include "ui/views/panel.h"

namespace standin::ui {

class MeaningPanel : public Panel {
    Q_OBJECT

public:
    // Shows and decides the session's current finding.
    MeaningPanel(Session& session, FindingsModel const& findings, QWidget* parent = nullptr);

    // For the keyboard: where a decision is made.
    void focusDecision();
    // Keeps a remark that is still being typed.
    void keepRemark();

private:
    void showFinding();
    void showDecision();
    void decide();

    Session& m_session;
    FindingsModel const& m_findings;
    std::string m_finding;  // what is shown
    QTextBrowser* m_text;
    QComboBox* m_disposition;
    QPlainTextEdit* m_remark;
    QTimer m_typing;  // a remark is kept when the typing pauses
};

}  // namespace standin::ui

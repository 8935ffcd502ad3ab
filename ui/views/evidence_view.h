// Where a finding stands: both places with their surroundings, one above the
// other, the place framed.
#pragma once

#include <QWidget>

#include "ui/models/session.h"

class QLabel;

namespace standin::ui {

class EvidenceView : public QWidget {
    Q_OBJECT

public:
    // Shows the session's current finding; `session` outlives the view.
    explicit EvidenceView(Session& session, QWidget* parent = nullptr);

private:
    void refresh();

    Session& m_session;
    QLabel* m_reference = nullptr;
    QLabel* m_candidate = nullptr;
};

}  // namespace standin::ui

// The pages of both documents side by side, with the places of findings framed.
#pragma once

#include <QWidget>

#include "ui/models/session.h"

namespace standin::ui {

class PagesView : public QWidget {
    Q_OBJECT

public:
    // Follows Session::placeChosen and currentFindingChanged; `session` outlives
    // the view.
    explicit PagesView(Session& session, QWidget* parent = nullptr);

private:
    Session& m_session;
};

}  // namespace standin::ui

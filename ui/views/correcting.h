// From a row on a page or in the table of parameters to its correction.
#pragma once

#include "ui/models/session.h"

namespace standin::ui {

class NoticeBar;
class PagesView;
class ParametersPage;

// Asks for the correction of a row in a dialog over `parent` and makes it.
void askForCorrection(Session& session, RowCorrection start, QWidget* parent);

// Wires the ways to a correction: the pages' button, F2 and the menu on a row of
// the parameters; and what is told of it. All outlive the connections.
void connectCorrecting(Session& session, PagesView& pages, ParametersPage& parameters, NoticeBar& notices);

}  // namespace standin::ui

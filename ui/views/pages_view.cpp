// Tested by tests/ui/views/pages_view_test.cpp.
#include "ui/views/pages_view.h"

namespace standin::ui {

PagesView::PagesView(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {}

}  // namespace standin::ui

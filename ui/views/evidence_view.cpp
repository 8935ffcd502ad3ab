// Tested by tests/ui/views/evidence_view_test.cpp.
#include "ui/views/evidence_view.h"

#include <QLabel>
#include <QVBoxLayout>

#include "ui/models/qt_text.h"
#include "ui/models/words.h"

namespace standin::ui {

EvidenceView::EvidenceView(Session& session, QWidget* parent) : QWidget(parent), m_session(session), m_reference(new QLabel), m_candidate(new QLabel) {
    auto* layout = new QVBoxLayout(this);
    for (auto* label : {m_reference, m_candidate}) {
        label->setWordWrap(true);
        label->setTextFormat(Qt::PlainText);
        label->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
        layout->addWidget(label);
    }
    layout->addStretch();
    connect(&m_session, &Session::currentFindingChanged, this, &EvidenceView::refresh);
    refresh();
}

void EvidenceView::refresh() {
    auto const* finding = m_session.currentFinding();
    auto const show = [finding](QLabel* label, DocumentSide side) {
        auto const* place = finding != nullptr && sideOf(*finding, side) ? &*sideOf(*finding, side) : nullptr;
        label->setText(place == nullptr ? QString{} : tr("%1, page %2: %3").arg(sideWord(side)).arg(place->page).arg(shownText(place->text)));
    };
    show(m_reference, DocumentSide::Reference);
    show(m_candidate, DocumentSide::Candidate);
}

}  // namespace standin::ui

// Tested by tests/ui/views/table_pages_test.cpp.
#include "ui/views/pins_page.h"

#include <QHBoxLayout>
#include <QSignalBlocker>
#include <QSplitter>
#include <QVBoxLayout>

#include "ui/models/words.h"
#include "ui/views/package_drawing.h"

namespace standin::ui {

PinsPage::PinsPage(Session& session, PinsModel& pins, QWidget* parent)
    : QWidget(parent),
      m_session(session),
      m_pins(pins),
      m_referencePackage(new QComboBox),
      m_candidatePackage(new QComboBox),
      m_page(new TablePage(pins,
                           {.reference = PinsModel::ReferenceName,
                            .candidate = PinsModel::CandidateName,
                            .strip = -1,
                            .stretched = {PinsModel::ReferenceFunction, PinsModel::CandidateFunction},
                            .widths = {5, 12, 20, 12, 20, 9},
                            .optional = {}},
                           tr("Pins of both packages, by number"))) {
    auto* drawings = new Panel;
    auto* drawn = new QVBoxLayout(drawings);
    auto* choice = new QHBoxLayout;
    auto const add = [&](QComboBox* box, DocumentSide side) {
        auto* label = new QLabel(side == DocumentSide::Reference ? tr("Package of the &reference") : tr("Package of the &candidate"));
        label->setBuddy(box);
        box->setAccessibleName(label->text().remove(QLatin1Char('&')));
        choice->addWidget(label);
        choice->addWidget(box, 1);
        connect(box, &QComboBox::activated, this, [this, side](int package) { m_pins.choosePackage(side, package); });
    };
    add(m_referencePackage, DocumentSide::Reference);
    add(m_candidatePackage, DocumentSide::Candidate);
    auto* both = new QHBoxLayout;
    both->addWidget(new PackageDrawing(pins, DocumentSide::Reference), 1);
    both->addWidget(new PackageDrawing(pins, DocumentSide::Candidate), 1);
    auto* note = new QLabel(tr("Seen from above, not to scale; ≠ marks a pin that differs. Check the drawing of the package on its page."));
    note->setFont(fontOf(TextSize::Small));
    note->setWordWrap(true);
    makeSoft(*note);
    drawn->addLayout(choice);
    drawn->addLayout(both, 1);
    drawn->addWidget(note);
    auto* splitter = new QSplitter(Qt::Vertical);
    splitter->addWidget(drawings);
    splitter->addWidget(m_page);
    splitter->setStretchFactor(0, 1);
    splitter->setStretchFactor(1, 1);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(splitter);
    connect(&pins, &QAbstractItemModel::modelReset, this, &PinsPage::refreshPackages);
    connect(m_page, &TablePage::opened, this, &PinsPage::open);
    refreshPackages();
}

void PinsPage::refreshPackages() {
    auto const fill = [this](QComboBox* box, DocumentSide side) {
        QSignalBlocker const quiet(box);
        box->clear();
        box->addItems(m_pins.packages(side));
        box->setCurrentIndex(m_pins.chosenPackage(side));
        box->setEnabled(box->count() > 1);
    };
    fill(m_referencePackage, DocumentSide::Reference);
    fill(m_candidatePackage, DocumentSide::Candidate);
}

void PinsPage::open(int row) {
    auto const& pin = m_pins.rows()[static_cast<std::size_t>(row)];
    if (!pin.finding.empty()) m_session.setCurrentFinding(pin.finding);
    if (pin.referencePage > 0) m_session.choosePlace(DocumentSide::Reference, pin.referencePage, pin.referenceBox);
    if (pin.candidatePage > 0) m_session.choosePlace(DocumentSide::Candidate, pin.candidatePage, pin.candidateBox);
    Q_EMIT placeWanted();
}

}  // namespace standin::ui

// Tested by tests/ui/views/table_pages_test.cpp.
#include "ui/views/parameters_page.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QVBoxLayout>

namespace standin::ui {

ParametersPage::ParametersPage(Session& session, ParametersModel& parameters, QWidget* parent)
    : QWidget(parent),
      m_session(session),
      m_filter(parameters),
      m_page(new TablePage(m_filter,
                           {.reference = ParametersModel::Reference,
                            .candidate = ParametersModel::Candidate,
                            .strip = ParametersModel::Strip,
                            .stretched = {ParametersModel::Name, ParametersModel::Condition},
                            .widths = {18, 16, 27, 27, 22, 14, 8},
                            .optional = {ParametersModel::Confidence}},
                           tr("All parameters, paired"))),
      m_counts(new QLabel) {
    auto* text = new QLineEdit;
    text->setPlaceholderText(tr("Find in parameters"));
    text->setClearButtonEnabled(true);
    text->setAccessibleName(tr("List parameters that hold these words"));
    auto* differing = new QCheckBox(tr("&only those that differ"));
    m_counts->setFont(fontOf(TextSize::Small));
    makeSoft(*m_counts);
    m_page->bar()->addWidget(text, 1);
    m_page->bar()->addWidget(differing);
    m_page->bar()->addStretch(1);
    m_page->bar()->addWidget(m_counts);
    m_page->setStrips([this](int row) { return m_filter.rowAt(row).strip; });
    m_page->table()->setSortingEnabled(true);
    m_page->table()->horizontalHeader()->setSortIndicatorClearable(true);
    m_page->table()->sortByColumn(-1, Qt::AscendingOrder);  // document order
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_page);
    connect(text, &QLineEdit::textChanged, &m_filter, &ParametersFilter::setText);
    connect(differing, &QCheckBox::toggled, &m_filter, &ParametersFilter::setOnlyDiffering);
    connect(&m_filter, &ParametersFilter::filterChanged, this, &ParametersPage::showCounts);
    connect(m_page, &TablePage::opened, this, &ParametersPage::open);
    showCounts();
}

// Rows without a finding have places all the same.
void ParametersPage::open(int row) {
    auto const& parameter = m_filter.rowAt(row);
    if (!parameter.finding.empty()) m_session.setCurrentFinding(parameter.finding);
    if (parameter.referencePage > 0) m_session.choosePlace(DocumentSide::Reference, parameter.referencePage, parameter.referenceBox);
    if (parameter.candidatePage > 0) m_session.choosePlace(DocumentSide::Candidate, parameter.candidatePage, parameter.candidateBox);
    Q_EMIT placeWanted();
}

void ParametersPage::showCounts() {
    QString text = tr("%n pair(s)", nullptr, m_filter.rowCount());
    if (m_filter.hiddenCount() > 0) text += tr(", %n hidden", nullptr, m_filter.hiddenCount());
    m_counts->setText(text);
}

}  // namespace standin::ui

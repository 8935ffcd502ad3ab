// Tested by tests/ui/views/findings_page_test.cpp.
#include "ui/views/findings_page.h"

#include <algorithm>
#include <set>

#include <QCheckBox>
#include <QHBoxLayout>
#include <QItemSelectionModel>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include "ui/models/qt_text.h"
#include "ui/models/words.h"
#include "ui/views/evidence_view.h"
#include "ui/views/finding_delegate.h"

namespace standin::ui {

namespace {

constexpr int kAnyKind = -1;

}  // namespace

FindingsPage::FindingsPage(Session& session, FindingsModel& findings, FindingsFilter& filter, QWidget* parent)
    : QWidget(parent),
      m_session(session),
      m_filter(filter),
      m_list(new QListView),
      m_text(new QLineEdit),
      m_kind(new QComboBox),
      m_order(new QComboBox),
      m_undecided(new QCheckBox(tr("&undecided only"))),
      m_hidden(new CutLabel),
      m_showAll(new QPushButton(tr("Sho&w all"))),
      m_none(new QLabel),
      m_meaning(new MeaningPanel(session, findings)),
      m_splitter(new QSplitter(Qt::Vertical)),
      m_lower(new QSplitter(Qt::Horizontal)) {
    auto* upper = new Panel;
    auto* upperLayout = new QVBoxLayout(upper);
    upperLayout->setContentsMargins(2, 2, 2, 2);
    upperLayout->setSpacing(0);
    m_list->setModel(&filter);
    m_list->setItemDelegate(new FindingDelegate(filter, m_list));
    m_list->setFrameShape(QFrame::NoFrame);
    m_list->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setResizeMode(QListView::Adjust);
    m_list->setAccessibleName(tr("Findings, gravest first"));
    m_none->setAlignment(Qt::AlignCenter);
    m_none->setWordWrap(true);
    m_none->hide();
    upperLayout->addWidget(makeFilterBar());
    upperLayout->addWidget(m_list, 1);
    upperLayout->addWidget(m_none, 1);

    m_lower->addWidget(new EvidenceView(session));
    m_lower->addWidget(m_meaning);
    m_lower->setStretchFactor(0, 7);
    m_lower->setStretchFactor(1, 4);
    m_lower->setChildrenCollapsible(false);
    m_splitter->addWidget(upper);
    m_splitter->addWidget(m_lower);
    m_splitter->setStretchFactor(0, 5);
    m_splitter->setStretchFactor(1, 4);
    m_splitter->setChildrenCollapsible(false);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_splitter);

    connect(m_list->selectionModel(), &QItemSelectionModel::currentChanged, this, [this](QModelIndex const& current) {
        if (current.isValid()) m_session.setCurrentFinding(m_filter.rowAt(current.row()).id);
    });
    connect(m_list, &QAbstractItemView::activated, this, &FindingsPage::placeWanted);
    connect(&session, &Session::currentFindingChanged, this, &FindingsPage::showCurrent);
    connect(&filter, &FindingsFilter::filterChanged, this, &FindingsPage::showHidden);
    connect(&findings, &QAbstractItemModel::modelReset, this, [this] {
        refreshKinds();
        showCurrent();
    });
    refreshKinds();
    showHidden();
}

QWidget* FindingsPage::makeFilterBar() {
    auto* bar = new QWidget;
    auto* layout = new QHBoxLayout(bar);
    layout->setContentsMargins(8, 6, 8, 4);
    m_text->setPlaceholderText(tr("Find in findings"));
    m_text->setClearButtonEnabled(true);
    m_text->setAccessibleName(tr("List findings that hold these words"));
    m_text->setMinimumWidth(QFontMetrics(m_text->font()).averageCharWidth() * 14);
    m_kind->setAccessibleName(tr("List findings of this kind"));
    m_order->setAccessibleName(tr("Order of the findings"));
    m_order->addItem(tr("by severity"), static_cast<int>(FindingOrder::Severity));
    m_order->addItem(tr("by section"), static_cast<int>(FindingOrder::Section));
    m_order->addItem(tr("by kind"), static_cast<int>(FindingOrder::Kind));
    m_order->addItem(tr("by name"), static_cast<int>(FindingOrder::Name));
    m_order->addItem(tr("by decision"), static_cast<int>(FindingOrder::Decision));
    m_hidden->setFont(fontOf(TextSize::Small));
    makeSoft(*m_hidden);
    m_hidden->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    layout->addWidget(m_text, 2);
    layout->addWidget(m_kind);
    layout->addWidget(m_order);
    layout->addWidget(m_undecided);
    layout->addWidget(m_hidden, 3);
    layout->addWidget(m_showAll);
    connect(m_text, &QLineEdit::textChanged, &m_filter, &FindingsFilter::setText);
    connect(m_kind, &QComboBox::activated, this, [this] {
        int const kind = m_kind->currentData().toInt();
        m_filter.setKind(kind == kAnyKind ? std::nullopt : std::optional(static_cast<model::FindingKind>(kind)));
    });
    connect(m_order, &QComboBox::activated, this, [this] { m_filter.setOrder(static_cast<FindingOrder>(m_order->currentData().toInt())); });
    connect(m_undecided, &QCheckBox::toggled, &m_filter, &FindingsFilter::setOnlyUndecided);
    connect(m_showAll, &QPushButton::clicked, this, [this] {
        m_text->clear();
        m_kind->setCurrentIndex(0);
        m_undecided->setChecked(false);
        m_filter.showEverything();
    });
    return bar;
}

void FindingsPage::refreshKinds() {
    QSignalBlocker const quiet(m_kind);
    auto const chosen = m_kind->currentData();
    std::set<model::FindingKind> present;
    for (int row = 0; row < m_filter.sourceModel()->rowCount(); ++row) {
        present.insert(m_filter.sourceModel()->index(row, 0).data(FindingsModel::RowRole).value<FindingRow const*>()->kind);
    }
    m_kind->clear();
    m_kind->addItem(tr("every kind"), kAnyKind);
    for (auto const kind : present) m_kind->addItem(kindWord(kind), static_cast<int>(kind));
    m_kind->setCurrentIndex(std::max(0, m_kind->findData(chosen)));
    int const kind = m_kind->currentData().toInt();
    m_filter.setKind(kind == kAnyKind ? std::nullopt : std::optional(static_cast<model::FindingKind>(kind)));
}

void FindingsPage::showCurrent() {
    auto const* finding = m_session.currentFinding();
    int const row = finding == nullptr ? -1 : m_filter.proxyRowOf(finding->id);
    if (row < 0) return;
    auto const index = m_filter.index(row, 0);
    if (m_list->currentIndex() != index) m_list->setCurrentIndex(index);
    if (row == 0) m_list->scrollToTop();
    else m_list->scrollTo(index);
}

void FindingsPage::showHidden() {
    auto const hidden = m_filter.hiddenText();
    m_hidden->setText(hidden);
    m_showAll->setVisible(!hidden.isEmpty());
    bool const none = m_filter.rowCount() == 0;
    m_none->setText(m_filter.hiddenCount() > 0 ? tr("No finding is listed: all are hidden by the filter.") : tr("No difference found in what was compared."));
    m_none->setVisible(none && m_session.pair());
    m_list->setVisible(!m_none->isVisibleTo(this));
    showCurrent();
}

void FindingsPage::step(int by) {
    int const rows = m_filter.rowCount();
    if (rows == 0) return;
    auto const current = m_list->currentIndex();
    int const row = current.isValid() ? std::clamp(current.row() + by, 0, rows - 1) : 0;
    m_list->setCurrentIndex(m_filter.index(row, 0));
}

void FindingsPage::goToNext() { step(1); }
void FindingsPage::goToPrevious() { step(-1); }

void FindingsPage::goToFirst() {
    if (m_filter.rowCount() == 0) return;
    m_list->setCurrentIndex(m_filter.index(0, 0));
    m_list->scrollToTop();
    m_list->setFocus();
}

void FindingsPage::focusText() {
    m_text->setFocus(Qt::ShortcutFocusReason);
    m_text->selectAll();
}

}  // namespace standin::ui

// Tested by tests/ui/views/pages_view_test.cpp.
#include "ui/views/pages_view.h"

#include <algorithm>
#include <cmath>

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QShortcut>
#include <QSignalBlocker>
#include <QSpinBox>
#include <QSplitter>
#include <QToolButton>
#include <QVBoxLayout>

#include "ui/models/qt_text.h"
#include "ui/models/words.h"
#include "ui/views/page_canvas.h"
#include "ui/views/panel.h"

namespace standin::ui {

namespace {

constexpr int kNarrow = 88;  // average letters; below, one document stands above the other
constexpr double kZoomStep = 1.2;

}  // namespace

PagesView::PagesView(Session& session, QWidget* parent)
    : QWidget(parent),
      m_session(session),
      m_splitter(new QSplitter),
      m_search(new QLineEdit),
      m_hitCount(new QLabel),
      m_previous(new QToolButton),
      m_next(new QToolButton),
      m_zoom(new QLabel),
      m_text(new CutLabel),
      m_correct(new QPushButton) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 4, 0, 0);
    layout->setSpacing(4);
    for (auto const side : kSides) m_splitter->addWidget(makeSide(side));
    m_splitter->setChildrenCollapsible(false);
    layout->addWidget(makeBar());
    layout->addWidget(m_splitter, 1);
    auto* read = new QHBoxLayout;
    read->setContentsMargins(8, 0, 0, 0);
    read->addWidget(m_text, 1);
    read->addWidget(m_correct);
    layout->addLayout(read);
    m_text->setAccessibleName(tr("What was read here"));

    connect(m_correct, &QPushButton::clicked, this, &PagesView::correct);
    connect(&session, &Session::pairChanged, this, &PagesView::takePair);
    connect(&session, &Session::currentFindingChanged, this, &PagesView::showFinding);
    connect(&session, &Session::placeChosen, this, [this](DocumentSide side, int page, model::Rect const& box) {
        m_wanted[indexOf(side)] = Spot{side, page, box};
        m_pointed[indexOf(side)] = Spot{side, page, box};
        showSpots();
    });
    connect(&session.drawer(), &PageDrawer::opened, this, [this](DocumentSide side) {
        takePages(side);
        showSpots();
    });
    if (session.pair()) takePair();
    showRead();
}

PagesView::~PagesView() = default;

QWidget* PagesView::makeBar() {
    auto* bar = new QWidget;
    auto* layout = new QHBoxLayout(bar);
    layout->setContentsMargins(8, 0, 0, 0);
    auto const button = [&](QString const& text, QString const& name, auto&& action) {
        auto* made = new QToolButton;
        made->setText(text);
        made->setToolTip(name);
        made->setAccessibleName(name);
        layout->addWidget(made);
        connect(made, &QToolButton::clicked, this, [this, action] {
            for (auto* canvas : m_canvases) action(*canvas);
        });
    };
    button(tr("Width"), tr("Fit the width of the pages (W)"), [](PageCanvas& canvas) { canvas.setFit(PageCanvas::Fit::Width); });
    button(tr("Whole page"), tr("Fit whole pages (G)"), [](PageCanvas& canvas) { canvas.setFit(PageCanvas::Fit::Page); });
    button(QStringLiteral("−"), tr("Smaller (-)"), [](PageCanvas& canvas) { canvas.zoomBy(1 / kZoomStep); });
    m_zoom->setMinimumWidth(fontMetrics().horizontalAdvance(QStringLiteral("1000 %")));
    m_zoom->setAlignment(Qt::AlignCenter);
    layout->addWidget(m_zoom);
    button(QStringLiteral("+"), tr("Larger (+)"), [](PageCanvas& canvas) { canvas.zoomBy(kZoomStep); });
    button(tr("Turn"), tr("Turn the pages by a quarter (R)"), [](PageCanvas& canvas) { canvas.turn(); });
    connect(m_canvases[0], &PageCanvas::zoomChanged, this, [this](double zoom) { m_zoom->setText(tr("%1 %").arg(static_cast<int>(std::lround(zoom * 100)))); });

    m_search->setPlaceholderText(tr("Find on the pages"));
    m_search->setClearButtonEnabled(true);
    m_search->setAccessibleName(tr("Find in what was read of both documents"));
    m_hitCount->setMinimumWidth(fontMetrics().horizontalAdvance(QStringLiteral("000 / 000")));
    m_previous->setText(QStringLiteral("‹"));
    m_previous->setToolTip(tr("Found before (Shift+Enter)"));
    m_previous->setAccessibleName(m_previous->toolTip());
    m_next->setText(QStringLiteral("›"));
    m_next->setToolTip(tr("Found next (Enter)"));
    m_next->setAccessibleName(m_next->toolTip());
    layout->addStretch(1);
    layout->addWidget(m_search, 2);
    layout->addWidget(m_previous);
    layout->addWidget(m_next);
    layout->addWidget(m_hitCount);
    connect(m_search, &QLineEdit::textChanged, this, &PagesView::search);
    connect(m_search, &QLineEdit::returnPressed, this, [this] { stepHit(1); });
    auto* back = new QShortcut(QKeySequence(Qt::SHIFT | Qt::Key_Return), m_search, nullptr, nullptr, Qt::WidgetShortcut);
    connect(back, &QShortcut::activated, this, [this] { stepHit(-1); });
    connect(m_previous, &QToolButton::clicked, this, [this] { stepHit(-1); });
    connect(m_next, &QToolButton::clicked, this, [this] { stepHit(1); });
    return bar;
}

QWidget* PagesView::makeSide(DocumentSide side) {
    auto const at = indexOf(side);
    auto* panel = new Panel;
    panel->setSide(side);
    auto* canvas = new PageCanvas(m_session.drawer(), side);
    auto* page = new QSpinBox;
    page->setAccessibleName(tr("Page of the %1").arg(sideWord(side)));
    page->setKeyboardTracking(false);
    page->setRange(0, 0);
    m_canvases[at] = canvas;
    m_pageBoxes[at] = page;
    m_pageCounts[at] = new QLabel;
    m_names[at] = new CutLabel;
    m_names[at]->setFont(fontOf(TextSize::Normal, QFont::DemiBold));
    auto* head = new QHBoxLayout;
    head->setContentsMargins(12, 4, 8, 0);
    head->addWidget(m_names[at], 1);
    head->addWidget(new QLabel(tr("page")));
    head->addWidget(page);
    head->addWidget(m_pageCounts[at]);
    auto* layout = new QVBoxLayout(panel);
    layout->setContentsMargins(6, 1, 1, 1);
    layout->setSpacing(4);
    layout->addLayout(head);
    layout->addWidget(canvas, 1);
    connect(canvas, &PageCanvas::pageChanged, this, [page](int now) {
        QSignalBlocker const quiet(page);
        page->setValue(now);
    });
    connect(page, &QSpinBox::valueChanged, canvas, &PageCanvas::goToPage);
    connect(canvas, &PageCanvas::clicked, this, [this, side](int on, model::Point point) { click(side, on, point); });
    return panel;
}

void PagesView::takePair() {
    auto const& pair = *m_session.pair();
    m_read.reset();
    for (auto const side : kSides) {
        auto const at = indexOf(side);
        m_wanted[at].reset();
        m_pointed[at].reset();
        m_canvases[at]->setPlaces(ReadPlaces(sheetOf(pair, side)));
        m_names[at]->setText(tr("%1  %2").arg(sideWord(side), partName(sheetOf(pair, side).document)));
        takePages(side);
    }
    search(m_search->text());
    showFinding();
    showRead();
}

void PagesView::takePages(DocumentSide side) {
    int const pages = static_cast<int>(m_session.drawer().pageBoxes(side).size());
    QSignalBlocker const quiet(m_pageBoxes[indexOf(side)]);
    m_pageBoxes[indexOf(side)]->setRange(std::min(pages, 1), pages);
    m_pageBoxes[indexOf(side)]->setValue(canvas(side)->currentPage());
    m_pageCounts[indexOf(side)]->setText(tr("of %1").arg(pages));
}

void PagesView::showFinding() {
    auto const* finding = m_session.currentFinding();
    for (auto const side : kSides) {
        m_pointed[indexOf(side)].reset();
        if (finding == nullptr) continue;
        if (auto const& place = sideOf(*finding, side); place && place->page > 0) m_wanted[indexOf(side)] = Spot{side, place->page, place->box};
    }
    showSpots();
}

// Not before there are pages, and a window that shows them.
void PagesView::showSpots() {
    refreshMarks();
    if (!isVisible()) return;
    for (auto const side : kSides) {
        auto& wanted = m_wanted[indexOf(side)];
        if (!wanted || m_session.drawer().pageBoxes(side).empty()) continue;
        canvas(side)->showPlace(wanted->page, wanted->box);
        wanted.reset();
    }
}

void PagesView::refreshMarks() {
    std::array<std::vector<PageMark>, 2> marks;
    if (m_session.pair()) {
        auto const* current = m_session.currentFinding();
        for (auto const& finding : m_session.pair()->comparison.findings) {
            auto const style = &finding == current ? MarkStyle::Current : finding.severity == model::Severity::Editorial ? MarkStyle::Editorial : MarkStyle::Finding;
            for (auto const side : kSides) {
                if (auto const& place = sideOf(finding, side); place && place->page > 0 && !place->box.empty()) marks[indexOf(side)].push_back({place->page, place->box, style});
            }
        }
    }
    for (auto const side : kSides) {
        auto& list = marks[indexOf(side)];
        // The one that is looked at over all others.
        std::stable_partition(list.begin(), list.end(), [](auto const& mark) { return mark.style != MarkStyle::Current; });
        if (auto const& spot = m_pointed[indexOf(side)]) list.push_back({spot->page, spot->box, MarkStyle::Pointed});
        canvas(side)->setMarks(std::move(list));
    }
}

std::string PagesView::partnerOf(DocumentSide side, std::string const& parameter) const {
    for (auto const& pair : m_session.pair()->comparison.pairs) {
        if ((side == DocumentSide::Reference ? pair.reference : pair.candidate) == parameter) return side == DocumentSide::Reference ? pair.candidate : pair.reference;
    }
    return {};
}

void PagesView::click(DocumentSide side, int page, model::Point clicked) {
    if (!m_session.pair()) return;
    if (auto const* finding = findingAt(*m_session.pair(), side, page, clicked)) m_session.setCurrentFinding(finding->id);
    auto const found = canvas(side)->places().at(page, clicked);
    if (found.empty()) {
        m_read.reset();
        for (auto& spot : m_pointed) spot.reset();
        refreshMarks();
        showRead();
    } else {
        point(side, found.front());
    }
}

void PagesView::point(DocumentSide side, std::size_t index) {
    auto const& place = canvas(side)->places()[index];
    m_read = Read{side, index};
    for (auto& spot : m_pointed) spot.reset();
    m_pointed[indexOf(side)] = Spot{side, place.page, place.box};
    if (place.kind == PlaceKind::Parameter) {
        auto const other = otherSide(side);
        auto const& places = canvas(other)->places();
        if (auto const partner = partnerOf(side, place.id); !partner.empty()) {
            if (int const at = places.parameterPlace(partner); at >= 0) {
                auto const& beside = places[static_cast<std::size_t>(at)];
                m_pointed[indexOf(other)] = m_wanted[indexOf(other)] = Spot{other, beside.page, beside.box};
            }
        }
    }
    showSpots();
    showRead();
}

QString PagesView::readText() const { return m_text->text(); }

void PagesView::showRead() {
    if (!m_read) {
        m_text->setText(m_session.pair() ? tr("Click on a place to see what was read there; drag to choose text.") : QString{});
        m_correct->setVisible(false);
        return;
    }
    auto const& place = canvas(m_read->side)->places()[m_read->place];
    m_text->setText(tr("%1, page %2, %3: %4").arg(sideWord(m_read->side)).arg(place.page).arg(placeWord(place.kind), place.text));
    bool const row = place.kind == PlaceKind::Parameter;
    m_correct->setText(row ? tr("&Correct this row…") : tr("&Put a row in…"));
    m_correct->setVisible(place.kind != PlaceKind::Figure && place.kind != PlaceKind::RunningText);
}

void PagesView::correct() {
    if (!m_read) return;
    auto const& place = canvas(m_read->side)->places()[m_read->place];
    Q_EMIT correctionWanted(m_read->side, place.kind == PlaceKind::Parameter ? place.id : std::string{}, place.page, place.box);
}

void PagesView::search(QString const& text) {
    m_hits.clear();
    m_hit = 0;
    for (auto const side : kSides) {
        for (auto const index : canvas(side)->places().find(text)) m_hits.push_back({side, index});
    }
    m_previous->setEnabled(!m_hits.empty());
    m_next->setEnabled(!m_hits.empty());
    showHit();
}

void PagesView::stepHit(int by) {
    if (m_hits.empty()) return;
    auto const count = static_cast<int>(m_hits.size());
    m_hit = static_cast<std::size_t>((static_cast<int>(m_hit) + by + count) % count);
    showHit();
}

// What is found is chosen too, so that Ctrl+C copies it.
void PagesView::showHit() {
    bool const wanted = !m_search->text().trimmed().isEmpty();
    m_hitCount->setText(!wanted ? QString{} : m_hits.empty() ? tr("not found") : tr("%1 / %2").arg(m_hit + 1).arg(m_hits.size()));
    for (auto* canvas : m_canvases) canvas->choose({});
    if (m_hits.empty()) return;
    auto const hit = m_hits[m_hit];
    auto const& place = canvas(hit.side)->places()[hit.place];
    canvas(hit.side)->choose({hit.place});
    m_wanted[indexOf(hit.side)] = Spot{hit.side, place.page, place.box};
    point(hit.side, hit.place);
}

void PagesView::focusSearch() {
    m_search->setFocus(Qt::ShortcutFocusReason);
    m_search->selectAll();
}

void PagesView::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    auto const orientation = width() < fontMetrics().averageCharWidth() * kNarrow ? Qt::Vertical : Qt::Horizontal;
    if (orientation != m_splitter->orientation()) m_splitter->setOrientation(orientation);
}

void PagesView::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    // After the layout gave the canvases their size.
    QMetaObject::invokeMethod(this, &PagesView::showSpots, Qt::QueuedConnection);
}

}  // namespace standin::ui

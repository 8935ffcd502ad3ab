// Tested by tests/ui/models/read_places_test.cpp.
#include "ui/models/read_places.h"

#include <algorithm>
#include <tuple>

#include <QCoreApplication>

#include "ui/models/qt_text.h"

namespace standin::ui {

namespace {

constexpr model::Points kMiss = 2;  // how far beside a place a point still means it

// Cells of one printed line.
bool sameLine(model::Rect const& a, model::Rect const& b) { return model::overlap(a.y0, a.y1, b.y0, b.y1) > 0.5F * std::min(a.height(), b.height()); }

QString simplified(QString const& text) { return text.simplified().toCaseFolded(); }

}  // namespace

ReadPlaces::ReadPlaces(model::Datasheet const& sheet) {
    auto const add = [this](PlaceKind kind, int page, model::Rect const& box, std::string const& text, std::string const& id, bool first = true) {
        if (page < 1 || box.empty() || (text.empty() && kind != PlaceKind::Figure)) return;
        m_places.push_back({kind, page, box, shownText(text), id, first});
    };
    for (auto const& parameter : sheet.parameters) add(PlaceKind::Parameter, parameter.page, parameter.box, parameter.printed, parameter.id);
    for (auto const& table : sheet.tables) {
        for (auto const& cell : table.cells) add(PlaceKind::Cell, table.page, cell.box, cell.text, table.id);
    }
    for (auto const& sentence : sheet.text) {
        bool first = true;
        for (auto const& place : sentence.places) {
            add(PlaceKind::Sentence, place.page, place.box, sentence.text, sentence.id, first);
            first = false;
        }
    }
    for (auto const& section : sheet.sections) add(PlaceKind::Heading, section.page, section.box, section.title, section.id);
    for (auto const& figure : sheet.figures) {
        add(PlaceKind::Figure, figure.page, figure.box, figure.caption, figure.id);
        for (auto const& text : figure.texts) add(PlaceKind::Lettering, text.page, text.box, text.text, figure.id);
    }
    for (auto const& furniture : sheet.furniture) {
        for (auto const& place : furniture.places) add(PlaceKind::RunningText, place.page, place.box, furniture.text, {});
    }
    std::stable_sort(m_places.begin(), m_places.end(), [](auto const& a, auto const& b) { return std::tie(a.page, a.box.y0, a.box.x0) < std::tie(b.page, b.box.y0, b.box.x0); });
    for (std::size_t i = 0; i < m_places.size(); ++i) {
        if (static_cast<std::size_t>(m_places[i].page) > m_pageStart.size()) m_pageStart.resize(static_cast<std::size_t>(m_places[i].page), i);
    }
}

std::pair<std::size_t, std::size_t> ReadPlaces::rangeOf(int page) const {
    auto const at = static_cast<std::size_t>(page);
    if (page < 1 || at > m_pageStart.size()) return {0, 0};
    return {m_pageStart[at - 1], at < m_pageStart.size() ? m_pageStart[at] : m_places.size()};
}

bool ReadPlaces::isText(ReadPlace const& place) { return place.kind != PlaceKind::Parameter && place.kind != PlaceKind::Figure; }

std::vector<std::size_t> ReadPlaces::at(int page, model::Point point) const {
    std::vector<std::size_t> found;
    auto const [begin, end] = rangeOf(page);
    for (model::Points const miss : {model::Points{0}, kMiss}) {
        for (std::size_t i = begin; i < end; ++i) {
            if (m_places[i].box.grown(miss).contains(point)) found.push_back(i);
        }
        if (!found.empty()) break;  // a near miss counts only where nothing is hit
    }
    std::stable_sort(found.begin(), found.end(), [this](std::size_t a, std::size_t b) {
        bool const rowA = m_places[a].kind == PlaceKind::Parameter;
        bool const rowB = m_places[b].kind == PlaceKind::Parameter;
        return rowA != rowB ? rowA : m_places[a].box.area() < m_places[b].box.area();
    });
    return found;
}

std::vector<std::size_t> ReadPlaces::find(QString const& text) const {
    std::vector<std::size_t> found;
    auto const wanted = simplified(text);
    if (wanted.isEmpty()) return found;
    for (std::size_t i = 0; i < m_places.size(); ++i) {
        auto const& place = m_places[i];
        if (place.first && place.kind != PlaceKind::Parameter && simplified(place.text).contains(wanted)) found.push_back(i);
    }
    return found;
}

std::vector<std::size_t> ReadPlaces::within(int page, model::Rect const& frame) const {
    std::vector<std::size_t> found;
    auto const [begin, end] = rangeOf(page);
    for (std::size_t i = begin; i < end; ++i) {
        if (isText(m_places[i]) && m_places[i].box.intersects(frame)) found.push_back(i);
    }
    return found;
}

QString ReadPlaces::joined(std::vector<std::size_t> const& places) const {
    QString text;
    ReadPlace const* last = nullptr;
    for (auto const index : places) {
        auto const& place = m_places[index];
        // A sentence that goes on at another place is one text.
        if (last != nullptr && !place.first && last->id == place.id) continue;
        if (last != nullptr) {
            bool const line = place.kind == PlaceKind::Cell && last->kind == PlaceKind::Cell && place.page == last->page && sameLine(place.box, last->box);
            text += line ? QLatin1Char('\t') : QLatin1Char('\n');
        }
        text += place.text;
        last = &place;
    }
    return text;
}

int ReadPlaces::parameterPlace(std::string const& id) const {
    for (std::size_t i = 0; i < m_places.size(); ++i) {
        if (m_places[i].kind == PlaceKind::Parameter && m_places[i].id == id) return static_cast<int>(i);
    }
    return -1;
}

QString placeWord(PlaceKind kind) {
    auto const word = [](char const* text) { return QCoreApplication::translate("places", text); };
    switch (kind) {
        case PlaceKind::Parameter: return word(QT_TRANSLATE_NOOP("places", "parameter row"));
        case PlaceKind::Cell: return word(QT_TRANSLATE_NOOP("places", "cell of a table"));
        case PlaceKind::Sentence: return word(QT_TRANSLATE_NOOP("places", "sentence"));
        case PlaceKind::Heading: return word(QT_TRANSLATE_NOOP("places", "heading"));
        case PlaceKind::Figure: return word(QT_TRANSLATE_NOOP("places", "figure"));
        case PlaceKind::Lettering: return word(QT_TRANSLATE_NOOP("places", "lettering of a figure"));
        case PlaceKind::RunningText: return word(QT_TRANSLATE_NOOP("places", "running head or foot"));
    }
    return {};
}

model::Finding const* findingAt(ReadPair const& pair, DocumentSide side, int page, model::Point point) {
    model::Finding const* best = nullptr;
    for (auto const& finding : pair.comparison.findings) {  // gravest first
        auto const& place = sideOf(finding, side);
        if (!place || place->page != page || !place->box.grown(kMiss).contains(point) || !finding.consequenceOf.empty()) continue;
        if (best == nullptr || (finding.severity == best->severity && place->box.area() < sideOf(*best, side)->box.area())) best = &finding;
    }
    return best;
}

}  // namespace standin::ui

// Tested by tests/ui/models/tables_test.cpp.
#include "ui/models/coverage_model.h"

#include <algorithm>

#include "ui/models/qt_text.h"
#include "ui/models/words.h"

namespace standin::ui {

namespace {

// What stands in one sheet only had nothing to be set against.
bool isNotCompared(model::Finding const& finding) {
    if (finding.kind == model::FindingKind::Coverage) return true;
    switch (finding.relation) {
        case model::Relation::OnlyReference:
        case model::Relation::OnlyCandidate:
        case model::Relation::NotComparable:
        case model::Relation::Unread: return true;
        default: return false;
    }
}

}  // namespace

CoverageModel::CoverageModel(Session& session, QObject* parent) : QAbstractTableModel(parent), m_session(session) {
    connect(&session, &Session::pairChanged, this, &CoverageModel::refill);
    refill();
}

int CoverageModel::rowCount(QModelIndex const& parent) const { return parent.isValid() ? 0 : static_cast<int>(m_rows.size()); }

int CoverageModel::columnCount(QModelIndex const& parent) const { return parent.isValid() ? 0 : ColumnCount; }

QVariant CoverageModel::data(QModelIndex const& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) return {};
    auto const& row = rowAt(index.row());
    if (role == Qt::ToolTipRole && index.column() == Text) return row.text.toHtmlEscaped();
    if (role != Qt::DisplayRole) return {};
    switch (index.column()) {
        case Document: return sideWord(row.side);
        case Page: return row.page > 0 ? QVariant(row.page) : QVariant(tr("all"));
        case What: return row.what;
        case Text: return row.text;
        default: return {};
    }
}

QVariant CoverageModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    switch (section) {
        case Document: return tr("Document");
        case Page: return tr("Page");
        case What: return tr("What was not compared");
        case Text: return tr("As printed");
        default: return {};
    }
}

QString CoverageModel::accountLine(DocumentSide side) const {
    if (!m_session.pair()) return {};
    auto const& coverage = sheetOf(*m_session.pair(), side).coverage;
    return tr("%1: %2 numbers printed; %3 in parameters, %4 in other tables, %5 in text, %6 in figures, %7 in running heads and page numbers, %8 unaccounted for")
        .arg(sideWord(side))
        .arg(coverage.numbers)
        .arg(coverage.inParameters)
        .arg(coverage.inTables)
        .arg(coverage.inText)
        .arg(coverage.inFigures)
        .arg(coverage.inFurniture)
        .arg(coverage.unaccounted.size());
}

void CoverageModel::takeSheet(DocumentSide side) {
    auto const& sheet = sheetOf(*m_session.pair(), side);
    auto const add = [&](int page, model::Rect const& box, QString const& what, QString const& text) {
        CoverageRow row;
        row.side = side;
        row.page = page;
        row.box = box;
        row.what = what;
        row.text = text;
        m_rows.push_back(std::move(row));
    };
    for (auto const& number : sheet.coverage.unaccounted) add(number.page, number.box, tr("number without an owner"), shownText(number.text));
    for (int const page : sheet.coverage.pagesWithoutText) add(page, {}, tr("page without a text layer"), {});
    for (auto const& id : sheet.coverage.unreadTables) {
        auto const table = std::find_if(sheet.tables.begin(), sheet.tables.end(), [&](auto const& t) { return t.id == id; });
        if (table == sheet.tables.end()) add(0, {}, tr("table that was not read"), shownText(id));
        else add(table->page, table->box, tr("table that was not read"), shownText(table->caption));
    }
    for (auto const& id : sheet.coverage.unreadFigures) {
        auto const figure = std::find_if(sheet.figures.begin(), sheet.figures.end(), [&](auto const& f) { return f.id == id; });
        if (figure == sheet.figures.end()) add(0, {}, tr("figure that was not read"), shownText(id));
        else add(figure->page, figure->box, tr("figure that was not read"), shownText(figure->caption));
    }
    for (auto const& pin : sheet.coverage.unreadPins) add(pin.page, pin.box, tr("pins that were not read"), shownText(pin.text));
    for (auto const& line : sheet.coverage.recognised) add(line.page, line.box, tr("recognised from a picture"), shownText(line.text));
    for (auto const& place : sheet.coverage.unrecognised) add(place.page, place.box, tr("lettering of a picture that was not made out"), {});
    for (auto const& sign : sheet.coverage.drawnSigns) add(sign.page, sign.box, tr("sign that is a drawing and was not read"), shownText(sign.text));
    for (auto const& warning : sheet.document.warnings) add(0, {}, tr("while reading"), shownText(warning));
}

void CoverageModel::refill() {
    beginResetModel();
    m_rows.clear();
    if (auto const& pair = m_session.pair()) {
        for (auto const& finding : pair->comparison.findings) {
            if (!isNotCompared(finding)) continue;
            CoverageRow row;
            row.side = finding.reference ? DocumentSide::Reference : DocumentSide::Candidate;
            auto const& place = sideOf(finding, row.side);
            if (place) {
                row.page = place->page;
                row.box = place->box;
            }
            row.what = shownText(finding.title);
            row.text = shownText(place && !place->text.empty() ? place->text : finding.explanation);
            row.finding = finding.id;
            m_rows.push_back(std::move(row));
        }
        takeSheet(DocumentSide::Reference);
        takeSheet(DocumentSide::Candidate);
    }
    endResetModel();
}

}  // namespace standin::ui

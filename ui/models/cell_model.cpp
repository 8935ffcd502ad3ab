// Tested by tests/ui/models/tables_test.cpp.
#include "ui/models/cell_model.h"

#include "ui/models/qt_text.h"
#include "ui/models/words.h"

namespace standin::ui {

namespace {

QString outcomeWord(model::CheckOutcome outcome) {
    switch (outcome) {
        case model::CheckOutcome::Holds: return CellModel::tr("✓ holds");
        case model::CheckOutcome::Violated: return CellModel::tr("✗ violated");
        case model::CheckOutcome::Open: return CellModel::tr("? open");
    }
    return {};
}

QString resultText(std::optional<model::CheckResult> const& result) {
    if (!result) return QStringLiteral("–");
    auto const value = shownText(result->value);
    return value.isEmpty() ? outcomeWord(result->outcome) : QStringLiteral("%1  %2").arg(value, outcomeWord(result->outcome));
}

QString valueText(std::optional<model::WorkedValue> const& value) {
    if (!value) return QStringLiteral("–");
    auto const shown = [](std::string const& number) { return number.empty() ? QStringLiteral("–") : toQt(number); };
    return QStringLiteral("%1 / %2 / %3 %4").arg(shown(value->min), shown(value->typ), shown(value->max), toQt(value->unit)).trimmed();
}

QString joined(std::vector<std::string> const& notes) {
    QStringList list;
    for (auto const& note : notes) list += shownText(note);
    return list.join(QStringLiteral("; "));
}

CellRow rowFor(model::CellCheck const& check) {
    CellRow row;
    row.title = shownText(check.title);
    row.limit = shownText(check.limit);
    row.reference = resultText(check.reference);
    row.candidate = resultText(check.candidate);
    row.outcome = check.candidate ? outcomeWord(check.candidate->outcome) : QStringLiteral("–");
    row.why = check.candidate ? shownText(check.candidate->why) : QString{};
    row.finding = check.finding;
    return row;
}

CellRow rowFor(model::Derived const& derived, model::Comparison const& comparison) {
    CellRow row;
    row.title = shownText(derived.title);
    row.limit = shownText(derived.formula);
    row.reference = valueText(derived.reference);
    row.candidate = valueText(derived.candidate);
    row.outcome = relationWord(derived.relation);
    row.why = joined(derived.notes);
    row.derived = true;
    for (auto const& finding : comparison.findings) {
        if (finding.kind == model::FindingKind::Derived && finding.canonical == derived.canonical) row.finding = finding.id;
    }
    return row;
}

}  // namespace

CellModel::CellModel(Session& session, QObject* parent) : QAbstractTableModel(parent), m_session(session) {
    connect(&session, &Session::pairChanged, this, &CellModel::refill);
    refill();
}

int CellModel::rowCount(QModelIndex const& parent) const { return parent.isValid() ? 0 : static_cast<int>(m_rows.size()); }

int CellModel::columnCount(QModelIndex const& parent) const { return parent.isValid() ? 0 : ColumnCount; }

QVariant CellModel::data(QModelIndex const& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) return {};
    if (role != Qt::DisplayRole && role != Qt::ToolTipRole) return {};
    auto const& row = rowAt(index.row());
    auto const text = [&] {
        switch (index.column()) {
            case Title: return row.title;
            case Limit: return row.limit;
            case Reference: return row.reference;
            case Candidate: return row.candidate;
            case Outcome: return row.outcome;
            case Why: return row.why;
            default: return QString{};
        }
    }();
    return role == Qt::ToolTipRole ? text.toHtmlEscaped() : text;
}

QVariant CellModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    switch (section) {
        case Title: return tr("Check or quantity");
        case Limit: return tr("Limit or formula");
        case Reference: return tr("Reference");
        case Candidate: return tr("Candidate");
        case Outcome: return tr("Outcome");
        case Why: return tr("What is missing or violated");
        default: return {};
    }
}

QString CellModel::profileLine() const {
    if (!m_session.pair()) return {};
    auto const& comparison = m_session.pair()->comparison;
    if (comparison.cell.empty()) return tr("No cell profile was given: neither part was checked against a cell. Choose one under File, Open pair.");
    QString line = tr("Cell profile: %1").arg(shownText(comparison.cellName));
    if (!comparison.circuitName.empty()) line += tr("; circuit: %1").arg(shownText(comparison.circuitName));
    return line;
}

void CellModel::refill() {
    beginResetModel();
    m_rows.clear();
    if (auto const& pair = m_session.pair()) {
        for (auto const& check : pair->comparison.cell) m_rows.push_back(rowFor(check));
        for (auto const& derived : pair->comparison.derived) m_rows.push_back(rowFor(derived, pair->comparison));
    }
    endResetModel();
}

}  // namespace standin::ui

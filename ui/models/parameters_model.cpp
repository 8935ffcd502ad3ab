// Tested by tests/ui/models/tables_test.cpp.
#include "ui/models/parameters_model.h"

#include <algorithm>
#include <unordered_map>

#include "report/finding_view.h"
#include "text/fold.h"
#include "ui/models/qt_text.h"
#include "ui/models/words.h"

namespace standin::ui {

namespace {

QString nameOf(model::Parameter const& parameter) {
    QString name = shownText(parameter.name);
    if (!parameter.symbol.empty()) name += (name.isEmpty() ? QString{} : QStringLiteral("  ")) + shownText(parameter.symbol);
    return name;
}

QString joined(QString const& reference, QString const& candidate) {
    if (candidate.isEmpty() || text::foldKey(fromQt(reference)) == text::foldKey(fromQt(candidate))) return reference;
    return reference.isEmpty() ? candidate : reference + QStringLiteral(" ⁄ ") + candidate;
}

}  // namespace

ParametersModel::ParametersModel(Session& session, QObject* parent) : QAbstractTableModel(parent), m_session(session) {
    connect(&session, &Session::pairChanged, this, &ParametersModel::refill);
    refill();
}

int ParametersModel::rowCount(QModelIndex const& parent) const { return parent.isValid() ? 0 : static_cast<int>(m_rows.size()); }

int ParametersModel::columnCount(QModelIndex const& parent) const { return parent.isValid() ? 0 : ColumnCount; }

QVariant ParametersModel::data(QModelIndex const& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) return {};
    auto const& row = rowAt(index.row());
    if (role == RowRole) return QVariant::fromValue<void const*>(&row);
    if (role == SortRole && index.column() == Confidence) return row.confidence;
    if (role == SortRole && index.column() == Strip) return row.differs;
    if (role == Qt::AccessibleTextRole && index.column() == Strip) return row.strip ? tr("both intervals on one axis") : tr("no common axis");
    if (role != Qt::DisplayRole && role != Qt::ToolTipRole && role != SortRole) return {};
    auto const withPage = [](QString const& text, int page) { return page > 0 ? tr("%1  p %2").arg(text).arg(page) : text; };
    switch (index.column()) {
        case Name: return role == Qt::ToolTipRole ? joined(row.name, row.candidateName).toHtmlEscaped() : row.name;
        case Condition: {
            auto const text = joined(row.referenceCondition, row.candidateCondition);
            return role == Qt::ToolTipRole ? text.toHtmlEscaped() : text;
        }
        case Reference: return role == Qt::ToolTipRole ? row.reference.toHtmlEscaped() : withPage(row.reference, row.referencePage);
        case Candidate: return role == Qt::ToolTipRole ? row.candidate.toHtmlEscaped() : withPage(row.candidate, row.candidatePage);
        case Relation: return row.relation;
        case Confidence: return QStringLiteral("%1 %").arg(static_cast<int>(row.confidence * 100 + 0.5));
        default: return {};
    }
}

QVariant ParametersModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    switch (section) {
        case Name: return tr("Parameter");
        case Condition: return tr("Condition");
        case Reference: return tr("Reference  min / typ / max");
        case Candidate: return tr("Candidate  min / typ / max");
        case Strip: return tr("Limits");
        case Relation: return tr("Relation");
        case Confidence: return tr("Paired");
        default: return {};
    }
}

void ParametersModel::refill() {
    beginResetModel();
    m_rows.clear();
    if (auto const& pair = m_session.pair()) {
        auto const reference = report::parametersById(pair->reference);
        auto const candidate = report::parametersById(pair->candidate);
        auto const find = [](auto const& byId, std::string const& id) -> model::Parameter const* {
            auto const found = byId.find(id);
            return found == byId.end() ? nullptr : found->second;
        };
        std::unordered_map<int, model::Finding const*> findings;
        for (auto const& finding : pair->comparison.findings) {
            if (finding.pair >= 0) findings.try_emplace(finding.pair, &finding);
        }
        int number = 0;
        for (auto const& paired : pair->comparison.pairs) {
            ParameterRow row;
            auto const* r = find(reference, paired.reference);
            auto const* c = find(candidate, paired.candidate);
            row.name = r != nullptr ? nameOf(*r) : c != nullptr ? nameOf(*c) : QString{};
            row.candidateName = c != nullptr ? nameOf(*c) : QString{};
            row.reference = r != nullptr ? shownText(report::valuesOf(*r)) : QStringLiteral("–");
            row.candidate = c != nullptr ? shownText(report::valuesOf(*c)) : QStringLiteral("–");
            if (r != nullptr) {
                row.referenceCondition = shownText(report::conditionOf(*r));
                row.referencePage = r->page;
                row.referenceBox = r->box;
            }
            if (c != nullptr) {
                row.candidateCondition = shownText(report::conditionOf(*c));
                row.candidatePage = c->page;
                row.candidateBox = c->box;
            }
            row.relation = relationWord(paired.relation);
            row.confidence = paired.confidence;
            row.differs = paired.relation != model::Relation::Same;
            auto const finding = findings.find(number++);
            if (finding != findings.end()) {
                row.finding = finding->second->id;
                row.differs = true;
            }
            if (r != nullptr && c != nullptr && r->interval && c->interval) {
                auto const side = finding == findings.end() ? model::HazardSide::None : finding->second->hazardSide;
                row.strip = report::limitStrip(*r->interval, *c->interval, side, report::cellLimits(pair->comparison, paired.canonical));
            }
            m_rows.push_back(std::move(row));
        }
    }
    endResetModel();
}

ParametersFilter::ParametersFilter(ParametersModel& parameters, QObject* parent) : QSortFilterProxyModel(parent), m_parameters(parameters) {
    setSourceModel(&parameters);
    setSortRole(ParametersModel::SortRole);
    setSortLocaleAware(true);
    connect(&parameters, &QAbstractItemModel::modelReset, this, &ParametersFilter::filterChanged);
}

void ParametersFilter::setText(QString const& text) {
    m_words = text.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    invalidateFilter();
    Q_EMIT filterChanged();
}

void ParametersFilter::setOnlyDiffering(bool only) {
    m_onlyDiffering = only;
    invalidateFilter();
    Q_EMIT filterChanged();
}

int ParametersFilter::hiddenCount() const { return m_parameters.rowCount() - rowCount(); }

ParameterRow const& ParametersFilter::rowAt(int proxyRow) const { return m_parameters.rowAt(mapToSource(index(proxyRow, 0)).row()); }

bool ParametersFilter::filterAcceptsRow(int sourceRow, QModelIndex const&) const {
    auto const& row = m_parameters.rowAt(sourceRow);
    if (m_onlyDiffering && !row.differs) return false;
    return std::all_of(m_words.begin(), m_words.end(), [&](QString const& word) {
        for (auto const* text : {&row.name, &row.candidateName, &row.referenceCondition, &row.candidateCondition, &row.reference, &row.candidate, &row.relation}) {
            if (text->contains(word, Qt::CaseInsensitive)) return true;
        }
        return false;
    });
}

}  // namespace standin::ui

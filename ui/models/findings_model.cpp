// Rows are made once a pair; only their decisions change after.
//
// Tested by tests/ui/models/findings_model_test.cpp.
#include "ui/models/findings_model.h"

#include <algorithm>
#include <tuple>
#include <unordered_map>
#include <utility>

#include "report/finding_view.h"
#include "text/fold.h"
#include "ui/models/qt_text.h"
#include "ui/models/words.h"

namespace standin::ui {

namespace {

using ById = std::unordered_map<std::string_view, model::Parameter const*>;

constexpr qsizetype kLead = 22;  // characters kept before the first difference of two sentences
constexpr std::size_t kLongestText = 400;  // of a printed sentence or row in the list; the evidence shows all

QString shortened(std::string const& text) {
    auto shown = shownText(text);
    if (shown.size() > static_cast<qsizetype>(kLongestText)) shown = shown.left(kLongestText) + QStringLiteral(" …");
    return shown;
}

bool hasValues(model::Side const& side) { return !side.min.empty() || !side.typ.empty() || !side.max.empty(); }

// Two long sentences from a few words before their first difference on: a row has
// one line for each.
std::pair<QString, QString> fromDifference(QString const& reference, QString const& candidate) {
    auto const shorter = std::min(reference.size(), candidate.size());
    qsizetype shared = 0;
    while (shared < shorter && reference[shared] == candidate[shared]) ++shared;
    if (shared <= kLead || shared == shorter) return {reference, candidate};
    auto start = reference.indexOf(QLatin1Char(' '), shared - kLead) + 1;
    if (start == 0 || start > shared) {  // no blank there: scripts without any
        start = shared - kLead;
        if (reference[start].isLowSurrogate()) --start;
    }
    return {QStringLiteral("… ") + reference.mid(start), QStringLiteral("… ") + candidate.mid(start)};
}

QString conditionOf(model::Finding const& finding) {
    QString const reference = finding.reference ? shortened(finding.reference->condition) : QString{};
    QString const candidate = finding.candidate ? shortened(finding.candidate->condition) : QString{};
    if (candidate.isEmpty()) return reference;
    if (reference.isEmpty()) return candidate;
    if (text::foldKey(finding.reference->condition) == text::foldKey(finding.candidate->condition)) return reference;
    return reference + QStringLiteral(" ⁄ ") + candidate;
}

std::optional<report::LimitStrip> stripOf(model::Finding const& finding, model::Comparison const& comparison, ById const& reference, ById const& candidate) {
    if (finding.pair < 0 || static_cast<std::size_t>(finding.pair) >= comparison.pairs.size()) return std::nullopt;
    auto const& pair = comparison.pairs[static_cast<std::size_t>(finding.pair)];
    auto const r = reference.find(pair.reference);
    auto const c = candidate.find(pair.candidate);
    if (r == reference.end() || c == candidate.end() || !r->second->interval || !c->second->interval) return std::nullopt;
    return report::limitStrip(*r->second->interval, *c->second->interval, finding.hazardSide, report::cellLimits(comparison, finding.canonical));
}

FindingRow rowFor(report::FindingGroup const& group, model::Comparison const& comparison) {
    auto const& finding = *group.main;
    FindingRow row;
    row.id = finding.id;
    row.severity = finding.severity;
    row.kind = finding.kind;
    row.title = shownText(finding.title);
    row.condition = conditionOf(finding);
    row.relation = relationWord(finding.relation);
    row.reference = finding.reference ? shortened(report::valuesOf(*finding.reference)) : QStringLiteral("–");
    row.candidate = finding.candidate ? shortened(report::valuesOf(*finding.candidate)) : QStringLiteral("–");
    row.referenceHasValues = finding.reference && hasValues(*finding.reference);
    row.candidateHasValues = finding.candidate && hasValues(*finding.candidate);
    if (finding.reference && finding.candidate && !row.referenceHasValues && !row.candidateHasValues) {
        std::tie(row.reference, row.candidate) = fromDifference(row.reference, row.candidate);
    }
    row.referencePage = finding.reference ? finding.reference->page : 0;
    row.candidatePage = finding.candidate ? finding.candidate->page : 0;
    row.sectionRung = sectionRungOf(finding, comparison);
    row.consequences = static_cast<int>(group.consequences.size());
    return row;
}

}  // namespace

int sectionRungOf(model::Finding const& finding, model::Comparison const& comparison) {
    if (finding.section.empty()) return -1;
    auto const at = [&](auto member) {
        auto const found = std::find_if(comparison.sections.begin(), comparison.sections.end(), [&](auto const& rung) { return rung.*member == finding.section; });
        return found == comparison.sections.end() ? -1 : static_cast<int>(found - comparison.sections.begin());
    };
    // The id is the reference's, but where only the candidate has the place.
    int const reference = at(&model::SectionPair::reference);
    int const candidate = at(&model::SectionPair::candidate);
    if (!finding.reference && candidate >= 0) return candidate;
    return reference >= 0 ? reference : candidate;
}

QString spokenRow(FindingRow const& row) {
    auto const side = [](DocumentSide which, QString const& text, int page) {
        return page > 0 ? FindingsModel::tr("%1, page %2: %3").arg(sideWord(which)).arg(page).arg(text) : FindingsModel::tr("%1: %2").arg(sideWord(which), text);
    };
    QStringList parts{FindingsModel::tr("%1: %2").arg(severityWord(row.severity), row.title)};
    if (!row.condition.isEmpty()) parts += FindingsModel::tr("condition %1").arg(row.condition);
    parts += side(DocumentSide::Reference, row.reference, row.referencePage);
    parts += side(DocumentSide::Candidate, row.candidate, row.candidatePage);
    parts += row.relation;
    parts += FindingsModel::tr("decision: %1").arg(dispositionWord(row.disposition));
    return parts.join(QStringLiteral("; "));
}

FindingsModel::FindingsModel(Session& session, QObject* parent) : QAbstractListModel(parent), m_session(session) {
    connect(&m_session, &Session::pairChanged, this, &FindingsModel::refill);
    connect(&m_session.decisions(), &Decisions::changed, this, &FindingsModel::refreshDecision);
    refill();
}

int FindingsModel::rowCount(QModelIndex const& parent) const { return parent.isValid() ? 0 : static_cast<int>(m_rows.size()); }

QVariant FindingsModel::data(QModelIndex const& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) return {};
    auto const& row = m_rows[static_cast<std::size_t>(index.row())];
    switch (role) {
        case Qt::DisplayRole: return row.title;
        case Qt::AccessibleTextRole: return spokenRow(row);
        case RowRole: return QVariant::fromValue<FindingRow const*>(&row);
        case IdRole: return toQt(row.id);
        default: return {};
    }
}

int FindingsModel::rowOf(std::string const& findingId) const {
    auto const found = std::find_if(m_rows.begin(), m_rows.end(), [&](auto const& row) { return row.id == findingId; });
    return found == m_rows.end() ? -1 : static_cast<int>(found - m_rows.begin());
}

int FindingsModel::count(model::Severity severity) const {
    return static_cast<int>(std::count_if(m_rows.begin(), m_rows.end(), [&](auto const& row) { return row.severity == severity; }));
}

QStringList FindingsModel::consequencesOf(std::string const& findingId) const {
    QStringList list;
    if (!m_pair) return list;
    for (auto const& finding : m_pair->comparison.findings) {
        if (finding.consequenceOf == findingId) list += shownText(finding.title + report::placesOf(finding));
    }
    return list;
}

QString FindingsModel::sectionTitle(int rung) const {
    if (!m_pair || rung < 0 || static_cast<std::size_t>(rung) >= m_pair->comparison.sections.size()) return tr("No section");
    auto const& ids = m_pair->comparison.sections[static_cast<std::size_t>(rung)];
    bool const inReference = !ids.reference.empty();
    auto const& sections = inReference ? m_pair->reference.sections : m_pair->candidate.sections;
    auto const found = std::find_if(sections.begin(), sections.end(), [&](auto const& section) { return section.id == (inReference ? ids.reference : ids.candidate); });
    return found == sections.end() ? tr("No section") : shownText(found->title);
}

void FindingsModel::refill() {
    beginResetModel();
    m_rows.clear();
    m_pair = m_session.pair();
    if (m_pair) {
        auto const& comparison = m_pair->comparison;
        auto const reference = report::parametersById(m_pair->reference);
        auto const candidate = report::parametersById(m_pair->candidate);
        for (auto const& group : report::groupBySeverity(comparison)) {
            for (auto const& finding : group.findings) {
                auto row = rowFor(finding, comparison);
                row.strip = stripOf(*finding.main, comparison, reference, candidate);
                row.disposition = m_session.decisions().decisionOn(row.id).disposition;
                m_rows.push_back(std::move(row));
            }
        }
    }
    endResetModel();
}

void FindingsModel::refreshDecision(std::string const& findingId) {
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        if (!findingId.empty() && m_rows[i].id != findingId) continue;
        m_rows[i].disposition = m_session.decisions().decisionOn(m_rows[i].id).disposition;
        auto const at = index(static_cast<int>(i));
        Q_EMIT dataChanged(at, at);
    }
}

}  // namespace standin::ui

// Tested by tests/ui/models/findings_model_test.cpp.
#include "ui/models/findings_filter.h"

#include <limits>

#include "report/finding_view.h"
#include "ui/models/qt_text.h"
#include "ui/models/words.h"

namespace standin::ui {

namespace {

std::size_t at(model::Severity severity) { return static_cast<std::size_t>(severity); }

QString capital(QString word) {
    if (!word.isEmpty()) word[0] = word[0].toUpper();
    return word;
}

}  // namespace

FindingsFilter::FindingsFilter(FindingsModel& findings, QObject* parent) : QSortFilterProxyModel(parent), m_findings(findings) {
    setSourceModel(&findings);
    // A row that was just decided stays where it is until the order is asked for again.
    setDynamicSortFilter(false);
    connect(&findings, &QAbstractItemModel::modelReset, this, [this] {
        m_section.reset();
        apply();
    });
    sort(0);
}

void FindingsFilter::setShown(model::Severity severity, bool shown) {
    if (severity == model::Severity::Hazard || m_shown[at(severity)] == shown) return;
    m_shown[at(severity)] = shown;
    apply();
}

bool FindingsFilter::isShown(model::Severity severity) const { return m_shown[at(severity)]; }

void FindingsFilter::setKind(std::optional<model::FindingKind> kind) {
    if (m_kind == kind) return;
    m_kind = kind;
    apply();
}

void FindingsFilter::setSection(std::optional<int> rung) {
    if (m_section == rung) return;
    m_section = rung;
    apply();
}

void FindingsFilter::setText(QString const& text) {
    auto words = text.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    if (words == m_words) return;
    m_words = std::move(words);
    apply();
}

void FindingsFilter::setOnlyUndecided(bool only) {
    if (m_onlyUndecided == only) return;
    m_onlyUndecided = only;
    apply();
}

void FindingsFilter::setOrder(FindingOrder order) {
    m_order = order;
    apply();
}

void FindingsFilter::showEverything() {
    m_shown.fill(true);
    m_kind.reset();
    m_section.reset();
    m_words.clear();
    m_onlyUndecided = false;
    apply();
}

void FindingsFilter::apply() {
    invalidate();
    sort(0);
    Q_EMIT filterChanged();
}

FindingRow const& FindingsFilter::rowAt(int proxyRow) const { return m_findings.rows()[static_cast<std::size_t>(mapToSource(index(proxyRow, 0)).row())]; }

int FindingsFilter::proxyRowOf(std::string const& findingId) const {
    int const source = m_findings.rowOf(findingId);
    return source < 0 ? -1 : mapFromSource(m_findings.index(source)).row();
}

QString FindingsFilter::groupOf(FindingRow const& row) const {
    switch (m_order) {
        case FindingOrder::Severity: return capital(severityWord(row.severity));
        case FindingOrder::Section: return m_findings.sectionTitle(row.sectionRung);
        case FindingOrder::Kind: return capital(kindWord(row.kind));
        case FindingOrder::Decision: return capital(dispositionWord(row.disposition));
        case FindingOrder::Name: return {};
    }
    return {};
}

QString FindingsFilter::headingAt(int proxyRow) const {
    auto const group = groupOf(rowAt(proxyRow));
    return proxyRow > 0 && groupOf(rowAt(proxyRow - 1)) == group ? QString{} : group;
}

int FindingsFilter::hiddenCount() const { return m_findings.rowCount() - rowCount(); }

QString FindingsFilter::hiddenText() const {
    std::array<int, 5> hidden{};
    for (auto const& row : m_findings.rows()) ++hidden[at(row.severity)];
    for (int i = 0; i < rowCount(); ++i) --hidden[at(rowAt(i).severity)];
    QStringList parts;
    for (auto const severity : report::kSeverities) {
        if (hidden[at(severity)] > 0) parts += QStringLiteral("%1 %2").arg(hidden[at(severity)]).arg(severityWord(severity));
    }
    return parts.isEmpty() ? QString{} : tr("hidden: %1").arg(parts.join(QStringLiteral(", ")));
}

bool FindingsFilter::filterAcceptsRow(int sourceRow, QModelIndex const&) const {
    auto const& row = m_findings.rows()[static_cast<std::size_t>(sourceRow)];
    if (row.severity == model::Severity::Hazard) return true;
    if (!m_shown[at(row.severity)]) return false;
    if (m_kind && row.kind != *m_kind) return false;
    if (m_section && row.sectionRung != *m_section) return false;
    if (m_onlyUndecided && row.disposition != Disposition::Open) return false;
    for (auto const& word : m_words) {
        bool const held = row.title.contains(word, Qt::CaseInsensitive) || row.condition.contains(word, Qt::CaseInsensitive) ||
                          row.reference.contains(word, Qt::CaseInsensitive) || row.candidate.contains(word, Qt::CaseInsensitive) ||
                          row.relation.contains(word, Qt::CaseInsensitive);
        if (!held) return false;
    }
    return true;
}

bool FindingsFilter::lessThan(QModelIndex const& left, QModelIndex const& right) const {
    auto const& a = m_findings.rows()[static_cast<std::size_t>(left.row())];
    auto const& b = m_findings.rows()[static_cast<std::size_t>(right.row())];
    auto const rank = [](int rung) { return rung < 0 ? std::numeric_limits<int>::max() : rung; };
    switch (m_order) {
        case FindingOrder::Section:
            if (a.sectionRung != b.sectionRung) return rank(a.sectionRung) < rank(b.sectionRung);
            break;
        case FindingOrder::Kind:
            if (a.kind != b.kind) return a.kind < b.kind;
            break;
        case FindingOrder::Name:
            if (int const order = a.title.localeAwareCompare(b.title); order != 0) return order < 0;
            break;
        case FindingOrder::Decision:
            if (a.disposition != b.disposition) return a.disposition < b.disposition;
            break;
        case FindingOrder::Severity: break;
    }
    return left.row() < right.row();
}

}  // namespace standin::ui

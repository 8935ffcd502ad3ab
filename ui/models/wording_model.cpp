// The stretches come from compare::wordEdits(). Findings that follow from others
// are shown as well: a sentence whose change was found as a mode is still a
// sentence that changed.
//
// Tested by tests/ui/models/tables_test.cpp.
#include "ui/models/wording_model.h"

#include <algorithm>

#include "compare/edit_script.h"
#include "ui/models/qt_text.h"
#include "ui/models/words.h"

namespace standin::ui {

namespace {

void append(std::vector<MarkedText>& list, QString const& text, bool marked) {
    if (!list.empty() && list.back().marked == marked) list.back().text += text;
    else list.push_back({text, marked});
}

QString plain(std::vector<MarkedText> const& list) {
    QString text;
    for (auto const& part : list) text += part.text;
    return text.isEmpty() ? QStringLiteral("–") : text;
}

}  // namespace

std::pair<std::vector<MarkedText>, std::vector<MarkedText>> markedWords(std::string_view reference, std::string_view candidate) {
    std::pair<std::vector<MarkedText>, std::vector<MarkedText>> sides;
    if (reference.empty() || candidate.empty()) {  // nothing to mark against
        if (!reference.empty()) sides.first.push_back({shownText(reference), false});
        if (!candidate.empty()) sides.second.push_back({shownText(candidate), false});
        return sides;
    }
    for (auto const& edit : compare::wordEdits(reference, candidate)) {
        auto const text = shownText(edit.text);
        if (edit.kind != compare::EditKind::Insert) append(sides.first, text, edit.kind == compare::EditKind::Remove);
        if (edit.kind != compare::EditKind::Remove) append(sides.second, text, edit.kind == compare::EditKind::Insert);
    }
    return sides;
}

WordingModel::WordingModel(Session& session, QObject* parent) : QAbstractListModel(parent), m_session(session) {
    connect(&session, &Session::pairChanged, this, &WordingModel::refill);
    refill();
}

void WordingModel::setFormOnlyShown(bool shown) {
    if (shown == m_formOnly) return;
    m_formOnly = shown;
    refill();
}

int WordingModel::rowCount(QModelIndex const& parent) const { return parent.isValid() ? 0 : static_cast<int>(m_rows.size()); }

QVariant WordingModel::data(QModelIndex const& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) return {};
    auto const& row = rowAt(index.row());
    switch (role) {
        case Qt::DisplayRole: return row.title;
        case Qt::AccessibleTextRole:
            return tr("%1: %2; reference: %3; candidate: %4").arg(severityWord(row.severity), row.title, plain(row.reference), plain(row.candidate));
        default: return {};
    }
}

int WordingModel::rowOf(std::string const& findingId) const {
    auto const found = std::find_if(m_rows.begin(), m_rows.end(), [&](auto const& row) { return row.finding == findingId; });
    return found == m_rows.end() ? -1 : static_cast<int>(found - m_rows.begin());
}

void WordingModel::refill() {
    beginResetModel();
    m_rows.clear();
    m_hidden = 0;
    if (auto const& pair = m_session.pair()) {
        for (auto const& finding : pair->comparison.findings) {
            if (finding.kind != model::FindingKind::Wording) continue;
            if (finding.severity == model::Severity::Editorial && !m_formOnly) {
                ++m_hidden;
                continue;
            }
            WordingRow row;
            row.finding = finding.id;
            row.severity = finding.severity;
            row.title = shownText(finding.title);
            auto const text = [](std::optional<model::Side> const& side) { return side ? std::string_view(side->text) : std::string_view{}; };
            std::tie(row.reference, row.candidate) = markedWords(text(finding.reference), text(finding.candidate));
            row.referencePage = finding.reference ? finding.reference->page : 0;
            row.candidatePage = finding.candidate ? finding.candidate->page : 0;
            m_rows.push_back(std::move(row));
        }
    }
    endResetModel();
}

}  // namespace standin::ui

// Tested by tests/ui/models/findings_model_test.cpp.
#include "ui/models/sections_model.h"

#include <algorithm>

#include "ui/models/qt_text.h"

namespace standin::ui {

namespace {

model::Section const* sectionOf(model::Datasheet const& sheet, std::string const& id) {
    auto const found = std::find_if(sheet.sections.begin(), sheet.sections.end(), [&](auto const& section) { return section.id == id; });
    return id.empty() || found == sheet.sections.end() ? nullptr : &*found;
}

void count(SectionRung& rung, model::Severity severity) {
    if (severity == model::Severity::Editorial) ++rung.editorial;
    else ++rung.findings;
}

}  // namespace

SectionsModel::SectionsModel(Session& session, FindingsModel const& findings, QObject* parent)
    : QAbstractListModel(parent), m_session(session), m_findings(findings) {
    connect(&findings, &QAbstractItemModel::modelReset, this, &SectionsModel::refill);
    refill();
}

int SectionsModel::rowCount(QModelIndex const& parent) const { return parent.isValid() ? 0 : static_cast<int>(m_rungs.size()); }

QVariant SectionsModel::data(QModelIndex const& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) return {};
    auto const& rung = rungAt(index.row());
    switch (role) {
        case Qt::DisplayRole:
            if (rung.all) return tr("All sections");
            return rung.reference.isEmpty() ? rung.candidate : rung.reference;
        case Qt::ToolTipRole:
        case Qt::AccessibleTextRole: {
            auto const counts = tr("%n finding(s)", nullptr, rung.findings) + tr(", %n editorial", nullptr, rung.editorial);
            if (rung.all) return tr("All sections: %1").arg(counts);
            auto const heading = [](QString const& title) { return title.isEmpty() ? tr("no such section") : title; };
            return tr("reference: %1; candidate: %2; %3").arg(heading(rung.reference), heading(rung.candidate), counts);
        }
        default: return {};
    }
}

QString SectionsModel::wordingLine() const {
    if (!m_session.pair()) return {};
    int meaning = 0;
    int form = 0;
    for (auto const& row : m_findings.rows()) {
        if (row.kind != model::FindingKind::Wording) continue;
        ++(row.severity == model::Severity::Editorial ? form : meaning);
    }
    return tr("Wording: %n sentence(s) differ in meaning", nullptr, meaning) + tr(", %n in form only", nullptr, form);
}

void SectionsModel::refill() {
    beginResetModel();
    m_rungs.clear();
    if (auto const& pair = m_session.pair()) {
        m_rungs.emplace_back().all = true;
        for (auto const& section : pair->comparison.sections) {
            SectionRung rung;
            if (auto const* reference = sectionOf(pair->reference, section.reference)) {
                rung.reference = shownText(reference->title);
                rung.referencePage = reference->page;
            }
            if (auto const* candidate = sectionOf(pair->candidate, section.candidate)) {
                rung.candidate = shownText(candidate->title);
                rung.candidatePage = candidate->page;
            }
            m_rungs.push_back(std::move(rung));
        }
        for (auto const& row : m_findings.rows()) {
            count(m_rungs.front(), row.severity);
            if (row.sectionRung >= 0) count(m_rungs[static_cast<std::size_t>(row.sectionRung) + 1], row.severity);
        }
    }
    endResetModel();
}

}  // namespace standin::ui

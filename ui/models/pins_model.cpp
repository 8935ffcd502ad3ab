// Tested by tests/ui/models/tables_test.cpp.
#include "ui/models/pins_model.h"

#include <algorithm>
#include <map>

#include <QCollator>

#include "text/fold.h"
#include "ui/models/qt_text.h"
#include "ui/models/words.h"

namespace standin::ui {

namespace {

std::vector<std::string> packagesOf(model::Datasheet const& sheet) {
    std::vector<std::string> names;
    for (auto const& pin : sheet.pins) {
        if (std::find(names.begin(), names.end(), pin.package) == names.end()) names.push_back(pin.package);
    }
    return names;
}

std::vector<model::Pin const*> pinsOf(model::Datasheet const& sheet, int package) {
    auto const names = packagesOf(sheet);
    std::vector<model::Pin const*> pins;
    for (auto const& pin : sheet.pins) {
        if (static_cast<std::size_t>(package) < names.size() && pin.package == names[static_cast<std::size_t>(package)]) pins.push_back(&pin);
    }
    return pins;
}

// The finding about a pin, told by its place on the page.
model::Finding const* findingAt(model::Comparison const& comparison, DocumentSide side, model::Pin const& pin) {
    auto const found = std::find_if(comparison.findings.begin(), comparison.findings.end(), [&](auto const& finding) {
        auto const& place = sideOf(finding, side);
        return finding.kind == model::FindingKind::Pin && place && place->page == pin.page && place->box == pin.box;
    });
    return found == comparison.findings.end() ? nullptr : &*found;
}

}  // namespace

PinsModel::PinsModel(Session& session, QObject* parent) : QAbstractTableModel(parent), m_session(session) {
    connect(&session, &Session::pairChanged, this, &PinsModel::takePair);
    takePair();
}

QStringList PinsModel::packages(DocumentSide side) const {
    QStringList names;
    if (!m_session.pair()) return names;
    auto const& sheet = sheetOf(*m_session.pair(), side);
    for (auto const& name : packagesOf(sheet)) {
        if (!name.empty()) names += shownText(name);
        else names += sheet.packages.empty() ? tr("package not named") : shownText(sheet.packages.front().name);
    }
    return names;
}

void PinsModel::choosePackage(DocumentSide side, int package) {
    (side == DocumentSide::Reference ? m_referencePackage : m_candidatePackage) = package;
    refill();
}

int PinsModel::rowCount(QModelIndex const& parent) const { return parent.isValid() ? 0 : static_cast<int>(m_rows.size()); }

int PinsModel::columnCount(QModelIndex const& parent) const { return parent.isValid() ? 0 : ColumnCount; }

QVariant PinsModel::data(QModelIndex const& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) return {};
    if (role != Qt::DisplayRole && role != Qt::ToolTipRole) return {};
    auto const& row = m_rows[static_cast<std::size_t>(index.row())];
    auto const shown = [role](QString const& text) { return role == Qt::ToolTipRole ? text.toHtmlEscaped() : text; };
    auto const name = [&](QString const& text) { return shown(text.isEmpty() ? QStringLiteral("–") : text); };
    switch (index.column()) {
        case Number: return shown(row.number);
        case ReferenceName: return name(row.referenceName);
        case CandidateName: return name(row.candidateName);
        case ReferenceFunction: return shown(row.referenceFunction);
        case CandidateFunction: return shown(row.candidateFunction);
        case Note: return row.differs ? tr("differs") : QString{};
        default: return {};
    }
}

QVariant PinsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    switch (section) {
        case Number: return tr("Pin");
        case ReferenceName: return tr("Reference");
        case ReferenceFunction: return tr("Function there");
        case CandidateName: return tr("Candidate");
        case CandidateFunction: return tr("Function there");
        case Note: return tr("Note");
        default: return {};
    }
}

void PinsModel::takePair() {
    m_referencePackage = 0;
    m_candidatePackage = 0;
    if (auto const& pair = m_session.pair()) {
        // The first package that both name alike.
        auto const reference = packagesOf(pair->reference);
        auto const candidate = packagesOf(pair->candidate);
        for (std::size_t i = 0; i < reference.size(); ++i) {
            auto const same = std::find(candidate.begin(), candidate.end(), reference[i]);
            if (same == candidate.end()) continue;
            m_referencePackage = static_cast<int>(i);
            m_candidatePackage = static_cast<int>(same - candidate.begin());
            break;
        }
    }
    refill();
}

void PinsModel::refill() {
    beginResetModel();
    m_rows.clear();
    if (auto const& pair = m_session.pair()) {
        auto const take = [&](DocumentSide side, int package) {
            for (auto const* pin : pinsOf(sheetOf(*pair, side), package)) {
                auto const number = shownText(pin->number);
                auto row = std::find_if(m_rows.begin(), m_rows.end(), [&](PinRow const& r) {
                    return r.number == number && (side == DocumentSide::Reference ? r.referenceName : r.candidateName).isEmpty();
                });
                if (row == m_rows.end()) {
                    m_rows.emplace_back().number = number;
                    row = m_rows.end() - 1;
                }
                bool const reference = side == DocumentSide::Reference;
                (reference ? row->referenceName : row->candidateName) = shownText(pin->name);
                (reference ? row->referenceFunction : row->candidateFunction) = shownText(pin->function);
                (reference ? row->referencePage : row->candidatePage) = pin->page;
                (reference ? row->referenceBox : row->candidateBox) = pin->box;
                if (auto const* finding = findingAt(pair->comparison, side, *pin); finding != nullptr && finding->severity != model::Severity::Editorial) {
                    row->finding = finding->id;
                    row->differs = true;
                }
            }
        };
        take(DocumentSide::Reference, m_referencePackage);
        take(DocumentSide::Candidate, m_candidatePackage);
        for (auto& row : m_rows) row.differs = row.differs || text::foldKey(fromQt(row.referenceName)) != text::foldKey(fromQt(row.candidateName));
        QCollator byNumber;
        byNumber.setNumericMode(true);
        std::stable_sort(m_rows.begin(), m_rows.end(), [&](auto const& a, auto const& b) { return byNumber.compare(a.number, b.number) < 0; });
    }
    endResetModel();
}

}  // namespace standin::ui

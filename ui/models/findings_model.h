// The findings of a comparison as a list for a view: main findings, gravest
// first, then in document order; what follows from a finding hangs under it.
//
//     FindingsModel model(session);
//     auto const* row = model.index(0).data(FindingsModel::RowRole).value<FindingRow const*>();
#pragma once

#include <optional>
#include <vector>

#include <QAbstractListModel>

#include "report/limit_strip.h"
#include "ui/models/session.h"

namespace standin::ui {

// One finding, made ready to be drawn. Texts out of documents are made visible.
struct FindingRow {
    std::string id;
    model::Severity severity = model::Severity::Note;
    model::FindingKind kind = model::FindingKind::Parameter;
    QString title;
    QString condition;   // "Ta = 25 °C", both where they differ; may be empty
    QString relation;
    QString reference, candidate;  // values or words as printed; a dash where the side is missing
    bool referenceHasValues = false;  // min, typ or max; else a sentence or row
    bool candidateHasValues = false;
    int referencePage = 0;  // 0: no place
    int candidatePage = 0;
    std::optional<report::LimitStrip> strip;
    int sectionRung = -1;  // index into Comparison::sections; -1: none
    int consequences = 0;
    Disposition disposition = Disposition::Open;
};

class FindingsModel : public QAbstractListModel {
    Q_OBJECT

public:
    enum Role { RowRole = Qt::UserRole + 1, IdRole };

    // `session` outlives the model.
    explicit FindingsModel(Session& session, QObject* parent = nullptr);

    [[nodiscard]] int rowCount(QModelIndex const& parent = {}) const override;
    // Display: the title. Accessible text: all of the row in words. RowRole: a
    // FindingRow const*, until the model is reset.
    [[nodiscard]] QVariant data(QModelIndex const& index, int role) const override;

    [[nodiscard]] std::vector<FindingRow> const& rows() const { return m_rows; }
    [[nodiscard]] int rowOf(std::string const& findingId) const;  // -1: none
    [[nodiscard]] int count(model::Severity severity) const;
    // What follows from a finding, as sentences with their places.
    [[nodiscard]] QStringList consequencesOf(std::string const& findingId) const;
    // The heading of a rung, the reference's where it has one.
    [[nodiscard]] QString sectionTitle(int rung) const;

private:
    void refill();
    void refreshDecision(std::string const& findingId);

    Session& m_session;
    PairPointer m_pair;  // what the rows were made from
    std::vector<FindingRow> m_rows;
};

// Which rung of the section ladder a finding stands at: index into
// Comparison::sections, -1 for none.
[[nodiscard]] int sectionRungOf(model::Finding const& finding, model::Comparison const& comparison);

// The whole row in words, for screen readers.
[[nodiscard]] QString spokenRow(FindingRow const& row);

}  // namespace standin::ui

Q_DECLARE_METATYPE(standin::ui::FindingRow const*)

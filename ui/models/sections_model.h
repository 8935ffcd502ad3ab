// The section ladder: the sections of both sheets as they were paired, with the
// count of findings at each rung. Row 0 stands for all sections.
#pragma once

#include <vector>

#include <QAbstractListModel>

#include "ui/models/findings_model.h"

namespace standin::ui {

struct SectionRung {
    QString reference, candidate;  // headings as printed; empty: this side has none
    int findings = 0;   // main findings above editorial
    int editorial = 0;
    int referencePage = 0, candidatePage = 0;
    bool all = false;   // row 0
};

class SectionsModel : public QAbstractListModel {
    Q_OBJECT

public:
    enum Role { RungRole = Qt::UserRole + 1 };

    // Counts the rows of `findings`, which outlives the model.
    SectionsModel(Session& session, FindingsModel const& findings, QObject* parent = nullptr);

    [[nodiscard]] int rowCount(QModelIndex const& parent = {}) const override;
    [[nodiscard]] QVariant data(QModelIndex const& index, int role) const override;

    [[nodiscard]] SectionRung const& rungAt(int row) const { return m_rungs[static_cast<std::size_t>(row)]; }
    // "Wording: 6 sentences differ in meaning, 41 in form only"
    [[nodiscard]] QString wordingLine() const;

private:
    void refill();

    Session& m_session;
    FindingsModel const& m_findings;
    std::vector<SectionRung> m_rungs;
};

}  // namespace standin::ui

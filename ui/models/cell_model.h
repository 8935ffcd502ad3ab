// The checks of both parts against the cell profile, and the quantities that were
// worked out of both sheets.
#pragma once

#include <vector>

#include <QAbstractTableModel>

#include "ui/models/session.h"

namespace standin::ui {

struct CellRow {
    QString title;
    QString limit;  // or the formula of a derived quantity
    QString reference, candidate;
    QString why;           // what is violated or missing
    QString outcome;       // of the candidate, in a word with its sign
    std::string finding;   // id, or empty
    bool derived = false;
};

class CellModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { Title, Limit, Reference, Candidate, Outcome, Why, ColumnCount };

    explicit CellModel(Session& session, QObject* parent = nullptr);

    [[nodiscard]] int rowCount(QModelIndex const& parent = {}) const override;
    [[nodiscard]] int columnCount(QModelIndex const& parent = {}) const override;
    [[nodiscard]] QVariant data(QModelIndex const& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

    [[nodiscard]] CellRow const& rowAt(int row) const { return m_rows[static_cast<std::size_t>(row)]; }
    // "Cell profile: …", or that none was given.
    [[nodiscard]] QString profileLine() const;

private:
    void refill();

    Session& m_session;
    std::vector<CellRow> m_rows;
};

}  // namespace standin::ui

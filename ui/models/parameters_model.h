// Every parameter pair of the comparison as a table, equal ones too.
#pragma once

#include <optional>
#include <vector>

#include <QAbstractTableModel>
#include <QSortFilterProxyModel>

#include "report/limit_strip.h"
#include "ui/models/session.h"

namespace standin::ui {

struct ParameterRow {
    QString name;       // the reference's with its symbol, the candidate's where only it has one
    QString candidateName;
    QString referenceCondition, candidateCondition;
    QString reference, candidate;  // "4.245 / 4.275 / 4.305 V", a dash where the side is missing
    QString relation;
    int referencePage = 0, candidatePage = 0;
    model::Rect referenceBox, candidateBox;
    double confidence = 0;  // of the pairing, 0 … 1
    bool differs = false;
    std::string finding;  // id of the finding about this pair, or empty
    std::optional<report::LimitStrip> strip;
};

class ParametersModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { Name, Condition, Reference, Candidate, Strip, Relation, Confidence, ColumnCount };
    enum Role { RowRole = Qt::UserRole + 1, SortRole };

    explicit ParametersModel(Session& session, QObject* parent = nullptr);

    [[nodiscard]] int rowCount(QModelIndex const& parent = {}) const override;
    [[nodiscard]] int columnCount(QModelIndex const& parent = {}) const override;
    [[nodiscard]] QVariant data(QModelIndex const& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

    [[nodiscard]] ParameterRow const& rowAt(int row) const { return m_rows[static_cast<std::size_t>(row)]; }

private:
    void refill();

    Session& m_session;
    std::vector<ParameterRow> m_rows;
};

// Rows that hold all of some words, and, if wanted, only those that differ. The
// rest is counted.
class ParametersFilter : public QSortFilterProxyModel {
    Q_OBJECT

public:
    explicit ParametersFilter(ParametersModel& parameters, QObject* parent = nullptr);
    void setText(QString const& text);
    void setOnlyDiffering(bool only);
    [[nodiscard]] int hiddenCount() const;
    [[nodiscard]] ParameterRow const& rowAt(int proxyRow) const;

Q_SIGNALS:
    void filterChanged();

protected:
    [[nodiscard]] bool filterAcceptsRow(int sourceRow, QModelIndex const& sourceParent) const override;

private:
    ParametersModel& m_parameters;
    QStringList m_words;
    bool m_onlyDiffering = false;
};

}  // namespace standin::ui

// The pins of both packages, paired by number.
#pragma once

#include <vector>

#include <QAbstractTableModel>

#include "ui/models/session.h"

namespace standin::ui {

struct PinRow {
    QString number;
    QString referenceName, candidateName;  // empty: no such pin
    QString referenceFunction, candidateFunction;
    int referencePage = 0, candidatePage = 0;
    model::Rect referenceBox, candidateBox;
    bool differs = false;        // another name, or a finding about it
    std::string finding;         // about this pin, or empty
};

class PinsModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { Number, ReferenceName, ReferenceFunction, CandidateName, CandidateFunction, Note, ColumnCount };

    explicit PinsModel(Session& session, QObject* parent = nullptr);

    // Packages that a sheet lists pins for; a sheet with one package has one
    // entry, which may be unnamed.
    [[nodiscard]] QStringList packages(DocumentSide side) const;
    void choosePackage(DocumentSide side, int package);
    [[nodiscard]] int chosenPackage(DocumentSide side) const { return side == DocumentSide::Reference ? m_referencePackage : m_candidatePackage; }

    [[nodiscard]] int rowCount(QModelIndex const& parent = {}) const override;
    [[nodiscard]] int columnCount(QModelIndex const& parent = {}) const override;
    [[nodiscard]] QVariant data(QModelIndex const& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

    [[nodiscard]] std::vector<PinRow> const& rows() const { return m_rows; }

private:
    void takePair();
    void refill();

    Session& m_session;
    int m_referencePackage = 0;
    int m_candidatePackage = 0;
    std::vector<PinRow> m_rows;
};

}  // namespace standin::ui

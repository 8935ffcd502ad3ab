// What was not compared, one place a row: what stands in one sheet only or is not
// comparable, numbers that nobody owns, pages without text, tables and figures
// that were not read, and findings of kind coverage.
#pragma once

#include <vector>

#include <QAbstractTableModel>

#include "ui/models/session.h"

namespace standin::ui {

struct CoverageRow {
    DocumentSide side = DocumentSide::Reference;
    int page = 0;  // 0: the whole document
    model::Rect box;
    QString what;  // "number without an owner"
    QString text;  // as printed, or a sentence
    std::string finding;  // id, or empty
};

class CoverageModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { Document, Page, What, Text, ColumnCount };

    explicit CoverageModel(Session& session, QObject* parent = nullptr);

    [[nodiscard]] int rowCount(QModelIndex const& parent = {}) const override;
    [[nodiscard]] int columnCount(QModelIndex const& parent = {}) const override;
    [[nodiscard]] QVariant data(QModelIndex const& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

    [[nodiscard]] CoverageRow const& rowAt(int row) const { return m_rows[static_cast<std::size_t>(row)]; }
    // Where the numbers of one document stand: "412 in parameters, 80 in other tables …"
    [[nodiscard]] QString accountLine(DocumentSide side) const;

private:
    void refill();
    void takeSheet(DocumentSide side);

    Session& m_session;
    std::vector<CoverageRow> m_rows;
};

}  // namespace standin::ui

// The lines of the record in hand: what must be decided, how it stands and what
// is still required. Lines that change no meaning are left out unless decided.
#pragma once

#include <vector>

#include <QAbstractTableModel>

#include "ui/models/record_book.h"

namespace standin::ui {

struct RecordRow {
    std::size_t line = 0;  // of the overview
    std::string finding;   // id
    QString severity, title, standing;
    int level = 0;
    bool closed = false;
};

class RecordModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { Finding, Severity, Level, Title, Standing, ColumnCount };

    // `book` outlives the model.
    explicit RecordModel(RecordBook& book, QObject* parent = nullptr);

    [[nodiscard]] int rowCount(QModelIndex const& parent = {}) const override;
    [[nodiscard]] int columnCount(QModelIndex const& parent = {}) const override;
    [[nodiscard]] QVariant data(QModelIndex const& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

    [[nodiscard]] RecordRow const& rowAt(int row) const { return m_rows[static_cast<std::size_t>(row)]; }
    // The row of the line that a finding belongs to, or -1.
    [[nodiscard]] int rowOf(std::string const& finding) const;

    // "logger.record: in review, 12 of 76 lines open", or how to begin.
    [[nodiscard]] QString stateLine() const;
    // Everything about a line: what follows from it, decisions, results. HTML.
    [[nodiscard]] QString lineText(int row) const;
    // Whoever signed, one a line; plain text.
    [[nodiscard]] QString signatureLines() const;

    // What took the record's place, who was given it and who has to be told; plain
    // text, empty where there is nothing to say.
    [[nodiscard]] QString distributionLines() const;

private:
    void refill();

    RecordBook& m_book;
    std::vector<RecordRow> m_rows;
};

// The words of dispositions are those of the findings page (words.h).
[[nodiscard]] QString dispositionWord(record::Disposition disposition);
[[nodiscard]] QString roleWord(record::Role role);
[[nodiscard]] QString standingWord(record::Standing standing);
[[nodiscard]] QString recordStateWord(record::RecordState state);

}  // namespace standin::ui

// Sentences that differ, as pairs with their changed words marked.
#pragma once

#include <vector>

#include <QAbstractListModel>

#include "ui/models/session.h"

namespace standin::ui {

// A stretch of a sentence; marked: the other sentence does not have it.
struct MarkedText {
    QString text;
    bool marked = false;
    bool operator==(MarkedText const&) const = default;
};

struct WordingRow {
    std::string finding;
    model::Severity severity = model::Severity::Note;
    QString title;
    std::vector<MarkedText> reference, candidate;  // empty: the sheet has no such sentence
    int referencePage = 0, candidatePage = 0;
};

class WordingModel : public QAbstractListModel {
    Q_OBJECT

public:
    explicit WordingModel(Session& session, QObject* parent = nullptr);

    // Pairs that differ in form only are left out at first, and counted.
    void setFormOnlyShown(bool shown);
    [[nodiscard]] int hiddenCount() const { return m_hidden; }

    [[nodiscard]] int rowCount(QModelIndex const& parent = {}) const override;
    [[nodiscard]] QVariant data(QModelIndex const& index, int role) const override;
    [[nodiscard]] WordingRow const& rowAt(int row) const { return m_rows[static_cast<std::size_t>(row)]; }
    [[nodiscard]] int rowOf(std::string const& findingId) const;  // -1: none

private:
    void refill();

    Session& m_session;
    std::vector<WordingRow> m_rows;
    bool m_formOnly = false;
    int m_hidden = 0;
};

// Both sentences cut into stretches that are shared and stretches that are not.
[[nodiscard]] std::pair<std::vector<MarkedText>, std::vector<MarkedText>> markedWords(std::string_view reference, std::string_view candidate);

}  // namespace standin::ui

// What a person decided on findings: disposition and remark, kept with the pair
// of documents in the user's data folder, with undo.
//
// A pair is known by the SHA-256 of both files, a decision by the finding's
// stable id: a changed document starts without decisions, and its own come back
// with it.
//
//     Decisions decisions(folder);
//     decisions.load(reference.document.sha256, candidate.document.sha256);
//     decisions.decide("3f0a…", {Disposition::BenchTest, "five samples"}, "Overcharge detection voltage");
//     decisions.undoStack().undo();
#pragma once

#include <array>
#include <map>
#include <optional>
#include <string>
#include <string_view>

#include <QObject>
#include <QString>
#include <QUndoStack>

#include "model/result.h"

namespace standin::ui {

enum class Disposition { Open, Accepted, AcceptedWithCondition, BenchTest, SupplierStatement, NotApplicable, Rejected };

inline constexpr std::array kDispositions{Disposition::Open,      Disposition::Accepted,          Disposition::AcceptedWithCondition,
                                          Disposition::BenchTest, Disposition::SupplierStatement, Disposition::NotApplicable,
                                          Disposition::Rejected};

// The word in files: "accepted-with-condition".
[[nodiscard]] std::string_view wordOf(Disposition disposition);
[[nodiscard]] std::optional<Disposition> dispositionOf(std::string_view word);

struct Decision {
    Disposition disposition = Disposition::Open;
    std::string remark;
    bool operator==(Decision const&) const = default;
};

class Decisions : public QObject {
    Q_OBJECT

public:
    explicit Decisions(QString folder, QObject* parent = nullptr);

    // Takes up what was kept for this pair; the undo history starts anew. A file
    // that cannot be read is told by troubled() and set aside, not overwritten.
    void load(std::string const& referenceSha256, std::string const& candidateSha256);
    void clear();

    [[nodiscard]] Decision decisionOn(std::string const& findingId) const;
    [[nodiscard]] int decidedCount() const;

    // Undoable and kept on disk at once. `name` is shown in the undo menu.
    // Nothing happens where the decision is the same already. Remarks that are
    // typed letter by letter are one step of undo.
    void decide(std::string const& findingId, Decision const& decision, QString const& name);

    [[nodiscard]] QUndoStack& undoStack() { return m_undo; }

    // Where the decisions of a pair are kept.
    [[nodiscard]] QString filePath() const;

Q_SIGNALS:
    void changed(std::string findingId);  // empty: all
    // A sentence for the user; the decisions themselves stay as they are shown.
    void troubled(QString message);

private:
    friend class DecideCommand;
    void put(std::string const& findingId, Decision const& decision);
    [[nodiscard]] bool save();

    QString m_folder;
    std::string m_reference, m_candidate;
    std::map<std::string, Decision> m_byFinding;  // none is Open without a remark
    QUndoStack m_undo;
};

}  // namespace standin::ui

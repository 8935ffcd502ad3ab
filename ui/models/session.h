// What the desk works on, in one place: the pair, the finding that is looked at,
// the decisions. Views send their commands here and listen to its signals; they
// do not know each other.
//
//     Session session;
//     connect(&session, &Session::pairChanged, …);
//     session.open({"reference.pdf", "candidate.pdf"});
#pragma once

#include <optional>

#include <QFileSystemWatcher>
#include <QObject>
#include <QTimer>

#include "ui/models/corrections.h"
#include "ui/models/decisions.h"
#include "ui/models/document_side.h"
#include "ui/worker/page_drawer.h"
#include "ui/worker/pair_worker.h"

namespace standin::ui {

class Session : public QObject {
    Q_OBJECT

public:
    enum class State { Empty, Reading, Ready, Failed };
    Q_ENUM(State)

    // `decisionsFolder`: where decisions are kept with their pair.
    explicit Session(QString decisionsFolder, QObject* parent = nullptr);

    // Reads and compares; a pair that is shown stays until the new one is there.
    void open(PairRequest request);
    // The same files again: after a change on disk, after a correction.
    void readAgain();
    void exchange();
    // Goes back to the pair that is shown, or to Empty.
    void cancel();

    [[nodiscard]] State state() const { return m_state; }
    // Null until a pair was read. Views keep the pointer only between two pairChanged().
    [[nodiscard]] PairPointer const& pair() const { return m_pair; }
    // What was asked for last, also when it failed.
    [[nodiscard]] PairRequest const& request() const { return m_request; }
    [[nodiscard]] std::optional<model::Error> const& error() const { return m_error; }

    [[nodiscard]] Decisions& decisions() { return m_decisions; }
    [[nodiscard]] Decisions const& decisions() const { return m_decisions; }

    [[nodiscard]] Corrections& corrections() { return m_corrections; }
    // Pictures of the pages of pair().
    [[nodiscard]] PageDrawer& drawer() { return m_drawer; }

    // The finding that is looked at; null where none is. Borrowed from pair().
    [[nodiscard]] model::Finding const* currentFinding() const;
    // Empty, or an id that the comparison does not have: none.
    void setCurrentFinding(std::string const& id);

    // A view wants a place to be shown: `box` in points of the page as displayed
    // (top left origin), `page` from 1.
    void choosePlace(DocumentSide side, int page, model::Rect const& box);

Q_SIGNALS:
    void stateChanged(standin::ui::Session::State state);
    void progressed(int done, int total);
    void pairChanged();
    void currentFindingChanged();
    void placeChosen(standin::ui::DocumentSide side, int page, standin::model::Rect box);
    // A file that was read has other bytes now, or is gone.
    void fileChangedOnDisk(standin::ui::DocumentSide side);

private:
    void setState(State state);
    void takePair(PairPointer pair);
    void takeError(model::Error error);
    void watchFiles();
    void noticeChange(QString const& path);

    PairWorker m_worker;
    PageDrawer m_drawer;
    Decisions m_decisions;
    Corrections m_corrections;
    QFileSystemWatcher m_watcher;
    State m_state = State::Empty;
    PairPointer m_pair;
    PairRequest m_request;
    std::optional<model::Error> m_error;
    std::string m_currentFinding;
};

}  // namespace standin::ui

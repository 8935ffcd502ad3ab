// The record that the desk has in hand: which file, how it stands, and the
// commands on it, which run off the main thread one after the other.
//
//     RecordBook book(session);
//     connect(&book, &RecordBook::changed, …);
//     book.setSigner({"ashdown.key", ""});
//     book.decide(decision);               // then changed(), or refused()
//
// The record that was in hand for a pair is taken up again with the pair.
#pragma once

#include <functional>

#include <QObject>
#include <QStringList>
#include <QThreadPool>

#include "ui/models/session.h"
#include "ui/worker/record_jobs.h"

namespace standin::ui {

class RecordBook : public QObject {
    Q_OBJECT

public:
    // `session` outlives the book.
    explicit RecordBook(Session& session, QObject* parent = nullptr);
    // Waits for what is being written.
    ~RecordBook() override;

    // Null where none is in hand. Kept only between two changed().
    [[nodiscard]] RecordPointer const& record() const { return m_record; }
    // Whether it is about the two documents that the desk shows.
    [[nodiscard]] bool isOfPair() const;
    [[nodiscard]] bool isBusy() const { return m_running > 0; }

    [[nodiscard]] Signer const& signer() const { return m_signer; }
    void setSigner(Signer signer);

    // Each answers by finished() or refused(); those that change the record by
    // changed() too. Without a record, or without a pair where one is needed,
    // nothing happens.
    void take(QString const& file);
    void open(NewRecord wanted);
    void decide(NewDecision decision);
    void enter(record::BenchResult result, std::vector<std::string> evidence);
    void sign(record::Role role, QString const& note);
    void supersede(QString const& by, QString const& reason);
    void distribute(record::Distributed distributed);
    void merge(QString const& other, QString const& output);
    void check();
    void report(QString const& output, RecordReport form);
    // The new key is the one that signs from then on.
    void makeKey(QString const& file, QString const& name, QString const& passphrase);

Q_SIGNALS:
    void changed();
    void busyChanged();
    void signerChanged();
    // What was done, in sentences.
    void finished(QStringList const& told);
    // Why it was not done.
    void refused(QString const& why);

private:
    using Job = std::function<model::Result<RecordOutcome>()>;
    using Done = std::function<void(RecordOutcome const&)>;
    void run(Job job, Done done);
    void hold(RecordPointer record);
    void takePair();

    Session& m_session;
    RecordPointer m_record;
    Signer m_signer;
    QThreadPool m_pool;
    int m_running = 0;
};

}  // namespace standin::ui

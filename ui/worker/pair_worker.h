// Reads and compares two documents off the main thread. ui/worker/ includes Qt
// Core and src/; nothing of the other ui/ folders.
//
//     PairWorker worker;
//     connect(&worker, &PairWorker::finished, …);
//     int const job = worker.start({"a.pdf", "b.pdf"});
//     worker.cancel();                                  // within a page or so
#pragma once

#include <atomic>
#include <functional>
#include <memory>

#include <QObject>
#include <QThreadPool>

#include "model/result.h"
#include "ui/worker/read_pair.h"

namespace standin::ui {

// The work itself, for any thread. `progress` as ReadOptions has it. Errors are
// those of cli::comparePair(), Internal for what a library threw.
[[nodiscard]] model::Result<PairPointer> readAndCompare(PairRequest const& request, std::function<bool(int, int)> const& progress);

// Lives in one thread (the main one); all signals come in that thread.
class PairWorker : public QObject {
    Q_OBJECT

public:
    explicit PairWorker(QObject* parent = nullptr);
    // Cancels and waits for the job that is under way.
    ~PairWorker() override;

    // Cancels what is under way and starts another job. Returns its number.
    int start(PairRequest request);
    // After it neither finished() nor failed() comes for the job.
    void cancel();
    [[nodiscard]] bool isRunning() const { return m_stop != nullptr; }

Q_SIGNALS:
    void progressed(int done, int total);  // pages
    void finished(standin::ui::PairPointer pair);
    void failed(standin::model::Error error);

private:
    void deliver(int job, model::Result<PairPointer> const& outcome);

    QThreadPool m_pool;
    int m_job = 0;
    std::shared_ptr<std::atomic<bool>> m_stop;  // of the job under way
};

}  // namespace standin::ui

// One pool with one thread: a second job waits until the first noticed its stop
// flag. Results travel as queued calls, so a result that was on its way when its
// job was cancelled is told by the job's number and dropped.
//
// Tested by tests/ui/worker/pair_worker_test.cpp.
#include "ui/worker/pair_worker.h"


#include <QMetaObject>

#include "cli/compare_pair.h"
#include "risk/compare_datasheets.h"
#include "ui/worker/compare_command.h"
#include "ui/worker/guarded.h"

namespace standin::ui {

namespace {

model::Result<PairPointer> work(PairRequest const& request, std::function<bool(int, int)> const& progress) {
    auto compared = cli::comparePair(commandOf(request), request.password, progress, cli::PageBytes::Keep);
    if (!compared) return tl::unexpected(compared.error());
    auto pair = std::make_shared<ReadPair>();
    pair->request = request;
    pair->referenceVariants = risk::knownVariants(compared->result.reference);
    pair->candidateVariants = risk::knownVariants(compared->result.candidate);
    pair->reference = std::move(compared->result.reference);
    pair->candidate = std::move(compared->result.candidate);
    pair->comparison = std::move(compared->result.comparison);
    pair->tests = std::move(compared->result.tests);
    pair->referenceBytes = std::move(compared->bytes.reference);
    pair->candidateBytes = std::move(compared->bytes.candidate);
    return PairPointer(std::move(pair));
}

}  // namespace

model::Result<PairPointer> readAndCompare(PairRequest const& request, std::function<bool(int, int)> const& progress) {
    return guarded(request.reference, [&] { return work(request, progress); });
}

PairWorker::PairWorker(QObject* parent) : QObject(parent) { m_pool.setMaxThreadCount(1); }

PairWorker::~PairWorker() {
    cancel();
    m_pool.waitForDone();
}

int PairWorker::start(PairRequest request) {
    cancel();
    int const job = ++m_job;
    auto const stop = std::make_shared<std::atomic<bool>>(false);
    m_stop = stop;
    m_pool.start([this, job, stop, request = std::move(request)] {
        auto const progress = [this, job, &stop](int done, int total) {
            QMetaObject::invokeMethod(
                this, [this, job, done, total] {
                    if (job == m_job && m_stop) Q_EMIT progressed(done, total);
                }, Qt::QueuedConnection);
            return !*stop;
        };
        if (*stop) return;
        auto outcome = readAndCompare(request, progress);
        if (*stop) return;
        QMetaObject::invokeMethod(this, [this, job, outcome = std::move(outcome)] { deliver(job, outcome); }, Qt::QueuedConnection);
    });
    return job;
}

void PairWorker::cancel() {
    if (m_stop) *m_stop = true;
    m_stop.reset();
}

void PairWorker::deliver(int job, model::Result<PairPointer> const& outcome) {
    if (job != m_job || !m_stop) return;
    m_stop.reset();
    if (outcome) Q_EMIT finished(*outcome);
    else Q_EMIT failed(outcome.error());
}

}  // namespace standin::ui

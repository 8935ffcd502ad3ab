// A list of jobs with pieces that nobody has begun. A caller does pieces of its own job, and
// while others end the last of these, pieces of jobs that were opened inside of it; the
// newest first, which are nearest to what it waits for. Another caller's pieces may be far
// longer than what it waits for, so it leaves them alone. The second thread takes the oldest
// job of any caller; of one caller's jobs that is the outermost.
//
// Nobody waits in a circle: below what a thread waits for, it has only jobs around that one.
//
// Tested by tests/src/model/crew_test.cpp.
#include "model/crew.h"

#include <algorithm>
#include <condition_variable>
#include <exception>
#include <functional>
#include <mutex>
#include <thread>
#include <utility>
#include <vector>

#include "model/memory.h"

namespace standin::model {

namespace {

constexpr std::size_t kParts = 4;  // more than threads, since parts are not of one length

struct Job {
    std::function<void(std::size_t)> const& work;
    std::size_t pieces;
    Job const* parent;  // whose piece opened this one; null: none
    std::size_t begun = 0;
    std::size_t done = 0;
    std::exception_ptr thrown = {};
};

thread_local Job const* currentJob = nullptr;  // whose piece this thread is in

bool isWithin(Job const* job, Job const& outer) {
    while (job != nullptr && job != &outer) job = job->parent;
    return job != nullptr;
}

class Crew {
public:
    // Never destroyed: the second thread waits in it until the program ends.
    static Crew& instance() {
        static Crew* const crew = new Crew;
        return *crew;
    }

    void run(Job& job) {
        std::unique_lock lock(m_mutex);
        start();
        m_open.push_back(&job);
        m_changed.notify_all();
        while (job.done < job.pieces) {
            if (job.begun < job.pieces) doPiece(job, lock);
            else if (Job* const inner = newestWithin(job)) doPiece(*inner, lock);
            else m_changed.wait(lock);
        }
        lock.unlock();
        if (job.thrown) std::rethrow_exception(job.thrown);
    }

private:
    void start() {
        if (m_started) return;
        m_started = true;
        try {
            std::thread([this] { help(); }).detach();
        } catch (...) {
            // No thread to be had, or no memory for one: the callers do everything.
        }
    }

    [[nodiscard]] Job* newestWithin(Job const& outer) const {
        auto const found = std::find_if(m_open.rbegin(), m_open.rend(), [&outer](Job const* job) { return isWithin(job, outer); });
        return found == m_open.rend() ? nullptr : *found;
    }

    [[noreturn]] void help() {
        useLargePages();
        std::unique_lock lock(m_mutex);
        while (true) {
            m_changed.wait(lock, [this] { return !m_open.empty(); });
            doPiece(*m_open.front(), lock);
        }
    }

    void doPiece(Job& job, std::unique_lock<std::mutex>& lock) {
        std::size_t const piece = job.begun++;
        if (job.begun == job.pieces) std::erase(m_open, &job);
        lock.unlock();
        Job const* const before = std::exchange(currentJob, &job);
        std::exception_ptr thrown;
        try {
            job.work(piece);
        } catch (...) {
            thrown = std::current_exception();
        }
        currentJob = before;
        lock.lock();
        if (thrown && !job.thrown) job.thrown = thrown;
        if (++job.done == job.pieces) m_changed.notify_all();
    }

    std::mutex m_mutex;  // guards everything, the fields of the jobs too
    std::condition_variable m_changed;
    std::vector<Job*> m_open;  // with pieces not begun, in the order of their coming
    bool m_started = false;
};

}  // namespace

void inPieces(std::size_t count, std::function<void(std::size_t)> const& work) {
    if (count == 0) return;
    if (count == 1) return work(0);
    Job job{.work = work, .pieces = count, .parent = currentJob};
    Crew::instance().run(job);
}

void together(std::function<void()> const& first, std::function<void()> const& second) {
    inPieces(2, [&](std::size_t piece) { piece == 0 ? first() : second(); });
}

void inParts(std::size_t count, std::function<void(std::size_t, std::size_t)> const& work, std::size_t least) {
    if (count < least || count < kParts) return work(0, count);
    inPieces(kParts, [&](std::size_t part) { work(count * part / kParts, count * (part + 1) / kParts); });
}

}  // namespace standin::model

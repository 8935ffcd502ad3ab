// flock on a file beside the record, since the record itself is replaced by a
// rename. The lock file is removed while it is held, so whoever gets the lock
// looks whether it still is the file of that name.
// Tested by tests/src/record/store_test.cpp.
#include "record/store.h"

#include <cerrno>
#include <csignal>
#include <cstring>
#include <thread>
#include <utility>

#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <fmt/format.h>

#include "model/file.h"
#include "record/rules.h"

namespace standin::record {

using model::Error;
using model::ErrorKind;
using model::Result;

namespace {

constexpr std::chrono::milliseconds kBetweenTries{50};

Error trouble(ErrorKind kind, std::string message, std::string const& path) { return {kind, std::move(message), path, 0}; }

bool isFileOfName(int descriptor, std::string const& name) {
    struct stat open {};
    struct stat named {};
    return fstat(descriptor, &open) == 0 && stat(name.c_str(), &named) == 0 && open.st_dev == named.st_dev && open.st_ino == named.st_ino;
}

Result<Record> verified(std::string const& text, std::string const& path) {
    auto record = parseRecord(text);
    auto const holds = record ? obeysRules(*record) : tl::unexpected(record.error());
    if (holds) return record;
    auto error = holds.error();
    error.file = path;
    return tl::unexpected(std::move(error));
}

}  // namespace

Result<FileLock> FileLock::take(std::string const& path, std::chrono::milliseconds wait) {
    auto const name = path + ".lock";
    auto const until = std::chrono::steady_clock::now() + wait;
    while (true) {
        int const descriptor = open(name.c_str(), O_RDWR | O_CREAT | O_CLOEXEC, 0666);
        if (descriptor < 0) return tl::unexpected(trouble(ErrorKind::Unreadable, fmt::format("cannot be locked: {}", std::strerror(errno)), path));
        if (flock(descriptor, LOCK_EX | LOCK_NB) == 0 && isFileOfName(descriptor, name)) return FileLock(descriptor, name);
        close(descriptor);
        if (std::chrono::steady_clock::now() >= until) {
            return tl::unexpected(trouble(ErrorKind::Usage, "is being changed by another program; try again when it is done", path));
        }
        std::this_thread::sleep_for(kBetweenTries);
    }
}

FileLock::FileLock(int descriptor, std::string name) : m_descriptor(descriptor), m_name(std::move(name)) {
    sigset_t interrupts;
    sigemptyset(&interrupts);
    for (int const signal : {SIGINT, SIGTERM, SIGHUP}) sigaddset(&interrupts, signal);
    pthread_sigmask(SIG_BLOCK, &interrupts, &m_before);
}

FileLock::FileLock(FileLock&& other) noexcept : m_descriptor(std::exchange(other.m_descriptor, -1)), m_name(std::move(other.m_name)), m_before(other.m_before) {}

FileLock::~FileLock() {
    if (m_descriptor < 0) return;
    unlink(m_name.c_str());
    close(m_descriptor);
    pthread_sigmask(SIG_SETMASK, &m_before, nullptr);
}

Result<Record> loadRecord(std::string const& path) {
    auto const text = model::readFile(path, kLongestRecord);
    if (!text) return tl::unexpected(text.error());
    return verified(*text, path);
}

Result<void> createRecord(std::string const& path, Record const& record, Writing const& writing) {
    auto const lock = FileLock::take(path, writing.wait);
    if (!lock) return tl::unexpected(lock.error());
    if (access(path.c_str(), F_OK) == 0) return tl::unexpected(trouble(ErrorKind::Usage, "exists already; a record is never replaced, give another name", path));
    auto const text = toText(record);
    if (auto const holds = verified(text, path); !holds) return tl::unexpected(holds.error());
    return model::replaceFile(path, text, writing.watch);
}

Result<Record> updateRecord(std::string const& path, std::function<Result<Record>(Record)> const& change, Writing const& writing) {
    auto const lock = FileLock::take(path, writing.wait);
    if (!lock) return tl::unexpected(lock.error());
    auto record = loadRecord(path);
    if (!record) return record;
    auto changed = change(*std::move(record));
    if (!changed) {
        auto error = changed.error();
        if (error.file.empty()) error.file = path;
        return tl::unexpected(std::move(error));
    }
    // What the next reader would refuse is not written.
    auto const text = toText(*changed);
    if (auto const holds = verified(text, path); !holds) return holds;
    if (auto const written = model::replaceFile(path, text, writing.watch); !written) return tl::unexpected(written.error());
    return changed;
}

}  // namespace standin::record

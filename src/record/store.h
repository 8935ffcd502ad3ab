// Records on disk: read, changed under a lock, written durably.
//
//     auto changed = updateRecord("evaluation.record", [&](Record record) { return withEntry(std::move(record), body, moment); });
//
// A second program that wants to change the same record waits a while for the
// first and then says so. A crash at any point leaves the old record or the new one.
#pragma once

#include <chrono>
#include <csignal>
#include <functional>
#include <string>

#include "model/durable_file.h"
#include "model/result.h"
#include "record/record.h"

namespace standin::record {

inline constexpr std::size_t kLongestRecord = std::size_t{256} << 20;  // bytes
inline constexpr std::chrono::milliseconds kUsualWait{10'000};

// How the disk is written to; the defaults are for everybody but tests.
struct Writing {
    std::chrono::milliseconds wait = kUsualWait;  // for another program
    model::WriteWatch watch = {};
};

// Reads, verifies and holds against the rules. Errors: Unreadable, Damaged; the
// file is named.
[[nodiscard]] model::Result<Record> loadRecord(std::string const& path);

// Writes a new record. Usage error: the file exists already.
[[nodiscard]] model::Result<void> createRecord(std::string const& path, Record const& record, Writing const& writing = {});

// Reads the record, lets `change` make another of it and writes that, all under
// the lock. The record as written. What `change` refuses is given back and
// nothing is written.
[[nodiscard]] model::Result<Record> updateRecord(std::string const& path, std::function<model::Result<Record>(Record)> const& change, Writing const& writing = {});

// Holds FILE.lock beside a file; it goes away with the object. Until then an
// interrupt waits, so that no half-written file stays. Stays in its thread.
class FileLock {
public:
    // Usage error: another program holds it for longer than `wait`.
    [[nodiscard]] static model::Result<FileLock> take(std::string const& path, std::chrono::milliseconds wait);
    FileLock(FileLock&& other) noexcept;
    FileLock& operator=(FileLock&&) = delete;
    ~FileLock();

private:
    FileLock(int descriptor, std::string name);
    int m_descriptor;
    std::string m_name;
    sigset_t m_before{};  // signals that were held back before
};

}  // namespace standin::record

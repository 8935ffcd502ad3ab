// What the desk does with a record, as `standin record` does it: each function
// reads and writes the file anew, under its lock. For any thread; they take as
// long as the disk and the comparison take, so not for the main one.
//
// Defines: Signer, ReadRecord, RecordOutcome, NewRecord, RecordReport.
//
//     auto decided = decideInRecord("logger.record", {"ashdown.key", ""}, decision);
//     decided->record->overview.open.size()
//
// Errors are those of src/record/: Usage for what a rule refuses or a key that
// does not open, Damaged for a record that does not hold, Unreadable.
#pragma once

#include <memory>
#include <string>
#include <vector>

#include "model/result.h"
#include "record/changes.h"
#include "record/record.h"
#include "record/state.h"
#include "ui/worker/read_pair.h"

namespace standin::ui {

// Who signs: a key file, and what opens it (empty: nothing).
struct Signer {
    std::string keyFile, passphrase;
};

struct ReadRecord {
    std::string file;
    record::Record record;
    record::Overview overview;
};
using RecordPointer = std::shared_ptr<ReadRecord const>;

struct RecordOutcome {
    RecordPointer record;           // as it is now; null: another one was not touched
    std::vector<std::string> told;  // sentences about what was done
};

// A decision with the files that it relies on.
struct NewDecision {
    record::Decided decided;
    std::vector<std::string> evidence;  // paths
    record::Stance stance = record::Stance::Own;
};

struct NewRecord {
    std::string file;
    std::string from;  // the record whose decisions are carried over; may be empty
    record::Identification identification;
};

enum class RecordReport { Html, Pdf };

[[nodiscard]] model::Result<RecordOutcome> readRecord(std::string const& file);

// Compares the pair again, so that the record holds what the files hold now.
// Usage error: that is no longer what the desk shows.
[[nodiscard]] model::Result<RecordOutcome> openRecordOf(ReadPair const& pair, NewRecord const& wanted, Signer const& signer);

[[nodiscard]] model::Result<RecordOutcome> decideInRecord(std::string const& file, NewDecision const& decision, Signer const& signer);
[[nodiscard]] model::Result<RecordOutcome> enterResult(std::string const& file, record::BenchResult const& result, std::vector<std::string> const& evidence, Signer const& signer);
[[nodiscard]] model::Result<RecordOutcome> signRecord(std::string const& file, record::Role role, std::string const& note, Signer const& signer);
// The record in the file `by` takes its place.
[[nodiscard]] model::Result<RecordOutcome> supersedeRecord(std::string const& file, std::string const& by, std::string const& reason, Signer const& signer);
[[nodiscard]] model::Result<RecordOutcome> distributeRecord(std::string const& file, record::Distributed const& distributed, Signer const& signer);
// Into a new file.
[[nodiscard]] model::Result<RecordOutcome> mergeRecordFiles(std::string const& file, std::string const& other, std::string const& output, Signer const& signer);

// Everything that `standin record check` says, the sheets of the pair, opened with its
// password, being what is there now. `sheets` null: they are not looked at.
[[nodiscard]] model::Result<RecordOutcome> checkRecordFile(std::string const& file, PairRequest const* sheets);

[[nodiscard]] model::Result<RecordOutcome> reportRecord(std::string const& file, std::string const& output, RecordReport form);

// A new key file, only for its owner to read.
[[nodiscard]] model::Result<RecordOutcome> makeKeyFile(std::string const& file, std::string const& name, std::string const& passphrase);

}  // namespace standin::ui

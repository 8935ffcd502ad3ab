// The arguments of `standin record …` as a plain value.
//
//     auto command = parseRecordArguments(argc, argv);   // argv[0] is "record"
//     if (!command) … command.error().message …
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "cli/arguments.h"
#include "record/entry.h"

namespace standin::cli {

enum class RecordAction : std::uint8_t { Open, Decide, Result, Sign, Show, Check, Report, Merge, Supersede, Distribute, NewKey, ShowKey, Information };

// Which fields are filled depends on the action; the others are empty.
struct RecordCommand {
    RecordAction action = RecordAction::Show;
    std::string information;  // --help

    std::string file;        // the record; of `key` the key file
    std::string other;       // merge: the second copy; supersede: the record that takes its place
    std::string output;      // open, merge: the new record
    CompareCommand compare;  // open: the two sheets and how they are read
    std::string from;        // open: the record whose decisions are carried over
    record::Identification identification;

    std::string key, passphraseFile;
    std::string name;         // key --new
    bool lockKey = false;     // key --new: ask for a passphrase

    std::vector<std::string> findings;  // decide
    bool everyNote = false;             // decide: all open lines of severity note
    bool confirm = false;               // decide: the same as is in force
    record::Decided decided;            // decide: without finding and evidence
    std::vector<std::string> evidence;  // decide, result: files

    record::BenchResult result;
    record::Role role = record::Role::Author;
    std::string note;

    std::string reason;                   // supersede
    std::vector<std::string> recipients;  // distribute
    record::Distributed distributed;      // distribute: without its recipient

    std::string reference, candidate;  // check: the sheets as they are now
    std::string head;                  // check: the hash of an entry that must be there
    Output html, pdf;                  // report
};

// Errors (Usage): one line that says what is wrong and what to do.
[[nodiscard]] model::Result<RecordCommand> parseRecordArguments(int argc, char const* const* argv);

}  // namespace standin::cli

// A record: entries in the order of the file, and its text.
//
// Defines: Record, Moment.
//
//     auto record = openRecord(opened, {"2031-05-04T09:30:00Z", key});
//     auto longer = withEntry(*record, Body{decided}, moment);
//     std::string const text = toText(*longer);   // JSON Lines, the head last
//     auto again = parseRecord(text);
//
// How it holds together: each entry is signed and names its parents by hash, so
// no entry can be changed, taken out or put in between. The head, rewritten with
// each entry, carries the count and the hash of the last entry under the
// signature of that entry's author, so that a tail cannot be cut off: whoever
// does so lacks the key of the entry that would then be the last. What the file
// alone cannot tell is that somebody put back an older copy of it whole; the
// head's hash that every report prints tells that (check --head).
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "model/result.h"
#include "record/entry.h"

namespace standin::record {

// When something is done and by whom. The only clock of a record is its caller's.
struct Moment {
    std::string at;
    SigningKey const& key;
};

struct Record {
    std::vector<Entry> entries;  // parents before children; the last is the head
    std::string headLine;

    [[nodiscard]] Opened const& opened() const { return std::get<Opened>(entries.front().body); }
    [[nodiscard]] std::string const& root() const { return entries.front().hash; }
    [[nodiscard]] Entry const& head() const { return entries.back(); }
};

[[nodiscard]] model::Result<Record> openRecord(Opened opened, Moment const& moment);

// The record with one entry more. Adds what it is given: see rules.h for what may be.
[[nodiscard]] model::Result<Record> withEntry(Record record, Body body, Moment const& moment);

// The same with an entry that is signed already by the same key (merge.h).
[[nodiscard]] model::Result<Record> withEntry(Record record, Entry entry, SigningKey const& key);

[[nodiscard]] std::string toText(Record const& record);

// Reads and verifies. An error (Damaged) names the first line that does not hold
// and why: "line 3 (decided by R. Ashdown …): was changed …".
[[nodiscard]] model::Result<Record> parseRecord(std::string_view text);

inline constexpr std::size_t kMostEntries = 4096;  // what is longer is no record of a substitution

// Which entries come before which, as a table of bits: row by entry, both by index.
// Every entry counts among its own.
class Ancestry {
public:
    using Row = std::vector<std::uint64_t>;
    explicit Ancestry(Record const& record);
    [[nodiscard]] Row const& of(std::size_t entry) const { return m_rows[entry]; }

private:
    std::vector<Row> m_rows;
};
[[nodiscard]] inline bool isIn(Ancestry::Row const& row, std::size_t entry) { return (row[entry / 64] >> entry % 64 & 1) != 0; }

// The entry with this hash, or the number of entries.
[[nodiscard]] std::size_t indexOf(Record const& record, std::string_view hash);

}  // namespace standin::record

// What a record consists of: entries, each signed by the person who made it and
// naming the entries before it by their hash.
//
// Defines: Disposition, Evidence, Identification, UsedFile, Method, Predecessor,
// Opened, Decided, Carried, BenchResult, Role, Signed, Merged, Superseded,
// Distributed, Body, Entry, Head.
//
// On paper (schema standin.record/1) an entry is one line of canonical JSON:
// members sorted by name, no blanks, no escapes but those that JSON asks for.
//
//     {"at":"2031-05-04T09:30:00Z","body":{…},"by":{"key":"…","name":"…"},"kind":"decided",
//      "parents":["…"],"schema":"standin.record/1","sequence":2,"signature":"…"}
//
// `signature` is made over "standin.record/1\n" and the same line without the
// member `signature`; an entry's hash is SHA-256 over the bytes of its line,
// without the line end. All hexadecimal digits are lower case.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "model/comparison.h"
#include "model/result.h"
#include "record/key.h"
#include "risk/bench_tests.h"

namespace standin::record {

enum class Disposition : std::uint8_t { Open, Accepted, AcceptedWithCondition, BenchTest, SupplierStatement, NotApplicable, Rejected };

[[nodiscard]] std::string_view nameOf(Disposition disposition);
[[nodiscard]] std::optional<Disposition> dispositionOf(std::string_view name);

// A file that somebody relies on; it stays outside of the record.
struct Evidence {
    std::string file;
    std::string sha256;
    bool operator==(Evidence const&) const = default;
};

struct Identification {
    std::string number;
    std::string title;
    std::string product;   // and assembly
    std::string position;  // on the assembly
    std::string scope;     // which product, lot, quantity
    std::string validUntil;  // a date, "2032-01-31"; empty: no end
    std::vector<std::string> reviewTriggers;
    bool operator==(Identification const&) const = default;
};

// A file that took part in the comparison, kept whole where it is small.
struct UsedFile {
    std::string kind;  // "vocabulary", "corrections", "cell", "circuit"
    std::string file;
    std::string sha256;
    std::string content;  // empty where it is too long
    bool operator==(UsedFile const&) const = default;
};

struct Method {
    std::string program;     // version
    std::string vocabulary;  // SHA-256 of the vocabulary that is part of the program
    std::string referenceVariant, candidateVariant;
    std::vector<UsedFile> files;
    std::string ocr;  // languages in which pictures were recognised, "eng+deu"; empty: none was
    bool operator==(Method const&) const = default;
};

// The record whose decisions were carried over.
struct Predecessor {
    std::string root, head;  // hashes of its first and last entry
    std::int64_t count = 0;
    bool operator==(Predecessor const&) const = default;
};

// The first entry: what was compared, how, and everything that was found.
struct Opened {
    Identification identification;
    Method method;
    model::Comparison comparison;
    std::vector<risk::BenchTest> tests;
    std::vector<std::string> sampleRules;
    std::optional<Predecessor> predecessor;
    bool operator==(Opened const&) const = default;
};

struct Decided {
    std::string finding;
    Disposition disposition = Disposition::Open;
    std::string reason;
    std::string condition;  // for accepted-with-condition: the condition, how it is verified, where it is written
    std::vector<Evidence> evidence;
    std::string addressee, due;  // of a supplier statement
    std::string samples;         // of a bench test
    bool operator==(Decided const&) const = default;
};

// A decision of an earlier record: the line of that entry as it stands there,
// still under the signature of the person who decided.
struct Carried {
    std::string line;
    Decided decided;  // read from `line`
    Person by;
    std::string at;
    bool operator==(Carried const&) const = default;
};

enum class Outcome : std::uint8_t { NotJudged, Within, Outside };

struct BenchResult {
    std::string test;     // id of a bench test of the record
    std::string finding;  // the finding whose limit it is held against; empty: none
    std::string check = {};           // the cell check whose limit it is; empty: that which is printed
    std::vector<std::string> values;  // decimals
    std::string unit;
    std::string condition;
    int samples = 0;  // 0: not stated
    int lots = 0;
    std::string instrument;
    std::string note;
    std::vector<Evidence> evidence;
    Outcome outcome = Outcome::NotJudged;
    bool operator==(BenchResult const&) const = default;
};

enum class Role : std::uint8_t { Author, Reviewer, Approver };

[[nodiscard]] std::string_view nameOf(Role role);
[[nodiscard]] std::optional<Role> roleOf(std::string_view name);
[[nodiscard]] std::string_view nameOf(Outcome outcome);

struct Signed {
    Role role = Role::Author;
    std::string note;
    bool operator==(Signed const&) const = default;
};

// Two copies became one. On these findings they had decided differently.
struct Merged {
    std::vector<std::string> conflicts;
    bool operator==(Merged const&) const = default;
};

// Another record takes this one's place; nothing is decided here any more.
struct Superseded {
    std::string number, title;  // of the other record, as it identifies itself; may be empty
    std::string root, head;     // hashes of its first and, at that time, last entry
    std::string reason;
    bool operator==(Superseded const&) const = default;
};

// What is given where nothing else is said.
inline constexpr std::string_view kCopyOfRecord = "a copy of the record";

// Somebody was given what the record says, or carried it into his own papers.
struct Distributed {
    std::string to;      // a person, a department, a list
    std::string what;    // "a copy of the record", "update of the purchasing list"
    std::string change;  // number of the change it went with (drawing, parts list, work instruction); may be empty
    std::string on;      // a date, "2031-05-04"; empty: the day of the entry
    bool operator==(Distributed const&) const = default;
};

using Body = std::variant<Opened, Decided, Carried, BenchResult, Signed, Merged, Superseded, Distributed>;

struct Entry {
    std::vector<std::string> parents;  // hashes; none for the first entry, two after a merge
    std::int64_t sequence = 1;         // one more than the highest of its parents
    std::string at;                    // RFC 3339, UTC, whole seconds
    Person by;
    Body body;
    std::string line;  // as it stands in the file, without the line end
    std::string hash;
};

// "opened", "decided", "carried", "result", "signed", "merged", "superseded", "distributed".
[[nodiscard]] std::string_view kindOf(Body const& body);

// What an entry is made of before it is signed.
struct Draft {
    std::vector<std::string> parents;
    std::int64_t sequence = 1;
    std::string at;
    Body body;
};
// The entry with its line, hash and signature.
[[nodiscard]] model::Result<Entry> signedEntry(Draft draft, SigningKey const& key);

// An entry from its line. Errors (Damaged) say why it does not hold: no JSON, not
// canonical, a member missing or malformed, a signature that is not the author's.
[[nodiscard]] model::Result<Entry> parseEntry(std::string_view line);

// The last line of a file: how many entries there are, which is the last, and the
// signature of its author, so that a tail that was cut off is noticed.
struct Head {
    std::int64_t count = 0;
    std::string hash;  // of the last entry
    Person by;
};
[[nodiscard]] model::Result<std::string> headLine(Head const& head, SigningKey const& key);
[[nodiscard]] model::Result<Head> parseHead(std::string_view line);

}  // namespace standin::record

// What follows from the entries of a record: how each finding stands, what is
// still open, whether the record is signed, and what a new entry may say.
//
// Defines: Standing, Line, Signature, RecordState, Overview.
//
//     auto const state = stateOf(record);
//     state.lines[0].standing      // Standing::SecondPerson
//     state.state                  // RecordState::InReview
//     if (auto allowed = mayDecide(state, decided); !allowed) …
//
// A line of the record is a finding with what follows from it (Finding::consequenceOf):
// decided together, as grave as its gravest. Lines above severity `editorial` must be closed.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "model/comparison.h"
#include "model/result.h"
#include "record/record.h"

namespace standin::record {

enum class Standing : std::uint8_t {
    Open,          // nobody decided, or the decision was withdrawn
    SecondPerson,  // a hazard that one person decided
    Waiting,       // for a bench test or a supplier's statement
    Closed,
    Rejected,  // closed: the candidate is refused for it
};

struct Line {
    std::string finding;                    // id of the main finding
    std::vector<std::string> consequences;  // ids of what follows from it
    std::string title;
    model::Severity severity = model::Severity::Note;  // the gravest of the line
    int level = 0;
    bool typicalOnly = false;  // a hazard for which the candidate states a typical value alone
    bool mustClose = true;

    std::vector<std::size_t> decisions;  // all entries that decided it (decided, carried), in order
    std::vector<std::size_t> inForce;    // the last of them that agree with each other
    std::vector<std::size_t> results;    // bench results on it
    bool conflict = false;               // the copies that were merged had decided differently
    Standing standing = Standing::Open;
    std::string why;  // what it waits for; empty where closed
};

struct Signature {
    std::size_t entry = 0;
    bool lapsed = false;  // something was decided, measured or merged that it does not cover
};

enum class RecordState : std::uint8_t { Draft, InReview, Approved, ApprovedWithConditions, Rejected, Superseded };

struct Overview {
    std::vector<Line> lines;  // in the order of the findings
    std::vector<Signature> signatures;
    std::vector<std::size_t> supersessions;  // entries that say which record takes this one's place
    std::vector<std::size_t> distributions;  // entries that say who was given it
    std::vector<std::string> notTold;        // who was given it, and nothing since it was superseded
    RecordState state = RecordState::Draft;
    std::vector<std::string> open;  // what keeps the record from being closed, in words
};

[[nodiscard]] std::string_view nameOf(Standing standing);
[[nodiscard]] std::string_view nameOf(RecordState state);

// The decision that an entry holds; null where it is of another kind.
[[nodiscard]] Decided const* decisionIn(Entry const& entry);
// Who decided: for a carried decision the person who made it then.
[[nodiscard]] Person const& decidedBy(Entry const& entry);

// Linear in entries times lines but for merges.
[[nodiscard]] Overview stateOf(Record const& record);

// The same of the entries up to and including one of them.
[[nodiscard]] Overview stateAt(Record const& record, std::size_t entry);

// The line that a finding's id, or an unambiguous beginning of it (4 digits and
// more), belongs to. Usage errors: unknown, ambiguous.
[[nodiscard]] model::Result<std::size_t> lineOf(std::vector<Line> const& lines, std::string_view finding);

// Whether two entries come from two persons: another key and another name.
[[nodiscard]] bool twoPersons(Person const& a, Person const& b);

}  // namespace standin::record

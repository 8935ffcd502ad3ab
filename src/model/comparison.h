// What differs between a reference and a candidate: the value that
// `standin compare --json` writes (schema standin.comparison/1).
//
// src/compare/ fills findings with kind, relation and class; src/risk/ adds
// judgement, severity, hazard side, title, explanation, cautions and verdict;
// src/report/ only writes it down. Ids refer to the two Datasheets.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "model/datasheet.h"

namespace standin::model {

enum class FindingKind : std::uint8_t {
    Parameter, Table, Wording, Pin, Package, Ordering, Feature, Figure, Section, Document, Derived, Cell, Coverage
};

// A fact about two values or texts; exchange of the documents mirrors it.
enum class Relation : std::uint8_t {
    Same, Inside, Wider, ReachesHigher, ReachesLower, ClearAbove, ClearBelow, OneSided, TypEqual, TypDiffers,
    ConditionsDiffer, NotComparable, OnlyReference, OnlyCandidate, UnitConflict, ConflictInDocument, Unread,
    Reworded, MeaningChanged, ModeSame, ModeDiffers, ModeUnstated, Moved
};

// The relation seen from the other side: inside/wider, reaches-higher/-lower,
// clear-above/-below, only-reference/-candidate change places.
[[nodiscard]] Relation mirrored(Relation relation);

enum class Judgement : std::uint8_t { Complies, NuisanceSide, HazardSide, Worse, Better, Open };

// Of a wording finding (several may hold; the gravest first).
enum class WordingClass : std::uint8_t {
    Neg, Mod, Perm, Trig, Conn, Num, Pin, Temp, Scope, Grade, Ord, Time, Cond, Edit, Style
};

enum class Severity : std::uint8_t { Editorial, Note, Margin, Function, Hazard };  // ascending

enum class HazardSide : std::uint8_t { None, Higher, Lower, Both, Unknown };

// How one side of a finding reads.
struct Side {
    int page = 0;
    Rect box;
    std::string text;  // the row or the sentence as printed, not the page
    std::string min, typ, max, unit, condition;  // parameters only; empty: none
    bool recognised = false;  // in a picture, some of it at least: to be compared with the page
    bool operator==(Side const&) const = default;
};

// How the two conditions of a parameter stand to each other. OtherSign: the same, but a load current is printed
// with the other sign; AtBound: the same, but one sheet prints the load as a bound ("IO ≤ 20 µA"); both of findings only.
enum class ConditionRelation : std::uint8_t { Same, Harsher, Milder, Unordered, OneUnstated, OtherSign, AtBound };

struct Finding {
    std::string id;  // 12 hex digits, see compare/finding_id.h
    FindingKind kind = FindingKind::Parameter;
    Relation relation = Relation::Same;
    Judgement judgement = Judgement::Open;
    std::vector<WordingClass> classes;  // the JSON field `class` is the first, or null
    Severity severity = Severity::Note;
    HazardSide hazardSide = HazardSide::None;
    int level = 0;      // 0 … 4, DOMAIN 5.9
    bool open = false;  // contributes to "incomplete"
    std::string canonical;  // vocabulary id of the parameter or feature, or empty
    std::string section;    // id in the reference (in the candidate where only it has one)
    std::string variant;
    std::string title;
    std::string explanation;
    std::string caution;  // caution id, or empty
    std::string consequenceOf;  // finding id, or empty
    std::vector<std::string> affects;  // parameter ids, "r:p3" / "c:p7"
    std::vector<std::string> regarding;  // ids of other findings that this one speaks of
    std::optional<Side> reference;
    std::optional<Side> candidate;
    ConditionRelation conditions = ConditionRelation::Same;  // of a parameter finding
    // Which pair it came from, for the judging stage: indices into Comparison::pairs; -1: none.
    int pair = -1;
    bool operator==(Finding const&) const = default;
};

struct Pair {
    std::string canonical;
    std::string reference;  // parameter id, or empty
    std::string candidate;
    Relation relation = Relation::Same;
    Judgement judgement = Judgement::Open;
    double confidence = 0;
    bool operator==(Pair const&) const = default;
};

struct SectionPair {
    std::string reference;  // section id, or empty
    std::string candidate;
    double similarity = 0;
    int findings = 0;
    bool operator==(SectionPair const&) const = default;
};

// One value that something was worked out of.
struct Input {
    std::string name;       // "overcharge-detect-voltage", "circuit.supply_resistor"
    std::string parameter;  // id within its sheet; empty: given in the cell or circuit file
    int page = 0;
    Rect box;
    std::string text;  // as printed or as given
    bool operator==(Input const&) const = default;
};

// What came out for one of the two parts; an empty text is a bound that is not known.
struct WorkedValue {
    std::string min, typ, max, unit;  // decimals, rounded outward
    std::vector<Input> inputs;
    std::vector<std::string> notes;
    bool operator==(WorkedValue const&) const = default;
};

// A quantity that neither sheet prints.
struct Derived {
    std::string canonical;  // id of the vocabulary's derived quantities
    std::string title;
    std::string formula;
    std::optional<WorkedValue> reference, candidate;
    Relation relation = Relation::NotComparable;
    Judgement judgement = Judgement::Open;
    std::vector<std::string> notes;
    bool operator==(Derived const&) const = default;
};

enum class CheckOutcome : std::uint8_t { Holds, Violated, Open };

struct CheckResult {
    std::string value;  // what was set against the limit, in words; empty: nothing
    CheckOutcome outcome = CheckOutcome::Open;
    std::string why;  // what is violated or missing; empty where it holds
    std::vector<Input> inputs;
    bool operator==(CheckResult const&) const = default;
};

// Between what a measured value has to lie for a check to hold, where the check is
// about one quantity that a bench can measure.
struct CheckBounds {
    std::string quantity;  // what is measured, in words
    std::string min, max;  // decimals; empty: no such bound
    std::string unit;
    bool aboveMin = false, belowMax = false;  // the bound itself does not hold
    bool operator==(CheckBounds const&) const = default;
};

// One check of a part against the cell that it protects.
struct CellCheck {
    std::string check;  // "overcharge-upper"
    std::string title;
    std::string limit;  // what the cell or the circuit asks for, in words
    std::optional<CheckBounds> bounds;  // the same in numbers, for the candidate
    std::optional<CheckResult> reference, candidate;
    int level = 0;  // of the candidate's outcome, DOMAIN 5.9
    std::string finding;  // id, or empty
    bool operator==(CellCheck const&) const = default;
};

enum class VerdictLevel : std::uint8_t { NoDifference, SmallDifferences, ConfirmFunction, BenchTest, DoNotSubstitute };

struct Verdict {
    VerdictLevel level = VerdictLevel::NoDifference;
    bool incomplete = false;
    std::vector<std::string> incompleteReasons;
    std::string sentence;
    std::vector<std::string> reasons;  // finding ids
    bool operator==(Verdict const&) const = default;
};

struct Caution {
    std::string id;
    std::string text;
    std::vector<std::string> findings;
    bool operator==(Caution const&) const = default;
};

struct ComparisonCoverage {
    Coverage reference;
    Coverage candidate;
    int compared = 0;     // numbers and sentences of both sheets that were set against something
    int listed = 0;       // that are listed as not compared
    int unaccounted = 0;  // that are neither
    bool operator==(ComparisonCoverage const&) const = default;
};

enum class ComparisonKind : std::uint8_t { TwoSheets, CandidateAlone };

struct Comparison {
    ComparisonKind kind = ComparisonKind::TwoSheets;
    DocumentInfo reference;  // empty where the candidate is checked against a cell alone
    DocumentInfo candidate;
    Verdict verdict;
    std::vector<Caution> cautions;
    std::vector<std::string> statements;  // general statements of every summary
    std::vector<Finding> findings;  // by severity, then document order
    std::vector<Pair> pairs;
    std::vector<SectionPair> sections;
    std::vector<Derived> derived;
    std::vector<CellCheck> cell;  // empty where no cell profile was given
    std::string cellName;         // of the profile that was checked against
    std::string circuitName;
    ComparisonCoverage coverage;
    [[nodiscard]] bool hasReference() const { return kind == ComparisonKind::TwoSheets; }
    bool operator==(Comparison const&) const = default;
};

}  // namespace standin::model

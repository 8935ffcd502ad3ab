// How the conditions of two values stand to each other.
//
//     relateConditions({"VDD=3.5V", "Ta=25°C"}, {"VDD = 3.5 V, TA = 25 °C", ""}, memo)  ->  Same
//     relateConditions({"Ta=25°C", ""}, {"Ta=-20 to 60°C", ""}, memo)                    ->  Harsher
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "model/comparison.h"
#include "quantity/condition.h"
#include "quantity/decimal.h"

namespace standin::compare {

struct ConditionTexts {
    std::string_view own;    // of the line; empty: none
    std::string_view table;  // of the table or group; empty: none
};

// The bounds of an interval as numbers. A point is a range of one value; a side without a
// bound is unlimited.
struct StatedRange {
    std::optional<quantity::Decimal> lo, hi;
};

// One part of a condition: a quantity with its interval, or words.
struct StatedPart {
    std::string symbol;  // in one spelling; empty: words
    model::Interval interval;
    StatedRange range;     // of the interval
    std::string node;      // that the interval is relative to, in one spelling; empty: none
    std::string words;     // key of the text
    bool bare = false;     // printed without a unit, which may stand in the head of its column
    bool ofTable = false;  // stated for the whole table, not in the line
    bool departs = false;  // of a line whose table states another value
    enum class Direction : std::uint8_t { Unsaid, Printed, Dropped };
    // Of a load current: "|IO| = 20 µA" says none, "IO = 20 µA" prints one, of "IO = -20 µA" the sign was dropped.
    Direction direction = Direction::Unsaid;
};

// Both texts taken apart, for relating one condition with many others.
struct StatedConditions {
    std::string own, table;  // as given
    std::vector<StatedPart> parts;
};

// One part of a text as it was read, and if it was understood, as a part of the line's own
// condition; nothing where it says nothing ("GND = 0 V").
struct ReadPart {
    quantity::ConditionPart read;
    std::optional<StatedPart> stated;
};

// Remembers what the texts of both sheets say: rows share the conditions of their table, and
// one stage after another relates the same rows. What it gives stays as long as it lives. For
// one thread.
class ConditionMemo {
public:
    [[nodiscard]] std::vector<ReadPart> const& partsOf(std::string_view printed);
    [[nodiscard]] StatedConditions const& stated(ConditionTexts texts);
    // The first range of temperatures that a condition states.
    [[nodiscard]] std::optional<model::Interval> const& temperatures(std::string_view printed);

private:
    std::unordered_map<std::string, std::vector<ReadPart>> m_parts;
    std::unordered_map<std::string, StatedConditions> m_stated;  // by both texts
    struct Temperatures {
        std::string text;
        std::optional<model::Interval> range;
    };
    Temperatures m_last;  // what was asked for last: the rows of a table ask for the same
};

// Do two texts for whole tables state the same quantities, and in words the same besides? Their titles
// and the numbers of notes ("Note 2") are left out. relateConditions leaves all words of tables out.
[[nodiscard]] bool stateTheSameAlone(std::string_view reference, std::string_view candidate, ConditionMemo& memo);

[[nodiscard]] StatedConditions stateConditions(ConditionTexts texts, ConditionMemo& memo);

// Part by part, by quantity: the line's own part precedes the table's, and what a heading
// within the table says precedes what the table begins with. A part
// that holds over more (the candidate's range encloses the reference's) is
// harsher, over less milder, any other difference unordered; parts stated in one
// sheet only give OneUnstated, where a missing temperature stands for 25 °C.
// Words that cannot be read as quantities are compared as text. Exchange turns
// Harsher into Milder and leaves the rest.
[[nodiscard]] model::ConditionRelation relateConditions(ConditionTexts reference, ConditionTexts candidate, ConditionMemo& memo);

// AsFullLoad, for what a heavier load makes worse (the levels of an output): a load printed as a bound ("IO ≤ 20 µA",
// "RL ≥ 2 kΩ") is the load at the bound, where the limit is the hardest to keep.
enum class LoadBounds : std::uint8_t { AsPrinted, AsFullLoad };
[[nodiscard]] model::ConditionRelation relateStated(StatedConditions const& reference, StatedConditions const& candidate, LoadBounds loads = LoadBounds::AsPrinted);

// One quantity is stated in both and neither range holds the other ("VDD=3V" against
// "VDD=5V"), in the lines of both or for the tables of both: a line of one maker may be the default of the
// other's table put otherwise. Words never contradict: makers put one condition in many ways.
[[nodiscard]] bool contradict(StatedConditions const& reference, StatedConditions const& candidate);

// A load current is the same in both but for its sign ("IO = -5 mA" against "IO = 5 mA"): makers differ in what
// they call negative, so the conditions count as the same, but a reader should look which way it flows.
[[nodiscard]] bool differInDirection(StatedConditions const& reference, StatedConditions const& candidate);

// A load is a bound in one and stands at it in the other.
[[nodiscard]] bool differInLoadBound(StatedConditions const& reference, StatedConditions const& candidate);

// A finding of a row about nothing else (findParameterDifferences gives it; relateConditions never does).
[[nodiscard]] inline bool saysOnlyDirection(model::Finding const& finding) { return finding.conditions == model::ConditionRelation::OtherSign; }
[[nodiscard]] inline bool saysOnlyLoadBound(model::Finding const& finding) { return finding.conditions == model::ConditionRelation::AtBound; }

// How many quantities are stated in both, with the same value or a bound at it ("IO ≤ 20 µA" and "IO = 20 µA").
[[nodiscard]] int agreeingQuantities(StatedConditions const& reference, StatedConditions const& candidate);

// How many quantities are stated in one only, or in both with different values; what a sheet
// leaves unsaid because it is understood (25 °C) does not count.
[[nodiscard]] int unmetQuantities(StatedConditions const& reference, StatedConditions const& candidate);

// A line of `one` departs from its table ("CL = 150 pF" among lines at 50 pF) in a quantity of which
// `other` says nothing: what that one holds for is rather what the table is for.
[[nodiscard]] bool departsAlone(StatedConditions const& one, StatedConditions const& other);

// 1: the same; 0.75: one unstated; 0.65: ordered, a range against its bound ("≤ 20 µA", "20 µA"); 0.5: ordered; below: by the share of the parts
// that agree, 0: none does. For weighing pairings.
[[nodiscard]] double conditionLikeness(model::ConditionRelation relation, StatedConditions const& reference, StatedConditions const& candidate);

}  // namespace standin::compare

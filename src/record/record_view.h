// What text, HTML, PDF and the desk show of a record, worked out once: sentences about
// decisions, results, signatures and the history.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "record/record.h"
#include "record/state.h"

namespace standin::record {

// What every record says of itself.
inline constexpr std::string_view kMeaning =
    "This record holds what people decided on two printed documents. It is no test of a part and does not speak for the part in hand; the cell maker's limits, local codes and licensed practice come first.";
inline constexpr std::string_view kKeysMeaning = "Signatures tell keys apart; who keeps which key is for your organisation to see to.";

using NamedTexts = std::vector<std::pair<std::string, std::string>>;

// Number, product, scope, documents with their hashes …; what is not stated is left out.
[[nodiscard]] NamedTexts identificationOf(Opened const& opened);
[[nodiscard]] NamedTexts methodOf(Opened const& opened);

// "T. Belmonte (3f9a 04c1 77de 52b0)"
[[nodiscard]] std::string personText(Person const& person);

// "accepted-with-condition by R. Ashdown (…), 2031-05-04T09:01:00Z: the reason. Condition: …. Evidence: … (SHA-256 …). Carried from an earlier record."
[[nodiscard]] std::string decisionText(Entry const& entry);

// Whether the result was held against this limit.
[[nodiscard]] bool isAgainst(BenchResult const& result, risk::BenchLimit const& limit);

// "finding 05cb4cb54284", "finding 05cb4cb54284, check overcharge-upper": how a limit is named on the command line.
[[nodiscard]] std::string limitName(risk::BenchLimit const& limit);

// "4.26, 4.29 V: within 4.25 to 4.30 V …"
[[nodiscard]] std::string resultText(Entry const& entry, Opened const& opened);

// "approver: L. Corvin (…), 2031-…; lapsed, something was entered afterwards"
[[nodiscard]] std::string signatureText(Record const& record, Signature const& signature);

// "by the record S-18, Second source (first entry 0123…, head 4567…): the reason; R. Ashdown (…), 2031-…";
// Hashes::Left: without what stands in the brackets, where the other record has a name.
enum class Hashes : std::uint8_t { Whole, Left };
[[nodiscard]] std::string supersededText(Entry const& entry, Hashes hashes = Hashes::Whole);

// What was given to somebody, in cells of a table.
struct Given {
    std::string to, what, change;
    std::string on;  // the day that was stated, else the time of the entry
    std::string by;  // who entered it
};
[[nodiscard]] Given givenIn(Entry const& entry);

// "Purchasing: a copy of the record, with change CN-204; 2031-05-06, entered by R. Ashdown (…), 2031-…"
[[nodiscard]] std::string distributedText(Entry const& entry);

// "Purchasing, Stores hold what the record said before it was superseded; tell them."; empty: nobody.
[[nodiscard]] std::string notToldText(Overview const& overview);

// One line an entry: "3  2031-05-04T09:02:00Z  decided  T. Belmonte  …".
[[nodiscard]] std::string historyText(Record const& record, std::size_t entry);

// What asks for a new review; those named when the record was opened, or the usual ones.
[[nodiscard]] std::vector<std::string> reviewTriggers(Opened const& opened);

// "closed", "waiting: waits for a bench test"; with "carried" where the decision comes from an earlier record.
[[nodiscard]] std::string standingText(Record const& record, Line const& line);

[[nodiscard]] model::Finding const* findingOf(Opened const& opened, std::string_view id);

// "5 entries, head 0123…": to be compared with `check --head`.
[[nodiscard]] std::string headText(Record const& record);

}  // namespace standin::record

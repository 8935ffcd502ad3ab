// Signatures and rules are verified by loading; then the sheets, the end of
// validity and the open points are looked at.
// Tested by tests/src/cli/record_run_test.cpp.
#include "cli/record_check.h"

#include <algorithm>
#include <tuple>

#include <fmt/format.h>

#include "cli/record_inputs.h"
#include "record/carry.h"
#include "record/moment.h"
#include "record/record_view.h"
#include "record/state.h"
#include "record/store.h"

namespace standin::cli {

using model::Error;
using model::ErrorKind;
using model::Result;
using record::Record;

namespace {

// The sheets as they are now against those that were compared. True: unchanged.
Result<bool> sheetsUnchanged(RecordCommand const& command, Record const& record, Tell const& say) {
    bool unchanged = true;
    auto const& comparison = record.opened().comparison;
    for (auto const& [path, document, who] : {std::tuple{&command.reference, &comparison.reference, "reference"}, std::tuple{&command.candidate, &comparison.candidate, "candidate"}}) {
        if (path->empty()) continue;
        auto const hash = hashOf(*path);
        if (!hash) return tl::unexpected(hash.error());
        if (*hash == document->sha256) continue;
        say(fmt::format("the {} changed: {} is not the file that was compared (SHA-256 {})", who, *path, *hash));
        unchanged = false;
    }
    return unchanged;
}

// The options that the record was opened with, for the sheets as they are now. A
// file that is no longer what it was is left out, and said.
CompareCommand sameAgain(RecordCommand const& command, record::Method const& method, Tell const& say) {
    auto again = command.compare;
    again.reference = command.reference;
    again.candidate = command.candidate;
    again.referenceVariant = method.referenceVariant;
    again.candidateVariant = method.candidateVariant;
    again.ocr = method.ocr;
    for (auto const& used : method.files) {
        if (auto const hash = hashOf(used.file); !hash || *hash != used.sha256) {
            say(fmt::format("the {} file {} is not what it was; compared without it", used.kind, used.file));
            continue;
        }
        if (used.kind == "vocabulary") again.vocabularies.push_back(used.file);
        if (used.kind == "corrections") again.corrections.push_back(used.file);
        if (used.kind == "cell") again.cell = used.file;
        if (used.kind == "circuit") again.circuit = used.file;
    }
    return again;
}

// Decisions are bound to both files. Where both are at hand they are compared
// again, to say which findings stayed as they were.
Result<void> sayLapsed(RecordCommand const& command, Record const& record, CompareSheets const& compare, Tell const& say) {
    auto const overview = record::stateOf(record);
    std::vector<record::NotCarried> changed;
    bool const both = !command.reference.empty() && !command.candidate.empty();
    if (both) {
        auto const again = sameAgain(command, record.opened().method, say);
        auto const compared = compare(again);
        if (!compared) return tl::unexpected(compared.error());
        changed = record::lapsedIn(record, compared->result.comparison);
    }
    for (auto const& line : overview.lines) {
        if (line.inForce.empty()) continue;
        auto const found = std::find_if(changed.begin(), changed.end(), [&](record::NotCarried const& one) { return one.finding == line.finding; });
        std::string const why = !both ? "" : found != changed.end() ? ", " + found->why : ", the finding itself is unchanged";
        say(fmt::format("lapsed: {} {}{}", line.finding, line.title, why));
    }
    say("open a new record with 'standin record open … --from' to carry over what is unchanged");
    return {};
}

}  // namespace

Result<bool> checkRecord(RecordCommand const& command, CompareSheets const& compare, Tell const& say) {
    auto const record = record::loadRecord(command.file);
    if (!record) return tl::unexpected(record.error());
    if (!command.head.empty() && record::indexOf(*record, command.head) == record->entries.size()) {
        return tl::unexpected(Error{ErrorKind::Damaged, fmt::format("holds no entry {}; it is an older copy or another record", command.head), command.file, 0});
    }
    auto const unchanged = sheetsUnchanged(command, *record, say);
    if (!unchanged) return tl::unexpected(unchanged.error());
    bool holds = *unchanged;
    if (!*unchanged) {
        if (auto const told = sayLapsed(command, *record, compare, say); !told) return tl::unexpected(told.error());
    }
    auto const overview = record::stateOf(*record);
    auto const& until = record->opened().identification.validUntil;
    if (!until.empty() && record::currentTime().substr(0, until.size()) > until) {
        say(fmt::format("lapsed: valid until {}", until));
        holds = false;
    }
    bool const superseded = overview.state == record::RecordState::Superseded;
    for (auto const index : overview.supersessions) say("lapsed: superseded " + record::supersededText(record->entries[index]));
    if (!overview.notTold.empty()) say("open: " + record::notToldText(overview));
    bool const refused = overview.state == record::RecordState::Rejected;  // then other lines may stay open
    for (std::size_t i = 0; !refused && !superseded && i < overview.open.size(); ++i) say("open: " + overview.open[i]);
    bool const closed =
        overview.state == record::RecordState::Approved || overview.state == record::RecordState::ApprovedWithConditions || overview.state == record::RecordState::Rejected;
    if (!closed && !superseded) say("open: no approver's signature covers everything");
    holds = holds && closed;
    say(fmt::format("{}: {}; every entry and signature holds", command.file, holds ? fmt::format("holds, {}", record::nameOf(overview.state)) : "lapsed or open"));
    say(fmt::format("{} entries, head {}", record->entries.size(), record->head().hash));
    return holds;
}

}  // namespace standin::cli

// Tested by tests/src/record/carry_test.cpp.
#include "record/carry.h"

#include <algorithm>
#include <utility>

#include "record/rules.h"
#include "record/state.h"

namespace standin::record {

using model::Result;

namespace {

// Why the decisions on `before` do not hold for the lines found now; empty: they do.
std::string lapseOf(Line const& before, std::vector<Line> const& now, Decided const& decided) {
    auto const found = std::find_if(now.begin(), now.end(), [&](Line const& line) { return line.finding == before.finding; });
    if (found == now.end()) return "the finding changed or is gone";
    if (found->level > before.level || found->severity > before.severity) return "the finding is graver than before";
    if (auto const allowed = mayDecide(*found, decided); !allowed) return allowed.error().message;
    return {};
}

}  // namespace

std::vector<NotCarried> lapsedIn(Record const& record, model::Comparison const& now) {
    // Lines depend on the comparison alone, so a record of one entry tells them.
    Record other;
    Entry entry;
    Opened opened;
    opened.comparison = now;
    entry.body = std::move(opened);
    other.entries.push_back(std::move(entry));
    auto const lines = stateOf(other).lines;
    std::vector<NotCarried> lapsed;
    for (auto const& line : stateOf(record).lines) {
        if (line.inForce.empty()) continue;
        auto why = lapseOf(line, lines, *decisionIn(record.entries[line.inForce.back()]));
        if (!why.empty()) lapsed.push_back({line.finding, line.title, std::move(why)});
    }
    return lapsed;
}

Result<CarriedOver> openFrom(Record const& earlier, Opened opened, Moment const& moment) {
    if (auto const goesOn = mayGoOn(earlier, stateOf(earlier)); !goesOn) return tl::unexpected(goesOn.error());
    opened.predecessor = Predecessor{earlier.root(), earlier.head().hash, static_cast<std::int64_t>(earlier.entries.size())};
    CarriedOver made;
    made.lapsed = lapsedIn(earlier, opened.comparison);
    auto record = openRecord(std::move(opened), moment);
    if (!record) return tl::unexpected(record.error());
    for (auto const& line : stateOf(earlier).lines) {
        bool const lapsed = std::any_of(made.lapsed.begin(), made.lapsed.end(), [&](NotCarried const& one) { return one.finding == line.finding; });
        if (lapsed || line.inForce.empty()) continue;
        for (auto const index : line.inForce) {
            auto const& entry = earlier.entries[index];
            auto const* carried = std::get_if<Carried>(&entry.body);  // carried before: the original goes on
            record = withEntry(*std::move(record), Body{Carried{carried != nullptr ? carried->line : entry.line, {}, {}, {}}}, moment);
            if (!record) return tl::unexpected(record.error());
        }
        made.carried.push_back(line.finding);
    }
    made.record = *std::move(record);
    return made;
}

Result<CarriedOver> openAfter(Record const* earlier, Opened opened, Moment const& moment) {
    if (earlier != nullptr) return openFrom(*earlier, std::move(opened), moment);
    auto record = openRecord(std::move(opened), moment);
    if (!record) return tl::unexpected(record.error());
    return CarriedOver{*std::move(record), {}, {}};
}

std::vector<std::string> toldOf(CarriedOver const& made) {
    std::vector<std::string> told;
    for (auto const& finding : made.carried) told.push_back("carried: " + finding);
    for (auto const& left : made.lapsed) told.push_back("not carried: " + left.finding + " " + left.title + ": " + left.why);
    return told;
}

}  // namespace standin::record

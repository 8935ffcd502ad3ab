// The entries are replayed in the order of the file, which puts parents before
// children. Tested by tests/src/record/state_test.cpp.
#include "record/state.h"

#include <algorithm>
#include <unordered_map>
#include <unordered_set>

#include <fmt/format.h>

#include "model/names.h"

namespace standin::record {

using model::Error;
using model::ErrorKind;
using model::Finding;
using model::Result;
using model::Severity;

namespace {

constexpr std::size_t kShortestBeginning = 4;

bool isTypicalOnly(Finding const& finding) {
    auto const& side = finding.candidate;
    return finding.kind == model::FindingKind::Parameter && side && side->min.empty() && side->max.empty() && !side->typ.empty();
}

void take(Line& line, Finding const& finding) {
    line.severity = std::max(line.severity, finding.severity);
    line.level = std::max(line.level, finding.level);
    line.typicalOnly = line.typicalOnly || (finding.severity == Severity::Hazard && isTypicalOnly(finding));
}

struct Lines {
    std::vector<Line> lines;
    std::unordered_map<std::string, std::size_t> byFinding;  // main findings and consequences
};

Lines linesOf(model::Comparison const& comparison) {
    Lines made;
    for (auto const& finding : comparison.findings) {
        if (!finding.consequenceOf.empty()) continue;
        made.byFinding.emplace(finding.id, made.lines.size());
        Line line;
        line.finding = finding.id;
        line.title = finding.title;
        line.severity = Severity::Editorial;
        take(line, finding);
        made.lines.push_back(std::move(line));
    }
    for (auto const& finding : comparison.findings) {
        if (finding.consequenceOf.empty()) continue;
        auto const main = made.byFinding.find(finding.consequenceOf);
        if (main == made.byFinding.end()) {  // its main finding is missing: it stands for itself
            made.byFinding.emplace(finding.id, made.lines.size());
            Line line;
            line.finding = finding.id;
            line.title = finding.title;
            line.severity = Severity::Editorial;
            take(line, finding);
            made.lines.push_back(std::move(line));
            continue;
        }
        auto& line = made.lines[main->second];
        line.consequences.push_back(finding.id);
        take(line, finding);
        made.byFinding.emplace(finding.id, main->second);
    }
    for (auto& line : made.lines) line.mustClose = line.severity > Severity::Editorial;
    return made;
}

bool agree(Decided const& a, Decided const& b) { return a.disposition == b.disposition && a.condition == b.condition; }

void decide(Line& line, std::vector<Entry> const& entries, std::size_t index) {
    line.conflict = false;
    if (!line.inForce.empty() && !agree(*decisionIn(entries[line.inForce.back()]), *decisionIn(entries[index]))) line.inForce.clear();
    line.inForce.push_back(index);
    line.decisions.push_back(index);
}

// For each limit the last result counts.
bool outsideLimits(Line const& line, std::vector<Entry> const& entries) {
    std::unordered_map<std::string, Outcome> last;
    for (auto const index : line.results) {
        auto const& result = std::get<BenchResult>(entries[index].body);
        last[result.test + " " + result.finding + " " + result.check] = result.outcome;
    }
    return std::any_of(last.begin(), last.end(), [](auto const& one) { return one.second == Outcome::Outside; });
}

bool secondPersonDecided(Line const& line, std::vector<Entry> const& entries) {
    auto const& first = decidedBy(entries[line.inForce.front()]);
    return std::any_of(line.inForce.begin(), line.inForce.end(), [&](std::size_t index) { return twoPersons(first, decidedBy(entries[index])); });
}

void judge(Line& line, std::vector<Entry> const& entries) {
    auto const stand = [&line](Standing standing, std::string why) {
        line.standing = standing;
        line.why = std::move(why);
    };
    if (line.inForce.empty()) return stand(Standing::Open, line.conflict ? "the copies that were merged decided differently; decide again" : "not decided");
    auto const& decided = *decisionIn(entries[line.inForce.back()]);
    switch (decided.disposition) {
        case Disposition::Open: return stand(Standing::Open, "opened again");
        case Disposition::BenchTest: return stand(Standing::Waiting, "waits for a bench test");
        case Disposition::SupplierStatement: return stand(Standing::Waiting, "waits for a statement of the supplier");
        case Disposition::Accepted:
            if (outsideLimits(line, entries)) return stand(Standing::Open, "a bench result lies outside the limits");
            break;
        case Disposition::AcceptedWithCondition:
        case Disposition::NotApplicable:
        case Disposition::Rejected: break;
    }
    if (line.severity == Severity::Hazard && !secondPersonDecided(line, entries)) return stand(Standing::SecondPerson, "a hazard: a second person must decide the same");
    stand(decided.disposition == Disposition::Rejected ? Standing::Rejected : Standing::Closed, "");
}

bool isApproval(Entry const& entry) {
    auto const* signature = std::get_if<Signed>(&entry.body);
    return signature != nullptr && signature->role == Role::Approver;
}

// Whether an entry changes how lines stand, so that signatures before it lapse.
bool changesLines(Entry const& entry) {
    if (auto const* merged = std::get_if<Merged>(&entry.body)) return !merged->conflicts.empty();
    return !std::holds_alternative<Signed>(entry.body) && !std::holds_alternative<Superseded>(entry.body) && !std::holds_alternative<Distributed>(entry.body);
}

// Whether the record was superseded when the entry was made.
bool isAfterSupersession(Ancestry const& ancestry, std::vector<std::size_t> const& supersessions, std::size_t entry) {
    return std::any_of(supersessions.begin(), supersessions.end(), [&](std::size_t superseded) { return isIn(ancestry.of(entry), superseded); });
}

// Who holds what the record said before it was superseded, in the order in which
// they were given it, each once.
std::vector<std::string> notTold(Record const& record, Ancestry const& ancestry, Overview const& overview) {
    std::vector<std::string> waiting;
    if (overview.supersessions.empty()) return waiting;
    std::unordered_set<std::string> told;
    for (auto const i : overview.distributions) {
        if (isAfterSupersession(ancestry, overview.supersessions, i)) told.insert(std::get<Distributed>(record.entries[i].body).to);
    }
    for (auto const i : overview.distributions) {
        auto const& to = std::get<Distributed>(record.entries[i].body).to;
        if (told.insert(to).second) waiting.push_back(to);
    }
    return waiting;
}

// A signature holds for what came before it; whatever else changes the state of a
// line lets it lapse.
void judgeSignatures(Record const& record, Ancestry const& ancestry, Ancestry::Row const& included, Overview& overview) {
    auto changing = included;
    for (std::size_t i = 0; i < record.entries.size(); ++i) {
        if (!changesLines(record.entries[i])) changing[i / 64] &= ~(std::uint64_t{1} << i % 64);
    }
    for (std::size_t i = 0; i < record.entries.size(); ++i) {
        if (!isIn(included, i) || !std::holds_alternative<Signed>(record.entries[i].body)) continue;
        auto const& covered = ancestry.of(i);
        bool lapsed = false;
        for (std::size_t word = 0; word < changing.size(); ++word) lapsed = lapsed || (changing[word] & ~covered[word]) != 0;
        overview.signatures.push_back({i, lapsed});
    }
}

RecordState recordState(Record const& record, Overview const& overview) {
    if (!overview.supersessions.empty()) return RecordState::Superseded;
    bool anyRejected = false;
    bool anyCondition = false;
    bool anyDecision = false;
    for (auto const& line : overview.lines) {
        anyRejected = anyRejected || line.standing == Standing::Rejected;
        anyDecision = anyDecision || !line.decisions.empty();
        anyCondition = anyCondition || (line.standing == Standing::Closed && decisionIn(record.entries[line.inForce.back()])->disposition == Disposition::AcceptedWithCondition);
    }
    bool const approved = std::any_of(overview.signatures.begin(), overview.signatures.end(), [&](Signature const& s) { return !s.lapsed && isApproval(record.entries[s.entry]); });
    if (approved) return anyRejected ? RecordState::Rejected : anyCondition ? RecordState::ApprovedWithConditions : RecordState::Approved;
    return anyDecision || !overview.signatures.empty() ? RecordState::InReview : RecordState::Draft;
}

// Of the head, or of an entry before it, and what it follows from.
Overview evaluate(Record const& record, std::size_t last) {
    Ancestry const ancestry(record);
    auto const& included = ancestry.of(last);
    auto [lines, byFinding] = linesOf(record.opened().comparison);
    Overview overview;
    for (std::size_t i = 0; i < record.entries.size(); ++i) {
        if (!isIn(included, i)) continue;
        auto const& body = record.entries[i].body;
        if (auto const* decided = decisionIn(record.entries[i])) {
            if (auto const found = byFinding.find(decided->finding); found != byFinding.end()) decide(lines[found->second], record.entries, i);
        } else if (auto const* result = std::get_if<BenchResult>(&body)) {
            if (auto const found = byFinding.find(result->finding); found != byFinding.end()) lines[found->second].results.push_back(i);
        } else if (auto const* merged = std::get_if<Merged>(&body)) {
            for (auto const& finding : merged->conflicts) {
                auto const found = byFinding.find(finding);
                if (found == byFinding.end()) continue;
                lines[found->second].inForce.clear();
                lines[found->second].conflict = true;
            }
        } else if (std::holds_alternative<Superseded>(body)) {
            overview.supersessions.push_back(i);
        } else if (std::holds_alternative<Distributed>(body)) {
            overview.distributions.push_back(i);
        }
    }
    for (auto& line : lines) judge(line, record.entries);
    overview.lines = std::move(lines);
    judgeSignatures(record, ancestry, included, overview);
    overview.notTold = notTold(record, ancestry, overview);
    overview.state = recordState(record, overview);
    for (auto const& line : overview.lines) {
        if (line.mustClose && line.standing != Standing::Closed && line.standing != Standing::Rejected) {
            overview.open.push_back(fmt::format("{} ({}, level {}) {}: {}", line.finding, model::nameOf(line.severity), line.level, line.title, line.why));
        }
    }
    return overview;
}

}  // namespace

std::string_view nameOf(Standing standing) {
    switch (standing) {
        case Standing::Open: return "open";
        case Standing::SecondPerson: return "second person missing";
        case Standing::Waiting: return "waiting";
        case Standing::Closed: return "closed";
        case Standing::Rejected: return "rejected";
    }
    return {};
}

std::string_view nameOf(RecordState state) {
    switch (state) {
        case RecordState::Draft: return "draft";
        case RecordState::InReview: return "in review";
        case RecordState::Approved: return "approved";
        case RecordState::ApprovedWithConditions: return "approved with conditions";
        case RecordState::Rejected: return "rejected";
        case RecordState::Superseded: return "superseded";
    }
    return {};
}

Decided const* decisionIn(Entry const& entry) {
    if (auto const* decided = std::get_if<Decided>(&entry.body)) return decided;
    auto const* carried = std::get_if<Carried>(&entry.body);
    return carried == nullptr ? nullptr : &carried->decided;
}

Person const& decidedBy(Entry const& entry) {
    auto const* carried = std::get_if<Carried>(&entry.body);
    return carried == nullptr ? entry.by : carried->by;
}

Overview stateOf(Record const& record) { return evaluate(record, record.entries.size() - 1); }

Overview stateAt(Record const& record, std::size_t entry) { return evaluate(record, entry); }

Result<std::size_t> lineOf(std::vector<Line> const& lines, std::string_view finding) {
    auto const refuse = [](std::string message) { return tl::unexpected(Error{ErrorKind::Usage, std::move(message), {}, 0}); };
    if (finding.size() < kShortestBeginning) return refuse(fmt::format("'{}' is too short; give at least {} digits of a finding's id", finding, kShortestBeginning));
    std::size_t found = lines.size();
    for (std::size_t i = 0; i < lines.size(); ++i) {
        bool const here = lines[i].finding.starts_with(finding) ||
                          std::any_of(lines[i].consequences.begin(), lines[i].consequences.end(), [&](std::string const& id) { return id.starts_with(finding); });
        if (!here) continue;
        if (found != lines.size()) return refuse(fmt::format("'{}' begins several findings; give more digits of its id", finding));
        found = i;
    }
    if (found == lines.size()) return refuse(fmt::format("has no finding '{}'; 'standin record show' lists them", finding));
    return found;
}

bool twoPersons(Person const& a, Person const& b) { return a.key != b.key && a.name != b.name; }

}  // namespace standin::record

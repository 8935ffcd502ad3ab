// One function a command. What may be entered is decided in record/rules.h; here
// files are named, keys loaded and results told.
// Tested by tests/src/cli/record_run_test.cpp.
#include "cli/record_run.h"

#include <algorithm>
#include <cstdio>
#include <iterator>
#include <utility>

#include <fmt/format.h>

#include "cli/compare_pair.h"
#include "cli/outputs.h"
#include "cli/record_arguments.h"
#include "cli/record_check.h"
#include "cli/record_key.h"
#include "cli/trouble.h"
#include "model/digest.h"
#include "model/file.h"
#include "record/bench_result.h"
#include "record/carry.h"
#include "record/merge.h"
#include "record/moment.h"
#include "record/record_html.h"
#include "record/record_text.h"
#include "record/rules.h"
#include "record/store.h"
#include "vocabulary/embedded_data.h"

namespace standin::cli {

namespace {

using model::Error;
using model::ErrorKind;
using model::Result;
using record::Record;

constexpr std::size_t kLongestKept = std::size_t{1} << 20;  // bytes of a user's file that go into the record whole

Result<std::vector<record::Evidence>> evidenceOf(std::vector<std::string> const& files) {
    std::vector<record::Evidence> evidence;
    for (auto const& file : files) {
        auto hash = hashOf(file);
        if (!hash) return tl::unexpected(hash.error());
        evidence.push_back({file, *std::move(hash)});
    }
    return evidence;
}

Result<void> addUsedFiles(record::Method& method, char const* kind, std::vector<std::string> const& files) {
    for (auto const& file : files) {
        auto content = model::readFile(file, model::kLongestUserFile);
        if (!content) return tl::unexpected(content.error());
        auto hash = model::sha256Hex(*content);
        if (content->size() > kLongestKept) content->clear();
        method.files.push_back({kind, file, std::move(hash), *std::move(content)});
    }
    return {};
}

Result<record::Method> methodOf(CompareCommand const& command) {
    record::Method method;
    method.program = STANDIN_VERSION;
    method.vocabulary = model::sha256Hex(vocabulary::embeddedVocabulary());
    method.referenceVariant = command.referenceVariant;
    method.candidateVariant = command.candidateVariant;
    if (auto added = addUsedFiles(method, "vocabulary", command.vocabularies); !added) return tl::unexpected(added.error());
    if (auto added = addUsedFiles(method, "corrections", command.corrections); !added) return tl::unexpected(added.error());
    for (auto const& [kind, file] : {std::pair{"cell", &command.cell}, std::pair{"circuit", &command.circuit}}) {
        if (file->empty()) continue;
        if (auto added = addUsedFiles(method, kind, {*file}); !added) return tl::unexpected(added.error());
    }
    return method;
}

int runOpen(RecordCommand const& command) {
    auto const key = loadKey(command.key, command.passphraseFile);
    if (!key) return trouble(key.error());
    auto earlier = command.from.empty() ? Result<Record>(Record{}) : record::loadRecord(command.from);
    if (!earlier) return trouble(earlier.error());
    auto compared = comparePair(command.compare, PageBytes::Drop);
    if (!compared) return trouble(compared.error());
    auto method = methodOf(command.compare);
    if (!method) return trouble(method.error());

    record::Opened opened;
    opened.identification = command.identification;
    opened.method = *std::move(method);
    opened.comparison = std::move(compared->result.comparison);
    opened.tests = std::move(compared->result.tests);
    opened.sampleRules = std::move(compared->sampleRules);
    record::Moment const moment{record::currentTime(), *key};
    record::CarriedOver made;
    if (command.from.empty()) {
        auto record = record::openRecord(std::move(opened), moment);
        if (!record) return trouble(record.error());
        made.record = *std::move(record);
    } else {
        auto carried = record::openFrom(*earlier, std::move(opened), moment);
        if (!carried) return trouble(carried.error());
        made = *std::move(carried);
    }
    if (auto const written = record::createRecord(command.output, made.record); !written) return trouble(written.error());
    auto const overview = record::stateOf(made.record);
    say(fmt::format("{}: {} lines, {} open", command.output, overview.lines.size(), overview.open.size()));
    for (auto const& finding : made.carried) say(fmt::format("carried: {}", finding));
    for (auto const& left : made.lapsed) say(fmt::format("not carried: {} {}: {}", left.finding, left.title, left.why));
    return kNothingFound;
}

// The lines that a decide command names.
Result<std::vector<std::size_t>> namedLines(record::Overview const& state, RecordCommand const& command) {
    std::vector<std::size_t> named;
    for (std::size_t i = 0; command.everyNote && i < state.lines.size(); ++i) {
        if (state.lines[i].severity == model::Severity::Note && state.lines[i].standing == record::Standing::Open) named.push_back(i);
    }
    for (auto const& finding : command.findings) {
        auto const line = record::lineOf(state.lines, finding);
        if (!line) return tl::unexpected(line.error());
        named.push_back(*line);
    }
    if (named.empty()) return tl::unexpected(Error{ErrorKind::Usage, "no line of severity note is open", {}, 0});
    return named;
}

Result<record::Decided> decisionOn(Record const& record, record::Line const& line, RecordCommand const& command, std::vector<record::Evidence> evidence) {
    auto decided = command.decided;
    decided.finding = line.finding;
    if (command.confirm) {
        if (line.inForce.empty()) return tl::unexpected(Error{ErrorKind::Usage, fmt::format("finding {}: there is no decision to confirm", line.finding), {}, 0});
        auto const reason = decided.reason;
        decided = *record::decisionIn(record.entries[line.inForce.back()]);
        decided.reason = reason;
    }
    decided.evidence.insert(decided.evidence.end(), std::make_move_iterator(evidence.begin()), std::make_move_iterator(evidence.end()));
    if (auto const allowed = record::mayDecide(line, decided); !allowed) return tl::unexpected(allowed.error());
    return decided;
}

int runDecide(RecordCommand const& command) {
    auto const key = loadKey(command.key, command.passphraseFile);
    if (!key) return trouble(key.error());
    auto const evidence = evidenceOf(command.evidence);
    if (!evidence) return trouble(evidence.error());
    record::Moment const moment{record::currentTime(), *key};
    std::vector<std::string> findings;
    auto const changed = record::updateRecord(command.file, [&](Record record) -> Result<Record> {
        auto const state = record::stateOf(record);
        auto const named = namedLines(state, command);
        if (!named) return tl::unexpected(named.error());
        for (auto const index : *named) {
            auto decided = decisionOn(record, state.lines[index], command, *evidence);
            if (!decided) return tl::unexpected(decided.error());
            findings.push_back(decided->finding);
            auto longer = record::withEntry(std::move(record), record::Body{*std::move(decided)}, moment);
            if (!longer) return longer;
            record = *std::move(longer);
        }
        return record;
    });
    if (!changed) return trouble(changed.error());
    auto const overview = record::stateOf(*changed);
    for (auto const& finding : findings) {
        auto const& line = overview.lines[*record::lineOf(overview.lines, finding)];
        say(fmt::format("{} {}: {}{}{}", finding, line.title, record::nameOf(line.standing), line.why.empty() ? "" : ", ", line.why));
    }
    say(fmt::format("{} open", overview.open.size()));
    return kNothingFound;
}

int runResult(RecordCommand const& command) {
    auto const key = loadKey(command.key, command.passphraseFile);
    if (!key) return trouble(key.error());
    auto const evidence = evidenceOf(command.evidence);
    if (!evidence) return trouble(evidence.error());
    record::Moment const moment{record::currentTime(), *key};
    auto outcome = record::Outcome::NotJudged;
    auto const changed = record::updateRecord(command.file, [&](Record record) -> Result<Record> {
        auto result = command.result;
        result.evidence = *evidence;
        if (!result.finding.empty()) {
            auto const known = std::find_if(record.opened().comparison.findings.begin(), record.opened().comparison.findings.end(),
                                            [&](model::Finding const& finding) { return finding.id.starts_with(result.finding); });
            if (known != record.opened().comparison.findings.end()) result.finding = known->id;
        }
        auto judged = record::judgeResult(record.opened().tests, std::move(result));
        if (!judged) return tl::unexpected(judged.error());
        outcome = judged->outcome;
        return record::withEntry(std::move(record), record::Body{*std::move(judged)}, moment);
    });
    if (!changed) return trouble(changed.error());
    say(fmt::format("{}: {}", command.result.test, outcome == record::Outcome::Within ? "within the limits" : outcome == record::Outcome::Outside ? "outside the limits" : "recorded, not judged"));
    return kNothingFound;
}

int runSign(RecordCommand const& command) {
    auto const key = loadKey(command.key, command.passphraseFile);
    if (!key) return trouble(key.error());
    record::Moment const moment{record::currentTime(), *key};
    auto const changed = record::updateRecord(command.file, [&](Record record) -> Result<Record> {
        if (auto const allowed = record::maySign(record, record::stateOf(record), command.role, key->person()); !allowed) return tl::unexpected(allowed.error());
        return record::withEntry(std::move(record), record::Body{record::Signed{command.role, command.note}}, moment);
    });
    if (!changed) return trouble(changed.error());
    say(fmt::format("signed as {}; the record is {}", record::nameOf(command.role), record::nameOf(record::stateOf(*changed).state)));
    return kNothingFound;
}

int runMerge(RecordCommand const& command) {
    auto const key = loadKey(command.key, command.passphraseFile);
    if (!key) return trouble(key.error());
    auto const a = record::loadRecord(command.file);
    if (!a) return trouble(a.error());
    auto const b = record::loadRecord(command.other);
    if (!b) return trouble(b.error());
    auto const merged = record::mergeRecords(*a, *b, {record::currentTime(), *key});
    if (!merged) return trouble(merged.error());
    if (auto const written = record::createRecord(command.output, *merged); !written) return trouble(written.error());
    auto const* body = std::get_if<record::Merged>(&merged->head().body);
    if (body == nullptr) say(fmt::format("{}: one copy held everything of the other", command.output));
    else say(fmt::format("{}: {} entries; decided differently and open again: {}", command.output, merged->entries.size(), body->conflicts.size()));
    for (std::size_t i = 0; body != nullptr && i < body->conflicts.size(); ++i) say(fmt::format("open again: {}", body->conflicts[i]));
    return kNothingFound;
}

int runReport(RecordCommand const& command, Program const& program) {
    if (command.pdf && program.recordPdf == nullptr) return trouble(Error{ErrorKind::Usage, kNoPdfWriter, *command.pdf});
    auto const record = record::loadRecord(command.file);
    if (!record) return trouble(record.error());
    Outputs outputs;
    if (command.html) outputs.add(*command.html, record::recordHtml(*record));
    if (command.pdf) outputs.add(*command.pdf, program.recordPdf(*record));
    if (auto const written = outputs.write(); !written) return trouble(written.error());
    return kNothingFound;
}

int runCheck(RecordCommand const& command) {
    auto const holds = checkRecord(command);
    if (!holds) return trouble(holds.error());
    return *holds ? kNothingFound : kFindings;
}

int runKey(RecordCommand const& command) {
    Result<record::Person> person = record::Person{};
    if (command.action == RecordAction::NewKey) {
        person = makeKey(command);
    } else {
        auto const key = loadKey(command.file, command.passphraseFile);
        person = key ? Result<record::Person>(key->person()) : tl::unexpected(key.error());
    }
    if (!person) return trouble(person.error());
    say(person->name);
    say(fmt::format("public key {}", person->key));
    say(fmt::format("in records shown as {}", record::shortKey(person->key)));
    return kNothingFound;
}

int runShow(RecordCommand const& command) {
    auto const record = record::loadRecord(command.file);
    if (!record) return trouble(record.error());
    Outputs outputs;
    outputs.add("-", record::recordText(*record));
    if (auto const written = outputs.write(); !written) return trouble(written.error());
    return kNothingFound;
}

}  // namespace

int runRecord(int argc, char const* const* argv, Program const& program) {
    auto const command = parseRecordArguments(argc, argv);
    if (!command) return trouble(command.error());
    switch (command->action) {
        case RecordAction::Open: return runOpen(*command);
        case RecordAction::Decide: return runDecide(*command);
        case RecordAction::Result: return runResult(*command);
        case RecordAction::Sign: return runSign(*command);
        case RecordAction::Show: return runShow(*command);
        case RecordAction::Check: return runCheck(*command);
        case RecordAction::Report: return runReport(*command, program);
        case RecordAction::Merge: return runMerge(*command);
        case RecordAction::NewKey:
        case RecordAction::ShowKey: return runKey(*command);
        case RecordAction::Information: fmt::print("{}", command->information); return kNothingFound;
    }
    return kTrouble;
}

}  // namespace standin::cli

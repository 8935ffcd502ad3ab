// One function a command. What may be entered is decided in record/rules.h; here
// files are named, keys loaded and results told.
// Tested by tests/src/cli/record_run_test.cpp.
#include "cli/record_run.h"

#include <cstdio>
#include <utility>

#include <fmt/format.h>

#include "cli/compare_pair.h"
#include "cli/outputs.h"
#include "cli/record_arguments.h"
#include "cli/record_check.h"
#include "cli/record_inputs.h"
#include "cli/record_key.h"
#include "cli/trouble.h"
#include "record/carry.h"
#include "record/changes.h"
#include "record/merge.h"
#include "record/moment.h"
#include "record/record_html.h"
#include "record/record_text.h"
#include "record/record_view.h"
#include "record/state.h"
#include "record/store.h"
#include "text/visible.h"

namespace standin::cli {

namespace {

using model::Error;
using model::ErrorKind;
using model::Result;
using record::Record;

// A line on standard output, foreign text made visible.
void say(std::string const& line) { fmt::print("{}\n", text::visible(line)); }

int runOpen(RecordCommand const& command, Program const& program) {
    auto const key = loadKey(command.key, command.passphraseFile);
    if (!key) return trouble(key.error());
    auto earlier = command.from.empty() ? Result<Record>(Record{}) : record::loadRecord(command.from);
    if (!earlier) return trouble(earlier.error());
    auto compared = comparePair(command.compare, PageBytes::Drop, program.recogniser);
    if (!compared) return trouble(compared.error());
    auto opened = openedOf(command.compare, command.identification, *std::move(compared));
    if (!opened) return trouble(opened.error());
    record::Moment const moment{record::currentTime(), *key};
    auto const made = record::openAfter(command.from.empty() ? nullptr : &*earlier, *std::move(opened), moment);
    if (!made) return trouble(made.error());
    if (auto const written = record::createRecord(command.output, made->record); !written) return trouble(written.error());
    auto const overview = record::stateOf(made->record);
    say(fmt::format("{}: {} lines, {} open", command.output, overview.lines.size(), overview.open.size()));
    for (auto const& line : record::toldOf(*made)) say(line);
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
            auto decided = command.decided;
            decided.finding = state.lines[index].finding;
            decided.evidence = *evidence;
            findings.push_back(decided.finding);
            auto longer = record::withDecision(std::move(record), std::move(decided), command.confirm ? record::Stance::Confirm : record::Stance::Own, moment);
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
        auto longer = record::withResult(std::move(record), std::move(result), moment);
        if (longer) outcome = std::get<record::BenchResult>(longer->head().body).outcome;
        return longer;
    });
    if (!changed) return trouble(changed.error());
    say(fmt::format("{}: {}", command.result.test, outcome == record::Outcome::Within ? "within the limits" : outcome == record::Outcome::Outside ? "outside the limits" : "recorded, not judged"));
    return kNothingFound;
}

int runSign(RecordCommand const& command) {
    auto const key = loadKey(command.key, command.passphraseFile);
    if (!key) return trouble(key.error());
    record::Moment const moment{record::currentTime(), *key};
    auto const changed = record::updateRecord(command.file, [&](Record record) { return record::withSignature(std::move(record), command.role, command.note, moment); });
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

// What those who were given the record before have to learn of now.
void sayNotTold(record::Overview const& overview) {
    if (auto const waiting = record::notToldText(overview); !waiting.empty()) say(waiting);
}

int runSupersede(RecordCommand const& command) {
    auto const key = loadKey(command.key, command.passphraseFile);
    if (!key) return trouble(key.error());
    auto const by = record::loadRecord(command.other);
    if (!by) return trouble(by.error());
    record::Moment const moment{record::currentTime(), *key};
    auto const changed = record::updateRecord(command.file, [&](Record record) { return record::withSupersession(std::move(record), *by, command.reason, moment); });
    if (!changed) return trouble(changed.error());
    say(fmt::format("superseded by {}, which is {}", command.other, record::nameOf(record::stateOf(*by).state)));
    sayNotTold(record::stateOf(*changed));
    return kNothingFound;
}

int runDistribute(RecordCommand const& command) {
    auto const key = loadKey(command.key, command.passphraseFile);
    if (!key) return trouble(key.error());
    record::Moment const moment{record::currentTime(), *key};
    auto const changed = record::updateRecord(command.file, [&](Record record) -> Result<Record> {
        for (auto const& to : command.recipients) {
            auto distributed = command.distributed;
            distributed.to = to;
            auto longer = record::withDistribution(std::move(record), std::move(distributed), moment);
            if (!longer) return longer;
            record = *std::move(longer);
        }
        return record;
    });
    if (!changed) return trouble(changed.error());
    auto const overview = record::stateOf(*changed);
    say(fmt::format("entered: {} to {}; the record is {}", command.distributed.what, fmt::join(command.recipients, ", "), record::nameOf(overview.state)));
    sayNotTold(overview);
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

int runCheck(RecordCommand const& command, Program const& program) {
    auto const compare = [&program](CompareCommand const& again) { return comparePair(again, PageBytes::Drop, program.recogniser); };
    auto const holds = checkRecord(command, compare, say);
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
        case RecordAction::Open: return runOpen(*command, program);
        case RecordAction::Decide: return runDecide(*command);
        case RecordAction::Result: return runResult(*command);
        case RecordAction::Sign: return runSign(*command);
        case RecordAction::Show: return runShow(*command);
        case RecordAction::Check: return runCheck(*command, program);
        case RecordAction::Report: return runReport(*command, program);
        case RecordAction::Merge: return runMerge(*command);
        case RecordAction::Supersede: return runSupersede(*command);
        case RecordAction::Distribute: return runDistribute(*command);
        case RecordAction::NewKey:
        case RecordAction::ShowKey: return runKey(*command);
        case RecordAction::Information: fmt::print("{}", command->information); return kNothingFound;
    }
    return kTrouble;
}

}  // namespace standin::cli

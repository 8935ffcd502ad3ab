// One function a command adds its options; what CLI11 cannot check is checked
// afterwards. Tested by tests/src/cli/record_arguments_test.cpp.
#include "cli/record_arguments.h"

#include <algorithm>
#include <functional>
#include <utility>

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include "cli/input_options.h"
#include "record/moment.h"

namespace standin::cli {

namespace {

using model::Error;
using model::ErrorKind;
using model::Result;

auto usage(std::string message) { return tl::unexpected(Error{ErrorKind::Usage, std::move(message), {}, 0}); }

// Words that are read as text first and then as what they stand for, and options to be checked then.
struct Words {
    std::string disposition, role;
    std::string newKey, showKey;
    CLI::Option const* ocr = nullptr;
};

void addKey(CLI::App& app, RecordCommand& command) {
    app.add_option("--key", command.key, "your key file; 'standin record key --new' makes one")->type_name("FILE")->required();
    app.add_option("--passphrase-file", command.passphraseFile, "the first line of F opens the key")->type_name("F");
}

void addEvidence(CLI::App& app, RecordCommand& command) {
    app.add_option("--evidence", command.evidence, "a file to rely on; its name and SHA-256 are kept")->type_name("FILE")->expected(1)->take_all();
}

CLI::App* addOpen(CLI::App& app, RecordCommand& command, Words& words) {
    auto* const open = app.add_subcommand("open", "Compare two sheets and open a record of what was found");
    addInputOptions(*open, command.compare);
    words.ocr = addOcr(*open, command.compare.ocr);
    open->add_option("-o,--output", command.output, "the new record")->type_name("FILE")->required();
    open->add_option("--from", command.from, "carry the decisions of this record over where their findings are unchanged")->type_name("RECORD");
    auto& identification = command.identification;
    open->add_option("--number", identification.number, "the record's number in your files");
    open->add_option("--title", identification.title, "what it is about");
    open->add_option("--product", identification.product, "product and assembly");
    open->add_option("--position", identification.position, "positions on the assembly");
    open->add_option("--scope", identification.scope, "which product, lot, quantity it holds for");
    open->add_option("--valid-until", identification.validUntil, "a date, 2032-01-31; the record lapses after it");
    open->add_option("--review-trigger", identification.reviewTriggers, "what asks for a new review")->expected(1)->take_all();
    addKey(*open, command);
    return open;
}

CLI::App* addDecide(CLI::App& app, RecordCommand& command, Words& words) {
    auto* const decide = app.add_subcommand("decide", "Say what is to be done about a finding");
    decide->add_option("FILE", command.file, "the record")->required();
    decide->add_option("FINDING", command.findings, "ids of findings, or their first digits");
    decide->add_flag("--every-note", command.everyNote, "all open lines of severity note");
    decide->add_option("--disposition", words.disposition, "accepted, accepted-with-condition, bench-test, supplier-statement, not-applicable, rejected, open")->type_name("WORD");
    decide->add_flag("--confirm", command.confirm, "as a second person: the same disposition as is in force");
    decide->add_option("--reason", command.decided.reason, "why; always required");
    decide->add_option("--condition", command.decided.condition, "the condition, how it is verified, where it is written");
    decide->add_option("--addressee", command.decided.addressee, "who is asked for a statement");
    decide->add_option("--due", command.decided.due, "until when it is expected, 2031-06-30");
    decide->add_option("--samples", command.decided.samples, "how many samples of how many lots are to be tested");
    addEvidence(*decide, command);
    addKey(*decide, command);
    return decide;
}

CLI::App* addResult(CLI::App& app, RecordCommand& command) {
    auto* const result = app.add_subcommand("result", "Enter what a bench test measured; it is judged against the limits");
    result->add_option("FILE", command.file, "the record")->required();
    result->add_option("TEST", command.result.test, "the test's id, as 'standin record show' lists it")->required();
    result->add_option("--value", command.result.values, "a measured value; several: the extremes, or one a sample")->required()->expected(1)->take_all();
    result->add_option("--unit", command.result.unit, "of the values");
    result->add_option("--finding", command.result.finding, "whose limit it is, where the test has several");
    result->add_option("--check", command.result.check, "the cell check whose limit it is, where the finding has several");
    result->add_option("--condition", command.result.condition, "what it was measured under");
    result->add_option("--samples", command.result.samples, "number of samples");
    result->add_option("--lots", command.result.lots, "number of lots they came from");
    result->add_option("--instrument", command.result.instrument, "instrument and its uncertainty");
    result->add_option("--note", command.result.note, "anything else");
    addEvidence(*result, command);
    addKey(*result, command);
    return result;
}

CLI::App* addSign(CLI::App& app, RecordCommand& command, Words& words) {
    auto* const sign = app.add_subcommand("sign", "Sign everything that the record holds so far");
    sign->add_option("FILE", command.file, "the record")->required();
    sign->add_option("--role", words.role, "author, reviewer, approver")->type_name("ROLE")->required();
    sign->add_option("--note", command.note, "a remark");
    addKey(*sign, command);
    return sign;
}

CLI::App* addCheck(CLI::App& app, RecordCommand& command) {
    auto* const check = app.add_subcommand("check", "Whether the record holds: 0 it does, 1 lapsed or open, 2 it was tampered with");
    check->add_option("FILE", command.file, "the record")->required();
    check->add_option("--reference", command.reference, "the reference's sheet as it is now")->type_name("FILE");
    check->add_option("--candidate", command.candidate, "the candidate's sheet as it is now")->type_name("FILE");
    check->add_option("--head", command.head, "the hash of an entry that must be there, from a printed report")->type_name("HASH");
    check->add_option("--password-file", command.compare.passwordFile, "the first line of F is the sheets' password")->type_name("F");
    return check;
}

CLI::App* addReport(CLI::App& app, RecordCommand& command) {
    auto* const report = app.add_subcommand("report", "Write the record for people");
    report->add_option("FILE", command.file, "the record")->required();
    report->add_option("--html", command.html, "write one HTML file to OUT (a path, or - for standard output)")->type_name("OUT");
    report->add_option("--pdf", command.pdf, "write a PDF to OUT")->type_name("OUT");
    return report;
}

CLI::App* addMerge(CLI::App& app, RecordCommand& command) {
    auto* const merge = app.add_subcommand("merge", "Make one record of two copies that were written on apart");
    merge->add_option("A", command.file, "one copy")->required();
    merge->add_option("B", command.other, "the other copy")->required();
    merge->add_option("-o,--output", command.output, "the new record")->type_name("FILE")->required();
    addKey(*merge, command);
    return merge;
}

CLI::App* addSupersede(CLI::App& app, RecordCommand& command) {
    auto* const supersede = app.add_subcommand("supersede", "Say that another record takes this one's place; nothing is decided in it any more");
    supersede->add_option("FILE", command.file, "the record")->required();
    supersede->add_option("--by", command.other, "the record that takes its place")->type_name("RECORD")->required();
    supersede->add_option("--reason", command.reason, "why")->required();
    addKey(*supersede, command);
    return supersede;
}

CLI::App* addDistribute(CLI::App& app, RecordCommand& command) {
    auto* const distribute = app.add_subcommand("distribute", "Enter who was given the record, or which papers follow it");
    distribute->add_option("FILE", command.file, "the record")->required();
    distribute->add_option("--to", command.recipients, "a person, a department, a list; several may be given")->required()->expected(1)->take_all();
    distribute->add_option("--what", command.distributed.what, "what was given or changed")->default_str(std::string(record::kCopyOfRecord));
    distribute->add_option("--change", command.distributed.change, "number of the change to drawing, parts list or work instruction");
    distribute->add_option("--on", command.distributed.on, "the day, 2031-05-06; the day of the entry where it is left out");
    addKey(*distribute, command);
    return distribute;
}

CLI::App* addKeyCommand(CLI::App& app, RecordCommand& command, Words& words) {
    auto* const key = app.add_subcommand("key", "Make a key to sign with, or show whose a key file is");
    key->add_option("FILE", words.showKey, "a key file to show");
    key->add_option("--new", words.newKey, "make a new key in FILE, readable by you alone")->type_name("FILE");
    key->add_option("--name", command.name, "the name of the person who keeps it");
    key->add_flag("--passphrase", command.lockKey, "ask for a passphrase that locks it");
    key->add_option("--passphrase-file", command.passphraseFile, "the first line of F locks or opens it")->type_name("F");
    return key;
}

Result<RecordCommand> checkedDecide(RecordCommand command, Words const& words) {
    if (command.confirm == !words.disposition.empty()) return usage("give --disposition, or --confirm as a second person, one of the two");
    if (!command.confirm) {
        auto const disposition = record::dispositionOf(words.disposition);
        if (!disposition) return usage(fmt::format("--disposition knows accepted, accepted-with-condition, bench-test, supplier-statement, not-applicable, rejected and open, not '{}'", words.disposition));
        command.decided.disposition = *disposition;
    }
    if (command.findings.empty() == !command.everyNote) return usage("name the findings, or give --every-note, one of the two");
    if (!command.decided.due.empty() && !record::isDate(command.decided.due)) return usage(fmt::format("--due wants a date like 2031-06-30, not '{}'", command.decided.due));
    return command;
}

Result<RecordCommand> checkedOpen(RecordCommand command, Words const& words) {
    if (auto error = checkOcr(*words.ocr, command.compare.ocr)) return tl::unexpected(std::move(*error));
    auto const& until = command.identification.validUntil;
    if (!until.empty() && !record::isDate(until)) return usage(fmt::format("--valid-until wants a date like 2032-01-31, not '{}'", until));
    return command;
}

Result<RecordCommand> checkedDistribute(RecordCommand command) {
    auto const& on = command.distributed.on;
    if (!on.empty() && !record::isDate(on)) return usage(fmt::format("--on wants a date like 2031-05-06, not '{}'", on));
    return command;
}

Result<RecordCommand> checkedReport(RecordCommand command) {
    if (!command.html && !command.pdf) return usage("say what to write: --html OUT or --pdf OUT");
    if ((command.html && command.html->empty()) || (command.pdf && command.pdf->empty())) return usage("--html and --pdf want a path, or - for standard output");
    if (command.html && command.html == command.pdf) return usage(fmt::format("two outputs go to {}; give each its own file", *command.html));
    return command;
}

Result<RecordCommand> checkedKey(RecordCommand command, Words const& words) {
    if (words.newKey.empty() == words.showKey.empty()) return usage("give --new FILE to make a key, or the name of a key file to show it");
    command.action = words.newKey.empty() ? RecordAction::ShowKey : RecordAction::NewKey;
    command.file = words.newKey.empty() ? words.showKey : words.newKey;
    if (command.action == RecordAction::NewKey && command.name.empty()) return usage("a new key needs --name, the name of the person who keeps it");
    return command;
}

std::string oneLine(std::string text) {
    std::replace(text.begin(), text.end(), '\n', ' ');
    return text + "; see 'standin record --help'";
}

}  // namespace

Result<RecordCommand> parseRecordArguments(int argc, char const* const* argv) {
    CLI::App app{"Keeps what people decide on a comparison: every entry signed, nothing changed afterwards. It records decisions on two documents; it is no test of a part.", "standin record"};
    app.require_subcommand(1);
    RecordCommand command;
    command.distributed.what = record::kCopyOfRecord;
    Words words;
    auto* const show = app.add_subcommand("show", "Print the record: lines, decisions, signatures, history");
    show->add_option("FILE", command.file, "the record")->required();
    std::vector<std::pair<CLI::App*, RecordAction>> const actions{
        {addOpen(app, command, words), RecordAction::Open},
        {addDecide(app, command, words), RecordAction::Decide},
        {addResult(app, command), RecordAction::Result},
        {addSign(app, command, words), RecordAction::Sign},
        {show, RecordAction::Show},
        {addCheck(app, command), RecordAction::Check},
        {addReport(app, command), RecordAction::Report},
        {addMerge(app, command), RecordAction::Merge},
        {addSupersede(app, command), RecordAction::Supersede},
        {addDistribute(app, command), RecordAction::Distribute},
        {addKeyCommand(app, command, words), RecordAction::NewKey},
    };
    try {
        app.parse(argc, argv);
    } catch (CLI::CallForHelp const&) {
        command.action = RecordAction::Information;
        command.information = app.help();
        return command;
    } catch (CLI::ParseError const& error) {
        return usage(oneLine(error.what()));
    }
    for (auto const& [subcommand, action] : actions) {
        if (*subcommand) command.action = action;
    }
    if (command.action == RecordAction::Open) return checkedOpen(std::move(command), words);
    if (command.action == RecordAction::Decide) return checkedDecide(std::move(command), words);
    if (command.action == RecordAction::Distribute) return checkedDistribute(std::move(command));
    if (command.action == RecordAction::Report) return checkedReport(std::move(command));
    if (command.action == RecordAction::NewKey) return checkedKey(std::move(command), words);
    if (command.action == RecordAction::Sign) {
        auto const role = record::roleOf(words.role);
        if (!role) return usage(fmt::format("--role knows author, reviewer and approver, not '{}'", words.role));
        command.role = *role;
    }
    return command;
}

}  // namespace standin::cli

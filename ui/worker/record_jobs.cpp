// The commands of src/cli/record_run.cpp with their outcome as values. What may be
// entered is decided in record/.
// Tested by tests/ui/worker/record_jobs_test.cpp.
#include "ui/worker/record_jobs.h"

#include <filesystem>
#include <optional>
#include <utility>

#include "cli/compare_pair.h"
#include "cli/outputs.h"
#include "cli/record_check.h"
#include "cli/record_inputs.h"
#include "record/carry.h"
#include "record/merge.h"
#include "record/moment.h"
#include "record/pdf/record_pdf.h"
#include "record/record_html.h"
#include "record/store.h"
#include "ui/worker/compare_command.h"

namespace standin::ui {

using model::Error;
using model::ErrorKind;
using model::Result;
using record::Record;

namespace {

Result<record::SigningKey> keyOf(Signer const& signer) {
    if (signer.keyFile.empty()) return tl::unexpected(Error{ErrorKind::Usage, "no key is chosen; choose your key file, or make one", {}, 0});
    return record::SigningKey::load(signer.keyFile, [&]() -> std::optional<std::string> { return signer.passphrase; });
}

RecordOutcome outcomeOf(std::string const& file, Record record, std::vector<std::string> told = {}) {
    auto overview = record::stateOf(record);
    return {std::make_shared<ReadRecord const>(ReadRecord{file, std::move(record), std::move(overview)}), std::move(told)};
}

// Runs `change` on the record with a key at hand, as updateRecord() has it.
template <typename Change>
Result<RecordOutcome> changed(std::string const& file, Signer const& signer, Change const& change) {
    auto const key = keyOf(signer);
    if (!key) return tl::unexpected(key.error());
    record::Moment const moment{record::currentTime(), *key};
    auto updated = record::updateRecord(file, [&](Record record) { return change(std::move(record), moment); });
    if (!updated) return tl::unexpected(updated.error());
    return outcomeOf(file, *std::move(updated));
}

Result<record::CarriedOver> newRecord(NewRecord const& wanted, record::Opened first, record::Moment const& moment) {
    if (wanted.from.empty()) return record::openAfter(nullptr, std::move(first), moment);
    auto const earlier = record::loadRecord(wanted.from);
    if (!earlier) return tl::unexpected(earlier.error());
    return record::openAfter(&*earlier, std::move(first), moment);
}

Result<RecordOutcome> written(std::string const& file, Record record, std::vector<std::string> told) {
    if (auto const created = record::createRecord(file, record); !created) return tl::unexpected(created.error());
    return outcomeOf(file, std::move(record), std::move(told));
}

}  // namespace

Result<RecordOutcome> readRecord(std::string const& file) {
    auto record = record::loadRecord(file);
    if (!record) return tl::unexpected(record.error());
    return outcomeOf(file, *std::move(record));
}

Result<RecordOutcome> openRecordOf(ReadPair const& pair, NewRecord const& wanted, Signer const& signer) {
    auto const key = keyOf(signer);
    if (!key) return tl::unexpected(key.error());
    auto const command = commandOf(pair.request);
    auto compared = cli::comparePair(command, pair.request.password, {}, cli::PageBytes::Drop);
    if (!compared) return tl::unexpected(compared.error());
    if (compared->result.comparison != pair.comparison) {
        return tl::unexpected(Error{ErrorKind::Usage, "the files are no longer what was compared; read the pair again, then open its record", {}, 0});
    }
    auto first = cli::openedOf(command, wanted.identification, *std::move(compared));
    if (!first) return tl::unexpected(first.error());
    auto made = newRecord(wanted, *std::move(first), {record::currentTime(), *key});
    if (!made) return tl::unexpected(made.error());
    auto told = record::toldOf(*made);
    return written(wanted.file, std::move(made->record), std::move(told));
}

Result<RecordOutcome> decideInRecord(std::string const& file, NewDecision const& decision, Signer const& signer) {
    auto evidence = cli::evidenceOf(decision.evidence);
    if (!evidence) return tl::unexpected(evidence.error());
    auto decided = decision.decided;
    decided.evidence = *std::move(evidence);
    return changed(file, signer, [&](Record record, record::Moment const& moment) { return record::withDecision(std::move(record), decided, decision.stance, moment); });
}

Result<RecordOutcome> enterResult(std::string const& file, record::BenchResult const& result, std::vector<std::string> const& evidence, Signer const& signer) {
    auto files = cli::evidenceOf(evidence);
    if (!files) return tl::unexpected(files.error());
    auto entered = result;
    entered.evidence = *std::move(files);
    return changed(file, signer, [&](Record record, record::Moment const& moment) { return record::withResult(std::move(record), entered, moment); });
}

Result<RecordOutcome> signRecord(std::string const& file, record::Role role, std::string const& note, Signer const& signer) {
    return changed(file, signer, [&](Record record, record::Moment const& moment) { return record::withSignature(std::move(record), role, note, moment); });
}

Result<RecordOutcome> supersedeRecord(std::string const& file, std::string const& by, std::string const& reason, Signer const& signer) {
    auto const other = record::loadRecord(by);
    if (!other) return tl::unexpected(other.error());
    auto ended = changed(file, signer, [&](Record record, record::Moment const& moment) { return record::withSupersession(std::move(record), *other, reason, moment); });
    if (ended) ended->told.push_back("superseded by " + by + ", which is " + std::string(record::nameOf(record::stateOf(*other).state)));
    return ended;
}

Result<RecordOutcome> distributeRecord(std::string const& file, record::Distributed const& distributed, Signer const& signer) {
    return changed(file, signer, [&](Record record, record::Moment const& moment) { return record::withDistribution(std::move(record), distributed, moment); });
}

Result<RecordOutcome> mergeRecordFiles(std::string const& file, std::string const& other, std::string const& output, Signer const& signer) {
    auto const key = keyOf(signer);
    if (!key) return tl::unexpected(key.error());
    auto const a = record::loadRecord(file);
    if (!a) return tl::unexpected(a.error());
    auto const b = record::loadRecord(other);
    if (!b) return tl::unexpected(b.error());
    auto merged = record::mergeRecords(*a, *b, {record::currentTime(), *key});
    if (!merged) return tl::unexpected(merged.error());
    std::vector<std::string> told;
    auto const* body = std::get_if<record::Merged>(&merged->head().body);
    if (body == nullptr) told.emplace_back("one copy held everything of the other");
    for (std::size_t i = 0; body != nullptr && i < body->conflicts.size(); ++i) told.push_back("decided differently, open again: " + body->conflicts[i]);
    return written(output, *std::move(merged), std::move(told));
}

Result<RecordOutcome> checkRecordFile(std::string const& file, PairRequest const* sheets) {
    cli::RecordCommand command;
    command.file = file;
    if (sheets != nullptr) {
        command.reference = sheets->reference;
        command.candidate = sheets->candidate;
    }
    auto const compare = [&](cli::CompareCommand const& again) { return cli::comparePair(again, sheets != nullptr ? sheets->password : std::nullopt, {}, cli::PageBytes::Drop); };
    std::vector<std::string> told;
    auto const holds = cli::checkRecord(command, compare, [&](std::string const& line) { told.push_back(line); });
    if (!holds) return tl::unexpected(holds.error());
    auto outcome = readRecord(file);
    if (outcome) outcome->told = std::move(told);
    return outcome;
}

Result<RecordOutcome> reportRecord(std::string const& file, std::string const& output, RecordReport form) {
    auto const record = record::loadRecord(file);
    if (!record) return tl::unexpected(record.error());
    cli::Outputs outputs;
    outputs.add(std::filesystem::absolute(output).string(), form == RecordReport::Html ? record::recordHtml(*record) : record::recordPdf(*record));  // never "-"
    if (auto const saved = outputs.write(); !saved) return tl::unexpected(saved.error());
    return RecordOutcome{nullptr, {"written: " + output}};
}

Result<RecordOutcome> makeKeyFile(std::string const& file, std::string const& name, std::string const& passphrase) {
    auto const key = record::SigningKey::create(name);
    if (!key) return tl::unexpected(key.error());
    if (auto const saved = key->save(file, passphrase); !saved) return tl::unexpected(saved.error());
    return RecordOutcome{nullptr, {key->person().name + ", in records shown as " + record::shortKey(key->person().key)}};
}

}  // namespace standin::ui

// Tested by tests/src/record/record_text_test.cpp.
#include "record/record_text.h"

#include <array>

#include <fmt/format.h>

#include "model/names.h"
#include "record/record_view.h"
#include "report/finding_view.h"
#include "report/texts.h"
#include "report/wrapped_text.h"

namespace standin::record {

using model::Severity;
using report::appendWrapped;

namespace {

void writeTexts(std::string& out, NamedTexts const& texts) {
    for (auto const& [name, text] : texts) appendWrapped(out, fmt::format("{:<18} ", name), text);
}

void writeLine(std::string& out, Record const& record, Line const& line) {
    appendWrapped(out, fmt::format("  {}  ", line.finding), fmt::format("{} (level {})", line.title, line.level));
    appendWrapped(out, "                ", standingText(record, line));
    for (auto const& consequence : line.consequences) {
        if (auto const* finding = findingOf(record.opened(), consequence)) appendWrapped(out, "                follows: ", finding->title);
    }
    for (auto const index : line.decisions) appendWrapped(out, "                - ", decisionText(record.entries[index]));
    for (auto const index : line.results) appendWrapped(out, "                - measured ", resultText(record.entries[index], record.opened()));
}

void writeTests(std::string& out, Record const& record) {
    auto const& opened = record.opened();
    if (opened.tests.empty()) return;
    out += "\nBENCH TESTS\n";
    for (auto const& test : opened.tests) {
        appendWrapped(out, fmt::format("  {}  ", test.id), test.procedure + " " + test.setup);
        for (auto const& limit : test.limits) appendWrapped(out, "      limit  ", fmt::format("{} [{}]", report::limitText(limit), limitName(limit)));
        for (auto const& entry : record.entries) {
            auto const* result = std::get_if<BenchResult>(&entry.body);
            if (result != nullptr && result->test == test.id) appendWrapped(out, "      result ", resultText(entry, opened));
        }
    }
}

}  // namespace

std::string recordText(Record const& record) {
    auto const overview = stateOf(record);
    auto const& opened = record.opened();
    std::string out = "STANDIN  Record\n\n";
    writeTexts(out, identificationOf(opened));
    writeTexts(out, methodOf(opened));
    appendWrapped(out, "Verdict            ", opened.comparison.verdict.sentence);
    appendWrapped(out, "State              ", nameOf(overview.state));
    for (auto const index : overview.supersessions) appendWrapped(out, "Superseded         ", supersededText(record.entries[index]));
    appendWrapped(out, "Open points        ", fmt::format("{}", overview.open.size()));
    appendWrapped(out, "Scope              ", opened.identification.scope.empty() ? "not stated" : opened.identification.scope);
    appendWrapped(out, "Valid until        ", opened.identification.validUntil.empty() ? "no end stated" : opened.identification.validUntil);
    for (auto const& trigger : reviewTriggers(opened)) appendWrapped(out, "Review again upon  ", trigger);
    for (auto const severity : report::kSeverities) {
        std::size_t count = 0;
        for (auto const& line : overview.lines) count += line.severity == severity ? 1U : 0U;
        if (count == 0) continue;
        out += fmt::format("\n{} ({})\n", report::texts::severityHeading(severity), count);
        if (severity == Severity::Editorial) out += "  no change of meaning; need no decision\n";
        for (auto const& line : overview.lines) {
            if (line.severity == severity && (severity != Severity::Editorial || !line.decisions.empty())) writeLine(out, record, line);
        }
    }
    writeTests(out, record);
    out += "\nSIGNATURES\n";
    if (overview.signatures.empty()) out += "  none yet\n";
    for (auto const& signature : overview.signatures) appendWrapped(out, "  ", signatureText(record, signature));
    out += "\nDISTRIBUTION\n";
    if (overview.distributions.empty()) out += "  to nobody yet\n";
    for (auto const index : overview.distributions) appendWrapped(out, "  ", distributedText(record.entries[index]));
    if (auto const waiting = notToldText(overview); !waiting.empty()) appendWrapped(out, "  ", waiting);
    out += "\nHISTORY\n";
    for (std::size_t i = 0; i < record.entries.size(); ++i) appendWrapped(out, "  ", historyText(record, i));
    out += '\n';
    appendWrapped(out, "", headText(record));
    appendWrapped(out, "", kMeaning);
    appendWrapped(out, "", kKeysMeaning);
    return out;
}

}  // namespace standin::record

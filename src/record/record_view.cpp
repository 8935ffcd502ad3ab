// Tested by tests/src/record/record_text_test.cpp.
#include "record/record_view.h"

#include <algorithm>
#include <array>

#include <fmt/format.h>

#include "report/finding_view.h"

namespace standin::record {

namespace {

constexpr std::array kUsualTriggers{"a new revision of either datasheet", "a change notice of either maker", "a failure in the field", "another cell, FET, sense resistor or charger"};

void addText(NamedTexts& texts, std::string name, std::string text) {
    if (!text.empty()) texts.emplace_back(std::move(name), std::move(text));
}

std::string joined(std::vector<std::string> const& words, std::string_view between) {
    std::string text;
    for (auto const& word : words) text += (text.empty() ? "" : std::string(between)) + word;
    return text;
}

std::string evidenceText(std::vector<Evidence> const& evidence) {
    std::string text;
    for (auto const& one : evidence) text += fmt::format(" Evidence: {} (SHA-256 {}).", one.file, one.sha256);
    return text;
}

// "; titled …, dated …, in en, zh" as far as the sheet says so.
std::string sheetDetails(model::DocumentInfo const& document) {
    std::string text;
    if (!document.title.empty()) text += fmt::format("; titled {}", document.title);
    if (!document.date.empty()) text += fmt::format("; dated {}", document.date);
    if (!document.languages.empty()) text += fmt::format("; in {}", joined(document.languages, ", "));
    return text + fmt::format("; {} bytes", document.bytes);
}

std::string sentence(std::string text) {
    if (!text.empty() && text.back() != '.' && text.back() != '!' && text.back() != '?') text += '.';
    return text;
}

}  // namespace

NamedTexts identificationOf(Opened const& opened) {
    auto const& identification = opened.identification;
    NamedTexts texts;
    addText(texts, "Record number", identification.number);
    addText(texts, "Title", identification.title);
    addText(texts, "Product", identification.product);
    addText(texts, "Position", identification.position);
    for (auto const& [name, document] : {std::pair{"Reference", &opened.comparison.reference}, std::pair{"Candidate", &opened.comparison.candidate}}) {
        addText(texts, name, fmt::format("{} ({}, SHA-256 {}){}", report::titleOf(*document), document->file, document->sha256, sheetDetails(*document)));
    }
    if (opened.predecessor) addText(texts, "Follows record", fmt::format("{} entries, head {}", opened.predecessor->count, opened.predecessor->head));
    return texts;
}

NamedTexts methodOf(Opened const& opened) {
    auto const& method = opened.method;
    NamedTexts texts;
    addText(texts, "Program", "Standin " + method.program);
    addText(texts, "Vocabulary", "SHA-256 " + method.vocabulary);
    addText(texts, "Reference variant", method.referenceVariant);
    addText(texts, "Candidate variant", method.candidateVariant);
    addText(texts, "Recognised from pictures", method.ocr);
    addText(texts, "Cell profile", opened.comparison.cellName);
    addText(texts, "Circuit", opened.comparison.circuitName);
    for (auto const& file : method.files) addText(texts, file.kind, fmt::format("{} (SHA-256 {})", file.file, file.sha256));
    return texts;
}

std::string personText(Person const& person) { return fmt::format("{} ({})", person.name, shortKey(person.key)); }

std::string decisionText(Entry const& entry) {
    auto const& decided = *decisionIn(entry);
    auto const* carried = std::get_if<Carried>(&entry.body);
    auto text = fmt::format("{} by {}, {}: {}", nameOf(decided.disposition), personText(decidedBy(entry)), carried != nullptr ? carried->at : entry.at, sentence(decided.reason));
    if (!decided.condition.empty()) text += " Condition: " + sentence(decided.condition);
    if (!decided.addressee.empty()) text += " Asked: " + sentence(decided.addressee);
    if (!decided.due.empty()) text += fmt::format(" Due {}.", decided.due);
    if (!decided.samples.empty()) text += " Samples: " + sentence(decided.samples);
    text += evidenceText(decided.evidence);
    if (carried != nullptr) text += fmt::format(" Carried from an earlier record by {}, {}.", personText(entry.by), entry.at);
    return text;
}

bool isAgainst(BenchResult const& result, risk::BenchLimit const& limit) { return limit.finding == result.finding && limit.check == result.check; }

std::string limitName(risk::BenchLimit const& limit) { return fmt::format("finding {}{}{}", limit.finding, limit.check.empty() ? "" : ", check ", limit.check); }

std::string resultText(Entry const& entry, Opened const& opened) {
    auto const& result = std::get<BenchResult>(entry.body);
    auto text = joined(result.values, ", ") + (result.unit.empty() ? "" : " " + result.unit);
    switch (result.outcome) {
        case Outcome::Within: text += ": within the limits"; break;
        case Outcome::Outside: text += ": OUTSIDE the limits"; break;
        case Outcome::NotJudged: text += ": not judged, no plain limit to hold it against"; break;
    }
    for (auto const& test : opened.tests) {
        if (test.id != result.test) continue;
        for (auto const& limit : test.limits) {
            if (isAgainst(result, limit)) text += ", " + report::limitText(limit);
        }
    }
    if (!result.condition.empty()) text += "; measured at " + result.condition;
    if (result.samples > 0) text += fmt::format("; {} samples", result.samples);
    if (result.lots > 0) text += fmt::format(" of {} lots", result.lots);
    if (!result.instrument.empty()) text += "; " + result.instrument;
    if (!result.note.empty()) text += "; " + result.note;
    return text + fmt::format("; {}, {}.", personText(entry.by), entry.at) + evidenceText(result.evidence);
}

std::string signatureText(Record const& record, Signature const& signature) {
    auto const& entry = record.entries[signature.entry];
    auto const& body = std::get<Signed>(entry.body);
    auto text = fmt::format("{}: {}, {}, Ed25519", nameOf(body.role), personText(entry.by), entry.at);
    if (!body.note.empty()) text += ": " + body.note;
    if (signature.lapsed) text += " (lapsed: something was entered afterwards)";
    return text;
}

std::string supersededText(Entry const& entry, Hashes hashes) {
    auto const& superseded = std::get<Superseded>(entry.body);
    auto const name = superseded.number + (superseded.number.empty() || superseded.title.empty() ? "" : ", ") + superseded.title;
    auto text = "by the record" + (name.empty() ? "" : " " + name);
    if (hashes == Hashes::Whole || name.empty()) text += fmt::format(" (first entry {}, head {})", superseded.root, superseded.head);
    return text + fmt::format(": {} {}, {}", sentence(superseded.reason), personText(entry.by), entry.at);
}

Given givenIn(Entry const& entry) {
    auto const& distributed = std::get<Distributed>(entry.body);
    return {distributed.to, distributed.what, distributed.change, distributed.on.empty() ? entry.at : distributed.on, personText(entry.by)};
}

std::string distributedText(Entry const& entry) {
    auto const given = givenIn(entry);
    return fmt::format("{}: {}{}; {}, entered by {}, {}", given.to, given.what, given.change.empty() ? "" : ", with change " + given.change, given.on, given.by, entry.at);
}

std::string notToldText(Overview const& overview) {
    if (overview.notTold.empty()) return {};
    return fmt::format("{} {} what the record said before it was superseded; tell them and enter it.", joined(overview.notTold, ", "),
                       overview.notTold.size() == 1 ? "holds" : "hold");
}

std::string historyText(Record const& record, std::size_t index) {
    auto const& entry = record.entries[index];
    auto text = fmt::format("{} {} {} by {}", index + 1, entry.at, kindOf(entry.body), personText(entry.by));
    if (auto const* decided = decisionIn(entry)) text += fmt::format(": {} {}", decided->finding, nameOf(decided->disposition));
    if (auto const* result = std::get_if<BenchResult>(&entry.body)) text += fmt::format(": {} {}", result->test, nameOf(result->outcome));
    if (auto const* signature = std::get_if<Signed>(&entry.body)) text += fmt::format(": {}", nameOf(signature->role));
    if (auto const* superseded = std::get_if<Superseded>(&entry.body)) text += fmt::format(": by {}", superseded->number.empty() ? superseded->root : superseded->number);
    if (auto const* distributed = std::get_if<Distributed>(&entry.body)) text += fmt::format(": {} to {}", distributed->what, distributed->to);
    if (auto const* merged = std::get_if<Merged>(&entry.body)) {
        text += merged->conflicts.empty() ? ": two copies, no conflict" : ": two copies, decided differently on " + joined(merged->conflicts, ", ");
    }
    return text;
}

std::vector<std::string> reviewTriggers(Opened const& opened) {
    auto const& named = opened.identification.reviewTriggers;
    return named.empty() ? std::vector<std::string>(kUsualTriggers.begin(), kUsualTriggers.end()) : named;
}

std::string standingText(Record const& record, Line const& line) {
    std::string text(nameOf(line.standing));
    if (line.standing == Standing::Closed) text += fmt::format(", {}", nameOf(decisionIn(record.entries[line.inForce.back()])->disposition));
    if (!line.why.empty()) text += ": " + line.why;
    bool const carried = std::any_of(line.inForce.begin(), line.inForce.end(), [&](std::size_t index) { return std::holds_alternative<Carried>(record.entries[index].body); });
    return carried ? text + " (carried)" : text;
}

model::Finding const* findingOf(Opened const& opened, std::string_view id) {
    auto const& findings = opened.comparison.findings;
    auto const found = std::find_if(findings.begin(), findings.end(), [id](model::Finding const& finding) { return finding.id == id; });
    return found == findings.end() ? nullptr : &*found;
}

std::string headText(Record const& record) { return fmt::format("{} {}, head {}", record.entries.size(), record.entries.size() == 1 ? "entry" : "entries", record.head().hash); }

}  // namespace standin::record

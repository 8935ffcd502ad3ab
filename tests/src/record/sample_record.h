// A small record about two invented parts, for the tests of record/.
#pragma once

#include <string>
#include <vector>

#include "record/record.h"
#include "record/state.h"

namespace standin::record {

inline SigningKey const& ashdown() {
    static SigningKey const key = std::move(*SigningKey::create("R. Ashdown"));
    return key;
}
inline SigningKey const& belmonte() {
    static SigningKey const key = std::move(*SigningKey::create("T. Belmonte"));
    return key;
}
inline SigningKey const& corvin() {
    static SigningKey const key = std::move(*SigningKey::create("L. Corvin"));
    return key;
}

inline Moment at(int minute, SigningKey const& key) {
    return {"2031-05-04T09:" + std::string(minute < 10 ? "0" : "") + std::to_string(minute) + ":00Z", key};
}

inline model::Finding findingOf(char digit, model::Severity severity, int level) {
    model::Finding finding;
    finding.id = std::string(12, digit);
    finding.severity = severity;
    finding.level = level;
    finding.title = std::string("Finding ") + digit;
    model::Side side;
    side.page = 2;
    side.text = "Detection voltage";
    side.min = "4.25";
    side.max = "4.30";
    side.unit = "V";
    finding.reference = side;
    side.max = "4.35";
    finding.candidate = side;
    return finding;
}

// 1 hazard level 3, 2 hazard level 4, 3 hazard with a typical value only, 4 function
// with 5 as its consequence (hazard), 6 note, 7 editorial.
inline Opened sampleOpened() {
    using model::Severity;
    Opened opened;
    opened.identification.number = "S-17";
    opened.identification.title = "Second source of the protection part";
    opened.method.program = "0.0.0";
    opened.method.vocabulary = std::string(64, '0');
    auto& comparison = opened.comparison;
    comparison.reference.file = "reference.pdf";
    comparison.reference.sha256 = std::string(64, 'a');
    comparison.reference.partNumbers = {"HRN1607"};
    comparison.candidate.file = "candidate.pdf";
    comparison.candidate.sha256 = std::string(64, 'b');
    comparison.candidate.partNumbers = {"TQL1607"};
    comparison.findings = {findingOf('1', Severity::Hazard, 3), findingOf('2', Severity::Hazard, 4), findingOf('3', Severity::Hazard, 3), findingOf('4', Severity::Function, 2),
                           findingOf('5', Severity::Hazard, 3), findingOf('6', Severity::Note, 1),   findingOf('7', Severity::Editorial, 0)};
    auto& typical = *comparison.findings[2].candidate;
    typical.min.clear();
    typical.max.clear();
    typical.typ = "4.28";
    comparison.findings[4].consequenceOf = comparison.findings[3].id;
    comparison.verdict.sentence = "Do not substitute on this evidence";
    opened.tests.push_back({"overcharge-threshold", "Overcharge threshold", "Step up.", "4-wire.", "reference limits", {comparison.findings[0].id},
                            {{comparison.findings[0].id, "Overcharge detection voltage", "reference", "Ta = 25 °C", "4.25", "4.30", "V"}}});
    opened.sampleRules = {"State the number of samples."};
    return opened;
}

inline std::string id(char digit) { return std::string(12, digit); }

inline Decided decision(char digit, Disposition disposition, std::string reason = "The charger of the product stops at 4.20 V.") {
    Decided decided;
    decided.finding = id(digit);
    decided.disposition = disposition;
    decided.reason = std::move(reason);
    if (disposition == Disposition::AcceptedWithCondition) decided.condition = "Charger firmware 3 or later; checked at receipt; written in the work instruction.";
    return decided;
}

inline Evidence evidence() { return {"bench-report.pdf", std::string(64, 'e')}; }

inline Record sampleRecord() { return std::move(*openRecord(sampleOpened(), at(0, ashdown()))); }

inline Record with(Record record, Body body, Moment const& moment) { return std::move(*withEntry(std::move(record), std::move(body), moment)); }

inline Superseded supersededBy(char const* number) { return {number, "The next revision", std::string(64, 'c'), std::string(64, 'd'), "The cell of the product changed."}; }

inline Distributed givenTo(char const* to) { return {to, std::string(kCopyOfRecord), "CN-204", "2031-05-06"}; }

// Every line closed, the hazards by two persons.
inline Record closedRecord() {
    auto record = sampleRecord();
    int minute = 1;
    for (auto const* key : {&ashdown(), &belmonte()}) {
        record = with(std::move(record), Body{decision('1', Disposition::AcceptedWithCondition)}, at(minute++, *key));
        auto grave = decision('2', Disposition::Accepted);
        grave.evidence = {evidence()};
        record = with(std::move(record), Body{grave}, at(minute++, *key));
        record = with(std::move(record), Body{decision('3', Disposition::NotApplicable)}, at(minute++, *key));
        record = with(std::move(record), Body{decision('4', Disposition::AcceptedWithCondition)}, at(minute++, *key));
    }
    return with(std::move(record), Body{decision('6', Disposition::Accepted)}, at(minute, ashdown()));
}

}  // namespace standin::record

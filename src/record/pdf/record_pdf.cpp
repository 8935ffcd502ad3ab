// Composed twice: the first pass counts the pages.
// Tested by tests/src/record/pdf/record_pdf_test.cpp.
#include "record/pdf/record_pdf.h"

#include <algorithm>

#include <fmt/format.h>

#include "model/names.h"
#include "record/record_view.h"
#include "report/finding_view.h"
#include "report/pdf/paper.h"
#include "report/pdf/paper_table.h"
#include "report/texts.h"

namespace standin::record {

using model::Severity;
using report::Ink;
using report::Paper;
using report::PaperTable;
using report::Paragraph;
using report::paragraph;
using report::TextSize;
using report::Weight;
namespace inks = report::inks;

namespace {

constexpr double kIndent = 13;
constexpr double kBetweenLines = 6;
constexpr std::size_t kLongestSide = 700;  // bytes of a side's text
constexpr std::size_t kLongestText = 2000;
constexpr std::size_t kLongestCell = 300;

void writeHeading(Paper& paper, std::string text) {
    paper.advance(12);
    paper.heading({{{std::move(text), inks::kText, Weight::Bold}}, TextSize::Heading}, 40);
}

void writeBody(Paper& paper, std::string text, double indent = 0, Ink ink = inks::kText) {
    paper.write(paragraph(report::clipped(std::move(text), kLongestText), TextSize::Body, ink), paper.left() + indent, paper.width() - indent);
    paper.advance(2);
}

void writeTexts(Paper& paper, NamedTexts const& texts) {
    PaperTable table(paper, {{"", 1}, {"", 4}});
    for (auto const& [name, text] : texts) table.row({paragraph(name, TextSize::Small, inks::kSoft), paragraph(report::clipped(text, kLongestCell), TextSize::Small)});
}

void writeSide(Paper& paper, std::string_view who, Ink hue, std::optional<model::Side> const& side) {
    Paragraph text;
    text.runs.push_back({side && side->page > 0 ? fmt::format("{}, page {}  ", who, side->page) : fmt::format("{}  ", who), inks::kSoft});
    text.runs.push_back({side ? report::clipped(report::valuesOf(*side), kLongestSide) : fmt::format("– ({})", report::texts::kNotPrinted), hue});
    if (side && !side->condition.empty()) text.runs.push_back({"  " + report::clipped(side->condition, kLongestSide), inks::kSoft});
    paper.writeWithBar(text, paper.left() + kIndent, paper.width() - kIndent, hue);
    paper.advance(2);
}

void writeLine(Paper& paper, Record const& record, Line const& line) {
    auto const& opened = record.opened();
    paper.keep(60);
    paper.write({{{fmt::format("{} {}", report::texts::severityMark(line.severity), report::clipped(line.title, kLongestCell)), inks::kText, Weight::Bold}}}, paper.left(), paper.width());
    paper.advance(2);
    writeBody(paper, fmt::format("{}, level {} · finding {} · {}", model::nameOf(line.severity), line.level, line.finding, standingText(record, line)), kIndent, inks::kSoft);
    if (auto const* finding = findingOf(opened, line.finding)) {
        writeSide(paper, "reference", inks::kReference, finding->reference);
        writeSide(paper, "candidate", inks::kCandidate, finding->candidate);
        if (!finding->explanation.empty()) writeBody(paper, finding->explanation, kIndent);
    }
    for (auto const& id : line.consequences) {
        if (auto const* finding = findingOf(opened, id)) writeBody(paper, "Follows from it: " + finding->title, kIndent);
    }
    for (auto const index : line.decisions) paper.writeWithBar(paragraph(report::clipped(decisionText(record.entries[index]), kLongestText)), paper.left() + kIndent, paper.width() - kIndent, inks::kSoft);
    for (auto const index : line.results) writeBody(paper, "Measured " + resultText(record.entries[index], opened), kIndent);
    paper.advance(kBetweenLines);
}

void writeDeviations(Paper& paper, Record const& record, Overview const& overview) {
    for (auto const severity : report::kSeverities) {
        auto const count = std::count_if(overview.lines.begin(), overview.lines.end(), [severity](Line const& line) { return line.severity == severity; });
        if (count == 0) continue;
        writeHeading(paper, fmt::format("{} {}", report::texts::severityHeading(severity), count));
        writeBody(paper, std::string(report::texts::severityMeaning(severity)), 0, inks::kSoft);
        for (auto const& line : overview.lines) {
            if (line.severity == severity && (severity != Severity::Editorial || !line.decisions.empty())) writeLine(paper, record, line);
        }
        if (severity == Severity::Editorial) writeBody(paper, "These need no decision; the record file and its HTML form list them.");
    }
}

Paragraph cell(std::string text) { return paragraph(report::clipped(std::move(text), kLongestCell), TextSize::Small); }

// The rows of one limit; an empty one, to be filled in by hand, where nothing was measured.
void writeLimit(PaperTable& table, Record const& record, std::string const& test, risk::BenchLimit const& against, std::string const& limit) {
    bool any = false;
    for (auto const& entry : record.entries) {
        auto const* result = std::get_if<BenchResult>(&entry.body);
        if (result == nullptr || result->test != test || !isAgainst(*result, against)) continue;
        any = true;
        std::string values;
        for (auto const& value : result->values) values += (values.empty() ? "" : ", ") + value;
        table.row({cell(limit), cell(fmt::format("{} {}", values, result->unit)), cell(fmt::format("{} / {}", result->samples, result->lots)), cell(result->instrument),
                   cell(fmt::format("{}, {}", personText(entry.by), entry.at)), cell(std::string(nameOf(result->outcome)))});
    }
    if (!any) table.row({cell(limit), cell(" \n "), cell(""), cell(""), cell(""), cell("")});
}

void writeTests(Paper& paper, Record const& record) {
    auto const& opened = record.opened();
    if (opened.tests.empty()) return;
    writeHeading(paper, "Bench tests that follow from the findings");
    for (auto const& rule : opened.sampleRules) writeBody(paper, "– " + rule, 0, inks::kSoft);
    for (auto const& test : opened.tests) {
        paper.advance(kBetweenLines);
        paper.keep(90);
        paper.write(paragraph(fmt::format("{} ({})", test.title, test.id), TextSize::Subheading, inks::kText, Weight::Bold), paper.left(), paper.width());
        paper.advance(2);
        writeBody(paper, fmt::format("{} Set-up: {} Limits from: {}.", test.procedure, test.setup, test.limitsFrom));
        PaperTable table(paper, {{"limit", 3}, {"measured", 1.4}, {"samples / lots", 1}, {"instrument", 1.4}, {"by, date", 1.8}, {"judged", 1}});
        for (auto const& limit : test.limits) writeLimit(table, record, test.id, limit, report::limitText(limit));
        if (test.limits.empty()) writeLimit(table, record, test.id, {}, test.limitsFrom);
    }
}

void writeApprovals(Paper& paper, Record const& record, Overview const& overview) {
    writeHeading(paper, "Approvals");
    PaperTable table(paper, {{"role", 1}, {"name", 2}, {"key (Ed25519)", 3}, {"date", 2}, {"remark", 3}});
    for (auto const role : {Role::Author, Role::Reviewer, Role::Approver}) {
        bool any = false;
        for (auto const& signature : overview.signatures) {
            auto const& entry = record.entries[signature.entry];
            auto const& body = std::get<Signed>(entry.body);
            if (body.role != role) continue;
            any = true;
            table.row({cell(std::string(nameOf(role))), cell(entry.by.name), cell(shortKey(entry.by.key)), cell(entry.at),
                       cell(fmt::format("{}{}", signature.lapsed ? "lapsed: something was entered afterwards. " : "", body.note))});
        }
        if (!any) table.row({cell(std::string(nameOf(role))), cell(" \n "), cell(""), cell(""), cell("not signed")});
    }
}

// One empty row, to be filled in by hand, where nobody was given it.
void writeDistribution(Paper& paper, Record const& record, Overview const& overview) {
    writeHeading(paper, "Distribution");
    if (auto waiting = notToldText(overview); !waiting.empty()) writeBody(paper, std::move(waiting));
    PaperTable table(paper, {{"to", 2}, {"what", 3}, {"with change", 1.5}, {"date", 2}, {"entered by", 2}});
    for (auto const index : overview.distributions) {
        auto const given = givenIn(record.entries[index]);
        table.row({cell(given.to), cell(given.what), cell(given.change), cell(given.on), cell(given.by)});
    }
    if (overview.distributions.empty()) table.row({cell(" \n "), cell(""), cell(""), cell(""), cell("to nobody yet")});
}

int compose(Paper& paper, Record const& record) {
    auto const overview = stateOf(record);
    auto const& opened = record.opened();
    auto const& identification = opened.identification;
    paper.write(paragraph(fmt::format("Standin · Record {} {}", identification.number, identification.title), TextSize::Subheading, inks::kSoft), paper.left(), paper.width());
    paper.advance(6);
    paper.write(paragraph(fmt::format("Record: {}", nameOf(overview.state)), TextSize::Title, inks::kText, Weight::Bold), paper.left(), paper.width());
    paper.advance(4);
    writeBody(paper, "Comparison: " + opened.comparison.verdict.sentence);
    for (auto const index : overview.supersessions) writeBody(paper, "Superseded " + supersededText(record.entries[index]));
    writeBody(paper, fmt::format("{} open {}. {}", overview.open.size(), overview.open.size() == 1 ? "point" : "points", headText(record)));
    writeBody(paper, fmt::format("{} {}", kMeaning, kKeysMeaning), 0, inks::kSoft);
    writeHeading(paper, "Identification");
    writeTexts(paper, identificationOf(opened));
    writeHeading(paper, "Open points");
    if (overview.open.empty()) writeBody(paper, "None.");
    for (auto const& line : overview.open) writeBody(paper, "– " + line);
    writeApprovals(paper, record, overview);
    writeDeviations(paper, record, overview);
    writeTests(paper, record);
    writeDistribution(paper, record, overview);
    writeHeading(paper, "Scope and new review");
    writeBody(paper, "Scope: " + (identification.scope.empty() ? std::string("not stated") : identification.scope));
    writeBody(paper, "Valid until: " + (identification.validUntil.empty() ? std::string("no end stated") : identification.validUntil));
    for (auto const& trigger : reviewTriggers(opened)) writeBody(paper, "– to be reviewed again upon " + trigger);
    writeHeading(paper, "Method");
    writeTexts(paper, methodOf(opened));
    writeHeading(paper, "Coverage");
    writeBody(paper, report::coverageLine(opened.comparison) + ".");
    writeHeading(paper, "History");
    for (std::size_t i = 0; i < record.entries.size(); ++i) writeBody(paper, historyText(record, i));
    writeHeading(paper, std::string(report::texts::kStatements));
    for (auto const& statement : opened.comparison.statements) writeBody(paper, "– " + statement);
    return paper.page();
}

report::PaperTexts textsFor(Record const& record, int pages) {
    auto const& opened = record.opened();
    auto const both = fmt::format("{} / {}", report::titleOf(opened.comparison.reference), report::titleOf(opened.comparison.candidate));
    return {fmt::format("Record {}: {}", opened.identification.number, both), "Record of a comparison", fmt::format("Standin · Record {} · {}", opened.identification.number, both),
            headText(record), pages};
}

}  // namespace

std::string recordPdf(Record const& record) {
    Paper counting(textsFor(record, 0));
    int const pages = compose(counting, record);
    Paper paper(textsFor(record, pages));
    compose(paper, record);
    return paper.finish();
}

}  // namespace standin::record

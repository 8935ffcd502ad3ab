// One function a part of the report, in its order. All of it is laid out twice:
// the first pass only counts the pages.
//
// Tested by tests/src/report/pdf/pdf_report_test.cpp.
#include "report/pdf/pdf_report.h"

#include <algorithm>
#include <optional>

#include <fmt/format.h>

#include "model/names.h"
#include "report/corrections_section.h"
#include "report/finding_view.h"
#include "report/pdf/paper.h"
#include "report/pdf/paper_table.h"
#include "report/pdf/pdf_cell.h"
#include "report/pdf/pdf_findings.h"
#include "report/texts.h"

namespace standin::report {

using namespace model;

namespace {

constexpr double kBoxPadding = 7;
constexpr double kBetweenBoxes = 10;
constexpr std::size_t kMostListed = 400;  // lines of what was not compared, a document

struct Content {
    Comparison const& comparison;
    Datasheet const& reference;
    Datasheet const& candidate;
    SheetParameters const& sheets;
    Cuttings& cuttings;
    std::span<risk::BenchTest const> benchTests;
};

void writeHeading(Paper& paper, std::string_view text) {
    paper.advance(12);
    paper.heading({{{std::string(text), inks::kText, Weight::Bold}}, TextSize::Heading}, 40);
}

void writeBody(Paper& paper, std::string text) { paper.write(paragraph(std::move(text)), paper.left(), paper.width()); }

void writeBullet(Paper& paper, Paragraph const& text) {
    constexpr double kBullet = 10;
    paper.keep(paper.heightOf(text, paper.width() - kBullet));
    double const top = paper.y();
    paper.write(paragraph("–"), paper.left(), kBullet);
    paper.moveTo(top);
    paper.write(text, paper.left() + kBullet, paper.width() - kBullet);
    paper.advance(2);
}

std::vector<Paragraph> documentLines(std::string_view who, Ink hue, DocumentInfo const& document) {
    std::vector<Paragraph> lines{paragraph(std::string(who), TextSize::Small, hue, Weight::Bold), paragraph(titleOf(document), TextSize::Subheading, inks::kText, Weight::Bold),
                                 paragraph(document.file, TextSize::Small, inks::kSoft), paragraph("SHA-256 " + document.sha256, TextSize::Small, inks::kSoft)};
    for (auto const& warning : document.warnings) lines.push_back(paragraph(clipped(warning, 300), TextSize::Small, inks::kSoft));
    return lines;
}

// Both documents beside each other, each with a bar of its hue.
void writeDocuments(Paper& paper, Comparison const& comparison) {
    double const width = (paper.width() - kBetweenBoxes) / 2;
    double const top = paper.y();
    double bottom = top;
    for (bool const isReference : {true, false}) {
        if (isReference && !comparison.hasReference()) continue;
        auto const hue = isReference ? inks::kReference : inks::kCandidate;
        double const x = isReference ? paper.left() : paper.left() + width + kBetweenBoxes;
        paper.moveTo(top);
        for (auto const& line : documentLines(isReference ? texts::kReference : texts::kCandidate, hue, isReference ? comparison.reference : comparison.candidate)) {
            paper.write(line, x + kBoxPadding + 3, width - 2 * kBoxPadding);
            paper.advance(1.5);
        }
        paper.line({x + 2, top}, {x + 2, paper.y()}, hue, 4);
        bottom = std::max(bottom, paper.y());
    }
    paper.moveTo(bottom);
}

void writeVerdict(Paper& paper, Comparison const& comparison) {
    auto const& verdict = comparison.verdict;
    std::vector<Paragraph> lines{paragraph(verdictLevel(comparison), TextSize::Title, inks::kText, Weight::Bold)};
    if (auto const detail = verdictDetail(comparison); !detail.empty()) lines.push_back(paragraph(detail));
    if (verdict.incomplete) {
        lines.push_back({{{fmt::format("{}. ", texts::kIncomplete), inks::kText, Weight::Bold}, {"Not everything that could matter was read or could be compared:"}}});
        for (auto const& reason : verdict.incompleteReasons) lines.push_back(paragraph("– " + reason));
    }
    lines.push_back({{{"Findings: ", inks::kText, Weight::Bold}, {countsLine(comparison)}}});
    lines.push_back({{{"Coverage: ", inks::kText, Weight::Bold}, {coverageLine(comparison)}}});
    double const width = paper.width() - 2 * kBoxPadding;
    double height = 2 * kBoxPadding;
    for (auto const& line : lines) height += paper.heightOf(line, width) + 2;
    paper.advance(10);
    paper.bookmark(1, std::string(texts::kVerdict));
    double const top = paper.y();
    int const page = paper.page();
    paper.moveTo(top + kBoxPadding);
    for (auto const& line : lines) {
        paper.write(line, paper.left() + kBoxPadding, width);
        paper.advance(2);
    }
    paper.advance(kBoxPadding);
    if (page == paper.page()) paper.frame(paper.left(), top, paper.width(), std::min(height, paper.y() - top), inks::kText, 1.4);
}

void writeCautions(Paper& paper, Comparison const& comparison) {
    if (comparison.cautions.empty()) return;
    writeHeading(paper, texts::kCautions);
    for (auto const& caution : comparison.cautions) {
        Paragraph const text{{{caution.id + "  ", inks::kText, Weight::Bold},
                              {caution.text},
                              {fmt::format("  ({} {})", caution.findings.size(), caution.findings.size() == 1 ? "finding" : "findings"), inks::kSoft}}};
        paper.keep(paper.heightOf(text, paper.width()));
        paper.writeWithBar(text, paper.left(), paper.width(), inks::kText);
        paper.advance(4);
    }
}

void writeBenchTests(Paper& paper, std::span<risk::BenchTest const> tests) {
    if (tests.empty()) return;
    writeHeading(paper, texts::kBenchTests);
    writeBody(paper, std::string(texts::kBenchTestsMeaning));
    paper.advance(4);
    for (auto const& test : tests) {
        Paragraph const title{{{test.title, inks::kText, Weight::Bold}, {fmt::format("  ({} {})", test.findings.size(), test.findings.size() == 1 ? "finding" : "findings"), inks::kSoft}}};
        paper.keep(paper.heightOf(title, paper.width()) + paper.heightOf(paragraph(test.procedure), paper.width()));
        paper.write(title, paper.left(), paper.width());
        writeBody(paper, test.procedure);
        if (!test.setup.empty()) writeBody(paper, fmt::format("{}: {}", texts::kSetUp, test.setup));
        if (!test.limitsFrom.empty()) writeBody(paper, fmt::format("{}: {}", texts::kLimitsFrom, test.limitsFrom));
        for (auto const& limit : test.limits) writeBullet(paper, paragraph(limitText(limit)));
        paper.advance(5);
    }
}

void writeSections(Paper& paper, Content const& content) {
    auto const& pairs = content.comparison.sections;
    if (pairs.empty()) return;
    writeHeading(paper, texts::kSections);
    PaperTable table(paper, {{"reference", 3, inks::kReference}, {"candidate", 3, inks::kCandidate}, {"findings", 1}});
    auto const cell = [](Datasheet const& sheet, std::string const& id) { return paragraph(clipped(sectionTitle(sheet, id), 160), TextSize::Small); };
    for (auto const& pair : pairs) {
        table.row({cell(content.reference, pair.reference), cell(content.candidate, pair.candidate), paragraph(fmt::format("{}", pair.findings), TextSize::Small)});
    }
}

void writeCoverage(Paper& paper, Content const& content) {
    auto const& comparison = content.comparison;
    writeHeading(paper, texts::kCoverage);
    writeBody(paper, coverageLine(comparison) + ".");
    paper.advance(4);
    if (comparison.hasReference()) {
        PaperTable table(paper, {{"", 3}, {"reference", 1, inks::kReference}, {"candidate", 1, inks::kCandidate}});
        for (auto const& row : coverageRows(comparison.coverage)) {
            table.row({paragraph(std::string(row.what), TextSize::Small), paragraph(fmt::format("{}", row.reference), TextSize::Small), paragraph(fmt::format("{}", row.candidate), TextSize::Small)});
        }
    }
    for (bool const isReference : {true, false}) {
        auto const lines = notReadLines(isReference ? content.reference : content.candidate);
        if (lines.empty()) continue;
        paper.advance(6);
        paper.write(paragraph(fmt::format("{} {}", texts::kNotReadIn, isReference ? "the reference" : "the candidate"), TextSize::Body, isReference ? inks::kReference : inks::kCandidate, Weight::Bold),
                    paper.left(), paper.width());
        for (std::size_t i = 0; i < std::min(lines.size(), kMostListed); ++i) writeBullet(paper, paragraph(clipped(lines[i], 300), TextSize::Small));
        if (lines.size() > kMostListed) writeBullet(paper, paragraph(fmt::format("{} more; the JSON report has all of them", lines.size() - kMostListed), TextSize::Small));
    }
}

void writeCorrections(Paper& paper, Comparison const& comparison) {
    if (comparison.reference.corrections.empty() && comparison.candidate.corrections.empty()) return;
    writeHeading(paper, texts::kCorrections);
    for (auto const& line : correctionLines(comparison.reference)) writeBullet(paper, paragraph("reference " + line));
    for (auto const& line : correctionLines(comparison.candidate)) writeBullet(paper, paragraph("candidate " + line));
}

void writePairs(Paper& paper, Content const& content) {
    if (content.comparison.pairs.empty()) return;
    writeHeading(paper, fmt::format("{} {}", texts::kAllPairs, content.comparison.pairs.size()));
    PaperTable table(paper, {{"reference", 3, inks::kReference}, {"min / typ / max", 2, inks::kReference}, {"candidate", 3, inks::kCandidate}, {"min / typ / max", 2, inks::kCandidate}, {"relation", 1.5}});
    auto const name = [](Parameter const* p) {
        if (p == nullptr) return paragraph("–", TextSize::Small);
        auto const condition = conditionOf(*p);
        return Paragraph{{{clipped(fmt::format("{} {}", p->name, p->symbol), 160)}, {condition.empty() ? "" : "  " + clipped(condition, 200), inks::kSoft}}, TextSize::Small};
    };
    auto const values = [](Parameter const* p) { return paragraph(p == nullptr ? std::string{} : fmt::format("{} (p.\u00A0{})", clipped(valuesOf(*p), 160), p->page), TextSize::Small); };
    for (auto const& pair : content.comparison.pairs) {
        auto const [reference, candidate] = parametersOf(pair, content.sheets);
        table.row({name(reference), values(reference), name(candidate), values(candidate), paragraph(std::string(texts::relationText(pair.relation)), TextSize::Small)});
    }
}

void writeStatements(Paper& paper, Comparison const& comparison) {
    if (comparison.statements.empty()) return;
    writeHeading(paper, texts::kStatements);
    for (auto const& statement : comparison.statements) writeBullet(paper, paragraph(statement));
}

std::string_view titleText(Comparison const& comparison) { return comparison.hasReference() ? texts::kTitle : texts::kCheckTitle; }

PaperTexts textsFor(Comparison const& comparison, int pagesInAll) {
    auto const title = titleText(comparison);
    auto const parts = comparison.hasReference() ? fmt::format("{} / {}", titleOf(comparison.reference), titleOf(comparison.candidate)) : titleOf(comparison.candidate);
    return {fmt::format("{}: {}", title, parts), verdictLevel(comparison), fmt::format("Standin · {} · {}", title, parts), std::string(texts::kFoot), pagesInAll};
}

// Returns the number of pages.
int compose(Paper& paper, Content const& content) {
    paper.write(paragraph(fmt::format("Standin · {}", titleText(content.comparison)), TextSize::Subheading, inks::kSoft), paper.left(), paper.width());
    paper.advance(6);
    writeDocuments(paper, content.comparison);
    writeVerdict(paper, content.comparison);
    writeCautions(paper, content.comparison);
    writeCellChecks(paper, content.comparison);
    writeFindings(paper, {content.comparison, content.sheets, content.cuttings});
    writeDerived(paper, content.comparison);
    writeBenchTests(paper, content.benchTests);
    writeSections(paper, content);
    writeCoverage(paper, content);
    writeCorrections(paper, content.comparison);
    writePairs(paper, content);
    writeStatements(paper, content.comparison);
    return paper.page();
}

}  // namespace

std::string pdfReport(Comparison const& comparison, Datasheet const& reference, Datasheet const& candidate, Cuttings& cuttings, std::span<risk::BenchTest const> benchTests) {
    SheetParameters const sheets{parametersById(reference), parametersById(candidate)};
    Content const content{comparison, reference, candidate, sheets, cuttings, benchTests};
    Paper counting(textsFor(comparison, 0));
    int const pages = compose(counting, content);
    Paper paper(textsFor(comparison, pages));
    compose(paper, content);
    return paper.finish();
}

}  // namespace standin::report

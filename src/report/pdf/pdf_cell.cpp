// Tested by tests/src/report/pdf/pdf_report_test.cpp.
#include "report/pdf/pdf_cell.h"

#include <fmt/format.h>

#include "model/names.h"
#include "report/cell_section.h"
#include "report/pdf/paper_table.h"
#include "report/texts.h"
#include "risk/cell_texts.h"

namespace standin::report {

using namespace model;

namespace {

void writeHeading(Paper& paper, std::string_view text) {
    paper.advance(12);
    paper.heading({{{std::string(text), inks::kText, Weight::Bold}}, TextSize::Heading}, 40);
}

Paragraph resultCell(std::optional<CheckResult> const& result) {
    if (!result) return paragraph("–", TextSize::Small);
    return {{{fmt::format("{} {}", texts::outcomeMark(result->outcome), nameOf(result->outcome)), inks::kText, Weight::Bold}, {"  " + checkText(*result)}}, TextSize::Small};
}

Paragraph workedCell(std::optional<WorkedValue> const& value) {
    if (!value) return paragraph("–", TextSize::Small);
    return {{{workedBounds(*value), inks::kText, Weight::Bold}, {"  " + risk::texts::inputList(value->inputs), inks::kSoft}}, TextSize::Small};
}

// The column of the reference is left out where the candidate stands alone.
std::vector<PaperColumn> columns(std::vector<PaperColumn> first, Comparison const& comparison) {
    if (comparison.hasReference()) first.push_back({"reference", 2, inks::kReference});
    first.push_back({"candidate", 2, inks::kCandidate});
    return first;
}

}  // namespace

void writeCellChecks(Paper& paper, Comparison const& comparison) {
    if (comparison.cell.empty()) return;
    writeHeading(paper, texts::kCellChecks);
    auto line = comparison.cellName.empty() ? std::string(texts::kUnnamedCell) : comparison.cellName;
    if (!comparison.circuitName.empty()) line += " · " + comparison.circuitName;
    if (comparison.hasReference()) line += fmt::format(". Reference: {}", checkCounts(comparison, &CellCheck::reference));
    line += fmt::format(". Candidate: {}.", checkCounts(comparison, &CellCheck::candidate));
    paper.write(paragraph(line), paper.left(), paper.width());
    paper.advance(4);
    PaperTable table(paper, columns({{"check", 2, inks::kText}, {"asked for", 1.6, inks::kText}}, comparison));
    for (auto const* check : orderedChecks(comparison)) {
        std::vector<Paragraph> row{paragraph(check->title, TextSize::Small), paragraph(check->limit, TextSize::Small)};
        if (comparison.hasReference()) row.push_back(resultCell(check->reference));
        row.push_back(resultCell(check->candidate));
        table.row(row);
    }
}

void writeDerived(Paper& paper, Comparison const& comparison) {
    if (comparison.derived.empty()) return;
    writeHeading(paper, texts::kWorkedOut);
    paper.write(paragraph(std::string(texts::kWorkedOutMeaning)), paper.left(), paper.width());
    paper.advance(4);
    PaperTable table(paper, columns({{"quantity", 2.4, inks::kText}}, comparison));
    for (auto const& derived : comparison.derived) {
        Paragraph quantity{{{derived.title, inks::kText, Weight::Bold}, {"  " + derived.formula, inks::kSoft}}, TextSize::Small};
        for (auto const& note : workedNotes(derived)) quantity.runs.push_back({"  " + note});
        std::vector<Paragraph> row{std::move(quantity)};
        if (comparison.hasReference()) row.push_back(workedCell(derived.reference));
        row.push_back(workedCell(derived.candidate));
        table.row(row);
    }
}

}  // namespace standin::report

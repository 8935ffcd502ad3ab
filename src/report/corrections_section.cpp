// The same lines for every form of the report. Tested by
// tests/src/report/corrections_section_test.cpp.
#include "report/corrections_section.h"

#include <fmt/format.h>

#include "report/html_escape.h"
#include "report/wrapped_text.h"

namespace standin::report {

using namespace model;

namespace {

constexpr std::string_view kHeading = "Values put right by people";
constexpr std::string_view kWholeRow = "parameter";

// "max", "table condition"
std::string fieldName(std::string const& field) {
    auto name = field;
    for (char& c : name) c = c == '_' ? ' ' : c;
    return name;
}

std::string whatWasDone(Correction const& c) {
    if (c.field == kWholeRow) return c.corrected.empty() ? "taken out, it is no parameter," : fmt::format("put in ({})", c.corrected);
    auto const field = fieldName(c.field);
    if (c.read.empty()) return fmt::format("{} put in as \"{}\"", field, c.corrected);
    if (c.corrected.empty()) return fmt::format("{} \"{}\" taken out", field, c.read);
    return fmt::format("{} read as \"{}\", put right as \"{}\"", field, c.read, c.corrected);
}

std::string whatWasMeant(Correction const& c) {
    if (c.field == kWholeRow) return c.corrected.empty() ? "the row is no parameter" : fmt::format("the row ({})", c.corrected);
    return c.corrected.empty() ? fmt::format("no {}", fieldName(c.field)) : fmt::format("{} \"{}\"", fieldName(c.field), c.corrected);
}

std::string lineOf(Correction const& c) {
    auto const where = fmt::format("page {}, {}: ", c.page, c.row.empty() ? "row at a given place" : c.row);
    auto const who = fmt::format("by {}, {}: {}", c.by, c.date, c.why);
    switch (c.outcome) {
        case CorrectionOutcome::Applied: return where + fmt::format("{} {}", whatWasDone(c), who);
        case CorrectionOutcome::NotNeeded: return where + fmt::format("{} is read so now, no longer needs correcting ({})", whatWasMeant(c), who);
        case CorrectionOutcome::NotFound: return where + fmt::format("NOT APPLIED, no such row was read: {} {}", whatWasMeant(c), who);
        case CorrectionOutcome::Ambiguous: return where + fmt::format("NOT APPLIED, several rows fit: {} {}", whatWasMeant(c), who);
    }
    return {};
}

std::size_t countOf(std::vector<NamedDocument> const& documents) {
    std::size_t count = 0;
    for (auto const& named : documents) count += named.document->corrections.size();
    return count;
}

}  // namespace

std::vector<std::string> correctionLines(DocumentInfo const& document) {
    std::vector<std::string> lines;
    for (auto const& correction : document.corrections) lines.push_back(lineOf(correction));
    return lines;
}

void appendCorrections(std::string& out, std::vector<NamedDocument> const& documents) {
    auto const count = countOf(documents);
    if (count == 0) return;
    std::string heading(kHeading);
    for (char& c : heading) c = c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
    out += fmt::format("\n{} ({})\n", heading, count);
    for (auto const& named : documents) {
        auto const first = named.name.empty() ? std::string(" - ") : fmt::format(" - {} ", named.name);
        for (auto const& line : correctionLines(*named.document)) appendWrapped(out, first, line);
    }
}

std::string correctionsHtml(std::vector<NamedDocument> const& documents) {
    if (countOf(documents) == 0) return {};
    auto html = fmt::format("<h2>{}</h2><ul>", kHeading);
    for (auto const& named : documents) {
        for (auto const& line : correctionLines(*named.document)) {
            html += fmt::format("<li>{}{}{}</li>", escaped(named.name), named.name.empty() ? "" : ", ", escaped(line));
        }
    }
    return html + "</ul>\n";
}

}  // namespace standin::report

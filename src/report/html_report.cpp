// One function a part of the page. Tested by tests/src/report/html_report_test.cpp.
#include "report/html_report.h"

#include <fmt/format.h>

#include "model/names.h"
#include "report/cell_section.h"
#include "report/corrections_section.h"
#include "report/finding_view.h"
#include "report/html_escape.h"
#include "report/html_findings.h"
#include "report/html_style.h"
#include "report/texts.h"

namespace standin::report {

using namespace model;

namespace {

std::string documentBox(std::string_view who, char const* cssClass, DocumentInfo const& document) {
    auto html = fmt::format("<section class=\"doc {}\"><span class=\"tag\">{}</span><b>{}</b>", cssClass, who, escaped(titleOf(document)));
    html += fmt::format("<span>{}</span><span>SHA-256 {}</span>", escaped(document.file), escaped(document.sha256));
    for (auto const& warning : document.warnings) html += fmt::format("<span>{}</span>", escaped(warning));
    return html + "</section>";
}

std::string verdictBox(Comparison const& comparison) {
    auto const& verdict = comparison.verdict;
    auto html = fmt::format("<section class=\"verdict\"><p class=\"level\">{}</p>", verdictLevel(comparison));
    if (auto const detail = verdictDetail(comparison); !detail.empty()) html += fmt::format("<p>{}</p>", escaped(detail));
    if (verdict.incomplete) {
        html += fmt::format("<p><b>{}.</b> Not everything that could matter was read or could be compared:</p><ul>", texts::kIncomplete);
        for (auto const& reason : verdict.incompleteReasons) html += fmt::format("<li>{}</li>", escaped(reason));
        html += "</ul>";
    }
    html += "<ul class=\"counts\">";
    auto const groups = groupBySeverity(comparison);
    for (auto const severity : kSeverities) {
        std::size_t count = 0;
        for (auto const& group : groups) {
            if (group.severity == severity) count = group.findings.size();
        }
        html += fmt::format("<li>{} <b>{}</b> {}</li>", texts::severityMark(severity), count, nameOf(severity));
    }
    return html + fmt::format("</ul><p>{}</p></section>", coverageLine(comparison));
}

std::string cautions(Comparison const& comparison) {
    if (comparison.cautions.empty()) return {};
    auto html = fmt::format("<h2>{}</h2>", texts::kCautions);
    for (auto const& caution : comparison.cautions) {
        html += fmt::format("<div class=\"caution\">{} <span class=\"meta\">{}, {} {}</span></div>", escaped(caution.text), escaped(caution.id), caution.findings.size(),
                            caution.findings.size() == 1 ? "finding" : "findings");
    }
    return html;
}

std::string notRead(std::string_view who, Datasheet const& sheet) {
    auto const lines = notReadLines(sheet);
    if (lines.empty()) return {};
    auto html = fmt::format("<details><summary>{} {} {}</summary><ul>", texts::kNotReadIn, who, lines.size());
    for (auto const& line : lines) html += fmt::format("<li>{}</li>", escaped(line));
    return html + "</ul></details>";
}

std::string coverage(Comparison const& comparison, Datasheet const& reference, Datasheet const& candidate) {
    if (!comparison.hasReference()) return fmt::format("<h2>{}</h2><p>{}</p>", texts::kCoverage, coverageLine(comparison)) + notRead("the candidate", candidate);
    auto html = fmt::format("<h2>{}</h2><p>{}</p><table><tr><th scope=\"col\"></th><th scope=\"col\">reference</th><th scope=\"col\">candidate</th></tr>", texts::kCoverage,
                            coverageLine(comparison));
    for (auto const& row : coverageRows(comparison.coverage)) {
        html += fmt::format("<tr><th scope=\"row\">{}</th><td class=\"r\">{}</td><td class=\"k\">{}</td></tr>", row.what, row.reference, row.candidate);
    }
    return html + "</table>" + notRead("the reference", reference) + notRead("the candidate", candidate);
}

std::string sections(Comparison const& comparison, Datasheet const& reference, Datasheet const& candidate) {
    if (comparison.sections.empty()) return {};
    auto html = fmt::format("<h2>{}</h2><details><summary>show {}</summary><table><tr><th scope=\"col\">reference</th><th scope=\"col\">candidate</th><th scope=\"col\">findings</th></tr>",
                            texts::kSections, comparison.sections.size());
    for (auto const& pair : comparison.sections) {
        html += fmt::format("<tr><td class=\"r\">{}</td><td class=\"k\">{}</td><td>{}</td></tr>", escaped(sectionTitle(reference, pair.reference)), escaped(sectionTitle(candidate, pair.candidate)),
                            pair.findings);
    }
    return html + "</table></details>";
}

std::string benchTests(std::span<risk::BenchTest const> tests) {
    if (tests.empty()) return {};
    auto html = fmt::format("<h2>{}</h2><p>{}</p>", texts::kBenchTests, texts::kBenchTestsMeaning);
    for (auto const& test : tests) {
        html += fmt::format("<article class=\"card\"><h3>{}</h3><p class=\"why\">{}</p>", escaped(test.title), escaped(test.procedure));
        if (!test.setup.empty()) html += fmt::format("<p class=\"why\">{}: {}</p>", texts::kSetUp, escaped(test.setup));
        if (!test.limitsFrom.empty()) html += fmt::format("<p class=\"why\">{}: {}</p>", texts::kLimitsFrom, escaped(test.limitsFrom));
        if (!test.limits.empty()) {
            html += "<ul>";
            for (auto const& limit : test.limits) html += fmt::format("<li>{}</li>", escaped(limitText(limit)));
            html += "</ul>";
        }
        html += "<p class=\"meta\">for";
        for (auto const& id : test.findings) html += fmt::format(" <a href=\"#f-{0}\">{0}</a>", escaped(id));
        html += "</p></article>\n";
    }
    return html;
}

std::string pairRow(Pair const& pair, SheetParameters const& sheets) {
    auto const cells = [](Parameter const* p, char const* cssClass) {
        if (p == nullptr) return fmt::format("<td class=\"{0}\">–</td><td class=\"{0}\"></td>", cssClass);
        return fmt::format("<td class=\"{0}\">{1} {2}<br>{3}</td><td class=\"{0}\">{4} (page {5})</td>", cssClass, escaped(p->name), escaped(p->symbol), escaped(conditionOf(*p)),
                           escaped(valuesOf(*p)), p->page);
    };
    auto const [reference, candidate] = parametersOf(pair, sheets);
    return "<tr>" + cells(reference, "r") + cells(candidate, "k") +
           fmt::format("<td>{}</td></tr>", texts::relationText(pair.relation));
}

std::string allPairs(Comparison const& comparison, SheetParameters const& sheets) {
    if (comparison.pairs.empty()) return {};
    auto html = fmt::format(
        "<h2>{0}</h2><details><summary>show {1}</summary><table><tr><th scope=\"col\">reference</th><th scope=\"col\">min / typ / max</th>"
        "<th scope=\"col\">candidate</th><th scope=\"col\">min / typ / max</th><th scope=\"col\">relation</th></tr>",
        texts::kAllPairs, comparison.pairs.size());
    for (auto const& pair : comparison.pairs) html += pairRow(pair, sheets);
    return html + "</table></details>";
}

std::string statements(Comparison const& comparison) {
    auto html = fmt::format("<h2>{}</h2><ul class=\"foot\">", texts::kStatements);
    for (auto const& statement : comparison.statements) html += fmt::format("<li>{}</li>", escaped(statement));
    return html + "</ul>";
}

}  // namespace

std::string htmlReport(Comparison const& comparison, Datasheet const& reference, Datasheet const& candidate, Cuttings& cuttings, std::span<risk::BenchTest const> tests) {
    SheetParameters const sheets{parametersById(reference), parametersById(candidate)};
    bool const two = comparison.hasReference();
    auto const title = two ? texts::kTitle : texts::kCheckTitle;
    auto html = fmt::format(
        "<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\">"
        "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'; img-src data:; base-uri 'none'; form-action 'none'\">"
        "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"><meta name=\"referrer\" content=\"no-referrer\">"
        "<title>{}: {}{}</title><style>{}</style></head>\n<body><main>",
        title, two ? escaped(titleOf(comparison.reference)) + " / " : std::string(), escaped(titleOf(comparison.candidate)), kHtmlStyle);
    html += fmt::format("<h1>Standin · {}</h1>", title);
    html += "<div class=\"docs\">" + (two ? documentBox(texts::kReference, "", comparison.reference) : std::string()) + documentBox(texts::kCandidate, "c", comparison.candidate) + "</div>\n";
    html += verdictBox(comparison) + "\n" + cautions(comparison) + "\n" + cellChecksHtml(comparison) + "\n" + findingsHtml(comparison, sheets, cuttings) + "\n";
    html += derivedHtml(comparison) + "\n" + benchTests(tests) + "\n" + sections(comparison, reference, candidate) + "\n";
    html += correctionsHtml({{"reference", &comparison.reference}, {"candidate", &comparison.candidate}});
    html += coverage(comparison, reference, candidate) + "\n" + allPairs(comparison, sheets) + "\n" + statements(comparison);
    return html + "</main></body></html>\n";
}

}  // namespace standin::report

// One function a part of the page. Tested by tests/src/report/html_report_test.cpp.
#include "report/html_report.h"

#include <fmt/format.h>

#include "model/names.h"
#include "report/finding_view.h"
#include "report/html_escape.h"
#include "report/html_style.h"
#include "report/limit_strip.h"
#include "report/texts.h"

namespace standin::report {

using namespace model;

namespace {

// Told by shape as well as by word.
std::string_view mark(Severity severity) {
    switch (severity) {
        case Severity::Hazard: return "▲";
        case Severity::Function: return "■";
        case Severity::Margin: return "●";
        case Severity::Note: return "▬";
        case Severity::Editorial: return "·";
    }
    return {};
}

struct Sheets {
    std::unordered_map<std::string_view, Parameter const*> reference;
    std::unordered_map<std::string_view, Parameter const*> candidate;
};

Parameter const* find(std::unordered_map<std::string_view, Parameter const*> const& byId, std::string const& id) {
    auto const found = byId.find(id);
    return found == byId.end() ? nullptr : found->second;
}

std::string documentBox(std::string_view who, char const* cssClass, DocumentInfo const& document) {
    auto html = fmt::format("<section class=\"doc {}\"><span class=\"tag\">{}</span><b>{}</b>", cssClass, who, escaped(titleOf(document)));
    html += fmt::format("<span>{}</span><span>SHA-256 {}</span>", escaped(document.file), escaped(document.sha256));
    for (auto const& warning : document.warnings) html += fmt::format("<span>{}</span>", escaped(warning));
    return html + "</section>";
}

std::string verdictBox(Comparison const& comparison) {
    auto const& verdict = comparison.verdict;
    auto html = fmt::format("<section class=\"verdict\"><p class=\"level\">{}</p>", texts::levelText(verdict.level));
    if (auto const detail = verdictDetail(verdict); !detail.empty()) html += fmt::format("<p>{}</p>", escaped(detail));
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
        html += fmt::format("<li>{} <b>{}</b> {}</li>", mark(severity), count, nameOf(severity));
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

std::string sideBox(std::string_view who, char const* cssClass, std::optional<Side> const& side) {
    auto html = fmt::format("<div class=\"side {}\"><span class=\"who\">{}", cssClass, who);
    if (!side) return html + fmt::format("</span> <span class=\"values\">– ({})</span></div>", texts::kNotPrinted);
    if (side->page > 0) html += fmt::format(", page {}", side->page);
    html += "</span> ";
    bool const values = !side->min.empty() || !side->typ.empty() || !side->max.empty();
    html += fmt::format("<span class=\"values{}\">{}</span>", values ? "" : " text", escaped(valuesOf(*side)));
    if (!side->condition.empty()) html += fmt::format(" <span class=\"cond\">{}</span>", escaped(side->condition));
    return html + "</div>";
}

std::string stripFor(Finding const& finding, Comparison const& comparison, Sheets const& sheets) {
    if (finding.pair < 0 || static_cast<std::size_t>(finding.pair) >= comparison.pairs.size()) return {};
    auto const& pair = comparison.pairs[static_cast<std::size_t>(finding.pair)];
    auto const* r = find(sheets.reference, pair.reference);
    auto const* c = find(sheets.candidate, pair.candidate);
    if (r == nullptr || c == nullptr || !r->interval || !c->interval) return {};
    auto const strip = limitStrip(*r->interval, *c->interval, finding.hazardSide);
    if (!strip) return {};
    return limitStripSvg(*strip, fmt::format("reference {}, candidate {}", valuesOf(*r), valuesOf(*c)));
}

std::string findingCard(FindingGroup const& group, Comparison const& comparison, Sheets const& sheets) {
    auto const& finding = *group.main;
    auto html = fmt::format("<article class=\"card\" id=\"f-{}\"><h3><span class=\"mark\" aria-hidden=\"true\">{}</span>{}</h3>", escaped(finding.id), mark(finding.severity),
                            escaped(finding.title));
    auto const strip = stripFor(finding, comparison, sheets);
    html += fmt::format("<div class=\"sides{}\"><div>", strip.empty() ? " plain" : "");
    html += sideBox("reference", "", finding.reference) + sideBox("candidate", "c", finding.candidate);
    html += "</div>" + strip + "</div>";
    if (!finding.explanation.empty()) html += fmt::format("<p class=\"why\">{}</p>", escaped(finding.explanation));
    for (auto const* consequence : group.consequences) html += fmt::format("<p class=\"why\">Follows from it: {}</p>", escaped(consequence->title + placesOf(*consequence)));
    html += fmt::format("<p class=\"meta\">{}, {}, {}{}{} · finding {}</p></article>", nameOf(finding.severity), texts::kindText(finding.kind), texts::relationText(finding.relation),
                        finding.caution.empty() ? "" : ", ", escaped(finding.caution), escaped(finding.id));
    return html;
}

std::string findings(Comparison const& comparison, Sheets const& sheets) {
    auto const groups = groupBySeverity(comparison);
    if (groups.empty()) return fmt::format("<p>{}</p>", texts::kNothingFound);
    std::string html;
    for (auto const& group : groups) {
        html += fmt::format("<h2>{} {} <small>{}: {}</small></h2>", mark(group.severity), texts::severityHeading(group.severity), group.findings.size(),
                            texts::severityMeaning(group.severity));
        bool const folded = group.severity == Severity::Editorial;
        if (folded) html += fmt::format("<details><summary>show {}</summary>", group.findings.size());
        for (auto const& finding : group.findings) html += findingCard(finding, comparison, sheets);
        if (folded) html += "</details>";
    }
    return html;
}

std::string coverageTable(Comparison const& comparison) {
    auto const row = [](char const* what, std::size_t r, std::size_t c) { return fmt::format("<tr><th scope=\"row\">{}</th><td class=\"r\">{}</td><td class=\"k\">{}</td></tr>", what, r, c); };
    auto const& r = comparison.coverage.reference;
    auto const& c = comparison.coverage.candidate;
    auto const n = [](int value) { return static_cast<std::size_t>(value); };
    auto html = fmt::format("<h2>{}</h2><p>{}</p><table><tr><th scope=\"col\"></th><th scope=\"col\">reference</th><th scope=\"col\">candidate</th></tr>", texts::kCoverage,
                            coverageLine(comparison));
    html += row("numbers printed", n(r.numbers), n(c.numbers));
    html += row("in parameters", n(r.inParameters), n(c.inParameters));
    html += row("in other tables", n(r.inTables), n(c.inTables));
    html += row("in text", n(r.inText), n(c.inText));
    html += row("in figures", n(r.inFigures), n(c.inFigures));
    html += row("in running heads, page numbers, watermarks", n(r.inFurniture), n(c.inFurniture));
    html += row("unaccounted for", r.unaccounted.size(), c.unaccounted.size());
    html += row("sentences", n(r.sentences), n(c.sentences));
    html += row("pages without a text layer", r.pagesWithoutText.size(), c.pagesWithoutText.size());
    html += row("tables not read", r.unreadTables.size(), c.unreadTables.size());
    html += row("figures not read", r.unreadFigures.size(), c.unreadFigures.size());
    return html + "</table>";
}

std::string pairRow(Pair const& pair, Sheets const& sheets) {
    auto const cells = [](Parameter const* p, char const* cssClass) {
        if (p == nullptr) return fmt::format("<td class=\"{0}\">–</td><td class=\"{0}\"></td>", cssClass);
        return fmt::format("<td class=\"{0}\">{1} {2}<br>{3}</td><td class=\"{0}\">{4} (page {5})</td>", cssClass, escaped(p->name), escaped(p->symbol), escaped(conditionOf(*p)),
                           escaped(valuesOf(*p)), p->page);
    };
    return "<tr>" + cells(find(sheets.reference, pair.reference), "r") + cells(find(sheets.candidate, pair.candidate), "k") +
           fmt::format("<td>{}</td></tr>", texts::relationText(pair.relation));
}

std::string allPairs(Comparison const& comparison, Sheets const& sheets) {
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

std::string htmlReport(Comparison const& comparison, Datasheet const& reference, Datasheet const& candidate) {
    Sheets const sheets{parametersById(reference), parametersById(candidate)};
    auto html = fmt::format(
        "<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\">"
        "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'; img-src data:; base-uri 'none'; form-action 'none'\">"
        "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"><meta name=\"referrer\" content=\"no-referrer\">"
        "<title>{}: {} / {}</title><style>{}</style></head>\n<body><main>",
        texts::kTitle, escaped(titleOf(comparison.reference)), escaped(titleOf(comparison.candidate)), kHtmlStyle);
    html += fmt::format("<h1>Standin · {}</h1>", texts::kTitle);
    html += "<div class=\"docs\">" + documentBox(texts::kReference, "", comparison.reference) + documentBox(texts::kCandidate, "c", comparison.candidate) + "</div>\n";
    html += verdictBox(comparison) + "\n" + cautions(comparison) + "\n" + findings(comparison, sheets) + "\n";
    html += coverageTable(comparison) + "\n" + allPairs(comparison, sheets) + "\n" + statements(comparison);
    return html + "</main></body></html>\n";
}

}  // namespace standin::report

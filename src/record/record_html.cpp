// One function a part of the page. Tested by tests/src/record/record_text_test.cpp.
#include "record/record_html.h"

#include <algorithm>
#include <array>

#include <fmt/format.h>

#include "model/names.h"
#include "record/record_view.h"
#include "report/finding_view.h"
#include "report/html_escape.h"
#include "report/html_style.h"
#include "report/texts.h"

namespace standin::record {

using model::Severity;
using report::escaped;

namespace {

// What the record adds to the report's style: standings told by word and frame,
// fields that are filled in by hand.
constexpr std::string_view kRecordStyle = R"(
.standing{display:inline-block;border:1px solid var(--ink);border-radius:3px;padding:0 6px;font-size:12px;font-weight:bold;margin-left:auto;flex:none}
.standing.todo{border-style:dashed;border-width:2px}
.decision{margin:6px 0 0;padding-left:10px;border-left:3px solid var(--soft)}
td.field{min-width:5em;height:2.2em}
td.whole{white-space:nowrap}
table.fields{table-layout:fixed}
table.fields th:first-child{width:34%}
table.plain th{width:14em}
)";

bool isOpen(Line const& line) { return line.mustClose && line.standing != Standing::Closed && line.standing != Standing::Rejected; }

std::string heading(std::string_view text) { return fmt::format("<h2>{}</h2>\n", text); }

std::string textsTable(NamedTexts const& texts) {
    std::string html = "<table class=\"plain\">";
    for (auto const& [name, text] : texts) html += fmt::format("<tr><th scope=\"row\">{}</th><td>{}</td></tr>", escaped(name), escaped(text));
    return html + "</table>\n";
}

std::string documentBox(std::string_view who, char const* cssClass, model::DocumentInfo const& document) {
    return fmt::format("<section class=\"doc {}\"><span class=\"tag\">{}</span><b>{}</b><span>{}</span><span>SHA-256 {}</span></section>", cssClass, who, escaped(report::titleOf(document)),
                       escaped(document.file), escaped(document.sha256));
}

std::string stateBox(Record const& record, Overview const& overview) {
    auto const& verdict = record.opened().comparison.verdict;
    auto html = fmt::format("<section class=\"verdict\"><p class=\"level\">Record: {}</p><p>Comparison: {}</p>", nameOf(overview.state), escaped(verdict.sentence));
    for (auto const index : overview.supersessions) html += fmt::format("<p><b>Superseded</b> {}</p>", escaped(supersededText(record.entries[index])));
    html += fmt::format("<p>{} open {}. {}</p>", overview.open.size(), overview.open.size() == 1 ? "point" : "points", escaped(headText(record)));
    html += fmt::format("<p class=\"meta\">{} {}</p></section>\n", kMeaning, kKeysMeaning);
    return html;
}

std::string openPoints(Overview const& overview) {
    auto html = heading("Open points");
    if (overview.open.empty()) return html + "<p>None.</p>";
    html += "<ul>";
    for (auto const& line : overview.lines) {
        if (isOpen(line)) html += fmt::format("<li><a href=\"#f-{0}\">{0}</a> {1}, level {2}: {3} — {4}</li>", escaped(line.finding), model::nameOf(line.severity), line.level, escaped(line.title), escaped(line.why));
    }
    return html + "</ul>\n";
}

std::string sideBox(std::string_view who, char const* cssClass, std::optional<model::Side> const& side) {
    auto html = fmt::format("<div class=\"side {}\"><span class=\"who\">{}", cssClass, who);
    if (!side) return html + fmt::format("</span> <span class=\"values\">– ({})</span></div>", report::texts::kNotPrinted);
    if (side->page > 0) html += fmt::format(", page {}", side->page);
    bool const values = !side->min.empty() || !side->typ.empty() || !side->max.empty();
    html += fmt::format("</span> <span class=\"values{}\">{}</span>", values ? "" : " text", escaped(report::valuesOf(*side)));
    if (!side->condition.empty()) html += fmt::format(" <span class=\"cond\">{}</span>", escaped(side->condition));
    return html + "</div>";
}

std::string deviation(Record const& record, Line const& line) {
    auto const& opened = record.opened();
    auto html = fmt::format("<article class=\"card\" id=\"f-{}\"><h3><span class=\"mark\" aria-hidden=\"true\">{}</span>{}<span class=\"standing{}\">{}</span></h3>", escaped(line.finding),
                            report::texts::severityMark(line.severity), escaped(line.title), isOpen(line) ? " todo" : "", escaped(standingText(record, line)));
    if (auto const* finding = findingOf(opened, line.finding)) {
        html += sideBox("reference", "", finding->reference) + sideBox("candidate", "c", finding->candidate);
        if (!finding->explanation.empty()) html += fmt::format("<p class=\"why\">{}</p>", escaped(finding->explanation));
    }
    for (auto const& id : line.consequences) {
        if (auto const* finding = findingOf(opened, id)) html += fmt::format("<p class=\"why\">Follows from it: {}</p>", escaped(finding->title));
    }
    for (auto const index : line.decisions) html += fmt::format("<p class=\"decision\">{}</p>", escaped(decisionText(record.entries[index])));
    for (auto const index : line.results) html += fmt::format("<p class=\"decision\">Measured {}</p>", escaped(resultText(record.entries[index], opened)));
    auto const* finding = findingOf(opened, line.finding);
    return html + fmt::format("<p class=\"meta\">{}, level {}, {}{}{} · finding {}</p></article>\n", model::nameOf(line.severity), line.level,
                              finding != nullptr ? report::texts::relationText(finding->relation) : "", finding != nullptr && !finding->caution.empty() ? ", " : "",
                              finding != nullptr ? escaped(finding->caution) : "", escaped(line.finding));
}

std::string deviations(Record const& record, Overview const& overview) {
    std::string html;
    for (auto const severity : report::kSeverities) {
        auto const count = std::count_if(overview.lines.begin(), overview.lines.end(), [severity](Line const& line) { return line.severity == severity; });
        if (count == 0) continue;
        html += fmt::format("<h2>{} {} <small>{}: {}</small></h2>\n", report::texts::severityMark(severity), report::texts::severityHeading(severity), count, report::texts::severityMeaning(severity));
        bool const folded = severity == Severity::Editorial;
        if (folded) html += fmt::format("<details><summary>show {}, which need no decision</summary>", count);
        for (auto const& line : overview.lines) {
            if (line.severity == severity) html += deviation(record, line);
        }
        if (folded) html += "</details>";
    }
    return html;
}

// A limit's row with the results on it, or empty fields for the first one.
std::string limitRows(Record const& record, risk::BenchTest const& test, risk::BenchLimit const& against, std::string const& limit) {
    std::string html;
    for (auto const& entry : record.entries) {
        auto const* result = std::get_if<BenchResult>(&entry.body);
        if (result == nullptr || result->test != test.id || !isAgainst(*result, against)) continue;
        std::string values;
        for (auto const& value : result->values) values += (values.empty() ? "" : ", ") + value;
        html += fmt::format("<tr><td>{}</td><td>{} {}</td><td>{} / {}</td><td>{}</td><td>{}, {}</td><td><b>{}</b></td></tr>", escaped(limit), escaped(values), escaped(result->unit),
                            result->samples > 0 ? fmt::format("{}", result->samples) : "–", result->lots > 0 ? fmt::format("{}", result->lots) : "–", escaped(result->instrument),
                            escaped(personText(entry.by)), entry.at, nameOf(result->outcome));
    }
    if (!html.empty()) return html;
    return fmt::format("<tr><td>{}</td><td class=\"field\"></td><td class=\"field\"></td><td class=\"field\"></td><td class=\"field\"></td><td class=\"field\"></td></tr>", escaped(limit));
}

std::string benchTests(Record const& record) {
    auto const& opened = record.opened();
    if (opened.tests.empty()) return {};
    auto html = heading("Bench tests that follow from the findings");
    html += "<ul class=\"foot\">";
    for (auto const& rule : opened.sampleRules) html += fmt::format("<li>{}</li>", escaped(rule));
    html += "</ul>";
    for (auto const& test : opened.tests) {
        html += fmt::format("<article class=\"card\"><h3>{} <small>{}</small></h3><p class=\"why\">{}</p>", escaped(test.title), escaped(test.id), escaped(test.procedure));
        html += fmt::format("<p class=\"why\">Set-up: {} Limits from: {}.</p>", escaped(test.setup), escaped(test.limitsFrom));
        html += "<table class=\"fields\"><tr><th scope=\"col\">limit</th><th scope=\"col\">measured</th><th scope=\"col\">samples / lots</th><th scope=\"col\">instrument</th><th scope=\"col\">by, date</th>"
                "<th scope=\"col\">judged</th></tr>";
        for (auto const& limit : test.limits) html += limitRows(record, test, limit, report::limitText(limit));
        if (test.limits.empty()) html += limitRows(record, test, {}, test.limitsFrom);
        html += "</table><p class=\"meta\">for";
        for (auto const& id : test.findings) html += fmt::format(" <a href=\"#f-{0}\">{0}</a>", escaped(id));
        html += "</p></article>\n";
    }
    return html;
}

std::string approvals(Record const& record, Overview const& overview) {
    auto html = heading("Approvals");
    html += "<table><tr><th scope=\"col\">role</th><th scope=\"col\">name</th><th scope=\"col\">key</th><th scope=\"col\">date</th><th scope=\"col\">remark</th></tr>";
    for (auto const role : {Role::Author, Role::Reviewer, Role::Approver}) {
        bool any = false;
        for (auto const& signature : overview.signatures) {
            auto const& entry = record.entries[signature.entry];
            auto const& body = std::get<Signed>(entry.body);
            if (body.role != role) continue;
            any = true;
            html += fmt::format("<tr><td class=\"whole\">{}</td><td>{}</td><td>Ed25519 {}</td><td class=\"whole\">{}</td><td>{}{}</td></tr>", nameOf(role), escaped(entry.by.name), entry.by.key, entry.at,
                                signature.lapsed ? "lapsed: something was entered afterwards. " : "", escaped(body.note));
        }
        if (!any) html += fmt::format("<tr><td class=\"whole\">{}</td><td class=\"field\"></td><td></td><td></td><td>not signed</td></tr>", nameOf(role));
    }
    return html + "</table>\n";
}

// One empty row, to be filled in by hand, where nobody was given it.
std::string distribution(Record const& record, Overview const& overview) {
    auto html = heading("Distribution");
    if (auto const waiting = notToldText(overview); !waiting.empty()) html += fmt::format("<p><b>{}</b></p>", escaped(waiting));
    html += "<table><tr><th scope=\"col\">to</th><th scope=\"col\">what</th><th scope=\"col\">with change</th><th scope=\"col\">date</th><th scope=\"col\">entered by</th></tr>";
    for (auto const index : overview.distributions) {
        auto const given = givenIn(record.entries[index]);
        html += fmt::format("<tr><td>{}</td><td>{}</td><td>{}</td><td class=\"whole\">{}</td><td>{}</td></tr>", escaped(given.to), escaped(given.what), escaped(given.change),
                            escaped(given.on), escaped(given.by));
    }
    if (overview.distributions.empty()) html += "<tr><td class=\"field\"></td><td></td><td></td><td></td><td>to nobody yet</td></tr>";
    return html + "</table>\n";
}

std::string validity(Opened const& opened) {
    auto const& identification = opened.identification;
    auto html = heading("Scope and new review");
    html += textsTable({{"Scope", identification.scope.empty() ? "not stated" : identification.scope}, {"Valid until", identification.validUntil.empty() ? "no end stated" : identification.validUntil}});
    html += "<p>To be reviewed again upon</p><ul>";
    for (auto const& trigger : reviewTriggers(opened)) html += fmt::format("<li>{}</li>", escaped(trigger));
    return html + "</ul>\n";
}

std::string history(Record const& record) {
    auto html = heading("History") + "<table><tr><th scope=\"col\">entry</th><th scope=\"col\">hash</th></tr>";
    for (std::size_t i = 0; i < record.entries.size(); ++i) html += fmt::format("<tr><td>{}</td><td>{}</td></tr>", escaped(historyText(record, i)), record.entries[i].hash.substr(0, 16));
    return html + "</table>\n";
}

}  // namespace

std::string recordHtml(Record const& record) {
    auto const overview = stateOf(record);
    auto const& opened = record.opened();
    auto const& comparison = opened.comparison;
    auto html = fmt::format(
        "<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\">"
        "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'; img-src data:; base-uri 'none'; form-action 'none'\">"
        "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"><meta name=\"referrer\" content=\"no-referrer\">"
        "<title>Record {}: {} / {}</title><style>{}{}</style></head>\n<body><main>",
        escaped(opened.identification.number), escaped(report::titleOf(comparison.reference)), escaped(report::titleOf(comparison.candidate)), report::kHtmlStyle, kRecordStyle);
    html += fmt::format("<h1>Standin · Record {} {}</h1>\n", escaped(opened.identification.number), escaped(opened.identification.title));
    html += "<div class=\"docs\">" + documentBox("Reference", "", comparison.reference) + documentBox("Candidate", "c", comparison.candidate) + "</div>\n";
    html += stateBox(record, overview) + openPoints(overview) + approvals(record, overview);
    html += deviations(record, overview) + benchTests(record) + distribution(record, overview) + validity(opened);
    html += heading("Identification") + textsTable(identificationOf(opened)) + heading("Method") + textsTable(methodOf(opened));
    html += heading("Coverage") + fmt::format("<p>{}</p>\n", escaped(report::coverageLine(comparison))) + history(record);
    html += "<ul class=\"foot\">";
    for (auto const& statement : comparison.statements) html += fmt::format("<li>{}</li>", escaped(statement));
    return html + "</ul></main></body></html>\n";
}

}  // namespace standin::record

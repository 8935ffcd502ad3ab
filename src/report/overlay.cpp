// Checkboxes in front of the pages switch the layers by style rules alone, so the
// file needs no script. Tested by tests/src/report/overlay_test.cpp.
#include "report/overlay.h"

#include <array>

#include <fmt/format.h>

#include "model/names.h"
#include "report/finding_view.h"
#include "report/html_escape.h"
#include "report/overlay_page.h"
#include "report/picture_png.h"

namespace standin::report {

using namespace model;

namespace {

constexpr double kPixelsPerPoint = 1.25;

struct Layer {
    std::string_view name;
    std::string_view label;
    bool shown;  // at first
};
constexpr std::array kLayers{
    Layer{"picture", "page", true},          Layer{"letters", "words written out", false}, Layer{"words", "words", false},   Layer{"numbers", "numbers by owner", true},
    Layer{"blocks", "blocks", false},        Layer{"tables", "tables and cells", true},    Layer{"roles", "parameter rows", true},
    Layer{"pins", "pins", true},             Layer{"figures", "figures", true},            Layer{"sections", "headings", true},
};

constexpr std::string_view kStyle = R"(
body{margin:0;font:13px/1.4 "DejaVu Sans",Verdana,sans-serif;background:#e9e7e1;color:#1d2430}
header{padding:10px 16px;background:#fff;border-bottom:1px solid #bbb}
input{margin:0 4px 0 16px}
.switches{padding:6px 0}
main{padding:12px}
.page{background:#fff;border:1px solid #999;margin:0 auto 18px;max-width:1000px}
.page h2{font-size:13px;margin:0;padding:4px 8px;background:#d9d6cc}
svg{display:block;width:100%;height:auto;background:#fff}
svg rect{fill:none;stroke:none;stroke-width:.6}
svg text{font-family:"DejaVu Sans",Verdana,sans-serif}
.letter{fill:#444}
.mark{fill:#7a1f5c;paint-order:stroke;stroke:#fff;stroke-width:1px}
.parameter{--c:#0b7a45}.table{--c:#2459b3}.text{--c:#6b6b6b}.figure{--c:#7d3fb5}.furniture{--c:#a8770a}.none{--c:#d1101c}
rect.word{stroke:var(--c);stroke-width:.4;pointer-events:all}
rect.word.hidden{stroke-dasharray:1 1}
rect.number{fill:var(--c);fill-opacity:.28;pointer-events:all}
rect.number.none,rect.unaccounted{stroke:#d1101c;stroke-width:1.6}
rect.block{stroke:#888;stroke-dasharray:3 2}
rect.table{stroke:#2459b3;stroke-width:1.4}
rect.cell{stroke:#2459b3;stroke-width:.5;pointer-events:all}
rect.cell.head{fill:#2459b3;fill-opacity:.14}
rect.row{stroke:#0b7a45;stroke-width:.8}
rect.row.doubted{stroke:#c04a00;stroke-width:1.2;stroke-dasharray:4 2}
rect.role{pointer-events:all;stroke-width:.9}
rect.role.name{stroke:#5a3b00;stroke-dasharray:1 1}
rect.role.symbol{stroke:#5a3b00}
rect.role.condition{stroke:#00706b;stroke-dasharray:4 1}
rect.role.unit{stroke:#00706b}
rect.role.min{stroke:#0b3fb5}
rect.role.typ{stroke:#0b7a45}
rect.role.max{stroke:#b0003a}
rect.pin{stroke:#a8770a;stroke-width:1}
rect.figure{stroke:#7d3fb5;stroke-dasharray:6 3;stroke-width:1}
rect.section{stroke:#7a1f5c;stroke-width:1}
table{border-collapse:collapse;font-size:12px;margin:4px 8px 8px}
th,td{border:1px solid #ccc;padding:1px 5px;text-align:left;vertical-align:top;overflow-wrap:anywhere}
tr.doubted td{background:#fbe9dd}
summary{cursor:pointer;padding:4px 8px}
.legend b{font-weight:normal;padding:0 6px;color:#fff;background:var(--c);margin-right:6px}
)";

std::string switchRules() {
    std::string rules;
    for (auto const& layer : kLayers) rules += fmt::format("#show-{0}:not(:checked)~main .{0}{{display:none}}\n", layer.name);
    return rules + "svg.plain .letters{display:inline!important}\n";
}

std::string switches() {
    std::string html;
    for (auto const& layer : kLayers) {
        html += fmt::format("<input type=\"checkbox\" id=\"show-{0}\"{1}><label for=\"show-{0}\">{2}</label>", layer.name, layer.shown ? " checked" : "", layer.label);
    }
    return html;
}

std::string header(Datasheet const& sheet) {
    auto const& c = sheet.coverage;
    auto html = fmt::format("<header><b>{}</b> {}<br>SHA-256 {}", escaped(titleOf(sheet.document)), escaped(sheet.document.file), escaped(sheet.document.sha256));
    html += fmt::format("<p class=\"legend\">{} numbers: <b class=\"parameter\">parameter {}</b><b class=\"table\">table {}</b><b class=\"text\">text {}</b><b class=\"figure\">figure {}</b>"
                        "<b class=\"furniture\">furniture {}</b><b class=\"none\">unaccounted {}</b></p>",
                        c.numbers, c.inParameters, c.inTables, c.inText, c.inFigures, c.inFurniture, c.unaccounted.size());
    for (auto const& warning : sheet.document.warnings) html += fmt::format("<p>{}</p>", escaped(warning));
    return html + "</header>\n";
}

std::string parameterTable(Datasheet const& sheet, int page) {
    std::string rows;
    std::size_t count = 0;
    for (auto const& p : sheet.parameters) {
        if (p.page != page) continue;
        ++count;
        std::string reasons;
        for (auto const& reason : p.confidence.reasons) reasons += (reasons.empty() ? "" : "; ") + reason;
        rows += fmt::format("<tr{}><td>{}</td><td>{}</td><td>{}</td><td>{}</td><td>{}</td><td>{}</td><td>{}</td><td>{} {}</td><td>{:.2f} {}</td></tr>", p.confidence.score < 0.9 ? " class=\"doubted\"" : "",
                            escaped(p.id), escaped(p.name), escaped(p.symbol), escaped(conditionOf(p)), escaped(p.variant), escaped(valuesOf(p)), escaped(p.canonical), nameOf(p.kind), nameOf(p.grade),
                            p.confidence.score, escaped(reasons));
    }
    if (count == 0) return {};
    return fmt::format("<details><summary>{} parameters</summary><table><tr><th>id</th><th>name</th><th>symbol</th><th>conditions</th><th>variant</th><th>min / typ / max</th>"
                       "<th>vocabulary</th><th>kind, grade</th><th>confidence</th></tr>{}</table></details>\n",
                       count, rows);
}

std::string pictureOf(PageLayout const& page, PagePictures* pictures) {
    if (pictures == nullptr) return {};
    auto const box = pictures->pageBox(page.page);
    if (!box) return {};
    auto const picture = pictures->render(page.page, *box, kPixelsPerPoint);
    return picture ? pngDataUri(*picture) : std::string();
}

}  // namespace

std::string overlayHtml(Datasheet const& sheet, std::span<PageLayout const> pages, PagePictures* pictures) {
    auto html = fmt::format(
        "<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\">"
        "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'; img-src data:; base-uri 'none'; form-action 'none'\">"
        "<title>What was understood of {}</title><style>{}{}</style></head>\n<body>\n",
        escaped(sheet.document.file), kStyle, switchRules());
    html += header(sheet) + switches() + "\n<main>\n";
    for (auto const& page : pages) {
        html += fmt::format("<section class=\"page\"><h2>page {}</h2>\n{}{}</section>\n", page.page, overlaySvg(sheet, page, pictureOf(page, pictures)), parameterTable(sheet, page.page));
    }
    return html + "</main></body></html>\n";
}

}  // namespace standin::report

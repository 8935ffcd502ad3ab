// Tested by tests/src/report/datasheet_report_test.cpp.
#include "report/datasheet_report.h"

#include <fmt/format.h>

#include "model/names.h"
#include "model/recognised.h"
#include "report/corrections_section.h"
#include "report/finding_view.h"
#include "report/wrapped_text.h"

namespace standin::report {

using namespace model;

namespace {

constexpr double kDoubted = 0.7;  // rows below are marked; comparison lists the same ones

void appendHeading(std::string& out, std::string_view heading, std::size_t count) { out += fmt::format("\n{} ({})\n", heading, count); }

void appendParameter(std::string& out, Parameter const& p, Coverage const& coverage) {
    std::string title = p.name;
    if (!p.symbol.empty()) title += (title.empty() ? "" : "  ") + p.symbol;
    if (!p.variant.empty()) title += "  [" + p.variant + "]";
    appendWrapped(out, fmt::format(" p {:<3} ", p.page), title);
    auto values = valuesOf(p);
    if (auto const condition = conditionOf(p); !condition.empty()) values += "   (" + condition + ")";
    appendWrapped(out, "         ", values);
    bool const isRecognised = model::isRecognised(coverage, p.page, p.box);
    if (p.confidence.score <= 0 || (p.confidence.score >= kDoubted && !isRecognised)) return;
    std::string reasons;
    for (auto const& reason : p.confidence.reasons) reasons += (reasons.empty() ? "" : "; ") + reason;
    appendWrapped(out, "         ", "may be misread: " + reasons);
}

}  // namespace

std::string datasheetText(Datasheet const& sheet) {
    std::string out;
    appendWrapped(out, "Datasheet  ", titleOf(sheet.document) + "  (" + sheet.document.file + ")");
    appendWrapped(out, "SHA-256    ", sheet.document.sha256);
    for (auto const& warning : sheet.document.warnings) appendWrapped(out, "Warning    ", warning);

    appendHeading(out, "SECTIONS", sheet.sections.size());
    for (auto const& s : sheet.sections) appendWrapped(out, fmt::format(" p {:<3} {:<21}", s.page, nameOf(s.kind)), s.title);
    appendHeading(out, "PARAMETERS, minimum / typical / maximum", sheet.parameters.size());
    for (auto const& p : sheet.parameters) appendParameter(out, p, sheet.coverage);
    if (!sheet.pins.empty()) {
        appendHeading(out, "PINS", sheet.pins.size());
        for (auto const& p : sheet.pins) appendWrapped(out, fmt::format(" {:<4} {:<10} ", p.number, p.name), p.recognised ? p.function + std::string(kRecognisedMark) : p.function);
    }
    if (!sheet.packages.empty()) {
        appendHeading(out, "PACKAGES", sheet.packages.size());
        for (auto const& p : sheet.packages) appendWrapped(out, fmt::format(" p {:<3} ", p.page), p.name);
    }
    if (!sheet.ordering.empty()) {
        appendHeading(out, "ORDERING", sheet.ordering.size());
        for (auto const& o : sheet.ordering) {
            std::string attributes;
            for (auto const& [title, text] : o.attributes) attributes += fmt::format("{}{}: {}", attributes.empty() ? "" : "; ", title, text);
            appendWrapped(out, fmt::format(" {:<16} ", o.code), attributes);
        }
    }
    if (!sheet.features.empty()) {
        appendHeading(out, "FEATURES", sheet.features.size());
        for (auto const& f : sheet.features) appendWrapped(out, fmt::format(" p {:<3} ", f.page), f.canonical + ": " + f.state);
    }
    appendCorrections(out, {{"", &sheet.document}});
    auto const& c = sheet.coverage;
    out += "\nCOVERAGE\n";
    appendWrapped(out, " ", fmt::format("{} numbers: {} in parameters, {} in other tables, {} in text, {} in figures, {} in running heads and the like, {} unaccounted for.", c.numbers,
                                        c.inParameters, c.inTables, c.inText, c.inFigures, c.inFurniture, c.unaccounted.size()));
    appendWrapped(out, " ", fmt::format("{} sentences. {} tables not read, {} figures not read.", c.sentences, c.unreadTables.size(), c.unreadFigures.size()));
    for (auto const& pin : c.unreadPins) appendWrapped(out, " ", fmt::format("Pins not read, page {}: {}", pin.page, pin.text));
    if (!c.recognised.empty()) appendWrapped(out, " ", fmt::format("{} lines were recognised from pictures and may be misread: compare them with the pages.", c.recognised.size()));
    for (auto const& [page, count] : unrecognisedByPage(c)) appendWrapped(out, " ", fmt::format("Lettering of pictures not made out, page {}: {} places", page, count));
    for (auto const& sign : c.drawnSigns) appendWrapped(out, " ", fmt::format("Sign not read, page {}: a drawing {}", sign.page, sign.text));
    return out;
}

}  // namespace standin::report

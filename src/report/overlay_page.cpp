// A group a layer, in the order in which they are painted. Marks carry their
// meaning in a <title>, which browsers show under the pointer. Tested by
// tests/src/report/overlay_test.cpp.
#include "report/overlay_page.h"

#include <algorithm>
#include <array>
#include <iterator>
#include <vector>

#include <fmt/format.h>

#include "model/names.h"
#include "quantity/numbers.h"
#include "report/finding_view.h"
#include "report/html_escape.h"

namespace standin::report {

using namespace model;

namespace {

constexpr Points kMarkSize = 4.5F;      // of the letters in the corner of a box
constexpr double kDoubtedScore = 0.9;   // a row below is drawn with broken lines

std::string_view nameOf(Owner owner) {
    constexpr std::array<std::string_view, 6> kNames{"none", "parameter", "table", "text", "figure", "furniture"};
    return kNames[static_cast<std::size_t>(owner)];
}

std::string_view nameOf(BlockRole role) {
    constexpr std::array<std::string_view, 8> kNames{"paragraph", "list entry", "heading", "caption", "running head", "page number", "watermark", "rotated"};
    return kNames[static_cast<std::size_t>(role)];
}

std::string_view nameOf(CellRole role) {
    constexpr std::array<std::string_view, 8> kNames{"none", "name", "symbol", "condition", "min", "typ", "max", "unit"};
    return kNames[static_cast<std::size_t>(role)];
}

class Svg {
public:
    void open(std::string_view layer) { fmt::format_to(out(), "<g class=\"{}\">", layer); }
    void close() { m_text += "</g>\n"; }
    // `title` is shown under the pointer.
    void box(Rect const& r, std::string_view cssClass, std::string_view title) {
        fmt::format_to(out(), "<rect class=\"{}\" x=\"{:.1f}\" y=\"{:.1f}\" width=\"{:.1f}\" height=\"{:.1f}\"><title>{}</title></rect>", cssClass, r.x0, r.y0, std::max(r.width(), 0.5F),
                       std::max(r.height(), 0.5F), escaped(title));
    }
    void letters(Point at, Points size, std::string_view cssClass, std::string_view text) {
        fmt::format_to(out(), "<text class=\"{}\" x=\"{:.1f}\" y=\"{:.1f}\" font-size=\"{:.1f}\">{}</text>", cssClass, at.x, at.y, size, escaped(text));
    }
    // A short mark at the top left corner of a box.
    void mark(Rect const& r, std::string_view cssClass, std::string_view text) { letters({r.x0, r.y0 - 0.5F}, kMarkSize, cssClass, text); }
    std::string take() { return std::move(m_text); }

private:
    std::back_insert_iterator<std::string> out() { return std::back_inserter(m_text); }
    std::string m_text;
};

void drawWords(Svg& svg, PageLayout const& page) {
    svg.open("letters");
    for (auto const& word : page.words) svg.letters({word.box.x0, word.box.y1 - 0.2F * word.box.height()}, std::max(word.size, 1.0F), "letter", word.text);
    svg.close();
    svg.open("words");
    for (auto const& word : page.words) svg.box(word.box, fmt::format("word {}{}", nameOf(word.owner), word.hidden ? " hidden" : ""), fmt::format("{} ({})", word.text, nameOf(word.owner)));
    svg.close();
    svg.open("numbers");
    for (auto const& word : page.words) {
        if (quantity::countNumbers(word.text) > 0) svg.box(word.box, fmt::format("number {}", nameOf(word.owner)), fmt::format("{} is counted for: {}", word.text, nameOf(word.owner)));
    }
    svg.close();
}

void drawBlocks(Svg& svg, PageLayout const& page) {
    svg.open("blocks");
    for (std::size_t b = 0; b < page.blocks.size(); ++b) {
        auto const& block = page.blocks[b];
        svg.box(block.box, "block", fmt::format("block {}: {}, column {}, {} lines", b, nameOf(block.role), block.column, block.lineCount));
        svg.mark(block.box, "mark", fmt::format("{} {}", b, nameOf(block.role)));
    }
    svg.close();
}

void drawTables(Svg& svg, Datasheet const& sheet, int page) {
    svg.open("tables");
    for (auto const& table : sheet.tables) {
        if (table.page != page) continue;
        std::string reasons;
        for (auto const& reason : table.reasons) reasons += "; " + reason;
        svg.box(table.box, "table", fmt::format("{} {}, {} rows, {} columns, confidence {:.2f}{}", table.id, model::nameOf(table.kind), table.rows, table.columns, table.confidence, reasons));
        svg.mark(table.box, "mark", fmt::format("{} {} {:.2f}", table.id, model::nameOf(table.kind), table.confidence));
        for (auto const& cell : table.cells) {
            auto const place = fmt::format("row {}{}, column {}{}{}: {}", cell.row, cell.rowSpan > 1 ? fmt::format("+{}", cell.rowSpan - 1) : "", cell.column,
                                           cell.columnSpan > 1 ? fmt::format("+{}", cell.columnSpan - 1) : "", cell.header ? ", head" : "", cell.text);
            svg.box(cell.box, cell.header ? "cell head" : "cell", place);
        }
    }
    svg.close();
}

std::string describe(Parameter const& p) {
    auto text = fmt::format("{} {} {} [{}]: {}", p.id, p.name, p.symbol, conditionOf(p), valuesOf(p));
    text += fmt::format("; {}, {}, confidence {:.2f}", p.canonical.empty() ? "no vocabulary id" : p.canonical, model::nameOf(p.grade), p.confidence.score);
    for (auto const& reason : p.confidence.reasons) text += "; " + reason;
    return text;
}

void drawRoles(Svg& svg, Datasheet const& sheet, int page) {
    svg.open("roles");
    for (auto const& parameter : sheet.parameters) {
        if (parameter.page != page) continue;
        svg.box(parameter.box, parameter.confidence.score < kDoubtedScore ? "row doubted" : "row", describe(parameter));
        svg.mark({parameter.box.x1, parameter.box.y1, parameter.box.x1, parameter.box.y1}, "mark", parameter.id);
        auto const table = std::find_if(sheet.tables.begin(), sheet.tables.end(), [&](auto const& t) { return t.id == parameter.table; });
        if (table != sheet.tables.end()) {
            for (auto const& cell : table->cells) {
                auto const role = roleIn(parameter, cell);
                bool const value = role == CellRole::Min || role == CellRole::Typ || role == CellRole::Max;
                if (role != CellRole::None && !value) svg.box(cell.box, fmt::format("role {}", nameOf(role)), fmt::format("{} of {}: {}", nameOf(role), parameter.id, cell.text));
            }
        }
        for (auto const& [value, role] : {std::pair{&parameter.min, CellRole::Min}, std::pair{&parameter.typ, CellRole::Typ}, std::pair{&parameter.max, CellRole::Max}}) {
            if (!*value) continue;
            svg.box((*value)->box, fmt::format("role {}", nameOf(role)), fmt::format("{} of {}: {} (printed {})", nameOf(role), parameter.id, (*value)->text, (*value)->printed));
            svg.mark((*value)->box, "mark", nameOf(role));
        }
    }
    svg.close();
}

void drawRest(Svg& svg, Datasheet const& sheet, int page) {
    svg.open("pins");
    for (auto const& pin : sheet.pins) {
        if (pin.page == page) svg.box(pin.box, "pin", fmt::format("pin {} {} {} {}", pin.number, pin.name, pin.package, pin.function));
    }
    svg.close();
    svg.open("figures");
    for (auto const& figure : sheet.figures) {
        if (figure.page != page) continue;
        svg.box(figure.box, "figure", fmt::format("{} {}: {}", figure.id, model::nameOf(figure.read), figure.caption));
        svg.mark(figure.box, "mark", figure.id);
    }
    svg.close();
    svg.open("sections");
    for (auto const& section : sheet.sections) {
        if (section.page != page) continue;
        svg.box(section.box, "section", fmt::format("{} {}, level {}: {}", section.id, model::nameOf(section.kind), section.level, section.title));
        svg.mark(section.box, "mark", fmt::format("{} {}", section.id, model::nameOf(section.kind)));
    }
    for (auto const& number : sheet.coverage.unaccounted) {
        if (number.page == page) svg.box(number.box.grown(2), "unaccounted", fmt::format("{} is unaccounted for", number.text));
    }
    svg.close();
}

bool holds(std::string const& text, std::string const& part) { return !part.empty() && text.find(part) != std::string::npos; }

}  // namespace

CellRole roleIn(Parameter const& parameter, Cell const& cell) {
    if (cell.header || cell.text.empty() || overlap(cell.box.y0, cell.box.y1, parameter.box.y0, parameter.box.y1) <= 0) return CellRole::None;
    for (auto const& [value, role] : {std::pair{&parameter.min, CellRole::Min}, std::pair{&parameter.typ, CellRole::Typ}, std::pair{&parameter.max, CellRole::Max}}) {
        if (*value && !(*value)->box.empty() && cell.box.contains((*value)->box.centre())) return role;
    }
    if (cell.text == parameter.unit) return CellRole::Unit;
    if (cell.text == parameter.symbol) return CellRole::Symbol;
    if (holds(parameter.condition, cell.text) || holds(cell.text, parameter.condition)) return CellRole::Condition;
    if (holds(parameter.name, cell.text) || holds(cell.text, parameter.name)) return CellRole::Name;
    return CellRole::None;
}

std::string overlaySvg(Datasheet const& sheet, PageLayout const& page, std::string_view picture) {
    Svg svg;
    auto html = fmt::format("<svg viewBox=\"0 0 {0:.1f} {1:.1f}\" role=\"img\" aria-label=\"page {2}\" class=\"{3}\">\n", std::max(page.width, 1.0F), std::max(page.height, 1.0F), page.page,
                            picture.empty() ? "plain" : "drawn");
    if (!picture.empty()) html += fmt::format("<image class=\"picture\" x=\"0\" y=\"0\" width=\"{:.1f}\" height=\"{:.1f}\" href=\"{}\"/>\n", page.width, page.height, picture);
    drawWords(svg, page);
    drawBlocks(svg, page);
    drawTables(svg, sheet, page.page);
    drawRoles(svg, sheet, page.page);
    drawRest(svg, sheet, page.page);
    return html + svg.take() + "</svg>\n";
}

}  // namespace standin::report

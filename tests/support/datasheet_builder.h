// Small datasheets made by hand for tests of comparison: every call puts one
// printed thing below the last, with boxes as a page has them.
//
//     SheetBuilder sheet("QX17");
//     sheet.section(SectionKind::Characteristics, "Electrical characteristics");
//     sheet.specification("Ta = 25 °C", {{.name = "Detection voltage", .symbol = "VCU", .min = "4.25", .typ = "4.28", .max = "4.31", .unit = "V"}});
//     sheet.sentence("The NC pin can be left open.");
//     Datasheet datasheet = sheet.build();
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "model/datasheet.h"
#include "quantity/cell.h"
#include "quantity/numbers.h"

namespace standin::support {

struct RowText {
    std::string name = {};
    std::string symbol = {};
    std::string condition = {};
    std::string min = {};
    std::string typ = {};
    std::string max = {};
    std::string unit = {};
    std::string canonical = {};
    std::string variant = {};
    model::ParameterKind kind = model::ParameterKind::Characteristic;
};

class SheetBuilder {
public:
    explicit SheetBuilder(std::string const& part = "QX17") {
        m_sheet.document.file = part + ".pdf";
        m_sheet.document.pages = 1;
        m_sheet.document.languages = {"en"};
        m_sheet.document.partNumbers = {part};
    }

    // All that follows stands on the next page.
    SheetBuilder& nextPage() {
        ++m_sheet.document.pages;
        m_y = kTop;
        return *this;
    }

    SheetBuilder& section(model::SectionKind kind, std::string title) {
        model::Section section;
        section.id = "s" + std::to_string(m_sheet.sections.size() + 1);
        section.kind = kind;
        section.title = std::move(title);
        section.page = m_sheet.document.pages;
        section.box = line(kLeft, kRight);
        m_section = section.id;
        m_sheet.sections.push_back(std::move(section));
        return *this;
    }

    // A specification table with a head row; each row becomes a parameter.
    SheetBuilder& specification(std::string const& tableCondition, std::vector<RowText> const& rows) {
        model::Table& table = startTable(model::TableKind::Specification, 7);
        table.lead = tableCondition;
        addRow(table, {"Parameter", "Symbol", "Conditions", "Min.", "Typ.", "Max.", "Unit"}, true);
        table.headRows = 1;
        for (RowText const& row : rows) {
            float const y = m_y;
            addRow(table, {row.name, row.symbol, row.condition, row.min, row.typ, row.max, row.unit}, false);
            m_sheet.parameters.push_back(parameterOf(row, tableCondition, table, y));
        }
        finishTable(table);
        return *this;
    }

    // A table of any other subject; the first row is the head.
    SheetBuilder& table(model::TableKind kind, std::vector<std::vector<std::string>> const& rows, std::string caption = {}) {
        model::Table& table = startTable(kind, rows.empty() ? 0 : static_cast<int>(rows.front().size()));
        table.caption = std::move(caption);
        table.headRows = 1;
        for (std::size_t r = 0; r < rows.size(); ++r) addRow(table, rows[r], r == 0);
        finishTable(table);
        return *this;
    }

    SheetBuilder& pinTable(std::vector<std::vector<std::string>> const& pins) {
        model::Table& table = startTable(model::TableKind::Pins, 3);
        table.headRows = 1;
        addRow(table, {"Pin", "Name", "Function"}, true);
        for (auto const& pin : pins) {
            model::Rect const box{kLeft, m_y, kRight, m_y + kLine};
            addRow(table, pin, false);
            m_sheet.pins.push_back({pin[0], pin[1], pin[2], {}, m_sheet.document.pages, box});
        }
        finishTable(table);
        return *this;
    }

    SheetBuilder& orderingTable(std::vector<std::pair<std::string, std::string>> const& lines) {
        model::Table& table = startTable(model::TableKind::Ordering, 2);
        table.headRows = 1;
        addRow(table, {"Code", "Marking"}, true);
        for (auto const& [code, marking] : lines) {
            model::Rect const box{kLeft, m_y, kRight, m_y + kLine};
            addRow(table, {code, marking}, false);
            m_sheet.ordering.push_back({code, {{"Code", code}, {"Marking", marking}}, table.id, m_sheet.document.pages, box});
        }
        finishTable(table);
        return *this;
    }

    SheetBuilder& sentence(std::string text) {
        model::Sentence sentence;
        sentence.id = "x" + std::to_string(m_sheet.text.size() + 1);
        sentence.section = m_section;
        sentence.places = {{m_sheet.document.pages, line(kLeft, kRight)}};
        sentence.text = std::move(text);
        m_sheet.text.push_back(std::move(sentence));
        return *this;
    }

    // A sentence that states a feature.
    SheetBuilder& feature(std::string canonical, std::string state, std::string text) {
        sentence(text);
        auto const& place = m_sheet.text.back().places.front();
        m_sheet.features.push_back({std::move(canonical), std::move(state), place.page, place.box, std::move(text)});
        return *this;
    }

    SheetBuilder& figure(std::string caption, std::vector<std::string> const& lettering, std::string shape = "shape") {
        model::Figure figure;
        figure.id = "f" + std::to_string(m_sheet.figures.size() + 1);
        figure.section = m_section;
        figure.caption = std::move(caption);
        figure.page = m_sheet.document.pages;
        figure.shape = std::move(shape);
        figure.box = line(kLeft, kRight);
        for (auto const& text : lettering) {
            figure.texts.push_back({text, figure.page, line(kLeft + 20, kLeft + 120)});
            figure.box = model::united(figure.box, figure.texts.back().box);
        }
        m_sheet.figures.push_back(std::move(figure));
        return *this;
    }

    // On the pages named, at the top.
    SheetBuilder& runningHead(std::string text, std::vector<int> const& pages, model::Furniture::Kind kind = model::Furniture::Kind::RunningHead) {
        model::Furniture furniture;
        furniture.kind = kind;
        furniture.text = std::move(text);
        float const y = kind == model::Furniture::Kind::PageNumber ? 800.0F : 20.0F;
        for (int const page : pages) furniture.places.push_back({page, {kLeft, y, kRight, y + kLine}});
        m_sheet.furniture.push_back(std::move(furniture));
        return *this;
    }

    SheetBuilder& package(std::string name) {
        model::Package package;
        package.canonical = name;
        package.name = std::move(name);
        package.page = m_sheet.document.pages;
        package.box = line(kLeft, kRight);
        m_sheet.packages.push_back(std::move(package));
        return *this;
    }

    // For what has no call of its own.
    [[nodiscard]] model::Datasheet& sheet() { return m_sheet; }

    [[nodiscard]] model::Datasheet build() const {
        model::Datasheet sheet = m_sheet;
        auto& coverage = sheet.coverage;
        auto count = [](std::string const& text) { return static_cast<int>(quantity::countNumbers(text)); };
        for (auto const& table : sheet.tables) {
            for (auto const& cell : table.cells) (table.kind == model::TableKind::Specification ? coverage.inParameters : coverage.inTables) += count(cell.text);
        }
        for (auto const& sentence : sheet.text) coverage.inText += count(sentence.text);
        for (auto const& figure : sheet.figures) {
            coverage.inFigures += count(figure.caption);
            for (auto const& piece : figure.texts) coverage.inFigures += count(piece.text);
        }
        for (auto const& furniture : sheet.furniture) coverage.inFurniture += count(furniture.text) * static_cast<int>(furniture.places.size());
        coverage.sentences = static_cast<int>(sheet.text.size());
        coverage.numbers = coverage.inParameters + coverage.inTables + coverage.inText + coverage.inFigures + coverage.inFurniture +
                           static_cast<int>(coverage.unaccounted.size());
        return sheet;
    }

private:
    static constexpr float kLeft = 50;
    static constexpr float kRight = 550;
    static constexpr float kTop = 40;
    static constexpr float kLine = 12;
    static constexpr float kColumn = 70;

    model::Rect line(float x0, float x1) {
        model::Rect const box{x0, m_y, x1, m_y + kLine - 2};
        m_y += kLine + 2;
        return box;
    }

    model::Table& startTable(model::TableKind kind, int columns) {
        model::Table table;
        table.id = "t" + std::to_string(m_sheet.tables.size() + 1);
        table.section = m_section;
        table.page = m_sheet.document.pages;
        table.kind = kind;
        table.columns = columns;
        table.box = {kLeft, m_y, kRight, m_y};
        m_sheet.tables.push_back(std::move(table));
        return m_sheet.tables.back();
    }

    void addRow(model::Table& table, std::vector<std::string> const& texts, bool header) {
        for (std::size_t column = 0; column < texts.size(); ++column) {
            if (texts[column].empty()) continue;
            model::Cell cell;
            cell.row = table.rows;
            cell.column = static_cast<int>(column);
            cell.text = texts[column];
            cell.header = header;
            cell.box = cellBox(static_cast<int>(column), m_y);
            table.cells.push_back(std::move(cell));
        }
        ++table.rows;
        m_y += kLine;
    }

    void finishTable(model::Table& table) {
        table.box.y1 = m_y;
        m_y += kLine;
    }

    static model::Rect cellBox(int column, float y) {
        float const x = kLeft + kColumn * static_cast<float>(column);
        return {x, y, x + kColumn, y + kLine};
    }

    model::Parameter parameterOf(RowText const& row, std::string const& tableCondition, model::Table const& table, float y) {
        model::Parameter p;
        p.id = "p" + std::to_string(m_sheet.parameters.size() + 1);
        p.section = m_section;
        p.table = table.id;
        p.kind = row.kind;
        p.name = row.name;
        p.symbol = row.symbol;
        p.canonical = row.canonical;
        p.condition = row.condition;
        p.tableCondition = tableCondition;
        p.variant = row.variant;
        p.unit = row.unit;
        auto const cell = quantity::parseCell({row.min, row.typ, row.max, row.unit});
        p.interval = cell.interval;
        auto value = [&](std::string const& text, std::optional<std::string> const& number, int column) -> std::optional<model::Value> {
            if (text.empty()) return std::nullopt;
            return model::Value{text, text, number, cellBox(column, y)};
        };
        p.min = value(row.min, cell.minValue, 3);
        p.typ = value(row.typ, cell.typValue, 4);
        p.max = value(row.max, cell.maxValue, 5);
        p.page = table.page;
        p.box = {kLeft, y, kRight, y + kLine};
        for (std::string const& part : {row.name, row.symbol, row.condition, row.min, row.typ, row.max, row.unit}) {
            if (part.empty()) continue;
            if (!p.printed.empty()) p.printed += " | ";
            p.printed += part;
        }
        return p;
    }

    model::Datasheet m_sheet;
    std::string m_section;
    float m_y = kTop;
};

}  // namespace standin::support

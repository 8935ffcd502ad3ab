#include "extractors/parameters/classify_table.h"

#include <gtest/gtest.h>

#include "hand_made_table.h"

namespace standin::parameters {
namespace {

using model::ParameterKind;

// A table of two limits at (300, 100) on a page with lines above it.
class Sheet {
public:
    Sheet() : m_table(handMade({{"Parameter", "Min", "Max", "Unit"}, {"Supply voltage", "2", "6", "V"}}, 1)) {
        for (model::Cell& cell : m_table.cells) cell.box = {cell.box.x0 + 300, cell.box.y0 + 100, cell.box.x1 + 300, cell.box.y1 + 100};
        m_table.box = {300, 100, 620, 124};
        m_page.page = 1;
        m_page.bodySize = 8;
    }
    Sheet& line(float x, float baseline, std::string const& words, bool bold) {
        model::Word word;
        word.text = words;
        word.box = {x, baseline - 7, x + 4 * static_cast<float>(words.size()), baseline + 2};
        model::TextLine line;
        line.firstWord = static_cast<std::uint32_t>(m_page.words.size());
        line.wordCount = 1;
        line.box = word.box;
        line.baseline = baseline;
        line.size = 8;
        line.bold = bold;
        m_page.words.push_back(word);
        m_page.lines.push_back(line);
        return *this;
    }
    Sheet& lead(std::string const& words) {
        m_table.lead = words;
        return *this;
    }
    [[nodiscard]] ParameterKind kindUnder(model::SectionKind sectionKind) const {
        model::Section section;
        section.kind = sectionKind;
        TableText const text(m_table, nullptr);
        return parameterKindOf(m_table, planColumns(m_table, text, segmentsOf(m_table, text).front(), nullptr), &section, &m_page);
    }

private:
    model::Table m_table;
    model::PageLayout m_page;
};

TEST(ClassifyTable, TheHeadingOverATableBesideAnotherIsItsOwn) {
    Sheet sheet;
    sheet.line(40, 78, "Absolute Maximum Ratings", true).line(300, 78, "Recommended Operating", true).line(300, 90, "Conditions", true).line(300, 97, "(Note 2)", false);
    EXPECT_EQ(sheet.kindUnder(model::SectionKind::Ratings), ParameterKind::OperatingCondition);
    EXPECT_EQ(Sheet().line(40, 78, "Recommended Operating Conditions", true).kindUnder(model::SectionKind::Ratings), ParameterKind::Rating);
    EXPECT_EQ(Sheet().line(300, 20, "Recommended Operating Conditions", true).kindUnder(model::SectionKind::Ratings), ParameterKind::Rating);
}

TEST(ClassifyTable, ALeadThatOpensWithAHeadingSaysTheKind) {
    EXPECT_EQ(Sheet().lead("ELECTRICAL CHARACTERISTICS (VCC = 15 V, TA = 0 to 70 °C)").kindUnder(model::SectionKind::Ratings), ParameterKind::Characteristic);
    EXPECT_EQ(Sheet().lead("MAXIMUM RATINGS (TA = 25 °C)").kindUnder(model::SectionKind::Other), ParameterKind::Rating);
    EXPECT_EQ(Sheet().lead("over recommended operating conditions (unless otherwise noted)").kindUnder(model::SectionKind::Characteristics), ParameterKind::Characteristic);
    EXPECT_EQ(Sheet().lead("At recommended operating conditions; GND = 0 V").kindUnder(model::SectionKind::Characteristics), ParameterKind::Characteristic);
}

TEST(ClassifyTable, ATableUnderCharacteristicsInRussianIsASpecification) {
    model::Table table = handMade({{"Напряжение питания", "3..18V"}, {"Входной ток", "0,1..0,3uA"}, {"Выходное напряжение", "0,3..1,6V"}}, 0);
    table.lead = "Основные характеристики (при +25°C):";
    TableText const text(table, nullptr);
    ColumnPlan const plan = planColumns(table, text, segmentsOf(table, text).front(), nullptr);
    EXPECT_EQ(classifyTable(table, text, plan, nullptr), model::TableKind::Specification);
    EXPECT_EQ(kindSaid(table.lead), ParameterKind::Characteristic);
}

TEST(ClassifyTable, RatingsMayHaveEmptyColumnsForConditionsAndTypicalValues) {
    auto const kind = [](std::vector<std::vector<std::string>> rows) {
        model::Table table = handMade(rows, 1);
        table.caption = "Table 1 Absolute maximum ratings";
        TableText const text(table, nullptr);
        return parameterKindOf(table, planColumns(table, text, segmentsOf(table, text).front(), nullptr), nullptr, nullptr);
    };
    std::vector<std::string> const head{"Parameter", "Symbol", "Min.", "Typ.", "Max.", "Unit", "Note or Test Condition"};
    EXPECT_EQ(kind({head, {"Voltage", "VI", "-42", "–", "45", "V", "–"}, {"Voltage", "VQ", "-1", "–", "40", "V", "–"}}), ParameterKind::Rating);
    EXPECT_EQ(kind({head, {"Voltage", "VQ", "4.9", "5", "5.1", "V", "IQ = 5 mA"}}), ParameterKind::Characteristic);
}

TEST(ClassifyTable, ValuesWithUnitAndLimitWordAreASpecification) {
    model::Table const table = handMade({{"Parameter", "Conditions", "Limits"}, {"Dropout voltage", "IO = 300 mA", "250 mV max"}, {"Ground current", "IO = 0", "55 µA typ"}}, 1);
    model::Section section;
    section.kind = model::SectionKind::Characteristics;
    TableText const text(table, nullptr);
    EXPECT_EQ(classifyTable(table, text, planColumns(table, text, segmentsOf(table, text).front(), nullptr), &section), model::TableKind::Specification);
}

TEST(ClassifyTable, LimitsOfASymbolForEachPartAreASpecificationButNoSelectionGuide) {
    auto const table = handMade({{"v2 Device", ">3 VDET (V)", "", ""}, {"", "Min", "Typ", "Max"}, {"ZV27", "2.6", "2.7", "2.8"}, {"ZV30", "2.9", "3.0", "3.1"}}, 2);
    TableText const text(table, nullptr);
    ColumnPlan const plan = planColumns(table, text, segmentsOf(table, text).front(), nullptr);
    model::Section section;
    section.kind = model::SectionKind::Characteristics;
    EXPECT_EQ(classifyTable(table, text, plan, &section), model::TableKind::Specification);
    section.kind = model::SectionKind::Selection;
    EXPECT_EQ(classifyTable(table, text, plan, &section), model::TableKind::Ordering);
}

}  // namespace
}  // namespace standin::parameters

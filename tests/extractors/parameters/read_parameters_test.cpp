// Whole tables to parameters: kinds, footnotes, owners, confidence.

#include "extractors/parameters/read_parameters.h"

#include <gtest/gtest.h>

#include "extractors/parameters/classify_table.h"
#include "extractors/parameters/footnotes.h"
#include "extractors/parameters/grading.h"
#include "extractors/parameters/rating_lists.h"
#include "hand_made_table.h"

namespace standin::parameters {
namespace {

Reading readOne(model::Table table) {
    std::vector<model::Table> tables{std::move(table)};
    return readParameters(tables, {}, {}, nullptr);
}

model::TableKind kindOf(model::Table table, model::SectionKind section = model::SectionKind::Other) {
    table.section = "s1";
    std::vector<model::Table> tables{std::move(table)};
    std::vector<model::Section> const sections{{.id = "s1", .kind = section, .title = "A heading", .level = 1, .page = 1, .box = {}}};
    (void)readParameters(tables, {}, sections, nullptr);
    return tables.front().kind;
}

// A page whose lines are the given texts, 12 points apart from `top`.
model::PageLayout pageOf(std::vector<std::string> const& lines, float top) {
    model::PageLayout page;
    page.page = 1;
    page.width = 600;
    page.height = 800;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        float const y = top + static_cast<float>(i) * 12;
        model::TextLine line;
        line.firstWord = static_cast<std::uint32_t>(page.words.size());
        line.box = {50, y, 300, y + 9};
        line.baseline = y + 8;
        line.size = 9;
        std::string word;
        float x = 50;
        for (char c : lines[i] + " ") {
            if (c != ' ') {
                word.push_back(c);
                continue;
            }
            if (word.empty()) continue;
            model::Word out;
            out.text = word;
            out.box = {x, y, x + 20, y + 9};
            out.baseline = y + 8;
            out.size = 9;
            page.words.push_back(out);
            x += 24;
            ++line.wordCount;
            word.clear();
        }
        page.lines.push_back(line);
    }
    return page;
}

TEST(ReadParameters, GivesIdsIntervalsAndKinds) {
    model::Table table = handMade(
        {{"Parameter", "Symbol", "Min", "Typ", "Max", "Unit"}, {"Supply current", "IDD", "", "3.0", "6.0", "µA"}, {"Release voltage", "VR", "4.00", "4.05", "4.10", "V"}}, 1);
    table.caption = "Table 3. Electrical characteristics";
    Reading const reading = readOne(table);
    ASSERT_EQ(reading.parameters.size(), 2U);
    model::Parameter const& first = reading.parameters[0];
    EXPECT_EQ(first.id, "p1");
    EXPECT_EQ(first.kind, model::ParameterKind::Characteristic);
    EXPECT_EQ(first.table, "t1");
    ASSERT_TRUE(first.interval);
    EXPECT_EQ(first.interval->hi, "0.0000060");
    EXPECT_EQ(first.interval->unit, "A");
    EXPECT_GE(first.confidence.score, 0.9);
    EXPECT_EQ(reading.parameters[1].max->value, "4.10");
}

TEST(ReadParameters, ClassifiesTables) {
    using enum model::TableKind;
    EXPECT_EQ(kindOf(handMade({{"Parameter", "Min", "Max", "Unit"}, {"Supply current", "1", "2", "A"}}, 1)), Specification);
    EXPECT_EQ(kindOf(handMade({{"Pin No.", "Name", "Function"}, {"1", "VDD", "Supply"}, {"2", "VSS", "Ground"}}, 1)), Pins);
    // numbers in two packages' columns are no values, wherever the table stands
    EXPECT_EQ(
        kindOf(
            handMade({{"SSOP20 Pin No.", "SOP16 Pin No.", "Pin Name", "Pin Type", "Pin Description"}, {"19", "16", "VCC", "POWER", "Supply"}, {"8", "1", "GND", "POWER", "Ground"}},
                     1),
            model::SectionKind::Package),
        Pins);
    EXPECT_EQ(kindOf(handMade({{"Part Number", "Detection voltage", "Package"}, {"XQ12A", "4.25 V", "SOT-23-6"}, {"XQ12B", "4.30 V", "SOT-23-6"}}, 1)), Ordering);
    EXPECT_EQ(kindOf(handMade({{"Symbol", ">2 Dimensions in millimeters", ""}, {"", "Min", "Max"}, {"A", "1.05", "1.25"}, {"b", "0.30", "0.50"}}, 2), model::SectionKind::Package),
              Package);
    EXPECT_EQ(kindOf(handMade({{"Revision", "Date", "Changes"}, {"1.0", "2019", "First issue"}}, 1), model::SectionKind::Revision), Revision);
    EXPECT_EQ(kindOf(handMade({{"EN1", "EN2", "Current"}, {"L", "L", "100"}, {"L", "H", "500"}}, 1)), Other);
    EXPECT_EQ(kindOf(handMade({{"Supply voltage range", "-0.3 to 7 V"}, {"Storage temperature range", "-55 to 125 °C"}}, 0), model::SectionKind::Ratings), Specification);
    EXPECT_EQ(kindOf(handMade({{"-10", "-4.5", "-3"}, {"0", "5", "10"}}, 0)), Other);
}

TEST(ReadParameters, KindFollowsTheTable) {
    EXPECT_EQ(kindSaid("Absolute Maximum Ratings"), model::ParameterKind::Rating);
    EXPECT_EQ(kindSaid("绝对最大额定值"), model::ParameterKind::Rating);
    EXPECT_EQ(kindSaid("Recommended operating conditions"), model::ParameterKind::OperatingCondition);
    EXPECT_EQ(kindSaid("Thermal information"), model::ParameterKind::Thermal);
    EXPECT_EQ(kindSaid("Maximum ratings and thermal characteristics"), model::ParameterKind::Rating);
    EXPECT_EQ(kindSaid("Switching characteristics"), model::ParameterKind::Timing);
    EXPECT_EQ(kindSaid("電気的特性"), model::ParameterKind::Characteristic);
    EXPECT_EQ(kindSaid("Typical application"), model::ParameterKind::Other);
}

TEST(ReadParameters, GoesOnOverAPageWithItsHeadAndConditions) {
    model::Table first = handMade({{"Parameter", "Symbol", "Min", "Typ", "Max", "Unit"}, {">6 DELAY TIMES"}, {"Overcharge", "tOC", "", "80", "200", "ms"}}, 1);
    first.lead = "(Ta=25°C unless otherwise specified)";
    model::Table second = handMade({{"Overdischarge", "tOD", "", "40", "100", "ms"}}, 0);
    second.id = "t2";
    second.page = 2;
    second.continues = "t1";
    std::vector<model::Table> tables{first, second};
    Reading const reading = readParameters(tables, {}, {}, nullptr);
    ASSERT_EQ(reading.parameters.size(), 2U);
    EXPECT_EQ(reading.parameters[1].name, "DELAY TIMES Overdischarge");
    EXPECT_EQ(reading.parameters[1].tableCondition, "Ta=25°C unless otherwise specified");
    EXPECT_EQ(reading.parameters[1].page, 2);
    EXPECT_EQ(tables[1].kind, model::TableKind::Specification);
}

TEST(ReadParameters, ALineBrokenOverAPageIsOneParameter) {
    model::Table first = handMade({{"Parameter", "Conditions", "Min", "Unit"}, {"Common-mode", "DC, VCM = 0 V,", "70", "dB"}}, 1);
    model::Table second = handMade({{"Parameter", "Conditions", "Min", "Unit"}, {"rejection ratio", "TA = 25 °C", "", ""}, {"Coupling", "f = 1 kHz", "60", "dB"}}, 1);
    second.id = "t2";
    second.page = 2;
    second.continues = "t1";
    std::vector<model::Table> tables{first, second};
    Reading const reading = readParameters(tables, {}, {}, nullptr);
    ASSERT_EQ(reading.parameters.size(), 2U);
    EXPECT_EQ(reading.parameters[0].name, "Common-mode rejection ratio");
    EXPECT_EQ(reading.parameters[0].page, 1);
    EXPECT_EQ(reading.parameters[1].name, "Coupling");
}

TEST(ReadParameters, MarksAreTakenOutAndResolved) {
    model::Table table =
        handMade({{"Parameter", "Symbol", "Typ", "Max", "Unit"}, {"Short-circuit delay (Note 2)", "tSC", "250", "400", "µs"}, {"Delay (1)", "tA", "5", "7", "ms"}}, 1);
    std::vector<model::Table> tables{table};
    std::vector<model::PageLayout> pages{pageOf({"Note 1: Measured with a pulse.", "Note 2: Guaranteed by design,", "not production tested."}, 100)};
    Reading const reading = readParameters(tables, pages, {}, nullptr);
    ASSERT_EQ(reading.parameters.size(), 2U);
    EXPECT_EQ(reading.parameters[0].name, "Short-circuit delay");
    ASSERT_EQ(reading.parameters[0].notes.size(), 1U);
    EXPECT_EQ(reading.parameters[0].notes[0], "Guaranteed by design, not production tested.");
    EXPECT_EQ(reading.parameters[0].grade, model::Grade::GD);
    EXPECT_EQ(reading.parameters[1].name, "Delay (1)") << "no note (1) is printed: it belongs to the name";
}

TEST(ReadParameters, OwnsItsWords) {
    model::PageLayout page = pageOf({"Parameter Max Unit", "Current 5 A"}, 10);
    model::Table table = handMade({{"Parameter", "Max", "Unit"}, {"Current", "5", "A"}}, 1);
    for (std::uint32_t i = 0; i < 6; ++i) table.cells[i].words = {i};
    std::vector<model::Table> tables{table};
    std::vector<model::PageLayout> pages{page};
    Reading const reading = readParameters(tables, pages, {}, nullptr);
    ASSERT_EQ(reading.parameters.size(), 1U);
    for (std::size_t i = 0; i < 3; ++i) EXPECT_EQ(pages[0].words[i].owner, model::Owner::Table);
    for (std::size_t i = 3; i < 6; ++i) EXPECT_EQ(pages[0].words[i].owner, model::Owner::Parameter);
    EXPECT_EQ(reading.parameters[0].printed, "Current | 5 | A");
}

TEST(ReadParameters, GradesFollowColumnsAndConditions) {
    model::Parameter parameter;
    parameter.kind = model::ParameterKind::Characteristic;
    parameter.typ = model::Value{.text = "3", .printed = {}, .value = {}, .box = {}};
    EXPECT_EQ(gradeOf(parameter, false), model::Grade::T);
    EXPECT_EQ(gradeOf(parameter, true), model::Grade::N);
    parameter.max = parameter.typ;
    EXPECT_EQ(gradeOf(parameter, false), model::Grade::G);
    parameter.tableCondition = "Ta=25°C unless otherwise specified";
    EXPECT_EQ(gradeOf(parameter, false), model::Grade::G25);
    parameter.condition = "Ta = -40°C to 85°C";
    EXPECT_EQ(gradeOf(parameter, false), model::Grade::G);
    parameter.kind = model::ParameterKind::Rating;
    EXPECT_EQ(gradeOf(parameter, false), model::Grade::A);
}

TEST(ReadParameters, DoubtLowersConfidence) {
    auto const scoreOf = [](model::Table const& table) { return readOne(table).parameters.at(0).confidence.score; };
    auto const sure = handMade({{"Parameter", "Symbol", "Min", "Typ", "Max", "Unit"}, {"Supply current", "IDD", "1", "2", "3", "µA"}}, 1);
    EXPECT_GE(scoreOf(sure), 0.9);
    auto unsureGrid = sure;
    unsureGrid.confidence = 0.4;
    EXPECT_LT(scoreOf(unsureGrid), 0.9);
    EXPECT_LT(scoreOf(handMade({{"Parameter", "Min", "Max", "Unit"}, {"Supply current", "1", "2", "mA"}, {"Input voltage", "Output voltage range of the part", "2", "V"}}, 1)),
              0.9);
    auto aligned = sure;
    aligned.confidence = 0.65;
    aligned.evidence = {.ruledRows = false, .ruledColumns = false, .aligned = true, .headWords = true, .leaders = false};
    EXPECT_GE(scoreOf(aligned), 0.9);
    EXPECT_LT(scoreOf(handMade({{"Parameter", "Symbol", "Min", "Typ", "Max", "Unit"}, {"Supply current", "IDD", "9", "2", "3", "µA"}}, 1)), 0.9);
    EXPECT_LT(scoreOf(handMade({{"Parameter", "Symbol", "Min", "Typ", "Max", "Unit"}, {"Supply current", "IDD", "1", "2", "3", ""}}, 1)), 0.9);
    EXPECT_LT(scoreOf(handMade({{"Parameter", "Symbol", "Min", "Typ", "Max", "Unit"}, {"Duration", "tS", "", "", "Continuous", ""}, {"Delay", "tD", "", "2", "3", "s"}}, 1)), 0.9);
}

TEST(ReadParameters, NothingInNothingOut) {
    std::vector<model::Table> none;
    EXPECT_TRUE(readParameters(none, {}, {}, nullptr).parameters.empty());
    model::Table hollow;
    hollow.rows = 3;
    hollow.columns = 4;
    EXPECT_TRUE(readOne(hollow).parameters.empty());
}

TEST(Footnotes, LeadsOfNotes) {
    EXPECT_EQ(footnoteLead("Note 3: Pulsed.").key, "3");
    EXPECT_EQ(footnoteLead("Note 3: Pulsed.").text, "Pulsed.");
    EXPECT_EQ(footnoteLead("(1) Stress only.").key, "1");
    EXPECT_EQ(footnoteLead("*2 Mounted.").key, "2");
    EXPECT_EQ(footnoteLead("* Mounted.").key, "*");
    EXPECT_EQ(footnoteLead("1. All values.").key, "1");
    EXPECT_EQ(footnoteLead("注1：脉冲测试").text, "脉冲测试");
    EXPECT_EQ(footnoteLead("The device is new.").key, "");
    EXPECT_EQ(footnoteLead("10 kΩ in series").key, "");
    EXPECT_EQ(footnoteLead("3.3 V supply").key, "");
}

TEST(RatingLists, TakesEntriesApart) {
    ListEntry entry = readListEntry("·Input supply voltage(VDD)：-0.3V～8V");
    EXPECT_EQ(entry.name, "Input supply voltage");
    EXPECT_EQ(entry.symbol, "VDD");
    EXPECT_EQ(entry.value, "-0.3V~8V");
    entry = readListEntry("Storage temperature ........ -65 °C to 150 °C");
    EXPECT_EQ(entry.name, "Storage temperature");
    EXPECT_EQ(entry.value, "-65 °C to 150 °C");
    entry = readListEntry("• Output short-circuit duration: Continuous");
    EXPECT_EQ(entry.value, "Continuous");
    entry = readListEntry("• Lead temp. (Soldering, 10sec): 260 °C");
    EXPECT_EQ(entry.name, "Lead temp.");
    EXPECT_EQ(entry.condition, "Soldering, 10sec");
    entry = readListEntry("Junction temperature 150 °C");
    EXPECT_EQ(entry.name, "Junction temperature");
    entry = readListEntry("PROG：-0.3V～VCC+0.3V");
    EXPECT_EQ(entry.name, "PROG");
    EXPECT_EQ(entry.value, "-0.3V~VCC+0.3V");
    EXPECT_EQ(readListEntry("PROG 5 V").value, "") << "no colon, no word";
    EXPECT_EQ(readListEntry("Stresses beyond these limits may damage the device.").value, "");
    EXPECT_EQ(readListEntry("RL = 2.0 k").value, "");
    EXPECT_EQ(readListEntry("").value, "");
}

TEST(RatingLists, ReadsTheLinesOfARatingsSection) {
    std::vector<model::PageLayout> pages{
        pageOf({"Absolute maximum ratings", "• Supply voltage: -0.3 V to 8 V", "• Storage temperature: -40", "°C to 125 °C", "Prose that ends here."}, 100)};
    std::vector<model::Section> const sections{
        {.id = "s1", .kind = model::SectionKind::Ratings, .title = "Absolute maximum ratings", .level = 1, .page = 1, .box = {50, 99, 300, 110}}};
    std::vector<model::Table> none;
    Reading const reading = readParameters(none, pages, sections, nullptr);
    ASSERT_EQ(reading.parameters.size(), 2U);
    EXPECT_EQ(reading.parameters[0].name, "Supply voltage");
    EXPECT_EQ(reading.parameters[0].min->text, "-0.3");
    EXPECT_EQ(reading.parameters[0].max->text, "8");
    EXPECT_EQ(reading.parameters[0].unit, "V");
    EXPECT_EQ(reading.parameters[0].kind, model::ParameterKind::Rating);
    EXPECT_EQ(reading.parameters[1].min->text, "-40");
    EXPECT_EQ(reading.parameters[1].max->text, "125");
    EXPECT_LT(reading.parameters[0].confidence.score, 0.9);
}

// Reading order goes over to the left column and its next heading before the list in the right one has ended.
TEST(RatingLists, AListGoesOnInItsColumn) {
    model::PageLayout page = pageOf({"Features", "• Accurate to 1 %", "Ratings", "• Supply voltage: 8 V", "• BAT voltage: 7 V", "• Highest input up to 9 V", "Uses",
                                     "• Mobile power 5 V", "• Storage temperature: -40 °C to 125 °C", "• Pin temperature: 260 °C"},
                                    100);
    auto place = [&](std::size_t i, float x, float y) {
        model::TextLine& line = page.lines[i];
        line.box = {x, y, x + 100, y + 9};
        line.baseline = y + 8;
        for (std::uint32_t w = line.firstWord; w < line.firstWord + line.wordCount; ++w) page.words[w].box = {x, y, x + 20, y + 9};
    };
    for (std::size_t i : {0U, 1U}) place(i, 50, 100 + 12 * static_cast<float>(i));
    for (std::size_t i : {2U, 3U, 4U}) place(i, 300, 100 + 12 * static_cast<float>(i - 2));
    for (std::size_t i : {5U, 6U, 7U}) place(i, 50, 130 + 12 * static_cast<float>(i - 5));
    for (std::size_t i : {8U, 9U}) place(i, 300, 136 + 12 * static_cast<float>(i - 8));
    std::vector<model::PageLayout> pages{page};
    using model::SectionKind;
    std::vector<model::Section> const sections{
        {.id = "s1", .kind = SectionKind::Features, .title = "Features", .level = 1, .page = 1, .box = page.lines[0].box},
        {.id = "s2", .kind = SectionKind::Ratings, .title = "Ratings", .level = 1, .page = 1, .box = page.lines[2].box},
        {.id = "s3", .kind = SectionKind::Other, .title = "Uses", .level = 1, .page = 1, .box = page.lines[6].box},
    };
    std::vector<model::Table> none;
    std::vector<std::string> names;
    for (model::Parameter const& parameter : readParameters(none, pages, sections, nullptr).parameters) names.push_back(parameter.section + " " + parameter.name);
    EXPECT_EQ(names, (std::vector<std::string>{"s2 Supply voltage", "s2 BAT voltage", "s2 Storage temperature", "s2 Pin temperature"}));
}

TEST(ReadParameters, CaptionsOfSeveralPartsSayWhoseTheirTablesAre) {
    auto const table = [](char const* id, char const* caption, char const* typ) {
        model::Table out = handMade({{"Parameter", "Symbol", "Typ", "Unit"}, {"Output voltage", "VO", typ, "V"}}, 1);
        out.id = id;
        out.caption = caption;
        return out;
    };
    std::vector<model::Table> tables = {table("t1", "Table 3: Electrical characteristics of XQ7805 (TJ = 25 °C)", "5"),
                                        table("t2", "Table 4: Electrical characteristics of XQ7812.", "12")};
    Reading const two = readParameters(tables, {}, {}, nullptr);
    ASSERT_EQ(two.parameters.size(), 2U);
    EXPECT_EQ(two.parameters[0].variant, "XQ7805");
    EXPECT_EQ(two.parameters[1].variant, "XQ7812");
    // a standard is none of the series
    tables.push_back(table("t3", "Table 5: Thermal data for JESD51-7", "3"));
    Reading const three = readParameters(tables, {}, {}, nullptr);
    ASSERT_EQ(three.parameters.size(), 3U);
    EXPECT_EQ(three.parameters[1].variant, "XQ7812");
    EXPECT_EQ(three.parameters[2].variant, "");
    tables.erase(tables.begin() + 1);
    for (auto const& parameter : readParameters(tables, {}, {}, nullptr).parameters) EXPECT_EQ(parameter.variant, "");
    // one part is the whole sheet's
    tables.pop_back();
    Reading const one = readParameters(tables, {}, {}, nullptr);
    ASSERT_EQ(one.parameters.size(), 1U);
    EXPECT_EQ(one.parameters[0].variant, "");
}

}  // namespace
}  // namespace standin::parameters

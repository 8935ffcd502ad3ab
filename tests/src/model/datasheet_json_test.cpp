#include "model/datasheet_json.h"

#include <gtest/gtest.h>

namespace standin::model {
namespace {

Datasheet sample() {
    Datasheet d;
    d.document.file = "ref.pdf";
    d.document.sha256 = "00ff";
    d.document.bytes = 12345;
    d.document.pages = 2;
    d.document.textLayer = TextLayer::Partial;
    d.document.languages = {"en", "zh"};
    d.document.partNumbers = {"XK104"};
    d.document.warnings = {"page 2 has no text layer"};
    d.document.corrections = {{"0f1e2d3c4b5a", CorrectionOutcome::Ambiguous, "p1", 1, {1, 2, 3, 4}, "Supply voltage VDD", "max", "VSS+1Z", "VSS+12", "Ida Brandt", "2031-05-02", "worn print"}};
    d.sections = {{"s1", SectionKind::Ratings, "5 Absolute maximum ratings", 1, 1, {72, 90, 300, 104}}};
    Table t;
    t.id = "t1";
    t.section = "s1";
    t.page = 1;
    t.kind = TableKind::Specification;
    t.rows = 2;
    t.columns = 3;
    t.headRows = 1;
    t.confidence = 0.75;
    t.reasons = {"ruled on all sides"};
    Cell c;
    c.row = 1;
    c.columnSpan = 2;
    c.text = "VDD \"supply\"";
    c.leader = "........";
    c.box = {72.25F, 120, 200.5F, 130};
    t.cells = {c};
    d.tables = {t};
    Parameter p;
    p.id = "p1";
    p.table = "t1";
    p.kind = ParameterKind::Rating;
    p.name = "Supply voltage";
    p.symbol = "VDD";
    p.canonical = "amr-vdd";
    p.min = Value{"-0.3", "\u22120.3", "-0.3", {1, 2, 3, 4}};
    p.max = Value{"VSS+12", "VSS+12", std::nullopt, {}};
    p.unit = "V";
    p.interval = Interval{"-0.3", std::nullopt, "12", false, true, "V", "VSS", ""};
    p.grade = Grade::A;
    p.notes = {"at 25 \u00b0C"};
    p.confidence = {0.9, {"own column for each value"}};
    p.corrected = {"max"};
    p.page = 1;
    p.printed = "Supply voltage | VDD | \u22120.3 | VSS+12 | V";
    d.parameters = {p};
    d.parameters.back().recognised = true;
    d.pins = {{"1", "CO", "gate of the charge FET", "", 1, {}}};
    d.pins.back().recognised = true;
    d.packages = {{"SOT-23-6", "SOT-23-6", 6, 1, {}}, {"bare die", "", std::nullopt, 2, {}}};
    d.ordering = {{"XK104-AA", {{"Detection", "4.280 V"}, {"0 V charging", "inhibited"}}, "t1", 1, {}}};
    d.features = {{"zero-volt-charging", "inhibited", 1, {}, "0 V charging: inhibited"}};
    d.text = {{"x1", "s1", "Do not exceed.", {{1, {10, 20, 30, 40}}, {2, {10, 20, 30, 40}}}}};
    d.text.back().recognised = true;
    d.figures = {{"f1", "s1", "Figure 1", 2, {0, 0, 10, 10}, FigureReading::Vector, {{"R1", 2, {}}}, "beef"}};
    d.furniture = {{Furniture::Kind::PageNumber, "1", {{1, {}}}}};
    d.coverage.numbers = 7;
    d.coverage.inParameters = 3;
    d.coverage.unaccounted = {{"4.2", 2, {}}};
    d.coverage.pagesWithoutText = {2};
    d.coverage.recognised = {{"Delay 4.5 ms", 1, {10, 20, 30, 40}}};
    d.coverage.unrecognised = {{1, {10, 50, 30, 60}}};
    return d;
}

TEST(DatasheetJson, WhatIsWrittenIsReadAgain) {
    auto const again = datasheetFromJson(toJson(sample()), "ref.json");
    ASSERT_TRUE(again.has_value());
    EXPECT_EQ(*again, sample());
}

TEST(DatasheetJson, CborHoldsTheSame) {
    auto const again = datasheetFromCbor(toCbor(sample()), "ref.cbor");
    ASSERT_TRUE(again.has_value());
    EXPECT_EQ(*again, sample());
}

TEST(DatasheetJson, ForeignTextsAreErrors) {
    for (auto const* text : {"", "{", "[]", "{}", "{\"schema\": \"other/1\"}", "%PDF-1.4"}) {
        auto const result = datasheetFromJson(text, "x.json");
        ASSERT_FALSE(result.has_value()) << text;
        EXPECT_EQ(result.error().kind, ErrorKind::Unsupported);
        EXPECT_EQ(result.error().file, "x.json");
    }
}

TEST(DatasheetJson, DeepNestingIsAnErrorAndNoCrash) {
    EXPECT_FALSE(datasheetFromJson(std::string(1'000'000, '['), "x.json").has_value());
    EXPECT_FALSE(datasheetFromCbor(std::vector<std::uint8_t>(1'000'000, 0x81), "x.cbor").has_value());
}

TEST(DatasheetJson, MistypedFieldsGiveDefaults) {
    auto const result = datasheetFromJson(R"({"schema": "standin.datasheet/1", "document": {"pages": "two"}, "parameters": [{"name": 4, "box": [1, 2]}, 7]})", "x.json");
    ASSERT_TRUE(result.has_value());
    EXPECT_EQ(result->document.pages, 0);
    ASSERT_EQ(result->parameters.size(), 2U);
    EXPECT_EQ(result->parameters[0].name, "");
    EXPECT_EQ(result->parameters[0].box, Rect{});
}

TEST(DatasheetJson, BadUtf8IsWrittenAsReplacement) {
    Datasheet d;
    d.document.title = "V\xff";
    EXPECT_NE(toJson(d).find("V\uFFFD"), std::string::npos);
}

}  // namespace
}  // namespace standin::model

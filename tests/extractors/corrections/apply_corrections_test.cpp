#include "extractors/corrections/apply_corrections.h"

#include <numeric>
#include <string>

#include <gtest/gtest.h>

#include "support/datasheet_builder.h"

namespace standin::corrections {
namespace {

using model::CorrectionOutcome;

constexpr char const* kHash = "5d0c41e97b22aa00";

vocabulary::Vocabulary const& vocabulary() {
    static auto const built = vocabulary::Vocabulary::builtIn();
    return *built;
}

// A protection sheet whose first maximum was misread: 4.305 with a letter in it.
model::Datasheet misread() {
    support::SheetBuilder builder;
    builder.section(model::SectionKind::Characteristics, "Electrical characteristics");
    builder.sentence("The part protects a single lithium-ion cell: battery protection.");
    builder.specification("Ta = 25 °C", {{.name = "Overcharge detection voltage", .symbol = "VCU", .condition = "Ta = 25 °C", .min = "4.255", .typ = "4.280", .max = "4.3O5", .unit = "V"},
                                         {.name = "Overcharge detection voltage", .symbol = "VCU", .condition = "Ta = 0 to 60 °C", .min = "4.250", .typ = "4.280", .max = "4.310", .unit = "V"},
                                         {.name = "Overdischarge detection voltage", .symbol = "VDL", .min = "2.85", .typ = "2.90", .max = "2.95", .unit = "V"}});
    auto sheet = builder.build();
    sheet.document.sha256 = std::string(kHash) + std::string(48, '0');
    return sheet;
}

Entry entryFor(std::vector<FieldText> row, std::vector<FieldText> texts, Action action = Action::Set) {
    Entry entry;
    entry.file = "mine.json";
    entry.number = 1;
    entry.document = kHash;
    entry.page = 1;
    entry.row = std::move(row);
    entry.texts = std::move(texts);
    entry.action = action;
    entry.by = "I. Brandt";
    entry.date = "2031-05-02";
    entry.why = "a stain";
    return entry;
}

int owned(model::Coverage const& c) { return c.inParameters + c.inTables + c.inText + c.inFigures + c.inFurniture + static_cast<int>(c.unaccounted.size()); }

model::Datasheet corrected(model::Datasheet sheet, std::vector<Entry> const& entries) {
    auto const done = applyCorrections(entries, std::span{&sheet, 1}, vocabulary());
    EXPECT_TRUE(done) << done.error().message;
    return sheet;
}

Entry maximum() { return entryFor({{Field::Symbol, "VCU"}, {Field::Max, "4.3O5"}}, {{Field::Max, "4.305"}}); }

TEST(ApplyCorrections, PutsAValueRightAndSaysWho) {
    auto const before = misread();
    ASSERT_NE(before.parameters[0].max->value, "4.305");
    auto const sheet = corrected(before, {maximum()});
    auto const& parameter = sheet.parameters[0];
    EXPECT_EQ(parameter.max->text, "4.305");
    EXPECT_EQ(parameter.max->value, "4.305");
    EXPECT_EQ(parameter.max->box, before.parameters[0].max->box);
    ASSERT_TRUE(parameter.interval);
    EXPECT_EQ(parameter.interval->hi, "4.305");
    EXPECT_EQ(parameter.corrected, std::vector<std::string>{"max"});
    EXPECT_EQ(parameter.confidence.reasons, std::vector<std::string>{"corrected by I. Brandt, 2031-05-02"});
    ASSERT_EQ(sheet.document.corrections.size(), 1U);
    auto const& told = sheet.document.corrections[0];
    EXPECT_EQ(told.outcome, CorrectionOutcome::Applied);
    EXPECT_EQ(told.parameter, parameter.id);
    EXPECT_EQ(told.row, "Overcharge detection voltage VCU");
    EXPECT_EQ(told.field, "max");
    EXPECT_EQ(told.read, "4.3O5");
    EXPECT_EQ(told.corrected, "4.305");
    EXPECT_EQ(told.by, "I. Brandt");
    // the misread letters are gone from the row and from its cell as well
    EXPECT_EQ(parameter.printed.find("4.3O5"), std::string::npos);
    for (auto const& cell : sheet.tables[0].cells) EXPECT_NE(cell.text, "4.3O5");
    EXPECT_EQ(sheet.parameters[1], before.parameters[1]);
    EXPECT_EQ(sheet.parameters[2], before.parameters[2]);
}

// Values in wrong columns were read well: what is printed stays as it is.
TEST(ApplyCorrections, MovesAValueToAnotherColumn) {
    auto const before = misread();
    auto const sheet = corrected(before, {entryFor({{Field::Symbol, "VDL"}}, {{Field::Min, ""}, {Field::Typ, "2.85"}})});
    EXPECT_FALSE(sheet.parameters[2].min);
    EXPECT_EQ(sheet.parameters[2].typ->text, "2.85");
    EXPECT_EQ(sheet.parameters[2].interval->lo, std::nullopt);
    EXPECT_EQ(sheet.parameters[2].printed, before.parameters[2].printed);
    EXPECT_EQ(sheet.tables, before.tables);
    EXPECT_EQ(sheet.document.corrections.size(), 2U);
}

TEST(ApplyCorrections, FindsTheRowByItsPlaceWhereItReadsOtherwise) {
    auto entry = entryFor({{Field::Name, "Overcharge detection voltoge"}, {Field::Max, "4.31O"}}, {{Field::Max, "4.315"}});
    EXPECT_EQ(corrected(misread(), {entry}).document.corrections[0].outcome, CorrectionOutcome::NotFound);
    auto const place = misread().parameters[1].max->box;
    entry.box = place.grown(1);
    auto const sheet = corrected(misread(), {entry});
    EXPECT_EQ(sheet.document.corrections[0].outcome, CorrectionOutcome::Applied);
    EXPECT_EQ(sheet.parameters[1].max->text, "4.315");
}

TEST(ApplyCorrections, IsNotNeededWhereTheProgramReadsItSo) {
    auto sheet = misread();
    sheet.parameters[0].max = model::Value{"4.305", "4.305", "4.305", {}};
    auto const after = corrected(sheet, {maximum()});
    EXPECT_EQ(after.document.corrections[0].outcome, CorrectionOutcome::NotNeeded);
    EXPECT_EQ(after.parameters, sheet.parameters);
}

TEST(ApplyCorrections, ChangesNothingWhereTheRowIsNotFoundOrNotAlone) {
    auto const before = misread();
    auto const sheet = corrected(before, {entryFor({{Field::Symbol, "VXX"}}, {{Field::Max, "1"}}), entryFor({{Field::Symbol, "VCU"}}, {{Field::Unit, "mV"}})});
    ASSERT_EQ(sheet.document.corrections.size(), 2U);
    EXPECT_EQ(sheet.document.corrections[0].outcome, CorrectionOutcome::NotFound);
    EXPECT_EQ(sheet.document.corrections[0].row, "VXX");
    EXPECT_EQ(sheet.document.corrections[1].outcome, CorrectionOutcome::Ambiguous);
    EXPECT_EQ(sheet.parameters, before.parameters);
}

TEST(ApplyCorrections, WorksOutNameGradeAndUnitAgain) {
    auto sheet = misread();
    sheet.parameters[2].name = "Overdlscharqe detectlon";
    sheet.parameters[2].symbol = "";
    sheet.parameters[2].canonical = "";
    auto const after = corrected(sheet, {entryFor({{Field::Min, "2.85"}}, {{Field::Name, "Overdischarge detection voltage"}, {Field::Unit, "mV"}, {Field::Kind, "rating"}})});
    EXPECT_EQ(after.parameters[2].interval->lo, "0.00285");
    EXPECT_EQ(after.parameters[2].grade, model::Grade::A);
    auto const named = corrected(sheet, {entryFor({{Field::Min, "2.85"}}, {{Field::Name, "Overdischarge detection voltage"}, {Field::Symbol, "VDL"}})});
    EXPECT_EQ(named.parameters[2].canonical, "overdischarge-detect-voltage");
}

TEST(ApplyCorrections, TakesARowOutAndKeepsItsText) {
    auto const before = misread();
    auto const sheet = corrected(before, {entryFor({{Field::Symbol, "VDL"}}, {}, Action::Remove)});
    EXPECT_EQ(sheet.parameters.size(), 2U);
    EXPECT_EQ(sheet.document.corrections[0].field, "parameter");
    EXPECT_EQ(sheet.document.corrections[0].read, before.parameters[2].printed);
    EXPECT_EQ(sheet.tables, before.tables);  // compared as a row of its table from now on
    EXPECT_LT(sheet.coverage.inParameters, before.coverage.inParameters);
    EXPECT_EQ(owned(sheet.coverage), sheet.coverage.numbers);

    auto list = before;
    list.parameters[2].table.clear();
    auto const kept = corrected(list, {entryFor({{Field::Symbol, "VDL"}}, {}, Action::Remove)});
    ASSERT_EQ(kept.text.size(), before.text.size() + 1);
    EXPECT_EQ(kept.text.back().text, before.parameters[2].printed);
    EXPECT_EQ(owned(kept.coverage), kept.coverage.numbers);
}

TEST(ApplyCorrections, AddsARowAtItsPlace) {
    auto before = misread();
    before.coverage.unaccounted.push_back({"0.3", 1, {100, 12, 110, 18}});
    ++before.coverage.numbers;
    auto entry = entryFor({}, {{Field::Name, "Overcharge hysteresis voltage"}, {Field::Symbol, "VHC"}, {Field::Typ, "0.3"}, {Field::Unit, "V"}}, Action::Add);
    entry.box = model::Rect{50, 10, 550, 20};
    auto const sheet = corrected(before, {entry});
    ASSERT_EQ(sheet.parameters.size(), 4U);
    auto const& added = sheet.parameters.front();
    EXPECT_EQ(added.symbol, "VHC");
    EXPECT_EQ(added.interval->typ, "0.3");
    EXPECT_EQ(added.grade, model::Grade::T);
    EXPECT_EQ(added.corrected, std::vector<std::string>{"parameter"});
    EXPECT_EQ(sheet.document.corrections[0].parameter, added.id);
    EXPECT_TRUE(sheet.coverage.unaccounted.empty());
    EXPECT_EQ(owned(sheet.coverage), sheet.coverage.numbers);

    auto const again = corrected(sheet, {entry});
    EXPECT_EQ(again, sheet);
}

// A sheet that was corrected, written as JSON and read again.
TEST(ApplyCorrections, SecondTimeChangesNothing) {
    std::vector<Entry> const entries{maximum(), entryFor({{Field::Symbol, "VDL"}}, {}, Action::Remove), entryFor({{Field::Symbol, "VXX"}}, {{Field::Max, "1"}})};
    auto const once = corrected(misread(), entries);
    EXPECT_EQ(corrected(once, entries), once);
}

TEST(ApplyCorrections, RefusesContradictions) {
    auto other = maximum();
    other.number = 2;
    other.texts = {{Field::Max, "4.350"}};
    auto sheet = misread();
    std::vector<Entry> const two{maximum(), other};
    auto const done = applyCorrections(two, std::span{&sheet, 1}, vocabulary());
    ASSERT_FALSE(done);
    EXPECT_EQ(done.error().kind, model::ErrorKind::Usage);
    EXPECT_NE(done.error().message.find("correction 2 contradicts correction 1"), std::string::npos) << done.error().message;

    auto removal = entryFor({{Field::Symbol, "VCU"}, {Field::Max, "4.3O5"}}, {}, Action::Remove);
    std::vector<Entry> const both{maximum(), removal};
    EXPECT_FALSE(applyCorrections(both, std::span{&sheet, 1}, vocabulary()));

    std::vector<Entry> const additions{entryFor({}, {{Field::Name, "Gain"}, {Field::Typ, "3"}}, Action::Add), entryFor({}, {{Field::Name, "Gain"}, {Field::Typ, "4"}}, Action::Add)};
    EXPECT_FALSE(applyCorrections(additions, std::span{&sheet, 1}, vocabulary()));

    auto same = maximum();
    same.by = "T. Okoro";
    std::vector<Entry> const agreeing{maximum(), same};
    EXPECT_TRUE(applyCorrections(agreeing, std::span{&sheet, 1}, vocabulary()));
    EXPECT_EQ(sheet.document.corrections.size(), 2U);
}

TEST(ApplyCorrections, TellsOfEntriesForOtherDocuments) {
    auto stranger = maximum();
    stranger.document = "00112233445566";
    auto const sheet = corrected(misread(), {stranger, maximum()});
    EXPECT_EQ(sheet.document.warnings, std::vector<std::string>{"mine.json: a correction is for another document than this: not used"});
    EXPECT_EQ(sheet.document.corrections.size(), 1U);
}

}  // namespace
}  // namespace standin::corrections

#include "report/datasheet_report.h"

#include <gtest/gtest.h>

#include "text/visible.h"

namespace standin::report {
namespace {

model::Datasheet sheet() {
    model::Datasheet sheet;
    sheet.document.file = "a.pdf";
    sheet.document.pages = 2;
    sheet.document.partNumbers = {"XK104"};
    sheet.document.warnings = {"no text layer on page 2: what is printed there was not read"};
    sheet.sections = {{"s1", model::SectionKind::Ratings, "5 Absolute maximum ratings", 1, 1, {}}};
    model::Parameter p;
    p.name = "Supply voltage, measured between the two supply pins at the package";
    p.symbol = "VDD";
    p.condition = "Ta = 25 °C";
    p.max = model::Value{"6.0", "6.0", "6.0", {}};
    p.unit = "V";
    p.page = 1;
    sheet.parameters = {p};
    sheet.pins = {{"1", "CO", "gate of the charge FET", "", 1, {}}};
    sheet.ordering = {{"XK104-AA", {{"Detection", "4.280 V"}}, "t1", 1, {}}};
    sheet.features = {{"zero-volt-charging", "inhibited", 1, {}, ""}};
    sheet.coverage.numbers = 9;
    sheet.coverage.inParameters = 9;
    return sheet;
}

TEST(DatasheetText, SaysWhatWasUnderstood) {
    auto const text = datasheetText(sheet());
    for (auto const* part : {"XK104, 2 pages", "Warning    no text layer on page 2", "5 Absolute maximum ratings", "– / – / 6.0 V (Ta = 25 °C)", "gate of the charge FET",
                             "Detection: 4.280 V", "zero-volt-charging: inhibited", "9 numbers: 9 in parameters", "0 unaccounted for"}) {
        EXPECT_NE(text.find(part), std::string::npos) << part << "\n" << text;
    }
}

TEST(DatasheetText, MarksRowsThatMayBeMisread) {
    auto sure = sheet();
    sure.parameters[0].confidence = {0.9, {"no symbol printed"}};
    EXPECT_EQ(datasheetText(sure).find("may be misread"), std::string::npos);
    sure.parameters[0].confidence = {0.6, {"no column titles", "no unit"}};
    EXPECT_NE(datasheetText(sure).find("may be misread: no column titles; no unit"), std::string::npos);
}

TEST(DatasheetText, EveryLineFitsIntoEightyColumns) {
    auto const text = datasheetText(sheet());
    std::size_t begin = 0;
    while (begin < text.size()) {
        auto const end = text.find('\n', begin);
        EXPECT_LE(text::columnWidth(text.substr(begin, end - begin)), 80) << text.substr(begin, end - begin);
        begin = end + 1;
    }
}

}  // namespace
}  // namespace standin::report

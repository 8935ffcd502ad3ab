// Reading over the demo data, end to end: the account of numbers and sentences
// holds, threads change nothing, errors name the file.
#include "extractors/read_datasheet.h"

#include <algorithm>
#include <array>
#include <atomic>
#include <fstream>
#include <map>
#include <mutex>
#include <set>
#include <thread>

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "extractors/poppler/page_picture.h"
#include "extractors/recognition/recognise.h"
#include "model/datasheet_json.h"
#include "support/pdf_writer.h"
#include "support/temporary_folder.h"

namespace standin::reading {
namespace {

vocabulary::Vocabulary const& builtIn() {
    static auto const vocabulary = vocabulary::Vocabulary::builtIn();
    return vocabulary.value();
}

std::string data(char const* name) { return fmt::format("{}/{}", STANDIN_TESTDATA, name); }

class EverySheet : public ::testing::TestWithParam<char const*> {};

TEST_P(EverySheet, AccountsForEveryNumber) {
    auto const sheet = readDatasheet(data(GetParam()), {}, builtIn());
    ASSERT_TRUE(sheet.has_value()) << sheet.error().message;
    auto const& c = sheet->coverage;
    EXPECT_GT(c.numbers, 0);
    EXPECT_EQ(c.numbers, c.inParameters + c.inTables + c.inText + c.inFigures + c.inFurniture + static_cast<int>(c.unaccounted.size()));
    EXPECT_TRUE(c.unaccounted.empty());
    EXPECT_EQ(c.sentences, static_cast<int>(sheet->text.size()));
}

TEST_P(EverySheet, IsTheSameOnOneThreadAndOnThree) {
    ReadOptions one;
    one.threads = 1;
    ReadOptions three;
    three.threads = 3;
    auto const a = readDatasheet(data(GetParam()), one, builtIn());
    auto const b = readDatasheet(data(GetParam()), three, builtIn());
    ASSERT_TRUE(a.has_value() && b.has_value());
    EXPECT_EQ(model::toJson(*a), model::toJson(*b));
}

INSTANTIATE_TEST_SUITE_P(Testdata, EverySheet,
                         ::testing::Values("protection/reference.pdf", "protection/candidate.pdf", "protection-zh/reference-zh.pdf", "regulator/reference.pdf", "regulator/candidate.pdf",
                                         "mosfet/revision-b.pdf", "features/plain.pdf", "features/two-columns.pdf", "features/side-by-side-tables.pdf", "features/rotated-page.pdf",
                                         "features/watermark.pdf", "features/hidden-text.pdf"),
                         [](auto const& test) { return fmt::format("s{}", test.index); });

TEST(ReadDatasheet, KeepsWhatItWasMadeFromWhereWanted) {
    ReadTrace trace;
    auto const sheet = readDatasheet(data("protection/reference.pdf"), {}, builtIn(), &trace);
    ASSERT_TRUE(sheet);
    EXPECT_EQ(trace.bytes.size(), sheet->document.bytes);
    ASSERT_EQ(static_cast<int>(trace.pages.size()), sheet->document.pages);
    bool owned = false;
    for (auto const& word : trace.pages[2].words) owned = owned || word.owner == model::Owner::Parameter;
    EXPECT_TRUE(owned);
}

TEST(ReadDatasheet, AppliesCorrections) {
    auto const plain = readDatasheet(data("protection/reference.pdf"), {}, builtIn());
    ASSERT_TRUE(plain && !plain->parameters.empty());
    corrections::Entry entry;
    entry.document = plain->document.sha256;
    entry.page = plain->parameters[0].page;
    entry.box = plain->parameters[0].box;
    entry.row = {{corrections::Field::Name, plain->parameters[0].name}};
    entry.texts = {{corrections::Field::Name, "Another name"}};
    ReadOptions options;
    options.corrections = {entry};
    auto const sheet = readDatasheet(data("protection/reference.pdf"), options, builtIn());
    ASSERT_TRUE(sheet);
    EXPECT_EQ(sheet->parameters[0].name, "Another name");
    EXPECT_EQ(sheet->document.corrections.size(), 1U);
}

TEST(ReadDatasheet, TroubleNamesTheFile) {
    struct Case {
        char const* file;
        model::ErrorKind kind;
    };
    for (Case const& c : {Case{"features/missing.pdf", model::ErrorKind::Unreadable}, Case{"features/not-a-pdf.pdf", model::ErrorKind::Unsupported},
                          Case{"features/empty.pdf", model::ErrorKind::Unsupported}, Case{"features/encrypted-user-password.pdf", model::ErrorKind::Encrypted}}) {
        SCOPED_TRACE(c.file);
        auto const sheet = readDatasheet(data(c.file), {}, builtIn());
        ASSERT_FALSE(sheet.has_value());
        EXPECT_EQ(sheet.error().kind, c.kind);
        EXPECT_EQ(sheet.error().file, data(c.file));
        EXPECT_FALSE(sheet.error().message.empty());
    }
}

TEST(ReadDatasheet, TextOutsideTheCropBoxIsNotRead) {
    auto const sheet = readDatasheet(data("features/crop-box-offset.pdf"), {}, builtIn());
    ASSERT_TRUE(sheet.has_value());
    EXPECT_EQ(model::toJson(*sheet).find("4711"), std::string::npos);
}

TEST(ReadDatasheet, ListsOfPinsOfSeveralVersionsKeepApart) {
    auto const sheet = readDatasheet(data("features/pin-lists.pdf"), {}, builtIn());
    ASSERT_TRUE(sheet.has_value());
    std::map<std::string, std::vector<std::string>> numbers;
    for (auto const& pin : sheet->pins) numbers[pin.package].push_back(pin.number);
    std::vector<std::pair<std::string, std::size_t>> counts;
    for (auto const& [version, list] : numbers) counts.emplace_back(version, list.size());
    EXPECT_EQ(counts, (std::vector<std::pair<std::string, std::size_t>>{{"FX211", 4}, {"FX212", 8}, {"FX213", 12}, {"FX214", 16}}));
    EXPECT_EQ(numbers["FX211"], (std::vector<std::string>{"1", "2", "3", "4"}));
}

TEST(ReadDatasheet, PinsThatArePicturesAreListed) {
    auto const name = readDatasheet(data("features/pin-name-as-picture.pdf"), {}, builtIn());
    ASSERT_TRUE(name.has_value());
    ASSERT_EQ(name->pins.size(), 4U);
    EXPECT_EQ(name->pins[2].name, "");
    ASSERT_EQ(name->coverage.unreadPins.size(), 1U);
    EXPECT_EQ(name->coverage.unreadPins[0].text, "pin 3");
    EXPECT_EQ(name->coverage.unreadPins[0].box, name->pins[2].box);
    auto const drawing = readDatasheet(data("features/pin-drawing-as-picture.pdf"), {}, builtIn());
    ASSERT_TRUE(drawing.has_value());
    EXPECT_TRUE(drawing->pins.empty());
    ASSERT_EQ(drawing->coverage.unreadPins.size(), 1U);
    EXPECT_EQ(drawing->coverage.unreadPins[0].text, "Pin connection (top view)");
}

ReadOptions withRecognition() {
    ReadOptions options;
    options.recogniser = recognition::kRecogniser;
    options.languages = "eng";
    return options;
}

// Threads that have recognised and not released since.
std::mutex holdingMutex;
std::set<std::thread::id> holding;
int picturesSeen = 0;

TEST(ReadDatasheet, EachThreadReleasesWhatItKeepsForRecognition) {
    auto const sheet = data("features/image-only.pdf");
    ReadOptions options;
    options.languages = "eng";
    options.recogniser.recognise = [](model::Picture const&, std::string const&) -> model::Result<model::Recognition> {
        std::scoped_lock lock(holdingMutex);
        holding.insert(std::this_thread::get_id());
        ++picturesSeen;
        return model::Recognition{};
    };
    options.recogniser.release = [] {
        std::scoped_lock lock(holdingMutex);
        holding.erase(std::this_thread::get_id());
    };
    ASSERT_TRUE(readPair(sheet, sheet, options, builtIn()).has_value());
    EXPECT_GE(picturesSeen, 2);
    EXPECT_TRUE(holding.empty());
}

TEST(ReadDatasheet, ATableThatIsAPictureIsRecognisedAndMarked) {
    auto const sheet = readDatasheet(data("features/image-only.pdf"), withRecognition(), builtIn());
    ASSERT_TRUE(sheet.has_value());
    EXPECT_EQ(sheet->document.textLayer, model::TextLayer::None) << "the file has none still";
    EXPECT_TRUE(sheet->coverage.pagesWithoutText.empty());
    ASSERT_EQ(sheet->document.warnings.size(), 1U);
    EXPECT_NE(sheet->document.warnings[0].find("recognised from a picture"), std::string::npos);
    EXPECT_GT(sheet->coverage.recognised.size(), 20U);
    auto const find = [&](std::string_view name) -> model::Parameter const& {
        auto const found = std::find_if(sheet->parameters.begin(), sheet->parameters.end(), [name](auto const& p) { return p.name == name; });
        static model::Parameter const none;
        return found == sheet->parameters.end() ? none : *found;
    };
    auto const& threshold = find("Input threshold voltage");
    ASSERT_TRUE(threshold.min && threshold.typ && threshold.max);
    EXPECT_EQ(threshold.min->text + " " + threshold.typ->text + " " + threshold.max->text + " " + threshold.unit, "1.10 1.20 1.30 V");
    auto const& offset = find("Offset voltage");
    ASSERT_TRUE(offset.min && offset.max);
    EXPECT_EQ(offset.min->text, "-3.0");
    EXPECT_FALSE(offset.typ);
    for (auto const& parameter : sheet->parameters) {
        EXPECT_LT(parameter.confidence.score, 0.9) << parameter.name;
        EXPECT_EQ(parameter.confidence.reasons.back(), "recognised from a picture") << parameter.name;
    }
    auto const& c = sheet->coverage;
    EXPECT_EQ(c.numbers, c.inParameters + c.inTables + c.inText + c.inFigures + c.inFurniture + static_cast<int>(c.unaccounted.size()));
}

TEST(ReadDatasheet, RecognitionIsTheSameOnOneThreadAndOnThree) {
    auto one = withRecognition();
    one.threads = 1;
    auto three = withRecognition();
    three.threads = 3;
    auto const a = readDatasheet(data("features/image-only.pdf"), one, builtIn());
    auto const b = readDatasheet(data("features/image-only.pdf"), three, builtIn());
    ASSERT_TRUE(a && b);
    EXPECT_EQ(*a, *b);
}

TEST(ReadDatasheet, RecognitionDoublesNothingThatIsPrinted) {
    for (auto const* file : {"features/plain.pdf", "features/hidden-text.pdf", "protection/reference.pdf"}) {
        auto const printed = readDatasheet(data(file), {}, builtIn());
        auto const recognised = readDatasheet(data(file), withRecognition(), builtIn());
        ASSERT_TRUE(printed && recognised) << file;
        EXPECT_EQ(printed->parameters, recognised->parameters) << file;
        EXPECT_EQ(printed->pins, recognised->pins) << file;
    }
}

TEST(ReadDatasheet, PinsThatArePicturesAreRecognised) {
    auto const name = readDatasheet(data("features/pin-name-as-picture.pdf"), withRecognition(), builtIn());
    ASSERT_TRUE(name.has_value());
    ASSERT_EQ(name->pins.size(), 4U);
    EXPECT_EQ(name->pins[2].name, "READY");
    EXPECT_TRUE(name->pins[2].recognised);
    EXPECT_FALSE(name->pins[1].recognised);
    auto const drawing = readDatasheet(data("features/pin-drawing-as-picture.pdf"), withRecognition(), builtIn());
    ASSERT_TRUE(drawing.has_value());
    std::map<std::string, std::string> pins;
    for (auto const& pin : drawing->pins) {
        pins[pin.number] = pin.name;
        EXPECT_TRUE(pin.recognised) << pin.number;
    }
    EXPECT_EQ(pins, (std::map<std::string, std::string>{{"1", "VIN"}, {"2", "VSS"}, {"3", "HOLD"}, {"4", "VOUT"}, {"5", "SENSE"}, {"6", "READY"}}));
}

// A table of ratings; `mode` goes before its text.
std::string ratings(std::string const& maximum, std::string const& mode = {}) {
    std::vector<std::array<std::string, 4>> const rows{{"Parameter", "Symbol", "Max", "Unit"},      {"Input voltage", "VIN", maximum, "V"},   {"Output current", "IOUT", "120", "mA"},
                                                       {"Enable voltage", "VEN", "6.5", "V"}, {"Power dissipation", "PD", "400", "mW"}};
    std::array<int, 4> const columns{50, 250, 330, 420};
    auto content = fmt::format("{} BT /F1 14 Tf 50 780 Td (1 Absolute maximum ratings) Tj ET 0.5 w ", mode);
    int y = 740;
    for (auto const& row : rows) {
        for (std::size_t i = 0; i < row.size(); ++i) content += fmt::format("BT /F1 10 Tf {} {} Td ({}) Tj ET ", columns[i], y, row[i]);
        content += fmt::format("45 {0} m 480 {0} l S ", y - 5);
        y -= 18;
    }
    return content;
}

// `content` as pixels, put on a page by the operators that `placed` gives them; a file in `folder`.
std::string pageWithPicture(testing::TemporaryFolder const& folder, std::string const& content, model::Rect const& box, std::string const& placed) {
    testing::PdfWriter drawing;
    drawing.page({.content = content, .mediaBox = "0 0 595 842"});
    auto pictures = poppler::PagePicture::open(drawing.bytes(), {});
    auto const picture = (*pictures)->render(1, box, 300.0 / 72);
    testing::PdfWriter pdf;
    int const image = pdf.stream(fmt::format("/Type /XObject /Subtype /Image /Width {} /Height {} /ColorSpace /DeviceRGB /BitsPerComponent 8", picture->width, picture->height),
                                 std::string(picture->rgb.begin(), picture->rgb.end()));
    pdf.page({.content = placed, .resources = fmt::format("/XObject << /I {} 0 R >>", image), .mediaBox = "0 0 595 842"});
    auto path = folder.file("page.pdf");
    std::ofstream(path, std::ios::binary) << pdf.bytes();
    return path;
}

model::Parameter const& inputVoltageOf(model::Datasheet const& sheet) {
    auto const found = std::find_if(sheet.parameters.begin(), sheet.parameters.end(), [](auto const& p) { return p.symbol == "VIN"; });
    static model::Parameter const none;
    return found == sheet.parameters.end() ? none : *found;
}

bool warns(model::Datasheet const& sheet, std::string_view of) {
    auto const& warnings = sheet.document.warnings;
    return std::any_of(warnings.begin(), warnings.end(), [of](auto const& warning) { return warning.find(of) != std::string::npos; });
}

TEST(ReadDatasheet, WhatAPictureShowsGoesBeforeWhatItCovers) {
    testing::TemporaryFolder const folder;
    auto const path = pageWithPicture(folder, "BT /F1 10 Tf 330 722 Td (8.0) Tj ET", {324, 109, 364, 123}, ratings("5.0") + "q 40 0 0 14 324 719 cm /I Do Q");
    auto const seen = readDatasheet(path, withRecognition(), builtIn());
    ASSERT_TRUE(seen && inputVoltageOf(*seen).max);
    EXPECT_EQ(inputVoltageOf(*seen).max->text, "8.0");
    EXPECT_TRUE(inputVoltageOf(*seen).recognised);
    EXPECT_TRUE(warns(*seen, "left out: \"5.0\"")) << "what is covered is told";
    auto const hidden = readDatasheet(path, {}, builtIn());
    ASSERT_TRUE(hidden);
    EXPECT_TRUE(warns(*hidden, "hidden text where a picture stands on page 1"));
}

TEST(ReadDatasheet, WhatAScanShowsGoesBeforeItsTextLayer) {
    testing::TemporaryFolder const folder;
    auto const path = pageWithPicture(folder, ratings("5.0"), {0, 0, 595, 842}, "q 595 0 0 842 0 0 cm /I Do Q 1 G " + ratings("3.0", "3 Tr"));
    auto const seen = readDatasheet(path, withRecognition(), builtIn());
    ASSERT_TRUE(seen && inputVoltageOf(*seen).max);
    EXPECT_EQ(inputVoltageOf(*seen).max->text, "5.0");
    EXPECT_TRUE(inputVoltageOf(*seen).recognised);
    EXPECT_FALSE(warns(*seen, "hidden text where")) << "all of it was recognised";
    auto const hidden = readDatasheet(path, {}, builtIn());
    ASSERT_TRUE(hidden);
    EXPECT_TRUE(warns(*hidden, "hidden text where a picture stands on page 1"));
}

TEST(ReadDatasheet, APageOfOneImageHasNoTextLayer) {
    auto const sheet = readDatasheet(data("features/image-only.pdf"), {}, builtIn());
    ASSERT_TRUE(sheet.has_value());
    EXPECT_EQ(sheet->document.textLayer, model::TextLayer::None);
    EXPECT_EQ(sheet->coverage.pagesWithoutText, std::vector<int>{1});
    EXPECT_FALSE(sheet->document.warnings.empty());
}

TEST(ReadDatasheet, ProgressCountsPagesAndCanStop) {
    std::atomic<int> calls{0};
    ReadOptions options;
    options.progress = [&calls](int done, int total) {
        ++calls;
        EXPECT_LE(done, total);
        return true;
    };
    auto const sheet = readDatasheet(data("protection/reference.pdf"), options, builtIn());
    ASSERT_TRUE(sheet.has_value());
    EXPECT_EQ(calls.load(), sheet->document.pages);

    options.progress = [](int, int) { return false; };
    EXPECT_FALSE(readDatasheet(data("protection/reference.pdf"), options, builtIn()).has_value());
}

TEST(ReadPair, WhatIsStoppedStopsBoth) {
    for (int const allowed : {0, 1, 3}) {
        std::atomic<int> calls{0};
        ReadOptions options;
        options.progress = [&calls, allowed](int, int) { return ++calls <= allowed; };
        auto const pair = readPair(data("protection/reference.pdf"), data("protection/candidate.pdf"), options, builtIn());
        ASSERT_FALSE(pair.has_value()) << allowed;
        EXPECT_EQ(pair.error().message, "reading was stopped") << allowed;
        EXPECT_FALSE(pair.error().file.empty()) << allowed;
    }
}

TEST(ReadPair, TheFirstTroubleIsTheReferences) {
    auto const pair = readPair(data("features/empty.pdf"), data("features/not-a-pdf.pdf"), {}, builtIn());
    ASSERT_FALSE(pair.has_value());
    EXPECT_EQ(pair.error().file, data("features/empty.pdf"));
}

}  // namespace
}  // namespace standin::reading

// Recognition of drawn pages: words at their places, what is around them left out, the
// same at each run, languages that are missing.
#include "extractors/recognition/recognise.h"

#include <algorithm>
#include <memory>
#include <thread>

#ifdef __GLIBC__
#include <malloc.h>
#endif

#include <gtest/gtest.h>

#include "extractors/poppler/page_picture.h"
#include "support/pdf_writer.h"

namespace standin::recognition {
namespace {

using testing::PdfPage;
using testing::PdfWriter;

model::Picture drawn(std::string const& content) {
    PdfWriter pdf;
    PdfPage page;
    page.content = content;
    page.mediaBox = "0 0 300 120";
    pdf.page(page);
    auto pictures = poppler::PagePicture::open(pdf.bytes(), {});
    if (!pictures) {
        ADD_FAILURE() << pictures.error().message;
        return {};
    }
    auto picture = (*pictures)->render(1, {0, 0, 300, 120}, 300.0 / 72);
    return picture ? std::move(*picture) : model::Picture{};
}

model::Recognition readDrawn(std::string const& content) {
    auto found = recognise(drawn(content), "eng");
    if (!found) ADD_FAILURE() << found.error().message;
    return found ? std::move(*found) : model::Recognition{};
}

std::vector<std::string> textsOf(model::Recognition const& found) {
    std::vector<std::string> texts;
    for (auto const& word : found.words) texts.push_back(word.text);
    return texts;
}
using Texts = std::vector<std::string>;

constexpr char const* kLine = "BT /F1 10 Tf 20 70 Td (Detection voltage 4.275 V) Tj ET\n";

TEST(Recognise, GivesWordsWithTheirPlaceAndSize) {
    auto const found = readDrawn(kLine);
    ASSERT_EQ(textsOf(found), (Texts{"Detection", "voltage", "4.275", "V"}));
    auto const& first = found.words.front();
    EXPECT_NEAR(first.box.x0, 20.5, 1.5);
    EXPECT_NEAR(first.baseline, 50, 0.6);
    EXPECT_NEAR(first.size, 10, 1);
    EXPECT_EQ(found.words[0].line, found.words[3].line);
    EXPECT_TRUE(found.unread.empty());
}

TEST(Recognise, AMinusIsNotLost) { EXPECT_EQ(textsOf(readDrawn("BT /F1 10 Tf 20 70 Td (-40 to 85) Tj ET")), (Texts{"-40", "to", "85"})); }

TEST(Recognise, APlusOnABarIsPlusMinus) {
    EXPECT_EQ(textsOf(readDrawn("BT /F1 10 Tf 20 70 Td (Gate voltage \\26112 V, +5 V) Tj ET")), (Texts{"Gate", "voltage", "\u00B112", "V,", "+5", "V"}));
}

TEST(Recognise, FramesAndLeadsAreNoLetters) {
    // A package with a lead on each side, numbers inside, names outside.
    std::string const leads = "1 w 100 50 60 40 re S 86 68 14 5 re S 160 68 14 5 re S\n";
    auto const found = readDrawn(leads + "BT /F1 9 Tf 104 67 Td (1) Tj ET BT /F1 9 Tf 150 67 Td (2) Tj ET BT /F1 9 Tf 60 67 Td (VIN) Tj ET BT /F1 9 Tf 180 67 Td (GND) Tj ET");
    auto texts = textsOf(found);
    std::sort(texts.begin(), texts.end());
    EXPECT_EQ(texts, (Texts{"1", "2", "GND", "VIN"}));
    EXPECT_FALSE(found.rules.empty()) << "the outline";
}

TEST(Recognise, ALetterAloneIsSmallOrCapitalByItsHeight) {
    EXPECT_EQ(textsOf(readDrawn("BT /F1 10 Tf 20 70 Td (Limit 4.2) Tj ET BT /F1 10 Tf 120 70 Td (V) Tj ET BT /F1 10 Tf 160 70 Td (s) Tj ET")), (Texts{"Limit", "4.2", "V", "s"}));
}

TEST(Recognise, LightLettersOnADarkBarAreRead) {
    EXPECT_EQ(textsOf(readDrawn("0 0 0.4 rg 10 60 200 24 re f 1 1 1 rg BT /F1 11 Tf 20 68 Td (Absolute maximum ratings) Tj ET")), (Texts{"Absolute", "maximum", "ratings"}));
}

TEST(Recognise, StrokesOfADrawingAreNoWords) {
    // Wires and a resistor: nothing in letters, so no line of signs either.
    auto const found = readDrawn("1 w 40 60 m 44 64 l 48 56 l 52 64 l 56 56 l 60 60 l S 80 58 5 1.5 re f 80 62 5 1.5 re f 120 56 m 126 60 l 120 64 l S");
    EXPECT_EQ(textsOf(found), Texts{});
    EXPECT_FALSE(found.unread.empty());
}

TEST(Recognise, TurnedTextGivesNoWords) {
    auto const found = readDrawn("BT /F1 10 Tf 20 70 Td (Upright) Tj ET BT /F1 10 Tf 0 1 -1 0 150 8 Tm (Turned 250 mA 6.8 V) Tj ET");
    EXPECT_EQ(textsOf(found), (Texts{"Upright"}));
    ASSERT_FALSE(found.unread.empty());
    EXPECT_TRUE(std::any_of(found.unread.begin(), found.unread.end(), [](auto const& place) { return place.x0 > 135 && place.x1 < 155 && place.height() > 15; }));
}

TEST(Recognise, ADashAwayFromItsLineIsUnread) {
    auto const found = readDrawn("BT /F1 10 Tf 20 70 Td (Output) Tj ET BT /F1 10 Tf 100 70 Td (-) Tj ET");
    EXPECT_EQ(textsOf(found), (Texts{"Output"}));
    ASSERT_EQ(found.unread.size(), 1U);
    EXPECT_GT(found.unread[0].x0, 95);
    EXPECT_LT(found.unread[0].x1, 110);
}

TEST(Recognise, RulesAreFound) {
    auto const found = readDrawn("0.5 w 20 30 m 200 30 l S 60 10 m 60 100 l S");
    ASSERT_EQ(found.rules.size(), 2U);
    EXPECT_TRUE(found.words.empty());
    auto const across = std::find_if(found.rules.begin(), found.rules.end(), [](auto const& rule) { return rule.axis == model::Rule::Axis::Horizontal; });
    ASSERT_TRUE(across != found.rules.end());
    EXPECT_NEAR(across->box.y0, 90, 0.6);
    EXPECT_NEAR(across->box.width(), 180, 1);
}

TEST(Recognise, IsTheSameAtEachRunAndInThreads) {
    auto const picture = drawn(kLine);
    auto const once = recognise(picture, "eng");
    ASSERT_TRUE(once);
    std::vector<Texts> texts(2);
    std::thread other([&] { texts[1] = textsOf(*recognise(picture, "eng")); });
    texts[0] = textsOf(*recognise(picture, "eng"));
    other.join();
    EXPECT_EQ(texts[0], textsOf(*once));
    EXPECT_EQ(texts[1], textsOf(*once));
}

TEST(Recognise, APictureReadBeforeChangesNothing) {
    auto const picture = drawn(kLine);
    Texts alone;
    std::thread([&] { alone = textsOf(*recognise(picture, "eng")); }).join();
    Texts after;
    std::thread([&] {
        for (int i = 0; i < 3; ++i) EXPECT_TRUE(recognise(drawn("BT /F1 10 Tf 20 70 Td (Retention vintage 4.215 W) Tj ET"), "eng"));
        after = textsOf(*recognise(picture, "eng"));
    }).join();
    EXPECT_EQ(after, alone);
}

TEST(Recognise, IsTheSameAfterRelease) {
    auto const picture = drawn(kLine);
    auto const before = textsOf(*recognise(picture, "eng"));
    release();
    release();  // of nothing
    EXPECT_EQ(textsOf(*recognise(picture, "eng")), before);
}

#if defined(__GLIBC__) && !defined(__SANITIZE_ADDRESS__)

std::ptrdiff_t bytesInUse() {
    auto const heap = mallinfo2();
    return static_cast<std::ptrdiff_t>(heap.uordblks + heap.hblkhd);
}

TEST(Recognise, ReleaseGivesBackWhatAThreadKeeps) {
    auto const picture = drawn(kLine);
    ASSERT_TRUE(recognise(picture, "eng"));  // what the library keeps for all is there now
    release();
    auto const before = bytesInUse();
    ASSERT_TRUE(recognise(picture, "eng"));
    auto const kept = bytesInUse() - before;
    release();
    auto const left = bytesInUse() - before;
    EXPECT_GT(kept, 5'000'000);
    EXPECT_LT(left, 500'000);
}

#endif

TEST(Recognise, AnEmptyPageHasNothing) {
    auto const found = readDrawn("");
    EXPECT_TRUE(found.words.empty() && found.unread.empty() && found.rules.empty());
    EXPECT_TRUE(recognise({}, "eng")->words.empty());
}

TEST(CheckLanguages, NamesThePackageThatIsMissing) {
    EXPECT_TRUE(checkLanguages("eng"));
    auto const missing = checkLanguages("eng+xxx_Qaa");
    ASSERT_FALSE(missing);
    EXPECT_EQ(missing.error().kind, model::ErrorKind::Usage);
    EXPECT_NE(missing.error().message.find("install the package tesseract-ocr-xxx-qaa"), std::string::npos) << missing.error().message;
    for (auto const* wrong : {"", "eng+", "+", "../eng", "eng,deu"}) {
        auto const refused = checkLanguages(wrong);
        ASSERT_FALSE(refused) << wrong;
        EXPECT_NE(refused.error().message.find("joined by '+'"), std::string::npos) << wrong;
    }
}

}  // namespace
}  // namespace standin::recognition

#include "report/pdf/paper.h"

#include <gtest/gtest.h>

#include "read_pdf.h"
#include "report/pdf/paper_table.h"

namespace standin::report {
namespace {

PaperTexts textsWith(int pagesInAll) { return {"A summary", "Bench test before use", "the running head", "the foot", pagesInAll}; }

TEST(Paper, WritesWhatCanBeReadAgain) {
    Paper paper(textsWith(1));
    paper.write({{{"Overcharge "}, {"4.275 V", inks::kReference, Weight::Bold}}}, paper.left(), paper.width());
    auto const texts = pageTexts(paper.finish());
    ASSERT_EQ(texts.size(), 1U);
    EXPECT_NE(texts[0].find("Overcharge"), std::string::npos) << texts[0];
    EXPECT_NE(texts[0].find("4.275"), std::string::npos) << texts[0];
    EXPECT_EQ(texts[0].find("the running head"), std::string::npos) << "the first page has its own head";
}

TEST(Paper, GoesOverleafBetweenLines) {
    std::string text;
    for (int i = 0; i < 2000; ++i) text += fmt::format("word{} ", i);
    Paper counting(textsWith(0));
    counting.write(paragraph(text), counting.left(), counting.width());
    int const pages = counting.page();
    EXPECT_GT(pages, 1);
    EXPECT_TRUE(counting.finish().empty());
    Paper paper(textsWith(pages));
    paper.write(paragraph(text), paper.left(), paper.width());
    EXPECT_EQ(paper.page(), pages);
    auto const texts = pageTexts(paper.finish());
    ASSERT_EQ(texts.size(), static_cast<std::size_t>(pages));
    EXPECT_NE(texts[1].find("the running head"), std::string::npos);
    for (int page = 1; page <= pages; ++page) EXPECT_NE(texts[static_cast<std::size_t>(page - 1)].find(fmt::format("page {} of {}", page, pages)), std::string::npos);
    std::string all;
    for (auto const& page : texts) all += page;
    for (int const word : {0, 700, 1999}) EXPECT_NE(all.find(fmt::format("word{}", word)), std::string::npos) << word;
}

TEST(Paper, ShowsHiddenCharactersByNumberAndFallsBackForOtherScripts) {
    Paper paper(textsWith(1));
    paper.write(paragraph("4.2\u202E5 V <b>&amp; \xE8\xBF\x87\xE5\x85\x85"), paper.left(), paper.width());
    auto const text = allText(paper.finish());
    EXPECT_NE(text.find("U+202E"), std::string::npos) << text;
    EXPECT_NE(text.find("<b>&amp;"), std::string::npos) << text;
}

TEST(Paper, HoldsNoTimeAndGivesTheSameBytes) {
    auto const make = [] {
        Paper paper(textsWith(1));
        paper.heading({{{"Cautions", inks::kText, Weight::Bold}}, TextSize::Heading}, 20);
        model::Picture picture{40, 20, {0, 0, 40, 20}, std::vector<std::uint8_t>(40 * 20 * 3, 200)};
        paper.picture(picture, 60, 200, 80, 40);
        paper.polygon({{10, 10}, {20, 10}, {20, 20}}, inks::kCandidate, 0.4);
        return paper.finish();
    };
    auto const pdf = make();
    EXPECT_EQ(pdf, make());
    EXPECT_EQ(pdf.find("CreationDate"), std::string::npos);
    EXPECT_EQ(pdf.find("ModDate"), std::string::npos);
    EXPECT_NE(pdf.find("/Outlines"), std::string::npos);
}

TEST(Paper, PutsTitleIntoTheProperties) {
    Paper paper(textsWith(1));
    auto const pdf = paper.finish();
    auto reader = poppler::DocumentReader::open(std::as_bytes(std::span(pdf)), {});
    ASSERT_TRUE(reader);
    EXPECT_EQ(reader->metadata().title, "A summary");
    EXPECT_EQ(reader->metadata().subject, "Bench test before use");
    EXPECT_EQ(reader->metadata().creator, "Standin");
}

TEST(Paper, KeepsTogetherWhatIsAsked) {
    Paper paper(textsWith(1));
    paper.moveTo(700);
    paper.keep(50);
    EXPECT_EQ(paper.page(), 1);
    paper.keep(200);
    EXPECT_EQ(paper.page(), 2);
    paper.keep(5000);  // more than a page: no use in going on
    EXPECT_EQ(paper.page(), 2);
}

TEST(PaperTable, RepeatsItsHeadOnEachPageAndKeepsRowsWhole) {
    Paper paper(textsWith(9));
    PaperTable table(paper, {{"reference", 2}, {"findings", 1}});
    for (int i = 0; i < 120; ++i) table.row({paragraph(fmt::format("section{}", i)), paragraph("7")});
    int const pages = paper.page();
    ASSERT_GT(pages, 1);
    auto const texts = pageTexts(paper.finish());
    for (auto const& text : texts) EXPECT_NE(text.find("findings"), std::string::npos);
    std::string all;
    for (auto const& page : texts) all += page;
    for (int i = 0; i < 120; ++i) EXPECT_NE(all.find(fmt::format("section{}", i)), std::string::npos) << i;
}

TEST(PaperTable, CutsARowHigherThanAPage) {
    std::string text;
    for (int i = 0; i < 6000; ++i) text += "words ";
    Paper paper(textsWith(9));
    PaperTable table(paper, {{"a", 1}, {"b", 1}});
    table.row({paragraph(text), paragraph("x")});
    table.row({paragraph("after"), paragraph("y")});
    EXPECT_LT(paper.page(), 12);
    EXPECT_NE(allText(paper.finish()).find("after"), std::string::npos);
}

}  // namespace
}  // namespace standin::report

#include "report/html_report.h"

#include <gtest/gtest.h>

#include "report/html_escape.h"
#include "sample_comparison.h"
#include "sheet_pictures.h"

namespace standin::report {
namespace {

std::string htmlOf(Sample const& sample, Pictures pictures) {
    Cuttings cuttings(pictures);
    return htmlReport(sample.comparison, sample.reference, sample.candidate, cuttings);
}

std::string sampleHtml() { return htmlOf(sampleComparison(), {}); }

int countOf(std::string const& text, std::string_view words) {
    int count = 0;
    for (auto at = text.find(words); at != std::string::npos; at = text.find(words, at + 1)) ++count;
    return count;
}

TEST(Escaped, MarkupQuotesAndHiddenCharacters) {
    EXPECT_EQ(escaped("<b a=\"x\">&'"), "&lt;b a=&quot;x&quot;&gt;&amp;&#39;");
    EXPECT_EQ(escaped("4.2\u202E5"), "4.2⟨U+202E⟩5");
}

TEST(HtmlReport, ForeignMarkupStaysText) {
    auto const html = sampleHtml();
    EXPECT_EQ(html.find("<script"), std::string::npos);
    EXPECT_NE(html.find("&lt;script&gt;alert(1)"), std::string::npos);
    EXPECT_NE(html.find("Pin 4 &lt;must&gt; be left open"), std::string::npos);
}

TEST(HtmlReport, NothingIsFetched) {
    auto const html = sampleHtml();
    EXPECT_NE(html.find("Content-Security-Policy\" content=\"default-src 'none'"), std::string::npos);
        for (auto const* reference : {"http:", "https:", "src=", "href=", "url(", "@import"}) EXPECT_EQ(html.find(reference), std::string::npos) << reference;
    SheetPictures pictures(4);
    auto const pictured = htmlOf(sampleComparison(), {&pictures, &pictures});
    EXPECT_EQ(countOf(pictured, "src="), countOf(pictured, "src=\"data:image/png;base64,"));
    EXPECT_EQ(countOf(pictured, "href="), countOf(pictured, "href=\"#f-"));
}

TEST(HtmlReport, OpensWithTheVerdictThenHazardThenTheRestThenCoverage) {
    auto const html = sampleHtml();
    auto const verdict = html.find("Bench test before use");
    auto const hazard = html.find("reaches higher by 35 mV");
    auto const function = html.find("must&gt; be left open");
    auto const coverage = html.find("numbers printed");
    ASSERT_NE(coverage, std::string::npos);
    EXPECT_LT(verdict, hazard);
    EXPECT_LT(hazard, function);
    EXPECT_LT(function, coverage);
}

TEST(HtmlReport, EditorialFindingsAreKeptOutOfTheWayButThere) {
    auto const html = sampleHtml();
    EXPECT_NE(html.find("<details><summary>show 1</summary><article"), std::string::npos);
    EXPECT_NE(html.find("Spelling of colour"), std::string::npos);
}

TEST(HtmlReport, NumericFindingsCarryALimitStripWithALabel) {
    auto const html = sampleHtml();
    EXPECT_NE(html.find("aria-label=\"reference 4.245 / 4.275 / 4.305 V, candidate 4.245 / 4.275 / 4.340 V\""), std::string::npos);
}

TEST(HtmlReport, ShowsBothPlacesOfWhatCouldHurt) {
    SheetPictures reference(4);
    SheetPictures candidate(2);
    auto const html = htmlOf(sampleComparison(), {&reference, &candidate});
    EXPECT_EQ(countOf(html, "<img "), 4);  // the hazard and the function finding, both sides
    EXPECT_EQ(countOf(html, "src=\"data:image/png;base64,"), 4);
    EXPECT_NE(html.find("alt=\"reference, page 3: Overcharge detection voltage | VCU\""), std::string::npos);
    EXPECT_NE(html.find("alt=\"candidate, page 2: Pin 4 must be left open &lt;script&gt;"), std::string::npos);
    EXPECT_EQ(reference.drawn, 2);
    EXPECT_EQ(candidate.drawn, 2);
    EXPECT_NE(html.find("img-src data:"), std::string::npos);
}

TEST(HtmlReport, ShowsEachPlaceOnce) {
    auto sample = sampleComparison();
    auto again = sample.comparison.findings[0];
    again.id = "eeeeeeeeeeee";
    again.title = "Conditions differ";
    sample.comparison.findings.insert(sample.comparison.findings.begin() + 1, again);
    SheetPictures reference(4);
    SheetPictures candidate(2);
    auto const html = htmlOf(sample, {&reference, &candidate});
    EXPECT_EQ(countOf(html, "<img "), 4);
    EXPECT_EQ(countOf(html, "the place shown under <a href=\"#f-aaaaaaaaaaaa\">"), 2);
}

TEST(HtmlReport, ShowsFiguresOfEverySeverity) {
    auto sample = sampleComparison();
    auto& editorial = sample.comparison.findings[3];
    editorial.candidate = model::Side{1, {60, 500, 400, 700}, "Test circuit", "", "", "", "", ""};
    SheetPictures reference(4);
    SheetPictures candidate(2);
    EXPECT_EQ(countOf(htmlOf(sample, {&reference, &candidate}), "<img "), 4);
    editorial.kind = model::FindingKind::Figure;
    EXPECT_EQ(countOf(htmlOf(sample, {&reference, &candidate}), "<img "), 5);
}

TEST(HtmlReport, IsTheSameEachTime) {
    SheetPictures reference(4);
    SheetPictures candidate(2);
    EXPECT_EQ(htmlOf(sampleComparison(), {&reference, &candidate}), htmlOf(sampleComparison(), {&reference, &candidate}));
}

TEST(HtmlReport, GoesWithoutPicturesOfADocumentGivenAsJson) {
    SheetPictures candidate(2);
    auto const html = htmlOf(sampleComparison(), {nullptr, &candidate});
    EXPECT_EQ(countOf(html, "<img "), 2);
    EXPECT_EQ(html.find("alt=\"reference"), std::string::npos);
}

TEST(HtmlReport, ListsBenchTestsSectionsAndWhatWasNotRead) {
    auto sample = sampleComparison();
    sample.reference.sections = {{"s1", model::SectionKind::Ratings, "3 <Ratings>", 1, 2, {}}};
    sample.comparison.sections = {{"s1", "", 0, 2}};
    sample.candidate.coverage.unaccounted = {{"42", 1, {}}};
    risk::BenchTest test;
    test.title = "Overcharge threshold";
    test.procedure = "Step the supply up.";
    test.findings = {"aaaaaaaaaaaa"};
    test.limits = {{"aaaaaaaaaaaa", "Detection", "reference", "Ta = 25 °C", "4.245", "4.305", "V"}};
    Cuttings cuttings({});
    auto const html = htmlReport(sample.comparison, sample.reference, sample.candidate, cuttings, std::vector{test});
    for (auto const* words : {"Overcharge threshold", "Step the supply up.", "Detection: min 4.245, max 4.305 V (reference); Ta = 25 °C", "<a href=\"#f-aaaaaaaaaaaa\">", "3 &lt;Ratings&gt; (page 2)",
                              "page 1: the number 42"}) {
        EXPECT_NE(html.find(words), std::string::npos) << words;
    }
}

}  // namespace
}  // namespace standin::report

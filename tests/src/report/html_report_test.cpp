#include "report/html_report.h"

#include <gtest/gtest.h>

#include "report/html_escape.h"
#include "sample_comparison.h"

namespace standin::report {
namespace {

std::string sampleHtml() {
    auto const sample = sampleComparison();
    return htmlReport(sample.comparison, sample.reference, sample.candidate);
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

}  // namespace
}  // namespace standin::report

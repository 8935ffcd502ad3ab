#include "record/record_text.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "record/bench_result.h"
#include "record/carry.h"
#include "record/record_html.h"
#include "src/record/sample_record.h"
#include "text/visible.h"

namespace standin::record {
namespace {

using ::testing::HasSubstr;
using ::testing::Not;

Record eventful() {
    auto record = closedRecord();
    BenchResult result;
    result.test = "overcharge-threshold";
    result.values = {"4270", "4281"};
    result.unit = "mV";
    result.samples = 5;
    result.lots = 2;
    result.instrument = "Voltmeter V7, 0.1 mV";
    result = *judgeResult(record.opened().tests, std::move(result));
    record = with(std::move(record), Body{result}, at(15, belmonte()));
    return with(std::move(record), Body{Signed{Role::Approver, "For the logger only."}}, at(20, corvin()));
}

// Blanks and line ends as single blanks.
std::string unwrapped(std::string const& text) {
    std::string made;
    for (char const c : text) {
        if (c != '\n' && c != ' ') made += c;
        else if (!made.empty() && made.back() != ' ') made += ' ';
    }
    return made;
}

TEST(RecordText, SaysWhatWasDecidedByWhom) {
    auto const text = unwrapped(recordText(eventful()));
    for (char const* part : {"S-17", "HRN1607", "approved with conditions", "Open points 0", "accepted-with-condition by R. Ashdown", "T. Belmonte", "Condition: Charger firmware 3", "bench-report.pdf",
                             "overcharge-threshold", "4270, 4281 mV: within the limits", "5 samples of 2 lots", "approver: L. Corvin", "For the logger only.", "HISTORY", "no test of a part"}) {
        EXPECT_THAT(text, HasSubstr(part));
    }
}

TEST(RecordText, LinesFitATerminal) {
    auto const text = recordText(eventful());
    for (std::size_t begin = 0; begin < text.size();) {
        auto const end = text.find('\n', begin);
        EXPECT_LE(text::columnWidth(text.substr(begin, end - begin)), 80);
        begin = end + 1;
    }
}

TEST(RecordText, OpenAndCarriedAreSaid) {
    EXPECT_THAT(recordText(sampleRecord()), HasSubstr("open: not decided"));
    auto const made = openFrom(closedRecord(), sampleOpened(), at(30, corvin()));
    auto const text = unwrapped(recordText(made->record));
    EXPECT_THAT(text, HasSubstr("(carried)"));
    EXPECT_THAT(text, HasSubstr("Follows record"));
    EXPECT_THAT(recordHtml(made->record), HasSubstr("Carried from an earlier record"));
}

TEST(RecordHtml, HasEveryPart) {
    auto const html = recordHtml(eventful());
    for (char const* part : {"Record: approved with conditions", "Open points", "Approvals", "Bench tests", "4270, 4281 mV", "Scope and new review", "a new revision of either datasheet", "Method", "Coverage",
                             "History", "Content-Security-Policy", "id=\"f-111111111111\"", "Ed25519"}) {
        EXPECT_THAT(html, HasSubstr(part));
    }
}

TEST(RecordHtml, ResultsNotYetMeasuredHaveFields) {
    EXPECT_THAT(recordHtml(sampleRecord()), HasSubstr("<td class=\"field\"></td>"));
    EXPECT_THAT(recordHtml(sampleRecord()), HasSubstr("not signed"));
}

TEST(RecordHtml, ForeignTextIsEscaped) {
    auto opened = sampleOpened();
    opened.identification.title = "<script>alert(1)</script>";
    opened.comparison.findings[0].title = "<img src=x>";
    auto record = *openRecord(opened, at(0, ashdown()));
    record = with(std::move(record), Body{decision('1', Disposition::Open, "\"><b>\xE2\x80\xAE")}, at(1, ashdown()));
    auto const html = recordHtml(record);
    EXPECT_THAT(html, Not(HasSubstr("<script>")));
    EXPECT_THAT(html, Not(HasSubstr("<img")));
    EXPECT_THAT(html, Not(HasSubstr("\"><b>")));
    EXPECT_THAT(html, Not(HasSubstr("\xE2\x80\xAE")));
    EXPECT_THAT(recordText(record), Not(HasSubstr("\xE2\x80\xAE")));
}

Record ended() {
    auto record = with(eventful(), Body{givenTo("Purchasing")}, at(21, ashdown()));
    record = with(std::move(record), Body{givenTo("Stores & <repair>")}, at(22, ashdown()));
    record = with(std::move(record), Body{supersededBy("S-18")}, at(23, ashdown()));
    return with(std::move(record), Body{Distributed{"Purchasing", "a note that it is superseded", "", ""}}, at(24, belmonte()));
}

TEST(RecordText, WhoWasGivenItAndWhatTookItsPlaceAreSaid) {
    auto const text = unwrapped(recordText(ended()));
    for (char const* part :
         {"State superseded", "Superseded by the record S-18, The next revision (first entry cccc", "The cell of the product changed.", "DISTRIBUTION",
          "Purchasing: a copy of the record, with change CN-204; 2031-05-06, entered by R. Ashdown", "Purchasing: a note that it is superseded; 2031-05-04T09:24:00Z",
          "Stores & <repair> holds what the record said before it was superseded", "superseded by R. Ashdown", "a copy of the record to Purchasing"}) {
        EXPECT_THAT(text, HasSubstr(part));
    }
    EXPECT_THAT(recordText(sampleRecord()), HasSubstr("to nobody yet"));
}

TEST(RecordHtml, WhoWasGivenItAndWhatTookItsPlaceAreSaid) {
    auto const html = recordHtml(ended());
    for (char const* part : {"Record: superseded", "by the record S-18, The next revision", "<h2>Distribution</h2>", "<td>Purchasing</td>", "<td>CN-204</td>", "2031-05-06",
                             "Stores &amp; &lt;repair&gt; holds what"}) {
        EXPECT_THAT(html, HasSubstr(part));
    }
    EXPECT_THAT(recordHtml(sampleRecord()), HasSubstr("to nobody yet"));
}

}  // namespace
}  // namespace standin::record

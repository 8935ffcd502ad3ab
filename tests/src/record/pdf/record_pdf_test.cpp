#include "record/pdf/record_pdf.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "src/record/sample_record.h"
#include "src/report/pdf/read_pdf.h"

namespace standin::record {
namespace {

Record signedRecord() { return with(closedRecord(), Body{Signed{Role::Approver, "For the logger only."}}, at(20, corvin())); }

TEST(RecordPdf, TheSameRecordGivesTheSameBytes) {
    auto const pdf = recordPdf(signedRecord());
    EXPECT_EQ(pdf.substr(0, 5), "%PDF-");
    EXPECT_EQ(recordPdf(signedRecord()), pdf);
}

TEST(RecordPdf, SaysWhatWasDecidedByWhom) {
    auto const text = report::allText(recordPdf(signedRecord()));
    for (char const* part : {"S-17", "approved with conditions", "R. Ashdown", "L. Corvin", "Approvals", "Bench tests", "History", "bench-report.pdf", "For the logger only."}) EXPECT_THAT(text, ::testing::HasSubstr(part));
}

TEST(RecordPdf, WhoWasGivenItAndWhatTookItsPlaceAreSaid) {
    auto record = with(signedRecord(), Body{givenTo("Purchasing")}, at(21, ashdown()));
    record = with(std::move(record), Body{supersededBy("S-18")}, at(22, ashdown()));
    auto const text = report::allText(recordPdf(record));
    for (char const* part : {"Record: superseded", "by the record S-18", "Distribution", "Purchasing", "CN-204", "2031-05-06", "holds what the record said"})
        EXPECT_THAT(text, ::testing::HasSubstr(part));
    EXPECT_THAT(report::allText(recordPdf(signedRecord())), ::testing::HasSubstr("to nobody yet"));
}

}  // namespace
}  // namespace standin::record

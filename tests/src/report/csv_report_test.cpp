#include "report/csv_report.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "sample_comparison.h"

namespace standin::report {
namespace {

TEST(PairsCsv, OneLineAPairWithBothSides) {
    auto const sample = sampleComparison();
    auto const csv = pairsCsv(sample.comparison, sample.reference, sample.candidate);
    EXPECT_EQ(std::count(csv.begin(), csv.end(), '\n'), 2);
    EXPECT_NE(csv.find("overcharge-detect-voltage,reaches-higher,hazard-side,0.98,Overcharge detection voltage,VCU,VDD slow ramp; Ta = 25 °C,,4.245,4.275,4.305,V,3,"), std::string::npos);
}

TEST(PairsCsv, TellsWhatWasRecognisedInAPicture) {
    auto sample = sampleComparison();
    EXPECT_NE(pairsCsv(sample.comparison, sample.reference, sample.candidate).find(",reference recognised,candidate recognised\r\n"), std::string::npos);
    EXPECT_TRUE(pairsCsv(sample.comparison, sample.reference, sample.candidate).ends_with(",,\r\n"));
    sample.candidate.parameters[0].recognised = true;
    EXPECT_TRUE(pairsCsv(sample.comparison, sample.reference, sample.candidate).ends_with(",,yes\r\n"));
    EXPECT_TRUE(parametersCsv(sample.candidate).ends_with(",yes\r\n"));
}

TEST(PairsCsv, NoCellStartsAFormula) {
    auto sample = sampleComparison();
    sample.reference.parameters[0].name = "=HYPERLINK(\"x\")";
    sample.reference.parameters[0].symbol = "-A1+B2";
    sample.reference.parameters[0].min->text = "-0.3";
    auto const csv = pairsCsv(sample.comparison, sample.reference, sample.candidate);
    EXPECT_NE(csv.find("\"'=HYPERLINK(\"\"x\"\")\""), std::string::npos);
    EXPECT_NE(csv.find(",'-A1+B2,"), std::string::npos);
    EXPECT_NE(csv.find(",-0.3,"), std::string::npos);
}

TEST(ParametersCsv, EveryLineHasTheSameCells) {
    auto const sample = sampleComparison();
    auto const csv = parametersCsv(sample.reference);
    auto const head = csv.substr(0, csv.find('\n'));
    auto const row = csv.substr(head.size() + 1, csv.find('\n', head.size() + 1) - head.size() - 1);
    EXPECT_EQ(std::count(head.begin(), head.end(), ','), std::count(row.begin(), row.end(), ','));
}

}  // namespace
}  // namespace standin::report

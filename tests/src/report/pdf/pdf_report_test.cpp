#include "report/pdf/pdf_report.h"

#include <gtest/gtest.h>

#include "../sample_comparison.h"
#include "../sheet_pictures.h"
#include "read_pdf.h"

namespace standin::report {
namespace {

std::string pdfOf(Sample const& sample, Pictures pictures = {}, std::vector<risk::BenchTest> const& tests = {}) {
    Cuttings cuttings(pictures);
    return pdfReport(sample.comparison, sample.reference, sample.candidate, cuttings, tests);
}

// The text without blanks, which a PDF need not have.
std::string packed(std::string text) {
    std::erase(text, ' ');
    std::erase(text, '\n');
    return text;
}

std::size_t placeOf(std::string const& text, std::string_view words) { return packed(text).find(packed(std::string(words))); }

TEST(PdfReport, OpensWithTheVerdictThenCautionsThenHazardThenTheRest) {
    auto const text = allText(pdfOf(sampleComparison()));
    std::size_t last = 0;
    for (auto const* words : {"XK104 rev 1.4, Tarn Devices, 4 pages", "Bench test before use", "Coverage: 120 numbers and sentences compared", "C-OC", "reaches higher by 35 mV",
                              "reference, page 3", "4.245 / 4.275 / 4.340 V", "The candidate may let the cell charge further.", "must> be left open", "Spelling of colour", "numbers printed",
                              "All parameters 1", "The comparison covers printed documents only"}) {
        auto const place = placeOf(text, words);
        ASSERT_NE(place, std::string::npos) << words << "\n" << text;
        EXPECT_GT(place, last) << words;
        last = place;
    }
}

TEST(PdfReport, GivesTheSameBytesWithoutATime) {
    SheetPictures reference(4);
    SheetPictures candidate(2);
    auto const first = pdfOf(sampleComparison(), {&reference, &candidate});
    EXPECT_EQ(first, pdfOf(sampleComparison(), {&reference, &candidate}));
    EXPECT_EQ(first.find("CreationDate"), std::string::npos);
}

TEST(PdfReport, ShowsTheCuttingsOnce) {
    SheetPictures reference(4);
    SheetPictures candidate(2);
    auto const pdf = pdfOf(sampleComparison(), {&reference, &candidate});
    EXPECT_EQ(reference.drawn, 2);
    EXPECT_EQ(candidate.drawn, 2);
    std::size_t images = 0;
    auto reader = poppler::DocumentReader::open(std::as_bytes(std::span(pdf)), {});
    ASSERT_TRUE(reader);
    for (int page = 1; page <= reader->pageCount(); ++page) images += reader->readPage(page)->images.size();
    EXPECT_EQ(images, 4U);
    EXPECT_TRUE(poppler::readPage(pdfOf(sampleComparison())).images.empty());
}

TEST(PdfReport, ListsBenchTestsSectionsAndWhatWasNotRead) {
    auto sample = sampleComparison();
    sample.reference.sections = {{"s1", model::SectionKind::Ratings, "3 Ratings", 1, 2, {}}};
    sample.comparison.sections = {{"s1", "", 0, 2}};
    sample.candidate.coverage.unaccounted = {{"42", 1, {}}};
    sample.candidate.coverage.pagesWithoutText = {2};
    risk::BenchTest test;
    test.title = "Overcharge threshold";
    test.procedure = "Step the supply up.";
    test.setup = "four-wire";
    test.findings = {"aaaaaaaaaaaa"};
    test.limits = {{"aaaaaaaaaaaa", "Overcharge detection voltage", "reference", "Ta = 25 °C", "4.245", "4.305", "V"}};
    auto const text = allText(pdfOf(sample, {}, {test}));
    for (auto const* words : {"Overcharge threshold", "Step the supply up.", "four-wire", "min 4.245, max 4.305 V (reference)", "3 Ratings (page 2)", "page 1: the number 42", "page 2: no text layer"}) {
        EXPECT_NE(placeOf(text, words), std::string::npos) << words << "\n" << text;
    }
}

TEST(PdfReport, ShowsCellChecksAndWhatWasWorkedOut) {
    auto sample = sampleComparison();
    auto& comparison = sample.comparison;
    comparison.cellName = "Logger cell LC-7";
    model::CellCheck check;
    check.title = "Overcharge threshold, highest";
    check.limit = "at most 4.25 V";
    check.reference = model::CheckResult{"4.305 V", model::CheckOutcome::Violated, "reaches higher", {}};
    check.candidate = model::CheckResult{"", model::CheckOutcome::Open, "not stated", {}};
    comparison.cell = {check};
    model::Derived derived;
    derived.title = "Trip current";
    derived.formula = "V / R";
    derived.reference = model::WorkedValue{"2.1", "", "3.4", "A", {}, {}};
    comparison.derived = {derived};
    auto const text = allText(pdfOf(sample));
    for (auto const* words : {"Logger cell LC-7", "Overcharge threshold, highest", "at most 4.25 V", "4.305 V", "not stated", "Trip current", "V / R"}) {
        EXPECT_NE(placeOf(text, words), std::string::npos) << words << "\n" << text;
    }
}

TEST(PdfReport, LeavesTheReferenceOutWhereTheCandidateStandsAlone) {
    auto sample = sampleComparison();
    sample.comparison.kind = model::ComparisonKind::CandidateAlone;
    sample.comparison.reference = {};
    sample.comparison.findings.clear();
    sample.comparison.pairs.clear();
    auto const text = allText(pdfOf(sample));
    EXPECT_EQ(placeOf(text, "XK104"), std::string::npos);
    EXPECT_NE(placeOf(text, "YL204"), std::string::npos);
    EXPECT_NE(placeOf(text, "Check against the cell"), std::string::npos) << text;
}

TEST(PdfReport, SurvivesVeryLongTexts) {
    auto sample = sampleComparison();
    sample.comparison.findings[2].reference->text = std::string(30000, 'x');
    sample.comparison.findings[2].explanation = std::string(30000, 'y');
    sample.comparison.verdict.incompleteReasons.assign(300, "page 2 of the candidate has no text layer");
    EXPECT_FALSE(pdfOf(sample).empty());
}

}  // namespace
}  // namespace standin::report

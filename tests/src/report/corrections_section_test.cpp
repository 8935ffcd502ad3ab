#include "report/corrections_section.h"

#include <gtest/gtest.h>

#include "text/visible.h"

namespace standin::report {
namespace {

using model::Correction;
using model::CorrectionOutcome;

model::DocumentInfo corrected() {
    model::DocumentInfo document;
    Correction const value{"0f1e2d3c4b5a", CorrectionOutcome::Applied, "p1", 4, {}, "Detection voltage VCU", "max", "4.3O5", "4.305", "I. Brandt", "2031-05-02", "a stain"};
    document.corrections = {value};
    auto change = [&](CorrectionOutcome outcome, std::string field, std::string read, std::string text) {
        auto other = value;
        other.outcome = outcome;
        other.field = std::move(field);
        other.read = std::move(read);
        other.corrected = std::move(text);
        document.corrections.push_back(other);
    };
    change(CorrectionOutcome::Applied, "table_condition", "", "Ta = 25 °C");
    change(CorrectionOutcome::Applied, "min", "4.2", "");
    change(CorrectionOutcome::Applied, "parameter", "Detection voltage | VCU", "");
    change(CorrectionOutcome::Applied, "parameter", "", "4.28 V");
    change(CorrectionOutcome::NotNeeded, "unit", "V", "V");
    change(CorrectionOutcome::NotFound, "typ", "", "4.28");
    change(CorrectionOutcome::Ambiguous, "typ", "", "<b>");
    return document;
}

TEST(CorrectionLines, SayWhatWasReadAndWhoPutItRight) {
    std::vector<std::string> const expected{
        R"(page 4, Detection voltage VCU: max read as "4.3O5", put right as "4.305" by I. Brandt, 2031-05-02: a stain)",
        R"(page 4, Detection voltage VCU: table condition put in as "Ta = 25 °C" by I. Brandt, 2031-05-02: a stain)",
        R"(page 4, Detection voltage VCU: min "4.2" taken out by I. Brandt, 2031-05-02: a stain)",
        R"(page 4, Detection voltage VCU: taken out, it is no parameter, by I. Brandt, 2031-05-02: a stain)",
        R"(page 4, Detection voltage VCU: put in (4.28 V) by I. Brandt, 2031-05-02: a stain)",
        R"(page 4, Detection voltage VCU: unit "V" is read so now, no longer needs correcting (by I. Brandt, 2031-05-02: a stain))",
        R"(page 4, Detection voltage VCU: NOT APPLIED, no such row was read: typ "4.28" by I. Brandt, 2031-05-02: a stain)",
        R"(page 4, Detection voltage VCU: NOT APPLIED, several rows fit: typ "<b>" by I. Brandt, 2031-05-02: a stain)",
    };
    EXPECT_EQ(correctionLines(corrected()), expected);
}

TEST(AppendCorrections, NamesTheSheetsAndKeepsToTheWidth) {
    auto const sheet = corrected();
    model::DocumentInfo const plain;
    std::string text;
    appendCorrections(text, {{"reference", &plain}, {"candidate", &sheet}});
    EXPECT_NE(text.find("VALUES PUT RIGHT BY PEOPLE (8)"), std::string::npos);
    EXPECT_NE(text.find(" - candidate page 4, Detection voltage VCU: max read as"), std::string::npos) << text;
    for (std::size_t at = 0; at < text.size();) {
        auto const end = text.find('\n', at);
        EXPECT_LE(text::columnWidth(text.substr(at, end - at)), 80);
        at = end + 1;
    }
    std::string none;
    appendCorrections(none, {{"reference", &plain}});
    EXPECT_TRUE(none.empty());
}

TEST(CorrectionsHtml, EscapesForeignText) {
    auto const sheet = corrected();
    auto const html = correctionsHtml({{"", &sheet}});
    EXPECT_NE(html.find("typ &quot;&lt;b&gt;&quot;"), std::string::npos) << html;
    EXPECT_EQ(correctionsHtml({}), "");
}

}  // namespace
}  // namespace standin::report

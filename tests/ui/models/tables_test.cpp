// The models of the further pages on the demo pair: parameters, wording, pins,
// cell, coverage.
#include <algorithm>

#include <QAbstractItemModelTester>

#include <gtest/gtest.h>

#include "ui/models/cell_model.h"
#include "ui/models/coverage_model.h"
#include "ui/models/parameters_model.h"
#include "ui/models/pins_model.h"
#include "ui/models/wording_model.h"
#include "ui/support/desk_test.h"

namespace standin::ui {
namespace {

using testing::OpenSession;
using testing::waitUntilRead;

using Tester = QAbstractItemModelTester;

TEST(ParametersModel, HoldsEveryPair) {
    OpenSession session;
    ParametersModel model(*session);
    Tester const tester(&model, Tester::FailureReportingMode::Fatal);
    EXPECT_EQ(model.rowCount(), static_cast<int>(session->pair()->comparison.pairs.size()));
    int equal = 0;
    int withFinding = 0;
    for (int row = 0; row < model.rowCount(); ++row) {
        equal += model.rowAt(row).differs ? 0 : 1;
        withFinding += model.rowAt(row).finding.empty() ? 0 : 1;
    }
    EXPECT_GT(equal, 0) << "equal ones too";
    EXPECT_GT(withFinding, 0);
}

TEST(ParametersFilter, ListsOnlyThoseThatDifferAndCountsTheRest) {
    OpenSession session;
    ParametersModel model(*session);
    ParametersFilter filter(model);
    Tester const tester(&filter, Tester::FailureReportingMode::Fatal);
    EXPECT_EQ(filter.hiddenCount(), 0);
    filter.setOnlyDiffering(true);
    EXPECT_GT(filter.hiddenCount(), 0);
    for (int row = 0; row < filter.rowCount(); ++row) EXPECT_TRUE(filter.rowAt(row).differs);
    filter.setText("no parameter is called so");
    EXPECT_EQ(filter.rowCount(), 0);
    EXPECT_EQ(filter.hiddenCount(), model.rowCount());
}

TEST(ParametersFilter, SortsByNameAndBackToDocumentOrder) {
    OpenSession session;
    ParametersModel model(*session);
    ParametersFilter filter(model);
    filter.sort(ParametersModel::Name);
    for (int row = 1; row < filter.rowCount(); ++row) EXPECT_LE(QString::localeAwareCompare(filter.rowAt(row - 1).name, filter.rowAt(row).name), 0);
    filter.sort(-1);
    EXPECT_EQ(filter.rowAt(0).name, model.rowAt(0).name);
}

TEST(MarkedWords, MarkWhatTheOtherSideDoesNotHave) {
    auto const [reference, candidate] = markedWords("The mast relay must be left open.", "The mast relay may be left open.");
    auto const marked = [](std::vector<MarkedText> const& parts) {
        QString text;
        for (auto const& part : parts) text += part.marked ? part.text.trimmed() : QString{};
        return text;
    };
    EXPECT_EQ(marked(reference), "must");
    EXPECT_EQ(marked(candidate), "may");
    QString whole;
    for (auto const& part : candidate) whole += part.text;
    EXPECT_EQ(whole, "The mast relay may be left open.");
}

TEST(MarkedWords, MarkNothingWhereOneSideIsMissing) {
    auto const [reference, candidate] = markedWords("", "Only here.");
    EXPECT_TRUE(reference.empty());
    ASSERT_EQ(candidate.size(), 1U);
    EXPECT_FALSE(candidate.front().marked);
}

TEST(WordingModel, HidesAndCountsWhatDiffersInFormOnly) {
    OpenSession session;
    WordingModel model(*session);
    Tester const tester(&model, Tester::FailureReportingMode::Fatal);
    int const before = model.rowCount();
    int const hidden = model.hiddenCount();
    EXPECT_GT(before, 0);
    EXPECT_GT(hidden, 0);
    for (int row = 0; row < before; ++row) EXPECT_NE(model.rowAt(row).severity, model::Severity::Editorial);
    model.setFormOnlyShown(true);
    EXPECT_EQ(model.rowCount(), before + hidden);
    EXPECT_EQ(model.hiddenCount(), 0);
    EXPECT_EQ(model.rowOf(model.rowAt(3).finding), 3);
}

TEST(PinsModel, PairsThePinsByNumber) {
    OpenSession session;
    PinsModel model(*session);
    Tester const tester(&model, Tester::FailureReportingMode::Fatal);
    ASSERT_EQ(model.rowCount(), 6);
    for (std::size_t i = 0; i < model.rows().size(); ++i) {
        EXPECT_EQ(model.rows()[i].number, QString::number(i + 1));
        EXPECT_FALSE(model.rows()[i].referenceName.isEmpty());
        EXPECT_FALSE(model.rows()[i].candidateName.isEmpty());
    }
    EXPECT_FALSE(model.packages(DocumentSide::Reference).isEmpty());
}

TEST(CellModel, SaysThatNoProfileWasGiven) {
    OpenSession session;
    CellModel model(*session);
    Tester const tester(&model, Tester::FailureReportingMode::Fatal);
    EXPECT_TRUE(model.profileLine().contains("No cell profile"));
    EXPECT_EQ(model.rowCount(), static_cast<int>(session->pair()->comparison.cell.size() + session->pair()->comparison.derived.size()));
}

TEST(CoverageModel, ListsWhatWasNotCompared) {
    OpenSession session;
    CoverageModel model(*session);
    Tester const tester(&model, Tester::FailureReportingMode::Fatal);
    auto const& pair = *session->pair();
    auto const coverage = std::count_if(pair.comparison.findings.begin(), pair.comparison.findings.end(), [](auto const& f) {
        using model::Relation;
        return f.kind == model::FindingKind::Coverage || f.relation == Relation::OnlyReference || f.relation == Relation::OnlyCandidate ||
               f.relation == Relation::NotComparable || f.relation == Relation::Unread;
    });
    EXPECT_GT(coverage, 0) << "the demo pair has a section in one sheet only";
    auto expected = static_cast<std::size_t>(coverage);
    for (auto const* sheet : {&pair.reference, &pair.candidate}) {
        expected += sheet->coverage.unaccounted.size() + sheet->coverage.pagesWithoutText.size() + sheet->coverage.unreadTables.size() + sheet->coverage.unreadFigures.size() +
                    sheet->coverage.unreadPins.size() + sheet->coverage.recognised.size() + sheet->coverage.unrecognised.size() +
                    sheet->coverage.drawnSigns.size() + sheet->document.warnings.size();
    }
    EXPECT_EQ(static_cast<std::size_t>(model.rowCount()), expected);
    EXPECT_TRUE(model.accountLine(DocumentSide::Reference).contains(QString::number(pair.reference.coverage.numbers)));
}

}  // namespace
}  // namespace standin::ui

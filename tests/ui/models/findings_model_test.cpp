// FindingsModel, FindingsFilter and SectionsModel on the demo pair.
#include "ui/models/findings_model.h"

#include <numeric>

#include <QAbstractItemModelTester>
#include <QSignalSpy>

#include <gtest/gtest.h>

#include "report/finding_view.h"
#include "ui/models/findings_filter.h"
#include "ui/models/sections_model.h"
#include "ui/models/words.h"
#include "ui/support/desk_test.h"

namespace standin::ui {
namespace {

using model::Severity;
using testing::OpenSession;
using testing::waitUntilRead;

using Tester = QAbstractItemModelTester;

TEST(FindingsModel, HoldsEveryMainFindingGravestFirst) {
    OpenSession session;
    FindingsModel model(*session);
    Tester const tester(&model, Tester::FailureReportingMode::Fatal);
    std::size_t mains = 0;
    for (auto const& group : report::groupBySeverity(session->pair()->comparison)) mains += group.findings.size();
    ASSERT_EQ(model.rows().size(), mains);
    for (std::size_t i = 1; i < model.rows().size(); ++i) EXPECT_GE(model.rows()[i - 1].severity, model.rows()[i].severity);
    EXPECT_GT(model.count(Severity::Hazard), 0);
}

TEST(FindingsModel, SaysTheWholeRowInWords) {
    OpenSession session;
    FindingsModel model(*session);
    auto const& row = model.rows().front();
    auto const spoken = model.index(0).data(Qt::AccessibleTextRole).toString();
    for (auto const& part : {row.title, row.reference, row.candidate, severityWord(row.severity), dispositionWord(Disposition::Open)}) {
        EXPECT_TRUE(spoken.contains(part)) << part.toStdString() << " in " << spoken.toStdString();
    }
}

TEST(FindingsModel, GivesNumericFindingsALimitStrip) {
    OpenSession session;
    FindingsModel model(*session);
    int strips = 0;
    for (auto const& row : model.rows()) strips += row.strip ? 1 : 0;
    EXPECT_GT(strips, 0);
}

TEST(FindingsModel, ShowsLongSentencesFromTheirFirstDifferenceOn) {
    OpenSession session;
    FindingsModel model(*session);
    int shortened = 0;
    for (auto const& row : model.rows()) {
        if (!row.reference.startsWith(QStringLiteral("…"))) continue;
        ++shortened;
        EXPECT_TRUE(row.candidate.startsWith(QStringLiteral("…")));
        EXPECT_NE(row.reference.left(60), row.candidate.left(60)) << row.reference.toStdString();
    }
    EXPECT_GT(shortened, 0);
}

TEST(FindingsModel, FollowsDecisionsAndNewPairs) {
    OpenSession session;
    FindingsModel model(*session);
    Tester const tester(&model, Tester::FailureReportingMode::Fatal);
    QSignalSpy changed(&model, &QAbstractItemModel::dataChanged);
    auto const id = model.rows()[2].id;
    session->decisions().decide(id, {Disposition::Accepted, "shown irrelevant"}, "decision");
    EXPECT_EQ(model.rows()[2].disposition, Disposition::Accepted);
    EXPECT_EQ(changed.count(), 1);
    QSignalSpy reset(&model, &QAbstractItemModel::modelReset);
    session->exchange();
    ASSERT_TRUE(waitUntilRead(*session));
    EXPECT_EQ(reset.count(), 1);
}

TEST(FindingsFilter, NeverHidesAHazardFinding) {
    OpenSession session;
    FindingsModel model(*session);
    FindingsFilter filter(model);
    Tester const tester(&filter, Tester::FailureReportingMode::Fatal);
    for (auto const severity : report::kSeverities) filter.setShown(severity, false);
    filter.setText("words that no finding holds");
    filter.setKind(model::FindingKind::Ordering);
    filter.setSection(0);
    filter.setOnlyUndecided(true);
    session->decisions().decide(model.rows().front().id, {Disposition::Accepted, "x"}, "decision");
    filter.setOrder(FindingOrder::Name);
    ASSERT_EQ(filter.rowCount(), model.count(Severity::Hazard));
    for (int row = 0; row < filter.rowCount(); ++row) EXPECT_EQ(filter.rowAt(row).severity, Severity::Hazard);
}

TEST(FindingsFilter, CountsWhatIsHidden) {
    OpenSession session;
    FindingsModel model(*session);
    FindingsFilter filter(model);
    EXPECT_EQ(filter.hiddenCount(), model.count(Severity::Editorial)) << "editorial findings are hidden at first";
    EXPECT_TRUE(filter.hiddenText().contains(QString::number(model.count(Severity::Editorial))));
    filter.setShown(Severity::Note, false);
    EXPECT_EQ(filter.hiddenCount(), model.count(Severity::Editorial) + model.count(Severity::Note));
    filter.showEverything();
    EXPECT_EQ(filter.hiddenCount(), 0);
    EXPECT_TRUE(filter.hiddenText().isEmpty());
}

TEST(FindingsFilter, FindsWordsInAnyColumnAndOrder) {
    OpenSession session;
    FindingsModel model(*session);
    FindingsFilter filter(model);
    filter.setText("DELAY short");
    int matching = 0;
    for (int row = 0; row < filter.rowCount(); ++row) matching += filter.rowAt(row).title.contains("delay", Qt::CaseInsensitive) ? 1 : 0;
    EXPECT_GT(matching, 0);
    EXPECT_LT(filter.rowCount(), model.rowCount());
}

TEST(FindingsFilter, OpensEachGroupWithItsHeadingOnce) {
    OpenSession session;
    FindingsModel model(*session);
    FindingsFilter filter(model);
    filter.showEverything();
    for (auto const order : {FindingOrder::Severity, FindingOrder::Section, FindingOrder::Kind, FindingOrder::Decision}) {
        filter.setOrder(order);
        QStringList headings;
        for (int row = 0; row < filter.rowCount(); ++row) {
            if (auto const heading = filter.headingAt(row); !heading.isEmpty()) headings += heading;
        }
        ASSERT_FALSE(headings.isEmpty());
        if (order == FindingOrder::Section) continue;  // several sections may carry one title
        EXPECT_EQ(headings.removeDuplicates(), 0) << static_cast<int>(order);
    }
}

TEST(FindingsFilter, FindsARowByItsFinding) {
    OpenSession session;
    FindingsModel model(*session);
    FindingsFilter filter(model);
    EXPECT_EQ(filter.proxyRowOf(filter.rowAt(1).id), 1);
    EXPECT_EQ(filter.proxyRowOf(model.rows().back().id), -1) << "editorial: hidden";
    EXPECT_EQ(filter.proxyRowOf("no such id"), -1);
}

TEST(SectionsModel, CountsTheFindingsOfEveryRung) {
    OpenSession session;
    FindingsModel findings(*session);
    SectionsModel sections(*session, findings);
    Tester const tester(&sections, Tester::FailureReportingMode::Fatal);
    ASSERT_EQ(sections.rowCount(), static_cast<int>(session->pair()->comparison.sections.size()) + 1);
    auto const& all = sections.rungAt(0);
    EXPECT_TRUE(all.all);
    EXPECT_EQ(all.findings + all.editorial, findings.rowCount());
    int found = 0;
    for (int row = 1; row < sections.rowCount(); ++row) found += sections.rungAt(row).findings + sections.rungAt(row).editorial;
    EXPECT_GT(found, 0);
    EXPECT_LE(found, findings.rowCount());
}

TEST(SectionsModel, ARungListsWhatItCounts) {
    OpenSession session;
    FindingsModel findings(*session);
    FindingsFilter filter(findings);
    SectionsModel sections(*session, findings);
    filter.showEverything();
    for (int row = 1; row < sections.rowCount(); ++row) {
        filter.setSection(row - 1);
        int listed = 0;
        for (int i = 0; i < filter.rowCount(); ++i) listed += filter.rowAt(i).sectionRung == row - 1 ? 1 : 0;
        EXPECT_EQ(listed, sections.rungAt(row).findings + sections.rungAt(row).editorial) << row;
    }
}

TEST(SectionRung, IsTheCandidatesWhereOnlyItHasThePlace) {
    model::Comparison comparison;
    comparison.sections = {{"s1", "s2", 1, 0}, {"s2", "s1", 1, 0}};
    model::Finding finding;
    finding.section = "s1";
    finding.candidate.emplace();
    EXPECT_EQ(sectionRungOf(finding, comparison), 1);
    finding.reference.emplace();
    EXPECT_EQ(sectionRungOf(finding, comparison), 0);
    finding.section.clear();
    EXPECT_EQ(sectionRungOf(finding, comparison), -1);
}

}  // namespace
}  // namespace standin::ui

// The cuttings of a finding: drawn, framed in view, and in words where there is none.
#include "ui/views/evidence_view.h"

#include <QTest>

#include <gtest/gtest.h>

#include "ui/support/desk_test.h"

namespace standin::ui {
namespace {

using testing::OpenSession;

constexpr int kLongestMs = 60000;

TEST(EvidenceView, ShowsBothPlacesFramed) {
    OpenSession session;
    EvidenceView view(*session);
    view.resize(700, 320);
    view.show();
    auto const& finding = testing::firstFinding(*session, model::FindingKind::Parameter);
    ASSERT_TRUE(finding.reference && finding.candidate);
    session->setCurrentFinding(finding.id);
    for (auto const side : kSides) {
        auto* cutting = view.cutting(side);
        ASSERT_TRUE(QTest::qWaitFor([&] { return cutting->isDrawn(); }, kLongestMs));
        EXPECT_TRUE(QRectF(cutting->rect()).adjusted(-3, -3, 3, 3).contains(cutting->frame()));
        auto const picture = cutting->grab(cutting->frame().toRect()).toImage();
        bool ink = false;
        for (int y = 4; y < picture.height() - 4 && !ink; ++y) {
            for (int x = 4; x < picture.width() - 4 && !ink; ++x) ink = qGray(picture.pixel(x, y)) < 90;
        }
        EXPECT_TRUE(ink) << "letters stand in the frame";
        EXPECT_FALSE(cutting->accessibleDescription().isEmpty());
    }
}

TEST(EvidenceView, FollowsItsSize) {
    OpenSession session;
    EvidenceView view(*session);
    view.resize(500, 300);
    view.show();
    session->setCurrentFinding(testing::firstFinding(*session, model::FindingKind::Parameter).id);
    auto* cutting = view.cutting(DocumentSide::Reference);
    ASSERT_TRUE(QTest::qWaitFor([&] { return cutting->isDrawn(); }, kLongestMs));
    double const narrow = cutting->frame().width();
    view.resize(1100, 500);
    EXPECT_TRUE(QTest::qWaitFor([&] { return cutting->isDrawn() && cutting->frame().width() > narrow; }, kLongestMs));
}

TEST(EvidenceView, SaysWhereNothingStands) {
    OpenSession session;
    EvidenceView view(*session);
    view.resize(500, 300);
    view.show();
    for (auto const& finding : session->pair()->comparison.findings) {
        if (finding.reference.has_value() == finding.candidate.has_value()) continue;
        session->setCurrentFinding(finding.id);
        auto const missing = finding.reference ? DocumentSide::Candidate : DocumentSide::Reference;
        EXPECT_FALSE(view.cutting(missing)->accessibleDescription().isEmpty());
        EXPECT_TRUE(view.cutting(missing)->frame().isNull());
        return;
    }
    GTEST_SKIP() << "every finding of the demo pair has two sides";
}

}  // namespace
}  // namespace standin::ui

// The pages of the demo pair with real events: drawing, zoom, turning, clicking,
// choosing text, finding.
#include "ui/views/pages_view.h"

#include <QApplication>
#include <QClipboard>
#include <QFile>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollBar>
#include <QTest>

#include <gtest/gtest.h>

#include "ui/support/desk_test.h"
#include "ui/views/page_canvas.h"

namespace standin::ui {
namespace {

using testing::OpenSession;

constexpr int kLongestMs = 60000;

struct Shown {
    OpenSession session;
    PagesView view{*session};

    Shown() {
        view.resize(1200, 700);
        view.show();
    }
    [[nodiscard]] bool waitForPages() {
        return QTest::qWaitFor([&] { return canvas(DocumentSide::Reference).stack().pageCount() > 0 && canvas(DocumentSide::Candidate).stack().pageCount() > 0; }, kLongestMs);
    }
    [[nodiscard]] PageCanvas& canvas(DocumentSide side) { return *view.canvas(side); }
    [[nodiscard]] bool waitUntilSharp(DocumentSide side, int page) {
        return QTest::qWaitFor([&] { return canvas(side).isSharp(page); }, kLongestMs);
    }
    void clickOn(DocumentSide side, int page, model::Rect const& box) {
        canvas(side).showPlace(page, box);
        QTest::mouseClick(canvas(side).viewport(), Qt::LeftButton, {}, canvas(side).placeOnViewport(page, box).center());
    }
};

TEST(PagesView, DrawsWhatIsInView) {
    Shown shown;
    ASSERT_TRUE(shown.waitForPages());
    for (auto const side : kSides) {
        shown.canvas(side).goToPage(1);
        ASSERT_TRUE(shown.waitUntilSharp(side, 1));
        auto const picture = shown.canvas(side).viewport()->grab().toImage();
        bool ink = false;
        for (int y = 0; y < picture.height() && !ink; y += 2) {
            for (int x = 40; x < picture.width() - 40 && !ink; x += 2) ink = qGray(picture.pixel(x, y)) < 60;
        }
        EXPECT_TRUE(ink) << "a page that is not blank";
    }
}

// Editorial findings stand line under line: frames around all of them would lie on
// the print of a page that is shown small.
TEST(PagesView, WhatChangesNoMeaningHasABarBesideItAndNoFrame) {
    Shown shown;
    ASSERT_TRUE(shown.waitForPages());
    auto& canvas = shown.canvas(DocumentSide::Reference);
    canvas.goToPage(1);
    canvas.setZoom(0.6);
    ASSERT_TRUE(shown.waitUntilSharp(DocumentSide::Reference, 1));
    model::Rect const box{100, 300, 400, 314};
    auto const place = canvas.placeOnViewport(1, box);
    auto const pictureWith = [&](std::vector<PageMark> marks) {
        canvas.setMarks(std::move(marks));
        return canvas.viewport()->grab().toImage();
    };
    auto const plain = pictureWith({});
    auto const changedIn = [&](QImage const& picture, QRect const& rect) {
        int changed = 0;
        for (int y = rect.top(); y <= rect.bottom(); ++y) {
            for (int x = rect.left(); x <= rect.right(); ++x) changed += picture.pixel(x, y) != plain.pixel(x, y) ? 1 : 0;
        }
        return changed;
    };
    auto const whole = place.adjusted(-8, -8, 8, 8);
    auto const beside = QRect(QPoint(whole.left(), whole.top()), QPoint(place.left(), whole.bottom()));
    auto const editorial = pictureWith({{1, box, MarkStyle::Editorial}});
    EXPECT_GT(changedIn(editorial, beside), 0);
    EXPECT_EQ(changedIn(editorial, whole), changedIn(editorial, beside)) << "nothing lies on or under the print";
    auto const finding = pictureWith({{1, box, MarkStyle::Finding}});
    EXPECT_GT(changedIn(finding, whole), changedIn(finding, beside)) << "a finding of weight has its frame";
}

TEST(PagesView, BringsBothPlacesOfTheFindingIntoView) {
    Shown shown;
    ASSERT_TRUE(shown.waitForPages());
    for (auto const& finding : shown.session->pair()->comparison.findings) {
        if (!finding.reference || !finding.candidate || finding.reference->page < 3) continue;
        shown.session->setCurrentFinding(finding.id);
        QTest::qWait(5);
        for (auto const side : kSides) {
            auto const& place = *sideOf(finding, side);
            EXPECT_TRUE(shown.canvas(side).viewport()->rect().intersects(shown.canvas(side).placeOnViewport(place.page, place.box))) << finding.title;
        }
        return;
    }
    FAIL() << "the demo pair has no finding on a later page";
}

TEST(PagesView, AClickTellsWhatWasReadAndShowsThePartner) {
    Shown shown;
    ASSERT_TRUE(shown.waitForPages());
    auto const& finding = testing::firstFinding(*shown.session, model::FindingKind::Parameter);
    shown.session->setCurrentFinding({});
    auto const& row = shown.session->pair()->comparison.pairs.at(static_cast<std::size_t>(finding.pair));
    auto const& places = shown.canvas(DocumentSide::Reference).places();
    auto const place = places[static_cast<std::size_t>(places.parameterPlace(row.reference))];
    shown.clickOn(DocumentSide::Reference, place.page, place.box);
    EXPECT_NE(shown.session->currentFinding(), nullptr);
    EXPECT_TRUE(shown.view.readText().contains(place.text));
    auto const& others = shown.canvas(DocumentSide::Candidate).places();
    auto const partner = others[static_cast<std::size_t>(others.parameterPlace(row.candidate))];
    EXPECT_TRUE(shown.canvas(DocumentSide::Candidate).viewport()->rect().intersects(shown.canvas(DocumentSide::Candidate).placeOnViewport(partner.page, partner.box)));
}

TEST(PagesView, TheButtonAsksForTheRowThatWasClicked) {
    Shown shown;
    ASSERT_TRUE(shown.waitForPages());
    auto const& row = shown.session->pair()->candidate.parameters.front();
    std::string asked;
    QObject::connect(&shown.view, &PagesView::correctionWanted, [&](DocumentSide side, std::string const& parameter) {
        if (side == DocumentSide::Candidate) asked = parameter;
    });
    shown.clickOn(DocumentSide::Candidate, row.page, row.box);
    auto const buttons = shown.view.findChildren<QPushButton*>();
    ASSERT_EQ(buttons.size(), 1);
    QTest::mouseClick(buttons.front(), Qt::LeftButton);
    EXPECT_FALSE(asked.empty());
}

TEST(PagesView, DraggingChoosesTextToCopy) {
    Shown shown;
    ASSERT_TRUE(shown.waitForPages());
    auto& canvas = shown.canvas(DocumentSide::Reference);
    auto const& sentence = shown.session->pair()->reference.text.front();
    auto const& place = sentence.places.front();
    canvas.showPlace(place.page, place.box);
    auto const on = canvas.placeOnViewport(place.page, place.box);
    QTest::mousePress(canvas.viewport(), Qt::LeftButton, {}, on.topLeft());
    QTest::mouseMove(canvas.viewport(), on.center());
    QTest::mouseMove(canvas.viewport(), on.bottomRight());
    QTest::mouseRelease(canvas.viewport(), Qt::LeftButton, {}, on.bottomRight());
    QTest::keyClick(&canvas, Qt::Key_C, Qt::ControlModifier);
    EXPECT_TRUE(QApplication::clipboard()->text().contains(QString::fromStdString(sentence.text)));
}

TEST(PagesView, FindsAndStepsThroughBothDocuments) {
    Shown shown;
    ASSERT_TRUE(shown.waitForPages());
    shown.view.focusSearch();
    auto* field = shown.view.searchField();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&shown.view));
    QTest::keyClicks(field, "voltage");
    EXPECT_FALSE(shown.canvas(DocumentSide::Reference).chosenText().isEmpty());
    QTest::keyClick(field, Qt::Key_Return, Qt::ShiftModifier);  // from the first back to the last
    EXPECT_TRUE(shown.canvas(DocumentSide::Reference).chosenText().isEmpty());
    EXPECT_TRUE(shown.canvas(DocumentSide::Candidate).chosenText().contains("voltage", Qt::CaseInsensitive));
    QTest::keyClicks(field, " never printed");
    EXPECT_TRUE(shown.canvas(DocumentSide::Candidate).chosenText().isEmpty());
}

TEST(PagesView, ZoomKeepsTheMiddleAndIsDrawnAnew) {
    Shown shown;
    ASSERT_TRUE(shown.waitForPages());
    auto& canvas = shown.canvas(DocumentSide::Reference);
    canvas.goToPage(3);
    double const before = canvas.stack().zoom();
    canvas.setFocus();
    QTest::keyClick(&canvas, Qt::Key_Plus);
    EXPECT_GT(canvas.stack().zoom(), before);
    EXPECT_EQ(canvas.currentPage(), 3);
    EXPECT_TRUE(shown.waitUntilSharp(DocumentSide::Reference, 3));
    QTest::keyClick(&canvas, Qt::Key_W);
    EXPECT_NEAR(canvas.stack().zoom(), before, 1e-6);
    QTest::keyClick(&canvas, Qt::Key_R);
    EXPECT_EQ(canvas.stack().quarters(), 1);
    EXPECT_EQ(canvas.currentPage(), 3);
    QTest::keyClick(&canvas, Qt::Key_G);
    EXPECT_LE(canvas.stack().rectOf(3).height(), canvas.viewport()->height());
}

TEST(PagesView, PicturesStayBoundedWhileAllPagesAreLookedAt) {
    Shown shown;
    ASSERT_TRUE(shown.waitForPages());
    auto& canvas = shown.canvas(DocumentSide::Reference);
    canvas.setZoom(6);
    for (int page = 1; page <= canvas.stack().pageCount(); ++page) {
        canvas.goToPage(page);
        ASSERT_TRUE(shown.waitUntilSharp(DocumentSide::Reference, page)) << page;
        EXPECT_LT(canvas.pictureBytes(), std::size_t{80} << 20);
    }
}

TEST(PagesView, ScrollingFastDropsWhatIsPast) {
    Shown shown;
    ASSERT_TRUE(shown.waitForPages());
    auto& canvas = shown.canvas(DocumentSide::Reference);
    canvas.setZoom(3);
    for (int turn = 0; turn < 40; ++turn) {
        canvas.verticalScrollBar()->setValue(turn % 2 == 0 ? canvas.verticalScrollBar()->maximum() : 0);
        QTest::qWait(2);
    }
    EXPECT_LE(shown.session->drawer().waiting(), 8U);
    shown.view.hide();
    EXPECT_EQ(shown.session->drawer().waiting(), 0U) << "nobody looks";
}

TEST(PagesView, AFileThatIsGoneIsStillShownAsItWasRead) {
    QTemporaryDir const folder;
    auto request = testing::demoRequest();
    auto const copy = folder.filePath("sheet.pdf");
    ASSERT_TRUE(QFile::copy(QString::fromStdString(request.reference), copy));
    request.reference = copy.toStdString();
    Session session(folder.filePath("decisions"));
    session.open(request);
    ASSERT_TRUE(testing::waitUntilRead(session));
    ASSERT_TRUE(QFile::remove(copy));
    PagesView view(session);
    view.resize(1000, 600);
    view.show();
    EXPECT_TRUE(QTest::qWaitFor([&] { return view.canvas(DocumentSide::Reference)->stack().pageCount() > 0 && view.canvas(DocumentSide::Reference)->isSharp(1); }, kLongestMs));
}

TEST(PagesView, MayBeClosedWhileItDraws) {
    OpenSession session;
    {
        PagesView view(*session);
        view.resize(1600, 1000);
        view.show();
        QTest::qWait(40);
    }
    QTest::qWait(50);
    EXPECT_EQ(session->drawer().waiting(), 0U);
}

}  // namespace
}  // namespace standin::ui

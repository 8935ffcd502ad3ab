// Small drawings in pixels: what other rounding does is the same, what a hand does
// is not.
#include "compare/drawing_match.h"

#include <utility>

#include <gtest/gtest.h>

namespace standin::compare {
namespace {

using model::Picture;

class Canvas {
public:
    Canvas(int width, int height) : m_picture{width, height, {0, 0, static_cast<float>(width), static_cast<float>(height)}, {}} {
        m_picture.rgb.assign(static_cast<std::size_t>(width) * static_cast<std::size_t>(height) * 3, 255);
    }
    Canvas& line(int x0, int y0, int x1, int y1, std::uint8_t shade = 0) {
        int const steps = std::max({std::abs(x1 - x0), std::abs(y1 - y0), 1});
        for (int i = 0; i <= steps; ++i) dot(x0 + (x1 - x0) * i / steps, y0 + (y1 - y0) * i / steps, shade);
        return *this;
    }
    void dot(int x, int y, std::uint8_t shade) {
        if (x < 0 || y < 0 || x >= m_picture.width || y >= m_picture.height) return;
        auto const at = (static_cast<std::size_t>(y) * static_cast<std::size_t>(m_picture.width) + static_cast<std::size_t>(x)) * 3;
        for (std::size_t i = 0; i < 3; ++i) m_picture.rgb[at + i] = shade;
    }
    [[nodiscard]] Picture const& picture() const { return m_picture; }

private:
    Picture m_picture;
};

// A frame, a grid and a falling line: the plan of a curve. `by` moves all of it.
Canvas plan(int by = 0, int width = 300, int height = 200) {
    Canvas canvas(width, height);
    for (int i = 0; i <= 4; ++i) {
        canvas.line(20 + by, 20 + by + i * 40, 260 + by, 20 + by + i * 40);
        canvas.line(20 + by + i * 60, 20 + by, 20 + by + i * 60, 180 + by);
    }
    canvas.line(20 + by, 40 + by, 260 + by, 150 + by);
    return canvas;
}

TEST(MatchPictures, TheSameDrawingIsTheSame) {
    EXPECT_EQ(matchPictures(plan().picture(), plan().picture()), DrawingMatch::Same);
    EXPECT_EQ(matchPictures(plan(0).picture(), plan(1).picture()), DrawingMatch::Same) << "rounded otherwise";
    EXPECT_EQ(matchPictures(plan(0).picture(), plan(9).picture()), DrawingMatch::Same) << "moved in its box";
    EXPECT_EQ(matchPictures(plan(0).picture(), plan(0, 310, 215).picture()), DrawingMatch::Same) << "in a larger box";
    EXPECT_EQ(matchPictures(Canvas(40, 40).picture(), Canvas(40, 40).picture()), DrawingMatch::Same) << "nothing drawn";
}

TEST(MatchPictures, AChangeIsADifference) {
    struct Case {
        char const* what;
        Canvas changed;
    };
    Canvas blank(300, 200);
    Canvas without(300, 200);
    for (int i = 0; i <= 4; ++i) without.line(20, 20 + i * 40, 260, 20 + i * 40).line(20 + i * 60, 20, 20 + i * 60, 180);
    for (auto const& c : {Case{"a line more", plan().line(30, 170, 200, 30)}, Case{"a small symbol more", plan().line(100, 70, 112, 70).line(100, 70, 106, 80)},
                          Case{"the curve is gone", without}, Case{"all is gone", blank}}) {
        EXPECT_EQ(matchPictures(plan().picture(), c.changed.picture()), DrawingMatch::Different) << c.what;
        EXPECT_EQ(matchPictures(c.changed.picture(), plan().picture()), DrawingMatch::Different) << c.what << ", the other way round";
    }
    Canvas moved = without;
    moved.line(20, 46, 260, 156);  // the curve three points lower
    EXPECT_EQ(matchPictures(plan().picture(), moved.picture()), DrawingMatch::Different);
}

TEST(MatchPictures, PaleTintsAreNoInk) {
    Canvas tinted = plan();
    for (int y = 25; y < 55; ++y) tinted.line(25, y, 75, y, 235);
    Canvas const again = plan();
    EXPECT_EQ(matchPictures(again.picture(), tinted.picture()), DrawingMatch::Different) << "the tint covers the curve";
    Canvas beside = plan();
    for (int y = 145; y < 178; ++y) beside.line(22, y, 78, y, 235);
    EXPECT_EQ(matchPictures(again.picture(), beside.picture()), DrawingMatch::Same);
}

// Gives one picture for every place.
class OnePicture final : public model::PagePictures {
public:
    explicit OnePicture(Picture picture) : m_picture(std::move(picture)) {}
    [[nodiscard]] int pageCount() const override { return 1; }
    [[nodiscard]] model::Result<model::Rect> pageBox(int) const override { return m_picture.box; }
    [[nodiscard]] model::Result<Picture> render(int, model::Rect const&, double) override { return m_picture; }

private:
    Picture m_picture;
};

TEST(MatchDrawings, LeavesLetteringToTheText) {
    OnePicture reference(plan().picture());
    OnePicture candidate(plan().line(100, 100, 130, 100).line(100, 104, 130, 104).picture());  // letters in another face
    EXPECT_EQ(matchDrawings({&reference, 1, {}, {}}, {&candidate, 1, {}, {}}), DrawingMatch::Different);
    std::vector<model::Rect> const lettering{{98, 96, 132, 108}};
    EXPECT_EQ(matchDrawings({&reference, 1, {}, lettering}, {&candidate, 1, {}, lettering}), DrawingMatch::Same);
    EXPECT_EQ(matchDrawings({&reference, 1, {}, {{-50, -50, 5, 900}}}, {&reference, 1, {}, {}}), DrawingMatch::Same) << "boxes may stick out";
}

TEST(MatchDrawings, IsUnknownWithoutPictures) { EXPECT_EQ(matchDrawings({}, {}), DrawingMatch::Unknown); }

}  // namespace
}  // namespace standin::compare

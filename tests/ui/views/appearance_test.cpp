// Colours, strips, shapes and drawings: what can be told without a window.
#include "ui/views/appearance.h"

#include <cmath>
#include <set>

#include <QCheckBox>
#include <QImage>
#include <QPainter>
#include <QPixmap>
#include <QStyle>
#include <QStyleOptionButton>

#include <gtest/gtest.h>

#include "ui/views/package_drawing.h"
#include "ui/views/severity_mark.h"
#include "ui/views/strip_painter.h"

namespace standin::ui {
namespace {

double luminance(QColor const& colour) {
    auto const linear = [](double part) { return part <= 0.04045 ? part / 12.92 : std::pow((part + 0.055) / 1.055, 2.4); };
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) + 0.0722 * linear(colour.blueF());
}

double contrast(QColor const& a, QColor const& b) {
    double const first = luminance(a) + 0.05;
    double const second = luminance(b) + 0.05;
    return std::max(first, second) / std::min(first, second);
}

QPalette paletteWithBase(QColor const& base) {
    QPalette palette;
    palette.setColor(QPalette::Base, base);
    return palette;
}

TEST(Appearance, AnEmptyCheckBoxIsSeen) {
    constexpr double kEnough = 3;  // of a shape, WCAG AA
    for (auto const appearance : {Appearance::Light, Appearance::Dark}) {
        applyAppearance(appearance);
        QCheckBox box;
        box.resize(box.sizeHint());
        QStyleOptionButton option;
        option.initFrom(&box);
        auto const indicator = box.style()->subElementRect(QStyle::SE_CheckBoxIndicator, &option, &box);
        auto const image = box.grab(indicator).toImage();
        QColor const edge = image.pixelColor(image.width() / 2, 0);
        EXPECT_GE(contrast(edge, coloursFor(box.palette()).ground), kEnough) << "appearance " << static_cast<int>(appearance);
    }
    applyAppearance(Appearance::Light);
}

TEST(Appearance, EveryTextCanBeReadOnEveryGround) {
    constexpr double kEnough = 4.5;  // of normal text, WCAG AA
    for (auto const& base : {QColor(Qt::white), QColor(Qt::black)}) {
        auto const& colours = coloursFor(paletteWithBase(base));
        for (auto const& ground : {colours.ground, colours.paper, colours.chosen}) {
            for (auto const& text : {colours.ink, colours.soft, colours.reference, colours.candidate}) {
                EXPECT_GE(contrast(text, ground), kEnough) << text.name().toStdString() << " on " << ground.name().toStdString();
            }
        }
        EXPECT_GE(contrast(colours.reference, colours.referenceTint), kEnough);
        EXPECT_GE(contrast(colours.candidate, colours.candidateTint), kEnough);
    }
}

TEST(SeverityMark, ShapesDifferWithoutColour) {
    std::set<QByteArray> pictures;
    for (auto const severity : {model::Severity::Hazard, model::Severity::Function, model::Severity::Margin, model::Severity::Note, model::Severity::Editorial}) {
        QImage image(24, 24, QImage::Format_RGB32);
        image.fill(Qt::white);
        QPainter painter(&image);
        drawSeverityMark(painter, image.rect(), severity, Qt::black);
        painter.end();
        pictures.insert(QByteArray(reinterpret_cast<char const*>(image.constBits()), image.sizeInBytes()));
    }
    EXPECT_EQ(pictures.size(), 5U);
}

class Strip {
public:
    explicit Strip(report::LimitStrip const& strip) : m_image(300, 60, QImage::Format_RGB32), m_colours(coloursFor(paletteWithBase(Qt::white))) {
        m_image.fill(m_colours.paper);
        QPainter painter(&m_image);
        drawLimitStrip(painter, m_image.rect(), strip, m_colours);
    }
    // Columns from which to which a colour is found.
    [[nodiscard]] std::pair<int, int> columns(QColor const& colour) const {
        std::pair<int, int> range{-1, -1};
        for (int x = 0; x < m_image.width(); ++x) {
            for (int y = 0; y < m_image.height(); ++y) {
                if (m_image.pixelColor(x, y) != colour) continue;
                if (range.first < 0) range.first = x;
                range.second = x;
            }
        }
        return range;
    }
    [[nodiscard]] Colours const& colours() const { return m_colours; }

private:
    QImage m_image;
    Colours const& m_colours;
};

TEST(StripPainter, PutsBothIntervalsWhereTheyLie) {
    report::LimitStrip strip;
    strip.reference = {0.1, 0.3, 0.5};
    strip.candidate = {0.6, std::nullopt, 0.9};
    strip.hazardSide = model::HazardSide::Higher;
    Strip const drawn(strip);
    auto const reference = drawn.columns(drawn.colours().reference);
    auto const candidate = drawn.columns(drawn.colours().candidate);
    auto const arrow = drawn.columns(drawn.colours().ink);
    ASSERT_GE(reference.first, 0);
    ASSERT_GE(candidate.first, 0);
    EXPECT_LT(reference.second, candidate.first);
    EXPECT_GT(arrow.first, candidate.second) << "the arrow stands at the hazardous side";
}

TEST(StripPainter, TheArrowFollowsTheSide) {
    report::LimitStrip strip;
    strip.reference = {0.2, std::nullopt, 0.8};
    strip.candidate = {0.4, std::nullopt, 0.8};
    strip.hazardSide = model::HazardSide::Lower;
    Strip const lower(strip);
    EXPECT_LT(lower.columns(lower.colours().ink).second, 20);
    strip.hazardSide = model::HazardSide::None;
    Strip const none(strip);
    EXPECT_EQ(none.columns(none.colours().ink).first, -1);
}

TEST(PinSides, StandsAsPackagesDo) {
    struct Case {
        int pins;
        char const* name;
        PinSides sides;
    };
    Case const cases[] = {
        {3, "SOT-23", {2, 0, 1, 0}},       {5, "SOT-23-5", {3, 0, 2, 0}},     {6, "SOT-23-6", {3, 0, 3, 0}}, {8, "SO-8", {4, 0, 4, 0}},
        {16, "QFN-16", {4, 4, 4, 4}},      {10, "QFN-10", {5, 0, 5, 0}},      {0, "SO-8", {}},               {16, "TSSOP-16", {8, 0, 8, 0}},
    };
    for (auto const& c : cases) EXPECT_EQ(pinSides(c.pins, QString::fromLatin1(c.name)), c.sides) << c.name;
}

}  // namespace
}  // namespace standin::ui

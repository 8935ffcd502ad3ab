// A drawing that is stored otherwise: what the pictures show decides.
#include <gtest/gtest.h>

#include "compare/align.h"
#include "model/page_picture.h"
#include "support/datasheet_builder.h"

namespace standin::compare {
namespace {

using model::Finding;
using model::FindingKind;
using model::Relation;

// Pages with one slanted line, starting `down` pixels lower.
class LinePictures final : public model::PagePictures {
public:
    explicit LinePictures(int down) : m_down(down) {}
    [[nodiscard]] int pageCount() const override { return 1; }
    [[nodiscard]] model::Result<model::Rect> pageBox(int) const override { return model::Rect{0, 0, 600, 800}; }
    [[nodiscard]] model::Result<model::Picture> render(int, model::Rect const& box, double) override {
        ++drawn;
        model::Picture picture{200, 100, box, std::vector<std::uint8_t>(200 * 100 * 3, 255)};
        auto const ink = [&](int x, int y) { std::fill_n(picture.rgb.begin() + (y * 200 + x) * 3, 3, std::uint8_t{0}); };
        for (int x = 10; x < 190; ++x) {
            ink(x, 10);
            ink(x, 90);
            ink(x, 20 + m_down + x / 4);
        }
        return picture;
    }
    int drawn = 0;

private:
    int m_down;
};

AlignOptions looking(LinePictures& reference, LinePictures& candidate) {
    AlignOptions options;
    options.referencePictures = &reference;
    options.candidatePictures = &candidate;
    return options;
}

enum class Text { Same, Other };

model::Datasheet sheet(std::string const& shape, Text text = Text::Same) {
    support::SheetBuilder builder("QX17");
    builder.section(model::SectionKind::Curves, "Curves");
    if (text == Text::Same) {
        builder.sentence("The logger wakes every hour.").sentence("The cell is watched while it charges.").sentence("Keep the sense line short.");
    } else {
        builder.sentence("A lamp shows the state.").sentence("Each channel has a filter of its own.").sentence("Do not wash the sensor.");
    }
    builder.figure("Figure 1. Current against temperature", {"Ta"}, shape);
    return builder.build();
}

std::vector<Finding> figureFindings(model::Datasheet const& reference, model::Datasheet const& candidate, AlignOptions const& options) {
    auto const vocabulary = vocabulary::Vocabulary::builtIn();
    EXPECT_TRUE(vocabulary);
    std::vector<Finding> found;
    for (auto const& finding : align(reference, candidate, options, *vocabulary).findings) {
        if (finding.kind == FindingKind::Figure) found.push_back(finding);
    }
    return found;
}

TEST(FigureDrawings, ADrawingThatLooksOtherwiseIsAFindingOnBothPages) {
    LinePictures reference(0);
    LinePictures candidate(12);
    auto const found = figureFindings(sheet("a"), sheet("b"), looking(reference, candidate));
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].relation, Relation::MeaningChanged);
    ASSERT_TRUE(found[0].reference && found[0].candidate);
    EXPECT_EQ(found[0].reference->page, 1);
    EXPECT_FALSE(found[0].candidate->box.empty());
}

TEST(FigureDrawings, ADrawingThatIsOnlyStoredOtherwiseIsNone) {
    LinePictures reference(0);
    LinePictures candidate(0);
    EXPECT_TRUE(figureFindings(sheet("a"), sheet("b"), looking(reference, candidate)).empty());
    EXPECT_EQ(reference.drawn, 1);
}

TEST(FigureDrawings, EqualDrawingsAreNotLookedAt) {
    LinePictures pictures(0);
    EXPECT_TRUE(figureFindings(sheet("a"), sheet("a"), looking(pictures, pictures)).empty());
    EXPECT_EQ(pictures.drawn, 0);
}

TEST(FigureDrawings, WithoutPicturesTheReaderIsAskedToLook) {
    auto const found = figureFindings(sheet("a"), sheet("b"), {});
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].relation, Relation::Reworded);
    EXPECT_EQ(found[0].classes, std::vector{model::WordingClass::Style});
}

TEST(FigureDrawings, TwoMakersMayDrawEachInHisOwnWay) {
    LinePictures reference(0);
    LinePictures candidate(12);
    EXPECT_TRUE(figureFindings(sheet("a"), sheet("b", Text::Other), looking(reference, candidate)).empty());
    EXPECT_EQ(reference.drawn, 0);
}

// A foot beside a drawing is lettering in one state of the text and a running foot in the other.
TEST(FigureLettering, AFootTakenForLetteringMeetsTheFootOfTheOtherState) {
    enum class Foot { Furniture, Lettering };
    auto const state = [](Foot foot, std::string const& text) {
        model::Datasheet made = sheet("shape");
        model::Rect const box{300, 780, 330, 790};
        if (foot == Foot::Furniture) made.furniture.push_back({model::Furniture::Kind::RunningHead, text, {{1, box}}});
        if (foot == Foot::Lettering) made.figures.front().texts.push_back({text, 1, box});
        return made;
    };
    auto const changed = figureFindings(state(Foot::Furniture, "QX-12.E"), state(Foot::Lettering, "QX-13.E"), {});
    ASSERT_EQ(changed.size(), 1U);
    ASSERT_TRUE(changed[0].reference && changed[0].candidate);
    EXPECT_EQ(changed[0].reference->text, "QX-12.E");
    EXPECT_EQ(changed[0].candidate->text, "QX-13.E");
    EXPECT_TRUE(figureFindings(state(Foot::Furniture, "QX-12.E"), state(Foot::Lettering, "QX-12.E"), {}).empty());
}

}  // namespace
}  // namespace standin::compare

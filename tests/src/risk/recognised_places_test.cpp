#include "risk/recognised_places.h"

#include <gtest/gtest.h>

#include "risk/texts.h"

namespace standin::risk {
namespace {

model::Datasheet recognisedSheet() {
    model::Datasheet sheet;
    sheet.coverage.recognised = {{"4.5 ms", 2, {40, 10, 90, 20}}};
    return sheet;
}

model::Side sideAt(model::Rect const& box) {
    model::Side side;
    side.page = 2;
    side.box = box;
    return side;
}

TEST(MarkRecognised, MarksTheSideThatWasRecognised) {
    model::Comparison comparison;
    comparison.findings.resize(2);
    comparison.findings[0].reference = sideAt({40, 10, 90, 20});
    comparison.findings[0].candidate = sideAt({40, 10, 90, 20});
    comparison.findings[1].kind = model::FindingKind::Coverage;
    comparison.findings[1].candidate = sideAt({40, 10, 90, 20});
    markRecognised(comparison, {}, recognisedSheet());
    EXPECT_FALSE(comparison.findings[0].reference->recognised);
    EXPECT_TRUE(comparison.findings[0].candidate->recognised);
    EXPECT_FALSE(comparison.findings[1].candidate->recognised) << "a coverage finding says so itself";
}

TEST(MarkRecognised, LeavesTheMarkOfASentenceThatGoesOnInAPicture) {
    model::Comparison comparison;
    comparison.findings.resize(1);
    comparison.findings[0].candidate = sideAt({40, 400, 90, 410});  // its first place is printed
    comparison.findings[0].candidate->recognised = true;
    markRecognised(comparison, {}, recognisedSheet());
    EXPECT_TRUE(comparison.findings[0].candidate->recognised);
}

TEST(MarkRecognised, WorkedOutValuesSaySo) {
    model::Comparison comparison;
    comparison.derived.resize(1);
    comparison.derived[0].reference.emplace();
    comparison.derived[0].candidate.emplace();
    comparison.derived[0].candidate->inputs.resize(1);
    comparison.derived[0].candidate->inputs[0].page = 2;
    comparison.derived[0].candidate->inputs[0].box = {40, 10, 90, 20};
    markRecognised(comparison, {}, recognisedSheet());
    EXPECT_TRUE(comparison.derived[0].reference->notes.empty());
    EXPECT_EQ(comparison.derived[0].candidate->notes, std::vector<std::string>{texts::restsOnRecognised()});
}

}  // namespace
}  // namespace standin::risk

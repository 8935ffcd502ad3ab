#include "report/texts.h"

#include <gtest/gtest.h>

#include "model/names.h"

namespace standin::report {
namespace {

template <class Enum, class Text>
void expectATextForEach(Text text) {
    for (std::size_t i = 0; i < model::namesOf<Enum>().size(); ++i) EXPECT_FALSE(text(static_cast<Enum>(i)).empty()) << model::namesOf<Enum>()[i];
}

TEST(Texts, NoneIsMissing) {
    expectATextForEach<model::Severity>(texts::severityHeading);
    expectATextForEach<model::Severity>(texts::severityMeaning);
    expectATextForEach<model::VerdictLevel>(texts::levelText);
    expectATextForEach<model::FindingKind>(texts::kindText);
    expectATextForEach<model::Relation>(texts::relationText);
    expectATextForEach<model::Judgement>(texts::judgementText);
}

}  // namespace
}  // namespace standin::report

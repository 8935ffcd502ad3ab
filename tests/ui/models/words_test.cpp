#include "ui/models/words.h"

#include <set>

#include <gtest/gtest.h>

#include "model/names.h"
#include "report/finding_view.h"

namespace standin::ui {
namespace {

TEST(Words, EveryValueHasAWordOfItsOwn) {
    std::set<QString> words;
    for (auto const severity : report::kSeverities) {
        EXPECT_FALSE(severityWord(severity).isEmpty());
        EXPECT_FALSE(severityMeaning(severity).isEmpty());
        words.insert(severityWord(severity));
        words.insert(severityMark(severity));
    }
    EXPECT_EQ(words.size(), 2 * report::kSeverities.size()) << "told by word and by shape";
    std::set<QString> kinds;
    for (std::size_t i = 0; i < model::namesOf<model::FindingKind>().size(); ++i) kinds.insert(kindWord(static_cast<model::FindingKind>(i)));
    EXPECT_EQ(kinds.size(), model::namesOf<model::FindingKind>().size());
    for (std::size_t i = 0; i < model::namesOf<model::Relation>().size(); ++i) EXPECT_FALSE(relationWord(static_cast<model::Relation>(i)).isEmpty());
    std::set<QString> dispositions;
    for (auto const disposition : kDispositions) dispositions.insert(dispositionWord(disposition));
    EXPECT_EQ(dispositions.size(), kDispositions.size());
}

TEST(Words, NameADocumentByWhatIsKnown) {
    model::DocumentInfo document;
    document.file = "/somewhere/mast lamp.pdf";
    EXPECT_EQ(partName(document), "mast lamp.pdf");
    document.title = "Mast lamp driver";
    EXPECT_EQ(partName(document), "Mast lamp driver");
    document.partNumbers = {"MLD4"};
    EXPECT_EQ(partName(document), "MLD4");
}

TEST(Words, AnErrorSaysWhereAndWhat) {
    model::Error const error{model::ErrorKind::Damaged, "is damaged; get the file again", "a.pdf", 3};
    EXPECT_EQ(errorText(error), "a.pdf, page 3: is damaged; get the file again");
}

}  // namespace
}  // namespace standin::ui

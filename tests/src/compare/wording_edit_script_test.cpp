#include "compare/edit_script.h"

#include <random>

#include <gtest/gtest.h>

namespace standin::compare {
namespace {

std::vector<Key> replayed(std::vector<Key> const& reference, std::vector<Key> const& candidate, std::vector<Edit> const& script, EditKind left) {
    std::vector<Key> result;
    for (Edit const& edit : script) {
        for (std::uint32_t i = 0; i < edit.count; ++i) {
            if (edit.kind == EditKind::Keep) {
                EXPECT_EQ(reference.at(edit.reference + i), candidate.at(edit.candidate + i));
                result.push_back(reference[edit.reference + i]);
            } else if (edit.kind == left) {
                result.push_back(left == EditKind::Insert ? candidate.at(edit.candidate + i) : reference.at(edit.reference + i));
            }
        }
    }
    return result;
}

TEST(EditScript, replayRebuildsBothSides) {
    std::mt19937 random(7);
    for (int round = 0; round < 200; ++round) {
        std::vector<Key> reference(random() % 60);
        for (Key& key : reference) key = random() % 9;
        std::vector<Key> candidate = reference;
        for (int change = 0; change < 6 && !candidate.empty(); ++change) {
            std::size_t const at = random() % candidate.size();
            switch (random() % 3) {
                case 0: candidate[at] = random() % 9; break;
                case 1: candidate.erase(candidate.begin() + static_cast<std::ptrdiff_t>(at)); break;
                default: candidate.insert(candidate.begin() + static_cast<std::ptrdiff_t>(at), random() % 9); break;
            }
        }
        auto const script = editScript(reference, candidate);
        EXPECT_EQ(replayed(reference, candidate, script, EditKind::Insert), candidate);
        EXPECT_EQ(replayed(reference, candidate, script, EditKind::Remove), reference);
    }
}

TEST(EditScript, longListsAreWindowed) {
    std::mt19937 random(11);
    std::vector<Key> reference(15000);
    for (Key& key : reference) key = random() % 5000;
    std::vector<Key> candidate = reference;
    for (std::size_t i = 0; i < candidate.size(); i += 37) candidate[i] = 90000 + i;
    candidate.insert(candidate.begin() + 4000, 300, 77777);
    candidate.erase(candidate.begin() + 9000, candidate.begin() + 9500);
    auto const script = editScript(reference, candidate);
    EXPECT_EQ(replayed(reference, candidate, script, EditKind::Insert), candidate);
    EXPECT_EQ(replayed(reference, candidate, script, EditKind::Remove), reference);
}

TEST(EditScript, listsWithNothingInCommonAreReplaced) {
    std::vector<Key> const reference(6000, 1);
    std::vector<Key> const candidate(5000, 2);
    auto const script = editScript(reference, candidate);
    EXPECT_EQ(replayed(reference, candidate, script, EditKind::Insert), candidate);
    EXPECT_EQ(replayed(reference, candidate, script, EditKind::Remove), reference);
}

TEST(EditScript, equalListsAreKept) {
    std::vector<Key> const list{1, 2, 3};
    EXPECT_EQ(editScript(list, list), (std::vector<Edit>{{EditKind::Keep, 0, 0, 3}}));
    EXPECT_TRUE(editScript({}, {}).empty());
}

TEST(EditScript, wordsRebuildTheTextsByteForByte) {
    for (auto const& [reference, candidate] : std::initializer_list<std::pair<char const*, char const*>>{
             {"Tie it to VSS.", "Tie it to VDD."}, {"  leading  and   gaps ", "leading and gaps"}, {"", "new text"}, {"gone", ""}, {"禁止向0V电池充电", "允许向0V电池充电"},
             {"a \xFF b", "a b"}, {" ", "  "}, {"4.25V max", "4.35V max"}}) {
        std::string kept;
        std::string made;
        for (WordEdit const& edit : wordEdits(reference, candidate)) {
            if (edit.kind != EditKind::Insert) kept += edit.text;
            if (edit.kind != EditKind::Remove) made += edit.text;
        }
        EXPECT_EQ(kept, reference);
        EXPECT_EQ(made, candidate);
    }
    auto const edits = wordEdits("Tie it to VSS.", "Tie it to VDD.");
    ASSERT_EQ(edits.size(), 4U);
    EXPECT_EQ(edits[0].text, "Tie it to ");
    EXPECT_EQ(edits[1].text, "VSS");
    EXPECT_EQ(edits[2].text, "VDD");
}

}  // namespace
}  // namespace standin::compare

#include "record/record.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "model/digest.h"
#include "src/record/sample_record.h"

namespace standin::record {
namespace {

using ::testing::HasSubstr;

std::string smallText() {
    auto record = sampleRecord();
    record = with(std::move(record), Body{decision('1', Disposition::BenchTest)}, at(1, ashdown()));
    return toText(with(std::move(record), Body{Signed{Role::Reviewer, "Read."}}, at(2, belmonte())));
}

TEST(Record, ReadingGivesTheSameBytesAgain) {
    auto const text = smallText();
    auto const record = parseRecord(text);
    ASSERT_TRUE(record) << record.error().message;
    EXPECT_EQ(toText(*record), text);
    ASSERT_EQ(record->entries.size(), 3U);
    EXPECT_EQ(record->opened(), sampleOpened());
    EXPECT_EQ(std::get<Decided>(record->entries[1].body), decision('1', Disposition::BenchTest));
    EXPECT_EQ(record->entries[2].by, belmonte().person());
    EXPECT_EQ(record->entries[2].parents, std::vector<std::string>{record->entries[1].hash});
    EXPECT_EQ(record->entries[1].hash, model::sha256Hex(record->entries[1].line));
}

TEST(Record, EveryKindOfEntryIsReadAsItWasWritten) {
    for (Body const& body : {Body{supersededBy("S-18")}, Body{Superseded{"", "", std::string(64, 'c'), std::string(64, 'd'), "No longer fitted."}}, Body{givenTo("Purchasing")},
                             Body{Distributed{"Stores", "a copy", "", ""}}}) {
        auto const record = parseRecord(toText(with(sampleRecord(), body, at(1, ashdown()))));
        ASSERT_TRUE(record) << record.error().message;
        EXPECT_EQ(record->head().body, body);
    }
    EXPECT_FALSE(withEntry(sampleRecord(), Body{Superseded{"S-18", "", "no hash", std::string(64, 'd'), "r"}}, at(1, ashdown())));
}

TEST(Record, EveryChangedByteIsNoticed) {
    auto const text = smallText();
    ASSERT_TRUE(parseRecord(text));
    for (std::size_t i = 0; i < text.size(); ++i) {
        for (unsigned char const flip : {0x01, 0x20, 0x80}) {
            auto changed = text;
            changed[i] = static_cast<char>(static_cast<unsigned char>(changed[i]) ^ flip);
            auto const read = parseRecord(changed);
            ASSERT_FALSE(read) << "byte " << i << " with " << int{flip};
            ASSERT_EQ(read.error().kind, model::ErrorKind::Damaged);
        }
    }
}

TEST(Record, EveryCutTailIsNoticed) {
    auto const text = smallText();
    for (std::size_t size = 0; size < text.size(); ++size) EXPECT_FALSE(parseRecord(std::string_view(text).substr(0, size))) << size << " bytes";
    for (std::size_t from = 1; from < text.size(); ++from) ASSERT_FALSE(parseRecord(std::string_view(text).substr(from))) << "from byte " << from;
}

std::vector<std::string> linesOf(std::string const& text) {
    std::vector<std::string> lines;
    for (std::size_t begin = 0; begin < text.size();) {
        auto const end = text.find('\n', begin);
        lines.push_back(text.substr(begin, end - begin));
        begin = end + 1;
    }
    return lines;
}

std::string joined(std::vector<std::string> const& lines) {
    std::string text;
    for (auto const& line : lines) text += line + "\n";
    return text;
}

TEST(Record, LinesTakenOutMovedOrRepeatedAreNoticed) {
    auto const lines = linesOf(smallText());
    ASSERT_EQ(lines.size(), 4U);
    for (std::size_t i = 0; i < lines.size(); ++i) {
        auto without = lines;
        without.erase(without.begin() + static_cast<std::ptrdiff_t>(i));
        EXPECT_FALSE(parseRecord(joined(without))) << "without line " << i + 1;
        auto twice = lines;
        twice.insert(twice.begin() + static_cast<std::ptrdiff_t>(i), lines[i]);
        EXPECT_FALSE(parseRecord(joined(twice))) << "twice line " << i + 1;
        if (i == 0) continue;
        auto swapped = lines;
        std::swap(swapped[i - 1], swapped[i]);
        EXPECT_FALSE(parseRecord(joined(swapped))) << "swapped line " << i + 1;
    }
}

// Somebody cuts the last entry and writes a head of his own for what is left.
TEST(Record, CutTailWithAForgedHeadIsNoticed) {
    auto const record = *parseRecord(smallText());
    Head const shorter{2, record.entries[1].hash, corvin().person()};
    auto const lines = linesOf(smallText());
    auto const read = parseRecord(joined({lines[0], lines[1], *headLine(shorter, corvin())}));
    ASSERT_FALSE(read);
    EXPECT_THAT(read.error().message, HasSubstr("line 3 (the head)"));
}

TEST(Record, TheFirstEntryThatDoesNotHoldIsNamed) {
    auto lines = linesOf(smallText());
    auto const place = lines[1].find("The charger");
    lines[1].replace(place, 3, "Any");
    lines[2].back() = ' ';
    auto const read = parseRecord(joined(lines));
    ASSERT_FALSE(read);
    EXPECT_THAT(read.error().message, HasSubstr("line 2: was changed after it was signed"));
}

TEST(Record, OtherSpellingsOfTheSameJsonAreRefused) {
    auto lines = linesOf(smallText());
    lines[1].insert(1, " ");
    EXPECT_THAT(parseRecord(joined(lines)).error().message, HasSubstr("not written as this format asks"));
}

TEST(Record, NothingForeignBreaksTheReader) {
    for (std::string const text : {"", "\n", "{}\n", "[]\n", "{\"schema\":\"standin.record/1\"}\n", "\xff\xfe\n", "null\nnull\n"}) EXPECT_FALSE(parseRecord(text));
    EXPECT_FALSE(parseRecord(std::string(1 << 20, '[') + "\n"));
}

TEST(Record, MoreEntriesThanAnyRecordHasAreRefused) {
    auto record = sampleRecord();
    while (record.entries.size() <= kMostEntries) {
        record.entries.push_back(*signedEntry({{record.head().hash}, record.head().sequence + 1, "2031-05-04T09:00:00Z", Body{Signed{Role::Reviewer, ""}}}, ashdown()));
    }
    auto text = toText(record);
    text.insert(text.size() - 1, *headLine({static_cast<std::int64_t>(record.entries.size()), record.head().hash, {}}, ashdown()));
    auto const read = parseRecord(text);
    ASSERT_FALSE(read);
    EXPECT_THAT(read.error().message, HasSubstr("more than 4096 entries"));
}

// What a shell passes need not be UTF-8.
TEST(Record, BadBytesInAReasonAreReplaced) {
    auto const record = with(sampleRecord(), Body{decision('1', Disposition::Open, "bad \xff byte")}, at(1, ashdown()));
    auto const again = parseRecord(toText(record));
    ASSERT_TRUE(again) << again.error().message;
    EXPECT_EQ(std::get<Decided>(again->entries[1].body).reason, "bad \xEF\xBF\xBD byte");
}

}  // namespace
}  // namespace standin::record

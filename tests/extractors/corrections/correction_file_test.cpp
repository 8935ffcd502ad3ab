#include "extractors/corrections/correction_file.h"

#include <string>

#include <fmt/format.h>
#include <gtest/gtest.h>

namespace standin::corrections {
namespace {

std::string fileOf(std::string const& entry) { return fmt::format(R"({{"schema": "standin.corrections/1", "corrections": [{}]}})", entry); }

std::string const kWho = R"("by": "I. Brandt", "date": "2031-05-02", "why": "a stain")";

TEST(ParseCorrections, ReadsEveryMember) {
    auto const entries = parseCorrections(fileOf(R"({"document": "5d0c41e97b22", "page": 4, "row": {"symbol": "VCU", "condition": null}, "box": [70, 310, 520.5, 324],
                                                     "set": {"max": "4.305", "min": null}, )" + kWho + "}"),
                                          "mine.json");
    ASSERT_TRUE(entries) << entries.error().message;
    ASSERT_EQ(entries->size(), 1U);
    auto const& entry = entries->front();
    EXPECT_EQ(entry.file, "mine.json");
    EXPECT_EQ(entry.number, 1);
    EXPECT_EQ(entry.document, "5d0c41e97b22");
    EXPECT_EQ(entry.page, 4);
    EXPECT_EQ(entry.row, (std::vector<FieldText>{{Field::Condition, ""}, {Field::Symbol, "VCU"}}));
    EXPECT_EQ(entry.box, (model::Rect{70, 310, 520.5F, 324}));
    EXPECT_EQ(entry.action, Action::Set);
    EXPECT_EQ(entry.texts, (std::vector<FieldText>{{Field::Max, "4.305"}, {Field::Min, ""}}));
    EXPECT_EQ(entry.by, "I. Brandt");
    EXPECT_EQ(entry.date, "2031-05-02");
    EXPECT_EQ(entry.why, "a stain");
}

TEST(ParseCorrections, KnowsTheOtherActions) {
    auto const entries = parseCorrections(fileOf(R"({"document": "5d0c41e97b22", "page": 1, "box": [1, 2, 3, 4], "not_a_parameter": true, )" + kWho + R"(},
                                                    {"document": "5d0c41e97b22", "page": 2, "add": {"kind": "rating", "name": "Supply voltage", "max": "12", "unit": "V"}, )" + kWho + "}"),
                                          "mine.json");
    ASSERT_TRUE(entries) << entries.error().message;
    ASSERT_EQ(entries->size(), 2U);
    EXPECT_EQ((*entries)[0].action, Action::Remove);
    EXPECT_EQ((*entries)[1].action, Action::Add);
    EXPECT_EQ((*entries)[1].number, 2);
}

// A slip of the pen must not pass for a correction that was made.
TEST(ParseCorrections, RefusesWhatItDoesNotKnow) {
    struct Case {
        char const* entry;
        char const* said;
    };
    Case const cases[] = {
        {R"({"document": "5D0C41E97B22", "page": 1, "row": {"symbol": "VCU"}, "set": {"max": "1"}, )", "SHA-256"},
        {R"({"document": "5d0c41", "page": 1, "row": {"symbol": "VCU"}, "set": {"max": "1"}, )", "SHA-256"},
        {R"({"page": 1, "row": {"symbol": "VCU"}, "set": {"max": "1"}, )", "\"document\""},
        {R"({"document": "5d0c41e97b22", "page": 0, "row": {"symbol": "VCU"}, "set": {"max": "1"}, )", "\"page\""},
        {R"({"document": "5d0c41e97b22", "page": 1, "set": {"max": "1"}, )", "\"row\" or \"box\""},
        {R"({"document": "5d0c41e97b22", "page": 1, "row": {"symbol": "VCU"}, )", "one of"},
        {R"({"document": "5d0c41e97b22", "page": 1, "row": {"symbol": "VCU"}, "set": {"max": "1"}, "not_a_parameter": true, )", "one of"},
        {R"({"document": "5d0c41e97b22", "page": 1, "row": {"symbol": "VCU"}, "set": {"maximum": "1"}, )", "\"maximum\""},
        {R"({"document": "5d0c41e97b22", "page": 1, "row": {"symbol": "VCU"}, "set": {"max": 4.305}, )", "takes a text"},
        {R"({"document": "5d0c41e97b22", "page": 1, "row": {"kind": "rating"}, "set": {"max": "1"}, )", "\"kind\""},
        {R"({"document": "5d0c41e97b22", "page": 1, "row": {"symbol": "VCU"}, "set": {"printed": "1"}, )", "\"printed\""},
        {R"({"document": "5d0c41e97b22", "page": 1, "row": {"symbol": "VCU"}, "set": {"kind": "guess"}, )", "guess"},
        {R"({"document": "5d0c41e97b22", "page": 1, "row": {}, "set": {"max": "1"}, )", "\"row\""},
        {R"({"document": "5d0c41e97b22", "page": 1, "box": [4, 2, 1, 3], "set": {"max": "1"}, )", "\"box\""},
        {R"({"document": "5d0c41e97b22", "page": 1, "box": [0, 0, 1e30, 3], "set": {"max": "1"}, )", "\"box\""},
        {R"({"document": "5d0c41e97b22", "page": 1, "row": {"symbol": "VCU"}, "add": {"name": "a", "max": "1"}, )", "leave it out"},
        {R"({"document": "5d0c41e97b22", "page": 1, "add": {"name": "a"}, )", "and a value"},
        {R"({"document": "5d0c41e97b22", "page": 1, "row": {"symbol": "VCU"}, "set": {"max": "1"}, "hint": 1, )", "\"hint\""},
    };
    for (auto const& c : cases) {
        auto const entries = parseCorrections(fileOf(c.entry + kWho + "}"), "mine.json");
        ASSERT_FALSE(entries) << c.entry;
        EXPECT_EQ(entries.error().kind, model::ErrorKind::Usage);
        EXPECT_EQ(entries.error().file, "mine.json");
        EXPECT_NE(entries.error().message.find("correction 1: "), std::string::npos) << entries.error().message;
        EXPECT_NE(entries.error().message.find(c.said), std::string::npos) << entries.error().message;
    }
}

TEST(ParseCorrections, AsksForWhoWhenAndWhy) {
    std::string const start = R"({"document": "5d0c41e97b22", "page": 1, "row": {"symbol": "VCU"}, "set": {"max": "1"}, )";
    EXPECT_FALSE(parseCorrections(fileOf(start + R"("date": "2031-05-02", "why": "a stain"})"), "mine.json"));
    EXPECT_FALSE(parseCorrections(fileOf(start + R"("by": "I. Brandt", "date": "2 May 2031", "why": "a stain"})"), "mine.json"));
    EXPECT_FALSE(parseCorrections(fileOf(start + R"("by": "I. Brandt", "date": "2031-05-02", "why": ""})"), "mine.json"));
}

TEST(ParseCorrections, RefusesAnotherFrame) {
    EXPECT_FALSE(parseCorrections("not json", "mine.json"));
    EXPECT_FALSE(parseCorrections(R"({"schema": "standin.cell/1"})", "mine.json"));
    EXPECT_FALSE(parseCorrections(R"({"schema": "standin.corrections/1"})", "mine.json"));
    EXPECT_FALSE(parseCorrections(R"({"schema": "standin.corrections/1", "correction": []})", "mine.json"));
    EXPECT_TRUE(parseCorrections(R"({"schema": "standin.corrections/1", "corrections": []})", "mine.json"));
}

}  // namespace
}  // namespace standin::corrections

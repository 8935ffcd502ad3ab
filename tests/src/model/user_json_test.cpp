#include "model/user_json.h"

#include <string>

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace standin::model {
namespace {

TEST(ParseUserJson, GivesTheObject) {
    auto const json = parseUserJson(R"({"schema": "standin.sample/1", "a": [1, {"b": "c"}]})", "standin.sample/1", "f.json");
    ASSERT_TRUE(json);
    EXPECT_EQ((*json)["a"][1]["b"], "c");
}

TEST(ParseUserJson, SaysWhatIsWrong) {
    std::string const deep(100'000, '[');
    struct Case {
        std::string text;
        char const* said;
    };
    Case const cases[] = {
        {"{", "not valid JSON"},
        {"[]", "not valid JSON"},
        {deep, "too deeply"},
        {R"({"schema": "standin.other/1"})", "standin.sample/1"},
        {R"({"schema": 7})", "standin.sample/1"},
        {R"({"a": 1})", "standin.sample/1"},
        {R"({"schema": "standin.sample/1", "set": {"max": "1", "max": "2"}})", "\"max\" twice"},
    };
    for (auto const& c : cases) {
        auto const json = parseUserJson(c.text, "standin.sample/1", "f.json");
        ASSERT_FALSE(json) << c.said;
        EXPECT_EQ(json.error().kind, ErrorKind::Usage);
        EXPECT_EQ(json.error().file, "f.json");
        EXPECT_NE(json.error().message.find(c.said), std::string::npos) << json.error().message;
    }
}

TEST(ParseUserJson, EqualMembersOfDifferentObjectsAreFine) {
    EXPECT_TRUE(parseUserJson(R"({"schema": "standin.sample/1", "list": [{"a": 1}, {"a": 2}], "a": {"a": 3}})", "standin.sample/1", "f.json"));
}

}  // namespace
}  // namespace standin::model

// The library's own writer is the oracle.
#include "model/json_text.h"

#include <array>
#include <cstdint>
#include <limits>
#include <string>
#include <vector>

#include <gtest/gtest.h>

namespace standin::model {
namespace {

using Json = nlohmann::ordered_json;

void expectSame(Json const& json) { EXPECT_EQ(jsonText(json), json.dump(2, ' ', false, Json::error_handler_t::replace)); }

TEST(JsonText, WritesNestedValuesAsTheLibraryDoes) {
    expectSame(Json::object());
    expectSame(Json::array());
    expectSame(nullptr);
    Json json;
    json["none"] = nullptr;
    json["yes"] = true;
    json["no"] = false;
    json["empty"] = Json::array();
    json["bare"] = Json::object();
    json["rows"] = Json::array({1, Json::array({2, Json::array()}), Json::object({{"a", 3}})});
    json["a \"key\""] = "value";
    expectSame(json);
    // Deeper than the indent that is kept ready.
    for (int depth = 0; depth < 24; ++depth) {
        json = depth % 2 == 0 ? Json::array({json, depth}) : Json::object({{"inner", json}, {"depth", depth}});
        expectSame(json);
    }
}

TEST(JsonText, WritesNumbersAsTheLibraryDoes) {
    for (double const number : {0.0, -0.0, 1.0, -1.5, 0.1, 72.25, 841.89, 1e-6, 3.3e-6, 1e15, 1e16, 123456789012345680.0, 1e300, 5e-324, std::numeric_limits<double>::max(),
                                std::numeric_limits<double>::infinity(), std::numeric_limits<double>::quiet_NaN()}) {
        expectSame(Json::array({number, -number}));
    }
    expectSame(Json::array({std::numeric_limits<std::int64_t>::min(), std::numeric_limits<std::uint64_t>::max(), 0, -7}));
    std::uint32_t state = 5;
    for (int i = 0; i < 20000; ++i) {
        state = state * 1664525 + 1013904223;
        expectSame(Json::array({static_cast<double>(state >> 12U) / 100, static_cast<double>(state) / 100, -static_cast<double>(state >> 2U) / 100, static_cast<double>(state) / 7}));
    }
}

TEST(JsonText, WritesTextsAsTheLibraryDoes) {
    for (std::string const& text : {std::string{}, std::string("plain"), std::string("a \"quote\" and \\"), std::string("\b\f\n\r\t\x01\x1f\x7f"), std::string("a\0b", 3),
                                    std::string("25 °C, 4.7 µF, 过充电"), std::string("\xF0\x9F\x94\x8B"), std::string("\xED\x9F\xBF\xEE\x80\x80\xF4\x8F\xBF\xBF")}) {
        expectSame(text);
    }
}

TEST(JsonText, ReplacesWhatIsNoUtf8AsTheLibraryDoes) {
    for (char const* text :
         {"\x80", "a\xC3", "\xC3(", "\xC0\xAF", "\xE0\x9F\xBF", "\xED\xA0\x80", "\xE4\xB8", "\xF0\x8F\xBF\xBF", "\xF4\x90\x80\x80", "\xF5\x80\x80\x80", "\xFF", "°\xB0°"}) {
        expectSame(text);
    }
    for (int first = 0x7F; first < 0x100; ++first) {
        for (int second = 0x7F; second < 0x100; ++second) {
            for (char const* end : {"", "\x80", "\x80\x80"}) expectSame(std::string{static_cast<char>(first), static_cast<char>(second)} + end);
        }
    }
}

TEST(JsonText, WritesPieceByPieceAsTheLibraryDoes) {
    JsonText out;
    out.beginObject()
        .member("whole", 3)
        .member("size", std::size_t{18446744073709551615U})
        .member("share", 0.25)
        .member("open", true)
        .member("none", nullptr)
        .textOrNull("unit", "")
        .textOrNull("name", "a \"quote\"")
        .member("texts", std::vector<std::string>{"a", "b"})
        .member("no_texts", std::vector<std::string>{})
        .member("box", std::array{1.0, 2.5, 3.0, 4.25})
        .member("tree", Json::object({{"rows", Json::array({1, Json::object()})}}));
    out.key("elements").beginArray().value("first").beginObject().member("k", -1).endObject().beginArray().endArray().endArray();
    out.key("bare").beginObject().endObject().endObject();

    Json json;
    json["whole"] = 3;
    json["size"] = 18446744073709551615U;
    json["share"] = 0.25;
    json["open"] = true;
    json["none"] = nullptr;
    json["unit"] = nullptr;
    json["name"] = "a \"quote\"";
    json["texts"] = {"a", "b"};
    json["no_texts"] = Json::array();
    json["box"] = {1.0, 2.5, 3.0, 4.25};
    json["tree"] = Json::object({{"rows", Json::array({1, Json::object()})}});
    json["elements"] = Json::array({"first", Json::object({{"k", -1}}), Json::array()});
    json["bare"] = Json::object();
    EXPECT_EQ(out.take(), json.dump(2));
}

TEST(JsonText, PartsFollowEachOther) {
    for (int const before : {0, 1}) {
        for (int const inFirst : {0, 2}) {
            for (int const inSecond : {0, 1}) {
                JsonText out;
                Json json = Json::object({{"list", Json::array()}, {"after", 1}});
                auto const add = [&json](JsonText& to, int count) {
                    for (int i = 0; i < count; ++i) {
                        to.beginObject().member("i", i).endObject();
                        json["list"].push_back(Json::object({{"i", i}}));
                    }
                };
                out.beginObject().key("list").beginArray();
                add(out, before);
                JsonText first = JsonText::partOf(out);
                JsonText second = JsonText::partOf(out);
                add(first, inFirst);
                add(second, inSecond);
                out.append(first).append(second).endArray().member("after", 1).endObject();
                EXPECT_EQ(out.take(), json.dump(2)) << before << inFirst << inSecond;
            }
        }
    }
}

}  // namespace
}  // namespace standin::model

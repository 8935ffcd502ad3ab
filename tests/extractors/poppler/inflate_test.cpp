// What was compressed comes back; what is damaged or too long does not.
#include "extractors/poppler/inflate.h"

#include <utility>

#include <gtest/gtest.h>

#include "support/deflate.h"

namespace standin::poppler {
namespace {

constexpr std::size_t kPlenty = 1U << 24U;

std::optional<std::string> inflatedText(std::string const& bytes, std::size_t most = kPlenty) {
    return inflated({reinterpret_cast<unsigned char const*>(bytes.data()), bytes.size()}, most);
}

std::string varied(std::size_t length) {
    std::string text;
    std::uint32_t state = 7;
    while (text.size() < length) {
        state = state * 1664525 + 1013904223;
        text += static_cast<char>('a' + (state >> 27U));
    }
    return text;
}

TEST(Inflate, GivesBackWhatWasCompressed) {
    for (std::string const& text : {std::string{}, std::string("42 mV"), std::string(1000000, 'a'), varied(3), varied(200000)}) {
        EXPECT_EQ(inflatedText(testing::deflated(text)), text) << text.size();
    }
}

TEST(Inflate, IgnoresWhatFollowsTheEnd) { EXPECT_EQ(inflatedText(testing::deflated("42 mV") + "\r\nendstream"), "42 mV"); }

TEST(Inflate, RefusesWhatIsDamagedOrCutShort) {
    std::string const whole = testing::deflated(varied(5000));
    EXPECT_FALSE(inflatedText(""));
    EXPECT_FALSE(inflatedText("42 mV"));
    EXPECT_FALSE(inflatedText(whole.substr(0, whole.size() / 2)));
    EXPECT_FALSE(inflatedText(whole.substr(0, whole.size() - 1)));
    for (auto const& [at, byte] : {std::pair(0, '\x79'), std::pair(1, '\x00'), std::pair(2, '\x07')}) {  // header, header, a block of no known kind
        std::string changed = whole;
        changed[static_cast<std::size_t>(at)] = byte;
        EXPECT_FALSE(inflatedText(changed)) << at;
    }
}

// As Poppler does: what was refused here for its checksum would be read there all the same.
TEST(Inflate, DoesNotAskTheChecksum) {
    std::string changed = testing::deflated("42 mV");
    changed.back() = static_cast<char>(changed.back() ^ 0x55);
    EXPECT_EQ(inflatedText(changed), "42 mV");
}

TEST(Inflate, RefusesMoreThanAllowed) {
    std::string const bytes = testing::deflated(std::string(1000000, 'a'));
    EXPECT_TRUE(inflatedText(bytes, 1000000));
    EXPECT_FALSE(inflatedText(bytes, 999999));
    EXPECT_FALSE(inflatedText(bytes, 0));
}

TEST(Inflate, GivesTheStartOfWhatIsCutShort) {
    std::string const text = varied(20000);
    std::string const bytes = testing::deflated(text);
    auto const start = [](std::string const& deflated, std::size_t length) {
        return inflatedStart({reinterpret_cast<unsigned char const*>(deflated.data()), deflated.size()}, length);
    };
    EXPECT_EQ(start(bytes, 1024), text.substr(0, 1024));
    EXPECT_EQ(start(bytes.substr(0, bytes.size() / 2), 1024), text.substr(0, 1024));
    EXPECT_EQ(start(testing::deflated("42 mV"), 5), "42 mV");
    EXPECT_FALSE(start(testing::deflated("42 mV"), 6));
    EXPECT_FALSE(start(bytes.substr(0, 8), 1024));
    EXPECT_FALSE(start("42 mV", 4));
}

}  // namespace
}  // namespace standin::poppler

#include "record/moment.h"

#include <cstdlib>

#include <gtest/gtest.h>

namespace standin::record {
namespace {

TEST(TimeText, IsRfc3339InUtc) {
    struct Case {
        std::int64_t seconds;
        char const* text;
    };
    Case const cases[] = {{0, "1970-01-01T00:00:00Z"}, {951'782'399, "2000-02-28T23:59:59Z"}, {951'782'400, "2000-02-29T00:00:00Z"}, {1'935'741'600, "2031-05-05T10:00:00Z"}};
    for (auto const& [seconds, text] : cases) EXPECT_EQ(timeText(seconds), text);
}

TEST(CurrentTime, CanBeGiven) {
    setenv("SOURCE_DATE_EPOCH", "951782400", 1);
    EXPECT_EQ(currentTime(), "2000-02-29T00:00:00Z");
    for (char const* wrong : {"", "x", "12x", "-5"}) {
        setenv("SOURCE_DATE_EPOCH", wrong, 1);
        EXPECT_GT(currentTime(), "2024-01-01T00:00:00Z") << wrong;
    }
    unsetenv("SOURCE_DATE_EPOCH");
    EXPECT_EQ(currentTime().size(), 20U);
}

TEST(IsDate, DaysOfTheCalendarOnly) {
    for (char const* good : {"2031-01-31", "2032-02-29", "0001-01-01"}) EXPECT_TRUE(isDate(good)) << good;
    for (char const* bad : {"", "2031-02-29", "2031-13-01", "2031-00-10", "31-01-2031", "2031/01/31", "2031-1-31", "2031-01-3x", "2031-01-31T"}) EXPECT_FALSE(isDate(bad)) << bad;
}

}  // namespace
}  // namespace standin::record

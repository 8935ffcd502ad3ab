// Tested by tests/src/record/moment_test.cpp.
#include "record/moment.h"

#include <charconv>
#include <chrono>
#include <cstdlib>
#include <optional>

#include <fmt/format.h>

namespace standin::record {

namespace {

constexpr std::int64_t kSecondsADay = 86'400;
constexpr std::int64_t kLatest = 253'402'300'799;  // the end of the year 9999

std::optional<int> numberAt(std::string_view text, std::size_t place, std::size_t digits) {
    int number = 0;
    char const* const begin = text.data() + place;
    auto const [end, error] = std::from_chars(begin, begin + digits, number);
    if (error != std::errc{} || end != begin + digits || number < 0) return std::nullopt;
    return number;
}

}  // namespace

std::string timeText(std::int64_t seconds) {
    auto const days = seconds / kSecondsADay;
    auto const rest = seconds % kSecondsADay;
    std::chrono::year_month_day const date{std::chrono::sys_days{std::chrono::days{days}}};
    return fmt::format("{:04}-{:02}-{:02}T{:02}:{:02}:{:02}Z", static_cast<int>(date.year()), static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()), rest / 3600, rest / 60 % 60,
                       rest % 60);
}

std::string currentTime() {
    if (char const* const given = std::getenv("SOURCE_DATE_EPOCH")) {
        std::string_view const text = given;
        std::int64_t seconds = 0;
        auto const [end, error] = std::from_chars(text.data(), text.data() + text.size(), seconds);
        if (error == std::errc{} && end == text.data() + text.size() && seconds >= 0 && seconds <= kLatest) return timeText(seconds);
    }
    auto const now = std::chrono::system_clock::now().time_since_epoch();
    return timeText(std::chrono::duration_cast<std::chrono::seconds>(now).count());
}

bool isDate(std::string_view text) {
    if (text.size() != 10 || text[4] != '-' || text[7] != '-') return false;
    auto const year = numberAt(text, 0, 4);
    auto const month = numberAt(text, 5, 2);
    auto const day = numberAt(text, 8, 2);
    if (!year || !month || !day) return false;
    std::chrono::year_month_day const date{std::chrono::year{*year}, std::chrono::month{static_cast<unsigned>(*month)}, std::chrono::day{static_cast<unsigned>(*day)}};
    return date.ok();
}

}  // namespace standin::record

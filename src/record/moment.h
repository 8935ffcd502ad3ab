// Times as a record writes them. The only place where a clock enters the program.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

namespace standin::record {

// 2031-05-04T09:30:00Z
[[nodiscard]] std::string timeText(std::int64_t secondsSince1970);

// Now, or the time that the environment variable SOURCE_DATE_EPOCH gives, for
// examples whose bytes do not change.
[[nodiscard]] std::string currentTime();

// "2032-01-31" and a day of the calendar.
[[nodiscard]] bool isDate(std::string_view text);

}  // namespace standin::record

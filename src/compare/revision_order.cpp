// Tested by tests/src/compare/revision_order_test.cpp.
#include "compare/revision_order.h"

#include <algorithm>
#include <array>
#include <string>
#include <vector>

#include "text/fold.h"
#include "text/utf8.h"

namespace standin::compare {

namespace {

using text::isAsciiDigit;
using text::isAsciiLetter;

constexpr std::size_t kMostBytes = 160;  // of a text that a date is looked for in
constexpr std::size_t kDayToYear = 12;   // bytes with the month between them

constexpr std::array<std::string_view, 12> kMonths{"jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"};

int monthOf(std::string_view lower) {
    if (lower.starts_with("mär")) return 3;
    if (lower.starts_with("mai")) return 5;
    if (lower.starts_with("okt")) return 10;
    if (lower.starts_with("dez")) return 12;
    for (std::size_t i = 0; i < kMonths.size(); ++i) {
        if (lower.starts_with(kMonths[i])) return static_cast<int>(i) + 1;
    }
    return 0;
}

bool isYear(int number) { return number >= 1950 && number < 2100; }

struct DateNumber {
    int value = 0;
    std::size_t begin = 0;
    std::size_t end = 0;
};

// Numbers and months of a date in the order in which they are printed.
struct DatePieces {
    std::vector<DateNumber> numbers;
    int month = 0;
};

bool isDateLetter(char c) { return isAsciiLetter(c) || static_cast<unsigned char>(c) >= 0x80; }

DatePieces datePieces(std::string_view lower) {
    DatePieces pieces;
    for (std::size_t i = 0; i < lower.size();) {
        std::size_t end = i;
        if (isAsciiDigit(lower[i])) {
            while (end < lower.size() && isAsciiDigit(lower[end])) ++end;
            if (end - i <= 8) pieces.numbers.push_back({std::stoi(std::string(lower.substr(i, end - i))), i, end});
        } else if (isDateLetter(lower[i])) {
            while (end < lower.size() && isDateLetter(lower[end])) ++end;
            if (pieces.month == 0) pieces.month = monthOf(lower.substr(i, end - i));
        }
        i = std::max(end, i + 1);
    }
    return pieces;
}

// "2022-03", "30.03", "2019年3": two numbers of one date.
bool joinsDate(std::string_view between) {
    between = text::trimmed(between);
    return between == "-" || between == "/" || between == "." || between == "年" || between == "月";
}

// Letters as numbers of base 27, "B" < "Z" < "AA"; numbers one by one.
struct RevisionKey {
    bool letters = false;
    std::vector<int> numbers;
};

std::optional<RevisionKey> revisionKey(std::string_view label) {
    RevisionKey key;
    if (label.empty()) return std::nullopt;
    if (label == "*" || label == "-") return key;
    for (std::size_t i = 0; i < label.size();) {
        if (isAsciiLetter(label[i])) {
            int value = 0;
            key.letters = key.letters || i == 0;
            for (; i < label.size() && isAsciiLetter(label[i]) && value < 100000; ++i) value = value * 27 + (label[i] | 0x20) - 'a' + 1;
            key.numbers.push_back(value);
        } else if (isAsciiDigit(label[i])) {
            int value = 0;
            for (; i < label.size() && isAsciiDigit(label[i]) && value < 100000; ++i) value = value * 10 + (label[i] - '0');
            key.numbers.push_back(value);
        } else {
            ++i;
        }
    }
    return key;
}

}  // namespace

int dateNumber(std::string_view printed) {
    std::string const lower = text::lowerCase(text::foldForComparison(printed.substr(0, kMostBytes)));
    auto const [numbers, month] = datePieces(lower);
    // The number at `index` where it stands in one date with the next; 0: it does not, or is too great.
    auto const linked = [&numbers, &lower](std::size_t first, std::size_t index, int most) {
        if (first + 1 >= numbers.size() || numbers[index].value > most) return 0;
        auto const between = std::string_view(lower).substr(numbers[first].end, numbers[first + 1].begin - numbers[first].end);
        return joinsDate(between) ? numbers[index].value : 0;
    };
    for (std::size_t i = 0; i < numbers.size(); ++i) {
        int const number = numbers[i].value;
        if (number > 19500000 && number < 21000000 && number / 100 % 100 <= 12 && number % 100 <= 31) return number;
        if (!isYear(number)) continue;
        if (int const after = linked(i, i + 1, 12)) return number * 10000 + after * 100 + linked(i + 1, i + 2, 31);
        if (month != 0) {
            bool const day = i > 0 && numbers[i - 1].value <= 31 && numbers[i].begin - numbers[i - 1].end <= kDayToYear;
            return number * 10000 + month * 100 + (day ? numbers[i - 1].value : 0);
        }
        if (i == 0) continue;
        if (int const before = linked(i - 1, i - 1, 12)) return number * 10000 + before * 100 + (i > 1 ? linked(i - 2, i - 2, 31) : 0);
    }
    return 0;
}

std::optional<int> compareRevisions(std::string_view a, std::string_view b) {
    auto left = revisionKey(a);
    auto right = revisionKey(b);
    if (!left || !right) return std::nullopt;
    bool const first = left->numbers.empty() || right->numbers.empty();
    if (!first && left->letters != right->letters) return std::nullopt;
    auto const most = std::max(left->numbers.size(), right->numbers.size());
    if (!first) {
        left->numbers.resize(most);
        right->numbers.resize(most);
    }
    return left->numbers < right->numbers ? -1 : left->numbers > right->numbers ? 1 : 0;
}

}  // namespace standin::compare

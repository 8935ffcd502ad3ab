// Tested by tests/extractors/recognition/letter_case_test.cpp.
#include "extractors/recognition/letter_case.h"

#include <algorithm>
#include <cstdlib>

namespace standin::recognition {

namespace {

constexpr std::string_view kOneShape = "cosuvwxzCOSUVWXZ";
constexpr double kCapital = 0.87;  // of the height of capitals; small letters have 0.75
constexpr double kHighest = 1.3;   // a letter this much higher is set in another size
constexpr double kLowest = 0.6;
constexpr double kSameRow = 0.5;  // heights between baselines
constexpr int kFurthestRow = 12;  // heights to a line that still tells
constexpr int kRowFirst = 1000;   // heights: a line of the row goes before all others

}  // namespace

bool hasOneShape(char letter) { return kOneShape.find(letter) != std::string_view::npos; }

std::optional<int> capHeightAt(PixelBox const& letter, std::span<MeasuredLine const> lines) {
    std::optional<int> found;
    int nearest = 0;
    for (auto const& line : lines) {
        if (letter.height() > kHighest * line.capHeight || letter.height() < kLowest * line.capHeight) continue;
        int const down = std::abs(letter.bottom - line.baseline);
        int const across = std::max({0, line.box.left - letter.right, letter.left - line.box.right});
        bool const sameRow = down <= kSameRow * line.capHeight;
        if (!sameRow && down > kFurthestRow * line.capHeight) continue;
        int const distance = across + down + (sameRow ? 0 : kRowFirst * line.capHeight);
        if (found && distance >= nearest) continue;
        found = line.capHeight;
        nearest = distance;
    }
    return found;
}

bool isCapital(PixelBox const& letter, int capHeight) { return letter.height() >= kCapital * capHeight; }

}  // namespace standin::recognition

// Tested by tests/src/quantity/dimension_test.cpp.
#include "quantity/dimension.h"

#include <algorithm>
#include <array>

namespace standin::quantity {

namespace {

struct Known {
    std::string_view text;
    Dimension dimension;
    std::string_view factor = "1";
};

constexpr std::array<Known, 21> kKnown = {{
    {"1", {}},
    {"V", {1, 0, 0, 0, 0}},
    {"A", {0, 1, 0, 0, 0}},
    {"s", {0, 0, 1, 0, 0}},
    {"m", {0, 0, 0, 1, 0}},
    {"K", {0, 0, 0, 0, 1}},
    {"degC", {0, 0, 0, 0, 1}},
    {"Ω", {1, -1, 0, 0, 0}},
    {"S", {-1, 1, 0, 0, 0}},
    {"F", {-1, 1, 1, 0, 0}},
    {"C", {0, 1, 1, 0, 0}},
    {"H", {1, -1, 1, 0, 0}},
    {"Hz", {0, 0, -1, 0, 0}},
    {"W", {1, 1, 0, 0, 0}},
    {"J", {1, 1, 1, 0, 0}},
    {"T", {1, 0, 1, -2, 0}},
    {"A²", {0, 2, 0, 0, 0}},
    {"month", {0, 0, 1, 0, 0}, "2629800"},  // 730.5 hours
    {"months", {0, 0, 1, 0, 0}, "2629800"},
    {"mAh", {0, 1, 1, 0, 0}, "3.6"},
    {"Ah", {0, 1, 1, 0, 0}, "3600"},
}};

template <class Combine>
Dimension combined(Dimension a, Dimension b, Combine combine) {
    auto const power = [&](std::int8_t x, std::int8_t y) { return static_cast<std::int8_t>(std::clamp(combine(int{x}, int{y}), -100, 100)); };
    return {power(a.volt, b.volt), power(a.ampere, b.ampere), power(a.second, b.second), power(a.metre, b.metre), power(a.kelvin, b.kelvin)};
}

}  // namespace

Dimension operator*(Dimension a, Dimension b) {
    return combined(a, b, [](int x, int y) { return x + y; });
}

Dimension operator/(Dimension a, Dimension b) {
    return combined(a, b, [](int x, int y) { return x - y; });
}

std::optional<DimensionedUnit> dimensionOf(std::string_view unit) {
    constexpr std::string_view kDot = "·";
    DimensionedUnit made;
    bool below = false;  // behind the stroke
    while (true) {
        std::size_t const stroke = unit.find('/');
        std::size_t const dot = unit.find(kDot);
        std::size_t const end = std::min({stroke, dot, unit.size()});
        auto const word = unit.substr(0, end);
        auto const known = std::find_if(kKnown.begin(), kKnown.end(), [word](Known const& entry) { return entry.text == word; });
        if (known == kKnown.end()) return std::nullopt;
        auto const factor = *Decimal::parse(known->factor);
        made.dimension = below ? made.dimension / known->dimension : made.dimension * known->dimension;
        if (below && factor != Decimal(1)) return std::nullopt;
        made.factor = made.factor * factor;
        if (end == unit.size()) return made;
        if (end == stroke && below) return std::nullopt;
        below = below || end == stroke;
        unit.remove_prefix(end + (end == stroke ? 1 : kDot.size()));
    }
}

}  // namespace standin::quantity

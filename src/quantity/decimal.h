// Exact decimal numbers, as printed. This folder (quantity/) may include model/
// and text/.
//
// A Decimal is coefficient × 10^-scale and remembers how many digits were
// printed: 4.250 has scale 3 and is equal to 4.25. No binary floating point
// anywhere, so that boundary tests behave.
//
//     auto a = Decimal::parse("4.275");
//     auto b = Decimal::parse("4275")->scaledByPowerOfTen(-3);
//     *a == b;                       // true
//     b.toString();                  // "4.275"
#pragma once

#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace standin::quantity {

__extension__ typedef __int128 Int128;

// Where a result has more digits than asked for: towards minus infinity, towards
// plus infinity, or to the nearest (ties to even).
enum class Rounding : std::uint8_t { Down, Up, Nearest };

class Decimal {
public:
    static constexpr int kMaxDigits = 36;     // significant digits a Decimal can hold
    static constexpr int kMaxExponent = 999;  // of the first digit, both ways

    Decimal() = default;
    // Implicit, so that whole numbers can stand in expressions.
    Decimal(long long whole) : m_coefficient(whole) {}  // NOLINT(google-explicit-constructor)

    // Plain or exponent form with ASCII digits and point: "-0.3", "+4.250", ".5",
    // "2E-3". Nothing else: no comma, no space, no unit. Nullopt where it is not a
    // number or has more than kMaxDigits significant digits.
    [[nodiscard]] static std::optional<Decimal> parse(std::string_view text);

    // As printed: plain, no exponent, with the printed digits ("4.250").
    [[nodiscard]] std::string toString() const;
    // Without zeros at the end of the fraction ("4.25"): equal numbers, equal text.
    [[nodiscard]] std::string toShortString() const;

    [[nodiscard]] int scale() const { return m_scale; }  // digits after the point; negative: zeros before it
    [[nodiscard]] int sign() const { return m_coefficient < 0 ? -1 : (m_coefficient > 0 ? 1 : 0); }
    [[nodiscard]] bool isZero() const { return m_coefficient == 0; }
    [[nodiscard]] Decimal negated() const;
    [[nodiscard]] Decimal magnitude() const;
    // × 10^power, exact: printed digits stay.
    [[nodiscard]] Decimal scaledByPowerOfTen(int power) const;
    // To `scale` digits after the point (negative: tens, hundreds).
    [[nodiscard]] Decimal rounded(int scale, Rounding rounding) const;
    // One unit of the last printed digit: 4.250 -> 0.001.
    [[nodiscard]] Decimal resolution() const;
    // For drawing and plausibility only, never for judging.
    [[nodiscard]] double approximate() const;

    // Exact while the result has at most kMaxDigits digits, else rounded to the nearest.
    friend Decimal operator+(Decimal a, Decimal b);
    friend Decimal operator-(Decimal a, Decimal b) { return a + b.negated(); }
    friend Decimal operator*(Decimal a, Decimal b);

    // By value: 4.250 == 4.25.
    friend std::strong_ordering operator<=>(Decimal const& a, Decimal const& b);
    friend bool operator==(Decimal const& a, Decimal const& b) { return (a <=> b) == 0; }

private:
    Decimal(Int128 coefficient, int scale);
    friend std::optional<Decimal> divide(Decimal, Decimal, int, Rounding);

    Int128 m_coefficient = 0;
    std::int32_t m_scale = 0;
};

// a / b with `digits` significant digits (1 … 30); nullopt where b is zero.
[[nodiscard]] std::optional<Decimal> divide(Decimal a, Decimal b, int digits, Rounding rounding);

// A decimal without zeros at the end of its fraction; text that is no number as it is.
[[nodiscard]] std::string shortNumber(std::string_view text);

// They agree after rounding to the coarser of the two resolutions ("1.2" and "1.20").
[[nodiscard]] bool equalAsPrinted(Decimal a, Decimal b);

}  // namespace standin::quantity

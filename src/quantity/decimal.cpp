#include "quantity/decimal.h"

#include <algorithm>
#include <array>
#include <cmath>

// A 128-bit coefficient and a decimal scale. The coefficient stays below
// 10^36, so that sums of two aligned numbers fit; what would not fit is rounded
// to the nearest. Comparison aligns only numbers of the same magnitude, so it is
// always exact. Tested by tests/src/quantity/decimal_test.cpp.

namespace standin::quantity {

namespace {

constexpr int kPowers = 39;

constexpr std::array<Int128, kPowers> makePowers() {
    std::array<Int128, kPowers> powers{};
    powers[0] = 1;
    for (std::size_t i = 1; i < powers.size(); ++i) powers[i] = powers[i - 1] * 10;
    return powers;
}

constexpr std::array<Int128, kPowers> kPowerOfTen = makePowers();

Int128 powerOfTen(int exponent) { return kPowerOfTen[static_cast<std::size_t>(exponent)]; }

Int128 absolute(Int128 value) { return value < 0 ? -value : value; }

int digitsOf(Int128 value) {
    value = absolute(value);
    int const digits = static_cast<int>(std::upper_bound(kPowerOfTen.begin(), kPowerOfTen.end(), value) - kPowerOfTen.begin());
    return std::max(digits, 1);
}

// value / divisor, divisor > 0.
Int128 dividedBy(Int128 value, Int128 divisor, Rounding rounding) {
    Int128 quotient = value / divisor;
    Int128 const remainder = value % divisor;
    if (remainder == 0) return quotient;
    bool const negative = value < 0;
    switch (rounding) {
        case Rounding::Down: return negative ? quotient - 1 : quotient;
        case Rounding::Up: return negative ? quotient : quotient + 1;
        case Rounding::Nearest: {
            Int128 const rest = absolute(remainder);
            Int128 const half = divisor - rest;
            if (rest > half || (rest == half && quotient % 2 != 0)) quotient += negative ? -1 : 1;
            return quotient;
        }
    }
    return quotient;
}

// Takes digits off at the end until at most `digits` remain.
void shorten(Int128& coefficient, int& scale, int digits) {
    int const excess = digitsOf(coefficient) - digits;
    if (excess <= 0) return;
    coefficient = dividedBy(coefficient, powerOfTen(excess), Rounding::Nearest);
    scale -= excess;
}

}  // namespace

Decimal::Decimal(Int128 coefficient, int scale) : m_coefficient(coefficient), m_scale(scale) {}

std::optional<Decimal> Decimal::parse(std::string_view text) {
    std::size_t at = 0;
    bool negative = false;
    if (at < text.size() && (text[at] == '-' || text[at] == '+')) negative = text[at++] == '-';
    Int128 coefficient = 0;
    int scale = 0;
    int digits = 0;
    bool point = false;
    bool any = false;
    for (; at < text.size(); ++at) {
        char const c = text[at];
        if (c == '.') {
            if (point) return std::nullopt;
            point = true;
            continue;
        }
        if (c < '0' || c > '9') break;
        any = true;
        if (coefficient != 0 || c != '0') ++digits;
        if (digits > kMaxDigits) return std::nullopt;
        coefficient = coefficient * 10 + (c - '0');
        if (point && ++scale > kMaxExponent) return std::nullopt;
    }
    if (!any) return std::nullopt;
    if (at < text.size()) {
        if (text[at] != 'e' && text[at] != 'E') return std::nullopt;
        ++at;
        bool exponentNegative = false;
        if (at < text.size() && (text[at] == '-' || text[at] == '+')) exponentNegative = text[at++] == '-';
        if (at == text.size()) return std::nullopt;
        int exponent = 0;
        for (; at < text.size(); ++at) {
            if (text[at] < '0' || text[at] > '9') return std::nullopt;
            exponent = exponent * 10 + (text[at] - '0');
            if (exponent > kMaxExponent) return std::nullopt;
        }
        scale += exponentNegative ? exponent : -exponent;
    }
    return Decimal(negative ? -coefficient : coefficient, scale);
}

std::string Decimal::toString() const {
    std::string digits;
    Int128 rest = absolute(m_coefficient);
    do {
        digits.push_back(static_cast<char>('0' + static_cast<int>(rest % 10)));
        rest /= 10;
    } while (rest != 0);
    std::reverse(digits.begin(), digits.end());
    if (m_scale > 0) {
        auto const scale = static_cast<std::size_t>(m_scale);
        if (digits.size() <= scale) digits.insert(0, scale + 1 - digits.size(), '0');
        digits.insert(digits.size() - scale, 1, '.');
    } else if (m_scale < 0 && m_coefficient != 0) {
        digits.append(static_cast<std::size_t>(-m_scale), '0');
    }
    return m_coefficient < 0 ? "-" + digits : digits;
}

std::string Decimal::toShortString() const {
    std::string text = toString();
    if (text.find('.') == std::string::npos) return text;
    while (text.back() == '0') text.pop_back();
    if (text.back() == '.') text.pop_back();
    return text;
}

std::string shortNumber(std::string_view text) {
    auto const number = Decimal::parse(text);
    return number ? number->toShortString() : std::string(text);
}

Decimal Decimal::negated() const { return {-m_coefficient, m_scale}; }

Decimal Decimal::magnitude() const { return {absolute(m_coefficient), m_scale}; }

Decimal Decimal::scaledByPowerOfTen(int power) const { return {m_coefficient, m_scale - power}; }

Decimal Decimal::rounded(int scale, Rounding rounding) const {
    if (scale >= m_scale) {
        int const more = std::min(scale - m_scale, kMaxDigits - digitsOf(m_coefficient));
        return more > 0 ? Decimal(m_coefficient * powerOfTen(more), m_scale + more) : *this;
    }
    int const excess = m_scale - scale;
    if (excess >= kPowers) {
        Int128 const unit = m_coefficient > 0 && rounding == Rounding::Up ? 1 : (m_coefficient < 0 && rounding == Rounding::Down ? -1 : 0);
        return {unit, scale};
    }
    return {dividedBy(m_coefficient, powerOfTen(excess), rounding), scale};
}

Decimal Decimal::resolution() const { return {1, m_scale}; }

double Decimal::approximate() const { return static_cast<double>(m_coefficient) * std::pow(10.0, -m_scale); }

Decimal operator+(Decimal a, Decimal b) {
    if (a.m_scale < b.m_scale) std::swap(a, b);  // a has the finer resolution
    // Align b to a's scale; where that does not fit, a loses its last digits.
    int const room = Decimal::kMaxDigits - digitsOf(b.m_coefficient);
    int const wanted = a.m_scale - b.m_scale;
    if (b.m_coefficient == 0) return a;
    int const shift = std::min(wanted, room);
    b.m_coefficient *= powerOfTen(std::max(shift, 0));
    b.m_scale += std::max(shift, 0);
    if (b.m_scale < a.m_scale) a = a.rounded(b.m_scale, Rounding::Nearest);
    Int128 coefficient = a.m_coefficient + b.m_coefficient;
    int scale = a.m_scale;
    shorten(coefficient, scale, Decimal::kMaxDigits);
    return {coefficient, scale};
}

Decimal operator*(Decimal a, Decimal b) {
    Int128 left = a.m_coefficient;
    Int128 right = b.m_coefficient;
    int leftScale = a.m_scale;
    int rightScale = b.m_scale;
    // The longer factor is shortened until the product fits.
    while (digitsOf(left) + digitsOf(right) > Decimal::kMaxDigits) {
        if (digitsOf(left) >= digitsOf(right)) shorten(left, leftScale, std::max(Decimal::kMaxDigits - digitsOf(right), digitsOf(left) / 2));
        else shorten(right, rightScale, std::max(Decimal::kMaxDigits - digitsOf(left), digitsOf(right) / 2));
    }
    return {left * right, leftScale + rightScale};
}

namespace {

std::strong_ordering ordered(Int128 left, Int128 right) {
    if (left == right) return std::strong_ordering::equal;
    return left < right ? std::strong_ordering::less : std::strong_ordering::greater;
}

// Powers of ten of 64 bits; times a coefficient of 64 bits they fit into 128.
constexpr int kShortShift = 18;
constexpr auto kShortPowers = [] {
    std::array<std::int64_t, kShortShift + 1> powers{};
    for (std::size_t i = 0; i < powers.size(); ++i) powers[i] = static_cast<std::int64_t>(kPowerOfTen[i]);
    return powers;
}();

Int128 aligned(std::int64_t coefficient, int digits) { return static_cast<Int128>(coefficient) * kShortPowers[static_cast<std::size_t>(digits)]; }

int signOf(Int128 value) { return value < 0 ? -1 : (value > 0 ? 1 : 0); }

// For any coefficients: those of one magnitude are aligned. Apart, so that the usual comparison stays short.
[[gnu::noinline]] std::strong_ordering orderedByMagnitude(Int128 left, int leftScale, Int128 right, int rightScale) {
    int const sign = signOf(left);
    if (sign != signOf(right)) return sign <=> signOf(right);
    if (sign == 0) return std::strong_ordering::equal;
    int const leftDigits = digitsOf(left);
    int const rightDigits = digitsOf(right);
    int const leftMagnitude = leftDigits - leftScale;
    int const rightMagnitude = rightDigits - rightScale;
    if (leftMagnitude != rightMagnitude) return sign > 0 ? leftMagnitude <=> rightMagnitude : rightMagnitude <=> leftMagnitude;
    if (leftDigits < rightDigits) left *= powerOfTen(rightDigits - leftDigits);
    if (rightDigits < leftDigits) right *= powerOfTen(leftDigits - rightDigits);
    return ordered(left, right);
}

}  // namespace

std::strong_ordering operator<=>(Decimal const& a, Decimal const& b) {
    if (a.m_scale == b.m_scale) return ordered(a.m_coefficient, b.m_coefficient);
    int const finer = a.m_scale - b.m_scale;
    auto const shortA = static_cast<std::int64_t>(a.m_coefficient);
    auto const shortB = static_cast<std::int64_t>(b.m_coefficient);
    if (shortA == a.m_coefficient && shortB == b.m_coefficient && finer <= kShortShift && finer >= -kShortShift) {  // nearly all that is printed
        return finer > 0 ? ordered(shortA, aligned(shortB, finer)) : ordered(aligned(shortA, -finer), shortB);
    }
    return orderedByMagnitude(a.m_coefficient, a.m_scale, b.m_coefficient, b.m_scale);
}

std::optional<Decimal> divide(Decimal a, Decimal b, int digits, Rounding rounding) {
    if (b.isZero()) return std::nullopt;
    if (a.isZero()) return Decimal(0);
    digits = std::clamp(digits, 1, 30);
    Int128 numerator = a.m_coefficient;
    Int128 denominator = b.m_coefficient;
    int scale = a.m_scale - b.m_scale;
    if (denominator < 0) {
        numerator = -numerator;
        denominator = -denominator;
    }
    // Long division: digits come one at a time, so nothing overflows.
    bool const negative = numerator < 0;
    Int128 rest = absolute(numerator);
    Int128 quotient = rest / denominator;
    rest %= denominator;
    while (digitsOf(quotient) < digits + 1 || quotient == 0) {
        if (rest == 0 && quotient != 0) break;
        rest *= 10;
        quotient = quotient * 10 + rest / denominator;
        rest %= denominator;
        ++scale;
        if (scale > 4 * Decimal::kMaxExponent) break;
    }
    // A rest beyond the last digit must still decide directed rounding.
    if (rest != 0 && digitsOf(quotient) < kPowers - 2) {
        quotient = quotient * 10 + 1;
        ++scale;
    }
    if (negative) quotient = -quotient;
    int const excess = digitsOf(quotient) - digits;
    if (excess <= 0) return Decimal(quotient, scale);
    return Decimal(dividedBy(quotient, powerOfTen(excess), rounding), scale - excess);
}

bool equalAsPrinted(Decimal a, Decimal b) {
    int const scale = std::min(a.scale(), b.scale());
    return a.rounded(scale, Rounding::Nearest) == b.rounded(scale, Rounding::Nearest);
}

}  // namespace standin::quantity

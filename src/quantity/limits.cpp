// Signs decide which bounds meet: where both quantities are positive (or turned
// to be so) each bound of the result needs one bound of either; where a sign is
// mixed all four are needed. Between the steps values keep kDigits digits, so that
// products stay exact until they are rounded outward.
// Tested by tests/src/quantity/limits_test.cpp.
#include "quantity/limits.h"

#include <algorithm>
#include <array>

namespace standin::quantity {

namespace {

using Bound = std::optional<Decimal>;

constexpr int kDigits = 17;  // two of them multiply within Decimal::kMaxDigits

enum class Sign { Positive, Negative, Mixed };

Decimal shortened(Decimal value, int digits, Rounding rounding) {
    if (value.isZero()) return Decimal(0);
    auto const divided = divide(value, Decimal(1), digits, rounding);
    return divided ? *divided : value;
}

Bound shortened(Bound const& value, int digits, Rounding rounding) {
    return value ? Bound(shortened(*value, digits, rounding)) : std::nullopt;
}

Limits finished(Limits const& a) { return roundedOutward(a, kDigits); }

template <class Operation>
Bound both(Bound const& a, Bound const& b, Operation operation) {
    return a && b ? Bound(operation(*a, *b)) : std::nullopt;
}

Decimal plus(Decimal a, Decimal b) { return a + b; }
Decimal minus(Decimal a, Decimal b) { return a - b; }
Decimal times(Decimal a, Decimal b) { return a * b; }

Sign signOf(Limits const& a) {
    bool negative = false;
    bool positive = false;
    for (auto const& value : {a.lo, a.typ, a.hi}) {
        negative = negative || (value && value->sign() < 0);
        positive = positive || (value && value->sign() > 0);
    }
    if (negative && positive) return Sign::Mixed;
    return negative ? Sign::Negative : Sign::Positive;
}

Limits mixedProduct(Limits const& a, Limits const& b) {
    Limits product{.lo = {}, .typ = both(a.typ, b.typ, times), .hi = {}};
    if (!a.lo || !a.hi || !b.lo || !b.hi) return product;
    std::array<Decimal, 4> const corners = {*a.lo * *b.lo, *a.lo * *b.hi, *a.hi * *b.lo, *a.hi * *b.hi};
    auto const [least, most] = std::minmax_element(corners.begin(), corners.end());
    product.lo = *least;
    product.hi = *most;
    return product;
}

// Both positive.
Limits positiveQuotient(Limits const& a, Limits const& b) {
    auto const over = [](Bound const& x, Bound const& y, Rounding rounding) -> Bound {
        if (!x || !y || y->sign() <= 0) return std::nullopt;
        return divide(*x, *y, kDigits, rounding);
    };
    return {.lo = over(a.lo, b.hi, Rounding::Down), .typ = over(a.typ, b.typ, Rounding::Nearest), .hi = over(a.hi, b.lo, Rounding::Up)};
}

}  // namespace

Limits exactly(Decimal value) { return {.lo = value, .typ = value, .hi = value}; }

Limits add(Limits const& a, Limits const& b) {
    return finished({.lo = both(a.lo, b.lo, plus), .typ = both(a.typ, b.typ, plus), .hi = both(a.hi, b.hi, plus)});
}

Limits subtract(Limits const& a, Limits const& b) {
    return finished({.lo = both(a.lo, b.hi, minus), .typ = both(a.typ, b.typ, minus), .hi = both(a.hi, b.lo, minus)});
}

Limits multiply(Limits const& a, Limits const& b) {
    Sign const left = signOf(a);
    Sign const right = signOf(b);
    if (left == Sign::Negative && right != Sign::Mixed) return negate(multiply(negate(a), b));
    if (right == Sign::Negative && left == Sign::Positive) return negate(multiply(a, negate(b)));
    if (left == Sign::Mixed || right == Sign::Mixed) return finished(mixedProduct(a, b));
    return finished({.lo = both(a.lo, b.lo, times), .typ = both(a.typ, b.typ, times), .hi = both(a.hi, b.hi, times)});
}

Limits divide(Limits const& a, Limits const& b) {
    switch (signOf(b)) {
        case Sign::Negative: return negate(divide(a, negate(b)));
        case Sign::Mixed: {
            Limits quotient;
            if (a.typ && b.typ) quotient.typ = divide(*a.typ, *b.typ, kDigits, Rounding::Nearest);
            return quotient;
        }
        case Sign::Positive: break;
    }
    switch (signOf(a)) {
        case Sign::Negative: return negate(positiveQuotient(negate(a), b));
        case Sign::Positive: return positiveQuotient(a, b);
        case Sign::Mixed: break;
    }
    // Farthest from zero where the divisor is smallest.
    auto const over = [](Bound const& x, Bound const& y, Rounding rounding) -> Bound {
        if (!x || !y || y->sign() <= 0) return std::nullopt;
        return divide(*x, *y, kDigits, rounding);
    };
    auto const end = [&](Bound const& x, Rounding rounding) {
        bool const outward = x && (x->sign() > 0) == (rounding == Rounding::Up);
        return over(x, outward ? b.lo : b.hi, rounding);
    };
    return {.lo = end(a.lo, Rounding::Down), .typ = over(a.typ, b.typ, Rounding::Nearest), .hi = end(a.hi, Rounding::Up)};
}

Limits negate(Limits const& a) {
    auto const turned = [](Bound const& value) { return value ? Bound(value->negated()) : std::nullopt; };
    return {.lo = turned(a.hi), .typ = turned(a.typ), .hi = turned(a.lo)};
}

Limits magnitude(Limits const& a) {
    switch (signOf(a)) {
        case Sign::Positive: return a;
        case Sign::Negative: return negate(a);
        case Sign::Mixed: break;
    }
    Limits made;
    if (a.typ) made.typ = a.typ->magnitude();
    if (a.lo && a.hi) {
        // One that does not reach over zero has its sign from a stray typical value.
        bool const overZero = a.lo->sign() < 0 && a.hi->sign() > 0;
        made.lo = overZero ? Decimal(0) : std::min(a.lo->magnitude(), a.hi->magnitude());
        made.hi = std::max(a.lo->magnitude(), a.hi->magnitude());
    }
    return made;
}

Limits square(Limits const& a) {
    Limits const m = magnitude(a);
    return multiply(m, m);
}

Limits plusMinus(Limits const& a) {
    Limits const m = magnitude(a);
    Limits made{.lo = {}, .typ = Decimal(0), .hi = m.hi};
    if (m.hi) made.lo = m.hi->negated();
    return made;
}

Limits enclosing(Limits const& a, Limits const& b) {
    return {.lo = both(a.lo, b.lo, [](Decimal x, Decimal y) { return std::min(x, y); }),
            .typ = a.typ ? a.typ : b.typ,
            .hi = both(a.hi, b.hi, [](Decimal x, Decimal y) { return std::max(x, y); })};
}

Limits roundedOutward(Limits const& a, int digits) {
    return {.lo = shortened(a.lo, digits, Rounding::Down), .typ = shortened(a.typ, digits, Rounding::Nearest), .hi = shortened(a.hi, digits, Rounding::Up)};
}

}  // namespace standin::quantity

// Bounds are compared as (value, excluded?) pairs. An absent bound is treated as
// "no limit" only where both sheets leave it out; otherwise the pair is
// one-sided. Typical values are compared as printed.
//
// Tested by tests/src/compare/relation_test.cpp.
#include "compare/relation.h"

#include <algorithm>
#include <array>
#include <compare>
#include <optional>
#include <string>
#include <vector>

#include "compare/node_names.h"
#include "compare/text_keys.h"
#include "compare/wording_phrases.h"
#include "quantity/decimal.h"
#include "quantity/numbers.h"
#include "text/fold.h"
#include "text/utf8.h"

namespace standin::compare {

namespace {

using model::Interval;
using model::Relation;
using quantity::Decimal;

struct Bounds {
    std::optional<Decimal> lo, typ, hi;
    bool loOpen = false;
    bool hiOpen = false;
    [[nodiscard]] bool limited() const { return lo.has_value() || hi.has_value(); }
};

std::optional<Decimal> decimal(std::optional<std::string> const& text) { return text ? Decimal::parse(*text) : std::nullopt; }

Bounds boundsOf(Interval const& interval) { return {decimal(interval.lo), decimal(interval.typ), decimal(interval.hi), interval.loOpen, interval.hiOpen}; }

// Candidate against reference: negative below, positive above.
int order(Decimal reference, bool referenceOpen, Decimal candidate, bool candidateOpen, int openMeans, Precision precision) {
    if (reference != candidate && !(precision == Precision::AsPrinted && quantity::equalAsPrinted(reference, candidate))) {
        return candidate < reference ? -1 : 1;
    }
    if (referenceOpen == candidateOpen) return 0;
    return candidateOpen ? openMeans : -openMeans;
}

bool ratioIsPrefix(Decimal a, Decimal b) {
    a = a.magnitude();
    b = b.magnitude();
    if (a.isZero() || b.isZero()) return false;
    if (a < b) std::swap(a, b);
    for (int const power : {3, 6}) {
        Decimal const scaled = b.scaledByPowerOfTen(power);
        // within a tenth
        if (scaled * Decimal(9) <= a * Decimal(10) && a * Decimal(10) <= scaled * Decimal(11)) return true;
    }
    return false;
}

bool prefixSuspected(Bounds const& r, Bounds const& c) {
    bool any = false;
    for (auto const& [a, b] : {std::pair{r.lo, c.lo}, std::pair{r.typ, c.typ}, std::pair{r.hi, c.hi}}) {
        if (!a || !b) continue;
        if (a->isZero() && b->isZero()) continue;
        if (!ratioIsPrefix(*a, *b)) return false;
        any = true;
    }
    return any;
}

Relation relateLimits(Bounds const& r, Bounds const& c, BoundPrecision precision) {
    int const lower = r.lo ? order(*r.lo, r.loOpen, *c.lo, c.loOpen, +1, precision.lower) : 0;
    int const upper = r.hi ? order(*r.hi, r.hiOpen, *c.hi, c.hiOpen, -1, precision.upper) : 0;
    if (lower == 0 && upper == 0) return Relation::Same;
    if (r.lo && r.hi) {
        if (*c.lo > *r.hi) return Relation::ClearAbove;
        if (*c.hi < *r.lo) return Relation::ClearBelow;
    }
    if (lower >= 0 && upper <= 0) return Relation::Inside;
    if (lower < 0 && upper > 0) return Relation::Wider;
    return upper > 0 ? Relation::ReachesHigher : Relation::ReachesLower;
}

Relation relateTypical(Bounds const& r, Bounds const& c) {
    if (!r.typ && !c.typ) return Relation::NotComparable;
    if (!r.typ || !c.typ) return Relation::OneSided;
    return *r.typ == *c.typ || quantity::equalAsPrinted(*r.typ, *c.typ) ? Relation::TypEqual : Relation::TypDiffers;
}

// "VCU-0.025" and "VDD+0.3": the node in one spelling, the rest as folded.
std::string valueKey(std::string_view text) {
    std::string const folded = spaceless(text);
    std::string key;
    std::string name;
    auto flush = [&] {
        if (!name.empty()) key += nodeKey(name);
        name.clear();
    };
    for (char const c : folded) {
        bool const letter = (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z');
        bool const digit = c >= '0' && c <= '9';
        if (letter || (digit && !name.empty())) {
            name += c;
        } else {
            flush();
            key += c;
        }
    }
    flush();
    return key;
}

std::vector<Decimal> numbersOf(std::string_view text) {
    std::vector<Decimal> numbers;
    for (auto const span : quantity::findNumbers(text)) {
        auto const parsed = quantity::parseNumber(text.substr(span.begin, span.end - span.begin));
        if (parsed) numbers.push_back(parsed->value);
    }
    return numbers;
}

// As many numbers are printed as the interval has values.
bool judgesAllNumbers(model::Parameter const& p) {
    std::size_t printed = 0;
    for (auto const* value : {&p.min, &p.typ, &p.max}) printed += *value ? numbersOf((*value)->text).size() : 0;
    std::size_t const judged = (p.interval->lo ? 1U : 0U) + (p.interval->typ ? 1U : 0U) + (p.interval->hi ? 1U : 0U);
    return printed > 0 && printed == judged && p.interval->relativeTo.empty() && p.interval->factor.empty();
}

bool sameText(std::optional<model::Value> const& r, std::optional<model::Value> const& c) {
    if (r.has_value() != c.has_value()) return false;
    return !r || r->text == c->text || valueKey(r->text) == valueKey(c->text);
}

// Both cells hold a value that stands for one number in the interval's unit, and it is equal.
bool sameNumber(std::optional<model::Value> const& r, std::optional<model::Value> const& c) {
    if (!r || !c || !r->value || !c->value) return false;
    auto const a = Decimal::parse(*r->value);
    auto const b = Decimal::parse(*c->value);
    return a && b && (*a == *b || quantity::equalAsPrinted(*a, *b));
}

// "Minimum set-up time", not "Dropout voltage at minimum input voltage".
bool beginsWith(std::string_view printed, Meaning meaning) {
    std::string const name = text::lowerCase(text::foldForComparison(printed));
    for (PhraseLine const& line : phraseLines()) {
        if (line.meaning != meaning) continue;
        for (std::string_view rest = line.phrases; !rest.empty();) {
            std::string_view const phrase = rest.substr(0, rest.find('|'));
            rest.remove_prefix(std::min(rest.size(), phrase.size() + 1));
            if (phrase.empty() || !name.starts_with(phrase)) continue;
            if (!text::isAsciiLetter(phrase.back()) || name.size() == phrase.size() || !text::isAsciiLetter(name[phrase.size()])) return true;
        }
    }
    return false;
}

enum class Counted : std::uint8_t { Unsaid, Each, Together };

bool saysWord(std::string_view padded, std::initializer_list<std::string_view> words) {
    return std::any_of(words.begin(), words.end(), [padded](std::string_view word) { return padded.find(word) != std::string_view::npos; });
}

Counted countedIn(std::string_view name) {
    std::string padded = " ";
    for (char const c : text::asciiLower(text::foldForComparison(name))) {
        bool const letter = text::isAsciiLetter(c) || text::isAsciiDigit(c) || static_cast<unsigned char>(c) >= 0x80U;
        if (letter || padded.back() != ' ') padded += letter ? c : ' ';
    }
    padded += ' ';
    bool const each = saysWord(padded, {" each ", " per fet ", " per mosfet ", " per transistor ", " per amplifier ", " per comparator ", " per channel ", " per switch ",
                                        " per gate ", " per output ", " single fet ", " one fet ", " one amplifier ", "每个", "单个", "每通道"});
    bool const together = saysWord(padded, {" total ", " both ", " all ", " two fets ", " two mosfets ", " in series ", " source to source ", "两个", "总", "合計"});
    return each == together ? Counted::Unsaid : each ? Counted::Each : Counted::Together;
}

bool hasOnlyMaximum(model::Parameter const& p) { return p.max && !p.min && p.interval && p.interval->hi && !p.interval->lo; }
bool hasOnlyMinimum(model::Parameter const& p) { return p.min && !p.max && p.interval && p.interval->lo && !p.interval->hi; }

model::Parameter underMinimum(model::Parameter p) {
    std::swap(p.min, p.max);
    std::swap(p.interval->lo, p.interval->hi);
    std::swap(p.interval->loOpen, p.interval->hiOpen);
    return p;
}

bool hasLimits(model::Parameter const& parameter) { return parameter.interval && (parameter.interval->lo || parameter.interval->hi); }

// "VCU-0.025" of two versions: the texts are equal, what VCU is in each is not.
bool sameByVersion(model::Parameter const& reference, model::Parameter const& candidate) {
    auto const absolute = [](model::Parameter const& p) { return p.interval && p.interval->relativeTo.empty() && p.interval->factor.empty(); };
    auto const namesNode = [](std::optional<model::Value> const& value) { return value && std::any_of(value->text.begin(), value->text.end(), text::isAsciiLetter); };
    if (!absolute(reference) || !absolute(candidate)) return true;
    if (!namesNode(reference.min) && !namesNode(reference.typ) && !namesNode(reference.max)) return true;
    return *reference.interval == *candidate.interval;
}

}  // namespace

std::optional<OneColumn> inOneColumn(model::Parameter const& reference, model::Parameter const& candidate, std::optional<vocabulary::Role> role) {
    bool const maximumFirst = hasOnlyMaximum(reference) && hasOnlyMinimum(candidate);
    bool const maximumSecond = hasOnlyMinimum(reference) && hasOnlyMaximum(candidate);
    if (!maximumFirst && !maximumSecond) return std::nullopt;
    std::string const& name = maximumFirst ? reference.name : candidate.name;
    bool const needed = (role == vocabulary::Role::Cap || role == vocabulary::Role::Floor) && beginsWith(name, Meaning::Minimum);
    bool const guaranteed = role == vocabulary::Role::Floor && beginsWith(name, Meaning::Maximum);
    if (!needed && !guaranteed) return std::nullopt;
    return maximumFirst ? OneColumn{underMinimum(reference), candidate} : OneColumn{reference, underMinimum(candidate)};
}

bool countApart(std::string_view reference, std::string_view candidate) {
    if (reference == candidate) return false;
    Counted const r = countedIn(reference);
    if (r == Counted::Unsaid) return false;
    Counted const c = countedIn(candidate);
    return c != Counted::Unsaid && c != r;
}

bool spanApart(model::Parameter const& reference, model::Parameter const& candidate) {
    auto const isSpan = [](model::Parameter const& p) {
        std::string const name = spaceless(text::asciiLower(text::foldForComparison(p.name)));
        return name.find("peak-to-peak") != std::string::npos || name.find("peaktopeak") != std::string::npos;
    };
    auto const isEitherSign = [](model::Parameter const& p) {
        constexpr std::string_view kEither = "±";
        auto const printed = [&](std::optional<model::Value> const& value) { return value && value->printed.starts_with(kEither); };
        return p.symbol.starts_with(kEither) || printed(p.min) || printed(p.typ) || printed(p.max);
    };
    return (isEitherSign(candidate) && isSpan(reference) && !isEitherSign(reference)) || (isEitherSign(reference) && isSpan(candidate) && !isEitherSign(candidate));
}

bool isEqual(Relation relation, model::Parameter const& reference, model::Parameter const& candidate) {
    if (relation == Relation::TypEqual) return !hasLimits(reference) && !hasLimits(candidate);
    return relation == Relation::Same;
}

Relation relateIntervals(Interval const& reference, Interval const& candidate, BoundPrecision precision) {
    if (reference.unit != candidate.unit) return Relation::UnitConflict;
    if (reference.factor.empty() != candidate.factor.empty()) return Relation::NotComparable;
    if (reference.relativeTo != candidate.relativeTo && nodeKey(reference.relativeTo) != nodeKey(candidate.relativeTo)) {
        return Relation::NotComparable;
    }
    Bounds const r = boundsOf(reference);
    Bounds const c = boundsOf(candidate);
    if (prefixSuspected(r, c)) return Relation::UnitConflict;
    if (!r.limited() || !c.limited()) {
        if (!r.limited() && !c.limited()) return relateTypical(r, c);
        return r.typ && c.typ ? relateTypical(r, c) : Relation::OneSided;
    }
    if (r.lo.has_value() != c.lo.has_value() || r.hi.has_value() != c.hi.has_value()) return Relation::OneSided;
    Relation const limits = relateLimits(r, c, precision);
    if (limits != Relation::Same) return limits;
    if (!r.typ && !c.typ) return Relation::Same;
    if (!r.typ || !c.typ) return Relation::TypDiffers;
    return relateTypical(r, c) == Relation::TypEqual ? Relation::Same : Relation::TypDiffers;
}

Relation relateValues(model::Parameter const& reference, model::Parameter const& candidate, BoundPrecision precision) {
    bool const sameTexts = sameText(reference.min, candidate.min) && sameText(reference.typ, candidate.typ) && sameText(reference.max, candidate.max);
    bool const sameUnit = reference.unit == candidate.unit || spaceless(reference.unit) == spaceless(candidate.unit);
    if (sameTexts && sameUnit && sameByVersion(reference, candidate)) {
        bool const onlyTypical = reference.typ && !reference.min && !reference.max;
        return onlyTypical && reference.interval && !reference.interval->lo && !reference.interval->hi ? Relation::TypEqual : Relation::Same;
    }
    if (!reference.interval || !candidate.interval) {
        // Words, or values that are no numbers: equal or not, no more can be said.
        return sameTexts && sameUnit ? Relation::Same : Relation::NotComparable;
    }
    Relation const relation = relateIntervals(*reference.interval, *candidate.interval, precision);
    if (!isEqual(relation, reference, candidate)) return relation;
    // The intervals agree; do they hold all that is printed? "0.1 max." in a column of its own does.
    if (judgesAllNumbers(reference) && judgesAllNumbers(candidate)) return relation;
    using Member = std::optional<model::Value> model::Parameter::*;
    for (Member const member : std::array<Member, 3>{&model::Parameter::min, &model::Parameter::typ, &model::Parameter::max}) {
        auto const& r = reference.*member;
        auto const& c = candidate.*member;
        if (sameText(r, c) || sameNumber(r, c)) continue;
        if (!r || !c || numbersOf(r->text) != numbersOf(c->text)) {
            // Read into the interval from another cell ("4.25±0.05" against three cells)?
            bool const everyNumberIsJudged = reference.interval->lo && reference.interval->hi && candidate.interval->lo && candidate.interval->hi;
            if (everyNumberIsJudged && reference.interval->relativeTo.empty() && candidate.interval->relativeTo.empty()) continue;
            return Relation::NotComparable;
        }
    }
    return relation;
}

}  // namespace standin::compare

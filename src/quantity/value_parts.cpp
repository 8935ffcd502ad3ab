#include "quantity/value_parts.h"

#include <algorithm>
#include <array>
#include <cmath>

#include <fmt/format.h>

#include "text/script.h"
#include "text/utf8.h"

// An atom is tried as number and unit, as number times node, as node with an
// offset, as a code with a letter for the point. A range is split at its mark,
// and a dash is a mark only where what stands before it is a complete number.
// Tested by tests/src/quantity/cell_test.cpp.

namespace standin::quantity {

namespace {

bool isDigit(char c) { return text::isAsciiDigit(c); }

// Length of the number at the start: sign, digits with points, commas, single
// spaces between groups of three, exponent, "×10⁻³".
std::size_t numberLength(std::string_view text) {
    std::size_t at = 0;
    if (at < text.size() && (text[at] == '-' || text[at] == '+')) {
        ++at;
        while (at < text.size() && text[at] == ' ') ++at;
    }
    std::size_t const first = at;
    while (at < text.size()) {
        char const c = text[at];
        bool const joins = (c == '.' || c == ',' || c == '\'') && at + 1 < text.size() && isDigit(text[at + 1]);
        bool const group = c == ' ' && at > first && isDigit(text[at - 1]) && at + 3 < text.size() && isDigit(text[at + 1]) && isDigit(text[at + 2]) &&
                           isDigit(text[at + 3]) && (at + 4 == text.size() || !isDigit(text[at + 4]));
        if (!isDigit(c) && !joins && !group) break;
        ++at;
    }
    if (at == first) return 0;
    if (at + 1 < text.size() && (text[at] == 'e' || text[at] == 'E')) {
        std::size_t exponent = at + 1;
        if (text[exponent] == '-' || text[exponent] == '+') ++exponent;
        std::size_t const digits = exponent;
        while (exponent < text.size() && isDigit(text[exponent])) ++exponent;
        if (exponent > digits) return exponent;
    }
    for (std::string_view const ten : {"×10", "x10", "*10", "× 10", "x 10"}) {
        std::size_t const gap = at < text.size() && text[at] == ' ' ? 1 : 0;
        if (text.substr(at + gap, ten.size()) != ten) continue;
        std::size_t end = at + gap + ten.size();
        if (end < text.size() && text[end] == '^') ++end;
        if (end < text.size() && text[end] == '-') ++end;
        std::size_t const exponent = end;
        while (end < text.size() && isDigit(text[end])) ++end;
        while (end < text.size()) {
            std::size_t next = end;
            char32_t const code = text::decodeNext(text, next);
            bool const raised = code == 0xB9 || code == 0xB2 || code == 0xB3 || (code >= 0x2070 && code <= 0x207B);
            if (!raised) break;
            end = next;
        }
        if (end > exponent) return end;
    }
    if (text.substr(first, at - first) == "10") {  // "10^-7", "10⁻⁷"
        std::size_t end = at;
        if (end < text.size() && text[end] == '^') {
            ++end;
            if (end < text.size() && text[end] == '-') ++end;
            while (end < text.size() && isDigit(text[end])) ++end;
            return end;
        }
        while (end < text.size()) {
            std::size_t next = end;
            char32_t const code = text::decodeNext(text, next);
            if (code != 0xB9 && code != 0xB2 && code != 0xB3 && !(code >= 0x2070 && code <= 0x207B)) break;
            end = next;
        }
        return end;
    }
    return at;
}

// A name of a node or quantity: a letter, then letters, digits, "_", "(on)", and a
// final "-" or "+" for pins such as "V-" where nothing numeric follows.
std::size_t nodeLength(std::string_view text) {
    std::size_t at = 0;
    while (at < text.size()) {
        std::size_t next = at;
        char32_t const code = text::decodeNext(text, next);
        bool const letter = text::isLetter(code) && !text::isCjk(code);
        bool const inside = at > 0 && (code == U'_' || (code < 0x80 && isDigit(static_cast<char>(code))));
        bool const bracket = at > 0 && code == U'(' && next < text.size() && text::isAsciiLetter(text[next]) && text.find(')', next) != std::string_view::npos &&
                             text.find(')', next) - next <= 6;
        if (bracket) {
            at = text.find(')', next) + 1;
            continue;
        }
        // "V+", "V-", "P-": the sign belongs to the name where no digit follows it.
        bool const sign = at > 0 && at <= 4 && (code == U'+' || code == U'-') && std::all_of(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(at), text::isAsciiUpper) &&
                          (next == text.size() || text[next] == '+' || text[next] == '-' || text[next] == ' ');
        if (sign && !(next < text.size() && text[next] == ' ' && next + 1 < text.size() && isDigit(text[next + 1]))) return next;
        if (!letter && !inside) break;
        at = next;
    }
    return at;
}

// "4R7", "R010", "3V3", "2k2", "4u7": a letter in place of the point.
std::optional<Atom> letterForPoint(std::string_view text, ValueContext const& context) {
    if (text.size() < 2 || text.size() > 8) return std::nullopt;
    std::size_t letterAt = std::string_view::npos;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (isDigit(text[i])) continue;
        if (letterAt != std::string_view::npos) return std::nullopt;
        letterAt = i;
    }
    if (letterAt == std::string_view::npos) return std::nullopt;
    char const letter = text[letterAt];
    bool const last = letterAt + 1 == text.size();
    if (last && letter != 'R') return std::nullopt;           // "100m" is a prefix, "1K" a unit
    if (letterAt == 0 && letter != 'R') return std::nullopt;  // "A12" is a code
    struct Meaning {
        char letter;
        std::string_view coherent;
        int power;
    };
    static constexpr std::array<Meaning, 10> kMeanings{{{'R', "Ω", 0}, {'K', "Ω", 3}, {'k', "Ω", 3}, {'M', "Ω", 6}, {'V', "V", 0}, {'L', "Ω", -3},
                                                        {'u', "F", -6}, {'n', "F", -9}, {'p', "F", -12}, {'m', "Ω", -3}}};
    for (Meaning const& meaning : kMeanings) {
        if (meaning.letter != letter) continue;
        std::string_view coherent = meaning.coherent;
        if (coherent == "F" && context.expected == "H") coherent = "H";
        if (!context.expected.empty() && coherent != context.expected) return std::nullopt;
        std::string const digits = std::string(text.substr(0, letterAt)) + (last ? "" : ".") + std::string(text.substr(letterAt + 1));
        auto const value = Decimal::parse(digits);
        if (!value) return std::nullopt;
        Atom atom;
        Unit unit;
        unit.coherent = std::string(coherent);
        atom.value = value->scaledByPowerOfTen(meaning.power);
        atom.unit = unit;
        atom.numberText = std::string(text);
        atom.note = fmt::format("letter {} read as the decimal point", letter);
        return atom;
    }
    return std::nullopt;
}

// "250C" where the raised degree sign became a zero.
bool isLostDegree(std::string_view number, std::string_view unit, Decimal value, ValueContext const& context) {
    bool const temperature = context.expected == "degC";
    return temperature && unit == "C" && number.size() >= 3 && number.back() == '0' && number.find('.') == std::string_view::npos && value.magnitude() > Decimal(175);
}

// "104" in a row of capacitances: 10 × 10⁴ pF.
std::optional<Decimal> capacitorMarking(std::string_view number, ValueContext const& context) {
    if (context.expected != "F" || !context.unit.empty() || number.size() != 3 || !std::all_of(number.begin(), number.end(), isDigit)) return std::nullopt;
    auto const digits = Decimal::parse(number.substr(0, 2));
    return digits ? std::optional(digits->scaledByPowerOfTen(number[2] - '0' - 12)) : std::nullopt;
}

std::optional<Decimal> knownValue(std::string_view node, ValueContext const& context) {
    for (auto const& [name, value] : context.known) {
        if (name == node) return value;
    }
    return std::nullopt;
}

std::string_view skipTimes(std::string_view text) {
    text = text::trimmed(text);
    for (std::string_view const sign : {"×", "*", "x ", "·"}) {
        if (text.substr(0, sign.size()) == sign) return text::trimmed(text.substr(sign.size()));
    }
    return text;
}

std::optional<Atom> numberAtom(std::string_view text, ValueContext const& context) {
    std::size_t const length = numberLength(text);
    if (length == 0) return std::nullopt;
    std::string_view const digits = text.substr(0, length);
    auto const number = parseNumber(text::trimmed(digits), context.comma);
    if (!number) return std::nullopt;
    Atom atom;
    atom.value = number->value;
    atom.numberText = std::string(text::trimmed(digits));
    atom.note = number->note;
    std::string_view const rest = text::trimmed(text.substr(length));
    if (rest.empty()) {
        if (auto const marking = capacitorMarking(atom.numberText, context)) {
            atom.value = *marking;
            atom.unit = Unit{"F", 1, 0, "", ""};
            atom.note = "three digits read as a capacitor marking";
        }
        return atom;
    }
    if (rest == "C" && context.capacity) {
        auto const rate = divide(atom.value * *context.capacity, 3600, 20, Rounding::Nearest);
        atom.value = rate.value_or(0);
        atom.unit = Unit{"A", 1, 0, "", ""};
        atom.unitText = "C";
        atom.note = "C-rate worked out from the capacity";
        return atom;
    }
    if (auto const unit = parseUnit(rest, {.expected = context.expected, .allCapitals = context.allCapitals})) {
        atom.unit = unit;
        atom.unitText = std::string(rest);
        Decimal printed = atom.value;
        if (isLostDegree(digits, rest, printed, context)) {
            printed = printed.scaledByPowerOfTen(-1).rounded(0, Rounding::Nearest);
            atom.note = fmt::format("\"{}\" read as {} °C: a raised degree sign became 0", text, printed.toString());
        } else if (!unit->note.empty()) {
            atom.note = unit->note;
        }
        atom.value = toCoherent(printed, *unit);
        return atom;
    }
    // "0.7×VDD", "0.7VDD", "80% of VDD"
    std::string_view product = skipTimes(rest);
    bool percent = false;
    if (!rest.empty() && rest.front() == '%') {
        percent = true;
        product = skipTimes(rest.substr(1));
        if (product.substr(0, 3) == "of ") product = text::trimmed(product.substr(3));
    }
    if (!product.empty() && nodeLength(product) == product.size()) {
        atom.node = std::string(product);
        atom.ratio = true;
        if (percent) atom.value = atom.value.scaledByPowerOfTen(-2);
        return atom;
    }
    return std::nullopt;
}

std::optional<Atom> nodeAtom(std::string_view text, ValueContext const& context) {
    std::size_t const length = nodeLength(text);
    if (length == 0) return std::nullopt;
    std::string_view const node = text.substr(0, length);
    std::string_view rest = text::trimmed(text.substr(length));
    if (!text::isAsciiUpper(node.front()) && context.known.empty() && node.size() < 2) return std::nullopt;
    Atom atom;
    atom.node = std::string(node);
    if (rest.empty()) {
        // A bare word is a node only if it looks like a symbol: it starts with V, or I with capitals.
        bool const symbol = node.size() >= 2 && node.size() <= 8 && (node.front() == 'V' || node.front() == 'v') && text::isAsciiUpper(node[1]);
        if (!symbol && !knownValue(node, context)) return std::nullopt;
        atom.value = 0;
        atom.numberText = std::string(node);
        return atom;
    }
    if (rest.front() == '+' || rest.front() == '-') {
        auto const offset = numberAtom(rest, context);
        if (!offset || offset->ratio) return std::nullopt;
        atom.value = offset->value;
        atom.unit = offset->unit;
        atom.unitText = offset->unitText;
        atom.note = offset->note;
        atom.numberText = std::string(node) + offset->numberText;
        return atom;
    }
    std::string_view const factor = skipTimes(rest);
    if (factor.size() == rest.size()) return std::nullopt;
    auto const number = numberAtom(factor, ValueContext{});
    if (!number || number->unit || number->ratio) return std::nullopt;
    atom.value = number->value;
    atom.ratio = true;
    atom.numberText = std::string(text);
    return atom;
}

}  // namespace

bool mayHoldAtom(std::string_view folded, ValueContext const& context) {
    return !context.known.empty() || std::any_of(folded.begin(), folded.end(), [](char c) { return isDigit(c) || c == 'V' || c == 'v'; });
}

std::optional<Atom> parseAtom(std::string_view folded, ValueContext const& context) {
    constexpr std::size_t kLongest = 64;
    std::string_view text = text::trimmed(folded);
    if (text.empty() || text.size() > kLongest) return std::nullopt;
    if (!mayHoldAtom(text, context)) return std::nullopt;
    // "(VDD + 0.5 V)"; a bracketed bare number is left alone.
    if (text.size() > 2 && text.front() == '(' && text.back() == ')' && text.find('(', 1) == std::string_view::npos &&
        std::any_of(text.begin(), text.end(), text::isAsciiLetter))
        text = text::trimmed(text.substr(1, text.size() - 2));
    auto atom = letterForPoint(text, context);
    if (!atom) atom = numberAtom(text, context);
    if (!atom) atom = nodeAtom(text, context);
    if (!atom) return std::nullopt;
    if (atom->numberText.empty()) atom->numberText = std::string(text);
    if (atom->ratio && atom->numberText.find(atom->node) == std::string::npos) atom->numberText = std::string(text);
    if (auto const known = atom->node.empty() ? std::nullopt : knownValue(atom->node, context)) {
        Decimal offset = atom->value;
        if (!atom->ratio && !atom->unit && !context.unit.empty()) {
            if (auto const unit = parseUnit(context.unit, {.expected = context.expected})) offset = toCoherent(offset, *unit);
        }
        atom->value = atom->ratio ? atom->value * *known : *known + offset;
        atom->note = fmt::format("worked out with {} = {}", atom->node, known->toString());
        atom->node.clear();
        atom->ratio = false;
        if (!atom->unit) atom->unit = Unit{std::string(context.expected), 1, 0, "", ""};
    }
    return atom;
}

std::optional<TextRange> splitRange(std::string_view folded, ValueContext const& context) {
    std::string_view const text = text::trimmed(folded);
    constexpr std::size_t kLongest = 120;
    if (text.size() < 3 || text.size() > kLongest) return std::nullopt;
    auto const sides = [&](std::size_t at, std::size_t length) -> std::optional<TextRange> {
        std::string_view const lower = text::trimmed(text.substr(0, at));
        std::string_view const upper = text::trimmed(text.substr(at + length));
        if (lower.empty() || upper.empty()) return std::nullopt;
        auto const right = parseAtom(upper, context);
        if (!right) return std::nullopt;
        ValueContext leftContext = context;
        std::string const rightUnit = right->unit ? right->unit->coherent : std::string();
        if (!rightUnit.empty()) leftContext.expected = rightUnit;
        auto const left = parseAtom(lower, leftContext);
        if (!left) return std::nullopt;
        return TextRange{lower, upper};
    };
    for (std::string_view const mark : {" to ", "...", "..", "~", " through ", " bis ", "至", "到", " thru ", " TO ", " To "}) {
        std::size_t const at = text.find(mark);
        if (at == std::string_view::npos || at == 0) continue;
        if (auto range = sides(at, mark.size())) return range;
    }
    // "3Vto5V" without spaces.
    if (std::size_t const at = text.find("to"); at != std::string_view::npos && at > 0 && text.find(" to ") == std::string_view::npos) {
        if (auto range = sides(at, 2)) return range;
    }
    for (std::size_t at = text.find('-', 1); at != std::string_view::npos; at = text.find('-', at + 1)) {
        char const before = text[at - 1];
        if (before == 'E' || before == 'e' || before == '+' || before == '-') continue;
        std::string_view const lower = text::trimmed(text.substr(0, at));
        auto const left = parseAtom(lower, context);
        if (!left || nodeLength(lower) == lower.size()) continue;  // "VDD-0.3" is no range
        std::string_view const upper = text::trimmed(text.substr(at + 1));
        auto const right = parseAtom(upper, context);
        if (!right) continue;
        if (left->ratio && right->node.empty()) continue;  // "0.7×VDD-0.3"
        return sides(at, 1);
    }
    return std::nullopt;
}

bool isBlankMark(std::string_view folded) {
    std::string_view const text = text::trimmed(folded);
    if (text.empty()) return true;
    if (std::all_of(text.begin(), text.end(), [](char c) { return c == '-' || c == ' ' || c == '.' || c == '_' || c == '~'; })) return true;
    for (std::string_view const mark : {"N/A", "N.A.", "n/a", "n.a.", "NA", "/", "一", "ー", "•", "*"}) {
        if (text == mark) return true;
    }
    return false;
}

std::string_view withoutRemark(std::string_view folded, std::string& remark) {
    std::string_view text = text::trimmed(folded);
    for (int round = 0; round < 4 && !text.empty(); ++round) {
        if (text.back() == ')') {
            std::size_t const open = text.rfind('(');
            if (open == std::string_view::npos || open == 0) break;
            std::string_view const inside = text.substr(open + 1, text.size() - open - 2);
            // "-0.5 V to (VDD + 0.5 V)": the bracket is the value.
            std::string_view const before = text::trimmed(text.substr(0, open));
            bool const openEnd = !before.empty() && (before.back() == '~' || before.back() == '-' || before.back() == '+' || before.back() == '=' || before.back() == '.');
            if (openEnd || (before.size() > 3 && before.substr(before.size() - 3) == " to")) break;
            if (text::isAsciiLetter(text[open - 1])) break;  // "RDS(on)", "sqrt(Hz)"
            remark = std::string(inside);
            text = text::trimmed(text.substr(0, open));
            continue;
        }
        std::size_t at = text.size();
        char32_t const last = text::decodePrevious(text, at);
        bool const raised = last == 0xB9 || last == 0xB2 || last == 0xB3 || (last >= 0x2070 && last <= 0x2079);
        bool const circled = last >= 0x2460 && last <= 0x2473;
        // "10⁻³" keeps its exponent, "mm²" its square.
        bool const afterDigit = at > 0 && isDigit(text[at - 1]) && (at < 2 || text.substr(at - 2, 2) != "10");
        if (circled || last == U'*' || last == 0x2020 || (raised && afterDigit)) {
            text = text::trimmed(text.substr(0, at));
            continue;
        }
        // "*1" behind a space or value
        std::size_t const star = text.rfind('*');
        if (star != std::string_view::npos && star > 0 && text.size() - star <= 3 && text.size() - star >= 2 &&
            std::all_of(text.begin() + static_cast<std::ptrdiff_t>(star) + 1, text.end(), isDigit) && text.substr(star) != "*10") {
            text = text::trimmed(text.substr(0, star));
            continue;
        }
        break;
    }
    return text;
}

}  // namespace standin::quantity

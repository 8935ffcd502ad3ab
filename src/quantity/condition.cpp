#include "quantity/condition.h"

#include <algorithm>
#include <cmath>

#include "quantity/cell.h"
#include "quantity/value_parts.h"
#include "text/fold.h"
#include "text/script.h"
#include "text/utf8.h"

// The text is split at commas and semicolons that are outside of numbers and
// brackets and at "and"; each part is symbol, comparison sign, value. A part that
// says more ("VDD falling from …") stays as text, not understood.
// Tested by tests/src/quantity/condition_test.cpp.

namespace standin::quantity {

namespace {

std::vector<std::string_view> partsOf(std::string_view text) {
    std::vector<std::string_view> parts;
    int depth = 0;
    std::size_t begin = 0;
    auto const close = [&](std::size_t end) {
        std::string_view const part = text::trimmed(text.substr(begin, end - begin));
        if (!part.empty()) parts.push_back(part);
    };
    for (std::size_t at = 0; at < text.size();) {
        std::size_t next = at;
        char32_t const code = text::decodeNext(text, next);
        if (code == U'(' || code == U'[') ++depth;
        if ((code == U')' || code == U']') && depth > 0) --depth;
        bool const digits = code == U',' && at > 0 && text::isAsciiDigit(text[at - 1]) && next < text.size() && text::isAsciiDigit(text[next]);
        bool const separator = (code == U',' && !digits) || code == U';' || code == 0x3001 || code == 0xFF1B;
        bool const word = depth == 0 && text.substr(at, 5) == " and ";
        if (depth == 0 && (separator || word)) {
            close(at);
            begin = word ? at + 5 : next;
            at = begin;
            continue;
        }
        at = next;
    }
    close(text.size());
    return parts;
}

struct Mark {
    std::size_t at = 0;
    std::size_t length = 0;
    Comparator comparator = Comparator::Equal;
};

std::vector<Mark> marksOf(std::string_view text) {
    struct Sign {
        std::string_view text;
        Comparator comparator;
    };
    static constexpr Sign kSigns[] = {{"≤", Comparator::LessOrEqual}, {"≥", Comparator::GreaterOrEqual}, {"<", Comparator::Less}, {">", Comparator::Greater},
                                      {"=", Comparator::Equal}, {"＝", Comparator::Equal}, {":", Comparator::Equal}};
    std::vector<Mark> marks;
    for (std::size_t at = 0; at < text.size(); ++at) {
        for (Sign const& sign : kSigns) {
            if (text.substr(at, sign.text.size()) != sign.text) continue;
            marks.push_back({at, sign.text.size(), sign.comparator});
            at += sign.text.size() - 1;
            break;
        }
        if (marks.size() > 3) break;
    }
    return marks;
}

// Unit that a symbol of this spelling is expected in, empty where nothing is known.
std::string_view expectedUnit(std::string_view symbol) {
    std::string const key = symbolKey(symbol);
    if (key.empty()) return {};
    if (key == "ta" || key == "tj" || key == "tc" || key == "topr" || key == "temp" || key == "tamb" || key == "temperature") return "degC";
    switch (key.front()) {
        case 'v': return "V";
        case 'i': return "A";
        case 'c': return key == "c" || key.size() > 1 ? "F" : std::string_view();
        case 'r': return "Ω";
        case 'f': return "Hz";
        default: return {};
    }
}

model::Interval intervalOf(ParsedValue const& value) {
    model::Interval interval;
    auto const write = [](std::optional<Decimal> const& number) { return number ? std::optional(number->toString()) : std::nullopt; };
    interval.lo = write(value.lo);
    interval.typ = write(value.typ);
    interval.hi = write(value.hi);
    interval.loOpen = value.loOpen;
    interval.hiOpen = value.hiOpen;
    interval.unit = value.unit;
    interval.relativeTo = value.relativeTo;
    if (!value.factorOf.empty() && value.typ) interval.factor = value.typ->toString();
    return interval;
}

bool hasNumber(ParsedValue const& value) { return value.lo || value.typ || value.hi; }

ConditionPart readPart(std::string_view text) {
    ConditionPart part;
    part.text = std::string(text);
    std::vector<Mark> const marks = marksOf(text);
    if (marks.size() == 2 && marks[0].comparator != Comparator::Equal) {  // "1.5V≤VDD≤5.5V"
        std::string_view const symbol = text::trimmed(text.substr(marks[0].at + marks[0].length, marks[1].at - marks[0].at - marks[0].length));
        ParsedValue const value = parseValue(text, {.expected = expectedUnit(symbol)});
        if (value.kind == ParsedValue::Kind::Range) {
            part.symbol = std::string(symbol);
            part.comparator = Comparator::Between;
            part.interval = intervalOf(value);
            part.understood = true;
        }
        return part;
    }
    std::string_view symbol;
    std::string_view valueText = text;
    if (!marks.empty()) {
        symbol = text::trimmed(text.substr(0, marks.front().at));
        valueText = text::trimmed(text.substr(marks.front().at + marks.front().length));
        // "VDD=VCE=3.5V": the last one holds the value, the first names it.
        if (marks.size() == 2 && marks[1].comparator == Comparator::Equal) valueText = text::trimmed(text.substr(marks[1].at + marks[1].length));
        part.comparator = marks.front().comparator;
    } else if (std::size_t const gap = text.find(' '); gap != std::string_view::npos && text::isAsciiLetter(text.front())) {
        // "Ta 25 °C", "at 25 °C"
        std::string_view const head = text.substr(0, gap);
        if (head != "at" && head != "At") symbol = head;
        ParsedValue const tried = parseValue(text.substr(gap + 1), {.expected = expectedUnit(symbol)});
        if (hasNumber(tried) && tried.relativeTo.empty()) valueText = text::trimmed(text.substr(gap + 1));
        else symbol = {};
    }
    ParsedValue value = parseValue(valueText, {.expected = expectedUnit(symbol)});
    if (!hasNumber(value)) {
        // "VM=0V" reads; "CO=VDD" has a node and no number.
        part.symbol = std::string(symbol);
        return part;
    }
    if (value.unitConflict && !symbol.empty()) value = parseValue(valueText, {});
    part.symbol = std::string(symbol);
    if (part.symbol.empty() && value.unit == "degC") part.symbol = "Ta";
    part.interval = intervalOf(value);
    part.understood = true;
    switch (part.comparator) {
        case Comparator::Less:
        case Comparator::LessOrEqual:
            if (value.typ) {
                part.interval.hi = part.interval.typ;
                part.interval.hiOpen = part.comparator == Comparator::Less;
                part.interval.typ.reset();
            }
            break;
        case Comparator::Greater:
        case Comparator::GreaterOrEqual:
            if (value.typ) {
                part.interval.lo = part.interval.typ;
                part.interval.loOpen = part.comparator == Comparator::Greater;
                part.interval.typ.reset();
            }
            break;
        default:
            if (value.kind == ParsedValue::Kind::AtMost) part.comparator = value.hiOpen ? Comparator::Less : Comparator::LessOrEqual;
            else if (value.kind == ParsedValue::Kind::AtLeast) part.comparator = value.loOpen ? Comparator::Greater : Comparator::GreaterOrEqual;
            else if (value.lo && value.hi) part.comparator = Comparator::Between;
            break;
    }
    return part;
}

}  // namespace

std::vector<ConditionPart> parseCondition(std::string_view printed) {
    constexpr std::size_t kLongest = 2000;
    std::string const folded = text::foldForComparison(printed.substr(0, kLongest));
    std::vector<ConditionPart> parts;
    for (std::string_view const part : partsOf(folded)) parts.push_back(readPart(part));
    return parts;
}

std::string symbolKey(std::string_view printed) {
    std::string key;
    for (char const c : text::foldForComparison(printed)) {
        if (c == ' ' || c == '_' || c == '(' || c == ')' || c == '{' || c == '}' || c == '[' || c == ']') continue;
        key.push_back(text::isAsciiUpper(c) ? static_cast<char>(c + ('a' - 'A')) : c);
    }
    return key;
}

}  // namespace standin::quantity

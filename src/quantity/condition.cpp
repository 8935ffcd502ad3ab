#include "quantity/condition.h"

#include <algorithm>
#include <iterator>
#include <optional>

#include "quantity/cell.h"
#include "quantity/numbers.h"
#include "quantity/value_parts.h"
#include "text/fold.h"
#include "text/script.h"
#include "text/utf8.h"

// The text is split at commas and semicolons that are outside of numbers and
// brackets and at "and"; each part is symbol, comparison sign, value, and what
// follows the value is a part of its own. What cannot be read stays as text, not
// understood; reservations ("unless otherwise noted") are left out.
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
                                      {"=", Comparator::Equal},       {"≈", Comparator::Equal},          {":", Comparator::Equal}};
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

// "CO = VDD", "VEE = GND": held at a node.
bool isNode(std::string_view text) {
    if (text.empty() || text.size() > 10 || !text::isAsciiUpper(text.front())) return false;
    return std::all_of(text.begin(), text.end(), [](char c) { return text::isAsciiLetter(c) || text::isAsciiDigit(c) || c == '_' || c == '+' || c == '-'; });
}

// The longest start of `text` that ends at a gap and is a value; `length`
// receives its bytes (0: none).
ParsedValue valueAtStart(std::string_view text, std::string_view expected, std::size_t& length) {
    constexpr int kMostCuts = 12;
    length = 0;
    if (!mayHoldAtom(text, {})) return {};
    std::size_t end = text.size();
    for (int cut = 0; cut < kMostCuts && end > 0 && end != std::string_view::npos; ++cut) {
        std::string_view const tried = text::trimmed(text.substr(0, end));
        ParsedValue value = parseValue(tried, {.expected = expected});
        if (value.unitConflict && !expected.empty()) value = parseValue(tried, {});
        if (hasNumber(value)) {
            length = end;
            return value;
        }
        end = text.rfind(' ', end - 1);
    }
    return {};
}

void setInterval(ConditionPart& part, ParsedValue const& value) {
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
}

// "1.5V≤VDD≤5.5V"
std::optional<ConditionPart> readChain(std::string_view text, std::vector<Mark> const& marks) {
    if (marks.size() != 2 || marks[0].comparator == Comparator::Equal || marks[1].comparator == Comparator::Equal) return std::nullopt;
    std::string_view const symbol = text::trimmed(text.substr(marks[0].at + marks[0].length, marks[1].at - marks[0].at - marks[0].length));
    ParsedValue const value = parseValue(text, {.expected = expectedUnit(symbol)});
    if (value.kind != ParsedValue::Kind::Range) return std::nullopt;
    ConditionPart part;
    part.text = std::string(text);
    part.symbol = std::string(symbol);
    part.comparator = Comparator::Between;
    part.interval = intervalOf(value);
    part.understood = true;
    return part;
}

// "over the 0 °C to 85 °C operating temperature range": two temperatures in words.
std::optional<ConditionPart> readTemperatureRange(std::string_view text) {
    std::string const lower = text::asciiLower(text);
    if (lower.find("temperature") == std::string::npos) return std::nullopt;
    auto const quantities = findQuantities(text);
    if (quantities.size() != 2 || !quantities[1].unit || quantities[1].unit->coherent != "degC") return std::nullopt;
    bool const plain = !quantities[0].unit || quantities[0].unit->coherent == "degC" || quantities[0].unit->coherent == "°";
    if (!plain || quantities[0].value > quantities[1].value) return std::nullopt;
    ConditionPart part;
    part.text = std::string(text);
    part.symbol = lower.find("junction") != std::string::npos ? "Tj" : lower.find("case") != std::string::npos ? "Tc" : "Ta";
    part.comparator = Comparator::Between;
    part.interval.lo = quantities[0].value.toString();
    part.interval.hi = quantities[1].value.toString();
    part.interval.unit = "degC";
    part.understood = true;
    return part;
}

// Where the word that ends at `end` begins, not before `first`.
std::size_t wordBegin(std::string_view text, std::size_t first, std::size_t end) {
    std::size_t begin = end;
    while (begin > first && text[begin - 1] != ' ') --begin;
    return begin;
}

std::size_t withoutGap(std::string_view text, std::size_t first, std::size_t end) {
    while (end > first && text[end - 1] == ' ') --end;
    return end;
}

// Where the last term before `end` begins: "40 V VI - VO" at "VI".
std::size_t lastTerm(std::string_view text, std::size_t first, std::size_t end) {
    std::size_t begin = wordBegin(text, first, end);
    for (;;) {
        std::size_t const signEnd = withoutGap(text, first, begin);
        std::size_t const sign = wordBegin(text, first, signEnd);
        std::size_t const termEnd = withoutGap(text, first, sign);
        std::size_t const term = wordBegin(text, first, termEnd);
        bool const joined = signEnd - sign == 1 && (text[sign] == '-' || text[sign] == '+') && term < termEnd && text::isAsciiLetter(text[term]);
        if (!joined) return begin;
        begin = term;
    }
}

// "10mA", "PMAX": the end of a chain, or the begin of the next.
bool isBound(std::string_view text) {
    ParsedValue const value = parseValue(text, {});
    if (hasNumber(value) && !value.unit.empty()) return true;
    return isNode(text) && std::none_of(text.begin(), text.end(), [](char c) { return c >= 'a' && c <= 'z'; });
}

// "3 V ≤ VI ≤ 40 V 10 mA ≤ IO" at 10 mA, "IO ≤ IMAX PD ≤ PMAX" at PD, "VI = VIL |IO| ≤ 5 mA" at |IO|.
std::size_t secondBound(std::string_view text, std::size_t first, std::size_t end) {
    std::size_t begin = lastTerm(text, first, end);
    std::size_t const numberEnd = withoutGap(text, first, begin);
    std::size_t const number = wordBegin(text, first, numberEnd);
    if (number > first && numberEnd > number && isBound(text.substr(number, end - number)) && !isBound(text.substr(number, numberEnd - number))) begin = number;
    std::size_t const beforeEnd = withoutGap(text, first, begin);
    std::string_view const term = text.substr(begin, end - begin);
    bool const symbol = !term.empty() && text::isAsciiUpper(term.front() == '|' && term.size() > 1 ? term[1] : term.front());
    if (beforeEnd == first || (!symbol && !isBound(term))) return std::string_view::npos;
    std::size_t const before = wordBegin(text, first, beforeEnd);
    if (isBound(text.substr(before, beforeEnd - before))) return begin;
    std::size_t const farther = wordBegin(text, first, withoutGap(text, first, before));
    return isBound(text.substr(farther, beforeEnd - farther)) ? begin : std::string_view::npos;
}

// What only leads to a condition: "@Ta = 70 °C", "at VCC = 5 V", "当VDD = 3V". Bytes of it with the gap behind it, 0: none.
std::size_t leadInLength(std::string_view text) {
    static constexpr std::string_view kSigns[] = {"@", "当", "在"};
    static constexpr std::string_view kWords[] = {"at ", "for ", "with ", "when ", "where ", "under "};
    std::size_t length = 0;
    for (std::string_view const sign : kSigns) {
        if (text.starts_with(sign)) length = sign.size();
    }
    if (length == 0 && !text.empty() && text::isAsciiLetter(text.front())) {
        std::string const start = text::asciiLower(text.substr(0, 6));
        for (std::string_view const word : kWords) {
            if (start.starts_with(word)) length = word.size();
        }
    }
    while (length > 0 && length < text.size() && text[length] == ' ') ++length;
    return length;
}

std::string_view withoutLeadIn(std::string_view text) { return text.substr(leadInLength(text)); }

// Where a second statement begins behind the value of the first without a comma, at
// its own symbol ("VI = 0/5 VDD = 5" at VDD) or bound; npos: nowhere.
std::size_t secondStatement(std::string_view text, std::vector<Mark> const& marks) {
    for (std::size_t k = 1; k < marks.size(); ++k) {
        std::size_t const first = marks[0].at + marks[0].length;
        std::size_t const behind = marks[k - 1].at + marks[k - 1].length;
        std::size_t const end = withoutGap(text, behind, marks[k].at);
        std::size_t begin = std::string_view::npos;
        if (text[marks[k].at] == '=') begin = lastTerm(text, first, end);
        else if (marks[k].comparator != Comparator::Equal) begin = secondBound(text, behind, end);
        if (begin == std::string_view::npos) continue;
        bool const bracketed =
            std::count(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(begin), '(') != std::count(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(begin), ')');
        if (begin == end || bracketed || text::trimmed(text.substr(first, begin - first)).empty()) continue;
        if (text[marks[k].at] == '=' && !text::isAsciiLetter(text[begin]) && text[begin] != '|' && text[begin] != '@') continue;
        std::size_t const word = wordBegin(text, first, withoutGap(text, first, begin));
        return word > first && word + leadInLength(text.substr(word)) == begin ? word : begin;
    }
    return std::string_view::npos;
}

// "当VDD=3V时", "VDD=3Vのとき": the word that closes a condition says nothing of its own.
std::string_view withoutClosing(std::string_view rest) {
    static constexpr std::string_view kClosing[] = {"时", "時", "下", "のとき", "の時", "時に"};
    return std::find(std::begin(kClosing), std::end(kClosing), rest) != std::end(kClosing) ? rest.substr(0, 0) : rest;
}

bool leadsToAnEnd(std::string_view rest) { return rest.starts_with("to ") || rest.starts_with("至") || rest.starts_with("到"); }

// "(t = 10 s)", "(10 s)", "(no load)" hold as what stands in front of them does; "(Note 2)", "(1)" and "(max.)" do not.
bool isConditionInBrackets(std::string_view remark) {
    static constexpr std::string_view kNotes[] = {"note", "see ", "fig", "注", "typ", "max", "min", "unless", "each", "per "};
    std::string const lower = text::asciiLower(remark);
    if (std::any_of(std::begin(kNotes), std::end(kNotes), [&lower](std::string_view note) { return lower.starts_with(note); })) return false;
    return std::count_if(lower.begin(), lower.end(), text::isAsciiLetter) > (countNumbers(remark) > 0 ? 0 : 1);
}

// Reads `text` and appends one part, or more where several stand behind each
// other without a comma ("IO = 40 mA f = 120 Hz TJ = 25 °C").
void readParts(std::string_view text, std::vector<ConditionPart>& parts, int depth) {
    constexpr int kDeepest = 12;
    if (text.size() > 2 && text.front() == '(' && text.back() == ')' && text.find(')') + 1 == text.size()) text = text::trimmed(text.substr(1, text.size() - 2));
    if (std::size_t const second = secondStatement(text, marksOf(text)); second != std::string_view::npos && depth < kDeepest) {
        readParts(text::trimmed(text.substr(0, second)), parts, depth + 1);
        readParts(text.substr(second), parts, depth + 1);
        return;
    }
    std::string remark;
    std::string_view const bare = withoutRemark(text, remark);
    std::string_view const read = withoutLeadIn(bare.empty() ? text : bare);
    std::vector<Mark> const marks = marksOf(read);
    if (auto chain = readChain(read, marks)) {
        parts.push_back(std::move(*chain));
        return;
    }
    ConditionPart part;
    part.text = std::string(text);
    std::string_view symbol;
    std::string_view valueText = read;
    if (!marks.empty()) {
        symbol = text::trimmed(read.substr(0, marks.front().at));
        valueText = text::trimmed(read.substr(marks.front().at + marks.front().length));
        // "VDD=VCE=3.5V": the last one holds the value, the first names it.
        if (marks.size() >= 2 && marks[1].comparator == Comparator::Equal) {
            std::size_t const behind = marks[0].at + marks[0].length;
            if (isNode(text::trimmed(read.substr(behind, marks[1].at - behind)))) valueText = text::trimmed(read.substr(marks[1].at + marks[1].length));
        }
        part.comparator = marks.front().comparator;
    } else if (std::size_t const gap = read.find(' '); gap != std::string_view::npos && text::isAsciiLetter(read.front())) {
        // "Ta 25 °C"
        symbol = read.substr(0, gap);
        ParsedValue const tried = parseValue(read.substr(gap + 1), {.expected = expectedUnit(symbol)});
        if (hasNumber(tried) && tried.relativeTo.empty()) valueText = text::trimmed(read.substr(gap + 1));
        else symbol = {};
    }
    constexpr int kMostSymbolWords = 3;
    bool const sentence =
        std::count(symbol.begin(), symbol.end(), ' ') > kMostSymbolWords || std::count(symbol.begin(), symbol.end(), '(') != std::count(symbol.begin(), symbol.end(), ')');
    if (sentence || valueText.find(" or ") != std::string_view::npos) {  // "VI = VIH or VIL" has no one value
        auto range = readTemperatureRange(text);
        parts.push_back(range ? std::move(*range) : std::move(part));
        return;
    }
    std::size_t used = 0;
    ParsedValue const value = valueAtStart(valueText, expectedUnit(symbol), used);
    part.symbol = std::string(symbol);
    bool const onlyNamed = marks.empty() && !value.relativeTo.empty() && countNumbers(valueText) == 0;  // "VDD rising" without its gap
    if (used == 0 || onlyNamed || (used < valueText.size() && marks.empty())) {
        if (!marks.empty() && part.comparator == Comparator::Equal && isNode(valueText)) {
            part.interval.typ = "0";
            part.interval.relativeTo = std::string(valueText);
            part.interval.unit = std::string(expectedUnit(symbol));
            part.understood = true;
        } else if (auto range = readTemperatureRange(text)) {
            part = std::move(*range);
        }
        parts.push_back(std::move(part));
        return;
    }
    std::string_view const rest = withoutClosing(text::trimmed(valueText.substr(used)));
    if (leadsToAnEnd(rest)) {  // "IO = 10 mA to IMAX" has no end that is a number
        parts.push_back(std::move(part));
        return;
    }
    if (part.symbol.empty() && value.unit == "degC") part.symbol = "Ta";
    setInterval(part, value);
    if (!rest.empty()) part.text = std::string(text::trimmed(text.substr(0, static_cast<std::size_t>(rest.data() - text.data()))));
    parts.push_back(part);
    if (!rest.empty() && depth < kDeepest) readParts(rest, parts, depth + 1);
    if (depth >= kDeepest || bare.empty() || !isConditionInBrackets(remark)) return;
    std::vector<ConditionPart> inside;
    for (std::string_view const one : partsOf(remark)) readParts(one, inside, depth + 1);
    // "V+ = 30 V (other grade, V+ = 26 V)" is of another part.
    bool const other = std::any_of(inside.begin(), inside.end(), [&part](ConditionPart const& one) { return symbolKey(one.symbol) == symbolKey(part.symbol); });
    if (!other) std::move(inside.begin(), inside.end(), std::back_inserter(parts));
}

// A gap where Latin text meets Chinese or Japanese, which are written without: "10 mA时" is no 10 of another unit.
std::string withGaps(std::string folded) {
    if (text::isAscii(folded)) return folded;
    enum class Side { None, Latin, Cjk };
    std::string spaced;
    Side before = Side::None;
    for (std::size_t at = 0; at < folded.size();) {
        std::size_t const begin = at;
        char32_t const code = text::decodeNext(folded, at);
        bool const cjk = text::isCjk(code) && text::isLetter(code);
        Side const here = cjk ? Side::Cjk : text::isLetter(code) || (code >= U'0' && code <= U'9') ? Side::Latin : Side::None;
        if (before != Side::None && here != Side::None && here != before) spaced += ' ';
        spaced.append(folded, begin, at - begin);
        before = here;
    }
    return spaced;
}

// "unless otherwise noted" and its like say nothing that could differ.
std::string_view withoutReservation(std::string_view text) {
    std::string const lower = text::asciiLower(text);
    for (std::string_view const words : {"unless otherwise", "except as noted", "除非另有", "除非另行", "除特殊说明", "特に指定", "特記なき"}) {
        std::size_t const at = lower.find(words);
        if (at == std::string::npos) continue;
        // Words behind it in the same part are kept only where they hold a value.
        std::string_view const tail = text.substr(at);
        if (countNumbers(tail) > 0) continue;
        std::string_view kept = text::trimmed(text.substr(0, at));
        while (!kept.empty() && (kept.back() == '(' || kept.back() == ' ')) kept.remove_suffix(1);
        return kept;
    }
    return text;
}

}  // namespace

std::vector<ConditionPart> parseCondition(std::string_view printed) {
    constexpr std::size_t kLongest = 2000;
    std::string const folded = withGaps(text::foldForComparison(printed.substr(0, kLongest)));
    std::vector<ConditionPart> parts;
    for (std::string_view const text : partsOf(folded)) {
        std::string_view const part = withoutReservation(text);
        if (!part.empty()) readParts(part, parts, 0);
    }
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

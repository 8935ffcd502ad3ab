// quantity::parseCondition takes both texts apart; parts meet by their symbol in
// one spelling. What it does not understand is compared as folded text, without
// the phrases by which sheets say that a condition holds for the whole table.
//
// Tested by tests/src/compare/conditions_test.cpp.
#include "compare/conditions.h"

#include <algorithm>
#include <array>
#include <initializer_list>
#include <optional>
#include <string>
#include <vector>

#include "compare/node_names.h"
#include "compare/text_keys.h"
#include "compare/wording_phrases.h"
#include "quantity/condition.h"
#include "quantity/decimal.h"
#include "text/boundaries.h"
#include "text/fold.h"
#include "text/script.h"
#include "text/utf8.h"

namespace standin::compare {

namespace {

using model::ConditionRelation;
using quantity::Decimal;

using Part = StatedPart;

constexpr std::size_t kLongestCondition = 2000;

// Phrases by which a condition is said to hold for a whole table; they part what
// stands before them from what stands behind.
constexpr auto kPhrases = std::to_array<std::string_view>({"unless otherwise specified",
                                                           "unless otherwise noted",
                                                           "unless otherwise stated",
                                                           "unless otherwise indicated",
                                                           "unless otherwise mentioned",
                                                           "unless specified otherwise",
                                                           "unless noted otherwise",
                                                           "except where noted",
                                                           "except as noted",
                                                           "except as stated",
                                                           "otherwise noted",
                                                           "otherwise specified",
                                                           "test conditions",
                                                           "test condition",
                                                           "除非另有说明",
                                                           "除说明外",
                                                           "除注明外",
                                                           "除非特别说明",
                                                           "除非另有规定",
                                                           "如无特殊说明",
                                                           "特に指定がない限り",
                                                           "特記なき場合",
                                                           "wenn nicht anders angegeben"});

std::string withoutPhrases(std::string_view printed) {
    std::string condition = text::foldForComparison(printed);
    std::string lower = text::asciiLower(condition);
    for (std::string_view const phrase : kPhrases) {
        for (auto at = lower.find(phrase); at != std::string::npos; at = lower.find(phrase, at)) {
            lower.replace(at, phrase.size(), 1, ',');
            condition.replace(at, phrase.size(), 1, ',');
        }
    }
    // Brackets around the whole, and what the phrases leave of them.
    while (!condition.empty() && (condition.front() == '(' || condition.front() == ' ' || condition.front() == ',' || condition.front() == ':')) condition.erase(0, 1);
    auto const opened = std::count(condition.begin(), condition.end(), '(');
    auto const closed = std::count(condition.begin(), condition.end(), ')');
    while (!condition.empty() && (condition.back() == ' ' || condition.back() == ',' || (condition.back() == ')' && closed > opened))) condition.pop_back();
    return condition;
}

enum class Scope { Own, Table };

bool isOneOf(std::string_view word, std::initializer_list<std::string_view> words) { return std::find(words.begin(), words.end(), word) != words.end(); }

bool endsTitle(std::string_view lower) {
    static constexpr auto kCjk = std::to_array<std::string_view>({"特性", "参数", "參數", "条件", "條件", "定格", "仕様", "规格", "指标", "极限值", "额定值"});
    bool const cjk = std::any_of(kCjk.begin(), kCjk.end(), [&](std::string_view end) { return lower.size() >= end.size() && lower.substr(lower.size() - end.size()) == end; });
    return cjk || isOneOf(lower, {"characteristics", "characteristic", "ratings", "rating", "conditions", "specifications", "specification", "parameters", "parameter", "values",
                                  "kennwerte", "grenzwerte", "kenndaten"});
}

// What a title holds for: "Fast mode characteristics" are not those of another mode.
bool namesAState(std::string_view lower) { return isOneOf(lower, {"mode", "modes", "state", "open", "loaded", "load", "shorted", "enabled", "disabled", "on", "off"}); }

// Where the title ends that `before` begins with, or 0.
std::size_t titleEnd(std::string_view before) {
    std::size_t end = 0;
    std::string const lower = text::asciiLower(before);
    for (std::size_t begin = 0; begin < lower.size();) {
        std::size_t const gap = std::min(lower.find_first_of(" (", begin), lower.size());
        std::string_view const word = std::string_view(lower).substr(begin, gap - begin);
        if (endsTitle(word)) end = gap;
        else if (end == 0 && namesAState(word)) return 0;
        begin = gap + 1;
    }
    return end;
}

struct Caption {
    std::string_view state;       // "Fast mode" of "Fast mode (VDD = 5 V)"; mostly empty
    std::string_view conditions;  // what else does not belong to the title
};

// Few words, or words of a state, say what the part does; a sentence ("Voltages are referenced
// to the ground pin") is compared where it stands.
bool saysAState(std::string_view words) {
    constexpr std::ptrdiff_t kFewGaps = 2;
    std::string const lower = text::asciiLower(words);
    auto const parts = text::words(lower);
    return !words.empty() && (std::count(words.begin(), words.end(), ' ') <= kFewGaps || std::any_of(parts.begin(), parts.end(), namesAState));
}

// What stands within brackets that open where `text` begins and close where it ends; empty: none do.
std::string_view insideBrackets(std::string_view text) {
    if (text.empty() || text.front() != '(') return {};
    int depth = 0;
    for (std::size_t at = 0; at < text.size(); ++at) {
        if (text[at] == '(') ++depth;
        if (text[at] == ')' && --depth == 0) return at + 1 == text.size() ? text.substr(1, at - 1) : std::string_view();
    }
    return {};
}

// "Electrical characteristics (VDD = 5 V, TA = 25 °C)", "Ratings TC = 25 °C": what stands behind
// the title. Other words are of the condition.
Caption readCaption(std::string_view caption) {
    std::size_t const sign = caption.find_first_of("=<>");
    if (sign == std::string_view::npos) return {{}, caption};
    std::string_view const before = caption.substr(0, sign);
    if (auto const inside = insideBrackets(text::trimmed(caption.substr(titleEnd(before)))); !inside.empty()) return {{}, inside};
    if (before.find_first_of("0123456789,;:") != std::string_view::npos) return {{}, caption};
    std::size_t const title = titleEnd(before);
    std::size_t const bracket = before.rfind('(');
    bool const opens = bracket != std::string_view::npos && before.find(')', bracket) == std::string_view::npos;  // "V(BR) = 5 V" does not
    if (!opens || bracket < title) return {{}, text::trimmed(caption.substr(title))};
    std::string_view const words = text::trimmed(caption.substr(title, bracket - title));
    std::string_view inside = caption.substr(bracket + 1);
    std::size_t const close = inside.rfind(')');
    bool const closes = close != std::string_view::npos && std::count(inside.begin(), inside.end(), ')') > std::count(inside.begin(), inside.end(), '(');
    if (closes && text::trimmed(inside.substr(close + 1)).empty()) inside = inside.substr(0, close);
    return {saysAState(words) ? words : std::string_view(), inside};
}

// "VO = 4.5/0.5" and "VO = 0.5 V or 4.5 V" name the same two values: one spelling
// for both; empty where the text lists no values of one quantity.
std::string listedValues(std::string_view printed) {
    std::size_t const sign = printed.find('=');
    if (sign == std::string_view::npos) return {};
    std::string_view const symbol = text::trimmed(printed.substr(0, sign));
    std::vector<std::string> values;
    for (std::string_view rest = printed.substr(sign + 1); !rest.empty();) {
        std::size_t const slash = std::min(rest.find('/'), rest.size());
        std::size_t const word = std::min(rest.find(" or "), rest.size());
        std::size_t const end = std::min(slash, word);
        auto const parts = quantity::parseCondition(std::string(symbol) + " = " + std::string(rest.substr(0, end)));
        if (parts.size() != 1 || !parts[0].understood || !parts[0].interval.typ || !parts[0].interval.relativeTo.empty()) return {};
        values.push_back(quantity::shortNumber(*parts[0].interval.typ) + parts[0].interval.unit);
        rest.remove_prefix(std::min(rest.size(), end + (word < slash ? std::string_view(" or ").size() : 1)));
    }
    if (values.size() < 2) return {};
    std::sort(values.begin(), values.end());
    std::string key = conditionSymbolKey(symbol) + "=";
    for (std::string const& value : values) key += value + "/";
    return key;
}

// Bounds that are no numbers, in one spelling: "5mA ≤ IO ≤ IMAX" is "IO = 5 mA to IMAX",
// "PD < PMAX" is "PD ≤ PMAX"; empty: no such bounds.
std::string boundsKey(std::string_view printed) {
    std::string folded = text::foldForComparison(printed);
    auto replaceAll = [&](std::string_view from, std::string_view to) {
        for (auto at = folded.find(from); at != std::string::npos; at = folded.find(from, at + to.size())) folded.replace(at, from.size(), to);
    };
    replaceAll("≤", "<");
    replaceAll("≥", ">");
    std::size_t const first = folded.find_first_of("<>=");
    if (first == std::string::npos) return {};
    std::size_t const second = folded.find_first_of("<>=", first + 1);
    std::string_view const before = std::string_view(folded).substr(0, first);
    if (second == std::string::npos) {
        std::string_view const behind = std::string_view(folded).substr(first + 1);
        if (folded[first] != '=') return conditionSymbolKey(before) + folded[first] + conditionSymbolKey(behind);
        std::size_t const to = behind.find(" to ");
        if (to == std::string_view::npos) return {};
        return conditionSymbolKey(before) + "=" + quantity::symbolKey(behind.substr(0, to)) + "~" + quantity::symbolKey(behind.substr(to + 4));
    }
    if (folded[first] != '<' || folded[second] != '<' || folded.find_first_of("<>=", second + 1) != std::string::npos) return {};
    std::string_view const middle = std::string_view(folded).substr(first + 1, second - first - 1);
    return conditionSymbolKey(middle) + "=" + quantity::symbolKey(before) + "~" + quantity::symbolKey(std::string_view(folded).substr(second + 1));
}

// "GND = 0 V" says where voltages are measured from.
bool isGroundAtZero(Part const& part) {
    if (part.interval.unit != "V" || part.interval.lo || part.interval.hi) return false;
    if (part.symbol != "gnd" && part.symbol != "vss" && part.symbol != conditionSymbolKey("GND")) return false;
    auto const value = part.interval.typ ? Decimal::parse(*part.interval.typ) : std::nullopt;
    return value && value->isZero();
}

// No unit anywhere behind the symbol: "VDD = 5", not "VDD = 5 V" nor "VDD = 5 V (Note 1)".
bool isBare(std::string_view printed) {
    std::size_t const sign = printed.find_last_of("=<>");
    std::string_view const behind = sign == std::string_view::npos ? printed : printed.substr(sign + 1);
    return !behind.empty() && behind.find_first_not_of("0123456789.,+-/ ()") == std::string_view::npos;
}

// Symbols that words say something about: "TA = Tlow to Thigh" settles the temperature.
void addMentioned(std::string_view words, std::vector<std::string>& symbols) {
    constexpr std::string_view kSigns = "=<>≤≥";  // first bytes of the last two stand in no symbol
    for (std::size_t at = words.find_first_of(kSigns); at != std::string_view::npos; at = words.find_first_of(kSigns, at + 1)) {
        std::string_view const before = text::trimmed(words.substr(0, at));
        std::size_t const gap = before.find_last_of(" ,;(=<>≤≥");
        std::string_view const symbol = gap == std::string_view::npos ? before : before.substr(gap + 1);
        if (!symbol.empty() && text::isAsciiLetter(symbol.front())) symbols.push_back(conditionSymbolKey(symbol));
    }
}

// Chinese and Japanese put words in front of the symbol without a comma ("否则仅指 TA"). A
// temperature whose symbol says nothing else is the ambient's, as one without a symbol.
std::string symbolOf(quantity::ConditionPart const& read) {
    std::string_view symbol = text::trimmed(read.symbol);
    std::size_t const gap = symbol.rfind(' ');
    if (gap != std::string_view::npos && text::isCjk(symbol.substr(0, gap)) && text::isAsciiLetter(symbol[gap + 1])) symbol.remove_prefix(gap + 1);
    std::string key = conditionSymbolKey(symbol);
    bool const unsaid = read.interval.unit == "degC" && (key == "a" || key == "temp" || key == "temperature" || key == "环境温度" || key == "温度");
    return unsaid ? "ta" : key;
}

bool isPoint(model::Interval const& interval) { return interval.typ && !interval.lo && !interval.hi; }

std::optional<Decimal> decimal(std::optional<std::string> const& text) { return text ? Decimal::parse(*text) : std::nullopt; }

StatedRange rangeOf(model::Interval const& interval) {
    StatedRange range{decimal(interval.lo), decimal(interval.hi)};
    if (!range.lo && !range.hi) range.lo = range.hi = decimal(interval.typ);
    return range;
}

// "±VS = 15 V" is "VS = ±15 V"; another statement of both supplies is none of one.
void settleBothSupplies(Part& part) {
    if (part.symbol != kBothSupplies) return;
    auto const lo = part.range.lo;
    auto const hi = part.range.hi;
    if (!lo || !hi) return;
    bool const point = isPoint(part.interval) && Decimal(0) < *hi;
    if (!point && *lo != hi->negated()) return;
    part.symbol = conditionSymbolKey("VS");
    if (!point) return;
    std::string const top = *part.interval.typ;
    part.interval.typ.reset();
    part.interval.lo = "-" + top;
    part.interval.hi = top;
    part.range = rangeOf(part.interval);
}

// "IO = -20 µA", "|IO| = 20 µA": makers differ in the sign they give a load that flows out.
void dropDirection(Part& part, std::string_view printedSymbol) {
    if (part.symbol != conditionSymbolKey("IO") || !isPoint(part.interval)) return;
    if (!(*part.range.hi < Decimal(0))) {
        bool const directed = printedSymbol.find('|') == std::string_view::npos && Decimal(0) < *part.range.hi;
        part.direction = directed ? Part::Direction::Printed : Part::Direction::Unsaid;
        return;
    }
    part.direction = Part::Direction::Dropped;
    part.interval.typ = part.interval.typ->substr(1);
    part.range = rangeOf(part.interval);
}

std::optional<Part> statedPart(quantity::ConditionPart const& read) {
    Part part;
    part.symbol = symbolOf(read);
    part.interval = read.interval;
    part.range = rangeOf(part.interval);
    settleBothSupplies(part);
    dropDirection(part, read.symbol);
    part.node = nodeKey(part.interval.relativeTo);
    part.bare = isBare(read.text);
    // Only a value is printed ("25 °C"): the unit tells which quantity.
    if (part.symbol.empty()) part.symbol = part.interval.unit == "degC" ? "ta" : "value:" + part.interval.unit;
    return isGroundAtZero(part) ? std::nullopt : std::optional(std::move(part));
}

class Stating {
public:
    explicit Stating(ConditionMemo& memo) : m_memo(memo) {}

    void add(std::string_view text, Scope scope) {
        if (text.empty()) return;
        m_ownCount = m_parts.size();
        text = text.substr(0, kLongestCondition);
        Caption const caption = scope == Scope::Table ? readCaption(text) : Caption{{}, text};
        addState(caption.state);
        for (auto const& part : m_memo.partsOf(caption.conditions)) {
            if (!part.read.understood) addWords(part.read.text, scope);
            else if (part.stated) addQuantity(*part.stated, scope);
        }
    }
    std::vector<Part> take() {
        joinSupplies();
        return std::move(m_parts);
    }

private:
    // "VCC = 15 V, VEE = -15 V" is "VCC = ±15 V".
    void joinSupplies() {
        std::string const supply = conditionSymbolKey("VS");
        auto const isPlus = [&](Part const& part) { return part.symbol == supply || part.symbol == "vcc+" || part.symbol == "vs+"; };
        auto const isMinus = [](Part const& part) { return isOneOf(part.symbol, {"vee", "v-", "vcc-", "vs-"}); };
        auto const plus = std::find_if(m_parts.begin(), m_parts.end(), isPlus);
        auto const minus = std::find_if(m_parts.begin(), m_parts.end(), isMinus);
        if (plus == m_parts.end() || minus == m_parts.end() || plus->ofTable != minus->ofTable) return;
        if (!isPoint(plus->interval) || !isPoint(minus->interval) || *plus->range.hi != minus->range.hi->negated()) return;
        plus->symbol = supply;
        plus->interval.lo = minus->interval.typ;
        plus->interval.hi = plus->interval.typ;
        plus->interval.typ.reset();
        plus->range = rangeOf(plus->interval);
        m_parts.erase(minus);
    }

    void addQuantity(Part const& part, Scope scope) {
        if (scope == Scope::Table) {
            auto const own = m_parts.begin() + static_cast<std::ptrdiff_t>(m_ownCount);
            auto const line = std::find_if(m_parts.begin(), own, [&](Part const& other) { return other.symbol == part.symbol; });
            if (line != own) line->departs = line->departs || liesOutside(*line, part);
            if (line != own || std::find(m_mentioned.begin(), m_mentioned.end(), part.symbol) != m_mentioned.end()) return;
            // "TA = Tlow to Thigh" does not hold at the 25 °C of the title.
            if (isPoint(part.interval) && std::find(m_leftOpen.begin(), m_leftOpen.end(), part.symbol) != m_leftOpen.end()) return;
            // "VCC = 5 V" of the title and "VCC = 30 V" of a heading within: the later one
            // holds. A range goes on holding beside a remark on typical values.
            auto const earlier = std::find_if(own, m_parts.end(), [&](Part const& other) { return other.symbol == part.symbol; });
            if (earlier != m_parts.end() && isPoint(earlier->interval) && isPoint(part.interval)) {
                *earlier = part;
                earlier->ofTable = true;
                return;
            }
        }
        m_parts.push_back(part);
        m_parts.back().ofTable = scope == Scope::Table;
    }

    static bool liesOutside(Part const& line, Part const& table) {
        if (line.interval.unit != table.interval.unit || line.node != table.node) return false;
        bool const below = table.range.lo && line.range.lo && *line.range.lo < *table.range.lo;
        bool const above = table.range.hi && line.range.hi && *table.range.hi < *line.range.hi;
        return below || above;
    }

    void addState(std::string_view state) {
        Part part;
        part.words = text::foldKey(state);
        part.ofTable = true;
        if (!part.words.empty()) m_parts.push_back(std::move(part));
    }

    void addWords(std::string const& printed, Scope scope) {
        // What is said for a whole table in words is compared where it stands.
        if (scope == Scope::Table) return;
        // "TA = Tlow to Thigh" leaves it to the table to say which these are.
        addMentioned(printed, printed.find_first_of("0123456789") != std::string::npos ? m_mentioned : m_leftOpen);
        Part part;
        part.words = listedValues(printed);
        if (part.words.empty()) part.words = boundsKey(printed);
        if (part.words.empty()) part.words = text::foldKey(printed);
        if (!part.words.empty()) m_parts.push_back(std::move(part));
    }

    ConditionMemo& m_memo;
    std::vector<Part> m_parts;
    std::size_t m_ownCount = 0;
    std::vector<std::string> m_mentioned;
    std::vector<std::string> m_leftOpen;  // said in words of the line that the table explains
};

ConditionRelation relateRanges(StatedRange const& reference, StatedRange const& candidate) {
    // Negative: the candidate ends lower; an absent bound lies beyond every value.
    auto order = [](std::optional<Decimal> const& a, std::optional<Decimal> const& b, int absent) {
        if (!a && !b) return 0;
        if (!a) return -absent;
        if (!b) return absent;
        auto const found = *b <=> *a;
        return found < 0 ? -1 : (found > 0 ? 1 : 0);
    };
    int const lower = order(reference.lo, candidate.lo, -1);
    int const upper = order(reference.hi, candidate.hi, +1);
    if (lower == 0 && upper == 0) return ConditionRelation::Same;
    if (lower <= 0 && upper >= 0) return ConditionRelation::Harsher;
    if (lower >= 0 && upper <= 0) return ConditionRelation::Milder;
    return ConditionRelation::Unordered;
}

// What the numbers of both stand for can be set against each other, but for the unit.
bool ofOneKind(Part const& reference, Part const& candidate) { return reference.node == candidate.node && reference.interval.factor.empty() == candidate.interval.factor.empty(); }

// Of bounds that are both there or both absent.
bool equalScaled(std::optional<Decimal> const& bound, std::optional<Decimal> const& bare, int power) { return !bound || *bound == bare->scaledByPowerOfTen(power); }

// By which power of ten the bare numbers are smaller, among those of the prefixes; none: they are others.
std::optional<int> powerBetween(StatedRange const& full, StatedRange const& bare) {
    if (full.lo.has_value() != bare.lo.has_value() || full.hi.has_value() != bare.hi.has_value()) return std::nullopt;
    for (int const power : {0, -12, -9, -6, -3, 3, 6}) {
        if (equalScaled(full.lo, bare.lo, power) && equalScaled(full.hi, bare.hi, power)) return power;
    }
    return std::nullopt;
}

ConditionRelation relateAsRead(Part const& reference, Part const& candidate) {
    if (reference.interval == candidate.interval) return ConditionRelation::Same;
    if (reference.interval.unit != candidate.interval.unit || !ofOneKind(reference, candidate)) return ConditionRelation::Unordered;
    return relateRanges(reference.range, candidate.range);
}

// The unit of one of them stands in the head of its column ("IO = 5" for "IO = 5 mA"): its digits tell.
ConditionRelation relateParts(Part const& reference, Part const& candidate) {
    ConditionRelation const asRead = relateAsRead(reference, candidate);
    if (asRead == ConditionRelation::Same || reference.bare == candidate.bare || !ofOneKind(reference, candidate)) return asRead;
    StatedRange const& bare = reference.bare ? reference.range : candidate.range;
    StatedRange const& full = reference.bare ? candidate.range : reference.range;
    auto const power = powerBetween(full, bare);
    if (!power) return asRead;
    return *power == 0 ? ConditionRelation::Same : ConditionRelation::OneUnstated;  // the prefix is not printed
}

// "|IO| ≤ 20 µA" and "IO = 20 µA": measured at the bound, as far as a sheet says.
bool meetAtBound(Part const& one, Part const& other) {
    if (!ofOneKind(one, other) || one.interval.unit != other.interval.unit) return false;
    auto const isAtBoundOf = [](StatedRange const& point, StatedRange const& range) {
        bool const oneSided = range.lo.has_value() != range.hi.has_value();
        if (!oneSided || !point.lo || !point.hi || *point.lo != *point.hi) return false;
        return *point.lo == (range.hi ? *range.hi : *range.lo);
    };
    return isAtBoundOf(one.range, other.range) || isAtBoundOf(other.range, one.range);
}

// "IO ≤ 20 µA" and "IO = 20 µA", "RL ≥ 2 kΩ" and "RL = 2 kΩ": the heaviest load is the same.
bool meetAtFullLoad(Part const& one, Part const& other) {
    bool const current = one.symbol == conditionSymbolKey("IO");
    if ((!current && one.symbol != conditionSymbolKey("RL")) || one.symbol != other.symbol || !meetAtBound(one, other)) return false;
    StatedRange const& range = one.range.lo.has_value() && one.range.hi.has_value() ? other.range : one.range;
    return current ? range.hi.has_value() : range.lo.has_value();
}

// For telling rows from each other, not for what they promise.
bool agree(Part const& part, Part const& other) { return part.symbol == other.symbol && (relateParts(part, other) == ConditionRelation::Same || meetAtBound(part, other)); }

bool anyMeetsAtBound(std::vector<Part> const& parts, std::vector<Part> const& others) {
    return std::any_of(parts.begin(), parts.end(), [&](Part const& part) {
        return !part.symbol.empty() && std::any_of(others.begin(), others.end(), [&](Part const& other) { return part.symbol == other.symbol && meetAtBound(part, other); });
    });
}

bool states(std::vector<Part> const& parts, std::string_view symbol) {
    return std::any_of(parts.begin(), parts.end(), [&](Part const& part) { return part.symbol == symbol; });
}

bool isRoom(Part const& part) {
    if (part.interval.unit != "degC") return false;
    return part.range.lo && part.range.hi && *part.range.lo == Decimal(25) && *part.range.hi == Decimal(25);
}

// By the key of the words ("vi=vihorvil").
bool speaksOfInputs(Part const& part) { return part.words.starts_with("vi=") || part.words.starts_with("vin="); }

// "VI = VIH or VIL": levels that an input knows, without which nothing is said of an output.
bool saysKnownLevels(Part const& part) {
    if (!speaksOfInputs(part)) return false;
    std::string_view const levels = std::string_view(part.words).substr(part.words.find('=') + 1);
    return isOneOf(levels, {"vihorvil", "vilorvih", "vih/vil", "vil/vih"});
}

// What is said for a whole table of the junction or the case at 25 °C, and of the ambient
// anywhere, says that nothing is heated: no more than nothing printed. The case against the ambient
// is another thing.
bool saysNoMore(Part const& part, std::vector<Part> const& others) {
    if (part.symbol.empty()) return saysKnownLevels(part) && std::none_of(others.begin(), others.end(), speaksOfInputs) && !states(others, conditionSymbolKey("VI"));
    if (!isRoom(part)) return false;
    if (part.symbol == "ta") return !states(others, "tc");
    if (part.symbol == "tj") return part.ofTable;
    return part.symbol == "tc" && part.ofTable && !states(others, "ta");
}

}  // namespace

std::vector<ReadPart> const& ConditionMemo::partsOf(std::string_view printed) {
    auto const [entry, isNew] = m_parts.try_emplace(std::string(printed));
    if (!isNew) return entry->second;
    for (quantity::ConditionPart& read : quantity::parseCondition(withoutPhrases(printed))) {
        std::optional<Part> stated = read.understood ? statedPart(read) : std::nullopt;
        entry->second.push_back({std::move(read), std::move(stated)});
    }
    return entry->second;
}

StatedConditions const& ConditionMemo::stated(ConditionTexts texts) {
    // The length in front, since texts of a file may hold any character.
    std::string both = std::to_string(texts.own.size());
    both.reserve(both.size() + 1 + texts.own.size() + texts.table.size());
    both.append(1, ':').append(texts.own).append(texts.table);
    auto const found = m_stated.find(both);
    return found != m_stated.end() ? found->second : m_stated.emplace(std::move(both), stateConditions(texts, *this)).first->second;
}

StatedConditions stateConditions(ConditionTexts texts, ConditionMemo& memo) {
    Stating stating(memo);
    stating.add(texts.own, Scope::Own);
    stating.add(texts.table, Scope::Table);
    return {std::string(texts.own), std::string(texts.table), stating.take()};
}

std::optional<model::Interval> const& ConditionMemo::temperatures(std::string_view printed) {
    if (printed == m_last.text) return m_last.range;
    m_last = {std::string(printed), std::nullopt};
    for (auto const& [part, stated] : partsOf(readCaption(printed.substr(0, kLongestCondition)).conditions)) {
        if (!part.understood || part.interval.unit != "degC" || !part.interval.lo || !part.interval.hi) continue;
        m_last.range = part.interval;
        break;
    }
    return m_last.range;
}

namespace {

// "TA = Tlow to Thigh (Note 3)": the words without the number of a note.
std::string withoutNotes(std::string_view words) {
    std::string key = text::asciiLower(text::foldForComparison(words));
    for (auto at = key.find("note"); at != std::string::npos; at = key.find("note", at)) {
        std::size_t const end = key.find_first_not_of("0123456789. ", at + 4);
        bool const numbered = key.find_first_of("0123456789", at + 4) < std::min(end, key.size());
        if (numbered) key.erase(at, end == std::string::npos ? end : end - at);
        else at += 4;
    }
    return key;
}

// "RL to VSS", "TA = Tlow to Thigh", "within 3 s": of a value or a node, as titles and the names of grades are not.
bool saysHowItIsMeasured(std::string_view words) {
    bool const compares = words.find("≤") != std::string_view::npos || words.find("≥") != std::string_view::npos;
    if (compares || words.find_first_of("0123456789=<>") != std::string_view::npos) return true;
    auto const parts = text::words(words);
    return std::any_of(parts.begin(), parts.end(), [](std::string_view word) { return word.size() > 1 && isCommonPinName(word) && !isOneOf(word, {"in", "out", "do", "test"}); });
}

// What a text for a whole table says in words, sorted; titles left out.
std::vector<std::string> wordsBesides(std::string_view ofTable, ConditionMemo& memo) {
    std::vector<std::string> words;
    for (ReadPart const& part : memo.partsOf(readCaption(ofTable).conditions)) {
        std::string said = part.read.understood ? std::string() : withoutNotes(part.read.text);
        if (saysHowItIsMeasured(said)) words.push_back(std::move(said));
    }
    std::sort(words.begin(), words.end());
    return words;
}

}  // namespace

bool stateTheSameAlone(std::string_view reference, std::string_view candidate, ConditionMemo& memo) {
    if (std::max(reference.size(), candidate.size()) > kLongestCondition) return false;
    if (wordsBesides(reference, memo) != wordsBesides(candidate, memo)) return false;
    return relateConditions({{}, reference}, {{}, candidate}, memo) == ConditionRelation::Same;
}

ConditionRelation relateConditions(ConditionTexts reference, ConditionTexts candidate, ConditionMemo& memo) {
    if (reference.own == candidate.own && reference.table == candidate.table) return ConditionRelation::Same;
    return relateStated(memo.stated(reference), memo.stated(candidate));
}

ConditionRelation relateStated(StatedConditions const& reference, StatedConditions const& candidate, LoadBounds loads) {
    if (reference.own == candidate.own && reference.table == candidate.table) return ConditionRelation::Same;
    std::vector<Part> const& r = reference.parts;
    std::vector<Part> const& c = candidate.parts;
    std::vector<char> met(c.size(), 0);
    bool harsher = false;
    bool milder = false;
    bool unordered = false;
    bool referenceAlone = false;  // something is stated in the reference only
    bool candidateAlone = false;
    bool wordsAlone[2] = {false, false};
    bool cjkAlone[2] = {false, false};  // some of them in CJK
    for (Part const& part : r) {
        bool found = false;
        for (std::size_t j = 0; j < c.size() && !found; ++j) {
            if (met[j] != 0 || part.symbol != c[j].symbol || part.words != c[j].words) continue;
            met[j] = 1;
            found = true;
            if (part.symbol.empty() || (loads == LoadBounds::AsFullLoad && meetAtFullLoad(part, c[j]))) continue;
            switch (relateParts(part, c[j])) {
                case ConditionRelation::Harsher: harsher = true; break;
                case ConditionRelation::Milder: milder = true; break;
                case ConditionRelation::Unordered: unordered = true; break;
                case ConditionRelation::OneUnstated: referenceAlone = true; break;
                case ConditionRelation::OtherSign:
                case ConditionRelation::AtBound:
                case ConditionRelation::Same: break;
            }
        }
        if (found || saysNoMore(part, c)) continue;
        referenceAlone = true;
        wordsAlone[0] = wordsAlone[0] || part.symbol.empty();
        cjkAlone[0] = cjkAlone[0] || (part.symbol.empty() && text::isCjk(part.words));
    }
    for (std::size_t j = 0; j < c.size(); ++j) {
        if (met[j] != 0 || saysNoMore(c[j], r)) continue;
        candidateAlone = true;
        wordsAlone[1] = wordsAlone[1] || c[j].symbol.empty();
        cjkAlone[1] = cjkAlone[1] || (c[j].symbol.empty() && text::isCjk(c[j].words));
    }
    // Words in two writings cannot be set against each other: the prose as a whole is
    // listed as not compared, a condition is no further difference.
    if (wordsAlone[0] && wordsAlone[1] && cjkAlone[0] != cjkAlone[1]) {
        auto const quantityAlone = [](std::vector<Part> const& parts, std::vector<Part> const& others) {
            return std::any_of(parts.begin(), parts.end(), [&](Part const& part) {
                bool const found = std::any_of(others.begin(), others.end(), [&](Part const& other) { return other.symbol == part.symbol; });
                return !part.symbol.empty() && !found && !saysNoMore(part, others);
            });
        };
        wordsAlone[0] = wordsAlone[1] = false;
        referenceAlone = quantityAlone(r, c);
        candidateAlone = quantityAlone(c, r);
    }
    // A whole range of temperatures against nothing printed: nothing printed means 25 °C.
    if (unordered || (harsher && milder) || (wordsAlone[0] && wordsAlone[1])) return ConditionRelation::Unordered;
    if (harsher) return ConditionRelation::Harsher;
    if (milder) return ConditionRelation::Milder;
    return referenceAlone || candidateAlone ? ConditionRelation::OneUnstated : ConditionRelation::Same;
}

bool contradict(StatedConditions const& reference, StatedConditions const& candidate) {
    return std::any_of(reference.parts.begin(), reference.parts.end(), [&](Part const& part) {
        return !part.symbol.empty() && std::any_of(candidate.parts.begin(), candidate.parts.end(), [&](Part const& other) {
            bool const oneScope = part.ofTable == other.ofTable;
            return oneScope && part.symbol == other.symbol && part.interval.unit == other.interval.unit && relateParts(part, other) == ConditionRelation::Unordered;
        });
    });
}

bool differInDirection(StatedConditions const& reference, StatedConditions const& candidate) {
    using Direction = Part::Direction;
    return std::any_of(reference.parts.begin(), reference.parts.end(), [&](Part const& part) {
        if (part.direction == Direction::Unsaid) return false;
        Direction const turned = part.direction == Direction::Printed ? Direction::Dropped : Direction::Printed;
        return std::any_of(candidate.parts.begin(), candidate.parts.end(),
                           [&](Part const& other) { return other.direction == turned && other.symbol == part.symbol && relateParts(part, other) == ConditionRelation::Same; });
    });
}

bool differInLoadBound(StatedConditions const& reference, StatedConditions const& candidate) {
    return std::any_of(reference.parts.begin(), reference.parts.end(), [&](Part const& part) {
        return std::any_of(candidate.parts.begin(), candidate.parts.end(), [&](Part const& other) { return meetAtFullLoad(part, other); });
    });
}

int agreeingQuantities(StatedConditions const& reference, StatedConditions const& candidate) {
    return static_cast<int>(std::count_if(reference.parts.begin(), reference.parts.end(), [&](Part const& part) {
        return !part.symbol.empty() && std::any_of(candidate.parts.begin(), candidate.parts.end(), [&](Part const& other) { return agree(part, other); });
    }));
}

int unmetQuantities(StatedConditions const& reference, StatedConditions const& candidate) {
    int unmet = 0;
    for (Part const& part : reference.parts) {
        if (part.symbol.empty()) continue;
        bool const same = std::any_of(candidate.parts.begin(), candidate.parts.end(), [&](Part const& other) { return agree(part, other); });
        if (!same && (states(candidate.parts, part.symbol) || !saysNoMore(part, candidate.parts))) ++unmet;
    }
    for (Part const& part : candidate.parts) {
        if (!part.symbol.empty() && !states(reference.parts, part.symbol) && !saysNoMore(part, reference.parts)) ++unmet;
    }
    return unmet;
}

bool departsAlone(StatedConditions const& one, StatedConditions const& other) {
    return std::any_of(one.parts.begin(), one.parts.end(), [&](Part const& part) { return part.departs && !states(other.parts, part.symbol); });
}

double conditionLikeness(ConditionRelation relation, StatedConditions const& reference, StatedConditions const& candidate) {
    switch (relation) {
        case ConditionRelation::OtherSign:
        case ConditionRelation::AtBound:
        case ConditionRelation::Same: return 1;
        case ConditionRelation::OneUnstated: return 0.75;
        case ConditionRelation::Harsher:
        case ConditionRelation::Milder: return anyMeetsAtBound(reference.parts, candidate.parts) ? 0.65 : 0.5;
        case ConditionRelation::Unordered: break;
    }
    // Rows of one parameter at several loads: the one that shares most conditions.
    constexpr double kWhereAllAgree = 0.6;
    auto const agreeing = std::count_if(reference.parts.begin(), reference.parts.end(), [&](Part const& part) {
        return std::any_of(candidate.parts.begin(), candidate.parts.end(), [&](Part const& other) {
            if (part.symbol != other.symbol || part.words != other.words) return false;
            return part.symbol.empty() || relateParts(part, other) == ConditionRelation::Same;
        });
    });
    auto const stated = std::max(reference.parts.size(), candidate.parts.size());
    return stated == 0 ? 0 : kWhereAllAgree * static_cast<double>(agreeing) / static_cast<double>(stated);
}

}  // namespace standin::compare

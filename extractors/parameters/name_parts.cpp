#include "extractors/parameters/name_parts.h"

// The first relation sign outside a bracket decides where a condition starts:
// at the symbol in front of it. Tested by
// tests/extractors/parameters/name_parts_test.cpp.

#include <algorithm>
#include <array>
#include <vector>

#include "extractors/parameters/shapes.h"
#include "extractors/parameters/text_forms.h"

namespace standin::parameters {

namespace {

bool endsWithTime(std::string const& content) {
    std::string const low = folded(content);
    constexpr std::array kTimes = {"seconds", "second", "sec", "sec.", "secs", "s", "秒", "min", "minutes", "minute"};
    return std::ranges::any_of(kTimes, [&](std::string_view time) {
        if (!low.ends_with(time) || low.size() == time.size()) return false;
        std::string const front = trimmed(std::string_view(low).substr(0, low.size() - time.size()));
        return !front.empty() && front.back() >= '0' && front.back() <= '9';
    });
}

struct Bracket {
    std::size_t open = std::string::npos;
    std::size_t inner = 0;
    std::size_t innerEnd = 0;
};

// The bracket pair that ends the text, ASCII or full width.
Bracket lastBracket(std::string const& text) {
    constexpr std::string_view kWideOpen = "（";
    constexpr std::string_view kWideClose = "）";
    Bracket out;
    bool const wide = text.ends_with(kWideClose);
    if (!wide && !text.ends_with(")") && !text.ends_with("]")) return out;
    if (wide) {
        out.open = text.rfind(kWideOpen);
        if (out.open == std::string::npos) return out;
        out.inner = out.open + kWideOpen.size();
        out.innerEnd = text.size() - kWideClose.size();
        return out;
    }
    int depth = 0;
    for (std::size_t i = text.size(); i-- > 0;) {
        if (text[i] == ')' || text[i] == ']') ++depth;
        if (text[i] == '(' || text[i] == '[') {
            if (--depth == 0) {
                out.open = i;
                out.inner = i + 1;
                out.innerEnd = text.size() - 1;
                return out;
            }
        }
    }
    return {};
}

void trimSeparators(std::string& text) {
    for (bool again = true; again;) {
        again = false;
        text = trimmed(text);
        for (std::string_view separator : {",", "，", ";", "；", ":", "：", "@", "、"}) {
            if (text.ends_with(separator)) {
                text.resize(text.size() - separator.size());
                again = true;
            }
        }
    }
}

// "Обратный ток, мкА, при" in front of its condition, "Leakage current, at".
void dropLink(std::string& name) {
    for (std::string_view link : {" при", " bei", ", at"}) {
        if (!name.ends_with(link)) continue;
        name.resize(name.size() - link.size());
        trimSeparators(name);
        return;
    }
}

std::string_view relationSigns(std::size_t index) {
    constexpr std::array<std::string_view, 10> kSigns = {"=", "<", ">", "≤", "≥", "≠", "≈", "≦", "≧", "＝"};
    return index < kSigns.size() ? kSigns[index] : std::string_view{};
}

std::size_t relationAt(std::string_view text) {
    std::size_t relation = std::string::npos;
    for (std::size_t i = 0; !relationSigns(i).empty(); ++i) relation = std::min(relation, text.find(relationSigns(i)));
    // "0 V → 4 V", but not "CP → Q", a path that is named
    constexpr std::string_view kArrow = "→";
    for (std::size_t at = text.find(kArrow); at < relation; at = text.find(kArrow, at + 1)) {
        std::size_t const to = text.find_first_not_of(" +-", at + kArrow.size());
        if (to != std::string_view::npos && text[to] >= '0' && text[to] <= '9') relation = at;
    }
    return relation;
}

// The first relation that no bracket before the end closes over; else the first one at all.
std::size_t relationBehind(std::string const& text) {
    std::size_t relation = relationAt(text);
    std::size_t from = 0;
    while (relation != std::string::npos) {
        std::string_view const front = std::string_view(text).substr(0, from + relation);
        bool const inside = std::ranges::count(front, '(') > std::ranges::count(front, ')');
        if (!inside) return from + relation;
        std::size_t const close = text.find(')', from + relation);
        if (close == std::string::npos || close + 1 == text.size()) break;
        from = close + 1;
        relation = relationAt(std::string_view(text).substr(from));
    }
    return relationAt(text);
}

constexpr std::size_t kLongestSubject = 20;  // bytes

// A word of ordinary language: small letters behind the first one.
bool isPlainWord(std::string const& word) {
    std::u32string const codes = decoded(word);
    if (codes.size() < 3) return false;
    if (word.find('-') != std::string::npos && hasOrdinaryWord(word) && !hasDigit(word)) return true;  // "On-resistance"
    auto const isSmall = [](char32_t c) { return (c >= U'a' && c <= U'z') || (c >= U'\u00DF' && c <= U'\u00FF') || (c >= U'\u0430' && c <= U'\u044F'); };
    auto const isLetter = [&](char32_t c) { return isLatinLetter(c) || isSmall(c) || (c >= U'\u0410' && c <= U'\u042F'); };
    return isLetter(codes[0]) && std::all_of(codes.begin() + 1, codes.end(), isSmall);
}

// "TMIN to TMAX", "TL to TH": over all temperatures.
bool spansTemperatures(std::string_view text) {
    constexpr std::size_t kLongestEnd = 5;
    std::size_t const at = text.find(" to T");
    if (at == std::string_view::npos || !text.starts_with('T')) return false;
    std::string_view const from = text.substr(0, at);
    std::string_view const to = text.substr(at + 4);
    return from.size() > 1 && from.size() <= kLongestEnd && to.size() > 1 && to.size() <= kLongestEnd && from != to && isSymbolLike(from) && isSymbolLike(to);
}

}  // namespace

std::string subjectOf(std::string_view condition) {
    std::size_t const relation = relationAt(condition);
    if (relation == std::string::npos) return {};
    std::string_view const front = condition.substr(0, relation);
    return trimmed(front.substr(front.find_first_not_of("([ ") == std::string::npos ? front.size() : front.find_first_not_of("([ ")));
}

bool startsWithCondition(std::string_view text) {
    if (spansTemperatures(text)) return true;
    std::string const subject = subjectOf(text);
    if (subject.empty() || subject.size() > kLongestSubject || std::ranges::any_of(decoded(subject), isCjk)) return false;
    std::vector<std::string> const words = splitAtSpaces(subject);
    auto const ordinary = std::ranges::count_if(words, isPlainWord);
    // "Output = 0 V" and "ON/OFF pin = 5 V", but not "Slew rate VI = 10 V"
    return ordinary == 0 || (ordinary == 1 && (words.size() == 1 || !isPlainWord(words.front())));
}

bool statesTemperatureOnly(std::string_view condition) {
    constexpr std::size_t kLongest = 24;
    std::string const subject = subjectOf(condition);
    if (condition.size() > kLongest || subject.empty() || subject.front() != 'T' || subject.size() > 4 || !isSymbolLike(subject)) return false;
    std::string_view const behind = condition.substr(relationAt(condition) + 1);
    return relationAt(behind) == std::string::npos && contains(behind, "°");
}

std::string withoutBrackets(std::string_view raw) {
    std::string const text = trimmed(raw);
    Bracket const bracket = lastBracket(text);
    if (bracket.open != 0) return text;
    return trimmed(std::string_view(text).substr(bracket.inner, bracket.innerEnd - bracket.inner));
}

std::string unitAsWritten(std::string_view printed) {
    std::string unit = withoutBrackets(printed);
    // Latin and Cyrillic letters that look like a raised ring, and the C behind it
    for (std::string_view raised : {"o C", "oC", "O C", "ºC", "0C", "оС", "о С", "ОС", "оC", "oС", "0С"}) {
        if (unit.starts_with(raised)) unit = "°C" + unit.substr(raised.size());
        std::string const behind = "/" + std::string(raised);
        if (unit.ends_with(behind)) unit = unit.substr(0, unit.size() - raised.size()) + "°C";
    }
    return unit;
}

bool isSymbolAtCondition(std::string_view text) {
    std::size_t const at = text.find('@');
    return at != std::string_view::npos && at > 0 && isSymbolLike(trimmed(text.substr(0, at))) && hasRelation(trimmed(text.substr(at + 1)));
}

std::string takeConditionAt(std::string& symbol) {
    if (!isSymbolAtCondition(symbol)) return {};
    std::size_t const at = symbol.find('@');
    std::string condition = trimmed(std::string_view(symbol).substr(at + 1));
    symbol = trimmed(std::string_view(symbol).substr(0, at));
    return condition;
}

std::string takeCondition(std::string& name) {
    Bracket const bracket = lastBracket(name);
    if (bracket.open != std::string::npos && bracket.open > 0 && (name[bracket.open - 1] == ' ' || !hasRelation(name.substr(0, bracket.open)))) {
        std::string const inner = trimmed(std::string_view(name).substr(bracket.inner, bracket.innerEnd - bracket.inner));
        if (hasRelation(inner) || endsWithTime(inner)) {
            name.resize(bracket.open);
            trimSeparators(name);
            std::string condition = inner;
            trimSeparators(condition);
            return condition;
        }
    }
    // "Lead temperature 1.6 mm from case for 10 s"
    if (endsWithTime(name) && !hasRelation(name)) {
        std::vector<std::string> const words = splitAtSpaces(name);
        std::size_t at = 0;
        for (std::size_t i = 0; i < words.size(); ++i) {
            bool const digit = words[i][0] >= '0' && words[i][0] <= '9';
            constexpr std::array kLinks = {"at", "for", "of", "to", "in", "from", "over", "within"};
            bool const linked = i > 0 && std::ranges::find(kLinks, folded(words[i - 1])) != kLinks.end();
            if (digit && i >= 2 && !linked) {
                std::string condition = trimmed(std::string_view(name).substr(at));
                name.resize(at);
                trimSeparators(name);
                return condition;
            }
            if (digit) break;
            at = name.find(words[i], at) + words[i].size() + 1;
        }
    }
    std::size_t const relation = relationBehind(name);
    std::size_t const at = name.find(" @");
    if (at != std::string::npos && (relation == std::string::npos || at < relation)) {
        std::string condition = trimmed(std::string_view(name).substr(at + 2));
        if (hasDigit(condition)) {
            name.resize(at);
            trimSeparators(name);
            return condition;
        }
    }
    if (relation == std::string::npos || relation == 0) return {};
    // the operand in front of the relation
    std::size_t end = relation;
    while (end > 0 && name[end - 1] == ' ') --end;
    std::size_t start = end;
    int depth = 0;
    while (start > 0) {
        char const c = name[start - 1];
        if (c == ')' || c == ']') ++depth;
        if (c == '(' || c == '[') --depth;
        if (depth < 0) break;
        bool const wide = start >= 3 && (std::string_view(name).substr(start - 3, 3) == "，" || std::string_view(name).substr(start - 3, 3) == "（");
        if (depth == 0 && (c == ' ' || c == ',' || c == ';' || c == '@' || c == ':' || wide)) break;
        // CJK words end the operand too
        if ((static_cast<unsigned char>(c) & 0xC0) == 0x80) {
            std::size_t lead = start - 1;
            while (lead > 0 && (static_cast<unsigned char>(name[lead]) & 0xC0) == 0x80) --lead;
            std::u32string const code = decoded(std::string_view(name).substr(lead, start - lead));
            if (!code.empty() && isCjk(code[0])) break;
        }
        --start;
    }
    std::string const operand = name.substr(start, end - start);
    if (operand.empty() || operand.size() > 20 || hasOrdinaryWord(operand) || start == 0) return {};
    if (std::count(name.begin(), name.begin() + static_cast<std::ptrdiff_t>(start), '(') != std::count(name.begin(), name.begin() + static_cast<std::ptrdiff_t>(start), ')'))
        return {};
    std::string condition = trimmed(std::string_view(name).substr(start));
    // prose behind the relation: a remark that belongs to the name
    if (hasOrdinaryWord(condition.substr(relation - start)) && !contains(folded(condition), "unless")) return {};
    name.resize(start);
    trimSeparators(name);
    dropLink(name);
    // "Offset voltage (RS = 50 Ω) Tamb = 25 °C"
    Bracket const before = lastBracket(name);
    if (before.open != std::string::npos && before.open > 0) {
        std::string const inner = trimmed(std::string_view(name).substr(before.inner, before.innerEnd - before.inner));
        if (!hasRelation(inner)) return condition;
        name.resize(before.open);
        trimSeparators(name);
        condition = joined(inner + ",", condition);
    }
    return condition;
}

bool isStrongSymbol(std::string_view raw) {
    std::string const word = trimmed(raw);
    std::u32string const codes = decoded(word);
    if (codes.size() < 2 || codes.size() > 14 || !isSymbolLike(word) || contains(word, " ")) return false;
    constexpr std::u32string_view kLeads = U"VITRPCQfθtgEΔΨψLAδηKUDSΘe";
    if (kLeads.find(codes[0]) == std::u32string_view::npos) return false;
    constexpr std::array<std::string_view, 40> kWords = {"IN",  "EN",   "INT", "IC", "ICs", "PIN", "PCB",  "ESD",  "TEST", "RMS", "TO",  "CDM",  "CE",  "CS",
                                                         "LED", "TEMP", "DC",  "AC", "ADC", "DAC", "PWM",  "PGND", "CLK",  "CHG", "DIP", "DFN",  "SOT", "SOP",
                                                         "TTL", "CMOS", "EMI", "RF", "THD", "TYP", "PROG", "CHRG", "DONE", "TX",  "RX",  "TA-TJ"};
    if (std::ranges::any_of(kWords, [&](std::string_view known) { return known == word; })) return false;
    if (isPackageLike(word) || isPartLike(word)) return false;
    constexpr std::array<std::string_view, 44> kPlain = {"Test", "Time", "Type", "Rise", "Temp", "Term", "Pin",  "Pull", "Peak", "Low",  "Line", "Load", "Lead", "Case", "Cell",
                                                         "Core", "Chip", "Rate", "Run",  "Ring", "Fall", "Fast", "Full", "Gain", "Gate", "Top",  "Tip",  "Two",  "Ten",  "Tab",
                                                         "Tape", "Pad",  "Per",  "Pair", "Part", "Path", "Port", "Ref",  "Real", "Idle", "Volt", "Via",  "time", "gain"};
    if (std::ranges::any_of(kPlain, [&](std::string_view known) { return known == word; })) return false;
    if (codes.size() > 5 && (word.ends_with("max") || word.ends_with("min"))) return isStrongSymbol(std::string_view(word).substr(0, word.size() - 3));
    // second character: a subscript in capitals, a digit, a sign, or a known lower-case one
    char32_t const second = codes[1];
    bool const lower = second >= U'a' && second <= U'z';
    if (!lower) return true;
    bool rest = false;
    for (std::size_t i = 1; i < codes.size(); ++i) rest = rest || isDigit(codes[i]) || codes[i] == U'(' || (codes[i] >= U'A' && codes[i] <= U'Z');
    return rest || (codes.size() <= 4 && codes[0] != U'A' && codes[0] != U'e' && codes[0] != U'D' && codes[0] != U'S');
}

namespace {

// "IIK, IOK": one or several symbols with commas between.
bool areStrongSymbols(std::string const& list) {
    std::size_t at = 0;
    while (at <= list.size()) {
        std::size_t const end = std::min(list.find(',', at), list.size());
        if (!isStrongSymbol(std::string_view(list).substr(at, end - at))) return false;
        at = end + 1;
    }
    return true;
}

bool balanced(std::string const& word) { return std::ranges::count(word, '(') == std::ranges::count(word, ')'); }

// The bracket at the end of a name that holds its symbol: "Supply voltage(VCC)", but not the one of
// "Threshold voltage, VGS(th)".
Bracket symbolBracket(std::string const& name) {
    Bracket const bracket = lastBracket(name);
    if (bracket.open == std::string::npos || bracket.open == 0) return {};
    std::size_t const space = name.rfind(' ', bracket.open - 1);
    std::size_t const from = space == std::string::npos ? 0 : space + 1;
    bool const apart = name[bracket.open - 1] == ' ' || hasOrdinaryWord(name.substr(from, bracket.open - from));
    return apart && areStrongSymbols(trimmed(std::string_view(name).substr(bracket.inner, bracket.innerEnd - bracket.inner))) ? bracket : Bracket{};
}

}  // namespace

SymbolPlace symbolPlace(std::string_view raw) {
    std::string const name = trimmed(raw);
    std::vector<std::string> const words = splitAtSpaces(name);
    if (symbolBracket(name).open != std::string::npos) return SymbolPlace::BehindSet;
    if (words.size() < 2 || !balanced(words.back()) || !balanced(words.front())) return SymbolPlace::None;
    if (isStrongSymbol(words.back()) && (words[words.size() - 2].ends_with(",") || words[words.size() - 2].ends_with(":"))) return SymbolPlace::BehindSet;
    if (isStrongSymbol(words.back()) && hasOrdinaryWord(name)) return SymbolPlace::Behind;
    if (isStrongSymbol(words.front()) && hasOrdinaryWord(name)) return SymbolPlace::InFront;
    return SymbolPlace::None;
}

std::string takeSymbol(std::string& name, SymbolPlace place) {
    std::vector<std::string> const words = splitAtSpaces(name);
    std::string symbol;
    if (place == SymbolPlace::BehindSet) {
        Bracket const bracket = symbolBracket(name);
        if (bracket.open != std::string::npos) {
            symbol = trimmed(std::string_view(name).substr(bracket.inner, bracket.innerEnd - bracket.inner));
            name.resize(bracket.open);
            trimSeparators(name);
            return symbol;
        }
    }
    if (words.size() < 2) return {};
    if (place == SymbolPlace::InFront) {
        symbol = words.front();
        name = trimmed(std::string_view(name).substr(name.find(symbol) + symbol.size()));
        return symbol;
    }
    if (place == SymbolPlace::Behind || place == SymbolPlace::BehindSet) {
        symbol = words.back();
        name.resize(name.rfind(symbol));
        trimSeparators(name);
    }
    return symbol;
}

}  // namespace standin::parameters

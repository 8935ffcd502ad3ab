#include "quantity/unit.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <iterator>
#include <utility>

#include <fmt/format.h>

#include "text/fold.h"
#include "text/script.h"
#include "text/utf8.h"

// A printed unit is folded, then read as: a special spelling (table), or prefix
// and base, or numerator/denominator of such. Every reading that the spelling
// allows is a candidate ("mS": siemens or seconds); the expected dimension
// chooses, without one the first candidate counts. Readings that bend letter
// case leave a note. Tested by tests/src/quantity/unit_test.cpp.

namespace standin::quantity {

namespace {

struct Spelling {
    std::string_view printed;  // exact
    std::string_view coherent;
    std::string_view factor;
    std::string_view offset = "";
    std::string_view qualifier = "";
};

// Whole spellings that are not prefix and base.
constexpr Spelling kSpecials[] = {
    {"°C", "degC", "1"}, {"degC", "degC", "1"}, {"deg.C", "degC", "1"}, {"degrees C", "degC", "1"}, {"degree C", "degC", "1"},
    {"deg C", "degC", "1"}, {"°c", "degC", "1"}, {"oC", "degC", "1"}, {"0C", "degC", "1"}, {"⁰C", "degC", "1"}, {"°", "°", "1"}, {"deg", "°", "1"}, {"Celsius", "degC", "1"}, {"°F", "degC", "F", "F"},
    {"%", "1", "0.01", "", "%"}, {"percent", "1", "0.01", "", "%"}, {"Prozent", "1", "0.01", "", "%"}, {"百分比", "1", "0.01", "", "%"},
    {"‰", "1", "0.001"}, {"ppm", "1", "0.000001"}, {"PPM", "1", "0.000001"}, {"ppb", "1", "0.000000001"},
    {"dB", "dB", "1"}, {"DB", "dB", "1"}, {"db", "dB", "1"}, {"dBm", "dBm", "1"}, {"dBc", "dBc", "1"}, {"dBV", "dBV", "1"},
    {"mil", "m", "0.0000254"}, {"mils", "m", "0.0000254"}, {"inch", "m", "0.0254"}, {"inches", "m", "0.0254"}, {"in", "m", "0.0254"}, {"\"", "m", "0.0254"},
    {"min", "s", "60"}, {"minute", "s", "60"}, {"minutes", "s", "60"}, {"h", "s", "3600"}, {"H", "H", "1"}, {"hr", "s", "3600"}, {"hrs", "s", "3600"},
    {"hour", "s", "3600"}, {"hours", "s", "3600"}, {"day", "s", "86400"}, {"days", "s", "86400"}, {"month", "s", "2629800"}, {"months", "s", "2629800"}, {"year", "s", "31557600"}, {"years", "s", "31557600"},
    {"sec", "s", "1"}, {"secs", "s", "1"}, {"Sec", "s", "1"}, {"SEC", "s", "1"}, {"second", "s", "1"}, {"seconds", "s", "1"},
    {"msec", "s", "0.001"}, {"mSec", "s", "0.001"}, {"msecs", "s", "0.001"}, {"MSEC", "s", "0.001"}, {"milliseconds", "s", "0.001"}, {"millisecond", "s", "0.001"},
    {"µsec", "s", "0.000001"}, {"usec", "s", "0.000001"}, {"uSec", "s", "0.000001"}, {"µSec", "s", "0.000001"}, {"USEC", "s", "0.000001"},
    {"microseconds", "s", "0.000001"}, {"nsec", "s", "0.000000001"}, {"nSec", "s", "0.000000001"},
    {"秒", "s", "1"}, {"毫秒", "s", "0.001"}, {"微秒", "s", "0.000001"}, {"ミリ秒", "s", "0.001"}, {"マイクロ秒", "s", "0.000001"}, {"分钟", "s", "60"},
    {"小时", "s", "3600"}, {"時間", "s", "3600"}, {"Sekunden", "s", "1"}, {"Sekunde", "s", "1"},
    {"伏", "V", "1"}, {"毫伏", "V", "0.001"}, {"安", "A", "1"}, {"毫安", "A", "0.001"}, {"微安", "A", "0.000001"}, {"欧姆", "Ω", "1"}, {"毫安时", "C", "3.6"},
    {"毫瓦", "W", "0.001"}, {"瓦", "W", "1"}, {"毫欧", "Ω", "0.001"}, {"度", "degC", "1"},
    {"Ah", "C", "3600"}, {"AH", "C", "3600"}, {"A·h", "C", "3600"}, {"mAh", "C", "3.6"}, {"mAH", "C", "3.6"}, {"maH", "C", "3.6"}, {"MAH", "C", "3.6"},
    {"mA·h", "C", "3.6"}, {"Wh", "J", "3600"}, {"mWh", "J", "3.6"}, {"kWh", "J", "3600000"},
    {"MEG", "Ω", "1000000"}, {"Meg", "Ω", "1000000"}, {"MEGΩ", "Ω", "1000000"}, {"Megohm", "Ω", "1000000"}, {"megohms", "Ω", "1000000"}, {"megohm", "Ω", "1000000"},
    {"Gauss", "T", "0.0001"}, {"gauss", "T", "0.0001"}, {"Gs", "T", "0.0001"}, {"GS", "T", "0.0001"}, {"kG", "T", "0.1"},
    {"Oe", "A/m", "79.5774715"}, {"mho", "S", "1"}, {"mmho", "S", "0.001"}, {"µmho", "S", "0.000001"},
    {"cycles", "1", "1"}, {"cycle", "1", "1"}, {"times", "1", "1"}, {"pcs", "1", "1"}, {"pieces", "1", "1"}, {"LSB", "LSB", "1"}, {"lsb", "LSB", "1"},
    {"bits", "bit", "1"}, {"bit", "bit", "1"}, {"bps", "bit/s", "1"}, {"kbps", "bit/s", "1000"}, {"Mbps", "bit/s", "1000000"}, {"Gbps", "bit/s", "1000000000"},
    {"rpm", "1/s", "rpm"}, {"lx", "lx", "1"}, {"lux", "lx", "1"}, {"cd", "cd", "1"}, {"mcd", "cd", "0.001"}, {"lm", "lm", "1"},
    {"volt", "V", "1"}, {"volts", "V", "1"}, {"Volt", "V", "1"}, {"Volts", "V", "1"}, {"VOLTS", "V", "1"}, {"millivolt", "V", "0.001"}, {"millivolts", "V", "0.001"},
    {"amp", "A", "1"}, {"amps", "A", "1"}, {"Amp", "A", "1"}, {"Amps", "A", "1"}, {"ampere", "A", "1"}, {"amperes", "A", "1"}, {"milliampere", "A", "0.001"},
    {"milliamperes", "A", "0.001"}, {"microampere", "A", "0.000001"}, {"microamperes", "A", "0.000001"},
    {"watt", "W", "1"}, {"watts", "W", "1"}, {"Watts", "W", "1"}, {"kilohm", "Ω", "1000"}, {"kilohms", "Ω", "1000"}, {"milliohm", "Ω", "0.001"}, {"milliohms", "Ω", "0.001"},
    {"square", "1", "1"}, {"В", "V", "1"}, {"мВ", "V", "0.001"}, {"А", "A", "1"}, {"мА", "A", "0.001"}, {"мкА", "A", "0.000001"}, {"Ом", "Ω", "1"}, {"кОм", "Ω", "1000"},
    {"мОм", "Ω", "0.001"}, {"мс", "s", "0.001"}, {"мкс", "s", "0.000001"}, {"с", "s", "1"}, {"Вт", "W", "1"}, {"мВт", "W", "0.001"}, {"мкФ", "F", "0.000001"},
    {"нФ", "F", "0.000000001"}, {"пФ", "F", "0.000000000001"}, {"Гц", "Hz", "1"}, {"кГц", "Hz", "1000"}, {"МГц", "Hz", "1000000"},
    {"°С", "degC", "1"}, {"мм", "m", "0.001"},
};

// Spellings in the order of the texts, equal ones as they were listed.
template <class Entry, std::size_t kCount>
constexpr auto sortedBySpelling(Entry const (&entries)[kCount]) {
    std::array<Entry, kCount> sorted{};
    std::size_t used = 0;
    for (Entry const& entry : entries) {
        std::size_t at = used++;
        for (; at > 0 && entry.printed < sorted[at - 1].printed; --at) sorted[at] = sorted[at - 1];
        sorted[at] = entry;
    }
    return sorted;
}

template <class Entry, std::size_t kCount>
constexpr std::size_t longestSpelling(std::array<Entry, kCount> const& entries) {
    std::size_t longest = 0;
    for (Entry const& entry : entries) longest = std::max(longest, entry.printed.size());
    return longest;
}

constexpr auto kSortedSpecials = sortedBySpelling(kSpecials);

struct Base {
    std::string_view printed;
    std::string_view coherent;
    int power = 0;  // of ten
};

// Exact spelling first; the second group bends case and is noted.
constexpr Base kBases[] = {
    {"V", "V"}, {"A", "A"}, {"Ω", "Ω"}, {"ohm", "Ω"}, {"ohms", "Ω"}, {"Ohm", "Ω"}, {"Ohms", "Ω"}, {"OHM", "Ω"}, {"OHMS", "Ω"}, {"s", "s"}, {"F", "F"}, {"H", "H"},
    {"Hz", "Hz"}, {"W", "W"}, {"m", "m"}, {"g", "kg", -3}, {"J", "J"}, {"C", "C"}, {"T", "T"}, {"S", "S"}, {"N", "N"}, {"Pa", "Pa"}, {"K", "K"}, {"VA", "VA"},
    {"eV", "eV"}, {"Bd", "Bd"}, {"B", "B"}, {"SPS", "1/s"}, {"R", "Ω"}, {"bit/s", "bit/s"}, {"bar", "Pa", 5},
};
constexpr Base kBentBases[] = {
    {"v", "V"}, {"a", "A"}, {"S", "s"}, {"f", "F"}, {"HZ", "Hz"}, {"hz", "Hz"}, {"w", "W"}, {"h", "H"}, {"Farad", "F"}, {"Farads", "F"},
};

constexpr auto kSortedBases = sortedBySpelling(kBases);
constexpr auto kSortedBentBases = sortedBySpelling(kBentBases);
constexpr std::size_t kLongestBase = std::max(longestSpelling(kSortedBases), longestSpelling(kSortedBentBases));

// The entry of that spelling in a sorted list in which no spelling is listed twice.
template <std::size_t kCount>
Base const* findBase(std::array<Base, kCount> const& sorted, std::string_view printed) {
    auto const found = std::ranges::lower_bound(sorted, printed, {}, &Base::printed);
    return found != sorted.end() && found->printed == printed ? &*found : nullptr;
}

struct Prefix {
    std::string_view printed;
    int power;
    bool bent = false;
};

constexpr Prefix kPrefixes[] = {
    {"", 0}, {"m", -3}, {"µ", -6}, {"k", 3}, {"n", -9}, {"p", -12}, {"M", 6}, {"u", -6}, {"G", 9}, {"f", -15}, {"T", 12}, {"K", 3}, {"c", -2}, {"d", -1},
    {"U", -6, true}, {"N", -9, true}, {"P", -12, true}, {"M", -3, true}, {"milli", -3}, {"micro", -6}, {"kilo", 3}, {"mega", 6}, {"nano", -9}, {"pico", -12},
};

struct Candidate {
    Unit unit;
    int rank = 0;  // lower is the more literal reading
};

Unit makeUnit(std::string_view coherent, Decimal factor) {
    Unit unit;
    unit.coherent = std::string(coherent);
    unit.factor = factor;
    return unit;
}

Decimal power(int exponent) { return Decimal(1).scaledByPowerOfTen(exponent); }

void addSpecials(std::string_view printed, std::vector<Candidate>& out) {
    for (auto const* at = std::ranges::lower_bound(kSortedSpecials, printed, {}, &Spelling::printed); at != kSortedSpecials.end() && at->printed == printed; ++at) {
        Spelling const& special = *at;
        Unit unit = makeUnit(special.coherent, 1);
        unit.qualifier = std::string(special.qualifier);
        if (special.factor == "F") {  // Fahrenheit: (F - 32) / 1.8
            unit.factor = *divide(5, 9, 30, Rounding::Nearest);
            unit.offset = *divide(-160, 9, 30, Rounding::Nearest);
        } else if (special.factor == "rpm") {
            unit.factor = *divide(1, 60, 30, Rounding::Nearest);
        } else {
            unit.factor = *Decimal::parse(special.factor);
        }
        out.push_back({std::move(unit), 0});
    }
}

// `printed` read as that prefix and base, where the two go together.
void addReading(std::string_view printed, Prefix const& prefix, Base const& base, bool bent, std::vector<Candidate>& out) {
    bool const timeOrLength = base.coherent == "s" || base.coherent == "m";
    bool const centi = prefix.power == -2 || prefix.power == -1;
    if (centi && base.coherent != "m") return;     // "dA", "cV" are not met
    if (timeOrLength && prefix.power > 3) return;  // no mega-seconds
    if (base.coherent == "B" && prefix.power < 0) return;
    if (base.printed == "R" && prefix.power != 0) return;
    if ((base.coherent == "K") && prefix.power > 0) return;  // "KK"
    Unit unit = makeUnit(base.coherent, power(prefix.power + base.power));
    int rank = (prefix.bent ? 2 : 0) + (bent ? 1 : 0);
    // No sheet of a semiconductor states megavolts or mega-amperes.
    bool const absurd = prefix.printed == "M" && !prefix.bent && (base.coherent == "V" || base.coherent == "A" || base.coherent == "F");
    if (absurd) rank += 4;
    if (prefix.bent) {
        unit.note = fmt::format("capital {} in \"{}\" read as {}", prefix.printed, printed,
                                prefix.printed == "M"   ? "milli"
                                : prefix.printed == "U" ? "micro"
                                : prefix.printed == "N" ? "nano"
                                                        : "pico");
    }
    out.push_back({std::move(unit), rank});
}

// As starts_with(), of which most calls end at the first byte.
bool begins(std::string_view text, std::string_view start) { return start.empty() || (text.front() == start.front() && text.starts_with(start)); }

void addPrefixed(std::string_view printed, std::vector<Candidate>& out) {
    for (Prefix const& prefix : kPrefixes) {
        if (printed.size() <= prefix.printed.size() || printed.size() - prefix.printed.size() > kLongestBase || !begins(printed, prefix.printed)) continue;
        std::string_view const rest = printed.substr(prefix.printed.size());
        if (Base const* const base = findBase(kSortedBases, rest)) addReading(printed, prefix, *base, false, out);
        if (Base const* const base = findBase(kSortedBentBases, rest)) addReading(printed, prefix, *base, true, out);
    }
}

// "Vp-p", "mVrms", "VDC": what stands before the qualifier, and its name.
struct Qualified {
    std::string_view rest;
    std::string_view qualifier;  // empty: a remark without meaning for the dimension ("DC")
};

std::optional<Qualified> qualified(std::string_view printed) {
    static constexpr std::pair<std::string_view, std::string_view> kQualifiers[] = {
        {"p-p", "p-p"}, {"P-P", "p-p"}, {"pp", "p-p"}, {"PP", "p-p"}, {"rms", "rms"}, {"RMS", "rms"}, {"Rms", "rms"}, {"pk", "pk"}, {"peak", "pk"},
        {"DC", ""}, {"dc", ""}, {"AC", "rms"}, {"ac", "rms"}, {"(rms)", "rms"}, {"(p-p)", "p-p"}, {"(pk)", "pk"}};
    for (auto const& [tail, name] : kQualifiers) {
        if (printed.size() <= tail.size() || printed.substr(printed.size() - tail.size()) != tail) continue;
        std::string_view rest = printed.substr(0, printed.size() - tail.size());
        while (!rest.empty() && (rest.back() == ' ' || rest.back() == '_')) rest.remove_suffix(1);
        if (rest.empty() || (rest.back() != 'V' && rest.back() != 'A')) continue;
        return Qualified{rest, name};
    }
    return std::nullopt;
}

std::vector<Candidate> simpleCandidates(std::string_view printed) {
    std::vector<Candidate> out;
    addSpecials(printed, out);
    addPrefixed(printed, out);
    if (out.empty()) {
        if (auto const parts = qualified(printed)) {
            addPrefixed(parts->rest, out);
            for (Candidate& candidate : out) {
                candidate.unit.qualifier = std::string(parts->qualifier);
                if (!parts->qualifier.empty()) candidate.unit.coherent += " " + std::string(parts->qualifier);
            }
        }
    }
    // "mm²", "mm2", "m^2"
    for (std::string_view const tail : {"²", "^2", "2"}) {
        if (!out.empty() || printed.size() <= tail.size() || printed.substr(printed.size() - tail.size()) != tail) continue;
        std::vector<Candidate> base;
        addPrefixed(printed.substr(0, printed.size() - tail.size()), base);
        for (Candidate const& candidate : base) {
            if (candidate.unit.coherent != "m" && candidate.unit.coherent != "s") continue;
            out.push_back({makeUnit(candidate.unit.coherent + "²", candidate.unit.factor * candidate.unit.factor), candidate.rank});
        }
    }
    return out;
}

// "√Hz", "rtHz", "sqrt(Hz)", "Hz^1/2" as a denominator.
bool isRootHertz(std::string_view printed) {
    for (std::string_view const spelling : {"√Hz", "√(Hz)", "rtHz", "rt.Hz", "RtHz", "sqrt(Hz)", "sqrtHz", "Hz^1/2", "Hz½", "Hz0.5", "Hz^0.5", "√HZ", "root-Hz"}) {
        if (printed == spelling) return true;
    }
    return false;
}

std::string joined(std::string_view numerator, std::string_view denominator) {
    if (numerator == denominator) return "1";
    if (numerator == "V" && denominator == "A") return "Ω";
    if (numerator == "A" && denominator == "V") return "S";
    if (numerator == "J" && denominator == "s") return "W";
    if (numerator == "C" && denominator == "s") return "A";
    return std::string(numerator) + "/" + std::string(denominator);
}

std::vector<Candidate> compoundCandidates(std::string_view printed) {
    std::size_t const slash = printed.find('/');
    if (slash == std::string_view::npos || slash == 0 || slash + 1 == printed.size()) return {};
    std::string_view numerator = text::trimmed(printed.substr(0, slash));
    std::string_view denominator = text::trimmed(printed.substr(slash + 1));
    if (denominator.size() >= 2 && denominator.front() == '(' && denominator.back() == ')') denominator = denominator.substr(1, denominator.size() - 2);
    std::vector<Candidate> out;
    auto const inCompound = [](std::string_view coherent) { return coherent == "degC" ? std::string_view("K") : coherent; };
    std::vector<Candidate> tops = simpleCandidates(numerator);
    if (numerator == "1") tops.push_back({makeUnit("1", 1), 0});
    for (Candidate const& top : tops) {
        if (isRootHertz(denominator)) {
            out.push_back({makeUnit(top.unit.coherent + "/√Hz", top.unit.factor), top.rank});
            continue;
        }
        std::string_view bottomText = denominator;
        std::string_view second;
        if (std::size_t const again = denominator.find('/'); again != std::string_view::npos) {
            bottomText = denominator.substr(0, again);
            second = denominator.substr(again + 1);
        }
        for (Candidate const& bottom : simpleCandidates(bottomText)) {
            if (!bottom.unit.qualifier.empty()) continue;
            if (bottom.unit.coherent == "C") continue;  // "mV/C" means degrees
            auto const factor = divide(top.unit.factor, bottom.unit.factor, 30, Rounding::Nearest);
            if (!factor) continue;
            Unit unit = makeUnit(joined(inCompound(top.unit.coherent), inCompound(bottom.unit.coherent)), *factor);
            unit.note = !top.unit.note.empty() ? top.unit.note : bottom.unit.note;
            if (top.unit.qualifier == "%") unit.qualifier = "%";
            if (!second.empty()) {
                auto const third = parseUnit(second);
                if (!third) continue;
                auto const whole = divide(unit.factor, third->factor, 30, Rounding::Nearest);
                if (!whole) continue;
                unit.factor = *whole;
                unit.coherent += "/" + std::string(inCompound(third->coherent));
            }
            out.push_back({unit, top.rank + bottom.rank});
        }
        if (denominator == "C") out.push_back({makeUnit(joined(inCompound(top.unit.coherent), "K"), top.unit.factor), top.rank});
    }
    return out;
}

// A prefix letter alone stands for the expected unit ("100m" in a row of ohms).
std::optional<Unit> prefixOfExpected(std::string_view printed, std::string_view expected) {
    if (expected.empty() || expected == "1" || expected == "degC") return std::nullopt;
    for (Prefix const& prefix : kPrefixes) {
        if (!prefix.printed.empty() && !prefix.bent && prefix.printed == printed) {
            Unit unit = makeUnit(expected, power(prefix.power));
            unit.note = fmt::format("prefix \"{}\" without a unit read with {}", printed, expected);
            return unit;
        }
    }
    return std::nullopt;
}

// Ω lost in a symbol font arrives as W.
std::optional<Unit> ohmLostInSymbolFont(std::string_view printed, std::string_view expected) {
    if (expected != "Ω" || printed.empty() || printed.back() != 'W') return std::nullopt;
    std::string const mended = std::string(printed.substr(0, printed.size() - 1)) + "Ω";
    auto unit = parseUnit(mended, {.expected = expected});
    if (unit && unit->coherent == "Ω") {
        unit->note = fmt::format("\"{}\" read as {}: a resistance is not in watts", printed, mended);
        return unit;
    }
    return std::nullopt;
}

std::string plain(std::string_view printed) {
    std::string folded = text::foldForComparison(printed);
    if (folded.size() > 2 && (folded.front() == '(' || folded.front() == '[') && (folded.back() == ')' || folded.back() == ']')) folded = folded.substr(1, folded.size() - 2);
    std::string result;
    for (std::size_t i = 0; i < folded.size(); ++i) {
        char const c = folded[i];
        // Spaces beside a slash or behind a degree sign say nothing.
        if (c == ' ' && ((i + 1 < folded.size() && folded[i + 1] == '/') || (i > 0 && folded[i - 1] == '/'))) continue;
        result.push_back(c);
    }
    std::string_view const view = text::trimmed(result);
    std::string trimmed(view);
    if (trimmed.size() > 2 && trimmed.back() == '.') trimmed.pop_back();
    return trimmed;
}

}  // namespace

std::optional<Unit> parseUnit(std::string_view printed, UnitContext const& context) {
    if (printed.empty() || printed.size() > 64) return std::nullopt;
    std::string const text = plain(printed);
    if (text.empty()) return std::nullopt;

    std::vector<Candidate> candidates = text.find('/') == std::string::npos ? simpleCandidates(text) : compoundCandidates(text);
    if (text == "C" || text == "c") candidates.insert(candidates.begin(), {makeUnit("degC", 1), 0});
    if (text == "C" && context.expected == "C") candidates.erase(candidates.begin());
    if (text == "°" && context.expected == "degC") return makeUnit("degC", 1);
    if (text == "K") {
        Unit kelvin = makeUnit("degC", 1);
        kelvin.offset = *Decimal::parse("-273.15");
        if (context.expected == "degC") candidates = {{kelvin, 0}};
        if (context.expected == "Ω") candidates = {{makeUnit("Ω", 1000), 0}};
    }
    if (text == "G" && context.expected == "T") candidates.push_back({makeUnit("T", *Decimal::parse("0.0001")), 0});
    if (text == "H" && context.expected == "s") candidates.push_back({makeUnit("s", 3600), 1});
    // "%VO", "%/VO": percent of a value that is named; "%/V" is a percentage for each volt.
    std::size_t const named = text.size() > 1 && text[1] == '/' ? 2 : 1;
    if (candidates.empty() && text.size() > named + 1 && text.front() == '%' && text::isAsciiUpper(text[named]) && text.find('/', named) == std::string::npos) {
        Unit percent = makeUnit("1", Decimal(1).scaledByPowerOfTen(-2));
        percent.qualifier = "%" + text.substr(named);
        return percent;
    }
    if (candidates.empty()) {
        if (auto unit = prefixOfExpected(text, context.expected)) return unit;
        return ohmLostInSymbolFont(text, context.expected);
    }

    // In a column of capitals "M" is milli unless only mega is ever meant (Ω, Hz).
    if (context.allCapitals) {
        for (Candidate& candidate : candidates) {
            bool const resistanceOrFrequency = candidate.unit.coherent == "Ω" || candidate.unit.coherent == "Hz";
            if (!candidate.unit.note.empty() && !resistanceOrFrequency) candidate.rank -= 3;
        }
    }
    Candidate const* best = nullptr;
    for (Candidate const& candidate : candidates) {
        bool const fits = !context.expected.empty() && candidate.unit.coherent == context.expected;
        bool const bestFits = best != nullptr && !context.expected.empty() && best->unit.coherent == context.expected;
        if (best == nullptr || (fits && !bestFits) || (fits == bestFits && candidate.rank < best->rank)) best = &candidate;
    }
    if (!context.expected.empty() && best->unit.coherent != context.expected) {
        if (auto unit = ohmLostInSymbolFont(text, context.expected)) return unit;
        if (text.size() <= 2) {
            if (auto unit = prefixOfExpected(text, context.expected); unit && best->unit.coherent != "V" && best->unit.coherent != "A") return unit;
        }
    }
    return best->unit;
}

namespace {

// Units written in CJK need no boundary behind them ("3秒以上").
std::size_t cjkUnitLength(std::string_view text) {
    std::size_t longest = 0;
    for (Spelling const& special : kSpecials) {
        if (static_cast<unsigned char>(special.printed.front()) < 0xE3) continue;
        if (text.substr(0, special.printed.size()) == special.printed) longest = std::max(longest, special.printed.size());
    }
    return longest;
}

bool isUnitCharacter(char32_t code) {
    if (code < 0x80) {
        char const c = static_cast<char>(code);
        return text::isAsciiLetter(c) || c == '%' || c == '/' || c == '^' || c == '"';
    }
    return code == 0xB0 || code == 0xBA || code == 0xB5 || code == 0x3BC || code == 0x3A9 || code == 0x2126 || code == 0x2103 || code == 0x2109 || code == 0x221A ||
           code == 0xB2 || code == 0xB7 || code == 0x22C5 || code == 0x2030 || code == 0xFF05 || (code >= 0xFF21 && code <= 0xFF5A) ||
           (code >= 0x3380 && code <= 0x33DF) || (code >= 0x410 && code <= 0x44F) || code == 0x212A;
}

}  // namespace

std::optional<Unit> parseUnitPrefix(std::string_view text, UnitContext const& context, std::size_t& length) {
    length = 0;
    if (text.empty()) return std::nullopt;
    if (static_cast<unsigned char>(text.front()) >= 0xE3) {
        if (std::size_t const cjk = cjkUnitLength(text); cjk > 0) {
            length = cjk;
            return parseUnit(text.substr(0, cjk), context);
        }
    }
    // Ends at which a unit could stop, the longest last.
    std::array<std::size_t, 8> ends{};
    std::size_t count = 0;
    std::size_t at = 0;
    while (at < text.size() && at < kLongestUnit) {
        std::size_t next = at;
        char32_t const code = text::decodeNext(text, next);
        bool const hyphen = code == U'-' && at > 0 && (text.substr(at - 1, 3) == "p-p" || text.substr(at - 1, 3) == "P-P");
        bool const bracketRoot = (code == U'(' && at >= 4 && text.substr(at - 4, 4) == "sqrt") || (code == U')' && at >= 2 && text.substr(at - 2, 2) == "Hz");
        bool const digit = code < 0x80 && text::isAsciiDigit(static_cast<char>(code)) && at > 0 && (text[at - 1] == '^' || text[at - 1] == '/');
        bool const degreeGap = code == U' ' && at >= 2 && text.substr(at - 2, 2) == "°" && next < text.size() && text[next] == 'C';
        if (!isUnitCharacter(code) && !hyphen && !bracketRoot && !digit && !degreeGap) break;
        // A mark of inches closes a quotation too.
        if ((code == U'/' || code == 0xB0 || code == U'"') && at > 0 && count < ends.size()) ends[count++] = at;
        at = next;
    }
    std::size_t const runEnd = at;
    if (runEnd == 0) return std::nullopt;
    // A digit right behind makes it a code ("3V3", "5A12").
    bool const codeBehind = runEnd < text.size() && text::isAsciiDigit(text[runEnd]);
    if (!codeBehind) {
        if (auto unit = parseUnit(text.substr(0, runEnd), context)) {
            length = runEnd;
            return unit;
        }
    }
    while (count > 0) {
        std::size_t const end = ends[--count];
        if (end == 0 || end == runEnd) continue;
        if (auto unit = parseUnit(text.substr(0, end), context)) {
            length = end;
            return unit;
        }
    }
    return std::nullopt;
}

Decimal toCoherent(Decimal printed, Unit const& unit) {
    // A zero offset would lend its finer resolution to "300 kΩ".
    Decimal const scaled = printed * unit.factor;
    return unit.offset.isZero() ? scaled : scaled + unit.offset;
}

bool sameDimension(Unit const& a, Unit const& b) { return a.coherent == b.coherent; }

Decimal amplitudeRatio(Decimal decibel) {
    if (auto const tens = divide(decibel, 20, 30, Rounding::Nearest); tens && *tens == tens->rounded(0, Rounding::Nearest)) {
        return power(static_cast<int>(tens->approximate()));
    }
    double const ratio = std::pow(10.0, decibel.approximate() / 20.0);
    auto const parsed = Decimal::parse(fmt::format("{:.11e}", ratio));
    return parsed ? *parsed : Decimal(0);
}

}  // namespace standin::quantity

#include "extractors/parameters/shapes.h"

// Character-class tests. Units are read by grammar: factors of [prefix]base
// joined by "/", "·" or "√". Tested by tests/extractors/parameters/shapes_test.cpp.

#include <algorithm>
#include <array>
#include <cstdint>

#include "extractors/parameters/text_forms.h"
#include "text/utf8.h"

namespace standin::parameters {

namespace {

std::string withoutSpaces(std::string_view text) {
    std::string out;
    for (char c : text) {
        if (c != ' ') out.push_back(c);
    }
    return out;
}

// Base units after folding to lower case; prefixes are tried in front of them.
constexpr auto kBases = std::to_array<std::string_view>(
    {"v",     "a",    "ω",     "ohm",   "ohms",   "w",    "s",   "sec",  "secs", "second", "seconds", "f",    "h",    "hz",  "m",    "g",     "k",    "°c",  "°f",  "c",   "j",
     "t",     "db",   "dbm",   "dbc",   "dbv",    "%",    "ppm", "ppb",  "pa",   "bar",    "bit",     "bits", "lsb",  "mil", "mils", "in",    "inch", "min", "hr",  "hrs", "hour",
     "hours", "year", "years", "cycle", "cycles", "vrms", "vpp", "vp-p", "vdc",  "vac",    "vpk",     "vp",   "arms", "app", "ap-p", "adc",   "bps",  "b/s", "kgf", "n",   "n·m",
     "lm",    "lx",   "cd",    "rpm",   "gauss",  "oe",   "ah",  "wh",   "day",  "days",   "times",   "x",    "mho",  "sps", "va",   "aω",    "в",    "а",   "ом",  "вт",  "с",
     "гц",    "ф",    "дб",    "гн",    "秒",     "伏",   "安",  "欧",   "瓦",   "°",      "deg",     "degc", "dbfs", "gs",  "ks",   "vpeak", "apk",  "r",   "s/m", "℃"});

constexpr auto kPrefixes = std::to_array<std::string_view>({"", "m", "u", "μ", "µ", "n", "p", "f", "k", "g", "c", "d", "м", "мк", "н", "п", "к", "毫", "微", "千", "meg"});

// Up to eight bytes as one number, to be compared at once; no text of ours has a zero byte.
constexpr std::uint64_t packed(std::string_view text) {
    std::uint64_t number = 0;
    for (char const c : text) number = number << 8U | static_cast<unsigned char>(c);
    return number;
}

constexpr std::size_t kLongestBase = 8;
static_assert(std::ranges::all_of(kBases, [](std::string_view base) { return base.size() <= kLongestBase; }));

constexpr std::size_t kLongestPrefix = 4;
static_assert(std::ranges::all_of(kPrefixes, [](std::string_view prefix) { return prefix.size() <= kLongestPrefix; }));

constexpr auto kSortedBases = [] {
    std::array<std::uint64_t, kBases.size()> sorted{};
    std::ranges::transform(kBases, sorted.begin(), packed);
    std::ranges::sort(sorted);
    return sorted;
}();

bool isBase(std::string_view factor) {
    if (factor.empty() || factor.size() > kLongestPrefix + kLongestBase) return false;
    return std::ranges::any_of(kPrefixes, [&](std::string_view prefix) {
        if (!prefix.empty() && (prefix.front() != factor.front() || !factor.starts_with(prefix))) return false;
        std::string_view const base = factor.substr(prefix.size());
        return base.size() <= kLongestBase && std::ranges::binary_search(kSortedBases, packed(base));
    });
}

bool isUnitFactor(std::string_view factor) {
    if (factor.empty()) return false;
    if (isBase(factor)) return true;
    // exponents: "m2", "cm^2", "hz1/2"
    std::string_view bare = factor;
    while (!bare.empty() && (bare.back() == '2' || bare.back() == '3' || bare.back() == '^')) bare.remove_suffix(1);
    if (bare.size() < factor.size() && isBase(bare)) return true;
    // percent of something, and "1k hr": "%vin", "%fs", "1khr"
    if (factor.front() == '%' && factor.size() <= 12) {
        return std::ranges::all_of(factor.substr(1), [](char c) { return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '(' || c == ')'; });
    }
    std::size_t digits = 0;
    while (digits < factor.size() && factor[digits] >= '0' && factor[digits] <= '9') ++digits;
    return digits > 0 && (digits == factor.size() || isBase(factor.substr(digits)));
}

bool isRelation(char32_t c) {
    if (c < 0x80) return c == U'=' || c == U'<' || c == U'>';
    return c == U'\u2264' || c == U'\u2265' || c == U'\u2260' || c == U'\u2248' || c == U'\u2266' || c == U'\u2267' || c == U'\uFF1D' || c == U'\uFF1C' || c == U'\uFF1E' ||
           c == U'\u2192';
}

constexpr auto kPackageRoots = std::to_array<std::string_view>(
    {"SOT", "SOIC", "SOP",  "SSOP", "TSSOP", "MSOP",  "VSSOP", "HTSSOP", "DIP", "PDIP", "CDIP",  "QFN",    "DFN",   "WDFN",  "UDFN", "VQFN", "DHVQFN", "WQFN",
     "QFP", "LQFP", "TQFP", "BGA",  "CSP",   "WLCSP", "SO",    "TO",     "SC",  "DPAK", "D2PAK", "DDPAK",  "PLCC",  "LCC",   "ESOP", "HSOP", "SIP",    "ZIP",
     "LGA", "TDFN", "USON", "SON",  "XSON",  "DMP",   "SMD",   "SMA",    "SMB", "DO",   "SOD",   "CERDIP", "HVSOF", "DSBGA", "VSP",  "SSOT", "CASE"});

constexpr int kFewestPartDigits = 2;

constexpr auto kVariantEndings =
    std::to_array<std::string_view>({"version", "versions", "series", "devices", "device", "系列", "版本", "型", "grade", "type", "types", "ランク", "rank"});

}  // namespace

bool hasDigit(std::string_view text) {
    if (std::ranges::any_of(text, [](char c) { return c >= '0' && c <= '9'; })) return true;
    constexpr std::string_view kWide = "\xEF\xBC";  // full-width digits are EF BC 90 to EF BC 99
    for (std::size_t at = text.find(kWide); at != std::string_view::npos; at = text.find(kWide, at + 1)) {
        auto const last = at + 2 < text.size() ? static_cast<unsigned char>(text[at + 2]) : 0U;
        if (last >= 0x90 && last <= 0x99) return true;
    }
    return false;
}

bool hasOrdinaryWord(std::string_view text) {
    int run = 0;
    for (std::size_t at = 0; at < text.size();) {
        char32_t const c = standin::text::decodeNext(text, at);
        bool const lower = (c >= U'a' && c <= U'z') || (c >= U'\u0430' && c <= U'\u044F') || (c >= U'\u00DF' && c <= U'\u00FF');
        run = lower ? run + 1 : 0;
        if (run >= 4 || (isCjk(c) && c >= 0x3041 && c < 0xFF00)) return true;
    }
    return false;
}

namespace {

// One word of a list of symbols; `among`: there are others beside it.
bool isSymbolWord(std::string_view word, bool among) {
    // "Ptotmax": the limit behind a symbol
    for (std::string_view limit : {"max", "min"}) {
        if (word.ends_with(limit) && word.size() > limit.size() + 2) word.remove_suffix(limit.size());
    }
    int letters = 0;
    int lowerRun = 0;
    int longest = 0;
    int length = 0;
    bool capitalOrSign = false;
    for (std::size_t at = 0; at < word.size(); ++length) {
        char32_t const c = standin::text::decodeNext(word, at);
        if (isCjk(c) && c < 0xFF00) return false;
        if (isRelation(c)) return false;
        if (isLatinLetter(c) || isGreek(c)) ++letters;
        bool const lower = c >= U'a' && c <= U'z';
        lowerRun = lower ? lowerRun + 1 : 0;
        longest = std::max(longest, lowerRun);
        if ((c >= U'A' && c <= U'Z') || isGreek(c) || isDigit(c) || c == U'(' || c == U'+' || c == U'-' || c == U'_') capitalOrSign = true;
    }
    if (longest >= 6) return false;  // "Vripple" has six: judged below
    if (letters > 12) return false;
    if (letters >= 4 && !capitalOrSign) return false;
    if (longest == length && length >= 4) return false;
    // "Output", "Rise": a capital and lower case only, of word length
    bool const capitalised = longest >= 3 && longest + 1 == length && standin::text::isAsciiUpper(word.front());
    if (capitalised && among) return false;
    if (capitalised && longest >= 4) {
        constexpr std::string_view kLeads = "VITRCLPQEFGS";
        constexpr auto kTails = std::to_array<std::string_view>({"start", "hold", "limit", "float", "term", "leak", "drop", "trip", "load", "line", "noise"});
        bool const known = std::ranges::find(kTails, word.substr(1)) != kTails.end();
        if (!known || kLeads.find(word.front()) == std::string_view::npos) return false;
    }
    return true;
}

}  // namespace

bool isSymbolLike(std::string_view raw) {
    std::string const text = trimmed(raw);
    if (text.empty() || text.size() > 40) return false;
    std::size_t behindFirst = 0;
    char32_t const first = standin::text::decodeNext(text, behindFirst);
    if (!isLatinLetter(first) && !isGreek(first) && first != U'%' && first != U'|') return false;
    std::vector<std::string> const words = splitAtSpaces(text);
    if (words.size() > 5) return false;
    return std::ranges::all_of(words, [&](std::string const& word) { return isSymbolWord(word, words.size() > 1); });
}

bool isUnitLike(std::string_view raw) {
    if (raw.empty() || raw.size() > 32) return false;
    std::string text = withoutSpaces(folded(raw));
    if (text.empty() || text.size() > 24) return false;
    if (text.front() == '(' && text.back() == ')') text = text.substr(1, text.size() - 2);
    if (text.front() == '[' && text.back() == ']') text = text.substr(1, text.size() - 2);
    // both Omegas and both mus compare alike after folding by hand
    if (!standin::text::isAscii(text)) {
        for (auto const& [from, to] : {std::pair<std::string_view, std::string_view>{"Ω", "ω"}, {"µ", "μ"}, {"Ω", "ω"}}) {
            for (std::size_t at = text.find(from); at != std::string::npos; at = text.find(from, at + to.size())) text.replace(at, from.size(), to);
        }
    }
    if (isUnitFactor(text)) return true;
    std::size_t at = 0;
    int factors = 0;
    while (at <= text.size()) {
        std::size_t const slash = text.find('/', at);
        std::size_t const dot = std::min(text.find("·", at), text.find('*', at));
        std::size_t const end = std::min({slash, dot, text.size()});
        std::string_view factor = std::string_view(text).substr(at, end - at);
        if (factor.starts_with("√")) factor.remove_prefix(std::string_view("√").size());
        if (factor.starts_with("rt")) factor.remove_prefix(2);
        if (factor.starts_with("(") && factor.ends_with(")")) factor = factor.substr(1, factor.size() - 2);
        if (factor.size() == text.size() || !isUnitFactor(factor)) return false;  // the whole is none
        ++factors;
        if (end == text.size()) break;
        at = end + (end == slash ? 1 : text[end] == '*' ? 1 : std::string_view("·").size());
    }
    return factors > 0 && !(text[0] >= '0' && text[0] <= '9');
}

bool hasRelation(std::string_view text) {
    for (std::size_t at = 0; at < text.size();) {
        bool const first = at == 0;
        if (isRelation(standin::text::decodeNext(text, at)) && !first) return true;
    }
    return false;
}

bool isConditionLike(std::string_view raw) {
    if (hasRelation(raw)) return true;
    if (raw.size() < 3) return false;
    std::string const text = folded(raw);
    if (text.starts_with("@")) return true;
    // test models of electrostatic discharge, and set states
    for (std::string_view lead :
         {"human body", "human-body", "charged device", "charged-device", "machine model", "hbm", "cdm", "steady state", "steady-state", "free air", "still air"}) {
        if (text.starts_with(lead)) return true;
    }
    if (contains(text, "unless otherwise") || contains(text, "otherwise noted") || contains(text, "otherwise specified") || contains(text, "sofern nicht") ||
        contains(text, "over temperature") || contains(text, "temperature range (")) {
        return true;
    }
    return !standin::text::isAscii(text) && (contains(text, "除非") || contains(text, "特に") || contains(text, "如无") || contains(text, "若无") || contains(text, "если не"));
}

bool isPackageLike(std::string_view raw) {
    std::string const text = trimmed(raw);
    if (text.size() < 3 || text.size() > 24) return false;
    for (std::string_view root : kPackageRoots) {
        for (std::size_t at = text.find(root); at != std::string::npos; at = text.find(root, at + 1)) {
            bool const opens = at == 0 || !(text[at - 1] >= 'A' && text[at - 1] <= 'Z');
            std::size_t const end = at + root.size();
            bool const closes = end == text.size() || text[end] == '-' || text[end] == ' ' || (text[end] >= '0' && text[end] <= '9') || text[end] == ')';
            bool const bare = end == text.size() && root.size() < 3;
            if (opens && closes && !bare) return true;
        }
    }
    std::string const low = folded(text);
    return (low.starts_with("case ") && hasDigit(low)) || low.ends_with(" package") || low.starts_with("封装");
}

bool isPartLike(std::string_view raw) {
    if (raw.size() < 2 || raw.size() > 120) return false;
    std::string text = trimmed(tidied(raw));
    if (text.starts_with("for ") && hasDigit(text)) text = trimmed(std::string_view(text).substr(4));  // "for XX78C"
    if (text.size() < 2 || text.size() > 90) return false;
    std::string const low = folded(text);
    auto const namesPins = [&] { return low.find(" pin") != std::string::npos || low.find(" terminal") != std::string::npos; };
    if ((low.starts_with("all other") && !namesPins()) || low == "all types" || low == "all devices" || low == "all versions") return true;
    for (std::string_view ending : kVariantEndings) {
        if (low.ends_with(ending) && low.size() > ending.size() && low.size() <= ending.size() + 26 && !hasRelation(text) &&
            (hasDigit(low) || low.starts_with("for ") || standin::text::codePointCount(low) <= ending.size() + 3)) {
            return true;
        }
    }
    if (std::ranges::count_if(text, standin::text::isAsciiDigit) < kFewestPartDigits) return false;
    int parts = 0;
    std::size_t at = 0;
    std::string const list = text;
    auto isSeparator = [](char c) { return c == ' ' || c == ',' || c == '/' || c == ';' || c == '(' || c == ')'; };
    while (at < list.size()) {
        while (at < list.size() && isSeparator(list[at])) ++at;
        std::size_t end = at;
        while (end < list.size() && !isSeparator(list[end])) ++end;
        if (end == at) break;
        std::string const word = list.substr(at, end - at);
        at = end;
        if (word == "and" || word == "or" || word == "&") continue;
        std::u32string const codes = decoded(word);
        bool const quote = codes[0] == U'\'' || codes[0] == U'\u2018' || codes[0] == U'\u2019';
        int capitals = 0;
        int digits = 0;
        int other = 0;
        std::size_t leading = 0;
        for (std::size_t i = quote ? 1 : 0; i < codes.size(); ++i) {
            char32_t const c = codes[i];
            if (c >= U'A' && c <= U'Z') {
                ++capitals;
                if (digits == 0) ++leading;
            } else if (isDigit(c)) {
                ++digits;
            } else if (c >= U'a' && c <= U'z') {
                ++other;
            } else if (c != U'-' && c != U'#' && c != U'.' && c != U'x' && c != U'+' && c != U'_') {
                return false;
            }
        }
        bool const part = quote ? digits >= kFewestPartDigits && other == 0
                                : digits >= kFewestPartDigits &&
                                      (leading >= 2 || (other >= 1 && other <= 3 && digits >= 3 && leading == 0) || (leading == 1 && digits >= 3) ||
                                       (capitals >= 1 && digits >= 3 && isDigit(codes[0]) && codes.size() >= 6)) &&
                                      other <= 3;
        if (!part) {
            // a suffix form behind a part ("DR2G", "A") or a single letter grade
            if (parts > 0 && capitals > 0 && other == 0 && codes.size() <= 5) continue;
            return false;
        }
        if (isPackageLike(word) || isUnitLike(word)) return false;
        ++parts;
    }
    return parts > 0;
}

bool isNumberLike(std::string_view raw) {
    std::string const text = trimmed(raw);
    std::u32string const codes = decoded(text);
    std::size_t i = 0;
    auto skip = [&](std::u32string_view set) {
        while (i < codes.size() && set.find(codes[i]) != std::u32string_view::npos) ++i;
    };
    skip(U"+-±<>≤≥~≈= ");
    std::size_t const start = i;
    while (i < codes.size() && (isDigit(codes[i]) || codes[i] == U'.' || codes[i] == U',')) ++i;
    if (i == start) return false;
    // tolerance, percent, exponent
    while (i < codes.size()) {
        char32_t const c = codes[i];
        if (isDigit(c) || c == U'.' || c == U' ' || c == U'±' || c == U'%' || c == U'^' || c == U'-' || c == U'+' || c == U'x' || c == U'×' || c == U'E' || c == U'e') {
            ++i;
        } else {
            return false;
        }
    }
    return true;
}

}  // namespace standin::parameters

// A name is a family from the table below at the start of a word, then, with
// blanks, hyphens, dots and brackets skipped, its lead count. Old synonyms that
// hide the count in the name ("SOT-25" has 5 leads, not 25) are whole entries.
// Names are not dimensions: families that share a body only by custom (thin,
// very thin, exposed pad) stay apart. Tested by
// tests/extractors/packages/package_names_test.cpp.
#include "extractors/packages/package_names.h"

#include <algorithm>
#include <array>

#include <fmt/format.h>

#include "text/utf8.h"

namespace standin::packages {

namespace {

enum class Count : std::uint8_t {
    Fixed,     // the name is whole; a count behind it must be the same
    Optional,  // a count behind it makes another package ("SOT-89-5")
    Required,  // nothing without a count ("SOIC-8")
};

struct Family {
    std::string_view name;       // capitals and digits only, as it is looked for
    std::string_view canonical;
    Count count = Count::Fixed;
    int pins = 0;  // of the name without a count; 0: not known
};

// Longer names before their own beginnings.
constexpr std::array kFamilies{
    // small outline transistors
    Family{"TSOT26", "TSOT-23-6", Count::Fixed, 6}, Family{"TSOT25", "TSOT-23-5", Count::Fixed, 5}, Family{"TSOT23", "TSOT-23", Count::Optional, 3},
    Family{"SOT25", "SOT-23-5", Count::Fixed, 5}, Family{"SOT26", "SOT-23-6", Count::Fixed, 6}, Family{"SOT28", "SOT-23-8", Count::Fixed, 8},
    Family{"SOT753", "SOT-23-5", Count::Fixed, 5}, Family{"SOT457", "SOT-23-6", Count::Fixed, 6}, Family{"SOT23", "SOT-23", Count::Optional, 3},
    Family{"SC74A", "SOT-23-5", Count::Fixed, 5}, Family{"SC74", "SOT-23-6", Count::Fixed, 6}, Family{"SC59", "SC-59", Count::Fixed, 3},
    Family{"SOT346", "SC-59", Count::Fixed, 3}, Family{"TO236", "SOT-23", Count::Fixed, 3}, Family{"MO178AA", "SOT-23-5", Count::Fixed, 5},
    Family{"MO178AB", "SOT-23-6", Count::Fixed, 6}, Family{"SOT323", "SC-70", Count::Optional, 3}, Family{"SOT353", "SC-70-5", Count::Fixed, 5},
    Family{"SOT363", "SC-70-6", Count::Fixed, 6}, Family{"SC88A", "SC-70-5", Count::Fixed, 5}, Family{"SC88", "SC-70-6", Count::Fixed, 6},
    Family{"SC70", "SC-70", Count::Optional, 3}, Family{"SOT343", "SC-82AB", Count::Fixed, 4}, Family{"SC82", "SC-82AB", Count::Fixed, 4},
    Family{"SOT143", "SOT-143", Count::Fixed, 4}, Family{"TO253", "SOT-143", Count::Fixed, 4}, Family{"SOT553", "SOT-553", Count::Fixed, 5},
    Family{"SOT665", "SOT-553", Count::Fixed, 5}, Family{"SOT563", "SOT-563", Count::Fixed, 6}, Family{"SOT666", "SOT-563", Count::Fixed, 6},
    Family{"SOT523", "SOT-523", Count::Fixed, 3}, Family{"SOT723", "SOT-723", Count::Fixed, 3}, Family{"SOT89", "SOT-89", Count::Optional, 3},
    Family{"SC62", "SOT-89", Count::Fixed, 3}, Family{"TO243", "SOT-89", Count::Fixed, 3}, Family{"SOT223", "SOT-223", Count::Optional, 3},
    Family{"TO261", "SOT-223", Count::Fixed, 3}, Family{"SC73", "SOT-223", Count::Fixed, 3},
    // small outline circuits
    Family{"HTSSOP", "HTSSOP", Count::Required}, Family{"TSSOP", "TSSOP", Count::Required}, Family{"VSSOP", "VSSOP", Count::Required},
    Family{"HVSSOP", "HVSSOP", Count::Required}, Family{"QSOP", "QSOP", Count::Required}, Family{"SSOP", "SSOP", Count::Required},
    Family{"HMSOP", "HMSOP", Count::Required}, Family{"EMSOP", "HMSOP", Count::Required}, Family{"MSOP", "MSOP", Count::Required},
    Family{"USOP", "MSOP", Count::Required}, Family{"TSOP", "TSOP", Count::Required}, Family{"ESOP", "HSOP", Count::Required},
    Family{"HSOP", "HSOP", Count::Required}, Family{"HSOIC", "HSOP", Count::Required}, Family{"SOIC", "SO", Count::Required},
    Family{"SOP", "SO", Count::Required}, Family{"SO", "SO", Count::Required}, Family{"DMP", "DMP", Count::Required},
    // through hole
    Family{"CERDIP", "CDIP", Count::Required}, Family{"CDIP", "CDIP", Count::Required}, Family{"PDIP", "DIP", Count::Required},
    Family{"SDIP", "SDIP", Count::Required}, Family{"DIP", "DIP", Count::Required}, Family{"DIL", "DIP", Count::Required},
    Family{"TO92", "TO-92", Count::Optional, 3}, Family{"SC43", "TO-92", Count::Fixed, 3}, Family{"TO226", "TO-92", Count::Fixed, 3},
    Family{"TO220FP", "TO-220F", Count::Optional, 3}, Family{"TO220FM", "TO-220F", Count::Optional, 3}, Family{"TO220F", "TO-220F", Count::Optional, 3},
    Family{"TO220AB", "TO-220", Count::Optional, 3}, Family{"TO220", "TO-220", Count::Optional, 3}, Family{"SC46", "TO-220", Count::Fixed, 3},
    Family{"TO247", "TO-247", Count::Optional, 3}, Family{"TO126", "TO-126", Count::Fixed, 3}, Family{"TO202", "TO-202", Count::Fixed, 3},
    Family{"TO251", "TO-251", Count::Fixed, 3}, Family{"IPAK", "TO-251", Count::Fixed, 3}, Family{"TO18", "TO-18", Count::Fixed},
    Family{"TO39", "TO-39", Count::Fixed}, Family{"TO3P", "TO-3P", Count::Fixed, 3}, Family{"TO3", "TO-3", Count::Fixed},
    // power, surface mount
    Family{"TO252", "TO-252", Count::Optional, 3}, Family{"DPAK", "TO-252", Count::Fixed, 3}, Family{"TO263", "TO-263", Count::Optional, 3},
    Family{"D2PAK", "TO-263", Count::Fixed, 3}, Family{"DDPAK", "TO-263", Count::Fixed, 3}, Family{"SMA", "SMA", Count::Fixed, 2},
    Family{"SMB", "SMB", Count::Fixed, 2}, Family{"SMC", "SMC", Count::Fixed, 2}, Family{"SOD123", "SOD-123", Count::Fixed, 2},
    Family{"SOD323", "SOD-323", Count::Fixed, 2}, Family{"SOD523", "SOD-523", Count::Fixed, 2},
    // no leads, arrays, square
    Family{"DHVQFN", "DHVQFN", Count::Required}, Family{"HVQFN", "HVQFN", Count::Required}, Family{"VQFN", "VQFN", Count::Required},
    Family{"WQFN", "WQFN", Count::Required}, Family{"UQFN", "UQFN", Count::Required}, Family{"TQFN", "TQFN", Count::Required},
    Family{"QFN", "QFN", Count::Required}, Family{"MLF", "QFN", Count::Required}, Family{"X2DFN", "X2DFN", Count::Required},
    Family{"UDFN", "UDFN", Count::Required}, Family{"TDFN", "TDFN", Count::Required}, Family{"WDFN", "WDFN", Count::Required},
    Family{"DFN", "DFN", Count::Required}, Family{"WSON", "WSON", Count::Required}, Family{"VSON", "VSON", Count::Required},
    Family{"USON", "USON", Count::Required}, Family{"X2SON", "X2SON", Count::Required}, Family{"SON", "SON", Count::Required},
    Family{"WLCSP", "WLCSP", Count::Optional}, Family{"DSBGA", "WLCSP", Count::Optional}, Family{"LQFP", "LQFP", Count::Required},
    Family{"TQFP", "TQFP", Count::Required}, Family{"QFP", "QFP", Count::Required}, Family{"PLCC", "PLCC", Count::Required},
    Family{"LCCC", "LCCC", Count::Required}, Family{"BGA", "BGA", Count::Required},
};

constexpr int kMostLeads = 400;

// The families of one first letter as a chain in the order of the table: first of
// each letter, and the next one behind each family; -1 ends it.
struct FamilyChains {
    std::array<int, 26> first{};
    std::array<int, std::size(kFamilies)> next{};
};

constexpr FamilyChains kChains = [] {
    FamilyChains chains;
    for (int& first : chains.first) first = -1;
    for (std::size_t i = std::size(kFamilies); i-- > 0;) {
        int& first = chains.first[static_cast<std::size_t>(kFamilies[i].name.front() - 'A')];
        chains.next[i] = first;
        first = static_cast<int>(i);
    }
    return chains;
}();

bool isAlnum(char c) { return text::isAsciiLetter(c) || text::isAsciiDigit(c) || static_cast<unsigned char>(c) >= 0x80; }
char upper(char c) { return text::isAsciiLower(c) ? static_cast<char>(c - 'a' + 'A') : c; }
bool isJoint(char c) { return c == '-' || c == ' ' || c == '.' || c == '_'; }

// Length of the dash or small sign at `at` that may stand inside a name, else 0.
std::size_t jointAt(std::string_view text, std::size_t at) {
    if (at >= text.size()) return 0;
    if (isJoint(text[at])) return 1;
    for (std::string_view const dash : {"\u2010", "\u2011", "\u2012", "\u2013", "\u2212", "\uFF0D", "\u00A0"}) {
        if (text.substr(at).starts_with(dash)) return dash.size();
    }
    return 0;
}

// End of `family` at `at`, joints between letters and digits skipped; npos: no.
// Families that are small words ("to 3 V", "so 8 of them") need capitals and no
// blank alone before their number.
std::size_t matchFamily(std::string_view text, std::size_t at, std::string_view family) {
    constexpr auto kNo = std::string_view::npos;
    bool const isWord = family.starts_with("TO") || family.starts_with("SC") || family == "SO" || family == "SON";
    for (std::size_t i = 0; i < family.size(); ++i) {
        if (i > 0 && text::isAsciiDigit(family[i]) != text::isAsciiDigit(family[i - 1])) {
            bool blank = false;
            int joints = 0;
            for (; joints < 3; ++joints) {  // "SOT - 23"
                auto const joint = jointAt(text, at);
                if (joint == 0) break;
                blank = blank || text[at] == ' ';
                at += joint;
            }
            if (isWord && blank && joints == 1) return kNo;
        }
        if (at >= text.size() || (isWord ? text[at] : upper(text[at])) != family[i]) return kNo;
        ++at;
    }
    return at;
}

struct Leads {
    int count = 0;
    std::size_t end = 0;
};

// A lead count at `at`: "8", "-8", " (8)", "-5L", "08".
std::optional<Leads> leadsBehind(std::string_view text, std::size_t at) {
    bool bracket = false;
    for (int joints = 0; joints < 3; ++joints) {
        if (at < text.size() && text[at] == '(' && !bracket) {
            bracket = true;
            ++at;
            continue;
        }
        auto const joint = jointAt(text, at);
        if (joint == 0) break;
        at += joint;
    }
    int count = 0;
    std::size_t const first = at;
    while (at < text.size() && text::isAsciiDigit(text[at]) && count < kMostLeads) count = count * 10 + (text[at++] - '0');
    if (at == first || count == 0 || count > kMostLeads) return std::nullopt;
    if (at < text.size() && (text[at] == '.' || text[at] == 'x' || text[at] == 'X') && at + 1 < text.size() && text::isAsciiDigit(text[at + 1])) return std::nullopt;  // "DFN 2x2", "3.0"
    if (at < text.size() && upper(text[at]) == 'L' && (at + 1 >= text.size() || !isAlnum(text[at + 1]))) ++at;
    if (at < text.size() && isAlnum(text[at])) return std::nullopt;
    if (bracket) {
        if (at >= text.size() || text[at] != ')') return std::nullopt;
        ++at;
    }
    return Leads{count, at};
}

// "8-lead ", "14-pin ", "8L " that ends right before `at`; where it starts.
std::optional<Leads> leadsBefore(std::string_view text, std::size_t at) {
    while (at > 0 && isJoint(text[at - 1])) --at;
    std::size_t const wordEnd = at;
    while (at > 0 && text::isAsciiLetter(text[at - 1])) --at;
    auto const word = text::asciiLower(text.substr(at, wordEnd - at));
    if (word != "lead" && word != "leads" && word != "pin" && word != "pins" && word != "ld" && word != "l" && word != "p") return std::nullopt;
    while (at > 0 && isJoint(text[at - 1])) --at;
    std::size_t const digitsEnd = at;
    while (at > 0 && text::isAsciiDigit(text[at - 1])) --at;
    if (at == digitsEnd || digitsEnd - at > 3 || (at > 0 && isAlnum(text[at - 1]))) return std::nullopt;
    int count = 0;
    for (std::size_t i = at; i < digitsEnd; ++i) count = count * 10 + (text[i] - '0');
    if (count == 0) return std::nullopt;
    return Leads{count, at};
}

// Whether the first two characters fit; digits may stand behind joints.
bool mayBe(Family const& family, std::string_view text, std::size_t at) {
    char const second = family.name[1];
    return !text::isAsciiLetter(second) || (at + 1 < text.size() && upper(text[at + 1]) == second);
}

std::optional<PackageName> nameAt(std::string_view text, std::size_t at, Family const& family) {
    auto const end = matchFamily(text, at, family.name);
    if (end == std::string_view::npos) return std::nullopt;
    PackageName found{at, end, std::string(family.canonical), std::nullopt};
    if (family.pins > 0) found.pins = family.pins;
    auto const leads = leadsBehind(text, end);
    if (family.count == Count::Required) {
        if (leads) {
            found.end = leads->end;
            found.pins = leads->count;
        } else if (auto const before = leadsBefore(text, at); before && (end >= text.size() || !isAlnum(text[end]))) {
            found.begin = before->end;
            found.pins = before->count;
        } else {
            return std::nullopt;
        }
        if (*found.pins < 2) return std::nullopt;
        found.canonical = fmt::format("{}-{}", family.canonical, *found.pins);
        return found;
    }
    if (end < text.size() && text::isAsciiDigit(text[end]) && text::isAsciiDigit(family.name.back())) return std::nullopt;  // "SOT2301": another name
    // "TO-236AB", "SOT-23L" are the same; other letters ("SOT-23R") make another package.
    if (end < text.size() && text::isAsciiLetter(text[end])) {
        std::size_t last = end;
        while (last < text.size() && isAlnum(text[last]) && static_cast<unsigned char>(text[last]) < 0x80) ++last;
        auto const suffix = text.substr(end, last - end);
        constexpr std::array<std::string_view, 6> kSame{"AA", "AB", "AC", "AD", "L", "l"};
        if (std::find(kSame.begin(), kSame.end(), suffix) == kSame.end()) return std::nullopt;
        found.end = last;
    }
    if (leads && leads->count >= 2 && leads->count <= 16) {
        found.end = leads->end;
        if (family.count == Count::Optional) {
            // "SOT-23-3" is named apart: makers use it for a wider body.
            found.canonical = leads->count == family.pins && family.canonical != "SOT-23" ? std::string(family.canonical) : fmt::format("{}-{}", family.canonical, leads->count);
            found.pins = leads->count;
        }
    }
    return found;
}

}  // namespace

namespace {

// The first true answer of `ask(at, family)` over the words that a family's name may begin, from left to right.
template <class Ask>
auto firstOf(std::string_view text, Ask const& ask) {
    bool inWord = false;
    for (std::size_t at = 0; at < text.size(); ++at) {
        bool const starts = !inWord;
        inWord = text::isAsciiLetter(text[at]) || text::isAsciiDigit(text[at]);
        if (!starts || !text::isAsciiLetter(text[at])) continue;
        for (int index = kChains.first[static_cast<std::size_t>(upper(text[at]) - 'A')]; index >= 0; index = kChains.next[static_cast<std::size_t>(index)]) {
            Family const& family = kFamilies[static_cast<std::size_t>(index)];
            if (!mayBe(family, text, at)) continue;
            if (auto answer = ask(at, family)) return answer;
        }
    }
    return decltype(ask(std::size_t{}, kFamilies.front())){};
}

}  // namespace

std::optional<PackageName> findPackageName(std::string_view text) {
    return firstOf(text, [&](std::size_t at, Family const& family) { return nameAt(text, at, family); });
}

bool mayBeginPackageName(std::string_view word, std::string_view next) {
    if (firstOf(word, [](std::size_t, Family const&) { return true; })) return true;
    // "8-lead", "14 pin", "8L": a digit, and the "l" or "p" of the word for leads, joints between them.
    if (std::none_of(word.begin(), word.end(), text::isAsciiDigit)) return false;
    return word.find_first_of("lLpP") != std::string_view::npos || (!next.empty() && (isJoint(next.front()) || upper(next.front()) == 'L' || upper(next.front()) == 'P'));
}

}  // namespace standin::packages

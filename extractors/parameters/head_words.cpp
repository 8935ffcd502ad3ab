#include "extractors/parameters/head_words.h"

// The title is folded, stripped of marks and brackets, then looked up whole
// (spaces don't count: "uni ts" reads "units", "m i n" reads "min");
// if that fails, its words are looked up one by one and the first known word
// of a bilingual or longer title decides. Tested by
// tests/extractors/parameters/head_words_test.cpp.

#include <algorithm>
#include <array>
#include <optional>
#include <string>

#include "extractors/parameters/text_forms.h"
#include "text/utf8.h"
#include "vocabulary/column_titles.h"

namespace standin::parameters {

namespace {

using enum ColumnRole;

constexpr std::size_t kMostPieces = 5;     // words of a title; words of Latin letters and CJK run together count apart
constexpr std::size_t kLongestTitle = 96;  // bytes; longer text is no title

ColumnRole roleOf(vocabulary::ColumnTitle title) {
    using T = vocabulary::ColumnTitle;
    switch (title) {
        case T::Parameter:
        case T::Description: return Name;
        case T::Symbol: return Symbol;
        case T::Conditions: return Condition;
        case T::Min: return Min;
        case T::Typ: return Typ;
        case T::Max: return Max;
        case T::Value: return Value;
        case T::Unit: return Unit;
        case T::Note: return Note;
        case T::TestCircuit:
        case T::ItemNumber: return Ignored;
        case T::Pin: return Pin;
        case T::Name: return PinName;
        case T::Package: return Package;
        case T::Type:
        case T::PartNumber:
        case T::Marking: return Part;
        case T::PinType:
        case T::Date:
        case T::Revision:
        case T::None: break;
    }
    return Unknown;
}

// `words`: folded
std::optional<ColumnRole> lookup(std::string_view words) {
    std::string const key = vocabulary::columnTitleKey(words);
    if (key == "说明") return Note;    // describes a pin, but beside values it remarks
    if (key == "range") return Value;  // alone; on a page it is more often the last line of a longer title
    ColumnRole const role = roleOf(vocabulary::columnTitleOf(key));
    return role != Unknown ? std::optional(role) : std::nullopt;
}

// Folded, without brackets and what is in them, marks and punctuation.
std::string bareTitle(std::string_view title) {
    std::string const low = folded(title);
    std::string out;
    int depth = 0;
    for (char c : low) {
        if (c == '(' || c == '[') {
            ++depth;
            out.push_back(' ');
        } else if (c == ')' || c == ']') {
            if (depth > 0) --depth;
        } else if (depth == 0 && c != '.' && c != ':' && c != '*' && c != ',') {
            out.push_back(c);
        }
    }
    out = tidied(out);
    return out;
}

bool hasLetterAndDigit(std::string_view title) {
    bool letter = false;
    bool digit = false;
    for (char c : title) {
        letter = letter || (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z');
        digit = digit || (c >= '0' && c <= '9');
    }
    return letter && digit;
}

// Titles broken by a hyphen in a narrow column: "tempera- ture" reads "temperature".
std::string closedHyphens(std::string text) {
    for (std::size_t at = text.find("- ", 1); at != std::string::npos; at = text.find("- ", at)) {
        bool const letters = text[at - 1] != ' ' && at + 2 < text.size() && text[at + 2] != '-';
        if (!letters) {
            ++at;
            continue;
        }
        text.erase(at, 2);
    }
    return text;
}

}  // namespace

std::string_view wayOf(std::string_view title) {
    std::string const bare = bareTitle(title);
    if (bare == "from" || bare == "from input") return "from";
    if (bare == "to" || bare == "to output") return "to";
    return {};
}

ColumnRole columnRoleOf(std::string_view title) {
    if (title.empty() || title.size() > kLongestTitle) return Unknown;
    std::string bare = closedHyphens(bareTitle(title));
    if (bare.empty()) {
        // a title that is bracketed as a whole
        bare = folded(title);
        std::erase_if(bare, [](char c) { return c == '(' || c == ')' || c == '[' || c == ']' || c == '.'; });
        bare = trimmed(bare);
    }
    if (bare.empty()) return Unknown;
    if (std::optional<ColumnRole> const role = lookup(bare)) return *role;
    if (!wayOf(bare).empty()) return Condition;
    std::vector<std::string> words = splitAtSpaces(bare);
    if (words.size() > kMostPieces) return Unknown;
    // CJK and Latin run together ("参数parameter"): split at the change of script
    std::vector<std::string> pieces;
    for (std::string const& word : words) {
        if (standin::text::isAscii(word)) {
            pieces.push_back(word);
            continue;
        }
        std::string piece;
        bool cjk = false;
        for (char32_t c : decoded(word)) {
            bool const now = isCjk(c);
            if (!piece.empty() && now != cjk) {
                pieces.push_back(piece);
                piece.clear();
            }
            cjk = now;
            append(piece, c);
        }
        if (!piece.empty()) pieces.push_back(piece);
    }
    if (pieces.size() > kMostPieces) return Unknown;
    if (pieces.back() == "formula" || pieces.back() == "equation") return Note;  // "Typical extrapolation formula"
    // "Температура, Tj": what the values hold at
    constexpr std::array kTemperature = {"temperature", "температура", "temperatur", "温度", "溫度"};
    if (pieces.size() <= 2 && std::ranges::find(kTemperature, std::string_view(pieces.front())) != kTemperature.end() && (pieces.size() == 1 || pieces[1].size() <= 6)) {
        return Condition;
    }
    // the longest run of neighbouring words that is known, shorter than the whole
    for (std::size_t length = pieces.size() - 1; length >= 1; --length) {
        for (std::size_t at = 0; at + length <= pieces.size(); ++at) {
            std::string run = pieces[at];
            for (std::size_t k = 1; k < length; ++k) run = joined(run, pieces[at + k]);
            std::optional<ColumnRole> const role = lookup(run);
            if (!role) continue;
            // one known word beside unknown Latin words says little ("Test pin voltage", "no load")
            std::size_t const unknown = pieces.size() - length;
            bool const limit = *role == Min || *role == Typ || *role == Max || *role == Unit || *role == Symbol || *role == Condition || *role == Name;
            if (unknown >= 1 && !limit) continue;
            if (unknown > 2) continue;
            return *role;
        }
    }
    return Unknown;
}

bool isNeutralGroupTitle(std::string_view title) {
    std::string const bare = bareTitle(title);
    if (bare.empty()) return !hasLetterAndDigit(title);  // "(V)", but not "(SOT-223)"
    ColumnRole const role = columnRoleOf(title);
    if (role == Value || role == Unit) return true;
    constexpr std::array kNeutral = {"specification", "specifications", "electrical characteristics", "limits", "performance", "spec limits", "min/typ/max", "value/unit", "规格", "参数值", "参数范围", "characteristics", "ratings", "数值", "max ratings", "величина", "норма параметра"};
    return std::ranges::any_of(kNeutral, [&](std::string_view neutral) { return neutral == bare; });
}

}  // namespace standin::parameters

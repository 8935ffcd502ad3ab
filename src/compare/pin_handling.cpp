// Tested by tests/src/compare/pin_handling_test.cpp.
#include "compare/pin_handling.h"

#include <algorithm>
#include <array>
#include <set>
#include <string>

#include "compare/node_names.h"
#include "compare/wording_tokens.h"
#include "text/fold.h"
#include "text/utf8.h"

namespace standin::compare {

namespace {

enum class Tie : std::uint8_t { Unsaid, Open, Tied, Either };
enum class Level : std::uint8_t { Unsaid, High, Low };
enum class Form : std::uint8_t { Unsaid, OpenDrain, Driven };

struct Handling {
    Tie tie = Tie::Unsaid;
    std::set<std::string> supplies;  // that it is tied to
    Level level = Level::Unsaid;
    Form form = Form::Unsaid;
};

bool saysOneOf(std::string_view text, std::initializer_list<std::string_view> phrases) {
    return std::any_of(phrases.begin(), phrases.end(), [text](std::string_view phrase) { return text.find(phrase) != std::string_view::npos; });
}

// Does the pin do nothing by itself, so that only its handling tells what is to be done?
bool isIdle(std::string_view name) {
    std::string const key = nodeKey(name);
    return key == "not-connected" || key == "do-not-connect" || key == "test" || isPad(name);
}

Tie tieOfClause(std::string_view clause) {
    ReadSentence const read = readSentence(clause, {}, {});
    bool const unconnected = saysOneOf(clause, {"do not connect", "请勿连接", "接続しない"});
    bool const open = read.has(Meaning::LeftOpen) || unconnected;
    bool const tied = read.has(Meaning::Tied);
    bool const choice = read.has(Meaning::Permission) || read.has(Meaning::Ability) || read.has(Meaning::Permitted) || read.has(Meaning::Optional);
    if (!unconnected && open != tied && (read.has(Meaning::Prohibition) || read.has(Meaning::Not))) return open ? Tie::Tied : Tie::Open;
    if (tied && (open || choice)) return Tie::Either;
    return open ? Tie::Open : tied ? Tie::Tied : Tie::Unsaid;
}

// "Connect to VSS; do not leave open" says one thing twice.
Tie tieOf(std::string_view lower) {
    Tie said = Tie::Unsaid;
    for (std::string_view rest = lower; !rest.empty();) {
        std::string_view const clause = rest.substr(0, rest.find_first_of(".;,"));
        rest.remove_prefix(std::min(rest.size(), clause.size() + 1));
        Tie const tie = tieOfClause(clause);
        if (tie == Tie::Unsaid) continue;
        said = said == Tie::Unsaid || said == tie ? tie : Tie::Either;
    }
    return said;
}

std::set<std::string> suppliesIn(ReadSentence const& read) {
    std::set<std::string> supplies;
    for (Token const& token : read.tokens) {
        bool const ground = token.kind == Token::Kind::Word && token.key == "ground";
        std::string const key = ground ? nodeKey("GND") : token.kind == Token::Kind::Pin ? nodeKey(token.key) : std::string();
        if (key == "supply-plus" || key == "supply-minus" || key == "pack-minus" || key == "pack-plus") supplies.insert(key);
    }
    return supplies;
}

Handling handlingOf(std::string_view printed) {
    std::size_t const bar = printed.find(" | ");
    std::string_view const name = printed.substr(0, bar);
    std::string_view const function = bar == std::string_view::npos ? std::string_view() : printed.substr(bar + 3);
    Handling handling;
    if (function.empty()) return handling;
    ReadSentence const read = readSentence(function, {}, {});
    std::string lower = text::lowerCase(text::foldForComparison(function));
    std::replace(lower.begin(), lower.end(), '-', ' ');
    if (isIdle(name)) {
        handling.tie = tieOf(lower);
        if (handling.tie == Tie::Tied || handling.tie == Tie::Either) handling.supplies = suppliesIn(read);
    }
    bool const high = saysOneOf(lower, {"active high", "high active", "高电平有效", "アクティブハイ"});
    bool const low = saysOneOf(lower, {"active low", "low active", "低电平有效", "アクティブロー"});
    if (high != low) handling.level = high ? Level::High : Level::Low;
    bool const drain = read.has(Meaning::OpenDrain);
    bool const driven = read.has(Meaning::Cmos) || read.has(Meaning::PushPull);
    if (drain != driven) handling.form = drain ? Form::OpenDrain : Form::Driven;
    return handling;
}

template <class Said>
bool contradict(Said a, Said b) {
    return a != Said::Unsaid && b != Said::Unsaid && a != b;
}

}  // namespace

bool isPad(std::string_view name) {
    static constexpr auto kPads = std::to_array<std::string_view>({"ep", "epad", "pad", "tab", "dap", "exposedpad", "thermalpad", "powerpad", "exposedthermalpad", "散热焊盘", "裸露焊盘"});
    std::string key = text::asciiLower(text::foldForComparison(name));
    std::erase_if(key, [](char c) { return c == ' ' || c == '-' || c == '_' || c == '(' || c == ')'; });
    return std::find(kPads.begin(), kPads.end(), key) != kPads.end();
}

HandlingChange relateHandling(std::string_view reference, std::string_view candidate) {
    Handling const r = handlingOf(reference);
    Handling const c = handlingOf(candidate);
    bool const other = !r.supplies.empty() && !c.supplies.empty() && r.supplies != c.supplies;
    bool const apart = other && r.supplies.size() == 1 && c.supplies.size() == 1;
    if (apart) return HandlingChange::OtherNode;
    return other || contradict(r.tie, c.tie) || contradict(r.level, c.level) || contradict(r.form, c.form) ? HandlingChange::Differs : HandlingChange::None;
}

}  // namespace standin::compare

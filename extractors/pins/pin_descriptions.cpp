// Each line is searched for "pin" and a number near its begin; what stands in
// front is the name, what follows the function. Tested by
// tests/extractors/pins/pin_descriptions_test.cpp.
#include "extractors/pins/pin_descriptions.h"

#include <algorithm>
#include <array>
#include <optional>
#include <string>

#include "extractors/pins/pin_names.h"
#include "text/utf8.h"

namespace standin::pins {

namespace {

constexpr std::size_t kFewestPins = 3;
constexpr std::array<std::string_view, 7> kPinWords{"Pin", "PIN", "pin", "引脚", "管脚", "Вывод", "вывод"};

// The pin that a line opens: its name (may be empty: a picture), number and what
// follows of the line.
struct Described {
    int number = 0;
    std::string name;
    std::string function;
};

std::optional<Described> describedPin(std::string_view line) {
    // The word within the first words, a number right behind it.
    constexpr std::size_t kLatest = 28;
    std::size_t place = std::string_view::npos;
    std::size_t at = 0;
    for (auto const word : kPinWords) {
        auto const found = line.find(word);
        if (found >= place) continue;
        place = found;
        at = found + word.size();
    }
    if (place > kLatest) return std::nullopt;
    while (at < line.size() && (line[at] == ' ' || line[at] == '#')) ++at;
    std::size_t const digits = at;
    while (at < line.size() && text::isAsciiDigit(line[at]) && at - digits < 3) ++at;
    auto const number = plainNumber(line.substr(digits, at - digits));
    if (!number) return std::nullopt;
    auto before = text::trimmed(line.substr(0, place));
    bool const bracket = before.ends_with('(') || before.ends_with("\uFF08");
    while (!before.empty() && (before.ends_with('(') || before.ends_with("\uFF08"))) before.remove_suffix(before.ends_with('(') ? 1 : 3);
    before = text::trimmed(before);
    auto rest = text::trimmed(line.substr(at));
    if (bracket) {
        if (!rest.starts_with(')') && !rest.starts_with("\uFF09")) return std::nullopt;
        rest.remove_prefix(rest.starts_with(')') ? 1 : 3);
        rest = text::trimmed(rest);
    }
    bool colon = false;
    for (std::string_view const sign : {":", "\uFF1A", "-", "\u2013", "\u2014"}) {
        if (!rest.starts_with(sign)) continue;
        rest.remove_prefix(sign.size());
        colon = true;
        break;
    }
    rest = text::trimmed(rest);
    if (!bracket && !colon && !before.empty()) return std::nullopt;  // "see pin 3 of"
    Described described{*number, std::string(before), std::string(rest)};
    if (!before.empty()) {
        if (!looksLikePinName(before)) return std::nullopt;
        return described;
    }
    if (bracket) return described;
    // "Pin 3 (GND): …", "Pin 3: GND".
    if (rest.starts_with('(')) {
        auto const end = rest.find(')');
        if (end == std::string_view::npos) return std::nullopt;
        described.name = text::trimmed(rest.substr(1, end - 1));
        described.function = text::trimmed(rest.substr(end + 1));
    } else {
        auto const end = std::min(rest.find_first_of(" ,:"), rest.size());
        described.name = rest.substr(0, end);
        described.function = text::trimmed(rest.substr(end));
    }
    for (std::string_view const sign : {":", "-", "\uFF1A", ","}) {
        if (described.function.starts_with(sign)) described.function = text::trimmed(std::string_view(described.function).substr(sign.size()));
    }
    if (!looksLikePinName(described.name)) return std::nullopt;
    return described;
}

}  // namespace

std::vector<model::Pin> pinsOfDescriptions(model::PageLayout const& page) {
    std::vector<model::Pin> pins;
    int largest = 0;
    for (auto const& line : page.lines) {
        if (line.direction != model::Direction::Right || line.wordCount == 0) continue;
        bool ours = true;
        std::string text;
        model::Rect box;
        for (std::uint32_t w = line.firstWord; w < line.firstWord + line.wordCount && text.size() < 400; ++w) {
            auto const& word = page.words[w];
            ours = ours && word.owner != model::Owner::Furniture && word.owner != model::Owner::Parameter;
            if (!text.empty() && word.spaceBefore) text += ' ';
            text += word.text;
            box = model::united(box, word.box);
        }
        if (!ours) continue;
        auto described = describedPin(text);
        if (!described) continue;
        bool const known = std::any_of(pins.begin(), pins.end(), [&](auto const& pin) { return pin.number == std::to_string(described->number); });
        if (known) continue;
        largest = std::max(largest, described->number);
        pins.push_back({std::to_string(described->number), std::move(described->name), std::move(described->function), {}, page.page, box});
    }
    if (pins.size() < kFewestPins || pins.size() * 10 < static_cast<std::size_t>(largest) * 6) return {};
    return pins;
}

}  // namespace standin::pins

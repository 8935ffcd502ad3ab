// Each line is cut into entries where a number opens one ("1.", "2:", "③"); the
// entries of lines that follow each other are chained while they count up. A
// line of several numbers before one name ("1 3 Anode") gives each its name.
// Tested by tests/extractors/pins/pin_lists_test.cpp.
#include "extractors/pins/pin_lists.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <string>

#include "extractors/pins/pin_names.h"
#include "text/utf8.h"

namespace standin::pins {

namespace {

constexpr std::size_t kFewestPins = 3;
constexpr std::uint32_t kMostWords = 24;       // of a line that may list pins
constexpr model::Points kNearFigure = 6;       // font heights
constexpr model::Points kLineDistance = 3.2F;  // font heights between lines of one list

struct Entry {
    int number = 0;
    std::string name;
    model::Rect box;
    bool shared = false;  // one of several numbers before a name
};

// "1." "12)" "3:" or "1.GATE": the number and where the name begins in the word.
struct Opening {
    int number = 0;
    std::size_t nameAt = 0;
};

std::optional<Opening> openingOf(std::string_view word) {
    std::size_t at = 0;
    while (at < word.size() && text::isAsciiDigit(word[at])) ++at;
    if (at > 0 && at <= 2) {
        auto const number = plainNumber(word.substr(0, at));
        if (!number || at >= word.size()) return std::nullopt;
        for (std::string_view const sign : {".", ")", ":", "\uFF0E", "\u3001", "\uFF1A", "\uFF09"}) {
            if (!word.substr(at).starts_with(sign)) continue;
            std::size_t const nameAt = at + sign.size();
            if (nameAt < word.size() && text::isAsciiDigit(word[nameAt])) return std::nullopt;  // "1.5"
            return Opening{*number, nameAt};
        }
        return std::nullopt;
    }
    if (at == 0 && word.size() >= 3 && static_cast<unsigned char>(word[0]) == 0xE2) {  // circled
        std::size_t next = 0;
        (void)text::decodeNext(word, next);
        if (auto const number = plainNumber(word.substr(0, next))) return Opening{*number, next};
    }
    return std::nullopt;
}

class Lists {
public:
    Lists(model::PageLayout const& page, std::span<model::Section const> sections) : m_page(page), m_sections(sections) {}

    std::vector<model::Pin> find() {
        std::vector<model::Pin> pins;
        std::vector<Entry> chain;
        for (auto const& line : m_page.lines) {
            if (line.direction != model::Direction::Right || line.wordCount == 0 || line.wordCount > kMostWords) continue;
            auto entries = entriesOf(line);
            if (entries.empty()) continue;
            if (!goesOn(chain, entries)) {
                close(chain, pins);
                chain.clear();
            }
            chain.insert(chain.end(), entries.begin(), entries.end());
        }
        close(chain, pins);
        return pins;
    }

private:
    [[nodiscard]] static bool goesOn(std::vector<Entry> const& chain, std::vector<Entry> const& entries) {
        if (chain.empty()) return true;
        auto const& last = chain.back();
        auto const& next = entries.front();
        auto const height = std::max(last.box.height(), 1.0F);
        bool const near = next.box.y0 - last.box.y1 < kLineDistance * height && next.box.y1 > last.box.y0 - height &&
                          (model::overlap(last.box.x0, last.box.x1, next.box.x0, next.box.x1) > -2 * height || std::abs(last.box.y0 - next.box.y0) < height);
        if (!near || last.shared != next.shared) return false;
        if (next.shared) return std::none_of(chain.begin(), chain.end(), [&next](auto const& entry) { return entry.number == next.number; });
        return next.number == last.number + 1;
    }

    [[nodiscard]] std::vector<Entry> entriesOf(model::TextLine const& line) const {
        std::vector<Entry> entries;
        std::uint32_t const end = line.firstWord + line.wordCount;
        for (std::uint32_t w = line.firstWord; w < end; ++w) {
            auto const& word = m_page.words[w];
            if (word.owner == model::Owner::Furniture || word.owner == model::Owner::Parameter) return {};
            auto const opening = openingOf(word.text);
            bool const next = opening && (entries.empty() || opening->number == entries.back().number + 1);
            if (next) {
                entries.push_back({opening->number, std::string(text::trimmed(std::string_view(word.text).substr(opening->nameAt))), word.box});
            } else if (!entries.empty()) {
                auto& entry = entries.back();
                if (!entry.name.empty() && word.spaceBefore) entry.name += ' ';
                entry.name += word.text;
                entry.box = model::united(entry.box, word.box);
            } else {
                return sharedEntries(line);
            }
        }
        if (std::any_of(entries.begin(), entries.end(), [](auto const& entry) { return !looksLikePinName(entry.name); })) return {};
        return entries;
    }

    // "1 3 Anode": bare numbers, then one name.
    [[nodiscard]] std::vector<Entry> sharedEntries(model::TextLine const& line) const {
        std::vector<Entry> entries;
        std::string name;
        model::Rect box;
        for (std::uint32_t w = line.firstWord; w < line.firstWord + line.wordCount; ++w) {
            auto const& word = m_page.words[w];
            auto const number = plainNumber(word.text);
            box = model::united(box, word.box);
            if (number && name.empty()) {
                entries.push_back({*number, {}, {}, true});
            } else if (number) {
                return {};
            } else {
                if (!name.empty()) name += ' ';
                name += word.text;
            }
        }
        if (entries.empty() || !looksLikePinName(name)) return {};
        for (auto& entry : entries) {
            entry.name = name;
            entry.box = box;
        }
        return entries;
    }

    void close(std::vector<Entry>& chain, std::vector<model::Pin>& pins) const {
        if (chain.size() < kFewestPins) return;
        std::stable_sort(chain.begin(), chain.end(), [](auto const& a, auto const& b) { return a.number < b.number; });
        for (std::size_t i = 0; i < chain.size(); ++i) {
            if (chain[i].number != static_cast<int>(i) + 1) return;
        }
        model::Rect box;
        for (auto const& entry : chain) box = model::united(box, entry.box);
        if (!aboutPins(box, chain.front().shared)) return;
        for (auto const& entry : chain) pins.push_back({std::to_string(entry.number), entry.name, {}, {}, m_page.page, entry.box});
    }

    [[nodiscard]] bool aboutPins(model::Rect const& box, bool onlyFigures) const {
        auto const height = m_page.bodySize > 0 ? m_page.bodySize : 10;
        auto const around = box.grown(kNearFigure * height);
        bool said = false;
        for (auto const& word : m_page.words) {
            if (!around.intersects(word.box)) continue;
            if (word.owner == model::Owner::Figure && box.grown(height).intersects(word.box)) return true;
            auto const lower = text::asciiLower(word.text);
            bool const isAbove = word.box.y1 <= box.y0 + height && word.box.x0 < box.x1;
            if (isAbove && (lower == "pin" || lower == "pins" || lower == "pinning" || lower == "terminal" || word.text.find("引脚") != std::string::npos || word.text.find("管脚") != std::string::npos)) said = true;
        }
        if (onlyFigures) return nearDrawing(box, height);
        if (said || nearDrawing(box, height)) return true;
        auto const* section = sectionAbove(box);
        return section != nullptr && section->kind == model::SectionKind::Pins;
    }

    [[nodiscard]] bool nearDrawing(model::Rect const& box, model::Points height) const {
        auto const around = box.grown(kNearFigure * height);
        auto const isNear = [&](auto const& drawn) { return drawn.box.intersects(around) && drawn.box.height() > 2 * height && drawn.box.height() < m_page.height / 2; };
        return std::any_of(m_page.drawings.begin(), m_page.drawings.end(), isNear) || std::any_of(m_page.images.begin(), m_page.images.end(), isNear);
    }

    [[nodiscard]] model::Section const* sectionAbove(model::Rect const& box) const {
        model::Section const* last = nullptr;
        for (auto const& section : m_sections) {
            bool const before = section.page < m_page.page || (section.page == m_page.page && section.box.y0 <= box.y0);
            if (before) last = &section;
        }
        return last;
    }

    model::PageLayout const& m_page;
    std::span<model::Section const> m_sections;
};

// The pin that a line opens: its name (may be empty: a picture), number and what
// follows of the line.
struct Described {
    int number = 0;
    std::string name;
    std::string function;
};

std::optional<Described> describedPin(std::string_view line) {
    // "pin" or "Pin" within the first words, a number right behind it.
    constexpr std::size_t kLatest = 28;
    std::size_t place = std::string_view::npos;
    for (std::string_view const word : {"Pin", "PIN", "pin"}) place = std::min(place, line.find(word));
    if (place > kLatest) return std::nullopt;
    std::size_t at = place + 3;
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

std::vector<model::Pin> pinsOfLists(model::PageLayout const& page, std::span<model::Section const> sections) { return Lists(page, sections).find(); }

}  // namespace standin::pins

#include "extractors/parameters/rating_lists.h"

// Lines of a ratings section in reading order; a line without a bullet goes on
// from the bulleted one above. Each logical line is split at a colon, at leader
// dots or in front of the value at its end. Tested by
// tests/extractors/parameters/read_parameters_test.cpp.

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

#include "extractors/parameters/classify_table.h"
#include "extractors/parameters/grading.h"
#include "extractors/parameters/name_parts.h"
#include "extractors/parameters/shapes.h"
#include "extractors/parameters/text_forms.h"
#include "extractors/parameters/value_cell.h"

namespace standin::parameters {

namespace {

using model::SectionKind;

constexpr float kLineStep = 1.8F;          // font heights to a line that goes on
constexpr std::size_t kLongestEntry = 160;  // bytes; longer lines are prose
constexpr std::size_t kFewestEntries = 2;   // that make a list

constexpr std::array<std::string_view, 12> kBullets = {"·", "•", "●", "■", "◆", "▪", "・", "○", "◇", "□", "►", "*"};
constexpr std::array<std::string_view, 10> kValueWords = {"continuous", "indefinite", "infinite", "unlimited", "internally limited", "tbd", "not limited", "连续", "无限", "連続"};

struct Line {
    std::string text;     // " ... " for leader dots
    std::string printed;  // them as they are
    std::vector<std::uint32_t> words;
    model::Rect box;
    bool bullet = false;
    bool leader = false;
};

// Where a list stops in reading order; it may go on below, in its own column.
struct ListEnd {
    model::Section const* section = nullptr;
    model::Rect box;

    // `now`: the section that the line would belong to, whose heading may part them.
    [[nodiscard]] bool isAbove(model::TextLine const& line, model::Section const& now) const {
        model::Points const step = line.box.y0 - box.y1;
        bool const parted = now.box.x0 < line.box.x1 && now.box.x1 > line.box.x0 && now.box.y1 > box.y1;
        return !parted && std::abs(line.box.x0 - box.x0) <= line.size / 2 && step > -line.size / 2 && step < line.size * kLineStep;
    }
};

// Without its bullet; whether there was one.
bool takeBullet(std::string& text) {
    for (std::string_view bullet : kBullets) {
        if (text.starts_with(bullet)) {
            text = trimmed(std::string_view(text).substr(bullet.size()));
            return true;
        }
    }
    if (text.starts_with("- ")) {
        text = trimmed(std::string_view(text).substr(2));
        return true;
    }
    return false;
}

bool statesValue(std::string const& text) {
    if (std::ranges::find(kValueWords, std::string_view(folded(text))) != kValueWords.end()) return true;
    ValueCell const value = readValueCell(text, Slot::Single);
    return (value.form == ValueForm::Number || value.form == ValueForm::Range) && !value.unit.empty();
}

// The longest end of the text that states a value with its unit.
std::size_t valueStart(std::string const& text) {
    std::vector<std::string> const words = splitAtSpaces(text);
    std::size_t best = std::string::npos;
    std::string tail;
    std::size_t at = text.size();
    for (std::size_t k = words.size(); k-- > 1 && words.size() - k <= 7;) {
        at = text.rfind(words[k], at == 0 ? 0 : at - 1);
        if (at == std::string::npos) break;
        tail = text.substr(at);
        if (statesValue(tail)) best = at;
    }
    return best;
}

bool isListSection(SectionKind kind) { return kind == SectionKind::Ratings || kind == SectionKind::OperatingConditions || kind == SectionKind::Thermal; }

model::ParameterKind kindOf(SectionKind kind) {
    return kind == SectionKind::Ratings ? model::ParameterKind::Rating : kind == SectionKind::Thermal ? model::ParameterKind::Thermal : model::ParameterKind::OperatingCondition;
}

}  // namespace

ListEntry readListEntry(std::string_view raw) {
    ListEntry entry;
    std::string text = tidied(raw);
    bool const bullet = takeBullet(text);
    if (text.size() > kLongestEntry) return entry;
    std::string name;
    std::string value;
    bool colon = false;
    // a run of dots between name and value
    std::size_t dots = text.find("...");
    if (dots == std::string::npos) dots = text.find(". . .");
    std::size_t const ellipsis = text.find("\u2026");
    dots = std::min(dots, ellipsis);
    if (dots != std::string::npos && dots > 0) {
        std::size_t end = dots;
        while (end < text.size()) {
            if (text[end] == '.' || text[end] == ' ') {
                ++end;
            } else if (text.compare(end, 3, "\u2026") == 0) {
                end += 3;
            } else {
                break;
            }
        }
        name = trimmed(std::string_view(text).substr(0, dots));
        value = trimmed(std::string_view(text).substr(end));
    } else {
        std::size_t at = text.rfind("：");
        std::size_t width = std::string_view("：").size();
        if (at == std::string::npos) {
            at = text.rfind(':');
            width = 1;
        }
        if (at != std::string::npos && at > 0 && statesValue(trimmed(std::string_view(text).substr(at + width)))) {
            name = trimmed(std::string_view(text).substr(0, at));
            value = trimmed(std::string_view(text).substr(at + width));
            colon = true;
        } else if (!text.ends_with(".")) {
            std::size_t const start = valueStart(text);
            if (start != std::string::npos && start > 0) {
                name = trimmed(std::string_view(text).substr(0, start));
                value = trimmed(std::string_view(text).substr(start));
            }
        }
    }
    while (!name.empty() && (name.back() == ':' || name.back() == '=' || name.back() == '.')) name = trimmed(std::string_view(name).substr(0, name.size() - 1));
    bool const named = (hasOrdinaryWord(name) || bullet || (colon && isSymbolLike(name))) && !value.starts_with("=");
    if (name.empty() || !named || !statesValue(value)) return {};
    entry.value = value;
    entry.condition = takeCondition(name);
    SymbolPlace const place = symbolPlace(name);
    if (place == SymbolPlace::BehindSet) entry.symbol = takeSymbol(name, place);
    entry.name = name;
    return entry;
}

std::vector<model::Parameter> readRatingLists(std::span<model::PageLayout> pages, std::span<model::Table const>, std::span<model::Section const> sections) {
    std::vector<model::Parameter> out;
    model::Section const* section = nullptr;
    for (model::PageLayout& page : pages) {
        std::vector<Line> lines;
        model::Section const* listed = nullptr;  // of these lines
        std::optional<ListEnd> end;              // of the last list of the page
        bool resumed = false;
        auto flush = [&] {
            std::vector<std::pair<ListEntry, Line const*>> entries;
            for (Line const& line : lines) {
                ListEntry entry = readListEntry((line.bullet ? "\u2022 " : "") + line.text);
                if (!entry.value.empty()) entries.emplace_back(std::move(entry), &line);
            }
            if (entries.size() >= kFewestEntries || (resumed && !entries.empty())) {
                for (auto& [entry, line] : entries) {
                    ValueCell const value = readValueCell(entry.value, Slot::Single);
                    model::Parameter parameter;
                    parameter.section = listed->id;
                    parameter.kind = kindOf(listed->kind);
                    parameter.name = std::move(entry.name);
                    parameter.symbol = std::move(entry.symbol);
                    parameter.condition = std::move(entry.condition);
                    auto put = [&](std::optional<model::Value>& slot, std::string const& text) {
                        if (text.empty()) return;
                        slot = model::Value{.text = text, .printed = entry.value, .value = {}, .box = line->box};
                    };
                    put(parameter.min, value.min);
                    put(parameter.typ, value.typ);
                    put(parameter.max, value.max);
                    parameter.unit = value.unit;
                    parameter.page = page.page;
                    parameter.box = line->box;
                    parameter.printed = line->printed;
                    fillInterval(parameter);
                    parameter.grade = gradeOf(parameter, false);
                    parameter.confidence = {0.88, {"read from a list"}};
                    for (std::uint32_t word : line->words) page.words[word].owner = model::Owner::Parameter;
                    out.push_back(std::move(parameter));
                }
            }
            lines.clear();
            resumed = false;
        };
        for (model::TextLine const& line : page.lines) {
            if (line.wordCount == 0 || line.direction != model::Direction::Right) continue;
            // headings open sections in reading order
            bool heading = false;
            for (model::Section const& candidate : sections) {
                if (candidate.page != page.page || !candidate.box.grown(1).contains(line.box.centre())) continue;
                flush();
                listed = nullptr;
                section = &candidate;
                heading = true;
                break;
            }
            if (heading || section == nullptr) continue;
            bool const goesOnFromBefore = end && end->section != section && end->isAbove(line, *section);
            if (!goesOnFromBefore && !isListSection(section->kind)) continue;
            // reading order may have turned to the column on the left
            if (!goesOnFromBefore && listed == section && !lines.empty() && line.box.x1 < lines.front().box.x0) continue;
            Line now;
            now.box = line.box;
            bool free = true;
            for (std::uint32_t i = 0; i < line.wordCount && line.firstWord + i < page.words.size(); ++i) {
                model::Word const& word = page.words[line.firstWord + i];
                free = free && word.owner == model::Owner::None;
                now.words.push_back(line.firstWord + i);
                if (!now.printed.empty() && word.spaceBefore) now.printed.push_back(' ');
                now.printed += word.text;
                if (word.dotLeader) {
                    now.leader = true;
                    now.text += " ... ";
                    continue;
                }
                if (!now.text.empty() && word.spaceBefore) now.text.push_back(' ');
                now.text += word.text;
            }
            if (!free) continue;
            end = ListEnd{goesOnFromBefore ? end->section : section, line.box};
            if (listed != end->section) {
                flush();
                listed = end->section;
                resumed = goesOnFromBefore;
            }
            now.text = tidied(now.text);
            now.bullet = takeBullet(now.text);
            bool const whole = !lines.empty() && !readListEntry(lines.back().text).value.empty();
            bool const goesOn = !lines.empty() && !whole && !now.bullet && lines.back().bullet && line.box.y0 - lines.back().box.y1 < line.size * kLineStep && line.box.y0 > lines.back().box.y0 &&
                                line.box.x0 >= lines.back().box.x0;
            if (goesOn) {
                lines.back().text = joined(lines.back().text, now.text);
                lines.back().printed += " " + now.printed;
                lines.back().box = model::united(lines.back().box, now.box);
                lines.back().words.insert(lines.back().words.end(), now.words.begin(), now.words.end());
            } else {
                lines.push_back(std::move(now));
            }
        }
        flush();
    }
    return out;
}

}  // namespace standin::parameters

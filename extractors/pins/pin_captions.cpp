// Frames are found by the rules that reach past the box on each side and meet
// each other. Tested by tests/extractors/pins/pin_captions_test.cpp.
#include "extractors/pins/pin_captions.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

#include "extractors/packages/package_names.h"
#include "extractors/pins/pin_names.h"
#include "text/utf8.h"

namespace standin::pins {

namespace {

// In heights of the running text.
constexpr model::Points kPackageNear = 8;
constexpr model::Points kShortestSide = 6;  // of a frame
constexpr model::Points kFirstLine = 2.5F;  // its caption's centre below its upper side
constexpr model::Points kMeeting = 0.4F;    // ends of rules that meet
constexpr model::Points kLineNear = 3;
constexpr float kCentred = 0.25F;  // of the width, off the middle
constexpr std::uint32_t kMostCaptionWords = 4;
constexpr std::size_t kMostSides = 24;  // candidates of one side
constexpr float kLargestFrame = 0.4F;   // of the page; more is a frame around everything

model::Points textHeight(model::PageLayout const& page) { return page.bodySize > 0 ? page.bodySize : 10; }

std::string wordsOf(model::PageLayout const& page, model::TextLine const& line, std::uint32_t most) {
    std::string text;
    for (std::uint32_t w = line.firstWord; w < line.firstWord + std::min(line.wordCount, most); ++w) {
        if (!text.empty()) text += ' ';
        text += page.words[w].text;
    }
    return text;
}

// Rules on each side of a box, nearest first.
struct Sides {
    std::vector<model::Rect> left, right, above, below;
};

Sides sidesAround(model::PageLayout const& page, model::Rect const& box) {
    Sides sides;
    auto const shortest = kShortestSide * textHeight(page);
    for (auto const& rule : page.rules) {
        auto const& r = rule.box;
        if (rule.axis == model::Rule::Axis::Vertical) {
            if (r.height() < shortest || r.y0 > box.y0 || r.y1 < box.y1) continue;
            if (r.x1 <= box.x0) sides.left.push_back(r);
            if (r.x0 >= box.x1) sides.right.push_back(r);
        } else {
            if (r.width() < shortest || r.x0 > box.x0 || r.x1 < box.x1) continue;
            if (r.y1 <= box.y0) sides.above.push_back(r);
            if (r.y0 >= box.y1) sides.below.push_back(r);
        }
    }
    std::ranges::sort(sides.left, [](auto const& a, auto const& b) { return a.x0 > b.x0; });
    std::ranges::sort(sides.right, [](auto const& a, auto const& b) { return a.x0 < b.x0; });
    std::ranges::sort(sides.above, [](auto const& a, auto const& b) { return a.y0 > b.y0; });
    std::ranges::sort(sides.below, [](auto const& a, auto const& b) { return a.y0 < b.y0; });
    for (auto* list : {&sides.left, &sides.right, &sides.above, &sides.below}) {
        if (list->size() > kMostSides) list->resize(kMostSides);
    }
    return sides;
}

constexpr std::size_t kLongestAnnouncement = 90;  // bytes
constexpr std::uint32_t kMostAnnouncementWords = 9;
constexpr std::array<std::string_view, 12> kPinsAre{"configuration", "connection", "assignment", "arrangement", "diagram",     "layout",
                                                    "description",   "definition", "function",   "information", "designation", "out"};
constexpr std::array<std::string_view, 11> kWholeWords{"pinout",
                                                       "pinning",
                                                       "connection diagram",
                                                       "terminal connection",
                                                       "anschlussbelegung",
                                                       "pinbelegung",
                                                       "расположение выводов",
                                                       "назначение выводов",
                                                       "Расположение выводов",
                                                       "Назначение выводов",
                                                       "ピン配置"};
constexpr std::array<std::string_view, 3> kChinesePins{"引脚", "管脚", "脚位"};
constexpr std::array<std::string_view, 9> kChineseAre{"排列", "配置", "定义", "功能", "图", "说明", "分布", "描述", "信息"};

template <std::size_t N>
bool saysAny(std::string_view text, std::array<std::string_view, N> const& words) {
    return std::any_of(words.begin(), words.end(), [text](auto word) { return text.find(word) != std::string_view::npos; });
}

// "pin" or "pins" as a word, or at the begin of one ("pin-out").
bool saysPin(std::string_view lower) {
    for (std::size_t at = lower.find("pin"); at != std::string_view::npos; at = lower.find("pin", at + 1)) {
        bool const begins = at == 0 || !text::isAsciiLetter(lower[at - 1]);
        std::size_t end = at + 3;
        if (end < lower.size() && lower[end] == 's') ++end;
        if (begins && (end >= lower.size() || !text::isAsciiLetter(lower[end]))) return true;
    }
    return false;
}

// "pin 4".
bool numbersAPin(std::string_view lower) {
    for (std::size_t at = lower.find("pin "); at != std::string_view::npos; at = lower.find("pin ", at + 1)) {
        if (at + 4 < lower.size() && text::isAsciiDigit(lower[at + 4])) return true;
    }
    return false;
}

// The first of them that meets the others.
template <class Meets>
model::Rect const* nearest(std::vector<model::Rect> const& candidates, Meets&& meets) {
    auto const found = std::find_if(candidates.begin(), candidates.end(), meets);
    return found == candidates.end() ? nullptr : &*found;
}

std::optional<model::Rect> frameAround(model::PageLayout const& page, model::Rect const& box) {
    auto const sides = sidesAround(page, box);
    auto const meeting = kMeeting * textHeight(page);
    std::optional<model::Rect> best;
    for (auto const& left : sides.left) {
        for (auto const& right : sides.right) {
            auto const joins = [&](auto const& rule) { return rule.x0 <= left.x1 + meeting && rule.x1 >= right.x0 - meeting; };
            auto const* above = nearest(sides.above, [&](auto const& rule) { return joins(rule) && left.y0 <= rule.y1 + meeting && right.y0 <= rule.y1 + meeting; });
            auto const* below = nearest(sides.below, [&](auto const& rule) { return joins(rule) && left.y1 >= rule.y0 - meeting && right.y1 >= rule.y0 - meeting; });
            if (above == nullptr || below == nullptr) continue;
            model::Rect const frame{left.x0, above->y0, right.x1, below->y1};
            if (frame.area() < (best ? best->area() : kLargestFrame * page.width * page.height)) best = frame;
        }
    }
    return best;
}

}  // namespace

std::string packageNear(model::PageLayout const& page, model::Rect const& box) {
    model::Points bestGap = kPackageNear * textHeight(page);
    std::string package;
    for (auto const& line : page.lines) {
        auto const gapY = -model::overlap(line.box.y0, line.box.y1, box.y0, box.y1);
        if (gapY > bestGap || model::overlap(line.box.x0, line.box.x1, box.x0, box.x1) < 0) continue;
        auto const text = wordsOf(page, line, 8);
        auto const name = packages::findPackageName(text);
        if (!name) continue;
        bestGap = std::max(0.0F, gapY);
        package = text.substr(name->begin, name->end - name->begin);
    }
    return package;
}

std::string lineNear(model::PageLayout const& page, model::Rect const& box) {
    model::Points bestGap = kLineNear * textHeight(page);
    std::string caption;
    for (auto const& line : page.lines) {
        auto const gap = -model::overlap(line.box.y0, line.box.y1, box.y0, box.y1);
        bool const centred = std::abs(line.box.centre().x - box.centre().x) < kCentred * box.width();
        if (gap < -kMeeting * textHeight(page) || gap > bestGap || !centred || line.wordCount > kMostCaptionWords || line.direction != model::Direction::Right) continue;
        auto text = wordsOf(page, line, kMostCaptionWords);
        text = text::trimmed(std::string_view(text).substr(0, text.find('(')));
        if (text.empty() || plainNumber(text)) continue;
        bestGap = gap;
        caption = std::move(text);
    }
    return caption;
}

std::string frameCaption(model::PageLayout const& page, model::Rect const& box) {
    auto const frame = frameAround(page, box);
    if (!frame) return {};
    auto const lowest = frame->y0 + kFirstLine * textHeight(page);
    model::TextLine const* first = nullptr;
    for (auto const& line : page.lines) {
        auto const centre = line.box.centre();
        if (line.direction != model::Direction::Right || !frame->contains(centre) || centre.y > lowest || line.wordCount > kMostCaptionWords) continue;
        bool const isBefore = first == nullptr || line.box.y1 <= first->box.y0 || (line.box.y0 < first->box.y1 && line.box.x0 < first->box.x0);
        if (isBefore) first = &line;
    }
    return first == nullptr || first->box.y1 > box.y0 ? std::string{} : wordsOf(page, *first, kMostCaptionWords);
}

std::string captionOf(model::PageLayout const& page, model::Rect const& box) {
    auto package = packageNear(page, box);
    return package.empty() ? frameCaption(page, box) : package;
}

bool announcesPins(std::string_view line) {
    line = text::trimmed(line);
    if (line.size() > kLongestAnnouncement || line.ends_with('.') || line.ends_with("\u3002")) return false;
    auto const lower = text::asciiLower(line);
    if (numbersAPin(lower)) return false;  // "PIN 4. NO CONNECTION"
    if (saysAny(lower, kWholeWords) || (saysPin(lower) && saysAny(lower, kPinsAre))) return true;
    return saysAny(lower, kChinesePins) && saysAny(lower, kChineseAre);
}

std::vector<model::PlacedText> pinAnnouncements(model::PageLayout const& page) {
    std::vector<model::PlacedText> found;
    for (auto const& line : page.lines) {
        if (line.wordCount == 0 || line.wordCount > kMostAnnouncementWords || line.direction != model::Direction::Right) continue;
        auto const* first = &page.words[line.firstWord];
        bool const ours = std::none_of(first, first + line.wordCount, [](auto const& word) {
            return word.dotLeader || word.owner == model::Owner::Furniture || word.owner == model::Owner::Parameter || word.owner == model::Owner::Table;
        });
        if (!ours || plainNumber(first[line.wordCount - 1].text)) continue;  // "Pin configuration   3": a list of contents
        auto text = wordsOf(page, line, kMostAnnouncementWords);
        if (announcesPins(text)) found.push_back({std::move(text), page.page, line.box});
    }
    return found;
}

}  // namespace standin::pins

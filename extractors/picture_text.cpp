// Tested by tests/extractors/picture_text_test.cpp.
#include "extractors/picture_text.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <unordered_map>

#include "text/utf8.h"

namespace standin::reading {

namespace {

using model::Glyph;
using model::PageContent;
using model::Picture;
using model::Points;
using model::Rect;

constexpr double kPixelsPerPoint = 300.0 / 72;
constexpr std::size_t kFewGlyphs = 100;  // a stamp and a page number make no text
constexpr Points kLeastImage = 5;        // points, either way: smaller ones are ornaments
constexpr int kLeastPixels = 12;
constexpr Points kLeastLetter = 3;  // points high
constexpr Points kMostLetter = 24;
constexpr Points kSameHeight = 0.6F;    // of the higher of two letters
constexpr Points kLetterGap = 0.6F;     // heights
constexpr std::size_t kLeastRow = 3;    // shapes side by side: fewer are arrows and dots
constexpr Points kRoomAround = 1;       // points
constexpr double kUnusableShare = 0.3;  // of a font's glyphs
constexpr Points kAscent = 0.9F;        // of the size: boxes of recognised glyphs
constexpr Points kDescent = 0.2F;
constexpr float kCovered = 0.3F;  // of a word's box
constexpr Points kSameRule = 2;   // points apart

bool isSpace(char32_t code) { return code == U' ' || code == 0xA0 || code == 0x3000; }
bool isUsable(char32_t code) { return code >= 0x20 && code != model::kUnknownCharacter && !(code >= 0xE000 && code <= 0xF8FF) && !(code >= 0x7F && code < 0xA0); }

// Fonts most of whose glyphs on the page a reader can use.
std::vector<bool> usableFonts(PageContent const& page) {
    std::vector<std::size_t> all(page.fonts.size() + 1);
    std::vector<std::size_t> lost(page.fonts.size() + 1);
    for (auto const& glyph : page.glyphs) {
        if (isSpace(glyph.code) || glyph.outside || glyph.invisible) continue;
        auto const font = std::min<std::size_t>(glyph.font, page.fonts.size());
        ++all[font];
        lost[font] += isUsable(glyph.code) ? 0U : 1U;
    }
    std::vector<bool> usable;
    for (std::size_t i = 0; i < all.size(); ++i) usable.push_back(static_cast<double>(lost[i]) < kUnusableShare * static_cast<double>(std::max<std::size_t>(1, all[i])));
    return usable;
}

// Glyphs that stand as text, and those that only recognition can read. Invisible ones are neither:
// a text layer behind a scan, or what a picture covers, need not say what is seen there.
struct GlyphUse {
    std::vector<Rect> text, lost;
};

GlyphUse usesOf(PageContent const& page) {
    auto const usable = usableFonts(page);
    GlyphUse use;
    for (auto const& glyph : page.glyphs) {
        if (glyph.outside || glyph.invisible || isSpace(glyph.code)) continue;
        bool const good = usable[std::min<std::size_t>(glyph.font, page.fonts.size())];
        (good ? use.text : use.lost).push_back(glyph.box);
    }
    return use;
}

bool areInRow(Rect const& a, Rect const& b) {
    Points const higher = std::max(a.height(), b.height());
    Points const gap = std::max(a.x0, b.x0) - std::min(a.x1, b.x1);
    return std::min(a.height(), b.height()) >= kSameHeight * higher && gap <= kLetterGap * higher && model::overlap(a.y0, a.y1, b.y0, b.y1) > higher / 2;
}

struct Row {
    Rect box, last;
    std::size_t count = 0;
};

// Rows that a shape further right may still belong to, by the band of the page that the middle of
// their last shape is in: shapes in one row are less than a band apart.
class OpenRows {
public:
    // The youngest row that `shape` goes on, which is open no more; none where it begins one.
    std::optional<std::size_t> take(std::vector<Row> const& rows, Rect const& shape) {
        std::optional<std::size_t> found;
        int const middle = bandOf(shape);
        for (int band = middle - 1; band <= middle + 1; ++band) {
            auto const entry = m_bands.find(band);
            if (entry == m_bands.end()) continue;
            std::erase_if(entry->second, [&](std::size_t row) { return rows[row].last.x1 + kLetterGap * kMostLetter < shape.x0; });
            for (std::size_t const row : entry->second) {
                if (areInRow(rows[row].last, shape) && (!found || row > *found)) found = row;
            }
        }
        if (found) std::erase(m_bands[bandOf(rows[*found].last)], *found);
        return found;
    }

    void add(std::size_t row, Rect const& shape) { m_bands[bandOf(shape)].push_back(row); }

private:
    static int bandOf(Rect const& shape) { return static_cast<int>(std::floor(shape.centre().y / kMostLetter)); }

    std::unordered_map<int, std::vector<std::size_t>> m_bands;
};

// Boxes around shapes of a letter's size that stand in rows.
std::vector<Rect> rowsOfShapes(PageContent const& page) {
    std::vector<Rect> shapes;
    for (auto const& drawing : page.drawings) {
        auto const& box = drawing.box;
        if (box.height() >= kLeastLetter && box.height() <= kMostLetter && box.width() <= 2 * kMostLetter) shapes.push_back(box);
    }
    std::sort(shapes.begin(), shapes.end(), [](Rect const& a, Rect const& b) { return a.x0 != b.x0 ? a.x0 < b.x0 : a.y0 < b.y0; });
    std::vector<Row> rows;
    OpenRows open;
    for (auto const& shape : shapes) {
        auto const known = open.take(rows, shape);
        if (!known) rows.push_back({shape, shape, 0});
        auto const index = known.value_or(rows.size() - 1);
        auto& row = rows[index];
        row.box = model::united(row.box, shape);
        row.last = shape;
        ++row.count;
        open.add(index, shape);
    }
    std::vector<Rect> boxes;
    for (auto const& row : rows) {
        // Straight letters (I, l) may be rules, not shapes: room for one at either end.
        if (row.count >= kLeastRow) boxes.push_back(row.box.grown(row.box.height() / 2));
    }
    return boxes;
}

bool isLettered(model::Image const& image) {
    return image.box.width() >= kLeastImage && image.box.height() >= kLeastImage && image.pixelWidth >= kLeastPixels && image.pixelHeight >= kLeastPixels;
}

bool coveredByText(Rect const& box, std::vector<Rect> const& text) {
    Points covered = 0;
    for (auto const& glyph : text) {
        auto const common = model::intersection(box, glyph);
        if (!common.empty()) covered += common.area();
    }
    return covered > kCovered * box.area();
}

// The glyphs of one word share its box in equal parts.
void addGlyphs(PageContent& page, model::RecognisedWord const& word, std::uint16_t font) {
    auto const codes = text::toUtf32(word.text);
    Points const step = word.box.width() / static_cast<Points>(std::max<std::size_t>(1, codes.size()));
    for (std::size_t i = 0; i < codes.size(); ++i) {
        Glyph glyph;
        glyph.code = codes[i];
        Points const x = word.box.x0 + step * static_cast<Points>(i);
        glyph.box = {x, word.baseline - kAscent * word.size, x + step, word.baseline + kDescent * word.size};
        glyph.origin = {x, word.baseline};
        glyph.size = word.size;
        glyph.font = font;
        page.glyphs.push_back(glyph);
    }
}

void addSpace(PageContent& page, model::RecognisedWord const& before, model::RecognisedWord const& behind, std::uint16_t font) {
    if (behind.box.x0 <= before.box.x1) return;
    Glyph space;
    space.code = U' ';
    space.box = {before.box.x1, before.baseline - kAscent * before.size, behind.box.x0, before.baseline + kDescent * before.size};
    space.origin = {before.box.x1, before.baseline};
    space.size = before.size;
    space.font = font;
    page.glyphs.push_back(space);
}

bool isSameRule(model::Rule const& a, model::Rule const& b) {
    if (a.axis != b.axis) return false;
    bool const across = a.axis == model::Rule::Axis::Horizontal;
    auto const apart = across ? a.box.centre().y - b.box.centre().y : a.box.centre().x - b.box.centre().x;
    auto const common = across ? model::overlap(a.box.x0, a.box.x1, b.box.x0, b.box.x1) : model::overlap(a.box.y0, a.box.y1, b.box.y0, b.box.y1);
    auto const length = across ? a.box.width() : a.box.height();
    return std::abs(apart) < kSameRule && common > length / 2;
}

void addRules(PageContent& page, std::vector<model::Rule> const& rules) {
    std::size_t const own = page.rules.size();
    for (auto const& rule : rules) {
        auto const end = page.rules.begin() + static_cast<std::ptrdiff_t>(own);
        bool const known = std::any_of(page.rules.begin(), end, [&rule](model::Rule const& other) { return isSameRule(rule, other); });
        if (!known) page.rules.push_back(rule);
    }
}

// What the words were recognised from: it would stand beside them once more.
void takeAwaySources(PageContent& page, std::vector<Rect> const& words) {
    auto const within = [&words](Rect const& box) {
        return std::any_of(words.begin(), words.end(), [&box](Rect const& word) {
            return word.grown(kRoomAround).contains(box.centre()) && box.height() <= 2 * word.height() && box.width() <= word.width() + 2 * kRoomAround;
        });
    };
    auto const usable = usableFonts(page);
    std::erase_if(page.glyphs, [&](Glyph const& glyph) { return !usable[std::min<std::size_t>(glyph.font, page.fonts.size())] && within(glyph.box); });
    std::erase_if(page.drawings, [&](model::Drawing const& drawing) { return within(drawing.box); });
    std::erase_if(page.fills, [&](model::Fill const& fill) { return within(fill.box); });
    std::erase_if(page.rules, [&](model::Rule const& rule) { return within(rule.box); });
}

}  // namespace

std::vector<Rect> placesToRecognise(PageContent const& page) {
    auto const use = usesOf(page);
    bool const drawn = !page.images.empty() || !page.drawings.empty() || !use.lost.empty();
    Rect const whole{0, 0, page.width, page.height};
    if (use.text.size() < kFewGlyphs) return drawn ? std::vector{whole} : std::vector<Rect>{};
    std::vector<Rect> places;
    for (auto const& image : page.images) {
        if (isLettered(image)) places.push_back(image.box);
    }
    auto const rows = rowsOfShapes(page);
    places.insert(places.end(), rows.begin(), rows.end());
    places.insert(places.end(), use.lost.begin(), use.lost.end());
    return places;
}

void paintOver(Picture& picture, PageContent const& page, std::vector<Rect> const& places) {
    auto const width = static_cast<std::size_t>(picture.width);
    std::vector<bool> shown(width * static_cast<std::size_t>(picture.height), false);
    auto const mark = [&](Rect const& box, bool as) {
        int const left = std::clamp(picture.column(box.x0), 0, picture.width);
        int const right = std::clamp(picture.column(box.x1), left, picture.width);
        int const bottom = std::clamp(picture.row(box.y1), 0, picture.height);
        for (int y = std::clamp(picture.row(box.y0), 0, picture.height); y < bottom; ++y) {
            auto const row = shown.begin() + static_cast<std::ptrdiff_t>(static_cast<std::size_t>(y) * width);
            std::fill(row + left, row + right, as);
        }
    };
    for (auto const& place : places) mark(place.grown(kRoomAround), true);
    for (auto const& glyph : usesOf(page).text) mark(glyph.grown(kRoomAround / 2), false);
    for (std::size_t i = 0; i < shown.size(); ++i) {
        if (!shown[i]) std::fill_n(picture.rgb.begin() + static_cast<std::ptrdiff_t>(3 * i), 3, std::uint8_t{255});
    }
}

void addRecognised(PageContent& page, model::Recognition const& found) {
    addRules(page, found.rules);
    auto const text = usesOf(page).text;
    std::vector<model::RecognisedWord const*> words;
    std::vector<Rect> boxes;
    for (auto const& word : found.words) {
        if (word.text.empty() || word.box.empty() || coveredByText(word.box, text)) continue;
        words.push_back(&word);
        boxes.push_back(word.box);
    }
    if (words.empty()) return;
    takeAwaySources(page, boxes);
    auto const font = static_cast<std::uint16_t>(page.fonts.size());
    page.fonts.emplace_back();
    page.fonts.back().recognised = true;
    for (std::size_t i = 0; i < words.size(); ++i) {
        if (i > 0 && words[i]->line == words[i - 1]->line) addSpace(page, *words[i - 1], *words[i], font);
        addGlyphs(page, *words[i], font);
    }
}

model::Result<std::vector<Rect>> recognisePictures(PageContent& page, model::PagePictures& pictures, model::Recogniser const& recogniser, std::string const& languages) {
    auto const places = placesToRecognise(page);
    if (places.empty()) return std::vector<Rect>{};
    auto const box = pictures.pageBox(page.page);
    if (!box) return tl::unexpected(box.error());
    auto picture = pictures.render(page.page, *box, kPixelsPerPoint);
    if (!picture) return tl::unexpected(picture.error());
    paintOver(*picture, page, places);
    auto found = recogniser.recognise(*picture, languages);
    if (!found) return tl::unexpected(found.error());
    addRecognised(page, *found);
    return std::move(found->unread);
}

}  // namespace standin::reading

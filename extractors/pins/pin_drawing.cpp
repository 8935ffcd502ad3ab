// Chains of numbers (pin_chains.h) are the sides of packages: four that go on one
// from the other around an outline; two of which the second counts against the
// first; or one alone. Each number takes the name beside it (pin_lettering.h),
// outside the outline where names stand there, else inside. Tested by
// tests/extractors/pins/pin_drawing_test.cpp.
#include "extractors/pins/pin_drawing.h"

#include <algorithm>
#include <array>
#include <string>

#include "extractors/pins/pin_captions.h"
#include "extractors/pins/pin_chains.h"
#include "extractors/pins/pin_lettering.h"
#include "extractors/pins/pin_names.h"

namespace standin::pins {

namespace {

constexpr int kMostTriedAround = 256;  // four sides that may belong together, on a page
constexpr std::size_t kMostNumbers = 240;  // a page; more is a table or a plot
constexpr int kLargestNumber = 128;
constexpr std::size_t kFewestPins = 3;
constexpr std::size_t kFewestUnread = 4;     // leads of a package that is listed without names
constexpr model::Points kFurthestSide = 60;  // between two sides, in heights of the numbers
constexpr model::Points kLikeHeight = 1.5F;
constexpr float kCommon = 0.25F;  // of the smaller box: drawings that overlap are one

model::Rect boxOf(Chain const& chain) {
    model::Rect box;
    for (auto const& number : chain.numbers) box = model::united(box, number.box);
    return box;
}

model::Rect boxOf(std::vector<PackageSide> const& sides) {
    model::Rect box;
    for (auto const& side : sides) box = model::united(box, boxOf(*side.chain));
    return box;
}

model::Rect boxOf(std::vector<model::Pin> const& pins) {
    model::Rect box;
    for (auto const& pin : pins) box = model::united(box, pin.box);
    return box;
}

bool overlap(model::Rect const& a, model::Rect const& b) {
    auto const common = model::intersection(a, b);
    return !common.empty() && common.area() > kCommon * std::min(a.area(), b.area());
}

bool alikeHigh(Chain const& a, Chain const& b) {
    auto const high = std::max(a.numbers[0].height, b.numbers[0].height);
    return high <= kLikeHeight * std::min(a.numbers[0].height, b.numbers[0].height);
}

// `right` goes on where `left` ends, counting against it, at about its height.
bool areSides(Chain const& left, Chain const& right) {
    auto const& a = left.numbers;
    auto const& b = right.numbers;
    if (right.step > 0 || b.back().value != a.back().value + 1) return false;
    if (a.size() + b.size() < kFewestPins || (a.size() == 1 && b.size() == 1) || !alikeHigh(left, right)) return false;
    auto const height = a.front().height;
    auto const distance = right.across() - left.across();
    if (distance < 1.5F * height || distance > kFurthestSide * height) return false;
    auto const reach = b.size() == 1 || a.size() == 1 ? 2 * height : 0.6F * height;
    auto const common = model::overlap(a.front().along - reach, a.back().along + reach, b.front().along - reach, b.back().along + reach);
    auto const shorter = std::min(a.back().along - a.front().along, b.back().along - b.front().along) + 2 * reach;
    return common > 0.6F * shorter;
}

// Two columns left and right of two rows, all around one middle.
bool areAround(Chain const& left, Chain const& right, Chain const& top, Chain const& bottom) {
    auto const l = boxOf(left);
    auto const r = boxOf(right);
    auto const t = boxOf(top);
    auto const b = boxOf(bottom);
    auto const height = left.numbers[0].height;
    if (r.x0 - l.x1 > kFurthestSide * height || b.y0 - t.y1 > kFurthestSide * height) return false;
    bool const columns = l.centre().x < std::min(t.x0, b.x0) + height && r.centre().x > std::max(t.x1, b.x1) - height;
    bool const rows = t.centre().y < std::min(l.y0, r.y0) + height && b.centre().y > std::max(l.y1, r.y1) - height;
    bool const level = model::overlap(l.y0, l.y1, r.y0, r.y1) > 0 && model::overlap(t.x0, t.x1, b.x0, b.x1) > 0;
    return columns && rows && level;
}

// A package has about as many leads on each side as on the one across.
bool areEvenSides(std::vector<PackageSide> const& sides) {
    if (sides.size() != 2) return sides.size() == 4;
    auto const a = sides[0].chain->numbers.size();
    auto const b = sides[1].chain->numbers.size();
    return std::min(a, b) >= 2 && std::max(a, b) - std::min(a, b) <= 1;
}

class Drawings {
public:
    explicit Drawings(model::PageLayout const& page) : m_page(page) {}

    DrawnPins find() {
        for (std::uint32_t w = 0; w < m_page.words.size(); ++w) {
            if (isNumber(m_page.words[w])) m_numbers.push_back(w);
        }
        if (m_numbers.empty() || m_numbers.size() > kMostNumbers) return {};
        m_taken.assign(m_page.words.size(), false);
        readFourSided();
        readStraight(Axis::Columns);
        readStraight(Axis::Rows);
        std::erase_if(m_drawn.unread, [this](auto const& unread) { return overlapsRead(unread.box); });
        std::stable_sort(m_drawn.packages.begin(), m_drawn.packages.end(), [](auto const& a, auto const& b) { return a.front().box.y0 < b.front().box.y0; });
        namePackages();
        return std::move(m_drawn);
    }

private:
    static bool isNumber(model::Word const& word) {
        bool const straight = word.direction == model::Direction::Right || word.direction == model::Direction::Up || word.direction == model::Direction::Down;
        if (!mayLetter(word) || !straight || word.text.size() > 4) return false;
        auto const value = plainNumber(word.text);
        return value && *value <= kLargestNumber;
    }

    // By the package printed nearest; several by what tells them apart, the line below each too.
    void namePackages() {
        std::vector<std::string> packages;
        std::vector<std::string> lines;
        for (auto const& pins : m_drawn.packages) {
            packages.push_back(packageNear(m_page, boxOf(pins)));
            lines.push_back(lineNear(m_page, boxOf(pins)));
        }
        bool const byLine = packages.size() > 1 && !tellApart(packages) && tellApart(lines);
        for (std::size_t i = 0; i < packages.size(); ++i) {
            for (auto& pin : m_drawn.packages[i]) pin.package = byLine ? lines[i] : packages[i];
        }
    }

    static bool tellApart(std::vector<std::string> names) {
        std::sort(names.begin(), names.end());
        return !names.front().empty() && std::adjacent_find(names.begin(), names.end()) == names.end();
    }

    [[nodiscard]] std::vector<Chain> freeChains(Axis axis) const {
        std::vector<std::uint32_t> free;
        for (auto const w : m_numbers) {
            if (!m_taken[w]) free.push_back(w);
        }
        return chainsOf(m_page, free, axis);
    }

    void readFourSided() {
        auto const columns = freeChains(Axis::Columns);
        auto const rows = freeChains(Axis::Rows);
        std::vector<Chain const*> chains;
        for (auto const& chain : columns)
            if (chain.numbers.size() > 1) chains.push_back(&chain);
        for (auto const& chain : rows)
            if (chain.numbers.size() > 1) chains.push_back(&chain);
        for (auto const* first : chains) {
            if (first->smallest() == 1) goAround(chains, {first});
        }
    }

    // The next side begins where the last one ends, on the other axis.
    bool goAround(std::vector<Chain const*> const& chains, std::vector<Chain const*> sides) {
        if (sides.size() == 4) return readAround(sides) || ++m_triedAround >= kMostTriedAround;
        for (auto const* next : chains) {
            if (next->smallest() != sides.back()->largest() + 1 || next->axis == sides.back()->axis || !alikeHigh(*next, *sides.back())) continue;
            auto more = sides;
            more.push_back(next);
            if (goAround(chains, std::move(more))) return true;
        }
        return false;
    }

    bool readAround(std::vector<Chain const*> const& chains) {
        auto columns = std::array{chains[0], chains[2]};
        auto rows = std::array{chains[1], chains[3]};
        if (columns[0]->axis == Axis::Rows) std::swap(columns, rows);
        if (columns[0]->across() > columns[1]->across()) std::swap(columns[0], columns[1]);
        if (rows[0]->across() > rows[1]->across()) std::swap(rows[0], rows[1]);
        if (!areAround(*columns[0], *columns[1], *rows[0], *rows[1])) return false;
        return readPackage({{columns[0], Side::Before}, {columns[1], Side::Behind}, {rows[0], Side::Before}, {rows[1], Side::Behind}});
    }

    // Two sides first: a side by itself may look like a package with one row.
    void readStraight(Axis axis) {
        auto const chains = freeChains(axis);
        std::vector<bool> used(chains.size(), false);
        for (std::size_t i = 0; i < chains.size(); ++i) {
            if (used[i] || chains[i].numbers.front().value != 1 || chains[i].step < 0) continue;
            for (std::size_t k = 0; k < chains.size(); ++k) {
                if (k == i || used[k] || !areSides(chains[i], chains[k])) continue;
                bool const read = readPackage({{&chains[i], Side::Before}, {&chains[k], Side::Behind}});
                // Read or not, neither is a package by itself; a lone number proves no second side.
                if (read || chains[k].numbers.size() > 1) used[i] = used[k] = true;
                if (used[i]) break;
            }
        }
        for (std::size_t i = 0; i < chains.size(); ++i) {
            auto const& chain = chains[i];
            if (used[i] || chain.numbers.size() < kFewestPins || chain.smallest() != 1) continue;
            readPackage({{&chain, Side::Before}});
        }
    }

    bool readPackage(std::vector<PackageSide> const& sides) {
        std::size_t total = 0;
        bool filled = false;
        for (auto const& side : sides) {
            total += side.chain->numbers.size();
            filled = filled || side.chain->filled;
        }
        if (total < kFewestPins || overlapsRead(boxOf(sides))) return false;
        Lettering const lettering(m_page, sides, m_numbers);
        std::vector<Naming> best;
        std::size_t bestFound = 0;
        for (auto const where : {Lettered::Outside, Lettered::Inside}) {
            auto namings = lettering.names(where);
            std::size_t found = 0;
            for (auto const& naming : namings) found += naming.found;
            if (found <= bestFound) continue;
            bestFound = found;
            best = std::move(namings);
        }
        // Every number needs its name; one of many may be left bare (not connected).
        bool const named = bestFound >= kFewestPins && (filled ? bestFound == total : bestFound + total / 8 >= total);
        if (!named || !add(sides, best)) {
            if (!filled && areEvenSides(sides) && total >= kFewestUnread) addUnread(static_cast<int>(total), boxOf(sides));
            return false;
        }
        for (auto const& side : sides) {
            for (auto const& number : side.chain->numbers) m_taken[number.word] = true;
        }
        return true;
    }

    // False where the numbers do not count from 1 without a gap, or stand on a package that was read.
    bool add(std::vector<PackageSide> const& sides, std::vector<Naming> const& namings) {
        std::vector<model::Pin> pins;
        for (std::size_t s = 0; s < sides.size(); ++s) {
            auto const& numbers = sides[s].chain->numbers;
            for (std::size_t n = 0; n < numbers.size(); ++n) {
                auto const& name = namings[s].names[n];
                pins.push_back({std::to_string(numbers[n].value), name.text, {}, {}, m_page.page, model::united(numbers[n].box, name.box)});
            }
        }
        std::stable_sort(pins.begin(), pins.end(), [](auto const& a, auto const& b) { return *plainNumber(a.number) < *plainNumber(b.number); });
        for (std::size_t i = 0; i < pins.size(); ++i) {
            if (*plainNumber(pins[i].number) != static_cast<int>(i) + 1) return false;
        }
        if (overlapsRead(boxOf(pins))) return false;
        m_drawn.packages.push_back(std::move(pins));
        return true;
    }

    void addUnread(int leads, model::Rect const& box) {
        bool const listed = std::any_of(m_drawn.unread.begin(), m_drawn.unread.end(), [&box](auto const& unread) { return overlap(box, unread.box); });
        if (!listed) m_drawn.unread.push_back({leads, box});
    }

    // Numbers inside a package that was read (of its gates, say) are no package.
    [[nodiscard]] bool overlapsRead(model::Rect const& box) const {
        return std::any_of(m_drawn.packages.begin(), m_drawn.packages.end(), [&box](auto const& pins) { return overlap(box, boxOf(pins)); });
    }

    model::PageLayout const& m_page;
    std::vector<std::uint32_t> m_numbers;  // words that may number pins
    std::vector<bool> m_taken;             // of all words: numbers of a drawing that was read
    int m_triedAround = 0;
    DrawnPins m_drawn;
};

}  // namespace

DrawnPins pinsOfDrawings(model::PageLayout const& page) { return Drawings(page).find(); }

}  // namespace standin::pins

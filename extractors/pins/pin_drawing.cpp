// Numbers that stand above each other and count by one form a chain. A chain
// that counts down the page from 1 and one to its right that counts up the page
// from the next number are the two sides of a package; a chain alone is a
// package with one row. Then each number takes the name beside it, outside the
// outline where names stand there, else inside. Rows are read the same way with
// the axes exchanged. Tested by tests/extractors/pins/pin_drawing_test.cpp.
#include "extractors/pins/pin_drawing.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <string>

#include "extractors/packages/package_names.h"
#include "extractors/pins/pin_names.h"

namespace standin::pins {

namespace {

constexpr std::size_t kMostNumbers = 240;  // a page; more is a table or a plot
constexpr int kLargestNumber = 128;
constexpr std::size_t kFewestPins = 3;

// In heights of the numbers.
constexpr model::Points kAligned = 0.75F;     // centres of a chain
constexpr model::Points kFurthestNext = 9;    // from one number of a chain to the next
constexpr model::Points kFurthestName = 12;   // from a number to its name
constexpr model::Points kFurthestSide = 60;   // between the two sides
constexpr model::Points kNameLevel = 0.85F;   // a name's centre from its number's
constexpr model::Points kPackageNear = 8;

enum class Side : std::uint8_t { Before, Behind };  // left and right; above and below for rows

// A number or a name with the axes as the chain needs them: `along` the chain,
// `across` it.
struct Piece {
    model::Points along = 0;    // centre
    model::Points across0 = 0;  // from, to
    model::Points across1 = 0;
    model::Points height = 0;   // font size
    int value = 0;
    std::string text;
    model::Rect box;
    std::uint32_t word = 0;
    [[nodiscard]] model::Points across() const { return (across0 + across1) / 2; }
};

struct Chain {
    std::vector<Piece> numbers;  // along the chain
    int step = 0;                // +1 or -1; 0: a single number
    bool filled = false;         // some numbers are not printed
};

enum class Axis : std::uint8_t { Columns, Rows };

Piece pieceOf(model::Rect const& box, model::Points height, Axis axis) {
    Piece piece;
    piece.box = box;
    piece.height = height;
    auto const centre = box.centre();
    piece.along = axis == Axis::Columns ? centre.y : centre.x;
    piece.across0 = axis == Axis::Columns ? box.x0 : box.y0;
    piece.across1 = axis == Axis::Columns ? box.x1 : box.y1;
    return piece;
}

bool mayLetter(model::Word const& word) {
    return (word.owner == model::Owner::None || word.owner == model::Owner::Figure || word.owner == model::Owner::Text || word.owner == model::Owner::Table) && word.direction == model::Direction::Right && !word.unknown;
}

class Drawings {
public:
    explicit Drawings(model::PageLayout const& page) : m_page(page) {}

    std::vector<std::vector<model::Pin>> find() {
        std::vector<std::uint32_t> numbers;
        for (std::uint32_t w = 0; w < m_page.words.size(); ++w) {
            auto const& word = m_page.words[w];
            if (!mayLetter(word) || word.text.size() > 4) continue;
            auto const value = plainNumber(word.text);
            if (value && *value <= kLargestNumber) numbers.push_back(w);
        }
        if (numbers.empty() || numbers.size() > kMostNumbers) return {};
        m_taken.assign(m_page.words.size(), false);
        read(numbers, Axis::Columns);
        read(numbers, Axis::Rows);
        std::stable_sort(m_found.begin(), m_found.end(), [](auto const& a, auto const& b) { return a.front().box.y0 < b.front().box.y0; });
        namePackages();
        return std::move(m_found);
    }

private:
    void read(std::vector<std::uint32_t> const& numbers, Axis axis) {
        m_axis = axis;
        auto chains = chainsOf(numbers);
        // Two sides first: a side by itself may look like a package with one row.
        std::vector<bool> used(chains.size(), false);
        for (std::size_t i = 0; i < chains.size(); ++i) {
            if (used[i] || chains[i].numbers.front().value != 1 || chains[i].step < 0) continue;
            for (std::size_t k = 0; k < chains.size(); ++k) {
                if (k == i || used[k] || !areSides(chains[i], chains[k])) continue;
                if (!readPackage({&chains[i], &chains[k]})) continue;
                used[i] = used[k] = true;
                break;
            }
        }
        for (std::size_t i = 0; i < chains.size(); ++i) {
            auto const& chain = chains[i];
            if (used[i] || chain.numbers.size() < kFewestPins) continue;
            bool const from1 = chain.numbers.front().value == 1 || chain.numbers.back().value == 1;
            if (from1 && readPackage({&chain})) used[i] = true;
        }
    }

    // Chains of one side each, longest first; every number is in one chain at
    // most, single numbers are chains too.
    std::vector<Chain> chainsOf(std::vector<std::uint32_t> const& words) const {
        std::vector<Piece> pieces;
        for (auto const w : words) {
            if (m_taken[w]) continue;
            auto const& word = m_page.words[w];
            auto piece = pieceOf(word.box, std::max(word.size, 1.0F), m_axis);
            piece.value = *plainNumber(word.text);
            piece.word = w;
            pieces.push_back(piece);
        }
        std::sort(pieces.begin(), pieces.end(), [](auto const& a, auto const& b) { return a.along != b.along ? a.along < b.along : a.across0 < b.across0; });
        std::vector<bool> used(pieces.size(), false);
        std::vector<Chain> chains;
        for (;;) {
            std::vector<std::size_t> best;
            int bestStep = 0;
            for (std::size_t start = 0; start < pieces.size(); ++start) {
                if (used[start]) continue;
                for (int const step : {1, -1}) {
                    auto members = follow(pieces, used, start, step);
                    bool const better = members.size() > best.size();
                    if (better) {
                        best = std::move(members);
                        bestStep = step;
                    }
                }
            }
            if (best.size() < 2) break;
            Chain chain;
            chain.step = bestStep;
            for (auto const index : best) {
                used[index] = true;
                chain.numbers.push_back(pieces[index]);
            }
            chains.push_back(std::move(chain));
        }
        addCornerChains(pieces, used, chains);
        for (std::size_t i = 0; i < pieces.size(); ++i) {
            if (!used[i]) chains.push_back({{pieces[i]}, 0, false});
        }
        return chains;
    }

    static bool aligned(Piece const& a, Piece const& b) {
        auto const height = std::min(a.height, b.height);
        if (std::max(a.height, b.height) > 1.5F * height) return false;
        return std::abs(a.across() - b.across()) <= kAligned * height || std::abs(a.across1 - b.across1) <= 0.3F * height || std::abs(a.across0 - b.across0) <= 0.3F * height;
    }

    static std::vector<std::size_t> follow(std::vector<Piece> const& pieces, std::vector<bool> const& used, std::size_t start, int step) {
        std::vector<std::size_t> members{start};
        model::Points pitch = 0;
        for (std::size_t i = start + 1; i < pieces.size(); ++i) {
            auto const& last = pieces[members.back()];
            auto const gap = pieces[i].along - last.along;
            if (gap > kFurthestNext * last.height) break;
            if (used[i] || pieces[i].value != last.value + step || !aligned(last, pieces[i])) continue;
            if (gap < 0.5F * last.height || (pitch > 0 && (gap > 1.6F * pitch || gap < 0.6F * pitch))) continue;
            pitch = gap;
            members.push_back(i);
        }
        return members;
    }

    // "1 … 4" and "8 … 5" with names evenly between, numbers at the corners only.
    void addCornerChains(std::vector<Piece> const& pieces, std::vector<bool>& used, std::vector<Chain>& chains) const {
        for (std::size_t i = 0; i < pieces.size(); ++i) {
            if (used[i]) continue;
            for (std::size_t k = i + 1; k < pieces.size(); ++k) {
                auto const& first = pieces[i];
                auto const& last = pieces[k];
                int const between = std::abs(last.value - first.value);
                if (used[k] || between < 2 || between > 40 || !aligned(first, last)) continue;
                auto const pitch = (last.along - first.along) / static_cast<float>(between);
                if (pitch < 0.9F * first.height || pitch > kFurthestNext * first.height) continue;
                Chain chain;
                chain.step = last.value > first.value ? 1 : -1;
                chain.filled = true;
                for (int n = 0; n <= between; ++n) {
                    auto piece = n == 0 ? first : n == between ? last : first;
                    if (n > 0 && n < between) {
                        piece.along = first.along + pitch * static_cast<float>(n);
                        piece.value = first.value + chain.step * n;
                        piece.word = first.word;
                        auto const shift = pitch * static_cast<float>(n);
                        if (m_axis == Axis::Columns) piece.box = {first.box.x0, first.box.y0 + shift, first.box.x1, first.box.y1 + shift};
                        else piece.box = {first.box.x0 + shift, first.box.y0, first.box.x1 + shift, first.box.y1};
                    }
                    chain.numbers.push_back(piece);
                }
                used[i] = used[k] = true;
                chains.push_back(std::move(chain));
                break;
            }
        }
    }

    // `right` goes on where `left` ends, counting against it, at about its height.
    static bool areSides(Chain const& left, Chain const& right) {
        auto const& a = left.numbers;
        auto const& b = right.numbers;
        if (right.step > 0 || b.back().value != a.back().value + 1) return false;
        if (a.size() + b.size() < kFewestPins || (a.size() == 1 && b.size() == 1)) return false;
        auto const height = a.front().height;
        if (std::max(height, b.front().height) > 1.5F * std::min(height, b.front().height)) return false;
        auto const distance = b.front().across() - a.front().across();
        if (distance < 1.5F * height || distance > kFurthestSide * height) return false;
        auto const reach = b.size() == 1 || a.size() == 1 ? 2 * height : 0.6F * height;
        auto const common = model::overlap(a.front().along - reach, a.back().along + reach, b.front().along - reach, b.back().along + reach);
        auto const shorter = std::min(a.back().along - a.front().along, b.back().along - b.front().along) + 2 * reach;
        return common > 0.6F * shorter;
    }

    // Names as runs of words that are no numbers of the chains.
    std::vector<Piece> namesNear(std::vector<Chain const*> const& sides) const {
        model::Rect around;
        model::Points height = 1;
        std::vector<std::uint32_t> numbers;
        for (auto const* side : sides) {
            for (auto const& number : side->numbers) {
                around = model::united(around, number.box);
                height = std::max(height, number.height);
                numbers.push_back(number.word);
            }
        }
        around = around.grown((kFurthestName + 10) * height);
        std::vector<Piece> names;
        for (auto const& line : m_page.lines) {
            if (!line.box.intersects(around) || line.direction != model::Direction::Right) continue;
            bool goesOn = false;
            for (std::uint32_t w = line.firstWord; w < line.firstWord + line.wordCount; ++w) {
                auto const& word = m_page.words[w];
                bool const isNumber = std::find(numbers.begin(), numbers.end(), w) != numbers.end();
                if (isNumber || !mayLetter(word) || m_taken[w]) {
                    goesOn = false;
                    continue;
                }
                auto const gap = goesOn ? word.box.x0 - names.back().box.x1 : 0;
                if (goesOn && gap < 0.8F * std::max(word.size, 1.0F)) {
                    auto& name = names.back();
                    if (word.spaceBefore) name.text += ' ';
                    name.text += word.text;
                    auto text = std::move(name.text);
                    auto const first = name.word;
                    name = pieceOf(model::united(name.box, word.box), name.height, m_axis);
                    name.text = std::move(text);
                    name.word = first;
                } else {
                    auto name = pieceOf(word.box, std::max(word.size, 1.0F), m_axis);
                    name.text = word.text;
                    name.word = w;
                    names.push_back(std::move(name));
                }
                goesOn = true;
            }
        }
        std::erase_if(names, [](auto const& name) { return !looksLikePinName(name.text); });
        return names;
    }

    struct Naming {
        std::vector<std::size_t> names;  // index a number; npos: none
        std::size_t found = 0;
    };
    static constexpr auto kNone = static_cast<std::size_t>(-1);

    static Naming nameSide(Chain const& chain, std::vector<Piece> const& names, Side side, std::optional<model::Points> limit) {
        Naming naming;
        naming.names.assign(chain.numbers.size(), kNone);
        std::vector<bool> used(names.size(), false);
        auto const pitch = chain.numbers.size() > 1 ? std::abs(chain.numbers[1].along - chain.numbers[0].along) : 4 * chain.numbers[0].height;
        auto const pick = [&](std::size_t n, model::Points level, bool again) {
            auto const& number = chain.numbers[n];
            std::size_t best = kNone;
            model::Points bestGap = kFurthestName * number.height;
            for (std::size_t i = 0; i < names.size(); ++i) {
                if (used[i] && !again) continue;
                auto const& name = names[i];
                if (std::abs(name.along - number.along) > level) continue;
                auto const gap = side == Side::Before ? number.across0 - name.across1 : name.across0 - number.across1;
                if (gap < -0.3F * number.height || gap >= bestGap) continue;
                if (limit && (side == Side::Before ? name.across0 < *limit : name.across1 > *limit)) continue;
                bestGap = gap;
                best = i;
            }
            return best;
        };
        for (std::size_t n = 0; n < chain.numbers.size(); ++n) {
            auto const best = pick(n, std::min(kNameLevel * chain.numbers[n].height, 0.55F * pitch), false);
            if (best == kNone) continue;
            naming.names[n] = best;
            used[best] = true;
            ++naming.found;
        }
        // A name between two numbers that a brace joins is both numbers' name.
        if (naming.found >= 1 && naming.found < chain.numbers.size() && !chain.filled) {
            auto const own = naming.names;
            for (std::size_t n = 0; n < chain.numbers.size(); ++n) {
                if (own[n] != kNone) continue;
                auto const best = pick(n, 0.75F * pitch, true);
                if (best == kNone || std::find(own.begin(), own.end(), best) != own.end()) continue;
                naming.names[n] = best;
                ++naming.found;
            }
        }
        return naming;
    }

    bool readPackage(std::vector<Chain const*> const& sides) {
        auto const names = namesNear(sides);
        std::size_t total = 0;
        for (auto const* side : sides) total += side->numbers.size();
        if (total < kFewestPins) return false;
        std::vector<Naming> best;
        std::size_t bestFound = 0;
        for (bool const outside : {true, false}) {
            std::vector<Naming> namings;
            std::size_t found = 0;
            for (std::size_t s = 0; s < sides.size(); ++s) {
                bool const before = (s == 0) == outside;
                std::optional<model::Points> limit;
                if (!outside && sides.size() == 2) limit = (sides[0]->numbers[0].across() + sides[1]->numbers[0].across()) / 2;
                if (limit) limit = *limit + (before ? -1.0F : 1.0F) * sides[0]->numbers[0].height;
                namings.push_back(nameSide(*sides[s], names, before ? Side::Before : Side::Behind, limit));
                found += namings.back().found;
            }
            if (found > bestFound) {
                bestFound = found;
                best = std::move(namings);
            }
        }
        bool filled = false;
        for (auto const* side : sides) filled = filled || side->filled;
        // Every number needs its name; one of many may be left bare (not connected).
        if (bestFound < kFewestPins || (filled ? bestFound < total : bestFound + total / 8 < total)) return false;
        std::vector<model::Pin> pins;
        for (std::size_t s = 0; s < sides.size(); ++s) {
            for (std::size_t n = 0; n < sides[s]->numbers.size(); ++n) {
                auto const& number = sides[s]->numbers[n];
                model::Pin pin{std::to_string(number.value), {}, {}, {}, m_page.page, number.box};
                if (auto const index = best[s].names[n]; index != kNone) {
                    pin.name = names[index].text;
                    pin.box = model::united(pin.box, names[index].box);
                }
                pins.push_back(std::move(pin));
            }
        }
        std::stable_sort(pins.begin(), pins.end(), [](auto const& a, auto const& b) { return *plainNumber(a.number) < *plainNumber(b.number); });
        for (std::size_t i = 0; i < pins.size(); ++i) {
            if (*plainNumber(pins[i].number) != static_cast<int>(i) + 1) return false;
        }
        if (overlapsFound(pins)) return false;
        for (auto const* side : sides) {
            for (auto const& number : side->numbers) m_taken[number.word] = true;
        }
        m_found.push_back(std::move(pins));
        return true;
    }

    static model::Rect boxOf(std::vector<model::Pin> const& pins) {
        model::Rect box;
        for (auto const& pin : pins) box = model::united(box, pin.box);
        return box;
    }

    // Numbers inside a package that was read (of its gates, say) are no package.
    [[nodiscard]] bool overlapsFound(std::vector<model::Pin> const& pins) const {
        auto const box = boxOf(pins);
        return std::any_of(m_found.begin(), m_found.end(), [&box](auto const& other) {
            auto const otherBox = boxOf(other);
            auto const common = model::intersection(box, otherBox);
            return !common.empty() && common.area() > 0.25F * std::min(box.area(), otherBox.area());
        });
    }

    // The package name printed nearest to each drawing, one name for one drawing.
    void namePackages() {
        for (auto& pins : m_found) {
            auto const box = boxOf(pins);
            auto const height = m_page.bodySize > 0 ? m_page.bodySize : 10;
            model::Points bestGap = kPackageNear * height;
            std::string package;
            for (auto const& line : m_page.lines) {
                auto const gapY = -model::overlap(line.box.y0, line.box.y1, box.y0, box.y1);
                if (gapY > bestGap || model::overlap(line.box.x0, line.box.x1, box.x0, box.x1) < 0) continue;
                std::string text;
                for (std::uint32_t w = line.firstWord; w < line.firstWord + std::min<std::uint32_t>(line.wordCount, 8); ++w) {
                    if (!text.empty()) text += ' ';
                    text += m_page.words[w].text;
                }
                auto const name = packages::findPackageName(text);
                if (!name) continue;
                bestGap = std::max(0.0F, gapY);
                package = text.substr(name->begin, name->end - name->begin);
            }
            for (auto& pin : pins) pin.package = package;
        }
    }

    model::PageLayout const& m_page;
    Axis m_axis = Axis::Columns;
    std::vector<bool> m_taken;  // words that are numbers of a drawing that was read
    std::vector<std::vector<model::Pin>> m_found;
};

}  // namespace

std::vector<std::vector<model::Pin>> pinsOfDrawings(model::PageLayout const& page) { return Drawings(page).find(); }

}  // namespace standin::pins

// Runs of words are names; each number takes the nearest one at its level, on the
// side where names stand. A name between two numbers is both numbers' name (a
// brace joins them). Tested by tests/extractors/pins/pin_drawing_test.cpp.
#include "extractors/pins/pin_lettering.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <string_view>

#include "extractors/pins/pin_names.h"

namespace standin::pins {

namespace {

// In heights of the numbers.
constexpr model::Points kFurthestName = 12;  // from a number to its name
constexpr model::Points kAround = 22;        // names looked at around the numbers
constexpr model::Points kNameLevel = 0.85F;  // a name's centre from its number's
constexpr model::Points kTouch = 0.3F;       // a name may reach so far over its number
// In distances from number to number.
constexpr float kOwnLevel = 0.55F;
constexpr float kBraceLevel = 0.75F;
constexpr float kBetween = 0.2F;  // so far off its number a name may stand between two
// In heights of letters.
constexpr model::Points kOneName = 0.8F;     // gap between words of a name
constexpr model::Points kRaisedSign = 0.5F;  // gap before a sign set higher or lower ("VCC" "+")

constexpr auto kNone = static_cast<std::size_t>(-1);

bool isSign(std::string_view text) { return text == "+" || text == "-" || text == "\u2212" || text == "\u2013"; }

// From the end of `a` to the begin of `b` in the direction of reading.
model::Points gapBetween(model::Word const& a, model::Word const& b) {
    if (a.direction == model::Direction::Up) return a.box.y0 - b.box.y1;
    if (a.direction == model::Direction::Down) return b.box.y0 - a.box.y1;
    return b.box.x0 - a.box.x1;
}

// Columns have upright names; rows turned ones too.
bool mayName(model::TextLine const& line, Axis axis) {
    if (line.direction == model::Direction::Right) return true;
    return axis == Axis::Rows && (line.direction == model::Direction::Up || line.direction == model::Direction::Down);
}

Piece joined(Piece const& a, std::string_view text, model::Rect const& box, Axis axis) {
    auto piece = pieceOf(model::united(a.box, box), a.height, axis);
    piece.text = a.text + std::string(text);
    piece.word = a.word;
    return piece;
}

// A sign set higher or lower is a line of its own: it belongs to the name it touches.
void joinSigns(std::vector<Piece>& names, Axis axis) {
    for (std::size_t s = 0; s < names.size(); ++s) {
        if (!isSign(names[s].text)) continue;
        for (auto& name : names) {
            auto const gap = names[s].box.x0 - name.box.x1;
            bool const level = model::overlap(name.box.y0, name.box.y1, names[s].box.y0, names[s].box.y1) > 0;
            if (isSign(name.text) || !level || gap < -kTouch * name.height || gap > kRaisedSign * name.height) continue;
            name = joined(name, names[s].text, names[s].box, axis);
            names[s].text.clear();
            break;
        }
    }
    std::erase_if(names, [](auto const& name) { return name.text.empty(); });
}

// Which name each number of a side has.
class SideReader {
public:
    SideReader(Chain const& chain, std::vector<Piece> const& names, std::vector<Piece> const& numbers, Side side, std::optional<model::Points> limit)
        : m_chain(chain), m_names(names), m_numbers(numbers), m_side(side), m_limit(limit), m_own(chain.numbers.size(), kNone), m_used(names.size(), false) {}

    Naming read() {
        auto const level = std::min(kNameLevel * m_chain.numbers[0].height, kOwnLevel * m_chain.pitch());
        for (std::size_t n = 0; n < m_own.size(); ++n) {
            m_own[n] = pick(n, level, [this](std::size_t i) { return !m_used[i]; });
            if (m_own[n] != kNone) m_used[m_own[n]] = true;
        }
        auto all = m_own;
        bool const some = std::any_of(m_own.begin(), m_own.end(), [](auto index) { return index != kNone; });
        if (some && !m_chain.filled) shareBraced(all);
        Naming naming;
        for (auto const index : all) {
            naming.names.push_back(index == kNone ? Piece{} : m_names[index]);
            if (index != kNone) ++naming.found;
        }
        return naming;
    }

private:
    template <class Allowed>
    [[nodiscard]] std::size_t pick(std::size_t n, model::Points level, Allowed&& allowed) const {
        auto const& number = m_chain.numbers[n];
        std::size_t best = kNone;
        model::Points bestGap = kFurthestName * number.height;
        for (std::size_t i = 0; i < m_names.size(); ++i) {
            auto const& name = m_names[i];
            if (std::abs(name.along - number.along) > level || !allowed(i)) continue;
            auto const gap = m_side == Side::Before ? number.across0 - name.across1 : name.across0 - number.across1;
            if (gap < -kTouch * number.height || gap >= bestGap || beyondLimit(name) || acrossANumber(number, name)) continue;
            bestGap = gap;
            best = i;
        }
        return best;
    }

    [[nodiscard]] bool beyondLimit(Piece const& name) const { return m_limit && (m_side == Side::Before ? name.across0 < *m_limit : name.across1 > *m_limit); }

    [[nodiscard]] bool acrossANumber(Piece const& number, Piece const& name) const {
        auto const from = m_side == Side::Before ? name.across1 : number.across1;
        auto const to = m_side == Side::Before ? number.across0 : name.across0;
        return std::any_of(m_numbers.begin(), m_numbers.end(),
                           [&](auto const& other) { return other.across() > from && other.across() < to && std::abs(other.along - number.along) < kNameLevel * number.height; });
    }

    // Names of a side may all stand a little higher or lower than their numbers.
    [[nodiscard]] model::Points usualOffset() const {
        std::vector<model::Points> offsets;
        for (std::size_t n = 0; n < m_own.size(); ++n) {
            if (m_own[n] != kNone) offsets.push_back(m_names[m_own[n]].along - m_chain.numbers[n].along);
        }
        if (offsets.size() < 3) return 0;
        std::nth_element(offsets.begin(), offsets.begin() + static_cast<std::ptrdiff_t>(offsets.size() / 2), offsets.end());
        return offsets[offsets.size() / 2];
    }

    // A name that stands between two numbers, one of which may have it already.
    void shareBraced(std::vector<std::size_t>& all) const {
        auto const usual = usualOffset();
        auto const between = kBetween * m_chain.pitch();
        for (std::size_t n = 0; n < m_own.size(); ++n) {
            if (m_own[n] != kNone) continue;
            all[n] = pick(n, kBraceLevel * m_chain.pitch(), [&](std::size_t i) {
                auto const owner = static_cast<std::size_t>(std::find(m_own.begin(), m_own.end(), i) - m_own.begin());
                if (owner == m_own.size()) return true;
                auto const offset = m_names[i].along - m_chain.numbers[owner].along - usual;
                return (owner + 1 == n && offset > between) || (owner == n + 1 && offset < -between);
            });
        }
        auto const taken = all;
        for (std::size_t n = 0; n < all.size(); ++n) {
            bool const braced = (n > 0 && taken[n - 1] == all[n]) || (n + 1 < all.size() && taken[n + 1] == all[n]);
            if (m_own[n] == kNone && !braced) all[n] = kNone;
        }
    }

    Chain const& m_chain;
    std::vector<Piece> const& m_names;
    std::vector<Piece> const& m_numbers;
    Side m_side;
    std::optional<model::Points> m_limit;  // names end here: the middle of the package
    std::vector<std::size_t> m_own;        // name of each number
    std::vector<bool> m_used;              // names that a number has
};

Side opposite(Side side) { return side == Side::Before ? Side::Behind : Side::Before; }

}  // namespace

bool mayLetter(model::Word const& word) {
    using model::Owner;
    return (word.owner == Owner::None || word.owner == Owner::Figure || word.owner == Owner::Text || word.owner == Owner::Table) && !word.unknown;
}

Lettering::Lettering(model::PageLayout const& page, std::span<PackageSide const> sides, std::span<std::uint32_t const> numbers) : m_page(page), m_sides(sides), m_numbers(numbers) {
    model::Points height = 1;
    for (auto const& side : sides) {
        for (auto const& number : side.chain->numbers) {
            m_around = model::united(m_around, number.box);
            height = std::max(height, number.height);
        }
    }
    m_around = m_around.grown(kAround * height);
}

std::vector<Piece> Lettering::namesAround(Axis axis) const {
    std::vector<Piece> names;
    for (auto const& line : m_page.lines) {
        if (!line.box.intersects(m_around) || !mayName(line, axis)) continue;
        model::Word const* last = nullptr;
        for (std::uint32_t w = line.firstWord; w < line.firstWord + line.wordCount; ++w) {
            auto const& word = m_page.words[w];
            auto const isNumber = [&](auto const& side) {
                return std::any_of(side.chain->numbers.begin(), side.chain->numbers.end(), [w](auto const& number) { return number.word == w; });
            };
            if (!mayLetter(word) || std::any_of(m_sides.begin(), m_sides.end(), isNumber)) {
                last = nullptr;
                continue;
            }
            if (last != nullptr && gapBetween(*last, word) < kOneName * std::max(word.size, 1.0F)) {
                names.back() = joined(names.back(), (word.spaceBefore ? " " : "") + word.text, word.box, axis);
            } else {
                names.push_back(pieceOf(word.box, std::max(word.size, 1.0F), axis));
                names.back().text = word.text;
                names.back().word = w;
            }
            last = &word;
        }
    }
    joinSigns(names, axis);
    std::erase_if(names, [](auto const& name) { return !looksLikePinName(name.text); });
    return names;
}

std::vector<Piece> Lettering::numberPieces(Axis axis) const {
    std::vector<Piece> pieces;
    for (auto const w : m_numbers) {
        auto const& word = m_page.words[w];
        if (word.box.intersects(m_around)) pieces.push_back(pieceOf(word.box, std::max(word.size, 1.0F), axis));
    }
    return pieces;
}

std::vector<Naming> Lettering::names(Lettered where) const {
    std::vector<Naming> namings;
    for (auto const& side : m_sides) {
        auto const axis = side.chain->axis;
        auto names = namesAround(axis);
        if (where == Lettered::Inside) std::erase_if(names, [](auto const& name) { return isSign(name.text); });
        std::optional<model::Points> limit;
        auto const other = std::find_if(m_sides.begin(), m_sides.end(), [&](auto const& s) { return s.chain != side.chain && s.chain->axis == axis; });
        if (where == Lettered::Inside && other != m_sides.end()) {
            auto const middle = (side.chain->across() + other->chain->across()) / 2;
            limit = middle + (side.outside == Side::Before ? 1.0F : -1.0F) * side.chain->numbers[0].height;
        }
        auto const direction = where == Lettered::Outside ? side.outside : opposite(side.outside);
        namings.push_back(SideReader(*side.chain, names, numberPieces(axis), direction, limit).read());
    }
    return namings;
}

}  // namespace standin::pins

// Drawings that touch are one sign (a circle and a C are "°C"). A sign is set against the
// lines of its height, nearest word first; in tables it may stand where a cell has no text.
// A minus is thin: a short stroke at half the height of the digits behind it.
//
// Tested by tests/extractors/figures/drawn_signs_test.cpp.
#include "extractors/figures/drawn_signs.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include <fmt/format.h>

#include "text/utf8.h"

namespace standin::figures {

namespace {

using model::PageLayout;
using model::Points;
using model::Rect;
using model::Word;

// In font sizes of the text beside it.
constexpr Points kTallest = 1.3F;
constexpr Points kWidest = 2.2F;
constexpr Points kLeast = 0.2F;            // a smaller one is a speck or a dot
constexpr Points kThinnest = 0.12F;        // a thinner one is a line
constexpr Points kOffCentre = 0.5F;        // of its middle from the middle of the line
constexpr Points kGap = 0.9F;              // to the word beside it
constexpr Points kJoint = 0.15F;           // between parts of one sign
constexpr Points kDrawingNear = 1.0F;      // larger drawings so near make it a part of theirs
constexpr Points kShortestMinus = 0.3F;
constexpr Points kLongestMinus = 0.9F;
constexpr Points kMinusOffCentre = 0.2F;   // of a minus from the middle of the digits
constexpr Points kMinusGap = 0.5F;         // to the digits behind it
constexpr Points kCovered = 0.7F;          // of a sign's width by a word that was read in its place; a root reaches over its word
constexpr std::size_t kMostDrawings = 2000;  // of a page, outside of its figures

bool isSmall(Rect const& box, Points size) { return box.height() <= kTallest * size && box.width() <= kWidest * size; }

bool isSign(Rect const& box, Points size) {
    return std::max(box.width(), box.height()) >= kLeast * size && std::min(box.width(), box.height()) >= kThinnest * size;
}

bool isThin(Rect const& box, Points size) { return box.height() < kThinnest * size && box.width() >= kShortestMinus * size && box.width() <= kLongestMinus * size; }

// Parts that touch as one, however many of them meet.
std::vector<Rect> joined(std::vector<Rect> const& parts, Points joint) {
    std::vector<Rect> shapes;
    for (Rect shape : parts) {
        for (auto touching = shapes.begin(); touching != shapes.end();) {
            if (!touching->grown(joint).intersects(shape)) {
                ++touching;
                continue;
            }
            shape = model::united(shape, *touching);
            shapes.erase(touching);
            touching = shapes.begin();  // it is larger now
        }
        shapes.push_back(shape);
    }
    std::sort(shapes.begin(), shapes.end(), [](Rect const& a, Rect const& b) { return std::pair(a.y0, a.x0) < std::pair(b.y0, b.x0); });
    return shapes;
}

struct Neighbour {
    Word const* word = nullptr;
    Points gap = 0;
    bool lone = false;  // that word is all of its line
};

// The nearest words on the sign's height, where they are near enough.
struct Neighbours {
    std::optional<Neighbour> left, right;
    bool read = false;  // a word stands where the sign is drawn: recognised, or text below its outline
};

class Page {
public:
    Page(PageLayout const& page, std::vector<model::Table const*> tables, std::vector<Rect> figures) : m_page(page), m_tables(std::move(tables)), m_figures(std::move(figures)) {}

    void find(std::vector<model::PlacedText>& signs) const {
        if (m_page.bodySize <= 0 || m_page.words.empty()) return;
        std::vector<Rect> small;
        std::vector<Rect> large;
        for (auto const& drawing : m_page.drawings) {
            if (inFigure(drawing.box)) continue;
            (isSmall(drawing.box, 2 * m_page.bodySize) ? small : large).push_back(drawing.box);
        }
        std::erase_if(small, [&](Rect const& part) {
            return std::any_of(large.begin(), large.end(), [&](Rect const& drawing) { return drawing.grown(kDrawingNear * m_page.bodySize).intersects(part); });
        });
        if (small.size() > kMostDrawings) {
            signs.push_back({"not looked for: the page has too many drawings", m_page.page, {}});
            return;
        }
        std::vector<model::PlacedText> found;
        for (auto const& shape : joined(small, kJoint * m_page.bodySize)) {
            if (auto place = placeOf(shape)) found.push_back({std::move(*place), m_page.page, shape});
        }
        for (auto const& rule : m_page.rules) {
            if (rule.axis != model::Rule::Axis::Horizontal || !isThin(rule.box, m_page.bodySize) || inFigure(rule.box)) continue;
            // Few strokes stand in front of digits: only those are set against all other rules.
            auto place = placeOfMinus(rule.box);
            if (place && standsAlone(rule)) found.push_back({std::move(*place), m_page.page, rule.box});
        }
        if (found.size() > kMostDrawnSigns) {
            found.resize(kMostDrawnSigns);
            found.push_back({"and more of them on the page", m_page.page, {}});
        }
        std::move(found.begin(), found.end(), std::back_inserter(signs));
    }

private:
    bool inFigure(Rect const& shape) const {
        return std::any_of(m_figures.begin(), m_figures.end(), [&](Rect const& figure) { return figure.contains(shape.centre()); });
    }

    model::Table const* tableAt(Rect const& shape) const {
        auto const found = std::find_if(m_tables.begin(), m_tables.end(), [&](auto const* table) { return table->box.contains(shape.centre()); });
        return found == m_tables.end() ? nullptr : *found;
    }

    // No other rule goes on from it.
    bool standsAlone(model::Rule const& rule) const {
        return std::none_of(m_page.rules.begin(), m_page.rules.end(), [&](model::Rule const& other) { return &other != &rule && other.box.grown(1).intersects(rule.box.grown(1)); });
    }

    // For each word that can stand beside a shape of that height.
    template <class Visit>
    void visitWordsBeside(Rect const& shape, Points offCentre, Visit const& visit) const {
        for (auto const& line : m_page.lines) {
            Points const middle = line.baseline - 0.35F * line.size;
            if (line.direction != model::Direction::Right || std::abs(shape.centre().y - middle) > offCentre * line.size) continue;
            for (std::uint32_t w = line.firstWord; w < line.firstWord + line.wordCount; ++w) {
                Word const& word = m_page.words[w];
                if (!word.hidden && word.owner != model::Owner::Furniture && word.owner != model::Owner::Figure && !word.dotLeader) visit(word, line);
            }
        }
    }

    Neighbours wordsBeside(Rect const& shape) const {
        Neighbours beside;
        visitWordsBeside(shape, kOffCentre, [&](Word const& word, model::TextLine const& line) {
            if (!isSmall(shape, line.size) || !isSign(shape, line.size)) return;
            Points const covered = model::overlap(word.box.x0, word.box.x1, shape.x0, shape.x1);
            beside.read = beside.read || (word.box.contains(shape.centre()) && covered >= kCovered * shape.width());
            bool const before = word.box.centre().x < shape.centre().x;
            auto& nearest = before ? beside.left : beside.right;
            Points const gap = before ? shape.x0 - word.box.x1 : word.box.x0 - shape.x1;
            if (gap <= kGap * line.size && (!nearest || gap < nearest->gap)) nearest = Neighbour{&word, gap, line.wordCount == 1};
        });
        return beside;
    }

    // Where the sign stands, in words; nothing where it is none.
    std::optional<std::string> placeOf(Rect const& shape) const {
        if (isThin(shape, m_page.bodySize)) return placeOfMinus(shape);
        auto const beside = wordsBeside(shape);
        if (beside.read) return std::nullopt;
        auto const* table = tableAt(shape);
        if (!beside.left && !beside.right) return table != nullptr ? placeInEmptyCell(shape, *table) : std::nullopt;
        // Outside of tables: a bullet, or an arrow at the lettering of a drawing.
        if (table == nullptr && (!beside.left || (!beside.right && beside.left->lone))) return std::nullopt;
        bool const behind = beside.left && (!beside.right || beside.left->gap <= beside.right->gap);
        return fmt::format("{} \"{}\"", behind ? "behind" : "before", (behind ? beside.left : beside.right)->word->text);
    }

    std::optional<std::string> placeInEmptyCell(Rect const& shape, model::Table const& table) const {
        // Other tables may be drawings that were taken for one.
        if (table.kind != model::TableKind::Specification || !isSmall(shape, m_page.bodySize) || !isSign(shape, m_page.bodySize)) return std::nullopt;
        bool const taken = std::any_of(table.cells.begin(), table.cells.end(), [&](model::Cell const& cell) { return !cell.text.empty() && cell.box.contains(shape.centre()); });
        return taken ? std::nullopt : std::optional<std::string>(kAloneInCell);
    }

    std::optional<std::string> placeOfMinus(Rect const& dash) const {
        std::optional<std::string> place;
        visitWordsBeside(dash, kMinusOffCentre, [&](Word const& word, model::TextLine const& line) {
            Points const gap = word.box.x0 - dash.x1;
            bool const number = !word.text.empty() && (text::isAsciiDigit(word.text.front()) || word.text.front() == '.');
            if (number && isThin(dash, line.size) && gap <= kMinusGap * line.size && gap >= -kThinnest * line.size) place = fmt::format("before \"{}\"", word.text);
        });
        return place;
    }

    PageLayout const& m_page;
    std::vector<model::Table const*> m_tables;
    std::vector<Rect> m_figures;
};

}  // namespace

std::vector<model::PlacedText> drawnSigns(std::span<PageLayout const> pages, std::span<model::Table const> tables, std::span<model::Figure const> figures) {
    std::vector<model::PlacedText> signs;
    for (auto const& page : pages) {
        std::vector<model::Table const*> ofPage;
        for (auto const& table : tables) {
            if (table.page == page.page) ofPage.push_back(&table);
        }
        std::vector<Rect> drawn;
        for (auto const& figure : figures) {
            if (figure.page == page.page) drawn.push_back(figure.box);
        }
        Page(page, std::move(ofPage), std::move(drawn)).find(signs);
    }
    return signs;
}

}  // namespace standin::figures

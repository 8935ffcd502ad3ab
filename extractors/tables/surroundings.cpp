// Lines outside all tables, above the table and near it, are looked at from the
// nearest upwards. A line that starts like a caption is the caption; lines that
// state conditions make the lead, with what they go on from.
// Tested by tests/extractors/tables/find_tables_test.cpp.
#include "extractors/tables/surroundings.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string>
#include <string_view>
#include <utility>

#include "extractors/tables/pieces.h"
#include "extractors/tables/text_shape.h"
#include "text/utf8.h"

namespace standin::tables {

using model::PageLayout;
using model::Points;
using model::Rect;
using model::Table;

namespace {

// In font heights.
constexpr float kNear = 2.6F;          // from a table to the first line above it
constexpr float kNextLine = 2.2F;      // from line to line
constexpr float kSentenceGap = 0.45F;  // line heights between lines of one sentence
constexpr std::size_t kMostLines = 4;
constexpr std::size_t kLongestLead = 400;  // bytes

struct Above {
    std::string text;
    Rect box;
    bool caption = false;
    bool heading = false;
};

bool closesBracket(std::string const& text) { return std::count(text.begin(), text.end(), ')') > std::count(text.begin(), text.end(), '('); }

bool startsLikeCaption(std::string_view text) {
    static constexpr std::array<std::string_view, 8> kWords{"table", "tabelle", "tab.", "表", "таблица", "табл", "附表", "第"};
    auto const lower = text::asciiLower(text::trimmed(text));
    for (auto word : kWords) {
        if (lower.compare(0, word.size(), word) != 0) continue;
        auto const rest = std::string_view(lower).substr(word.size(), 12);
        return rest.find_first_of("0123456789") != std::string_view::npos && rest.find_first_of("0123456789") < 4;
    }
    return false;
}

}  // namespace

void readSurroundings(PageLayout const& page, std::vector<Table>& tables, std::vector<char> const& taken) {
    std::vector<Above> free;  // printed lines outside tables, pieces of a baseline joined
    struct Item {
        std::uint32_t line;
        Points baseline;
    };
    std::vector<Item> order;
    for (std::uint32_t i = 0; i < page.lines.size(); ++i) {
        auto const& line = page.lines[i];
        if (line.direction != model::Direction::Right || line.wordCount == 0) continue;
        bool used = false;
        for (std::uint32_t w = line.firstWord; w < line.firstWord + line.wordCount && !used; ++w) used = taken[w] != 0 || !isTableWord(page.words[w]);
        if (!used) order.push_back({i, line.baseline});
    }
    std::stable_sort(order.begin(), order.end(), [](Item const& a, Item const& b) { return a.baseline < b.baseline; });
    std::vector<char> caption(page.lines.size(), 0);
    std::vector<char> heading(page.lines.size(), 0);
    for (auto const& block : page.blocks) {
        for (std::uint32_t i = block.firstLine; i < block.firstLine + block.lineCount && i < caption.size(); ++i) {
            caption[i] = block.role == model::BlockRole::Caption ? 1 : 0;
            heading[i] = block.role == model::BlockRole::Heading ? 1 : 0;
        }
    }
    for (auto& table : tables) {
        Points top = table.box.y0;
        Points const left = table.box.x0;
        Points const right = table.box.x1;
        std::vector<Above> above;
        for (std::size_t k = order.size(); k-- > 0 && above.size() < kMostLines;) {
            auto const& line = page.lines[order[k].line];
            Points const font = line.size > 1 ? line.size : 10;
            if (line.box.centre().y >= top) continue;
            if (model::overlap(line.box.x0, line.box.x1, left, right) < 0.3F * std::min(line.box.width(), right - left)) continue;
            // Another table in between ends the search.
            bool const between = std::any_of(tables.begin(), tables.end(), [&](Table const& other) {
                return &other != &table && other.box.y0 > line.box.y1 - font && other.box.y1 <= table.box.y0 + font && model::overlap(other.box.x0, other.box.x1, left, right) > 0;
            });
            if (between) break;
            Points const reach = (above.empty() ? kNear : kNextLine) * font;
            if (!above.empty() && line.box.y1 > top + 0.2F * font && line.box.y0 > above.back().box.y0 - 0.3F * font) {
                // The same baseline: to the left of what was taken.
                auto piece = makePiece(page, line, line.firstWord, line.wordCount);
                auto& last = above.back();
                if (line.box.x0 < last.box.x0) {
                    last.text = textOf(page, piece) + ' ' + last.text;
                } else {
                    last.text += ' ' + textOf(page, piece);
                }
                last.box = united(last.box, line.box);
                continue;
            }
            if (top - line.baseline > reach) break;
            auto piece = makePiece(page, line, line.firstWord, line.wordCount);
            above.push_back({textOf(page, piece), line.box, caption[order[k].line] != 0, heading[order[k].line] != 0});
            top = line.box.y0 + 0.35F * font;
        }
        std::string lead;
        Rect leadBox;
        std::string tail;  // lines right above the table that end a bracket: "unless otherwise" / "specified)"
        for (auto& line : above) {
            if (!tail.empty() && opensBracket(line.text)) line.text += ' ' + std::exchange(tail, {});
            if (startsLikeCaption(line.text)) {
                table.caption = line.text;
                break;
            }
            if (!statesConditions(line.text) && lead.empty()) {
                if (line.caption && table.caption.empty()) table.caption = line.text;
                if (closesBracket(line.text)) tail = tail.empty() ? line.text : line.text + ' ' + tail;
                continue;
            }
            bool const closed = !lead.empty() && (lead[0] == '(' || (lead[0] >= 'A' && lead[0] <= 'Z'));
            if (!lead.empty() && (closed || line.heading) && !statesConditions(line.text)) break;
            // What stands further off is no part of the sentence.
            if (!lead.empty() && leadBox.y0 - line.box.y1 > kSentenceGap * leadBox.height() && !statesConditions(line.text)) break;
            leadBox = line.box;
            if (line.text.size() + lead.size() > kLongestLead) break;
            lead = lead.empty() ? line.text : line.text + ' ' + lead;
        }
        // A caption that states conditions, perhaps going on in the next line.
        if (statesConditions(table.caption)) {
            bool const open = opensBracket(table.caption);
            if (open && !lead.empty()) table.caption += ' ' + lead;
            auto const bracket = table.caption.find('(');
            if (open || lead.empty()) lead = bracket == std::string::npos ? table.caption : table.caption.substr(bracket);
        }
        table.lead = std::move(lead);
        // The second part of one table, right below a head of its own.
        auto const upper = std::find_if(tables.begin(), tables.end(), [&](Table const& other) {
            return &other != &table && std::abs(other.box.y1 - table.box.y0) < 1.5F && std::abs(other.box.x0 - left) < 1.5F && std::abs(other.box.x1 - right) < 1.5F;
        });
        if (table.lead.empty() && upper != tables.end()) table.lead = upper->lead;
    }
}

}  // namespace standin::tables

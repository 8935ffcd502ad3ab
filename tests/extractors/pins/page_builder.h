// Pages made word by word, for tests of lists and drawings.
#pragma once

#include <string>
#include <string_view>

#include "model/page_layout.h"

namespace standin::pins::testing {

// A page of 10 point text; every call of `line` adds one line that is its own block.
class PageBuilder {
public:
    PageBuilder() {
        m_page.page = 1;
        m_page.width = 600;
        m_page.height = 800;
        m_page.bodySize = 10;
    }

    // Words parted by spaces, 5 points a byte, from x; y is the top.
    PageBuilder& line(float x, float y, std::string_view text) {
        model::TextLine line;
        line.firstWord = static_cast<std::uint32_t>(m_page.words.size());
        line.size = 10;
        while (!text.empty()) {
            auto const end = std::min(text.find(' '), text.size());
            model::Word word;
            word.text = std::string(text.substr(0, end));
            word.size = 10;
            word.box = {x, y, x + 5 * static_cast<float>(end), y + 10};
            word.owner = m_owner;
            line.box = model::united(line.box, word.box);
            x = word.box.x1 + 3;
            m_page.words.push_back(word);
            text.remove_prefix(std::min(end + 1, text.size()));
        }
        line.wordCount = static_cast<std::uint32_t>(m_page.words.size()) - line.firstWord;
        model::Block block;
        block.firstLine = static_cast<std::uint32_t>(m_page.lines.size());
        block.lineCount = 1;
        block.box = line.box;
        m_page.lines.push_back(line);
        m_page.blocks.push_back(block);
        return *this;
    }
    // One word that reads upwards, 5 points a byte; y is its top.
    PageBuilder& turned(float x, float y, std::string_view text) {
        line(x, y, text);
        auto& word = m_page.words.back();
        word.direction = model::Direction::Up;
        word.box = {x, y, x + 10, y + 5 * static_cast<float>(text.size())};
        m_page.lines.back().direction = model::Direction::Up;
        m_page.lines.back().box = m_page.blocks.back().box = word.box;
        return *this;
    }
    PageBuilder& drawing(model::Rect box) {
        m_page.drawings.push_back({box, 7});
        return *this;
    }
    // Four rules.
    PageBuilder& frame(model::Rect const& box) {
        using Axis = model::Rule::Axis;
        m_page.rules.push_back({Axis::Horizontal, {box.x0, box.y0, box.x1, box.y0}});
        m_page.rules.push_back({Axis::Horizontal, {box.x0, box.y1, box.x1, box.y1}});
        m_page.rules.push_back({Axis::Vertical, {box.x0, box.y0, box.x0, box.y1}});
        m_page.rules.push_back({Axis::Vertical, {box.x1, box.y0, box.x1, box.y1}});
        return *this;
    }
    PageBuilder& owner(model::Owner owner) {
        m_owner = owner;
        return *this;
    }
    [[nodiscard]] model::PageLayout const& page() const { return m_page; }

private:
    model::PageLayout m_page;
    model::Owner m_owner = model::Owner::None;
};

}  // namespace standin::pins::testing

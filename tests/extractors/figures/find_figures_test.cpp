#include "extractors/figures/find_figures.h"

#include <string_view>

#include <gtest/gtest.h>

#include "extractors/figures/lettering.h"

namespace {

namespace model = standin::model;
using standin::figures::findFigures;

class FindFigures : public testing::Test {
protected:
    FindFigures() {
        m_page.page = 1;
        m_page.width = 600;
        m_page.height = 800;
        m_page.bodySize = 10;
    }

    // One line, a block of its own unless it goes on with the block before.
    void line(float x, float y, std::string_view text, model::BlockRole role = model::BlockRole::Paragraph, bool goesOn = false) {
        model::TextLine line;
        line.firstWord = static_cast<std::uint32_t>(m_page.words.size());
        line.size = 10;
        while (!text.empty()) {
            auto const end = std::min(text.find(' '), text.size());
            model::Word word;
            word.text = std::string(text.substr(0, end));
            word.size = 10;
            word.box = {x, y, x + 5 * static_cast<float>(end), y + 10};
            line.box = model::united(line.box, word.box);
            x = word.box.x1 + 3;
            m_page.words.push_back(word);
            text.remove_prefix(std::min(end + 1, text.size()));
        }
        line.wordCount = static_cast<std::uint32_t>(m_page.words.size()) - line.firstWord;
        m_page.lines.push_back(line);
        if (goesOn) {
            ++m_page.blocks.back().lineCount;
            m_page.blocks.back().box = model::united(m_page.blocks.back().box, line.box);
        } else {
            model::Block block;
            block.firstLine = static_cast<std::uint32_t>(m_page.lines.size() - 1);
            block.lineCount = 1;
            block.box = line.box;
            block.role = role;
            m_page.blocks.push_back(block);
        }
    }
    void draw(model::Rect box) { m_page.drawings.push_back({box, 11}); }
    void box(model::Rect box) {
        for (float const y : {box.y0, box.y1}) m_page.rules.push_back({model::Rule::Axis::Horizontal, {box.x0, y, box.x1, y}, 0, false});
        for (float const x : {box.x0, box.x1}) m_page.rules.push_back({model::Rule::Axis::Vertical, {x, box.y0, x, box.y1}, 0, false});
    }
    std::vector<model::Figure> find(std::span<model::Table const> tables = {}, std::span<model::Section const> sections = {}) {
        return findFigures(std::span{&m_page, 1}, tables, sections);
    }
    model::Owner ownerOf(std::string_view text) const {
        for (auto const& word : m_page.words) {
            if (word.text == text) return word.owner;
        }
        ADD_FAILURE() << "no word " << text;
        return model::Owner::None;
    }
    static std::vector<std::string> textsOf(model::Figure const& figure) {
        std::vector<std::string> texts;
        for (auto const& text : figure.texts) texts.push_back(text.text);
        return texts;
    }

    model::PageLayout m_page;
};

using Texts = std::vector<std::string>;

TEST_F(FindFigures, ACurveWithItsAxes) {
    draw({200, 200, 400, 350});
    line(180, 330, "0");
    line(180, 220, "50");
    line(260, 352, "Delay / ms");
    line(200, 380, "Figure 3. Delay against temperature", model::BlockRole::Caption);
    line(60, 420, "The delay of the circuit rises with the temperature of the part as drawn above");
    auto const figures = find();
    ASSERT_EQ(figures.size(), 1U);
    EXPECT_EQ(figures[0].id, "f1");
    EXPECT_EQ(figures[0].read, model::FigureReading::Text);
    EXPECT_EQ(figures[0].caption, "Figure 3. Delay against temperature");
    EXPECT_EQ(textsOf(figures[0]), (Texts{"0", "50", "Delay / ms"}));
    EXPECT_EQ(figures[0].texts[2].box, (model::Rect{260, 352, 306, 362}));
    EXPECT_EQ(ownerOf("50"), model::Owner::Figure);
    EXPECT_EQ(ownerOf("Figure"), model::Owner::None);
    EXPECT_EQ(ownerOf("rises"), model::Owner::None);
    EXPECT_EQ(figures[0].shape.size(), 16U);
}

TEST_F(FindFigures, ABlockDiagramOfRulesOnly) {
    box({100, 200, 180, 240});
    box({200, 200, 280, 240});
    m_page.rules.push_back({model::Rule::Axis::Horizontal, {180, 220, 200, 220}, 0, false});
    line(110, 215, "Oscillator");
    line(210, 215, "Counter");
    auto const figures = find();
    ASSERT_EQ(figures.size(), 1U);
    EXPECT_EQ(textsOf(figures[0]), (Texts{"Oscillator", "Counter"}));
    EXPECT_EQ(figures[0].box, (model::Rect{100, 200, 280, 240}));
}

TEST_F(FindFigures, AFrameAroundAParagraphIsNone) {
    box({100, 200, 400, 240});
    line(110, 205, "Do not use this circuit where a failure of the part could hurt a person");
    line(110, 220, "and read the notes at the end of the sheet before you build it in", model::BlockRole::Paragraph, true);
    EXPECT_TRUE(find().empty());
    EXPECT_EQ(ownerOf("circuit"), model::Owner::None);
}

TEST_F(FindFigures, AParagraphBesideADrawingStaysText) {
    draw({300, 200, 400, 300});
    line(60, 210, "The output stays on until the voltage of the cell");
    line(60, 222, "has been above the limit for the whole delay time", model::BlockRole::Paragraph, true);
    auto const figures = find();
    ASSERT_EQ(figures.size(), 1U);
    EXPECT_TRUE(figures[0].texts.empty());
    EXPECT_EQ(figures[0].read, model::FigureReading::Vector);
    EXPECT_EQ(ownerOf("stays"), model::Owner::None);
}

TEST_F(FindFigures, AParagraphBesideATableStaysTextInsideAFrame) {
    box({40, 90, 560, 400});
    draw({100, 300, 200, 380});
    char const* const prose[] = {"The device switches loads in small tools", "keeps its losses low and comes in", "a flat case that may be soldered"};
    char const* const symbols[] = {"VDS", "ID"};
    for (int i = 0; i < 3; ++i) {
        float const y = 100 + 12 * static_cast<float>(i);
        line(50, y, prose[i]);
        m_page.lines.back().baseline = y + 8;
        if (i == 2) continue;  // below the table
        line(350, y, symbols[i], model::BlockRole::Paragraph, true);
        for (auto& word : m_page.words) word.owner = word.text == symbols[i] ? model::Owner::Table : word.owner;
    }
    model::Table table;
    table.page = 1;
    table.box = {350, 100, 400, 124};
    find({&table, 1});
    for (char const* word : {"switches", "losses", "soldered"}) EXPECT_EQ(ownerOf(word), model::Owner::None) << word;
}

TEST_F(FindFigures, TablesAndTheirRulesAreNone) {
    box({100, 200, 400, 240});
    line(110, 215, "Supply");
    model::Table table;
    table.page = 1;
    table.box = {100, 200, 400, 240};
    EXPECT_TRUE(find(std::span{&table, 1}).empty());
}

TEST_F(FindFigures, APictureTakesOnlyWhatStandsOnIt) {
    m_page.images.push_back({{200, 200, 300, 300}, 400, 400});
    line(220, 240, "OD");
    line(200, 305, "Top view");
    auto const figures = find();
    ASSERT_EQ(figures.size(), 1U);
    EXPECT_EQ(figures[0].read, model::FigureReading::Image);
    EXPECT_EQ(textsOf(figures[0]), (Texts{"OD"}));
    EXPECT_EQ(ownerOf("view"), model::Owner::None);
}

TEST_F(FindFigures, APictureBehindThePageTakesNothing) {
    m_page.images.push_back({{0, 0, 600, 800}, 400, 400});
    line(220, 240, "Features");
    auto const figures = find();
    ASSERT_EQ(figures.size(), 1U);
    EXPECT_TRUE(figures[0].texts.empty());
    EXPECT_EQ(ownerOf("Features"), model::Owner::None);
}

TEST_F(FindFigures, SectionHeadingsOnAFrameStayHeadings) {
    box({100, 200, 400, 300});
    draw({200, 220, 260, 280});
    line(110, 205, "Block diagram", model::BlockRole::Heading);
    line(210, 240, "REF");
    std::vector<model::Section> const sections{{"s4", model::SectionKind::BlockDiagram, "Block diagram", 1, 1, m_page.blocks[0].box}};
    auto const figures = find({}, sections);
    ASSERT_EQ(figures.size(), 1U);
    EXPECT_EQ(figures[0].section, "s4");
    EXPECT_EQ(textsOf(figures[0]), (Texts{"REF"}));
}

TEST_F(FindFigures, ALargeTitleInAFrameStaysText) {
    box({100, 20, 400, 100});
    draw({110, 30, 160, 90});
    line(200, 40, "QX71A");
    m_page.lines.back().size = 22;
    line(170, 80, "QX");
    auto const figures = find();
    ASSERT_EQ(figures.size(), 1U);
    EXPECT_EQ(textsOf(figures[0]), (Texts{"QX"}));
    EXPECT_EQ(ownerOf("QX71A"), model::Owner::None);
}

TEST(Captions, ANumberButNoSentence) {
    using standin::figures::beginsCaption;
    for (char const* caption : {"Figure 3. Delay", "Fig.2", "FIG. 4: Outline", "Figure 12 Application circuit", "Fig. 1-1 Offset", "Abb. 2", "\u56fe3 \u6846\u56fe", "\u0420\u0438\u0441\u0443\u043d\u043e\u043a 2 \u2013 X", "Figure 2(a)"}) {
        EXPECT_TRUE(beginsCaption(caption)) << caption;
    }
    for (char const* other : {"", "Figure", "Fig. 2 shows the connection of the part", "Fig.1-1, Fig.1-2 shows both", "Figures of merit", "\u56fe3\u4e3a\u8fde\u63a5\u56fe\u3002", "Bild 3 zeigt den Aufbau", "Configure 3"}) {
        EXPECT_FALSE(beginsCaption(other)) << other;
    }
}

TEST_F(FindFigures, CaptionsInOtherLanguagesAndAbove) {
    line(200, 185, "\u56fe 2 \u5e94\u7528\u7535\u8def", model::BlockRole::Paragraph);
    draw({200, 200, 300, 260});
    line(200, 420, "Abb. 4: Aufbau");
    draw({200, 340, 300, 410});
    auto const figures = find();
    ASSERT_EQ(figures.size(), 2U);
    EXPECT_EQ(figures[0].caption, "\u56fe 2 \u5e94\u7528\u7535\u8def");
    EXPECT_EQ(figures[1].caption, "Abb. 4: Aufbau");
}

TEST_F(FindFigures, BulletsAndUnderlinesAreNone) {
    draw({50, 200, 54, 204});
    m_page.rules.push_back({model::Rule::Axis::Horizontal, {50, 300, 90, 300}, 0, false});
    line(60, 197, "Low supply current");
    EXPECT_TRUE(find().empty());
}

TEST_F(FindFigures, ALogoOfEveryPageIsListedOnce) {
    draw({50, 20, 110, 45});
    std::vector<model::PageLayout> pages{m_page, m_page, m_page};
    pages[1].page = 2;
    pages[2].page = 3;
    auto const figures = findFigures(pages, {}, {});
    ASSERT_EQ(figures.size(), 1U);
    EXPECT_EQ(figures[0].page, 1);
}

}  // namespace

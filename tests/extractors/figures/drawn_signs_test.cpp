#include "extractors/figures/drawn_signs.h"

#include <string>
#include <vector>

#include <gtest/gtest.h>

#include "extractors/layout/layout.h"
#include "support/page_maker.h"

namespace {

namespace model = standin::model;
using standin::figures::drawnSigns;
using standin::test::PageMaker;
using Lines = std::vector<std::string>;

// A page with text of size 10, whose characters are 5 points wide, and drawings.
class DrawnSigns : public testing::Test {
protected:
    DrawnSigns() { m_maker.text(50, 700, "Running text that says how large the letters of this page are printed."); }

    void draw(model::Rect box) { m_drawings.push_back({box, 1}); }

    Lines found(std::vector<model::Table> const& tables = {}, std::vector<model::Figure> const& figures = {}) {
        model::PageLayout page = standin::layout::layOut(m_maker.content());
        page.drawings = m_drawings;
        Lines lines;
        for (auto const& sign : drawnSigns(std::span{&page, 1}, tables, figures)) {
            EXPECT_EQ(sign.page, 1);
            lines.push_back(sign.text);
        }
        return lines;
    }

    // One row of three cells between x 50 and 350, y 190 to 210.
    static model::Table row(std::string const& name, std::string const& value, std::string const& unit) {
        model::Table table;
        table.page = 1;
        table.columns = 3;
        table.rows = 1;
        table.kind = model::TableKind::Specification;
        table.box = {50, 190, 350, 210};
        model::Points x = 50;
        for (auto const& text : {name, value, unit}) {
            model::Cell cell;
            cell.column = static_cast<int>(table.cells.size());
            cell.text = text;
            cell.box = {x, 190, x + 100, 210};
            table.cells.push_back(cell);
            x += 100;
        }
        return table;
    }

    PageMaker m_maker{1};
    std::vector<model::Drawing> m_drawings;
};

TEST_F(DrawnSigns, BesideAValueInATable) {
    m_maker.text(60, 204, "Gate voltage").text(170, 204, "8").text(260, 204, "V");
    draw({161, 196, 168, 203});
    EXPECT_EQ(found({row("Gate voltage", "8", "V")}), (Lines{"before \"8\""}));
}

TEST_F(DrawnSigns, AloneInACell) {
    m_maker.text(60, 204, "On-resistance").text(170, 204, "0.035");
    draw({262, 196, 269, 203});
    EXPECT_EQ(found({row("On-resistance", "0.035", "")}), (Lines{"alone in a cell of a table"}));
    // far from any word, and the cell has its text: a decoration
    EXPECT_TRUE(found({row("On-resistance", "0.035", "printed elsewhere")}).empty());
    // a drawing that was taken for a table
    auto other = row("On-resistance", "0.035", "");
    other.kind = model::TableKind::Other;
    EXPECT_TRUE(found({other}).empty());
}

TEST_F(DrawnSigns, WithinALineOfText) {
    m_maker.text(60, 300, "Pulse width").text(132, 300, "300");
    draw({120, 292, 128, 300});
    EXPECT_EQ(found(), (Lines{"before \"300\""}));
}

TEST_F(DrawnSigns, PartsOfOneSign) {
    m_maker.text(60, 300, "Tested at Tj = 25").text(158, 300, "and above");
    draw({137, 292, 139, 294});     // the ring
    draw({140, 292.5F, 146, 300});  // the C
    EXPECT_EQ(found(), (Lines{"behind \"25\""}));
}

TEST_F(DrawnSigns, BulletsArrowsAndSpecksAreNone) {
    m_maker.text(60, 300, "A line with a drawn bullet").text(60, 400, "A");
    draw({48, 292, 54, 298});      // bullet
    draw({67, 392, 73, 398});      // an arrow at a lone letter
    draw({120, 299, 120.8F, 300});  // a speck
    draw({100, 296, 112, 296.5F});  // a line
    EXPECT_TRUE(found().empty());
}

TEST_F(DrawnSigns, ADrawingOverAWordWasRead) {
    m_maker.text(60, 300, "Pulse width").text(122, 300, "µ").text(132, 300, "300");
    draw({121, 292, 128, 300});
    EXPECT_TRUE(found().empty());
}

TEST_F(DrawnSigns, ARootReachesOverItsWord) {
    m_maker.text(60, 204, "Noise").text(262, 204, "Hz");
    draw({257, 195, 272, 204});
    EXPECT_EQ(found({row("Noise", "", "Hz")}), (Lines{"before \"Hz\""}));
}

// Where no rules part the columns, a cell is no larger than its words.
TEST_F(DrawnSigns, BeforeAValueOfATableWithoutRules) {
    m_maker.text(60, 204, "Gate voltage").text(170, 204, "8").text(260, 204, "V");
    draw({161, 196, 168, 203});
    auto table = row("Gate voltage", "8", "V");
    table.cells[0].box = {60, 196, 118, 206};
    table.cells[1].box = {170, 196, 175, 206};
    table.cells[2].box = {260, 196, 265, 206};
    EXPECT_EQ(found({table}), (Lines{"before \"8\""}));
}

TEST_F(DrawnSigns, AMinusIsThin) {
    m_maker.text(60, 204, "Storage temperature").text(170, 204, "40").text(230, 204, "125");
    draw({163, 200.2F, 168, 201});  // outlined
    EXPECT_EQ(found({row("Storage temperature", "40", "125")}), (Lines{"before \"40\""}));
    m_drawings.clear();
    m_maker.horizontal(163, 168, 200.6F);  // a stroke
    EXPECT_EQ(found({row("Storage temperature", "40", "125")}), (Lines{"before \"40\""}));
    // an underline, and a rule of a table that goes on
    m_maker.text(60, 300, "Note").text(90, 300, "12").horizontal(90, 96, 303).text(60, 400, "From").text(90, 400, "7").horizontal(83, 88, 396.5F).horizontal(88, 200, 396.5F);
    EXPECT_EQ(found({row("Storage temperature", "40", "125")}), (Lines{"before \"40\""}));
}

TEST_F(DrawnSigns, APageOfTooManyDrawingsSaysSo) {
    for (int i = 0; i < 2500; ++i) draw({20.0F + static_cast<float>(i % 50) * 11, 20.0F + static_cast<float>(i / 50) * 11, 25.0F + static_cast<float>(i % 50) * 11, 25.0F + static_cast<float>(i / 50) * 11});
    EXPECT_EQ(found(), (Lines{"not looked for: the page has too many drawings"}));
    // those of a figure do not count
    model::Figure figure;
    figure.page = 1;
    figure.box = {0, 0, 600, 600};
    m_maker.text(60, 650, "Pulse width").text(132, 650, "300");
    draw({120, 642, 128, 650});
    EXPECT_EQ(found({}, {figure}), (Lines{"before \"300\""}));
}

TEST_F(DrawnSigns, WhatBelongsToADrawingIsNone) {
    m_maker.text(60, 300, "Two words").text(60, 500, "More words");
    draw({108, 292, 114, 299});
    draw({112, 280, 300, 380});  // a large drawing reaches it
    EXPECT_TRUE(found().empty());
    draw({112, 492, 118, 499});
    model::Figure figure;
    figure.page = 1;
    figure.box = {40, 480, 300, 560};
    EXPECT_TRUE(found({}, {figure}).empty());
    figure.page = 2;
    EXPECT_EQ(found({}, {figure}), (Lines{"behind \"words\""}));
}

}  // namespace

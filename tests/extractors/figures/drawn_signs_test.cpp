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

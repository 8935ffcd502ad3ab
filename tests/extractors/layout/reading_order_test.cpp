// Invented pages of two columns. The order in which they are read may not hang on a word that is a little wider.
#include "extractors/layout/reading_order.h"

#include <algorithm>
#include <cstdint>
#include <functional>
#include <string>
#include <vector>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "extractors/layout/layout.h"
#include "support/page_maker.h"

namespace standin::layout {
namespace {

using model::PageLayout;
using model::Points;
using test::PageMaker;
using ::testing::ElementsAreArray;

// Prints texts 1 to 3 % narrower or wider than the page maker would; seed 0: as they are.
class Printer {
public:
    explicit Printer(std::uint32_t seed) : m_page(1), m_state(seed) {}

    Printer& text(Points x, Points y, std::string const& text, Points size = 10) {
        m_page.text(x, y, text, {.size = size, .letterSpacing = 0.5F * size * nudge()});
        return *this;
    }
    Printer& lines(Points x, Points y, Points pitch, std::vector<std::string> const& texts) {
        for (std::string const& line : texts) {
            text(x, y, line);
            y += pitch;
        }
        return *this;
    }
    Printer& rule(Points x0, Points x1, Points y) {
        m_page.horizontal(x0, x1, y);
        return *this;
    }
    model::PageContent const& content() const { return m_page.content(); }

private:
    Points nudge() {
        if (m_state == 0) return 0;
        m_state = m_state * 1664525U + 1013904223U;
        Points const by = 0.01F + 0.02F * static_cast<Points>((m_state >> 8U) & 0xFFU) / 255.0F;
        return (m_state >> 20U) % 2 == 0 ? by : -by;
    }

    PageMaker m_page;
    std::uint32_t m_state;
};

std::vector<std::string> const kProse{"The lamp driver holds eight lamps and their latches,", "and takes its orders over three lines from any host.",
                                      "Each lamp stays lit until the next order has come,",   "so that no flicker is seen while orders are taken.",
                                      "Drivers in a row pass on what they do not need,",      "which saves lines on boards of many lamps. All lamps",
                                      "go dark together when the blanking input is high."};

std::vector<std::string> const kList{"• 8-bit order input", "• Eight lamps with latches of their own", "• 35 MHz (typ) rate of orders from hosts",
                                     "• Lamp outputs:",     "• one for the driver that comes next",    "• eight of 20 mA each, all in one row",
                                     "• Blanking input"};

void printTable(Printer& p, Points y, int rows) {
    p.rule(40, 560, y - 12)
        .text(40, y, "SYMBOL")
        .text(110, y, "PARAMETER")
        .text(310, y, "CONDITIONS")
        .text(430, y, "A")
        .text(470, y, "B")
        .text(520, y, "UNIT")
        .rule(40, 560, y + 4);
    for (int i = 1; i <= rows; ++i) {
        Points const at = y + 14 * static_cast<Points>(i);
        p.text(40, at, "tPL" + std::to_string(i)).text(110, at, "propagation delay").text(430, at, "16").text(470, at, "21").text(520, at, "ns");
    }
    p.rule(40, 560, y + 14 * static_cast<Points>(rows) + 6);
}

struct OrderCase {
    char const* what;
    std::function<void(Printer&)> print;
    std::vector<std::string> order;  // how lines start that come in this order
};

std::vector<OrderCase> const kCases{
    {"a large title ends near the gutter and a table with its heading follows",
     [](Printer& p) {
         p.text(40, 60, "Eight-lamp driver with latches, xx", 15).text(480, 70, "LD5508").text(40, 78, "blanking", 15);
         p.text(40, 110, "FEATURES").lines(40, 124, 14, kList).text(40, 236, "APPLICATIONS").lines(40, 250, 14, {"• Signs and boards", "• Lamps of lifts"});
         p.text(300, 110, "DESCRIPTION").lines(300, 124, 14, kProse).lines(300, 222, 14, kProse);
         p.text(40, 360, "QUICK REFERENCE").text(40, 376, "GND = 0 V; Tamb = 25 C.");
         printTable(p, 400, 6);
     },
     {"FEATURES", "• Blanking input", "APPLICATIONS", "• Lamps of lifts", "DESCRIPTION", "go dark", "go dark", "QUICK REFERENCE", "GND", "SYMBOL", "tPL6"}},
    {"many columns of a long table above share more starts than the text below",
     [](Printer& p) {
         printTable(p, 80, 20);
         p.text(40, 420, "Application notes", 14).lines(40, 440, 13, kProse).lines(320, 440, 13, kProse).lines(40, 540, 13, kProse).lines(320, 540, 13, kProse);
     },
     {"SYMBOL", "tPL1", "tPL20", "Application notes", "The lamp driver", "go dark", "The lamp driver", "go dark", "The lamp driver", "go dark", "The lamp driver", "go dark"}},
    {"lists of values on both sides above text in two columns",
     [](Printer& p) {
         for (int i = 0; i < 12; ++i) {
             auto const y = static_cast<Points>(80 + 14 * i);
             std::string const n = std::to_string(i);
             p.text(40, y, "P" + n)
                 .text(90, y, "in")
                 .text(140, y, "5")
                 .text(190, y, "7")
                 .text(240, y, "V")
                 .text(320, y, "Q" + n)
                 .text(380, y, "out")
                 .text(430, y, "2")
                 .text(480, y, "4")
                 .text(530, y, "mA");
         }
         p.text(40, 290, "Both kinds of lines take what any host gives, whatever it is, up to six volts and no more").lines(40, 310, 13, kProse).lines(320, 310, 13, kProse);
     },
     {"P0", "Q0", "P11", "Q11", "Both kinds", "The lamp driver", "go dark", "The lamp driver", "go dark"}},
};

std::vector<std::string> linesOf(PageLayout const& page) {
    std::vector<std::string> found;
    for (model::TextLine const& line : page.lines) {
        std::string text;
        for (std::uint32_t w = line.firstWord; w < line.firstWord + line.wordCount; ++w) text += (w > line.firstWord ? " " : "") + page.words[w].text;
        found.push_back(text);
    }
    return found;
}

// Which of `starts` lines begin with, in the order of the lines.
std::vector<std::string> among(std::vector<std::string> const& lines, std::vector<std::string> const& starts) {
    std::vector<std::string> found;
    for (std::string const& line : lines)
        for (std::string const& start : starts)
            if (line.starts_with(start) && (line.size() == start.size() || line[start.size()] == ' ')) {
                found.push_back(start);
                break;
            }
    return found;
}

TEST(ReadingOrder, ColumnsAreReadInTheSameOrderWhenWordsAreALittleWider) {
    for (OrderCase const& c : kCases) {
        for (std::uint32_t seed = 0; seed <= 60; ++seed) {
            Printer printer(seed);
            c.print(printer);
            ASSERT_THAT(among(linesOf(layOut(printer.content())), c.order), ElementsAreArray(c.order)) << c.what << ", seed " << seed;
        }
    }
}

}  // namespace
}  // namespace standin::layout

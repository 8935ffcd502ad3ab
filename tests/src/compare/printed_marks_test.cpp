#include "compare/printed_marks.h"

#include <string>

#include <gtest/gtest.h>

namespace standin::compare {
namespace {

std::string shown(std::string_view printed, SheetNames const& names = {}) {
    Marked const marked = withoutMark(printed, names);
    if (marked.kind == Marked::Kind::None) return marked.mark.empty() && marked.text == printed ? "none" : "broken";
    char const* const kind = marked.kind == Marked::Kind::InList ? "list" : marked.kind == Marked::Kind::Heading ? "heading" : "caption";
    return std::string(kind) + " [" + std::string(marked.mark) + "] " + std::string(marked.text);
}

TEST(PrintedMarks, MarksOfLists) {
    EXPECT_EQ(shown("1) The lamp is lit."), "list [1] The lamp is lit.");
    EXPECT_EQ(shown("(b) The lamp is lit."), "list [b] The lamp is lit.");
    EXPECT_EQ(shown("[2] The lamp is lit."), "list [2] The lamp is lit.");
    EXPECT_EQ(shown("2. The lamp load lights the mast."), "list [2] The lamp load lights the mast.");
    for (char const* value : {"2.The lamp is lit.", "2. VSS goes to the lamp.", "2. Cells light the lamp.", "(25) mm of wire", "", ".", "1.", "[1]", "[1] VSS", "[10] V", "[3] cells in series",
                              "[2] Pins must be left open.", "[85] °C", "[1] H = high level", "1. H = high level", "1. Ground of the lamp driver, 0 V", "2. Reset input, active below 0.4 V",
                              "2. Enable the lamp above 2 V", "1. Positive supply of the lamp driver (red wire)", "3. Resistors are needed at the mast.", "1) Ground of the lamp driver"}) {
        EXPECT_EQ(shown(value), "none") << value;
    }
}

TEST(PrintedMarks, NumbersOfChapters) {
    EXPECT_EQ(shown("4. Ordering information"), "heading [4] Ordering information");
    EXPECT_EQ(shown("9.3.5 Adjustable lamp (LMP input)"), "heading [9.3.5] Adjustable lamp (LMP input)");
    EXPECT_EQ(shown("2.4.1 VSS"), "heading [2.4.1] VSS");
    EXPECT_EQ(shown("4. Charge detection after the lamp"), "heading [4] Charge detection after the lamp");
    EXPECT_EQ(shown("4. Reset Before Lamp Test"), "heading [4] Reset Before Lamp Test");
    SheetNames names;
    names.titles = {"14. Package Outline Dimension", "5 Lamps (continued)"};
    EXPECT_EQ(shown("14. Package Outline", names), "heading [14] Package Outline");
    EXPECT_EQ(shown("5 Lamps (continued)", names), "heading [5] Lamps (continued)");
    EXPECT_EQ(shown("14. Package Out", names), "none") << "no line of the title";
    EXPECT_EQ(shown("14. Package Outline"), "none");
    names.titles = {"3 Description", "5 Outputs", "8.5 Lamp characteristics", "9.3.5.2 Lamp (QX2407)", "3 Package Dimensions", "5 V Lamp characteristics", "3.3 V Lamps"};
    EXPECT_EQ(shown("3 Description", names), "heading [3] Description");
    EXPECT_EQ(shown("8.5 Lamp characteristics", names), "heading [8.5] Lamp characteristics");
    EXPECT_EQ(shown("8.5 Lamp characteristics (continued)", names), "heading [8.5] Lamp characteristics (continued)");
    EXPECT_EQ(shown("9.3.5.2 Lamp (QX2407)", names), "heading [9.3.5.2] Lamp (QX2407)");
    for (char const* count : {"5 Outputs", "3 Package Dimensions", "5 V Lamp characteristics", "3.3 V Lamps"}) EXPECT_EQ(shown(count, names), "none") << count;
    for (char const* title : {"3 Description", "8.5 Lamp characteristics", "9.3.5.2 Lamp (QX2407)"}) EXPECT_EQ(shown(title), "none") << "no sheet has such a section: " << title;
    names.titles = {"2 Lampout", "2.1 Lampout"};
    names.pins = {"lampout"};
    for (char const* pin : {"2 Lampout", "2.1 Lampout"}) EXPECT_EQ(shown(pin, names), "none") << pin;
}

TEST(PrintedMarks, ValuesCountsAndPinsStay) {
    for (char const* value : {"3.3 V supply", "3.3 Volt supply", "3.3 VSS", "2.5 Times the current", "1.5 Lamps at 4 V", "2. VSS", "2. Ground", "6 Channels", "1..2 Lamp", "4.28 Overcharge detection voltage",
                              "1.2 Overcurrent delay", "0.50 Pitch", "1.25 Maximum", "1.5 Hours", "4.7 Kilohm", "2.5 Percent", "10.5 Million cycles", "1.4.0 Firmware for 2 cells", "03.11.2019 Delay changed",
                              "12.11.2019 Delay changed", "10.0.0.1 Address of the lamp", "2. Packages", "4. Charge after", "2. Ground of the lamp", "2. Cell Minus Sense Input",
                              "3. Input for sensing the lamp during ringing", "2. Ground of the lamps before the switch", "6. Output for the lamp gate after start", "3. Reset input of the lamp after start",
                              "4. Cells are lit after the lamp"}) {
        EXPECT_EQ(shown(value), "none") << value;
    }
}

TEST(PrintedMarks, LabelsOfCaptions) {
    EXPECT_EQ(shown("Table 9-1. Lamp status"), "caption [Table 9-1] Lamp status");
    EXPECT_EQ(shown("FIGURE 3: Lamp status"), "caption [FIGURE 3] Lamp status");
    EXPECT_EQ(shown("Fig.4 Lamp status"), "caption [Fig.4] Lamp status");
    EXPECT_EQ(shown("Fig.4 shows the lamp."), "none");
    EXPECT_EQ(shown("Table 2 shows the lamp."), "none");
    EXPECT_EQ(shown("Table 2.5 V"), "none");
    EXPECT_EQ(shown("Table"), "none");
}

}  // namespace
}  // namespace standin::compare

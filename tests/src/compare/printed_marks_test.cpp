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
    EXPECT_EQ(shown("2. The lamp load lights the mast."), "list [2] The lamp load lights the mast.");
    EXPECT_EQ(shown("[1] H = high level"), "list [1] H = high level");
    EXPECT_EQ(shown("[V] volts"), "none");
    EXPECT_EQ(shown("1. H = high level"), "none");
    EXPECT_EQ(shown("2.The lamp is lit."), "none");
    EXPECT_EQ(shown("2. VSS goes to the lamp."), "none") << "it may be a pin";
    EXPECT_EQ(shown("2. Cells light the lamp."), "none") << "it may be a count";
    EXPECT_EQ(shown("(25) mm of wire"), "none");
    EXPECT_EQ(shown(""), "none");
    EXPECT_EQ(shown("."), "none");
    EXPECT_EQ(shown("1."), "none");
}

TEST(PrintedMarks, NumbersOfChapters) {
    EXPECT_EQ(shown("4. Ordering information"), "heading [4] Ordering information");
    EXPECT_EQ(shown("8.5 Lamp characteristics (continued)"), "heading [8.5] Lamp characteristics (continued)");
    EXPECT_EQ(shown("8.1 Greatest ratings(1)"), "heading [8.1] Greatest ratings(1)");
    EXPECT_EQ(shown("9.3.5.2 Adjustable lamp (LMP input, QX2407)"), "heading [9.3.5.2] Adjustable lamp (LMP input, QX2407)");
    EXPECT_EQ(shown("2.4.1 VSS"), "heading [2.4.1] VSS");
    EXPECT_EQ(shown("3 Description"), "none") << "no sheet says that it is a title";
    SheetNames names;
    names.titles = {"3 Description", "5 Outputs"};
    EXPECT_EQ(shown("3 Description", names), "heading [3] Description");
    names.pins = {"outputs"};
    EXPECT_EQ(shown("5 Outputs", names), "none");
}

TEST(PrintedMarks, ValuesCountsAndPinsStay) {
    EXPECT_EQ(shown("3.3 V supply"), "none");
    EXPECT_EQ(shown("3.3 Volt supply"), "none");
    EXPECT_EQ(shown("3.3 VSS"), "none");
    EXPECT_EQ(shown("2.5 Times the current"), "none");
    EXPECT_EQ(shown("1.5 Lamps at 4 V"), "none");
    EXPECT_EQ(shown("2. VSS"), "none");
    EXPECT_EQ(shown("2. Ground"), "none");
    EXPECT_EQ(shown("6 Channels"), "none");
    EXPECT_EQ(shown("1..2 Lamp"), "none");
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

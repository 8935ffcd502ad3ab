#include "extractors/identify_document.h"

#include <initializer_list>

#include <gtest/gtest.h>

namespace standin::reading {
namespace {

// A page of lines of 10 point words; a leading '#' makes a line 20 points high.
model::PageLayout page(std::initializer_list<std::string_view> lines) {
    model::PageLayout page;
    page.page = 1;
    page.width = 600;
    page.height = 800;
    page.bodySize = 10;
    float y = 300;
    for (auto line : lines) {
        model::TextLine textLine;
        textLine.firstWord = static_cast<std::uint32_t>(page.words.size());
        bool const large = line.starts_with('#');
        if (large) line.remove_prefix(1);
        while (!line.empty()) {
            auto const end = std::min(line.find(' '), line.size());
            model::Word word;
            word.text = line.substr(0, end);
            word.size = large ? 20.F : 10.F;
            word.box = {50, y, 100, y + 10};
            page.words.push_back(word);
            line.remove_prefix(std::min(end + 1, line.size()));
        }
        textLine.wordCount = static_cast<std::uint32_t>(page.words.size()) - textLine.firstWord;
        page.lines.push_back(textLine);
        model::Block block;
        block.firstLine = static_cast<std::uint32_t>(page.lines.size()) - 1;
        block.lineCount = 1;
        page.blocks.push_back(block);
        y += 20;
    }
    return page;
}

TEST(Identify, PartMakerRevisionAndDate) {
    std::vector const pages{page({"#XK1607 protection circuit", "Tarnvale Microelectronics", "Rev. 1.4 March 2021", "The XK1607 protects one cell.", "SOT-23-6 package"})};
    model::DocumentInfo info;
    identify(info, pages);
    ASSERT_FALSE(info.partNumbers.empty());
    EXPECT_EQ(info.partNumbers.front(), "XK1607");
    EXPECT_EQ(info.maker, "Tarnvale Microelectronics");
    EXPECT_EQ(info.revision, "1.4");
    EXPECT_EQ(info.date, "March 2021");
    EXPECT_EQ(info.languages, std::vector<std::string>{"en"});
}

TEST(Identify, WhatIsNotStatedStaysEmpty) {
    std::vector const pages{page({"A circuit for one cell."})};
    model::DocumentInfo info;
    identify(info, pages);
    EXPECT_TRUE(info.partNumbers.empty());
    EXPECT_EQ(info.maker, "");
    EXPECT_EQ(info.revision, "");
    EXPECT_EQ(info.date, "");
}

TEST(Identify, RevisionAndDateForms) {
    struct Case {
        char const* line;
        char const* revision;
        char const* date;
    };
    for (Case const& c : {Case{"REV2.0 2021-03-05", "2.0", "2021-03-05"}, Case{"Revision B", "B", ""}, Case{"V1.2 12 May 2019", "1.2", "12 May 2019"}, Case{"VDD 5 V5", "", ""}}) {
        SCOPED_TRACE(c.line);
        std::vector const pages{page({c.line})};
        model::DocumentInfo info;
        identify(info, pages);
        EXPECT_EQ(info.revision, c.revision);
        EXPECT_EQ(info.date, c.date);
    }
}

std::vector<std::string> partsOf(std::initializer_list<std::string_view> lines) {
    std::vector const pages{page(lines)};
    model::DocumentInfo info;
    identify(info, pages);
    return info.partNumbers;
}

TEST(Identify, AValueInTheTitleIsNoPart) {
    EXPECT_EQ(partsOf({"#XK1607 1.5A charger for 4.2V cells, 28V input, 20V/6A"}), std::vector<std::string>{"XK1607"});
    EXPECT_EQ(partsOf({"#1.5A charger for 4.25V cells"}), std::vector<std::string>{});
}

TEST(Identify, ANumberOfFourDigitsAndALetterIsAPart) { EXPECT_EQ(partsOf({"#4407A lamp driver"}), std::vector<std::string>{"4407A"}); }

TEST(Identify, APartMayBeSetInSmallLetters) { EXPECT_EQ(partsOf({"#xk10472 lamp driver for mp3 players"}), std::vector<std::string>{"xk10472"}); }

TEST(Identify, ACodeBesideADateIsTheDocumentsOwn) {
    EXPECT_EQ(partsOf({"#XK1607 lamp driver", "#QLS810E - MAY 2008 - REVISED JULY 2010"}), std::vector<std::string>{"XK1607"});
    // Where nothing else is one it may be the part.
    EXPECT_EQ(partsOf({"#QLS810E - MAY 2008"}), std::vector<std::string>{"QLS810E"});
}

TEST(Identify, TheLastDateOfALineCounts) {
    std::vector const pages{page({"QLS810E - MAY 2008 - REVISED JULY 2010"})};
    model::DocumentInfo info;
    identify(info, pages);
    EXPECT_EQ(info.date, "JULY 2010");
}

TEST(Identify, TheLetterOfARevisedDocumentIsItsRevision) {
    auto const revision = [](std::initializer_list<std::string_view> lines) {
        std::vector const pages{page(lines)};
        model::DocumentInfo info;
        identify(info, pages);
        return info.revision;
    };
    EXPECT_EQ(revision({"#XK1607 lamp driver", "QLS810E - MAY 2008 - REVISED JULY 2010"}), "E");
    EXPECT_EQ(revision({"#XK1607 lamp driver", "QLS810 - MAY 2008"}), "");
    EXPECT_EQ(revision({"#XK1607 lamp driver", "QLS810E - MAY 2008"}), "") << "nothing says that it was revised";
    EXPECT_EQ(revision({"#XK1607E lamp driver", "XK1607E - REVISED JULY 2010"}), "") << "the part's own letter";
}

TEST(Identify, RevisionsOfAHistoryAreNotTheSheetsOwn) {
    std::vector const pages{page({"Changes from Revision M (August 2019) to Revision N (October 2021)"})};
    model::DocumentInfo info;
    identify(info, pages);
    EXPECT_EQ(info.revision, "");
}

TEST(Identify, ARunningHeadSpeaksBeforeOtherLines) {
    std::vector pages{page({"Compared with revision 1.1 the lamp is brighter.", "XK1607 revision 1.4"})};
    for (std::uint32_t w = 0; w < pages[0].lines[1].wordCount; ++w) pages[0].words[pages[0].lines[1].firstWord + w].owner = model::Owner::Furniture;
    model::DocumentInfo info;
    identify(info, pages);
    EXPECT_EQ(info.revision, "1.4");
}

TEST(Identify, SentencesAndListsNameNoMaker) {
    struct Case {
        std::initializer_list<std::string_view> lines;
        char const* maker;
    };
    for (Case const& c :
         {Case{{"The devices are tested.", "These Devices are free of lead."}, ""}, Case{{"• Portable Lamp Devices"}, ""},
          Case{{"Copyright © 1997–2016, Tarnvale Instruments Incorporated"}, "Tarnvale Instruments Incorporated"}, Case{{"2004 Tarnvale Semiconductor"}, "Tarnvale Semiconductor"},
          Case{{"However, TarnMicroelectronics assumes no responsibility."}, "TarnMicroelectronics"}, Case{{"Microelectronics for lamps"}, ""},
          Case{{"made in Metal Oxide Semiconductor technology"}, ""}, Case{{"NOT FOR USE AS COMPONENTS IN LIFE SUPPORT DEVICES", "OR SYSTEMS"}, ""},
          Case{{"© Tarnvale Lamps Industries, LLC, 2016", "Harvane Semiconductor reserves"}, "Tarnvale Lamps Industries LLC"},
          Case{{"© 2004 Tarnvale - All Rights Reserved"}, "Tarnvale"}, Case{{"© The logo is a trademark."}, ""},
          Case{{"© JEDEC Solid State", "Tarnvale Semiconductor"}, "Tarnvale Semiconductor"}, Case{{"Wharfside Electronics", "Authorized Distributor"}, ""},
          Case{{"© 2019 Tarnvale Semiconductor Rev. A Page 3"}, "Tarnvale Semiconductor"}, Case{{"© 2021 Tarnvale Power Devices Datasheet XK1607"}, "Tarnvale Power Devices"},
          Case{{"© 2021 Tarnvale Lamps XK1607 Datasheet"}, "Tarnvale Lamps"}, Case{{"© 2020 Confidential Tarnvale Electronics"}, "Tarnvale Electronics"},
          Case{{"Tarnvale Semiconductor", "Contact your local sales office or distributor."}, "Tarnvale Semiconductor"}}) {
        std::vector const pages{page(c.lines)};
        model::DocumentInfo info;
        identify(info, pages);
        EXPECT_EQ(info.maker, c.maker) << *c.lines.begin();
    }
}

}  // namespace
}  // namespace standin::reading

// Links are told from all that may be drawn over a page, however they are written.
#include "extractors/poppler/link_annotations.h"

#include <gtest/gtest.h>

#include "extractors/poppler/open_document.h"
#include "extractors/poppler/read_helper.h"

namespace standin::poppler {
namespace {

using testing::PdfPage;
using testing::PdfWriter;

constexpr char const* kLink = "<< /Type /Annot /Subtype /Link /Rect [20 20 60 40] /Border [0 0 1] /A << /S /URI /URI (http://a.example/b) >> >>";

bool onlyLinks(std::string const& bytes) {
    std::vector<std::string> messages;
    auto pdf = openDocument(std::as_bytes(std::span(bytes)), {}, messages);
    return pdf && hasOnlyLinks(**pdf, *(*pdf)->getPage(1), bytes);
}

// A page with a word of its own and annotations, each an object of the file.
struct Annotated {
    PdfWriter pdf;
    int look = pdf.stream("/Type /XObject /Subtype /Form /BBox [0 0 100 20] /Resources << /Font << /F1 3 0 R >> >>", "BT /F1 10 Tf 2 5 Td (stamp) Tj ET");

    std::string with(std::vector<std::string> const& annotations) {
        PdfPage page;
        page.content = "BT /F1 10 Tf 20 150 Td (page) Tj ET";
        page.entries = "/Annots [";
        for (auto const& annotation : annotations) page.entries += fmt::format("{} 0 R ", pdf.object(annotation));
        page.entries += "]";
        pdf.page(page);
        return pdf.bytes();
    }
    [[nodiscard]] std::string stamp() const { return fmt::format("/Rect [20 100 120 120] /AP << /N {} 0 R >>", look); }
};

TEST(LinkAnnotations, PagesWithoutOthersAreTold) {
    EXPECT_TRUE(onlyLinks(Annotated{}.with({})));
    for (std::string const link : {kLink, "<</Subtype/Link/Rect[20 20 60 40]/A<</S/URI/URI(http://a.example/b)>>>>",
                                   "<< /A << /URI (b) /S /URI >> /Rect [20 20 60 40] /Subtype\n/Link >>", "<< /A << /S /URI /URI (http://a.example/b) >> /Subtype /Link >>",
                                   "<< /A << /S /URI /URI (b) >> /Contents (a \\) (note) >>) /NM <41> /Rect [20 20 60 40] /Subtype /Link >>"}) {
        EXPECT_TRUE(onlyLinks(Annotated{}.with({link}))) << link;
        EXPECT_TRUE(onlyLinks(Annotated{}.with({kLink, link}))) << link;
    }
}

TEST(LinkAnnotations, WhatMayBeDrawnIsNoLink) {
    char const* const stamps[] = {
        "<< /Type /Annot /Subtype /Stamp {} >>",
        "<< /Contents (/Subtype /Link ) /Subtype /Stamp {} >>",
        "<< /Popup << /Subtype /Link >> /Subtype /Stamp {} >>",
        "<< % /Subtype /Link \n /Subtype /Stamp {} >>",
        "<< /Subtype /Stamp /NM (/Subtype /Link ) {} >>",
        "<< /NM (a \\( b) /Contents (c \\\\) /T ((d) /Subtype /Link ) /Subtype /Stamp {} >>",
        "<< /NM <41> /Subtype /Stamp {} >>",
        "<< /NM [/Subtype /Link ] /Subtype /Stamp {} >>",
        "<< /Sub#74ype /Stamp {} >>",  // and a link behind it in the file
    };
    for (std::string const stamp : stamps) {
        Annotated sheet;
        std::string const written = std::string(stamp).replace(stamp.find("{}"), 2, sheet.stamp());
        std::string const bytes = sheet.with({kLink, written, kLink});
        EXPECT_FALSE(onlyLinks(bytes)) << stamp;
        EXPECT_EQ(textOf(readPage(bytes)), "pagestamp") << stamp;
    }
}

TEST(LinkAnnotations, OtherKindsThatBeginAlike) { EXPECT_FALSE(onlyLinks(Annotated{}.with({"<< /Subtype /LinkedStamp /Rect [20 20 60 40] >>"}))); }

// What Poppler would have no complaint about.
TEST(LinkAnnotations, PlacesThatArePlainlyWritten) {
    for (std::string const place : {"/Dest [4 0 R /XYZ 0 100.5 null]", "/Dest[4 0 R/XYZ null -2. null]", "/Dest [4 0 R /Fit]", "/Dest (a \\) place)",
                                    "/A << /D [4 0 R /XYZ 0 100 1] /S /GoTo >>", "/A<</S/GoTo/D(place)>>"}) {
        std::string const link = fmt::format("<< /Rect [20 20 60 40] /Subtype /Link {} >>", place);
        std::string const unseen = "<< /Subtype /Text /Rect [20 20 60 40] /Contents (note) >>";
        EXPECT_TRUE(onlyLinks(Annotated{}.with({kLink, link}))) << link;
        EXPECT_FALSE(onlyLinks(Annotated{}.with({link, unseen}))) << link;
        EXPECT_TRUE(readPage(Annotated{}.with({link, unseen})).notes.empty()) << link;
    }
}

TEST(LinkAnnotations, ActionsThatAreObjectsOfTheirOwn) {
    auto const leadsBy = [](std::string const& action) {
        Annotated sheet;
        std::string const link = fmt::format("<< /A {} 0 R /Rect [20 20 60 40] /Subtype /Link >>", sheet.pdf.object(action));
        return onlyLinks(sheet.with({link}));
    };
    EXPECT_TRUE(leadsBy("<< /S /URI /URI (http://a.example/b) >>"));
    EXPECT_TRUE(leadsBy("<< /S /GoTo /D [4 0 R /Fit] >>"));
    EXPECT_FALSE(leadsBy("<< /S /GoTo /D [] >>"));
    EXPECT_FALSE(leadsBy("[]"));
}

// Poppler looks up where they lead to, and complains of what is not there: that stays a note.
TEST(LinkAnnotations, OtherPlacesInADocumentAreLeftToPoppler) {
    for (std::string const link :
         {"<< /Subtype /Link /Rect [20 20 60 40] /Dest [] >>", "<< /Subtype /Link /Rect [20 20 60 40] /A << /S /GoTo /D [] >> >>",
          "<< /A << /S /GoTo /D [] >> /Contents (/URI) /Rect [20 20 60 40] /Subtype /Link >>", "<< /Subtype /Link /Rect [20 20 60 40] /Dest [null /XYZ 0 10 0] >>",
          "<< /Subtype /Link /Rect [20 20 60 40] /Dest [4 0 R] >>", "<< /Subtype /Link /Rect [20 20 60 40] /Dest [4 0 R /XYZ (a) 10 0] >>",
          "<< /Subtype /Link /Rect [20 20 60 40] /A << /S /GoTo /D [4 0 R /Fit] /Next << /S /GoTo /D [] >> >> >>"}) {
        std::string const bytes = Annotated{}.with({kLink, link});
        EXPECT_FALSE(onlyLinks(bytes)) << link;
        EXPECT_EQ(readPage(bytes).notes.size(), 1U) << link;
    }
    EXPECT_FALSE(onlyLinks(Annotated{}.with({"<< /Subtype /Link /Rect [20 20 60 40] /A << /S /GoToR /F (other.pdf) /D [0 /Fit] >> >>"})));
}

// The fields of a form are drawn though no annotation of the page names them.
TEST(LinkAnnotations, PagesOfAFormMayHaveFields) {
    Annotated sheet;
    sheet.pdf.catalogue("/AcroForm << /Fields [] >>");
    EXPECT_FALSE(onlyLinks(sheet.with({kLink})));
}

TEST(LinkAnnotations, TheContentsAreReadAllTheSame) {
    auto const page = readPage(Annotated{}.with({kLink, kLink}));
    EXPECT_EQ(textOf(page), "page");
    EXPECT_TRUE(page.rules.empty());
    EXPECT_TRUE(page.notes.empty());
}

}  // namespace
}  // namespace standin::poppler

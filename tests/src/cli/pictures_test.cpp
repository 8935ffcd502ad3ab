// Pictures for reports and for drawings, opened at once or where one is needed.
#include "cli/pictures.h"

#include <gtest/gtest.h>

#include "support/encrypted_pdf.h"
#include "support/pdf_writer.h"

namespace standin::cli {
namespace {

std::string small() {
    testing::PdfWriter pdf;
    pdf.page({"BT /F1 10 Tf 20 150 Td (4.25 V) Tj ET"});
    return pdf.bytes();
}

TEST(PairPictures, AreThereForPdfsOnly) {
    auto const pictures = openPictures({small(), {}}, {});
    ASSERT_TRUE(pictures.reference);
    EXPECT_FALSE(pictures.candidate) << "it was given as JSON";
    EXPECT_TRUE(pictures.reference->render(1, {0, 0, 100, 100}, 1));
    EXPECT_EQ(pictures.borrowed().reference, pictures.reference.get());
    EXPECT_EQ(pictures.borrowed().candidate, nullptr);
    EXPECT_FALSE(openPictures({"no PDF", {}}, {}).reference);
}

TEST(PairPictures, LazyOnesGiveTheSame) {
    reading::PairBytes const bytes{small(), testing::encryptedPdf("open sesame", "42 mV")};
    auto const lazy = lazyPictures(bytes, "open sesame");
    auto const open = openPictures(bytes, "open sesame");
    ASSERT_TRUE(lazy.reference && lazy.candidate);
    EXPECT_EQ(*lazy.reference->render(1, {0, 0, 200, 200}, 1), *open.reference->render(1, {0, 0, 200, 200}, 1));
    EXPECT_EQ(*lazy.candidate->pageBox(1), *open.candidate->pageBox(1));
    EXPECT_EQ(lazy.reference->pageCount(), 1);
}

TEST(PairPictures, LazyOnesSayWhenNothingCanBeShown) {
    reading::PairBytes const bytes{"%PDF-1.4 and nothing else", {}};
    auto const lazy = lazyPictures(bytes, {});
    ASSERT_TRUE(lazy.reference);
    EXPECT_FALSE(lazy.candidate);
    EXPECT_FALSE(lazy.reference->render(1, {0, 0, 10, 10}, 1));
    EXPECT_FALSE(lazy.reference->pageBox(1));
    EXPECT_EQ(lazy.reference->pageCount(), 1);
}

}  // namespace
}  // namespace standin::cli

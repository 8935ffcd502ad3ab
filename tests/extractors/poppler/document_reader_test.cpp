// Opening, errors, metadata, notes, threads, and the whole corpus where present.
#include "extractors/poppler/document_reader.h"

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <thread>

#include <gtest/gtest.h>

#include "extractors/poppler/open_document.h"
#include "extractors/poppler/read_helper.h"
#include "support/encrypted_pdf.h"

namespace standin::poppler {
namespace {

using model::ErrorKind;
using testing::PdfPage;
using testing::PdfWriter;

model::Result<DocumentReader> open(std::string const& bytes, OpenOptions const& options = {}) { return DocumentReader::open(std::as_bytes(std::span(bytes)), options); }

std::string small() {
    PdfWriter pdf;
    pdf.page({"BT /F1 10 Tf 20 150 Td (one 1) Tj ET"});
    pdf.page({"BT /F1 10 Tf 20 150 Td (two 2) Tj ET"});
    return pdf.bytes();
}

TEST(DocumentReader, SaysWhatIsWrongAndWhatToDo) {
    struct Case {
        std::string bytes;
        ErrorKind kind;
        std::string words;
    };
    std::string const damaged = "%PDF-1.4\n1 0 obj\n<< /Type /Nothing >>\nendobj\n";
    for (Case const& c : {Case{"", ErrorKind::Unsupported, "empty"}, Case{"Minutes of a meeting", ErrorKind::Unsupported, "not a PDF"},
                          Case{"<!DOCTYPE html><html><body>Sign in</body></html>", ErrorKind::Unsupported, "web page"}, Case{damaged, ErrorKind::Damaged, "damaged"},
                          Case{small().substr(0, 60), ErrorKind::Damaged, "damaged"}}) {
        auto const reader = open(c.bytes);
        ASSERT_FALSE(reader) << c.bytes;
        EXPECT_EQ(reader.error().kind, c.kind) << c.bytes;
        EXPECT_NE(reader.error().message.find(c.words), std::string::npos) << reader.error().message;
        EXPECT_EQ(reader.error().message.find('\n'), std::string::npos);
    }
}

TEST(DocumentReader, TellsAPasswordNeededFromAWrongOne) {
    std::string const bytes = testing::encryptedPdf("open sesame", "42 mV");
    auto const none = open(bytes);
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error().kind, ErrorKind::Encrypted);
    EXPECT_NE(none.error().message.find("--password-file"), std::string::npos);
    auto const wrong = open(bytes, {"close sesame"});
    ASSERT_FALSE(wrong);
    EXPECT_EQ(wrong.error().kind, ErrorKind::Encrypted);
    EXPECT_NE(wrong.error().message, none.error().message);
    auto right = open(bytes, {"open sesame"});
    ASSERT_TRUE(right) << right.error().message;
    EXPECT_TRUE(right->metadata().encrypted);
    EXPECT_EQ(textOf(*right->readPage(1)), "42 mV");
}

TEST(DocumentReader, OpensAnEmptyPasswordByItself) {
    std::string const bytes = testing::encryptedPdf("", "42 mV");
    auto reader = open(bytes);
    ASSERT_TRUE(reader) << reader.error().message;
    EXPECT_TRUE(reader->metadata().encrypted);
    EXPECT_EQ(textOf(*reader->readPage(1)), "42 mV");
}

TEST(DocumentReader, ReadsMetadata) {
    PdfWriter pdf;
    pdf.page({""});
    pdf.catalogue("/Lang (de-CH)");
    pdf.information("/Producer (Press 3) /Title <FEFF004D004100202126> /Subject (\\200 one) /Keywords (a\\001b)");
    std::string const bytes = pdf.bytes();
    auto const reader = open(bytes);
    ASSERT_TRUE(reader);
    auto const metadata = reader->metadata();
    EXPECT_EQ(metadata.producer, "Press 3");
    EXPECT_EQ(metadata.title, "MA \xE2\x84\xA6");
    EXPECT_EQ(metadata.subject, "\xE2\x80\xA2 one");
    EXPECT_EQ(metadata.keywords, "a b");
    EXPECT_EQ(metadata.creator, "");
    EXPECT_EQ(metadata.language, "de-CH");
    EXPECT_FALSE(metadata.encrypted);
}

TEST(DocumentReader, RefusesPagesThatDoNotExist) {
    std::string const bytes = small();
    auto reader = open(bytes);
    ASSERT_TRUE(reader);
    EXPECT_EQ(reader->pageCount(), 2);
    for (int page : {0, 3, -1}) {
        auto const content = reader->readPage(page);
        ASSERT_FALSE(content) << page;
        EXPECT_EQ(content.error().kind, ErrorKind::Usage);
    }
    EXPECT_EQ(textOf(*reader->readPage(2)), "two 2");
    EXPECT_EQ(textOf(*reader->readPage(1)), "one 1");
}

TEST(DocumentReader, NotesWhatThePageComplainsOf) {
    auto const page = readPage(PdfPage{"BT /Missing 10 Tf 20 150 Td (lost) Tj /F1 10 Tf (kept) Tj ET"});
    EXPECT_EQ(textOf(page), "kept");
    ASSERT_FALSE(page.notes.empty());
    EXPECT_EQ(page.notes[0].page, 1);
}

// The same note is not repeated for each of many broken operators.
TEST(DocumentReader, BoundsTheNotes) {
    std::string content;
    for (int i = 0; i < 500; ++i) content += fmt::format("/Missing{} 10 Tf nonsense{} ", i, i);
    EXPECT_LE(readPage(PdfPage{content}).notes.size(), 12U);
}

// A file whose table is gone is put together again from its objects.
TEST(DocumentReader, ReadsAFileWithoutItsTable) {
    std::string bytes = small();
    bytes.resize(bytes.find("xref"));
    bytes += "trailer << /Root 1 0 R >>";
    auto reader = open(bytes);
    ASSERT_TRUE(reader) << reader.error().message;
    EXPECT_EQ(textOf(*reader->readPage(1)), "one 1");
}

// Every cut of a file either opens or gives an error.
TEST(DocumentReader, SurvivesFilesCutShort) {
    std::string const whole = small();
    for (std::size_t length = 1; length < whole.size(); length += 7) {
        std::string const bytes = whole.substr(0, length);
        auto reader = open(bytes);
        if (!reader) {
            EXPECT_FALSE(reader.error().message.empty());
            continue;
        }
        for (int page = 1; page <= std::min(reader->pageCount(), 3); ++page) EXPECT_TRUE(reader->readPage(page));
    }
}

TEST(DocumentReader, SurvivesBytesThatWereChanged) {
    std::string const whole = small();
    std::uint32_t random = 12345;
    for (int round = 0; round < 400; ++round) {
        std::string bytes = whole;
        for (int change = 0; change < 6; ++change) {
            random = random * 1664525U + 1013904223U;
            bytes[random % bytes.size()] = static_cast<char>(random >> 24U);
        }
        auto reader = open(bytes);
        if (reader) {
            EXPECT_TRUE(reader->readPage(1));
        }
    }
}

// Forms within forms that draw one another many times over.
TEST(DocumentReader, StopsPagesThatGrowWithoutEnd) {
    PdfWriter pdf;
    int inner = pdf.stream("/Type /XObject /Subtype /Form /BBox [0 0 9 9] /Resources << /Font << /F1 3 0 R >> >>", "BT /F1 5 Tf (aaaaaaaaaaaaaaaaaaaa) Tj ET");
    for (int depth = 0; depth < 7; ++depth) {
        std::string content;
        for (int i = 0; i < 12; ++i) content += "/X Do ";
        inner = pdf.stream(fmt::format("/Type /XObject /Subtype /Form /BBox [0 0 9 9] /Resources << /XObject << /X {} 0 R >> >>", inner), content);
    }
    PdfPage source;
    source.content = "/X Do";
    source.resources = fmt::format("/XObject << /X {} 0 R >>", inner);
    pdf.page(source);
    auto const page = readPage(pdf.bytes());
    EXPECT_LE(page.glyphs.size(), 300000U);
    ASSERT_FALSE(page.notes.empty());
    EXPECT_NE(page.notes[0].text.find("not read"), std::string::npos);
}

std::string fileBytes(std::filesystem::path const& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

// One line for each thing on the page: two readings can be compared.
std::string summary(model::PageContent const& page) {
    std::string out = fmt::format("{} {} {} {}\n", page.page, page.width, page.height, page.rotation);
    for (auto const& g : page.glyphs) {
        out += fmt::format("{} {} {} {} {} {} {} {}{}{}{}\n", static_cast<std::uint32_t>(g.code), g.box.x0, g.box.y0, g.box.x1, g.box.y1, g.size, g.colour, g.font, g.invisible ? "i" : "",
                           g.outside ? "o" : "", static_cast<int>(g.direction));
    }
    for (auto const& f : page.fonts) out += fmt::format("{} {} {}\n", f.name, f.bold, f.unicodeKnown);
    for (auto const& r : page.rules) out += fmt::format("{} {} {} {} {} {}\n", r.box.x0, r.box.y0, r.box.x1, r.box.y1, r.colour, r.dashed);
    for (auto const& f : page.fills) out += fmt::format("{} {} {} {} {}\n", f.box.x0, f.box.y0, f.box.x1, f.box.y1, f.colour);
    for (auto const& d : page.drawings) out += fmt::format("{} {} {}\n", d.box.x0, d.box.y0, d.shape);
    for (auto const& i : page.images) out += fmt::format("{} {} {}\n", i.box.x0, i.box.y0, i.pixelWidth);
    for (auto const& n : page.notes) out += n.text + "\n";
    return out;
}

// All PDFs of testdata and, where it is present, of the corpus beside the checkout.
std::vector<std::filesystem::path> samples() {
    std::vector<std::filesystem::path> paths;
    std::vector<std::filesystem::path> roots = {STANDIN_TESTDATA};
    if (char const* corpus = std::getenv("STANDIN_CORPUS")) roots.emplace_back(corpus);
    for (auto const& root : roots) {
        if (!std::filesystem::is_directory(root)) continue;
        for (auto const& entry : std::filesystem::recursive_directory_iterator(root)) {
            if (entry.path().extension() == ".pdf") paths.push_back(entry.path());
        }
    }
    std::sort(paths.begin(), paths.end());
    return paths;
}

TEST(DocumentReader, ReadsEveryPageOfEverySampleTheSameInTwoThreads) {
    auto const paths = samples();
    if (paths.empty()) GTEST_SKIP() << "no sample PDFs";
    std::size_t pages = 0;
    for (auto const& path : paths) {
        std::string const bytes = fileBytes(path);
        std::string results[2];
        // One thread reads forwards, the other backwards: what was read before must not matter.
        auto const read = [&bytes, &results](int direction) {
            auto reader = open(bytes);
            if (!reader) return;
            std::map<int, std::string> parts;
            int const count = reader->pageCount();
            for (int i = 1; i <= count; ++i) {
                int const page = direction == 0 ? i : count + 1 - i;
                auto const content = reader->readPage(page);
                if (content) parts[page] = summary(*content);
            }
            for (auto const& part : parts) results[direction] += part.second;
        };
        std::thread other(read, 1);
        read(0);
        other.join();
        // Sheets that cannot be opened give nothing, twice.
        auto const differs = std::mismatch(results[0].begin(), results[0].end(), results[1].begin(), results[1].end());
        EXPECT_TRUE(results[0] == results[1]) << path << ": " << std::string(differs.first, std::min(differs.first + 80, results[0].end())) << "\n instead of \n"
                                              << std::string(differs.second, std::min(differs.second + 80, results[1].end()));
        ++pages;
    }
    EXPECT_GT(pages, 0U);
}

TEST(DocumentReader, ProfilesAreExpectedWhereTheyAreNamedOrMayBe) {
    EXPECT_FALSE(mayHaveProfiles(""));
    EXPECT_FALSE(mayHaveProfiles(PdfWriter().bytes()));
    EXPECT_TRUE(mayHaveProfiles("7 0 obj [/ICCBased 8 0 R] endobj"));
    EXPECT_TRUE(mayHaveProfiles("9 0 obj << /Type /ObjStm /N 1 /First 4 >> stream"));
}

}  // namespace
}  // namespace standin::poppler

// Writes tiny PDFs for tests, one feature each, out of content programs given as
// text. Offsets and lengths are right; everything else is what the test says.
//
//     PdfWriter pdf;
//     pdf.page({"BT /F1 12 Tf 20 100 Td (42 mV) Tj ET"});
//     std::string const bytes = pdf.bytes();
//
// The resources of every page have the fonts F1 (Helvetica), F2 (Helvetica-Bold)
// and FS (Symbol), none embedded; more go into PdfPage::resources.
#pragma once

#include <array>
#include <cstdint>
#include <string>
#include <utility>
#include <vector>

#include <fmt/format.h>

namespace standin::testing {

struct PdfPage {
    std::string content = {};
    std::string resources = {};  // further entries of the resource dictionary
    std::string fonts = {};      // further entries of its /Font
    std::string entries = {};    // further entries of the page: /Rotate, /CropBox, /Annots
    std::string mediaBox = "0 0 200 200";
    std::string contents = {};  // a reference or an array of them, in place of `content`
};

class PdfWriter {
public:
    // Adds an object and gives its number, to be referred to as "N 0 R".
    int object(std::string body) {
        m_objects.push_back(std::move(body));
        return static_cast<int>(m_objects.size()) + kReserved;
    }

    int stream(std::string const& entries, std::string const& data) {
        return object(fmt::format("<< {} /Length {} >>\nstream\n{}\nendstream", entries, data.size(), data));
    }

    void page(PdfPage const& page) {
        std::string const contents = page.contents.empty() ? fmt::format("{} 0 R", stream("", page.content)) : page.contents;
        m_pages.push_back(object(fmt::format("<< /Type /Page /Parent 2 0 R /MediaBox [{}] /Contents {} {} /Resources << /Font << /F1 3 0 R /F2 4 0 R /FS 5 0 R {} >> {} >> >>",
                                             page.mediaBox, contents, page.entries, page.fonts, page.resources)));
    }

    // Further entries of the catalogue and of the information dictionary.
    void catalogue(std::string entries) { m_catalogue = std::move(entries); }
    void information(std::string entries) { m_information = std::move(entries); }

    [[nodiscard]] std::string bytes() const {
        std::string kids;
        for (int number : m_pages) kids += fmt::format("{} 0 R ", number);
        std::vector<std::string> all = {
            fmt::format("<< /Type /Catalog /Pages 2 0 R {} >>", m_catalogue),
            fmt::format("<< /Type /Pages /Count {} /Kids [{}] >>", m_pages.size(), kids),
            "<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica /Encoding /WinAnsiEncoding >>",
            "<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica-Bold /Encoding /WinAnsiEncoding >>",
            "<< /Type /Font /Subtype /Type1 /BaseFont /Symbol >>",
            fmt::format("<< {} >>", m_information),
        };
        all.insert(all.end(), m_objects.begin(), m_objects.end());
        std::string out = "%PDF-1.7\n";
        std::string table;
        for (std::size_t i = 0; i < all.size(); ++i) {
            table += fmt::format("{:010} 00000 n \n", out.size());
            out += fmt::format("{} 0 obj\n{}\nendobj\n", i + 1, all[i]);
        }
        std::size_t const start = out.size();
        out += fmt::format("xref\n0 {}\n0000000000 65535 f \n{}trailer\n<< /Size {} /Root 1 0 R /Info 6 0 R >>\nstartxref\n{}\n%%EOF\n", all.size() + 1, table,
                           all.size() + 1, start);
        return out;
    }

private:
    static constexpr int kReserved = 6;
    std::vector<std::string> m_objects;
    std::vector<int> m_pages;
    std::string m_catalogue;
    std::string m_information;
};

}  // namespace standin::testing

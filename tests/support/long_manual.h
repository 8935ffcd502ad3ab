// A long invented manual for measuring: every page has a running head, a heading,
// two paragraphs, a ruled specification table and a page number, all alike and
// all a little different, as pages of long documents are.
//
//     std::string const pdf = longManual({.pages = 400, .edition = 1});
#pragma once

#include <array>
#include <string>

#include <fmt/format.h>

#include "support/pdf_writer.h"

namespace standin::testing {

struct Manual {
    int pages = 1;
    int edition = 1;  // another one has other values in every fifth row
};

namespace long_manual {

inline std::string line(int x, int y, std::string const& text, int size = 9, char const* font = "F1") {
    return fmt::format("BT /{} {} Tf {} {} Td ({}) Tj ET\n", font, size, x, y, text);
}

inline std::string rule(int x0, int y0, int x1, int y1) { return fmt::format("0.5 w {} {} m {} {} l S\n", x0, y0, x1, y1); }

inline std::string paragraphs(int page, int edition) {
    constexpr std::array<char const*, 4> kSubjects{"watchdog", "level shifter", "buffer stage", "charge pump"};
    std::string out;
    for (int i = 0; i < 14; ++i) {
        int const n = page * 14 + i;
        auto const subject = kSubjects[static_cast<std::size_t>(n % 4)];
        out += line(50, 700 - 13 * i - (i >= 7 ? 12 : 0), fmt::format("Channel {} of the {} settles within {} ms when its input stays below {}.{} V.", n, subject, 5 + n % 90 + (n % 35 == 0 ? edition : 0), 1 + n % 4, n % 10));
    }
    return out;
}

inline std::string table(int page, int edition) {
    constexpr std::array<int, 8> kColumns{50, 215, 265, 365, 410, 455, 500, 545};
    constexpr int kRows = 10;
    constexpr int kTop = 470;
    constexpr int kHeight = 18;
    std::string out;
    for (int row = 0; row <= kRows; ++row) out += rule(kColumns.front(), kTop - row * kHeight, kColumns.back(), kTop - row * kHeight);
    for (int const x : kColumns) out += rule(x, kTop, x, kTop - kRows * kHeight);
    auto const cells = [&](int row, std::array<std::string, 7> const& texts) {
        for (std::size_t i = 0; i < texts.size(); ++i) out += line(kColumns[i] + 3, kTop - row * kHeight - 13, texts[i]);
    };
    cells(0, {"Parameter", "Symbol", "Conditions", "Min", "Typ", "Max", "Unit"});
    for (int row = 1; row < kRows; ++row) {
        int const n = page * kRows + row;
        int const typical = 100 + n % 700 + (n % 5 == 0 ? edition : 0);
        cells(row, {fmt::format("Settling time of channel {}", n), fmt::format("tS{}", n), fmt::format("VDD = {}.{} V", 2 + n % 3, n % 10), fmt::format("{}", typical - 20),
                    fmt::format("{}", typical), fmt::format("{}", typical + 25), "ms"});
    }
    return out;
}

}  // namespace long_manual

[[nodiscard]] inline std::string longManual(Manual const& manual) {
    using namespace long_manual;
    PdfWriter pdf;
    for (int page = 1; page <= manual.pages; ++page) {
        std::string content = line(50, 815, "QZ9000 reference manual", 8) + line(480, 815, fmt::format("edition {}", manual.edition), 8);
        content += line(50, 740, fmt::format("{} Electrical characteristics of group {}", page, page), 13, "F2");
        content += paragraphs(page, manual.edition) + table(page, manual.edition);
        content += line(290, 25, fmt::format("{}", page), 8);
        pdf.page({.content = content, .mediaBox = "0 0 595 842"});
    }
    return pdf.bytes();
}

}  // namespace standin::testing

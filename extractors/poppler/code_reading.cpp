// Each reading turns a code into a character, each face says how wide that
// character usually is. The ratios of the font's widths to those are divided by
// their median (fonts are drawn narrower or wider as a whole); the mean
// deviation from 1 is the misfit. A reading is believed if it fits well and any
// other is clearly worse.
//
// Tested by tests/extractors/poppler/code_reading_test.cpp.
#include "extractors/poppler/code_reading.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

#include "extractors/poppler/glyph_names.h"

namespace standin::poppler {

namespace {

constexpr double kGoodFit = 0.085;
constexpr double kFitOfFew = 0.075;       // a few glyphs must fit better
constexpr double kUnexplained = 0.5;      // of the variation of the usual widths
constexpr double kClearlyWorse = 1.5;     // times the misfit of the best
constexpr double kClearlyWorseBy = 0.03;
constexpr double kUsualSize = 0.12;       // few glyphs: overall width within this of the usual
constexpr std::size_t kMany = 6;
constexpr std::size_t kFewest = 2;
constexpr std::size_t kDifferentOfMany = 4;  // different widths needed
constexpr std::size_t kDifferentOfFew = 2;
constexpr std::size_t kMostCodes = 4096;
constexpr std::uint32_t kFirstGlyph = 3;
constexpr std::uint32_t kFolded = 225;        // codes from here on may be folded
constexpr std::uint32_t kOrderOffset = 29;   // glyph 3 is the space, 36 is A
constexpr std::uint32_t kFirstAccented = 98;  // glyph of byte 0x80

using Widths = std::array<std::uint16_t, 95>;  // of the characters 0x20 to 0x7E, in thousandths

// Widths of the three usual text faces, upright sans, bold sans and serif.
constexpr Widths kSans = {278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556, 556, 556, 556,
                          556, 556, 278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556, 833, 722, 778,
                          667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556, 333, 556, 556, 500, 556, 556, 278, 556,
                          556, 222, 222, 500, 222, 833, 556, 556, 556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584};
constexpr Widths kBoldSans = {278, 333, 474, 556, 556, 889, 722, 238, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556, 556, 556, 556,
                              556, 556, 333, 333, 584, 584, 584, 611, 975, 722, 722, 722, 722, 667, 611, 778, 722, 278, 556, 722, 611, 833, 722, 778,
                              667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 333, 278, 333, 584, 556, 333, 556, 611, 556, 611, 556, 333, 611,
                              611, 278, 278, 556, 278, 889, 611, 611, 611, 611, 389, 556, 333, 611, 556, 778, 556, 556, 500, 389, 280, 389, 584};
constexpr Widths kSerif = {250, 333, 408, 500, 500, 833, 778, 180, 333, 333, 500, 564, 250, 333, 250, 278, 500, 500, 500, 500, 500, 500, 500, 500,
                           500, 500, 278, 278, 564, 564, 564, 444, 921, 722, 667, 667, 722, 611, 556, 722, 722, 333, 389, 722, 611, 889, 722, 722,
                           556, 722, 667, 556, 611, 722, 722, 944, 722, 722, 611, 333, 278, 333, 469, 500, 333, 444, 500, 444, 500, 444, 333, 500,
                           500, 278, 278, 500, 278, 778, 500, 500, 500, 500, 333, 389, 278, 500, 500, 722, 500, 500, 444, 480, 200, 480, 541};
// The same of the Symbol font, Greek letters at the places of A to z; 0: not used for judging.
constexpr Widths kGreek = {250, 333, 713, 500, 549, 833, 778, 439, 333, 333, 500, 549, 250, 549, 250, 278, 500, 500, 500, 500, 500, 500, 500, 500,
                           500, 500, 278, 278, 549, 549, 549, 444, 549, 722, 667, 722, 612, 611, 763, 603, 722, 333, 631, 722, 686, 889, 722, 722,
                           768, 741, 556, 592, 611, 690, 439, 768, 645, 795, 611, 333, 0,   333, 0,   500, 0,   631, 549, 549, 494, 439, 521, 411,
                           603, 329, 603, 549, 549, 576, 521, 549, 549, 521, 549, 603, 439, 576, 713, 686, 493, 686, 494, 480, 200, 480, 549};

// The characters of bytes 0x80 to 0xFF in the usual order, glyphs 98 to 225.
constexpr std::array<char16_t, 128> kAccented = {
    0x00C4, 0x00C5, 0x00C7, 0x00C9, 0x00D1, 0x00D6, 0x00DC, 0x00E1, 0x00E0, 0x00E2, 0x00E4, 0x00E3, 0x00E5, 0x00E7, 0x00E9, 0x00E8,
    0x00EA, 0x00EB, 0x00ED, 0x00EC, 0x00EE, 0x00EF, 0x00F1, 0x00F3, 0x00F2, 0x00F4, 0x00F6, 0x00F5, 0x00FA, 0x00F9, 0x00FB, 0x00FC,
    0x2020, 0x00B0, 0x00A2, 0x00A3, 0x00A7, 0x2022, 0x00B6, 0x00DF, 0x00AE, 0x00A9, 0x2122, 0x00B4, 0x00A8, 0x2260, 0x00C6, 0x00D8,
    0x221E, 0x00B1, 0x2264, 0x2265, 0x00A5, 0x00B5, 0x2202, 0x2211, 0x220F, 0x03C0, 0x222B, 0x00AA, 0x00BA, 0x03A9, 0x00E6, 0x00F8,
    0x00BF, 0x00A1, 0x00AC, 0x221A, 0x0192, 0x2248, 0x2206, 0x00AB, 0x00BB, 0x2026, 0x00A0, 0x00C0, 0x00C3, 0x00D5, 0x0152, 0x0153,
    0x2013, 0x2014, 0x201C, 0x201D, 0x2018, 0x2019, 0x00F7, 0x25CA, 0x00FF, 0x0178, 0x2044, 0x00A4, 0x2039, 0x203A, 0xFB01, 0xFB02,
    0x2021, 0x00B7, 0x201A, 0x201E, 0x2030, 0x00C2, 0x00CA, 0x00C1, 0x00CB, 0x00C8, 0x00CD, 0x00CE, 0x00CF, 0x00CC, 0x00D3, 0x00D4,
    0,      0x00D2, 0x00DA, 0x00DB, 0x00D9, 0x0131, 0x02C6, 0x02DC, 0x00AF, 0x02D8, 0x02D9, 0x02DA, 0x00B8, 0x02DD, 0x02DB, 0x02C7};

bool ofSymbolFont(CodeReading reading) {
    return reading == CodeReading::SymbolFont || reading == CodeReading::SymbolGlyphOrder || reading == CodeReading::FoldedSymbolGlyphOrder;
}

bool isFoldedCode(std::uint32_t code) { return code >= kFolded && code <= 0x100 - kFirstGlyph; }

// Place in the usual order of glyphs, or the byte that the code is.
std::uint32_t byteOf(CodeReading reading, std::uint32_t code) {
    switch (reading) {
        case CodeReading::Unknown:
            return 0;
        case CodeReading::Characters:
        case CodeReading::SymbolFont:
            return code;
        case CodeReading::FoldedGlyphOrder:
        case CodeReading::FoldedSymbolGlyphOrder:
            if (code < 0x20) return 0;
            if (isFoldedCode(code)) code = 0x100 - code;
            break;
        case CodeReading::GlyphOrder:
        case CodeReading::SymbolGlyphOrder:
            break;
    }
    if (code < kFirstGlyph) return 0;
    if (code < kFirstAccented) return code + kOrderOffset;
    // Above the letters the Symbol font goes on with byte 0xA1, text fonts with 0x80.
    return code - kFirstAccented + (ofSymbolFont(reading) ? 0xA1U : 0x80U);
}

// The byte whose usual width the code is compared with; 0: none.
std::uint32_t judgedByte(CodeReading reading, std::uint32_t code) {
    std::uint32_t const byte = byteOf(reading, code);
    return byte > 0x20 && byte < 0x7F ? byte : 0;
}

double medianOf(std::vector<double> values) {
    auto const middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    return *middle;
}

// Mean relative deviation from `centre`.
double deviation(std::vector<double> const& values, double centre) {
    double sum = 0;
    for (double value : values) sum += std::abs(value / centre - 1);
    return sum / static_cast<double>(values.size());
}

double misfitOfFace(CodeReading reading, std::span<CodeWidth const> widths, Proportions proportions, Widths const& face) {
    std::vector<double> ratios;
    std::vector<double> usuals;
    std::vector<std::uint16_t> different;
    for (CodeWidth const& entry : widths.subspan(0, std::min(widths.size(), kMostCodes))) {
        std::uint32_t const byte = judgedByte(reading, entry.code);
        if (byte == 0 || !(entry.width > 0)) continue;
        std::uint16_t const usual = face[byte - 0x20];
        if (usual == 0) continue;
        ratios.push_back(entry.width * 1000 / usual);
        usuals.push_back(usual);
        if (std::find(different.begin(), different.end(), usual) == different.end()) different.push_back(usual);
    }
    bool const many = ratios.size() >= kMany;
    if (ratios.size() < kFewest || different.size() < (many ? kDifferentOfMany : kDifferentOfFew)) return 1;
    if (!many && proportions == Proportions::Relative) return 1;
    double const median = medianOf(ratios);
    if (!(median > 0) || !std::isfinite(median)) return 1;
    if (!many && std::abs(median - 1) > kUsualSize) return 1;
    double const mean = deviation(ratios, median);
    // Widths that hardly vary fit anything: the reading must explain how they do.
    if (mean > kUnexplained * deviation(usuals, medianOf(usuals))) return 1;
    return many || mean <= kFitOfFew ? mean : std::max(mean, 2 * kGoodFit);
}

}  // namespace

double misfit(CodeReading reading, std::span<CodeWidth const> widths, Proportions proportions) {
    if (reading == CodeReading::Unknown) return 1;
    if (ofSymbolFont(reading)) return misfitOfFace(reading, widths, proportions, kGreek);
    double least = 1;
    for (Widths const* face : {&kSans, &kBoldSans, &kSerif}) least = std::min(least, misfitOfFace(reading, widths, proportions, *face));
    return least;
}

// Printer drivers that must avoid control codes put the glyphs below the letters
// at the upper end: 253 is the space, 237 the 0. Those must fit by themselves.
static bool isFolded(CodeReading reading, std::span<CodeWidth const> widths, Proportions proportions) {
    std::vector<CodeWidth> folded;
    for (CodeWidth const& entry : widths) {
        if (!(entry.width > 0)) continue;
        if (entry.code > 0 && entry.code < 0x20) return false;
        if (isFoldedCode(entry.code)) folded.push_back({0x100 - entry.code, entry.width});
    }
    return misfit(reading, folded, proportions) <= kGoodFit;
}

CodeReading bestReading(std::span<CodeWidth const> widths, Proportions proportions) {
    constexpr CodeReading kReadings[] = {CodeReading::Characters, CodeReading::GlyphOrder, CodeReading::SymbolFont, CodeReading::SymbolGlyphOrder};
    CodeReading best = CodeReading::Unknown;
    double least = 1;
    for (CodeReading reading : kReadings) {
        double const value = misfit(reading, widths, proportions);
        if (value < least) {
            least = value;
            best = reading;
        }
    }
    if (least > kGoodFit) return CodeReading::Unknown;
    for (CodeReading reading : kReadings) {
        double const value = misfit(reading, widths, proportions);
        if (reading != best && value < std::max(kClearlyWorse * least, least + kClearlyWorseBy)) return CodeReading::Unknown;
    }
    if (best == CodeReading::GlyphOrder && isFolded(best, widths, proportions)) return CodeReading::FoldedGlyphOrder;
    if (best == CodeReading::SymbolGlyphOrder && isFolded(best, widths, proportions)) return CodeReading::FoldedSymbolGlyphOrder;
    return best;
}

char32_t characterOf(CodeReading reading, std::uint32_t code) {
    std::uint32_t const byte = byteOf(reading, code);
    if (ofSymbolFont(reading)) return symbolCharacter(SymbolFamily::Symbol, byte);
    if (byte < 0x20 || byte == 0x7F || byte > 0xFF) return 0;
    if (reading == CodeReading::Characters) return byte < 0x7F || byte >= 0xA0 ? static_cast<char32_t>(byte) : 0;
    return byte < 0x7F ? static_cast<char32_t>(byte) : kAccented[byte - 0x80];
}

}  // namespace standin::poppler

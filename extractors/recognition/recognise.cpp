// Lettering is found by its shape (lettering.h) and each line of it given to
// Tesseract alone, so that frames, rules and drawings around it disturb nothing.
//
// Tested by tests/extractors/recognition/recognise_test.cpp.
#include "extractors/recognition/recognise.h"

#include <algorithm>
#include <cctype>
#include <cmath>
#include <memory>
#include <mutex>
#include <span>
#include <string_view>

#include <leptonica/allheaders.h>
#include <tesseract/baseapi.h>

#include "extractors/recognition/ink.h"
#include "extractors/recognition/letter_case.h"
#include "extractors/recognition/lettering.h"
#include "extractors/recognition/missing_signs.h"

namespace standin::recognition {

using model::Error;
using model::ErrorKind;
using model::Points;
using model::Rect;

namespace {

constexpr float kBelieved = 50;       // of 100: below, a word was not made out
constexpr float kBelievedAlone = 70;  // of a letter that is not made out in a row
constexpr int kWhite = 255;
constexpr int kLeastGap = 4;             // pixels between letters of such a row
constexpr int kGapShare = 14;            // of their picture's height
constexpr double kCapHeight = 0.72;      // of the font's size
constexpr double kSmallHeight = 0.53;    // of letters without an ascender
constexpr double kBarOfPlusMinus = 0.8;  // of its width; the foot of a plus is its stem
constexpr Points kNear = 3;              // between places that were not made out
constexpr Points kSizeStep = 0.5F;       // sizes of lines are compared: no false precision
constexpr double kOneLetter = 1.3;       // heights wide: M, W
constexpr int kDotsPerInch = 300;

Error usage(std::string message) { return {ErrorKind::Usage, std::move(message), {}, 0}; }

std::vector<std::string> codesOf(std::string const& languages) {
    std::vector<std::string> codes(1);
    for (char const c : languages) {
        if (c == '+') codes.emplace_back();
        else codes.back() += c;
    }
    return codes;
}

bool isCode(std::string const& code) {
    return !code.empty() && std::all_of(code.begin(), code.end(), [](unsigned char c) { return std::isalnum(c) != 0 || c == '_'; });
}

std::string packageOf(std::string const& code) {
    std::string package = "tesseract-ocr-";
    for (char const c : code) package += c == '_' ? '-' : static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    return package;
}

using Engine = std::unique_ptr<tesseract::TessBaseAPI>;

// None where the data is missing.
Engine engineFor(std::string const& languages) {
    auto engine = std::make_unique<tesseract::TessBaseAPI>();
    static std::once_flag quiet;
    std::call_once(quiet, [&engine] { engine->SetVariable("debug_file", "/dev/null"); });
    if (engine->Init(nullptr, languages.c_str(), tesseract::OEM_LSTM_ONLY) != 0) return nullptr;
    engine->SetPageSegMode(tesseract::PSM_SINGLE_LINE);
    return engine;
}

// Kept for the next picture that the thread reads: loading a language takes as long as a page.
// Some 12 MB for English, until release() or the end of the thread.
struct Kept {
    std::string languages;
    Engine engine;
};
thread_local Kept kept;

tesseract::TessBaseAPI* keptEngineFor(std::string const& languages) {
    if (kept.engine == nullptr || kept.languages != languages) kept = {languages, engineFor(languages)};
    // Nothing that one picture taught goes into the next.
    if (kept.engine != nullptr) kept.engine->ClearAdaptiveClassifier();
    return kept.engine.get();
}

bool drawsFrames(std::string const& languages) {
    auto const codes = codesOf(languages);
    return std::any_of(codes.begin(), codes.end(), [](std::string const& code) { return code.starts_with("chi") || code.starts_with("jpn") || code.starts_with("kor"); });
}

bool hasAscender(std::string_view text) {
    return std::any_of(text.begin(), text.end(), [](unsigned char c) {
        return std::isupper(c) != 0 || std::isdigit(c) != 0 || std::string_view("bdfhklt(/").find(static_cast<char>(c)) != std::string_view::npos || c >= 0x80;
    });
}

// A letter or digit of any writing; dashes and quotes (which begin with E2) are none.
bool hasLetter(std::string_view text) {
    return std::any_of(text.begin(), text.end(), [](unsigned char c) { return std::isalnum(c) != 0 || (c >= 0xC3 && c != 0xE2); });
}

// Says something: a letter, a digit, or a sign that values are written with.
bool isTelling(std::string_view text) {
    static constexpr std::string_view kSigns = "-+~%=<>";
    return std::any_of(text.begin(), text.end(), [](unsigned char c) { return std::isalnum(c) != 0 || c >= 0x80 || kSigns.find(static_cast<char>(c)) != std::string_view::npos; });
}

class Reading {
public:
    Reading(model::Picture const& picture, tesseract::TessBaseAPI& engine) : m_picture(picture), m_ink(picture), m_engine(engine) {}

    model::Recognition read(Frames frames) {
        auto const lettering = findLettering(m_ink.pieces(), m_ink.rules(), {m_ink.pixelsPerPoint(), frames});
        for (auto const& line : lettering.lines) readLine(line);
        for (auto const& box : lettering.leftOut) m_found.unread.push_back(place(box));
        for (auto const& letter : m_letters) settleCase(letter);
        for (auto const& rule : m_ink.rules()) m_found.rules.push_back(ruleOf(rule));
        joinNear(m_found.unread);
        return std::move(m_found);
    }

private:
    // A word that is one letter, small or capital by its height only.
    struct Letter {
        std::size_t word;
        PixelBox box;
    };

    void settleCase(Letter const& letter) {
        auto const capHeight = capHeightAt(letter.box, m_measured);
        if (!capHeight) return;
        auto& word = m_found.words[letter.word];
        auto const code = static_cast<unsigned char>(word.text.front());
        word.text.front() = static_cast<char>(isCapital(letter.box, *capHeight) ? std::toupper(code) : std::tolower(code));
        word.size = sizeFor(*capHeight / kCapHeight);
    }

    // Places that touch or nearly touch are one.
    static void joinNear(std::vector<Rect>& places) {
        for (std::size_t i = 0; i < places.size(); ++i) {
            for (std::size_t k = i + 1; k < places.size();) {
                if (!places[i].grown(kNear).intersects(places[k])) {
                    ++k;
                    continue;
                }
                places[i] = model::united(places[i], places[k]);
                places.erase(places.begin() + static_cast<std::ptrdiff_t>(k));
                k = i + 1;
            }
        }
    }

    struct Found {
        std::string text;
        PixelBox box;          // in the picture of the line
        float confidence = 0;  // 0 … 100
    };

    void readLine(LetteringLine const& line) {
        auto const pixels = m_ink.only(line.pieces, line.box);
        auto found = isOneLetter(line) ? letterOf(pixels.get()) : wordsOf(pixels.get(), tesseract::PSM_SINGLE_LINE);
        if (std::none_of(found.begin(), found.end(), [](Found const& word) { return hasLetter(word.text); })) found.clear();  // strokes of a drawing
        std::size_t const words = m_found.words.size();
        std::size_t const unread = m_found.unread.size();
        for (auto const& word : found) {
            auto const onPage = place(moved(word.box, line));
            if (word.confidence < kBelieved) m_found.unread.push_back(onPage);
            else m_found.words.push_back({withSigns(word, line), onPage, rowOf(line.baseline), 0, m_lines});
        }
        listLeftOut(line, found);
        measure(line, std::span(m_found.words).subspan(words));
        if (m_found.words.size() == words && m_found.unread.size() == unread) m_found.unread.push_back(place(line.box));
        ++m_lines;
    }

    // Letters of a line that are in none of the words that came back.
    void listLeftOut(LetteringLine const& line, std::vector<Found> const& found) {
        if (found.empty()) return;  // all of it is listed
        for (std::size_t const index : line.pieces) {
            auto const& piece = m_ink.pieces()[index];
            if (2 * piece.height() < line.capHeight) continue;
            int const middle = (piece.left + piece.right) / 2;
            bool const read = std::any_of(found.begin(), found.end(), [&](Found const& word) {
                auto const box = moved(word.box, line);
                return middle >= box.left - kLeastGap && middle <= box.right + kLeastGap;
            });
            if (!read) m_found.unread.push_back(place(piece));
        }
    }

    // Gives the words of a line their size, and notes what it tells of the height of capitals.
    void measure(LetteringLine const& line, std::span<model::RecognisedWord> words) {
        if (words.empty()) return;
        bool const ascender = std::any_of(words.begin(), words.end(), [](auto const& word) { return hasAscender(word.text); });
        bool const letter = words.size() == 1 && words[0].text.size() == 1 && hasOneShape(words[0].text[0]);
        for (auto& word : words) word.size = sizeFor(line.capHeight / (ascender ? kCapHeight : kSmallHeight));
        if (letter) m_letters.push_back({m_found.words.size() - 1, line.box});
        else if (ascender) m_measured.push_back({line.box, line.baseline, line.capHeight});
    }

    // Of pixels.
    Points sizeFor(double pixels) const { return std::max(kSizeStep, static_cast<Points>(std::lround(pixels / m_ink.pixelsPerPoint() / kSizeStep)) * kSizeStep); }

    // The data have no ± either and give +: a plus that stands on a bar is one.
    std::string withSigns(Found const& word, LetteringLine const& line) const {
        auto text = withOhms(word.text);
        if (text.empty() || text.front() != '+') return text;
        auto const box = moved(word.box, line);
        auto const left = [this](std::size_t piece) { return m_ink.pieces()[piece].left; };
        std::size_t const* first = nullptr;
        for (auto const& piece : line.pieces) {
            if (left(piece) >= box.left - kLeastGap && (first == nullptr || left(piece) < left(*first))) first = &piece;
        }
        if (first == nullptr) return text;
        bool const plusMinus = m_ink.widthAtFoot(*first) > kBarOfPlusMinus ||
                               std::any_of(line.pieces.begin(), line.pieces.end(), [&](std::size_t piece) { return isBarBelow(m_ink.pieces()[piece], m_ink.pieces()[*first]); });
        return plusMinus ? "\u00B1" + text.substr(1) : text;
    }

    static bool isBarBelow(PixelBox const& bar, PixelBox const& plus) {
        int const slack = std::max(2, plus.width() / 4);
        bool const below = bar.top >= plus.bottom - slack && bar.top <= plus.bottom + plus.height() / 2;
        return below && std::abs(bar.left - plus.left) <= slack && std::abs(bar.right - plus.right) <= slack && bar.height() * 3 <= plus.height();
    }

    static bool isOneLetter(LetteringLine const& line) { return line.pieces.size() == 1 && line.box.width() < kOneLetter * line.box.height(); }

    // A letter alone is made out far better in a row of its like, so it is shown three times; where that
    // gives no three alike, as it stands.
    std::vector<Found> letterOf(Pix* pixels) {
        PixelBox const whole{Ink::kMargin, Ink::kMargin, pixGetWidth(pixels) - Ink::kMargin, pixGetHeight(pixels) - Ink::kMargin};
        auto const row = wordsOf(threefold(pixels).get(), tesseract::PSM_SINGLE_LINE);
        std::string letters;
        float confidence = row.empty() ? 0 : row.front().confidence;
        for (auto const& word : row) {
            letters += word.text;
            confidence = std::min(confidence, word.confidence);
        }
        if (auto letter = oneOf(letters, 3); !letter.empty() && confidence >= kBelieved) return {{std::move(letter), whole, confidence}};
        auto const alone = wordsOf(pixels, tesseract::PSM_SINGLE_WORD);
        if (alone.size() != 1 || alone.front().confidence < kBelievedAlone) return {};
        auto letter = oneOf(alone.front().text, 1);
        if (letter.empty()) return {};
        return {{std::move(letter), whole, alone.front().confidence}};
    }

    static PixPointer threefold(Pix* pixels) {
        int const width = pixGetWidth(pixels) - 2 * Ink::kMargin;
        int const height = pixGetHeight(pixels);
        int const step = width + std::max(kLeastGap, height / kGapShare);
        PixPointer row(pixCreate(2 * step + pixGetWidth(pixels), height, 8));
        pixSetAllArbitrary(row.get(), kWhite);
        for (int i = 0; i < 3; ++i) pixRasterop(row.get(), Ink::kMargin + i * step, 0, width, height, PIX_SRC, pixels, Ink::kMargin, 0);
        return row;
    }

    // The letter or digit that `text` is `count` times, small or capital; empty for anything else. "Ss" is
    // one S twice: a shape that small and capital share.
    static std::string oneOf(std::string_view text, std::size_t count) {
        bool const twice = count == 1 && text.size() == 2 && text[0] != text[1];
        if (text.size() != count && !twice) return {};
        auto const lower = [](char c) { return std::tolower(static_cast<unsigned char>(c)); };
        bool const alike = std::all_of(text.begin(), text.end(), [&](char c) { return lower(c) == lower(text.front()) && std::isalnum(static_cast<unsigned char>(c)) != 0; });
        return alike ? std::string(1, text.front()) : std::string{};
    }

    std::vector<Found> wordsOf(Pix* pixels, tesseract::PageSegMode mode) {
        m_engine.SetPageSegMode(mode);
        m_engine.SetImage(pixels);
        m_engine.SetSourceResolution(kDotsPerInch);
        if (m_engine.Recognize(nullptr) != 0) return {};
        std::unique_ptr<tesseract::ResultIterator> const results(m_engine.GetIterator());
        std::vector<Found> found;
        if (!results) return found;
        do {
            std::unique_ptr<char const[]> const text(results->GetUTF8Text(tesseract::RIL_WORD));
            PixelBox box;
            if (text == nullptr || !results->BoundingBox(tesseract::RIL_WORD, &box.left, &box.top, &box.right, &box.bottom)) continue;
            if (isTelling(text.get())) found.push_back({text.get(), box, results->Confidence(tesseract::RIL_WORD)});
        } while (results->Next(tesseract::RIL_WORD));
        return found;
    }

    // From the picture of the line to that of the page.
    static PixelBox moved(PixelBox const& box, LetteringLine const& line) {
        int const left = line.box.left - Ink::kMargin;
        int const top = line.box.top - Ink::kMargin;
        return {box.left + left, box.top + top, box.right + left, box.bottom + top};
    }

    Points columnOf(int x) const { return m_picture.box.x0 + static_cast<Points>(x / m_ink.pixelsPerPoint()); }
    Points rowOf(int y) const { return m_picture.box.y0 + static_cast<Points>(y / m_ink.pixelsPerPoint()); }
    Rect place(PixelBox const& box) const { return {columnOf(box.left), rowOf(box.top), columnOf(box.right), rowOf(box.bottom)}; }

    model::Rule ruleOf(PixelBox const& pixels) const {
        auto box = place(pixels);
        bool const across = pixels.width() > pixels.height();
        // A line of a scan lies askew: its middle is where it is.
        if (across) box.y0 = box.y1 = (box.y0 + box.y1) / 2;
        else box.x0 = box.x1 = (box.x0 + box.x1) / 2;
        return {across ? model::Rule::Axis::Horizontal : model::Rule::Axis::Vertical, box, 0, false};
    }

    model::Picture const& m_picture;
    Ink m_ink;
    tesseract::TessBaseAPI& m_engine;
    model::Recognition m_found;
    std::vector<MeasuredLine> m_measured;
    std::vector<Letter> m_letters;
    int m_lines = 0;
};

}  // namespace

model::Result<void> checkLanguages(std::string const& languages) {
    for (auto const& code : codesOf(languages)) {
        if (!isCode(code)) return tl::unexpected(usage("--ocr wants language codes joined by '+', for example eng or eng+chi_sim, not '" + languages + "'"));
        if (engineFor(code) == nullptr) return tl::unexpected(usage("--ocr " + code + ": the language is not installed; install the package " + packageOf(code)));
    }
    return {};
}

model::Result<model::Recognition> recognise(model::Picture const& picture, std::string const& languages) {
    if (picture.width <= 0 || picture.height <= 0) return model::Recognition{};
    auto* const engine = keptEngineFor(languages);
    if (engine == nullptr) return tl::unexpected(usage("--ocr " + languages + ": the languages are not installed"));
    return Reading(picture, *engine).read(drawsFrames(languages) ? Frames::PartOfLetters : Frames::AroundLetters);
}

void release() { kept = {}; }

}  // namespace standin::recognition

// One walk over all words: each has one owner, so each number has one. Tested
// by tests/extractors/coverage_test.cpp and, over real input, by
// tests/property/.
#include "extractors/coverage.h"

#include "quantity/numbers.h"

namespace standin::reading {

namespace {

// An image that covers this share of a page without text is a scanned page.
constexpr double kScannedShare = 0.25;

enum class Words : std::uint8_t { All, Stored };  // recognised ones too, or not

bool hasText(model::PageLayout const& page, Words words) {
    // A stamp or a page number laid over a scan does not make it readable.
    std::size_t owned = 0;
    for (auto const& word : page.words) {
        if (word.owner != model::Owner::Furniture && !word.unknown && (words == Words::All || !word.recognised)) ++owned;
    }
    if (owned == 0) return false;
    double images = 0;
    for (auto const& image : page.images) images += image.box.area();
    constexpr std::size_t kFewWords = 12;
    return owned > kFewWords || images < kScannedShare * page.width * page.height;
}

std::vector<int> pagesWithout(Words words, std::span<model::PageLayout const> pages) {
    std::vector<int> without;
    for (auto const& page : pages) {
        bool const blank = page.words.empty() && page.images.empty() && page.drawings.empty() && page.rules.empty();
        if (!blank && !hasText(page, words)) without.push_back(page.page);
    }
    return without;
}

}  // namespace

model::Coverage accountFor(std::span<model::PageLayout const> pages, model::Datasheet const& datasheet) {
    model::Coverage coverage;
    for (auto const& page : pages) {
        for (auto const& word : page.words) {
            auto const spans = quantity::findNumbers(word.text);
            auto const count = static_cast<int>(spans.size());
            if (count == 0) continue;
            coverage.numbers += count;
            switch (word.owner) {
                case model::Owner::Parameter: coverage.inParameters += count; break;
                case model::Owner::Table: coverage.inTables += count; break;
                case model::Owner::Text: coverage.inText += count; break;
                case model::Owner::Figure: coverage.inFigures += count; break;
                case model::Owner::Furniture: coverage.inFurniture += count; break;
                case model::Owner::None:
                    for (auto const& span : spans) {
                        coverage.unaccounted.push_back({word.text.substr(span.begin, span.end - span.begin), page.page, word.box});
                    }
                    break;
            }
        }
    }
    coverage.pagesWithoutText = pagesWithout(Words::All, pages);
    coverage.sentences = static_cast<int>(datasheet.text.size());
    for (auto const& figure : datasheet.figures) {
        if (figure.read == model::FigureReading::Image) coverage.unreadFigures.push_back(figure.id);
    }
    return coverage;
}

std::vector<int> pagesWithoutTextLayer(std::span<model::PageLayout const> pages) { return pagesWithout(Words::Stored, pages); }

}  // namespace standin::reading

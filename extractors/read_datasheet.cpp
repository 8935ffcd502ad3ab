// Bytes -> pages (page_reading.h, over threads) -> what needs the whole
// document: furniture, continued tables, sections, parameters, figures, pins,
// packages, ordering, running text, features, identification, coverage. The
// order matters: each stage takes the words that are its own, the running text
// takes what is left.
//
// Tested by tests/extractors/read_datasheet_test.cpp.
#include "extractors/read_datasheet.h"

#include <algorithm>
#include <array>
#include <map>

#include <fmt/format.h>

#include "extractors/corrections/apply_corrections.h"
#include "extractors/coverage.h"
#include "extractors/features/read_features.h"
#include "extractors/figures/drawn_signs.h"
#include "extractors/figures/find_figures.h"
#include "extractors/identify_document.h"
#include "extractors/layout/layout.h"
#include "extractors/ordering/read_ordering.h"
#include "extractors/packages/read_packages.h"
#include "extractors/page_reading.h"
#include "extractors/parameters/grading.h"
#include "extractors/parameters/read_parameters.h"
#include "extractors/pins/read_pins.h"
#include "extractors/poppler/poppler_library.h"
#include "extractors/recognised_marks.h"
#include "extractors/sections/sections.h"
#include "extractors/tables/find_tables.h"
#include "model/datasheet_json.h"
#include "model/file.h"

namespace standin::reading {

namespace {

bool isJson(std::string_view bytes) {
    for (char const c : bytes) {
        if (c == ' ' || c == '\n' || c == '\r' || c == '\t') continue;
        return c == '{';
    }
    return false;
}

std::string textOfBlock(model::PageLayout const& page, model::Block const& block) {
    std::string text;
    for (std::uint32_t l = block.firstLine; l < block.firstLine + block.lineCount; ++l) {
        auto const& line = page.lines[l];
        for (std::uint32_t w = line.firstWord; w < line.firstWord + line.wordCount; ++w) {
            if (!text.empty()) text += ' ';
            text += page.words[w].text;
        }
    }
    return text;
}

std::optional<model::Furniture::Kind> furnitureKind(model::BlockRole role) {
    switch (role) {
        case model::BlockRole::RunningHead: return model::Furniture::Kind::RunningHead;
        case model::BlockRole::PageNumber: return model::Furniture::Kind::PageNumber;
        case model::BlockRole::Watermark: return model::Furniture::Kind::Watermark;
        default: return std::nullopt;
    }
}

// Equal texts of one kind are one entry with all its places.
std::vector<model::Furniture> collectFurniture(std::vector<model::PageLayout> const& pages) {
    std::vector<model::Furniture> furniture;
    std::map<std::pair<model::Furniture::Kind, std::string>, std::size_t> known;
    for (auto const& page : pages) {
        for (auto const& block : page.blocks) {
            auto const kind = furnitureKind(block.role);
            if (!kind) continue;
            auto text = textOfBlock(page, block);
            auto const [entry, isNew] = known.try_emplace({*kind, text}, furniture.size());
            if (isNew) furniture.push_back({*kind, std::move(text), {}});
            furniture[entry->second].places.push_back({page.page, block.box});
        }
    }
    return furniture;
}

std::string listed(std::vector<int> const& pages) {
    std::string list;
    for (int const page : pages) list += fmt::format("{}{}", list.empty() ? "" : ", ", page);
    return list;
}

void noteTextLayer(model::Datasheet& sheet, std::span<model::PageLayout const> pages) {
    auto missing = pagesWithoutTextLayer(pages);
    if (missing.empty()) return;
    sheet.document.textLayer = static_cast<int>(missing.size()) >= sheet.document.pages ? model::TextLayer::None : model::TextLayer::Partial;
    auto const& unread = sheet.coverage.pagesWithoutText;
    std::erase_if(missing, [&unread](int page) { return std::find(unread.begin(), unread.end(), page) != unread.end(); });
    auto& warnings = sheet.document.warnings;
    if (!unread.empty()) warnings.push_back(fmt::format("no text layer on page {}: what is printed there was not read", listed(unread)));
    if (!missing.empty()) warnings.push_back(fmt::format("no text layer on page {}: what stands there was recognised from a picture and may be misread; compare it with the page", listed(missing)));
}

bool hasTextBehindPicture(model::PageLayout const& page) {
    return std::any_of(page.words.begin(), page.words.end(), [&page](model::Word const& word) {
        return word.hidden && std::any_of(page.images.begin(), page.images.end(), [&word](model::Image const& image) { return image.box.contains(word.box.centre()); });
    });
}

// The text layer of a scan, or what a picture covers: read, but not what is seen.
void noteHiddenText(model::Datasheet& sheet, std::span<model::PageLayout const> pages) {
    std::vector<int> hidden;
    for (auto const& page : pages) {
        if (hasTextBehindPicture(page)) hidden.push_back(page.page);
    }
    if (hidden.empty()) return;
    sheet.document.warnings.push_back(
        fmt::format("hidden text where a picture stands on page {}: it was read, and the picture may show something else; compare it with the page", listed(hidden)));
}

// `kept` gets the pages, unless null.
model::Datasheet understand(ReadDocument document, vocabulary::Vocabulary const& vocabulary, std::vector<model::PageLayout>* kept) {
    model::Datasheet sheet;
    sheet.document = std::move(document.info);
    std::vector<model::PageLayout> pages;
    std::vector<model::Table> tables;
    pages.reserve(document.pages.size());
    for (auto& page : document.pages) {
        pages.push_back(std::move(page.layout));
        for (auto& table : page.tables) tables.push_back(std::move(table));
    }
    layout::markFurniture(pages);
    tables::joinContinued(tables, pages);
    sheet.sections = sections::findSections(pages);
    auto reading = parameters::readParameters(tables, pages, sheet.sections, &vocabulary);
    sheet.parameters = std::move(reading.parameters);
    sheet.figures = figures::findFigures(pages, tables, sheet.sections);
    auto signs = figures::drawnSigns(pages, tables, sheet.figures);
    parameters::doubtRowsWithDrawnSigns(sheet.parameters, signs, tables);
    auto pinReading = pins::readPins(tables, pages, sheet.sections);
    sheet.pins = std::move(pinReading.pins);
    sheet.packages = packages::readPackages(pages, sheet.sections);
    sheet.ordering = ordering::readOrdering(tables);
    identify(sheet.document, pages);
    auto const& languages = sheet.document.languages;
    sheet.text = sections::readText(pages, sheet.sections, languages.empty() ? std::string_view{} : languages.front());
    sheet.furniture = collectFurniture(pages);
    sheet.features = features::readFeatures(sheet.text, tables, sheet.ordering, reading.family, vocabulary);
    sheet.tables = std::move(tables);
    sheet.coverage = accountFor(pages, sheet);
    sheet.coverage.unreadPins = std::move(pinReading.unread);
    sheet.coverage.drawnSigns = std::move(signs);
    for (auto& table : sheet.tables) {
        for (auto& cell : table.cells) {
            cell.words = {};
            cell.lineStarts = {};
        }
    }
    for (auto const& page : pages) {
        for (auto const& note : page.notes) sheet.document.warnings.push_back(fmt::format("page {}: {}", page.page, note.text));
    }
    markRecognised(pages, sheet);
    noteTextLayer(sheet, pages);
    noteHiddenText(sheet, pages);
    if (kept != nullptr) *kept = std::move(pages);
    return sheet;
}

// One result a path, in their order. PDFs share the threads, and one is understood while pages
// of another are still read; a datasheet that was read before is parsed alone. `kept` gets what the sheets were made from, one
// a path, or is empty.
std::vector<model::Result<model::Datasheet>> readAll(std::span<std::string const> paths, ReadOptions const& options,
                                                     vocabulary::Vocabulary const& vocabulary, std::span<ReadTrace> kept) {
    std::vector<model::Result<model::Datasheet>> sheets(paths.size(), tl::unexpected(model::Error{}));
    std::vector<FileBytes> pdfs;
    std::vector<std::size_t> places;
    for (std::size_t i = 0; i < paths.size(); ++i) {
        auto bytes = model::readFile(paths[i], model::kLongestDocument);
        if (!bytes) {
            sheets[i] = tl::unexpected(bytes.error());
        } else if (isJson(*bytes)) {
            sheets[i] = model::datasheetFromJson(*bytes, paths[i]);
        } else {
            pdfs.push_back({paths[i], std::move(*bytes)});
            places.push_back(i);
        }
    }
    auto const errors = readPages(pdfs, options, [&](std::size_t k, ReadDocument document) {
        sheets[places[k]] = understand(std::move(document), vocabulary, kept.empty() ? nullptr : &kept[places[k]].pages);
    });
    for (std::size_t k = 0; k < errors.size(); ++k) {
        if (errors[k]) sheets[places[k]] = tl::unexpected(*errors[k]);
    }
    for (std::size_t k = 0; k < pdfs.size() && !kept.empty(); ++k) kept[places[k]].bytes = std::move(pdfs[k].bytes);
    return sheets;
}

}  // namespace

void prepare() { poppler::ensureLibrary(); }

model::Result<model::Datasheet> readDatasheet(std::string const& path, ReadOptions const& options, vocabulary::Vocabulary const& vocabulary, ReadTrace* kept) {
    auto sheet = std::move(readAll(std::span{&path, 1}, options, vocabulary, kept != nullptr ? std::span{kept, 1} : std::span<ReadTrace>{}).front());
    if (!sheet) return sheet;
    auto const corrected = corrections::applyCorrections(options.corrections, std::span{&*sheet, 1}, vocabulary);
    if (!corrected) return tl::unexpected(corrected.error());
    return sheet;
}

model::Result<std::pair<model::Datasheet, model::Datasheet>> readPair(std::string const& reference, std::string const& candidate,
                                                                     ReadOptions const& options, vocabulary::Vocabulary const& vocabulary, PairBytes* kept) {
    std::array const paths{reference, candidate};
    std::array<ReadTrace, 2> traces;
    auto sheets = readAll(paths, options, vocabulary, kept != nullptr ? std::span<ReadTrace>(traces) : std::span<ReadTrace>{});
    if (kept != nullptr) *kept = {std::move(traces[0].bytes), std::move(traces[1].bytes)};
    for (auto const& sheet : sheets) {
        if (!sheet) return tl::unexpected(sheet.error());
    }
    std::array pair{std::move(*sheets[0]), std::move(*sheets[1])};
    auto const corrected = corrections::applyCorrections(options.corrections, pair, vocabulary);
    if (!corrected) return tl::unexpected(corrected.error());
    return std::pair{std::move(pair[0]), std::move(pair[1])};
}

}  // namespace standin::reading

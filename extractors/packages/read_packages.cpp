// Every line is searched with the two words behind each that may begin a name,
// so that "SOT - 23" and "8-lead SOIC" are seen whole. Of the places of one
// canonical name the most telling stays. Tested by
// tests/extractors/packages/read_packages_test.cpp.
#include "extractors/packages/read_packages.h"

#include <algorithm>

#include "extractors/packages/package_names.h"
#include "extractors/sections/sections.h"
#include "text/utf8.h"

namespace standin::packages {

namespace {

constexpr std::size_t kWordsOfAName = 4;

// How much a place says about the package of the part; higher wins.
int weightOf(model::Section const* section) {
    if (section == nullptr) return 1;
    switch (section->kind) {
        case model::SectionKind::Package: return 4;
        case model::SectionKind::Ordering:
        case model::SectionKind::Selection: return 3;
        case model::SectionKind::Pins:
        case model::SectionKind::Features: return 2;
        default: return 1;
    }
}

bool mayBeginName(std::string_view word) {
    // Cheap: a name holds a digit or is one of the few words of letters only.
    return std::any_of(word.begin(), word.end(), [](char c) { return text::isAsciiUpper(c) || text::isAsciiDigit(c); });
}

struct Found {
    model::Package package;
    int weight = 0;
};

void keep(std::vector<Found>& found, model::Package package, int weight) {
    for (auto& known : found) {
        if (known.package.canonical != package.canonical) continue;
        if (weight > known.weight) known = {std::move(package), weight};
        return;
    }
    found.push_back({std::move(package), weight});
}

void searchLine(std::vector<Found>& found, model::PageLayout const& page, model::TextLine const& line, std::span<model::Section const> sections) {
    std::size_t const end = line.firstWord + line.wordCount;
    for (std::size_t i = line.firstWord; i < end; ++i) {
        auto const& word = page.words[i];
        if (word.hidden || word.owner == model::Owner::Furniture || word.text.size() > 64 || !mayBeginName(word.text)) continue;
        if (!mayBeginPackageName(word.text, i + 1 < end ? std::string_view(page.words[i + 1].text) : std::string_view{})) continue;
        std::string some = word.text;
        std::vector<std::size_t> starts{0};
        for (std::size_t k = i + 1; k < std::min(end, i + kWordsOfAName) && page.words[k].text.size() <= 32; ++k) {
            some += ' ';
            starts.push_back(some.size());
            some += page.words[k].text;
        }
        auto name = findPackageName(some);
        if (!name || name->begin >= word.text.size()) continue;  // begins in a later word: found from there
        model::Package package{some.substr(name->begin, name->end - name->begin), name->canonical, name->pins, page.page, {}};
        std::size_t last = i;
        for (std::size_t k = 0; k < starts.size(); ++k) {
            if (starts[k] >= name->end) break;
            last = i + k;
            package.box = model::united(package.box, page.words[last].box);
        }
        keep(found, std::move(package), weightOf(sections::sectionAt(sections, page.page, word.box.y1)));
        i = last;
    }
}

}  // namespace

std::vector<model::Package> readPackages(std::span<model::PageLayout const> pages, std::span<model::Section const> sections) {
    std::vector<Found> found;
    for (auto const& page : pages) {
        for (auto const& line : page.lines) searchLine(found, page, line, sections);
    }
    std::vector<model::Package> packages;
    packages.reserve(found.size());
    for (auto& entry : found) packages.push_back(std::move(entry.package));
    return packages;
}

std::string canonicalPackage(std::string_view printed) {
    auto name = findPackageName(printed);
    return name ? std::move(name->canonical) : std::string{};
}

}  // namespace standin::packages

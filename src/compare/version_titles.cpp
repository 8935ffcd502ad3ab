// A code counts only where it has the stem of a part number of the sheet, and another
// table another code of that stem in its title: standards ("IEC61000-4-2"), packages
// ("SOT-23") and the part itself stand in titles too.
//
// Tested by tests/src/compare/version_titles_test.cpp.
#include "compare/version_titles.h"

#include <algorithm>
#include <map>
#include <set>
#include <string_view>

#include "text/utf8.h"

namespace standin::compare {

namespace {

constexpr std::size_t kShortestCode = 4;
constexpr std::size_t kStem = 3;  // letters that two codes of one family begin with at least

bool isCode(std::string_view word) {
    if (word.size() < kShortestCode) return false;
    bool const plain = std::all_of(word.begin(), word.end(), [](char c) { return text::isAsciiLetter(c) || text::isAsciiDigit(c) || c == '-'; });
    auto const letters = std::count_if(word.begin(), word.end(), text::isAsciiUpper);
    bool const digits = std::any_of(word.begin(), word.end(), text::isAsciiDigit);
    return plain && digits && (text::isAsciiUpper(word.front()) || (text::isAsciiDigit(word.front()) && letters >= 2));
}

// What is in brackets are conditions and remarks.
std::vector<std::string> codesOf(std::string_view title) {
    title = title.substr(0, title.find('('));
    std::vector<std::string> codes;
    for (std::size_t at = 0; at < title.size();) {
        std::size_t const end = std::min(title.find_first_of(" ,;:/", at), title.size());
        if (isCode(title.substr(at, end - at))) codes.emplace_back(title.substr(at, end - at));
        at = end + 1;
    }
    return codes;
}

bool areOfOneFamily(std::string_view a, std::string_view b) { return a != b && a.substr(0, kStem) == b.substr(0, kStem); }

bool isOfThePart(std::string_view code, model::Datasheet const& sheet) {
    auto const stem = text::asciiLower(code.substr(0, kStem));
    auto const& parts = sheet.document.partNumbers;
    return std::any_of(parts.begin(), parts.end(), [&](std::string const& part) { return text::asciiLower(std::string_view(part).substr(0, kStem)) == stem; });
}

// "(2) QX7806", "3. QX7806": what stands behind the mark of a list.
std::string_view withoutListMark(std::string_view line) {
    constexpr std::size_t kMostDigits = 2;
    std::size_t const digits = std::min(line.find_first_not_of("(["), line.size());
    std::size_t const close = std::min(line.find_first_not_of("0123456789", digits), line.size());
    std::size_t const behind = line.find_first_not_of(")]. ", close);
    bool const marked = close > digits && close - digits <= kMostDigits && behind != std::string_view::npos && behind > close;
    return marked ? line.substr(behind) : line;
}

// A line above the table that is a code and nothing else: one that can be ordered, or one of the part.
std::string codeAbove(model::Table const& table, model::Datasheet const& sheet) {
    constexpr model::Points kNear = 45;  // three lines of text
    constexpr model::Points kTouching = 2;
    std::string_view nearest;
    model::Points distance = kNear;
    for (auto const& sentence : sheet.text) {
        for (auto const& place : sentence.places) {
            model::Points const below = table.box.y0 - place.box.y1;
            bool const above = place.page == table.page && below >= -kTouching && place.box.x0 < table.box.x1 && place.box.x1 > table.box.x0;
            if (!above || below >= distance) continue;
            nearest = sentence.text;
            distance = below;
        }
    }
    std::string_view const line = withoutListMark(nearest);
    bool const ordered = std::any_of(sheet.ordering.begin(), sheet.ordering.end(), [line](auto const& one) { return one.code == line; });
    return ordered || isCode(line) ? std::string(line) : std::string();
}

}  // namespace

std::vector<std::string> versionsInTitles(model::Datasheet const& sheet) {
    std::map<std::string, std::string_view> titleOfSection;
    for (auto const& section : sheet.sections) titleOfSection.emplace(section.id, section.title);
    std::map<std::string, std::vector<std::string>> codesOfTable;
    std::set<std::string> all;
    for (auto const& table : sheet.tables) {
        if (table.kind != model::TableKind::Specification) continue;
        auto codes = codesOf(table.caption);
        if (auto above = codes.empty() ? codeAbove(table, sheet) : std::string(); !above.empty()) codes.push_back(std::move(above));
        auto const before = codesOfTable.find(table.continues);
        if (codes.empty() && before != codesOfTable.end()) codes = before->second;
        auto const section = titleOfSection.find(table.section);
        if (codes.empty() && section != titleOfSection.end()) codes = codesOf(section->second);
        all.insert(codes.begin(), codes.end());
        codesOfTable.emplace(table.id, std::move(codes));
    }
    std::vector<std::string> versions;
    versions.reserve(sheet.parameters.size());
    for (auto const& parameter : sheet.parameters) {
        std::string version;
        auto const codes = codesOfTable.find(parameter.table);
        for (auto const& code : codes == codesOfTable.end() ? std::vector<std::string>() : codes->second) {
            if (!isOfThePart(code, sheet) || std::none_of(all.begin(), all.end(), [&](std::string const& other) { return areOfOneFamily(code, other); })) continue;
            version += (version.empty() ? "" : ", ") + code;
        }
        versions.push_back(std::move(version));
    }
    return versions;
}

bool takeVersionsFromTitles(model::Datasheet& sheet) {
    auto const versions = versionsInTitles(sheet);
    bool any = false;
    for (std::size_t i = 0; i < versions.size(); ++i) {
        auto& variant = sheet.parameters[i].variant;
        if (versions[i].empty() || variant.find(versions[i]) != std::string::npos) continue;
        variant = variant.empty() ? versions[i] : versions[i] + " " + variant;
        any = true;
    }
    return any;
}

}  // namespace standin::compare

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

}  // namespace

std::vector<std::string> versionsInTitles(model::Datasheet const& sheet) {
    std::map<std::string, std::string_view> titleOfSection;
    for (auto const& section : sheet.sections) titleOfSection.emplace(section.id, section.title);
    std::map<std::string, std::vector<std::string>> codesOfTable;
    std::set<std::string> all;
    for (auto const& table : sheet.tables) {
        if (table.kind != model::TableKind::Specification) continue;
        auto codes = codesOf(table.caption);
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

// Part numbers are words of letters and digits that stand large on the first
// page or in the running heads; the maker is the name before a company form
// ("Semiconductor", "Co., Ltd") that is printed most; revision and date follow
// their key words. Tested by tests/extractors/identify_document_test.cpp.
#include "extractors/identify_document.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <map>
#include <string_view>

#include "text/script.h"

namespace standin::reading {

namespace {

constexpr std::size_t kMostPartNumbers = 4;
constexpr std::size_t kLongestPartNumber = 24;
// How much larger than running text a title is, in body sizes.
constexpr model::Points kTitleSize = 1.25F;

bool isUpper(char c) { return c >= 'A' && c <= 'Z'; }
bool isDigit(char c) { return c >= '0' && c <= '9'; }

std::string_view trimmed(std::string_view text) {
    constexpr std::string_view kAround = " .,;:()[]\"'*";
    auto const first = text.find_first_not_of(kAround);
    if (first == std::string_view::npos) return {};
    return text.substr(first, text.find_last_not_of(kAround) - first + 1);
}

// Letters and digits mixed, in capitals, of a part number's length: "XK104A",
// "74HX595", "LN4-33".
bool looksLikePartNumber(std::string_view word) {
    if (word.size() < 4 || word.size() > kLongestPartNumber) return false;
    int letters = 0;
    int digits = 0;
    for (char const c : word) {
        if (isUpper(c)) ++letters;
        else if (isDigit(c)) ++digits;
        else if (c >= 'a' && c <= 'z') { if (c != 'x' && c != 'n') return false; }
        else if (c != '-' && c != '/' && c != '.') return false;
    }
    if (letters == 0 || digits < 2) return false;
    constexpr std::array<std::string_view, 8> kOtherCodes{"SOT", "SOP", "SOIC", "DFN", "QFN", "TO-", "IEC", "ISO"};
    return std::none_of(kOtherCodes.begin(), kOtherCodes.end(), [word](auto code) { return word.starts_with(code); });
}

bool equalsIgnoringCase(std::string_view a, std::string_view b) {
    return a.size() == b.size() && std::equal(a.begin(), a.end(), b.begin(), [](unsigned char x, unsigned char y) { return std::tolower(x) == std::tolower(y); });
}

struct Scored {
    std::string text;
    double score = 0;
};

void add(std::vector<Scored>& list, std::string_view text, double score) {
    for (auto& entry : list) {
        if (entry.text == text) {
            entry.score += score;
            return;
        }
    }
    list.push_back({std::string(text), score});
}

std::vector<std::string> partNumbers(std::span<model::PageLayout const> pages) {
    std::vector<Scored> found;
    for (std::size_t i = 0; i < std::min<std::size_t>(2, pages.size()); ++i) {
        auto const& page = pages[i];
        for (auto const& word : page.words) {
            auto const text = trimmed(word.text);
            if (!looksLikePartNumber(text)) continue;
            double score = 1;
            if (i == 0 && word.size > kTitleSize * page.bodySize) score += 10 * word.size / std::max(1.0F, page.bodySize);
            if (word.owner == model::Owner::Furniture) score += 5;
            if (i == 0 && word.box.y0 < page.height / 5) score += 2;
            add(found, text, score);
        }
    }
    std::stable_sort(found.begin(), found.end(), [](auto const& a, auto const& b) { return a.score > b.score; });
    std::vector<std::string> numbers;
    for (auto const& entry : found) {
        if (numbers.size() == kMostPartNumbers || entry.score < 3) break;
        numbers.push_back(entry.text);
    }
    return numbers;
}

constexpr std::array<std::string_view, 9> kCompanyForms{"Semiconductor", "Semiconductors", "Microelectronics", "Electronics", "Devices",
                                                         "Ltd", "Inc", "Corporation", "GmbH"};

bool isCompanyForm(std::string_view word) {
    return std::any_of(kCompanyForms.begin(), kCompanyForms.end(), [word](auto form) { return equalsIgnoringCase(word, form); });
}

bool startsCapital(std::string_view word) { return !word.empty() && (isUpper(word.front()) || isDigit(word.front()) || word == "&"); }

// The capitalised words before and with a company form, on one line.
void addMakers(std::vector<Scored>& found, model::PageLayout const& page, model::TextLine const& line) {
    std::size_t const end = line.firstWord + line.wordCount;
    for (std::size_t i = line.firstWord; i < end; ++i) {
        if (!isCompanyForm(trimmed(page.words[i].text))) continue;
        std::size_t first = i;
        while (first > line.firstWord && i - first < 4 && startsCapital(trimmed(page.words[first - 1].text))) --first;
        if (first == i) continue;
        std::string name;
        for (std::size_t k = first; k <= i; ++k) {
            if (!name.empty()) name += ' ';
            name += trimmed(page.words[k].text);
        }
        add(found, name, page.words[i].owner == model::Owner::Furniture ? 3 : 1);
    }
}

std::string best(std::vector<Scored> const& found) {
    auto const top = std::max_element(found.begin(), found.end(), [](auto const& a, auto const& b) { return a.score < b.score; });
    return top == found.end() ? std::string{} : top->text;
}

// "Rev. 1.4", "Revision B", "V1.2", "REV2.0".
std::string revisionIn(model::PageLayout const& page, model::TextLine const& line) {
    for (std::size_t i = 0; i < line.wordCount; ++i) {
        auto const word = trimmed(page.words[line.firstWord + i].text);
        bool const keyed = equalsIgnoringCase(word, "rev") || equalsIgnoringCase(word, "revision") || equalsIgnoringCase(word, "version");
        if (keyed && i + 1 < line.wordCount) {
            auto const next = trimmed(page.words[line.firstWord + i + 1].text);
            bool const value = !next.empty() && next.size() <= 8 && (isDigit(next.front()) || (next.size() <= 2 && isUpper(next.front())));
            if (value) return std::string(next);
        }
        for (std::string_view const prefix : {"Rev.", "REV.", "Rev", "REV", "V", "v"}) {
            if (!word.starts_with(prefix) || word.size() == prefix.size() || word.size() > prefix.size() + 6) continue;
            auto const rest = word.substr(prefix.size());
            bool const numeric = std::all_of(rest.begin(), rest.end(), [](char c) { return isDigit(c) || c == '.'; });
            if (numeric && (rest.find('.') != std::string_view::npos || prefix.size() > 1)) return std::string(rest);
        }
    }
    return {};
}

constexpr std::array<std::string_view, 12> kMonths{"jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"};

bool isMonth(std::string_view word) {
    if (word.size() < 3) return false;
    return std::any_of(kMonths.begin(), kMonths.end(), [word](auto month) { return equalsIgnoringCase(word.substr(0, 3), month); });
}

bool isYear(std::string_view word) {
    return word.size() == 4 && (word.starts_with("19") || word.starts_with("20")) && isDigit(word[2]) && isDigit(word[3]);
}

// "March 2021", "12 May 2021", "2021-03-05", "2021/03", "05/2021".
std::string dateIn(model::PageLayout const& page, model::TextLine const& line) {
    for (std::size_t i = 0; i < line.wordCount; ++i) {
        auto const word = trimmed(page.words[line.firstWord + i].text);
        bool const dashed = word.size() >= 7 && word.size() <= 10 && std::all_of(word.begin(), word.end(), [](char c) { return isDigit(c) || c == '-' || c == '/' || c == '.'; });
        if (dashed && (isYear(word.substr(0, 4)) || isYear(word.substr(word.size() - 4))) && std::count_if(word.begin(), word.end(), [](char c) { return !isDigit(c); }) >= 1) {
            return std::string(word);
        }
        if (!isMonth(word) || i + 1 >= line.wordCount) continue;
        std::string date(word);
        for (std::size_t k = i + 1; k < std::min<std::size_t>(i + 3, line.wordCount); ++k) {
            auto const next = trimmed(page.words[line.firstWord + k].text);
            date += ' ';
            date += next;
            if (isYear(next)) {
                if (i > 0) {
                    auto const before = trimmed(page.words[line.firstWord + i - 1].text);
                    if (!before.empty() && before.size() <= 2 && isDigit(before.front())) date = std::string(before) + " " + date;
                }
                return date;
            }
        }
    }
    return {};
}

std::vector<std::string> languages(std::span<model::PageLayout const> pages) {
    std::map<std::string, std::size_t> votes;
    for (auto const& page : pages.subspan(0, std::min<std::size_t>(pages.size(), 4))) {
        for (auto const& block : page.blocks) {
            std::string text;
            for (std::uint32_t l = block.firstLine; l < block.firstLine + block.lineCount; ++l) {
                auto const& line = page.lines[l];
                for (std::uint32_t w = line.firstWord; w < line.firstWord + line.wordCount; ++w) {
                    text += page.words[w].text;
                    text += ' ';
                }
            }
            auto const language = text::detectLanguage(text);
            if (!language.empty()) votes[language] += text.size();
        }
    }
    std::size_t total = 0;
    for (auto const& [language, size] : votes) total += size;
    std::vector<std::pair<std::string, std::size_t>> ranked(votes.begin(), votes.end());
    std::stable_sort(ranked.begin(), ranked.end(), [](auto const& a, auto const& b) { return a.second > b.second; });
    std::vector<std::string> result;
    for (auto const& [language, size] : ranked) {
        if (result.empty() || size * 5 > total) result.push_back(language);  // a fifth of the text counts as a second language
    }
    return result;
}

}  // namespace

void identify(model::DocumentInfo& info, std::span<model::PageLayout const> pages) {
    info.languages = languages(pages);
    info.partNumbers = partNumbers(pages);
    std::vector<Scored> makers;
    for (std::size_t i = 0; i < pages.size(); ++i) {
        if (i > 1 && i + 1 != pages.size()) continue;
        for (auto const& line : pages[i].lines) {
            addMakers(makers, pages[i], line);
            if (info.revision.empty()) info.revision = revisionIn(pages[i], line);
            if (info.date.empty()) info.date = dateIn(pages[i], line);
        }
    }
    info.maker = best(makers);
}

}  // namespace standin::reading

// Part numbers are words of letters and digits that stand large on the first
// page or in the running heads; a word beside a date there is rather the document's
// own number. The maker is the name that holds the copyright or stands before a company form
// ("Semiconductor", "Co., Ltd"), whichever is printed most; revision and date follow their key words, in the
// running heads before elsewhere. Tested by tests/extractors/identify_document_test.cpp.
#include "extractors/identify_document.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <map>
#include <string_view>

#include "quantity/numbers.h"
#include "text/script.h"

namespace standin::reading {

namespace {

constexpr std::size_t kMostPartNumbers = 4;
constexpr double kEnoughForPart = 3;  // score
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

// "1.5A", "100V", "20V/6A": what a title says of a part. Four digits and more without
// a point are a name that ends in a letter ("4407A").
bool isValue(std::string_view word) {
    std::size_t start = 0;
    while (start <= word.size()) {
        auto const end = std::min(word.find('/', start), word.size());
        auto const piece = word.substr(start, end - start);
        auto const quantities = quantity::findQuantities(piece);
        bool const whole = quantities.size() == 1 && quantities.front().begin == 0 && quantities.front().end == piece.size() && quantities.front().unit;
        bool const longNumber = piece.find('.') == std::string_view::npos && std::count_if(piece.begin(), piece.end(), isDigit) >= 4;
        if (!whole || longNumber) return false;
        start = end + 1;
    }
    return true;
}

// How many letters a series may have in front of its digits where it is set in small ones.
constexpr std::size_t kSmallLetters = 3;

// "xk10472": small letters, then digits enough that it is no word.
bool isInSmallLetters(std::string_view word) {
    auto const first = static_cast<std::size_t>(std::find_if(word.begin(), word.end(), isDigit) - word.begin());
    bool const small = std::all_of(word.begin(), word.begin() + static_cast<std::ptrdiff_t>(first), [](char c) { return c >= 'a' && c <= 'z'; });
    auto const rest = word.substr(first);
    return first > 0 && first <= kSmallLetters && small && rest.size() >= 4 && std::all_of(rest.begin(), rest.begin() + 4, isDigit);
}

// Letters and digits mixed, in capitals, of a part number's length: "XK104A",
// "74HX595", "LN4-33".
bool looksLikePartNumber(std::string_view word) {
    if (word.size() < 4 || word.size() > kLongestPartNumber || isValue(word)) return false;
    if (isInSmallLetters(word)) return true;
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

std::string dateIn(model::PageLayout const& page, model::TextLine const& line);

// Words on lines that begin with a code and give a date: which edition of a document it is.
std::vector<bool> wordsBesideDates(model::PageLayout const& page) {
    std::vector<bool> beside(page.words.size(), false);
    for (auto const& line : page.lines) {
        if (line.wordCount < 2 || !looksLikePartNumber(trimmed(page.words[line.firstWord].text)) || dateIn(page, line).empty()) continue;
        std::fill_n(beside.begin() + static_cast<std::ptrdiff_t>(line.firstWord), line.wordCount, true);
    }
    return beside;
}

enum class DatedLines { Count, PassOver };

std::vector<Scored> partNumberWords(std::span<model::PageLayout const> pages, DatedLines dated) {
    std::vector<Scored> found;
    for (std::size_t i = 0; i < std::min<std::size_t>(2, pages.size()); ++i) {
        auto const& page = pages[i];
        auto const besideDate = wordsBesideDates(page);
        for (std::size_t w = 0; w < page.words.size(); ++w) {
            auto const& word = page.words[w];
            auto const text = trimmed(word.text);
            if (!looksLikePartNumber(text) || (dated == DatedLines::PassOver && besideDate[w])) continue;
            double score = 1;
            if (i == 0 && word.size > kTitleSize * page.bodySize) score += 10 * word.size / std::max(1.0F, page.bodySize);
            if (word.owner == model::Owner::Furniture) score += 5;
            if (i == 0 && word.box.y0 < page.height / 5) score += 2;
            add(found, text, score);
        }
    }
    return found;
}

std::vector<std::string> partNumbers(std::span<model::PageLayout const> pages) {
    auto found = partNumberWords(pages, DatedLines::PassOver);
    bool const any = std::any_of(found.begin(), found.end(), [](Scored const& entry) { return entry.score >= kEnoughForPart; });
    if (!any) found = partNumberWords(pages, DatedLines::Count);
    std::stable_sort(found.begin(), found.end(), [](auto const& a, auto const& b) { return a.score > b.score; });
    std::vector<std::string> numbers;
    for (auto const& entry : found) {
        if (numbers.size() == kMostPartNumbers || entry.score < kEnoughForPart) break;
        numbers.push_back(entry.text);
    }
    return numbers;
}

constexpr std::array<std::string_view, 10> kCompanyForms{"Semiconductor", "Semiconductors", "Microelectronics", "Electronics", "Devices", "Ltd",
                                                         "Inc",           "Incorporated",   "Corporation",      "GmbH"};

// A name is written with a capital: "these devices" is none.
bool isCompanyForm(std::string_view word) {
    if (word.empty() || !isUpper(word.front())) return false;
    return std::any_of(kCompanyForms.begin(), kCompanyForms.end(), [word](auto form) { return equalsIgnoringCase(word, form); });
}

// Words that begin sentences ("These Devices are …") and lists, not names.
bool beginsNoName(std::string_view word) {
    constexpr std::array<std::string_view, 10> kWords{"the", "these", "this", "those", "all", "such", "our", "for", "in", "of"};
    return std::any_of(kWords.begin(), kWords.end(), [word](auto known) { return equalsIgnoringCase(word, known); });
}

bool isBullet(std::string_view word) {
    constexpr std::array<std::string_view, 8> kBullets{"•", "●", "▪", "■", "◆", "·", "–", "-"};
    return std::any_of(kBullets.begin(), kBullets.end(), [word](auto bullet) { return word.starts_with(bullet); });
}

bool isYear(std::string_view word) { return word.size() == 4 && (word.starts_with("19") || word.starts_with("20")) && isDigit(word[2]) && isDigit(word[3]); }

// "2004,", "1997–2016".
bool isYears(std::string_view word) {
    bool const letters = std::any_of(word.begin(), word.end(), [](char c) { return isUpper(c) || (c >= 'a' && c <= 'z'); });
    return word.size() >= 4 && isYear(word.substr(0, 4)) && !letters;
}

// "Copyright © 2021" in front of a name is none of it.
bool isOfCopyright(std::string_view word) { return isYears(word) || word.find("©") != std::string_view::npos || equalsIgnoringCase(word, "copyright"); }

bool startsCapital(std::string_view word) { return !word.empty() && (isUpper(word.front()) || isDigit(word.front()) || word == "&"); }

// "Tarnmicroelectronics": a name and its form in one word.
bool holdsCompanyForm(std::string_view word) {
    constexpr std::array<std::string_view, 3> kEnds{"electronics", "semiconductor", "semiconductors"};
    auto const endsWith = [word](auto end) { return word.size() > end.size() && equalsIgnoringCase(word.substr(word.size() - end.size()), end); };
    return !word.empty() && isUpper(word.front()) && !isCompanyForm(word) && std::any_of(kEnds.begin(), kEnds.end(), endsWith);
}

// "in Metal Oxide Semiconductor": a technology; "CRITICAL COMPONENTS IN LIFE SUPPORT DEVICES": the end of
// a sentence in capitals.
bool endsNoName(model::PageLayout const& page, model::TextLine const& line, std::size_t form) {
    constexpr std::uint32_t kFewWords = 5;
    if (form > line.firstWord && equalsIgnoringCase(trimmed(page.words[form - 1].text), "oxide")) return true;
    return line.wordCount > kFewWords && trimmed(page.words[form].text) == "DEVICES";
}

// What is printed behind a name in one line: "Rev. A", "Page 3", "Datasheet", "QZ4411".
bool endsName(std::string_view word) {
    constexpr std::array<std::string_view, 14> kWords{"rev", "revision", "page",         "datasheet", "data",          "sheet", "document",
                                                      "doc", "version",  "confidential", "printed",   "specification", "all",   "preliminary"};
    bool const known = std::any_of(kWords.begin(), kWords.end(), [word](auto other) { return equalsIgnoringCase(word, other); });
    return known || std::count_if(word.begin(), word.end(), isDigit) > 1;
}

// "© JEDEC" stands at drawings of packages.
bool setsStandards(std::string_view name) {
    constexpr std::array<std::string_view, 4> kBodies{"JEDEC", "IEC", "ISO", "IPC"};
    return std::any_of(kBodies.begin(), kBodies.end(), [name](auto body) { return name.starts_with(body) && (name.size() == body.size() || name[body.size()] == ' '); });
}

// "© 2021 Tarnvale Instruments – All rights reserved": whose the document is, whatever the form of the name.
void addHolder(std::vector<Scored>& found, model::PageLayout const& page, model::TextLine const& line) {
    constexpr double kHolder = 8;  // as good as some mentions
    constexpr std::size_t kLongestName = 6;
    std::size_t const end = line.firstWord + line.wordCount;
    std::size_t at = line.firstWord;
    while (at < end && page.words[at].text.find("©") == std::string::npos) ++at;
    auto const isInFront = [](std::string_view word) { return isOfCopyright(word) || word.empty() || equalsIgnoringCase(word, "by") || equalsIgnoringCase(word, "confidential"); };
    while (at < end && isInFront(trimmed(page.words[at].text))) ++at;
    std::string name;
    for (std::size_t words = 0; at < end && words < kLongestName; ++at, ++words) {
        auto const word = trimmed(page.words[at].text);
        if (word.empty() || !isUpper(word.front()) || beginsNoName(word) || endsName(word)) break;
        name += name.empty() ? "" : " ";
        name += word;
    }
    if (!name.empty() && !setsStandards(name)) add(found, name, kHolder);
}

// The capitalised words before and with a company form, on one line.
void addMakers(std::vector<Scored>& found, model::PageLayout const& page, model::TextLine const& line) {
    std::size_t const end = line.firstWord + line.wordCount;
    if (line.wordCount == 0 || isBullet(page.words[line.firstWord].text)) return;
    for (std::size_t i = line.firstWord; i < end; ++i) {
        double const weight = page.words[i].owner == model::Owner::Furniture ? 3 : 1;
        if (auto const word = trimmed(page.words[i].text); holdsCompanyForm(word)) add(found, word, weight);
        if (!isCompanyForm(trimmed(page.words[i].text)) || endsNoName(page, line, i)) continue;
        std::size_t first = i;
        while (first > line.firstWord && i - first < 4 && startsCapital(trimmed(page.words[first - 1].text)) && !isOfCopyright(page.words[first - 1].text)) --first;
        if (first == i || beginsNoName(trimmed(page.words[first].text))) continue;
        std::string name;
        for (std::size_t k = first; k <= i; ++k) {
            if (!name.empty()) name += ' ';
            name += trimmed(page.words[k].text);
        }
        add(found, name, weight);
    }
}

std::string best(std::vector<Scored> const& found) {
    auto const top = std::max_element(found.begin(), found.end(), [](auto const& a, auto const& b) { return a.score < b.score; });
    return top == found.end() ? std::string{} : top->text;
}

// A sheet with the distributor's offer on it or behind it: "Authorized Distributor", in a line of its own.
// "contact your sales office or distributor" is the maker's own word.
bool isOfDistributor(model::PageLayout const& page) {
    constexpr std::uint32_t kFewWords = 4;
    auto const names = [&](model::TextLine const& line) {
        for (std::size_t i = line.firstWord; i < line.firstWord + line.wordCount; ++i) {
            auto const word = trimmed(page.words[i].text);
            if (!word.empty() && isUpper(word.front()) && equalsIgnoringCase(word, "distributor")) return true;
        }
        return false;
    };
    return std::any_of(page.lines.begin(), page.lines.end(), [&](auto const& line) { return line.wordCount <= kFewWords && names(line); });
}

std::string makerOf(std::span<model::PageLayout const> pages) {
    constexpr std::size_t kFirst = 2;  // pages that are looked at
    constexpr std::size_t kLast = 3;   // legal words, and what a distributor put behind them
    std::vector<Scored> makers;
    for (std::size_t i = 0; i < pages.size(); ++i) {
        if ((i >= kFirst && i + kLast < pages.size()) || isOfDistributor(pages[i])) continue;
        for (auto const& line : pages[i].lines) {
            addHolder(makers, pages[i], line);
            addMakers(makers, pages[i], line);
        }
    }
    return best(makers);
}

// "Rev. 1.4", "Revision B", "V1.2", "REV2.0".
std::string revisionIn(model::PageLayout const& page, model::TextLine const& line) {
    // "Changes from Revision A to Revision B" tells of the past.
    auto const isRevision = [&](std::size_t i) { return equalsIgnoringCase(trimmed(page.words[line.firstWord + i].text), "revision"); };
    int named = 0;
    for (std::size_t i = 0; i < line.wordCount; ++i) named += isRevision(i) ? 1 : 0;
    if (named > 1 || (named == 1 && line.wordCount > 0 && equalsIgnoringCase(trimmed(page.words[line.firstWord].text), "changes"))) return {};
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

// "KW810N – May 2008 – Revised July 2010": the letter behind the number of a document that was revised.
std::string revisedLetterIn(model::PageLayout const& page, model::TextLine const& line, std::vector<std::string> const& parts) {
    constexpr std::ptrdiff_t kFewestDigits = 3;
    bool revised = false;
    std::string letter;
    for (std::size_t i = 0; i < line.wordCount; ++i) {
        auto const word = trimmed(page.words[line.firstWord + i].text);
        revised = revised || equalsIgnoringCase(word, "revised");
        auto const digits = std::find_if(word.begin(), word.end(), isDigit);
        auto const end = std::find_if_not(digits, word.end(), isDigit);
        bool const coded = digits - word.begin() >= 2 && std::all_of(word.begin(), digits, isUpper) && end - digits >= kFewestDigits;
        bool const part = std::find(parts.begin(), parts.end(), word) != parts.end();
        if (coded && !part && end + 1 == word.end() && isUpper(*end)) letter = *end;
    }
    return revised ? letter : std::string();
}

constexpr std::array<std::string_view, 12> kMonths{"jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"};

bool isMonth(std::string_view word) {
    if (word.size() < 3) return false;
    return std::any_of(kMonths.begin(), kMonths.end(), [word](auto month) { return equalsIgnoringCase(word.substr(0, 3), month); });
}

// "March 2021", "12 May 2021", "2021-03-05", "2021/03", "05/2021" at the word; empty: none.
std::string dateAt(model::PageLayout const& page, model::TextLine const& line, std::size_t i) {
    auto const word = trimmed(page.words[line.firstWord + i].text);
    bool const dashed = word.size() >= 7 && word.size() <= 10 && std::all_of(word.begin(), word.end(), [](char c) { return isDigit(c) || c == '-' || c == '/' || c == '.'; });
    if (dashed && (isYear(word.substr(0, 4)) || isYear(word.substr(word.size() - 4))) && std::count_if(word.begin(), word.end(), [](char c) { return !isDigit(c); }) >= 1) {
        return std::string(word);
    }
    if (!isMonth(word) || i + 1 >= line.wordCount) return {};
    std::string date(word);
    for (std::size_t k = i + 1; k < std::min<std::size_t>(i + 3, line.wordCount); ++k) {
        auto const next = trimmed(page.words[line.firstWord + k].text);
        date += ' ';
        date += next;
        if (!isYear(next)) continue;
        if (i > 0) {
            auto const before = trimmed(page.words[line.firstWord + i - 1].text);
            if (!before.empty() && before.size() <= 2 && isDigit(before.front())) date = std::string(before) + " " + date;
        }
        return date;
    }
    return {};
}

// The last date of a line: "MAY 2008 - REVISED JULY 2010".
std::string dateIn(model::PageLayout const& page, model::TextLine const& line) {
    for (std::size_t i = line.wordCount; i > 0; --i) {
        if (auto date = dateAt(page, line, i - 1); !date.empty()) return date;
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

// The first line that says it: a running head before other lines.
template <class Find>
std::string firstStated(std::span<model::PageLayout const> pages, Find&& find) {
    for (bool const furniture : {true, false}) {
        for (std::size_t i = 0; i < pages.size(); ++i) {
            if (i > 1 && i + 1 != pages.size()) continue;
            for (auto const& line : pages[i].lines) {
                bool const isFurniture = line.wordCount > 0 && pages[i].words[line.firstWord].owner == model::Owner::Furniture;
                if (isFurniture != furniture) continue;
                if (std::string stated = find(pages[i], line); !stated.empty()) return stated;
            }
        }
    }
    return {};
}

}  // namespace

void identify(model::DocumentInfo& info, std::span<model::PageLayout const> pages) {
    info.languages = languages(pages);
    info.partNumbers = partNumbers(pages);
    info.maker = makerOf(pages);
    info.revision = firstStated(pages, revisionIn);
    if (info.revision.empty()) {
        info.revision = firstStated(pages, [&info](auto const& page, auto const& line) { return revisedLetterIn(page, line, info.partNumbers); });
    }
    info.date = firstStated(pages, dateIn);
}

}  // namespace standin::reading

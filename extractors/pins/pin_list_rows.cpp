// Lines that touch on one baseline are one; a line is parted at wide gaps before numbers; each part is read as numbers with
// a sign behind them ("1." "2:" "3-" "③"), each followed by its name, or as bare
// numbers before one name. Tested by tests/extractors/pins/pin_lists_test.cpp.
#include "extractors/pins/pin_list_rows.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <string_view>

#include "extractors/pins/pin_names.h"
#include "text/utf8.h"

namespace standin::pins {

namespace {

constexpr std::uint32_t kMostWords = 48;   // of a line that may list pins
constexpr std::size_t kMostLines = 2000;   // of a page whose lines are joined
constexpr model::Points kOneLine = 2.2F;   // font heights, between pieces of one line
constexpr model::Points kWideGap = 1.5F;   // font heights, between lists side by side
constexpr model::Points kSameLine = 0.5F;  // font heights
constexpr std::array<std::string_view, 8> kClosing{".", ")", ":", "\uFF0E", "\u3001", "\uFF1A", "\uFF09", "\u3002"};
constexpr std::array<std::string_view, 4> kJoining{"-", "\u2013", "=", "\u2212"};

// Words of one printed line, as indices into PageLayout::words, left to right.
using Words = std::vector<std::uint32_t>;

// "1." "12)" "3:" "1.GATE" "2-Drain", or "1" before "-": the number, and where its name begins.
struct Opening {
    int number = 0;
    std::size_t nameAt = 0;  // byte of the last of its words
    std::uint32_t words = 1;
};

template <std::size_t N>
std::size_t signAt(std::string_view text, std::array<std::string_view, N> const& signs) {
    for (auto const sign : signs) {
        if (text.starts_with(sign)) return sign.size();
    }
    return 0;
}

std::optional<Opening> circledOpening(std::string_view word) {
    if (word.size() < 4 || static_cast<unsigned char>(word[0]) != 0xE2) return std::nullopt;
    std::size_t next = 0;
    (void)text::decodeNext(word, next);
    auto const number = plainNumber(word.substr(0, next));
    return number ? std::optional(Opening{*number, next}) : std::nullopt;
}

std::optional<Opening> openingOf(std::string_view word) {
    std::size_t at = 0;
    while (at < word.size() && text::isAsciiDigit(word[at])) ++at;
    if (at == 0) return circledOpening(word);
    auto const number = at <= 2 && at < word.size() ? plainNumber(word.substr(0, at)) : std::nullopt;
    if (!number) return std::nullopt;
    auto const rest = word.substr(at);
    std::size_t const closing = signAt(rest, kClosing);
    std::size_t const joining = closing == 0 ? signAt(rest, kJoining) : 0;
    if (closing + joining == 0) return std::nullopt;
    std::size_t const nameAt = at + closing + joining;
    if (nameAt < word.size() && text::isAsciiDigit(word[nameAt])) return std::nullopt;  // "1.5"
    if (joining > 0 && nameAt == word.size()) return std::nullopt;                      // "1-"
    return Opening{*number, nameAt};
}

class LineReader {
public:
    LineReader(model::PageLayout const& page, Words const& words) : m_page(page), m_words(words) {}

    [[nodiscard]] std::vector<ListRow> rows() const {
        std::vector<ListRow> rows;
        std::size_t first = 0;
        for (std::size_t end = 1; end <= m_words.size(); ++end) {
            if (end < m_words.size() && !parts(end)) continue;
            auto row = signedRow(first, end);
            if (!row) row = bareRow(first, end);
            if (row) rows.push_back(std::move(*row));
            first = end;
        }
        return rows;
    }

private:
    [[nodiscard]] model::Word const& word(std::size_t at) const { return m_page.words[m_words[at]]; }

    // A wide gap and a number behind it.
    [[nodiscard]] bool parts(std::size_t at) const {
        auto const& before = word(at - 1);
        bool const wide = word(at).box.x0 - before.box.x1 > kWideGap * before.size;
        return wide && !plainNumber(before.text) && (plainNumber(word(at).text) || openingAt(at, m_words.size()));
    }

    // A number with its sign: in one word, or in two ("1" "-") before a third.
    [[nodiscard]] std::optional<Opening> openingAt(std::size_t at, std::size_t end) const {
        if (auto const opening = openingOf(word(at).text)) return opening;
        auto const number = word(at).text.size() <= 2 ? plainNumber(word(at).text) : std::nullopt;
        if (!number || at + 2 >= end) return std::nullopt;
        auto const& next = word(at + 1).text;
        bool const isSign = signAt(next, kClosing) == next.size() || signAt(next, kJoining) == next.size();
        return isSign ? std::optional(Opening{*number, next.size(), 2}) : std::nullopt;
    }

    [[nodiscard]] std::optional<ListRow> signedRow(std::size_t first, std::size_t end) const {
        ListRow row;
        for (std::size_t at = first; at < end; ++at) {
            auto const opening = openingAt(at, end);
            auto const& printed = word(at);
            if (opening && (row.entries.empty() || opening->number == row.entries.back().number + 1)) {
                at += opening->words - 1;
                row.entries.push_back(
                    {opening->number, std::string(text::trimmed(std::string_view(word(at).text).substr(opening->nameAt))), model::united(printed.box, word(at).box)});
            } else if (isPinWord(printed.text) && at + 1 < end && openingAt(at + 1, end)) {
                row.saysPins = true;
            } else if (!row.entries.empty()) {
                append(row.entries.back(), printed);
            } else {
                return std::nullopt;
            }
        }
        if (row.entries.empty()) return std::nullopt;
        for (auto& entry : row.entries) {
            trimEnd(entry.name);
            if (!looksLikePinName(entry.name)) return std::nullopt;
            row.box = model::united(row.box, entry.box);
        }
        return row;
    }

    // "1 3 Anode": bare numbers, then one name.
    [[nodiscard]] std::optional<ListRow> bareRow(std::size_t first, std::size_t end) const {
        ListRow row;
        row.bare = true;
        ListEntry named;
        for (std::size_t at = first; at < end; ++at) {
            auto const number = plainNumber(word(at).text);
            row.box = model::united(row.box, word(at).box);
            if (number && named.name.empty()) row.entries.push_back({*number, {}, {}});
            else if (number) return std::nullopt;
            else append(named, word(at));
        }
        if (row.entries.empty() || !looksLikePinName(named.name)) return std::nullopt;
        for (auto& entry : row.entries) {
            entry.name = named.name;
            entry.box = row.box;
        }
        return row;
    }

    static void append(ListEntry& entry, model::Word const& word) {
        if (!entry.name.empty() && word.spaceBefore) entry.name += ' ';
        entry.name += word.text;
        entry.box = model::united(entry.box, word.box);
    }

    static void trimEnd(std::string& name) {
        for (std::string_view const sign : {";", ",", "\uFF1B", "\uFF0C", "\u3001"}) {
            if (name.ends_with(sign)) name.resize(name.size() - sign.size());
        }
    }

    model::PageLayout const& m_page;
    Words const& m_words;
};

bool mayList(model::PageLayout const& page, model::TextLine const& line) {
    if (line.direction != model::Direction::Right || line.wordCount == 0 || line.wordCount > kMostWords) return false;
    auto const* first = &page.words[line.firstWord];
    return std::none_of(first, first + line.wordCount, [](auto const& word) { return word.owner == model::Owner::Furniture || word.owner == model::Owner::Parameter; });
}

// Lines of layout, those that touch on a baseline joined.
std::vector<Words> printedLines(model::PageLayout const& page) {
    std::vector<model::TextLine const*> lines;
    for (auto const& line : page.lines) {
        if (mayList(page, line)) lines.push_back(&line);
    }
    std::stable_sort(lines.begin(), lines.end(), [](auto const* a, auto const* b) { return a->box.x0 < b->box.x0; });
    std::vector<Words> printed;
    std::vector<model::TextLine> ends;  // box and size of the last line of each
    bool const few = lines.size() <= kMostLines;
    for (auto const* line : lines) {
        auto const touches = [line](auto const& end) {
            auto const height = std::max(std::min(end.size, line->size), 1.0F);
            auto const gap = line->box.x0 - end.box.x1;
            return gap > -kSameLine * height && gap < kOneLine * height && std::abs(line->box.y1 - end.box.y1) < kSameLine * height;
        };
        auto const found = few ? std::find_if(ends.begin(), ends.end(), touches) : ends.end();
        auto const at = static_cast<std::size_t>(found - ends.begin());
        if (found == ends.end()) {
            ends.emplace_back();
            printed.emplace_back();
        }
        ends[at] = *line;
        for (std::uint32_t w = line->firstWord; w < line->firstWord + line->wordCount; ++w) printed[at].push_back(w);
    }
    return printed;
}

}  // namespace

bool isPinWord(std::string_view word) {
    for (std::string_view const sign : {":", ".", "\uFF1A"}) {
        if (word.ends_with(sign)) word.remove_suffix(sign.size());
    }
    auto const lower = text::asciiLower(word);
    constexpr std::array<std::string_view, 13> kWords{"pin", "pins", "pinning", "terminal", "terminals", "lead", "leads", "引脚", "管脚", "Вывод", "вывод", "Выводы", "выводы"};
    return std::find(kWords.begin(), kWords.end(), lower) != kWords.end();
}

std::vector<ListRow> listRowsOf(model::PageLayout const& page) {
    std::vector<ListRow> rows;
    for (auto const& words : printedLines(page)) {
        for (auto& row : LineReader(page, words).rows()) rows.push_back(std::move(row));
    }
    return rows;
}

}  // namespace standin::pins

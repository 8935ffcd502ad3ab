// The rows of revision tables and the sentences of revision sections are one list of
// lines in printed order. A line that names a revision begins an entry; what follows
// belongs to it. In a table the column whose cells are revisions is found by what
// stands in it, the statements are in the longest one.
// Tested by tests/src/compare/revision_history_test.cpp.
#include "compare/revision_history.h"

#include <algorithm>
#include <array>
#include <map>
#include <set>
#include <utility>

#include "compare/claim_words.h"
#include "compare/revision_order.h"
#include "text/boundaries.h"
#include "text/fold.h"
#include "text/utf8.h"

namespace standin::compare {

namespace {

using text::isAsciiDigit;
using text::isAsciiLetter;
using text::isAsciiUpper;

constexpr std::size_t kLongestLabel = 8;
constexpr std::size_t kLongestHead = 160;     // bytes of a line that names a revision
constexpr std::size_t kLongestIdentity = 40;  // of a cell that does

bool isLabelByte(char c) { return isAsciiLetter(c) || isAsciiDigit(c) || c == '.'; }

// "1.4", "12", "C", "AB", "A1", "*"; no year, no word.
bool isLabel(std::string_view label) {
    if (label == "*") return true;
    if (label.empty() || label.size() > kLongestLabel || !(isAsciiDigit(label.front()) || isAsciiUpper(label.front()))) return false;
    auto const letters = std::count_if(label.begin(), label.end(), isAsciiLetter);
    auto const digits = std::count_if(label.begin(), label.end(), isAsciiDigit);
    bool const dotted = label.find('.') != std::string_view::npos;
    if (letters == 0) return dotted || digits <= 3;
    bool const capitals = std::none_of(label.begin(), label.end(), text::isAsciiLower);
    return letters <= 2 && digits <= 3 && (capitals || isAsciiDigit(label.front()));
}

struct Label {
    std::string text;
    std::size_t begin = 0;  // of the word in front of it
    std::size_t end = 0;
};

// "Rev. C", "V1.2", "版本 1.2": every revision that a text names by a word of `words`.
std::vector<Label> labelsIn(std::string const& folded, std::vector<std::string> const& words) {
    std::string const lower = text::lowerCase(folded);
    std::vector<Label> found;
    if (lower.size() != folded.size()) return found;
    for (std::size_t at = 0; at < lower.size(); ++at) {
        bool const inside = at > 0 && isAsciiLetter(lower[at - 1]) && isAsciiLetter(lower[at]);
        if (inside) continue;
        for (auto const& word : words) {
            if (lower.compare(at, word.size(), word) != 0) continue;
            std::size_t start = at + word.size();
            std::size_t const direct = start;
            while (start < lower.size() && (lower[start] == ' ' || lower[start] == '.' || lower[start] == ':' || lower[start] == '#')) ++start;
            if (start >= lower.size() || (start == direct && !isAsciiDigit(lower[start]))) continue;
            std::size_t end = start;
            while (end < folded.size() && isLabelByte(folded[end])) ++end;
            if (end == start && folded[start] == '*') ++end;
            std::size_t const after = end;
            while (end > start && folded[end - 1] == '.') --end;
            std::string_view const label = std::string_view(folded).substr(start, end - start);
            if (!isLabel(label)) continue;
            found.push_back({std::string(label), at, end});
            at = after - 1;
            break;
        }
    }
    return found;
}

// What a printed thing is besides bullets, dot leaders and the page they lead to.
struct Cleaned {
    std::string text;
    int page = 0;
    bool bullet = false;
};

constexpr std::array<std::string_view, 8> kBullets{"•", "●", "▪", "■", "◆", "∙", "·", "–"};
constexpr std::size_t kPlainBullets = 6;  // those that are no dash or point inside a sentence

std::size_t bulletAt(std::string_view text, std::size_t at, std::size_t kinds) {
    for (std::size_t i = 0; i < kinds; ++i) {
        if (text.substr(at, kBullets[i].size()) == kBullets[i]) return kBullets[i].size();
    }
    return 0;
}

int pageNumber(std::string_view digits) {
    int page = 0;
    for (char const c : digits) {
        if (!isAsciiDigit(c) || page > 9999) return 0;
        page = page * 10 + (c - '0');
    }
    return page;
}

Cleaned cleaned(std::string_view printed) {
    Cleaned result;
    std::string_view text = text::trimmed(printed);
    while (std::size_t const length = text.empty() ? 0 : bulletAt(text, 0, kBullets.size())) {
        result.bullet = true;
        text = text::trimmed(text.substr(length));
    }
    // Leaders: a run of points, with gaps where the layout parted them.
    auto const leader = text.find("....");
    if (leader != std::string_view::npos) {
        result.page = pageNumber(text::trimmed(text.substr(std::min(text.size(), text.find_last_of(". ") + 1))));
        text = text::trimmed(text.substr(0, leader));
    } else if (result.page = pageNumber(text); result.page != 0) {
        text = {};
    }
    result.text = std::string(text);
    return result;
}

// "7,10,12" of a column of pages; 0: the cell is something else.
int firstPage(std::string_view cell) {
    cell = text::trimmed(cell);
    if (dateNumber(cell) != 0) return 0;
    if (cell.find_first_not_of("0123456789,;-& ") != std::string_view::npos) return 0;
    return pageNumber(cell.substr(0, cell.find_first_of(",;-& ")));
}

bool saysSomething(std::string_view text) {
    auto const tokens = claimTokens(text);
    return std::any_of(tokens.begin(), tokens.end(), [](ClaimToken const& token) { return token.kind == ClaimToken::Kind::Word && token.key.size() > 1; });
}

// A cell or paragraph as its statements: at bullets, else at sentences and semicolons.
std::vector<std::string> parted(std::string const& text) {
    std::vector<std::string_view> pieces;
    std::size_t start = 0;
    for (std::size_t i = 0; i < text.size(); ++i) {
        bool const begins = bulletAt(text, i, kPlainBullets) > 0 && (i == 0 || text[i - 1] == ' ');
        if (!begins) continue;
        pieces.push_back(std::string_view(text).substr(start, i - start));
        start = i;
    }
    pieces.push_back(std::string_view(text).substr(start));
    std::vector<std::string> parts;
    auto const add = [&parts](std::string_view part) {
        std::string piece = cleaned(part).text;
        if (saysSomething(piece)) parts.push_back(std::move(piece));
    };
    if (pieces.size() > 1) {
        for (auto const piece : pieces) add(piece);
        return parts;
    }
    for (auto const sentence : text::splitSentences(text, {})) {
        std::size_t from = 0;
        for (std::size_t i = 0; i <= sentence.size(); ++i) {
            bool const wide = sentence.substr(i, 3) == "；";
            if (i < sentence.size() && sentence[i] != ';' && !wide) continue;
            add(sentence.substr(from, i - from));
            from = i + (wide ? 3 : 1);
        }
    }
    return parts;
}

// A printed line of the history: a sentence, or the cells of a row.
struct Line {
    model::Place place;
    std::string text;                                // of a row: cells joined
    std::vector<std::pair<int, std::string>> cells;  // column and text; empty: a sentence
    model::Table const* table = nullptr;
    bool head = false;  // of a row: in the head of its table
};

std::vector<Line> linesOf(model::Datasheet const& sheet) {
    std::set<std::string_view> sections;
    for (auto const& section : sheet.sections) {
        if (section.kind == model::SectionKind::Revision) sections.insert(section.id);
    }
    std::vector<Line> lines;
    for (auto const& table : sheet.tables) {
        if (table.kind != model::TableKind::Revision && sections.count(table.section) == 0) continue;
        std::map<int, Line> rows;
        for (auto const& cell : table.cells) {
            Line& row = rows[cell.row];
            row.head = row.head || cell.header;
            row.table = &table;
            row.place = {table.page, model::united(row.place.box, cell.box)};
            row.text += (row.text.empty() ? "" : " ") + cell.text;
            row.cells.emplace_back(cell.column, cell.text);
        }
        for (auto& [index, row] : rows) lines.push_back(std::move(row));
    }
    for (auto const& sentence : sheet.text) {
        if (sections.count(sentence.section) == 0 || sentence.places.empty()) continue;
        lines.push_back({sentence.places.front(), sentence.text, {}, nullptr, false});
    }
    std::stable_sort(lines.begin(), lines.end(), [](Line const& a, Line const& b) { return std::pair(a.place.page, a.place.box.y0) < std::pair(b.place.page, b.place.box.y0); });
    return lines;
}

// Which columns of a table hold the revision and the statements; -1: none.
struct Columns {
    int revision = -1;
    int statements = -1;
};

struct Phrases {
    explicit Phrases(vocabulary::HistoryWords const& words) : from(phraseKeys(words.from)), to(phraseKeys(words.to)), first(phraseKeys(words.first)) {
        for (auto const& word : words.revision) revision.push_back(text::lowerCase(word));
        std::stable_sort(revision.begin(), revision.end(), [](auto const& a, auto const& b) { return a.size() > b.size(); });
    }

    std::vector<std::string> revision;  // lower case, the longest first
    std::vector<TokenKeys> from, to, first;
};

class Reading {
public:
    explicit Reading(Phrases const& phrases) : m_phrases(phrases) {}

    std::vector<HistoryEntry> read(model::Datasheet const& sheet) {
        auto const lines = linesOf(sheet);
        std::map<model::Table const*, Columns> columns;
        for (auto const& line : lines) {
            if (line.table != nullptr) columns.try_emplace(line.table, columnsOf(lines, *line.table));
        }
        for (auto const& line : lines) {
            Columns const at = line.table == nullptr ? Columns{} : columns[line.table];
            // The first row of a list that looks like a table is an entry like the others.
            if (line.head && hasTitles(*line.table)) continue;
            if (at.revision >= 0) takeRow(line, at);
            else takeText(line);
        }
        return std::move(m_entries);
    }

private:
    // The revision that a cell is; empty: it is none.
    [[nodiscard]] std::string labelOf(std::string_view cell) const {
        std::string const folded = text::foldForComparison(text::trimmed(cell));
        if (folded.size() > kLongestIdentity) return {};
        if (isLabel(folded)) return folded;
        auto const labels = labelsIn(folded, m_phrases.revision);
        return labels.empty() ? std::string() : labels.back().text;
    }

    // The column under a title that says so, else the one that holds revisions and is
    // not the last: there stand pages.
    [[nodiscard]] Columns columnsOf(std::vector<Line> const& lines, model::Table const& table) const {
        struct Content {
            int labels = 0;
            int cells = 0;
            std::size_t letters = 0;
        };
        std::map<int, Content> content;
        for (auto const& line : lines) {
            if (line.table != &table || line.head) continue;
            for (auto const& [column, text] : line.cells) {
                Content& seen = content[column];
                ++seen.cells;
                seen.letters += text.size();
                if (!labelOf(text).empty()) ++seen.labels;
            }
        }
        Columns found;
        for (auto const& [column, seen] : content) {
            bool const possible = titled(table, column) || column != content.rbegin()->first;
            bool const mostly = possible && seen.labels * 2 >= seen.cells && seen.labels > 0;
            bool const better = found.revision < 0 || (titled(table, column) && !titled(table, found.revision));
            if (mostly && better) found.revision = column;
        }
        for (auto const& [column, seen] : content) {
            if (column == found.revision) continue;
            if (found.statements < 0 || seen.letters > content[found.statements].letters) found.statements = column;
        }
        return found.statements < 0 || found.revision < 0 ? Columns{} : found;
    }

    // Is the column's title a word for revision?
    [[nodiscard]] bool titled(model::Table const& table, int column) const {
        return std::any_of(table.cells.begin(), table.cells.end(), [&](model::Cell const& cell) {
            if (!cell.header || cell.column != column || cell.text.size() > kLongestIdentity || !labelOf(cell.text).empty()) return false;
            std::string const lower = text::lowerCase(text::foldForComparison(cell.text));
            return std::any_of(m_phrases.revision.begin(), m_phrases.revision.end(), [&](auto const& word) { return word.size() > 1 && lower.find(word) != std::string::npos; });
        });
    }

    [[nodiscard]] bool hasTitles(model::Table const& table) const {
        for (int column = 0; column < table.columns; ++column) {
            if (titled(table, column)) return true;
        }
        return false;
    }

    void takeRow(Line const& line, Columns const& at) {
        std::string label;
        for (auto const& [column, text] : line.cells) {
            if (column == at.revision) label = labelOf(text);
        }
        if (!label.empty()) begin(std::move(label), {}, line);
        if (m_entries.empty()) return;
        m_inRows = true;
        int page = 0;
        for (auto const& [column, text] : line.cells) {
            if (column != at.revision && column != at.statements && page == 0) page = firstPage(text);
        }
        for (auto const& [column, text] : line.cells) {
            if (column == at.revision) continue;
            if (column == at.statements || (label.empty() && line.cells.size() <= 2)) addStatements(text, page, line.place);
        }
    }

    // "Changes from Revision B (May 2019) to Revision C (June 2020)", "V1.2 2019-05: …".
    bool takeHead(Line const& line, Cleaned const& clean) {
        if (clean.bullet || clean.text.empty()) return false;
        std::string const folded = text::foldForComparison(clean.text);
        auto labels = labelsIn(folded, m_phrases.revision);
        if (labels.empty() || labels.back().begin > kLongestHead) return false;
        bool const leads = labels.front().begin == 0;
        auto const before = claimTokens(std::string_view(folded).substr(0, labels.back().begin));
        bool const fromTo = says(before, m_phrases.from) && says(before, m_phrases.to);
        if (!leads && !fromTo) return false;
        Label const& named = fromTo ? labels.back() : labels.front();
        begin(named.text, fromTo && labels.size() > 1 ? labels.front().text : std::string(), line);
        if (fromTo) m_entries.back().date = dateNumber(std::string_view(folded).substr(named.end));
        if (!fromTo) addStatements(std::string(text::trimmed(std::string_view(folded).substr(named.end))), 0, line.place);
        return true;
    }

    void takeText(Line const& line) {
        Cleaned clean = cleaned(line.cells.empty() ? line.text : line.cells.front().second);
        for (std::size_t i = 1; i < line.cells.size(); ++i) {
            Cleaned const more = cleaned(line.cells[i].second);
            if (!more.text.empty()) clean.text += (clean.text.empty() ? "" : " ") + more.text;
            if (clean.page == 0) clean.page = more.page;
        }
        if (takeHead(line, clean)) {
            m_inRows = false;
            return;
        }
        // Below a table of revisions: the maker's address, "a later issue takes its place".
        if (m_entries.empty() || (m_inRows && !clean.bullet)) return;
        auto& statements = m_entries.back().statements;
        bool const continues = m_bullets && !clean.bullet && !statements.empty();
        if (continues) {
            if (!clean.text.empty() && statements.back().page == 0) statements.back().text += " " + clean.text;
            if (statements.back().page == 0) statements.back().page = clean.page;
            return;
        }
        if (clean.bullet) {
            m_bullets = true;
            if (saysSomething(clean.text)) statements.push_back({std::move(clean.text), clean.page, line.place});
            return;
        }
        addStatements(clean.text, clean.page, line.place);
    }

    void begin(std::string revision, std::string earlier, Line const& line) {
        m_bullets = false;
        m_entries.push_back({std::move(revision), std::move(earlier), dateNumber(line.text), {}, line.place});
    }

    void addStatements(std::string const& text, int page, model::Place const& place) {
        for (auto& part : parted(text)) {
            auto const tokens = claimTokens(part);
            if (tokens.empty() || phraseAt(tokens, 0, m_phrases.first) == tokens.size()) continue;
            if (dateNumber(part) != 0 && part.size() < 20) continue;
            m_entries.back().statements.push_back({std::move(part), page, place});
        }
    }

    static bool says(std::vector<ClaimToken> const& tokens, std::vector<TokenKeys> const& phrases) {
        for (std::size_t i = 0; i < tokens.size(); ++i) {
            if (phraseAt(tokens, i, phrases) > 0) return true;
        }
        return false;
    }

    Phrases const& m_phrases;
    std::vector<HistoryEntry> m_entries;
    bool m_bullets = false;  // of the entry at hand
    bool m_inRows = false;  // the last entry stands in a row of a table
};

}  // namespace

std::vector<HistoryEntry> readHistory(model::Datasheet const& sheet, vocabulary::HistoryWords const& words) { return Reading(Phrases(words)).read(sheet); }

Histories readHistories(model::Datasheet const& reference, model::Datasheet const& candidate, vocabulary::HistoryWords const& words) {
    Phrases const phrases(words);
    return {.reference = Reading(phrases).read(reference), .candidate = Reading(phrases).read(candidate)};
}

}  // namespace standin::compare

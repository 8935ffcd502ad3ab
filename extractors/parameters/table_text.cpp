#include "extractors/parameters/table_text.h"

// References are found by scanning for bracket pairs whose content opens with a
// known word, for stars and circled digits, and for "see ..." at the end.
// Tested by tests/extractors/parameters/table_text_test.cpp.

#include <algorithm>
#include <array>
#include <cstdint>

#include "extractors/parameters/shapes.h"
#include "extractors/parameters/text_forms.h"
#include "text/utf8.h"

namespace standin::parameters {

namespace {

constexpr int kLargestGrid = 200000;  // rows × columns of a table that is still looked up

constexpr std::array kReferenceWords = {"note",  "notes",  "fig",   "figure", "figures", "figs", "see",  "注", "注释",         "備考",     "图",  "図",
                                        "refer", "remark", "siehe", "bild",   "abb",     "рис",  "прим", "表", "test circuit", "footnote", "注意"};

bool opensReference(std::string const& content) {
    std::string const low = folded(content);
    for (std::string_view word : kReferenceWords) {
        if (!low.starts_with(word)) continue;
        std::string_view const rest = std::string_view(low).substr(word.size());
        if (word == "see" || word == "refer" || word == "siehe") {
            // "(refer to the test circuits, TJ = 0 to 125 °C)" states more
            if (rest.empty() || (rest.front() == ' ' && !hasRelation(content))) return true;
            continue;
        }
        if (!rest.empty() && rest.front() >= 'a' && rest.front() <= 'z') continue;  // "noted"
        if (word == "test circuit" && opensReference(trimmed(rest))) return true;   // "test circuit figure 15"
        // "note 4", "note4", "figs. 3, 4", "notes 4 and 6", "图 2"
        bool const fits = std::ranges::all_of(rest, [](char c) { return (c >= '0' && c <= '9') || contains(" .,&-and:bct", std::string_view(&c, 1)); });
        if (fits) return true;
    }
    return false;
}

// "Note 4" and "notes 2, 3" -> keys "note 4" …
void addMarks(std::vector<std::string>& marks, std::string_view content) {
    std::string const low = folded(content);
    if (low.starts_with("fig") || low.starts_with("图") || low.starts_with("図") || low.starts_with("see fig") || low.starts_with("test")) return;
    std::string digits;
    bool any = false;
    auto flush = [&] {
        if (!digits.empty()) {
            marks.push_back(digits);
            any = true;
        }
        digits.clear();
    };
    for (char c : low) {
        if (c >= '0' && c <= '9') {
            digits.push_back(c);
        } else {
            flush();
        }
    }
    flush();
    if (!any) marks.push_back(low);
}

// Finds the bracket that closes the one at `open`; npos: none.
std::size_t closing(std::string const& text, std::size_t open) {
    int depth = 0;
    for (std::size_t i = open; i < text.size(); ++i) {
        if (text[i] == '(' || text[i] == '[') ++depth;
        if (text[i] == ')' || text[i] == ']') {
            if (--depth == 0) return i;
        }
    }
    return std::string::npos;
}

std::string replacedAll(std::string text, std::string_view from, std::string_view to) {
    for (std::size_t at = text.find(from); at != std::string::npos; at = text.find(from, at + to.size())) text.replace(at, from.size(), to);
    return text;
}

void trimEnds(std::string& text) {
    text = tidied(text);
    while (!text.empty() && (text.back() == ',' || text.back() == ';' || text.back() == ' ')) text.pop_back();
    while (!text.empty() && (text.front() == ',' || text.front() == ' ')) text.erase(text.begin());
    for (std::string_view comma : {"，", "、"}) {
        while (text.ends_with(comma)) text.resize(text.size() - comma.size());
        while (text.starts_with(comma)) text.erase(0, comma.size());
    }
    text = replacedAll(text, " ,", ",");
    text = replacedAll(text, "( ", "(");
    text = trimmed(text);
}

// "10" or "10-", alone or as a factor: what is raised behind it is an exponent. "±10" and a raised "-5" too.
bool endsAsPowerOfTen(std::string const& raw, std::string_view raised) {
    std::string text = tidied(raw);
    if (text.ends_with("-")) text.pop_back();
    if (!text.ends_with("10")) return false;
    bool const negative = tidied(raised).starts_with("-") && hasDigit(raised);
    if (negative && (text == "10" || text == "±10" || text == "-10" || text == "+10")) return true;
    if (text.size() == 2) return raw.size() > 2;  // "10-"; a lone "10" may carry a mark
    std::string const before = trimmed(std::string_view(text).substr(0, text.size() - 2));
    return before.ends_with("x") || before.ends_with("×") || before.ends_with("*");
}

// Leader dots at either end: ". . . VDS", "for 10s."; a lone full stop too.
void trimLeaders(std::string& text) {
    while (!text.empty() && (text.back() == '.' || text.back() == ' ')) {
        // "Typ." and "Temp." keep theirs
        bool const word = text.size() >= 4 && text.back() == '.' && text[text.size() - 2] >= 'a' && text[text.size() - 2] <= 'z' && text.size() <= 12;
        if (word) break;
        text.pop_back();
    }
    std::size_t lead = 0;
    while (lead < text.size() && (text[lead] == '.' || text[lead] == ' ') && !(lead + 1 < text.size() && text[lead + 1] >= '0' && text[lead + 1] <= '9')) ++lead;
    text.erase(0, lead);
}

}  // namespace

bool isFootnoteMark(std::string_view raised) {
    std::string const text = folded(raised);
    if (text.empty() || text.size() > 12) return false;
    if (text == "+" || text == "-" || text == "°" || text == "o" || text == "th" || text == "™" || text == "®") return false;
    if (text.starts_with("note") || text.starts_with("注")) return true;
    // "I" with a raised "DM": a symbol set badly
    bool const capitals = raised.size() >= 2 && std::ranges::all_of(raised, [](char c) { return c >= 'A' && c <= 'Z'; });
    if (capitals) return false;
    bool digit = false;
    int letters = 0;
    for (char32_t c : decoded(text)) {
        if (isDigit(c)) {
            digit = true;
        } else if (isLatinLetter(c)) {
            ++letters;
        } else if (c != U'(' && c != U')' && c != U',' && c != U' ' && c != U'*' && c != U'\u2020' && c != U'\u2021' && c != U'[' && c != U']' && c != U'\u203B' &&
                   c != U'\u00A7' && c != U'#' && c != U'.' && c != U'/') {
            return false;
        }
    }
    return letters <= 3 && (letters == 0 || !digit);
}

namespace {

constexpr std::uint32_t kSee = 0x736565;  // "see"
constexpr std::uint32_t kNot = 0x6E6F74;  // of "note"

// Full-width brackets, only where they hold a reference.
void takeWideBrackets(std::string& text, std::vector<std::string>& marks) {
    for (std::size_t at = text.find("（"); at != std::string::npos; at = text.find("（", at + 1)) {
        std::size_t const end = text.find("）", at);
        if (end == std::string::npos) break;
        std::size_t const width = std::string_view("（").size();
        std::string const content = text.substr(at + width, end - at - width);
        if (opensReference(trimmed(content))) {
            addMarks(marks, content);
            text.replace(at, end + width - at, " ");
        }
    }
}

// Where a reference begins behind a comma of a bracket's content ("Peak current, Notes 2 and 3"); npos: nowhere.
std::size_t referenceBehindComma(std::string const& content) {
    for (std::size_t comma = content.find(','); comma != std::string::npos; comma = content.find(',', comma + 1)) {
        std::string const tail = trimmed(std::string_view(content).substr(comma + 1));
        bool const listed = !tail.empty() && tail.front() >= '0' && tail.front() <= '9';  // "Figures 8, 9"
        if (!listed && opensReference(tail)) return comma;
    }
    return std::string::npos;
}

void takeBrackets(std::string& text, std::vector<std::string>& marks) {
    for (std::size_t at = 0; at < text.size(); ++at) {
        if (text[at] != '(' && text[at] != '[') continue;
        std::size_t const end = closing(text, at);
        if (end == std::string::npos) continue;
        std::string const content = trimmed(std::string_view(text).substr(at + 1, end - at - 1));
        if (opensReference(content)) {
            addMarks(marks, content);
            text.replace(at, end + 1 - at, " ");
            continue;
        }
        std::size_t const comma = referenceBehindComma(content);
        if (comma != std::string::npos) {
            addMarks(marks, trimmed(std::string_view(content).substr(comma + 1)));
            std::string const front = trimmed(std::string_view(content).substr(0, comma));
            if (opensReference(front)) addMarks(marks, front);
            text.replace(at, end + 1 - at, opensReference(front) ? " " : text[at] + front + text[end]);
            continue;
        }
        // "(*1)" and "(※)"
        std::string const marksOnly = folded(content);
        bool const stars = !marksOnly.empty() && (marksOnly.front() == '*' || marksOnly.starts_with("※")) && marksOnly.size() <= 5;
        if (stars) {
            addMarks(marks, marksOnly);
            text.replace(at, end + 1 - at, " ");
        }
    }
}

// Bullets that mark lines which hold over temperature.
void takeBullets(std::string& text, std::vector<std::string>& marks) {
    for (std::string_view sign : {"●", "•", "◆", "■", "▲", "○"}) {
        for (std::size_t at = text.find(sign); at != std::string::npos; at = text.find(sign, at)) {
            std::size_t const end = at + sign.size();
            bool const alone = (at == 0 || text[at - 1] == ' ') && (end == text.size() || text[end] == ' ');
            if (!alone) {
                at = end;
                continue;
            }
            marks.emplace_back(sign);
            text.replace(at, sign.size(), " ");
        }
    }
}

// "*1", "※2", stars at the ends.
void takeStars(std::string& text, std::vector<std::string>& marks, std::string_view sign) {
    for (std::size_t at = text.find(sign); at != std::string::npos; at = text.find(sign, at)) {
        std::size_t end = at + sign.size();
        std::string digits;
        while (end < text.size() && text[end] >= '0' && text[end] <= '9') digits.push_back(text[end++]);
        // a star between operands is a product: "0.7*VDD"
        bool const product = sign == "*" && at > 0 && end < text.size() && text[at - 1] != ' ' && text[end] != ' ' && text[end] != ')' && text[end] != ',';
        bool const spaced = sign == "*" && at > 1 && text[at - 1] == ' ' && end + 1 < text.size() && text[end] == ' ' && digits.empty();
        bool const longNumber = digits.size() > 2;
        if (product || spaced || longNumber || (end < text.size() && text[end] == '.' && !digits.empty())) {
            at = end;
            continue;
        }
        marks.push_back(digits.empty() ? std::string(sign) : digits);
        text.replace(at, end - at, " ");
    }
}

void takeCircledDigits(std::string& text, std::vector<std::string>& marks) {
    constexpr std::string_view kBeginOfAll = "\xE2\x91";  // of U+2460 to U+2473
    if (text.find(kBeginOfAll) == std::string::npos) return;
    for (int n = 1; n <= 20; ++n) {
        std::string circled;
        append(circled, static_cast<char32_t>(0x245F + n));
        for (std::size_t at = text.find(circled); at != std::string::npos; at = text.find(circled, at)) {
            marks.push_back(std::to_string(n));
            text.replace(at, circled.size(), " ");
        }
    }
}

// Tidy text without brackets, stars, punctuation at which ends are trimmed, "see" and "note": nothing to
// take out. Signs, bullets and wide forms are among the characters that isTidy() leaves to the search.
bool holdsNoReference(std::string_view text) {
    if (!isTidy(text)) return false;
    std::uint32_t lastThree = 0;  // in lower case
    for (char const c : text) {
        if (c == '(' || c == '[' || c == '*' || c == ',' || c == ';') return false;
        lastThree = (lastThree << 8U | static_cast<unsigned char>(c) | 0x20U) & 0xFFFFFFU;
        if (lastThree == kSee || lastThree == kNot) return false;
    }
    return true;
}

// "…, see Figure 3", "Note 1" at the end.
void takeTail(std::string& text, std::vector<std::string>& marks) {
    std::string low = folded(text);
    for (std::string_view lead : {"see fig", "see note", "see test", "see tech", "see table", "see the fig"}) {
        std::size_t const at = low.rfind(lead);
        if (at == std::string::npos || low.size() - at > 40 || low.size() != text.size()) continue;
        addMarks(marks, low.substr(at));
        text.resize(at);
        low = folded(text);
        break;
    }
    std::size_t const note = low.rfind("note");
    if (note != std::string::npos && low.size() == text.size() && opensReference(low.substr(note)) && (note == 0 || low[note - 1] == ' ' || low[note - 1] == '-')) {
        addMarks(marks, low.substr(note));
        text.resize(note);
        while (!text.empty() && (text.back() == ' ' || text.back() == '-')) text.pop_back();  // "Supply voltage - note"
    }
}

}  // namespace

std::string withoutReferences(std::string_view raw, std::vector<std::string>& marks) {
    if (holdsNoReference(raw)) return std::string(raw);
    std::string text(raw);
    bool const ascii = standin::text::isAscii(raw);
    if (!ascii) takeWideBrackets(text, marks);
    takeBrackets(text, marks);
    if (!ascii) {
        takeBullets(text, marks);
        for (std::string_view sign : {"※", "†", "‡"}) takeStars(text, marks, sign);
    }
    takeStars(text, marks, "*");
    if (!ascii) takeCircledDigits(text, marks);
    takeTail(text, marks);
    trimEnds(text);
    return text;
}

TableText::TableText(model::Table const& table, model::PageLayout const* page) : rows(table.rows), columns(table.columns) {
    cells.reserve(table.cells.size());
    for (model::Cell const& cell : table.cells) {
        CellText out;
        out.left = cell.box.x0;
        std::string raw;
        if (page == nullptr || cell.words.empty()) {
            raw = cell.text;
        } else {
            model::Points lineBaseline = 0;
            bool first = true;
            std::size_t nextLine = 0;
            std::string line;
            auto closeLine = [&] {
                if (!line.empty()) out.lines.push_back({tidied(line), lineBaseline});
                line.clear();
            };
            for (std::size_t i = 0; i < cell.words.size(); ++i) {
                std::uint32_t const index = cell.words[i];
                if (index >= page->words.size()) continue;
                model::Word const& word = page->words[index];
                bool lineStart = false;
                while (nextLine < cell.lineStarts.size() && cell.lineStarts[nextLine] <= i) {
                    lineStart = cell.lineStarts[nextLine] == i;
                    ++nextLine;
                }
                if (lineStart) closeLine();
                if (word.dotLeader) continue;
                if (word.script == model::Script::Superscript && !first && endsAsPowerOfTen(raw, word.text)) {
                    std::string const power = plainExponents(word.text);
                    bool const minus = tidied(raw).ends_with("-");
                    raw = tidied(raw);
                    if (minus) raw.pop_back();
                    raw += "^" + std::string(minus ? "-" : "") + (power.starts_with("^") ? power.substr(1) : tidied(power));
                    continue;
                }
                if (word.script == model::Script::Superscript && !first && isFootnoteMark(word.text)) {
                    std::string const mark = folded(word.text);
                    addMarks(out.marks, mark);
                    continue;
                }
                if (first) {
                    out.left = word.box.x0;
                    out.size = word.size;
                    out.bold = word.bold;
                }
                lineBaseline = word.script == model::Script::Normal || line.empty() ? word.baseline : lineBaseline;
                if (word.spaceBefore && !line.empty()) line.push_back(' ');
                line += word.text;
                if (first) {
                    raw = word.text;
                } else if (word.spaceBefore || lineStart) {
                    raw = joined(raw, word.text);
                } else {
                    raw += word.text;
                }
                first = false;
            }
            closeLine();
        }
        std::string const clean = tidied(raw);
        out.text = withoutReferences(clean, out.marks);
        bool const reference = std::ranges::any_of(clean, [](char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); });
        if (out.text.empty() && reference) {
            out.onlyReference = true;
            out.text = clean;
        }
        trimLeaders(out.text);
        cells.push_back(std::move(out));
    }
    if (rows > 0 && columns > 0 && rows <= kLargestGrid / columns) {
        m_grid.assign(static_cast<std::size_t>(rows) * static_cast<std::size_t>(columns), -1);
        for (std::size_t i = 0; i < table.cells.size(); ++i) {
            model::Cell const& cell = table.cells[i];
            for (int r = std::max(0, cell.row); r < std::min(rows, cell.row + cell.rowSpan); ++r) {
                for (int c = std::max(0, cell.column); c < std::min(columns, cell.column + cell.columnSpan); ++c) {
                    m_grid[static_cast<std::size_t>(r) * static_cast<std::size_t>(columns) + static_cast<std::size_t>(c)] = static_cast<int>(i);
                }
            }
        }
    }
}

int TableText::at(int row, int column) const {
    if (row < 0 || column < 0 || row >= rows || column >= columns || m_grid.empty()) return -1;
    return m_grid[static_cast<std::size_t>(row) * static_cast<std::size_t>(columns) + static_cast<std::size_t>(column)];
}

}  // namespace standin::parameters

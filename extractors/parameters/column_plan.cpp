#include "extractors/parameters/column_plan.h"

// Titles first (lowest title of each column, blank ones inherit what spans
// them), then the content of the columns decides what titles leave open, then
// value columns are grouped by the title above them or where a role repeats.
// Tested by tests/extractors/parameters/column_plan_test.cpp.

#include <algorithm>

#include "extractors/parameters/name_parts.h"
#include "extractors/parameters/shapes.h"
#include "extractors/parameters/text_forms.h"
#include "extractors/parameters/value_cell.h"
#include "text/script.h"
#include "text/utf8.h"

namespace standin::parameters {

namespace {

using enum ColumnRole;

// Share of a column's cells that must look alike before content decides.
constexpr double kMostly = 0.6;
constexpr int kMostHeadRows = 5;
constexpr std::size_t kLongestTitle = 60;
constexpr int kMostJudged = 40;  // filled cells of a column that are looked at

struct Content {
    int filled = 0;
    int numbers = 0;
    int units = 0;
    int symbols = 0;
    int conditions = 0;
    int parts = 0;
    int words = 0;
    int letters = 0;  // "P", "C", "T" alone
    int lettered = 0;  // begin with a letter: names, though "VIN to GND" reads like a range

    [[nodiscard]] bool mostly(int count) const { return filled > 0 && count >= kMostly * filled; }
};

bool isValueRole(ColumnRole role) { return role == Min || role == Typ || role == Max || role == Value; }

// "Fig.7", "see Figs 7 and 8"
bool refersToFigure(std::string const& text) {
    std::string const low = folded(text);
    return low.starts_with("fig") || low.starts_with("see ");
}

// False for words in which no value can be: ASCII without digit, point, comma and the marks
// and words of ranges between symbols ("VSS to VDD").
bool mayHoldValue(std::string const& text) {
    if (!standin::text::isAscii(text) || text.find_first_of("0123456789.,~") != std::string::npos) return true;
    std::string const low = standin::text::asciiLower(text);
    return contains(low, "to") || contains(low, "bis") || contains(low, "thr");
}

bool looksLikeValue(std::string const& text) {
    if (!mayHoldValue(text) || refersToFigure(text)) return false;
    ValueCell const value = readValueCell(text, Slot::Single);
    if (value.form == ValueForm::Number || value.form == ValueForm::Range) return true;
    return value.form == ValueForm::Expression && hasDigit(text) && !isPartLike(text);
}

bool isLoneCapital(std::string const& text) { return text.size() == 1 && text[0] >= 'A' && text[0] <= 'Z'; }

Content contentOf(model::Table const& table, TableText const& text, Segment const& segment, int column, CellKinds& kinds) {
    Content content;
    int last = -1;
    for (int row = segment.bodyFirst; row < segment.bodyEnd && content.filled < kMostJudged; ++row) {
        int const index = text.at(row, column);
        if (index < 0 || index == last) continue;
        last = index;
        model::Cell const& cell = table.cells[static_cast<std::size_t>(index)];
        std::string const& words = text.cells[static_cast<std::size_t>(index)].text;
        if (cell.column != column || saysNothing(words)) continue;
        if (cell.columnSpan > 1 && cell.columnSpan >= table.columns - 1) continue;  // heading lines
        ++content.filled;
        CellKinds::Kind const& kind = kinds.of(words);
        if (kind.value && !text.cells[static_cast<std::size_t>(index)].onlyReference) ++content.numbers;
        if (kind.unit) ++content.units;
        if (kind.symbol) ++content.symbols;
        if (kind.condition) ++content.conditions;
        if (kind.part) ++content.parts;
        if (kind.words) ++content.words;
        if (isLoneCapital(words)) ++content.letters;
        std::size_t behindFirst = 0;
        if (standin::text::isLetter(standin::text::decodeNext(words, behindFirst))) ++content.lettered;
    }
    return content;
}

// Titles over a column from top to bottom, as indices of cells.
std::vector<int> titlesOver(TableText const& text, Segment const& segment, int column) {
    std::vector<int> out;
    for (int row = segment.headFirst; row < segment.bodyFirst; ++row) {
        int const index = text.at(row, column);
        if (index >= 0 && (out.empty() || out.back() != index) && !text.cells[static_cast<std::size_t>(index)].text.empty()) out.push_back(index);
    }
    return out;
}

// The words of a title; those of one script without gaps ("最小值典型值") are parted where the next begins.
std::vector<std::string> titleWords(std::string const& title) {
    if (standin::text::isAscii(title)) return splitAtSpaces(title);
    std::string parted = title;
    for (std::string_view opening : {"最小", "典型", "最大", "标准", "标称", "標準"}) {
        for (std::size_t at = parted.find(opening, 1); at != std::string::npos; at = parted.find(opening, at + 2)) {
            if (parted[at - 1] != ' ') parted.insert(at, 1, ' ');
        }
    }
    return splitAtSpaces(parted);
}

// Value roles of the words of one title: "Min Typ Max" in one cell; 0 where any word is something else.
int valueTitlesIn(std::string const& title) {
    std::vector<std::string> const words = titleWords(title);
    if (words.size() < 2 || words.size() > 4) return 0;
    for (std::string const& word : words) {
        ColumnRole const role = columnRoleOf(word);
        if (role != Min && role != Typ && role != Max) return 0;
    }
    return static_cast<int>(words.size());
}

// Known titles among the cells of a row; -1 where the row holds a number.
int knownTitles(TableText const& text, int row) {
    int known = 0;
    int last = -1;
    for (int column = 0; column < text.columns; ++column) {
        int const index = text.at(row, column);
        if (index < 0 || index == last) continue;
        last = index;
        std::string const& words = text.cells[static_cast<std::size_t>(index)].text;
        if (words.empty()) continue;
        bool const number = (words[0] >= '0' && words[0] <= '9') || ((words[0] == '-' || words[0] == '+') && hasDigit(words));
        if (number || words.starts_with("±")) return -1;
        if (words.size() > kLongestTitle) continue;
        ColumnRole const role = columnRoleOf(words);
        bool const strong = role == Min || role == Typ || role == Max || role == Unit || role == Symbol || role == Condition || role == Value;
        if (strong) ++known;
        if (valueTitlesIn(words) >= 2) known += 2;
    }
    return known;
}

// A title from above ("Parameter", "Unit") still covers the row: it belongs to the head.
bool reachedByHead(model::Table const& table, TableText const& text, int row) {
    if (row == 0) return false;
    for (int column = 0; column < text.columns; ++column) {
        int const index = text.at(row, column);
        if (index < 0) continue;
        model::Cell const& cell = table.cells[static_cast<std::size_t>(index)];
        if (cell.row >= row || (cell.row > 0 && !cell.header)) continue;
        ColumnRole const role = columnRoleOf(text.cells[static_cast<std::size_t>(index)].text);
        if (role == Name || role == Unit || role == Symbol || role == Condition) return true;
    }
    return false;
}

std::string unitInTitle(std::string const& title) {
    std::size_t const open = title.find_last_of("([");
    if (open == std::string::npos || title.size() < open + 3) return {};
    std::string const inner = trimmed(std::string_view(title).substr(open + 1, title.size() - open - 2));
    return isUnitLike(inner) && inner != "1" ? inner : std::string{};
}

// "VCC", "VCC (V)", "TA": one letter symbol of a supply, a temperature or a load.
std::string bareSymbol(std::string const& title) {
    std::string const bare = trimmed(std::string_view(title).substr(0, title.find_first_of("([")));
    // "|IO|": an amount
    if (bare.size() > 3 && bare.front() == '|' && bare.back() == '|') {
        std::string const inner = bareSymbol(bare.substr(1, bare.size() - 2));
        return inner.empty() ? inner : bare;
    }
    // "VDD V": with its unit
    std::vector<std::string> const words = splitAtSpaces(bare);
    if (words.size() == 2 && isUnitLike(words[1])) return bareSymbol(words[0]);
    std::u32string const codes = decoded(bare);
    bool const lead = !codes.empty() && (codes[0] == U'V' || codes[0] == U'T' || codes[0] == U'I' || codes[0] == U'R' || codes[0] == U'C' || codes[0] == U'f');
    return lead && isStrongSymbol(bare) ? bare : std::string{};
}

std::vector<Content> contentsOf(model::Table const& table, TableText const& text, Segment const& segment, CellKinds& kinds) {
    std::vector<Content> contents;
    for (int c = 0; c < table.columns; ++c) contents.push_back(contentOf(table, text, segment, c, kinds));
    return contents;
}

// "From | To" over numbers, and no other column of values: limits ("-40 | 85").
void takeWaysAsLimits(std::vector<Content> const& contents, ColumnPlan& plan) {
    if (plan.minTitle || plan.typTitle || plan.maxTitle || plan.valueTitle) return;
    for (std::size_t c = 0; c < contents.size(); ++c) {
        std::string& way = plan.conditionOf[c];
        if (way.empty() || contents[c].filled == 0 || !contents[c].mostly(contents[c].numbers)) continue;
        bool const least = way == "from";
        plan.roles[c] = least ? Min : Max;
        (least ? plan.minTitle : plan.maxTitle) = true;
        way.clear();
    }
}

void judgeByContent(model::Table const& table, TableText const& text, Segment const& segment, std::vector<Content> const& contents, ColumnPlan& plan) {
    auto role = [&](int c) -> ColumnRole& { return plan.roles[static_cast<std::size_t>(c)]; };
    auto content = [&](int c) -> Content const& { return contents[static_cast<std::size_t>(c)]; };

    // "Rating" heads names as well as values; "Typ" heads types as well.
    for (int c = 0; c < table.columns; ++c) {
        Content const& now = content(c);
        bool const wordy = now.filled > 0 && now.numbers * 3 < now.filled && (now.words * 2 >= now.filled || now.symbols * 2 >= now.filled);
        bool const named = c == 0 && now.mostly(now.lettered);
        if (role(c) == Value && (wordy || named)) {
            bool other = false;
            for (int k = 0; k < table.columns; ++k) {
                bool const numeric = role(k) == Unknown && content(k).filled > 0 && content(k).mostly(content(k).numbers);
                other = other || (k != c && (isValueRole(role(k)) || numeric));
            }
            if (other && c < table.columns / 2) role(c) = Name;
        }
        if ((role(c) == Name || role(c) == Unknown) && c > 0 && now.filled > 0 && now.numbers * 10 >= now.filled * 9 && !plan.has(Value) && !plan.has(Min) && !plan.has(Max) &&
            !plan.has(Typ)) {
            role(c) = Value;
        }
        // "C": a letter a line that says how the value was tested, beside names in a column of their own
        bool const grades = role(c) == Unknown && plan.count(Name) == 1 && now.filled >= 3 && now.letters == now.filled && isLoneCapital(plan.titles[static_cast<std::size_t>(c)]);
        if (grades && c < table.columns / 2) role(c) = Note;
        // units behind a limit that no line states
        if ((role(c) == Max || role(c) == Typ) && !plan.has(Unit) && now.filled >= 2 && now.units == now.filled && now.numbers == 0) role(c) = Unit;
        if (role(c) == PinName || role(c) == Pin) {
            bool const valued = plan.has(Min) || plan.has(Max) || plan.has(Typ) || plan.has(Value);
            if (valued && plan.has(Unit)) role(c) = role(c) == Pin && now.mostly(now.numbers) ? Ignored : Name;
        }
        if (role(c) == Part && now.filled > 0 && now.parts == 0 && now.words * 2 >= now.filled && (plan.has(Unit) || plan.has(Max)) && !plan.has(Name)) role(c) = Name;
    }

    // Several columns under one "Parameter": the one with symbols is the symbol's.
    if (!plan.has(Symbol)) {
        for (int c = 0; c < table.columns; ++c) {
            bool const candidate = role(c) == Name || role(c) == Unknown;
            if (!candidate || !content(c).mostly(content(c).symbols)) continue;
            if (content(c).words * 3 > content(c).filled) continue;
            if (plan.titles[static_cast<std::size_t>(c)].empty() || plan.count(Name) > 1) {
                bool nameElsewhere = false;
                for (int k = 0; k < table.columns; ++k) {
                    bool const namesThere = role(k) == Name || (role(k) == Unknown && content(k).words > 0);
                    nameElsewhere = nameElsewhere || (k != c && namesThere);
                }
                if (!nameElsewhere && plan.count(Name) == 0) continue;
                if (content(c).parts * 2 > content(c).filled) continue;
                role(c) = Symbol;
                break;
            }
        }
    }

    // A further column under "Parameter" that states conditions.
    for (int c = 1; c < table.columns; ++c) {
        if (role(c) == Name && role(c - 1) == Name && content(c).filled > 0 && content(c).conditions * 3 >= content(c).filled) role(c) = Condition;
    }

    // Columns under "Test conditions" with titles of their own.
    for (int c = 1; c < table.columns; ++c) {
        std::vector<int> const over = titlesOver(text, segment, c);
        bool const stated = role(c) == Unknown && over.size() > 1 && columnRoleOf(text.cells[static_cast<std::size_t>(over.front())].text) == Condition;
        if (!stated || content(c).filled == 0) continue;
        role(c) = Condition;
        plan.conditionOf[static_cast<std::size_t>(c)] = bareSymbol(plan.titles[static_cast<std::size_t>(c)]);
    }

    // A column headed by a symbol that stands in front of value columns holds a condition: "VCC | 4.5 V".
    for (int c = 1; c + 1 < table.columns; ++c) {
        std::size_t const at = static_cast<std::size_t>(c);
        std::string const symbol = bareSymbol(plan.titles[at]);
        if (role(c) != Unknown || symbol.empty() || content(c).filled == 0) continue;
        bool values = false;
        for (int k = c + 1; k < table.columns; ++k) values = values || isValueRole(role(k)) || (role(k) == Unknown && content(k).mostly(content(k).numbers));
        if (!values || !(plan.has(Name) || plan.has(Symbol))) continue;
        role(c) = Condition;
        plan.conditionOf[at] = symbol;
    }

    // "Min | Value": the other limit
    if (plan.has(Min) && !plan.has(Max) && plan.count(Value) == 1) {
        for (int c = 1; c < table.columns; ++c) {
            bool const behind = role(c) == Value && std::find(plan.roles.begin(), plan.roles.begin() + c, Min) != plan.roles.begin() + c;
            if (behind && titlesOver(text, segment, c).size() == 1) role(c) = Max;
        }
    }

    int firstValue = table.columns;
    int lastValue = -1;
    for (int c = 0; c < table.columns; ++c) {
        if (isValueRole(role(c))) {
            firstValue = std::min(firstValue, c);
            lastValue = std::max(lastValue, c);
        }
    }
    for (int c = 0; c < table.columns; ++c) {
        if (role(c) != Unknown) continue;
        Content const& now = content(c);
        std::string const& title = plan.titles[static_cast<std::size_t>(c)];
        if (now.filled == 0) {
            // an empty column between value columns keeps its place as a variant
            role(c) = !title.empty() && c > firstValue && c < lastValue ? Value : Ignored;
            continue;
        }
        if (now.numbers * 2 >= now.filled && c > 0) {
            role(c) = Value;
        } else if (!plan.has(Unit) && now.mostly(now.units) && c > 0) {
            role(c) = Unit;
            if (title.empty()) plan.reasons.emplace_back("unit column without a title");
        } else if (!plan.has(Symbol) && now.mostly(now.symbols) && now.words * 3 < now.filled && now.parts * 2 < now.filled && plan.has(Name)) {
            role(c) = Symbol;
        } else if (now.conditions * 2 >= now.filled && (plan.has(Name) || plan.has(Symbol)) && c > 0) {
            role(c) = Condition;
        } else if (c > lastValue && lastValue >= 0) {
            role(c) = Note;
        } else if (c > 0 && role(c - 1) == Condition) {
            role(c) = Condition;
        } else {
            role(c) = Name;
        }
    }

    // The one identifying column holds symbols.
    if (plan.count(Name) == 1 && !plan.has(Symbol)) {
        for (int c = 0; c < table.columns; ++c) {
            if (role(c) == Name && content(c).mostly(content(c).symbols) && content(c).words * 4 < content(c).filled) {
                role(c) = Symbol;
                plan.symbolIsOnlyName = true;
            }
        }
    }
}

// Roles by content alone: what holds values, before judgeByContent() settles names, conditions and units.
void takeValuesByContent(TableText const& text, Segment const& segment, std::vector<Content> const& contents, ColumnPlan& plan) {
    plan.reasons.emplace_back("no column titles");
    std::vector<int> numeric;
    for (std::size_t c = 1; c < contents.size(); ++c) {
        if (contents[c].filled > 0 && contents[c].mostly(contents[c].numbers)) numeric.push_back(static_cast<int>(c));
    }
    for (int c : numeric) plan.roles[static_cast<std::size_t>(c)] = Value;
    // cells that are ranges or carry their unit are whole values, not one limit each
    bool whole = false;
    for (int c : numeric) {
        for (int row = segment.bodyFirst; row < segment.bodyEnd; ++row) {
            int const index = text.at(row, c);
            if (index < 0) continue;
            ValueCell const value = readValueCell(text.cells[static_cast<std::size_t>(index)].text, Slot::Single);
            whole = whole || value.form == ValueForm::Range || !value.unit.empty();
        }
    }
    if (whole) return;
    if (numeric.size() == 3) {
        plan.roles[static_cast<std::size_t>(numeric[0])] = Min;
        plan.roles[static_cast<std::size_t>(numeric[1])] = Typ;
        plan.roles[static_cast<std::size_t>(numeric[2])] = Max;
    } else if (numeric.size() == 2) {
        plan.roles[static_cast<std::size_t>(numeric[0])] = Min;
        plan.roles[static_cast<std::size_t>(numeric[1])] = Max;
    }
}

// A title over every value column tells none of them apart.
bool coversAllValues(model::Table const& table, ColumnPlan const& plan, int index) {
    model::Cell const& cell = table.cells[static_cast<std::size_t>(index)];
    for (int c = 0; c < table.columns; ++c) {
        if (isValueRole(plan.roles[static_cast<std::size_t>(c)]) && (c < cell.column || c >= cell.column + cell.columnSpan)) return false;
    }
    return cell.columnSpan > 1;
}

// "TYP." over a column for each variant: whose values they are; Unknown where no title says so.
ColumnRole limitOver(TableText const& text, std::vector<int> const& over) {
    for (std::size_t k = 0; k + 1 < over.size(); ++k) {
        ColumnRole const said = columnRoleOf(text.cells[static_cast<std::size_t>(over[k])].text);
        if (said == Min || said == Typ || said == Max) return said;
    }
    return Unknown;
}

// What a head row says of the titles over the value columns: "Input voltage | 10 V | 19 V"; empty: nothing.
std::string rowLabel(model::Table const& table, TableText const& text, int title) {
    model::Cell const& cell = table.cells[static_cast<std::size_t>(title)];
    int const label = text.at(cell.row, 0);
    if (label < 0 || label == title || table.cells[static_cast<std::size_t>(label)].row != cell.row) return {};
    std::string const& words = text.cells[static_cast<std::size_t>(label)].text;
    return columnRoleOf(words) == Unknown && hasOrdinaryWord(words) ? words : std::string{};
}

// "Guaranteed limit": the other side of the typical value in front of it.
bool saysLimit(std::string const& title) {
    std::string const low = folded(title);
    return low.ends_with("limit") || low.ends_with("limits");
}

void groupValues(model::Table const& table, TableText const& text, Segment const& segment, ColumnPlan& plan) {
    struct Open {
        ValueGroup group;
        int above = -1;  // cell of the title above
        int titleAbove = -1;
        std::string title;
    };
    std::vector<Open> groups;
    auto slot = [](ValueGroup& group, ColumnRole role) -> int& { return role == Min ? group.min : role == Typ ? group.typ : role == Max ? group.max : group.single; };
    for (int c = 0; c < table.columns; ++c) {
        ColumnRole const role = plan.roles[static_cast<std::size_t>(c)];
        if (!isValueRole(role)) continue;
        std::vector<int> const over = titlesOver(text, segment, c);
        // titles that say something beyond the role
        std::string title;
        std::string stated;  // by further rows of titles with a label of their own
        int above = -1;
        int titleAbove = -1;  // the topmost title, whatever the role
        for (std::size_t k = 0; k < over.size(); ++k) {
            std::string const& words = text.cells[static_cast<std::size_t>(over[k])].text;
            bool const lowest = k + 1 == over.size();
            if (isNeutralGroupTitle(words) || valueTitlesIn(words) > 0) continue;
            // "Ta (°C)" over "+25" and "-40 to +85" says what those are
            if (coversAllValues(table, plan, over[k]) && unitInTitle(words) != "°C") continue;
            ColumnRole const said = columnRoleOf(words);
            // "Standard mode" over "Min" and "Max" is no typical value
            bool const names = isValueRole(said) && !lowest && isValueRole(role) && role != Value && words.find(' ') != std::string::npos;
            if ((isValueRole(said) || said == Unit) && !names) continue;
            std::string const label = title.empty() ? std::string{} : rowLabel(table, text, over[k]);
            if (label.empty()) {
                title = joined(title, words);
            } else {
                stated = joined(stated, joined(label, words));
            }
            if (titleAbove < 0) titleAbove = over[k];
            if (!lowest || role == Value) above = over[k];
        }
        // a typical value and the limits under one title, or headed as limits, go together
        bool const headed = titleAbove >= 0 || saysLimit(plan.titles[static_cast<std::size_t>(c)]);
        bool const limit = role == Value && !groups.empty() && groups.back().group.typ >= 0 && groups.back().group.max < 0 && groups.back().group.min < 0 &&
                           groups.back().group.single < 0 && headed && groups.back().titleAbove == titleAbove;
        // rules of a few rows may cut a column in two
        if (!groups.empty() && role != Value && !over.empty() && slot(groups.back().group, role) >= 0) {
            int& before = slot(groups.back().group, role);
            std::vector<int> const overBefore = titlesOver(text, segment, before);
            if (!overBefore.empty() && overBefore.back() == over.back() && valueTitlesIn(text.cells[static_cast<std::size_t>(over.back())].text) < 2) {
                plan.twins[static_cast<std::size_t>(before)] = c;
                continue;
            }
        }
        bool const fresh =
            groups.empty() || (role == Value && !limit) || groups.back().group.single >= 0 || slot(groups.back().group, role) >= 0 || (groups.back().above != above && !limit);
        if (fresh) {
            groups.emplace_back();
            groups.back().above = above;
            groups.back().title = title;
            groups.back().group.condition = stated;
            groups.back().titleAbove = titleAbove;
        }
        ColumnRole const limitAbove = role == Value && fresh ? limitOver(text, over) : Unknown;
        slot(groups.back().group, limitAbove == Unknown ? role : limitAbove) = c;
        if (groups.back().group.unitInTitle.empty()) {
            for (int index : over) {
                std::string const unit = unitInTitle(text.cells[static_cast<std::size_t>(index)].text);
                if (!unit.empty()) groups.back().group.unitInTitle = unit;
            }
        }
    }
    bool const several = groups.size() > 1;
    for (Open& open : groups) {
        ValueGroup& group = open.group;
        if (several) {
            group.variant = open.title;
        } else {
            // what stands over all value columns may state their condition
            for (int c = 0; c < table.columns; ++c) {
                if (!isValueRole(plan.roles[static_cast<std::size_t>(c)])) continue;
                for (int index : titlesOver(text, segment, c)) {
                    std::string const& words = text.cells[static_cast<std::size_t>(index)].text;
                    if (isConditionLike(words) && !contains(group.condition, words)) group.condition = joined(group.condition, words);
                }
            }
        }
        int const last = std::max({group.min, group.typ, group.max, group.single});
        for (int c = last + 1; c < table.columns && group.unit < 0; ++c) {
            if (plan.roles[static_cast<std::size_t>(c)] == Unit) group.unit = c;
        }
        for (int c = last; c >= 0 && group.unit < 0; --c) {
            if (plan.roles[static_cast<std::size_t>(c)] == Unit) group.unit = c;
        }
        plan.groups.push_back(std::move(group));
    }
}

// One part a line, and limits of a symbol: "Device | VDET (V): Min, Typ, Max".
void judgePartRows(TableText const& text, Segment const& segment, ColumnPlan& plan) {
    bool const limits = plan.minTitle && plan.maxTitle;
    if (!plan.has(Part) || plan.has(Name) || plan.has(Symbol) || plan.has(Package) || !limits || plan.groups.empty()) return;
    std::vector<std::string> symbols;
    for (ValueGroup const& group : plan.groups) {
        if (group.single >= 0) return;
        std::vector<int> const over = titlesOver(text, segment, std::max({group.min, group.typ, group.max}));
        std::string const symbol = over.size() > 1 ? bareSymbol(text.cells[static_cast<std::size_t>(over.front())].text) : std::string{};
        if (symbol.empty()) return;
        symbols.push_back(symbol);
    }
    for (std::size_t i = 0; i < symbols.size(); ++i) {
        plan.groups[i].symbol = symbols[i];
        plan.groups[i].variant.clear();
    }
    plan.transposed = true;
}

// No name and no symbol column, and several value columns: the columns are the
// parameters ("Package | RθJA | RθJC | Power rating").
void judgeTransposed(TableText const& text, Segment const& segment, ColumnPlan& plan) {
    if (plan.has(Symbol) || plan.has(Part) || plan.groups.empty()) return;
    if (plan.has(Min) || plan.has(Typ) || plan.has(Max) || plan.has(Unit)) return;
    if (plan.has(Name) && !plan.has(Package)) return;
    int named = 0;
    for (ValueGroup& group : plan.groups) {
        if (group.single < 0) return;
        std::vector<int> const over = titlesOver(text, segment, group.single);
        if (over.empty()) return;
        std::string const& low = text.cells[static_cast<std::size_t>(over.back())].text;
        if (over.size() == 1 && isSymbolLike(low)) {
            group.symbol = low;
            group.variant.clear();
            ++named;
        } else if (over.size() >= 2 && isConditionLike(low)) {
            group.name = text.cells[static_cast<std::size_t>(over[over.size() - 2])].text;
            group.variant = low;
            ++named;
        } else {
            group.name = low;
            group.variant.clear();
        }
    }
    plan.transposed = named > 0;
    if (!plan.transposed) {
        for (ValueGroup& group : plan.groups) group.name.clear();
    }
}

}  // namespace

bool ColumnPlan::has(ColumnRole role) const { return std::ranges::find(roles, role) != roles.end(); }
int ColumnPlan::count(ColumnRole role) const { return static_cast<int>(std::ranges::count(roles, role)); }

CellKinds::Kind const& CellKinds::of(std::string const& text) {
    auto const [entry, isNew] = m_kinds.try_emplace(text);
    if (isNew) {
        entry->second = {.value = looksLikeValue(text),
                         .unit = isUnitLike(text),
                         .symbol = isSymbolLike(text) || isSymbolAtCondition(text),
                         .condition = isConditionLike(text),
                         .part = isPartLike(text),
                         .words = hasOrdinaryWord(text)};
    }
    return entry->second;
}

std::vector<Segment> segmentsOf(model::Table const& table, TableText const& text) {
    std::vector<Segment> out;
    Segment now{0, std::clamp(table.headRows, 0, table.rows), table.rows};
    // a head that was not marked as one
    while (now.bodyFirst < std::min(table.rows, kMostHeadRows) && (knownTitles(text, now.bodyFirst) >= 2 || reachedByHead(table, text, now.bodyFirst))) ++now.bodyFirst;
    int row = now.bodyFirst;
    while (row < table.rows) {
        if (row > now.bodyFirst && knownTitles(text, row) >= 3) {
            now.bodyEnd = row;
            out.push_back(now);
            now = {row, row + 1, table.rows};
            while (now.bodyFirst < std::min(table.rows, row + kMostHeadRows) && knownTitles(text, now.bodyFirst) >= 2) ++now.bodyFirst;
            row = now.bodyFirst;
            continue;
        }
        ++row;
    }
    out.push_back(now);
    return out;
}

ColumnPlan planColumns(model::Table const& table, TableText const& text, Segment const& segment, ColumnPlan const* carried, CellKinds& kinds) {
    ColumnPlan plan;
    plan.roles.assign(static_cast<std::size_t>(std::max(0, table.columns)), Unknown);
    plan.titles.assign(plan.roles.size(), {});
    plan.conditionOf.assign(plan.roles.size(), {});
    plan.twins.assign(plan.roles.size(), -1);
    int known = 0;
    for (int c = 0; c < table.columns; ++c) {
        std::vector<int> const over = titlesOver(text, segment, c);
        if (over.empty()) continue;
        std::size_t const at = static_cast<std::size_t>(c);
        plan.titles[at] = text.cells[static_cast<std::size_t>(over.back())].text;
        ColumnRole role = columnRoleOf(plan.titles[at]);
        model::Cell const& cell = table.cells[static_cast<std::size_t>(over.back())];
        if (cell.columnSpan > 1 && valueTitlesIn(plan.titles[at]) == cell.columnSpan) {
            // "Min Typ Max" over its three columns
            plan.titles[at] = titleWords(plan.titles[at])[static_cast<std::size_t>(c - cell.column)];
            role = columnRoleOf(plan.titles[at]);
        }
        plan.roles[at] = role;
        if (role == Condition) plan.conditionOf[at] = wayOf(plan.titles[at]);
        if (role != Unknown) ++known;
        plan.minTitle = plan.minTitle || role == Min;
        plan.typTitle = plan.typTitle || role == Typ;
        plan.maxTitle = plan.maxTitle || role == Max;
        plan.valueTitle = plan.valueTitle || role == Value;
        plan.unitTitle = plan.unitTitle || role == Unit;
        plan.nameTitle = plan.nameTitle || role == Name;
        plan.symbolTitle = plan.symbolTitle || role == Symbol;
    }
    // Whole-head titles ("Electrical characteristics" over everything) are no title of a column.
    bool const headless = segment.bodyFirst == segment.headFirst || known == 0;
    if (headless && carried != nullptr && carried->roles.size() == plan.roles.size()) {
        ColumnPlan out = *carried;
        out.carried = true;
        return out;
    }
    plan.headed = known > 0;
    auto const contents = contentsOf(table, text, segment, kinds);
    if (!plan.headed) takeValuesByContent(text, segment, contents, plan);
    takeWaysAsLimits(contents, plan);
    judgeByContent(table, text, segment, contents, plan);
    groupValues(table, text, segment, plan);
    judgeTransposed(text, segment, plan);
    judgePartRows(text, segment, plan);
    return plan;
}

ColumnPlan planColumns(model::Table const& table, TableText const& text, Segment const& segment, ColumnPlan const* carried) {
    CellKinds kinds;
    return planColumns(table, text, segment, carried, kinds);
}

}  // namespace standin::parameters

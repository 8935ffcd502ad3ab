// Columns by title, then by content: numbers are short and count up, names are
// short, functions are long. Several number columns with one name column are
// packages side by side; as many name columns as number columns are pins side by
// side. Tested by tests/extractors/pins/pin_table_test.cpp.
#include "extractors/pins/pin_table.h"

#include <algorithm>
#include <utility>
#include <array>
#include <cmath>

#include "extractors/packages/package_names.h"
#include "extractors/pins/pin_names.h"
#include "text/utf8.h"

namespace standin::pins {

namespace {

constexpr int kMostPlaces = 100'000;
constexpr std::size_t kLongNameLength = 22;  // mean length from which a column is no list of names

class Grid {
public:
    explicit Grid(model::Table const& table) : m_table(table) {
        if (table.rows <= 0 || table.columns <= 0 || table.rows > kMostPlaces / table.columns) return;
        m_rows = table.rows;
        m_columns = table.columns;
        m_cells.assign(static_cast<std::size_t>(m_rows) * static_cast<std::size_t>(m_columns), -1);
        for (std::size_t i = 0; i < table.cells.size(); ++i) {
            auto const& cell = table.cells[i];
            for (int row = std::max(0, cell.row); row < std::min(m_rows, cell.row + cell.rowSpan); ++row) {
                for (int column = std::max(0, cell.column); column < std::min(m_columns, cell.column + cell.columnSpan); ++column) m_cells[place(row, column)] = static_cast<int>(i);
            }
        }
    }

    [[nodiscard]] int rows() const { return m_rows; }
    [[nodiscard]] int columns() const { return m_columns; }
    [[nodiscard]] model::Cell const* at(int row, int column) const {
        int const index = m_cells[place(row, column)];
        return index < 0 ? nullptr : &m_table.cells[static_cast<std::size_t>(index)];
    }

private:
    [[nodiscard]] std::size_t place(int row, int column) const { return static_cast<std::size_t>(row) * static_cast<std::size_t>(m_columns) + static_cast<std::size_t>(column); }
    model::Table const& m_table;
    int m_rows = 0;
    int m_columns = 0;
    std::vector<int> m_cells;
};

template <std::size_t N>
bool saysAny(std::string_view title, std::array<std::string_view, N> const& words) {
    return std::any_of(words.begin(), words.end(), [title](auto word) { return title.find(word) != std::string_view::npos; });
}

constexpr std::array<std::string_view, 20> kNumberWords{"no.",  "number", "num",    "pin #",  "#",    "引脚号", "管脚号", "脚号", "脚位", "序号",
                                                        "编号", "番号",   "编码", "nummer", "nr.", "номер",  "ball",   "引脚序", "pin no", "腳位"};
constexpr std::array<std::string_view, 13> kNameWords{"name", "symbol", "mnemonic", "符号", "名称", "符號", "名稱", "端子名", "記号", "bezeichnung", "обозначение", "label", "定义"};
constexpr std::array<std::string_view, 13> kFunctionWords{"function", "description", "功能", "说明", "描述", "機能", "説明", "說明", "funktion", "beschreibung", "назначение", "remark", "purpose"};
constexpr std::array<std::string_view, 7> kTypeWords{"i/o", "type", "类型", "direction", "属性", "typ", "類型"};
constexpr std::array<std::string_view, 8> kPinWords{"pin", "pins", "引脚", "管脚", "terminal", "端子", "lead", "вывод"};

PinColumn roleSaid(std::string const& title) {
    if (title.empty()) return PinColumn::Other;
    if (saysAny(title, kNumberWords) || title == "no") return PinColumn::Number;
    if (saysAny(title, kNameWords)) return PinColumn::Name;
    if (saysAny(title, kFunctionWords)) return PinColumn::Function;
    if (saysAny(title, kTypeWords)) return PinColumn::Type;
    return PinColumn::Other;
}

struct Column {
    std::string title;      // all head lines, lower case
    std::string lastTitle;  // as printed, of the last head line
    int filled = 0;
    int numbers = 0;
    int names = 0;
    int blanks = 0;
    std::size_t length = 0;
    [[nodiscard]] bool mostlyNumbers() const { return filled > 0 && numbers * 10 >= filled * 7; }
    [[nodiscard]] std::size_t meanLength() const { return filled > 0 ? length / static_cast<std::size_t>(filled) : 0; }
};

std::vector<Column> columnsOf(model::Table const& table, Grid const& grid) {
    std::vector<Column> columns(static_cast<std::size_t>(grid.columns()));
    for (int c = 0; c < grid.columns(); ++c) {
        auto& column = columns[static_cast<std::size_t>(c)];
        model::Cell const* last = nullptr;
        for (int r = 0; r < grid.rows(); ++r) {
            auto const* cell = grid.at(r, c);
            if (cell == nullptr || cell == last) continue;
            last = cell;
            if (r < table.headRows) {
                if (!column.title.empty()) column.title += ' ';
                column.title += text::asciiLower(cell->text);
                column.lastTitle = cell->text;
                continue;
            }
            if (cell->columnSpan >= grid.columns() && grid.columns() > 1) continue;  // a heading line
            if (isBlank(cell->text) || text::asciiLower(cell->text) == "none") {
                ++column.blanks;
                continue;
            }
            ++column.filled;
            column.length += cell->text.size();
            if (!pinNumbers(cell->text).empty()) ++column.numbers;
            if (looksLikePinName(cell->text)) ++column.names;
        }
    }
    return columns;
}

// A title that only says "pin number" names no package.
std::string packageSaid(std::string const& title) {
    auto const lower = text::asciiLower(text::trimmed(title));
    if (lower.empty()) return {};
    if (roleSaid(lower) != PinColumn::Other) {
        auto const name = packages::findPackageName(title);  // "SOT-23-6 pin no."
        return name ? title.substr(name->begin, name->end - name->begin) : std::string{};
    }
    if (std::find(kPinWords.begin(), kPinWords.end(), lower) != kPinWords.end()) return {};
    auto const whole = text::trimmed(title);
    auto const space = lower.find(' ');  // "Pin SOIC": the group's title stands over this column
    bool const grouped = space != std::string::npos && std::find(kPinWords.begin(), kPinWords.end(), lower.substr(0, space)) != kPinWords.end();
    return std::string(grouped ? text::trimmed(whole.substr(space)) : whole);
}

// "H", "X", "↑", "Low": what a pin may be at; grounds and sources repeat as names.
bool isState(std::string_view name) {
    static constexpr auto kStates = std::to_array<std::string_view>({"h", "l", "x", "z", "hi-z", "high", "low", "on", "off", "open"});
    return !text::isAscii(name) || std::find(kStates.begin(), kStates.end(), text::asciiLower(name)) != kStates.end();
}

}  // namespace

bool saysPins(model::Table const& table) {
    auto const says = [](std::string_view text) { return saysAny(text::asciiLower(text), kPinWords); };
    if (says(table.caption) || says(table.lead)) return true;
    return std::any_of(table.cells.begin(), table.cells.end(), [&](auto const& cell) { return cell.row < table.headRows && says(cell.text); });
}

bool contradictsItself(std::span<model::Pin const> pins) {
    std::size_t again = 0;
    for (std::size_t i = 0; i < pins.size(); ++i) {
        if (pins[i].number == "0") return true;
        for (std::size_t k = 0; k < i; ++k) {
            if (pins[k].number != pins[i].number || pins[k].package != pins[i].package) continue;
            bool const same = pins[i].number.empty() ? pins[k].name == pins[i].name && isState(pins[i].name) : pins[k].name != pins[i].name;
            if (!same) continue;
            ++again;
            break;
        }
    }
    return again * 3 > pins.size();
}

bool PinColumns::has(PinColumn role) const { return std::find(roles.begin(), roles.end(), role) != roles.end(); }

PinColumns pinColumnsOf(model::Table const& table) {
    Grid const grid(table);
    auto const columns = columnsOf(table, grid);
    PinColumns result;
    result.roles.assign(columns.size(), PinColumn::Other);
    result.packages.assign(columns.size(), {});
    bool named = false;
    for (std::size_t c = 0; c < columns.size(); ++c) {
        auto const& column = columns[c];
        auto const said = roleSaid(text::asciiLower(column.lastTitle));
        auto const whole = roleSaid(column.title);
        if (column.mostlyNumbers() && said != PinColumn::Name && said != PinColumn::Function) {
            result.roles[c] = PinColumn::Number;
            result.packages[c] = packageSaid(column.lastTitle);
            continue;
        }
        // The line nearest to the body says it; a group title above is second.
        auto role = said != PinColumn::Other ? said : whole;
        if (role == PinColumn::Number) role = column.names > 0 ? PinColumn::Name : PinColumn::Other;  // "pin" heads the names
        if (role == PinColumn::Name && column.filled > 0 && column.meanLength() > 2 * kLongNameLength) role = PinColumn::Function;
        result.roles[c] = role;
        named = named || role == PinColumn::Name;
    }
    auto const open = [&](std::size_t c) { return result.roles[c] == PinColumn::Other || result.roles[c] == PinColumn::Function; };
    if (!named) {
        // The first column of short words; "pin" may head it, or nothing.
        for (std::size_t c = 0; c < columns.size() && !named; ++c) {
            bool const asPin = std::find(kPinWords.begin(), kPinWords.end(), text::trimmed(columns[c].title)) != kPinWords.end();
            if (!open(c) || columns[c].filled == 0 || columns[c].names * 10 < columns[c].filled * 7) continue;
            if (columns[c].meanLength() > kLongNameLength && !asPin) continue;
            result.roles[c] = PinColumn::Name;
            named = true;
        }
    }
    if (!result.has(PinColumn::Function)) {
        std::size_t best = columns.size();
        for (std::size_t c = 0; c < columns.size(); ++c) {
            if (result.roles[c] != PinColumn::Other || columns[c].filled == 0) continue;
            if (best == columns.size() || columns[c].length > columns[best].length) best = c;
        }
        if (best < columns.size()) result.roles[best] = PinColumn::Function;
    }
    return result;
}

namespace {

// Two columns without titles, one that counts down the page and one that counts up: the two
// sides of a package, drawn. Its names belong to one side each, not to the row.
bool isDrawnPackage(Grid const& grid, model::Table const& table, std::vector<int> const& numberColumns) {
    if (table.headRows > 0 || numberColumns.size() != 2 || grid.rows() < 2) return false;
    for (int row = 0; row < grid.rows(); ++row) {
        auto const* a = grid.at(row, numberColumns[0]);
        auto const* b = grid.at(row, numberColumns[1]);
        int const down = a == nullptr ? 0 : plainNumber(a->text).value_or(0);
        int const up = b == nullptr ? 0 : plainNumber(b->text).value_or(0);
        if (down != row + 1 || up != 2 * grid.rows() - row) return false;
    }
    return true;
}

}  // namespace

std::vector<model::Pin> pinsOfTable(model::Table const& table, PinColumns const& columns) {
    Grid const grid(table);
    std::vector<model::Pin> pins;
    auto const count = std::min(static_cast<std::size_t>(grid.columns()), columns.roles.size());
    std::vector<int> numberColumns;
    std::vector<int> nameColumns;
    std::vector<int> functionColumns;
    for (std::size_t c = 0; c < count; ++c) {
        if (columns.roles[c] == PinColumn::Number) numberColumns.push_back(static_cast<int>(c));
        if (columns.roles[c] == PinColumn::Name) nameColumns.push_back(static_cast<int>(c));
        if (columns.roles[c] == PinColumn::Function) functionColumns.push_back(static_cast<int>(c));
    }
    if (nameColumns.empty() && functionColumns.empty()) return pins;
    if (isDrawnPackage(grid, table, numberColumns)) return pins;
    bool const numbered = !numberColumns.empty();
    if (!numbered) numberColumns.push_back(-1);
    bool const sideBySide = nameColumns.size() > 1 && nameColumns.size() == numberColumns.size();
    bool const severalPackages = !sideBySide && numberColumns.size() > 1;

    auto const textAt = [&](int row, int column) -> std::string {
        if (column < 0) return {};
        auto const* cell = grid.at(row, column);
        return cell == nullptr || isBlank(cell->text) ? std::string{} : cell->text;
    };
    // The same numbers in every package's column: printed once, as it were.
    auto const sameInAll = [&](int row) {
        auto const first = pinNumbers(textAt(row, numberColumns.front()));
        return !first.empty() && std::all_of(numberColumns.begin(), numberColumns.end(), [&](int column) { return pinNumbers(textAt(row, column)) == first; });
    };
    auto const unnumbered = [&](int row) { return std::all_of(numberColumns.begin(), numberColumns.end(), [&](int column) { return textAt(row, column).empty(); }); };
    std::string heading;  // of a line over the whole table: a package
    std::size_t firstOfRow = 0;
    for (int row = std::max(0, table.headRows); row < grid.rows(); ++row) {
        auto const* whole = grid.at(row, 0);
        if (whole != nullptr && whole->columnSpan >= grid.columns() && grid.columns() > 1) {
            heading = whole->text;
            continue;
        }
        std::size_t const before = pins.size();
        std::string rowFunction;
        bool anyName = false;
        bool anyNumber = false;
        for (std::size_t k = 0; k < numberColumns.size(); ++k) {
            int const nameColumn = nameColumns.empty() ? -1 : sideBySide ? nameColumns[k] : nameColumns.front();
            int functionColumn = functionColumns.empty() ? -1 : functionColumns.front();
            if (sideBySide) functionColumn = functionColumns.size() == nameColumns.size() ? functionColumns[k] : -1;
            auto name = textAt(row, nameColumn);
            auto function = textAt(row, functionColumn);
            for (std::size_t f = 1; f < functionColumns.size() && !sideBySide; ++f) {
                auto more = textAt(row, functionColumns[f]);
                if (more.empty() || more == function) continue;
                if (!function.empty()) function += ' ';
                function += more;
            }
            if (nameColumn < 0) name = std::exchange(function, {});
            rowFunction = function;
            anyName = anyName || !name.empty();
            auto const numberText = textAt(row, numberColumns[k]);
            auto numbers = pinNumbers(numberText);
            anyNumber = anyNumber || !numberText.empty();
            // A pad is a pin of every package, numbered or not.
            bool const pad = numbered && k == 0 && isPad(name) && unnumbered(row);
            if (numbers.empty() && !name.empty() && (!numbered || pad)) numbers.emplace_back();
            if (name.empty() && function.empty()) continue;
            model::Rect box;
            for (int const column : {numberColumns[k], nameColumn, functionColumn}) {
                if (column < 0) continue;
                if (auto const* cell = grid.at(row, column)) box = model::united(box, cell->box);
            }
            bool const alike = severalPackages && (sameInAll(row) || pad);
            if (alike && k > 0) continue;
            auto names = pinNamesFor(name, numbers.size());
            for (std::size_t n = 0; n < numbers.size(); ++n) {
                model::Pin pin{std::move(numbers[n]), withoutMarks(std::move(names[n])), function, {}, table.page, box};
                if (severalPackages && !alike) pin.package = columns.packages[static_cast<std::size_t>(numberColumns[k])];
                else if (!severalPackages && !heading.empty()) pin.package = heading;
                // A merged number cell gives its pin once.
                bool const again = std::any_of(pins.begin() + static_cast<std::ptrdiff_t>(firstOfRow), pins.end(), [&pin](auto const& known) {
                    return known.number == pin.number && known.package == pin.package && known.name == pin.name && !pin.number.empty();
                });
                if (!again) pins.push_back(std::move(pin));
            }
        }
        if (pins.size() > before) {
            firstOfRow = before;
        } else if (!anyNumber && !rowFunction.empty() && !anyName && firstOfRow < pins.size()) {
            for (std::size_t i = firstOfRow; i < pins.size(); ++i) {
                if (!pins[i].function.empty()) pins[i].function += ' ';
                pins[i].function += rowFunction;
            }
        }
    }
    return pins;
}

}  // namespace standin::pins

// The rows of all tables of a datasheet in document order, each as one printed
// line of text, with what was read out of it.
//
//     PrintedRows rows(sheet);
//     rows[rows.ofParameter(7)].text      // "Overcharge detection voltage | VCU | 4.25 | V"
#pragma once

#include <cstdint>
#include <map>
#include <string>
#include <vector>

#include "compare/text_keys.h"
#include "model/datasheet.h"

namespace standin::compare {

struct PrintedRow {
    int table = 0;  // index into Datasheet::tables
    int row = 0;
    int page = 0;
    model::Rect box;
    std::string text;  // cells that begin in this row, joined by " | ", leader dots behind their cell
    Key key = 0;       // of the cells' texts without joints
    bool head = false;
    std::vector<int> parameters;  // indices into Datasheet::parameters
    bool read = false;            // became parameters, a pin or an ordering line: compared there
};

class PrintedRows {
public:
    explicit PrintedRows(model::Datasheet const& sheet);

    [[nodiscard]] std::vector<PrintedRow> const& all() const { return m_rows; }
    [[nodiscard]] std::size_t size() const { return m_rows.size(); }
    [[nodiscard]] PrintedRow const& operator[](int index) const { return m_rows[static_cast<std::size_t>(index)]; }
    // Index of the row a parameter stands in, or -1 (lists outside of tables).
    [[nodiscard]] int ofParameter(int parameter) const { return m_ofParameter[static_cast<std::size_t>(parameter)]; }
    // Index of the table row at a place, or -1.
    [[nodiscard]] int at(int page, model::Rect const& box) const;
    // Sorted tokens of the row, made when first asked for.
    [[nodiscard]] std::vector<Key> const& tokens(int index) const;
    [[nodiscard]] std::vector<Key> keys() const;

private:
    void addTable(model::Table const& table, int index);
    void attachParameters(model::Datasheet const& sheet);
    void markRead(int page, model::Rect const& box);

    std::vector<PrintedRow> m_rows;
    std::vector<int> m_ofParameter;
    std::map<int, std::vector<int>> m_ofPage;
    std::vector<std::pair<int, int>> m_ofTable;  // first row and one past the last, by table
    mutable std::vector<std::vector<Key>> m_tokens;
};

// The same name, symbol, condition of the line, values and unit, letter by letter. Version,
// condition of the table, kind and meaning may differ.
[[nodiscard]] bool printAlike(model::Parameter const& a, model::Parameter const& b);

}  // namespace standin::compare

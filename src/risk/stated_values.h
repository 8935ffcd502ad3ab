// What one sheet states about a parameter, for working with it: the printed rows
// of one vocabulary id brought together over their conditions.
//
//     StatedValues values(sheet, "", vocabulary);
//     auto detection = values.find("overcharge-detect-voltage", Scope::OverTemperature);
//     detection.limits.hi      // of the row over temperature, of the 25 °C row where no other is printed
#pragma once

#include <cstdint>
#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "model/comparison.h"
#include "model/datasheet.h"
#include "quantity/dimension.h"
#include "quantity/limits.h"
#include "vocabulary/vocabulary.h"

namespace standin::risk {

// Rows that hold at room temperature, or over the widest range that is printed.
enum class Scope : std::uint8_t { Room, OverTemperature };

struct StatedValue {
    quantity::Limits limits;  // empty: nothing to work with
    quantity::Dimension dimension;
    std::string unit;  // coherent
    std::vector<model::Input> inputs;
    bool overTemperature = false;  // rows over a range of temperature were taken
    int rows = 0;                  // that were brought together; more than one gives an outer bound
    std::string version;           // that the rows are printed for; empty: for all, as far as they say, or for the chosen one
    bool ofSeveralParts = false;   // tables print it with other limits under the same conditions: versions that no title names
    std::string why;               // of empty limits, in words: "several versions are printed"
};

class StatedValues {
public:
    // `variant`: the chosen version as printed, or empty. All must outlive this.
    StatedValues(model::Datasheet const& sheet, std::string_view variant, vocabulary::Vocabulary const& vocabulary);

    // Rows without limits count only where no row of the parameter has any; rows of several
    // versions, of which none was chosen, give nothing; so do values that refer to a node.
    [[nodiscard]] StatedValue find(std::string_view canonical, Scope scope) const;
    [[nodiscard]] bool states(std::string_view canonical) const { return m_rows.find(canonical) != m_rows.end(); }
    [[nodiscard]] bool hasOverTemperature(std::string_view canonical) const;

    // True where a value was recognised in a picture of the sheet.
    [[nodiscard]] bool isRecognised(model::Input const& input) const;

    // Every row of a parameter that holds for the chosen version, in document order.
    [[nodiscard]] std::vector<model::Parameter const*> const& rows(std::string_view canonical) const;
    // What the sheet says of a feature; null: not stated. Where it says several things, `worst`
    // if it is among them, else the first.
    [[nodiscard]] model::Feature const* feature(std::string_view canonical, std::string_view worst = {}) const;
    // Do lines of the ordering table give the feature several states, of which none was selected?
    [[nodiscard]] bool differsByVersion(std::string_view canonical) const;

private:
    model::Datasheet const& m_sheet;
    vocabulary::Vocabulary const& m_vocabulary;
    std::map<std::string_view, std::vector<model::Parameter const*>> m_rows;
    bool m_chosen = false;  // a version
};

// "4.255 / 4.280 / 4.305 V": as printed, a dash for what is not.
[[nodiscard]] std::string printedValues(model::Parameter const& row);

}  // namespace standin::risk

// What pairing weighs of a row, worked out once: its names, version, conditions and numbers.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "compare/conditions.h"
#include "compare/printed_rows.h"
#include "compare/text_keys.h"
#include "compare/variant_words.h"
#include "model/datasheet.h"
#include "quantity/decimal.h"

namespace standin::compare {

struct ParameterProfile {
    std::string symbol;
    std::string name;
    std::vector<Key> nameTokens;
    VariantWords variant;
    bool namesVariant = false;  // printed, not meant
    std::string dimension;
    bool conditionInValues = false;                           // "(7 ≤ VIN ≤ 25)" in the value columns of a line
    StatedConditions const* conditions = nullptr;             // taken apart once, related with many; of the memo
    std::optional<model::Interval> grade;                     // the range of temperatures that its table holds for
    std::array<std::optional<quantity::Decimal>, 3> numbers;  // min, typ, max as far as they are numbers
    int row = -1;
    int placeInRow = 0;
};

// The numbers printed in either row, and those that stand in both, in the same column.
struct Agreement {
    int printed = 0;
    int agreeing = 0;
    [[nodiscard]] double share() const { return printed == 0 ? 0 : static_cast<double>(agreeing) / printed; }
    [[nodiscard]] bool full() const { return printed > 0 && agreeing == printed; }
};

[[nodiscard]] Agreement agreementOf(ParameterProfile const& reference, ParameterProfile const& candidate);

// `index`: of the row among the parameters of its sheet.
[[nodiscard]] ParameterProfile profileOf(model::Parameter const& p, VariantWords variant, PrintedRows const& rows, int index, ConditionMemo& memo);

[[nodiscard]] VariantRelation relateVersions(ParameterProfile const& reference, ParameterProfile const& candidate);

// What the rows of one parameter have in common within a sheet.
[[nodiscard]] std::string kinOf(model::Parameter const& p, ParameterProfile const& profile);

}  // namespace standin::compare

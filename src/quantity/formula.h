// Formulas over named limits, as the vocabulary's data state them.
//
//     auto formula = Formula::parse("voltage / (circuit.resistance + or(circuit.link, 0 Ω))");
//     auto result = formula->evaluate([&](std::string_view name) -> Operand { … });
//     result.limits.hi      // missing while circuit.resistance states no minimum
//
// Names: lower case, digits, "-", "_" and "."; a minus stands between blanks.
// Numbers may carry a unit. Operators + - * / and brackets. Functions:
//   abs(x) square(x) plusminus(x)
//   lower(x), upper(x)     one bound by itself, as an exact value
//   first(x, y, …)         the first that states anything
//   or(x, 0 A)             x; where nothing is stated the number, with a note
//   ifover(x, 100 V)       x where no stated value is smaller; else it counts as not stated
//   atleast(x, 0 Ω)        x; where nothing is stated something unknown from the number upward
#pragma once

#include <cstddef>
#include <cstdint>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "model/result.h"
#include "quantity/dimension.h"
#include "quantity/limits.h"

namespace standin::quantity {

// What stands behind a name.
struct Operand {
    Limits limits;  // empty: not stated
    Dimension dimension;
};

using Lookup = std::function<Operand(std::string_view name)>;

struct Evaluated {
    Limits limits;
    Dimension dimension;
    std::vector<std::string> used;     // names that took part, each once, in order
    std::vector<std::string> missing;  // names without which nothing, or one bound, could be worked out
    std::vector<std::string> assumed;  // names of or() and atleast() that were not stated
    bool repeated = false;             // a name took part twice: an outer bound
    std::string refused;               // dimensions that do not fit, in words; then there are no limits
};

class Formula {
public:
    // Usage errors say what is wrong and where.
    [[nodiscard]] static model::Result<Formula> parse(std::string_view text);

    // Every name, each once, in order.
    [[nodiscard]] std::vector<std::string> names() const;

    [[nodiscard]] Evaluated evaluate(Lookup const& lookup) const;

private:
    enum class Kind : std::uint8_t { Number, Name, Add, Subtract, Multiply, Divide, Abs, Square, PlusMinus, Lower, Upper, First, Or, AtLeast, IfOver };
    struct Node {
        Kind kind = Kind::Number;
        std::string name;
        Operand number;
        std::vector<std::size_t> inputs;  // indices of earlier nodes
    };
    class Parser;
    class Evaluator;

    std::vector<Node> m_nodes;  // the last one is the whole formula
};

}  // namespace standin::quantity

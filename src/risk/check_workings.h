// What the checks of cell_checks.cpp are made of: values taken from the sheet and from
// the user's files, each remembered as an input of the check at hand, and results.
//
//   auto const limit = given("cell.protection_max", &Limits::hi);
//   if (!limit) return open(MissingIn::Files, m_open);
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "quantity/decimal.h"
#include "quantity/limits.h"
#include "risk/cell_checks.h"
#include "risk/stated_values.h"
#include "risk/work_out.h"

namespace standin::risk {

using Bound = std::optional<quantity::Decimal>;

class CheckWorkings {
public:
    // All three are borrowed and must outlive this.
    CheckWorkings(StatedValues const& values, Surroundings const& around, vocabulary::Vocabulary const& vocabulary)
        : m_values(values), m_around(around), m_vocabulary(vocabulary) {}

protected:
    // --- Results. ---

    [[nodiscard]] static PartCheck holds(std::string value);
    [[nodiscard]] static PartCheck violated(std::string value, std::string why, int level);
    [[nodiscard]] static PartCheck open(MissingIn where, std::string why, std::string value = {});
    [[nodiscard]] static PartCheck notInSheet(std::string_view what, std::string_view why);
    // An open check whose reason is what a derived quantity lacks.
    [[nodiscard]] static PartCheck openFor(WorkedOut const& result, std::string_view what, std::string value = {});
    [[nodiscard]] static std::string by(quantity::Decimal amount, std::string_view unit);

    // --- Values. ---

    // A bound of a given value in its coherent unit; without it m_open says so.
    [[nodiscard]] Bound given(std::string_view name, Bound quantity::Limits::*bound);
    [[nodiscard]] bool isGiven(std::string_view name) const;
    // Over temperature where it is printed so.
    [[nodiscard]] StatedValue stated(std::string_view canonical);
    [[nodiscard]] WorkedOut derived(std::string_view id);
    void addInput(model::Input input);
    // What holds by a value that was recognised in a picture is open: nothing such is believed.
    void doubtRecognised(PartCheck& check) const;

    // --- What a bench result has to keep to. ---

    enum class Edge : std::uint8_t { Holds, Fails };  // a value that lies at the bound itself
    struct BenchBound {
        Bound value;
        Edge edge = Edge::Holds;
    };
    // In a coherent unit; a bound with more digits than anybody measures is rounded
    // to the stricter side.
    void keepTo(std::string_view quantity, BenchBound least, BenchBound most, std::string_view unit);

    StatedValues const& m_values;
    Surroundings const& m_around;
    vocabulary::Vocabulary const& m_vocabulary;
    std::string m_limit;                // of the check at hand, in words
    std::optional<model::CheckBounds> m_bounds;  // of the check at hand
    std::vector<model::Input> m_inputs;  // of the check at hand, each once
    std::string m_open;                 // what the last given() lacked
};

}  // namespace standin::risk

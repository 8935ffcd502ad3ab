// One quantity of the vocabulary's derived ones, worked out for one part.
//
//     Surroundings const around{.cell = &cell, .circuit = &circuit};
//     auto const current = workOut(entry, values, around, Scope::Room);
//     current.limits.hi       // in entry.unit; missing where an input leaves it open
#pragma once

#include <string>
#include <vector>

#include "risk/cell_profile.h"
#include "risk/circuit.h"
#include "risk/stated_values.h"
#include "vocabulary/vocabulary.h"

namespace standin::risk {

// What is known beside the sheets; null: not given.
struct Surroundings {
    CellProfile const* cell = nullptr;
    Circuit const* circuit = nullptr;

    // "cell.capacity", "circuit.load_current". Null: not given.
    [[nodiscard]] GivenValue const* find(std::string_view name) const;
};

struct WorkedOut {
    quantity::Limits limits;  // in the entry's unit, not rounded; empty: could not be worked out
    std::vector<model::Input> inputs;
    std::vector<std::string> missing;      // names whose absence left all or one bound open
    std::vector<std::string> notes;        // how the result is to be read
    bool overTemperature = false;
    bool fromSheet = false;                // at least one input stands in the sheet
    [[nodiscard]] bool computed() const { return !limits.empty() && fromSheet && inputs.size() > 1; }
};

[[nodiscard]] WorkedOut workOut(vocabulary::DerivedEntry const& entry, StatedValues const& values, Surroundings const& around, Scope scope);

// Over temperature where every input that the sheet states is stated so: limits
// of different scope are not mixed.
[[nodiscard]] Scope scopeFor(vocabulary::DerivedEntry const& entry, StatedValues const& values);

// Rounded outward to four digits, as shown.
[[nodiscard]] model::WorkedValue shown(WorkedOut const& result, std::string const& unit);

}  // namespace standin::risk

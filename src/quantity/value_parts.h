// How a printed value falls into parts; shared by cell.cpp and condition.cpp,
// nobody else needs it.
//
// An atom is one number with its unit, or an expression of a node: "4.28V",
// "VDD-0.3", "0.7×VDD", "4R7". Texts are folded (text::foldForComparison).
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "quantity/cell.h"

namespace standin::quantity {

struct Atom {
    Decimal value;            // as printed, or in the coherent unit where `unit` is set
    std::string node;         // "VDD"; empty: absolute
    bool ratio = false;       // value × node
    std::optional<Unit> unit; // the unit printed with it
    std::string numberText;   // without unit
    std::string unitText;
    std::string note;
};

// The whole of `folded` as one atom. `expected` is a coherent unit or empty.
[[nodiscard]] std::optional<Atom> parseAtom(std::string_view folded, ValueContext const& context);

// A cheap test: false where no part of `folded` is an atom. Without a digit an atom
// is a known node, or one that begins with V.
[[nodiscard]] bool mayHoldAtom(std::string_view folded, ValueContext const& context);

struct TextRange {
    std::string_view lower;
    std::string_view upper;
};

// "A to B", "A~B", "A...B", "A-B": where both sides are atoms. The dash is a range
// only behind a number.
[[nodiscard]] std::optional<TextRange> splitRange(std::string_view folded, ValueContext const& context);

// "-", "—", "N/A", blank: a cell without a value.
[[nodiscard]] bool isBlankMark(std::string_view folded);

// Footnote marks and remarks in brackets at the end taken off ("2 kV (HBM)",
// "4.25¹"); `remark` receives what was in the brackets.
[[nodiscard]] std::string_view withoutRemark(std::string_view folded, std::string& remark);

}  // namespace standin::quantity

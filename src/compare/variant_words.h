// Which orderable versions, columns or packages a value is printed for, and whether
// two sheets mean one of them.
//
//     relateVariants(variantWords("LQ20A, LQ20B"), variantWords("LQ20B/LQ21"))   ->  Shares
//     relateVariants(variantWords("QX7 -40 °C to +85 °C"), variantWords("Tamb -40 to +85"))  ->  Shares
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace standin::compare {

struct VariantWords {
    std::string key;                  // the whole, folded; empty: none
    std::vector<std::string> codes;   // folded words with a letter and a digit, sorted
    std::vector<std::string> numbers; // digits that stand alone with their minus sign, sorted
};

enum class VariantRelation : std::uint8_t { Same, Shares, OneUnstated, Apart };

[[nodiscard]] VariantWords variantWords(std::string_view printed);

// Codes decide where both have some that could be met; else the numbers that stand
// alone (temperatures, voltages of a column). Symmetric.
[[nodiscard]] VariantRelation relateVariants(VariantWords const& reference, VariantWords const& candidate);

}  // namespace standin::compare

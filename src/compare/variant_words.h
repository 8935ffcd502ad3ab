// Which orderable versions, columns or packages a value is printed for, and whether
// two sheets mean one of them.
//
//     relateVariants(variantWords("LQ20A, LQ20B"), variantWords("LQ20B/LQ21"))   ->  Shares
//     relateVariants(variantWords("QX7 -40 °C to +85 °C"), variantWords("Tamb -40 to +85"))  ->  Shares
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace standin::compare {

struct VariantWords {
    std::string key;                   // the whole, folded; empty: none
    std::vector<std::string> codes;    // folded words with a letter and a digit, and those of "LQ20A, B" in full; sorted
    std::vector<std::string> numbers;  // digits that stand alone with their minus sign, sorted
    struct Temperatures {
        int lo = 0;  // °C
        int hi = 0;  // the same: one temperature
        bool operator==(Temperatures const&) const = default;
    };
    std::vector<std::string> nominals;         // "output-voltage=5", set by VersionNaming: what the version is made for
    std::optional<Temperatures> temperatures;  // that the column is headed by; their numbers are in `numbers` too
};

// Meets: the hot end of the other's range ("+85 °C", "-40 to +85 °C"; "-55 to 125 °C", "-40 to
// 125 °C"), where nearly all limits of a range come from: not one condition, but values that stand for one another.
enum class VariantRelation : std::uint8_t { Same, Shares, Meets, OneUnstated, Apart };

// A code or the name of a version in one spelling: case, spaces, hyphens, brackets and marks of notes make
// no difference, "+" and a last "S" do.
[[nodiscard]] std::string codeKey(std::string_view printed);

[[nodiscard]] VariantWords variantWords(std::string_view printed);

// `family` has open places, at which `code` goes on: "xq20_c" and "xq78xx" stand for "xq204c-tr" and "xq7805".
[[nodiscard]] bool standsForCode(std::string_view family, std::string_view code);

// Codes decide where both have some that could be met ("LQ20" stands for "LQ" there,
// as families are named); then what the versions are made for; else the numbers that stand alone (temperatures, voltages of
// a column). Symmetric.
[[nodiscard]] bool codesMeet(std::vector<std::string> const& reference, std::vector<std::string> const& candidate);
[[nodiscard]] VariantRelation relateVariants(VariantWords const& reference, VariantWords const& candidate);

}  // namespace standin::compare

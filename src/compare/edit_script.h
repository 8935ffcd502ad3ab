// The shortest way from one list of tokens to another. The only user of dtl.
//
//     for (Edit const& edit : editScript(referenceKeys, candidateKeys)) …
//     wordEdits("Tie it to VSS.", "Tie it to VDD.")   // keep "Tie it to ", remove "VSS", insert "VDD", keep "."
#pragma once

#include <cstdint>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "compare/text_keys.h"

namespace standin::compare {

enum class EditKind : std::uint8_t { Keep, Remove, Insert };

// `count` tokens: Keep from reference[reference …] = candidate[candidate …],
// Remove from reference, Insert from candidate. Positions are counted here and
// hold for lists of any length.
struct Edit {
    EditKind kind = EditKind::Keep;
    std::uint32_t reference = 0;
    std::uint32_t candidate = 0;
    std::uint32_t count = 0;
    bool operator==(Edit const&) const = default;
};

// Keep and Remove runs in order give the reference, Keep and Insert runs the
// candidate. Lists longer than `kEditWindow` are compared window by window, so
// that time and memory stay bounded; the script then need not be the shortest.
inline constexpr std::size_t kEditWindow = 2000;
[[nodiscard]] std::vector<Edit> editScript(std::span<Key const> reference, std::span<Key const> candidate);

struct WordEdit {
    EditKind kind = EditKind::Keep;
    std::string text;  // words with the white space behind them, as printed
    bool operator==(WordEdit const&) const = default;
};

// Word by word and byte for byte: the Keep and Insert texts one after the other
// are the candidate, the Keep and Remove texts the reference.
[[nodiscard]] std::vector<WordEdit> wordEdits(std::string_view reference, std::string_view candidate);

}  // namespace standin::compare

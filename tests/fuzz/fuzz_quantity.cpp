// Any text through the parsers of numbers, values and conditions. Positions
// must lie inside the text, in order, and the two ways of counting agree.
#include <cstddef>
#include <cstdint>
#include <string_view>

#include "quantity/cell.h"
#include "quantity/condition.h"
#include "quantity/numbers.h"

extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* bytes, std::size_t size) {
    using namespace standin::quantity;
    constexpr std::size_t kLargest = 4096;
    if (size > kLargest) return 0;
    std::string_view const text(reinterpret_cast<char const*>(bytes), size);
    std::size_t end = 0;
    auto const spans = findNumbers(text);
    for (auto const& span : spans) {
        if (span.begin < end || span.end <= span.begin || span.end > text.size()) __builtin_trap();
        end = span.end;
    }
    if (countNumbers(text) != spans.size()) __builtin_trap();
    for (auto const& quantity : findQuantities(text)) {
        if (quantity.begin > quantity.end || quantity.end > text.size()) __builtin_trap();
    }
    [[maybe_unused]] auto const value = parseValue(text);
    [[maybe_unused]] auto const cell = splitValueCell(text);
    [[maybe_unused]] auto const parts = parseCondition(text);
    return 0;
}

// Foreign JSON and CBOR: whatever is accepted must survive a round trip.
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "model/datasheet_json.h"

extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* bytes, std::size_t size) {
    using namespace standin::model;
    constexpr std::size_t kLargest = 1 << 20;
    if (size > kLargest) return 0;
    auto const fromText = datasheetFromJson({reinterpret_cast<char const*>(bytes), size}, "fuzz");
    if (fromText && !datasheetFromJson(toJson(*fromText), "fuzz")) __builtin_trap();
    auto const fromBinary = datasheetFromCbor(std::vector<std::uint8_t>(bytes, bytes + size), "fuzz");
    if (fromBinary && !datasheetFromCbor(toCbor(*fromBinary), "fuzz")) __builtin_trap();
    return 0;
}

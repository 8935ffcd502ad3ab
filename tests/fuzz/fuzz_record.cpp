// Foreign records, and foreign bodies of entries behind the wall that signatures
// are: whatever is accepted must come back with the same bytes.
#include <cstddef>
#include <cstdint>
#include <string_view>

#include <nlohmann/json.hpp>

#include "record/entry_json.h"
#include "record/record.h"
#include "record/record_text.h"
#include "record/rules.h"

namespace {

using namespace standin::record;

SigningKey const& fuzzKey() {
    static SigningKey const key = std::move(*SigningKey::create("Fuzz"));
    return key;
}

// Lines of a record are read with a bounded nesting; so are bodies here.
bool nestsDeeply(std::string_view text) {
    constexpr int kDeepest = 30;
    int depth = 0;
    for (char const c : text) {
        depth += c == '[' || c == '{' ? 1 : c == ']' || c == '}' ? -1 : 0;
        if (depth > kDeepest) return true;
    }
    return false;
}

void tryBodies(std::string_view text) {
    constexpr std::size_t kLargest = 1 << 14;
    if (text.size() > kLargest || nestsDeeply(text)) return;
    auto const json = nlohmann::json::parse(text, nullptr, false);
    if (!json.is_object()) return;
    for (char const* kind : {"opened", "decided", "carried", "result", "signed", "merged", "superseded", "distributed"}) {
        auto body = bodyOf(kind, json);
        if (!body) continue;
        auto const entry = signedEntry({{}, 1, "2031-05-04T09:30:00Z", *std::move(body)}, fuzzKey());
        if (!entry) continue;
        auto const again = parseEntry(entry->line);
        if (!again || again->hash != entry->hash) __builtin_trap();
    }
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* bytes, std::size_t size) {
    constexpr std::size_t kLargest = 1 << 20;
    if (size > kLargest) return 0;
    std::string_view const text(reinterpret_cast<char const*>(bytes), size);
    if (auto const record = parseRecord(text)) {
        if (toText(*record) != text) __builtin_trap();
        if (obeysRules(*record)) static_cast<void>(recordText(*record));
    }
    tryBodies(text);
    return 0;
}

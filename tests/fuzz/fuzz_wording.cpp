// Two texts (split at the first newline) through classification and the edit
// script. The script must rebuild both texts; exchanging them mirrors.
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>

#include "compare/edit_script.h"
#include "compare/wording_classes.h"

extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* bytes, std::size_t size) {
    using namespace standin::compare;
    constexpr std::size_t kLargest = 4096;
    if (size > kLargest) return 0;
    std::string_view const all(reinterpret_cast<char const*>(bytes), size);
    auto const newline = all.find('\n');
    auto const reference = all.substr(0, newline);
    auto const candidate = newline == std::string_view::npos ? std::string_view{} : all.substr(newline + 1);
    std::string rebuiltReference;
    std::string rebuiltCandidate;
    for (auto const& edit : wordEdits(reference, candidate)) {
        if (edit.kind != EditKind::Insert) rebuiltReference += edit.text;
        if (edit.kind != EditKind::Remove) rebuiltCandidate += edit.text;
    }
    if (rebuiltCandidate != candidate || rebuiltReference.size() != reference.size()) __builtin_trap();
    WordingContext const context;
    if (classify(reference, candidate, context).relation != classify(candidate, reference, context).relation) __builtin_trap();
    return 0;
}

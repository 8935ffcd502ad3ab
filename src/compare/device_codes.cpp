// Tested by tests/src/compare/device_codes_test.cpp.
#include "compare/device_codes.h"

#include <algorithm>

#include "text/fold.h"
#include "text/utf8.h"

namespace standin::compare {

namespace {

constexpr std::size_t kShortest = 5;
constexpr std::size_t kLongest = 40;
constexpr std::ptrdiff_t kFewestDigits = 3;

// Lower case without hyphens; empty: no code.
std::string codeKey(std::string_view printed) {
    // Most first cells are names, and asked for often.
    if (printed.size() < kShortest || printed.size() > kLongest || !text::isAsciiLetter(printed.front()) || printed.find(' ') != std::string_view::npos) return {};
    std::string key = text::asciiLower(printed);
    std::erase(key, '-');
    bool const signs = std::all_of(key.begin(), key.end(), [](char c) { return text::isAsciiLetter(c) || text::isAsciiDigit(c); });
    auto const digits = std::count_if(key.begin(), key.end(), text::isAsciiDigit);
    return signs && key.size() >= kShortest && digits >= kFewestDigits && text::isAsciiLetter(key.front()) ? key : std::string();
}

bool goOn(std::string_view a, std::string_view b) { return a.size() <= b.size() ? b.substr(0, a.size()) == a : a.substr(0, b.size()) == b; }

bool differInOneSign(std::string_view a, std::string_view b) {
    if (a.size() != b.size()) return false;
    int differing = 0;
    for (std::size_t i = 0; i < a.size(); ++i) differing += a[i] != b[i] ? 1 : 0;
    return differing == 1;
}

std::vector<std::string> keysOf(std::vector<std::string> const& printed) {
    std::vector<std::string> keys;
    for (std::string const& text : printed) {
        if (std::string key = codeKey(text); !key.empty()) keys.push_back(std::move(key));
    }
    std::sort(keys.begin(), keys.end());
    keys.erase(std::unique(keys.begin(), keys.end()), keys.end());
    return keys;
}

// A key that goes on with `key`, or that it goes on with.
bool meets(std::vector<std::string> const& keys, std::string const& key) {
    auto const next = std::lower_bound(keys.begin(), keys.end(), key);
    if (next != keys.end() && goOn(*next, key)) return true;
    for (std::size_t length = kShortest; length < key.size(); ++length) {
        if (std::binary_search(keys.begin(), keys.end(), key.substr(0, length))) return true;
    }
    return false;
}

}  // namespace

DeviceCodes::DeviceCodes(std::vector<std::string> const& reference, std::vector<std::string> const& candidate) : m_reference(keysOf(reference)), m_candidate(keysOf(candidate)) {}

bool DeviceCodes::areOthers(std::string_view reference, std::string_view candidate) const {
    std::string const r = codeKey(reference);
    std::string const c = codeKey(candidate);
    if (r.empty() || c.empty() || goOn(r, c) || differInOneSign(r, c)) return false;
    return meets(m_candidate, r) || meets(m_reference, c);
}

}  // namespace standin::compare

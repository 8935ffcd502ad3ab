// Fields are joined by a byte that no printed text holds (U+001F).
//
// Tested by tests/src/compare/finding_id_test.cpp.
#include "compare/finding_id.h"

#include <string>
#include <unordered_map>
#include <vector>

#include <fmt/format.h>

#include "model/crew.h"
#include "model/digest.h"
#include "model/names.h"

namespace standin::compare {

namespace {

constexpr std::size_t kDigits = 12;

std::string contentOf(model::Finding const& finding) {
    std::string content(model::nameOf(finding.kind));
    auto add = [&](std::string_view field) {
        content += '\x1f';
        content += field;
    };
    add(finding.canonical);
    add(finding.variant);
    for (auto const* side : {&finding.reference, &finding.candidate}) add(*side ? std::string_view((*side)->condition) : std::string_view());
    for (auto const* side : {&finding.reference, &finding.candidate}) add(*side ? std::string_view((*side)->text) : std::string_view());
    return content;
}

}  // namespace

void nameFindings(std::vector<model::Finding>& findings) {
    std::unordered_map<std::string, int> seen;
    std::vector<std::string> contents;
    contents.reserve(findings.size());
    for (auto const& finding : findings) {
        std::string& content = contents.emplace_back(contentOf(finding));
        int const ordinal = seen[content]++;
        content += fmt::format("\x1f{}", ordinal);
    }
    model::inParts(findings.size(), [&](std::size_t first, std::size_t last) {
        for (std::size_t i = first; i < last; ++i) findings[i].id = model::sha256Hex(contents[i]).substr(0, kDigits);
    });
}

}  // namespace standin::compare

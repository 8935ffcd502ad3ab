// Package names and their synonyms. Private to this folder and to those that
// have to tell a package name from other words (pins/, ordering/).
//
//     findPackageName("NX123-SOT23-5L")  ->  {6, 14, "SOT-23-5", 5}
//     findPackageName("8-lead SOIC")     ->  {0, 11, "SO-8", 8}
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace standin::packages {

struct PackageName {
    std::size_t begin = 0;  // bytes of the text that name it
    std::size_t end = 0;
    std::string canonical;    // "SOT-23-5"
    std::optional<int> pins;  // leads, where the name tells them
};

// The first package name in a short text (a word, a title, a few words of a
// line). A family that comes with several lead counts ("DIP", "SOIC") needs its
// count: in the name, in brackets behind it, or as "8-lead" in front of it.
// Linear in the text.
[[nodiscard]] std::optional<PackageName> findPackageName(std::string_view text);

// A cheap test that spares the search: false where no name begins in `word`, which
// `next` stands behind on its line, neither with its letters nor with its count.
[[nodiscard]] bool mayBeginPackageName(std::string_view word, std::string_view next);

}  // namespace standin::packages

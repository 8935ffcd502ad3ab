// Package names ("SOT-23-6", "8-lead SOIC") wherever they are printed.
#pragma once

#include <span>
#include <vector>

#include "model/datasheet.h"
#include "model/page_layout.h"

namespace standin::packages {

// One entry for each canonical name, at its most telling place (package section,
// then ordering, then the first mention).
[[nodiscard]] std::vector<model::Package> readPackages(std::span<model::PageLayout const> pages, std::span<model::Section const> sections);

// "SOT-23-6" for "SOT23-6", "SOT-26", "sot 23-6L"; empty where not known.
[[nodiscard]] std::string canonicalPackage(std::string_view printed);

}  // namespace standin::packages

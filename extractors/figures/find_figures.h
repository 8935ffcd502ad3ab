// Figures: images and drawings with what is lettered inside them and their
// captions. Runs after tables and parameters, before the running text is read,
// so that lettering does not become sentences.
#pragma once

#include <span>
#include <vector>

#include "model/datasheet.h"
#include "model/page_layout.h"

namespace standin::figures {

// Every image and drawing of the pages, in document order, ids "f1", "f2" ….
// Words of owner None that stand inside one get the owner Figure (a caption
// stays with the text). Tables' areas are never figures.
[[nodiscard]] std::vector<model::Figure> findFigures(std::span<model::PageLayout> pages, std::span<model::Table const> tables,
                                                     std::span<model::Section const> sections);

}  // namespace standin::figures

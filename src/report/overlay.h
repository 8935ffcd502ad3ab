// A view for those who improve the reading: every page with what was understood
// drawn over it. One HTML file without network access or script; each layer can
// be switched off.
//
//     std::string const html = overlayHtml(sheet, pages, pictures);
//
// Layers: the page's picture, words by owner, numbers by owner, blocks, tables and
// their cells, the roles of cells in parameter rows, pins, figures, headings.
#pragma once

#include <span>
#include <string>

#include "model/datasheet.h"
#include "model/page_layout.h"
#include "model/page_picture.h"

namespace standin::report {

// `pages`: the layouts that `sheet` was read from, with their words' owners.
// `pictures` may be null: the words are written out instead of shown. A page that
// cannot be drawn has its words written out.
[[nodiscard]] std::string overlayHtml(model::Datasheet const& sheet, std::span<model::PageLayout const> pages, model::PagePictures* pictures);

}  // namespace standin::report

// Which text of a page may be lettering of a figure, and captions. Private to
// this folder.
#pragma once

#include <cstdint>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "model/datasheet.h"
#include "model/page_layout.h"

namespace standin::figures {

// How a line of text stands to drawings near it.
enum class LineUse : std::uint8_t {
    Free,     // short, may be lettering
    Running,  // a line of a paragraph or list: never lettering
    Caption,
    Heading,  // the heading of a section
    Owned,    // in a table, a parameter or a running head
};

// One use for each line of the page.
[[nodiscard]] std::vector<LineUse> usesOfLines(model::PageLayout const& page, std::span<model::Section const> sections);

struct Caption {
    std::string text;
    model::Rect box;
};

// Figure captions of the page ("Figure 3. Test circuit", "Fig. 2", "图1"), in
// reading order; those of tables are left out.
[[nodiscard]] std::vector<Caption> captionsOf(model::PageLayout const& page);

// True for text that begins as a figure's caption: a word for figure and a number.
[[nodiscard]] bool beginsCaption(std::string_view text);

}  // namespace standin::figures

// What a list or a drawing of pins is called on its page, where there are several.
// Private to this folder.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "model/datasheet.h"
#include "model/page_layout.h"

namespace standin::pins {

// The package name printed nearest above or below `box` (points), else the first
// words of the ruled frame that `box` stands in, else empty.
[[nodiscard]] std::string captionOf(model::PageLayout const& page, model::Rect const& box);

// The package name printed nearest, or empty.
[[nodiscard]] std::string packageNear(model::PageLayout const& page, model::Rect const& box);

// The short line centred nearest below or above, without what it has in brackets at
// its end ("FX2 (top view)"), or empty.
[[nodiscard]] std::string lineNear(model::PageLayout const& page, model::Rect const& box);

// The first words of the smallest frame of four rules around `box`, or empty.
[[nodiscard]] std::string frameCaption(model::PageLayout const& page, model::Rect const& box);

// A short line that heads or captions a drawing or table of the pins: "Figure 2: Pin
// connection (top view)", "Connection diagrams", "引脚排列"; no sentence.
[[nodiscard]] bool announcesPins(std::string_view line);

// Such lines of the page, down the page; none of a list of contents.
[[nodiscard]] std::vector<model::PlacedText> pinAnnouncements(model::PageLayout const& page);

}  // namespace standin::pins

// What a list or a drawing of pins is called on its page, where there are several.
// Private to this folder.
#pragma once

#include <string>

#include "model/page_layout.h"

namespace standin::pins {

// The package name printed nearest above or below `box` (points), else the first
// words of the ruled frame that `box` stands in, else empty.
[[nodiscard]] std::string captionOf(model::PageLayout const& page, model::Rect const& box);

// The package name printed nearest, or empty.
[[nodiscard]] std::string packageNear(model::PageLayout const& page, model::Rect const& box);

// The first words of the smallest frame of four rules around `box`, or empty.
[[nodiscard]] std::string frameCaption(model::PageLayout const& page, model::Rect const& box);

}  // namespace standin::pins

// Pictures as PNG, for HTML. The only user of libpng.
#pragma once

#include <string>

#include "model/page_picture.h"

namespace standin::report {

// The bytes of a PNG file: shades of grey where the picture has no colour, else
// RGB. The same picture gives the same bytes. Empty where the picture is empty.
[[nodiscard]] std::string pngOf(model::Picture const& picture);

// "data:image/png;base64,…" of the same.
[[nodiscard]] std::string pngDataUri(model::Picture const& picture);

}  // namespace standin::report

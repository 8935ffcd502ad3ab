// What of a sheet rests on character recognition, by its place.
//
//     if (model::isRecognised(sheet.coverage, side.page, side.box)) …
#pragma once

#include "model/datasheet.h"

namespace standin::model {

// True where a recognised word stands in `box` of `page`: nothing there is believed like print.
[[nodiscard]] bool isRecognised(Coverage const& coverage, int page, Rect const& box);

}  // namespace standin::model

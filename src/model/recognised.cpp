// Tested by tests/src/model/recognised_test.cpp.
#include "model/recognised.h"

#include <algorithm>

namespace standin::model {

namespace {

constexpr Points kShared = 0.3F;  // of the lower box: neighbouring lines may touch

}  // namespace

bool isRecognised(Coverage const& coverage, int page, Rect const& box) {
    return std::any_of(coverage.recognised.begin(), coverage.recognised.end(), [&](PlacedText const& line) {
        if (line.page != page || overlap(line.box.x0, line.box.x1, box.x0, box.x1) <= 0) return false;
        return overlap(line.box.y0, line.box.y1, box.y0, box.y1) > kShared * std::min(line.box.height(), box.height());
    });
}

}  // namespace standin::model

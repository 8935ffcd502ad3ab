// The limit strip: both intervals of a numeric finding on one axis. The
// reference is an open bracket, the candidate a solid bar, typical values are
// ticks, an unstated bound fades out, the hazardous side carries a mark.
#pragma once

#include <optional>
#include <string>

#include "model/comparison.h"

namespace standin::report {

// Positions from 0 (left end of the axis) to 1; none where not stated.
struct StripInterval {
    std::optional<double> lo, typ, hi;
    bool operator==(StripInterval const&) const = default;
};

struct LimitStrip {
    StripInterval reference;
    StripInterval candidate;
    model::HazardSide hazardSide = model::HazardSide::None;
};

// None where the two have nothing to draw or are not on one axis (another unit,
// another node).
[[nodiscard]] std::optional<LimitStrip> limitStrip(model::Interval const& reference, model::Interval const& candidate, model::HazardSide hazardSide);

// An <svg> element of 260 by 34 units; `label` is read out by screen readers.
[[nodiscard]] std::string limitStripSvg(LimitStrip const& strip, std::string const& label);

}  // namespace standin::report

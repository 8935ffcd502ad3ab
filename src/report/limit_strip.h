// The limit strip: both intervals of a numeric finding on one axis. The
// reference is an open bracket, the candidate a solid bar, typical values are
// ticks, an unstated bound is a pale end, the hazardous side carries an arrow.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

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

// The strip of a pair that has both; a null parameter has none.
[[nodiscard]] std::optional<LimitStrip> limitStrip(model::Parameter const* reference, model::Parameter const* candidate, model::HazardSide hazardSide);

// The drawing itself, the same for HTML and PDF: shapes on a field of kStripWidth
// by kStripHeight units, y down, to be painted in their order.
inline constexpr double kStripWidth = 260;
inline constexpr double kStripHeight = 34;

enum class StripPart : std::uint8_t {
    Frame,          // outline of the field of the axis
    ReferenceSpan,  // thin dotted line: how far the reference reaches
    Reference,      // thick line: brackets at its stated bounds, its typical value
    Candidate,      // filled: between what the candidate states
    CandidateOpen,  // filled pale: beyond, where a bound is not stated
    CandidateTick,  // line across the bar: its typical value
    HazardSide,     // filled arrow: the hazardous side
};

struct StripPoint {
    double x = 0;
    double y = 0;
};

struct StripShape {
    StripPart part = StripPart::Frame;
    std::vector<StripPoint> points;  // of a line; closed where the part is filled or an outline
};

[[nodiscard]] bool isClosed(StripPart part);
[[nodiscard]] std::vector<StripShape> shapesOf(LimitStrip const& strip);

// An <svg> element of the same field; `label` is read out by screen readers.
[[nodiscard]] std::string limitStripSvg(LimitStrip const& strip, std::string const& label);

}  // namespace standin::report

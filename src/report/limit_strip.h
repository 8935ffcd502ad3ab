// The limit strip: both intervals of a numeric finding on one axis. The
// reference is an open bracket, the candidate a solid bar, typical values are
// ticks, an unstated bound is a pale end, the hazardous side carries an arrow, a
// limit of the cell stands as a flag that points to the side that holds.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "model/comparison.h"

namespace standin::report {

// Positions from 0 (left end of the axis) to 1; none where not stated.
struct StripInterval {
    std::optional<double> lo, typ, hi;
    bool operator==(StripInterval const&) const = default;
};

enum class CellSide : std::uint8_t { Least, Most };  // which values hold: those above a least one, those below a most one

// A limit that the cell or the circuit sets for a parameter.
struct CellLimit {
    std::string value;  // decimal
    std::string unit;   // coherent SI, as in model::Interval
    CellSide side = CellSide::Most;
    bool boundFails = false;  // the value itself does not hold: above, not at least
    bool operator==(CellLimit const&) const = default;
};

// Of the cell checks of a comparison, for the parameter `canonical`; each once.
[[nodiscard]] std::vector<CellLimit> cellLimits(model::Comparison const& comparison, std::string_view canonical);

// "for the cell at least 4.2 V, below 4.28 V"; empty where there are none.
[[nodiscard]] std::string cellLimitsText(std::span<CellLimit const> limits);

struct StripFlag {
    double at = 0;  // from 0 to 1
    CellSide side = CellSide::Most;
    bool operator==(StripFlag const&) const = default;
};

struct LimitStrip {
    StripInterval reference;
    StripInterval candidate;
    model::HazardSide hazardSide = model::HazardSide::None;
    std::vector<StripFlag> flags;  // of the cell's limits
};

// None where the two have nothing to draw or are not on one axis (another unit,
// another node). Limits of another unit, and all where the values are relative to a
// node, are left out.
[[nodiscard]] std::optional<LimitStrip> limitStrip(model::Interval const& reference, model::Interval const& candidate, model::HazardSide hazardSide,
                                                   std::span<CellLimit const> limits = {});

// The strip of a pair that has both; a null parameter has none.
[[nodiscard]] std::optional<LimitStrip> limitStrip(model::Parameter const* reference, model::Parameter const* candidate, model::HazardSide hazardSide,
                                                   std::span<CellLimit const> limits = {});

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
    FlagPole,       // line: a limit of the cell
    Flag,           // filled: points to the side that holds
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

// Doubles are good enough for a drawing; judging works on decimals elsewhere.
// Tested by tests/src/report/limit_strip_test.cpp.
#include "report/limit_strip.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <vector>

#include <fmt/format.h>

#include "report/html_escape.h"
#include "risk/cell_checks.h"

namespace standin::report {

namespace {

constexpr double kMargin = 0.12;  // of the axis, on both sides of what is stated
constexpr double kAxisLeft = 14;
constexpr double kAxisWidth = 232;
constexpr double kPaleEnd = 18;  // how far a side without a stated bound is drawn
constexpr double kBracket = 4;   // length of a bracket's arms
constexpr double kThinnestBar = 2;
constexpr double kReferenceTop = 4, kReferenceMiddle = 10, kReferenceBottom = 16;
constexpr double kCandidateTop = 20, kCandidateBottom = 29;
constexpr double kFlagLength = 6, kFlagHeight = 5;

std::optional<double> numberOf(std::optional<std::string> const& decimal) {
    if (!decimal) return std::nullopt;
    double value = 0;
    auto const [end, error] = std::from_chars(decimal->data(), decimal->data() + decimal->size(), value);
    if (error != std::errc{} || end != decimal->data() + decimal->size() || !std::isfinite(value)) return std::nullopt;
    return value;
}

StripInterval numbersOf(model::Interval const& interval) { return {numberOf(interval.lo), numberOf(interval.typ), numberOf(interval.hi)}; }

double x(double position) { return kAxisLeft + kAxisWidth * position; }

// What is stated, and how far the drawing reaches: a side without a bound goes a
// little beyond what else is stated.
struct Extent {
    double statedLeft, statedRight, left, right;
};

Extent extentOf(StripInterval const& i) {
    std::vector<double> stated;
    for (auto const& v : {i.lo, i.typ, i.hi}) {
        if (v) stated.push_back(x(*v));
    }
    auto const [low, high] = std::minmax_element(stated.begin(), stated.end());
    return {*low, *high, i.lo ? *low : std::max(kAxisLeft, *low - kPaleEnd), i.hi ? *high : std::min(kAxisLeft + kAxisWidth, *high + kPaleEnd)};
}

StripShape bar(StripPart part, double left, double right) { return {part, {{left, kCandidateTop}, {right, kCandidateTop}, {right, kCandidateBottom}, {left, kCandidateBottom}}}; }

void addReference(std::vector<StripShape>& shapes, StripInterval const& reference) {
    auto const extent = extentOf(reference);
    auto const bracket = [&](double at, double arm) {
        shapes.push_back({StripPart::Reference, {{at + arm, kReferenceTop}, {at, kReferenceTop}, {at, kReferenceBottom}, {at + arm, kReferenceBottom}}});
    };
    shapes.push_back({StripPart::ReferenceSpan, {{extent.left, kReferenceMiddle}, {extent.right, kReferenceMiddle}}});
    if (reference.lo) bracket(extent.left, kBracket);
    if (reference.hi) bracket(extent.right, -kBracket);
    if (reference.typ) shapes.push_back({StripPart::Reference, {{x(*reference.typ), kReferenceTop}, {x(*reference.typ), kReferenceBottom}}});
}

void addCandidate(std::vector<StripShape>& shapes, StripInterval const& candidate) {
    auto const extent = extentOf(candidate);
    if (extent.left < extent.statedLeft) shapes.push_back(bar(StripPart::CandidateOpen, extent.left, extent.statedLeft));
    if (extent.right > extent.statedRight) shapes.push_back(bar(StripPart::CandidateOpen, extent.statedRight, extent.right));
    bool const onlyTypical = candidate.typ && !candidate.lo && !candidate.hi;
    if (!onlyTypical) shapes.push_back(bar(StripPart::Candidate, extent.statedLeft, std::max(extent.statedRight, extent.statedLeft + kThinnestBar)));
    if (candidate.typ) shapes.push_back({StripPart::CandidateTick, {{x(*candidate.typ), kCandidateTop - 1}, {x(*candidate.typ), kCandidateBottom + 1}}});
}

void addFlag(std::vector<StripShape>& shapes, StripFlag const& flag) {
    double const at = x(flag.at);
    double const tip = flag.side == CellSide::Most ? at - kFlagLength : at + kFlagLength;
    shapes.push_back({StripPart::FlagPole, {{at, 1}, {at, kStripHeight - 1}}});
    shapes.push_back({StripPart::Flag, {{at, 1}, {tip, 1 + kFlagHeight / 2}, {at, 1 + kFlagHeight}}});
}

std::string_view cssClassOf(StripPart part) {
    switch (part) {
        case StripPart::Frame: return "axis";
        case StripPart::ReferenceSpan: return "ref dots";
        case StripPart::Reference: return "ref";
        case StripPart::Candidate: return "cand";
        case StripPart::CandidateOpen: return "cand open";
        case StripPart::CandidateTick: return "candtyp";
        case StripPart::HazardSide: return "hazard";
        case StripPart::FlagPole: return "pole";
        case StripPart::Flag: return "flag";
    }
    return {};
}

std::string_view sideText(CellLimit const& limit) {
    if (limit.side == CellSide::Least) return limit.boundFails ? "above" : "at least";
    return limit.boundFails ? "below" : "at most";
}

bool anything(StripInterval const& i) { return i.lo || i.typ || i.hi; }

}  // namespace

std::vector<CellLimit> cellLimits(model::Comparison const& comparison, std::string_view canonical) {
    std::vector<CellLimit> limits;
    if (canonical.empty()) return limits;
    for (auto const& check : comparison.cell) {
        if (!check.bounds || risk::checkedBy(check) != canonical) continue;
        auto const& bounds = *check.bounds;
        for (auto const& limit : {CellLimit{bounds.min, bounds.unit, CellSide::Least, bounds.aboveMin}, CellLimit{bounds.max, bounds.unit, CellSide::Most, bounds.belowMax}}) {
            if (!limit.value.empty() && std::find(limits.begin(), limits.end(), limit) == limits.end()) limits.push_back(limit);
        }
    }
    return limits;
}

std::string cellLimitsText(std::span<CellLimit const> limits) {
    std::string text;
    for (auto const& limit : limits) {
        text += fmt::format("{} {} {} {}", text.empty() ? "for the cell" : ",", sideText(limit), limit.value, limit.unit);
    }
    return text;
}

std::optional<LimitStrip> limitStrip(model::Interval const& reference, model::Interval const& candidate, model::HazardSide hazardSide, std::span<CellLimit const> limits) {
    if (reference.unit != candidate.unit || reference.relativeTo.empty() != candidate.relativeTo.empty() || reference.factor.empty() != candidate.factor.empty()) {
        return std::nullopt;
    }
    LimitStrip strip{numbersOf(reference), numbersOf(candidate), hazardSide, {}};
    if (!anything(strip.reference) || !anything(strip.candidate)) return std::nullopt;
    std::vector<double> all;
    for (auto const* interval : {&strip.reference, &strip.candidate}) {
        for (auto const& v : {interval->lo, interval->typ, interval->hi}) {
            if (v) all.push_back(*v);
        }
    }
    for (auto const& limit : limits) {
        auto const at = limit.unit == reference.unit && reference.relativeTo.empty() ? numberOf(limit.value) : std::nullopt;
        if (!at) continue;
        strip.flags.push_back({*at, limit.side});
        all.push_back(*at);
    }
    auto const [low, high] = std::minmax_element(all.begin(), all.end());
    double const lowest = *low;
    double const span = *high - lowest;
    auto const position = [&](double v) { return span > 0 ? kMargin + (1 - 2 * kMargin) * (v - lowest) / span : 0.5; };
    auto const place = [&](std::optional<double>& v) {
        if (v) v = position(*v);
    };
    for (auto* interval : {&strip.reference, &strip.candidate}) {
        place(interval->lo);
        place(interval->typ);
        place(interval->hi);
    }
    for (auto& flag : strip.flags) flag.at = position(flag.at);
    return strip;
}

std::optional<LimitStrip> limitStrip(model::Parameter const* reference, model::Parameter const* candidate, model::HazardSide hazardSide, std::span<CellLimit const> limits) {
    if (reference == nullptr || candidate == nullptr || !reference->interval || !candidate->interval) return std::nullopt;
    return limitStrip(*reference->interval, *candidate->interval, hazardSide, limits);
}

bool isClosed(StripPart part) {
    return part == StripPart::Frame || part == StripPart::Candidate || part == StripPart::CandidateOpen || part == StripPart::HazardSide || part == StripPart::Flag;
}

std::vector<StripShape> shapesOf(LimitStrip const& strip) {
    std::vector<StripShape> shapes{{StripPart::Frame, {{kAxisLeft, 1}, {kAxisLeft + kAxisWidth, 1}, {kAxisLeft + kAxisWidth, kStripHeight - 1}, {kAxisLeft, kStripHeight - 1}}}};
    if (anything(strip.reference)) addReference(shapes, strip.reference);
    if (anything(strip.candidate)) addCandidate(shapes, strip.candidate);
    for (auto const& flag : strip.flags) addFlag(shapes, flag);
    auto const arrow = [&](double from, double to) { shapes.push_back({StripPart::HazardSide, {{from, 11}, {to, 17}, {from, 23}}}); };
    if (strip.hazardSide == model::HazardSide::Higher || strip.hazardSide == model::HazardSide::Both) arrow(kStripWidth - 12, kStripWidth - 4);
    if (strip.hazardSide == model::HazardSide::Lower || strip.hazardSide == model::HazardSide::Both) arrow(12, 4);
    return shapes;
}

std::string limitStripSvg(LimitStrip const& strip, std::string const& label) {
    auto svg = fmt::format("<svg class=\"strip\" viewBox=\"0 0 {} {}\" role=\"img\" aria-label=\"{}\">", kStripWidth, kStripHeight, escaped(label));
    for (auto const& shape : shapesOf(strip)) {
        svg += fmt::format("<path class=\"{}\" d=\"", cssClassOf(shape.part));
        char command = 'M';
        for (auto const& point : shape.points) {
            svg += fmt::format("{}{:.1f} {:.1f}", command, point.x, point.y);
            command = 'L';
        }
        svg += isClosed(shape.part) ? "z\"/>" : "\"/>";
    }
    return svg + "</svg>";
}

}  // namespace standin::report

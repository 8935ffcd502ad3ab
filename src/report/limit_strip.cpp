// Doubles are good enough for a drawing; judging works on decimals elsewhere.
// Tested by tests/src/report/limit_strip_test.cpp.
#include "report/limit_strip.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <vector>

#include <fmt/format.h>

#include "report/html_escape.h"

namespace standin::report {

namespace {

constexpr double kMargin = 0.12;  // of the axis, on both sides of what is stated
constexpr double kAxisLeft = 14;
constexpr double kAxisWidth = 232;
constexpr double kFade = 18;  // how far an unstated bound is drawn, in units

std::optional<double> numberOf(std::optional<std::string> const& decimal) {
    if (!decimal) return std::nullopt;
    double value = 0;
    auto const [end, error] = std::from_chars(decimal->data(), decimal->data() + decimal->size(), value);
    if (error != std::errc{} || end != decimal->data() + decimal->size() || !std::isfinite(value)) return std::nullopt;
    return value;
}

StripInterval numbersOf(model::Interval const& interval) { return {numberOf(interval.lo), numberOf(interval.typ), numberOf(interval.hi)}; }

double x(double position) { return kAxisLeft + kAxisWidth * position; }

std::string line(char const* cssClass, double x0, double y0, double x1, double y1) {
    return fmt::format("<line class=\"{}\" x1=\"{:.1f}\" y1=\"{:.1f}\" x2=\"{:.1f}\" y2=\"{:.1f}\"/>", cssClass, x0, y0, x1, y1);
}

// Where the drawn extent ends on a side: the bound, or a little beyond what else is stated.
std::pair<double, double> extent(StripInterval const& i) {
    std::vector<double> stated;
    for (auto const& v : {i.lo, i.typ, i.hi}) {
        if (v) stated.push_back(x(*v));
    }
    auto const [low, high] = std::minmax_element(stated.begin(), stated.end());
    double const left = i.lo ? x(*i.lo) : std::max(kAxisLeft, *low - kFade);
    double const right = i.hi ? x(*i.hi) : std::min(kAxisLeft + kAxisWidth, *high + kFade);
    return {left, right};
}

bool anything(StripInterval const& i) { return i.lo || i.typ || i.hi; }

}  // namespace

std::optional<LimitStrip> limitStrip(model::Interval const& reference, model::Interval const& candidate, model::HazardSide hazardSide) {
    if (reference.unit != candidate.unit || reference.relativeTo.empty() != candidate.relativeTo.empty() || reference.factor.empty() != candidate.factor.empty()) {
        return std::nullopt;
    }
    LimitStrip strip{numbersOf(reference), numbersOf(candidate), hazardSide};
    if (!anything(strip.reference) || !anything(strip.candidate)) return std::nullopt;
    std::vector<double> all;
    for (auto const* interval : {&strip.reference, &strip.candidate}) {
        for (auto const& v : {interval->lo, interval->typ, interval->hi}) {
            if (v) all.push_back(*v);
        }
    }
    auto const [low, high] = std::minmax_element(all.begin(), all.end());
    double const lowest = *low;
    double const span = *high - lowest;
    auto const place = [&](std::optional<double>& v) {
        if (v) v = span > 0 ? kMargin + (1 - 2 * kMargin) * (*v - lowest) / span : 0.5;
    };
    for (auto* interval : {&strip.reference, &strip.candidate}) {
        place(interval->lo);
        place(interval->typ);
        place(interval->hi);
    }
    return strip;
}

std::string limitStripSvg(LimitStrip const& strip, std::string const& label) {
    auto svg = fmt::format("<svg class=\"strip\" viewBox=\"0 0 260 34\" role=\"img\" aria-label=\"{}\">", escaped(label));
    svg += "<rect class=\"axis\" x=\"14\" y=\"1\" width=\"232\" height=\"32\"/>";
    auto const [rl, rr] = extent(strip.reference);
    svg += line("ref dots", rl, 10, rr, 10);
    if (strip.reference.lo) svg += fmt::format("<path class=\"ref\" d=\"M{0:.1f} 4h-4v12h4\"/>", rl + 4);
    if (strip.reference.hi) svg += fmt::format("<path class=\"ref\" d=\"M{0:.1f} 4h4v12h-4\"/>", rr - 4);
    if (strip.reference.typ) svg += line("ref", x(*strip.reference.typ), 4, x(*strip.reference.typ), 16);
    auto const [cl, cr] = extent(strip.candidate);
    bool const open = !strip.candidate.lo || !strip.candidate.hi;
    svg += fmt::format("<rect class=\"cand{}\" x=\"{:.1f}\" y=\"20\" width=\"{:.1f}\" height=\"9\"/>", open ? " open" : "", cl, std::max(2.0, cr - cl));
    if (strip.candidate.typ) svg += line("candtyp", x(*strip.candidate.typ), 19, x(*strip.candidate.typ), 30);
    bool const higher = strip.hazardSide == model::HazardSide::Higher || strip.hazardSide == model::HazardSide::Both;
    bool const lower = strip.hazardSide == model::HazardSide::Lower || strip.hazardSide == model::HazardSide::Both;
    if (higher) svg += "<path class=\"side\" d=\"M248 11l8 6-8 6z\"/>";
    if (lower) svg += "<path class=\"side\" d=\"M12 11l-8 6 8 6z\"/>";
    return svg + "</svg>";
}

}  // namespace standin::report

// The vocabulary decides; here a row is put as a question to it. Tested by
// tests/extractors/parameters/read_parameters_test.cpp and
// tests/extractors/corrections/apply_corrections_test.cpp.
#include "extractors/parameters/naming.h"

#include <charconv>
#include <optional>

namespace standin::parameters {

namespace {

std::optional<double> magnitudeOf(model::Interval const& interval) {
    for (std::optional<std::string> const& text : {interval.typ, interval.hi, interval.lo}) {
        if (!text) continue;
        double value = 0;
        auto const result = std::from_chars(text->data(), text->data() + text->size(), value);
        if (result.ec == std::errc{}) return value;
    }
    return std::nullopt;
}

}  // namespace

std::string canonicalOf(model::Parameter const& parameter, std::string const& family, std::span<std::string const> symbols, vocabulary::Vocabulary const& vocabulary) {
    bool const coherent = parameter.interval && !parameter.interval->unit.empty();
    bool const absolute = parameter.interval && parameter.interval->relativeTo.empty();
    auto const match = vocabulary.match({.name = parameter.name,
                                         .symbol = parameter.symbol,
                                         .unit = coherent ? std::string_view(parameter.interval->unit) : std::string_view(parameter.unit),
                                         .kind = parameter.kind,
                                         .family = family,
                                         .neighbours = symbols,
                                         .magnitude = absolute ? magnitudeOf(*parameter.interval) : std::nullopt});
    return match ? match->id : std::string();
}

}  // namespace standin::parameters

// Tested by tests/src/risk/cell_texts_test.cpp.
#include "risk/cell_texts.h"

#include <algorithm>

#include <fmt/format.h>

#include "risk/texts.h"

namespace standin::risk::texts {

namespace {

using model::CheckOutcome;
using quantity::Decimal;
using quantity::Rounding;

constexpr int kDigits = 4;

Decimal shortDecimal(Decimal value, Rounding rounding) {
    if (value.isZero()) return Decimal(0);
    return divide(value, Decimal(1), kDigits, rounding).value_or(value);
}

std::string shown(Decimal value, std::string_view unit) {
    if (unit == "degC") return fmt::format("{} °C", value.toShortString());
    if (unit == "month") return fmt::format("{} months", value.toShortString());
    return amount(value, unit);
}

std::string namesOf(std::vector<std::string> const& names) {
    std::string list;
    for (auto const& name : names) list += fmt::format("{}{}", list.empty() ? "" : ", ", inputName(name));
    return list;
}

std::string closed(std::string text) {
    if (!text.empty() && text.back() != '.') text += '.';
    return capitalised(std::move(text));
}

}  // namespace

std::string inputName(std::string_view name) {
    for (std::string_view const file : {"circuit", "cell"}) {
        if (name.size() > file.size() && name.starts_with(file) && name[file.size()] == '.') return fmt::format("{} of the {} file", name.substr(file.size() + 1), file);
    }
    std::string text(name);
    std::replace(text.begin(), text.end(), '-', ' ');
    return text;
}

std::string inputList(std::vector<model::Input> const& inputs) {
    std::string list;
    for (auto const& input : inputs) {
        list += fmt::format("{}{} {}", list.empty() ? "" : "; ", inputName(input.name), input.text);
        if (input.page > 0) list += fmt::format(" (page {})", input.page);
    }
    return list;
}

std::string boundOpen(std::string_view bound, std::vector<std::string> const& names) {
    return names.empty() ? fmt::format("The {} bound cannot be worked out.", bound) : fmt::format("The {} bound cannot be worked out: a limit is missing of {}.", bound, namesOf(names));
}

std::string estimateOnly(std::vector<std::string> const& names) {
    return names.empty() ? std::string("An estimate from typical values; no limit.") : fmt::format("An estimate from typical values; no limit, since one is missing of {}.", namesOf(names));
}

std::string notGiven(std::string_view name) { return fmt::format("Without {}, which is not given.", inputName(name)); }

std::string outerBound() { return "An outer bound: wider than any one device."; }

std::string scopeNote(bool overTemperature) {
    return overTemperature ? "Over the temperature range that is printed." : "At 25 °C, as far as the sheet says.";
}

std::string derivedExplanation(model::Finding const& finding, ParameterJudgement const& judged, std::string_view formula, std::string_view effect, std::string_view check) {
    std::string text = fmt::format("Worked out, the candidate comes to {} where the reference comes to {}", values(*finding.candidate), values(*finding.reference));
    if (judged.outcome == Outcome::Better) text += ", within what the reference comes to";
    else if (!effect.empty()) text += fmt::format("; possible effect: {}", effect);
    text += fmt::format(". {}.", formula);
    if (!check.empty()) text += " " + closed(std::string(check));
    return text;
}

std::string upper(Decimal value, std::string_view unit) { return shown(shortDecimal(value, Rounding::Up), unit); }
std::string lower(Decimal value, std::string_view unit) { return shown(shortDecimal(value, Rounding::Down), unit); }

std::string range(quantity::Limits const& limits, std::string_view unit) {
    if (limits.lo && limits.hi) return *limits.lo == *limits.hi ? upper(*limits.hi, unit) : fmt::format("{} to {}", lower(*limits.lo, unit), upper(*limits.hi, unit));
    if (limits.hi) return "at most " + upper(*limits.hi, unit);
    if (limits.lo) return "at least " + lower(*limits.lo, unit);
    if (limits.typ) return "typically " + shown(shortDecimal(*limits.typ, Rounding::Nearest), unit);
    return {};
}

std::string checkTitle(model::CellCheck const& check) {
    auto const outcome = check.candidate ? check.candidate->outcome : CheckOutcome::Open;
    bool const reference = check.reference && check.reference->outcome == CheckOutcome::Violated;
    switch (outcome) {
        case CheckOutcome::Violated: return fmt::format("{}: {}", check.title, check.candidate->why);
        case CheckOutcome::Open: return fmt::format("{}: open, {}", check.title, check.candidate ? check.candidate->why : std::string("nothing was found"));
        case CheckOutcome::Holds: break;
    }
    return reference ? fmt::format("{}: only the reference does not meet it", check.title) : check.title;
}

std::string checkExplanation(model::CellCheck const& check, std::string_view violation, std::string_view action) {
    auto const& candidate = check.candidate;
    std::string text = check.limit.empty() ? std::string() : closed(fmt::format("Asked for: {}", check.limit));
    if (candidate && !candidate->value.empty()) text += fmt::format("{}The candidate has: {}.", text.empty() ? "" : " ", candidate->value);
    if (candidate && candidate->outcome == CheckOutcome::Violated && !violation.empty()) text += fmt::format(" Possible effect: {}.", violation);
    bool const referenceFails = check.reference && check.reference->outcome == CheckOutcome::Violated;
    if (referenceFails && candidate && candidate->outcome == CheckOutcome::Violated) text += " The reference does not meet this either: that they agree is no justification.";
    if (referenceFails && candidate && candidate->outcome == CheckOutcome::Holds) text += fmt::format(" The reference does not meet this: {}.", check.reference->why);
    if (!action.empty() && candidate && candidate->outcome != CheckOutcome::Holds) text += " " + closed(std::string(action));
    return text;
}

std::string givesNo(std::string_view file, std::string_view member, std::string_view bound) {
    return bound.empty() ? fmt::format("the {} file gives no {}", file, member) : fmt::format("the {} file gives no {} of {}", file, bound, member);
}

std::string sheetStates(std::string_view what, std::string_view why) { return fmt::format("{}: {}", what, why); }

std::string checksNotMade(std::string_view family) { return fmt::format("Cell checks not made: the sheet was read as one of the family \"{}\"", family); }

std::string checksNotMadeExplanation() {
    return "The checks set the thresholds of a protection IC against the cell. What could be worked out with the cell's values is listed under the worked-out quantities.";
}

std::string checkLevelText(model::VerdictLevel level) {
    switch (level) {
        case model::VerdictLevel::NoDifference: return "No limit of the cell found violated in the checks that could be made";
        case model::VerdictLevel::SmallDifferences: return "No limit of the cell found violated on a hazard side";
        default: return std::string(levelText(level));
    }
}

std::string notStatedInSheet(std::string_view what) { return fmt::format("No value was found in the sheet for: {}.", what); }

std::string checkSentence(model::VerdictLevel level, CheckCounts const& counts, std::string_view first) {
    std::string text = checkLevelText(level);
    if (!first.empty()) text += fmt::format(": {}", first);
    text += fmt::format(". Of {} checks against the cell {} hold, {} are violated, {} are open.", counts.holds + counts.violated + counts.open, counts.holds, counts.violated, counts.open);
    return text;
}

}  // namespace standin::risk::texts

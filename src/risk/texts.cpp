// Plain sentences put together from whole phrases.
// Tested by tests/src/risk/texts_test.cpp, which also looks for words that must not occur.
#include "risk/texts.h"

#include <algorithm>
#include <array>

#include <fmt/format.h>

#include "compare/coverage_account.h"
#include "compare/pin_findings.h"
#include "quantity/cell.h"
#include "text/leaders.h"

namespace standin::risk::texts {

namespace {

using model::Relation;
using model::VerdictLevel;
using model::WordingClass;
using quantity::Decimal;
using vocabulary::Role;

constexpr std::size_t kLongestQuote = 90;
constexpr std::size_t kMostNamed = 12;  // findings in one sentence

bool takesPrefix(std::string_view unit) {
    for (std::string_view known : {"V", "A", "Ω", "s", "F", "H", "Hz", "W", "C", "T", "J", "m"}) {
        if (unit == known) {
            return true;
        }
    }
    return false;
}

std::string withUnit(std::string number, std::string_view unit) {
    if (!unit.empty() && unit != "1") {
        number += ' ';
        number += unit;
    }
    return number;
}

std::string byAmount(ParameterJudgement const& judged, std::string_view unit) {
    return judged.distance ? fmt::format(" by {}", amount(judged.distance->amount, unit)) : std::string();
}

std::string_view boundName(Bounding bound) {
    switch (bound) {
        case Bounding::Maximum: return "maximum";
        case Bounding::Minimum: return "minimum";
        case Bounding::Typical: return "typical value";
    }
    return "value";
}

// " (maximum higher by 35 mV)"
std::string bracketed(ParameterJudgement const& judged, std::string_view unit) {
    if (!judged.distance) {
        return {};
    }
    return fmt::format(" ({} {}{})", boundName(judged.distance->of), judged.distance->higher ? "higher" : "lower", byAmount(judged, unit));
}

std::string bothStated(model::Side const& reference, model::Side const& candidate) {
    std::string const before = values(reference);
    std::string const after = values(candidate);
    return before == after ? "Both state " + after : fmt::format("The candidate states {} where the reference states {}", after, before);
}

// "the candidate's value holds under X and the reference's under Y"
std::string conditionsOf(model::Side const& reference, model::Side const& candidate) {
    auto const held = [](std::string_view whose, model::Side const& side) {
        bool const one = (side.min.empty() ? 0 : 1) + (side.typ.empty() ? 0 : 1) + (side.max.empty() ? 0 : 1) < 2;
        return fmt::format("the {}'s value{} under {}", whose, one ? " holds" : "s hold", shortened(side.condition, kLongestQuote));
    };
    if (reference.condition.empty()) return held("candidate", candidate) + " and the reference states no condition";
    if (candidate.condition.empty()) return held("reference", reference) + " and the candidate states no condition";
    return fmt::format("{} and the reference's under {}", held("candidate", candidate), shortened(reference.condition, kLongestQuote));
}

std::string sentence(std::string text) {
    text = capitalised(std::move(text));
    if (!text.empty() && text.back() != '.') {
        text += '.';
    }
    return text;
}

std::string joined(std::string first, std::string_view check) {
    if (!check.empty()) {
        first += ' ';
        first += sentence(std::string(check));
    }
    return first;
}

std::string_view subjectOf(model::FindingKind kind) {
    switch (kind) {
        case model::FindingKind::Table: return "Table row";
        case model::FindingKind::Figure: return "Figure";
        case model::FindingKind::Ordering: return "Ordering line";
        case model::FindingKind::Section: return "Section";
        case model::FindingKind::Document: return "Document line";
        default: return "Sentence";
    }
}

std::string about(std::string_view topic) {
    return topic.empty() ? std::string() : fmt::format(" about {}", topic);
}

// The one sheet in which a value stands without a unit; empty: none, or both.
std::string_view sheetWithoutUnit(model::Finding const& finding) {
    if (!finding.reference || !finding.candidate || finding.reference->unit.empty() == finding.candidate->unit.empty()) return {};
    return finding.reference->unit.empty() ? "reference" : "candidate";
}

std::string quoteOf(model::Finding const& finding) {
    auto const& side = finding.reference ? finding.reference : finding.candidate;
    return side ? shortened(side->text, kLongestQuote) : std::string();
}

// Only the drawing of a figure differs, neither its caption nor its lettering.
bool isOfDrawing(model::Finding const& finding) {
    return finding.kind == model::FindingKind::Figure && finding.classes == std::vector{WordingClass::Style};
}

// A cell prints one limit, no range or tolerance ("±5", "2 to 7").
bool isLeast(std::string const& printed) {
    auto const interval = quantity::parseCell({.min = printed}).interval;
    return interval && interval->lo && !interval->hi;
}

bool isMost(std::string const& printed) {
    auto const interval = quantity::parseCell({.max = printed}).interval;
    return interval && interval->hi && !interval->lo;
}

// Where only one limit is printed, there is no range to lie in.
std::string insideTitle(std::string_view name, model::Finding const& finding, std::string const& by) {
    bool const printed = finding.reference && finding.candidate;
    bool const least = printed && isLeast(finding.reference->min) && isLeast(finding.candidate->min);
    bool const most = printed && isMost(finding.reference->max) && isMost(finding.candidate->max);
    if (least == most) return fmt::format("{} lies inside the reference's range", name);
    return fmt::format("{} is {}{}", name, most ? "lower" : "higher", by);
}

// Both print one limit ("-4"), no range.
bool haveOneLimit(model::Finding const& finding) {
    auto const one = [](model::Side const& side) { return side.min.empty() != side.max.empty() && (side.min.empty() ? isMost(side.max) : isLeast(side.min)); };
    return finding.reference && finding.candidate && one(*finding.reference) && one(*finding.candidate);
}

// Negative values of which one reaches further; what a limit of one sheet only means is said otherwise.
bool isOfMagnitudes(model::Finding const& finding, ParameterJudgement const& judged) {
    bool const limited = judged.outcome != Outcome::HazardBoundOpen && judged.outcome != Outcome::TypicalOnly && judged.outcome != Outcome::TypicalOnlyBeyond;
    if (!judged.turned || !judged.distance || !limited) return false;
    switch (finding.relation) {
        case Relation::ReachesHigher:
        case Relation::ReachesLower:
        case Relation::ClearAbove:
        case Relation::ClearBelow:
        case Relation::TypDiffers: return true;
        case Relation::Inside:
        case Relation::Wider: return haveOneLimit(finding);
        default: return false;
    }
}

// "-4 A" against "-4.2 A": which one is the larger current, not the higher number.
std::string magnitudeTitle(std::string_view name, model::Finding const& finding, ParameterJudgement const& judged, std::string const& by) {
    bool const larger = judged.distance->higher;
    if (judged.distance->of == Bounding::Typical) return fmt::format("{}: typical value {} in magnitude{}", name, larger ? "larger" : "smaller", by);
    if (haveOneLimit(finding)) return fmt::format("{} is {} in magnitude{}", name, larger ? "larger" : "smaller", by);
    if (finding.relation == Relation::ClearAbove || finding.relation == Relation::ClearBelow) {
        return fmt::format("{} lies clear of the reference's range, {} in magnitude{}", name, larger ? "larger" : "smaller", by);
    }
    return fmt::format("{} reaches {} in magnitude{}", name, larger ? "higher" : "lower", by);
}

}  // namespace

std::string amount(Decimal value, std::string_view unit) {
    if (unit == "degC" || unit == "K") {
        return withUnit(value.toShortString(), "K");
    }
    if (!takesPrefix(unit) || value.isZero()) {
        return withUnit(value.toShortString(), unit);
    }
    struct Prefix {
        int power;
        char const* text;
    };
    constexpr std::array<Prefix, 9> kPrefixes = {{{9, "G"}, {6, "M"}, {3, "k"}, {0, ""}, {-3, "m"}, {-6, "µ"}, {-9, "n"}, {-12, "p"}, {-15, "f"}}};
    for (auto const& prefix : kPrefixes) {
        Decimal const scaled = value.scaledByPowerOfTen(-prefix.power);
        if (scaled.magnitude() >= Decimal(1) || prefix.power == -15) {
            return fmt::format("{} {}{}", scaled.toShortString(), prefix.text, unit);
        }
    }
    return withUnit(value.toShortString(), unit);
}

std::string values(model::Side const& side) {
    std::string text;
    auto const add = [&text](char const* name, std::string const& value) {
        if (!value.empty()) {
            text += text.empty() ? "" : ", ";
            text += name;
            text += value;
        }
    };
    add("min ", side.min);
    add("typ ", side.typ);
    add("max ", side.max);
    if (text.empty()) {
        return shortened(side.text, kLongestQuote);
    }
    return withUnit(std::move(text), side.unit);
}

std::string capitalised(std::string text) {
    if (!text.empty() && text[0] >= 'a' && text[0] <= 'z') {
        text[0] = static_cast<char>(text[0] - 'a' + 'A');
    }
    return text;
}

std::string shortened(std::string_view printed, std::size_t longest) {
    std::string const text = text::leadersReplaced(std::string(printed), "…");
    if (text.size() <= longest) {
        return text;
    }
    while (longest > 0 && (static_cast<unsigned char>(text[longest]) & 0xC0) == 0x80) {
        --longest;
    }
    return text.substr(0, longest) + "…";
}

std::string parameterTitle(std::string_view name, model::Finding const& finding, ParameterJudgement const& judged, Role role, std::string_view unit) {
    bool const range = role == Role::Withstand || role == Role::OperatingRange;
    std::string const by = byAmount(judged, unit);
    switch (finding.relation) {
        case Relation::OnlyReference: return fmt::format("{}: stated by the reference only", name);
        case Relation::OnlyCandidate: return fmt::format("{}: stated by the candidate only", name);
        case Relation::UnitConflict:
            if (auto const sheet = sheetWithoutUnit(finding); !sheet.empty()) return fmt::format("{}: no unit was read in the {}", name, sheet);
            return fmt::format("{}: the units do not agree", name);
        case Relation::ConflictInDocument: return fmt::format("{}: two places of one sheet disagree", name);
        case Relation::Unread: return fmt::format("{}: could not be read", name);
        case Relation::NotComparable: return fmt::format("{}: the values cannot be compared", name);
        case Relation::ConditionsDiffer:
            if (compare::saysOnlyLoadBound(finding)) return fmt::format("{}: load printed as a bound in one sheet only", name);
            return fmt::format("{}: {}", name, compare::saysOnlyDirection(finding) ? "sign of the load current printed differently" : "stated under other conditions");
        default: break;
    }
    if (isOfMagnitudes(finding, judged)) return magnitudeTitle(name, finding, judged, by);
    if (judged.outcome == Outcome::NotEnclosing || judged.outcome == Outcome::NotEnclosingCharger) {
        bool const single = finding.reference && finding.reference->min.empty();
        if (!judged.distance || judged.distance->of == Bounding::Typical) return fmt::format("{} is narrower", name);
        if (single) return fmt::format("{} is lower{}", name, by);
        return fmt::format("{} is narrower at its {} end{}", name, judged.distance->of == Bounding::Maximum ? "upper" : "lower", by);
    }
    if (judged.outcome == Outcome::HazardBoundOpen) {
        return fmt::format("{}: a limit of the reference is not stated by the candidate", name);
    }
    if (judged.outcome == Outcome::TypicalOnly || judged.outcome == Outcome::TypicalOnlyBeyond) {
        return fmt::format("{}: the candidate states a typical value only", name);
    }
    switch (finding.relation) {
        case Relation::Inside: return range ? fmt::format("{} is narrower{}", name, by) : insideTitle(name, finding, by);
        case Relation::Wider: return fmt::format("{} is wider{}{}", name, by.empty() ? "" : judged.distance->higher ? ", reaching higher" : ", reaching lower", by);
        case Relation::ReachesHigher: return fmt::format("{} reaches higher{}", name, by);
        case Relation::ReachesLower: return fmt::format("{} reaches lower{}", name, by);
        case Relation::ClearAbove: return fmt::format("{} lies clear above the reference's range{}", name, bracketed(judged, unit));
        case Relation::ClearBelow: return fmt::format("{} lies clear below the reference's range{}", name, bracketed(judged, unit));
        case Relation::OneSided: return fmt::format("{}: a limit is stated in one sheet only", name);
        case Relation::TypDiffers:
            return judged.distance ? fmt::format("{}: {} {}{}", name, boundName(judged.distance->of), judged.distance->higher ? "higher" : "lower", by)
                                   : fmt::format("{}: typical values differ", name);
        case Relation::TypEqual: return fmt::format("{}: equal typical values without limits", name);
        default: return fmt::format("{} differs{}", name, by);
    }
}

std::string parameterExplanation(model::Finding const& finding, ParameterJudgement const& judged, std::string_view effect, std::string_view check) {
    std::string const possible = effect.empty() ? std::string() : fmt::format("; possible effect: {}", effect);
    if (finding.relation == Relation::ConflictInDocument && finding.reference.has_value() != finding.candidate.has_value()) {
        return joined(fmt::format("The {} prints it twice, with other values: {}.", finding.reference ? "reference" : "candidate", (finding.reference ? finding.reference : finding.candidate)->text), "Look at both pages");
    }
    if (!finding.candidate && finding.reference) {
        return joined(fmt::format("The reference states {}, the candidate was found to state nothing{}.", values(*finding.reference), possible), check);
    }
    if (!finding.reference && finding.candidate) {
        return joined(fmt::format("The candidate states {}, the reference was found to state nothing to set against it.", values(*finding.candidate)), check);
    }
    if (!finding.reference || !finding.candidate) {
        return {};
    }
    std::string const both = bothStated(*finding.reference, *finding.candidate);
    if (compare::saysOnlyDirection(finding)) {
        return joined(
            fmt::format("{}, but {}; makers differ in the sign they give a current, and the amounts are the same.", both, conditionsOf(*finding.reference, *finding.candidate)),
            "Look which way the current flows in each sheet");
    }
    if (compare::saysOnlyLoadBound(finding)) {
        return joined(fmt::format("{}, but {}; the heaviest load is the same, and a lighter one is easier to drive.", both, conditionsOf(*finding.reference, *finding.candidate)),
                      "Look at the loads in both sheets");
    }
    switch (finding.relation) {
        case Relation::ConditionsDiffer: return joined(fmt::format("{}, but {}{}.", both, conditionsOf(*finding.reference, *finding.candidate), possible), check);
        case Relation::UnitConflict:
            if (judged.outcome == Outcome::SignLost) return joined(both + ": the numbers agree, and a sign of the unit (Ω, µ, °) was not read in one of the sheets.", "Look at both pages");
            if (auto const sheet = sheetWithoutUnit(finding); !sheet.empty()) return joined(fmt::format("{}, and no unit was read in the {}.", both, sheet), "Look at both pages");
            return joined(both + ": the units do not agree, or a prefix was lost or misprinted.", "Look at both pages");
        case Relation::NotComparable: return joined(both + ", which refers to something else.", check.empty() ? std::string_view("Look at both pages") : check);
        case Relation::ConflictInDocument: return joined(both + ", and one sheet contradicts itself.", "Look at the pages shown");
        case Relation::Unread: return joined(both + ", which could not be read with certainty.", "Look at the pages shown");
        default: break;
    }
    if (judged.outcome == Outcome::Better || judged.outcome == Outcome::HarsherComplies) {
        return joined(both + ", within what the reference promises.", {});
    }
    if (judged.typicalOnly || judged.outcome == Outcome::HazardBoundOpen) {
        return joined(fmt::format("{}: a limit is not stated, so nothing is promised beyond it{}.", both, possible), check);
    }
    return joined(both + possible + ".", check);
}

std::string statedFeature(std::string_view state, std::vector<std::string> const& elsewhere) {
    return elsewhere.empty() ? std::string(state) : fmt::format("{} (elsewhere {})", state, fmt::join(elsewhere, ", "));
}

std::string featureTitle(std::string_view name, Relation relation, std::string_view referenceState, std::string_view candidateState) {
    if (relation == Relation::ConflictInDocument) {
        return fmt::format("{}: one sheet contradicts itself", name);
    }
    if (referenceState.empty()) {
        return fmt::format("{}: not stated in the reference, {} in the candidate", name, candidateState);
    }
    if (candidateState.empty()) {
        return fmt::format("{}: {} in the reference, not stated in the candidate", name, referenceState);
    }
    return fmt::format("{}: {} in the reference, {} in the candidate", name, referenceState, candidateState);
}

std::string featureExplanation(Relation relation, std::string_view referenceMeaning, std::string_view candidateMeaning, std::string_view effect, std::string_view check) {
    std::string const possible = effect.empty() ? std::string() : fmt::format("; possible effect: {}", effect);
    if (relation == Relation::ConflictInDocument) {
        return joined("Places of one sheet say different things about it.", "Look at the pages shown");
    }
    if (referenceMeaning.empty() || candidateMeaning.empty()) {
        return joined(fmt::format("Only the {} says: {}{}.", referenceMeaning.empty() ? "candidate" : "reference", referenceMeaning.empty() ? candidateMeaning : referenceMeaning, possible), check);
    }
    return joined(fmt::format("The reference says: {}; the candidate says: {}{}.", referenceMeaning, candidateMeaning, possible), check);
}

std::string_view classText(WordingClass wordingClass) {
    switch (wordingClass) {
        case WordingClass::Neg: return "negation added or removed";
        case WordingClass::Mod: return "other strength of an instruction";
        case WordingClass::Perm: return "permitted against prohibited";
        case WordingClass::Trig: return "other trigger or release condition";
        case WordingClass::Conn: return "\"and\" against \"or\", or another connective";
        case WordingClass::Num: return "another number, unit or symbol";
        case WordingClass::Pin: return "other handling or connection of a pin";
        case WordingClass::Temp: return "other temperature or supply range";
        case WordingClass::Scope: return "other scope (each, any, all, only), or one of several left out or another";
        case WordingClass::Grade: return "other grade of promise";
        case WordingClass::Ord: return "other meaning of an ordering code";
        case WordingClass::Time: return "other time or sequence";
        case WordingClass::Cond: return "condition or exception added or removed";
        case WordingClass::Edit: return "editorial difference";
        case WordingClass::Style: return "rephrased";
    }
    return "differs";
}

std::string wordingTitle(model::Finding const& finding, std::string_view topic) {
    std::string_view const subject = subjectOf(finding.kind);
    switch (finding.relation) {
        case Relation::OnlyReference: return fmt::format("{}{} in the reference only: {}", subject, about(topic), quoteOf(finding));
        case Relation::OnlyCandidate: return fmt::format("{}{} in the candidate only: {}", subject, about(topic), quoteOf(finding));
        case Relation::Moved: return fmt::format("{} moved: {}", subject, quoteOf(finding));
        case Relation::Unread: return fmt::format("{} could not be read", subject);
        case Relation::ConflictInDocument: return fmt::format("{}{}: one sheet contradicts itself", subject, about(topic));
        default: break;
    }
    if (isOfDrawing(finding)) {
        return fmt::format("{}: {}", finding.relation == Relation::MeaningChanged ? "Drawing changed" : "Drawing stored otherwise", quoteOf(finding));
    }
    if (finding.classes.empty()) {
        return fmt::format("{}{} differs", subject, about(topic));
    }
    return fmt::format("{}{}: {}", subject, about(topic), classText(finding.classes.front()));
}

std::string wordingExplanation(model::Finding const& finding, std::string_view topic, std::string_view check) {
    switch (finding.relation) {
        case Relation::OnlyReference: return joined("Nothing that corresponds was found in the candidate.", check);
        case Relation::OnlyCandidate: return joined("Nothing that corresponds was found in the reference.", check);
        case Relation::Moved: return "The text is the same and stands at another place.";
        default: break;
    }
    if (isOfDrawing(finding)) {
        if (finding.relation == Relation::MeaningChanged) return "Caption and lettering are the same; the drawing is not. Look at both and check what follows for your circuit.";
        return "Caption and lettering are the same; the drawing is stored in another way, and whether it looks different was not seen. Look at both.";
    }
    std::string what;
    for (WordingClass const wordingClass : finding.classes) {
        what += what.empty() ? "" : "; ";
        what += classText(wordingClass);
    }
    if (what.empty()) {
        what = "the texts differ";
    }
    if (!finding.classes.empty() && finding.classes.front() == WordingClass::Edit) {
        return "Editorial difference: no change of meaning was found.";
    }
    if (!finding.classes.empty() && finding.classes.front() == WordingClass::Style) {
        return joined("The texts are worded differently; no change of meaning was found.", "Read both");
    }
    std::string text = sentence(what);
    if (!topic.empty()) {
        text.pop_back();
        text += fmt::format(", in a text about {}.", topic);
    }
    return joined(std::move(text), check.empty() ? std::string_view("Read both and check what follows for your circuit") : check);
}

std::string chapterTitle(std::string_view chapter, Relation relation, ChapterCounts const& counts) {
    std::string what;
    auto const add = [&](int count, std::string_view one, std::string_view several) {
        if (count == 0) return;
        if (!what.empty()) what += ", ";
        what += fmt::format("{} {}", count, count == 1 ? one : several);
    };
    add(counts.sentences, "sentence", "sentences");
    add(counts.rows, "table row", "table rows");
    add(counts.figures, "figure", "figures");
    add(counts.headings, "heading", "headings");
    return fmt::format("\"{}\": {} in the {} only", shortened(chapter, kLongestQuote), what, relation == Relation::OnlyReference ? "reference" : "candidate");
}

std::string chapterExplanation(Relation relation) {
    return fmt::format("Nothing that corresponds was found in the {}. Each of them is listed here and counts as not compared; read them where the board relies on them.",
                       relation == Relation::OnlyReference ? "candidate" : "reference");
}

std::string furtherRows(std::size_t count) { return fmt::format(" (and {} more {})", count, count == 1 ? "row" : "rows"); }

std::string furtherVersions(std::vector<std::string> const& versions) {
    constexpr std::size_t kMostNamed = 4;
    std::string list;
    for (std::size_t i = 0; i < versions.size() && i < kMostNamed; ++i) {
        bool const last = i + 1 == versions.size();
        list += i == 0 ? "" : last ? " and " : ", ";
        list += versions[i].empty() ? "another version" : versions[i];
    }
    if (versions.size() > kMostNamed) list += fmt::format(" and {} more", versions.size() - kMostNamed);
    return fmt::format(" (the same for {})", list);
}

std::string furtherLines(std::size_t count) { return fmt::format(" (and {} more {})", count, count == 1 ? "line" : "lines"); }

std::string unmentionedTitle(std::size_t count) {
    return count == 1 ? "The revision history does not mention one difference that was found"
                      : fmt::format("The revision history does not mention {} differences that were found", count);
}

std::string unmentionedExplanation(std::string_view side, std::string_view from, std::string_view to, std::vector<std::string> const& gravest, std::size_t further, bool complete) {
    std::string text = fmt::format("The {} lists its changes", side);
    if (!from.empty()) text += fmt::format(" since revision {}", from);
    if (!to.empty()) text += fmt::format(" up to {}", to);
    text += ". Nothing in that list names: ";
    std::vector<std::string_view> named;
    std::size_t others = 0;
    for (auto const& title : gravest) {
        if (std::find(named.begin(), named.end(), title) != named.end()) continue;  // said once for all of one title
        if (named.size() == kMostNamed) ++others;
        else named.emplace_back(title);
    }
    for (std::size_t i = 0; i < named.size(); ++i) text += fmt::format("{}{}", i == 0 ? "" : "; ", named[i]);
    if (others > 0) text += fmt::format("; and {} more above a note", others);
    if (further > 0) text += fmt::format("{}{} {}", gravest.empty() ? "" : "; and ", further, further == 1 ? "note" : "notes");
    text += ".";
    if (!complete) text += fmt::format(" The list begins after revision {}: what changed before its first entry is not told.", from);
    return text + " Judge each by itself, and ask the maker.";
}

std::string notMentioned(std::string_view side) { return fmt::format("The revision history of the {} does not mention it.", side); }

std::string claimTitle(std::string_view statement) { return fmt::format("Change stated in the revision history was not found: {}", shortened(statement, kLongestQuote)); }

std::string claimExplanation(std::string_view side, std::string_view revision, int page) {
    std::string text = fmt::format("The revision history of the {} states this", side);
    if (!revision.empty()) text += fmt::format(" for revision {}", revision);
    text += ", and no difference that corresponds was found.";
    text += page > 0 ? fmt::format(" It names page {}: look there, and at the same place of the other sheet.", page) : std::string(" Look at the place in both sheets.");
    return text;
}

std::string pinTitle(model::Finding const& finding, bool misfit) {
    auto const name = [](std::optional<model::Side> const& side) { return side ? shortened(side->text.substr(0, side->text.find(" | ", side->text.find(" | ") == std::string::npos ? 0 : side->text.find(" | ") + 3)), 40) : std::string(); };
    if (!finding.candidate) {
        return fmt::format("Pin {}: found in the reference only", name(finding.reference));
    }
    if (!finding.reference) {
        return fmt::format("Pin {}: found in the candidate only", name(finding.candidate));
    }
    if (misfit) {
        return fmt::format("Pin {} in the reference, {} in the candidate", name(finding.reference), name(finding.candidate));
    }
    if (compare::isNamedLessExactly(finding)) {
        return fmt::format("Pin {} in the reference, {} in the candidate: one name is for several pins", name(finding.reference), name(finding.candidate));
    }
    return fmt::format("Pin {}: described differently", name(finding.reference));
}

std::string pinExplanation(model::Finding const& finding, bool misfit) {
    if (misfit) {
        return "A board net would meet a pin of another name or number. Do not fit before the pin's function is resolved on both drawings.";
    }
    if (!finding.reference || !finding.candidate) {
        return "No pin that corresponds was found in the other sheet. Check the pin tables and drawings of both.";
    }
    if (compare::isNamedLessExactly(finding)) {
        return "One sheet has one name for several pins that the other tells apart. Look on both drawings which of them this pin is.";
    }
    return "The pin is described or to be handled differently. Check the board net of this pin.";
}

std::string packageTitle(model::Finding const& finding) {
    auto const name = [](std::optional<model::Side> const& side) { return side ? shortened(side->text, 40) : std::string(); };
    if (!finding.candidate) {
        return fmt::format("Package {}: named by the reference only", name(finding.reference));
    }
    if (!finding.reference) {
        return fmt::format("Package {}: named by the candidate only", name(finding.candidate));
    }
    return fmt::format("Package {} in the reference, {} in the candidate", name(finding.reference), name(finding.candidate));
}

std::string packageExplanation(model::Finding const& finding) {
    if (!finding.reference || !finding.candidate) {
        return "The package was found in one sheet only. Compare the drawings for the ordered version.";
    }
    return "The sheets name different packages, so the candidate may not fit the land pattern. Compare both drawings.";
}

std::string coverageTitle(model::Finding const& finding) {
    std::string const quote = quoteOf(finding);
    return quote.empty() ? "A part of a sheet was not compared" : fmt::format("Not compared: {}", quote);
}

std::string coverageCause(std::string_view cause) {
    if (cause == compare::kNumbersUnaccounted) return "Printed numbers that belong to nothing that was compared";
    if (cause == compare::kPagesWithoutText) return "Pages without readable text";
    if (cause == compare::kTablesUnread) return "Tables that were found and not understood";
    if (cause == compare::kFiguresUnread) return "Figures whose lettering was not read";
    if (cause == compare::kPinsUnread) return "Pins that are printed and were not read";
    if (cause == compare::kRecognised) return "Read by character recognition";
    if (cause == compare::kLetteringUnread) return "Lettering of pictures that was not made out";
    if (cause == compare::kSignsDrawn) return "Signs among the text that are drawings and were not read";
    if (cause == compare::kProseInTwoLanguages) return "Prose in two languages: sentences were not compared";
    if (cause == compare::kVariantsNotChosen) return "Several versions share a datasheet and none was selected";
    if (cause == compare::kPinsInOneSheet) return "Pins were found in one sheet only";
    if (cause == compare::kDoubtfulPairing) return "Rows for which two partners were nearly as likely";
    if (cause == compare::kNoParameters) return "No parameters were found in one sheet";
    if (cause == compare::kReadWithDoubt) return "Rows and tables that may have been misread";
    if (cause == compare::kCorrectionsNotApplied) return "Corrections that fit no row, or several";
    if (cause == compare::kConflictInBoth) return "Both sheets print one value twice, and not alike";
    return std::string(cause);
}

std::string coverageCauseExplanation(std::string_view cause) {
    if (cause == compare::kProseInTwoLanguages) {
        return "Numbers, parameters, pins and features were compared; the sentences have to be read by a person who knows both languages.";
    }
    if (cause == compare::kVariantsNotChosen) return "Values of other versions stand beside those of the ordered one. Select the exact ordered version.";
    if (cause == compare::kPinsUnread) return "Their names or numbers are drawn or are a picture. Compare them by eye, lead by lead, before fitting.";
    if (cause == compare::kRecognised) return "It was recognised from a picture and may be misread: a lost decimal point or sign, 0 for O, 1 for l, 5 for S. Compare every value with the page.";
    if (cause == compare::kSignsDrawn) {
        return "A sign such as ±, µ, Ω or ≤ is missing from the text beside it, which then reads as another value: 8 for ±8, A for µA. Look at each place on the page.";
    }
    if (cause == compare::kPinsInOneSheet) return "The pins could not be set against each other. Compare both pin tables and drawings before fitting.";
    if (cause == compare::kDoubtfulPairing) return "Another row would have been nearly as good a partner. Look at both rows.";
    if (cause == compare::kReadWithDoubt) return "They were compared as they were read. Look at the pages before relying on their values.";
    if (cause == compare::kCorrectionsNotApplied) return "A value that a person found misread may still stand as it was. Name the row by its texts or its place.";
    if (cause == compare::kConflictInBoth) return "Both contradict themselves in the same way: no difference between them, but one of the values is wrong. Look at both pages.";
    if (cause == compare::kNoParameters) return "Without values there is nothing to set the other sheet against. Look at the pages.";
    return coverageExplanation();
}

std::string coverageExplanation() {
    return "This was not compared, so a difference in it would not be seen. Look at the page shown.";
}

std::string_view levelText(VerdictLevel level) {
    switch (level) {
        case VerdictLevel::NoDifference: return "No difference found in the compared parameters";
        case VerdictLevel::SmallDifferences: return "Small differences, none on a hazard side";
        case VerdictLevel::ConfirmFunction: return "Function needs confirming in your circuit";
        case VerdictLevel::BenchTest: return "Bench test before use";
        case VerdictLevel::DoNotSubstitute: return "Do not substitute on this evidence";
    }
    return {};
}

std::string verdictSentence(VerdictLevel level, Counts const& counts, std::string_view first, int others, bool incomplete) {
    std::string text(levelText(level));
    if (level == VerdictLevel::NoDifference) {
        text += fmt::format(" ({} of {} compared).", counts.compared, counts.all);
    } else {
        if (!first.empty()) {
            text += fmt::format(": {}", first);
            if (others > 0) {
                text += fmt::format(", and {} more {} of this level", others, others == 1 ? "finding" : "findings");
            }
        }
        text += fmt::format(". {} of {} parameters were compared.", counts.compared, counts.all);
    }
    if (incomplete) {
        text += " Not enough information to say more: what is open is listed.";
    }
    return text;
}

std::string openFindings(int count) {
    return count == 1 ? "One finding is open: the sheets do not state enough to judge it." : fmt::format("{} findings are open: the sheets do not state enough to judge them.", count);
}

std::string unaccountedNumbers(int count) {
    return count == 1 ? "One printed number or sentence was neither compared nor listed." : fmt::format("{} printed numbers or sentences were neither compared nor listed.", count);
}

std::string pagesWithoutText(std::string_view side, std::vector<int> const& pages) {
    std::string list;
    for (std::size_t i = 0; i < pages.size() && i < 12; ++i) {
        list += fmt::format("{}{}", i == 0 ? "" : ", ", pages[i]);
    }
    if (pages.size() > 12) {
        list += ", …";
    }
    return fmt::format("{} {} of the {} could not be read: no text is stored there.", pages.size() == 1 ? "Page" : "Pages", list, side);
}

std::string recognised(std::string_view side) { return fmt::format("Parts of the {} were recognised from a picture and may be misread.", side); }

std::string mayBeMisread(std::string_view side, std::vector<std::string> const& why) {
    std::string const reasons = fmt::format("{}", fmt::join(why, "; "));
    return fmt::format("The {}'s row may be misread{}. Look at the page.", side, reasons.empty() ? reasons : " (" + reasons + ")");
}

std::string drawnSigns(std::string_view side, std::size_t count) {
    return count == 1 ? fmt::format("One sign in the text of the {} is a drawing and was not read.", side)
                      : fmt::format("{} signs in the text of the {} are drawings and were not read.", count, side);
}

std::string restsOnRecognised() { return "rests on a value that was recognised in a picture; compare it with the page"; }

std::string unreadTables(std::string_view side, std::size_t count) {
    return count == 1 ? fmt::format("One table of the {} was found and not understood.", side) : fmt::format("{} tables of the {} were found and not understood.", count, side);
}

std::string statedInNeither(std::string_view what) {
    return fmt::format("No value was found in either sheet for: {}.", what);
}

std::string severalVersions(std::string_view side) {
    return fmt::format("Several versions share the datasheet of the {}; the ordered one was not selected.", side);
}

std::string noParameters(std::string_view side) {
    return fmt::format("No parameter was found in the {}.", side);
}

std::string typicalOnly(int count) {
    return count == 1 ? "One parameter has no limit in the candidate." : fmt::format("{} parameters have no limit in the candidate.", count);
}

std::string coverageFindings(int count) {
    return count == 1 ? "One part of the sheets was not compared." : fmt::format("{} parts of the sheets were not compared.", count);
}

}  // namespace standin::risk::texts

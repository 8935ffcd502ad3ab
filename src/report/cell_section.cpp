// Tested by tests/src/report/cell_section_test.cpp.
#include "report/cell_section.h"

#include <algorithm>
#include <array>
#include <vector>

#include <fmt/format.h>

#include "model/names.h"
#include "quantity/decimal.h"
#include "report/html_escape.h"
#include "report/texts.h"
#include "report/wrapped_text.h"
#include "risk/cell_texts.h"
#include "risk/texts.h"

namespace standin::report {

using namespace model;

namespace {

using Part = std::optional<CheckResult> CellCheck::*;

std::string capitals(std::string_view text) {
    std::string made(text);
    std::transform(made.begin(), made.end(), made.begin(), [](unsigned char c) { return static_cast<char>(std::toupper(c)); });
    return made;
}

CheckOutcome outcomeOf(CellCheck const& check) { return check.candidate ? check.candidate->outcome : CheckOutcome::Open; }

// A check stands where its graver side does.
int rankOf(CellCheck const& check) {
    auto const rank = [](std::optional<CheckResult> const& result) { return !result ? 2 : result->outcome == CheckOutcome::Violated ? 0 : result->outcome == CheckOutcome::Open ? 1 : 2; };
    return rank(check.candidate);
}

std::vector<CellCheck const*> gravestFirst(Comparison const& comparison) {
    std::vector<CellCheck const*> checks;
    for (auto const& check : comparison.cell) checks.push_back(&check);
    std::stable_sort(checks.begin(), checks.end(), [](auto const* a, auto const* b) { return rankOf(*a) < rankOf(*b); });
    return checks;
}

// What follows from another finding stands on that one's card.
std::string cardOf(Comparison const& comparison, std::string const& id) {
    auto const found = std::find_if(comparison.findings.begin(), comparison.findings.end(), [&id](Finding const& finding) { return finding.id == id; });
    return found == comparison.findings.end() || found->consequenceOf.empty() ? id : found->consequenceOf;
}

std::string resultText(CheckResult const& result) {
    std::string text = result.value;
    if (!result.why.empty()) text += (text.empty() ? "" : ": ") + result.why;
    return text;
}

std::string outcomeText(CheckResult const& result) {
    auto const text = resultText(result);
    return text.empty() ? std::string(nameOf(result.outcome)) : fmt::format("{}, {}", nameOf(result.outcome), text);
}

std::string cellTitle(Comparison const& comparison) { return comparison.cellName.empty() ? std::string(texts::kUnnamedCell) : comparison.cellName; }

std::string bounds(WorkedValue const& value) {
    auto const shown = [&value](std::string const& bound) {
        auto const number = quantity::Decimal::parse(bound);
        if (!number) return std::string("–");
        return value.unit == "month" ? bound + " months" : risk::texts::amount(*number, value.unit);
    };
    return fmt::format("{} / {} / {}", shown(value.min), shown(value.typ), shown(value.max));
}

// Notes of the quantity and of both sides, each once.
std::vector<std::string> notesOf(Derived const& derived) {
    std::vector<std::string> notes = derived.notes;
    auto const add = [&notes](std::vector<std::string> const& more, std::string_view whose) {
        for (auto const& note : more) {
            auto const said = whose.empty() ? note : fmt::format("{}: {}", whose, note);
            if (std::find(notes.begin(), notes.end(), said) == notes.end()) notes.push_back(said);
        }
    };
    auto const reference = derived.reference ? derived.reference->notes : std::vector<std::string>{};
    auto const candidate = derived.candidate ? derived.candidate->notes : std::vector<std::string>{};
    bool const alike = !derived.reference || !derived.candidate || reference == candidate;
    add(reference, alike ? "" : "Reference");
    add(candidate, alike ? "" : "Candidate");
    return notes;
}

}  // namespace

std::string checkCounts(Comparison const& comparison, Part part) {
    std::array<int, 3> counts{};
    for (auto const& check : comparison.cell) {
        auto const& result = check.*part;
        ++counts[static_cast<std::size_t>(result ? result->outcome : CheckOutcome::Open)];
    }
    return fmt::format("{} hold, {} violated, {} open", counts[0], counts[1], counts[2]);
}

void appendCellChecks(std::string& out, Comparison const& comparison) {
    if (comparison.cell.empty()) return;
    out += "\n" + capitals(texts::kCellChecks) + "\n";
    appendWrapped(out, "Cell       ", cellTitle(comparison));
    if (!comparison.circuitName.empty()) appendWrapped(out, "Circuit    ", comparison.circuitName);
    if (comparison.hasReference()) appendWrapped(out, "Reference  ", checkCounts(comparison, &CellCheck::reference));
    appendWrapped(out, "Candidate  ", checkCounts(comparison, &CellCheck::candidate));
    for (auto const* check : gravestFirst(comparison)) {
        auto const outcome = outcomeOf(*check);
        auto const word = outcome == CheckOutcome::Violated ? capitals(nameOf(outcome)) : std::string(nameOf(outcome));
        appendWrapped(out, fmt::format("  {:<9} ", word), check->title);
        if (!check->limit.empty()) appendWrapped(out, "            asked for  ", check->limit);
        bool const same = check->reference && check->candidate && check->reference->value == check->candidate->value && check->reference->outcome == outcome && check->reference->why == check->candidate->why;
        if (same) {
            if (auto const text = resultText(*check->candidate); !text.empty()) appendWrapped(out, "            both       ", text);
            continue;
        }
        if (check->reference) appendWrapped(out, "            reference  ", outcomeText(*check->reference));
        if (check->candidate) {
            auto const text = comparison.hasReference() ? outcomeText(*check->candidate) : resultText(*check->candidate);
            if (!text.empty()) appendWrapped(out, "            candidate  ", text);
        }
    }
}

std::string cellChecksHtml(Comparison const& comparison) {
    if (comparison.cell.empty()) return {};
    bool const two = comparison.hasReference();
    auto html = fmt::format("<h2>{} <small>{}{}{}</small></h2><p>Candidate: {}.", texts::kCellChecks, escaped(cellTitle(comparison)), comparison.circuitName.empty() ? "" : " · ",
                            escaped(comparison.circuitName), checkCounts(comparison, &CellCheck::candidate));
    if (two) html += fmt::format(" Reference: {}.", checkCounts(comparison, &CellCheck::reference));
    html += fmt::format("</p><table class=\"checks\"><tr><th scope=\"col\">check</th><th scope=\"col\">asked for</th>{}<th scope=\"col\">candidate</th></tr>", two ? "<th scope=\"col\">reference</th>" : "");
    auto const cell = [](std::optional<CheckResult> const& result, char const* cssClass) {
        if (!result) return fmt::format("<td class=\"{}\">–</td>", cssClass);
        return fmt::format("<td class=\"{}\"><b>{} {}</b> {}</td>", cssClass, texts::outcomeMark(result->outcome), nameOf(result->outcome), escaped(resultText(*result)));
    };
    for (auto const* check : gravestFirst(comparison)) {
        auto title = escaped(check->title);
        if (!check->finding.empty()) title = fmt::format("<a href=\"#f-{}\">{}</a>", escaped(cardOf(comparison, check->finding)), title);
        html += fmt::format("<tr><th scope=\"row\">{}</th><td>{}</td>{}{}</tr>", title, escaped(check->limit), two ? cell(check->reference, "r") : std::string(), cell(check->candidate, "k"));
    }
    return html + "</table>";
}

void appendDerived(std::string& out, Comparison const& comparison) {
    if (comparison.derived.empty()) return;
    out += fmt::format("\n{} ({})\n", capitals(texts::kWorkedOut), comparison.derived.size());
    appendWrapped(out, "", texts::kWorkedOutMeaning);
    for (auto const& derived : comparison.derived) {
        bool const alike = derived.reference && derived.candidate && bounds(*derived.reference) == bounds(*derived.candidate);
        appendWrapped(out, "  - ", derived.title);
        if (alike) {
            appendWrapped(out, "    both       ", bounds(*derived.candidate));
            continue;
        }
        if (derived.reference) appendWrapped(out, "    reference  ", bounds(*derived.reference));
        if (derived.candidate) appendWrapped(out, "    candidate  ", bounds(*derived.candidate));
        appendWrapped(out, "    formula    ", derived.formula);
        appendWrapped(out, "    from       ", risk::texts::inputList((derived.candidate ? derived.candidate : derived.reference)->inputs));
        for (auto const& note : notesOf(derived)) appendWrapped(out, "    note       ", note);
    }
    out += texts::kWorkedOutRest;
    out += '\n';
}

std::string derivedHtml(Comparison const& comparison) {
    if (comparison.derived.empty()) return {};
    bool const two = comparison.hasReference();
    auto html = fmt::format("<h2>{} <small>{}</small></h2><table><tr><th scope=\"col\">quantity</th>{}<th scope=\"col\">candidate</th></tr>", texts::kWorkedOut, texts::kWorkedOutMeaning,
                            two ? "<th scope=\"col\">reference</th>" : "");
    auto const cell = [](std::optional<WorkedValue> const& value, char const* cssClass) {
        if (!value) return fmt::format("<td class=\"{}\">–</td>", cssClass);
        return fmt::format("<td class=\"{}\"><b>{}</b><br>{}</td>", cssClass, escaped(bounds(*value)), escaped(risk::texts::inputList(value->inputs)));
    };
    for (auto const& derived : comparison.derived) {
        std::string notes;
        for (auto const& note : notesOf(derived)) notes += "<br>" + escaped(note);
        html += fmt::format("<tr><th scope=\"row\">{}<br><small>{}</small><small>{}</small></th>{}{}</tr>", escaped(derived.title), escaped(derived.formula), notes,
                            two ? cell(derived.reference, "r") : std::string(), cell(derived.candidate, "k"));
    }
    return html + "</table>";
}

std::vector<CellCheck const*> orderedChecks(Comparison const& comparison) { return gravestFirst(comparison); }
std::string checkText(CheckResult const& result) { return resultText(result); }
std::string workedBounds(WorkedValue const& value) { return bounds(value); }
std::vector<std::string> workedNotes(Derived const& derived) { return notesOf(derived); }

}  // namespace standin::report

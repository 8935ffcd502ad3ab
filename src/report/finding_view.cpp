// Tested by tests/src/report/finding_view_test.cpp.
#include "report/finding_view.h"

#include <algorithm>

#include <fmt/format.h>

#include "model/names.h"
#include "report/texts.h"

namespace standin::report {

using namespace model;

namespace {

std::string threeValues(std::string const& min, std::string const& typ, std::string const& max, std::string const& unit) {
    auto const shown = [](std::string const& value) { return value.empty() ? std::string("–") : value; };
    auto text = fmt::format("{} / {} / {}", shown(min), shown(typ), shown(max));
    if (!unit.empty()) text += " " + unit;
    return text;
}

std::string textOf(std::optional<Value> const& value) { return value ? value->text : std::string{}; }

}  // namespace

std::vector<SeverityGroup> groupBySeverity(Comparison const& comparison) {
    std::unordered_map<std::string_view, std::size_t> mainIndex;
    std::vector<FindingGroup> mains;
    for (auto const& finding : comparison.findings) {
        if (!finding.consequenceOf.empty()) continue;
        mainIndex.emplace(finding.id, mains.size());
        mains.push_back({&finding, {}});
    }
    for (auto const& finding : comparison.findings) {
        if (finding.consequenceOf.empty()) continue;
        auto const main = mainIndex.find(finding.consequenceOf);
        if (main != mainIndex.end()) mains[main->second].consequences.push_back(&finding);
        else mains.push_back({&finding, {}});
    }
    std::vector<SeverityGroup> groups;
    for (auto const severity : kSeverities) {
        SeverityGroup group{severity, {}};
        for (auto const& entry : mains) {
            if (entry.main->severity == severity) group.findings.push_back(entry);
        }
        if (!group.findings.empty()) groups.push_back(std::move(group));
    }
    return groups;
}

std::string countsLine(Comparison const& comparison) {
    auto const groups = groupBySeverity(comparison);
    std::string line;
    for (auto const severity : kSeverities) {
        std::size_t count = 0;
        for (auto const& group : groups) {
            if (group.severity == severity) count = group.findings.size();
        }
        line += fmt::format("{}{} {}", line.empty() ? "" : ", ", count, nameOf(severity));
    }
    return line;
}

std::string coverageLine(Comparison const& comparison) {
    auto const& coverage = comparison.coverage;
    return fmt::format("{} numbers and sentences compared, {} listed as not compared, {} unaccounted for", coverage.compared, coverage.listed, coverage.unaccounted);
}

std::string valuesOf(Side const& side) {
    if (side.min.empty() && side.typ.empty() && side.max.empty()) return side.text;
    return threeValues(side.min, side.typ, side.max, side.unit);
}

std::string placesOf(Finding const& finding) {
    std::string places;
    if (finding.reference && finding.reference->page > 0) places += fmt::format("reference page {}", finding.reference->page);
    if (finding.candidate && finding.candidate->page > 0) places += fmt::format("{}candidate page {}", places.empty() ? "" : ", ", finding.candidate->page);
    return places.empty() ? places : " (" + places + ")";
}

std::string verdictDetail(Verdict const& verdict) {
    std::string_view rest = verdict.sentence;
    auto const level = texts::levelText(verdict.level);
    if (!rest.starts_with(level)) return verdict.sentence;
    rest.remove_prefix(level.size());
    rest.remove_prefix(std::min(rest.find_first_not_of(":;,. "), rest.size()));
    return std::string(rest);
}

std::string titleOf(DocumentInfo const& document) {
    std::string title = document.partNumbers.empty() ? document.title : document.partNumbers.front();
    if (title.empty()) title = document.file;
    if (!document.revision.empty()) title += " rev " + document.revision;
    if (!document.maker.empty()) title += ", " + document.maker;
    return title + fmt::format(", {} {}", document.pages, document.pages == 1 ? "page" : "pages");
}

std::unordered_map<std::string_view, Parameter const*> parametersById(Datasheet const& datasheet) {
    std::unordered_map<std::string_view, Parameter const*> byId;
    for (auto const& parameter : datasheet.parameters) byId.emplace(parameter.id, &parameter);
    return byId;
}

std::string conditionOf(Parameter const& parameter) {
    if (parameter.condition.empty() || parameter.tableCondition.empty()) return parameter.condition + parameter.tableCondition;
    return parameter.condition + "; " + parameter.tableCondition;
}

std::string valuesOf(Parameter const& parameter) {
    return threeValues(textOf(parameter.min), textOf(parameter.typ), textOf(parameter.max), parameter.unit);
}

}  // namespace standin::report

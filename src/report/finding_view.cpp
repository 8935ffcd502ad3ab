// Tested by tests/src/report/finding_view_test.cpp.
#include "report/finding_view.h"

#include <algorithm>

#include <fmt/format.h>

#include "model/names.h"
#include "report/texts.h"
#include "risk/cell_texts.h"
#include "text/leaders.h"

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

std::string withoutLevel(std::string_view sentence, std::string_view level) {
    if (!sentence.starts_with(level)) return std::string(sentence);
    sentence.remove_prefix(level.size());
    sentence.remove_prefix(std::min(sentence.find_first_not_of(":;,. "), sentence.size()));
    return std::string(sentence);
}

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
    if (!comparison.hasReference()) {
        return fmt::format("{} parameters took part in the checks, {} did not; {} numbers of the sheet unaccounted for", coverage.compared, coverage.listed, coverage.unaccounted);
    }
    return fmt::format("{} numbers and sentences compared, {} listed as not compared, {} unaccounted for", coverage.compared, coverage.listed, coverage.unaccounted);
}

std::vector<CoverageRow> coverageRows(ComparisonCoverage const& coverage) {
    auto const& r = coverage.reference;
    auto const& c = coverage.candidate;
    auto const n = [](int value) { return static_cast<std::size_t>(std::max(0, value)); };
    std::vector<CoverageRow> rows{{"numbers printed", n(r.numbers), n(c.numbers)},
            {"in parameters", n(r.inParameters), n(c.inParameters)},
            {"in other tables", n(r.inTables), n(c.inTables)},
            {"in text", n(r.inText), n(c.inText)},
            {"in figures", n(r.inFigures), n(c.inFigures)},
            {"in running heads, page numbers, watermarks", n(r.inFurniture), n(c.inFurniture)},
            {"unaccounted for", r.unaccounted.size(), c.unaccounted.size()},
            {"sentences", n(r.sentences), n(c.sentences)},
            {"pages without a text layer", r.pagesWithoutText.size(), c.pagesWithoutText.size()},
            {"tables not read", r.unreadTables.size(), c.unreadTables.size()},
            {"figures not read", r.unreadFigures.size(), c.unreadFigures.size()},
            {"pins not read", r.unreadPins.size(), c.unreadPins.size()}};
    if (!r.drawnSigns.empty() || !c.drawnSigns.empty()) rows.push_back({"signs that are drawings, not read", r.drawnSigns.size(), c.drawnSigns.size()});
    // Only where recognition was asked for.
    if (!r.recognised.empty() || !c.recognised.empty()) rows.push_back({"lines recognised from pictures", r.recognised.size(), c.recognised.size()});
    if (!r.unrecognised.empty() || !c.unrecognised.empty()) rows.push_back({"letterings of pictures not made out", r.unrecognised.size(), c.unrecognised.size()});
    return rows;
}

std::vector<std::string> notReadLines(Datasheet const& sheet) {
    std::vector<std::string> lines;
    auto const& coverage = sheet.coverage;
    for (auto const& number : coverage.unaccounted) lines.push_back(fmt::format("page {}: the number {} was read and belongs to nothing that is compared", number.page, number.text));
    for (int const page : coverage.pagesWithoutText) lines.push_back(fmt::format("page {}: no text layer", page));
    for (auto const& id : coverage.unreadTables) {
        auto const table = std::find_if(sheet.tables.begin(), sheet.tables.end(), [&](Table const& t) { return t.id == id; });
        lines.push_back(table == sheet.tables.end() ? fmt::format("{}: a table", id) : fmt::format("page {}: a table", table->page));
    }
    for (auto const& id : coverage.unreadFigures) {
        auto const figure = std::find_if(sheet.figures.begin(), sheet.figures.end(), [&](Figure const& f) { return f.id == id; });
        if (figure == sheet.figures.end()) lines.push_back(fmt::format("{}: a figure", id));
        else lines.push_back(fmt::format("page {}: a figure{}{}", figure->page, figure->caption.empty() ? "" : ", ", figure->caption));
    }
    for (auto const& pin : coverage.unreadPins) lines.push_back(fmt::format("page {}: pins, {}", pin.page, pin.text));
    for (auto const& [page, count] : unrecognisedByPage(coverage)) lines.push_back(fmt::format("page {}: {} letterings of pictures", page, count));
    for (auto const& sign : coverage.drawnSigns) lines.push_back(fmt::format("page {}: a drawn sign {}", sign.page, sign.text));
    return lines;
}

std::map<int, std::size_t> unrecognisedByPage(Coverage const& coverage) {
    std::map<int, std::size_t> pages;
    for (auto const& place : coverage.unrecognised) ++pages[place.page];
    return pages;
}

std::string sectionTitle(Datasheet const& sheet, std::string const& id) {
    auto const found = std::find_if(sheet.sections.begin(), sheet.sections.end(), [&](Section const& section) { return section.id == id; });
    return found == sheet.sections.end() ? "–" : fmt::format("{} (page {})", found->title, found->page);
}

std::string limitText(risk::BenchLimit const& limit) {
    auto const bound = [](std::string const& value, bool excluded, std::string_view excludedWord) {
        return value.empty() ? std::string("–") : excluded ? fmt::format("{} {}", excludedWord, value) : value;
    };
    auto text = fmt::format("{}: min {}, max {}{}{} ({})", limit.title, bound(limit.min, limit.aboveMin, "above"), bound(limit.max, limit.belowMax, "below"),
                            limit.unit.empty() ? "" : " ", limit.unit, limit.from);
    if (!limit.condition.empty()) text += "; " + limit.condition;
    return text;
}

std::string valuesOf(Side const& side) {
    bool const values = !side.min.empty() || !side.typ.empty() || !side.max.empty();
    auto text = values ? threeValues(side.min, side.typ, side.max, side.unit) : text::leadersReplaced(side.text, "…");
    if (side.recognised) text += kRecognisedMark;
    return text;
}

bool isOneSided(Finding const& finding) { return finding.relation == Relation::OnlyReference || finding.relation == Relation::OnlyCandidate; }

std::string placesOf(Finding const& finding) {
    std::string places;
    if (finding.reference && finding.reference->page > 0) places += fmt::format("reference page {}", finding.reference->page);
    if (finding.candidate && finding.candidate->page > 0) places += fmt::format("{}candidate page {}", places.empty() ? "" : ", ", finding.candidate->page);
    return places.empty() ? places : " (" + places + ")";
}

std::string verdictDetail(Verdict const& verdict) { return withoutLevel(verdict.sentence, texts::levelText(verdict.level)); }

std::string verdictDetail(Comparison const& comparison) { return withoutLevel(comparison.verdict.sentence, verdictLevel(comparison)); }

std::string verdictLevel(Comparison const& comparison) {
    auto const level = comparison.verdict.level;
    return comparison.hasReference() ? std::string(texts::levelText(level)) : risk::texts::checkLevelText(level);
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

ComparedParameters parametersOf(Pair const& pair, SheetParameters const& sheets) {
    auto const find = [](auto const& byId, std::string const& id) {
        auto const found = byId.find(id);
        return found == byId.end() ? nullptr : found->second;
    };
    return {find(sheets.reference, pair.reference), find(sheets.candidate, pair.candidate)};
}

ComparedParameters parametersOf(Finding const& finding, Comparison const& comparison, SheetParameters const& sheets) {
    if (finding.pair < 0 || static_cast<std::size_t>(finding.pair) >= comparison.pairs.size()) return {};
    return parametersOf(comparison.pairs[static_cast<std::size_t>(finding.pair)], sheets);
}

std::string conditionOf(Parameter const& parameter) {
    if (parameter.condition.empty() || parameter.tableCondition.empty()) return parameter.condition + parameter.tableCondition;
    return parameter.condition + "; " + parameter.tableCondition;
}

std::string valuesOf(Parameter const& parameter) {
    auto text = threeValues(textOf(parameter.min), textOf(parameter.typ), textOf(parameter.max), parameter.unit);
    if (parameter.recognised) text += kRecognisedMark;
    return text;
}

std::string clipped(std::string text, std::size_t longest) {
    if (text.size() <= longest) return text;
    std::size_t end = longest;
    while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0) == 0x80) --end;
    text.resize(end);
    return text + " …";
}

}  // namespace standin::report

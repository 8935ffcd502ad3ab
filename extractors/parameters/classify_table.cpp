#include "extractors/parameters/classify_table.h"

// Word lists over folded captions and titles; roles found in the head. Tested by
// tests/extractors/parameters/classify_table_test.cpp.

#include <algorithm>
#include <array>

#include "extractors/parameters/shapes.h"
#include "extractors/parameters/text_forms.h"
#include "extractors/parameters/value_cell.h"
#include "extractors/sections/sections.h"

namespace standin::parameters {

namespace {

using model::ParameterKind;
using model::SectionKind;
using model::TableKind;
using enum ColumnRole;

template <std::size_t N>
bool saysAny(std::string const& text, std::array<std::string_view, N> const& words) {
    return std::ranges::any_of(words, [&](std::string_view word) { return contains(text, word); });
}

constexpr std::array<std::string_view, 16> kRating = {"absolute max", "maximum rating", "limiting value", "absolute rating", "max ratings", "最大额定", "极限", "绝对最大", "最大定格", "grenzwert", "grenzdaten", "esd rating", "dissipation rating", "handling rating", "предельн", "額定"};
constexpr std::array<std::string_view, 16> kOperating = {"recommended operating", "operating condition", "operating rating", "operating range", "推荐工作", "建议工作", "推薦工作", "推奨動作", "動作範囲", "empfohlene", "betriebsbereich", "工作条件", "рекомендуем", "工作范围", "推荐使用", "recommended dc"};
constexpr std::array<std::string_view, 10> kThermal = {"thermal", "热特性", "热阻", "热性能", "熱特性", "熱抵抗", "thermische", "wärmewiderstand", "power dissipation", "тепло"};
constexpr std::array<std::string_view, 12> kTiming = {"timing", "switching characteristic", "delay time", "时序", "延迟时间", "スイッチング特性", "遅延時間", "schaltzeiten", "verzögerungszeit", "ac characteristics timing", "setup and hold", "временн"};
constexpr std::array<std::string_view, 25> kCharacteristic = {"electrical", "characteristic", "specification", "dc ", "ac ", "电气", "电特性", "电参数", "电学", "电性", "直流", "交流", "典型参数", "参数", "电氣", "電気的", "特性", "elektrisch", "kennwerte", "kenndaten", "электрическ", "характеристик", "quick reference", "параметр", "性能"};
constexpr std::array<std::string_view, 14> kMechanical = {"package dimension", "package outline", "mechanical data", "dimensions", "外形尺寸", "封装尺寸", "外形寸法", "tape", "reel", "abmessungen", "maßbild", "land pattern", "габарит", "封装信息"};
constexpr std::array<std::string_view, 16> kDimensionTitles = {"millimeter", "millimetre", "inch", "(mm)", "[mm]", "尺寸", "毫米", "英寸", "dimension", "寸法", "mm", "dim.", "dim", "мм", "abmessung", "mils"};
constexpr std::array<std::string_view, 10> kRevision = {"revision", "change description", "修订", "版本", "改訂", "变更", "changes", "änderung", "date of change", "release date"};
constexpr std::array<std::string_view, 14> kOrdering = {"ordering", "order code", "selection guide", "product name list", "product list", "选型", "订购", "订货", "产品目录", "製品名", "bestell", "device summary", "part number", "产品列表"};

std::string allTitles(ColumnPlan const& plan) {
    std::string out;
    for (std::string const& title : plan.titles) out = joined(out, folded(title));
    return out;
}

bool isSpecificationSection(SectionKind kind) {
    return kind == SectionKind::Ratings || kind == SectionKind::OperatingConditions || kind == SectionKind::Thermal || kind == SectionKind::Characteristics ||
           kind == SectionKind::Timing;
}

// "Pin No.", "SOT-23-5 pin number": the numbers below it are no values.
bool numbersPins(std::string_view title) {
    std::string const text = folded(title);
    return contains(text, "pin no") || contains(text, "pin num") || contains(text, "pin #") || contains(text, "引脚号") || contains(text, "管脚号") || contains(text, "номер вывода");
}

// Share of body cells in value columns that hold a number.
double numericShare(model::Table const& table, TableText const& text, ColumnPlan const& plan) {
    int filled = 0;
    int numbers = 0;
    for (std::size_t i = 0; i < table.cells.size(); ++i) {
        model::Cell const& cell = table.cells[i];
        if (cell.row < table.headRows || cell.column < 0 || cell.column >= static_cast<int>(plan.roles.size())) continue;
        ColumnRole const role = plan.roles[static_cast<std::size_t>(cell.column)];
        if (role != Min && role != Typ && role != Max && role != Value) continue;
        auto const column = static_cast<std::size_t>(cell.column);
        if (column < plan.titles.size() && numbersPins(plan.titles[column])) continue;
        std::string const& words = text.cells[i].text;
        if (saysNothing(words)) continue;
        ++filled;
        if (hasDigit(words)) ++numbers;
    }
    return filled > 0 ? static_cast<double>(numbers) / filled : 0.0;
}

// Body cells in value columns carry their unit ("-0.3 to 7 V").
bool unitsInCells(model::Table const& table, ColumnPlan const& plan, TableText const& text) {
    int filled = 0;
    int united = 0;
    for (std::size_t i = 0; i < table.cells.size(); ++i) {
        model::Cell const& cell = table.cells[i];
        if (cell.row < table.headRows || cell.column < 0 || cell.column >= static_cast<int>(plan.roles.size())) continue;
        if (plan.roles[static_cast<std::size_t>(cell.column)] != Value) continue;
        std::string words = text.cells[i].text;
        if (!hasDigit(words)) continue;
        ++filled;
        std::u32string const codes = decoded(words);
        std::size_t end = codes.size();
        while (end > 0 && !isDigit(codes[end - 1])) --end;
        bool const behind = end > 0 && end < codes.size() && isUnitLike(encoded(std::u32string_view(codes).substr(end)));
        // "250 mV max", "3.3 V ±2 %"
        if (behind || !readValueCell(words, Slot::Single).unit.empty()) ++united;
    }
    return filled > 0 && united * 2 >= filled;
}

// In font heights.
constexpr float kHeadingReach = 4.5F;  // from a table to its heading, with a note between
constexpr float kHeadingPitch = 1.7F;  // between the lines of one heading
constexpr float kHeadingSize = 1.15F;  // of the body's size
constexpr std::size_t kLongestHeading = 90;

// The heading right above the table and over its own columns: sections follow each
// other down the page, but tables may stand side by side. Empty: none.
std::string headingAbove(model::Table const& table, model::PageLayout const& page) {
    std::vector<model::TextLine const*> lines;
    for (model::TextLine const& line : page.lines) {
        if (line.wordCount == 0 || page.words[line.firstWord].owner == model::Owner::Furniture) continue;
        bool const above = line.direction == model::Direction::Right && line.box.centre().y < table.box.y0;
        bool const over = model::overlap(line.box.x0, line.box.x1, table.box.x0, table.box.x1) > 0.5F * line.box.width();
        bool const set = line.bold || line.size > kHeadingSize * page.bodySize;
        if (above && over && set && table.box.y0 - line.baseline < kHeadingReach * line.size) lines.push_back(&line);
    }
    std::ranges::stable_sort(lines, std::ranges::greater{}, [](model::TextLine const* line) { return line->baseline; });
    std::string heading;
    model::TextLine const* below = nullptr;
    for (model::TextLine const* line : lines) {
        if (below != nullptr && below->baseline - line->baseline > kHeadingPitch * line->size) break;
        heading = joined(model::lineText(page, *line), heading);
        below = line;
    }
    return heading.size() <= kLongestHeading ? heading : std::string{};
}

// "MAXIMUM RATINGS (TA = 25 °C)": what a lead says in front of its conditions. One that
// goes on from a heading ("over recommended operating conditions") says nothing.
ParameterKind kindOfLead(std::string const& lead) {
    std::string const low = folded(lead);
    bool const goesOn = low.starts_with("at ") || low.starts_with("over ") || low.starts_with("under ") || low.starts_with("for ");
    bool const opens = !lead.empty() && !(lead.front() >= 'a' && lead.front() <= 'z') && lead.front() != '(' && !goesOn;
    return opens ? kindSaid(std::string_view(lead).substr(0, lead.find('('))) : ParameterKind::Other;
}

// Holds a typical value, or conditions on every other line at least.
bool fillsItsColumns(model::Table const& table, ColumnPlan const& plan) {
    int typical = 0;
    int conditions = 0;
    for (model::Cell const& cell : table.cells) {
        if (cell.row < table.headRows || !hasDigit(cell.text)) continue;
        ColumnRole const role = plan.roles[static_cast<std::size_t>(cell.column)];
        typical += role == Typ ? 1 : 0;
        conditions += role == Condition ? cell.rowSpan : 0;
    }
    return typical > 0 || conditions * 2 >= table.rows - table.headRows;
}

}  // namespace

model::Section const* sectionOf(model::Table const& table, std::span<model::Section const> sections) {
    constexpr model::Points kLevel = 2;  // a heading beside the table's first line
    if (table.section.empty()) return sections::sectionAt(sections, table.page, table.box.y0 + kLevel);
    auto const found = std::ranges::find(sections, table.section, &model::Section::id);
    return found != sections.end() ? &*found : nullptr;
}

TableKind classifyTable(model::Table const& table, TableText const& text, ColumnPlan const& plan, model::Section const* section) {
    std::string const titles = allTitles(plan);
    std::string const caption = folded(joined(table.caption, table.lead));
    SectionKind const kind = section != nullptr ? section->kind : SectionKind::Other;

    int const limits = (plan.minTitle ? 1 : 0) + (plan.typTitle ? 1 : 0) + (plan.maxTitle ? 1 : 0);
    bool const named = plan.has(Name) || plan.has(Symbol) || plan.transposed;
    bool const valued = !plan.groups.empty() && numericShare(table, text, plan) >= 0.34;
    bool const dimensional = saysAny(titles, kDimensionTitles) || saysAny(caption, kMechanical);

    // a table that says plainly whose pins it lists, wherever it stands
    bool const pinNumbers = plan.has(Pin) || numbersPins(titles);
    if (pinNumbers && plan.has(PinName) && limits == 0 && !plan.unitTitle && !valued) return TableKind::Pins;

    if (kind == SectionKind::Revision || (saysAny(titles, kRevision) && contains(titles, "date")) || (saysAny(titles, kRevision) && limits == 0 && !plan.has(Unit) && !valued)) {
        if (limits == 0 && !plan.has(Unit)) return TableKind::Revision;
    }
    if (dimensional && !plan.unitTitle && (kind == SectionKind::Package || kind == SectionKind::Packing || kind == SectionKind::Other || limits == 0 || !plan.nameTitle)) {
        bool const metric = contains(titles, "mm") || contains(titles, "millim") || contains(titles, "inch") || contains(titles, "尺寸") || contains(titles, "毫米") || kind == SectionKind::Package;
        if (metric || saysAny(caption, kMechanical)) return TableKind::Package;
    }
    if ((kind == SectionKind::Package || kind == SectionKind::Packing) && !(plan.unitTitle && plan.nameTitle)) return TableKind::Package;

    bool const pinTitles = (plan.has(Pin) || contains(titles, "pin") || contains(titles, "引脚") || contains(titles, "管脚") || contains(titles, "terminal") || contains(titles, "端子")) &&
                           limits == 0 && !plan.unitTitle;
    if (pinTitles && (plan.has(PinName) || plan.has(Name) || plan.has(Symbol) || kind == SectionKind::Pins)) return TableKind::Pins;
    if (kind == SectionKind::Pins && limits == 0 && !plan.unitTitle && table.columns >= 2 && table.columns <= 8) return TableKind::Pins;

    // parts around this one (diodes, inductors) are chosen there, not its own versions
    bool const around = kind == SectionKind::Application || kind == SectionKind::Function || kind == SectionKind::TestCircuit || kind == SectionKind::Curves;
    if (around && !saysAny(caption, kOrdering) && !saysAny(titles, kOrdering) && plan.has(Part) && limits < 2 && !plan.unitTitle) return TableKind::Other;
    bool const partLines = plan.has(Part) && (!plan.has(Name) || limits == 0) && !plan.unitTitle;
    if (partLines && limits < 2) return TableKind::Ordering;
    bool const choosing = kind == SectionKind::Ordering || kind == SectionKind::Selection || kind == SectionKind::Marking || saysAny(caption, kOrdering);
    if (plan.has(Part) && !plan.has(Name) && !plan.has(Symbol) && (choosing || !plan.transposed)) return TableKind::Ordering;
    if (choosing && limits < 2 && !plan.unitTitle) return TableKind::Ordering;
    if (kind == SectionKind::Legal) return TableKind::Other;

    if (!named || !valued) return TableKind::Other;
    if (limits >= 1 || plan.carried) return TableKind::Specification;
    bool const united = plan.has(Unit) || unitsInCells(table, plan, text);
    if (plan.valueTitle && united) return TableKind::Specification;
    if (table.evidence.leaders && united) return TableKind::Specification;
    bool const saysSpecification = saysAny(caption, kRating) || saysAny(caption, kOperating) || saysAny(caption, kThermal) || contains(caption, "electrical characteristics") ||
                                   contains(caption, "характеристик") || contains(caption, "kenndaten");
    if ((isSpecificationSection(kind) || saysSpecification) && united) return TableKind::Specification;
    if (plan.has(Unit) && plan.headed && (plan.nameTitle || plan.symbolTitle)) return TableKind::Specification;
    return TableKind::Other;
}

ParameterKind kindSaid(std::string_view heading) {
    std::string const text = folded(heading) + " ";
    if (saysAny(text, kMechanical)) return ParameterKind::Mechanical;
    if (saysAny(text, kRating)) return ParameterKind::Rating;
    if (saysAny(text, kOperating)) return ParameterKind::OperatingCondition;
    if (saysAny(text, kTiming)) return ParameterKind::Timing;
    // "Maximum ratings and thermal characteristics" was a rating above
    if (saysAny(text, kThermal)) return ParameterKind::Thermal;
    if (saysAny(text, kCharacteristic)) return ParameterKind::Characteristic;
    return ParameterKind::Other;
}

ParameterKind parameterKindOf(model::Table const& table, ColumnPlan const& plan, model::Section const* section, model::PageLayout const* page) {
    // A sheet may head its characteristics table as ratings: conditions and three limits say
    // otherwise, unless both conditions and typical values are mostly left out.
    bool const fullTable = plan.has(Condition) && plan.minTitle && plan.typTitle && plan.maxTitle && fillsItsColumns(table, plan);
    auto corrected = [&](ParameterKind kind) { return kind == ParameterKind::Rating && fullTable ? ParameterKind::Characteristic : kind; };
    std::string titles;
    for (std::string const& title : plan.titles) titles = joined(titles, title);
    if (plan.titles.size() > 0 && contains(folded(titles), "thermal metric")) return ParameterKind::Thermal;
    ParameterKind const caption = kindSaid(table.caption);
    if (caption != ParameterKind::Other) return corrected(caption);
    ParameterKind const heading = page != nullptr ? kindSaid(headingAbove(table, *page)) : ParameterKind::Other;
    if (heading != ParameterKind::Other) return corrected(heading);
    ParameterKind const lead = kindOfLead(table.lead);
    if (lead != ParameterKind::Other) return corrected(lead);
    if (section != nullptr) {
        switch (section->kind) {
            case SectionKind::Ratings: return corrected(ParameterKind::Rating);
            case SectionKind::OperatingConditions: return ParameterKind::OperatingCondition;
            case SectionKind::Thermal: return ParameterKind::Thermal;
            case SectionKind::Characteristics: return ParameterKind::Characteristic;
            case SectionKind::Timing: return ParameterKind::Timing;
            case SectionKind::Package: return ParameterKind::Mechanical;
            default: break;
        }
        ParameterKind const said = kindSaid(section->title);
        if (said != ParameterKind::Other) return corrected(said);
    }
    if (plan.minTitle || plan.typTitle || plan.maxTitle) return ParameterKind::Characteristic;
    return ParameterKind::Other;
}

}  // namespace standin::parameters

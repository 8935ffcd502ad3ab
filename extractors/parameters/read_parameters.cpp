#include "extractors/parameters/read_parameters.h"

// Table by table: text, segments, column plan, kind; rows of specification
// tables become parameters; lists of ratings are read from what is left. The
// family of the vocabulary is decided once all names are known. Tested by
// tests/extractors/parameters/read_parameters_test.cpp.

#include <algorithm>
#include <map>
#include <optional>
#include <set>

#include <fmt/format.h>

#include "extractors/parameters/classify_table.h"
#include "extractors/parameters/column_carry.h"
#include "extractors/parameters/column_plan.h"
#include "extractors/parameters/footnotes.h"
#include "extractors/parameters/grading.h"
#include "extractors/parameters/name_parts.h"
#include "extractors/parameters/naming.h"
#include "extractors/parameters/rating_lists.h"
#include "extractors/parameters/shapes.h"
#include "extractors/parameters/table_rows.h"
#include "extractors/parameters/table_text.h"
#include "extractors/parameters/text_forms.h"
#include "extractors/parameters/turned_table.h"
#include "model/crew.h"

namespace standin::parameters {

namespace {

constexpr std::size_t kTextForFamily = 8192;  // bytes of the first page's text

model::PageLayout* pageOf(std::span<model::PageLayout> pages, int number) {
    auto const found = std::ranges::lower_bound(pages, number, {}, &model::PageLayout::page);
    return found != pages.end() && found->page == number ? &*found : nullptr;
}

// The condition stated for a whole table, out of its lead or caption.
std::string statedFor(model::Table const& table) {
    std::vector<std::string> marks;
    std::string const lead = withoutReferences(tidied(table.lead), marks);
    if (!lead.empty()) return withoutBrackets(lead);
    std::string const caption = withoutReferences(tidied(table.caption), marks);
    std::size_t const open = caption.find('(');
    if (open != std::string::npos && hasRelation(caption.substr(open)) && caption.ends_with(")")) return caption.substr(open + 1, caption.size() - open - 2);
    return {};
}

// "Table 5: Electrical characteristics of XX7805 (TJ = 25 °C)": the part that a caption speaks of; empty: none.
std::string partOfCaption(std::string const& raw) {
    std::string caption = tidied(raw);
    caption = trimmed(std::string_view(caption).substr(0, caption.find('(')));
    while (caption.ends_with(".") || caption.ends_with(":") || caption.ends_with(",")) caption.pop_back();
    std::string const low = folded(caption);
    for (std::string_view link : {" of ", " for ", " für "}) {
        std::size_t const at = low.rfind(link);
        if (at == std::string::npos || low.size() != caption.size()) continue;
        std::string part = trimmed(std::string_view(caption).substr(at + link.size()));
        if (folded(part).starts_with("the ")) part = trimmed(std::string_view(part).substr(4));
        if (hasDigit(part) && isPartLike(part) && !isPackageLike(part)) return part;
    }
    return {};
}

std::string leadingLetters(std::string const& part) {
    std::string const low = folded(part);
    return low.substr(0, low.find_first_of("0123456789"));
}

// At least half of the rows are named by words or by a symbol.
bool namesMost(std::vector<PrintedRow> const& rows) {
    std::size_t named = 0;
    for (PrintedRow const& row : rows) {
        if (hasOrdinaryWord(row.name) || isSymbolLike(row.symbol) || isSymbolLike(row.name) || !row.condition.empty()) ++named;
    }
    return named * 2 >= rows.size();
}

// "Continuous", "NA": words that stand in value columns by right.
bool saysKnownWords(PrintedRow const& row) {
    for (std::optional<model::Value> const& value : {row.min, row.typ, row.max}) {
        if (!value) continue;
        std::string const text = folded(value->text);
        for (std::string_view word : {"continuous", "unlimited", "indefinite", "infinite", "internally limited", "na", "n/a", "n.a.", "tbd", "∞", "连续", "无限"}) {
            if (text == word) return true;
        }
    }
    return false;
}

// What a table hands on to the one that continues it.
struct Carried {
    ColumnPlan plan;
    RowContext context;
    std::string tableCondition;
    model::ParameterKind kind = model::ParameterKind::Other;
    model::TableKind tableKind = model::TableKind::Other;
};

class Reader {
public:
    Reader(std::vector<model::Table>& tables, std::span<model::PageLayout> pages, std::vector<model::Section> const& sections)
        : m_tables(tables), m_pages(pages), m_sections(sections), m_footnotes(std::span<model::PageLayout const>(pages.data(), pages.size())) {}

    std::vector<model::Parameter> read();

private:
    void readTable(model::Table& table);
    void readOnItsSide(model::Table& table, model::Table const& upright, model::Section const* section);
    void findPartsOfCaptions();
    [[nodiscard]] std::optional<ColumnPlan> planAbove(model::Table const& table, Carried const*& before) const;
    void add(PrintedRow& row, model::Table const& table, ColumnPlan const& plan, model::ParameterKind kind);
    void endLastRow(model::Table const& table, RowContext& context);
    void takeMark(std::string& text, model::Table const& table, std::vector<std::string>& marks);
    void own(model::Table const& table, std::vector<int> const& cells, model::Owner owner);

    std::vector<model::Table>& m_tables;
    std::span<model::PageLayout> m_pages;
    std::vector<model::Section> const& m_sections;
    Footnotes m_footnotes;
    ByDesign m_byDesign;
    CellKinds m_kinds;
    std::map<std::string, Carried> m_carried;
    std::map<std::string, std::string> m_partOf;  // by table: the part that its caption speaks of
    std::vector<model::Parameter> m_out;
};

void Reader::own(model::Table const& table, std::vector<int> const& cells, model::Owner owner) {
    model::PageLayout* page = pageOf(m_pages, table.page);
    if (page == nullptr) return;
    for (int index : cells) {
        for (std::uint32_t word : table.cells[static_cast<std::size_t>(index)].words) {
            if (word < page->words.size() && page->words[word].owner != model::Owner::Furniture) page->words[word].owner = owner;
        }
    }
}

// "RGT (2)": a mark that is not raised, told by the note below the table.
void Reader::takeMark(std::string& text, model::Table const& table, std::vector<std::string>& marks) {
    if (!text.ends_with(")") || text.size() < 4) return;
    std::size_t const open = text.rfind('(');
    if (open == std::string::npos || open == 0 || text.size() - open > 4) return;
    std::string const key = text.substr(open + 1, text.size() - open - 2);
    if (key.empty() || key.find_first_not_of("0123456789") != std::string::npos || !m_footnotes.hasBracketed(table, key)) return;
    marks.push_back(key);
    text = trimmed(std::string_view(text).substr(0, open));
}

void Reader::add(PrintedRow& row, model::Table const& table, ColumnPlan const& plan, model::ParameterKind kind) {
    for (std::string* text : {&row.name, &row.symbol, &row.condition}) takeMark(*text, table, row.marks);
    model::Parameter parameter;
    parameter.section = table.section;
    parameter.table = table.id;
    parameter.kind = kind;
    parameter.name = std::move(row.name);
    parameter.symbol = std::move(row.symbol);
    parameter.condition = std::move(row.condition);
    parameter.tableCondition = std::move(row.tableCondition);
    parameter.variant = std::move(row.variant);
    parameter.min = std::move(row.min);
    parameter.typ = std::move(row.typ);
    parameter.max = std::move(row.max);
    parameter.unit = std::move(row.unit);
    parameter.notes = m_footnotes.resolve(table, row.marks);
    parameter.page = table.page;
    parameter.box = row.box;
    parameter.printed = row.printed;
    fillInterval(parameter);
    parameter.grade = gradeOf(parameter, headedNominal(plan), m_byDesign);
    parameter.confidence = confidenceOf(parameter, row, plan, table);
    own(table, row.cells, model::Owner::Parameter);
    m_out.push_back(std::move(parameter));
}

// The last line before a page break goes on at the top of the next page.
void Reader::endLastRow(model::Table const& table, RowContext& context) {
    if (!context.lateName.empty() && !m_out.empty() && !m_out.back().table.empty() && m_out.back().page + 1 == table.page) {
        std::string const from = m_out.back().table;
        std::string const name = m_out.back().name;
        std::string const condition = m_out.back().condition;
        for (std::size_t i = m_out.size(); i-- > 0 && m_out[i].table == from && m_out[i].name == name && m_out[i].condition == condition;) {
            m_out[i].name = joined(name, context.lateName);
            m_out[i].condition = joined(condition, context.lateCondition);
            m_out[i].confidence.score *= 0.9;
            m_out[i].confidence.reasons.emplace_back("the line goes on over a page break");
        }
    }
    context.atTop = false;
    context.lateName.clear();
    context.lateCondition.clear();
}

// The plan of the table right above, for a part without a head; `before` is set to what that table hands on.
std::optional<ColumnPlan> Reader::planAbove(model::Table const& table, Carried const*& before) const {
    if (&table == m_tables.data()) return std::nullopt;
    model::Table const& above = *(&table - 1);
    auto const found = m_carried.find(above.id);
    if (found == m_carried.end() || found->second.tableKind != model::TableKind::Specification) return std::nullopt;
    std::optional<ColumnPlan> plan = planFromAbove(table, above, found->second.plan);
    if (plan) before = &found->second;
    return plan;
}

// Its lines are those of `upright`. It neither goes on from another table nor into one.
void Reader::readOnItsSide(model::Table& table, model::Table const& upright, model::Section const* section) {
    model::PageLayout const* page = pageOf(m_pages, table.page);
    TableText const text(upright, page);
    Segment const whole{0, upright.headRows, upright.rows};
    ColumnPlan const plan = planColumns(upright, text, whole, nullptr, m_kinds);
    table.kind = classifyTable(upright, text, plan, section);
    if (table.kind != model::TableKind::Specification) return;
    RowContext context;
    std::vector<PrintedRow> rows = readRows(upright, text, page, whole, plan, statedFor(table), context);
    if (!namesMost(rows)) {
        table.kind = model::TableKind::Other;
        return;
    }
    model::ParameterKind const kind = parameterKindOf(upright, plan, section, page);
    for (PrintedRow& row : rows) add(row, upright, plan, kind);
}

void Reader::readTable(model::Table& table) {
    model::PageLayout const* page = pageOf(m_pages, table.page);
    TableText const text(table, page);
    std::vector<int> all(table.cells.size());
    for (std::size_t i = 0; i < all.size(); ++i) all[i] = static_cast<int>(i);
    own(table, all, model::Owner::Table);

    Carried const* before = nullptr;
    if (!table.continues.empty()) {
        auto const found = m_carried.find(table.continues);
        if (found != m_carried.end()) before = &found->second;
    }
    model::Section const* section = sectionOf(table, m_sections);
    if (table.section.empty() && section != nullptr) table.section = section->id;
    if (auto const upright = setUpright(table, text)) {
        readOnItsSide(table, *upright, section);
        return;
    }
    std::vector<Segment> const segments = segmentsOf(table, text);
    ColumnPlan const* planBefore = before != nullptr ? &before->plan : nullptr;
    std::optional<ColumnPlan> const fromAbove = before == nullptr && segments.front().bodyFirst == 0 ? planAbove(table, before) : std::nullopt;
    if (fromAbove) planBefore = &*fromAbove;
    ColumnPlan plan = planColumns(table, text, segments.front(), planBefore, m_kinds);
    table.kind = classifyTable(table, text, plan, section);
    if (before != nullptr && plan.carried) table.kind = before->tableKind;

    Carried carried;
    carried.tableKind = table.kind;
    carried.tableCondition = statedFor(table);
    if (carried.tableCondition.empty() && before != nullptr) carried.tableCondition = before->tableCondition;
    if (table.kind == model::TableKind::Specification) {
        if (fromAbove) {
            carried.context = {};  // a heading stands between
        } else if (before != nullptr) {
            carried.context = before->context;
            carried.context.atTop = true;
        } else {
            // the same section on the next page, in columns of its own
            model::Table const* above = &table != m_tables.data() ? &table - 1 : nullptr;
            carried.context.atTop = above != nullptr && above->page + 1 == table.page && above->section == table.section && !table.section.empty();
        }
        carried.kind = before != nullptr && plan.carried ? before->kind : parameterKindOf(table, plan, section, page);
        for (std::size_t i = 0; i < segments.size(); ++i) {
            if (i > 0) {
                ColumnPlan next = planColumns(table, text, segments[i], &plan, m_kinds);
                plan = std::move(next);
            }
            std::vector<PrintedRow> rows = readRows(table, text, page, segments[i], plan, carried.tableCondition, carried.context);
            if (!namesMost(rows)) {
                // numbers beside numbers: the axes of a graph, a look-up table
                table.kind = carried.tableKind = model::TableKind::Other;
                continue;
            }
            // prose in value columns: columns were taken for others, everywhere in the table
            std::size_t const prose = static_cast<std::size_t>(std::ranges::count_if(rows, [](PrintedRow const& row) { return row.words && !saysKnownWords(row); }));
            if (prose * 10 > rows.size()) {
                for (PrintedRow& row : rows) row.doubts.emplace_back("words in value columns of the table");
            }
            endLastRow(table, carried.context);
            auto const part = m_partOf.find(table.id);
            for (PrintedRow& row : rows) {
                if (part != m_partOf.end() && row.variant.empty()) row.variant = part->second;
                add(row, table, plan, carried.kind);
            }
        }
    }
    carried.plan = std::move(plan);
    m_carried.insert_or_assign(table.id, std::move(carried));
}

// Where captions tell tables of several parts apart, each table is that part's. One part alone is the whole sheet's.
// Captions name parts where two or more of a series are named; a single name is that of the
// whole sheet, one of other letters that of something else ("thermal data for JESD51-7").
void Reader::findPartsOfCaptions() {
    std::map<std::string, std::set<std::string>> series;  // leading letters -> parts
    for (model::Table const& table : m_tables) {
        std::string part = partOfCaption(table.caption);
        if (part.empty() && !table.continues.empty()) {
            auto const before = m_partOf.find(table.continues);
            if (before != m_partOf.end()) part = before->second;
        }
        if (part.empty()) continue;
        series[leadingLetters(part)].insert(folded(part));
        m_partOf.insert_or_assign(table.id, std::move(part));
    }
    std::erase_if(m_partOf, [&](auto const& named) { return series[leadingLetters(named.second)].size() < 2; });
}

std::vector<model::Parameter> Reader::read() {
    findPartsOfCaptions();
    for (model::Table& table : m_tables) readTable(table);
    for (model::Parameter& parameter : readRatingLists(m_pages, m_tables, m_sections)) m_out.push_back(std::move(parameter));
    if (!std::ranges::is_sorted(m_out, {}, &model::Parameter::page)) std::ranges::stable_sort(m_out, {}, &model::Parameter::page);
    return std::move(m_out);
}

std::string firstText(std::span<model::PageLayout const> pages) {
    std::string out;
    for (model::PageLayout const& page : pages) {
        for (model::Word const& word : page.words) {
            if (out.size() >= kTextForFamily) return out;
            if (!out.empty()) out.push_back(' ');
            out += word.text;
        }
        break;
    }
    return out;
}

// Lines of one parameter, one a condition or variant, are the same thing.
bool areLinesOfOne(model::Parameter const& a, model::Parameter const& b) { return a.name == b.name && a.symbol == b.symbol && a.unit == b.unit && a.kind == b.kind; }

void name(std::vector<model::Parameter>& parameters, std::string const& family, vocabulary::Vocabulary const& vocabulary, std::vector<std::string> const& symbols) {
    std::vector<std::size_t> firsts;
    for (std::size_t i = 0; i < parameters.size(); ++i) {
        if (firsts.empty() || !areLinesOfOne(parameters[firsts.back()], parameters[i])) firsts.push_back(i);
    }
    model::inParts(firsts.size(), [&](std::size_t begin, std::size_t end) {
        for (std::size_t k = begin; k < end; ++k) {
            auto const next = k + 1 < firsts.size() ? firsts[k + 1] : parameters.size();
            std::string const canonical = canonicalOf(parameters[firsts[k]], family, symbols, vocabulary);
            for (std::size_t i = firsts[k]; i < next; ++i) parameters[i].canonical = canonical;
        }
    });
}

}  // namespace

Reading readParameters(std::vector<model::Table>& tables, std::span<model::PageLayout> pages, std::vector<model::Section> const& sections,
                       vocabulary::Vocabulary const* vocabulary) {
    Reading reading;
    reading.parameters = Reader(tables, pages, sections).read();
    std::vector<std::string> names;
    std::vector<std::string> symbols;
    for (std::size_t i = 0; i < reading.parameters.size(); ++i) {
        model::Parameter& parameter = reading.parameters[i];
        parameter.id = fmt::format("p{}", i + 1);
        if (!parameter.name.empty() && std::ranges::find(names, parameter.name) == names.end()) names.push_back(parameter.name);
        if (!parameter.symbol.empty() && std::ranges::find(symbols, parameter.symbol) == symbols.end()) symbols.push_back(parameter.symbol);
    }
    if (vocabulary == nullptr) return reading;
    reading.family = vocabulary->detectFamily(names, symbols, firstText(std::span<model::PageLayout const>(pages.data(), pages.size())));
    name(reading.parameters, reading.family, *vocabulary, symbols);
    return reading;
}

}  // namespace standin::parameters

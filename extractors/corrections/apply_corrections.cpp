// Entry by entry: first every row is looked for in the sheet as it was read, then
// contradictions are looked for, then the rows are changed and what follows from
// them (interval, grade, vocabulary id) is worked out again by the rules of reading.
//
// Tested by tests/extractors/corrections/apply_corrections_test.cpp.
#include "extractors/corrections/apply_corrections.h"

#include <algorithm>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <utility>

#include <fmt/format.h>

#include "extractors/corrections/row_search.h"
#include "extractors/parameters/grading.h"
#include "extractors/parameters/naming.h"
#include "extractors/parameters/text_forms.h"
#include "extractors/sections/sections.h"
#include "model/digest.h"
#include "model/names.h"
#include "quantity/numbers.h"
#include "vocabulary/sheet_family.h"

namespace standin::corrections {

namespace {

using model::CorrectionOutcome;
using model::Datasheet;
using model::Parameter;

constexpr std::string_view kWholeRow = "parameter";  // the field of a row that is taken out or put in
constexpr double kPersonsConfidence = 0.95;          // of a row that a person looked at
constexpr std::size_t kIdDigits = 12;

// Where an entry leads in one sheet.
struct Target {
    Entry const* entry = nullptr;
    FoundRow row;
};

std::string idOf(Entry const& entry) {
    std::string all = fmt::format("{}\n{}\n{}\n", entry.document, entry.page, static_cast<int>(entry.action));
    for (auto const* texts : {&entry.row, &entry.texts}) {
        for (auto const& text : *texts) all += fmt::format("{}={}\n", nameOf(text.field), text.text);
        all += '\n';
    }
    if (entry.box) all += fmt::format("{:.2f} {:.2f} {:.2f} {:.2f}\n", entry.box->x0, entry.box->y0, entry.box->x1, entry.box->y1);
    all += fmt::format("{}\n{}\n{}", entry.by, entry.date, entry.why);
    return model::sha256Hex(all).substr(0, kIdDigits);
}

std::string said(std::vector<FieldText> const& texts, std::initializer_list<Field> fields) {
    std::string words;
    for (auto const field : fields) {
        auto const found = std::find_if(texts.begin(), texts.end(), [&](auto const& text) { return text.field == field; });
        if (found != texts.end()) words = parameters::joined(words, found->text);
    }
    return words;
}

// As a person would call the row; what the entry says of it where none was found.
std::string rowOf(Parameter const* parameter, Entry const& entry) {
    if (parameter != nullptr) return parameters::joined(parameter->name, parameter->symbol);
    auto const& texts = entry.action == Action::Add ? entry.texts : entry.row;
    auto words = said(texts, {Field::Name, Field::Symbol});
    return words.empty() ? said(texts, {Field::Printed}) : words;
}

std::string composed(Parameter const& parameter) {
    std::string row;
    for (auto const field : {Field::Name, Field::Symbol, Field::Condition, Field::Min, Field::Typ, Field::Max, Field::Unit}) {
        auto const text = textOf(parameter, field);
        if (!text.empty()) row += (row.empty() ? "" : " | ") + text;
    }
    return row;
}

std::optional<model::Value>* valueOf(Parameter& parameter, Field field) {
    switch (field) {
        case Field::Min: return &parameter.min;
        case Field::Typ: return &parameter.typ;
        case Field::Max: return &parameter.max;
        default: return nullptr;
    }
}

std::string* wordsOf(Parameter& parameter, Field field) {
    switch (field) {
        case Field::Name: return &parameter.name;
        case Field::Symbol: return &parameter.symbol;
        case Field::Condition: return &parameter.condition;
        case Field::TableCondition: return &parameter.tableCondition;
        case Field::Variant: return &parameter.variant;
        case Field::Unit: return &parameter.unit;
        default: return nullptr;
    }
}

model::Rect boxForValue(Parameter const& parameter) {
    for (auto const* value : {&parameter.typ, &parameter.max, &parameter.min}) {
        if (*value && !(*value)->box.empty()) return (*value)->box;
    }
    return parameter.box;
}

void write(Parameter& parameter, FieldText const& set, model::Rect const& box) {
    auto const text = parameters::tidied(set.text);
    if (auto* value = valueOf(parameter, set.field)) {
        if (text.empty()) {
            value->reset();
        } else {
            *value = model::Value{text, set.text, std::nullopt, *value ? (*value)->box : box};
        }
    } else if (auto* words = wordsOf(parameter, set.field)) {
        *words = text;
    } else if (set.field == Field::Kind) {
        parameter.kind = model::fromName<model::ParameterKind>(text).value_or(parameter.kind);
    }
}

// Replaces the only place where `read` stands in the text; false: none, or several.
bool replaceOnly(std::string& text, std::string const& read, std::string const& corrected) {
    auto const at = text.find(read);
    if (at == std::string::npos || text.find(read, at + 1) != std::string::npos) return false;
    text.replace(at, read.size(), corrected);
    return true;
}

class Corrector {
public:
    Corrector(Datasheet& sheet, vocabulary::Vocabulary const& vocabulary) : m_sheet(sheet), m_vocabulary(vocabulary) {}

    model::Result<void> run(std::vector<Entry const*> const& entries) {
        std::set<std::string> known;
        for (auto const& correction : m_sheet.document.corrections) known.insert(correction.id);
        for (auto const* entry : entries) {
            if (known.insert(idOf(*entry)).second) m_targets.push_back({entry, entry->action == Action::Add ? findAdded(m_sheet, *entry) : findRow(m_sheet, *entry)});
        }
        if (auto const agreed = checkAgreement(); !agreed) return agreed;
        for (auto const& target : m_targets) note(target);
        for (auto const& target : m_targets) {
            if (target.entry->action == Action::Set && target.row.found == Found::One) set(m_sheet.parameters[target.row.index], *target.entry);
        }
        renew();
        removeRows();
        for (auto const& target : m_targets) {
            if (target.entry->action == Action::Add && target.row.found == Found::None) add(*target.entry);
        }
        return {};
    }

private:
    model::Result<void> checkAgreement() const {
        std::map<std::pair<std::size_t, Field>, std::pair<Entry const*, std::string>> fields;
        std::map<std::size_t, Entry const*> removed;
        std::map<std::string, Entry const*> added;
        for (auto const& [entry, row] : m_targets) {
            if (entry->action == Action::Add) {
                auto const what = fmt::format("{}\n{}", entry->page, said(entry->texts, {Field::Name, Field::Symbol, Field::Condition, Field::TableCondition, Field::Variant}));
                auto const [other, isNew] = added.emplace(what, entry);
                if (!isNew && other->second->texts != entry->texts) return contradiction(*other->second, *entry, kWholeRow);
            }
            if (row.found != Found::One) continue;
            if (entry->action == Action::Remove) removed.emplace(row.index, entry);
            if (entry->action != Action::Set) continue;
            for (auto const& set : entry->texts) {
                auto const [other, isNew] = fields.try_emplace({row.index, set.field}, entry, set.text);
                if (!isNew && !sameText(other->second.second, set.text)) return contradiction(*other->second.first, *entry, nameOf(set.field));
            }
        }
        for (auto const& [place, entry] : fields) {
            auto const found = removed.find(place.first);
            if (found != removed.end()) return contradiction(*found->second, *entry.first, kWholeRow);
        }
        return {};
    }

    tl::unexpected<model::Error> contradiction(Entry const& a, Entry const& b, std::string_view field) const {
        auto const other = a.file == b.file ? fmt::format("correction {}", a.number) : fmt::format("correction {} of {}", a.number, a.file);
        return tl::unexpected(model::Error{model::ErrorKind::Usage,
                                           fmt::format("correction {} contradicts {} on page {} (\"{}\"); keep one of them", b.number, other, b.page, field), b.file});
    }

    // What is told of an entry, before anything is changed.
    void note(Target const& target) {
        auto const& entry = *target.entry;
        Parameter const* parameter = target.row.found == Found::One ? &m_sheet.parameters[target.row.index] : nullptr;
        model::Correction correction;
        correction.id = idOf(entry);
        correction.page = entry.page;
        correction.box = parameter != nullptr ? parameter->box : entry.box.value_or(model::Rect{});
        correction.row = rowOf(parameter, entry);
        correction.by = entry.by;
        correction.date = entry.date;
        correction.why = entry.why;
        if (parameter != nullptr) correction.parameter = parameter->id;
        auto const outcome = target.row.found == Found::None ? CorrectionOutcome::NotFound : CorrectionOutcome::Ambiguous;
        if (entry.action != Action::Set) {
            correction.field = kWholeRow;
            if (entry.action == Action::Remove) {
                correction.outcome = parameter != nullptr ? CorrectionOutcome::Applied : outcome;
                if (parameter != nullptr) correction.read = parameter->printed;
                correction.parameter.clear();
            } else {
                correction.outcome = parameter != nullptr ? CorrectionOutcome::NotNeeded : CorrectionOutcome::Applied;
                correction.corrected = said(entry.texts, {Field::Min, Field::Typ, Field::Max, Field::Unit});
            }
            m_sheet.document.corrections.push_back(std::move(correction));
            return;
        }
        for (auto const& set : entry.texts) {
            correction.field = nameOf(set.field);
            correction.corrected = set.text;
            correction.outcome = outcome;
            if (parameter != nullptr) {
                correction.read = textOf(*parameter, set.field);
                correction.outcome = sameText(correction.read, set.text) ? CorrectionOutcome::NotNeeded : CorrectionOutcome::Applied;
            }
            m_sheet.document.corrections.push_back(correction);
        }
    }

    void set(Parameter& parameter, Entry const& entry) {
        auto const box = entry.box.value_or(boxForValue(parameter));
        for (auto const& text : entry.texts) {
            auto const read = textOf(parameter, text.field);
            if (sameText(read, text.text)) continue;
            auto const* value = valueOf(parameter, text.field);
            mendPrinted(parameter, value != nullptr && *value ? (*value)->printed : read, text.text);
            write(parameter, text, box);
            std::string const name(nameOf(text.field));
            if (std::find(parameter.corrected.begin(), parameter.corrected.end(), name) == parameter.corrected.end()) parameter.corrected.push_back(name);
            m_changed.insert(static_cast<std::size_t>(&parameter - m_sheet.parameters.data()));
        }
        if (!parameter.corrected.empty()) trust(parameter, entry, "corrected");
    }

    static void trust(Parameter& parameter, Entry const& entry, std::string_view what) {
        parameter.confidence.score = std::max(parameter.confidence.score, kPersonsConfidence);
        parameter.confidence.reasons.push_back(fmt::format("{} by {}, {}", what, entry.by, entry.date));
    }

    // A misread text also stands in the row as printed and in a cell of the table.
    // A text that already stands elsewhere in the row was read well and put wrong.
    void mendPrinted(Parameter& parameter, std::string const& read, std::string const& corrected) {
        if (read.empty() || corrected.empty() || parameter.printed.find(corrected) != std::string::npos) return;
        auto const printed = parameter.printed;
        if (!replaceOnly(parameter.printed, read, corrected)) return;
        for (auto& other : m_sheet.parameters) {
            if (other.table == parameter.table && other.page == parameter.page && other.printed == printed) other.printed = parameter.printed;
        }
        for (auto& table : m_sheet.tables) {
            if (table.id != parameter.table) continue;
            for (auto& cell : table.cells) {
                if (cell.box.intersects(parameter.box) && replaceOnly(cell.text, read, corrected)) return;
            }
        }
    }

    // Interval, grade and vocabulary id of what was changed.
    void renew() {
        if (m_changed.empty()) return;
        for (auto const index : m_changed) {
            parameters::fillInterval(m_sheet.parameters[index]);
            m_sheet.parameters[index].grade = parameters::gradeOf(m_sheet.parameters[index], m_sheet.parameters[index].grade == model::Grade::N);
        }
        for (auto const index : m_changed) name(m_sheet.parameters[index]);
    }

    void name(Parameter& parameter) {
        std::vector<std::string> symbols;
        for (auto const& other : m_sheet.parameters) {
            if (!other.symbol.empty() && std::find(symbols.begin(), symbols.end(), other.symbol) == symbols.end()) symbols.push_back(other.symbol);
        }
        parameter.canonical = parameters::canonicalOf(parameter, vocabulary::familyOf(m_sheet, m_vocabulary), symbols, m_vocabulary);
    }

    void removeRows() {
        std::set<std::size_t> rows;
        for (auto const& target : m_targets) {
            if (target.entry->action == Action::Remove && target.row.found == Found::One) rows.insert(target.row.index);
        }
        for (auto index = rows.rbegin(); index != rows.rend(); ++index) {
            auto const at = m_sheet.parameters.begin() + static_cast<std::ptrdiff_t>(*index);
            Parameter const parameter = std::move(*at);
            m_sheet.parameters.erase(at);
            keepAsText(parameter);
        }
    }

    // What is no parameter is still printed: a row of a table that has no other
    // parameter is compared as a row, everything else as a sentence.
    void keepAsText(Parameter const& parameter) {
        auto const shares = [&](Parameter const& other) { return other.table == parameter.table && other.page == parameter.page && other.printed == parameter.printed; };
        bool const shared = std::any_of(m_sheet.parameters.begin(), m_sheet.parameters.end(), shares);
        auto& coverage = m_sheet.coverage;
        int const numbers = shared ? 0 : std::min(coverage.inParameters, static_cast<int>(quantity::countNumbers(parameter.printed)));
        coverage.inParameters -= numbers;
        (parameter.table.empty() ? coverage.inText : coverage.inTables) += numbers;
        if (!parameter.table.empty() && !shared) return;
        auto const after = std::find_if(m_sheet.text.begin(), m_sheet.text.end(), [&](model::Sentence const& sentence) {
            if (sentence.places.empty()) return false;
            auto const& place = sentence.places.front();
            return place.page > parameter.page || (place.page == parameter.page && place.box.y0 > parameter.box.y0);
        });
        m_sheet.text.insert(after, {unusedId("x", m_sheet.text), parameter.section, parameter.printed, {{parameter.page, parameter.box}}});
        ++coverage.sentences;
    }

    void add(Entry const& entry) {
        if (findAdded(m_sheet, entry).found == Found::One) return;  // said twice
        Parameter parameter;
        parameter.id = unusedId("p", m_sheet.parameters);
        parameter.kind = model::ParameterKind::Characteristic;
        parameter.page = entry.page;
        parameter.box = entry.box.value_or(model::Rect{});
        if (auto const* section = sections::sectionAt(m_sheet.sections, entry.page, parameter.box.y0)) parameter.section = section->id;
        for (auto const& text : entry.texts) write(parameter, text, parameter.box);
        parameter.printed = composed(parameter);
        parameter.corrected = {std::string(kWholeRow)};
        trust(parameter, entry, "added");
        parameters::fillInterval(parameter);
        parameter.grade = parameters::gradeOf(parameter, false);
        account(entry);
        auto const id = idOf(entry);
        for (auto& correction : m_sheet.document.corrections) {
            if (correction.id == id) correction.parameter = parameter.id;
        }
        auto const after = std::find_if(m_sheet.parameters.begin(), m_sheet.parameters.end(), [&](Parameter const& other) {
            return other.page > parameter.page || (other.page == parameter.page && entry.box && other.box.y0 > parameter.box.y0);
        });
        name(*m_sheet.parameters.insert(after, std::move(parameter)));
    }

    // Numbers at the place of an added row that belonged to nothing.
    void account(Entry const& entry) {
        if (!entry.box) return;
        auto& coverage = m_sheet.coverage;
        coverage.inParameters += static_cast<int>(
            std::erase_if(coverage.unaccounted, [&](model::PlacedText const& number) { return number.page == entry.page && entry.box->contains(number.box.centre()); }));
    }

    template <class Named>
    static std::string unusedId(char const* prefix, std::vector<Named> const& all) {
        for (std::size_t n = all.size() + 1;; ++n) {
            auto id = fmt::format("{}{}", prefix, n);
            if (std::none_of(all.begin(), all.end(), [&](auto const& named) { return named.id == id; })) return id;
        }
    }

    Datasheet& m_sheet;
    vocabulary::Vocabulary const& m_vocabulary;
    std::vector<Target> m_targets;
    std::set<std::size_t> m_changed;  // indices into the parameters as they were read
};

bool isFor(Entry const& entry, Datasheet const& sheet) { return sheet.document.sha256.starts_with(entry.document); }

void warnOfOthers(std::span<Entry const> entries, std::span<Datasheet> sheets) {
    std::map<std::string, int> others;  // by file
    for (auto const& entry : entries) {
        if (std::none_of(sheets.begin(), sheets.end(), [&](auto const& sheet) { return isFor(entry, sheet); })) ++others[entry.file];
    }
    for (auto const& [file, count] : others) {
        auto warning = fmt::format("{}: {} for another document than {}: not used", file, count == 1 ? "a correction is" : fmt::format("{} corrections are", count),
                                   sheets.size() == 1 ? "this" : "these");
        auto& warnings = sheets.front().document.warnings;
        if (std::find(warnings.begin(), warnings.end(), warning) == warnings.end()) warnings.push_back(std::move(warning));
    }
}

}  // namespace

model::Result<void> applyCorrections(std::span<Entry const> entries, std::span<Datasheet> sheets, vocabulary::Vocabulary const& vocabulary) {
    if (sheets.empty()) return {};
    for (auto& sheet : sheets) {
        std::vector<Entry const*> own;
        for (auto const& entry : entries) {
            if (isFor(entry, sheet)) own.push_back(&entry);
        }
        if (auto const done = Corrector(sheet, vocabulary).run(own); !done) return done;
    }
    warnOfOthers(entries, sheets);
    return {};
}

}  // namespace standin::corrections

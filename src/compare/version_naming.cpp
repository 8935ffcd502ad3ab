// Tested by tests/src/compare/version_naming_test.cpp.
#include "compare/version_naming.h"

#include <algorithm>
#include <set>

#include "quantity/decimal.h"

namespace standin::compare {

namespace {

constexpr std::string_view kOwnPart = "own part";
constexpr std::string_view kGrade = "temperatures";

// The range of temperatures that the row's table holds for.
std::string gradeOf(model::Parameter const& row, ConditionMemo& memo) {
    if (row.tableCondition.empty()) return {};
    auto const& range = memo.temperatures(row.tableCondition);
    return range ? *range->lo + ".." + *range->hi : std::string();
}

bool startsWithDigit(std::string const& code) { return !code.empty() && code.front() >= '0' && code.front() <= '9'; }

bool isNamed(VariantWords const& version) { return !version.codes.empty() || !version.nominals.empty(); }

void keepEachOnce(std::vector<std::string>& codes) {
    std::sort(codes.begin(), codes.end());
    codes.erase(std::unique(codes.begin(), codes.end()), codes.end());
}

}  // namespace

VersionNaming::Naming VersionNaming::namingOf(model::Datasheet const& sheet, vocabulary::Vocabulary const& vocabulary, ConditionMemo& memo) {
    Naming naming;
    for (auto const& row : sheet.parameters) {
        auto const [version, isNew] = naming.nominals.try_emplace(row.variant);
        if (isNew) {
            auto words = variantWords(row.variant);
            naming.codes.insert(naming.codes.end(), words.codes.begin(), words.codes.end());
        }
        if (auto const grade = gradeOf(row, memo); !grade.empty()) {
            auto const [nominal, isFirst] = version->second.try_emplace(std::string(kGrade), grade);
            if (!isFirst && nominal->second != grade) nominal->second.clear();
        }
        if (row.canonical.empty() || !row.typ || !row.typ->value || row.kind == model::ParameterKind::Rating) continue;
        auto const* entry = vocabulary.find(row.canonical);
        if (entry == nullptr || entry->role != vocabulary::Role::Setpoint) continue;
        auto const [nominal, isFirst] = version->second.try_emplace(row.canonical, quantity::shortNumber(*row.typ->value));
        if (!isFirst && nominal->second != quantity::shortNumber(*row.typ->value)) nominal->second.clear();
    }
    for (auto const& part : sheet.document.partNumbers) {
        auto words = variantWords(part);
        // "1.2V", "1.5A" stand in titles without naming a part.
        std::erase_if(words.codes, [](std::string const& code) { return startsWithDigit(code) && code.size() < 5; });
        naming.own.insert(naming.own.end(), words.codes.begin(), words.codes.end());
    }
    keepEachOnce(naming.codes);
    keepEachOnce(naming.own);
    return naming;
}

VersionNaming::VersionNaming(model::Datasheet const& reference, model::Datasheet const& candidate, vocabulary::Vocabulary const& vocabulary, ConditionMemo& memo)
    : m_reference(namingOf(reference, vocabulary, memo)), m_candidate(namingOf(candidate, vocabulary, memo)) {
    m_reference.ownIsMeant = codesMeet(m_reference.own, m_candidate.codes);
    m_candidate.ownIsMeant = codesMeet(m_candidate.own, m_reference.codes);
    m_shared = codesMeet(m_reference.codes, m_candidate.codes) || m_reference.ownIsMeant || m_candidate.ownIsMeant;
    std::set<std::string> setpoints;
    for (auto const& [version, nominals] : m_reference.nominals) {
        for (auto const& [setpoint, value] : nominals) setpoints.insert(setpoint);
    }
    setpoints.erase(std::string(kGrade));
    for (auto const& setpoint : setpoints) takeNominals(setpoint);
    // Two grades of one voltage: only where every version says for which temperatures it is.
    auto const graded = [](Naming const& naming) {
        return std::all_of(naming.made.begin(), naming.made.end(), [&](auto const& made) {
            auto const& nominals = naming.nominals.at(made.first);
            auto const grade = nominals.find(std::string(kGrade));
            return grade != nominals.end() && !grade->second.empty();
        });
    };
    if (!m_reference.made.empty() && graded(m_reference) && graded(m_candidate)) takeNominals(std::string(kGrade));
    for (auto* naming : {&m_reference, &m_candidate}) {
        for (auto const& [version, nominals] : naming->nominals) naming->words.emplace(version, makeWords(version, *naming));
    }
    m_reference.corresponds = correspond(m_reference, m_candidate);
    m_candidate.corresponds = correspond(m_candidate, m_reference);
}

void VersionNaming::takeNominals(std::string const& setpoint) {
    auto const valuesOf = [&](Naming const& naming) {
        std::set<std::string> values;
        for (auto const& [version, nominals] : naming.nominals) {
            auto const found = nominals.find(setpoint);
            if (setpoint == kGrade && naming.made.count(version) == 0) continue;
            if (found != nominals.end() && !found->second.empty()) values.insert(found->second);
        }
        return values;
    };
    auto const r = valuesOf(m_reference);
    auto const c = valuesOf(m_candidate);
    bool const met = std::any_of(r.begin(), r.end(), [&](std::string const& value) { return c.count(value) > 0; });
    if (!met || std::max(r.size(), c.size()) < 2) return;
    for (auto* naming : {&m_reference, &m_candidate}) {
        for (auto const& [version, nominals] : naming->nominals) {
            auto const found = nominals.find(setpoint);
            bool const known = setpoint != kGrade || naming->made.count(version) > 0;
            if (known && found != nominals.end() && !found->second.empty()) naming->made[version].push_back(setpoint + "=" + found->second);
        }
    }
}

VariantWords VersionNaming::wordsOf(model::Parameter const& row, Naming const& naming) {
    auto const known = naming.words.find(row.variant);
    return known != naming.words.end() ? known->second : makeWords(row.variant, naming);
}

VariantWords VersionNaming::makeWords(std::string const& version, Naming const& naming) {
    VariantWords words = variantWords(version);
    if (version.empty() && naming.ownIsMeant) {
        words.key = kOwnPart;
        words.codes = naming.own;
    } else if (words.codes.empty() && words.temperatures && naming.ownIsMeant) {  // a column of the own part ("TA = 25 °C")
        words.codes = naming.own;
    }
    auto const made = naming.made.find(version);
    if (made != naming.made.end()) words.nominals = made->second;
    return words;
}

bool VersionNaming::areOthers(VariantWords const& reference, VariantWords const& candidate) const {
    bool const coded = !reference.codes.empty() && !candidate.codes.empty();
    if (m_shared && coded) return !codesMeet(reference.codes, candidate.codes);
    return !reference.nominals.empty() && !candidate.nominals.empty() && reference.nominals != candidate.nominals;
}

bool VersionNaming::correspond(Naming const& own, Naming const& other) {
    for (auto const& [version, words] : own.words) {
        if (version.empty() && !own.ownIsMeant && words.nominals.empty()) continue;
        bool const met = std::any_of(other.words.begin(), other.words.end(), [&words = words](auto const& theirs) {
            if (!isNamed(theirs.second)) return false;
            auto const relation = relateVariants(words, theirs.second);
            return relation == VariantRelation::Same || relation == VariantRelation::Shares;
        });
        if (met) return true;
    }
    return false;
}

// Some version of the own sheet has a partner, this one has only others.
bool VersionNaming::isAlone(VariantWords const& version, Naming const& own, Naming const& other) const {
    if (!own.corresponds || !isNamed(version) || version.key == kOwnPart) return false;
    return std::all_of(other.words.begin(), other.words.end(), [&](auto const& theirs) { return !isNamed(theirs.second) || areOthers(version, theirs.second); });
}

}  // namespace standin::compare

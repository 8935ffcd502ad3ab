// Maps by id, made once.
// Tested by tests/src/risk/assess_test.cpp.
#include "risk/sheet_view.h"

#include <vector>

namespace standin::risk {

namespace {

std::string familyOf(model::Datasheet const& sheet, vocabulary::Vocabulary const& vocabulary) {
    std::vector<std::string> names;
    std::vector<std::string> symbols;
    for (auto const& parameter : sheet.parameters) {
        if (!parameter.name.empty()) names.push_back(parameter.name);
        if (!parameter.symbol.empty()) symbols.push_back(parameter.symbol);
    }
    constexpr std::size_t kHead = 4 * 1024;
    std::string head = sheet.document.title;
    for (auto const& sentence : sheet.text) {
        if (head.size() > kHead) break;
        head += ' ';
        head += sentence.text;
    }
    return vocabulary.detectFamily(names, symbols, head);
}

std::string stateOf(std::vector<model::Feature> const& features, std::string const& canonical, std::optional<model::Side> const& side) {
    if (!side) return {};
    std::string any;
    for (auto const& feature : features) {
        if (feature.canonical != canonical || feature.state == "unstated") continue;
        if (feature.page == side->page && feature.box == side->box) return feature.state;
        if (any.empty()) any = feature.state;
    }
    return any;
}

}  // namespace

SheetView::SheetView(model::Datasheet const& reference, model::Datasheet const& candidate, vocabulary::Vocabulary const& vocabulary)
    : m_reference(reference), m_candidate(candidate), m_vocabulary(vocabulary) {
    for (auto const& parameter : reference.parameters) m_referenceById.emplace(parameter.id, &parameter);
    for (auto const& parameter : candidate.parameters) m_candidateById.emplace(parameter.id, &parameter);
    for (auto const& section : reference.sections) m_referenceSections.emplace(section.id, section.kind);
    for (auto const& section : candidate.sections) m_candidateSections.emplace(section.id, section.kind);
    m_family = familyOf(reference, vocabulary);
    if (m_family.empty()) m_family = familyOf(candidate, vocabulary);
}

model::Parameter const* SheetView::referenceParameter(std::string_view id) const {
    auto const found = m_referenceById.find(id);
    return found == m_referenceById.end() ? nullptr : found->second;
}

model::Parameter const* SheetView::candidateParameter(std::string_view id) const {
    auto const found = m_candidateById.find(id);
    return found == m_candidateById.end() ? nullptr : found->second;
}

model::SectionKind SheetView::sectionKind(model::Finding const& finding) const {
    auto const& sections = finding.reference ? m_referenceSections : m_candidateSections;
    auto const found = sections.find(finding.section);
    return found == sections.end() ? model::SectionKind::Other : found->second;
}

std::string SheetView::referenceState(model::Finding const& finding) const {
    return stateOf(m_reference.features, finding.canonical, finding.reference);
}

std::string SheetView::candidateState(model::Finding const& finding) const {
    return stateOf(m_candidate.features, finding.canonical, finding.candidate);
}

}  // namespace standin::risk

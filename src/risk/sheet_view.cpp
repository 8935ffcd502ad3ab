// Maps by id, made once.
// Tested by tests/src/risk/assess_test.cpp.
#include "risk/sheet_view.h"

#include <algorithm>

#include "vocabulary/sheet_family.h"

namespace standin::risk {

namespace {

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

std::vector<std::string> statesBeside(std::string const& state, std::vector<model::Feature> const& features, std::string const& canonical) {
    std::vector<std::string> others;
    for (auto const& feature : features) {
        if (feature.canonical != canonical || feature.state == "unstated" || feature.state.empty() || feature.state == state) continue;
        if (std::find(others.begin(), others.end(), feature.state) == others.end()) others.push_back(feature.state);
    }
    return others;
}

}  // namespace

SheetView::SheetView(model::Datasheet const& reference, model::Datasheet const& candidate, vocabulary::Vocabulary const& vocabulary)
    : m_reference(reference), m_candidate(candidate), m_vocabulary(vocabulary) {
    for (auto const& parameter : reference.parameters) m_referenceById.emplace(parameter.id, &parameter);
    for (auto const& parameter : candidate.parameters) m_candidateById.emplace(parameter.id, &parameter);
    for (auto const& section : reference.sections) m_referenceSections.emplace(section.id, section.kind);
    for (auto const& section : candidate.sections) m_candidateSections.emplace(section.id, section.kind);
    m_family = vocabulary::familyOf(reference, vocabulary);
    if (m_family.empty()) m_family = vocabulary::familyOf(candidate, vocabulary);
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

std::vector<std::string> SheetView::otherReferenceStates(model::Finding const& finding) const {
    return statesBeside(referenceState(finding), m_reference.features, finding.canonical);
}

std::vector<std::string> SheetView::otherCandidateStates(model::Finding const& finding) const {
    return statesBeside(candidateState(finding), m_candidate.features, finding.canonical);
}

}  // namespace standin::risk

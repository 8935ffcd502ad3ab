// What judging needs to look up in the two sheets. Private to this folder.
#pragma once

#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "model/comparison.h"
#include "model/datasheet.h"
#include "vocabulary/vocabulary.h"

namespace standin::risk {

class SheetView {
public:
    SheetView(model::Datasheet const& reference, model::Datasheet const& candidate, vocabulary::Vocabulary const& vocabulary);

    [[nodiscard]] model::Parameter const* referenceParameter(std::string_view id) const;
    [[nodiscard]] model::Parameter const* candidateParameter(std::string_view id) const;
    // The section of a finding: of the reference, else of the candidate. Null: not known.
    [[nodiscard]] model::SectionKind sectionKind(model::Finding const& finding) const;
    // The state that a side of a feature finding states; empty: none.
    [[nodiscard]] std::string referenceState(model::Finding const& finding) const;
    [[nodiscard]] std::string candidateState(model::Finding const& finding) const;

    // The other states that the sheet of that side states of the feature, for another version or in contradiction; each once.
    [[nodiscard]] std::vector<std::string> otherReferenceStates(model::Finding const& finding) const;
    [[nodiscard]] std::vector<std::string> otherCandidateStates(model::Finding const& finding) const;

    // The family that the reference belongs to, else the candidate's; empty: undecided.
    [[nodiscard]] std::string const& family() const { return m_family; }
    [[nodiscard]] model::Datasheet const& reference() const { return m_reference; }
    [[nodiscard]] model::Datasheet const& candidate() const { return m_candidate; }
    [[nodiscard]] vocabulary::Vocabulary const& vocabulary() const { return m_vocabulary; }

private:
    using ById = std::unordered_map<std::string_view, model::Parameter const*>;

    model::Datasheet const& m_reference;
    model::Datasheet const& m_candidate;
    vocabulary::Vocabulary const& m_vocabulary;
    ById m_referenceById;
    ById m_candidateById;
    std::unordered_map<std::string_view, model::SectionKind> m_referenceSections;
    std::unordered_map<std::string_view, model::SectionKind> m_candidateSections;
    std::string m_family;
};

}  // namespace standin::risk

// The stages one after the other; every stage gives drafts (drafts.h). Then drafts
// that are halves of one thing are put together, what several stages saw at one
// place is left to one of them, and what is left becomes findings.
//
// Tested by tests/src/compare/align_test.cpp.
#include "compare/align.h"

#include <algorithm>
#include <iterator>
#include <map>
#include <string>
#include <utility>
#include <vector>

#include "compare/condition_texts.h"
#include "compare/conditions.h"
#include "compare/coverage_account.h"
#include "compare/document_conflicts.h"
#include "compare/document_findings.h"
#include "compare/drafts.h"
#include "compare/feature_findings.h"
#include "compare/figure_findings.h"
#include "compare/parameter_findings.h"
#include "compare/parameter_pairing.h"
#include "compare/pin_findings.h"
#include "compare/prose.h"
#include "compare/reconcile.h"
#include "compare/sheet_pair.h"
#include "compare/table_findings.h"
#include "model/crew.h"

namespace standin::compare {

namespace {

void append(std::vector<Draft>& drafts, std::vector<Draft> more) {
    // Causes inside of `more` count from its own start.
    int const offset = static_cast<int>(drafts.size());
    for (auto& draft : more) {
        if (draft.cause >= 0) draft.cause += offset;
        drafts.push_back(std::move(draft));
    }
}

// One after the other; drafts are large, so each is moved once.
std::vector<Draft> joined(std::vector<std::vector<Draft>> lists) {
    std::size_t count = 0;
    for (auto const& list : lists) count += list.size();
    std::vector<Draft> drafts;
    drafts.reserve(count + count / 8);  // conflicts and coverage come to them
    for (auto& list : lists) append(drafts, std::move(list));
    return drafts;
}

// `whole` holds `part` on both sides, and the rest is the same: one change, shown twice.
bool holdsTheSameChange(std::string const& wholeReference, std::string const& wholeCandidate, std::string const& partReference, std::string const& partCandidate) {
    auto const r = wholeReference.find(partReference);
    auto const c = wholeCandidate.find(partCandidate);
    if (partReference.empty() || partCandidate.empty() || r == std::string::npos || c == std::string::npos) return false;
    return wholeReference.substr(0, r) == wholeCandidate.substr(0, c) && wholeReference.substr(r + partReference.size()) == wholeCandidate.substr(c + partCandidate.size());
}

// A caption or lead line of a table or figure that is a sentence or heading too is
// shown there.
void dropRepeatedCaptions(std::vector<Draft>& drafts) {
    struct Shown {
        std::string reference, candidate;
        int page;
    };
    std::vector<Shown> shown;
    for (auto const& draft : drafts) {
        if (draft.dropped || (draft.rank != Rank::Wording && draft.rank != Rank::Section) || !draft.finding.reference || !draft.finding.candidate) continue;
        shown.push_back({spaceless(draft.finding.reference->text), spaceless(draft.finding.candidate->text), draft.finding.reference->page});
    }
    if (shown.empty()) return;
    for (auto& caption : drafts) {
        if (caption.dropped || (caption.rank != Rank::Table && caption.rank != Rank::Figure) || !caption.finding.reference || !caption.finding.candidate) continue;
        std::string const before = spaceless(caption.finding.reference->text);
        std::string const after = spaceless(caption.finding.candidate->text);
        if (before.empty() || after.empty()) continue;
        caption.dropped = std::any_of(shown.begin(), shown.end(), [&](Shown const& text) {
            if (text.page != caption.finding.reference->page) return false;
            bool const shownThere = text.reference.find(before) != std::string::npos && text.candidate.find(after) != std::string::npos;
            return shownThere || holdsTheSameChange(before, after, text.reference, text.candidate);
        });
    }
}

void classifyText(Draft& draft, SheetPair const& sheets) {
    auto& finding = draft.finding;
    if (draft.dropped || !finding.classes.empty()) return;
    if (draft.rank == Rank::Table && (finding.relation == model::Relation::OnlyReference || finding.relation == model::Relation::OnlyCandidate)) {
        bool const inReference = finding.reference.has_value();
        auto const& side = inReference ? *finding.reference : *finding.candidate;
        finding.classes = classesAlone(sheets, side.text, inReference ? InSheet::Reference : InSheet::Candidate);
        return;
    }
    if (!finding.reference || !finding.candidate || finding.relation != model::Relation::Reworded) return;
    if (draft.rank != Rank::Table && draft.rank != Rank::Figure && draft.rank != Rank::Section && draft.rank != Rank::Furniture) return;
    Wording wording = wordingOf(sheets, finding.reference->text, finding.candidate->text);
    if (wording.relation == model::Relation::Same) {
        if (draft.rank != Rank::Figure) draft.dropped = true;
        return;
    }
    finding.relation = wording.relation;
    finding.classes = std::move(wording.classes);
}

// Relation and classes of the table rows and figure texts that are still findings.
void classifyTexts(std::vector<Draft>& drafts, SheetPair const& sheets) {
    model::inParts(drafts.size(), [&](std::size_t first, std::size_t last) {
        for (std::size_t i = first; i < last; ++i) classifyText(drafts[i], sheets);
    });
}

struct SectionContent {
    std::map<std::string, int> things;  // sentences and parameters by section
    std::map<std::pair<std::string, std::string>, int> shared;
};

// Titles count for less than what stands in two sections.
void weighSections(std::vector<model::SectionPair>& pairs, SheetPair const& sheets, ProseFindings const& prose, ParameterPairing const& parameters) {
    SectionContent reference;
    SectionContent candidate;
    std::map<std::pair<std::string, std::string>, int> shared;
    for (auto const& s : sheets.reference.text) ++reference.things[s.section];
    for (auto const& s : sheets.candidate.text) ++candidate.things[s.section];
    for (auto const& p : sheets.reference.parameters) ++reference.things[p.section];
    for (auto const& p : sheets.candidate.parameters) ++candidate.things[p.section];
    for (auto const pair : prose.pairs) {
        ++shared[{sheets.reference.text[static_cast<std::size_t>(pair.reference)].section, sheets.candidate.text[static_cast<std::size_t>(pair.candidate)].section}];
    }
    for (auto const& pair : parameters.pairs) {
        ++shared[{sheets.reference.parameters[static_cast<std::size_t>(pair.reference)].section, sheets.candidate.parameters[static_cast<std::size_t>(pair.candidate)].section}];
    }
    for (auto& pair : pairs) {
        if (pair.reference.empty() || pair.candidate.empty()) continue;
        int const total = reference.things[pair.reference] + candidate.things[pair.candidate];
        if (total == 0) continue;
        double const content = 2.0 * shared[{pair.reference, pair.candidate}] / total;
        pair.similarity = std::min(1.0, 0.4 * pair.similarity + 0.6 * content);
    }
}

void countFindings(model::Comparison& comparison) {
    std::map<std::string, model::SectionPair*> ofReference;
    std::map<std::string, model::SectionPair*> ofCandidate;
    for (auto& pair : comparison.sections) {
        if (!pair.reference.empty()) ofReference[pair.reference] = &pair;
        if (!pair.candidate.empty()) ofCandidate[pair.candidate] = &pair;
    }
    for (auto const& finding : comparison.findings) {
        if (!finding.consequenceOf.empty() || finding.section.empty()) continue;
        auto const& index = finding.reference ? ofReference : ofCandidate;
        auto const found = index.find(finding.section);
        if (found != index.end()) ++found->second->findings;
    }
}

}  // namespace

model::Comparison align(model::Datasheet const& reference, model::Datasheet const& candidate, AlignOptions const& options, vocabulary::Vocabulary const& vocabulary) {
    SheetPair const sheets(reference, candidate, options, vocabulary);
    model::Comparison comparison;
    comparison.reference = reference.document;
    comparison.candidate = candidate.document;

    ConditionMemo conditions;  // of both sheets, for every stage that relates rows
    ParameterPairing pairing;
    ParameterFindings parameters;
    SectionFindings sections;
    std::vector<std::vector<Draft>> lists;   // in the order of the findings
    std::vector<std::vector<Draft>> behind;  // the prose
    std::vector<Draft> conflicts;
    std::vector<Draft> gaps;
    ProseFindings prose;
    // Neither needs the other, and together they are most of the work.
    auto const compareThings = [&] {
        pairing = pairParameters(sheets, conditions);
        parameters = findParameterDifferences(sheets, pairing, conditions);
        sections = pairSections(sheets);
        lists.push_back(std::move(parameters.drafts));
        lists.push_back(findFeatureDifferences(sheets));
        lists.push_back(findPinDifferences(sheets));
        lists.push_back(findOrderingDifferences(sheets));
        lists.push_back(findRowDifferences(sheets, pairing, conditions));
        behind.push_back(findFigureDifferences(sheets).drafts);
        behind.push_back(std::move(sections.drafts));
        behind.push_back(findFurnitureDifferences(sheets));
        behind.push_back(findPackageDifferences(sheets));
        behind.push_back(findPropertyDifferences(sheets));
        conflicts = findParameterConflicts(sheets, conditions);
        gaps = findCoverageGaps(sheets, pairing);
    };
    model::together(compareThings, [&] { prose = findProseDifferences(sheets); });
    weighSections(sections.pairs, sheets, prose, pairing);
    lists.push_back(std::move(prose.drafts));
    std::move(behind.begin(), behind.end(), std::back_inserter(lists));
    std::vector<Draft> drafts = joined(std::move(lists));

    reconcileOneSided(drafts, sheets);
    dropRepeatedCaptions(drafts);
    classifyTexts(drafts, sheets);
    settleConditionTexts(drafts, sheets, conditions);
    linkConditionTexts(drafts, sheets, conditions);
    linkTableConditions(drafts, sheets, conditions);
    linkRestatements(drafts, sheets);
    linkStatements(drafts, sheets);
    append(drafts, std::move(conflicts));
    linkConflicts(drafts);
    absorb(drafts);
    linkProperties(drafts, sheets);
    append(drafts, std::move(gaps));
    comparison.coverage = account(sheets, pairing, drafts);
    joinOneSidedRows(drafts);

    comparison.pairs = std::move(parameters.pairs);
    comparison.sections = std::move(sections.pairs);
    comparison.findings = finish(drafts);
    countFindings(comparison);
    return comparison;
}

}  // namespace standin::compare

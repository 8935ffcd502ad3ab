// Claims are matched to things: rows of both sheets, whether they differ or not, and
// findings of other kinds. The thing that holds most of a claim's words is what it is
// about, so that "pulsed drain current" is not answered by a changed "drain current". A
// claim with values fits only where the older sheet prints the one or the newer the other.
//
// Tested by tests/src/risk/claimed_changes_test.cpp.
#include "risk/claimed_changes.h"

#include <algorithm>
#include <optional>
#include <set>
#include <unordered_map>
#include <utility>

#include "compare/change_claims.h"
#include "compare/finding_id.h"
#include "compare/printed_rows.h"
#include "compare/revision_order.h"
#include "compare/succession.h"
#include "model/crew.h"
#include "risk/texts.h"

namespace standin::risk {

namespace {

using compare::ChangeClaim;
using compare::ClaimToken;
using compare::HistoryEntry;
using compare::HistoryStatement;
using compare::NewerSheet;
using compare::Succession;
using model::Finding;
using model::FindingKind;
using model::Severity;
using model::WordingClass;

constexpr double kAbout = 0.6;           // share of a claim's words that a thing has to hold
constexpr double kTextTolerance = 0.25;  // texts that hold nearly as many as the best are meant too
constexpr double kSymbolNamed = 0.8;
constexpr std::size_t kLongestSide = 600;

using Words = std::set<std::string>;

// One sheet's sections in printed order, with the headings that each stands under.
class Chapters {
public:
    explicit Chapters(model::Datasheet const& sheet) : m_sheet(sheet) {
        for (auto const& section : sheet.sections) {
            while (!m_open.empty() && m_open.back()->level >= section.level) m_open.pop_back();
            m_open.push_back(&section);
            for (auto const* above : m_open) m_titles[section.id].insert(compare::titleKey(above->title));
            if (section.kind == model::SectionKind::Revision) m_history.insert(section.id);
        }
    }

    void addTitles(std::string const& section, Words& titles) const {
        if (auto const found = m_titles.find(section); found != m_titles.end()) titles.insert(found->second.begin(), found->second.end());
    }
    [[nodiscard]] bool isHistory(std::string const& section) const { return m_history.count(section) > 0; }

    // The section that a place stands in: the last heading before it.
    [[nodiscard]] std::string sectionAt(int page, model::Rect const& box) const {
        std::string id;
        for (auto const& section : m_sheet.sections) {
            if (std::pair(section.page, section.box.y0) <= std::pair(page, box.y0)) id = section.id;
        }
        return id;
    }

    [[nodiscard]] bool inHistory(model::Side const& side) const {
        for (auto const& table : m_sheet.tables) {
            bool const history = table.kind == model::TableKind::Revision || isHistory(table.section);
            if (history && table.page == side.page && table.box.contains(side.box.centre())) return true;
        }
        return false;
    }

private:
    model::Datasheet const& m_sheet;
    std::vector<model::Section const*> m_open;
    std::unordered_map<std::string, Words> m_titles;
    std::set<std::string> m_history;
};

// Something that a claim may be about.
struct Thing {
    int finding = -1;  // index; -1: a row that does not differ
    bool row = false;
    bool inOlder = false;  // which of the two revisions print it
    bool inNewer = false;
    Words words;
    Words symbols;
    Words older, newer;  // values in each sheet
    Words titles;        // headings it stands under, in either sheet
};

// The words of a text, and the values in it; null: not wanted.
void addTokens(std::string_view text, Words* words, Words* values) {
    for (auto const& token : compare::claimTokens(text)) {
        if (words != nullptr && token.kind != ClaimToken::Kind::Sign) words->insert(token.key);
        if (values != nullptr && token.kind == ClaimToken::Kind::Quantity) values->insert(token.key);
    }
}

void addWords(Words& words, std::string_view text) { addTokens(text, &words, nullptr); }
void addValues(Words& values, std::string_view text) { addTokens(text, nullptr, &values); }

bool isQuiet(Finding const& finding) {
    return finding.relation == model::Relation::Reworded && !finding.classes.empty() &&
           std::all_of(finding.classes.begin(), finding.classes.end(), [](auto c) { return c == WordingClass::Edit || c == WordingClass::Style; });
}

bool intersect(Words const& words, compare::TokenKeys const& keys) {
    return std::any_of(keys.begin(), keys.end(), [&](auto const& key) { return words.count(key) > 0; });
}

class History {
public:
    History(model::Comparison& comparison, SheetView const& sheets, Succession succession)
        : m_comparison(comparison),
          m_sheets(sheets),
          m_succession(std::move(succession)),
          m_reference(sheets.reference()),
          m_candidate(sheets.candidate()),
          m_mentioned(comparison.findings.size(), false) {}

    void run(std::vector<std::vector<std::string>>& called) {
        collectThings();
        std::vector<Finding> added = unansweredClaims();
        if (auto unmentioned = unmentionedChanges()) added.insert(added.begin(), std::move(*unmentioned));
        nameAdded(added);
        for (auto& finding : added) {
            m_comparison.findings.push_back(std::move(finding));
            called.emplace_back();
        }
    }

private:
    [[nodiscard]] bool candidateIsNewer() const { return m_succession.newer == NewerSheet::Candidate; }
    [[nodiscard]] std::string_view side() const { return candidateIsNewer() ? "candidate" : "reference"; }

    void addRow(Thing& thing, model::Parameter const* parameter, Words& values, Chapters const& chapters) const {
        if (parameter == nullptr) return;
        for (auto const* text : {&parameter->name, &parameter->symbol, &parameter->condition, &parameter->variant}) addWords(thing.words, *text);
        for (auto const& token : compare::claimTokens(parameter->symbol)) thing.symbols.insert(token.key);
        // With and without unit: histories often leave it out.
        for (auto const* value : {&parameter->min, &parameter->typ, &parameter->max}) {
            if (!*value) continue;
            addValues(values, (*value)->text);
            addValues(values, (*value)->text + " " + parameter->unit);
        }
        chapters.addTitles(parameter->section, thing.titles);
    }

    void addSide(Thing& thing, std::optional<model::Side> const& side, Words& values, Chapters const& chapters) const {
        if (!side) return;
        addTokens(side->text, &thing.words, &values);
        chapters.addTitles(chapters.sectionAt(side->page, side->box), thing.titles);
    }

    void setSides(Thing& thing, bool inReference, bool inCandidate) const {
        thing.inOlder = candidateIsNewer() ? inReference : inCandidate;
        thing.inNewer = candidateIsNewer() ? inCandidate : inReference;
    }

    [[nodiscard]] Thing rowThing(std::string const& referenceId, std::string const& candidateId) const {
        auto const* reference = m_sheets.referenceParameter(referenceId);
        auto const* candidate = m_sheets.candidateParameter(candidateId);
        Thing thing;
        thing.row = true;
        auto& referenceValues = candidateIsNewer() ? thing.older : thing.newer;
        auto& candidateValues = candidateIsNewer() ? thing.newer : thing.older;
        addRow(thing, reference, referenceValues, m_reference);
        if (reference != nullptr && candidate != nullptr && reference->variant == candidate->variant && compare::printAlike(*reference, *candidate)) {
            candidateValues = referenceValues;
            m_candidate.addTitles(candidate->section, thing.titles);
        } else {
            addRow(thing, candidate, candidateValues, m_candidate);
        }
        setSides(thing, !referenceId.empty(), !candidateId.empty());
        return thing;
    }

    [[nodiscard]] Thing textThing(int index) const {
        Finding const& finding = m_comparison.findings[static_cast<std::size_t>(index)];
        Thing thing;
        thing.finding = index;
        addSide(thing, finding.reference, candidateIsNewer() ? thing.older : thing.newer, m_reference);
        addSide(thing, finding.candidate, candidateIsNewer() ? thing.newer : thing.older, m_candidate);
        (finding.reference ? m_reference : m_candidate).addTitles(finding.section, thing.titles);
        setSides(thing, finding.reference.has_value(), finding.candidate.has_value());
        return thing;
    }

    [[nodiscard]] bool isOfHistory(Finding const& finding) const {
        if (finding.reference && (m_reference.isHistory(finding.section) || m_reference.inHistory(*finding.reference))) return true;
        if (!finding.reference && m_candidate.isHistory(finding.section)) return true;
        return finding.candidate && m_candidate.inHistory(*finding.candidate);
    }

    // What a history speaks of: not what was worked out or not compared, nor itself.
    [[nodiscard]] bool isPrintedChange(Finding const& finding) const {
        bool const workedOut = finding.kind == FindingKind::Coverage || finding.kind == FindingKind::Derived || finding.kind == FindingKind::Cell;
        return !workedOut && finding.relation != model::Relation::ConflictInDocument && !isOfHistory(finding);
    }

    void collectThings() {
        std::vector<int> findingOfPair(m_comparison.pairs.size(), -1);
        std::vector<int> texts;
        for (std::size_t i = 0; i < m_comparison.findings.size(); ++i) {
            Finding const& finding = m_comparison.findings[i];
            if (!isPrintedChange(finding)) continue;
            bool const row = finding.kind == FindingKind::Parameter && finding.pair >= 0 && static_cast<std::size_t>(finding.pair) < findingOfPair.size();
            if (row) findingOfPair[static_cast<std::size_t>(finding.pair)] = static_cast<int>(i);
            else texts.push_back(static_cast<int>(i));
        }
        m_things.resize(texts.size() + m_comparison.pairs.size());
        model::inParts(m_things.size(), [&](std::size_t first, std::size_t last) {
            for (std::size_t t = first; t < last; ++t) {
                bool const row = t >= texts.size();
                std::size_t const p = t - texts.size();
                m_things[t] = row ? rowThing(m_comparison.pairs[p].reference, m_comparison.pairs[p].candidate) : textThing(texts[t]);
                if (row) m_things[t].finding = findingOfPair[p];
            }
        });
    }

    struct Read {
        HistoryEntry const* entry;
        HistoryStatement const* statement;
        ChangeClaim claim;
        bool answered;
    };

    // Which values of a claim the two sheets have to show: not one that an earlier claim came to, nor
    // one that a later claim left again.
    struct Ends {
        bool from = false;
        bool to = false;
    };
    static Ends endsShown(ChangeClaim const& claim, std::vector<Read> const& claims) {
        auto const meet = [](compare::TokenKeys const& a, compare::TokenKeys const& b) {
            return std::any_of(a.begin(), a.end(), [&](auto const& key) { return std::find(b.begin(), b.end(), key) != b.end(); });
        };
        auto const any = [&](auto const& linked) {
            return std::any_of(claims.begin(), claims.end(), [&](Read const& other) { return meet(other.claim.subject, claim.subject) && linked(other.claim); });
        };
        return {.from = !claim.from.empty() && !any([&](ChangeClaim const& other) { return meet(other.to, claim.from); }),
                .to = !claim.to.empty() && !any([&](ChangeClaim const& other) { return meet(other.from, claim.to); })};
    }

    // Each revision that prints the thing has to print its value of the claim.
    static bool showsValues(ChangeClaim const& claim, Ends ends, Thing const& thing) {
        bool const from = intersect(thing.older, claim.from);
        bool const to = intersect(thing.newer, claim.to);
        if (ends.from && thing.inOlder && !from) return false;
        if (ends.to && thing.inNewer && !to) return false;
        return from || to;
    }

    // How much of the claim the thing holds; 0: it can't be meant.
    static double likeness(ChangeClaim const& claim, Ends ends, Thing const& thing) {
        if (!claim.places.empty() && !intersect(thing.titles, claim.places)) return 0;
        bool const values = !claim.from.empty() || !claim.to.empty();
        if (values && !showsValues(claim, ends, thing)) return 0;
        // An added section explains no change of what was there before.
        if (claim.subject.empty() && claim.change == compare::ClaimedChange::Added && thing.inOlder) return 0;
        if (claim.subject.empty() && claim.change == compare::ClaimedChange::Removed && thing.inNewer) return 0;
        if (claim.subject.empty()) return 1;
        auto const held = std::count_if(claim.subject.begin(), claim.subject.end(), [&](auto const& key) { return thing.words.count(key) > 0; });
        double share = static_cast<double>(held) / static_cast<double>(claim.subject.size());
        for (auto const& symbol : thing.symbols) {
            bool const named = symbol.size() > 1 && std::find(claim.subject.begin(), claim.subject.end(), symbol) != claim.subject.end();
            if (named) share = std::max(share, kSymbolNamed);
        }
        return share;
    }

    // Marks the findings that the claim covers; false: there is none.
    bool cover(ChangeClaim const& claim, Ends ends) {
        std::vector<double> alike;
        double best = 0;
        double bestRow = 0;
        for (auto const& thing : m_things) {
            alike.push_back(likeness(claim, ends, thing));
            best = std::max(best, alike.back());
            if (thing.row) bestRow = std::max(bestRow, alike.back());
        }
        if (best < kAbout) return false;
        bool found = false;
        for (std::size_t i = 0; i < m_things.size(); ++i) {
            Thing const& thing = m_things[i];
            double const least = std::max(best - kTextTolerance, thing.row ? bestRow : kAbout);
            if (thing.finding < 0 || alike[i] < kAbout || alike[i] < least) continue;
            m_mentioned[static_cast<std::size_t>(thing.finding)] = true;
            found = true;
        }
        return found;
    }

    std::vector<Finding> unansweredClaims() {
        std::vector<std::string> titles;
        for (auto const* sheet : {&m_sheets.reference(), &m_sheets.candidate()}) {
            for (auto const& section : sheet->sections) {
                if (section.kind != model::SectionKind::Revision) titles.push_back(section.title);
            }
        }
        compare::ClaimReader const reader(m_sheets.vocabulary().historyWords(), titles);
        std::vector<Read> claims;
        for (auto const& entry : m_succession.entries) {
            for (auto const& statement : entry.statements) claims.push_back({&entry, &statement, reader.read(statement.text), false});
        }
        for (auto& read : claims) {
            if (read.claim.unspecific) mentionQuietOnes();
            read.answered = read.claim.unspecific || cover(read.claim, endsShown(read.claim, claims));
        }
        std::vector<Finding> findings;
        for (auto const& read : claims) {
            // What was changed once more later is answered by the last of its changes.
            bool const answered = read.answered || std::any_of(claims.begin(), claims.end(), [&](Read const& other) {
                                      return other.answered && !other.claim.unspecific && other.claim.subject == read.claim.subject && other.claim.places == read.claim.places &&
                                             !read.claim.from.empty();
                                  });
            if (!answered) findings.push_back(unanswered(*read.entry, *read.statement));
        }
        return findings;
    }

    void mentionQuietOnes() {
        for (std::size_t i = 0; i < m_mentioned.size(); ++i) m_mentioned[i] = m_mentioned[i] || isQuiet(m_comparison.findings[i]);
    }

    // Revision and date of the sheet itself, in its running heads and properties.
    [[nodiscard]] bool isOwnIdentity(Finding const& finding) const {
        if (finding.kind != FindingKind::Document) return false;
        auto const names = [](std::optional<model::Side> const& side, model::DocumentInfo const& document) {
            if (!side) return false;
            Words words;
            addWords(words, side->text);
            Words own;
            addWords(own, document.revision);
            bool const revision = std::any_of(own.begin(), own.end(), [&](auto const& word) { return words.count(word) > 0; });
            return revision || compare::dateNumber(side->text) != 0;
        };
        return names(finding.reference, m_sheets.reference().document) || names(finding.candidate, m_sheets.candidate().document);
    }

    // Rows of several versions and lines of running heads are told under the first of their like
    // (finding_groups.h). By finding: the index of that one; its own where it stands alone.
    [[nodiscard]] std::vector<std::size_t> firstsOfLikes() const {
        auto const& findings = m_comparison.findings;
        std::unordered_map<std::string_view, std::size_t> at;
        for (std::size_t i = 0; i < findings.size(); ++i) at.emplace(findings[i].id, i);
        std::vector<std::size_t> firsts;
        for (std::size_t i = 0; i < findings.size(); ++i) {
            auto const head = findings[i].consequenceOf.empty() ? at.end() : at.find(findings[i].consequenceOf);
            bool const grouped = findings[i].kind == FindingKind::Parameter || findings[i].kind == FindingKind::Document;
            bool const like = grouped && head != at.end() && findings[head->second].kind == findings[i].kind && findings[head->second].relation == findings[i].relation;
            firsts.push_back(like ? head->second : i);
        }
        return firsts;
    }

    [[nodiscard]] std::string versionOf(Finding const& finding) const {
        if (finding.pair < 0 || static_cast<std::size_t>(finding.pair) >= m_comparison.pairs.size()) return {};
        auto const& pair = m_comparison.pairs[static_cast<std::size_t>(finding.pair)];
        auto const* reference = m_sheets.referenceParameter(pair.reference);
        auto const* candidate = m_sheets.candidateParameter(pair.candidate);
        if (reference != nullptr && !reference->variant.empty()) return reference->variant;
        return candidate != nullptr ? candidate->variant : std::string();
    }

    // Of it alone. Its like have the same title, but that of the first names the others too.
    [[nodiscard]] std::string titleOfOne(std::size_t index, std::vector<std::size_t> const& firsts) const {
        std::size_t shown = index;
        for (std::size_t i = 0; i < firsts.size() && firsts[index] == index; ++i) {
            if (i != index && firsts[i] == index) shown = i;
        }
        std::string const version = versionOf(m_comparison.findings[index]);
        return m_comparison.findings[shown].title + (version.empty() ? "" : " (" + version + ")");
    }

    std::optional<Finding> unmentionedChanges() {
        auto const firsts = firstsOfLikes();
        std::vector<bool> inPart(firsts.size(), false);  // by first: the history names some of its like, so the others count by themselves
        for (std::size_t i = 0; i < firsts.size(); ++i) {
            if (m_mentioned[i]) inPart[firsts[i]] = true;
        }
        std::vector<std::size_t> list;
        for (std::size_t i = 0; i < m_comparison.findings.size(); ++i) {
            Finding const& finding = m_comparison.findings[i];
            bool const speaks = finding.consequenceOf.empty() || (firsts[i] != i && inPart[firsts[i]]);
            bool const counts = speaks && finding.severity > Severity::Editorial && isPrintedChange(finding) && !isOwnIdentity(finding);
            if (counts && !m_mentioned[i] && !membersMentioned(finding)) list.push_back(i);
        }
        if (list.empty()) return std::nullopt;
        std::stable_sort(list.begin(), list.end(), [&](std::size_t a, std::size_t b) { return m_comparison.findings[a].severity > m_comparison.findings[b].severity; });
        Finding made = note(m_succession.entries.front().place, textOfHistory());
        std::vector<std::string> gravest;
        for (std::size_t const index : list) {
            Finding& finding = m_comparison.findings[index];
            made.regarding.push_back(finding.id);
            if (finding.severity > Severity::Note) gravest.push_back(inPart[firsts[index]] ? titleOfOne(index, firsts) : finding.title);
            finding.explanation += " " + texts::notMentioned(side());
        }
        made.title = texts::unmentionedTitle(list.size());
        made.explanation = texts::unmentionedExplanation(side(), m_succession.from, m_succession.to, gravest, list.size() - gravest.size(), m_succession.complete);
        return made;
    }

    // A group is mentioned where everything under it is.
    [[nodiscard]] bool membersMentioned(Finding const& head) const {
        bool any = false;
        for (std::size_t i = 0; i < m_comparison.findings.size(); ++i) {
            if (m_comparison.findings[i].consequenceOf != head.id) continue;
            if (!m_mentioned[i]) return false;
            any = true;
        }
        return any && head.kind == FindingKind::Section;
    }

    [[nodiscard]] std::string textOfHistory() const {
        std::string text;
        for (auto const& entry : m_succession.entries) {
            text += (text.empty() ? "" : " ") + entry.revision + ":";
            for (auto const& statement : entry.statements) text += " " + statement.text;
        }
        return texts::shortened(text, kLongestSide);
    }

    [[nodiscard]] Finding note(model::Place const& place, std::string text) const {
        Finding finding;
        finding.kind = FindingKind::Document;
        finding.relation = candidateIsNewer() ? model::Relation::OnlyCandidate : model::Relation::OnlyReference;
        finding.severity = Severity::Note;
        finding.level = 1;
        finding.judgement = model::Judgement::Open;
        model::Side shown;
        shown.page = place.page;
        shown.box = place.box;
        shown.text = std::move(text);
        (candidateIsNewer() ? finding.candidate : finding.reference) = std::move(shown);
        return finding;
    }

    [[nodiscard]] Finding unanswered(HistoryEntry const& entry, HistoryStatement const& statement) const {
        Finding made = note(statement.place, statement.text);
        made.title = texts::claimTitle(statement.text);
        made.explanation = texts::claimExplanation(side(), entry.revision, statement.page);
        // A change that was not seen may be one that was not read.
        made.open = true;
        return made;
    }

    // Ids unlike those of the document findings that are there already.
    void nameAdded(std::vector<Finding>& added) const {
        std::vector<Finding> documents;
        for (auto const& finding : m_comparison.findings) {
            if (finding.kind == FindingKind::Document) documents.push_back(finding);
        }
        std::size_t const known = documents.size();
        documents.insert(documents.end(), added.begin(), added.end());
        compare::nameFindings(documents);
        for (std::size_t i = 0; i < added.size(); ++i) added[i].id = documents[known + i].id;
    }

    model::Comparison& m_comparison;
    SheetView const& m_sheets;
    Succession m_succession;
    Chapters m_reference, m_candidate;
    std::vector<Thing> m_things;
    std::vector<bool> m_mentioned;  // by finding
};

}  // namespace

void setAgainstHistory(model::Comparison& comparison, SheetView const& sheets, std::vector<std::vector<std::string>>& called) {
    if (!comparison.hasReference()) return;
    auto succession = compare::successionOf(sheets.reference(), sheets.candidate(), sheets.vocabulary().historyWords());
    if (!succession) return;
    History(comparison, sheets, std::move(*succession)).run(called);
}

}  // namespace standin::risk

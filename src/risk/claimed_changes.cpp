// Claims are matched to things: rows of both sheets, whether they differ or not, and
// findings of other kinds. The thing that holds most of a claim's words is what it is
// about, so that "pulsed drain current" is not answered by a changed "drain current". A
// claim with values fits only where the older sheet prints the one or the newer the other.
//
// Tested by tests/src/risk/claimed_changes_test.cpp.
#include "risk/claimed_changes.h"

#include <algorithm>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <unordered_set>
#include <utility>
#include <vector>

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

// What claims name, by number: nothing else of the sheets can answer one.
using Numbers = std::vector<int>;  // ascending, each once, but where they stand in a claim's order

class NamedKeys {
public:
    Numbers numbersOf(compare::TokenKeys const& keys) {
        Numbers numbers;
        for (auto const& key : keys) numbers.push_back(m_numbers.try_emplace(key, static_cast<int>(m_numbers.size())).first->second);
        return numbers;
    }
    // Adds the number of the key, if a claim names it.
    void addTo(Numbers& numbers, std::string const& key) const {
        if (auto const found = m_numbers.find(key); found != m_numbers.end()) numbers.push_back(found->second);
    }

private:
    std::unordered_map<std::string, int> m_numbers;
};

void sortOnce(Numbers& numbers) {
    std::sort(numbers.begin(), numbers.end());
    numbers.erase(std::unique(numbers.begin(), numbers.end()), numbers.end());
}

void append(Numbers& numbers, Numbers const& more) { numbers.insert(numbers.end(), more.begin(), more.end()); }

bool holds(Numbers const& sorted, int number) { return std::binary_search(sorted.begin(), sorted.end(), number); }

bool meet(Numbers const& sorted, Numbers const& named) {
    return std::any_of(named.begin(), named.end(), [&](int number) { return holds(sorted, number); });
}

bool haveCommon(Numbers const& a, Numbers const& b) {
    return std::any_of(a.begin(), a.end(), [&](int number) { return std::find(b.begin(), b.end(), number) != b.end(); });
}

// One sheet's sections in printed order, with the headings that each stands under.
class Chapters {
public:
    explicit Chapters(model::Datasheet const& sheet) : m_sheet(sheet) {
        std::vector<std::pair<int, std::string>> open;  // level and title of the headings above
        for (auto const& section : sheet.sections) {
            while (!open.empty() && open.back().first >= section.level) open.pop_back();
            open.emplace_back(section.level, compare::titleKey(section.title));
            auto& titles = m_titles[section.id];
            for (auto const& [level, title] : open) titles.push_back(title);
            if (section.kind == model::SectionKind::Revision) m_history.insert(section.id);
        }
        for (auto const& table : sheet.tables) {
            if (table.kind == model::TableKind::Revision || isHistory(table.section)) m_tables.push_back(&table);
        }
    }

    void addTitles(std::string const& section, NamedKeys const& named, Numbers& titles) const {
        auto const found = m_titles.find(section);
        if (found == m_titles.end()) return;
        for (auto const& title : found->second) named.addTo(titles, title);
    }
    [[nodiscard]] bool isHistory(std::string const& section) const { return m_history.count(section) > 0; }

    // The section that a place stands in: the last heading before it.
    [[nodiscard]] std::string sectionAt(int page, model::Rect const& box) const {
        model::Section const* last = nullptr;
        for (auto const& section : m_sheet.sections) {
            if (std::pair(section.page, section.box.y0) <= std::pair(page, box.y0)) last = &section;
        }
        return last != nullptr ? last->id : std::string();
    }

    [[nodiscard]] bool inHistory(model::Side const& side) const {
        return std::any_of(m_tables.begin(), m_tables.end(), [&](auto const* table) { return table->page == side.page && table->box.contains(side.box.centre()); });
    }

private:
    model::Datasheet const& m_sheet;
    std::unordered_map<std::string, compare::TokenKeys> m_titles;  // by section
    std::unordered_set<std::string> m_history;
    std::vector<model::Table const*> m_tables;  // of the history
};

// Something that a claim may be about. What claims name of it, all ascending.
struct Thing {
    int finding = -1;  // index; -1: a row that does not differ
    bool row = false;
    bool inOlder = false;  // which of the two revisions print it
    bool inNewer = false;
    Numbers words;
    Numbers symbols;
    Numbers older, newer;  // values in each sheet
    Numbers titles;        // headings it stands under, in either sheet
};

// What claims name in printed texts. Rows repeat each other's texts: each is read once.
class NamedTexts {
public:
    explicit NamedTexts(NamedKeys const& named) : m_named(named) {}

    struct Text {
        Numbers words;
        Numbers symbols;  // words of more than one letter
        Numbers values;
    };
    Text const& read(std::string const& text) {
        auto const [entry, isNew] = m_texts.try_emplace(text);
        if (!isNew) return entry->second;
        for (auto const& token : compare::claimTokens(text)) {
            if (token.kind != ClaimToken::Kind::Sign) m_named.addTo(entry->second.words, token.key);
            if (token.key.size() > 1) m_named.addTo(entry->second.symbols, token.key);
            if (token.kind == ClaimToken::Kind::Quantity) m_named.addTo(entry->second.values, token.key);
        }
        return entry->second;
    }
    [[nodiscard]] NamedKeys const& named() const { return m_named; }

private:
    NamedKeys const& m_named;
    std::unordered_map<std::string, Text> m_texts;
};

compare::TokenKeys wordsOf(std::string_view text) {
    compare::TokenKeys words;
    for (auto& token : compare::claimTokens(text)) {
        if (token.kind != ClaimToken::Kind::Sign) words.push_back(std::move(token.key));
    }
    return words;
}

bool isQuiet(Finding const& finding) {
    return finding.relation == model::Relation::Reworded && !finding.classes.empty() &&
           std::all_of(finding.classes.begin(), finding.classes.end(), [](auto c) { return c == WordingClass::Edit || c == WordingClass::Style; });
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
        readClaims();
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

    void addRow(Thing& thing, model::Parameter const* parameter, Numbers& values, Chapters const& chapters, NamedTexts& texts) const {
        if (parameter == nullptr) return;
        for (auto const* text : {&parameter->name, &parameter->symbol, &parameter->condition, &parameter->variant}) append(thing.words, texts.read(*text).words);
        append(thing.symbols, texts.read(parameter->symbol).symbols);
        // With and without unit: histories often leave it out.
        for (auto const* value : {&parameter->min, &parameter->typ, &parameter->max}) {
            if (!*value) continue;
            append(values, texts.read((*value)->text).values);
            append(values, texts.read((*value)->text + " " + parameter->unit).values);
        }
        chapters.addTitles(parameter->section, texts.named(), thing.titles);
    }

    void addSide(Thing& thing, std::optional<model::Side> const& side, Numbers& values, Chapters const& chapters, NamedTexts& texts) const {
        if (!side) return;
        auto const& read = texts.read(side->text);
        append(thing.words, read.words);
        append(values, read.values);
        chapters.addTitles(chapters.sectionAt(side->page, side->box), texts.named(), thing.titles);
    }

    void setSides(Thing& thing, bool inReference, bool inCandidate) const {
        thing.inOlder = candidateIsNewer() ? inReference : inCandidate;
        thing.inNewer = candidateIsNewer() ? inCandidate : inReference;
    }

    [[nodiscard]] Thing rowThing(std::string const& referenceId, std::string const& candidateId, NamedTexts& texts) const {
        auto const* reference = m_sheets.referenceParameter(referenceId);
        auto const* candidate = m_sheets.candidateParameter(candidateId);
        Thing thing;
        thing.row = true;
        auto& referenceValues = candidateIsNewer() ? thing.older : thing.newer;
        auto& candidateValues = candidateIsNewer() ? thing.newer : thing.older;
        addRow(thing, reference, referenceValues, m_reference, texts);
        if (reference != nullptr && candidate != nullptr && reference->variant == candidate->variant && compare::printAlike(*reference, *candidate)) {
            candidateValues = referenceValues;
            m_candidate.addTitles(candidate->section, texts.named(), thing.titles);
        } else {
            addRow(thing, candidate, candidateValues, m_candidate, texts);
        }
        setSides(thing, !referenceId.empty(), !candidateId.empty());
        return thing;
    }

    [[nodiscard]] Thing textThing(int index, NamedTexts& texts) const {
        Finding const& finding = m_comparison.findings[static_cast<std::size_t>(index)];
        Thing thing;
        thing.finding = index;
        addSide(thing, finding.reference, candidateIsNewer() ? thing.older : thing.newer, m_reference, texts);
        addSide(thing, finding.candidate, candidateIsNewer() ? thing.newer : thing.older, m_candidate, texts);
        (finding.reference ? m_reference : m_candidate).addTitles(finding.section, texts.named(), thing.titles);
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
            NamedTexts read(m_named);
            for (std::size_t t = first; t < last; ++t) {
                bool const row = t >= texts.size();
                std::size_t const p = t - texts.size();
                Thing& thing = m_things[t];
                thing = row ? rowThing(m_comparison.pairs[p].reference, m_comparison.pairs[p].candidate, read) : textThing(texts[t], read);
                if (row) thing.finding = findingOfPair[p];
                for (auto* numbers : {&thing.words, &thing.symbols, &thing.older, &thing.newer, &thing.titles}) sortOnce(*numbers);
            }
        });
    }

    struct Read {
        HistoryEntry const* entry;
        HistoryStatement const* statement;
        ChangeClaim claim;
        Numbers subject, from, to, places;
        bool answered = false;
    };

    // Which values of a claim the two sheets have to show: not one that an earlier claim came to, nor
    // one that a later claim left again.
    struct Ends {
        bool from = false;
        bool to = false;
    };
    [[nodiscard]] Ends endsShown(Read const& read) const {
        auto const any = [&](auto const& linked) {
            return std::any_of(m_claims.begin(), m_claims.end(), [&](Read const& other) { return haveCommon(other.subject, read.subject) && linked(other); });
        };
        return {.from = !read.from.empty() && !any([&](Read const& other) { return haveCommon(other.to, read.from); }),
                .to = !read.to.empty() && !any([&](Read const& other) { return haveCommon(other.from, read.to); })};
    }

    // Each revision that prints the thing has to print its value of the claim.
    static bool showsValues(Read const& read, Ends ends, Thing const& thing) {
        bool const from = meet(thing.older, read.from);
        bool const to = meet(thing.newer, read.to);
        if (ends.from && thing.inOlder && !from) return false;
        if (ends.to && thing.inNewer && !to) return false;
        return from || to;
    }

    // How much of the claim the thing holds; 0: it can't be meant.
    static double likeness(Read const& read, Ends ends, Thing const& thing) {
        if (!read.places.empty() && !meet(thing.titles, read.places)) return 0;
        bool const values = !read.from.empty() || !read.to.empty();
        if (values && !showsValues(read, ends, thing)) return 0;
        // An added section explains no change of what was there before.
        if (read.subject.empty() && read.claim.change == compare::ClaimedChange::Added && thing.inOlder) return 0;
        if (read.subject.empty() && read.claim.change == compare::ClaimedChange::Removed && thing.inNewer) return 0;
        if (read.subject.empty()) return 1;
        auto const held = std::count_if(read.subject.begin(), read.subject.end(), [&](int number) { return holds(thing.words, number); });
        double const share = static_cast<double>(held) / static_cast<double>(read.subject.size());
        return meet(thing.symbols, read.subject) ? std::max(share, kSymbolNamed) : share;
    }

    // Marks the findings that the claim covers; false: there is none.
    bool cover(Read const& read) {
        Ends const ends = endsShown(read);
        std::vector<double> alike;
        double best = 0;
        double bestRow = 0;
        for (auto const& thing : m_things) {
            alike.push_back(likeness(read, ends, thing));
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

    void readClaims() {
        std::vector<std::string> titles;
        for (auto const* sheet : {&m_sheets.reference(), &m_sheets.candidate()}) {
            for (auto const& section : sheet->sections) {
                if (section.kind != model::SectionKind::Revision) titles.push_back(section.title);
            }
        }
        compare::ClaimReader const reader(m_sheets.vocabulary().historyWords(), titles);
        for (auto const& entry : m_succession.entries) {
            for (auto const& statement : entry.statements) {
                Read read{.entry = &entry, .statement = &statement, .claim = reader.read(statement.text), .subject = {}, .from = {}, .to = {}, .places = {}};
                read.subject = m_named.numbersOf(read.claim.subject);
                read.from = m_named.numbersOf(read.claim.from);
                read.to = m_named.numbersOf(read.claim.to);
                read.places = m_named.numbersOf(read.claim.places);
                m_claims.push_back(std::move(read));
            }
        }
    }

    std::vector<Finding> unansweredClaims() {
        for (auto& read : m_claims) {
            if (read.claim.unspecific) mentionQuietOnes();
            read.answered = read.claim.unspecific || cover(read);
        }
        std::vector<Finding> findings;
        for (auto const& read : m_claims) {
            // What was changed once more later is answered by the last of its changes.
            bool const answered = read.answered || std::any_of(m_claims.begin(), m_claims.end(), [&](Read const& other) {
                                      return other.answered && !other.claim.unspecific && other.subject == read.subject && other.places == read.places && !read.from.empty();
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
            auto const words = wordsOf(side->text);
            auto const own = wordsOf(document.revision);
            bool const revision = std::any_of(own.begin(), own.end(), [&](auto const& word) { return std::find(words.begin(), words.end(), word) != words.end(); });
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
        auto const groups = mentionedGroups();
        auto const isMentionedGroup = [&](Finding const& head) {
            auto const group = head.kind == FindingKind::Section ? groups.find(head.id) : groups.end();
            return group != groups.end() && group->second;
        };
        std::vector<std::size_t> list;
        for (std::size_t i = 0; i < m_comparison.findings.size(); ++i) {
            Finding const& finding = m_comparison.findings[i];
            bool const speaks = finding.consequenceOf.empty() || (firsts[i] != i && inPart[firsts[i]]);
            bool const counts = speaks && !m_mentioned[i] && finding.severity > Severity::Editorial && isPrintedChange(finding) && !isOwnIdentity(finding);
            if (counts && !isMentionedGroup(finding)) list.push_back(i);
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

    // A group is mentioned where everything under it is. By the id of a head: whether that is so.
    [[nodiscard]] std::unordered_map<std::string_view, bool> mentionedGroups() const {
        std::unordered_map<std::string_view, bool> groups;
        for (std::size_t i = 0; i < m_comparison.findings.size(); ++i) {
            auto const& head = m_comparison.findings[i].consequenceOf;
            if (head.empty()) continue;
            auto const group = groups.try_emplace(head, true).first;
            group->second = group->second && m_mentioned[i];
        }
        return groups;
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
    NamedKeys m_named;
    std::vector<Read> m_claims;
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

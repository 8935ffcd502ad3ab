// A text meets the condition of a table by its characters: the condition is put together of the
// captions and headings that stand for the rows.
//
// Tested by tests/src/compare/align_test.cpp.
#include "compare/condition_texts.h"

#include <algorithm>
#include <map>
#include <set>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "compare/parameter_findings.h"
#include "compare/relation.h"
#include "compare/text_keys.h"
#include "compare/wording_classes.h"
#include "text/fold.h"
#include "text/utf8.h"

namespace standin::compare {

namespace {

using model::ConditionRelation;
using model::Parameter;
using model::Relation;

constexpr std::size_t kTelling = 8;  // bytes of a part of a condition that a text shows by no chance ("VDD=3.5V")

// "(Ta = 25 °C)": what stands within, to be met within a longer text.
std::string withoutBrackets(std::string text) {
    while (!text.empty() && text.front() == '(') text.erase(0, 1);
    while (!text.empty() && text.back() == ')' && std::count(text.begin(), text.end(), ')') > std::count(text.begin(), text.end(), '(')) text.pop_back();
    return text;
}

// The finding of a text of both sheets that follows from no other.
bool isTextByItself(Draft const& draft) {
    bool const text = draft.rank == Rank::Table || draft.rank == Rank::Wording || draft.rank == Rank::Section;
    return text && !draft.dropped && draft.cause < 0 && draft.finding.reference && draft.finding.candidate;
}

// Finds the rows that findings are about.
class Rows {
public:
    explicit Rows(SheetPair const& sheets) {
        for (auto const& p : sheets.reference.parameters) m_byAffected.emplace("r:" + p.id, &p);
        for (auto const& p : sheets.candidate.parameters) m_byAffected.emplace("c:" + p.id, &p);
    }

    struct Pair {
        Parameter const* reference = nullptr;
        Parameter const* candidate = nullptr;
    };
    // Of a finding that says that the conditions of two rows differ; null: it is another.
    [[nodiscard]] Pair ofOtherConditions(Draft const& draft) const {
        if (draft.rank != Rank::Parameter || draft.finding.relation != Relation::ConditionsDiffer || draft.finding.affects.size() != 2) return {};
        auto const r = m_byAffected.find(draft.finding.affects[0]);
        auto const c = m_byAffected.find(draft.finding.affects[1]);
        return r == m_byAffected.end() || c == m_byAffected.end() ? Pair{} : Pair{r->second, c->second};
    }

private:
    std::map<std::string, Parameter const*> m_byAffected;
};

}  // namespace

void linkTableConditions(std::vector<Draft>& drafts, SheetPair const& sheets, ConditionMemo& memo) {
    struct Shown {
        std::string reference, candidate;
        int index;
    };
    std::vector<Shown> shown;
    for (std::size_t i = 0; i < drafts.size(); ++i) {
        auto const& draft = drafts[i];
        if (!isTextByItself(draft)) continue;
        shown.push_back({withoutBrackets(spaceless(draft.finding.reference->text)), withoutBrackets(spaceless(draft.finding.candidate->text)), static_cast<int>(i)});
    }
    if (shown.empty()) return;
    Rows const rows(sheets);
    std::map<std::pair<std::string, std::string>, int> known;
    for (Draft& draft : drafts) {
        auto const [r, c] = rows.ofOtherConditions(draft);
        if (r == nullptr) continue;
        Relation const values = relateValues(*r, *c, precisionFor(sheets, *r, *c));
        if (!isEqual(values, *r, *c)) continue;
        if (relateConditions({r->condition, {}}, {c->condition, {}}, memo) != ConditionRelation::Same) continue;
        auto key = std::make_pair(r->tableCondition, c->tableCondition);
        auto found = known.find(key);
        if (found == known.end()) {
            int cause = -1;
            std::string const before = withoutBrackets(spaceless(key.first));
            std::string const after = withoutBrackets(spaceless(key.second));
            auto const [from, to] = changedPart(key.first, key.second);
            std::string const changedFrom = spaceless(from);
            std::string const changedTo = spaceless(to);
            for (auto const& candidate : shown) {
                // The table's condition may be put together of a caption and a heading: either holds the
                // other, or the text, with more around it, the part that was changed.
                auto meets = [](std::string const& text, std::string const& part) {
                    return !part.empty() && !text.empty() && (text.find(part) != std::string::npos || part.find(text) != std::string::npos);
                };
                bool const shows = changedFrom.size() >= kTelling && changedTo.size() >= kTelling && candidate.reference.find(changedFrom) != std::string::npos &&
                                   candidate.candidate.find(changedTo) != std::string::npos;
                if (shows || (meets(candidate.reference, before) && meets(candidate.candidate, after))) {
                    cause = candidate.index;
                    break;
                }
            }
            found = known.emplace(std::move(key), cause).first;
        }
        if (found->second >= 0) draft.cause = found->second;
    }
}

namespace {

// Printed text without spaces, brackets and the punctuation between conditions; signs,
// decimal points and comparisons stay ("VIN = ±5 V", "VIN > 2.5 V").
std::string conditionText(std::string_view printed) {
    std::string bare;
    for (char const c : spaceless(printed)) {
        if (c != '(' && c != ')' && c != '[' && c != ']' && c != ',' && c != ';' && c != ':') bare.push_back(c);
    }
    if (!bare.empty() && bare.back() == '.') bare.pop_back();
    return bare;
}

// Is `text` the condition, or a part of it that begins and ends between its numbers?
bool statesPartOf(std::string const& condition, std::string const& text) {
    constexpr std::size_t kShortest = 6;
    if (text.size() < kShortest || std::none_of(text.begin(), text.end(), text::isAsciiDigit)) return false;
    auto const ofNumber = [](char c) { return text::isAsciiDigit(c) || c == '.' || c == '-' || c == '+' || static_cast<unsigned char>(c) >= 0x80U; };
    for (auto at = condition.find(text); at != std::string::npos; at = condition.find(text, at + 1)) {
        std::size_t const end = at + text.size();
        if ((at == 0 || !ofNumber(condition[at - 1])) && (end == condition.size() || !ofNumber(condition[end]))) return true;
    }
    return false;
}

// The conditions of the two tables of a row whose finding says that they differ.
struct TwoConditions {
    int draft = 0;
    std::string reference, candidate;
};

std::vector<TwoConditions> differingTableConditions(std::vector<Draft> const& drafts, SheetPair const& sheets, ConditionMemo& memo) {
    Rows const rows(sheets);
    std::vector<TwoConditions> all;
    std::set<std::pair<std::string, std::string>> known;
    for (std::size_t i = 0; i < drafts.size(); ++i) {
        if (drafts[i].dropped) continue;
        auto const [r, c] = rows.ofOtherConditions(drafts[i]);
        if (r == nullptr) continue;
        std::string const& before = r->tableCondition;
        std::string const& after = c->tableCondition;
        if (before.empty() || after.empty() || !known.emplace(before, after).second) continue;
        if (relateConditions({{}, before}, {{}, after}, memo) == ConditionRelation::Same) continue;
        all.push_back({static_cast<int>(i), conditionText(before), conditionText(after)});
    }
    return all;
}

}  // namespace

void linkConditionTexts(std::vector<Draft>& drafts, SheetPair const& sheets, ConditionMemo& memo) {
    if (sheets.oneText()) return;
    auto const conditions = differingTableConditions(drafts, sheets, memo);
    if (conditions.empty()) return;
    for (Draft& draft : drafts) {
        if (!isTextByItself(draft)) continue;
        std::string const r = conditionText(draft.finding.reference->text);
        std::string const c = conditionText(draft.finding.candidate->text);
        auto const said =
            std::find_if(conditions.begin(), conditions.end(), [&](TwoConditions const& both) { return statesPartOf(both.reference, r) && statesPartOf(both.candidate, c); });
        if (said != conditions.end()) draft.cause = said->draft;
    }
}

namespace {

// The letters and digits of a text without the numbers of notes: how a title is met in the condition of its table,
// which is read without bullets and note marks. What it states is compared by quantity then.
std::string lettersOf(std::string_view printed) {
    std::string letters;
    for (char const c : text::asciiLower(text::foldForComparison(printed))) {
        if (text::isAsciiLetter(c) || text::isAsciiDigit(c)) letters.push_back(c);
    }
    for (auto at = letters.find("note"); at != std::string::npos; at = letters.find("note", at + 1)) {
        std::size_t end = at + 4;
        while (end < letters.size() && text::isAsciiDigit(letters[end])) ++end;
        if (end > at + 4) letters.erase(at, end - at);
    }
    return letters;
}

// The conditions of all tables of a sheet, each once.
std::vector<std::string> tableConditions(model::Datasheet const& sheet) {
    std::set<std::string_view> printed;
    for (Parameter const& p : sheet.parameters) {
        if (!p.tableCondition.empty()) printed.insert(p.tableCondition);
    }
    std::vector<std::string> texts;
    texts.reserve(printed.size());
    for (std::string_view const condition : printed) texts.push_back(lettersOf(condition));
    return texts;
}

// The condition may be put together of a caption and a heading, the text may hold more than the condition.
bool statesOneOf(std::vector<std::string> const& conditions, std::string const& letters) {
    constexpr std::size_t kShortest = 6;
    return std::any_of(conditions.begin(), conditions.end(), [&](std::string const& condition) {
        return std::min(condition.size(), letters.size()) >= kShortest && (condition.find(letters) != std::string::npos || letters.find(condition) != std::string::npos);
    });
}

}  // namespace

void settleConditionTexts(std::vector<Draft>& drafts, SheetPair const& sheets, ConditionMemo& memo) {
    if (sheets.oneText()) return;
    auto const ofReference = tableConditions(sheets.reference);
    auto const ofCandidate = tableConditions(sheets.candidate);
    for (Draft& draft : drafts) {
        auto& finding = draft.finding;
        if (!isTextByItself(draft) || !differsInNumbersOnly(finding.classes)) continue;
        std::string const& r = finding.reference->text;
        std::string const& c = finding.candidate->text;
        if (!statesOneOf(ofReference, lettersOf(r)) || !statesOneOf(ofCandidate, lettersOf(c))) continue;
        if (!stateTheSameAlone(r, c, memo)) continue;
        finding.relation = Relation::Reworded;
        finding.classes = {model::WordingClass::Style};
    }
}

}  // namespace standin::compare

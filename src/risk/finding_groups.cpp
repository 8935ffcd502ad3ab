// A chapter is the nearest heading of the highest level above a finding's section.
// Groups are collected by key in one walk; heads are named together with the section
// findings that are there already, so that ids stay unlike.
//
// Tested by tests/src/risk/finding_groups_test.cpp.
#include "risk/finding_groups.h"

#include <algorithm>
#include <map>
#include <tuple>
#include <unordered_map>
#include <utility>

#include "compare/finding_id.h"
#include "model/names.h"
#include "risk/texts.h"
#include "text/fold.h"

namespace standin::risk {

namespace {

using model::Finding;
using model::FindingKind;
using model::Relation;
using model::Severity;

constexpr std::size_t kFewestInChapter = 3;  // fewer stay apart
constexpr std::size_t kFewestAlike = 2;      // rows of one parameter, running heads

enum class Cause { Chapter, Furniture, Parameter, Alike };

struct GroupKey {
    Cause cause;
    Relation relation;
    std::string what;  // id of the chapter, the parameter, or all of two rows
    bool operator<(GroupKey const& other) const { return std::tie(cause, relation, what) < std::tie(other.cause, other.relation, other.what); }
};

// Section id -> id of its chapter.
using Chapters = std::unordered_map<std::string_view, model::Section const*>;

Chapters chaptersOf(model::Datasheet const& sheet) {
    Chapters chapters;
    if (sheet.sections.empty()) return chapters;
    int highest = sheet.sections.front().level;
    for (auto const& section : sheet.sections) highest = std::min(highest, section.level);
    model::Section const* chapter = &sheet.sections.front();
    for (auto const& section : sheet.sections) {
        if (section.level == highest) chapter = &section;
        chapters.emplace(section.id, chapter);
    }
    return chapters;
}

bool isOneSided(Finding const& finding) { return finding.relation == Relation::OnlyReference || finding.relation == Relation::OnlyCandidate; }

std::string parameterKey(Finding const& finding, SheetView const& sheets) {
    if (!finding.canonical.empty()) return finding.canonical;
    if (finding.affects.empty() || finding.affects.front().size() < 2) return {};
    std::string_view const id = std::string_view(finding.affects.front()).substr(2);
    auto const* parameter = finding.reference ? sheets.referenceParameter(id) : sheets.candidateParameter(id);
    if (parameter == nullptr) return {};
    std::string const key = text::foldKey(parameter->name) + "/" + text::foldKey(parameter->symbol);
    return key.size() > 1 ? "~" + key : std::string();
}

// The rows that a finding sets against each other; null where there are not two.
std::pair<model::Parameter const*, model::Parameter const*> rowsOf(Finding const& finding, SheetView const& sheets) {
    if (!finding.reference || !finding.candidate || finding.affects.size() != 2) return {};
    auto const* r = sheets.referenceParameter(std::string_view(finding.affects[0]).substr(2));
    auto const* c = sheets.candidateParameter(std::string_view(finding.affects[1]).substr(2));
    return r != nullptr && c != nullptr ? std::pair(r, c) : std::pair<model::Parameter const*, model::Parameter const*>{};
}

std::string versionOf(Finding const& finding, SheetView const& sheets) {
    auto const [r, c] = rowsOf(finding, sheets);
    return r == nullptr ? std::string() : r->variant.empty() ? c->variant : r->variant;
}

// All that is printed of the two rows but the version; empty where neither names one.
std::string rowsKey(Finding const& finding, SheetView const& sheets) {
    auto const [r, c] = rowsOf(finding, sheets);
    if (r == nullptr || (r->variant.empty() && c->variant.empty())) return {};
    std::string key = finding.title;
    auto const add = [&key](std::string_view text) {
        key += '\n';
        key += text;
    };
    for (auto const* row : {r, c}) {
        for (std::string const* text : {&row->name, &row->symbol, &row->condition, &row->tableCondition, &row->unit, &row->table, &row->section}) add(*text);
        for (auto const& note : row->notes) add(note);
        add(model::nameOf(row->kind));
    }
    for (model::Side const* side : {&*finding.reference, &*finding.candidate}) {
        for (std::string const* text : {&side->min, &side->typ, &side->max, &side->unit, &side->text}) add(*text);
    }
    return key;
}

class Grouping {
public:
    Grouping(std::vector<Finding>& findings, SheetView const& sheets)
        : m_findings(findings), m_sheets(sheets), m_reference(chaptersOf(sheets.reference())), m_candidate(chaptersOf(sheets.candidate())) {}

    // The heads to put in front of the finding at the index.
    std::vector<std::pair<std::size_t, Finding>> run() {
        for (std::size_t i = 0; i < m_findings.size(); ++i) collect(i);
        for (auto const& [key, members] : m_groups) {
            if (key.cause == Cause::Chapter) gatherChapter(key, members);
            else gatherUnderFirst(key, members);
        }
        nameHeads();
        std::sort(m_heads.begin(), m_heads.end(), [](auto const& a, auto const& b) { return a.first < b.first; });
        return std::move(m_heads);
    }

private:
    void collect(std::size_t index) {
        Finding const& finding = m_findings[index];
        if (!finding.consequenceOf.empty()) return;
        if (!isOneSided(finding)) {
            if (finding.kind != FindingKind::Parameter) return;
            std::string what = rowsKey(finding, m_sheets);
            if (!what.empty()) m_groups[{Cause::Alike, finding.relation, std::move(what)}].push_back(index);
            return;
        }
        switch (finding.kind) {
            case FindingKind::Parameter: {
                std::string what = parameterKey(finding, m_sheets);
                if (!what.empty()) m_groups[{Cause::Parameter, finding.relation, std::move(what)}].push_back(index);
                return;
            }
            case FindingKind::Document:
                if (finding.severity <= Severity::Note) m_groups[{Cause::Furniture, finding.relation, {}}].push_back(index);
                return;
            case FindingKind::Wording:
            case FindingKind::Table:
            case FindingKind::Figure:
            case FindingKind::Section: {
                if (finding.severity > Severity::Note) return;
                auto const* chapter = chapterOf(finding);
                if (chapter != nullptr) m_groups[{Cause::Chapter, finding.relation, chapter->id}].push_back(index);
                return;
            }
            default: return;
        }
    }

    [[nodiscard]] model::Section const* chapterOf(Finding const& finding) const {
        Chapters const& chapters = finding.reference ? m_reference : m_candidate;
        auto const found = chapters.find(finding.section);
        return found == chapters.end() ? nullptr : found->second;
    }

    void gatherChapter(GroupKey const& key, std::vector<std::size_t> const& members) {
        if (members.size() < kFewestInChapter) return;
        model::Section const* chapter = chapterOf(m_findings[members.front()]);
        texts::ChapterCounts counts;
        Finding head;
        head.kind = FindingKind::Section;
        head.relation = key.relation;
        head.severity = Severity::Editorial;
        for (std::size_t const index : members) {
            Finding const& member = m_findings[index];
            head.level = std::max(head.level, member.level);
            head.severity = std::max(head.severity, member.severity);
            switch (member.kind) {
                case FindingKind::Wording: ++counts.sentences; break;
                case FindingKind::Table: ++counts.rows; break;
                case FindingKind::Figure: ++counts.figures; break;
                default: ++counts.headings; break;
            }
        }
        head.judgement = m_findings[members.front()].judgement;
        head.section = chapter->id;
        model::Side side;
        side.page = chapter->page;
        side.box = chapter->box;
        side.text = chapter->title;
        head.title = texts::chapterTitle(chapter->title, key.relation, counts);
        head.explanation = texts::chapterExplanation(key.relation);
        (key.relation == Relation::OnlyReference ? head.reference : head.candidate) = std::move(side);
        m_heads.emplace_back(members.front(), std::move(head));
        m_membersOfHead.push_back(members);
    }

    void gatherUnderFirst(GroupKey const& key, std::vector<std::size_t> const& members) {
        if (members.size() < kFewestAlike) return;
        // The gravest speaks for all, the first of equals.
        auto const first = *std::max_element(members.begin(), members.end(), [&](std::size_t a, std::size_t b) {
            Finding const& x = m_findings[a];
            Finding const& y = m_findings[b];
            return std::pair(x.severity, x.level) < std::pair(y.severity, y.level);
        });
        for (std::size_t const index : members) {
            if (index != first) hang(m_findings[index], m_findings[first].id);
        }
        auto& title = m_findings[first].title;
        switch (key.cause) {
            case Cause::Furniture: title += texts::furtherLines(members.size() - 1); break;
            case Cause::Alike: title += texts::furtherVersions(versionsBut(first, members)); break;
            default: title += texts::furtherRows(members.size() - 1); break;
        }
    }

    [[nodiscard]] std::vector<std::string> versionsBut(std::size_t first, std::vector<std::size_t> const& members) const {
        std::vector<std::string> versions;
        for (std::size_t const index : members) {
            if (index != first) versions.push_back(versionOf(m_findings[index], m_sheets));
        }
        return versions;
    }

    void nameHeads() {
        std::vector<Finding> sections;
        for (auto const& finding : m_findings) {
            if (finding.kind == FindingKind::Section) sections.push_back(finding);
        }
        std::size_t const known = sections.size();
        for (auto const& [at, head] : m_heads) sections.push_back(head);
        compare::nameFindings(sections);
        for (std::size_t h = 0; h < m_heads.size(); ++h) {
            m_heads[h].second.id = sections[known + h].id;
            for (std::size_t const index : m_membersOfHead[h]) hang(m_findings[index], m_heads[h].second.id);
        }
        // What followed from a member follows from its head: a cause is no consequence.
        for (auto& finding : m_findings) {
            auto const found = finding.consequenceOf.empty() ? m_causeOf.end() : m_causeOf.find(finding.consequenceOf);
            if (found != m_causeOf.end()) finding.consequenceOf = found->second;
        }
    }

    void hang(Finding& finding, std::string const& cause) {
        finding.consequenceOf = cause;
        m_causeOf[finding.id] = cause;
    }

    std::vector<Finding>& m_findings;
    SheetView const& m_sheets;
    Chapters m_reference;
    Chapters m_candidate;
    std::map<GroupKey, std::vector<std::size_t>> m_groups;
    std::vector<std::pair<std::size_t, Finding>> m_heads;
    std::vector<std::vector<std::size_t>> m_membersOfHead;
    std::unordered_map<std::string, std::string> m_causeOf;  // member -> what it hangs under
};

}  // namespace

void groupFindings(std::vector<Finding>& findings, std::vector<std::vector<std::string>>& called, SheetView const& sheets) {
    auto heads = Grouping(findings, sheets).run();
    if (heads.empty()) return;
    std::vector<Finding> all;
    std::vector<std::vector<std::string>> allCalled;
    all.reserve(findings.size() + heads.size());
    allCalled.reserve(findings.size() + heads.size());
    auto next = heads.begin();
    for (std::size_t i = 0; i < findings.size(); ++i) {
        for (; next != heads.end() && next->first == i; ++next) {
            all.push_back(std::move(next->second));
            allCalled.emplace_back();
        }
        all.push_back(std::move(findings[i]));
        allCalled.push_back(std::move(called[i]));
    }
    findings = std::move(all);
    called = std::move(allCalled);
}

}  // namespace standin::risk

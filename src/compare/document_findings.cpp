// Furniture is laid out as one text at one place a page, so that a running head
// changed on a single page is seen; texts that only stand on more or fewer pages
// are no difference.
//
// Tested by tests/src/compare/align_test.cpp.
#include "compare/document_findings.h"

#include <algorithm>
#include <map>
#include <set>
#include <string>
#include <unordered_map>
#include <unordered_set>

#include "compare/assignment.h"
#include "text/fold.h"

namespace standin::compare {

namespace {

using model::FindingKind;
using model::Furniture;
using model::Relation;
using model::Section;

struct Instance {
    Furniture const* furniture = nullptr;
    model::Place place;
};

std::vector<Instance> instancesOf(model::Datasheet const& sheet) {
    std::vector<Instance> instances;
    for (auto const& furniture : sheet.furniture) {
        for (auto const& place : furniture.places) instances.push_back({&furniture, place});
        if (furniture.places.empty()) instances.push_back({&furniture, {}});
    }
    std::stable_sort(instances.begin(), instances.end(), [](auto const& a, auto const& b) { return a.place.page < b.place.page; });
    return instances;
}

Key keyOfInstance(Instance const& instance) { return hashOf(spaceless(instance.furniture->text), static_cast<Key>(instance.furniture->kind)); }

Draft furnitureDraft(Relation relation, Instance const* r, Instance const* c) {
    auto side = [](Instance const* instance) -> std::optional<model::Side> {
        if (instance == nullptr) return std::nullopt;
        return sideOf(instance->place.page, instance->place.box, instance->furniture->text);
    };
    return makeDraft(FindingKind::Document, Rank::Furniture, relation, side(r), side(c));
}

// How much speaks for two texts of one page being one that was changed.
double likenessOnPage(SheetPair const& sheets, Instance const& r, Instance const& c) {
    if (c.furniture->kind != r.furniture->kind) return 0;
    double alike = letterSimilarity(r.furniture->text, c.furniture->text);
    model::Rect const a = r.place.box.grown(1);
    model::Rect const b = c.place.box.grown(1);
    if (model::intersection(a, b).area() > 0.5F * std::min(a.area(), b.area())) alike += 0.5;
    if (r.furniture->kind == Furniture::Kind::PageNumber && sheets.oneText()) alike += 0.3;
    return alike;
}

std::string titleKey(Section const& section) {
    std::string key = text::foldKey(section.title);
    auto const letter = std::find_if(key.begin(), key.end(), [](char c) { return (c < '0' || c > '9') && c != '.'; });
    return letter == key.end() ? key : std::string(letter, key.end());
}

Draft sectionDraft(Relation relation, Section const* r, Section const* c) {
    auto side = [](Section const* section) -> std::optional<model::Side> {
        if (section == nullptr) return std::nullopt;
        return sideOf(section->page, section->box, section->title);
    };
    Draft draft = makeDraft(FindingKind::Section, Rank::Section, relation, side(r), side(c));
    draft.finding.section = r != nullptr ? r->id : c->id;
    return draft;
}

// What a sheet prints beside its headings: a heading of the one may have been taken for
// a running head or a sentence in the other.
std::unordered_set<Key> textsOf(model::Datasheet const& sheet, std::vector<Key> const& sentences) {
    std::unordered_set<Key> texts(sentences.begin(), sentences.end());
    for (auto const& furniture : sheet.furniture) texts.insert(keyOf(furniture.text));
    for (auto const& section : sheet.sections) texts.insert(keyOf(section.title));
    return texts;
}

// Which titles a sheet prints outside of its headings' places. In two states of one text
// that is a cell that begins with one too: its rows are compared where they stand.
class PrintedTitles {
public:
    PrintedTitles(model::Datasheet const& sheet, std::vector<Key> const& sentences, bool oneText) : m_sheet(sheet), m_texts(textsOf(sheet, sentences)), m_oneText(oneText) {}

    [[nodiscard]] bool contain(Section const& section) { return m_texts.count(keyOf(section.title)) > 0 || (m_oneText && beginACell(section.title)); }

private:
    struct Start {
        std::string plain;
        std::size_t printed = 0;  // bytes of the cell as printed
    };

    [[nodiscard]] bool beginACell(std::string const& title) {
        std::string const plain = spaceless(title);
        if (plain.empty()) return false;
        readCells();
        auto cell = std::lower_bound(m_cells.begin(), m_cells.end(), plain, [](Start const& start, std::string const& text) { return start.plain < text; });
        for (; cell != m_cells.end() && cell->plain.starts_with(plain); ++cell) {
            if (cell->printed >= title.size()) return true;
        }
        return false;
    }

    // Once, sorted: what begins with a text stands together.
    void readCells() {
        if (m_cellsRead) return;
        m_cellsRead = true;
        for (auto const& table : m_sheet.tables) {
            for (auto const& cell : table.cells) m_cells.push_back({spaceless(cell.text), cell.text.size()});
        }
        std::sort(m_cells.begin(), m_cells.end(), [](Start const& a, Start const& b) { return a.plain < b.plain; });
    }

    model::Datasheet const& m_sheet;
    std::unordered_set<Key> m_texts;
    bool m_oneText;
    bool m_cellsRead = false;
    std::vector<Start> m_cells;
};

}  // namespace

SectionFindings pairSections(SheetPair const& sheets) {
    SectionFindings result;
    auto const& reference = sheets.reference.sections;
    auto const& candidate = sheets.candidate.sections;
    auto keys = [](std::vector<Section> const& sections) {
        std::vector<Key> list;
        for (auto const& section : sections) list.push_back(keyOf(section.title));
        return list;
    };
    auto titles = [](std::vector<Section> const& sections) {
        std::vector<std::string> list;
        for (auto const& section : sections) list.push_back(titleKey(section));
        return list;
    };
    auto const referenceKeys = keys(reference);
    auto const candidateKeys = keys(candidate);
    auto const lettersOf = [](std::vector<std::string> const& texts) { return std::vector<LetterPairs>(texts.begin(), texts.end()); };
    auto const referenceLetters = lettersOf(titles(reference));
    auto const candidateLetters = lettersOf(titles(candidate));
    auto alike = [&](int i, int j) {
        auto const& r = reference[static_cast<std::size_t>(i)];
        auto const& c = candidate[static_cast<std::size_t>(j)];
        double const title = letterSimilarity(referenceLetters[static_cast<std::size_t>(i)], candidateLetters[static_cast<std::size_t>(j)]);
        bool const sameKind = r.kind == c.kind && r.kind != model::SectionKind::Other;
        return std::min(1.0, 0.8 * title + (sameKind ? 0.35 : 0.0) - (r.kind != c.kind ? 0.1 : 0.0));
    };
    auto pairs = alignSequences(referenceKeys, candidateKeys, alike, {.threshold = 0.5});
    pairMoved(referenceKeys, candidateKeys, pairs);
    // The rest by kind and title wherever they stand.
    auto ofReference = partnersOfReference(pairs, reference.size());
    auto ofCandidate = partnersOfCandidate(pairs, candidate.size());
    std::map<model::SectionKind, std::vector<int>> byKind;
    constexpr std::size_t kMostOfKind = 40;
    for (std::size_t j = 0; j < candidate.size(); ++j) {
        auto& list = byKind[candidate[j].kind];
        if (ofCandidate[j] < 0 && list.size() < kMostOfKind) list.push_back(static_cast<int>(j));
    }
    std::vector<Edge> edges;
    for (std::size_t i = 0; i < reference.size(); ++i) {
        if (ofReference[i] >= 0) continue;
        double const least = reference[i].kind == model::SectionKind::Other ? 0.6 : 0.3;
        for (int const j : byKind[reference[i].kind]) {
            double const weight = alike(static_cast<int>(i), j);
            if (weight >= least) edges.push_back({static_cast<int>(i), j, weight});
        }
    }
    for (Edge const& edge : assign(edges)) {
        ofReference[static_cast<std::size_t>(edge.reference)] = edge.candidate;
        ofCandidate[static_cast<std::size_t>(edge.candidate)] = edge.reference;
    }
    PrintedTitles inReference(sheets.reference, sheets.referenceTextKeys, sheets.oneText());
    PrintedTitles inCandidate(sheets.candidate, sheets.candidateTextKeys, sheets.oneText());
    for (std::size_t i = 0; i < reference.size(); ++i) {
        int const j = ofReference[i];
        if (j < 0) {
            result.pairs.push_back({reference[i].id, {}, 0, 0});
            if (sheets.sameLanguage) {
                result.drafts.push_back(sectionDraft(Relation::OnlyReference, &reference[i], nullptr));
                result.drafts.back().weak = inCandidate.contain(reference[i]);
            }
            continue;
        }
        auto const& other = candidate[static_cast<std::size_t>(j)];
        bool const same = referenceKeys[i] == candidateKeys[static_cast<std::size_t>(j)];
        result.pairs.push_back({reference[i].id, other.id, same ? 1.0 : alike(static_cast<int>(i), j), 0});
        if (!same && sheets.oneText() && sheets.sameLanguage) result.drafts.push_back(sectionDraft(Relation::Reworded, &reference[i], &other));
    }
    for (std::size_t j = 0; j < candidate.size(); ++j) {
        if (ofCandidate[j] >= 0) continue;
        result.pairs.push_back({{}, candidate[j].id, 0, 0});
        if (!sheets.sameLanguage) continue;
        result.drafts.push_back(sectionDraft(Relation::OnlyCandidate, nullptr, &candidate[j]));
        result.drafts.back().weak = inReference.contain(candidate[j]);
    }
    return result;
}

std::vector<Draft> findFurnitureDifferences(SheetPair const& sheets) {
    auto const reference = instancesOf(sheets.reference);
    auto const candidate = instancesOf(sheets.candidate);
    // Texts of the other sheet: more or fewer pages with the same text are no difference.
    auto pool = [](std::vector<Instance> const& instances) {
        std::unordered_map<Key, std::vector<int>> places;
        for (std::size_t i = instances.size(); i-- > 0;) places[keyOfInstance(instances[i])].push_back(static_cast<int>(i));
        return places;
    };
    auto free = pool(candidate);
    auto const candidateTexts = free;
    std::vector<char> met(candidate.size(), 0);
    std::vector<int> elsewhere;
    // The twin on the same page comes first, so that what is left over is left over
    // on the page where the change is.
    for (std::size_t i = 0; i < reference.size(); ++i) {
        auto const found = free.find(keyOfInstance(reference[i]));
        auto const samePage = [&](int j) { return candidate[static_cast<std::size_t>(j)].place.page == reference[i].place.page; };
        auto const taken = found == free.end() ? std::vector<int>::iterator() : std::find_if(found->second.begin(), found->second.end(), samePage);
        if (found == free.end() || taken == found->second.end()) {
            elsewhere.push_back(static_cast<int>(i));
            continue;
        }
        met[static_cast<std::size_t>(*taken)] = 1;
        found->second.erase(taken);
    }
    std::vector<int> freeReference;
    for (int const i : elsewhere) {
        auto const found = free.find(keyOfInstance(reference[static_cast<std::size_t>(i)]));
        if (found == free.end() || found->second.empty()) {
            freeReference.push_back(i);
            continue;
        }
        met[static_cast<std::size_t>(found->second.back())] = 1;
        found->second.pop_back();
    }
    std::unordered_map<Key, char> referenceTexts;
    for (auto const& instance : reference) referenceTexts.emplace(keyOfInstance(instance), 1);
    std::vector<int> freeCandidate;
    for (std::size_t j = 0; j < candidate.size(); ++j) {
        if (met[j] == 0) freeCandidate.push_back(static_cast<int>(j));
    }
    // What is left on the same page and reads alike is one changed text.
    std::map<int, std::vector<int>> onPage;
    for (int const j : freeCandidate) onPage[candidate[static_cast<std::size_t>(j)].place.page].push_back(j);
    std::vector<Draft> drafts;
    std::map<std::pair<Key, Key>, std::size_t> told;  // the same change on further pages is told once
    std::vector<int> onlyReference;
    auto const countsItsPage = [](model::Datasheet const& sheet, Instance const& instance) {
        return isOwnPageNumber(instance.furniture->text, instance.place.page, sheet.document.pages);
    };
    std::vector<Edge> edges;
    for (int const i : freeReference) {
        auto const& r = reference[static_cast<std::size_t>(i)];
        for (int const j : onPage[r.place.page]) {
            double const alike = likenessOnPage(sheets, r, candidate[static_cast<std::size_t>(j)]);
            // Two makers' heads stand at one place without being one text.
            if (alike > (sheets.oneText() ? 0.2 : 0.7)) edges.push_back({i, j, alike});
        }
    }
    std::map<int, int> partner;
    for (Edge const& edge : assign(edges)) partner[edge.reference] = edge.candidate;
    for (int const i : freeReference) {
        auto const& r = reference[static_cast<std::size_t>(i)];
        auto const changed = partner.find(i);
        if (changed == partner.end()) {
            onlyReference.push_back(i);
            continue;
        }
        auto const& c = candidate[static_cast<std::size_t>(changed->second)];
        met[static_cast<std::size_t>(changed->second)] = 1;
        if (countsItsPage(sheets.reference, r) && countsItsPage(sheets.candidate, c)) continue;
        // The lines of one foot in another order of reading.
        if (tokensOf(r.furniture->text) == tokensOf(c.furniture->text)) continue;
        bool const pageNumbers = r.furniture->kind == Furniture::Kind::PageNumber;
        auto const change = pageNumbers ? std::make_pair(Key{1}, Key{1}) : std::make_pair(keyOfInstance(r), keyOfInstance(c));
        auto const [found, isNew] = told.emplace(change, drafts.size());
        if (isNew) {
            drafts.push_back(furnitureDraft(Relation::Reworded, &r, &c));
        } else {
            auto& draft = drafts[found->second];
            draft.referencePlaces.push_back(r.place);
            draft.candidatePlaces.push_back(c.place);
            ++draft.numberBearers;
        }
    }
    auto addOnly = [&](std::vector<Instance> const& instances, std::vector<int> const& indices, auto const& othersTexts, Relation relation) {
        std::set<Key> seen;
        for (int const index : indices) {
            auto const& instance = instances[static_cast<std::size_t>(index)];
            Key const key = keyOfInstance(instance);
            // More pages, more page numbers: no difference of content, unless the
            // changed text was not taken for furniture in the other sheet.
            bool const repeated = instance.furniture->kind == Furniture::Kind::PageNumber || othersTexts.count(key) > 0 || !seen.insert(key).second;
            if (repeated && !sheets.oneText()) continue;
            drafts.push_back(relation == Relation::OnlyReference ? furnitureDraft(relation, &instance, nullptr) : furnitureDraft(relation, nullptr, &instance));
            drafts.back().weak = repeated;
        }
    };
    addOnly(reference, onlyReference, candidateTexts, Relation::OnlyReference);
    std::vector<int> onlyCandidate;
    for (int const j : freeCandidate) {
        if (met[static_cast<std::size_t>(j)] == 0) onlyCandidate.push_back(j);
    }
    addOnly(candidate, onlyCandidate, referenceTexts, Relation::OnlyCandidate);
    return drafts;
}

std::vector<Draft> findPropertyDifferences(SheetPair const& sheets) {
    auto const& r = sheets.reference.document;
    auto const& c = sheets.candidate.document;
    std::string before;
    std::string after;
    auto compare = [&](std::string_view title, std::string const& a, std::string const& b) {
        if (keyOf(a) == keyOf(b)) return;
        auto add = [&](std::string& text, std::string const& value) {
            if (value.empty()) return;
            if (!text.empty()) text += "; ";
            text += title;
            text += ' ';
            text += value;
        };
        add(before, a);
        add(after, b);
    };
    auto first = [](std::vector<std::string> const& list) { return list.empty() ? std::string() : list.front(); };
    compare("part", first(r.partNumbers), first(c.partNumbers));
    compare("maker", r.maker, c.maker);
    // The title is not printed: a program that saves the file again may add or drop it.
    if (!r.title.empty() && !c.title.empty()) compare("title", r.title, c.title);
    compare("revision", r.revision, c.revision);
    compare("date", r.date, c.date);
    std::vector<Draft> drafts;
    if (before.empty() && after.empty()) return drafts;
    drafts.push_back(makeDraft(FindingKind::Document, Rank::Document, Relation::Reworded, sideOf(1, {}, std::move(before)), sideOf(1, {}, std::move(after))));
    // Properties stand at no place of their own.
    drafts.back().referencePlaces.clear();
    drafts.back().candidatePlaces.clear();
    return drafts;
}

}  // namespace standin::compare

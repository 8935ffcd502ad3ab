// What a feature is called and how a state of it is said is the vocabulary's;
// here its three places are visited: running text, ordering lines (column title
// against cell) and the rows of other tables. A state already found for a
// feature is not listed again. Tested by
// tests/extractors/features/read_features_test.cpp.
#include "extractors/features/read_features.h"

#include <algorithm>
#include <string>
#include <unordered_map>

#include <fmt/format.h>

namespace standin::features {

namespace {

// A statement that the vocabulary believes less than this is a guess.
constexpr double kBelieved = 0.5;
// Cells longer than this are prose, and are read as sentences.
constexpr std::size_t kLongestState = 60;
// Shorter ones say no sentence.
constexpr std::size_t kShortestSentence = 24;
// Titles that name a feature are of this length at most.
constexpr std::size_t kLongestTitle = 120;

class Collector {
public:
    Collector(std::string_view family, vocabulary::Vocabulary const& vocabulary)
        : m_family(family.empty() ? std::string_view("generic") : family), m_vocabulary(vocabulary) {}

    void sentence(std::string_view text, int page, model::Rect const& box) {
        for (auto& stated : m_vocabulary.statements(text, m_family)) add(std::move(stated), page, box, std::string(text));
    }

    void cell(std::string_view title, std::string_view state, int page, model::Rect const& box) {
        if (title.empty() || state.empty() || title.size() > kLongestTitle || state.size() > kLongestState) return;
        // Column titles and row names repeat; most of them name no feature, and
        // equal cells of a column say the same.
        auto key = fmt::format("{}\x1f{}", title, state);
        auto const [known, isNew] = m_seen.try_emplace(std::move(key), true);
        if (!isNew) return;
        if (auto stated = m_vocabulary.statement(title, state, m_family)) add(std::move(*stated), page, box, fmt::format("{}: {}", title, state));
    }

    std::vector<model::Feature> take() {
        std::stable_sort(m_features.begin(), m_features.end(), [](auto const& a, auto const& b) {
            return a.page != b.page ? a.page < b.page : a.box.y0 != b.box.y0 ? a.box.y0 < b.box.y0 : a.box.x0 < b.box.x0;
        });
        return std::move(m_features);
    }

private:
    void add(vocabulary::FeatureStatement stated, int page, model::Rect const& box, std::string text) {
        if (stated.score < kBelieved) return;
        bool const known = std::any_of(m_features.begin(), m_features.end(),
                                       [&stated](auto const& feature) { return feature.canonical == stated.feature && feature.state == stated.state; });
        if (!known) m_features.push_back({std::move(stated.feature), std::move(stated.state), page, box, std::move(text)});
    }

    std::string_view m_family;
    vocabulary::Vocabulary const& m_vocabulary;
    std::vector<model::Feature> m_features;
    std::unordered_map<std::string, bool> m_seen;
};

// A state in words, no value with its unit.
bool isWords(std::string_view cell) {
    if (cell.size() < 2) return false;
    return std::none_of(cell.begin(), cell.end(), [](char c) { return c >= '0' && c <= '9'; });
}

enum class Prose : bool { Skip, Read };

// Rows of a table that name a feature in their first words: "Power-down
// function | Yes".
void readRows(Collector& collector, model::Table const& table, Prose prose) {
    std::size_t i = 0;
    while (i < table.cells.size()) {  // cells come by row, then column
        std::size_t const first = i;
        int const row = table.cells[first].row;
        while (i < table.cells.size() && table.cells[i].row == row) ++i;
        for (std::size_t k = first; k < i; ++k) {
            auto const& cell = table.cells[k];
            if (k > first && table.cells[first].text.size() >= 4 && !cell.header && (prose == Prose::Read || isWords(cell.text))) collector.cell(table.cells[first].text, cell.text, table.page, cell.box);
            if (prose == Prose::Read && cell.text.size() >= kShortestSentence) collector.sentence(cell.text, table.page, cell.box);
        }
    }
}

}  // namespace

std::vector<model::Feature> readFeatures(std::span<model::Sentence const> text, std::span<model::Table const> tables,
                                         std::span<model::OrderingLine const> ordering, std::string_view family,
                                         vocabulary::Vocabulary const& vocabulary) {
    Collector collector(family, vocabulary);
    for (auto const& sentence : text) {
        auto const place = sentence.places.empty() ? model::Place{} : sentence.places.front();
        collector.sentence(sentence.text, place.page, place.box);
    }
    for (auto const& line : ordering) {
        for (auto const& [title, state] : line.attributes) collector.cell(title, state, line.page, line.box);
    }
    for (auto const& table : tables) {
        switch (table.kind) {
            case model::TableKind::Other:
            case model::TableKind::Pins: readRows(collector, table, Prose::Read); break;
            // Their numbers are parameters; a word in a value column may be a state.
            case model::TableKind::Specification: readRows(collector, table, Prose::Skip); break;
            case model::TableKind::Ordering:  // its lines were read
            case model::TableKind::Package:
            case model::TableKind::Revision: break;
        }
    }
    return collector.take();
}

}  // namespace standin::features

// Texts are parted among the rows by their distance from the middles (part_rows.h).
// Tested by tests/extractors/tables/find_tables_test.cpp.
#include "extractors/tables/centred_names.h"

#include <algorithm>
#include <cmath>
#include <string>
#include <utility>

#include "extractors/tables/head_words.h"
#include "extractors/tables/part_rows.h"

namespace standin::tables {

using model::PageLayout;
using model::Points;

namespace {

// In font heights.
constexpr float kCentred = 0.45F;  // from the middle of its rows to a name that is centred on them
constexpr float kBetween = 0.3F;   // from any row to a name that stands between two
constexpr int kMostCentredRows = 12;

bool isAny(std::vector<char> const& columns) {
    return std::any_of(columns.begin(), columns.end(), [](char column) { return column != 0; });
}

// Names, symbols or units of one column and the rows of values they may stand for.
struct Centred {
    std::vector<int> rows;        // consecutive rows of values
    std::vector<int> texts;       // the rows in which splitOpen put a text, rising
    std::vector<Points> middles;  // of the texts
};

// The first row (index into `rows`) of each text; nothing where some text stands too far from any middle.
std::vector<int> partAroundTexts(Centred const& run, std::vector<Points> const& baselines, Points fontHeight) {
    std::vector<Points> own;
    for (int const row : run.rows) own.push_back(baselines[static_cast<std::size_t>(row)]);
    auto parted = partRows(own, run.middles, {.mostOff = kCentred * fontHeight, .mostRows = kMostCentredRows});
    return parted ? std::move(parted->firsts) : std::vector<int>{};
}

// The texts of a column, parted into runs of rows with values (headings stand between).
std::vector<Centred> centredRuns(std::vector<PlacedPiece*> const& pieces, int column, std::vector<char> const& anchored) {
    std::vector<Centred> runs;
    for (std::size_t row = 0; row < anchored.size(); ++row) {
        if (anchored[row] == 0) continue;
        if (runs.empty() || row == 0 || anchored[row - 1] == 0) runs.emplace_back();
        auto& run = runs.back();
        run.rows.push_back(static_cast<int>(row));
        Points top = 0;
        Points bottom = 0;
        bool any = false;
        for (auto const* p : pieces) {
            if (p->column0 != column || p->column1 != column || p->row0 != static_cast<int>(row)) continue;
            top = any ? std::min(top, p->piece.baseline) : p->piece.baseline;
            bottom = any ? std::max(bottom, p->piece.baseline) : p->piece.baseline;
            any = true;
        }
        if (!any) continue;
        run.texts.push_back(static_cast<int>(row));
        run.middles.push_back((top + bottom) / 2);
    }
    return runs;
}

// A run without a text on its first row, or with one that stands between two rows.
bool showsCentring(Centred const& run, std::vector<Points> const& baselines, Points fontHeight) {
    if (run.texts.empty() || run.texts.size() == run.rows.size()) return false;
    auto const between = [&](Points y) {
        return std::all_of(run.rows.begin(), run.rows.end(), [&](int row) { return std::abs(baselines[static_cast<std::size_t>(row)] - y) > kBetween * fontHeight; });
    };
    return run.texts.front() != run.rows.front() || std::any_of(run.middles.begin(), run.middles.end(), between);
}

// The unit printed on each row of the run; nothing where one has none or several.
std::vector<std::string> unitsOfRun(PageLayout const& page, std::vector<PlacedPiece*> const& pieces, ColumnModel const& columns, Centred const& run) {
    std::vector<std::string> units(run.rows.size());
    for (auto const* p : pieces) {
        if (p->column0 != p->column1 || columns.titles[static_cast<std::size_t>(p->column0)] != ColumnTitle::Unit) continue;
        auto const row = std::find(run.rows.begin(), run.rows.end(), p->row0);
        if (row == run.rows.end()) continue;
        auto& unit = units[static_cast<std::size_t>(row - run.rows.begin())];
        if (!unit.empty()) return {};
        unit = textOf(page, p->piece);
    }
    return std::any_of(units.begin(), units.end(), [](auto const& unit) { return unit.empty(); }) ? std::vector<std::string>{} : units;
}

// The first text stands on the first row, and a row below a text may be its own or the first of the next one's: where
// each row prints its unit, fewer texts have several units when they are centred ("V" | "µA, µA, µA", not "V, µA").
bool unitsShowCentring(PageLayout const& page, std::vector<PlacedPiece*> const& pieces, ColumnModel const& columns, Centred const& run, std::vector<Points> const& baselines,
                       Points fontHeight) {
    if (run.texts.empty() || run.texts.size() == run.rows.size() || run.texts.front() != run.rows.front()) return false;
    auto const units = unitsOfRun(page, pieces, columns, run);
    if (units.empty()) return false;
    auto const changes = [&](auto const& isFirst) {
        int count = 0;
        for (std::size_t i = 1; i < units.size(); ++i) count += units[i] != units[i - 1] && !isFirst(static_cast<int>(i)) ? 1 : 0;
        return count;
    };
    int const below = changes([&](int i) { return std::binary_search(run.texts.begin(), run.texts.end(), run.rows[static_cast<std::size_t>(i)]); });
    if (below == 0) return false;
    auto const firsts = partAroundTexts(run, baselines, fontHeight);
    return !firsts.empty() && changes([&](int i) { return std::binary_search(firsts.begin(), firsts.end(), i); }) < below;
}

// Names, symbols and units that are centred on several rows of values span them. Gives the columns done.
std::vector<char> spreadCentred(PageLayout const& page, std::vector<PlacedPiece*> const& pieces, ColumnModel const& columns, std::vector<Points> const& baselines,
                                std::vector<char> const& anchored, Points fontHeight) {
    std::vector<char> done(static_cast<std::size_t>(columns.count()), 0);
    std::vector<std::vector<Centred>> runsOf(done.size());
    bool centred = false;
    for (int column = 0; column < columns.count(); ++column) {
        auto const title = columns.titles[static_cast<std::size_t>(column)];
        bool const key = column < columns.firstValueColumn() && title != ColumnTitle::Conditions && title != ColumnTitle::TestCircuit && title != ColumnTitle::Note;
        if (!key && title != ColumnTitle::Unit) continue;
        runsOf[static_cast<std::size_t>(column)] = centredRuns(pieces, column, anchored);
        bool const first = key && column == 0;  // symbols and units may be left out
        for (auto const& run : runsOf[static_cast<std::size_t>(column)]) {
            centred = centred || (first && showsCentring(run, baselines, fontHeight) && !partAroundTexts(run, baselines, fontHeight).empty());
            centred = centred || (first && unitsShowCentring(page, pieces, columns, run, baselines, fontHeight));
        }
    }
    for (std::size_t column = 0; column < runsOf.size() && centred; ++column) {
        for (auto const& run : runsOf[column]) {
            auto const firsts = partAroundTexts(run, baselines, fontHeight);
            if (firsts.empty()) continue;
            done[column] = 1;
            std::vector<std::pair<PlacedPiece*, std::size_t>> moved;
            for (std::size_t k = 0; k < firsts.size(); ++k) {
                for (auto* p : pieces) {
                    if (p->column0 == static_cast<int>(column) && p->column1 == static_cast<int>(column) && p->row0 == run.texts[k]) moved.emplace_back(p, k);
                }
            }
            for (auto const& [p, k] : moved) {
                std::size_t const last = k + 1 < firsts.size() ? static_cast<std::size_t>(firsts[k + 1]) - 1 : run.rows.size() - 1;
                p->row0 = run.rows[static_cast<std::size_t>(firsts[k])];
                p->row1 = run.rows[last];
            }
        }
    }
    return done;
}

// Rows from one text of the first column to the next: a name on its first row and what hangs under it.
struct NameGroup {
    int first = 0;
    int last = 0;
};

std::vector<NameGroup> groupsOfNames(std::vector<PlacedPiece*> const& pieces, std::vector<char> const& anchored) {
    std::vector<char> named(anchored.size(), 0);
    for (auto const* p : pieces) {
        if (p->column0 == 0) named[static_cast<std::size_t>(p->row0)] = 1;
    }
    std::vector<NameGroup> groups;
    for (std::size_t row = 0; row < anchored.size(); ++row) {
        if (anchored[row] == 0) continue;
        bool const goesOn = !groups.empty() && groups.back().last + 1 == static_cast<int>(row) && named[row] == 0;
        if (goesOn) {
            groups.back().last = static_cast<int>(row);
        } else if (named[row] != 0) {
            groups.push_back({static_cast<int>(row), static_cast<int>(row)});
        }
    }
    return groups;
}

// Names stand on the first of their rows, symbols (or units) are centred on all of them: the symbols span the rows
// of their names. Gives the columns done.
std::vector<char> spreadUnderNames(std::vector<PlacedPiece*> const& pieces, ColumnModel const& columns, std::vector<Points> const& baselines, std::vector<char> const& anchored,
                                   Points fontHeight) {
    std::vector<char> done(static_cast<std::size_t>(columns.count()), 0);
    auto const groups = groupsOfNames(pieces, anchored);
    for (int column = 1; column < columns.count(); ++column) {
        auto const title = columns.titles[static_cast<std::size_t>(column)];
        if (title != ColumnTitle::Unit && (title != ColumnTitle::Symbol || column >= columns.firstValueColumn())) continue;
        std::vector<std::pair<PlacedPiece*, NameGroup>> spread;
        bool fits = true;
        for (NameGroup const& group : groups) {
            PlacedPiece* only = nullptr;
            int texts = 0;
            for (auto* p : pieces) {
                if (p->column0 != column || p->column1 != column || p->row0 < group.first || p->row0 > group.last) continue;
                only = p;
                ++texts;
            }
            if (texts != 1 || group.last - group.first < 2) continue;
            Points const middle = (baselines[static_cast<std::size_t>(group.first)] + baselines[static_cast<std::size_t>(group.last)]) / 2;
            fits = fits && std::abs(only->piece.baseline - middle) <= kCentred * fontHeight;
            spread.emplace_back(only, group);
        }
        if (!fits || spread.size() < 2) continue;
        done[static_cast<std::size_t>(column)] = 1;
        for (auto const& [p, group] : spread) {
            p->row0 = group.first;
            p->row1 = group.last;
        }
    }
    if (!isAny(done)) return done;
    done[0] = 1;
    for (NameGroup const& group : groups) {
        for (auto* p : pieces) {
            if (p->column0 == 0 && p->column1 == 0 && p->row0 == group.first) p->row1 = group.last;
        }
    }
    return done;
}

}  // namespace

std::vector<char> spreadNames(PageLayout const& page, std::vector<PlacedPiece*> const& pieces, ColumnModel const& columns, std::vector<Points> const& baselines,
                              std::vector<char> const& anchored, Points fontHeight) {
    std::vector<char> spread = spreadCentred(page, pieces, columns, baselines, anchored, fontHeight);
    if (columns.firstValueColumn() > 1 && !isAny(spread)) spread = spreadUnderNames(pieces, columns, baselines, anchored, fontHeight);
    return spread;
}

}  // namespace standin::tables

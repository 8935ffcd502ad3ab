// Tested by tests/extractors/tables/part_rows_test.cpp.
#include "extractors/tables/part_rows.h"

#include <algorithm>
#include <cmath>

namespace standin::tables {

namespace {

using model::Points;

constexpr std::size_t kMostTexts = 300;
constexpr std::size_t kMostRows = 1000;
constexpr Points kFar = 1e9F;

}  // namespace

std::optional<PartedRows> partRows(std::span<Points const> baselines, std::span<Points const> middles, PartLimits const& limits) {
    if (middles.size() > kMostTexts || baselines.size() > kMostRows) return std::nullopt;
    auto const texts = static_cast<int>(middles.size());
    auto const rows = static_cast<int>(baselines.size());
    // best[k][r]: least distance with k texts for the first r rows; from[k][r]: rows of the k - 1 before
    auto const width = baselines.size() + 1;
    auto const at = [width](int k, int r) { return static_cast<std::size_t>(k) * width + static_cast<std::size_t>(r); };
    std::vector<Points> best((middles.size() + 1) * width, kFar);
    std::vector<int> from(best.size(), 0);
    best[at(0, 0)] = 0;
    for (int k = 1; k <= texts; ++k) {
        for (int r = k; r <= rows; ++r) {
            for (int before = limits.mostRows < r ? std::max(k - 1, r - limits.mostRows) : k - 1; before < r; ++before) {
                Points const middle = (baselines[static_cast<std::size_t>(before)] + baselines[static_cast<std::size_t>(r) - 1]) / 2;
                Points const off = std::abs(middle - middles[static_cast<std::size_t>(k) - 1]);
                if (off > limits.mostOff || best[at(k - 1, before)] + off >= best[at(k, r)]) continue;
                best[at(k, r)] = best[at(k - 1, before)] + off;
                from[at(k, r)] = before;
            }
        }
    }
    PartedRows parted{std::vector<int>(middles.size(), 0), best[at(texts, rows)]};
    if (parted.off >= kFar) return std::nullopt;
    for (int k = texts, r = rows; k > 0; --k) {
        r = from[at(k, r)];
        parted.firsts[static_cast<std::size_t>(k) - 1] = r;
    }
    return parted;
}

}  // namespace standin::tables

// Every pair is asked for a limit of its own, then whether its rivals have found theirs,
// and then whether it is the only one left.
//
// Tested by tests/src/compare/proof_by_limits_test.cpp.
#include "compare/proof_by_limits.h"

#include <algorithm>
#include <cstddef>

namespace standin::compare {

namespace {

using quantity::Decimal;

constexpr std::size_t kLimitColumns[] = {0, 2};  // min, max

bool agree(std::optional<Decimal> const& a, std::optional<Decimal> const& b) { return a && b && (*a == *b || quantity::equalAsPrinted(*a, *b)); }

std::optional<Decimal> limitOf(RowNumbers const& rows, int row, std::size_t column) {
    auto const found = rows.find(row);
    return found == rows.end() ? std::nullopt : found->second[column];
}

bool standsOnce(RowNumbers const& rows, std::vector<int> const& kin, std::size_t column, std::optional<Decimal> const& limit) {
    return std::count_if(kin.begin(), kin.end(), [&](int row) { return agree(limitOf(rows, row, column), limit); }) == 1;
}

bool hasLimitOfItsOwn(RowNumbers const& reference, RowNumbers const& candidate, CandidatePair const& pair) {
    bool own = false;
    for (std::size_t const column : kLimitColumns) {
        auto const limit = limitOf(reference, pair.reference, column);
        auto const other = limitOf(candidate, pair.candidate, column);
        if (!limit || !other) continue;
        if (!agree(limit, other)) return false;
        own = own || (!limit->isZero() && standsOnce(reference, pair.kinReference, column, limit) && standsOnce(candidate, pair.kinCandidate, column, limit));
    }
    return own;
}

using Rows = std::unordered_map<int, std::size_t>;  // row -> pair

// Every one of `rivals` prints no limit or is told.
bool areSettled(std::vector<int> const& rivals, RowNumbers const& rows, Rows const& told) {
    return std::all_of(rivals.begin(), rivals.end(), [&](int rival) {
        bool const limited = std::any_of(std::begin(kLimitColumns), std::end(kLimitColumns), [&](std::size_t column) { return limitOf(rows, rival, column).has_value(); });
        return !limited || told.count(rival) > 0;
    });
}

}  // namespace

std::vector<Proof> proofs(RowNumbers const& reference, RowNumbers const& candidate, std::span<CandidatePair const> pairs) {
    std::vector<Proof> found(pairs.size(), Proof::None);
    Rows pairOfReference, toldReference, toldCandidate;
    for (std::size_t k = 0; k < pairs.size(); ++k) {
        pairOfReference[pairs[k].reference] = k;
        if (pairs[k].opposed || !hasLimitOfItsOwn(reference, candidate, pairs[k])) continue;
        toldReference[pairs[k].reference] = toldCandidate[pairs[k].candidate] = k;
    }
    for (auto const& [row, k] : toldReference) {
        if (areSettled(pairs[k].rivalReferences, reference, toldReference) && areSettled(pairs[k].rivalCandidates, candidate, toldCandidate)) found[k] = Proof::ByLimit;
    }
    std::vector<Proof> const byLimit = found;
    for (std::size_t k = 0; k < pairs.size(); ++k) {
        CandidatePair const& pair = pairs[k];
        if (found[k] != Proof::None || pair.opposed || pair.sure || pair.kinReference.size() < 2 || pair.kinReference.size() != pair.kinCandidate.size()) continue;
        bool const left = std::all_of(pair.kinReference.begin(), pair.kinReference.end(), [&](int row) {
            if (row == pair.reference) return true;
            auto const other = pairOfReference.find(row);
            if (other == pairOfReference.end()) return false;
            bool const inKin = std::find(pair.kinCandidate.begin(), pair.kinCandidate.end(), pairs[other->second].candidate) != pair.kinCandidate.end();
            return inKin && (pairs[other->second].sure || byLimit[other->second] != Proof::None);
        });
        if (left) found[k] = Proof::ByElimination;
    }
    return found;
}

}  // namespace standin::compare

// Rows are gathered by kin; in each kin every pair is asked for a limit of its own, then
// whether its rivals have found theirs, and then whether it is the only one left.
//
// Tested by tests/src/compare/proof_by_limits_test.cpp.
#include "compare/proof_by_limits.h"

#include <algorithm>
#include <cstddef>
#include <unordered_map>

namespace standin::compare {

namespace {

using quantity::Decimal;

constexpr std::size_t kLargestKin = 60;
constexpr std::size_t kLimitColumns[] = {0, 2};  // min, max

bool agree(std::optional<Decimal> const& a, std::optional<Decimal> const& b) { return a && b && (*a == *b || quantity::equalAsPrinted(*a, *b)); }

struct Kin {
    std::vector<LimitedRow const*> reference, candidate;
    std::vector<std::size_t> pairs;  // indices
};

int countOf(std::vector<LimitedRow const*> const& rows, std::size_t column, std::optional<Decimal> const& limit) {
    return static_cast<int>(std::count_if(rows.begin(), rows.end(), [&](LimitedRow const* row) { return agree(row->numbers[column], limit); }));
}

bool hasLimitOfItsOwn(LimitedRow const& reference, LimitedRow const& candidate, Kin const& kin) {
    bool own = false;
    for (std::size_t const column : kLimitColumns) {
        auto const& limit = reference.numbers[column];
        if (!limit || !candidate.numbers[column]) continue;
        if (!agree(limit, candidate.numbers[column])) return false;
        own = own || (!limit->isZero() && countOf(kin.reference, column, limit) == 1 && countOf(kin.candidate, column, limit) == 1);
    }
    return own;
}

using RowsByIndex = std::unordered_map<int, LimitedRow const*>;

std::unordered_map<std::string, Kin> gather(std::span<LimitedRow const> reference, std::span<LimitedRow const> candidate, RowsByIndex& ofReference, RowsByIndex& ofCandidate) {
    std::unordered_map<std::string, Kin> kins;
    for (LimitedRow const& row : reference) {
        ofReference[row.row] = &row;
        if (!row.kin.empty()) kins[row.kin].reference.push_back(&row);
    }
    for (LimitedRow const& row : candidate) {
        ofCandidate[row.row] = &row;
        if (!row.kin.empty()) kins[row.kin].candidate.push_back(&row);
    }
    return kins;
}

bool hasLimit(LimitedRow const& row) {
    return std::any_of(std::begin(kLimitColumns), std::end(kLimitColumns), [&](std::size_t column) { return row.numbers[column].has_value(); });
}

// Rows that are told by a limit of their own, by row.
struct Told {
    std::unordered_map<int, char> reference, candidate;
};

// Every one of `rivals` prints no limit or is told.
bool areSettled(std::vector<int> const& rivals, RowsByIndex const& rows, std::unordered_map<int, char> const& told) {
    return std::all_of(rivals.begin(), rivals.end(), [&](int rival) {
        auto const row = rows.find(rival);
        return row == rows.end() || !hasLimit(*row->second) || told.count(rival) > 0;
    });
}

}  // namespace

std::vector<Proof> proofs(std::span<LimitedRow const> reference, std::span<LimitedRow const> candidate, std::span<CandidatePair const> pairs) {
    std::vector<Proof> found(pairs.size(), Proof::None);
    RowsByIndex ofReference, ofCandidate;
    auto kins = gather(reference, candidate, ofReference, ofCandidate);
    Told told;
    for (std::size_t k = 0; k < pairs.size(); ++k) {
        auto const r = ofReference.find(pairs[k].reference);
        auto const c = ofCandidate.find(pairs[k].candidate);
        if (r == ofReference.end() || c == ofCandidate.end() || r->second->kin.empty() || r->second->kin != c->second->kin) continue;
        Kin& kin = kins[r->second->kin];
        if (kin.reference.size() > kLargestKin || kin.candidate.size() > kLargestKin) continue;
        kin.pairs.push_back(k);
        if (pairs[k].opposed || !hasLimitOfItsOwn(*r->second, *c->second, kin)) continue;
        told.reference[pairs[k].reference] = told.candidate[pairs[k].candidate] = 1;
    }
    for (std::size_t k = 0; k < pairs.size(); ++k) {
        bool const own = told.reference.count(pairs[k].reference) > 0;
        if (own && areSettled(pairs[k].rivalReferences, ofReference, told.reference) && areSettled(pairs[k].rivalCandidates, ofCandidate, told.candidate)) {
            found[k] = Proof::ByLimit;
        }
    }
    for (auto const& [name, kin] : kins) {
        std::size_t const rows = kin.reference.size();
        if (rows < 2 || rows != kin.candidate.size() || kin.pairs.size() != rows) continue;
        auto const open = [&](std::size_t k) { return found[k] == Proof::None && !pairs[k].sure; };
        if (std::count_if(kin.pairs.begin(), kin.pairs.end(), open) != 1) continue;
        std::size_t const left = *std::find_if(kin.pairs.begin(), kin.pairs.end(), open);
        if (!pairs[left].opposed) found[left] = Proof::ByElimination;
    }
    return found;
}

}  // namespace standin::compare

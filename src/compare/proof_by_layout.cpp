// Tested by tests/src/compare/proof_by_layout_test.cpp.
#include "compare/proof_by_layout.h"

#include <algorithm>
#include <cstddef>
#include <map>

namespace standin::compare {

namespace {

constexpr std::size_t kLargestKin = 40;

using Rows = std::vector<LaidOutRow const*>;

struct Kin {
    Rows reference, candidate;
    std::vector<std::size_t> positions;  // of the reference's rows
};

// The one value of `symbol` in the row; none where it is not stated, or twice.
StatedPart const* valueOf(LaidOutRow const& row, std::string const& symbol) {
    StatedPart const* found = nullptr;
    for (StatedPart const& part : row.conditions->parts) {
        if (part.symbol != symbol) continue;
        if (found != nullptr) return nullptr;
        found = &part;
    }
    return found;
}

bool isOneValue(StatedPart const& a, StatedPart const& b) { return agreeingQuantities({{}, {}, {a}}, {{}, {}, {b}}) == 1; }

// No two rows state one value of the quantity.
bool isLaidOutBy(std::string const& symbol, Rows const& rows) {
    for (std::size_t k = 0; k < rows.size(); ++k) {
        StatedPart const* value = valueOf(*rows[k], symbol);
        for (std::size_t before = 0; value != nullptr && before < k; ++before) {
            StatedPart const* other = valueOf(*rows[before], symbol);
            if (other != nullptr && isOneValue(*value, *other)) return false;
        }
    }
    return true;
}

bool pairsAgree(std::string const& symbol, Kin const& kin, std::vector<LaidOutRow> const& candidate) {
    int pairs = 0;
    for (LaidOutRow const* row : kin.reference) {
        if (row->partner < 0) continue;
        LaidOutRow const& partner = candidate[static_cast<std::size_t>(row->partner)];
        if (partner.kin != row->kin) return false;
        StatedPart const* value = valueOf(*row, symbol);
        StatedPart const* other = valueOf(partner, symbol);
        if (value == nullptr || other == nullptr || !isOneValue(*value, *other)) return false;
        ++pairs;
    }
    return pairs >= 2;
}

}  // namespace

std::vector<char> toldByLayout(std::vector<LaidOutRow> const& reference, std::vector<LaidOutRow> const& candidate) {
    std::map<std::string, Kin> kins;
    for (std::size_t k = 0; k < reference.size(); ++k) {
        if (reference[k].kin.empty()) continue;
        Kin& kin = kins[reference[k].kin];
        kin.reference.push_back(&reference[k]);
        kin.positions.push_back(k);
    }
    for (LaidOutRow const& row : candidate) {
        auto const kin = kins.find(row.kin);
        if (kin != kins.end()) kin->second.candidate.push_back(&row);
    }
    std::vector<char> told(reference.size(), 0);
    for (auto const& [name, kin] : kins) {
        bool const several = kin.reference.size() >= 2 && kin.candidate.size() >= 2;
        if (!several || kin.reference.size() > kLargestKin || kin.candidate.size() > kLargestKin) continue;
        auto const paired = std::find_if(kin.reference.begin(), kin.reference.end(), [](LaidOutRow const* row) { return row->partner >= 0; });
        if (paired == kin.reference.end()) continue;
        for (StatedPart const& part : (*paired)->conditions->parts) {
            if (part.symbol.empty() || !isLaidOutBy(part.symbol, kin.reference) || !isLaidOutBy(part.symbol, kin.candidate)) continue;
            if (!pairsAgree(part.symbol, kin, candidate)) continue;
            for (std::size_t const k : kin.positions) told[k] = reference[k].partner >= 0 ? 1 : 0;
            break;
        }
    }
    return told;
}

}  // namespace standin::compare

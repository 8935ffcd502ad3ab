// The bench tests that follow from the open findings of a comparison (DOMAIN
// 10.4): which findings call for which test, how it is set up, and the limits
// that results are judged against: those printed, and those of the cell. What is tested how is data
// (vocabulary/data/bench_tests.json).
//
// Defines: BenchLimit, BenchTest.
//
//     for (auto const& test : benchTests(comparison, vocabulary)) {
//         test.title      // "Overcharge threshold"
//         test.findings   // ids of the findings that call for it
//         test.limits     // 4.255 … 4.305 V under the reference's condition
//     }
#pragma once

#include <string>
#include <vector>

#include "model/comparison.h"
#include "vocabulary/vocabulary.h"

namespace standin::risk {

// What a measured value is held against, as printed; empty bounds are not stated.
struct BenchLimit {
    std::string finding;    // id of the finding that it comes from, or that a check belongs to
    std::string title;      // of the quantity
    std::string from;       // "reference" or "candidate": whose limits they are; "cell and circuit"
    std::string condition;
    std::string min, max, unit;
    std::string check = {};                   // the cell check that it comes from ("overcharge-upper"); empty: what is printed
    bool aboveMin = false, belowMax = false;  // the bound itself does not keep to it
    bool operator==(BenchLimit const&) const = default;
};

struct BenchTest {
    std::string id;
    std::string title;
    std::string procedure;
    std::string setup;
    std::string limitsFrom;  // in words: "cell profile and reference limits"
    std::vector<std::string> findings;
    std::vector<BenchLimit> limits;  // of the numeric findings that state any, then of the cell checks
    bool operator==(BenchTest const&) const = default;
};

// Whether a finding leaves something that paper cannot settle: function in doubt
// or worse, or not enough information about what could matter.
[[nodiscard]] bool needsBenchTest(model::Finding const& finding);

// In the vocabulary's order; tests that no finding calls for are left out. Each
// finding stands under one test. A cell check gives its limit to the test of its
// finding; where it holds on paper, to the test of what it checks, if there is one. Pure; linear in findings times tests.
[[nodiscard]] std::vector<BenchTest> benchTests(model::Comparison const& comparison, vocabulary::Vocabulary const& vocabulary);

}  // namespace standin::risk

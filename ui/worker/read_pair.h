// What the desk works on: two sheets and their comparison, read once and never
// changed after. Shared by the worker that makes it and the models that show it.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "model/comparison.h"
#include "model/datasheet.h"
#include "risk/bench_tests.h"

namespace standin::ui {

// What to read, in the words of `standin compare`: the same choices give the
// same comparison.
struct PairRequest {
    std::string reference, candidate;                // paths as given
    std::string referenceVariant, candidateVariant;  // empty: none chosen
    std::vector<std::string> vocabularies;           // paths
    std::vector<std::string> corrections;            // paths
    std::string cell, circuit;                       // paths; empty: none given
    std::optional<std::string> password;             // of either document
    bool operator==(PairRequest const&) const = default;
};

struct ReadPair {
    PairRequest request;
    model::Datasheet reference;
    model::Datasheet candidate;
    model::Comparison comparison;
    std::vector<risk::BenchTest> tests;  // that the open findings call for
    std::vector<std::string> referenceVariants, candidateVariants;  // that can be chosen
};

using PairPointer = std::shared_ptr<ReadPair const>;

}  // namespace standin::ui

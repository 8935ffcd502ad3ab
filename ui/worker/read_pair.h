// What the desk works on: two sheets and their comparison, read once and never
// changed after. Shared by the worker that makes it and the models that show it.
#pragma once

#include <array>
#include <cstddef>
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

enum class DocumentSide { Reference, Candidate };

inline constexpr std::array kSides{DocumentSide::Reference, DocumentSide::Candidate};

[[nodiscard]] inline DocumentSide otherSide(DocumentSide side) { return side == DocumentSide::Reference ? DocumentSide::Candidate : DocumentSide::Reference; }
// For arrays of two.
[[nodiscard]] inline std::size_t indexOf(DocumentSide side) { return side == DocumentSide::Reference ? 0 : 1; }

struct ReadPair {
    PairRequest request;
    model::Datasheet reference;
    model::Datasheet candidate;
    model::Comparison comparison;
    std::vector<risk::BenchTest> tests;  // that the open findings call for
    std::vector<std::string> referenceVariants, candidateVariants;  // that can be chosen
    // The PDFs as they were read, for pictures of their pages, whatever becomes of
    // the files; empty where the file was no PDF.
    std::string referenceBytes, candidateBytes;
};

using PairPointer = std::shared_ptr<ReadPair const>;

}  // namespace standin::ui

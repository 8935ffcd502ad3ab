// From the names of two files to their comparison: the one path that every
// command which compares takes, with its options.
//
// Defines: PairResult, ComparedPair, PageBytes, Progress.
//
//     auto compared = comparePair(command, PageBytes::Drop);
//     if (!compared) …
//     compared->result.comparison.verdict
#pragma once

#include <atomic>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "cli/arguments.h"
#include "extractors/read_datasheet.h"
#include "model/comparison.h"
#include "model/result.h"
#include "risk/bench_tests.h"
#include "vocabulary/vocabulary.h"

namespace standin::cli {

// The first line of the file; none where `path` is empty.
[[nodiscard]] model::Result<std::optional<std::string>> readPassword(std::string const& path);

// The program's own vocabulary with the users' files added in order.
[[nodiscard]] model::Result<vocabulary::Vocabulary> loadVocabulary(std::vector<std::string> const& files);

[[nodiscard]] model::Result<std::vector<corrections::Entry>> loadCorrections(std::vector<std::string> const& files);

// Has `options` recognise what is a picture. Nothing where `languages` is empty. Errors (Usage): no
// recogniser, no such languages, languages that are not installed.
[[nodiscard]] model::Result<void> useRecogniser(reading::ReadOptions& options, std::string const& languages, model::Recogniser const& recogniser);

// "reading 12 of 40 pages" on a terminal, wiped at the end.
class Progress {
public:
    Progress();
    ~Progress();
    Progress(Progress const&) = delete;
    Progress& operator=(Progress const&) = delete;

    // For ReadOptions::progress; empty where standard error is no terminal.
    [[nodiscard]] std::function<bool(int, int)> callback();

private:
    bool m_shown;
    std::atomic<bool> m_any{false};
};

struct PairResult {
    model::Datasheet reference, candidate;
    model::Comparison comparison;
    std::vector<risk::BenchTest> tests;
};

struct ComparedPair {
    PairResult result;
    std::vector<std::string> sampleRules;  // for the bench tests
    reading::PairBytes bytes;              // of both files, for page pictures; empty unless kept
    std::optional<std::string> password;
    std::optional<vocabulary::Vocabulary> vocabulary;  // kept, since taking it down takes half as long as loading it
};

enum class PageBytes : std::uint8_t { Drop, Keep };

// Reads both files with the command's options and compares them; its outputs are
// left alone. Errors: those of reading and of the user's files.
[[nodiscard]] model::Result<ComparedPair> comparePair(CompareCommand const& command, PageBytes pageBytes, model::Recogniser const& recogniser = {});

// For a caller that knows the password (no file is read for it) and shows the
// progress itself; `progress` as ReadOptions has it.
[[nodiscard]] model::Result<ComparedPair> comparePair(CompareCommand const& command, std::optional<std::string> password, std::function<bool(int, int)> progress,
                                                     PageBytes pageBytes, model::Recogniser const& recogniser = {});

}  // namespace standin::cli

// Reading: from the bytes of a PDF (or of a file that `standin read --json`
// wrote) to a model::Datasheet. The command line and the desk call only this.
//
// extractors/ knows src/model, quantity, text and vocabulary; nothing of
// comparison. Each folder below is one stage: poppler -> layout -> tables ->
// sections, figures, parameters, pins, packages, ordering, features; then corrections.
//
//     auto vocabulary = vocabulary::Vocabulary::builtIn();
//     auto sheet = readDatasheet("ref.pdf", {}, *vocabulary);
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "extractors/corrections/correction_file.h"
#include "model/datasheet.h"
#include "model/page_layout.h"
#include "model/recognition.h"
#include "model/result.h"
#include "vocabulary/vocabulary.h"

namespace standin::reading {

struct PageRange {
    int first = 1;  // from 1, both included
    int last = 1;
};

struct ReadOptions {
    std::optional<std::string> password;
    std::optional<PageRange> pages;  // none: all; pages beyond the end are left out
    int threads = 2;                 // how many pages are worked at together, at least 1
    // Lettering that is a picture, or that has no usable characters: recognised where `languages`
    // ("eng+chi_sim") is not empty; then both functions have to be there.
    model::Recogniser recogniser;
    std::string languages;
    // What a person put right, applied to what was read: corrections/apply_corrections.h.
    std::vector<corrections::Entry> corrections;
    // Called from any of the threads with pages done and pages in all; false
    // stops the reading (Error "stopped").
    std::function<bool(int done, int total)> progress;
};

// What a reading was made from, for those who want to look over the reader's
// shoulder. Empty where the file was no PDF.
struct ReadTrace {
    std::string bytes;
    std::vector<model::PageLayout> pages;  // words with their owners
};

// Reads one file. Errors: Unreadable, Encrypted, Damaged, Unsupported, as in
// result.h, with the file's name as given. Trouble within a document that can
// be read (a broken page, a font without characters) is a warning in it. Usage:
// corrections that contradict each other. `kept`, where wanted, gets what the
// sheet was made from.
[[nodiscard]] model::Result<model::Datasheet> readDatasheet(std::string const& path, ReadOptions const& options,
                                                            vocabulary::Vocabulary const& vocabulary, ReadTrace* kept = nullptr);

// The bytes of two files, for pictures of their pages (poppler/page_picture.h);
// empty where the file was no PDF.
struct PairBytes {
    std::string reference;
    std::string candidate;
};

// Sets up what all reading shares. It happens by itself, too; a program that has other things
// to do at its start can do them meanwhile.
void prepare();

// Reads two files at the same time, their pages shared among the threads.
// The first of two errors is the reference's. `kept`, where wanted, gets the
// bytes that were read.
[[nodiscard]] model::Result<std::pair<model::Datasheet, model::Datasheet>> readPair(std::string const& reference,
                                                                                   std::string const& candidate,
                                                                                   ReadOptions const& options,
                                                                                   vocabulary::Vocabulary const& vocabulary, PairBytes* kept = nullptr);

}  // namespace standin::reading

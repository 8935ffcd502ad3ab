// Opens the pictures of both documents for a report.
//
//     auto const pictures = openPictures(std::move(bytes), password);
//     report::Cuttings cuttings(pictures.borrowed());
#pragma once

#include <memory>
#include <optional>
#include <string>

#include "extractors/read_datasheet.h"
#include "report/cuttings.h"

namespace standin::cli {

struct PairPictures {
    std::unique_ptr<model::PagePictures> reference;  // null: a document without pictures
    std::unique_ptr<model::PagePictures> candidate;

    [[nodiscard]] report::Pictures borrowed() const { return {reference.get(), candidate.get()}; }
};

// A document that was no PDF, or that cannot be opened for drawing though it was
// read, has none: the report then goes without its cuttings.
[[nodiscard]] PairPictures openPictures(reading::PairBytes bytes, std::optional<std::string> const& password);

// The same over bytes that somebody else keeps as long: opened only where a page
// is asked for, which most comparisons never do.
[[nodiscard]] PairPictures lazyPictures(reading::PairBytes const& bytes, std::optional<std::string> const& password);

}  // namespace standin::cli

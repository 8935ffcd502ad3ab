// Page cuttings: the place of a finding as it stands on the printed page, with
// what is around it. HTML and PDF show the same ones.
//
// Defines: Pictures, DocumentSide, Cutting, Cuttings.
//
//     Cuttings cuttings(pictures);
//     if (showsCuttings(finding)) {
//         if (auto const* cutting = cuttings.of(DocumentSide::Reference, *finding.reference)) …
//     }
#pragma once

#include <cstddef>
#include <cstdint>
#include <map>
#include <optional>
#include <tuple>

#include "model/comparison.h"
#include "model/page_picture.h"

namespace standin::report {

enum class DocumentSide : std::uint8_t { Reference, Candidate };

// Where the pictures of both documents come from; null where a document has none
// (it was given as JSON, or no pictures are wanted). Borrowed.
struct Pictures {
    model::PagePictures* reference = nullptr;
    model::PagePictures* candidate = nullptr;
};

struct Cutting {
    int number = 0;  // from 0 in the order in which they were first asked for
    int page = 0;
    model::Picture picture;
    model::Rect place;  // to be framed; points of the page, within picture.box
};

// Findings that could hurt somebody or stop the circuit are shown as printed, and
// so are figures, where the picture is the finding.
[[nodiscard]] bool showsCuttings(model::Finding const& finding);

// Draws each place once. Bounded in pixels over the whole report: ask for the
// gravest findings first.
class Cuttings {
public:
    explicit Cuttings(Pictures pictures) : m_pictures(pictures) {}

    // Null where there is none: no pictures of this document, no place, a page
    // that cannot be drawn, or no room left in the report. The pointer holds as
    // long as the object.
    [[nodiscard]] Cutting const* of(DocumentSide document, model::Side const& side);

    // True once a place was left out for want of room.
    [[nodiscard]] bool full() const { return m_full; }

private:
    using Key = std::tuple<DocumentSide, int, int, int, int, int>;  // page and box in whole points

    Pictures m_pictures;
    std::map<Key, std::optional<Cutting>> m_cuttings;
    int m_count = 0;
    std::size_t m_pixels = 0;
    bool m_full = false;
};

}  // namespace standin::report

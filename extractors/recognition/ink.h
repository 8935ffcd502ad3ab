// The ink of a picture: its long straight lines, and its connected pieces without
// them. Private to extractors/recognition.
//
//     Ink const ink(picture);
//     auto const line = ink.only({3, 4, 5});  // a picture of these pieces alone
#pragma once

#include <memory>
#include <span>
#include <vector>

#include "extractors/recognition/lettering.h"
#include "model/page_picture.h"

struct Pix;
struct Pixa;

namespace standin::recognition {

struct FreePix {
    void operator()(Pix* pix) const;
    void operator()(Pixa* pixa) const;
};
using PixPointer = std::unique_ptr<Pix, FreePix>;
using PixaPointer = std::unique_ptr<Pixa, FreePix>;

class Ink {
public:
    explicit Ink(model::Picture const& picture);

    [[nodiscard]] double pixelsPerPoint() const { return m_pixelsPerPoint; }
    [[nodiscard]] std::vector<PixelBox> const& pieces() const { return m_pieces; }
    [[nodiscard]] std::vector<PixelBox> const& rules() const { return m_rules; }

    // The pieces in their shades on white, with a margin of kMargin pixels around `box`.
    [[nodiscard]] PixPointer only(std::span<std::size_t const> pieces, PixelBox const& box) const;

    // How much of its width a piece has ink in its lowest fifth, 0 to 1.
    [[nodiscard]] double widthAtFoot(std::size_t piece) const;

    static constexpr int kMargin = 12;

private:
    double m_pixelsPerPoint;
    PixPointer m_grey;
    PixaPointer m_shapes;
    std::vector<PixelBox> m_pieces, m_rules;
};

}  // namespace standin::recognition

// Pictures of an invented sheet, for report tests: every page is white with a
// black bar across the middle of what is asked for. Counts how often it draws.
#pragma once

#include "model/page_picture.h"

namespace standin::report {

class SheetPictures final : public model::PagePictures {
public:
    explicit SheetPictures(int pages) : m_pages(pages) {}

    [[nodiscard]] int pageCount() const override { return m_pages; }

    [[nodiscard]] model::Result<model::Rect> pageBox(int page) const override {
        if (page < 1 || page > m_pages) return tl::unexpected(model::Error{model::ErrorKind::Usage, "no such page", {}, page});
        return model::Rect{0, 0, 595, 842};
    }

    [[nodiscard]] model::Result<model::Picture> render(int page, model::Rect const& box, double pixelsPerPoint) override {
        auto const whole = pageBox(page);
        if (!whole) return tl::unexpected(whole.error());
        ++drawn;
        model::Picture picture;
        picture.box = model::intersection(box, *whole);
        picture.width = static_cast<int>(std::lround(picture.box.width() * pixelsPerPoint));
        picture.height = static_cast<int>(std::lround(picture.box.height() * pixelsPerPoint));
        picture.rgb.assign(static_cast<std::size_t>(picture.width) * static_cast<std::size_t>(picture.height) * 3, 255);
        auto const row = static_cast<std::size_t>(picture.width) * 3;
        std::fill_n(picture.rgb.begin() + static_cast<std::ptrdiff_t>(row * static_cast<std::size_t>(picture.height / 2)), row, std::uint8_t{0});
        return picture;
    }

    int drawn = 0;

private:
    int m_pages;
};

}  // namespace standin::report

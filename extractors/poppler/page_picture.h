// Draws pages of a PDF that lies in memory (Poppler's Splash): cuttings for the
// reports, whole pages for the desk. No type of Poppler's is visible here.
//
// Defines: PagePicture.
//
//     auto pictures = PagePicture::open(std::move(bytes), {});
//     if (!pictures) return tl::unexpected(pictures.error());
//     auto const page = (*pictures)->render(3, *(*pictures)->pageBox(3), 1.5);  // a whole page
//     auto const place = (*pictures)->render(side.page, side.box.grown(12), 2.5);  // a cutting
//
// Threads: each object has its own document and belongs to one thread at a time;
// it may be made in one thread and used in another. Objects do not disturb each
// other nor a DocumentReader.
#pragma once

#include <memory>
#include <optional>
#include <string>

#include "model/page_picture.h"

namespace standin::poppler {

class PagePicture final : public model::PagePictures {
public:
    // `bytes` are those of a PDF file; the object keeps them. Errors as for
    // DocumentReader::open().
    [[nodiscard]] static model::Result<std::unique_ptr<PagePicture>> open(std::string bytes, std::optional<std::string> const& password);

    ~PagePicture() override;

    [[nodiscard]] int pageCount() const override;
    [[nodiscard]] model::Result<model::Rect> pageBox(int page) const override;
    [[nodiscard]] model::Result<model::Picture> render(int page, model::Rect const& box, double pixelsPerPoint) override;

private:
    struct Document;
    explicit PagePicture(std::unique_ptr<Document> document);

    std::unique_ptr<Document> m_document;
};

}  // namespace standin::poppler

// Tested by tests/src/cli/pictures_test.cpp.
#include "cli/pictures.h"

#include <utility>

#include "extractors/poppler/page_picture.h"

namespace standin::cli {

namespace {

std::unique_ptr<model::PagePictures> opened(std::string bytes, std::optional<std::string> const& password) {
    if (bytes.empty()) return nullptr;
    auto pictures = poppler::PagePicture::open(std::move(bytes), password);
    if (!pictures) return nullptr;
    return std::move(*pictures);
}

class LazyPictures final : public model::PagePictures {
public:
    LazyPictures(std::string const& bytes, std::optional<std::string> password) : m_bytes(bytes), m_password(std::move(password)) {}

    [[nodiscard]] int pageCount() const override { return pictures() ? m_pictures->pageCount() : 1; }
    [[nodiscard]] model::Result<model::Rect> pageBox(int page) const override {
        if (!pictures()) return tl::unexpected(cannotBeShown(page));
        return m_pictures->pageBox(page);
    }
    [[nodiscard]] model::Result<model::Picture> render(int page, model::Rect const& box, double pixelsPerPoint) override {
        if (!pictures()) return tl::unexpected(cannotBeShown(page));
        return m_pictures->render(page, box, pixelsPerPoint);
    }

private:
    static model::Error cannotBeShown(int page) { return {model::ErrorKind::Damaged, "the pages of this document cannot be shown", {}, page}; }

    [[nodiscard]] bool pictures() const {
        if (!m_tried) m_pictures = opened(m_bytes, m_password);
        m_tried = true;
        return m_pictures != nullptr;
    }

    std::string const& m_bytes;
    std::optional<std::string> m_password;
    mutable std::unique_ptr<model::PagePictures> m_pictures;
    mutable bool m_tried = false;
};

std::unique_ptr<model::PagePictures> lazy(std::string const& bytes, std::optional<std::string> const& password) {
    if (bytes.empty()) return nullptr;
    return std::make_unique<LazyPictures>(bytes, password);
}

}  // namespace

PairPictures lazyPictures(reading::PairBytes const& bytes, std::optional<std::string> const& password) { return {lazy(bytes.reference, password), lazy(bytes.candidate, password)}; }

PairPictures openPictures(reading::PairBytes bytes, std::optional<std::string> const& password) {
    return {opened(std::move(bytes.reference), password), opened(std::move(bytes.candidate), password)};
}

}  // namespace standin::cli

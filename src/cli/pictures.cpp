// Tested by tests/src/cli/run_test.cpp.
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

}  // namespace

PairPictures openPictures(reading::PairBytes bytes, std::optional<std::string> const& password) {
    return {opened(std::move(bytes.reference), password), opened(std::move(bytes.candidate), password)};
}

}  // namespace standin::cli

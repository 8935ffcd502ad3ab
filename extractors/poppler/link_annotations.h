// Tells pages whose only annotations are links, which are not drawn. Poppler would
// parse each link with all that belongs to it. Private to extractors/poppler/;
// includes Poppler.
//
//     if (hasOnlyLinks(pdf, page, bytes)) ... draw its contents alone
#pragma once

#include <string_view>

class PDFDoc;
class Page;

namespace standin::poppler {

// `file`: the bytes that `pdf` was opened from. False whenever something else than a link
// might be drawn over the contents of `page`, fields of a form among them, and where a
// link has a destination that Poppler may complain of.
[[nodiscard]] bool hasOnlyLinks(PDFDoc& pdf, Page& page, std::string_view file);

}  // namespace standin::poppler

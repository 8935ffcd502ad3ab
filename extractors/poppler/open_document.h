// Opens a PDF with Poppler, the same way for reading and for pictures. Private
// to extractors/poppler/; includes Poppler.
//
//     std::vector<std::string> messages;
//     auto pdf = openDocument(bytes, password, messages);
#pragma once

#include <cstddef>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include <PDFDoc.h>

#include "model/result.h"

class Annot;

namespace standin::poppler {

// `bytes` is not copied and must outlive the document, which has at least one
// page; `password` is tried as the user's and as the owner's. What Poppler
// complains of is added to `messages`. Errors, without a file name: Encrypted
// (password missing or wrong), Damaged, Unsupported (empty, no PDF, unknown
// encryption).
[[nodiscard]] model::Result<std::unique_ptr<PDFDoc>> openDocument(std::span<std::byte const> bytes, std::optional<std::string> const& password,
                                                                  std::vector<std::string>& messages);

// False when no colour of the file comes with a profile. Looks for the name of such a colour
// space, and for compressed objects, where it may stand unseen.
[[nodiscard]] bool mayHaveProfiles(std::string_view file);

// For displayPage(): borders of links and the slips of comments are not printed.
[[nodiscard]] bool isShown(Annot* annotation, void*);

}  // namespace standin::poppler

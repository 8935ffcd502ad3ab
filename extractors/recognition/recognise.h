// Character recognition: lettering of a picture of a page as words. The only
// folder that includes Tesseract and its picture library Leptonica; it knows
// src/model only.
//
//     auto const recognised = recognise(picture, "eng");
//     if (!recognised) return tl::unexpected(recognised.error());
//
// Threads: may be called from several at the same time, each with a recogniser of
// its own (about 100 MB beside the picture while it works).
#pragma once

#include <string>

#include "model/recognition.h"
#include "model/result.h"

namespace standin::recognition {

// `languages` as Tesseract names its data, joined by '+' ("eng+chi_sim"). Errors
// (Usage): no such list, or data that is not installed, with the package that brings it.
[[nodiscard]] model::Result<void> checkLanguages(std::string const& languages);

// Words of dark upright lettering on lighter ground, of about 4 to 40 points. A word that was not
// made out with some certainty is no word but one of `unread`. The same picture
// gives the same result. Errors: as checkLanguages.
[[nodiscard]] model::Result<model::Recognition> recognise(model::Picture const& picture, std::string const& languages);

// Ends the recogniser that the calling thread keeps for its next picture. To be called where a
// thread has read its last one, since threads live on.
void release();

// All of it, for those who take a model::Recogniser.
inline constexpr model::Recogniser kRecogniser{checkLanguages, recognise, release};

}  // namespace standin::recognition

// Lettering that a page has as a picture only: scanned pages, pictures, letters
// drawn as shapes, fonts without usable characters. Where it is, and how
// what was recognised of it comes among the glyphs of the page. Private to reading.
//
//     auto unread = recognisePictures(content, pictures, options.recogniser, options.languages);
#pragma once

#include <string>
#include <vector>

#include "model/page_content.h"
#include "model/page_picture.h"
#include "model/recognition.h"
#include "model/result.h"

namespace standin::reading {

// Where to look, in points of the page; empty: nowhere. The whole page where
// it has next to no text of its own. Otherwise its images, rows of shapes of a
// letter's size, and text in fonts that mostly have no usable characters.
[[nodiscard]] std::vector<model::Rect> placesToRecognise(model::PageContent const& page);

// Paints white what is not to be recognised: all outside of `places`, and what the page
// has as usable text that is seen.
void paintOver(model::Picture& picture, model::PageContent const& page, std::vector<model::Rect> const& places);

// Adds the words as glyphs of a font with `recognised` set, and the rules. Words where usable text
// that is seen stands are left out. Takes away what the words were recognised from: shapes of letters,
// glyphs without usable characters.
void addRecognised(model::PageContent& page, model::Recognition const& found);

// All of it for one page, drawn at 300 dots an inch. Gives what looks like lettering and
// was not made out. Errors: those of drawing and of the recogniser.
[[nodiscard]] model::Result<std::vector<model::Rect>> recognisePictures(model::PageContent& page, model::PagePictures& pictures, model::Recogniser const& recogniser,
                                                                        std::string const& languages);

}  // namespace standin::reading

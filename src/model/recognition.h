// What character recognition makes of a picture, and the interface through which
// reading gets it without knowing who recognises (extractors/recognition/).
//
// Defines: RecognisedWord, Recognition, Recogniser.
//
// Places are points of the page that the picture shows (geometry.h).
#pragma once

#include <string>
#include <vector>

#include "model/geometry.h"
#include "model/page_content.h"
#include "model/page_picture.h"
#include "model/result.h"

namespace standin::model {

struct RecognisedWord {
    std::string text;  // UTF-8
    Rect box;          // of its ink
    Points baseline = 0;
    Points size = 0;  // of its font, as estimated from the height of its letters
    int line = 0;     // words of one line have one number and stand left to right
};

struct Recognition {
    std::vector<RecognisedWord> words;  // line by line
    std::vector<Rect> unread;           // looks like lettering and was not made out
    std::vector<Rule> rules;            // long straight lines
};

// All functions may be called from several threads at the same time.
struct Recogniser {
    // Errors (Usage): languages that are no list of codes joined by '+', or that are
    // not installed; the message names the package.
    Result<void> (*check)(std::string const& languages) = nullptr;
    // The same picture gives the same words. Errors as for check.
    Result<Recognition> (*recognise)(Picture const& picture, std::string const& languages) = nullptr;
    // Gives back what the calling thread keeps for the next picture; null: it keeps nothing.
    void (*release)() = nullptr;
};

}  // namespace standin::model

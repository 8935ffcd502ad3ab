// Of several things that a sentence says at once ("charge and discharge", "VDD/VSS",
// "the lamp, the bell and the fan"), what the other sentence leaves out or says instead. Private to
// the wording files.
#pragma once

#include "compare/wording_tokens.h"

namespace standin::compare {

// Between words that both have, one sentence has further words that "and", "or", a
// slash or the commas of a list join to them, and the other sentence has them nowhere.
// Exchanging the sentences gives the same.
[[nodiscard]] bool dropsMember(ReadSentence const& reference, ReadSentence const& candidate);

// The sentences are the same but for one to three words in one place of a list ("the lamp and the bell" against "the lamp and
// the fan"), which are no other forms of one word. Exchanging the sentences gives the same.
[[nodiscard]] bool substitutesMember(ReadSentence const& reference, ReadSentence const& candidate);

// One sentence is the other with a few words left out.
[[nodiscard]] bool isPartOf(ReadSentence const& reference, ReadSentence const& candidate);

}  // namespace standin::compare

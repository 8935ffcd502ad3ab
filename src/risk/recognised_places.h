// What of a comparison rests on character recognition, marked for the reader.
#pragma once

#include "model/comparison.h"
#include "model/datasheet.h"

namespace standin::risk {

// Sides of findings that stand where the sheet was recognised; worked-out values that
// have such an input get a note. Ids, order and judgements stay as they are.
void markRecognised(model::Comparison& comparison, model::Datasheet const& reference, model::Datasheet const& candidate);

}  // namespace standin::risk

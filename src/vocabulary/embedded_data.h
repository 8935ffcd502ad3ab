// The files of vocabulary/data/, read at build time (build/pack_vocabulary.cpp)
// and packed, so that a run does not parse them again.
#pragma once

#include <string_view>

namespace standin::vocabulary {

// For unpack() of archive.h; lives as long as the program.
[[nodiscard]] std::string_view embeddedVocabulary();

}  // namespace standin::vocabulary

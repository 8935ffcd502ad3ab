// What a command says when it cannot do its work.
#pragma once

#include "model/result.h"

namespace standin::cli {

// Prints `standin: FILE: what is wrong and what to do` as one line on standard
// error, control characters made visible. The exit status of trouble, kTrouble.
[[nodiscard]] int trouble(model::Error const& error);

}  // namespace standin::cli

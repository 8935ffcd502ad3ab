// `standin check`: the candidate against the cell alone, where the failed part
// has no sheet.
//
//     auto const checked = checkCommand(command);
//     if (!checked) …
//     checked->outputs.write()
#pragma once

#include "cli/arguments.h"
#include "cli/outputs.h"
#include "model/result.h"

namespace standin::cli {

struct Checked {
    Outputs outputs;  // made, not yet written
    int status = 0;
};

// Errors: a sheet or a file that cannot be read, an unknown variant.
[[nodiscard]] model::Result<Checked> checkCommand(CheckCommand const& command, model::Recogniser const& recogniser = {});

}  // namespace standin::cli

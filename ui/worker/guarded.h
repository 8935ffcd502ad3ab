// Work off the main thread that must not end the program. Private to the desk.
#pragma once

#include <exception>
#include <string>

#include "model/result.h"

namespace standin::ui {

// What `work` returns, a model::Result; what it throws (no memory, a fault of ours) as
// an Internal error about `file`, for the window must live on.
template <class Work>
[[nodiscard]] auto guarded(std::string const& file, Work const& work) -> decltype(work()) {
    try {
        return work();
    } catch (std::exception const& exception) {
        return tl::unexpected(model::Error{model::ErrorKind::Internal, std::string("could not be worked on: ") + exception.what(), file, 0});
    }
}

}  // namespace standin::ui

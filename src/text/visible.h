// Foreign text made safe to show in a terminal, a page or a CSV cell.
#pragma once

#include <string>
#include <string_view>

namespace standin::text {

// Control, bidirectional, zero-width and unassigned characters shown by number,
// "⟨U+202E⟩"; tab and newline become a space; invalid bytes U+FFFD. No other
// change.
[[nodiscard]] std::string visible(std::string_view utf8);

// Cells that a terminal uses for it: CJK and other wide characters two,
// combining marks none.
[[nodiscard]] int columnWidth(std::string_view utf8);

// Cut to at most `columns` cells, with "…" at the end where something is left out.
[[nodiscard]] std::string clippedTo(std::string_view utf8, int columns);

}  // namespace standin::text

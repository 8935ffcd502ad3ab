// Tested by tests/src/cli/check_command_test.cpp.
#include "cli/surroundings.h"

#include <utility>

#include "model/file.h"

namespace standin::cli {

namespace {

template <class Given, class Parse>
model::Result<std::optional<Given>> load(std::string const& path, Parse parse) {
    if (path.empty()) return std::optional<Given>{};
    auto const content = model::readFile(path, model::kLongestUserFile);
    if (!content) return tl::unexpected(content.error());
    auto parsed = parse(*content);
    if (!parsed) {
        auto error = parsed.error();
        error.file = path;
        return tl::unexpected(std::move(error));
    }
    return std::optional<Given>(std::move(*parsed));
}

}  // namespace

model::Result<std::optional<risk::CellProfile>> loadCell(std::string const& path) { return load<risk::CellProfile>(path, risk::parseCellProfile); }

model::Result<std::optional<risk::Circuit>> loadCircuit(std::string const& path) { return load<risk::Circuit>(path, risk::parseCircuit); }

}  // namespace standin::cli

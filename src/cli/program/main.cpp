// The program `standin`.
#include <algorithm>
#include <array>
#include <cstdlib>
#include <string>
#include <string_view>

#include <unistd.h>

#include "cli/program/start.h"

namespace {

// An option that only `standin-full` can follow.
bool asksForMore(char const* argument) {
    std::string_view const text = argument;
    auto const option = text.substr(0, text.find('='));
    return option == "--pdf" || option == "--ocr";
}

// The pages share the processors; recognition must not take them all for each. Read when
// its library is loaded, so it has to be set before.
void recogniseOnOneThread() { setenv("OMP_THREAD_LIMIT", "1", /*overwrite=*/1); }

// `name` in the folder of this program; empty where that is not known.
std::string besideThis(std::string_view name) {
    std::array<char, 4096> path{};
    auto const length = readlink("/proc/self/exe", path.data(), path.size() - 1);
    if (length <= 0) return {};
    std::string_view const own(path.data(), static_cast<std::size_t>(length));
    return std::string(own.substr(0, own.rfind('/') + 1)) + std::string(name);
}

}  // namespace

int main(int argc, char** argv) {
    if (standin::cli::isRecordCommand(argc, argv) || std::any_of(argv, argv + argc, asksForMore)) {
        recogniseOnOneThread();
        auto const full = besideThis("standin-full");
        execv(full.c_str(), argv);  // comes back only where there is none; run() says so
    }
    return standin::cli::start(argc, argv, {});
}

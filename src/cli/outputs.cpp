// Files are written and moved by model/durable_file. The names of half-written
// ones are kept in a small table that the handler of SIGINT and SIGTERM empties. Tested by
// tests/src/cli/outputs_test.cpp.
#include "cli/outputs.h"

#include <array>
#include <atomic>
#include <cerrno>
#include <csignal>
#include <cstring>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <fmt/format.h>

#include "model/durable_file.h"

namespace standin::cli {

namespace {

constexpr std::size_t kMostFiles = 8;
constexpr std::size_t kLongestPath = 4096;

// Plain arrays, since only unlink() and _exit() are allowed in a handler.
std::array<std::array<char, kLongestPath>, kMostFiles> g_halfWritten{};
std::atomic<std::size_t> g_halfWrittenCount{0};

extern "C" void removeHalfWritten(int signal) {
    for (std::size_t i = 0; i < g_halfWrittenCount.load(); ++i) unlink(g_halfWritten[i].data());
    std::signal(signal, SIG_DFL);
    std::raise(signal);
}

class InterruptGuard {
public:
    InterruptGuard() {
        struct sigaction action {};
        action.sa_handler = removeHalfWritten;
        sigaction(SIGINT, &action, &m_interrupt);
        sigaction(SIGTERM, &action, &m_terminate);
    }
    ~InterruptGuard() {
        g_halfWrittenCount = 0;
        sigaction(SIGINT, &m_interrupt, nullptr);
        sigaction(SIGTERM, &m_terminate, nullptr);
    }
    InterruptGuard(InterruptGuard const&) = delete;
    InterruptGuard& operator=(InterruptGuard const&) = delete;

    static void remember(std::string const& path) {
        auto const slot = g_halfWrittenCount.load();
        if (slot == kMostFiles || path.size() >= kLongestPath) return;
        std::memcpy(g_halfWritten[slot].data(), path.c_str(), path.size() + 1);
        g_halfWrittenCount = slot + 1;
    }

private:
    struct sigaction m_interrupt {};
    struct sigaction m_terminate {};
};

model::Error trouble(std::string const& path) {
    return {model::ErrorKind::Unreadable, fmt::format("cannot be written: {}", std::strerror(errno)), path, 0};
}

// A device, a pipe or a socket cannot be replaced by a rename.
bool isSpecialFile(std::string const& path) {
    struct stat status {};
    return stat(path.c_str(), &status) == 0 && !S_ISREG(status.st_mode) && !S_ISDIR(status.st_mode);
}

model::Result<void> writeInto(std::string const& path, std::string const& content) {
    int const descriptor = open(path.c_str(), O_WRONLY);
    if (descriptor < 0) return tl::unexpected(trouble(path));
    bool const good = model::writeAll(descriptor, content);
    auto error = trouble(path);
    if (close(descriptor) != 0 || !good) return tl::unexpected(std::move(error));
    return {};
}

}  // namespace

void Outputs::add(std::string path, std::string content) { m_files.push_back({std::move(path), std::move(content)}); }

model::Result<void> Outputs::write() const {
    InterruptGuard const guard;
    std::vector<std::pair<std::string, std::string>> beside;  // written name, final name
    auto const removeAll = [&beside] {
        for (auto const& [name, path] : beside) unlink(name.c_str());
    };
    for (auto const& file : m_files) {
        if (file.path == "-" || isSpecialFile(file.path)) continue;
        auto name = model::writeBeside(file.path, file.content, [](model::WriteStep step, std::string const& written) {
            if (step == model::WriteStep::Created) InterruptGuard::remember(written);
        });
        if (!name) {
            removeAll();
            return tl::unexpected(name.error());
        }
        beside.emplace_back(std::move(*name), file.path);
    }
    for (auto const& [name, path] : beside) {
        if (auto moved = model::moveIntoPlace(name, path); !moved) {
            removeAll();
            return moved;
        }
    }
    for (auto const& file : m_files) {
        if (file.path == "-") {
            if (!model::writeAll(STDOUT_FILENO, file.content)) return tl::unexpected(trouble("standard output"));
        } else if (isSpecialFile(file.path)) {
            if (auto written = writeInto(file.path, file.content); !written) return written;
        }
    }
    return {};
}

}  // namespace standin::cli

// Write beside, fsync, rename. The names of half-written files are kept in a
// small table that the handler of SIGINT and SIGTERM empties. Tested by
// tests/src/cli/outputs_test.cpp.
#include "cli/outputs.h"

#include <array>
#include <atomic>
#include <cerrno>
#include <csignal>
#include <cstdio>
#include <cstdlib>
#include <cstring>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <fmt/format.h>

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

bool writeAll(int descriptor, std::string const& content) {
    std::size_t done = 0;
    while (done < content.size()) {
        auto const count = ::write(descriptor, content.data() + done, content.size() - done);
        if (count < 0) {
            if (errno == EINTR) continue;
            return false;
        }
        done += static_cast<std::size_t>(count);
    }
    return true;
}

// Writes a new file beside `path`; its name, or an error with nothing left.
model::Result<std::string> writeBeside(std::string const& path, std::string const& content) {
    std::string name = path + ".XXXXXX";
    int const descriptor = mkstemp(name.data());
    if (descriptor < 0) return tl::unexpected(trouble(path));
    InterruptGuard::remember(name);
    mode_t const mask = umask(0);
    umask(mask);
    bool const good = writeAll(descriptor, content) && fchmod(descriptor, 0666 & ~mask) == 0 && fsync(descriptor) == 0;
    if (good && close(descriptor) == 0) return name;
    auto error = trouble(path);
    if (!good) close(descriptor);
    unlink(name.c_str());
    return tl::unexpected(std::move(error));
}

// A device, a pipe or a socket cannot be replaced by a rename.
bool isSpecialFile(std::string const& path) {
    struct stat status {};
    return stat(path.c_str(), &status) == 0 && !S_ISREG(status.st_mode) && !S_ISDIR(status.st_mode);
}

model::Result<void> writeInto(std::string const& path, std::string const& content) {
    int const descriptor = open(path.c_str(), O_WRONLY);
    if (descriptor < 0) return tl::unexpected(trouble(path));
    bool const good = writeAll(descriptor, content);
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
        auto name = writeBeside(file.path, file.content);
        if (!name) {
            removeAll();
            return tl::unexpected(name.error());
        }
        beside.emplace_back(std::move(*name), file.path);
    }
    for (auto const& [name, path] : beside) {
        if (std::rename(name.c_str(), path.c_str()) != 0) {
            auto error = trouble(path);
            removeAll();
            return tl::unexpected(std::move(error));
        }
    }
    for (auto const& file : m_files) {
        if (file.path == "-") {
            if (!writeAll(STDOUT_FILENO, file.content)) return tl::unexpected(trouble("standard output"));
        } else if (isSpecialFile(file.path)) {
            if (auto written = writeInto(file.path, file.content); !written) return written;
        }
    }
    return {};
}

}  // namespace standin::cli

// mkstemp, write, fsync, rename, fsync of the folder. The content is written in
// two parts so that a test can stop in between.
// Tested by tests/src/model/durable_file_test.cpp.
#include "model/durable_file.h"

#include <cerrno>
#include <cstdio>
#include <cstdlib>
#include <cstring>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <fmt/format.h>

namespace standin::model {

namespace {

Error cannotWrite(std::string const& path) { return {ErrorKind::Unreadable, fmt::format("cannot be written: {}", std::strerror(errno)), path, 0}; }

std::string folderOf(std::string const& path) {
    auto const slash = path.rfind('/');
    if (slash == std::string::npos) return ".";
    return slash == 0 ? "/" : path.substr(0, slash);
}

mode_t permissionsFor(std::string const& path) {
    struct stat status {};
    if (stat(path.c_str(), &status) == 0 && S_ISREG(status.st_mode)) return status.st_mode & 07777;
    mode_t const mask = umask(0);
    umask(mask);
    return 0666 & ~mask;
}

// Some file systems cannot flush a folder; the rename stands all the same.
bool flushFolder(std::string const& path) {
    int const descriptor = open(folderOf(path).c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (descriptor < 0) return errno == EACCES;
    bool const flushed = fsync(descriptor) == 0 || errno == EINVAL || errno == ENOTSUP;
    close(descriptor);
    return flushed;
}

}  // namespace

bool writeAll(int descriptor, std::string_view content) {
    while (!content.empty()) {
        auto const count = ::write(descriptor, content.data(), content.size());
        if (count < 0) {
            if (errno == EINTR) continue;
            return false;
        }
        content.remove_prefix(static_cast<std::size_t>(count));
    }
    return true;
}

Result<std::string> writeBeside(std::string const& path, std::string_view content, WriteWatch const& watch) {
    auto const permissions = permissionsFor(path);
    std::string name = path + ".XXXXXX";
    int const descriptor = mkostemp(name.data(), O_CLOEXEC);
    if (descriptor < 0) return tl::unexpected(cannotWrite(path));
    auto const tell = [&](WriteStep step) {
        if (watch) watch(step, name);
        return true;
    };
    auto const half = content.size() / 2;
    bool const good = tell(WriteStep::Created) && writeAll(descriptor, content.substr(0, half)) && tell(WriteStep::PartlyWritten) && writeAll(descriptor, content.substr(half)) &&
                      tell(WriteStep::Written) && fchmod(descriptor, permissions) == 0 && fsync(descriptor) == 0 && tell(WriteStep::Flushed);
    if (good && close(descriptor) == 0) return name;
    auto error = cannotWrite(path);
    if (!good) close(descriptor);
    unlink(name.c_str());
    return tl::unexpected(std::move(error));
}

Result<void> moveIntoPlace(std::string const& beside, std::string const& path, WriteWatch const& watch) {
    if (std::rename(beside.c_str(), path.c_str()) != 0) {
        auto error = cannotWrite(path);
        unlink(beside.c_str());
        return tl::unexpected(std::move(error));
    }
    if (watch) watch(WriteStep::Renamed, beside);
    if (!flushFolder(path)) return tl::unexpected(cannotWrite(path));
    if (watch) watch(WriteStep::FolderFlushed, beside);
    return {};
}

Result<void> replaceFile(std::string const& path, std::string_view content, WriteWatch const& watch) {
    auto const beside = writeBeside(path, content, watch);
    if (!beside) return tl::unexpected(beside.error());
    return moveIntoPlace(*beside, path, watch);
}

}  // namespace standin::model

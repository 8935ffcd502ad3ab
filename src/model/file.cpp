// Block by block with the C library, so that pipes work and a file that grows
// while it is read stops at the limit. The size that the system gives is only room
// to begin with. Tested by tests/src/model/file_test.cpp.
#include "model/file.h"

#include <algorithm>
#include <array>
#include <cstdio>
#include <memory>

#include <sys/stat.h>

namespace standin::model {

namespace {

struct CloseFile {
    void operator()(std::FILE* file) const { std::fclose(file); }
};

}  // namespace

Result<std::string> readFile(std::string const& path, std::size_t longest) {
    std::unique_ptr<std::FILE, CloseFile> const file(std::fopen(path.c_str(), "rb"));
    if (!file) return tl::unexpected(Error{ErrorKind::Unreadable, "cannot be opened; check the name and the permission", path});
    std::string content;
    struct stat status {};
    if (fstat(fileno(file.get()), &status) == 0 && status.st_size > 0) content.reserve(std::min(static_cast<std::size_t>(status.st_size), longest) + 1);
    std::setvbuf(file.get(), nullptr, _IONBF, 0);
    std::array<char, 1 << 16> block;
    while (auto const count = std::fread(block.data(), 1, block.size(), file.get())) {
        content.append(block.data(), count);
        if (content.size() > longest) return tl::unexpected(Error{ErrorKind::Usage, "is too large for such a file", path});
    }
    if (std::ferror(file.get()) != 0) return tl::unexpected(Error{ErrorKind::Unreadable, "cannot be read; is it a folder?", path});
    return content;
}

}  // namespace standin::model

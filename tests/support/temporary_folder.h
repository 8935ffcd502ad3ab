// A folder that only one test of one run has: ctest starts tests side by side, and
// two that wrote a file of the same name would read each other's.
#pragma once

#include <cerrno>
#include <cstdlib>
#include <filesystem>
#include <string>
#include <string_view>
#include <system_error>

namespace standin::testing {

// Made with a name of its own in the system's folder for temporary files; removed
// with all that is in it. Throws std::system_error where none can be made.
class TemporaryFolder {
public:
    TemporaryFolder() {
        auto name = (std::filesystem::temp_directory_path() / "standin_test_XXXXXX").string();
        if (::mkdtemp(name.data()) == nullptr) throw std::system_error(errno, std::generic_category(), name);
        m_path = name;
    }
    ~TemporaryFolder() {
        std::error_code ignored;
        std::filesystem::remove_all(m_path, ignored);
    }
    TemporaryFolder(TemporaryFolder const&) = delete;
    TemporaryFolder& operator=(TemporaryFolder const&) = delete;

    [[nodiscard]] std::filesystem::path const& path() const { return m_path; }
    // Where `name` lies in it, whether there is such a file or not.
    [[nodiscard]] std::string file(std::string_view name) const { return (m_path / name).string(); }

private:
    std::filesystem::path m_path;
};

}  // namespace standin::testing

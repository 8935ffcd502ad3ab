// Runs a fuzz target over files: every regular file of the folders and files
// named. A folder that does not exist holds nothing.
#include <algorithm>
#include <cstdint>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <vector>

extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* bytes, std::size_t size);

int main(int argc, char** argv) {
    namespace fs = std::filesystem;
    std::vector<fs::path> files;
    for (int i = 1; i < argc; ++i) {
        fs::path const path(argv[i]);
        if (fs::is_directory(path)) {
            for (auto const& entry : fs::directory_iterator(path)) {
                if (entry.is_regular_file()) files.push_back(entry.path());
            }
        } else if (fs::is_regular_file(path)) {
            files.push_back(path);
        }
    }
    std::sort(files.begin(), files.end());
    for (auto const& path : files) {
        std::ifstream file(path, std::ios::binary);
        std::vector<char> const content{std::istreambuf_iterator<char>(file), {}};
        LLVMFuzzerTestOneInput(reinterpret_cast<std::uint8_t const*>(content.data()), content.size());
    }
    std::printf("%zu files replayed\n", files.size());
    return files.empty() ? 1 : 0;
}

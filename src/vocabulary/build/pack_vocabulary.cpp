// Runs at build time: reads vocabulary/data/*.json and writes them, packed, as the
// C++ file behind embedded_data.h.
//
//     pack_vocabulary OUTPUT.cpp FILE.json…
#include <algorithm>
#include <fstream>
#include <iterator>
#include <string>
#include <vector>

#include <fmt/format.h>

#include "vocabulary/archive.h"
#include "vocabulary/store.h"

namespace {

int refuse(std::string const& file, std::string const& message) {
    fmt::print(stderr, "pack_vocabulary: {}: {}\n", file, message);
    return 1;
}

bool isLexicon(std::string const& path) {
    std::string const name = "lexicon.json";
    return path.size() >= name.size() && path.compare(path.size() - name.size(), name.size(), name) == 0;
}

}  // namespace

int main(int count, char** arguments) {
    if (count < 3) {
        return refuse("usage", "OUTPUT.cpp FILE.json…");
    }
    std::vector<std::string> files(arguments + 2, arguments + count);
    std::sort(files.begin(), files.end());
    // Words first: every name is read with them.
    std::stable_partition(files.begin(), files.end(), isLexicon);
    standin::vocabulary::Vocabulary::Store store;
    for (auto const& file : files) {
        std::ifstream stream(file, std::ios::binary);
        if (!stream) {
            return refuse(file, "cannot be opened");
        }
        std::string const json((std::istreambuf_iterator<char>(stream)), std::istreambuf_iterator<char>());
        if (auto loaded = store.load(json); !loaded) {
            return refuse(file, loaded.error().message);
        }
    }
    store.buildIndices();
    std::string const bytes = standin::vocabulary::pack(store);
    std::string text = "#include \"vocabulary/embedded_data.h\"\n\nnamespace standin::vocabulary {\n\nnamespace {\nconstexpr unsigned char kBytes[] = {";
    for (std::size_t i = 0; i < bytes.size(); ++i) {
        text += fmt::format("{}{},", i % 64 == 0 ? "\n" : "", static_cast<unsigned char>(bytes[i]));
    }
    text += "};\n}  // namespace\n\nstd::string_view embeddedVocabulary() {\n    return {reinterpret_cast<char const*>(kBytes), sizeof kBytes};\n}\n\n}  // namespace standin::vocabulary\n";
    std::ofstream out(arguments[1], std::ios::binary | std::ios::trunc);
    out << text;
    return out.good() ? 0 : refuse(arguments[1], "cannot be written");
}

// Files that appear whole or not at all.
//
//     Outputs outputs;
//     outputs.add("report.html", html);
//     outputs.add("-", text);
//     if (auto written = outputs.write(); !written) { … written.error() … }
#pragma once

#include <string>
#include <vector>

#include "model/result.h"

namespace standin::cli {

class Outputs {
public:
    // `path` is a file or "-" for standard output.
    void add(std::string path, std::string content);

    // Writes every file beside its place, makes it durable, then renames all of
    // them; standard output comes last. On an error (Unreadable: no room, no
    // permission) nothing is left behind that was not there before, except
    // files that a later rename of the same call could not follow. An interrupt
    // while writing leaves no files either.
    [[nodiscard]] model::Result<void> write() const;

private:
    struct File {
        std::string path;
        std::string content;
    };
    std::vector<File> m_files;
};

}  // namespace standin::cli

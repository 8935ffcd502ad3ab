// Files that appear whole or not at all, and stay: written beside their place,
// flushed, then renamed over it, and the folder flushed too.
//
// Defines: WriteStep, WriteWatch.
//
//     if (auto written = replaceFile("evaluation.record", text); !written) …
//
// A crash at any point leaves the old file or the new one.
#pragma once

#include <cstdint>
#include <functional>
#include <string>
#include <string_view>

#include "model/result.h"

namespace standin::model {

// What has just been done.
enum class WriteStep : std::uint8_t {
    Created,        // the file beside exists, empty
    PartlyWritten,  // some of its bytes are in it
    Written,        // all are
    Flushed,        // and on the disk
    Renamed,        // it stands at its place
    FolderFlushed,  // for good
};

// Told after each step, with the name of the file beside. For tests that stop
// there, and for those who remove a half-written file when interrupted.
using WriteWatch = std::function<void(WriteStep, std::string const& beside)>;

// Writes a new file beside `path`, with the permissions of the file it will
// replace or those that new files get; its name. An error (Unreadable: no room,
// no permission) leaves nothing behind.
[[nodiscard]] Result<std::string> writeBeside(std::string const& path, std::string_view content, WriteWatch const& watch = {});

// Renames what writeBeside() made to its place and flushes the folder. On an
// error the file beside is removed.
[[nodiscard]] Result<void> moveIntoPlace(std::string const& beside, std::string const& path, WriteWatch const& watch = {});

// Both, one after the other.
[[nodiscard]] Result<void> replaceFile(std::string const& path, std::string_view content, WriteWatch const& watch = {});

// All of `content` into an open descriptor; errno says what went wrong.
[[nodiscard]] bool writeAll(int descriptor, std::string_view content);

}  // namespace standin::model

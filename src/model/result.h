// Results of everything that depends on input. This folder (model/) includes
// only the standard library, tl::expected and, in its .cpp files, nlohmann-json
// and OpenSSL. Every other folder may include it.
//
// Defines: ErrorKind, Error, Result<T>.
//
//     Result<Datasheet> sheet = readDatasheet(path, options);
//     if (!sheet) { fmt::print(stderr, "standin: {}\n", describe(sheet.error())); }
#pragma once

#include <string>

#include <tl/expected.hpp>

namespace standin::model {

enum class ErrorKind {
    Unreadable,   // missing, no permission, a folder
    Encrypted,    // needs a password that was not given, or a wrong one
    Damaged,      // a PDF, but too broken to read
    Unsupported,  // not a PDF, or a form of it that cannot be read
    Usage,        // contradicting or unknown options, an invalid user file
    Internal,     // our own fault
};

struct Error {
    ErrorKind kind = ErrorKind::Internal;
    std::string message;  // what is wrong and what to do, one line, no file name
    std::string file;     // as given by the user; empty where no file is concerned
    int page = 0;         // from 1; 0 where no page is concerned
};

template <class T>
using Result = tl::expected<T, Error>;

// "FILE: page 3: what is wrong and what to do", on one line.
[[nodiscard]] std::string describe(Error const& error);

}  // namespace standin::model

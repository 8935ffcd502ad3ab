// The terminal is asked through /dev/tty with its echo off.
// Tested by tests/src/cli/record_run_test.cpp.
#include "cli/record_key.h"

#include <cstdio>
#include <memory>
#include <termios.h>
#include <unistd.h>

#include "cli/compare_pair.h"

namespace standin::cli {

using model::Error;
using model::ErrorKind;
using model::Result;

namespace {

struct CloseFile {
    void operator()(std::FILE* file) const { std::fclose(file); }
};

// Nullopt where there is no terminal.
std::optional<std::string> askPassphrase(char const* question) {
    std::unique_ptr<std::FILE, CloseFile> const terminal(std::fopen("/dev/tty", "r+"));
    if (!terminal) return std::nullopt;
    int const descriptor = fileno(terminal.get());
    termios before{};
    if (tcgetattr(descriptor, &before) != 0) return std::nullopt;
    termios silent = before;
    silent.c_lflag &= ~static_cast<tcflag_t>(ECHO);
    std::fputs(question, terminal.get());
    std::fflush(terminal.get());
    tcsetattr(descriptor, TCSAFLUSH, &silent);
    std::string text;
    for (int byte = std::fgetc(terminal.get()); byte != EOF && byte != '\n'; byte = std::fgetc(terminal.get())) text += static_cast<char>(byte);
    tcsetattr(descriptor, TCSAFLUSH, &before);
    std::fseek(terminal.get(), 0, SEEK_CUR);  // from reading to writing
    std::fputs("\n", terminal.get());
    return text;
}

Error usage(std::string message) { return {ErrorKind::Usage, std::move(message), {}, 0}; }

}  // namespace

Result<record::SigningKey> loadKey(std::string const& path, std::string const& passphraseFile) {
    auto const fromFile = readPassword(passphraseFile);
    if (!fromFile) return tl::unexpected(fromFile.error());
    bool unasked = false;
    auto key = record::SigningKey::load(path, [&]() -> std::optional<std::string> {
        if (*fromFile) return *fromFile;
        auto typed = askPassphrase("Passphrase of the key: ");
        unasked = !typed;
        return typed;
    });
    if (!key && unasked) return tl::unexpected(Error{ErrorKind::Usage, "is locked and there is no terminal to ask for its passphrase; give --passphrase-file", path, 0});
    return key;
}

Result<record::Person> makeKey(RecordCommand const& command) {
    auto passphrase = readPassword(command.passphraseFile);
    if (!passphrase) return tl::unexpected(passphrase.error());
    if (*passphrase && (*passphrase)->empty()) return tl::unexpected(Error{ErrorKind::Usage, "its first line is empty; a passphrase is wanted", command.passphraseFile, 0});
    if (!*passphrase && command.lockKey) {
        *passphrase = askPassphrase("New passphrase: ");
        if (!*passphrase) return tl::unexpected(usage("there is no terminal to ask for a passphrase; give --passphrase-file"));
        if ((*passphrase)->empty() || *passphrase != askPassphrase("The same again: ")) return tl::unexpected(usage("the two passphrases differ or are empty; no key was made"));
    }
    auto const key = record::SigningKey::create(command.name);
    if (!key) return tl::unexpected(key.error());
    if (auto const saved = key->save(command.file, passphrase->value_or("")); !saved) return tl::unexpected(saved.error());
    return key->person();
}

}  // namespace standin::cli

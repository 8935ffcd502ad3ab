// Ed25519 keys that sign the entries of a record, by libcrypto. This folder
// (record/) includes model/, text/, quantity/, vocabulary/, compare/, risk/ and report/.
//
// Defines: Person, SigningKey.
//
//     auto key = SigningKey::create("R. Ashdown");
//     if (auto saved = key->save("ashdown.key", passphrase); !saved) …
//     std::string const signature = key->sign(message);
//     verifies(key->person().key, message, signature)     // true
#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <string_view>

#include "model/result.h"

namespace standin::record {

// Who made an entry: a name, and the key by which persons are told apart.
struct Person {
    std::string name;
    std::string key;  // the public key, 64 lower-case hex digits
    bool operator==(Person const&) const = default;
};

// "3f9a 04c1 77de 52b0": the first digits of a key, for people to compare.
[[nodiscard]] std::string shortKey(std::string_view key);

// What is wrong with a name, or empty: it has 1 to 100 characters, none of them
// a control character, no blank at its ends.
[[nodiscard]] std::string nameFault(std::string_view name);

class SigningKey {
public:
    // Usage error: a name that nameFault() does not let pass.
    [[nodiscard]] static model::Result<SigningKey> create(std::string name);

    // Reads a key file. `passphrase` is asked only where the file is locked with
    // one. Errors: Usage where others may read the file, where it holds no such
    // key or the passphrase does not open it; Unreadable.
    [[nodiscard]] static model::Result<SigningKey> load(std::string const& path, std::function<std::optional<std::string>()> const& passphrase);

    // Writes a new file that only its owner may read (mode 0600): the name and the
    // public key in plain text, the private key as PKCS #8 in PEM, locked with the
    // passphrase where it is not empty. An existing file is never replaced.
    [[nodiscard]] model::Result<void> save(std::string const& path, std::string const& passphrase) const;

    [[nodiscard]] Person const& person() const { return m_person; }

    // 128 lower-case hex digits. The same message gives the same signature.
    [[nodiscard]] model::Result<std::string> sign(std::string_view message) const;

    SigningKey(SigningKey&&) noexcept;
    SigningKey& operator=(SigningKey&&) noexcept;
    ~SigningKey();

private:
    struct Secret;
    SigningKey(Person person, std::unique_ptr<Secret> secret);
    Person m_person;
    std::unique_ptr<Secret> m_secret;
};

// Whether `signature` (hex) is that of `message` by the public key (hex). False
// for anything malformed.
[[nodiscard]] bool verifies(std::string_view publicKey, std::string_view message, std::string_view signature);

// `bytes` lower-case hex digits pairs and nothing else.
[[nodiscard]] bool isLowerHex(std::string_view text, std::size_t bytes);

}  // namespace standin::record

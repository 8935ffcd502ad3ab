// Thin over EVP. Public keys travel as 32 raw bytes in hex, private ones as PEM.
// Tested by tests/src/record/key_test.cpp.
#include "record/key.h"

#include <algorithm>
#include <array>
#include <cerrno>
#include <cstring>
#include <vector>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <fmt/format.h>
#include <openssl/bio.h>
#include <openssl/evp.h>
#include <openssl/pem.h>

#include "model/durable_file.h"

namespace standin::record {

using model::Error;
using model::ErrorKind;
using model::Result;

namespace {

constexpr std::size_t kKeyBytes = 32;
constexpr std::size_t kSignatureBytes = 64;
constexpr std::size_t kLongestName = 100;
constexpr std::size_t kLongestKeyFile = 1 << 16;
constexpr std::string_view kNameLine = "Name: ";

struct Free {
    void operator()(EVP_PKEY* key) const { EVP_PKEY_free(key); }
    void operator()(EVP_PKEY_CTX* context) const { EVP_PKEY_CTX_free(context); }
    void operator()(EVP_MD_CTX* context) const { EVP_MD_CTX_free(context); }
    void operator()(BIO* bio) const { BIO_free(bio); }
};
template <class Type>
using Owned = std::unique_ptr<Type, Free>;

unsigned char const* bytesOf(std::string_view text) { return reinterpret_cast<unsigned char const*>(text.data()); }

std::string toHex(unsigned char const* bytes, std::size_t count) {
    std::string text;
    for (std::size_t i = 0; i < count; ++i) text += fmt::format("{:02x}", bytes[i]);
    return text;
}

int nibble(char digit) { return digit <= '9' ? digit - '0' : digit - 'a' + 10; }

std::vector<unsigned char> fromHex(std::string_view text) {
    std::vector<unsigned char> bytes;
    for (std::size_t i = 0; i + 1 < text.size(); i += 2) bytes.push_back(static_cast<unsigned char>(nibble(text[i]) << 4 | nibble(text[i + 1])));
    return bytes;
}

Error wrongFile(std::string const& path, std::string message, ErrorKind kind = ErrorKind::Usage) { return {kind, std::move(message), path, 0}; }

// The key file's bytes, provided that nobody else may read it.
Result<std::string> readPrivately(std::string const& path) {
    int const descriptor = open(path.c_str(), O_RDONLY | O_CLOEXEC);
    if (descriptor < 0) return tl::unexpected(wrongFile(path, "cannot be opened; check the name and the permission", ErrorKind::Unreadable));
    struct stat status {};
    std::string content(kLongestKeyFile, '\0');
    bool const good = fstat(descriptor, &status) == 0 && S_ISREG(status.st_mode);
    auto const count = good ? read(descriptor, content.data(), content.size()) : -1;
    close(descriptor);
    if (count < 0) return tl::unexpected(wrongFile(path, "cannot be read; is it a file?", ErrorKind::Unreadable));
    if ((status.st_mode & 077) != 0) return tl::unexpected(wrongFile(path, "can be read by others; keep a key to yourself (chmod 600), or make a new one if somebody may have copied it"));
    content.resize(static_cast<std::size_t>(count));
    return content;
}

// libcrypto asks for the passphrase; without one it must not ask the terminal.
struct Asked {
    std::function<std::optional<std::string>()> const* ask = nullptr;
    bool any = false;
};
extern "C" int givePassphrase(char* buffer, int size, int /*writing*/, void* context) {
    auto& asked = *static_cast<Asked*>(context);
    asked.any = true;
    auto const passphrase = *asked.ask ? (*asked.ask)() : std::nullopt;
    if (!passphrase || passphrase->size() > static_cast<std::size_t>(size)) return -1;
    std::memcpy(buffer, passphrase->data(), passphrase->size());
    return static_cast<int>(passphrase->size());
}

std::string publicHex(EVP_PKEY const* key) {
    std::array<unsigned char, kKeyBytes> raw{};
    std::size_t size = raw.size();
    if (EVP_PKEY_get_raw_public_key(key, raw.data(), &size) != 1 || size != raw.size()) return {};
    return toHex(raw.data(), raw.size());
}

std::string nameIn(std::string_view file) {
    if (!file.starts_with(kNameLine)) return {};
    file.remove_prefix(kNameLine.size());
    return std::string(file.substr(0, file.find('\n')));
}

}  // namespace

struct SigningKey::Secret {
    Owned<EVP_PKEY> key;
};

SigningKey::SigningKey(Person person, std::unique_ptr<Secret> secret) : m_person(std::move(person)), m_secret(std::move(secret)) {}
SigningKey::SigningKey(SigningKey&&) noexcept = default;
SigningKey& SigningKey::operator=(SigningKey&&) noexcept = default;
SigningKey::~SigningKey() = default;

std::string shortKey(std::string_view key) {
    std::string text;
    for (std::size_t i = 0; i < 16 && i < key.size(); i += 4) text += (text.empty() ? "" : " ") + std::string(key.substr(i, 4));
    return text;
}

bool isLowerHex(std::string_view text, std::size_t bytes) {
    return text.size() == 2 * bytes && std::all_of(text.begin(), text.end(), [](char c) { return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f'); });
}

std::string nameFault(std::string_view name) {
    if (name.empty()) return "give the name of the person";
    if (name.size() > kLongestName) return "the name is too long (100 bytes at most)";
    if (name.front() == ' ' || name.back() == ' ') return "the name has a blank at its end";
    bool const control = std::any_of(name.begin(), name.end(), [](char c) { return static_cast<unsigned char>(c) < 0x20 || c == 0x7f; });
    return control ? "the name has control characters" : "";
}

Result<SigningKey> SigningKey::create(std::string name) {
    if (auto fault = nameFault(name); !fault.empty()) return tl::unexpected(Error{ErrorKind::Usage, std::move(fault), {}, 0});
    Owned<EVP_PKEY_CTX> const context(EVP_PKEY_CTX_new_id(EVP_PKEY_ED25519, nullptr));
    EVP_PKEY* made = nullptr;
    if (!context || EVP_PKEY_keygen_init(context.get()) != 1 || EVP_PKEY_keygen(context.get(), &made) != 1) {
        return tl::unexpected(Error{ErrorKind::Internal, "no key could be made", {}, 0});
    }
    auto secret = std::make_unique<Secret>();
    secret->key.reset(made);
    auto hex = publicHex(made);
    return SigningKey({std::move(name), std::move(hex)}, std::move(secret));
}

Result<SigningKey> SigningKey::load(std::string const& path, std::function<std::optional<std::string>()> const& passphrase) {
    auto const content = readPrivately(path);
    if (!content) return tl::unexpected(content.error());
    auto name = nameIn(*content);
    if (!nameFault(name).empty()) return tl::unexpected(wrongFile(path, "is no key of 'standin record key' (its first line names the person)"));
    Owned<BIO> const bio(BIO_new_mem_buf(content->data(), static_cast<int>(content->size())));
    Asked asked{&passphrase, false};
    auto secret = std::make_unique<Secret>();
    if (bio) secret->key.reset(PEM_read_bio_PrivateKey(bio.get(), nullptr, givePassphrase, &asked));
    if (!secret->key) return tl::unexpected(wrongFile(path, asked.any ? "is locked and the passphrase does not open it" : "holds no private key"));
    if (EVP_PKEY_id(secret->key.get()) != EVP_PKEY_ED25519) return tl::unexpected(wrongFile(path, "holds another kind of key; make one with 'standin record key --new'"));
    auto hex = publicHex(secret->key.get());
    return SigningKey({std::move(name), std::move(hex)}, std::move(secret));
}

Result<void> SigningKey::save(std::string const& path, std::string const& passphrase) const {
    Owned<BIO> const bio(BIO_new(BIO_s_mem()));
    auto const* cipher = passphrase.empty() ? nullptr : EVP_aes_256_cbc();
    if (!bio || PEM_write_bio_PKCS8PrivateKey(bio.get(), m_secret->key.get(), cipher, passphrase.empty() ? nullptr : passphrase.data(), static_cast<int>(passphrase.size()), nullptr, nullptr) != 1) {
        return tl::unexpected(wrongFile(path, "the key could not be written down", ErrorKind::Internal));
    }
    char* pem = nullptr;
    auto const size = BIO_get_mem_data(bio.get(), &pem);
    auto const content = fmt::format("{}{}\nPublic key: {}\n{}", kNameLine, m_person.name, m_person.key, std::string_view(pem, static_cast<std::size_t>(size)));

    int const descriptor = open(path.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0600);
    if (descriptor < 0) {
        if (errno == EEXIST) return tl::unexpected(wrongFile(path, "exists already; a key is never replaced, give another name"));
        return tl::unexpected(wrongFile(path, fmt::format("cannot be written: {}", std::strerror(errno)), ErrorKind::Unreadable));
    }
    bool const good = fchmod(descriptor, 0600) == 0 && model::writeAll(descriptor, content) && fsync(descriptor) == 0;
    if (close(descriptor) == 0 && good) return {};
    unlink(path.c_str());
    return tl::unexpected(wrongFile(path, "cannot be written; is there room?", ErrorKind::Unreadable));
}

Result<std::string> SigningKey::sign(std::string_view message) const {
    Owned<EVP_MD_CTX> const context(EVP_MD_CTX_new());
    std::array<unsigned char, kSignatureBytes> signature{};
    std::size_t size = signature.size();
    if (!context || EVP_DigestSignInit(context.get(), nullptr, nullptr, nullptr, m_secret->key.get()) != 1 ||
        EVP_DigestSign(context.get(), signature.data(), &size, bytesOf(message), message.size()) != 1 || size != signature.size()) {
        return tl::unexpected(Error{ErrorKind::Internal, "the entry could not be signed", {}, 0});
    }
    return toHex(signature.data(), size);
}

bool verifies(std::string_view publicKey, std::string_view message, std::string_view signature) {
    if (!isLowerHex(publicKey, kKeyBytes) || !isLowerHex(signature, kSignatureBytes)) return false;
    auto const rawKey = fromHex(publicKey);
    auto const rawSignature = fromHex(signature);
    Owned<EVP_PKEY> const key(EVP_PKEY_new_raw_public_key(EVP_PKEY_ED25519, nullptr, rawKey.data(), rawKey.size()));
    Owned<EVP_MD_CTX> const context(EVP_MD_CTX_new());
    return key && context && EVP_DigestVerifyInit(context.get(), nullptr, nullptr, nullptr, key.get()) == 1 &&
           EVP_DigestVerify(context.get(), rawSignature.data(), rawSignature.size(), bytesOf(message), message.size()) == 1;
}

}  // namespace standin::record

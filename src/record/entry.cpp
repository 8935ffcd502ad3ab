// The envelope of an entry: sign, write, read and verify. The bodies are in
// entry_json.cpp. Tested by tests/src/record/record_test.cpp.
#include "record/entry.h"

#include <algorithm>
#include <array>

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include "model/digest.h"
#include "model/user_json.h"
#include "record/entry_json.h"

namespace standin::record {

using model::Error;
using model::ErrorKind;
using model::Result;
using nlohmann::json;

namespace {

constexpr char const* kSchema = "standin.record/1";
constexpr std::size_t kHashBytes = 32;
constexpr std::size_t kSignatureBytes = 64;
constexpr std::size_t kMostParents = 2;

constexpr std::array<std::string_view, 7> kDispositions{"open", "accepted", "accepted-with-condition", "bench-test", "supplier-statement", "not-applicable", "rejected"};
constexpr std::array<std::string_view, 3> kRoles{"author", "reviewer", "approver"};
constexpr std::array<std::string_view, 3> kOutcomes{"not-judged", "within", "outside"};
constexpr std::array<std::string_view, 8> kKinds{"opened", "decided", "carried", "result", "signed", "merged", "superseded", "distributed"};
constexpr std::string_view kHeadKind = "head";

template <class Enum, std::size_t count>
std::optional<Enum> fromWord(std::array<std::string_view, count> const& words, std::string_view word) {
    auto const found = std::find(words.begin(), words.end(), word);
    if (found == words.end()) return std::nullopt;
    return static_cast<Enum>(found - words.begin());
}

auto broken(std::string message) { return tl::unexpected(Error{ErrorKind::Damaged, std::move(message), {}, 0}); }

std::string messageOf(json const& unsignedLine) { return std::string(kSchema) + "\n" + canonical(unsignedLine); }

// Adds the signature; the line.
Result<std::string> signedLine(json line, SigningKey const& key) {
    auto signature = key.sign(messageOf(line));
    if (!signature) return tl::unexpected(signature.error());
    line["signature"] = *std::move(signature);
    return canonical(line);
}

bool isTime(std::string_view text) {
    constexpr std::string_view kPattern = "0000-00-00T00:00:00Z";
    return text.size() == kPattern.size() && std::equal(text.begin(), text.end(), kPattern.begin(), [](char c, char p) { return p == '0' ? c >= '0' && c <= '9' : c == p; });
}

std::string textMember(json const& object, char const* name) {
    auto const found = object.find(name);
    return found != object.end() && found->is_string() ? found->get<std::string>() : std::string{};
}

std::int64_t countMember(json const& object, char const* name) {
    auto const found = object.find(name);
    return found != object.end() && found->is_number_unsigned() && found->get<std::uint64_t>() < (std::uint64_t{1} << 32) ? found->get<std::int64_t>() : 0;
}

// A line of a record whose bytes are those that we would write, and whose
// signature is that of the key it names.
Result<json> verifiedLine(std::string_view text) {
    auto line = model::parseUserJson(text, kSchema, {});
    if (!line) return broken("is no line of a record: " + line.error().message);
    if (canonical(*line) != text) return broken("is not written as this format asks (members sorted, no blanks)");
    auto const by = line->find("by");
    if (by == line->end() || !by->is_object() || !nameFault(textMember(*by, "name")).empty()) return broken("does not say who made it");
    auto const signature = textMember(*line, "signature");
    if (!isLowerHex(signature, kSignatureBytes)) return broken("has no signature");
    json unsignedLine = *line;
    unsignedLine.erase("signature");
    if (!verifies(textMember(*by, "key"), messageOf(unsignedLine), signature)) return broken("was changed after it was signed: the signature does not match");
    return line;
}

Person personOf(json const& line) { return {textMember(line["by"], "name"), textMember(line["by"], "key")}; }

json personJson(Person const& person) { return {{"name", person.name}, {"key", person.key}}; }

}  // namespace

std::string_view nameOf(Disposition disposition) { return kDispositions.at(static_cast<std::size_t>(disposition)); }
std::optional<Disposition> dispositionOf(std::string_view name) { return fromWord<Disposition>(kDispositions, name); }
std::string_view nameOf(Role role) { return kRoles.at(static_cast<std::size_t>(role)); }
std::optional<Role> roleOf(std::string_view name) { return fromWord<Role>(kRoles, name); }
std::string_view nameOf(Outcome outcome) { return kOutcomes.at(static_cast<std::size_t>(outcome)); }
std::string_view kindOf(Body const& body) { return kKinds.at(body.index()); }

std::string canonical(json const& value) { return value.dump(-1, ' ', false, json::error_handler_t::replace); }

Result<Entry> signedEntry(Draft draft, SigningKey const& key) {
    json const line{{"schema", kSchema},
                    {"kind", kindOf(draft.body)},
                    {"parents", draft.parents},
                    {"sequence", static_cast<std::uint64_t>(draft.sequence)},
                    {"at", draft.at},
                    {"by", personJson(key.person())},
                    {"body", bodyJson(draft.body)}};
    auto const text = signedLine(line, key);
    if (!text) return tl::unexpected(text.error());
    // Read back, so that what is held is what is written.
    return parseEntry(*text);
}

Result<Entry> parseEntry(std::string_view text) {
    auto const line = verifiedLine(text);
    if (!line) return tl::unexpected(line.error());
    Entry entry;
    entry.by = personOf(*line);
    entry.at = textMember(*line, "at");
    if (!isTime(entry.at)) return broken("has no time");
    entry.sequence = countMember(*line, "sequence");
    if (entry.sequence == 0) return broken("has no sequence number");
    auto const parents = line->find("parents");
    if (parents == line->end() || !parents->is_array() || parents->size() > kMostParents) return broken("does not name its parents");
    for (auto const& parent : *parents) {
        if (!parent.is_string() || !isLowerHex(parent.get_ref<std::string const&>(), kHashBytes)) return broken("names a parent that is no hash");
        entry.parents.push_back(parent.get<std::string>());
    }
    auto const body = line->find("body");
    if (body == line->end() || !body->is_object()) return broken("has no body");
    auto read = bodyOf(textMember(*line, "kind"), *body);
    if (!read) return tl::unexpected(read.error());
    entry.body = *std::move(read);
    entry.line = text;
    entry.hash = model::sha256Hex(text);
    return entry;
}

Result<std::string> headLine(Head const& head, SigningKey const& key) {
    return signedLine({{"schema", kSchema}, {"kind", kHeadKind}, {"count", static_cast<std::uint64_t>(head.count)}, {"entry", head.hash}, {"by", personJson(key.person())}}, key);
}

Result<Head> parseHead(std::string_view text) {
    auto const line = verifiedLine(text);
    if (!line) return tl::unexpected(line.error());
    Head head{countMember(*line, "count"), textMember(*line, "entry"), personOf(*line)};
    if (textMember(*line, "kind") != kHeadKind || head.count == 0 || !isLowerHex(head.hash, kHashBytes)) return broken("is not the head of a record");
    return head;
}

}  // namespace standin::record

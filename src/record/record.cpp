// Tested by tests/src/record/record_test.cpp (every byte changed, every tail cut).
#include "record/record.h"

#include <algorithm>
#include <unordered_map>

#include <fmt/format.h>

namespace standin::record {

using model::Error;
using model::ErrorKind;
using model::Result;

namespace {

auto broken(std::string message) { return tl::unexpected(Error{ErrorKind::Damaged, std::move(message), {}, 0}); }

Result<Record> withHead(Record record, SigningKey const& key) {
    auto line = headLine({static_cast<std::int64_t>(record.entries.size()), record.head().hash, key.person()}, key);
    if (!line) return tl::unexpected(line.error());
    record.headLine = *std::move(line);
    return record;
}

using Indices = std::unordered_map<std::string, std::size_t>;  // by hash

// Why the entry cannot stand behind those before it; empty: it can.
std::string placeFault(Entry const& entry, Indices const& before, std::vector<Entry> const& entries) {
    bool const first = before.empty();
    if (first != std::holds_alternative<Opened>(entry.body)) return first ? "is not the opening of a record" : "opens a record a second time";
    if (first != entry.parents.empty()) return first ? "names a parent although it is the first" : "names no parent";
    if ((entry.parents.size() == 2) != std::holds_alternative<Merged>(entry.body)) return "has a wrong number of parents";
    if (entry.parents.size() == 2 && entry.parents[0] == entry.parents[1]) return "names one parent twice";
    std::int64_t highest = 0;
    for (auto const& parent : entry.parents) {
        auto const found = before.find(parent);
        if (found == before.end()) return "names a parent that does not stand before it; an entry is missing or was changed";
        highest = std::max(highest, entries[found->second].sequence);
    }
    return entry.sequence == highest + 1 ? "" : "has another sequence number than its place gives";
}

// All entries but the last must be the parent of another: the file has one end.
std::string looseEnd(Record const& record) {
    std::vector<bool> named(record.entries.size(), false);
    Indices indices;
    for (std::size_t i = 0; i < record.entries.size(); ++i) {
        for (auto const& parent : record.entries[i].parents) named[indices.at(parent)] = true;
        indices.emplace(record.entries[i].hash, i);
    }
    for (std::size_t i = 0; i + 1 < named.size(); ++i) {
        if (!named[i]) return fmt::format("line {}: no later entry follows from it; an entry is missing", i + 1);
    }
    return {};
}

}  // namespace

Result<Record> openRecord(Opened opened, Moment const& moment) {
    auto entry = signedEntry({{}, 1, moment.at, Body{std::move(opened)}}, moment.key);
    if (!entry) return tl::unexpected(entry.error());
    Record record;
    record.entries.push_back(*std::move(entry));
    return withHead(std::move(record), moment.key);
}

Result<Record> withEntry(Record record, Body body, Moment const& moment) {
    auto entry = signedEntry({{record.head().hash}, record.head().sequence + 1, moment.at, std::move(body)}, moment.key);
    if (!entry) return tl::unexpected(entry.error());
    return withEntry(std::move(record), *std::move(entry), moment.key);
}

Result<Record> withEntry(Record record, Entry entry, SigningKey const& key) {
    record.entries.push_back(std::move(entry));
    return withHead(std::move(record), key);
}

std::string toText(Record const& record) {
    std::string text;
    for (auto const& entry : record.entries) text += entry.line + "\n";
    return text + record.headLine + "\n";
}

Result<Record> parseRecord(std::string_view text) {
    Record record;
    Indices indices;
    std::size_t number = 0;
    if (text.empty()) return broken("is empty, so it is no record");
    while (!text.empty()) {
        ++number;
        auto const end = text.find('\n');
        if (end == std::string_view::npos) return broken(fmt::format("line {}: is cut off, its end is missing", number));
        auto const line = text.substr(0, end);
        text.remove_prefix(end + 1);
        if (text.empty()) {
            auto const head = parseHead(line);
            if (!head) return broken(fmt::format("line {} (the head): {}", number, head.error().message));
            if (record.entries.empty()) return broken("has a head but no entries");
            if (head->count != static_cast<std::int64_t>(record.entries.size())) {
                return broken(fmt::format("line {} (the head): counts {} entries, the file has {}; entries are missing", number, head->count, record.entries.size()));
            }
            if (head->hash != record.head().hash || head->by.key != record.head().by.key) return broken(fmt::format("line {} (the head): belongs to another entry than the last", number));
            record.headLine = line;
            if (auto fault = looseEnd(record); !fault.empty()) return broken(std::move(fault));
            return record;
        }
        if (record.entries.size() == kMostEntries) return broken(fmt::format("has more than {} entries", kMostEntries));
        auto entry = parseEntry(line);
        if (!entry) return broken(fmt::format("line {}: {}", number, entry.error().message));
        auto fault = placeFault(*entry, indices, record.entries);
        if (fault.empty() && indices.contains(entry->hash)) fault = "stands there twice";
        if (!fault.empty()) return broken(fmt::format("line {} ({} by {}, {}): {}", number, kindOf(entry->body), entry->by.name, entry->at, fault));
        indices.emplace(entry->hash, record.entries.size());
        record.entries.push_back(*std::move(entry));
    }
    return broken("has no head");
}

Ancestry::Ancestry(Record const& record) {
    Indices indices;
    std::size_t const words = record.entries.size() / 64 + 1;
    for (std::size_t i = 0; i < record.entries.size(); ++i) {
        Row row(words, 0);
        row[i / 64] |= std::uint64_t{1} << i % 64;
        for (auto const& parent : record.entries[i].parents) {
            auto const& before = m_rows[indices.at(parent)];
            for (std::size_t word = 0; word < words; ++word) row[word] |= before[word];
        }
        m_rows.push_back(std::move(row));
        indices.emplace(record.entries[i].hash, i);
    }
}

std::size_t indexOf(Record const& record, std::string_view hash) {
    auto const found = std::find_if(record.entries.begin(), record.entries.end(), [hash](Entry const& entry) { return entry.hash == hash; });
    return static_cast<std::size_t>(found - record.entries.begin());
}

}  // namespace standin::record

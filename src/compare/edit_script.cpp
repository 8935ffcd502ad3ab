// Common ends are taken off, then dtl runs on windows. The positions that dtl
// reports go wrong from about 4 000 differing tokens; only the order and kind of
// its edits are used and positions are counted here. A window is taken over up to
// its last kept run, so that the next one starts where both sides agree.
// Tested by tests/src/compare/wording_edit_script_test.cpp.
#include "compare/edit_script.h"

#include <algorithm>
#include <unordered_set>

#include <dtl/dtl.hpp>

#include "text/boundaries.h"

namespace standin::compare {

namespace {

class ScriptBuilder {
public:
    void add(EditKind kind, std::uint32_t count) {
        if (count == 0) return;
        if (!m_edits.empty() && m_edits.back().kind == kind) {
            m_edits.back().count += count;
        } else {
            m_edits.push_back({kind, m_reference, m_candidate, count});
        }
        if (kind != EditKind::Insert) m_reference += count;
        if (kind != EditKind::Remove) m_candidate += count;
    }
    std::vector<Edit> take() { return std::move(m_edits); }

private:
    std::vector<Edit> m_edits;
    std::uint32_t m_reference = 0;
    std::uint32_t m_candidate = 0;
};

bool shareAny(std::span<Key const> a, std::span<Key const> b) {
    std::unordered_set<Key> const known(a.begin(), a.end());
    return std::any_of(b.begin(), b.end(), [&](Key key) { return known.count(key) > 0; });
}

std::vector<EditKind> windowScript(std::span<Key const> a, std::span<Key const> b) {
    std::vector<EditKind> kinds;
    if (a.empty() || b.empty() || !shareAny(a, b)) {
        kinds.assign(a.size(), EditKind::Remove);
        kinds.insert(kinds.end(), b.size(), EditKind::Insert);
        return kinds;
    }
    // dtl exchanges the sides where the first is longer and then orders additions first; only kinds are taken.
    dtl::Diff<Key, std::vector<Key>> diff(std::vector<Key>(a.begin(), a.end()), std::vector<Key>(b.begin(), b.end()));
    diff.compose();
    auto const script = diff.getSes().getSequence();
    kinds.reserve(script.size());
    for (auto const& [key, info] : script) {
        kinds.push_back(info.type == dtl::SES_COMMON ? EditKind::Keep : info.type == dtl::SES_DELETE ? EditKind::Remove : EditKind::Insert);
    }
    return kinds;
}

}  // namespace

std::vector<Edit> editScript(std::span<Key const> reference, std::span<Key const> candidate) {
    ScriptBuilder builder;
    std::size_t prefix = 0;
    while (prefix < reference.size() && prefix < candidate.size() && reference[prefix] == candidate[prefix]) ++prefix;
    std::size_t suffix = 0;
    while (suffix < reference.size() - prefix && suffix < candidate.size() - prefix &&
           reference[reference.size() - 1 - suffix] == candidate[candidate.size() - 1 - suffix])
        ++suffix;
    builder.add(EditKind::Keep, static_cast<std::uint32_t>(prefix));
    auto a = reference.subspan(prefix, reference.size() - prefix - suffix);
    auto b = candidate.subspan(prefix, candidate.size() - prefix - suffix);
    while (!a.empty() || !b.empty()) {
        auto const windowA = a.first(std::min(a.size(), kEditWindow));
        auto const windowB = b.first(std::min(b.size(), kEditWindow));
        bool const whole = windowA.size() == a.size() && windowB.size() == b.size();
        std::vector<EditKind> kinds = windowScript(windowA, windowB);
        if (!whole) {
            auto const lastKeep = std::find(kinds.rbegin(), kinds.rend(), EditKind::Keep);
            if (lastKeep != kinds.rend()) kinds.erase(lastKeep.base(), kinds.end());
        }
        std::size_t usedA = 0;
        std::size_t usedB = 0;
        for (EditKind const kind : kinds) {
            builder.add(kind, 1);
            if (kind != EditKind::Insert) ++usedA;
            if (kind != EditKind::Remove) ++usedB;
        }
        a = a.subspan(usedA);
        b = b.subspan(usedB);
    }
    builder.add(EditKind::Keep, static_cast<std::uint32_t>(suffix));
    return builder.take();
}

namespace {

// The text as pieces, each a word with the white space behind it; white space in
// front of the first word is a piece of its own.
std::vector<std::string_view> piecesOf(std::string_view text) {
    std::vector<std::string_view> pieces;
    auto const words = text::words(text);
    if (words.empty()) {
        if (!text.empty()) pieces.push_back(text);
        return pieces;
    }
    auto const offset = [&](std::string_view word) { return static_cast<std::size_t>(word.data() - text.data()); };
    if (std::size_t const first = offset(words.front()); first > 0) pieces.push_back(text.substr(0, first));
    for (std::size_t i = 0; i < words.size(); ++i) {
        std::size_t const begin = offset(words[i]);
        std::size_t const end = i + 1 < words.size() ? offset(words[i + 1]) : text.size();
        pieces.push_back(text.substr(begin, end - begin));
    }
    return pieces;
}

}  // namespace

std::vector<WordEdit> wordEdits(std::string_view reference, std::string_view candidate) {
    auto const piecesA = piecesOf(reference);
    auto const piecesB = piecesOf(candidate);
    std::vector<Key> keysA;
    std::vector<Key> keysB;
    for (auto const piece : piecesA) keysA.push_back(hashOf(piece));
    for (auto const piece : piecesB) keysB.push_back(hashOf(piece));
    std::vector<WordEdit> result;
    for (Edit const& edit : editScript(keysA, keysB)) {
        WordEdit word{edit.kind, {}};
        for (std::uint32_t i = 0; i < edit.count; ++i) {
            word.text += edit.kind == EditKind::Insert ? piecesB[edit.candidate + i] : piecesA[edit.reference + i];
        }
        result.push_back(std::move(word));
    }
    return result;
}

}  // namespace standin::compare

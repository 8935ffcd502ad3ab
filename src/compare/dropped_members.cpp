// The edit script gives runs that only one sentence has. A run is a member of a list where
// a word that joins stands at one of its ends, a slash beside it, or commas around it. Where
// words repeat ("A x and B x" against "A x") the run may lie a few words further on: it is
// moved as far as it reads the same. The last of a list takes its "and" along to the one before
// ("A, B and C" against "A and B"), which no run shows: it is told by the words themselves.
// Tested by tests/src/compare/wording_classes_test.cpp.
#include "compare/dropped_members.h"

#include <algorithm>
#include <cstddef>
#include <iterator>
#include <string>
#include <string_view>
#include <vector>

#include "compare/edit_script.h"

namespace standin::compare {

namespace {

using Kind = Token::Kind;
using Joint = ReadSentence::Joint;

constexpr std::size_t kLongestMember = 10;  // words
constexpr std::size_t kLongestSubstitute = 3;  // words
constexpr std::size_t kLongestBeside = 4;   // words of the member next to it
constexpr std::size_t kMostLeftOut = 6;     // words, of a sentence that is part of another
constexpr std::size_t kFewestKept = 2;      // of it; one word alone is part of many a sentence
constexpr std::size_t kMostTokens = 400;    // longer texts are no sentences

bool joins(Token const& token) {
    static constexpr std::string_view kWords[] = {"and",  "or", "plus", "together", "well", "und", "oder", "sowie",  "et",   "ou",     "и",    "или", "및",
                                                  "또는", "和", "与",   "與",       "及",   "或",  "或者", "および", "及び", "または", "又は", "と"};
    return token.kind == Kind::Word && isOneOf(token.key, kWords);
}

// Words that a sentence begins or goes on with and that name nothing ("and thus", "and so on").
bool namesNothing(Token const& token) {
    static constexpr std::string_view kWords[] = {"so", "on", "forth", "hence", "consequently", "accordingly", "both", "as", "well", "it", "is", "will", "be", "other", "more"};
    return joins(token) || (token.kind == Kind::Word && isOneOf(token.key, kWords));
}

bool joinsSomething(ReadSentence const& sentence) {
    auto const isJoint = [](Joint joint) { return joint != Joint::None; };
    return std::any_of(sentence.joints.begin(), sentence.joints.end(), isJoint) || std::any_of(sentence.tokens.begin(), sentence.tokens.end(), joins);
}

struct Run {
    std::size_t begin = 0;
    std::size_t end = 0;
};

// Of the tokens of a sentence, ascending.
using Keys = std::vector<std::string_view>;

Keys keysOf(ReadSentence const& sentence) {
    Keys keys;
    keys.reserve(sentence.tokens.size());
    for (Token const& token : sentence.tokens) keys.push_back(token.key);
    std::sort(keys.begin(), keys.end());
    return keys;
}

class Lists {
public:
    Lists(ReadSentence const& sentence, Keys const& keys, Keys const& others) : m_sentence(sentence), m_tokens(sentence.tokens) {
        std::set_difference(keys.begin(), keys.end(), others.begin(), others.end(), std::back_inserter(m_own));
    }

    [[nodiscard]] bool hasOwnWords() const { return !m_own.empty(); }

    // A run that the other sentence does not have, and what it could also be.
    [[nodiscard]] bool isMember(Run run) const {
        if (run.end - run.begin > kLongestMember || !namesSomething(run)) return false;
        for (Run left = run;; --left.begin, --left.end) {
            if (isJoined(left)) return true;
            if (left.begin == 0 || !(m_tokens[left.begin - 1] == m_tokens[left.end - 1])) break;
        }
        for (Run right = run; right.end < m_tokens.size() && m_tokens[right.begin] == m_tokens[right.end];) {
            ++right.begin;
            ++right.end;
            if (isJoined(right)) return true;
        }
        return false;
    }

    // "A, B [and C]", "A, B[, C]": nothing but the last of a list, which had more commas.
    [[nodiscard]] bool dropsLastOf(Lists const& shorter) const {
        if (shorter.hasOwnWords() || commas() <= shorter.commas()) return false;
        for (Run run; run.begin < m_tokens.size(); run.begin = run.end + 1) {
            for (run.end = run.begin; run.end < m_tokens.size() && isOwn(m_tokens[run.end]);) ++run.end;
            if (run.end - run.begin <= kLongestMember && namesSomething(run) && isLastOfList(run)) return true;
        }
        return false;
    }

    // Words of this sentence alone beside a word, slash or comma that joins, or behind the last of several commas.
    [[nodiscard]] bool isPlaceInList(Run run) const {
        if (run.end - run.begin > kLongestSubstitute || !namesSomething(run)) return false;
        bool const words = std::all_of(m_tokens.begin() + static_cast<std::ptrdiff_t>(run.begin), m_tokens.begin() + static_cast<std::ptrdiff_t>(run.end),
                                       [](Token const& token) { return token.kind == Kind::Word && !namesNothing(token); });
        bool const behindWord = run.begin > 1 && joins(m_tokens[run.begin - 1]);
        bool const beforeWord = run.end + 1 < m_tokens.size() && joins(m_tokens[run.end]);
        return words && (behindWord || beforeWord || isJoined(run) || isLastOfList(run));
    }

private:
    [[nodiscard]] bool isOwn(Token const& token) const { return std::binary_search(m_own.begin(), m_own.end(), std::string_view(token.key)); }
    [[nodiscard]] std::ptrdiff_t commas() const { return std::count(m_sentence.joints.begin(), m_sentence.joints.end(), Joint::Comma); }

    // A comma stands before the member in front of it.
    [[nodiscard]] bool isLastOfList(Run run) const {
        bool const word = joins(m_tokens[run.begin]) || (run.begin > 0 && joins(m_tokens[run.begin - 1]));
        bool const atEnd = run.end == m_tokens.size() && jointBefore(run.begin) == Joint::Comma;
        if (!word && !atEnd) return false;
        std::size_t const before = word && !joins(m_tokens[run.begin]) ? run.begin - 1 : run.begin;
        for (std::size_t k = before; k-- > 1 && before - k <= kLongestBeside;) {
            if (jointBefore(k) == Joint::Comma) return true;
        }
        return false;
    }

    // By a word; values and symbols are counted where they stand.
    [[nodiscard]] bool namesSomething(Run run) const {
        return std::any_of(m_tokens.begin() + static_cast<std::ptrdiff_t>(run.begin), m_tokens.begin() + static_cast<std::ptrdiff_t>(run.end),
                           [this](Token const& token) { return token.kind == Kind::Word && !namesNothing(token) && isOwn(token); });
    }

    [[nodiscard]] Joint jointBefore(std::size_t at) const { return at < m_sentence.joints.size() ? m_sentence.joints[at] : Joint::None; }
    [[nodiscard]] bool hasJoiningWord(std::size_t at) const { return at < m_tokens.size() && joins(m_tokens[at]); }

    [[nodiscard]] bool isJoined(Run run) const {
        // "X [and Y]", "[X and] Y": something is left beside the word.
        bool const behind = beginsByJoining(run) && run.begin > 0;
        bool const before = joins(m_tokens[run.end - 1]) && run.end < m_tokens.size();
        if (behind || before) return true;
        if (jointBefore(run.begin) == Joint::Slash || (run.end < m_tokens.size() && jointBefore(run.end) == Joint::Slash)) return true;
        bool const commaBefore = jointBefore(run.begin) == Joint::Comma && run.begin > 0;
        bool const commaBehind = jointBefore(run.end) == Joint::Comma;
        if (commaBefore) return commaBehind || hasJoiningWord(run.end);
        return commaBehind && goesOnAsList(run.end);
    }

    // "and Y", "as well as Y"
    [[nodiscard]] bool beginsByJoining(Run run) const {
        for (std::size_t k = run.begin; k < run.end && namesNothing(m_tokens[k]); ++k) {
            if (joins(m_tokens[k])) return true;
        }
        return false;
    }

    // "[X,] Y and Z"
    [[nodiscard]] bool goesOnAsList(std::size_t at) const {
        for (std::size_t k = at + 1; k < m_tokens.size() && k <= at + kLongestBeside; ++k) {
            if (jointBefore(k) == Joint::Comma || joins(m_tokens[k])) return true;
        }
        return false;
    }

    ReadSentence const& m_sentence;
    std::vector<Token> const& m_tokens;
    Keys m_own;  // what the other sentence does not have, or not as often; ascending
};

std::vector<Edit> scriptOf(ReadSentence const& reference, ReadSentence const& candidate) {
    std::vector<Key> a;
    std::vector<Key> b;
    for (Token const& token : reference.tokens) a.push_back(hashOf(token.key));
    for (Token const& token : candidate.tokens) b.push_back(hashOf(token.key));
    return editScript(a, b);
}

// "Lade- und Entladestrom" here, "Ladestrom" there: a part of a word stands for the whole before "and".
bool isWholeOfPart(std::vector<Token> const& tokens, std::size_t at, Token const& whole) {
    constexpr std::size_t kShortestPart = 3;
    std::string_view part = tokens[at].key;
    if (part.ends_with('-')) part.remove_suffix(1);
    std::string_view const last = tokens[at + 2].key;
    if (!joins(tokens[at + 1]) || part.size() < kShortestPart || !std::string_view(whole.key).starts_with(part)) return false;
    std::string_view const rest = std::string_view(whole.key).substr(part.size());
    return rest.size() >= kShortestPart && last.size() > rest.size() && last.ends_with(rest);
}

// Such a word in place of the two.
bool dropsCompound(std::vector<Edit> const& script, ReadSentence const& reference, ReadSentence const& candidate) {
    for (std::size_t i = 1; i < script.size(); ++i) {
        Edit const* removed = &script[i - 1];
        Edit const* inserted = &script[i];
        if (removed->kind == EditKind::Insert) std::swap(removed, inserted);
        if (removed->kind != EditKind::Remove || inserted->kind != EditKind::Insert) continue;
        if (removed->count == 3 && inserted->count == 1 && isWholeOfPart(reference.tokens, removed->reference, candidate.tokens[inserted->candidate])) return true;
        if (removed->count == 1 && inserted->count == 3 && isWholeOfPart(candidate.tokens, inserted->candidate, reference.tokens[removed->reference])) return true;
    }
    return false;
}

std::string joinedKeys(std::vector<Token> const& tokens, Run run) {
    std::string joined;
    for (std::size_t at = run.begin; at < run.end; ++at) joined += tokens[at].key;
    return joined;
}

// "protecting" and "protection", "over voltage" and "overvoltage"; not "overvoltage" and "overcurrent".
bool haveOneStem(std::string const& a, std::string const& b) {
    constexpr std::size_t kShortestStem = 4;
    auto const [end, other] = std::mismatch(a.begin(), a.end(), b.begin(), b.end());
    auto const common = static_cast<std::size_t>(end - a.begin());
    return common >= kShortestStem && 3 * common >= 2 * std::min(a.size(), b.size());
}

// "the lamp and the bell" here, "the lamp and the fan" there: the sentence is the same but for one of several.
bool substitutesMember(std::vector<Edit> const& script, Lists const& left, Lists const& right, ReadSentence const& reference, ReadSentence const& candidate) {
    Run removed;
    Run inserted;
    for (Edit const& edit : script) {
        if (edit.kind == EditKind::Keep) continue;
        Run& run = edit.kind == EditKind::Remove ? removed : inserted;
        if (run.end > 0) return false;
        std::size_t const begin = edit.kind == EditKind::Remove ? edit.reference : edit.candidate;
        run = {begin, begin + edit.count};
    }
    if (removed.end == 0 || inserted.end == 0 || removed.begin != inserted.begin) return false;
    return left.isPlaceInList(removed) && right.isPlaceInList(inserted) && !haveOneStem(joinedKeys(reference.tokens, removed), joinedKeys(candidate.tokens, inserted));
}

bool comesLater(ReadSentence const& sentence, ReadSentence const& other) {
    auto const byKey = [](Token const& a, Token const& b) { return a.key < b.key; };
    if (sentence.tokens.size() != other.tokens.size()) return sentence.tokens.size() > other.tokens.size();
    return std::lexicographical_compare(other.tokens.begin(), other.tokens.end(), sentence.tokens.begin(), sentence.tokens.end(), byKey);
}

// At least half of the shorter sentence is kept.
bool saysTheSameOtherwise(std::vector<Edit> const& script, std::size_t shorter) {
    std::size_t kept = 0;
    for (Edit const& edit : script) kept += edit.kind == EditKind::Keep ? edit.count : 0;
    return 2 * kept >= shorter;
}

}  // namespace

bool dropsMember(ReadSentence const& reference, ReadSentence const& candidate) {
    if (!joinsSomething(reference) && !joinsSomething(candidate)) return false;
    // Ties in the edit script fall the same way when the sheets are exchanged.
    if (comesLater(reference, candidate)) return dropsMember(candidate, reference);
    if (reference.tokens.size() > kMostTokens || candidate.tokens.size() > kMostTokens) return false;
    Keys const keys = keysOf(reference);
    Keys const others = keysOf(candidate);
    Lists const left(reference, keys, others);
    Lists const right(candidate, others, keys);
    if (!left.hasOwnWords() && !right.hasOwnWords()) return false;
    auto const script = scriptOf(reference, candidate);
    if (!saysTheSameOtherwise(script, std::min(reference.tokens.size(), candidate.tokens.size()))) return false;
    for (std::size_t i = 0; i < script.size(); ++i) {
        Edit const& edit = script[i];
        bool const alone = (i == 0 || script[i - 1].kind == EditKind::Keep) && (i + 1 == script.size() || script[i + 1].kind == EditKind::Keep);
        if (edit.kind == EditKind::Keep || !alone) continue;
        bool const removed = edit.kind == EditKind::Remove;
        std::size_t const begin = removed ? edit.reference : edit.candidate;
        if ((removed ? left : right).isMember({begin, begin + edit.count})) return true;
    }
    return left.dropsLastOf(right) || right.dropsLastOf(left) || dropsCompound(script, reference, candidate);
}

bool substitutesMember(ReadSentence const& reference, ReadSentence const& candidate) {
    if (!joinsSomething(reference) || !joinsSomething(candidate)) return false;
    if (std::max(reference.tokens.size(), candidate.tokens.size()) > kMostTokens) return false;
    Keys const keys = keysOf(reference);
    Keys const others = keysOf(candidate);
    return substitutesMember(scriptOf(reference, candidate), Lists(reference, keys, others), Lists(candidate, others, keys), reference, candidate);
}

bool isPartOf(ReadSentence const& reference, ReadSentence const& candidate) {
    bool const shorter = reference.tokens.size() < candidate.tokens.size();
    auto const& part = shorter ? reference.tokens : candidate.tokens;
    auto const& whole = shorter ? candidate.tokens : reference.tokens;
    if (part.size() < kFewestKept || whole.size() - part.size() > kMostLeftOut) return false;
    std::size_t found = 0;
    for (Token const& token : whole) {
        if (found < part.size() && token == part[found]) ++found;
    }
    return found == part.size();
}

}  // namespace standin::compare

// Both sentences are read into tokens and counts of meanings. Equal tokens:
// editorial. Else each class is raised by what one side says and the other does
// not; rules keep one change from being called by several names ("must not" is no
// negation on top of a prohibition).
// Tested by tests/src/compare/wording_classes_test.cpp.
#include "compare/wording_classes.h"

#include <algorithm>
#include <array>
#include <iterator>
#include <set>

#include "compare/conditions.h"
#include "compare/contrasting_words.h"
#include "compare/dropped_members.h"
#include "compare/edit_script.h"
#include "compare/printed_marks.h"
#include "quantity/condition.h"
#include "text/boundaries.h"
#include "text/fold.h"
#include "text/utf8.h"

namespace standin::compare {

namespace {

using model::Relation;
using model::WordingClass;
using Kind = Token::Kind;

// "QX17-P" and "QX17x" are of the QX17 series.
void addFamilies(SheetNames& names, std::string_view part) {
    constexpr std::size_t kShortest = 4;
    std::string const lower = text::asciiLower(part);
    std::string_view stem = lower;
    while (!stem.empty() && stem.back() == 'x') stem.remove_suffix(1);
    for (std::string_view const family : {std::string_view(lower), stem, std::string_view(lower).substr(0, std::min(lower.find('-'), lower.size()))}) {
        std::string key(family);
        std::erase_if(key, [](char c) { return c == '-' || c == ' '; });
        bool const names4 = key.size() >= kShortest && std::any_of(key.begin(), key.end(), text::isAsciiDigit) && std::any_of(key.begin(), key.end(), text::isAsciiLetter);
        if (names4 && std::find(names.families.begin(), names.families.end(), key) == names.families.end()) names.families.push_back(std::move(key));
    }
}

// Symbols of the rows by their one id of the vocabulary; none where a symbol or an id has several.
std::map<std::string, std::string> symbolsById(model::Datasheet const& sheet) {
    std::map<std::string, std::set<std::string>> ofId;
    std::map<std::string, std::set<std::string>> ofSymbol;
    for (model::Parameter const& p : sheet.parameters) {
        std::string const symbol = quantity::symbolKey(p.symbol);
        if (symbol.size() < 2) continue;
        ofId[p.canonical].insert(symbol);
        ofSymbol[symbol].insert(p.canonical);
    }
    std::map<std::string, std::string> found;
    for (auto const& [id, symbols] : ofId) {
        if (!id.empty() && symbols.size() == 1 && ofSymbol[*symbols.begin()].size() == 1) found[id] = *symbols.begin();
    }
    return found;
}

// "VCH" here and "VCHA" there, of rows with one id, where neither sheet has the other's symbol.
void joinSymbols(SheetNames& candidate, model::Datasheet const& referenceSheet, model::Datasheet const& candidateSheet) {
    auto const has = [](model::Datasheet const& sheet, std::string const& symbol) {
        return std::any_of(sheet.parameters.begin(), sheet.parameters.end(), [&](model::Parameter const& p) { return quantity::symbolKey(p.symbol) == symbol; });
    };
    auto const ours = symbolsById(referenceSheet);
    for (auto const& [id, symbol] : symbolsById(candidateSheet)) {
        auto const found = ours.find(id);
        if (found == ours.end() || found->second == symbol || has(referenceSheet, symbol) || has(candidateSheet, found->second)) continue;
        candidate.symbols[symbol] = found->second;
    }
}

SheetNames namesOf(model::Datasheet const& sheet) {
    SheetNames names;
    for (std::string const& part : sheet.document.partNumbers) addFamilies(names, part);
    for (std::string const& part : sheet.document.partNumbers) {
        std::string key;
        for (char const c : text::asciiLower(part)) {
            if (c != '-' && c != ' ') key.push_back(c);
        }
        bool const digit = std::any_of(key.begin(), key.end(), text::isAsciiDigit);
        if (key.size() >= 4 && digit) names.parts.push_back(std::move(key));
    }
    // The longest first: "AB1234A" before "AB1234".
    std::stable_sort(names.parts.begin(), names.parts.end(), [](std::string const& a, std::string const& b) { return a.size() > b.size(); });
    if (!sheet.document.maker.empty()) {
        std::vector<std::string> words;
        std::string const folded = text::foldForComparison(sheet.document.maker);
        for (auto const word : text::words(folded)) words.push_back(text::lowerCase(word));
        if (!words.empty() && folded.size() >= 3) names.makers.push_back(std::move(words));
    }
    names.revision = text::asciiLower(sheet.document.revision);
    for (model::Section const& section : sheet.sections) {
        if (!section.title.empty() && text::isAsciiDigit(section.title.front())) names.titles.push_back(section.title);
    }
    for (model::Pin const& pin : sheet.pins) {
        std::string const name = text::asciiLower(text::foldForComparison(pin.name));
        if (!name.empty() && std::find(names.pins.begin(), names.pins.end(), name) == names.pins.end()) names.pins.push_back(name);
    }
    return names;
}

void addOrderedParts(SheetNames& names, std::vector<std::string> const& others, model::Datasheet const& sheet) {
    for (std::string const& part : others) {
        if (std::find(names.parts.begin(), names.parts.end(), part) != names.parts.end()) continue;
        bool const ordered = std::any_of(sheet.ordering.begin(), sheet.ordering.end(), [&](model::OrderingLine const& line) {
            std::string code = text::asciiLower(line.code);
            code.erase(std::remove_if(code.begin(), code.end(), [](char c) { return c == '-' || c == ' '; }), code.end());
            return code.compare(0, part.size(), part) == 0;
        });
        if (ordered) names.parts.push_back(part);
    }
    std::stable_sort(names.parts.begin(), names.parts.end(), [](std::string const& a, std::string const& b) { return a.size() > b.size(); });
}

// "Rev. 1.7", "Revision B": the sheet's own revision and nothing else. "Version B" may be a
// version of the part, unless the sheet says elsewhere that it is its own.
bool isRevision(std::string_view printed, SheetNames const& names) {
    constexpr std::size_t kLongest = 20;
    if (printed.size() > kLongest) return false;
    std::string const lower = text::asciiLower(printed);
    bool revision = false;
    bool version = false;
    std::vector<std::string_view> numbers;
    for (std::string_view const word : text::words(lower)) {
        bool const sign = word.size() == 1 && !text::isAsciiLetter(word.front()) && !text::isAsciiDigit(word.front());
        bool const number =
            std::all_of(word.begin(), word.end(), [](char c) { return text::isAsciiDigit(c) || c == '.'; }) || (word.size() == 1 && text::isAsciiLetter(word.front()));
        if (word == "rev" || word == "revision") revision = true;
        else if (word == "version" || word == "ver") version = true;
        else if (number && !sign) numbers.push_back(word);
        else if (!sign) return false;
    }
    if (numbers.size() != 1) return false;
    return version ? numbers.front() == names.revision : revision;
}

std::string withoutSpaces(std::string_view printed) {
    std::string folded = text::foldForComparison(printed);
    folded.erase(std::remove(folded.begin(), folded.end(), ' '), folded.end());
    return folded;
}

// Of the tokens of a sentence, which outlives them.
using Keys = std::vector<std::string_view>;

template <class Wanted>
Keys keysOf(ReadSentence const& sentence, Wanted const& wanted) {
    auto const& tokens = sentence.tokens;
    Keys keys;
    auto const count = std::count_if(tokens.begin(), tokens.end(), wanted);
    if (count == 0) return keys;
    keys.reserve(static_cast<std::size_t>(count));
    for (Token const& token : tokens) {
        if (wanted(token)) keys.push_back(token.key);
    }
    return keys;
}

Keys keysOfKind(ReadSentence const& sentence, Kind kind) {
    return keysOf(sentence, [kind](Token const& token) { return token.kind == kind; });
}

Keys sorted(Keys keys) {
    std::sort(keys.begin(), keys.end());
    return keys;
}

// Keys of `a` that `b` does not have, equal ones counted.
Keys only(Keys const& a, Keys const& b) {
    if (a.empty() || b.empty()) return sorted(a);
    Keys const left = sorted(a);
    Keys const right = sorted(b);
    Keys difference;
    std::set_difference(left.begin(), left.end(), right.begin(), right.end(), std::back_inserter(difference));
    return difference;
}

// "over charge", "over-charge" and "overcharge": runs that differ only in where
// words end are the same.
bool sameButForJoins(std::vector<Token> const& a, std::vector<Token> const& b) {
    std::vector<Key> keysA;
    std::vector<Key> keysB;
    for (Token const& token : a) keysA.push_back(hashOf(token.key));
    for (Token const& token : b) keysB.push_back(hashOf(token.key));
    std::string removed;
    std::string inserted;
    bool words = true;
    for (Edit const& edit : editScript(keysA, keysB)) {
        if (edit.kind == EditKind::Keep) {
            if (removed != inserted || !words) return false;
            removed.clear();
            inserted.clear();
            continue;
        }
        for (std::uint32_t i = 0; i < edit.count; ++i) {
            Token const& token = edit.kind == EditKind::Remove ? a[edit.reference + i] : b[edit.candidate + i];
            words = words && token.kind == Kind::Word;
            (edit.kind == EditKind::Remove ? removed : inserted) += token.key;
        }
    }
    return removed == inserted && words;
}

// "available" and "unavailable".
bool isNegatedForm(std::string_view word, std::string_view negated) {
    for (std::string_view const prefix : {"un", "non", "in", "im", "dis", "de"}) {
        if (word.size() >= 3 && negated.size() == word.size() + prefix.size() && negated.substr(0, prefix.size()) == prefix && negated.substr(prefix.size()) == word) return true;
    }
    return false;
}

class Classifier {
public:
    Classifier(ReadSentence const& reference, ReadSentence const& candidate) : m_reference(reference), m_candidate(candidate) {}

    std::vector<WordingClass> classes() {
        findPermissions();
        findPins();
        findNumbers();
        findOrdering();
        findConnectives();
        findTriggers();
        findConditions();
        findNegations();
        findGrades();
        findModality();
        findScope();
        findContrasts();
        findMembers();
        findTimes();
        findNewSuffixes();
        return inOrder();
    }

private:
    static constexpr std::initializer_list<Meaning> kStates = {Meaning::Charging, Meaning::Discharging, Meaning::Overcharge, Meaning::Overdischarge};

    [[nodiscard]] bool differs(Meaning meaning) const {
        int const a = m_reference.count(meaning);
        int const b = m_candidate.count(meaning);
        if (a == b) return false;
        return countingOf(meaning) == Counting::Often ? a != b : (a > 0) != (b > 0);
    }
    [[nodiscard]] bool any(std::initializer_list<Meaning> meanings) const {
        return std::any_of(meanings.begin(), meanings.end(), [&](Meaning meaning) { return differs(meaning); });
    }
    [[nodiscard]] bool says(Meaning meaning) const { return m_reference.has(meaning) || m_candidate.has(meaning); }
    [[nodiscard]] bool sayBoth(Meaning meaning) const { return m_reference.has(meaning) && m_candidate.has(meaning); }
    void raise(WordingClass wording) { m_raised[static_cast<std::size_t>(wording)] = true; }
    [[nodiscard]] bool raised(WordingClass wording) const { return m_raised[static_cast<std::size_t>(wording)]; }
    [[nodiscard]] bool raisedAny() const {
        return std::any_of(m_raised.begin(), m_raised.end(), [](bool set) { return set; });
    }

    void findPermissions() {
        auto const letting = [](ReadSentence const& sentence) { return sentence.count(Meaning::Permitted) + sentence.count(Meaning::Lets); };
        bool const permitted = differs(Meaning::Permitted) && letting(m_reference) != letting(m_candidate);
        if (permitted || any({Meaning::Prohibition, Meaning::Optional})) raise(WordingClass::Perm);
    }

    void findPins() {
        bool const names = changed(Kind::Pin);
        bool const pinTalk = m_reference.speaksOfPins || m_candidate.speaksOfPins;
        bool const handling = any({Meaning::LeftOpen, Meaning::Tied, Meaning::Unconnected});
        bool const openAgainstTied = differs(Meaning::LeftOpen) && differs(Meaning::Tied);
        bool const connecting = says(Meaning::Tied) || says(Meaning::LeftOpen);
        bool const form = any({Meaning::High, Meaning::Low, Meaning::Cmos, Meaning::OpenDrain, Meaning::PushPull, Meaning::NChannel, Meaning::PChannel, Meaning::On, Meaning::Off,
                               Meaning::PullUp, Meaning::PullDown}) ||
                          opposed();
        bool const node = sayBoth(Meaning::Tied) && pinTalk && any({Meaning::Charger, Meaning::Load, Meaning::Cell, Meaning::SenseResistor});
        m_nodeChange = node;
        if (names && (connecting || !pinNamesAreSymbols())) raise(WordingClass::Pin);
        else if (names) raise(WordingClass::Num);
        if ((handling && pinTalk) || openAgainstTied || form || node) raise(WordingClass::Pin);
    }

    // One side says "positive" where the other says "negative". Without its opposite such a word is
    // left out where it is understood ("a regulator", "a positive regulator"), unless a pin is tied to it.
    [[nodiscard]] bool opposed() const {
        static constexpr std::pair<Meaning, Meaning> kOpposites[] = {{Meaning::Positive, Meaning::Negative},
                                                                     {Meaning::Series, Meaning::Parallel},
                                                                     {Meaning::Source, Meaning::Sink},
                                                                     {Meaning::Internal, Meaning::External},
                                                                     {Meaning::Input, Meaning::Output}};
        auto const more = [&](Meaning meaning) { return m_reference.count(meaning) - m_candidate.count(meaning); };
        return std::any_of(std::begin(kOpposites), std::end(kOpposites), [&](auto const& pair) {
            bool const either = differs(pair.first) || differs(pair.second);
            bool const sameLength = m_reference.tokens.size() == m_candidate.tokens.size();
            bool const place = pair.first == Meaning::Internal || pair.first == Meaning::Input;
            if (says(Meaning::Tied) && either && (sameLength || !place)) return true;
            return (more(pair.first) > 0 && more(pair.second) < 0) || (more(pair.first) < 0 && more(pair.second) > 0);
        });
    }

    // "VDD below 1.5 V": a pin's name in a sentence about its voltage.
    [[nodiscard]] bool pinNamesAreSymbols() const {
        return says(Meaning::Above) || says(Meaning::Below) || says(Meaning::AtLeast) || says(Meaning::AtMost) || m_reference.hasToken(Kind::Number) ||
               m_candidate.hasToken(Kind::Number);
    }

    [[nodiscard]] bool changed(Kind kind) const {
        auto const a = keysOfKind(m_reference, kind);
        auto const b = keysOfKind(m_candidate, kind);
        if (a == b) return false;
        if (a.size() != b.size() || sorted(a) != sorted(b)) return true;
        // The same ones in another order: "A to B" against "B to A", unless the whole sentence is turned around.
        return restEqual(kind);
    }

    [[nodiscard]] bool restEqual(Kind kind) const {
        auto const isRest = [kind](Token const& token) { return token.kind != kind; };
        return keysOf(m_reference, isRest) == keysOf(m_candidate, isRest);
    }

    // "The QX17 is a lamp driver", "This device is a lamp driver", "The “17” is a lamp driver": one sentence names
    // the one part of its sheet, or its maker, and the other does not. Of several parts each counts.
    [[nodiscard]] bool nameThePartAlike() const {
        if (m_reference.tokens.empty() || m_candidate.tokens.empty()) return false;
        auto const isPart = [](Token const& token) { return token.key == kOwnPart || token.key.starts_with(kOwnPart + "="); };
        auto const isFurther = [&](Token const& token) { return token.kind == Kind::OwnName && !isPart(token) && token.key != kOwnMaker; };
        if (sorted(keysOf(m_reference, isFurther)) != sorted(keysOf(m_candidate, isFurther))) return false;
        auto const a = sorted(keysOf(m_reference, isPart));
        auto const b = sorted(keysOf(m_candidate, isPart));
        if (a == b || m_reference.usesNickname || m_candidate.usesNickname) return true;
        if (m_reference.count(Meaning::And) != m_candidate.count(Meaning::And) || m_reference.count(Meaning::Or) != m_candidate.count(Meaning::Or)) return false;
        return (b.empty() && m_reference.isOfOnePart) || (a.empty() && m_candidate.isOfOnePart);
    }

    void findNumbers() {
        if (changed(Kind::Number)) {
            auto const a = only(keysOfKind(m_reference, Kind::Number), keysOfKind(m_candidate, Kind::Number));
            auto const b = only(keysOfKind(m_candidate, Kind::Number), keysOfKind(m_reference, Kind::Number));
            auto const isTemperature = [](std::string_view key) { return key.size() > 4 && key.substr(key.size() - 4) == "degC"; };
            bool const temperatures = std::all_of(a.begin(), a.end(), isTemperature) && std::all_of(b.begin(), b.end(), isTemperature) && a.size() + b.size() > 0;
            raise(temperatures ? WordingClass::Temp : WordingClass::Num);
            auto const isDuration = [](std::string_view key) { return key.size() > 2 && key.back() == 's' && text::isAsciiDigit(key[key.size() - 2]); };
            m_durationOnOneSide = a.empty() != b.empty() && std::all_of(a.begin(), a.end(), isDuration) && std::all_of(b.begin(), b.end(), isDuration);
        }
        if (changed(Kind::Symbol)) {
            auto const a = only(keysOfKind(m_reference, Kind::Symbol), keysOfKind(m_candidate, Kind::Symbol));
            auto const b = only(keysOfKind(m_candidate, Kind::Symbol), keysOfKind(m_reference, Kind::Symbol));
            auto const isTemperature = [](std::string_view key) { return key == "ta" || key == "tj" || key == "tc"; };
            bool const temperatures = std::all_of(a.begin(), a.end(), isTemperature) && std::all_of(b.begin(), b.end(), isTemperature);
            raise(temperatures ? WordingClass::Temp : WordingClass::Num);
        }
        if (any({Meaning::RoomTemperature, Meaning::FullTemperature})) raise(WordingClass::Temp);
        if (changed(Kind::OwnName) && !nameThePartAlike()) raise(WordingClass::Ord);
        bool const limits = any({Meaning::Maximum, Meaning::Minimum}) && !differs(Meaning::Typical);
        if (limits || any({Meaning::Above, Meaning::Below, Meaning::AtLeast, Meaning::AtMost, Meaning::Rising, Meaning::Falling})) raise(WordingClass::Num);
        auto const signs = [](ReadSentence const& sentence) {
            auto keys = keysOfKind(sentence, Kind::Sign);
            keys.erase(std::remove(keys.begin(), keys.end(), "~"), keys.end());
            return sorted(keys);
        };
        if (signs(m_reference) != signs(m_candidate)) raise(WordingClass::Num);
    }

    void findOrdering() {
        bool const something = raised(WordingClass::Num) || raised(WordingClass::Temp) || changed(Kind::Symbol);
        if (differs(Meaning::Suffix) || (sayBoth(Meaning::Suffix) && something)) raise(WordingClass::Ord);
    }

    void findConnectives() {
        bool const bothAgainstEither = differs(Meaning::Both) && differs(Meaning::Either);
        if (any({Meaning::Or, Meaning::Until, Meaning::Unless, Meaning::Either}) || bothAgainstEither) raise(WordingClass::Conn);
    }

    void findTriggers() {
        if (m_nodeChange) return;
        if (any({Meaning::Automatic, Meaning::Manual, Meaning::Latched, Meaning::Charger, Meaning::Load, Meaning::Removed, Meaning::SenseResistor})) raise(WordingClass::Trig);
    }

    void findConditions() {
        // "depending on the version" in one sheet only; elsewhere "set by" may say the same.
        bool const depends = differs(Meaning::Depends) && isPartOf(m_reference, m_candidate);
        bool const conditions = depends || any({Meaning::Except, Meaning::Whether});
        int const ifsA = m_reference.count(Meaning::If) + m_reference.count(Meaning::When);
        int const ifsB = m_candidate.count(Meaning::If) + m_candidate.count(Meaning::When);
        bool const added = (ifsA == 0) != (ifsB == 0) && !raised(WordingClass::Trig) && !raised(WordingClass::Conn);
        if (conditions || added) raise(WordingClass::Cond);
    }

    void findNegations() {
        bool const negated = any({Meaning::Not, Meaning::Disabled});
        if (negated || saysNegatedForms()) raise(WordingClass::Neg);
    }

    // `visit` sees each word that the reference alone says with each that the candidate alone says.
    template <class Visit>
    void visitOtherWords(Visit const& visit) const {
        constexpr std::size_t kMostWords = 40;
        if (!m_reference.hasToken(Kind::Word) || !m_candidate.hasToken(Kind::Word)) return;
        auto const words = keysOfKind(m_reference, Kind::Word);
        auto const others = keysOfKind(m_candidate, Kind::Word);
        auto const a = only(words, others);
        auto const b = only(others, words);
        if (a.size() > kMostWords || b.size() > kMostWords) return;
        for (std::string_view const left : a) {
            for (std::string_view const right : b) visit(left, right);
        }
    }

    // One side has a word and the other its negated form.
    [[nodiscard]] bool saysNegatedForms() const {
        bool says = false;
        visitOtherWords([&says](std::string_view left, std::string_view right) { says = says || isNegatedForm(left, right) || isNegatedForm(right, left); });
        return says;
    }

    // "permanent" here and "temporary" there.
    void findContrasts() {
        visitOtherWords([this](std::string_view left, std::string_view right) {
            if (auto const wording = contrastOf(left, right)) raise(*wording);
        });
        // "from drain to source" here and "from source to drain" there; "hot and cold" is "cold and hot".
        if (m_reference.has(Meaning::And) || m_reference.has(Meaning::Or)) return;
        auto const order = contrastedWords(m_reference);
        if (order.size() < 2) return;
        auto const otherOrder = contrastedWords(m_candidate);
        if (order == otherOrder || !std::is_permutation(order.begin(), order.end(), otherOrder.begin(), otherOrder.end())) return;
        for (std::string_view const word : order) {
            for (std::string_view const other : order) {
                if (auto const wording = contrastOf(word, other)) raise(*wording);
            }
        }
    }

    // Words of a sentence that exclude another of its words, in order.
    static Keys contrastedWords(ReadSentence const& sentence) {
        constexpr std::ptrdiff_t kMostWords = 80;
        auto const isWord = [](Token const& token) { return token.kind == Kind::Word; };
        if (std::count_if(sentence.tokens.begin(), sentence.tokens.end(), isWord) > kMostWords) return {};
        Keys const words = keysOf(sentence, [&](Token const& token) { return isWord(token) && hasContrast(token.key); });
        Keys found;
        std::copy_if(words.begin(), words.end(), std::back_inserter(found), [&](std::string_view word) {
            return std::any_of(words.begin(), words.end(), [word](std::string_view other) { return contrastOf(word, other).has_value(); });
        });
        return found;
    }

    // What a suffix means is said in other words.
    void findNewSuffixes() {
        if (raisedAny() || !sayBoth(Meaning::Suffix)) return;
        visitOtherWords([this](std::string_view, std::string_view) { raise(WordingClass::Ord); });
    }

    void findGrades() {
        if (any({Meaning::Guaranteed, Meaning::NotGuaranteed, Meaning::ByDesign, Meaning::Tested, Meaning::Typical, Meaning::ForReference})) raise(WordingClass::Grade);
    }

    void findModality() {
        bool const prohibition = differs(Meaning::Prohibition) || (differs(Meaning::Optional) && raised(WordingClass::Perm));
        if (!prohibition && any({Meaning::Obligation, Meaning::Recommendation, Meaning::Permission, Meaning::Ability})) raise(WordingClass::Mod);
    }

    void findScope() {
        bool const bothAlone = differs(Meaning::Both) && !raised(WordingClass::Conn);
        if (any({Meaning::Each, Meaning::Any, Meaning::All, Meaning::Only, Meaning::Total}) || bothAlone) raise(WordingClass::Scope);
    }

    // "charge and discharge" here and "charge" there; "the lamp and the bell" here and "the lamp and the fan" there.
    void findMembers() {
        bool const first = !raisedAny();
        bool const changed = dropsMember(m_reference, m_candidate) || (first && substitutesMember(m_reference, m_candidate));
        if (changed) raise(first && any(kStates) ? WordingClass::Trig : WordingClass::Scope);
    }

    void findTimes() {
        if (any({Meaning::Before, Meaning::After, Meaning::First, Meaning::Last, Meaning::Within, Meaning::During, Meaning::Immediately})) raise(WordingClass::Time);
        if (saysAnotherState()) raise(WordingClass::Trig);
        // What a sentence is about changed, and nothing that was counted so far shows it.
        if (raisedAny()) return;
        bool const sameLength = m_reference.tokens.size() == m_candidate.tokens.size();
        bool const things = any(kStates) || any({Meaning::Cell, Meaning::Fet, Meaning::Released, Meaning::Detected});
        if ((sameLength && things) || (any(kStates) && isPartOf(m_reference, m_candidate))) raise(WordingClass::Trig);
    }

    // "charge" here and "discharge" there, whatever else is said.
    [[nodiscard]] bool saysAnotherState() const {
        auto const onlySays = [](ReadSentence const& a, ReadSentence const& b, Meaning meaning) { return a.has(meaning) && !b.has(meaning); };
        auto const exchanged = [&](Meaning one, Meaning other) {
            return (onlySays(m_reference, m_candidate, one) && onlySays(m_candidate, m_reference, other)) ||
                   (onlySays(m_reference, m_candidate, other) && onlySays(m_candidate, m_reference, one));
        };
        return exchanged(Meaning::Charging, Meaning::Discharging) || exchanged(Meaning::Overcharge, Meaning::Overdischarge);
    }

    std::vector<WordingClass> inOrder() {
        static constexpr std::array kGravity{WordingClass::Perm, WordingClass::Pin,   WordingClass::Ord, WordingClass::Cond, WordingClass::Conn,
                                             WordingClass::Trig, WordingClass::Neg,   WordingClass::Num, WordingClass::Temp, WordingClass::Grade,
                                             WordingClass::Mod,  WordingClass::Scope, WordingClass::Time};
        std::vector<WordingClass> list;
        // A duration that only one side states, with words of time: the time is what changed.
        bool const timeFirst = m_durationOnOneSide && raised(WordingClass::Time);
        if (timeFirst) list.push_back(WordingClass::Time);
        for (WordingClass const wording : kGravity) {
            if (raised(wording) && !(timeFirst && wording == WordingClass::Time)) list.push_back(wording);
        }
        return list;
    }

    ReadSentence const& m_reference;
    ReadSentence const& m_candidate;
    std::array<bool, 16> m_raised{};
    bool m_durationOnOneSide = false;
    bool m_nodeChange = false;
};

bool beginsWith(std::string_view printed, std::string_view mark) {
    return !mark.empty() && printed.size() > mark.size() && printed.starts_with(mark) && std::string_view(" .)").find(printed[mark.size()]) != std::string_view::npos;
}

bool isSymbol(Token const& token) { return token.kind == Kind::Symbol || token.kind == Kind::Pin; }

// "VIN" in one sheet and "Vin" in the other: what is a symbol here is none of the words there.
bool takeSymbols(ReadSentence& sentence, ReadSentence const& other) {
    bool taken = false;
    for (Token& token : sentence.tokens) {
        if (token.kind != Kind::Word || token.key.size() < 2) continue;
        auto const symbol = std::find_if(other.tokens.begin(), other.tokens.end(), [&](Token const& own) { return isSymbol(own) && own.key == token.key; });
        if (symbol == other.tokens.end()) continue;
        token.kind = symbol->kind;
        taken = true;
    }
    return taken;
}

// "(VCC = 15 V, VEE = -15 V, TA = 25 °C, unless otherwise noted)" and "VCC = ±15 V (unless otherwise
// specified)": what a table is for, put in two ways.
bool stateOneCondition(std::string_view reference, std::string_view candidate) {
    auto const speaksForATable = [](std::string_view printed) {
        std::string const lower = text::asciiLower(printed);
        return lower.find('=') != std::string::npos && (lower.find("otherwise") != std::string::npos || lower.find("except as") != std::string::npos);
    };
    if (!speaksForATable(reference) || !speaksForATable(candidate)) return false;
    ConditionMemo memo;
    return !memo.stated({{}, reference}).parts.empty() && !memo.stated({{}, candidate}).parts.empty() && stateTheSameAlone(reference, candidate, memo);
}

// Both without their marks.
WordingOutcome classifyUnmarked(std::string_view reference, std::string_view candidate, WordingContext const& context) {
    if (reference == candidate || withoutSpaces(reference) == withoutSpaces(candidate)) return {};
    if (isRevision(reference, context.reference) && isRevision(candidate, context.candidate)) return {Relation::Reworded, {WordingClass::Style}, false};
    ReadSentence a = readSentence(reference, context.reference, context.language);
    ReadSentence b = readSentence(candidate, context.candidate, context.language);
    takeSymbols(a, b);
    // "NOTE" and "note" in one sentence: a symbol in both, whichever comes first.
    if (takeSymbols(b, a)) takeSymbols(a, b);
    if (a.tokens == b.tokens || sameButForJoins(a.tokens, b.tokens)) return {Relation::Reworded, {WordingClass::Edit}, true};
    std::vector<WordingClass> classes = Classifier(a, b).classes();
    if (classes.empty() || (differsInNumbersOnly(classes) && stateOneCondition(reference, candidate))) return {Relation::Reworded, {WordingClass::Style}, false};
    return {Relation::MeaningChanged, std::move(classes), false};
}

}  // namespace

WordingContext::WordingContext(model::Datasheet const& referenceSheet, model::Datasheet const& candidateSheet)
    : reference(namesOf(referenceSheet)), candidate(namesOf(candidateSheet)) {
    // A part that the other sheet is about and this one orders too is its own, though its
    // title does not name it: revisions write "qx2407" and "QX2407".
    std::vector<std::string> const parts = reference.parts;
    addOrderedParts(reference, candidate.parts, referenceSheet);
    addOrderedParts(candidate, parts, candidateSheet);
    std::vector<std::string> told;
    std::copy_if(reference.parts.begin(), reference.parts.end(), std::back_inserter(told),
                 [this](std::string const& part) { return std::find(candidate.parts.begin(), candidate.parts.end(), part) != candidate.parts.end(); });
    if (told.size() > 1) reference.told = candidate.told = std::move(told);
    // Each sheet's pins are known in the other: "VM" is a pin in both texts.
    std::vector<std::string> const own = reference.pins;
    reference.pins.insert(reference.pins.end(), candidate.pins.begin(), candidate.pins.end());
    candidate.pins.insert(candidate.pins.end(), own.begin(), own.end());
    joinSymbols(candidate, referenceSheet, candidateSheet);
    if (!referenceSheet.document.languages.empty()) language = referenceSheet.document.languages.front();
}

WordingOutcome classify(std::string_view reference, std::string_view candidate, WordingContext const& context) {
    Marked a = withoutMark(reference, context.reference);
    Marked b = withoutMark(candidate, context.candidate);
    // One mark, known for one in one sheet only: "1 Features" and "1 FEATURES".
    if ((a.kind == Marked::Kind::None && beginsWith(reference, b.mark)) || (b.kind == Marked::Kind::None && beginsWith(candidate, a.mark))) {
        a = {Marked::Kind::None, {}, reference};
        b = {Marked::Kind::None, {}, candidate};
    }
    WordingOutcome outcome = classifyUnmarked(withoutEquationNumber(a.text, context.reference), withoutEquationNumber(b.text, context.candidate), context);
    bool const same = outcome.relation == Relation::Same || outcome.editorial;
    bool const listed = a.kind == Marked::Kind::InList && b.kind == Marked::Kind::InList;
    if (same && listed && a.mark != b.mark) return {Relation::Reworded, {WordingClass::Style}, false};
    bool const markDiffers = outcome.relation == Relation::Same && withoutSpaces(reference) != withoutSpaces(candidate);
    return markDiffers ? WordingOutcome{Relation::Reworded, {WordingClass::Edit}, true} : outcome;
}

bool differsInNumbersOnly(std::vector<WordingClass> const& classes) {
    using enum WordingClass;
    auto const ofNumbers = [](WordingClass own) { return own == Num || own == Temp; };
    return std::any_of(classes.begin(), classes.end(), ofNumbers) &&
           std::all_of(classes.begin(), classes.end(), [&](WordingClass own) { return ofNumbers(own) || own == Edit || own == Style; });
}

std::vector<WordingClass> classifyAlone(std::string_view printed, SheetNames const& names, std::string_view language) {
    ReadSentence const sentence = readSentence(printed, names, language);
    ReadSentence const nothing;
    std::vector<WordingClass> classes = Classifier(sentence, nothing).classes();
    if (classes.empty()) classes.push_back(WordingClass::Style);
    return classes;
}

}  // namespace standin::compare

// The folded text is cut into words; numbers take their units along and become
// values, hyphenated words fall apart, case, plural and spelling are made one.
// Meanings are found over the plain words, the longest phrase first; Chinese and
// Japanese phrases are searched in the text itself.
// Tested by tests/src/compare/wording_classes_test.cpp.
#include "compare/wording_tokens.h"

#include <algorithm>
#include <unordered_map>

#include "quantity/condition.h"
#include "quantity/numbers.h"
#include "text/boundaries.h"
#include "text/fold.h"
#include "text/script.h"
#include "text/utf8.h"

namespace standin::compare {

namespace {

using Kind = Token::Kind;

struct Phrase {
    std::vector<std::string_view> words;
    Meaning meaning = Meaning::Nothing;
};

std::vector<std::string_view> split(std::string_view text, char separator) {
    std::vector<std::string_view> parts;
    while (true) {
        std::size_t const at = text.find(separator);
        parts.push_back(text.substr(0, at));
        if (at == std::string_view::npos) return parts;
        text.remove_prefix(at + 1);
    }
}

// First word -> phrases that begin with it, the longest first.
using PhraseIndex = std::unordered_map<std::string_view, std::vector<Phrase>>;

PhraseIndex makeIndex(PhraseLanguage language) {
    PhraseIndex index;
    for (PhraseLine const& line : phraseLines()) {
        if (line.language != language) continue;
        for (std::string_view const phrase : split(line.phrases, '|')) {
            Phrase entry{split(phrase, ' '), line.meaning};
            index[entry.words.front()].push_back(std::move(entry));
        }
    }
    for (auto& [first, phrases] : index) {
        std::stable_sort(phrases.begin(), phrases.end(), [](Phrase const& a, Phrase const& b) { return a.words.size() > b.words.size(); });
    }
    return index;
}

PhraseIndex const& indexOf(PhraseLanguage language) {
    if (language == PhraseLanguage::German) {
        static PhraseIndex const kGerman = makeIndex(PhraseLanguage::German);
        return kGerman;
    }
    static PhraseIndex const kEnglish = makeIndex(PhraseLanguage::English);
    return kEnglish;
}

struct CjkPhrase {
    std::string_view text;
    Meaning meaning;
};

std::vector<CjkPhrase> makeCjk(PhraseLanguage language) {
    std::vector<CjkPhrase> list;
    for (PhraseLine const& line : phraseLines()) {
        if (line.language != language) continue;
        for (std::string_view const phrase : split(line.phrases, '|')) list.push_back({phrase, line.meaning});
    }
    std::stable_sort(list.begin(), list.end(), [](CjkPhrase const& a, CjkPhrase const& b) { return a.text.size() > b.text.size(); });
    return list;
}

std::vector<CjkPhrase> const& cjkPhrases(PhraseLanguage language) {
    static std::vector<CjkPhrase> const kChinese = makeCjk(PhraseLanguage::Chinese);
    static std::vector<CjkPhrase> const kJapanese = makeCjk(PhraseLanguage::Japanese);
    return language == PhraseLanguage::Japanese ? kJapanese : kChinese;
}

bool hasWriting(std::string_view text, text::Writing writing) {
    for (std::size_t at = 0; at < text.size();) {
        if (text::writingOf(text::decodeNext(text, at)) == writing) return true;
    }
    return false;
}

// Of a sheet in two languages, each sentence in its own: `language` is the sheet's first one.
PhraseLanguage phraseLanguageOf(std::string_view language, std::string_view text) {
    if (!text::isAscii(text)) {
        if (hasWriting(text, text::Writing::Kana)) return PhraseLanguage::Japanese;
        if (hasWriting(text, text::Writing::Han)) return language == "ja" ? PhraseLanguage::Japanese : PhraseLanguage::Chinese;
    }
    std::string const told = language.empty() ? text::detectLanguage(text) : std::string(language);
    if (told == "de") return PhraseLanguage::German;
    if (told == "ja") return PhraseLanguage::Japanese;
    if (told.substr(0, 2) == "zh") return PhraseLanguage::Chinese;
    return PhraseLanguage::English;
}

bool isDropped(std::string_view word) {
    constexpr std::string_view kAscii = ".,;:\"'()[]{}=*/!?#|_";
    static constexpr std::string_view kWide[] = {"•", "。", "、", "，", "；", "：", "·", "・", "「", "」"};
    if (word.size() == 1) return kAscii.find(word.front()) != std::string_view::npos;
    if (static_cast<unsigned char>(word.front()) < 0x80) return word == "...";
    return std::find(std::begin(kWide), std::end(kWide), word) != std::end(kWide);
}

bool isRangeMark(std::string_view word) {
    return word == "to" || word == "~" || word == "-" || word == "through" || word == "bis" || word == "至" || word == "到" || word == "..." || word == "から";
}

// Words behind which a number only counts figures, tables, pages.
bool isReferenceWord(std::string_view word) {
    static constexpr std::string_view kWords[] = {"fig",  "figure", "figures",   "figs", "table", "tables", "page", "pages", "section", "chapter",
                                                  "note", "notes",  "abbildung", "abb",  "图",    "圖",     "図",   "表",    "eq",      "equation"};
    return isOneOf(word, kWords);
}

int numberWord(std::string_view word) {
    static constexpr std::string_view kWords[] = {"two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"};
    auto const found =
        std::find_if(std::begin(kWords), std::end(kWords), [word](std::string_view one) { return one.size() == word.size() && one.front() == word.front() && one == word; });
    if (found != std::end(kWords)) return static_cast<int>(found - std::begin(kWords)) + 2;
    if (isOneOf(word, {"twice", "double", "doubled"})) return 2;
    return isOneOf(word, {"triple", "tripled", "thrice"}) ? 3 : 0;
}

// Units that stand without a number ("in mΩ"): their case must not be folded.
bool isUnitWord(std::string_view word) {
    if (word.size() < 2 || word.size() > 6) return false;
    bool const prefixed = text::isAsciiLower(word.front()) && std::any_of(word.begin(), word.end(), text::isAsciiUpper);
    bool const kilo = (word.front() == 'M' || word.front() == 'k' || word.front() == 'K' || word.front() == 'G') && word.size() == 3 && word.substr(1) == "Hz";
    bool const sign = !text::isAscii(word);
    bool const time = word == "ms" || word == "us" || word == "ns";
    if (!prefixed && !kilo && !sign && !time) return false;
    auto const unit = quantity::parseUnit(word);
    return unit && unit->note.empty();
}

// "a 28-V rating" says what "a 28 V rating" says; codes ("SOT-23", "QX-2V") and words
// ("8-bit") keep their hyphen.
std::string withoutUnitHyphens(std::string text) {
    auto const isNumber = [](char c) { return text::isAsciiDigit(c) || c == '.'; };
    constexpr std::size_t kLongestUnit = 6;  // bytes
    for (std::size_t at = text.find('-'); at != std::string::npos; at = text.find('-', at + 1)) {
        if (at == 0 || at + 1 == text.size() || !text::isAsciiDigit(text[at - 1])) continue;
        std::size_t begin = at;
        while (begin > 0 && isNumber(text[begin - 1])) --begin;
        if (begin > 0 && text[begin - 1] != ' ' && text[begin - 1] != '(') continue;
        std::size_t end = at + 1;
        while (end < text.size() && (text::isAsciiLetter(text[end]) || static_cast<unsigned char>(text[end]) >= 0x80)) ++end;
        if (end == at + 1 || end - at - 1 > kLongestUnit || (end < text.size() && text::isAsciiDigit(text[end]))) continue;
        auto const unit = quantity::parseUnit(std::string_view(text).substr(at + 1, end - at - 1));
        if (unit && unit->note.empty()) text[at] = ' ';
    }
    return text;
}

// "SCHEMATIC DIAGRAM (each output)": words of a heading in capitals, no symbols, though what
// follows is in small letters. Places in the text; a word alone in capitals may be a pin.
std::vector<std::pair<std::size_t, std::size_t>> headingsInCapitals(std::string_view text) {
    constexpr std::size_t kLongWord = 5;  // letters; pins and symbols are mostly shorter
    constexpr int kFewestLongWords = 2;
    std::vector<std::pair<std::size_t, std::size_t>> headings;
    std::size_t begin = 0;
    int longWords = 0;
    auto const close = [&](std::size_t end) {
        if (longWords >= kFewestLongWords) headings.emplace_back(begin, end);
        begin = end;
        longWords = 0;
    };
    for (std::size_t at = 0; at < text.size();) {
        std::size_t const next = std::min(text.find(' ', at), text.size());
        std::string_view const word = text.substr(at, next - at);
        bool const capitals = std::all_of(word.begin(), word.end(), [](char c) { return text::isAsciiUpper(c) || c == '-' || c == '/'; });
        if (!capitals) close(next);
        else if (word.size() >= kLongWord) ++longWords;
        at = next + 1;
    }
    close(text.size());
    return headings;
}

class SentenceReader {
public:
    SentenceReader(std::string_view printed, SheetNames const& names, std::string_view language)
        : m_names(names), m_text(withoutUnitHyphens(foldedText(printed))), m_language(phraseLanguageOf(language, m_text)) {
        int lower = 0;
        int upper = 0;
        for (char const c : m_text) {
            if (text::isAsciiLower(c)) ++lower;
            if (text::isAsciiUpper(c)) ++upper;
        }
        m_allCapitals = upper > 3 && lower * 6 < upper && !text::isCjk(std::string_view(m_text));
        if (!m_allCapitals && upper > lower / 2) m_headings = headingsInCapitals(m_text);
    }

    ReadSentence read() {
        cut();
        dropSetPhrases();
        findMakers();
        findFamilies();
        spreadUnits();
        findMeanings();
        fillTokens();
        m_sentence.isOfOnePart = m_names.parts.size() == 1;
        return std::move(m_sentence);
    }

private:
    struct Word {
        Token token;
        std::string plain;  // lower case, for phrases; empty: breaks a phrase
        std::string_view printed;
        quantity::Decimal value;               // of a number, in its unit
        quantity::Unit const* unit = nullptr;  // of one of m_quantities
        bool filler = false;
        bool dropped = false;  // punctuation
    };

    void cut() {
        m_quantities = quantity::findQuantities(m_text);
        auto const& quantities = m_quantities;
        auto const words = text::words(m_text);
        std::size_t nextQuantity = 0;
        std::size_t skipTo = 0;
        m_words.reserve(words.size());
        for (std::size_t i = 0; i < words.size(); ++i) {
            std::size_t const begin = static_cast<std::size_t>(words[i].data() - m_text.data());
            std::size_t const end = begin + words[i].size();
            if (begin < skipTo) continue;
            while (nextQuantity < quantities.size() && quantities[nextQuantity].begin < begin) ++nextQuantity;
            if (nextQuantity < quantities.size() && quantities[nextQuantity].begin == begin && quantities[nextQuantity].end >= end) {
                addNumber(quantities[nextQuantity]);
                skipTo = quantities[nextQuantity].end;
                continue;
            }
            addWord(words[i]);
        }
    }

    // "595" in quotation marks, of the 74XC595.
    [[nodiscard]] bool isNickname(quantity::QuantitySpan const& span) const {
        constexpr std::size_t kFewestDigits = 3;
        std::string_view const text = m_text;
        std::string_view const number = text.substr(span.begin, span.end - span.begin);
        if (m_names.parts.empty() || span.unit || number.size() < kFewestDigits || !std::all_of(number.begin(), number.end(), text::isAsciiDigit)) return false;
        auto const before = text.substr(0, span.begin);
        auto const behind = text.substr(span.end);
        static constexpr std::string_view kClosing[] = {"\"", "'", "」", "』"};
        bool const quoted = std::any_of(std::begin(kQuotes), std::end(kQuotes), [before](std::string_view quote) { return before.ends_with(quote); }) &&
                            std::any_of(std::begin(kClosing), std::end(kClosing), [behind](std::string_view quote) { return behind.starts_with(quote); });
        return quoted && std::any_of(m_names.parts.begin(), m_names.parts.end(), [number](std::string_view part) {
                   std::size_t const last = part.find_last_of("0123456789");
                   return last != std::string_view::npos && part.substr(0, last + 1).ends_with(number);
               });
    }

    void addNumber(quantity::QuantitySpan const& span) {
        if (isNickname(span)) {
            Word& own = m_words.emplace_back();
            own.printed = std::string_view(m_text).substr(span.begin, span.end - span.begin);
            own.token.kind = Kind::OwnName;
            own.token.key = kOwnPart;
            m_sentence.usesNickname = true;
            return;
        }
        bool const refers = !span.unit && isReferenceWord(lastPlain());
        Word& word = m_words.emplace_back();
        word.printed = std::string_view(m_text).substr(span.begin, span.end - span.begin);
        word.token.kind = refers ? Kind::Reference : Kind::Number;
        if (refers) word.token.key = "#";
        word.value = span.value;
        word.unit = span.unit ? &*span.unit : nullptr;
    }

    // The last word that is no punctuation ("Fig" in "Fig. 3").
    [[nodiscard]] std::string_view lastPlain() const {
        for (auto word = m_words.rbegin(); word != m_words.rend(); ++word) {
            if (word->dropped && word->printed == ".") continue;
            return word->plain;
        }
        return {};
    }

    void addWord(std::string_view printed) {
        if (isDropped(printed)) {
            Word& word = m_words.emplace_back();
            word.printed = printed;
            word.dropped = true;
            return;
        }
        if (isOwnPart(printed)) return;
        // "over-charge" falls apart, "SOT-23-6" and "V-" do not.
        std::size_t const hyphen = printed.find('-');
        bool const compound = hyphen != std::string_view::npos && hyphen > 0 && hyphen + 1 < printed.size() && std::none_of(printed.begin(), printed.end(), text::isAsciiDigit);
        if (compound) {
            auto const parts = split(printed, '-');
            bool const pins = std::all_of(parts.begin(), parts.end(), [this](std::string_view part) { return standsForAPin(part); });
            for (std::string_view const part : parts) {
                if (!part.empty()) addPlainWord(part, pins ? Compound::OfPins : Compound::Yes);
            }
            return;
        }
        addPlainWord(printed, Compound::No);
    }

    enum class Compound { No, Yes, OfPins };  // "VDD-VSS"
    static constexpr std::string_view kSeries = "series";

    bool isOwnPart(std::string_view printed) {
        // Every part has a digit.
        if (m_names.parts.empty() || printed.size() < 4 || std::none_of(printed.begin(), printed.end(), text::isAsciiDigit)) return false;
        std::string key;
        for (char const c : text::asciiLower(printed)) {
            if (c != '-') key.push_back(c);
        }
        for (std::string const& part : m_names.parts) {
            if (key.compare(0, part.size(), part) != 0) continue;
            Word& word = m_words.emplace_back();
            word.printed = printed;
            word.token.kind = Kind::OwnName;
            word.token.key = kOwnPart + key.substr(part.size());
            bool const told = std::find(m_names.told.begin(), m_names.told.end(), part) != m_names.told.end();
            if (told) word.token.key += "=" + part;
            return true;
        }
        return false;
    }

    void addPlainWord(std::string_view printed, Compound compound) {
        if (isPlainlySmall(printed)) {
            Word& word = m_words.emplace_back();
            word.printed = printed;
            word.plain = printed;
            fillWord(word);
            return;
        }
        std::string plain = text::lowerCase(printed);
        if (plain.size() > 2 && plain.ends_with("'s")) plain.resize(plain.size() - 2);
        if (isOneOf(plain, {"cannot", "can't"})) {
            addVerb(printed, "can");
            plain = "not";
        } else if (plain.size() > 3 && plain.ends_with("n't")) {
            addVerb(printed, plain.substr(0, plain.size() - 3));
            plain = "not";
        }
        if (printed == "&") plain = "and";
        if (isQuotedLevel(printed)) plain = printed == "H" ? "high" : "low";
        bool const symbol = compound != Compound::Yes && plain.size() == printed.size() && isSymbol(printed, plain);
        Word& word = m_words.emplace_back();
        word.printed = printed;
        word.plain = std::move(plain);
        bool const counts = numberWord(word.plain) > 0;
        bool const sign = printed != "&" && !text::isAsciiLetter(printed.front()) && !text::isAsciiDigit(printed.front()) && static_cast<unsigned char>(printed.front()) < 0x80;
        if (sign || printed == "≤" || printed == "≥" || printed == "±" || printed == "×") {
            word.token.kind = Kind::Sign;
            word.token.key = std::string(printed);
            word.plain.clear();
            if (printed == "<") word.plain = "less than";
        } else if (!counts && isUnitWord(printed)) {
            auto const unit = quantity::parseUnit(printed);
            word.token.kind = Kind::Number;  // a unit is part of what is stated
            word.token.key = "u:" + unit->factor.toShortString() + unit->coherent;
            word.token.unit = unit->coherent;
        } else if (!counts && symbol) {
            word.token.key = quantity::symbolKey(printed);
            bool const pin = isPinName(word.token.key);
            word.token.kind = pin ? Kind::Pin : Kind::Symbol;
            auto const other = pin ? m_names.symbols.end() : m_names.symbols.find(word.token.key);
            if (other != m_names.symbols.end()) word.token.key = other->second;
            if (word.token.key != "nc") word.plain.clear();
        } else {
            fillWord(word);
        }
    }

    // Most words: small letters that stand for no symbol, no unit and no two words.
    [[nodiscard]] bool isPlainlySmall(std::string_view printed) const {
        bool const small = printed.size() > 2 && std::all_of(printed.begin(), printed.end(), text::isAsciiLower);
        return small && !m_allCapitals && m_headings.empty() && printed != "cannot";
    }

    void fillWord(Word& word) const {
        if (int const number = numberWord(word.plain); number > 0) {
            word.token.kind = Kind::Number;
            word.value = number;
        } else if (isFiller(word.plain, m_language)) {
            word.filler = true;
        } else {
            word.token.key = wordKey(word.plain);
        }
    }

    // "goes \"L\"", "「H」になる": the level of an output.
    [[nodiscard]] bool isQuotedLevel(std::string_view printed) const {
        if (printed != "H" && printed != "L") return false;
        std::size_t const begin = static_cast<std::size_t>(printed.data() - m_text.data());
        std::string_view const before = std::string_view(m_text).substr(0, begin);
        return std::any_of(std::begin(kQuotes), std::end(kQuotes), [before](std::string_view quote) { return before.ends_with(quote); });
    }
    static constexpr std::string_view kQuotes[] = {"\"", "'", "「", "『"};

    // "cannot", "isn't": the verb in front of "not".
    void addVerb(std::string_view printed, std::string verb) {
        Word& word = m_words.emplace_back();
        word.printed = printed;
        word.plain = word.token.key = std::move(verb);
    }

    static std::string wordKey(std::string const& lower) {
        if (!text::isAscii(lower)) return lower;
        if (isOneOf(lower, {"are", "is"})) return "is";
        if (isOneOf(lower, {"has", "have"})) return "have";
        if (isOneOf(lower, {"sind", "ist"})) return "ist";
        if (isOneOf(lower, {"werden", "wird"})) return "wird";
        std::string const spelled = text::unifiedSpelling(lower);
        // One cell or several is no noise.
        bool const counted = isOneOf(lower, {"cells", "batteries", "fets"});
        std::string_view const stem = counted ? std::string_view(spelled) : text::singular(spelled);
        return std::string(commonWord(stem));
    }

    [[nodiscard]] bool isInCapitals(std::string_view printed) const {
        if (m_allCapitals || m_headings.empty()) return m_allCapitals;
        auto const at = static_cast<std::size_t>(printed.data() - m_text.data());
        return std::any_of(m_headings.begin(), m_headings.end(), [at](auto const& heading) { return heading.first <= at && at < heading.second; });
    }

    [[nodiscard]] bool isPinName(std::string_view lower) const {
        return isCommonPinName(lower) || std::find(m_names.pins.begin(), m_names.pins.end(), lower) != m_names.pins.end();
    }

    // In capitals, where most words are no pins.
    static bool standsForAPin(std::string_view printed) {
        std::string const lower = text::asciiLower(printed);
        bool const capitals = std::all_of(printed.begin(), printed.end(), text::isAsciiUpper);
        return capitals && lower.size() >= 2 && isCommonPinName(lower) && !isOneOf(lower, {"in", "out", "do", "test"});
    }

    [[nodiscard]] bool isSymbol(std::string_view printed, std::string const& lower) const {
        if (!text::isAsciiLetter(printed.front())) return false;
        bool const digits = std::any_of(printed.begin(), printed.end(), text::isAsciiDigit);
        bool const bracket = printed.find('(') != std::string_view::npos && lower.substr(lower.size() - 3) != "(s)";
        bool const signedName = printed.back() == '+' || printed.back() == '-';
        if (digits || bracket || signedName || printed.find('_') != std::string_view::npos) return true;
        if (printed.size() == 2 && (printed[0] == 'T' || printed[0] == 't') && (lower[1] == 'a' || lower[1] == 'j' || lower[1] == 'c')) return true;
        if (isInCapitals(printed)) return isCommonPinName(lower) && lower.size() >= 2 && lower != "in" && lower != "out" && lower != "do" && lower != "test";
        if (printed.size() == 1) return text::isAsciiUpper(printed.front()) && !m_words.empty();
        bool const capitalsInside = std::any_of(printed.begin() + 1, printed.end(), text::isAsciiUpper);
        if (!capitalsInside) return false;
        if (isPinName(lower) && lower != "test") return true;
        return indexOf(PhraseLanguage::English).count(lower) == 0;
    }

    // "the QX17 series", "QX17series": the sheet's parts as a whole.
    void findFamilies() {
        if (m_names.families.empty()) return;
        for (std::size_t i = 0; i < m_words.size(); ++i) {
            // Every family has a digit.
            if (std::none_of(m_words[i].printed.begin(), m_words[i].printed.end(), text::isAsciiDigit)) continue;
            std::string key = text::asciiLower(m_words[i].printed);
            std::erase(key, '-');
            bool const joined = key.size() > kSeries.size() && key.compare(key.size() - kSeries.size(), kSeries.size(), kSeries) == 0;
            if (joined) key.resize(key.size() - kSeries.size());
            bool const named = std::find(m_names.families.begin(), m_names.families.end(), key) != m_names.families.end();
            bool const followed = i + 1 < m_words.size() && isOneOf(m_words[i + 1].plain, {kSeries, "family"});
            if (!named || (!joined && !followed)) continue;
            Word own;
            own.printed = m_words[i].printed;
            own.token.kind = Kind::OwnName;
            own.token.key = kOwnPart;
            m_words[i] = std::move(own);
            if (!joined) drop(m_words[i + 1]);
        }
    }

    static bool readsInLowerCase(std::string_view printed, std::string_view lower) {
        // Most words begin with another letter.
        if (printed.empty() || (text::isAsciiLetter(printed.front()) && !lower.starts_with(static_cast<char>(printed.front() | ' ')))) return false;
        return text::lowerCase(printed) == lower;
    }

    void findMakers() {
        for (auto const& maker : m_names.makers) {
            if (maker.empty()) continue;
            for (std::size_t i = 0; i + maker.size() <= m_words.size(); ++i) {
                bool equal = true;
                for (std::size_t k = 0; k < maker.size() && equal; ++k) equal = readsInLowerCase(m_words[i + k].printed, maker[k]);
                if (!equal) continue;
                for (std::size_t k = 0; k < maker.size(); ++k) {
                    m_words[i + k] = Word{};
                    m_words[i + k].dropped = true;
                }
                m_words[i].dropped = false;
                m_words[i].token.kind = Kind::OwnName;
                m_words[i].token.key = kOwnMaker;
            }
        }
    }

    static void drop(Word& word) {
        word.dropped = true;
        word.plain.clear();
    }

    // What stands in sheets without saying anything of the part: "unless otherwise
    // specified", the mark of a note, and that the ground pin lies at 0 V.
    void dropSetPhrases() {
        for (std::size_t i = 0; i < m_words.size(); ++i) {
            dropNoteMark(i);
            if (i + 2 >= m_words.size()) continue;
            bool const unless = isOneOf(m_words[i].plain, {"unless", "except"});
            auto const isSaid = [](std::string_view word) {
                return word == "specified" || word == "noted" || word == "stated" || word == "indicated" || word == "mentioned" || word == "where";
            };
            std::string const& second = m_words[i + 1].plain;
            std::string const& third = m_words[i + 2].plain;
            bool const phrase = unless && ((second == "otherwise" && isSaid(third)) || (isSaid(second) && (third == "otherwise" || third == "noted")));
            bool const ground = (m_words[i].token.key == "gnd" || m_words[i].token.key == "vss") && m_words[i + 1].printed == "=" && m_words[i + 2].token.kind == Kind::Number &&
                                m_words[i + 2].value.isZero() && m_words[i + 2].unit != nullptr && m_words[i + 2].unit->coherent == "V";
            if (!phrase && !ground) continue;
            for (std::size_t k = i; k < i + 3; ++k) drop(m_words[k]);
        }
    }

    // "(Note E)", "(Notes 1, 2)" at the index.
    void dropNoteMark(std::size_t open) {
        constexpr std::size_t kMostMarks = 8;
        if (open + 3 >= m_words.size() || m_words[open].printed != "(") return;
        std::string const& note = m_words[open + 1].plain;
        if (note != "note" && note != "notes") return;
        for (std::size_t k = open + 2; k < m_words.size() && k < open + 2 + kMostMarks; ++k) {
            Word const& word = m_words[k];
            if (word.printed == ")") {
                for (std::size_t w = open; w <= k; ++w) drop(m_words[w]);
                return;
            }
            bool const letter = word.printed.size() == 1 && text::isAsciiUpper(word.printed.front());
            if (word.token.kind != Kind::Reference && word.token.kind != Kind::Number && !letter && !word.dropped && word.plain != "and") return;
        }
    }

    // "−40 to 85 °C": the unit holds for both; the mark between becomes one sign.
    void spreadUnits() {
        for (std::size_t i = 0; i + 2 < m_words.size(); ++i) {
            Word& lower = m_words[i];
            Word& mark = m_words[i + 1];
            std::size_t upperAt = i + 2;
            if (lower.token.kind != Kind::Number || !lower.token.key.empty()) continue;
            if (!isRangeMark(mark.printed)) continue;
            // "-40--10"
            Word& upper = m_words[upperAt];
            if (upper.token.kind != Kind::Number || !upper.token.key.empty()) continue;
            if (lower.unit == nullptr && upper.unit != nullptr) {
                lower.value = quantity::toCoherent(lower.value, *upper.unit);
                lower.unit = upper.unit;
            }
            mark.token.kind = Kind::Sign;
            mark.token.key = "~";
            mark.plain.clear();
            mark.filler = false;
            mark.dropped = false;
        }
        for (std::size_t i = 0; i < m_words.size(); ++i) {
            Word& word = m_words[i];
            if (word.token.kind == Kind::Number && word.token.key.empty()) {
                if (word.unit != nullptr) word.token.unit = word.unit->coherent;
                word.token.key = "n:" + word.value.toShortString() + word.token.unit;
            }
            // "(~5 MΩ)", no range
            bool const alone = i == 0 || (m_words[i - 1].token.kind != Kind::Number && m_words[i - 1].token.kind != Kind::Symbol && m_words[i - 1].token.kind != Kind::Pin);
            if (word.token.kind == Kind::Sign && word.token.key == "~" && alone && i + 1 < m_words.size() && m_words[i + 1].token.kind == Kind::Number) {
                word.token = {Kind::Word, "approximately", {}};
                word.plain = "approximately";
            }
            // A dash or tilde counts in front of a value or symbol only.
            if (word.token.kind == Kind::Sign && (word.token.key == "-" || word.token.key == "+")) {
                bool const operand =
                    i + 1 < m_words.size() && (m_words[i + 1].token.kind == Kind::Number || m_words[i + 1].token.kind == Kind::Symbol || m_words[i + 1].token.kind == Kind::Pin);
                if (!operand || i == 0) word.dropped = true;
            }
        }
    }

    void say(Meaning meaning) {
        auto& count = m_sentence.said[static_cast<std::size_t>(meaning)];
        if (count < 1000) ++count;
    }

    void findMeanings() {
        std::vector<std::string_view> plain;
        plain.reserve(m_words.size());
        for (Word const& word : m_words) {
            // Full stops inside "typ." do not break a phrase; other things do.
            if (word.dropped && word.printed == ".") continue;
            if (word.dropped && word.printed == "/") continue;
            plain.push_back(word.plain);
        }
        auto const scan = [&](PhraseIndex const& index) {
            for (std::size_t i = 0; i < plain.size();) {
                std::size_t used = 1;
                if (auto const found = plain[i].empty() ? index.end() : index.find(plain[i]); found != index.end()) {
                    for (Phrase const& phrase : found->second) {
                        if (i + phrase.words.size() > plain.size() || !std::equal(phrase.words.begin(), phrase.words.end(), plain.begin() + static_cast<std::ptrdiff_t>(i)))
                            continue;
                        say(phrase.meaning);
                        used = phrase.words.size();
                        break;
                    }
                }
                i += used;
            }
        };
        scan(indexOf(m_language == PhraseLanguage::German ? PhraseLanguage::German : PhraseLanguage::English));
        if (m_language == PhraseLanguage::Chinese || m_language == PhraseLanguage::Japanese) scanCjk();
        for (Word const& word : m_words) {
            if (word.token.kind == Kind::Sign) {
                if (word.token.key == "<") say(Meaning::Below);
                if (word.token.key == ">") say(Meaning::Above);
                if (word.token.key == "≤") say(Meaning::AtMost);
                if (word.token.key == "≥") say(Meaning::AtLeast);
            }
            bool const pinWord = isOneOf(word.plain, {"pin", "pins", "terminal", "terminals", "pad", "lead", "引脚", "端子", "管脚"});
            if (pinWord || word.token.kind == Kind::Pin) m_sentence.speaksOfPins = true;
            if (isOneOf(word.plain, {"output", "outputs"})) m_sentence.speaksOfOutput = true;
        }
    }

    void scanCjk() {
        auto const& phrases = cjkPhrases(m_language);
        std::string_view const text = m_text;
        for (std::size_t at = 0; at < text.size();) {
            std::size_t used = 0;
            if (static_cast<unsigned char>(text[at]) >= 0xE3) {
                for (CjkPhrase const& phrase : phrases) {
                    if (text.substr(at, phrase.text.size()) != phrase.text) continue;
                    say(phrase.meaning);
                    used = phrase.text.size();
                    break;
                }
            }
            if (used == 0) (void)text::decodeNext(text, at);
            else at += used;
        }
    }

    void fillTokens() {
        using Joint = ReadSentence::Joint;
        m_sentence.tokens.reserve(m_words.size());
        m_sentence.joints.reserve(m_words.size());
        Joint joint = Joint::None;
        bool behindWord = false;  // no "//" of an address
        for (Word& word : m_words) {
            bool const enumerates = word.printed == "、" && m_language == PhraseLanguage::Chinese;
            if (word.dropped && (word.printed == "," || word.printed == "、" || word.printed == "，")) joint = Joint::Comma;
            if (word.dropped && (enumerates || (word.printed == "/" && behindWord))) joint = Joint::Slash;
            behindWord = !word.dropped;
            if (word.dropped || word.filler || word.token.key.empty()) continue;
            m_sentence.tokens.push_back(std::move(word.token));
            m_sentence.joints.push_back(joint);
            joint = Joint::None;
        }
    }

    SheetNames const& m_names;
    std::string m_text;
    PhraseLanguage m_language;
    bool m_allCapitals = false;
    std::vector<std::pair<std::size_t, std::size_t>> m_headings;  // in capitals, of a text that is not
    std::vector<quantity::QuantitySpan> m_quantities;
    std::vector<Word> m_words;
    ReadSentence m_sentence;
};

}  // namespace

ReadSentence readSentence(std::string_view printed, SheetNames const& names, std::string_view language) { return SentenceReader(printed, names, language).read(); }

}  // namespace standin::compare

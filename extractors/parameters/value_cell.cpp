#include "extractors/parameters/value_cell.h"

// tidied -> label in front split off -> range split at its separator (word,
// tilde, dots, or a dash between two numbers) -> units taken off the ends.
// Tested by tests/extractors/parameters/value_cell_test.cpp.

#include <algorithm>
#include <array>
#include <optional>
#include <utility>
#include <vector>

#include "extractors/parameters/shapes.h"
#include "extractors/parameters/text_forms.h"
#include "text/utf8.h"

namespace standin::parameters {

namespace {

constexpr std::size_t kLongestValue = 120;  // bytes
constexpr std::array<std::string_view, 3> kLimitWords{"min", "typ", "max"};

bool isDigitChar(char c) { return c >= '0' && c <= '9'; }

// "4.25", "-0.3", "+85": the usual cell.
bool isPlainNumber(std::string_view text) {
    if (!text.empty() && (text.front() == '-' || text.front() == '+')) text.remove_prefix(1);
    if (text.empty() || !isDigitChar(text.front()) || !isDigitChar(text.back())) return false;
    int points = 0;
    for (char c : text) {
        if (c == '.') {
            ++points;
        } else if (!isDigitChar(c)) {
            return false;
        }
    }
    return points <= 1;
}

// Full-width digits and signs as ASCII.
std::string narrowed(std::string const& text) {
    if (standin::text::isAscii(text)) return text;
    std::string out;
    for (char32_t c : decoded(text)) append(out, c >= 0xFF0B && c <= 0xFF1E ? c - 0xFEE0 : c);
    return out;
}

// "1 kΩ‖10 pF": values of several kinds that belong together.
bool isParallel(std::string const& text) { return hasDigit(text) && (contains(text, "‖") || contains(text, "∥") || contains(text, "||")); }

struct Halves {
    std::string left;
    std::string right;
};

// Can stand at one end of a range: a number, a number with a unit, or an expression.
bool isRangeEnd(std::string text) {
    text = trimmed(text);
    if (text.empty()) return false;
    std::string bare = text;
    (void)takeUnitTail(bare);
    return isNumberLike(bare) || isExpression(bare) || isExpression(text);
}

std::optional<Halves> splitAt(std::string const& text, std::string_view separator) {
    for (std::size_t at = text.find(separator); at != std::string::npos; at = text.find(separator, at + 1)) {
        std::string left = trimmed(std::string_view(text).substr(0, at));
        std::string right = trimmed(std::string_view(text).substr(at + separator.size()));
        if (isRangeEnd(left) && isRangeEnd(right)) return Halves{std::move(left), std::move(right)};
    }
    return std::nullopt;
}

// "-40-85", "2.0 - 4.5", "-40-+125": the dash that stands between two numbers.
std::optional<Halves> splitAtDash(std::string const& text) {
    for (std::size_t at = text.find('-', 1); at != std::string::npos; at = text.find('-', at + 1)) {
        std::string const left = trimmed(std::string_view(text).substr(0, at));
        std::string const right = trimmed(std::string_view(text).substr(at + 1));
        std::string bareLeft = left;
        std::string bareRight = right;
        (void)takeUnitTail(bareLeft);
        (void)takeUnitTail(bareRight);
        if (contains(bareLeft, "^") || bareLeft.empty() || bareRight.empty()) continue;
        bool const leftEndsAsNumber = isDigitChar(bareLeft.back());
        bool const rightStarts = isDigitChar(bareRight.front()) || bareRight.front() == '+' || bareRight.front() == '-' || bareRight.starts_with("±");
        if (leftEndsAsNumber && rightStarts && isNumberLike(bareLeft) && isNumberLike(bareRight)) return Halves{left, right};
        // "-0.3 - VDD+0.3": spaces on both sides, so no difference
        bool const spaced = text[at - 1] == ' ' && at + 1 < text.size() && text[at + 1] == ' ';
        if (spaced && leftEndsAsNumber && isNumberLike(bareLeft) && isExpression(bareRight) && hasDigit(bareRight)) return Halves{left, right};
    }
    return std::nullopt;
}

std::optional<Halves> splitRange(std::string text) {
    std::string const low = folded(text);
    if (low.starts_with("von ")) text = trimmed(std::string_view(text).substr(4));
    if (low.starts_with("from ")) text = trimmed(std::string_view(text).substr(5));
    if (low.starts_with("от ")) text = trimmed(std::string_view(text).substr(std::string_view("от ").size()));
    constexpr std::array kSeparators = {" to ", "~", "\u2026", "...", "..", " thru ", " through ", " bis ", "至", "到", "から", " до ", "\u00F7", " TO ", " To ", "to"};
    for (std::string_view separator : kSeparators) {
        if (std::optional<Halves> halves = splitAt(text, separator)) return halves;
    }
    return splitAtDash(text);
}

// "VDD VDC" as the end of a range: a symbol and a unit of more than a letter.
std::string takeUnitOfSymbol(std::string& text) {
    std::vector<std::string> const words = splitAtSpaces(text);
    if (words.size() != 2 || hasDigit(text) || words[1].size() < 2 || !isSymbolLike(words[0]) || isUnitLike(words[0]) || !isUnitLike(words[1])) return {};
    text = words[0];
    return words[1];
}

// "(VCC + 0.3V)" as the end of a range: the bracket only holds it together.
std::string unbracketed(std::string const& text) {
    bool const whole = text.size() > 2 && text.front() == '(' && text.find(')') == text.size() - 1;
    std::string inner = whole ? trimmed(std::string_view(text).substr(1, text.size() - 2)) : text;
    return isExpression(inner) ? inner : text;
}

std::string valueText(std::string_view text) {
    std::string out = closedNumbers(trimmed(text));
    // "+/-" and "+-" are one sign
    for (std::string_view sign : {"+/-", "＋/-", "+ -", "+-"}) {
        if (out.starts_with(sign)) out = "±" + trimmed(std::string_view(out).substr(sign.size()));
    }
    return out;
}

void put(ValueCell& cell, Slot slot, std::string text) {
    switch (slot) {
        case Slot::Min: cell.min = std::move(text); break;
        case Slot::Typ: cell.typ = std::move(text); break;
        case Slot::Max:
        case Slot::Single: cell.max = std::move(text); break;
    }
}

// "DIP8: 500" or "(DIP8) 500": a package, a part or a word that selects.
std::string takeLabel(std::string& text) {
    std::size_t const colon = text.find(':');
    std::size_t const wide = text.find("：");
    std::size_t const at = std::min(colon, wide);
    if (at != std::string::npos && at > 0) {
        std::string const label = trimmed(std::string_view(text).substr(0, at));
        std::string const rest = trimmed(std::string_view(text).substr(at + (at == colon ? 1 : std::string_view("：").size())));
        if ((isPackageLike(label) || isPartLike(label)) && hasDigit(rest)) {
            text = rest;
            return label;
        }
    }
    if (text.ends_with(")")) {
        std::size_t const open = text.rfind('(');
        if (open != std::string::npos && open > 0) {
            std::string const label = trimmed(std::string_view(text).substr(open + 1, text.size() - open - 2));
            if (isPackageLike(label)) {
                text = trimmed(std::string_view(text).substr(0, open));
                return label;
            }
        }
    }
    return {};
}

// "20 typ, 30": a limit by its word, of several in one cell.
bool saysLimit(std::string_view text) {
    std::string const plain = folded(text);
    return std::any_of(kLimitWords.begin(), kLimitWords.end(), [&plain](std::string_view word) { return plain.find(word) != std::string::npos; });
}

// "20 (typ.)", "20 max": which limit a single value says it is; `slot` where it says nothing. "300 min"
// without any unit lasts minutes.
Slot takeLimitWord(std::string& text, Slot slot, bool unitStated) {
    std::size_t const space = text.find_last_of(" (");
    if (slot != Slot::Single || space == std::string::npos || space == 0) return slot;
    std::string word;
    for (char const c : folded(std::string_view(text).substr(space + 1))) {
        if (c >= 'a' && c <= 'z') word.push_back(c);
        if (c >= '0' && c <= '9') return slot;
    }
    Slot const said = word == "min" ? Slot::Min : word == "typ" ? Slot::Typ : word == "max" ? Slot::Max : Slot::Single;
    std::string bare = trimmed(std::string_view(text).substr(0, space));
    if (said == Slot::Single || !hasDigit(bare) || saysLimit(bare)) return slot;
    if (said == Slot::Min && !unitStated && isDigitChar(bare.back())) return slot;
    bool const range = splitRange(bare).has_value();
    if (range && said != Slot::Max) return slot;
    text = std::move(bare);
    return range ? slot : said;  // "1 to 5 max" is the range
}

}  // namespace

bool isExpression(std::string_view raw) {
    std::string const text = trimmed(raw);
    if (text.empty() || text.size() > 60) return false;
    bool letter = false;
    int lowerRun = 0;
    int words = 0;
    for (char32_t c : decoded(text)) {
        if (isLatinLetter(c) || isGreek(c)) {
            letter = true;
            lowerRun = c >= U'a' && c <= U'z' ? lowerRun + 1 : 0;
            if (lowerRun > 6) return false;
        } else {
            lowerRun = 0;
            if (c == U' ') ++words;
            if (isCjk(c) && c < 0xFF00) return false;
        }
    }
    if (!letter) return false;
    if (isUnitLike(text) && !hasDigit(text) && text.size() <= 2) return false;
    for (std::string const& word : splitAtSpaces(text)) {
        if (isSymbolLike(word) || isNumberLike(word) || isUnitLike(word)) continue;
        if (word == "+" || word == "-" || word == "x" || word == "×" || word == "*" || word == "/" || word == "·" || word == "±") continue;
        // "VDD-0.3", "0.7×VDD", "-0.3V": mixed tokens of symbols, numbers and operators
        bool mixed = true;
        for (char32_t c : decoded(word)) {
            mixed = mixed && (isLatinLetter(c) || isGreek(c) || isDigit(c) || c == U'+' || c == U'-' || c == U'.' || c == U'×' || c == U'*' || c == U'/' || c == U'(' ||
                              c == U')' || c == U'%' || c == U'±' || c == U'_' || c == U'[' || c == U']' || c == U'≤' || c == U'≥' || c == U'<' || c == U'>');
        }
        if (!mixed) return false;
    }
    return words <= 8;
}

std::string takeUnitTail(std::string& text) {
    // the last number of the text; what follows it is the candidate
    std::size_t last = text.size();
    for (std::size_t i = text.size(); i-- > 0;) {
        if (isDigitChar(text[i])) {
            // a digit inside a unit ("1k hr", "m2") or a symbol is no number's end
            last = i + 1;
            break;
        }
    }
    if (last == text.size() || last == 0) return {};
    std::string const tail = trimmed(std::string_view(text).substr(last));
    if (tail.empty() || tail == "%" || !isUnitLike(tail)) {
        if (tail != "%") return {};
    }
    // the digits must belong to a number, not to a symbol such as "VT1 V"
    std::size_t start = last;
    while (start > 0 && (isDigitChar(text[start - 1]) || text[start - 1] == '.' || text[start - 1] == ',')) --start;
    if (start > 0) {
        char const before = text[start - 1];
        bool const letter = (before >= 'A' && before <= 'Z') || (before >= 'a' && before <= 'z');
        if (letter) return {};
    }
    text = trimmed(std::string_view(text).substr(0, last));
    return tail;
}

namespace {

// "4.28 V ±1 %", "100 ±30 %" where the line's unit is another, "±50 %" there: a share of the
// nominal value. Its "%" is no unit of the line. None where it may be one ("50 ±5 %").
std::optional<ValueCell> shareOfNominal(std::string_view text, std::string const& unitOfLine, Slot slot) {
    constexpr std::string_view kSpread = "±";
    std::size_t const at = text.find(kSpread);
    if (at == std::string_view::npos || text.back() != '%' || text.find(kSpread, at + kSpread.size()) != std::string_view::npos) return std::nullopt;
    std::string nominal = trimmed(text.substr(0, at));
    std::string const share = trimmed(text.substr(at + kSpread.size(), text.size() - at - kSpread.size() - 1));
    std::string const unit = takeUnitTail(nominal);
    bool const ofOther = unit.empty() ? !unitOfLine.empty() && unitOfLine != "%" : unit != "%";
    if (!ofOther || !isNumberLike(share) || (!nominal.empty() && !isNumberLike(nominal))) return std::nullopt;
    ValueCell cell;
    cell.form = ValueForm::Number;
    cell.unit = unit;
    put(cell, nominal.empty() || slot != Slot::Single ? slot : Slot::Typ, nominal + "±" + share + "%");
    return cell;
}

}  // namespace

ValueCell readValueCell(std::string_view raw, Slot slot, std::string_view columnUnit) {
    ValueCell cell;
    if (raw.size() > kLongestValue) {
        // prose, whatever column it stands in
        cell.form = ValueForm::Words;
        put(cell, slot, tidied(raw));
        return cell;
    }
    if (isPlainNumber(raw)) {
        cell.form = ValueForm::Number;
        put(cell, slot, std::string(raw));
        return cell;
    }
    std::string text = closedNumbers(plainExponents(narrowed(tidied(raw))));
    while (!text.empty() && (text.back() == ',' || text.back() == ';')) text = trimmed(std::string_view(text).substr(0, text.size() - 1));
    if (saysNothing(text)) return cell;
    cell.label = takeLabel(text);
    slot = takeLimitWord(text, slot, !trimmed(columnUnit).empty());
    text = valueText(text);

    std::string const unitOfLine = trimmed(columnUnit);
    if (auto shared = shareOfNominal(text, unitOfLine, slot)) {
        shared->label = cell.label;
        return *shared;
    }
    bool const tolerance = text.find("±") != std::string::npos && !text.starts_with("±") && isDigitChar(text.front());

    if (slot == Slot::Single && !tolerance) {
        if (std::optional<Halves> halves = splitRange(text)) {
            cell.form = ValueForm::Range;
            std::string right = valueText(unbracketed(halves->right));
            std::string left = valueText(unbracketed(halves->left));
            std::string rightBare = right;
            std::string leftBare = left;
            std::string rightUnit = takeUnitTail(rightBare);
            if (rightUnit.empty()) rightUnit = takeUnitOfSymbol(rightBare);
            std::string const leftUnit = takeUnitTail(leftBare);
            if (!leftUnit.empty() && !rightUnit.empty() && folded(leftUnit) != folded(rightUnit)) {
                cell.mixedUnits = true;
                cell.min = left;
                cell.max = right;
                return cell;
            }
            bool const foreign = !unitOfLine.empty() && !rightUnit.empty() && folded(rightUnit) != folded(unitOfLine) && !isNumberLike(rightBare);
            cell.min = foreign ? left : leftBare;
            cell.max = foreign ? right : rightBare;
            if (!foreign) cell.unit = !rightUnit.empty() ? rightUnit : leftUnit;
            return cell;
        }
    }

    if (isParallel(text)) {
        cell.form = ValueForm::Expression;
        put(cell, slot, text);
        return cell;
    }
    std::string bare = text;
    std::string const unit = takeUnitTail(bare);
    if (isNumberLike(bare)) {
        cell.form = ValueForm::Number;
        cell.unit = unit;
        if (tolerance && slot == Slot::Single) {
            cell.typ = bare;
        } else {
            put(cell, slot, bare);
        }
        return cell;
    }
    if (isExpression(text)) {
        cell.form = ValueForm::Expression;
        bool const same = !unit.empty() && (unitOfLine.empty() || folded(unit) == folded(unitOfLine));
        if (same) cell.unit = unit;
        put(cell, slot, same ? bare : text);
        return cell;
    }
    cell.form = ValueForm::Words;
    put(cell, slot, text);
    return cell;
}

}  // namespace standin::parameters

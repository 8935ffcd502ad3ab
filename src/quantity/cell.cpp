#include "quantity/cell.h"

#include <algorithm>
#include <array>

#include <fmt/format.h>

#include "quantity/bound_words.h"
#include "quantity/value_parts.h"
#include "text/fold.h"
#include "text/script.h"
#include "text/utf8.h"

// A value is folded, then read outside in: blank, bound words ("max", "以下"),
// chains ("1.5V≤VDD≤5.5V"), tolerances, ranges, a single atom. A row's three
// cells are put together by column, each bound with the node it refers to.
// Tested by tests/src/quantity/cell_test.cpp.

namespace standin::quantity {

namespace {

std::optional<Unit> columnUnitOf(ValueContext const& context) {
    if (context.unit.empty()) return std::nullopt;
    return parseUnit(context.unit, {.expected = context.expected, .allCapitals = context.allCapitals});
}

class ValueReader {
public:
    // `columnUnit` is columnUnitOf(context) and has to outlive the reader.
    ValueReader(ValueContext const& context, std::optional<Unit> const& columnUnit) : m_context(context), m_columnUnit(columnUnit) {
        if (m_columnUnit && !m_columnUnit->note.empty()) m_value.notes.push_back(m_columnUnit->note);
    }

    ParsedValue read(std::string_view printed) {
        std::string const folded = text::foldForComparison(printed);
        if (isBlankMark(folded)) return std::move(m_value);
        std::string remark;
        std::string_view text = withoutRemark(folded, remark);
        if (!remark.empty() && isBoundRemark(remark)) {  // "0.9 (typ)", "2 kV (max)"
            std::string_view word = remark;
            std::string const joined = std::string(text) + " " + std::string(word);
            std::string_view view = joined;
            m_bound = takeBoundWord(view);
            m_held = std::string(view);
            text = m_held;
        }
        if (m_bound == BoundWord::None) m_bound = takeBoundWord(text);
        bool const read = mayHoldAtom(text, m_context) && (readChain(text) || readTolerance(text) || readRangeText(text) || readAlternatives(text) || readSingle(text));
        if (!read) {
            m_value.kind = ParsedValue::Kind::Words;
            if (text.size() > 2 && text.front() == '(') m_value.notes.emplace_back("number in brackets: not read as a value");
        }
        finish();
        return std::move(m_value);
    }

private:
    static bool isBoundRemark(std::string_view remark) {
        std::string const word = text::asciiLower(remark);
        return word == "max" || word == "min" || word == "typ" || word == "max." || word == "min." || word == "typ." || word == "typical" || word == "maximum" || word == "minimum";
    }

    // In the coherent unit: the atom's own, else `shared`, else the column's.
    Decimal coherent(Atom const& atom, std::optional<Unit> const& shared) {
        if (!atom.note.empty()) m_value.notes.push_back(atom.note);
        if (atom.ratio) {
            noteUnit("1");
            return atom.value;
        }
        if (atom.unit) {
            if (!atom.unitText.empty()) m_value.unitPrinted = atom.unitText;
            noteUnit(atom.unit->coherent);
            return atom.value;
        }
        std::optional<Unit> const& unit = shared ? shared : m_columnUnit;
        if (unit) {
            noteUnit(unit->coherent);
            return toCoherent(atom.value, *unit);
        }
        return atom.value;
    }

    void noteUnit(std::string const& coherent) {
        if (!m_value.unit.empty() && m_value.unit != coherent) {
            m_value.unitConflict = true;
            return;
        }
        m_value.unit = coherent;
    }

    void noteNode(Atom const& atom) {
        m_value.relativeTo = atom.node;
        m_value.factorOf = atom.ratio ? atom.node : "";
    }

    // "1.5V≤VDD≤5.5V", "1.5 V < VDD < 5.5 V"
    bool readChain(std::string_view text) {
        std::size_t const first = text.find_first_of("<>\xE2");
        if (first == std::string_view::npos || first == 0) return false;
        std::array<std::string_view, 2> const inclusive{"≤", "≥"};
        struct Mark {
            std::size_t at, length;
            bool open, less;
        };
        std::vector<Mark> marks;
        for (std::size_t at = 0; at < text.size() && marks.size() < 3; ++at) {
            if (text[at] == '<' || text[at] == '>') marks.push_back({at, 1, true, text[at] == '<'});
            for (std::string_view const sign : inclusive) {
                if (text.substr(at, sign.size()) == sign) marks.push_back({at, sign.size(), false, sign == inclusive[0]});
            }
        }
        if (marks.size() != 2 || marks[0].less != marks[1].less) return false;
        auto const left = parseAtom(text.substr(0, marks[0].at), m_context);
        auto const right = parseAtom(text.substr(marks[1].at + marks[1].length), m_context);
        if (!left || !right) return false;
        Decimal const a = coherent(*left, right->unit);
        Decimal const b = coherent(*right, left->unit);
        bool const less = marks[0].less;
        m_value.kind = ParsedValue::Kind::Range;
        m_value.lo = less ? a : b;
        m_value.hi = less ? b : a;
        m_value.loOpen = less ? marks[0].open : marks[1].open;
        m_value.hiOpen = less ? marks[1].open : marks[0].open;
        return true;
    }

    // "4.28±0.025 V", "1.0 s ±30 %", "±20", "4.20 +0.05/-0.10"
    bool readTolerance(std::string_view text) {
        std::size_t const at = text.find("±");
        if (at == std::string_view::npos) return readAsymmetric(text);
        constexpr std::size_t kSign = 2;
        std::string_view const nominalText = text::trimmed(text.substr(0, at));
        std::string_view const spreadText = text::trimmed(text.substr(at + kSign));
        if (spreadText.find("±") != std::string_view::npos) return false;
        bool const percent = !spreadText.empty() && spreadText.back() == '%';
        if (nominalText.empty()) {
            auto const spread = parseAtom(spreadText, m_context);
            if (!spread || !spread->node.empty()) return false;
            Decimal const magnitude = coherent(*spread, std::nullopt);
            m_value.kind = ParsedValue::Kind::Tolerance;
            m_value.lo = magnitude.negated();
            m_value.hi = magnitude;
            return true;
        }
        std::string_view const bare = nominalText.front() == '(' && nominalText.back() == ')' ? nominalText.substr(1, nominalText.size() - 2) : nominalText;
        if (percent) {
            auto const nominal = parseAtom(bare, m_context);
            auto const share = parseAtom(text::trimmed(spreadText.substr(0, spreadText.size() - 1)), ValueContext{});
            if (!nominal || !share || share->unit || !nominal->node.empty()) return false;
            Decimal const typ = coherent(*nominal, std::nullopt);
            Decimal const part = typ.magnitude() * share->value.scaledByPowerOfTen(-2);
            setTolerance(typ, part, part);
            return true;
        }
        auto const spread = parseAtom(spreadText, m_context);
        if (!spread || !spread->node.empty()) return false;
        ValueContext nominalContext = m_context;
        if (spread->unit) nominalContext.expected = spread->unit->coherent;
        auto const nominal = parseAtom(bare, nominalContext);
        if (!nominal) return false;
        Decimal const typ = coherent(*nominal, spread->unit);
        Decimal const part = coherent(*spread, nominal->unit);
        setTolerance(typ, part, part);
        noteNode(*nominal);
        return true;
    }

    void setTolerance(Decimal typ, Decimal below, Decimal above) {
        m_value.kind = ParsedValue::Kind::Tolerance;
        m_value.typ = typ;
        m_value.lo = typ - below;
        m_value.hi = typ + above;
    }

    // "4.20 +0.05/-0.10 V", "100 +10%/-20%"
    bool readAsymmetric(std::string_view text) {
        std::size_t const plus = text.find('+', 1);
        if (plus == std::string_view::npos) return false;
        std::size_t const minus = text.find('-', plus);
        if (minus == std::string_view::npos || minus < plus + 2) return false;
        std::string_view const nominalText = text::trimmed(text.substr(0, plus));
        std::string_view above = text::trimmed(text.substr(plus, minus - plus));
        std::string_view const below = text::trimmed(text.substr(minus));
        while (!above.empty() && (above.back() == '/' || above.back() == ' ' || above.back() == ',')) above.remove_suffix(1);
        auto const nominal = parseAtom(nominalText, m_context);
        if (!nominal || !nominal->node.empty() || above.size() < 2 || below.size() < 2) return false;
        bool const percent = above.back() == '%' || below.back() == '%';
        auto const without = [&](std::string_view part) { return percent && part.back() == '%' ? part.substr(0, part.size() - 1) : part; };
        auto const high = parseAtom(without(above), percent ? ValueContext{} : m_context);
        auto const low = parseAtom(without(below), percent ? ValueContext{} : m_context);
        if (!high || !low || low->value.sign() > 0) return false;
        std::optional<Unit> const shared = low->unit ? low->unit : (high->unit ? high->unit : nominal->unit);
        Decimal const typ = coherent(*nominal, shared);
        if (percent) {
            setTolerance(typ, typ.magnitude() * low->value.magnitude().scaledByPowerOfTen(-2), typ.magnitude() * high->value.scaledByPowerOfTen(-2));
        } else {
            setTolerance(typ, coherent(*low, shared).magnitude(), coherent(*high, shared));
        }
        return true;
    }

    bool readRangeText(std::string_view text) {
        auto const range = splitRange(text, m_context);
        if (!range) return false;
        auto const upper = parseAtom(range->upper, m_context);
        ValueContext lowerContext = m_context;
        if (upper && upper->unit) lowerContext.expected = upper->unit->coherent;
        auto const lower = parseAtom(range->lower, lowerContext);
        if (!lower || !upper) return false;
        // A unit behind the second number holds for both.
        Decimal const a = coherent(*lower, upper->unit);
        Decimal const b = coherent(*upper, lower->unit);
        m_value.kind = ParsedValue::Kind::Range;
        noteNode(*lower);
        bool const sameNode = lower->node == upper->node && lower->ratio == upper->ratio;
        if (!sameNode) {
            auto const tag = [](Atom const& atom) { return (atom.ratio ? "×" : "") + atom.node; };
            m_value.relativeTo = tag(*lower) + "," + tag(*upper);
            m_value.factorOf.clear();
        }
        m_value.lo = a;
        m_value.hi = b;
        if (sameNode && a > b) {
            std::swap(m_value.lo, m_value.hi);
            m_value.notes.emplace_back("range printed from high to low");
        }
        return true;
    }

    // "35G / 35 Gauss", "2000V / 2kV": one value said twice.
    bool readAlternatives(std::string_view text) {
        std::size_t const at = text.find(" / ");
        if (at == std::string_view::npos) return false;
        std::string remark;
        auto const first = parseAtom(withoutRemark(text.substr(0, at), remark), m_context);
        auto const second = parseAtom(withoutRemark(text.substr(at + 3), remark), m_context);
        if (!first || !second) return false;
        Decimal const a = coherent(*first, second->unit);
        Decimal const b = coherent(*second, first->unit);
        if (a != b) return false;
        m_value.kind = ParsedValue::Kind::Number;
        m_value.typ = a;
        return true;
    }

    bool readSingle(std::string_view text) {
        auto const atom = parseAtom(text, m_context);
        if (!atom) return false;
        m_value.kind = ParsedValue::Kind::Number;
        m_value.typ = coherent(*atom, std::nullopt);
        noteNode(*atom);
        return true;
    }

    void finish() {
        bool const number = m_value.kind == ParsedValue::Kind::Number;
        if (number && m_bound != BoundWord::None) {
            bool const upper = m_bound == BoundWord::AtMost || m_bound == BoundWord::Below;
            if (m_bound == BoundWord::About) {
                m_value.approximate = true;
            } else {
                (upper ? m_value.hi : m_value.lo) = m_value.typ;
                m_value.typ.reset();
                m_value.hiOpen = m_bound == BoundWord::Below;
                m_value.loOpen = m_bound == BoundWord::Above;
                m_value.kind = upper ? ParsedValue::Kind::AtMost : ParsedValue::Kind::AtLeast;
            }
        }
        bool const hasNumber = m_value.lo || m_value.typ || m_value.hi;
        if (hasNumber && m_value.unit.empty() && !m_context.expected.empty()) {
            m_value.unit = std::string(m_context.expected);
            m_value.notes.emplace_back("unit assumed from the parameter");
        } else if (hasNumber && !m_context.expected.empty() && m_value.unit != m_context.expected && m_value.factorOf.empty() &&
                   m_value.relativeTo.find("×") == std::string::npos) {
            m_value.unitConflict = true;
        }
    }

    ValueContext m_context;
    std::optional<Unit> const& m_columnUnit;
    BoundWord m_bound = BoundWord::None;
    std::string m_held;
    ParsedValue m_value;
};

bool hasNumber(ParsedValue const& value) { return value.lo || value.typ || value.hi; }

// The number that stands for a cell by itself.
std::optional<Decimal> single(ParsedValue const& value) {
    if (value.typ) return value.typ;
    if (value.kind == ParsedValue::Kind::AtMost) return value.hi;
    if (value.kind == ParsedValue::Kind::AtLeast) return value.lo;
    return std::nullopt;
}

struct Bound {
    std::optional<Decimal> value;
    bool open = false;
    std::string tag;  // node, with "×" in front for a ratio
};

std::string tagOf(ParsedValue const& value, bool upper) {
    if (!value.factorOf.empty()) return "×" + value.factorOf;
    std::size_t const comma = value.relativeTo.find(',');
    if (comma == std::string::npos) return value.relativeTo;
    return upper ? value.relativeTo.substr(comma + 1) : value.relativeTo.substr(0, comma);
}

}  // namespace

namespace {

// "280 | ±50 %": a share of the typical value in a column of its own.
void takeShare(ParsedValue& typ, ParsedValue& min, ParsedValue& max, ParsedCell& cell) {
    auto const isShare = [](ParsedValue const& value) {
        return value.kind == ParsedValue::Kind::Tolerance && !value.typ && value.hi && value.unit == "1" && value.unitPrinted == "%";
    };
    bool const nominal = typ.kind == ParsedValue::Kind::Number && typ.typ && typ.unit != "1" && typ.relativeTo.empty();
    ParsedValue* const share = isShare(max) && min.kind == ParsedValue::Kind::None ? &max : isShare(min) && max.kind == ParsedValue::Kind::None ? &min : nullptr;
    if (!nominal || share == nullptr) return;
    Decimal const part = typ.typ->magnitude() * *share->hi;
    typ.kind = ParsedValue::Kind::Tolerance;
    typ.lo = *typ.typ - part;
    typ.hi = *typ.typ + part;
    *share = ParsedValue{};
    cell.unitConflict = typ.unitConflict;
    cell.notes.emplace_back("tolerance printed in a column of its own");
}

}  // namespace

ParsedValue parseValue(std::string_view printed, ValueContext const& context) {
    std::optional<Unit> const columnUnit = columnUnitOf(context);
    return ValueReader(context, columnUnit).read(printed);
}

ParsedCell parseCell(CellTexts const& texts) {
    ParsedCell cell;
    ValueContext const context{.unit = texts.unit, .expected = texts.expected, .allCapitals = texts.allCapitals, .comma = texts.comma, .known = texts.known};
    std::optional<Unit> const columnUnit = columnUnitOf(context);
    ParsedValue min = ValueReader(context, columnUnit).read(texts.min);
    ParsedValue typ = ValueReader(context, columnUnit).read(texts.typ);
    ParsedValue max = ValueReader(context, columnUnit).read(texts.max);
    for (ParsedValue const* value : {&min, &typ, &max}) {
        for (std::string const& note : value->notes) {
            if (std::find(cell.notes.begin(), cell.notes.end(), note) == cell.notes.end()) cell.notes.push_back(note);
        }
        cell.unitConflict = cell.unitConflict || value->unitConflict;
    }
    Bound lo, middle, hi;
    takeShare(typ, min, max, cell);
    auto const set = [](Bound& bound, std::optional<Decimal> const& value, bool open, std::string tag) {
        if (value && !bound.value) bound = {value, open, std::move(tag)};
    };
    set(lo, min.lo ? min.lo : min.typ, min.loOpen, tagOf(min, false));
    set(hi, max.hi ? max.hi : max.typ, max.hiOpen, tagOf(max, true));
    set(middle, typ.typ, false, tagOf(typ, false));
    // What a cell says besides its column: "4.25±0.05" in the typical column,
    // "±20" or a range in the maximum column, "<0.2" in the typical column.
    for (ParsedValue const* value : {&typ, &max, &min}) {
        bool const whole = value->kind == ParsedValue::Kind::Tolerance || value->kind == ParsedValue::Kind::Range;
        if (whole && value->typ) set(middle, value->typ, false, tagOf(*value, false));
        if (whole || value->kind == ParsedValue::Kind::AtLeast) set(lo, value->lo, value->loOpen, tagOf(*value, false));
        if (whole || value->kind == ParsedValue::Kind::AtMost) set(hi, value->hi, value->hiOpen, tagOf(*value, true));
    }
    if (typ.kind == ParsedValue::Kind::Range) cell.notes.emplace_back("range in the typical column");

    for (auto const& [value, text] : {std::pair{&min, &cell.minValue}, std::pair{&typ, &cell.typValue}, std::pair{&max, &cell.maxValue}}) {
        if (auto const number = single(*value)) *text = number->toString();
    }
    if (!lo.value && !middle.value && !hi.value) return cell;

    model::Interval interval;
    auto const write = [](Bound const& bound) { return bound.value ? std::optional(bound.value->toString()) : std::nullopt; };
    interval.lo = write(lo);
    interval.typ = write(middle);
    interval.hi = write(hi);
    interval.loOpen = lo.open;
    interval.hiOpen = hi.open;
    std::string unit;
    for (ParsedValue const* value : {&min, &typ, &max}) {
        if (!hasNumber(*value) || value->unit.empty()) continue;
        bool const ratio = !value->factorOf.empty();
        if (unit.empty() || (unit == "1" && !ratio)) unit = value->unit;
        else if (unit != value->unit && !ratio) cell.unitConflict = true;
    }
    interval.unit = unit;
    // One node for all bounds, or "node of lo,node of hi".
    std::vector<std::string> tags;
    for (Bound const* bound : {&lo, &middle, &hi}) {
        if (bound->value) tags.push_back(bound->tag);
    }
    bool const one = std::all_of(tags.begin(), tags.end(), [&](std::string const& tag) { return tag == tags.front(); });
    constexpr std::string_view kTimes = "×";
    if (one && tags.front().substr(0, kTimes.size()) == kTimes) {
        interval.relativeTo = tags.front().substr(kTimes.size());
        interval.factor = *(lo.value ? interval.lo : middle.value ? interval.typ : interval.hi);
        interval.unit = "1";
    } else if (one) {
        interval.relativeTo = tags.front();
    } else {
        interval.relativeTo = (lo.value ? lo.tag : middle.tag) + "," + (hi.value ? hi.tag : middle.tag);
        cell.notes.emplace_back("bounds refer to different nodes");
    }
    if (one && interval.relativeTo.empty() && lo.value && hi.value && *lo.value > *hi.value) {
        // A detection threshold printed as a negative voltage: the column titles speak of magnitude.
        std::swap(interval.lo, interval.hi);
        std::swap(interval.loOpen, interval.hiOpen);
        cell.notes.emplace_back("minimum printed above maximum: exchanged");
    }
    cell.interval = std::move(interval);
    return cell;
}

namespace {

// Dashes as "-", gaps inside a number or an expression closed.
std::string closedUp(std::string_view text) {
    std::string result;
    for (char const c : text) {
        if (c != ' ') result.push_back(c);
    }
    return result;
}

}  // namespace

SplitCell splitValueCell(std::string_view printed) {
    SplitCell split;
    std::string const folded = text::foldForComparison(printed);
    std::string remark;
    std::string_view const text = withoutRemark(folded, remark);
    if (text != "NA" && text != "N/A" && isBlankMark(text)) return split;
    ValueContext const context;
    constexpr std::string_view kPlusMinus = "±";
    if (std::size_t const at = text.find(kPlusMinus); at != std::string_view::npos) {
        std::string_view const spread = text::trimmed(text.substr(at + kPlusMinus.size()));
        auto const atom = parseAtom(spread, context);
        std::string_view const nominal = text::trimmed(text.substr(0, at));
        auto const nominalAtom = parseAtom(nominal, context);
        if (atom && atom->unitText != "%" && (nominal.empty() || (nominalAtom && nominalAtom->unitText.empty()))) {
            std::string const whole = closedUp(nominal) + std::string(kPlusMinus) + closedUp(atom->numberText);
            (nominal.empty() ? split.max : split.typ) = whole;
            split.unit = atom->unitText;
        } else {
            (nominal.empty() ? split.max : split.typ) = std::string(text);
        }
        return split;
    }
    if (auto const range = splitRange(text, context)) {
        auto const upper = parseAtom(range->upper, context);
        std::string const upperUnit = upper && upper->unit ? upper->unit->coherent : std::string();
        auto const lower = parseAtom(range->lower, {.expected = upperUnit});
        if (lower && upper) {
            bool const sameUnit = lower->unitText.empty() || upper->unitText.empty() || lower->unitText == upper->unitText;
            if (sameUnit) {
                split.min = closedUp(lower->numberText);
                split.max = closedUp(upper->numberText);
                split.unit = upper->unitText.empty() ? lower->unitText : upper->unitText;
            } else {
                split.min = std::string(range->lower);
                split.max = std::string(range->upper);
            }
            return split;
        }
    }
    std::string_view rest = text;
    BoundWord const bound = takeBoundWord(rest);
    auto const atom = parseAtom(rest, context);
    if (!atom) {
        split.max = std::string(text);
        return split;
    }
    split.unit = atom->unitText;
    std::string const number = closedUp(atom->numberText);
    bool const sign = !text.empty() && (text.front() == '<' || text.front() == '>' || text.substr(0, 3) == "≤" || text.substr(0, 3) == "≥");
    std::string const shown = sign ? closedUp(text.substr(0, text.size() - rest.size())) + number : number;
    if (bound == BoundWord::AtLeast && !sign) split.min = shown;
    else if (bound == BoundWord::About) split.typ = shown;
    else split.max = shown;
    return split;
}

}  // namespace standin::quantity

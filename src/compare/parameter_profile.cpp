// Tested by tests/src/compare/parameter_pairing_test.cpp.
#include "compare/parameter_profile.h"

#include <algorithm>
#include <utility>

#include "quantity/condition.h"
#include "text/fold.h"
#include "text/utf8.h"

namespace standin::compare {

namespace {

using model::Parameter;

// Makers differ in the sign they give a current that flows out of a pin.
std::optional<quantity::Decimal> numberOf(std::optional<model::Value> const& value, std::string_view dimension) {
    if (!value || !value->value) return std::nullopt;
    auto const number = quantity::Decimal::parse(*value->value);
    return number && dimension == "A" ? std::optional(number->magnitude()) : number;
}

// "tPHL, tPLH" and "tPLH/tPHL" name the same two.
std::string symbolsKey(std::string_view printed) {
    constexpr std::size_t kLeastOfSeveral = 3;  // "V CC" is one symbol
    std::vector<std::string> symbols;
    bool several = true;
    for (std::size_t at = 0; at <= printed.size();) {
        std::size_t const end = std::min(printed.find_first_of(",/; ", at), printed.size());
        std::string key = quantity::symbolKey(printed.substr(at, end - at));
        if (!key.empty()) {
            several = several && key.size() >= kLeastOfSeveral;
            symbols.push_back(std::move(key));
        }
        at = end + 1;
    }
    if (!several || symbols.size() < 2) return quantity::symbolKey(printed);
    std::sort(symbols.begin(), symbols.end());
    std::string all;
    for (std::string const& symbol : symbols) all += (all.empty() ? "" : "/") + symbol;
    return all;
}

// A condition that is printed where other lines have values.
bool hasConditionInValues(Parameter const& p) {
    if (p.interval) return false;
    for (auto const* value : {&p.min, &p.typ, &p.max}) {
        if (!*value) continue;
        std::string const text = text::foldForComparison((*value)->text);
        bool const relates = text.find("≤") != std::string::npos || text.find("≥") != std::string::npos || text.find_first_of("<>") != std::string::npos;
        if (relates && std::any_of(text.begin(), text.end(), text::isAsciiLetter)) return true;
    }
    return false;
}

}  // namespace

Agreement agreementOf(ParameterProfile const& reference, ParameterProfile const& candidate) {
    Agreement found;
    for (std::size_t k = 0; k < reference.numbers.size(); ++k) {
        auto const& r = reference.numbers[k];
        auto const& c = candidate.numbers[k];
        if (r || c) ++found.printed;
        if (r && c && (*r == *c || quantity::equalAsPrinted(*r, *c))) ++found.agreeing;
    }
    return found;
}

ParameterProfile profileOf(Parameter const& p, VariantWords variant, PrintedRows const& rows, int index, ConditionMemo& memo) {
    ParameterProfile profile;
    profile.symbol = symbolsKey(p.symbol);
    profile.name = text::foldKey(p.name);
    profile.nameTokens = tokensOf(p.name);
    profile.variant = std::move(variant);
    profile.namesVariant = !p.variant.empty();
    if (p.interval) profile.dimension = p.interval->unit;
    profile.conditions = &memo.stated({p.condition, p.tableCondition});
    profile.conditionInValues = hasConditionInValues(p);
    if (!p.tableCondition.empty()) profile.grade = memo.temperatures(p.tableCondition);
    profile.numbers = {numberOf(p.min, profile.dimension), numberOf(p.typ, profile.dimension), numberOf(p.max, profile.dimension)};
    profile.row = rows.ofParameter(index);
    if (profile.row >= 0) {
        auto const& inRow = rows[profile.row].parameters;
        profile.placeInRow = static_cast<int>(std::find(inRow.begin(), inRow.end(), index) - inRow.begin());
    }
    return profile;
}

VariantRelation relateVersions(ParameterProfile const& reference, ParameterProfile const& candidate) {
    if (!reference.namesVariant && !candidate.namesVariant) return VariantRelation::Same;
    return relateVariants(reference.variant, candidate.variant);
}

std::string kinOf(Parameter const& p, ParameterProfile const& profile) {
    if (!p.canonical.empty()) return p.canonical;
    return profile.symbol.empty() ? profile.name : profile.symbol;
}

}  // namespace standin::compare

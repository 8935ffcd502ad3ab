// Recursive descent into a list of nodes, inputs before their users; evaluation
// walks the tree from the last node. Depth is bounded while parsing.
// Tested by tests/src/quantity/formula_test.cpp.
#include "quantity/formula.h"

#include <algorithm>
#include <array>
#include <optional>
#include <utility>

#include <fmt/format.h>

#include "quantity/unit.h"

namespace standin::quantity {

namespace {

constexpr int kDeepest = 32;
constexpr std::size_t kLongest = 2000;

bool isDigit(char byte) { return byte >= '0' && byte <= '9'; }
bool startsName(char byte) { return byte >= 'a' && byte <= 'z'; }
bool inName(char byte) { return startsName(byte) || isDigit(byte) || byte == '-' || byte == '_' || byte == '.'; }

void addOnce(std::vector<std::string>& list, std::string const& name) {
    if (std::find(list.begin(), list.end(), name) == list.end()) list.push_back(name);
}

}  // namespace

class Formula::Parser {
public:
    explicit Parser(std::string_view text) : m_text(text) {}

    model::Result<Formula> run() {
        if (m_text.size() > kLongest) return fault("is too long");
        auto const root = sum(0);
        skipBlanks();
        if (!m_wrong.empty()) return fault(m_wrong);
        if (!root || m_at != m_text.size()) return fault("is not a formula");
        return std::move(m_formula);
    }

private:
    using Index = std::optional<std::size_t>;

    tl::unexpected<model::Error> fault(std::string const& what) const {
        return tl::unexpected(model::Error{.kind = model::ErrorKind::Usage, .message = fmt::format("formula \"{}\" {} at character {}", m_text, what, m_at + 1), .file = {}, .page = 0});
    }

    Index wrong(std::string what) {
        if (m_wrong.empty()) m_wrong = std::move(what);
        return std::nullopt;
    }

    void skipBlanks() {
        while (m_at < m_text.size() && m_text[m_at] == ' ') ++m_at;
    }

    bool take(char byte) {
        skipBlanks();
        if (m_at == m_text.size() || m_text[m_at] != byte) return false;
        ++m_at;
        return true;
    }

    std::size_t push(Node node) {
        m_formula.m_nodes.push_back(std::move(node));
        return m_formula.m_nodes.size() - 1;
    }

    std::size_t join(Kind kind, std::vector<std::size_t> inputs) {
        Node node;
        node.kind = kind;
        node.inputs = std::move(inputs);
        return push(std::move(node));
    }

    Index sum(int depth) {
        if (depth > kDeepest) return wrong("is nested too deep");
        Index left = product(depth);
        while (left) {
            Kind const kind = take('+') ? Kind::Add : take('-') ? Kind::Subtract : Kind::Number;
            if (kind == Kind::Number) break;
            Index const right = product(depth);
            if (!right) return std::nullopt;
            left = join(kind, {*left, *right});
        }
        return left;
    }

    Index product(int depth) {
        Index left = operand(depth);
        while (left) {
            Kind const kind = take('*') ? Kind::Multiply : take('/') ? Kind::Divide : Kind::Number;
            if (kind == Kind::Number) break;
            Index const right = operand(depth);
            if (!right) return std::nullopt;
            left = join(kind, {*left, *right});
        }
        return left;
    }

    Index operand(int depth) {
        skipBlanks();
        if (m_at == m_text.size()) return wrong("ends too early");
        if (take('(')) {
            Index const inner = sum(depth + 1);
            return inner && take(')') ? inner : wrong("lacks a closing bracket");
        }
        if (isDigit(m_text[m_at])) return number();
        if (startsName(m_text[m_at])) return name(depth);
        return wrong("has something that is no number or name");
    }

    Index number() {
        std::size_t end = m_at;
        while (end < m_text.size() && (isDigit(m_text[end]) || m_text[end] == '.')) ++end;
        auto value = Decimal::parse(m_text.substr(m_at, end - m_at));
        if (!value) return wrong("has a number that cannot be read");
        m_at = end;
        Node node;
        skipBlanks();
        std::size_t length = 0;
        if (auto const unit = parseUnitPrefix(m_text.substr(m_at), {}, length)) {
            auto const known = dimensionOf(unit->coherent);
            if (!known) return wrong("has a unit that cannot take part");
            m_at += length;
            value = toCoherent(*value, *unit);
            node.number.dimension = known->dimension;
        }
        node.number.limits = exactly(*value);
        return push(std::move(node));
    }

    Index name(int depth) {
        std::size_t const begin = m_at;
        while (m_at < m_text.size() && inName(m_text[m_at])) ++m_at;
        auto const word = m_text.substr(begin, m_at - begin);
        if (take('(')) return call(word, depth);
        Node node;
        node.kind = Kind::Name;
        node.name = std::string(word);
        return push(std::move(node));
    }

    Index call(std::string_view word, int depth) {
        struct Function {
            std::string_view name;
            Kind kind;
            std::size_t least, most;
        };
        constexpr std::array<Function, 9> kFunctions = {{{"abs", Kind::Abs, 1, 1}, {"square", Kind::Square, 1, 1}, {"plusminus", Kind::PlusMinus, 1, 1},
                                                         {"lower", Kind::Lower, 1, 1}, {"upper", Kind::Upper, 1, 1}, {"first", Kind::First, 2, 8},
                                                         {"or", Kind::Or, 2, 2}, {"atleast", Kind::AtLeast, 2, 2}, {"ifover", Kind::IfOver, 2, 2}}};
        auto const function = std::find_if(kFunctions.begin(), kFunctions.end(), [word](Function const& known) { return known.name == word; });
        if (function == kFunctions.end()) return wrong(fmt::format("has the unknown function \"{}\"", word));
        std::vector<std::size_t> inputs;
        do {
            Index const input = sum(depth + 1);
            if (!input) return std::nullopt;
            inputs.push_back(*input);
        } while (take(','));
        if (!take(')')) return wrong("lacks a closing bracket");
        if (inputs.size() < function->least || inputs.size() > function->most) return wrong(fmt::format("gives \"{}\" another number of values than it takes", word));
        bool const fallback = function->kind == Kind::Or || function->kind == Kind::AtLeast || function->kind == Kind::IfOver;
        if (fallback && m_formula.m_nodes[inputs.back()].kind != Kind::Number) return wrong(fmt::format("needs a number as the second value of \"{}\"", word));
        return join(function->kind, std::move(inputs));
    }

    std::string_view m_text;
    std::size_t m_at = 0;
    std::string m_wrong;
    Formula m_formula;
};

class Formula::Evaluator {
public:
    Evaluator(std::vector<Node> const& nodes, Lookup const& lookup) : m_nodes(nodes), m_lookup(lookup) {}

    Evaluated run() {
        Operand const whole = valueOf(m_nodes.size() - 1);
        m_result.limits = m_result.refused.empty() ? whole.limits : Limits{};
        m_result.dimension = whole.dimension;
        return std::move(m_result);
    }

private:
    Operand valueOf(std::size_t index) {
        Node const& node = m_nodes[index];
        switch (node.kind) {
            case Kind::Number: return node.number;
            case Kind::Name: return named(node.name);
            case Kind::Add:
            case Kind::Subtract: return sumOf(node);
            case Kind::Multiply: {
                auto const [a, b] = pairOf(node);
                return {multiply(a.limits, b.limits), a.dimension * b.dimension};
            }
            case Kind::Divide: {
                auto const [a, b] = pairOf(node);
                return {divide(a.limits, b.limits), a.dimension / b.dimension};
            }
            case Kind::First: return firstOf(node);
            case Kind::Or:
            case Kind::AtLeast: return fallbackOf(node);
            case Kind::IfOver: return largeOf(node);
            default: return functionOf(node);
        }
    }

    Operand named(std::string const& name) {
        Operand found = m_lookup(name);
        bool const known = std::find(m_result.used.begin(), m_result.used.end(), name) != m_result.used.end();
        if (found.limits.empty()) {
            addOnce(m_result.missing, name);
        } else {
            m_result.repeated = m_result.repeated || known;
            addOnce(m_result.used, name);
        }
        return found;
    }

    std::pair<Operand, Operand> pairOf(Node const& node) {
        Operand a = valueOf(node.inputs[0]);
        Operand b = valueOf(node.inputs[1]);
        return {std::move(a), std::move(b)};
    }

    Operand sumOf(Node const& node) {
        auto const [a, b] = pairOf(node);
        bool const stated = !a.limits.empty() && !b.limits.empty();
        if (stated && !(a.dimension == b.dimension)) {
            if (m_result.refused.empty()) m_result.refused = "values of different dimensions would be added";
            return {};
        }
        return {node.kind == Kind::Add ? add(a.limits, b.limits) : subtract(a.limits, b.limits), a.limits.empty() ? b.dimension : a.dimension};
    }

    // Alternatives that state nothing leave no trace, unless none does.
    Operand firstOf(Node const& node) {
        auto const before = m_result;
        std::vector<std::string> missing = before.missing;
        for (std::size_t const input : node.inputs) {
            m_result = before;
            Operand const found = valueOf(input);
            if (!found.limits.empty()) return found;
            for (auto const& name : m_result.missing) addOnce(missing, name);
        }
        m_result = before;
        m_result.missing = std::move(missing);
        return {};
    }

    Operand fallbackOf(Node const& node) {
        auto const before = m_result;
        Operand const found = valueOf(node.inputs[0]);
        if (!found.limits.empty()) return found;
        auto const missing = m_result.missing;
        m_result = before;
        for (auto const& name : missing) {
            if (std::find(before.missing.begin(), before.missing.end(), name) != before.missing.end()) continue;
            addOnce(m_result.assumed, name);
            if (node.kind == Kind::AtLeast) addOnce(m_result.missing, name);
        }
        Operand taken = m_nodes[node.inputs[1]].number;
        if (node.kind == Kind::AtLeast) taken.limits.hi.reset();
        return taken;
    }

    Operand largeOf(Node const& node) {
        auto const before = m_result;
        Operand found = valueOf(node.inputs[0]);
        Decimal const least = *m_nodes[node.inputs[1]].number.limits.lo;
        auto const small = [least](std::optional<Decimal> const& value) { return value && *value < least; };
        if (!small(found.limits.lo) && !small(found.limits.typ) && !small(found.limits.hi)) return found;
        std::vector<std::string> const used = m_result.used;
        m_result = before;
        for (auto const& name : used) {
            if (std::find(before.used.begin(), before.used.end(), name) == before.used.end()) addOnce(m_result.missing, name);
        }
        return {{}, found.dimension};
    }

    Operand functionOf(Node const& node) {
        Operand const a = valueOf(node.inputs[0]);
        switch (node.kind) {
            case Kind::Abs: return {magnitude(a.limits), a.dimension};
            case Kind::Square: return {square(a.limits), a.dimension * a.dimension};
            case Kind::PlusMinus: return {a.limits.empty() ? Limits{} : plusMinus(a.limits), a.dimension};
            case Kind::Lower: return {a.limits.lo ? exactly(*a.limits.lo) : Limits{}, a.dimension};
            case Kind::Upper: return {a.limits.hi ? exactly(*a.limits.hi) : Limits{}, a.dimension};
            default: return {};
        }
    }

    std::vector<Node> const& m_nodes;
    Lookup const& m_lookup;
    Evaluated m_result;
};

model::Result<Formula> Formula::parse(std::string_view text) { return Parser(text).run(); }

std::vector<std::string> Formula::names() const {
    std::vector<std::string> names;
    for (auto const& node : m_nodes) {
        if (node.kind == Kind::Name) addOnce(names, node.name);
    }
    return names;
}

Evaluated Formula::evaluate(Lookup const& lookup) const {
    if (m_nodes.empty()) return {};
    return Evaluator(m_nodes, lookup).run();
}

}  // namespace standin::quantity

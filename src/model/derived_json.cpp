// Field by field, in the order of the schema. Tested by tests/src/model/derived_json_test.cpp.
#include "model/derived_json.h"

#include <algorithm>

#include "model/json_parts.h"

namespace standin::model::json_parts {

namespace {

Json inputJson(Input const& input) {
    return Members()
        .add("name", input.name)
        .add("parameter", textOrNull(input.parameter))
        .add("page", input.page > 0 ? Json(input.page) : Json(nullptr))
        .add("box", input.page > 0 ? boxJson(input.box) : Json(nullptr))
        .add("text", input.text)
        .take();
}

Json inputsJson(std::vector<Input> const& inputs) {
    Json array = Json::array();
    for (auto const& input : inputs) array.push_back(inputJson(input));
    return array;
}

std::vector<Input> inputsOf(Json const& object) {
    std::vector<Input> inputs;
    for (auto const& one : arrayOf(object, "inputs")) {
        inputs.push_back({.name = textOf(one, "name"), .parameter = textOf(one, "parameter"), .page = intOf(one, "page"), .box = boxOf(one), .text = textOf(one, "text")});
    }
    return inputs;
}

Json workedJson(std::optional<WorkedValue> const& value) {
    if (!value) return nullptr;
    return Members()
        .add("min", textOrNull(value->min))
        .add("typ", textOrNull(value->typ))
        .add("max", textOrNull(value->max))
        .add("unit", value->unit)
        .add("inputs", inputsJson(value->inputs))
        .add("notes", value->notes)
        .take();
}

bool hasObject(Json const& object, char const* key) { return object.is_object() && object.contains(key) && object.at(key).is_object(); }

std::optional<WorkedValue> workedOf(Json const& object, char const* key) {
    if (!hasObject(object, key)) return std::nullopt;
    Json const& value = object.at(key);
    return WorkedValue{.min = textOf(value, "min"), .typ = textOf(value, "typ"), .max = textOf(value, "max"), .unit = textOf(value, "unit"), .inputs = inputsOf(value), .notes = textsOf(value, "notes")};
}

// "r:p3", "c:p7", "circuit.supply_resistor": each once.
Json inputIds(Derived const& derived) {
    std::vector<std::string> ids;
    auto const addSide = [&ids](std::optional<WorkedValue> const& side, char const* prefix) {
        if (!side) return;
        for (auto const& input : side->inputs) {
            auto id = input.parameter.empty() ? input.name : prefix + input.parameter;
            if (std::find(ids.begin(), ids.end(), id) == ids.end()) ids.push_back(std::move(id));
        }
    };
    addSide(derived.reference, "r:");
    addSide(derived.candidate, "c:");
    return ids;
}

Json resultJson(std::optional<CheckResult> const& result) {
    if (!result) return nullptr;
    return Members()
        .add("value", textOrNull(result->value))
        .add("outcome", nameOf(result->outcome))
        .add("why", textOrNull(result->why))
        .add("inputs", inputsJson(result->inputs))
        .take();
}

std::optional<CheckResult> resultOf(Json const& object, char const* key) {
    if (!hasObject(object, key)) return std::nullopt;
    Json const& result = object.at(key);
    return CheckResult{.value = textOf(result, "value"), .outcome = enumOf(result, "outcome", CheckOutcome::Open), .why = textOf(result, "why"), .inputs = inputsOf(result)};
}

Json boundsJson(std::optional<CheckBounds> const& bounds) {
    if (!bounds) return nullptr;
    return Members()
        .add("quantity", bounds->quantity)
        .add("min", textOrNull(bounds->min))
        .add("max", textOrNull(bounds->max))
        .add("unit", bounds->unit)
        .add("above_min", bounds->aboveMin)
        .add("below_max", bounds->belowMax)
        .take();
}

std::optional<CheckBounds> boundsOf(Json const& check) {
    if (!hasObject(check, "bounds")) return std::nullopt;
    Json const& bounds = check.at("bounds");
    return CheckBounds{.quantity = textOf(bounds, "quantity"),
                       .min = textOf(bounds, "min"),
                       .max = textOf(bounds, "max"),
                       .unit = textOf(bounds, "unit"),
                       .aboveMin = boolOf(bounds, "above_min"),
                       .belowMax = boolOf(bounds, "below_max")};
}

}  // namespace

Json derivedJson(std::vector<Derived> const& derived) {
    Json array = Json::array();
    for (auto const& one : derived) {
        array.push_back(Members()
                            .add("canonical", one.canonical)
                            .add("title", one.title)
                            .add("formula", one.formula)
                            .add("reference", workedJson(one.reference))
                            .add("candidate", workedJson(one.candidate))
                            .add("relation", nameOf(one.relation))
                            .add("judgement", nameOf(one.judgement))
                            .add("inputs", inputIds(one))
                            .add("notes", one.notes)
                            .take());
    }
    return array;
}

Json cellJson(std::vector<CellCheck> const& checks) {
    Json array = Json::array();
    for (auto const& one : checks) {
        array.push_back(Members()
                            .add("check", one.check)
                            .add("title", one.title)
                            .add("limit", textOrNull(one.limit))
                            .add("bounds", boundsJson(one.bounds))
                            .add("reference", resultJson(one.reference))
                            .add("candidate", resultJson(one.candidate))
                            .add("level", one.level)
                            .add("finding", textOrNull(one.finding))
                            .take());
    }
    return array;
}

std::vector<Derived> derivedOf(Json const& array) {
    std::vector<Derived> derived;
    if (!array.is_array()) return derived;
    for (auto const& one : array) {
        derived.push_back({.canonical = textOf(one, "canonical"),
                           .title = textOf(one, "title"),
                           .formula = textOf(one, "formula"),
                           .reference = workedOf(one, "reference"),
                           .candidate = workedOf(one, "candidate"),
                           .relation = enumOf(one, "relation", Relation::NotComparable),
                           .judgement = enumOf(one, "judgement", Judgement::Open),
                           .notes = textsOf(one, "notes")});
    }
    return derived;
}

std::vector<CellCheck> cellOf(Json const& array) {
    std::vector<CellCheck> checks;
    if (!array.is_array()) return checks;
    for (auto const& one : array) {
        checks.push_back({.check = textOf(one, "check"),
                          .title = textOf(one, "title"),
                          .limit = textOf(one, "limit"),
                          .bounds = boundsOf(one),
                          .reference = resultOf(one, "reference"),
                          .candidate = resultOf(one, "candidate"),
                          .level = intOf(one, "level"),
                          .finding = textOf(one, "finding")});
    }
    return checks;
}

}  // namespace standin::model::json_parts

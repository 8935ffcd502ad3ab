// Field by field, in the order of the schema. Tested by
// tests/src/model/datasheet_json_test.cpp.
#include "model/datasheet_json.h"

#include "model/json_parts.h"

namespace standin::model {

using namespace json_parts;

namespace {

constexpr char const* kSchema = "standin.datasheet/1";

template <class T, class Write>
Json listJson(std::vector<T> const& values, Write write) {
    Json array = Json::array();
    for (auto const& value : values) array.push_back(write(value));
    return array;
}

template <class T, class Read>
std::vector<T> listOf(Json const& object, char const* key, Read read) {
    std::vector<T> values;
    auto const& array = arrayOf(object, key);
    values.reserve(array.size());
    for (auto const& entry : array) values.push_back(read(entry));
    return values;
}

Json optionalText(std::optional<std::string> const& text) { return text ? Json(*text) : Json(nullptr); }

std::optional<std::string> optionalTextOf(Json const& object, char const* key) {
    auto const found = object.find(key);
    if (found == object.end() || !found->is_string()) return std::nullopt;
    return found->get<std::string>();
}

Json sectionJson(Section const& s) {
    return {{"id", s.id}, {"kind", nameOf(s.kind)}, {"title", s.title}, {"level", s.level}, {"page", s.page}, {"box", boxJson(s.box)}};
}

Section sectionOf(Json const& j) {
    return {textOf(j, "id"), enumOf(j, "kind", SectionKind::Other), textOf(j, "title"), intOf(j, "level", 1), intOf(j, "page"), boxOf(j)};
}

Json cellJson(Cell const& c) {
    return {{"row", c.row},         {"column", c.column}, {"row_span", c.rowSpan}, {"column_span", c.columnSpan},
            {"text", c.text},       {"header", c.header}, {"box", boxJson(c.box)}};
}

Cell cellOf(Json const& j) {
    Cell c;
    c.row = intOf(j, "row");
    c.column = intOf(j, "column");
    c.rowSpan = std::max(1, intOf(j, "row_span", 1));
    c.columnSpan = std::max(1, intOf(j, "column_span", 1));
    c.text = textOf(j, "text");
    c.header = boolOf(j, "header");
    c.box = boxOf(j);
    return c;
}

Json tableJson(Table const& t) {
    return {{"id", t.id},
            {"section", textOrNull(t.section)},
            {"page", t.page},
            {"box", boxJson(t.box)},
            {"kind", nameOf(t.kind)},
            {"continues", textOrNull(t.continues)},
            {"caption", textOrNull(t.caption)},
            {"lead", textOrNull(t.lead)},
            {"rows", t.rows},
            {"columns", t.columns},
            {"head_rows", t.headRows},
            {"confidence", {{"score", t.confidence}, {"reasons", t.reasons}}},
            {"cells", listJson(t.cells, cellJson)}};
}

Table tableOf(Json const& j) {
    Table t;
    t.id = textOf(j, "id");
    t.section = textOf(j, "section");
    t.page = intOf(j, "page");
    t.box = boxOf(j);
    t.kind = enumOf(j, "kind", TableKind::Other);
    t.continues = textOf(j, "continues");
    t.caption = textOf(j, "caption");
    t.lead = textOf(j, "lead");
    t.rows = intOf(j, "rows");
    t.columns = intOf(j, "columns");
    t.headRows = intOf(j, "head_rows");
    if (auto const confidence = j.find("confidence"); confidence != j.end()) {
        t.confidence = doubleOf(*confidence, "score");
        t.reasons = textsOf(*confidence, "reasons");
    }
    t.cells = listOf<Cell>(j, "cells", cellOf);
    return t;
}

Json valueJson(std::optional<Value> const& v) {
    if (!v) return nullptr;
    return {{"text", v->text}, {"printed", v->printed}, {"value", v->value ? numberJson(*v->value) : Json(nullptr)},
            {"decimal", optionalText(v->value)}, {"box", boxJson(v->box)}};
}

std::optional<Value> valueOf(Json const& object, char const* key) {
    auto const found = object.find(key);
    if (found == object.end() || !found->is_object()) return std::nullopt;
    return Value{textOf(*found, "text"), textOf(*found, "printed"), optionalTextOf(*found, "decimal"), boxOf(*found)};
}

Json intervalJson(std::optional<Interval> const& i) {
    if (!i) return nullptr;
    return {{"lo", optionalText(i->lo)},
            {"typ", optionalText(i->typ)},
            {"hi", optionalText(i->hi)},
            {"lo_open", i->loOpen},
            {"hi_open", i->hiOpen},
            {"unit", i->unit},
            {"relative_to", textOrNull(i->relativeTo)},
            {"factor", textOrNull(i->factor)}};
}

std::optional<Interval> intervalOf(Json const& object) {
    auto const found = object.find("interval");
    if (found == object.end() || !found->is_object()) return std::nullopt;
    return Interval{optionalTextOf(*found, "lo"), optionalTextOf(*found, "typ"), optionalTextOf(*found, "hi"),
                    boolOf(*found, "lo_open"),    boolOf(*found, "hi_open"),     textOf(*found, "unit"),
                    textOf(*found, "relative_to"), textOf(*found, "factor")};
}

Json parameterJson(Parameter const& p) {
    return {{"id", p.id},
            {"section", textOrNull(p.section)},
            {"table", textOrNull(p.table)},
            {"kind", nameOf(p.kind)},
            {"name", textOrNull(p.name)},
            {"symbol", textOrNull(p.symbol)},
            {"canonical", textOrNull(p.canonical)},
            {"condition", textOrNull(p.condition)},
            {"table_condition", textOrNull(p.tableCondition)},
            {"variant", textOrNull(p.variant)},
            {"min", valueJson(p.min)},
            {"typ", valueJson(p.typ)},
            {"max", valueJson(p.max)},
            {"unit", textOrNull(p.unit)},
            {"interval", intervalJson(p.interval)},
            {"grade", nameOf(p.grade)},
            {"notes", p.notes},
            {"confidence", {{"score", p.confidence.score}, {"reasons", p.confidence.reasons}}},
            {"page", p.page},
            {"box", boxJson(p.box)},
            {"printed", p.printed}};
}

Parameter parameterOf(Json const& j) {
    Parameter p;
    p.id = textOf(j, "id");
    p.section = textOf(j, "section");
    p.table = textOf(j, "table");
    p.kind = enumOf(j, "kind", ParameterKind::Other);
    p.name = textOf(j, "name");
    p.symbol = textOf(j, "symbol");
    p.canonical = textOf(j, "canonical");
    p.condition = textOf(j, "condition");
    p.tableCondition = textOf(j, "table_condition");
    p.variant = textOf(j, "variant");
    p.min = valueOf(j, "min");
    p.typ = valueOf(j, "typ");
    p.max = valueOf(j, "max");
    p.unit = textOf(j, "unit");
    p.interval = intervalOf(j);
    p.grade = enumOf(j, "grade", Grade::G);
    p.notes = textsOf(j, "notes");
    if (auto const confidence = j.find("confidence"); confidence != j.end()) {
        p.confidence = {doubleOf(*confidence, "score"), textsOf(*confidence, "reasons")};
    }
    p.page = intOf(j, "page");
    p.box = boxOf(j);
    p.printed = textOf(j, "printed");
    return p;
}

Json pinJson(Pin const& p) {
    return {{"number", p.number}, {"name", p.name}, {"function", textOrNull(p.function)}, {"package", textOrNull(p.package)},
            {"page", p.page},     {"box", boxJson(p.box)}};
}

Pin pinOf(Json const& j) {
    return {textOf(j, "number"), textOf(j, "name"), textOf(j, "function"), textOf(j, "package"), intOf(j, "page"), boxOf(j)};
}

Json packageJson(Package const& p) {
    return {{"name", p.name}, {"canonical", textOrNull(p.canonical)}, {"pins", p.pins ? Json(*p.pins) : Json(nullptr)},
            {"page", p.page}, {"box", boxJson(p.box)}};
}

Package packageOf(Json const& j) {
    Package p{textOf(j, "name"), textOf(j, "canonical"), std::nullopt, intOf(j, "page"), boxOf(j)};
    if (auto const pins = j.find("pins"); pins != j.end() && pins->is_number_integer()) p.pins = intOf(j, "pins");
    return p;
}

Json orderingJson(OrderingLine const& o) {
    Json attributes = Json::object();
    for (auto const& [title, text] : o.attributes) attributes[title] = text;
    return {{"code", o.code}, {"attributes", attributes}, {"table", textOrNull(o.table)}, {"page", o.page}, {"box", boxJson(o.box)}};
}

OrderingLine orderingOf(Json const& j) {
    OrderingLine o{textOf(j, "code"), {}, textOf(j, "table"), intOf(j, "page"), boxOf(j)};
    if (auto const attributes = j.find("attributes"); attributes != j.end() && attributes->is_object()) {
        for (auto const& [title, text] : attributes->items()) {
            if (text.is_string()) o.attributes.emplace_back(title, text.get<std::string>());
        }
    }
    return o;
}

Json featureJson(Feature const& f) {
    return {{"canonical", f.canonical}, {"state", f.state}, {"page", f.page}, {"box", boxJson(f.box)}, {"text", f.text}};
}

Feature featureOf(Json const& j) { return {textOf(j, "canonical"), textOf(j, "state"), intOf(j, "page"), boxOf(j), textOf(j, "text")}; }

Json placeJson(Place const& p) { return {{"page", p.page}, {"box", boxJson(p.box)}}; }
Place placeOf(Json const& j) { return {intOf(j, "page"), boxOf(j)}; }

Json sentenceJson(Sentence const& s) {
    return {{"id", s.id}, {"section", textOrNull(s.section)}, {"text", s.text}, {"places", listJson(s.places, placeJson)}};
}

Sentence sentenceOf(Json const& j) { return {textOf(j, "id"), textOf(j, "section"), textOf(j, "text"), listOf<Place>(j, "places", placeOf)}; }

Json figureJson(Figure const& f) {
    return {{"id", f.id},           {"section", textOrNull(f.section)}, {"caption", textOrNull(f.caption)},
            {"page", f.page},       {"box", boxJson(f.box)},            {"read", nameOf(f.read)},
            {"texts", placedTextsJson(f.texts)}, {"shape", textOrNull(f.shape)}};
}

Figure figureOf(Json const& j) {
    return {textOf(j, "id"), textOf(j, "section"), textOf(j, "caption"),         intOf(j, "page"),
            boxOf(j),        enumOf(j, "read", FigureReading::Vector), placedTextsOf(j, "texts"), textOf(j, "shape")};
}

Json furnitureJson(Furniture const& f) {
    return {{"kind", nameOf(f.kind)}, {"text", f.text}, {"places", listJson(f.places, placeJson)}};
}

Furniture furnitureOf(Json const& j) {
    return {enumOf(j, "kind", Furniture::Kind::RunningHead), textOf(j, "text"), listOf<Place>(j, "places", placeOf)};
}

Json datasheetJson(Datasheet const& d) {
    return {{"schema", kSchema},
            {"document", documentJson(d.document)},
            {"sections", listJson(d.sections, sectionJson)},
            {"tables", listJson(d.tables, tableJson)},
            {"parameters", listJson(d.parameters, parameterJson)},
            {"pins", listJson(d.pins, pinJson)},
            {"packages", listJson(d.packages, packageJson)},
            {"ordering", listJson(d.ordering, orderingJson)},
            {"features", listJson(d.features, featureJson)},
            {"text", listJson(d.text, sentenceJson)},
            {"figures", listJson(d.figures, figureJson)},
            {"furniture", listJson(d.furniture, furnitureJson)},
            {"coverage", coverageJson(d.coverage)}};
}

Result<Datasheet> datasheetOf(Json const& json, std::string const& file) {
    if (textOf(json, "schema") != kSchema) {
        return tl::unexpected(Error{ErrorKind::Unsupported, "is JSON of another schema than standin.datasheet/1; give the PDF or read it again", file});
    }
    Datasheet d;
    if (auto const document = json.find("document"); document != json.end()) d.document = documentOf(*document);
    d.sections = listOf<Section>(json, "sections", sectionOf);
    d.tables = listOf<Table>(json, "tables", tableOf);
    d.parameters = listOf<Parameter>(json, "parameters", parameterOf);
    d.pins = listOf<Pin>(json, "pins", pinOf);
    d.packages = listOf<Package>(json, "packages", packageOf);
    d.ordering = listOf<OrderingLine>(json, "ordering", orderingOf);
    d.features = listOf<Feature>(json, "features", featureOf);
    d.text = listOf<Sentence>(json, "text", sentenceOf);
    d.figures = listOf<Figure>(json, "figures", figureOf);
    d.furniture = listOf<Furniture>(json, "furniture", furnitureOf);
    if (auto const coverage = json.find("coverage"); coverage != json.end()) d.coverage = coverageOf(*coverage);
    return d;
}

}  // namespace

std::string toJson(Datasheet const& datasheet) { return dumped(datasheetJson(datasheet)); }

std::vector<std::uint8_t> toCbor(Datasheet const& datasheet) { return Json::to_cbor(datasheetJson(datasheet)); }

Result<Datasheet> datasheetFromJson(std::string_view json, std::string const& file) {
    auto object = parsed(json, file);
    if (!object) return tl::unexpected(object.error());
    return datasheetOf(*object, file);
}

Result<Datasheet> datasheetFromCbor(std::vector<std::uint8_t> const& cbor, std::string const& file) {
    auto object = parsedCbor(cbor, file);
    if (!object) return tl::unexpected(object.error());
    return datasheetOf(*object, file);
}

}  // namespace standin::model

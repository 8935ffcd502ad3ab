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
    return Members()
        .add("id", s.id)
        .add("kind", nameOf(s.kind))
        .add("title", s.title)
        .add("level", s.level)
        .add("page", s.page)
        .add("box", boxJson(s.box))
        .take();
}

Section sectionOf(Json const& j) {
    return {textOf(j, "id"), enumOf(j, "kind", SectionKind::Other), textOf(j, "title"), intOf(j, "level", 1), intOf(j, "page"), boxOf(j)};
}

Json cellJson(Cell const& c) {
    Members members;
    members.add("row", c.row)
        .add("column", c.column)
        .add("row_span", c.rowSpan)
        .add("column_span", c.columnSpan)
        .add("text", c.text)
        .add("header", c.header)
        .add("box", boxJson(c.box));
    if (!c.leader.empty()) members.add("leader", c.leader);
    return members.take();
}

Cell cellOf(Json const& j) {
    Cell c;
    c.row = intOf(j, "row");
    c.column = intOf(j, "column");
    c.rowSpan = std::max(1, intOf(j, "row_span", 1));
    c.columnSpan = std::max(1, intOf(j, "column_span", 1));
    c.text = textOf(j, "text");
    c.header = boolOf(j, "header");
    c.leader = textOf(j, "leader");
    c.box = boxOf(j);
    return c;
}

Json tableJson(Table const& t) {
    return Members()
        .add("id", t.id)
        .add("section", textOrNull(t.section))
        .add("page", t.page)
        .add("box", boxJson(t.box))
        .add("kind", nameOf(t.kind))
        .add("continues", textOrNull(t.continues))
        .add("caption", textOrNull(t.caption))
        .add("lead", textOrNull(t.lead))
        .add("rows", t.rows)
        .add("columns", t.columns)
        .add("head_rows", t.headRows)
        .add("confidence", Members().add("score", t.confidence).add("reasons", t.reasons).take())
        .add("cells", listJson(t.cells, cellJson))
        .take();
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
    return Members()
        .add("text", v->text)
        .add("printed", v->printed)
        .add("value", v->value ? numberJson(*v->value) : Json(nullptr))
        .add("decimal", optionalText(v->value))
        .add("box", boxJson(v->box))
        .take();
}

std::optional<Value> valueOf(Json const& object, char const* key) {
    auto const found = object.find(key);
    if (found == object.end() || !found->is_object()) return std::nullopt;
    return Value{textOf(*found, "text"), textOf(*found, "printed"), optionalTextOf(*found, "decimal"), boxOf(*found)};
}

Json intervalJson(std::optional<Interval> const& i) {
    if (!i) return nullptr;
    return Members()
        .add("lo", optionalText(i->lo))
        .add("typ", optionalText(i->typ))
        .add("hi", optionalText(i->hi))
        .add("lo_open", i->loOpen)
        .add("hi_open", i->hiOpen)
        .add("unit", i->unit)
        .add("relative_to", textOrNull(i->relativeTo))
        .add("factor", textOrNull(i->factor))
        .take();
}

std::optional<Interval> intervalOf(Json const& object) {
    auto const found = object.find("interval");
    if (found == object.end() || !found->is_object()) return std::nullopt;
    return Interval{optionalTextOf(*found, "lo"), optionalTextOf(*found, "typ"), optionalTextOf(*found, "hi"),
                    boolOf(*found, "lo_open"),    boolOf(*found, "hi_open"),     textOf(*found, "unit"),
                    textOf(*found, "relative_to"), textOf(*found, "factor")};
}

Json parameterJson(Parameter const& p) {
    Members members;
    members.add("id", p.id)
        .add("section", textOrNull(p.section))
        .add("table", textOrNull(p.table))
        .add("kind", nameOf(p.kind))
        .add("name", textOrNull(p.name))
        .add("symbol", textOrNull(p.symbol))
        .add("canonical", textOrNull(p.canonical))
        .add("condition", textOrNull(p.condition))
        .add("table_condition", textOrNull(p.tableCondition))
        .add("variant", textOrNull(p.variant))
        .add("min", valueJson(p.min))
        .add("typ", valueJson(p.typ))
        .add("max", valueJson(p.max))
        .add("unit", textOrNull(p.unit))
        .add("interval", intervalJson(p.interval))
        .add("grade", nameOf(p.grade))
        .add("notes", p.notes)
        .add("confidence", Members().add("score", p.confidence.score).add("reasons", p.confidence.reasons).take())
        .add("corrected", p.corrected)
        .add("page", p.page)
        .add("box", boxJson(p.box))
        .add("printed", p.printed);
    if (p.recognised) members.add("recognised", true);
    return members.take();
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
    p.corrected = textsOf(j, "corrected");
    p.page = intOf(j, "page");
    p.box = boxOf(j);
    p.printed = textOf(j, "printed");
    p.recognised = boolOf(j, "recognised");
    return p;
}

Json pinJson(Pin const& p) {
    Members members;
    members.add("number", p.number)
        .add("name", p.name)
        .add("function", textOrNull(p.function))
        .add("package", textOrNull(p.package))
        .add("page", p.page)
        .add("box", boxJson(p.box));
    if (p.recognised) members.add("recognised", true);
    return members.take();
}

Pin pinOf(Json const& j) {
    return {textOf(j, "number"), textOf(j, "name"), textOf(j, "function"), textOf(j, "package"), intOf(j, "page"), boxOf(j), boolOf(j, "recognised")};
}

Json packageJson(Package const& p) {
    return Members()
        .add("name", p.name)
        .add("canonical", textOrNull(p.canonical))
        .add("pins", p.pins ? Json(*p.pins) : Json(nullptr))
        .add("page", p.page)
        .add("box", boxJson(p.box))
        .take();
}

Package packageOf(Json const& j) {
    Package p{textOf(j, "name"), textOf(j, "canonical"), std::nullopt, intOf(j, "page"), boxOf(j)};
    if (auto const pins = j.find("pins"); pins != j.end() && pins->is_number_integer()) p.pins = intOf(j, "pins");
    return p;
}

Json orderingJson(OrderingLine const& o) {
    Json attributes = Json::object();
    for (auto const& [title, text] : o.attributes) attributes[title] = text;
    return Members()
        .add("code", o.code)
        .add("attributes", attributes)
        .add("table", textOrNull(o.table))
        .add("page", o.page)
        .add("box", boxJson(o.box))
        .take();
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
    return Members()
        .add("canonical", f.canonical)
        .add("state", f.state)
        .add("page", f.page)
        .add("box", boxJson(f.box))
        .add("text", f.text)
        .take();
}

Feature featureOf(Json const& j) { return {textOf(j, "canonical"), textOf(j, "state"), intOf(j, "page"), boxOf(j), textOf(j, "text")}; }

Json placeJson(Place const& p) { return Members()
        .add("page", p.page)
        .add("box", boxJson(p.box))
        .take(); }
Place placeOf(Json const& j) { return {intOf(j, "page"), boxOf(j)}; }

Json sentenceJson(Sentence const& s) {
    Members members;
    members.add("id", s.id).add("section", textOrNull(s.section)).add("text", s.text).add("places", listJson(s.places, placeJson));
    if (s.recognised) members.add("recognised", true);
    return members.take();
}

Sentence sentenceOf(Json const& j) {
    return {textOf(j, "id"), textOf(j, "section"), textOf(j, "text"), listOf<Place>(j, "places", placeOf), boolOf(j, "recognised")};
}

Json figureJson(Figure const& f) {
    return Members()
        .add("id", f.id)
        .add("section", textOrNull(f.section))
        .add("caption", textOrNull(f.caption))
        .add("page", f.page)
        .add("box", boxJson(f.box))
        .add("read", nameOf(f.read))
        .add("texts", placedTextsJson(f.texts))
        .add("shape", textOrNull(f.shape))
        .take();
}

Figure figureOf(Json const& j) {
    return {textOf(j, "id"), textOf(j, "section"), textOf(j, "caption"),         intOf(j, "page"),
            boxOf(j),        enumOf(j, "read", FigureReading::Vector), placedTextsOf(j, "texts"), textOf(j, "shape")};
}

Json furnitureJson(Furniture const& f) {
    return Members()
        .add("kind", nameOf(f.kind))
        .add("text", f.text)
        .add("places", listJson(f.places, placeJson))
        .take();
}

Furniture furnitureOf(Json const& j) {
    return {enumOf(j, "kind", Furniture::Kind::RunningHead), textOf(j, "text"), listOf<Place>(j, "places", placeOf)};
}

Json datasheetJson(Datasheet const& d) {
    return Members()
        .add("schema", kSchema)
        .add("document", documentJson(d.document))
        .add("sections", listJson(d.sections, sectionJson))
        .add("tables", listJson(d.tables, tableJson))
        .add("parameters", listJson(d.parameters, parameterJson))
        .add("pins", listJson(d.pins, pinJson))
        .add("packages", listJson(d.packages, packageJson))
        .add("ordering", listJson(d.ordering, orderingJson))
        .add("features", listJson(d.features, featureJson))
        .add("text", listJson(d.text, sentenceJson))
        .add("figures", listJson(d.figures, figureJson))
        .add("furniture", listJson(d.furniture, furnitureJson))
        .add("coverage", coverageJson(d.coverage))
        .take();
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

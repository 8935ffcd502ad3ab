// Member by member; what stands in a line must be there and of its type.
// Tested by tests/src/record/record_test.cpp.
#include "record/entry_json.h"

#include <nlohmann/json.hpp>

#include "model/comparison_json.h"

namespace standin::record {

using model::Error;
using model::ErrorKind;
using model::Result;
using nlohmann::json;

namespace {

constexpr std::size_t kHashBytes = 32;

// A member that is missing or mistyped, thrown inside this file only.
struct Missing {
    std::string member;
};

json const& memberOf(json const& object, char const* name) {
    auto const found = object.is_object() ? object.find(name) : object.end();
    if (!object.is_object() || found == object.end()) throw Missing{name};
    return *found;
}

std::string textOf(json const& object, char const* name) {
    auto const& member = memberOf(object, name);
    if (!member.is_string()) throw Missing{name};
    return member.get<std::string>();
}

// Empty where the member is left out.
std::string textIn(json const& object, char const* name) { return object.is_object() && object.contains(name) ? textOf(object, name) : std::string{}; }

// False where the member is left out.
bool flagIn(json const& object, char const* name) {
    if (!object.is_object() || !object.contains(name)) return false;
    if (!object[name].is_boolean()) throw Missing{name};
    return object[name].get<bool>();
}

std::int64_t countOf(json const& object, char const* name) {
    if (!object.is_object() || !object.contains(name)) return 0;
    auto const& member = object[name];
    constexpr std::uint64_t kMost = 1'000'000'000;
    if (!member.is_number_unsigned() || member.get<std::uint64_t>() > kMost) throw Missing{name};
    return member.get<std::int64_t>();
}

json const& listOf(json const& object, char const* name) {
    static json const none = json::array();
    if (!object.is_object() || !object.contains(name)) return none;
    if (!object[name].is_array()) throw Missing{name};
    return object[name];
}

std::vector<std::string> textsOf(json const& object, char const* name) {
    std::vector<std::string> texts;
    for (auto const& text : listOf(object, name)) {
        if (!text.is_string()) throw Missing{name};
        texts.push_back(text.get<std::string>());
    }
    return texts;
}

template <class Value, class Read>
std::vector<Value> valuesOf(json const& object, char const* name, Read read) {
    std::vector<Value> values;
    for (auto const& value : listOf(object, name)) values.push_back(read(value));
    return values;
}

template <class Values, class Write>
json listJson(Values const& values, Write write) {
    json list = json::array();
    for (auto const& value : values) list.push_back(write(value));
    return list;
}

// Leaves out what is empty.
void put(json& object, char const* name, std::string const& text) {
    if (!text.empty()) object[name] = text;
}
void put(json& object, char const* name, json list) {
    if (!list.empty()) object[name] = std::move(list);
}
void put(json& object, char const* name, std::int64_t count) {
    if (count > 0) object[name] = static_cast<std::uint64_t>(count);
}

json evidenceJson(Evidence const& evidence) { return {{"file", evidence.file}, {"sha256", evidence.sha256}}; }
Evidence evidenceOf(json const& object) {
    Evidence evidence{textOf(object, "file"), textOf(object, "sha256")};
    if (!isLowerHex(evidence.sha256, kHashBytes)) throw Missing{"sha256"};
    return evidence;
}

json identificationJson(Identification const& identification) {
    json object = json::object();
    put(object, "number", identification.number);
    put(object, "title", identification.title);
    put(object, "product", identification.product);
    put(object, "position", identification.position);
    put(object, "scope", identification.scope);
    put(object, "valid_until", identification.validUntil);
    put(object, "review_triggers", json(identification.reviewTriggers));
    return object;
}
Identification identificationOf(json const& object) {
    return {textIn(object, "number"), textIn(object, "title"), textIn(object, "product"), textIn(object, "position"), textIn(object, "scope"), textIn(object, "valid_until"), textsOf(object, "review_triggers")};
}

json fileJson(UsedFile const& file) {
    json object{{"kind", file.kind}, {"file", file.file}, {"sha256", file.sha256}};
    put(object, "content", file.content);
    return object;
}
UsedFile fileOf(json const& object) { return {textOf(object, "kind"), textOf(object, "file"), textOf(object, "sha256"), textIn(object, "content")}; }

json methodJson(Method const& method) {
    json object{{"program", method.program}, {"vocabulary", method.vocabulary}};
    put(object, "reference_variant", method.referenceVariant);
    put(object, "candidate_variant", method.candidateVariant);
    put(object, "files", listJson(method.files, fileJson));
    put(object, "ocr", method.ocr);
    return object;
}
Method methodOf(json const& object) {
    return {textOf(object, "program"),
            textOf(object, "vocabulary"),
            textIn(object, "reference_variant"),
            textIn(object, "candidate_variant"),
            valuesOf<UsedFile>(object, "files", fileOf),
            textIn(object, "ocr")};
}

json limitJson(risk::BenchLimit const& limit) {
    json object{{"finding", limit.finding}, {"title", limit.title}, {"from", limit.from}};
    put(object, "condition", limit.condition);
    put(object, "min", limit.min);
    put(object, "max", limit.max);
    put(object, "unit", limit.unit);
    put(object, "check", limit.check);
    if (limit.aboveMin) object["above_min"] = true;
    if (limit.belowMax) object["below_max"] = true;
    return object;
}
risk::BenchLimit limitOf(json const& object) {
    return {textOf(object, "finding"), textOf(object, "title"), textOf(object, "from"),  textIn(object, "condition"), textIn(object, "min"),
            textIn(object, "max"),     textIn(object, "unit"),  textIn(object, "check"), flagIn(object, "above_min"), flagIn(object, "below_max")};
}

json testJson(risk::BenchTest const& test) {
    return {{"id", test.id},           {"title", test.title},       {"procedure", test.procedure}, {"setup", test.setup},
            {"limits_from", test.limitsFrom}, {"findings", test.findings}, {"limits", listJson(test.limits, limitJson)}};
}
risk::BenchTest testOf(json const& object) {
    return {textOf(object, "id"), textOf(object, "title"), textOf(object, "procedure"), textOf(object, "setup"), textOf(object, "limits_from"), textsOf(object, "findings"),
            valuesOf<risk::BenchLimit>(object, "limits", limitOf)};
}

json writeBody(Opened const& opened) {
    json object{{"identification", identificationJson(opened.identification)},
                {"method", methodJson(opened.method)},
                {"comparison", json::parse(model::toJson(opened.comparison))},
                {"bench_tests", listJson(opened.tests, testJson)},
                {"sample_rules", opened.sampleRules}};
    if (opened.predecessor) {
        object["predecessor"] = {{"root", opened.predecessor->root}, {"head", opened.predecessor->head}, {"count", static_cast<std::uint64_t>(opened.predecessor->count)}};
    }
    return object;
}
Opened readOpened(json const& object) {
    auto comparison = model::comparisonFromJson(canonical(memberOf(object, "comparison")), {});
    if (!comparison) throw Missing{"comparison"};
    Opened opened{identificationOf(memberOf(object, "identification")), methodOf(memberOf(object, "method")), *std::move(comparison), valuesOf<risk::BenchTest>(object, "bench_tests", testOf),
                  textsOf(object, "sample_rules"), std::nullopt};
    if (object.contains("predecessor")) {
        auto const& predecessor = object["predecessor"];
        opened.predecessor = {textOf(predecessor, "root"), textOf(predecessor, "head"), countOf(predecessor, "count")};
    }
    return opened;
}

json writeBody(Decided const& decided) {
    json object{{"finding", decided.finding}, {"disposition", nameOf(decided.disposition)}, {"reason", decided.reason}};
    put(object, "condition", decided.condition);
    put(object, "evidence", listJson(decided.evidence, evidenceJson));
    put(object, "addressee", decided.addressee);
    put(object, "due", decided.due);
    put(object, "samples", decided.samples);
    return object;
}
Decided readDecided(json const& object) {
    auto const disposition = dispositionOf(textOf(object, "disposition"));
    if (!disposition) throw Missing{"disposition"};
    return {textOf(object, "finding"), *disposition, textOf(object, "reason"), textIn(object, "condition"), valuesOf<Evidence>(object, "evidence", evidenceOf),
            textIn(object, "addressee"), textIn(object, "due"), textIn(object, "samples")};
}

json writeBody(Carried const& carried) { return {{"entry", carried.line}}; }
Carried readCarried(json const& object) {
    auto line = textOf(object, "entry");
    auto entry = parseEntry(line);
    if (!entry || !std::holds_alternative<Decided>(entry->body)) throw Missing{"entry"};
    return {std::move(line), std::get<Decided>(std::move(entry->body)), std::move(entry->by), std::move(entry->at)};
}

json writeBody(BenchResult const& result) {
    json object{{"test", result.test}, {"values", result.values}, {"outcome", nameOf(result.outcome)}};
    put(object, "finding", result.finding);
    put(object, "check", result.check);
    put(object, "unit", result.unit);
    put(object, "condition", result.condition);
    put(object, "samples", std::int64_t{result.samples});
    put(object, "lots", std::int64_t{result.lots});
    put(object, "instrument", result.instrument);
    put(object, "note", result.note);
    put(object, "evidence", listJson(result.evidence, evidenceJson));
    return object;
}
BenchResult readResult(json const& object) {
    BenchResult result;
    result.test = textOf(object, "test");
    result.finding = textIn(object, "finding");
    result.check = textIn(object, "check");
    result.values = textsOf(object, "values");
    result.unit = textIn(object, "unit");
    result.condition = textIn(object, "condition");
    result.samples = static_cast<int>(countOf(object, "samples"));
    result.lots = static_cast<int>(countOf(object, "lots"));
    result.instrument = textIn(object, "instrument");
    result.note = textIn(object, "note");
    result.evidence = valuesOf<Evidence>(object, "evidence", evidenceOf);
    auto const word = textOf(object, "outcome");
    for (auto const outcome : {Outcome::NotJudged, Outcome::Within, Outcome::Outside}) {
        if (nameOf(outcome) == word) {
            result.outcome = outcome;
            return result;
        }
    }
    throw Missing{"outcome"};
}

json writeBody(Signed const& signature) {
    json object{{"role", nameOf(signature.role)}};
    put(object, "note", signature.note);
    return object;
}
Signed readSigned(json const& object) {
    auto const role = roleOf(textOf(object, "role"));
    if (!role) throw Missing{"role"};
    return {*role, textIn(object, "note")};
}

json writeBody(Merged const& merged) { return {{"conflicts", merged.conflicts}}; }
Merged readMerged(json const& object) {
    memberOf(object, "conflicts");
    return {textsOf(object, "conflicts")};
}

json writeBody(Superseded const& superseded) {
    json object{{"root", superseded.root}, {"head", superseded.head}, {"reason", superseded.reason}};
    put(object, "number", superseded.number);
    put(object, "title", superseded.title);
    return object;
}
Superseded readSuperseded(json const& object) {
    Superseded superseded{textIn(object, "number"), textIn(object, "title"), textOf(object, "root"), textOf(object, "head"), textOf(object, "reason")};
    if (!isLowerHex(superseded.root, kHashBytes)) throw Missing{"root"};
    if (!isLowerHex(superseded.head, kHashBytes)) throw Missing{"head"};
    return superseded;
}

json writeBody(Distributed const& distributed) {
    json object{{"to", distributed.to}, {"what", distributed.what}};
    put(object, "change", distributed.change);
    put(object, "on", distributed.on);
    return object;
}
Distributed readDistributed(json const& object) { return {textOf(object, "to"), textOf(object, "what"), textIn(object, "change"), textIn(object, "on")}; }

}  // namespace

json bodyJson(Body const& body) {
    return std::visit([](auto const& one) { return writeBody(one); }, body);
}

Result<Body> bodyOf(std::string_view kind, json const& object) {
    try {
        if (kind == "opened") return Body{readOpened(object)};
        if (kind == "decided") return Body{readDecided(object)};
        if (kind == "carried") return Body{readCarried(object)};
        if (kind == "result") return Body{readResult(object)};
        if (kind == "signed") return Body{readSigned(object)};
        if (kind == "merged") return Body{readMerged(object)};
        if (kind == "superseded") return Body{readSuperseded(object)};
        if (kind == "distributed") return Body{readDistributed(object)};
    } catch (Missing const& missing) {
        return tl::unexpected(Error{ErrorKind::Damaged, "misses \"" + missing.member + "\", or it is of another form", {}, 0});
    }
    return tl::unexpected(Error{ErrorKind::Damaged, "is of a kind that this version does not know", {}, 0});
}

}  // namespace standin::record

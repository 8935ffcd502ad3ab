// Every difference planted in the demo pairs is one finding of the right kind,
// severity and place, and nothing else stands above a note. What was planted is
// in testdata/*/planted.json, which testdata/README.md describes.
#include <algorithm>
#include <fstream>
#include <set>
#include <string>
#include <vector>

#include <fmt/format.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "extractors/read_datasheet.h"
#include "model/names.h"
#include "risk/compare_datasheets.h"

namespace standin {
namespace {

using model::Comparison;
using model::Finding;
using Json = nlohmann::json;

// White space apart, one form of every dash and minus.
std::string folded(std::string const& text) {
    std::string out;
    for (std::size_t i = 0; i < text.size(); ++i) {
        auto const c = static_cast<unsigned char>(text[i]);
        if (c == ' ' || c == '\t' || c == '\n') continue;
        if (c == 0xC2 && i + 1 < text.size() && static_cast<unsigned char>(text[i + 1]) == 0xA0) {
            ++i;
            continue;
        }
        if (c == 0xE2 && i + 2 < text.size()) {
            auto const b = static_cast<unsigned char>(text[i + 1]);
            auto const d = static_cast<unsigned char>(text[i + 2]);
            if ((b == 0x88 && d == 0x92) || (b == 0x80 && d >= 0x90 && d <= 0x95)) {
                out += '-';
                i += 2;
                continue;
            }
        }
        out += text[i];
    }
    return out;
}

std::string everythingOf(std::optional<model::Side> const& side) {
    if (!side) return {};
    return side->text + " " + side->min + " " + side->typ + " " + side->max + " " + side->unit + " " + side->condition;
}

bool shows(std::optional<model::Side> const& side, int page, std::string const& snippet) {
    return side && side->page == page && folded(everythingOf(side)).find(folded(snippet)) != std::string::npos;
}

std::vector<std::string> textsOf(Json const& object, char const* key) {
    std::vector<std::string> texts;
    if (object.contains(key)) texts = object.at(key).get<std::vector<std::string>>();
    return texts;
}

bool holds(std::vector<std::string> const& list, std::string_view text) { return std::find(list.begin(), list.end(), text) != list.end(); }

std::string describe(Finding const& f) {
    return fmt::format("{} {} {} \"{}\" | {} | {}", model::nameOf(f.severity), model::nameOf(f.kind), model::nameOf(f.relation), f.title, everythingOf(f.reference), everythingOf(f.candidate));
}

bool isPlanted(Finding const& f, Json const& planted) {
    auto kinds = textsOf(planted, "alternative_kinds");
    kinds.push_back(planted.at("kind"));
    return f.consequenceOf.empty() && holds(kinds, model::nameOf(f.kind)) && shows(f.reference, planted.at("reference_page"), planted.at("reference_text")) &&
           shows(f.candidate, planted.at("candidate_page"), planted.at("candidate_text"));
}

void expectProperties(Finding const& f, Json const& planted) {
    auto severities = textsOf(planted, "alternative_severities");
    severities.push_back(planted.at("severity"));
    EXPECT_TRUE(holds(severities, model::nameOf(f.severity))) << describe(f);
    if (planted.contains("relation") && planted.at("relation").is_string() && model::nameOf(f.kind) == planted.at("kind")) {
        EXPECT_EQ(model::nameOf(f.relation), planted.at("relation").get<std::string>()) << describe(f);
    }
    if (planted.at("canonical").is_string() && model::nameOf(f.kind) == planted.at("kind")) {
        EXPECT_EQ(f.canonical, planted.at("canonical").get<std::string>()) << describe(f);
    }
    if (planted.contains("class") && f.kind == model::FindingKind::Wording) {
        bool const carries = std::any_of(f.classes.begin(), f.classes.end(), [&](auto c) { return model::nameOf(c) == planted.at("class"); });
        EXPECT_TRUE(carries) << describe(f);
    }
}

vocabulary::Vocabulary const& builtIn() {
    static auto const vocabulary = vocabulary::Vocabulary::builtIn();
    return vocabulary.value();
}

Comparison compareFiles(std::string const& reference, std::string const& candidate) {
    auto const sheets = reading::readPair(reference, candidate, {}, builtIn());
    EXPECT_TRUE(sheets.has_value());
    if (!sheets) return {};
    return risk::compareDatasheets(sheets->first, sheets->second, {}, builtIn()).value();
}

class DemoPair : public testing::TestWithParam<char const*> {};

TEST_P(DemoPair, ShowsWhatWasPlantedAndNothingElseAboveANote) {
    auto const folder = fmt::format("{}/{}/", STANDIN_TESTDATA, GetParam());
    std::ifstream file(folder + "planted.json");
    auto const expected = Json::parse(file);
    auto const comparison = compareFiles(folder + expected.at("reference").get<std::string>(), folder + expected.at("candidate").get<std::string>());

    std::set<std::string> plantedIds;
    for (auto const& planted : expected.at("planted")) {
        SCOPED_TRACE(planted.at("id").get<std::string>());
        std::vector<Finding const*> hits;
        for (auto const& f : comparison.findings) {
            if (isPlanted(f, planted)) hits.push_back(&f);
        }
        EXPECT_EQ(hits.size(), 1U) << planted.at("what");
        for (auto const* hit : hits) {
            expectProperties(*hit, planted);
            plantedIds.insert(hit->id);
        }
    }
    for (auto const& f : comparison.findings) {
        if (f.severity <= model::Severity::Note || plantedIds.count(f.id) != 0 || plantedIds.count(f.consequenceOf) != 0) continue;
        ADD_FAILURE() << "not planted: " << describe(f);
    }
    if (expected.contains("verdict")) {
        auto verdicts = textsOf(expected, "alternative_verdicts");
        verdicts.push_back(expected.at("verdict"));
        EXPECT_TRUE(holds(verdicts, model::nameOf(comparison.verdict.level))) << model::nameOf(comparison.verdict.level);
    }
    EXPECT_EQ(comparison.coverage.unaccounted, 0);
}

INSTANTIATE_TEST_SUITE_P(Testdata, DemoPair, testing::Values("protection", "regulator", "mosfet", "protection-zh"), [](auto const& test) {
    std::string name = test.param;
    std::replace(name.begin(), name.end(), '-', '_');
    return name;
});

// What the revision history claims is answered, and what it does not claim is named.
TEST(DemoRevisions, TheHistoryIsSetAgainstWhatWasFound) {
    auto const folder = fmt::format("{}/mosfet/", STANDIN_TESTDATA);
    std::ifstream file(folder + "planted.json");
    auto const expected = Json::parse(file);
    auto const comparison = compareFiles(folder + expected.at("reference").get<std::string>(), folder + expected.at("candidate").get<std::string>());
    std::set<std::string> unmentioned;
    for (auto const& f : comparison.findings) {
        unmentioned.insert(f.regarding.begin(), f.regarding.end());
        EXPECT_EQ(f.title.find("was not found"), std::string::npos) << describe(f);
    }
    std::set<std::string> unclaimed;
    for (auto const& planted : expected.at("planted")) {
        for (auto const& f : comparison.findings) {
            if (!planted.at("claimed").get<bool>() && isPlanted(f, planted)) unclaimed.insert(f.id);
        }
    }
    EXPECT_EQ(unclaimed.size(), 1U);
    EXPECT_EQ(unmentioned, unclaimed);
}

// A sheet against itself is silent, coverage apart.
class DemoSheet : public testing::TestWithParam<char const*> {};

TEST_P(DemoSheet, HasNoFindingAgainstItself) {
    auto const path = fmt::format("{}/{}", STANDIN_TESTDATA, GetParam());
    auto const comparison = compareFiles(path, path);
    for (auto const& f : comparison.findings) EXPECT_EQ(f.kind, model::FindingKind::Coverage) << describe(f);
    EXPECT_FALSE(comparison.pairs.empty());
    for (auto const& pair : comparison.pairs) EXPECT_EQ(pair.reference, pair.candidate);
}

INSTANTIATE_TEST_SUITE_P(Testdata, DemoSheet,
                         testing::Values("protection/reference.pdf", "protection/candidate.pdf", "regulator/reference.pdf", "regulator/candidate.pdf", "mosfet/revision-b.pdf",
                                         "protection-zh/reference-zh.pdf"),
                         [](auto const& test) { return fmt::format("s{}", test.index); });

}  // namespace
}  // namespace standin

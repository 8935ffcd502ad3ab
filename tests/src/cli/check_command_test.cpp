// `standin check`, and `compare` with --cell and --circuit, over the demo pair.
#include "cli/check_command.h"

#include <filesystem>
#include <fstream>
#include <vector>

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "cli/run.h"
#include "support/command_line.h"
#include "support/temporary_folder.h"

namespace standin::cli {
namespace {

namespace fs = std::filesystem;
using Json = nlohmann::json;
using testing::Ended;

std::string data(char const* name) { return std::string(STANDIN_TESTDATA) + "/protection/" + name; }

Ended runWith(std::vector<std::string> const& words) { return testing::runCommand(words, {}); }

class CheckCommandTest : public ::testing::Test {
protected:
    [[nodiscard]] std::string written(char const* name, std::string const& content) const {
        auto const path = m_folder.file(name);
        std::ofstream(path, std::ios::binary) << content;
        return path;
    }
    testing::TemporaryFolder m_folder;
};

std::string outcome(Json const& comparison, char const* check, char const* part) {
    for (auto const& one : comparison.at("cell")) {
        if (one.at("check") == check) return one.at(part).at("outcome");
    }
    return "no such check";
}

TEST_F(CheckCommandTest, TheCandidateAlone) {
    auto const ended = runWith({"check", data("candidate.pdf"), "--cell", data("cell.json"), "--circuit", data("circuit.json")});
    EXPECT_EQ(ended.status, kFindings);
    EXPECT_EQ(ended.errors, "");
    EXPECT_NE(ended.output.find("CELL CHECKS"), std::string::npos);
    EXPECT_NE(ended.output.find("Cell of the field weather logger"), std::string::npos);
    EXPECT_EQ(ended.output.find("Reference"), std::string::npos) << "there is none";
    EXPECT_NE(ended.output.find("WORKED OUT"), std::string::npos);
}

TEST_F(CheckCommandTest, EveryOutput) {
    auto const json = m_folder.file("out.json");
    auto const html = m_folder.file("out.html");
    auto const csv = m_folder.file("out.csv");
    auto const ended = runWith({"check", data("candidate.pdf"), "--cell", data("cell.json"), "--json", json, "--html", html, "--csv", csv, "--fail-on", "hazard", "--variant", "TQL1607-BA6T"});
    EXPECT_EQ(ended.status, kFindings) << ended.errors;
    std::ifstream file(json);
    auto const comparison = Json::parse(file);
    EXPECT_TRUE(comparison.at("reference").is_null());
    EXPECT_EQ(comparison.at("cell").size(), 17U);
    EXPECT_EQ(outcome(comparison, "zero-volt-inhibit", "candidate"), "violated");
    EXPECT_EQ(outcome(comparison, "overcharge-upper", "candidate"), "holds");
    EXPECT_EQ(outcome(comparison, "drain", "candidate"), "open") << "the circuit that says how long was not given";
    EXPECT_GT(fs::file_size(html), 1000U);
    EXPECT_GT(fs::file_size(csv), 1000U);
}

TEST_F(CheckCommandTest, ComparingAgainstTheCell) {
    auto const ended = runWith({"compare", data("reference.pdf"), data("candidate.pdf"), "--cell", data("cell.json"), "--circuit", data("circuit.json"), "--json", "-"});
    EXPECT_EQ(ended.status, kFindings) << ended.errors;
    auto const comparison = Json::parse(ended.output);
    EXPECT_EQ(comparison.at("cell_name"), "Cell of the field weather logger, 500 mAh");
    EXPECT_EQ(outcome(comparison, "charger-withstand", "reference"), "holds");
    EXPECT_EQ(outcome(comparison, "charger-withstand", "candidate"), "violated");
    EXPECT_EQ(outcome(comparison, "short-detectable", "reference"), outcome(comparison, "short-detectable", "candidate"));
    bool energy = false;
    for (auto const& derived : comparison.at("derived")) energy = energy || (derived.at("canonical") == "short-circuit-energy" && derived.at("relation") != "same");
    EXPECT_TRUE(energy) << "the delay differs";
}

struct Fault {
    std::vector<std::string> words;
    char const* said;
};

TEST_F(CheckCommandTest, TroubleIsOneLine) {
    auto const typo = written("typo.json", R"({"schema": "standin.cell/1", "protecton_max": "4.3 V"})");
    auto const unit = written("unit.json", R"({"schema": "standin.circuit/1", "supply_resistor": "330 V"})");
    Fault const faults[] = {
        {{"check", data("candidate.pdf")}, "--cell"},
        {{"check", data("candidate.pdf"), "--cell", "missing.json"}, "missing.json"},
        {{"check", data("candidate.pdf"), "--cell", typo}, "did you mean \"protection_max\"?"},
        {{"check", data("candidate.pdf"), "--cell", data("cell.json"), "--circuit", unit}, "member \"supply_resistor\""},
        {{"check", data("candidate.pdf"), "--cell", data("circuit.json")}, "\"schema\" must be \"standin.cell/1\""},
        {{"check", "missing.pdf", "--cell", data("cell.json")}, "missing.pdf"},
        {{"check", data("candidate.pdf"), "--cell", data("cell.json"), "--variant", "NO-SUCH"}, "NO-SUCH"},
        {{"check", data("candidate.pdf"), "--cell", data("cell.json"), "--fail-on", "never"}, "--fail-on"},
        {{"check", data("candidate.pdf"), "--cell", data("cell.json"), "--json", "-", "--text", "-"}, "standard output"},
        {{"compare", data("reference.pdf"), data("candidate.pdf"), "--cell", typo}, "typo.json"},
    };
    for (auto const& fault : faults) {
        auto const ended = runWith(fault.words);
        EXPECT_EQ(ended.status, kTrouble) << fault.said;
        EXPECT_EQ(ended.output, "") << fault.said;
        EXPECT_NE(ended.errors.find(fault.said), std::string::npos) << ended.errors;
        EXPECT_EQ(std::count(ended.errors.begin(), ended.errors.end(), '\n'), 1) << ended.errors;
    }
}

TEST_F(CheckCommandTest, NothingToSayEndsWithNought) {
    // Everything that a check needs is left out but the one that holds; the rest are notes.
    auto const cell = written("cell.json", R"({"schema": "standin.cell/1", "charge_voltage": "4.20 V ±30 mV", "protection_max": "4.35 V"})");
    auto const ended = runWith({"check", data("reference.pdf"), "--cell", cell, "--fail-on", "function", "--text", m_folder.file("out.txt")});
    EXPECT_EQ(ended.status, kNothingFound) << ended.errors;
}

}  // namespace
}  // namespace standin::cli

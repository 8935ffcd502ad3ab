// The quantities to be worked out: the data and how a user's file is read.
#include <set>
#include <string>

#include <gtest/gtest.h>

#include "quantity/formula.h"
#include "vocabulary/vocabulary.h"

namespace standin::vocabulary {
namespace {

TEST(Derived, EveryParameterOfTheDataIsKnown) {
    auto const vocabulary = Vocabulary::builtIn();
    ASSERT_TRUE(vocabulary);
    ASSERT_GE(vocabulary->derived().size(), 40U);
    std::set<std::string> ids;
    for (auto const& entry : vocabulary->derived()) {
        EXPECT_TRUE(ids.insert(entry.id).second) << entry.id << " twice";
        EXPECT_FALSE(entry.title.empty() || entry.formula.empty()) << entry.id;
        bool const direction = !entry.higher.empty() || !entry.lower.empty();
        EXPECT_TRUE(direction) << entry.id << " does not say what a difference means";
        EXPECT_TRUE(entry.caution.empty() || vocabulary->caution(entry.caution) != nullptr) << entry.id;
        auto const formula = quantity::Formula::parse(entry.expression);
        ASSERT_TRUE(formula) << entry.id;
        for (auto const& name : formula->names()) {
            if (name.starts_with("circuit.") || name.starts_with("cell.")) continue;
            EXPECT_NE(vocabulary->find(name, entry.family), nullptr) << entry.id << ": " << name;
        }
    }
}

struct Fault {
    char const* entry;
    char const* said;
};

TEST(Derived, FaultsInAUsersFileAreSaid) {
    constexpr Fault kFaults[] = {
        {R"({"expression": "a", "unit": "V"})", "has no \"id\""},
        {R"({"id": "x", "unit": "V"})", "formula"},
        {R"({"id": "x", "expression": "a +", "unit": "V"})", "ends too early"},
        {R"({"id": "x", "expression": "a", "unit": "furlong"})", "no unit to compute with"},
        {R"({"id": "x", "expression": "a", "unit": "V", "least": "none"})", "number in quotes"},
        {R"({"id": "x", "expression": "a", "unit": "V", "role": "guess"})", "no role"},
    };
    for (auto const& fault : kFaults) {
        auto vocabulary = Vocabulary::builtIn();
        auto const before = vocabulary->derived().size();
        auto const added = vocabulary->add(std::string(R"({"schema": "standin.vocabulary/1", "derived": [)") + fault.entry + "]}");
        ASSERT_FALSE(added) << fault.entry;
        EXPECT_NE(added.error().message.find(fault.said), std::string::npos) << added.error().message;
        EXPECT_EQ(vocabulary->derived().size(), before);
    }
}

TEST(Derived, AUsersEntryReplacesOurs) {
    auto vocabulary = Vocabulary::builtIn();
    auto const before = vocabulary->derived().size();
    ASSERT_TRUE(vocabulary->add(R"({"schema": "standin.vocabulary/1", "family": "lithium-protection", "derived": [
        {"id": "overcharge-overshoot", "title": "Mine", "expression": "circuit.charger_current * overcharge-detect-delay", "unit": "mAh", "notes": ["one"]},
        {"id": "another", "expression": "overcharge-detect-voltage * 2", "unit": "V"}]})"));
    EXPECT_EQ(vocabulary->derived().size(), before + 1);
    for (auto const& entry : vocabulary->derived()) {
        if (entry.id != "overcharge-overshoot") continue;
        EXPECT_EQ(entry.title, "Mine");
        EXPECT_EQ(entry.notes, std::vector<std::string>{"one"});
    }
}

}  // namespace
}  // namespace standin::vocabulary

#include "extractors/features/read_features.h"

#include <gtest/gtest.h>

namespace {

namespace model = standin::model;
using standin::features::readFeatures;
using standin::vocabulary::Vocabulary;

class ReadFeatures : public testing::Test {
protected:
    ReadFeatures() : m_vocabulary(Vocabulary::builtIn().value()) {}
    std::vector<model::Feature> read() const { return readFeatures(m_text, m_tables, m_ordering, "lithium-protection", m_vocabulary); }
    void sentence(char const* text, int page, float y) { m_text.push_back({"x1", "s1", text, {{page, {50, y, 300, y + 10}}}}); }
    static std::string stateOf(std::vector<model::Feature> const& features, char const* id) {
        std::string states;
        for (auto const& feature : features) {
            if (feature.canonical == id) states += (states.empty() ? "" : ",") + feature.state;
        }
        return states;
    }

    Vocabulary m_vocabulary;
    std::vector<model::Sentence> m_text;
    std::vector<model::Table> m_tables;
    std::vector<model::OrderingLine> m_ordering;
};

TEST_F(ReadFeatures, ASentenceStatesAMode) {
    sentence("Charging of a 0 V battery is inhibited.", 2, 100);
    auto const features = read();
    ASSERT_EQ(stateOf(features, "zero-volt-charging"), "inhibited");
    EXPECT_EQ(features[0].page, 2);
    EXPECT_EQ(features[0].box, (model::Rect{50, 100, 300, 110}));
    EXPECT_EQ(features[0].text, "Charging of a 0 V battery is inhibited.");
}

TEST_F(ReadFeatures, ASheetThatContradictsItselfShowsBothStatesOnce) {
    sentence("Charging of a 0 V battery is inhibited.", 4, 100);
    sentence("Charging of a 0 V battery is inhibited.", 5, 100);
    m_ordering.push_back({"QX71A", {{"0 V battery charge function", "Available"}}, "t1", 1, {50, 50, 200, 60}});
    auto const features = read();
    EXPECT_EQ(stateOf(features, "zero-volt-charging"), "allowed,inhibited");
    EXPECT_EQ(features[0].page, 1);
    EXPECT_EQ(features[0].text, "0 V battery charge function: Available");
}

TEST_F(ReadFeatures, RowsOfOtherTables) {
    model::Table table;
    table.page = 3;
    table.kind = model::TableKind::Other;
    table.rows = 1;
    table.columns = 2;
    table.cells.resize(2);
    table.cells[0].text = "0 V battery charge function";
    table.cells[1].column = 1;
    table.cells[1].text = "Unavailable";
    table.cells[1].box = {100, 10, 160, 20};
    m_tables.push_back(table);
    EXPECT_EQ(stateOf(read(), "zero-volt-charging"), "inhibited");
    m_tables[0].kind = model::TableKind::Specification;
    EXPECT_EQ(stateOf(read(), "zero-volt-charging"), "inhibited");
    m_tables[0].kind = model::TableKind::Revision;
    EXPECT_EQ(stateOf(read(), "zero-volt-charging"), "");
}

TEST_F(ReadFeatures, WhatStatesNothingIsUnstated) {
    sentence("The part comes in a small package.", 1, 100);
    EXPECT_TRUE(read().empty());
    m_text.clear();
    EXPECT_TRUE(read().empty());
}

}  // namespace

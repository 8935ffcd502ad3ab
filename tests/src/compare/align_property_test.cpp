// Properties of the whole alignment over random sheets: a sheet against itself is
// silent, one changed digit anywhere is one finding that shows it, and exchanging
// the sheets mirrors what is found.
#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <random>

#include "compare/align.h"
#include "model/names.h"
#include "support/datasheet_builder.h"

namespace standin::compare {
namespace {

using model::Comparison;
using model::Datasheet;
using model::FindingKind;
using model::Relation;
using support::RowText;
using support::SheetBuilder;

vocabulary::Vocabulary const& words() {
    static vocabulary::Vocabulary const vocabulary = *vocabulary::Vocabulary::builtIn();
    return vocabulary;
}

// Everything that a random sheet prints, so that one digit of it can be changed.
struct Printed {
    std::vector<RowText> ratings;
    std::vector<RowText> characteristics;
    std::vector<std::string> sentences;
    std::vector<std::vector<std::string>> parts;
    std::vector<std::string> lettering;
    std::vector<std::string> captions;
    std::string head;
};

using Random = std::mt19937;

std::string number(Random& random, int most) { return std::to_string(1 + random() % static_cast<unsigned>(most)); }

Printed printedBy(Random& random) {
    static char const* const names[] = {"Input voltage", "Output current", "Detection delay", "Release delay", "Leakage current", "Supply current",
                                        "Gate drive voltage", "Pull-up resistance", "Storage time", "Threshold of input"};
    static char const* const units[] = {"V", "mA", "ms", "µA", "kΩ"};
    static char const* const verbs[] = {"rises above", "falls below", "stays at", "returns to"};
    Printed printed;
    int const ratings = 2 + static_cast<int>(random() % 4);
    for (int i = 0; i < ratings; ++i) {
        RowText row;
        row.name = std::string(names[random() % std::size(names)]) + " of pin " + std::to_string(i + 1);
        row.symbol = "VR" + std::to_string(i + 1);
        row.min = "-0." + number(random, 9);
        row.max = random() % 2 == 0 ? number(random, 40) : "VDD+0." + number(random, 9);
        row.unit = "V";
        row.kind = model::ParameterKind::Rating;
        printed.ratings.push_back(row);
    }
    int const rows = 3 + static_cast<int>(random() % 20);
    for (int i = 0; i < rows; ++i) {
        RowText row;
        // Names repeat, as they do for several conditions.
        row.name = names[random() % std::size(names)];
        row.symbol = "X" + std::to_string(random() % 9);
        if (random() % 2 == 0) row.condition = "VDD=" + number(random, 6) + "." + number(random, 9) + "V";
        int const low = 1 + static_cast<int>(random() % 50);
        if (random() % 2 == 0) row.min = std::to_string(low) + ".5";
        if (random() % 2 == 0) row.typ = std::to_string(low + 2);
        row.max = std::to_string(low + 5 + static_cast<int>(random() % 30));
        row.unit = units[random() % std::size(units)];
        printed.characteristics.push_back(row);
    }
    int const sentences = 4 + static_cast<int>(random() % 20);
    for (int i = 0; i < sentences; ++i) {
        printed.sentences.push_back("In state " + std::to_string(i) + " the output is switched when the voltage " + verbs[random() % std::size(verbs)] + " " +
                                    number(random, 9) + "." + number(random, 9) + " V for " + number(random, 90) + " ms.");
    }
    printed.parts.push_back({"Part", "Value", "Purpose"});
    for (int i = 0; i < 4; ++i) printed.parts.push_back({"R" + std::to_string(i + 1), number(random, 900) + " kΩ", "Divider " + std::to_string(i)});
    for (int i = 0; i < 6; ++i) printed.lettering.push_back("R" + std::to_string(i) + " " + number(random, 900));
    printed.captions = {"Figure 1. Circuit of the logger", "Figure 2. Delay over temperature from -20 to 60"};
    printed.head = "QX17 series Rev. 2." + number(random, 9);
    return printed;
}

Datasheet sheetOf(Printed const& printed) {
    SheetBuilder sheet;
    sheet.section(model::SectionKind::Ratings, "Absolute maximum ratings").specification("Ta=25°C", printed.ratings);
    sheet.section(model::SectionKind::Characteristics, "Electrical characteristics").specification("Ta=25°C unless otherwise specified", printed.characteristics);
    sheet.nextPage().section(model::SectionKind::Function, "Function");
    for (auto const& sentence : printed.sentences) sheet.sentence(sentence);
    sheet.section(model::SectionKind::Application, "Application");
    sheet.figure(printed.captions[0], printed.lettering, "a").figure(printed.captions[1], {"T", "t"}, "b");
    sheet.table(model::TableKind::Other, printed.parts);
    sheet.runningHead(printed.head, {1, 2});
    return sheet.build();
}

// Where a digit can be changed, and what the change should be found as.
struct Slot {
    std::string* text;
    FindingKind kind;
};

std::vector<Slot> slotsOf(Printed& printed) {
    std::vector<Slot> slots;
    for (auto* rows : {&printed.ratings, &printed.characteristics}) {
        for (auto& row : *rows) {
            for (auto* field : {&row.condition, &row.min, &row.typ, &row.max}) slots.push_back({field, FindingKind::Parameter});
            for (auto* field : {&row.name, &row.symbol}) slots.push_back({field, FindingKind::Table});
        }
    }
    for (auto& sentence : printed.sentences) slots.push_back({&sentence, FindingKind::Wording});
    for (std::size_t r = 1; r < printed.parts.size(); ++r) {
        for (auto& cell : printed.parts[r]) slots.push_back({&cell, FindingKind::Table});
    }
    for (auto& text : printed.lettering) slots.push_back({&text, FindingKind::Figure});
    for (auto& text : printed.captions) slots.push_back({&text, FindingKind::Figure});
    slots.push_back({&printed.head, FindingKind::Document});
    std::erase_if(slots, [](Slot const& slot) { return slot.text->find_first_of("0123456789") == std::string::npos; });
    return slots;
}

std::string describe(Comparison const& comparison) {
    std::string text;
    for (auto const& finding : comparison.findings) {
        text += std::string(model::nameOf(finding.kind)) + " " + std::string(model::nameOf(finding.relation)) + " [" +
                (finding.reference ? finding.reference->text : "-") + "] [" + (finding.candidate ? finding.candidate->text : "-") + "] " +
                (finding.consequenceOf.empty() ? "" : "<- " + finding.consequenceOf) + "\n";
    }
    return text;
}

TEST(AlignProperty, ARandomSheetAgainstItselfIsSilent) {
    Random random(1);
    for (int round = 0; round < 60; ++round) {
        Datasheet const sheet = sheetOf(printedBy(random));
        Comparison const comparison = align(sheet, sheet, {}, words());
        EXPECT_TRUE(comparison.findings.empty()) << describe(comparison);
        for (auto const& pair : comparison.pairs) EXPECT_EQ(pair.reference, pair.candidate);
        EXPECT_EQ(comparison.coverage.compared + comparison.coverage.listed + comparison.coverage.unaccounted,
                  2 * (sheet.coverage.numbers + sheet.coverage.sentences));
    }
}

TEST(AlignProperty, OneChangedDigitIsOneFindingThatShowsIt) {
    Random random(2);
    for (int round = 0; round < 400; ++round) {
        Printed printed = printedBy(random);
        Datasheet const reference = sheetOf(printed);
        auto const slots = slotsOf(printed);
        Slot const slot = slots[random() % slots.size()];
        std::vector<std::size_t> digits;
        for (std::size_t i = 0; i < slot.text->size(); ++i) {
            if ((*slot.text)[i] >= '0' && (*slot.text)[i] <= '9') digits.push_back(i);
        }
        std::string const before = *slot.text;
        char& digit = (*slot.text)[digits[random() % digits.size()]];
        digit = static_cast<char>('0' + (digit - '0' + 1 + static_cast<int>(random() % 9)) % 10);
        std::string const after = *slot.text;
        Comparison const comparison = align(reference, sheetOf(printed), {}, words());
        // Lettering is compared word by word.
        auto const from = slot.kind == FindingKind::Figure ? after.rfind(' ', static_cast<std::size_t>(&digit - slot.text->data())) + 1 : 0;
        auto const to = slot.kind == FindingKind::Figure ? after.find(' ', static_cast<std::size_t>(&digit - slot.text->data())) : std::string::npos;
        std::string const shownBefore = before.substr(from, to - from);
        std::string const shownAfter = after.substr(from, to - from);
        std::vector<model::Finding const*> own;
        for (auto const& finding : comparison.findings) {
            if (finding.consequenceOf.empty()) own.push_back(&finding);
        }
        ASSERT_EQ(own.size(), 1U) << before << " -> " << after << "\n" << describe(comparison);
        ASSERT_TRUE(own[0]->reference && own[0]->candidate) << before << " -> " << after << "\n" << describe(comparison);
        EXPECT_NE(own[0]->reference->text.find(shownBefore), std::string::npos) << shownBefore << " not in " << own[0]->reference->text;
        EXPECT_NE(own[0]->candidate->text.find(shownAfter), std::string::npos) << shownAfter << " not in " << own[0]->candidate->text;
        if (slot.kind == FindingKind::Parameter) {
            EXPECT_EQ(own[0]->kind, FindingKind::Parameter) << before << " -> " << after;
        }
    }
}

Relation seenFromTheOtherSide(Relation relation, Relation actual) {
    // A bound passed on one side only while the other is equal is Inside from there.
    bool const reaches = relation == Relation::ReachesHigher || relation == Relation::ReachesLower;
    if (reaches && actual == Relation::Inside) return actual;
    if (relation == Relation::Inside && (actual == Relation::ReachesHigher || actual == Relation::ReachesLower)) return actual;
    return model::mirrored(relation);
}

TEST(AlignProperty, ExchangeMirrorsWhatIsFound) {
    Random random(3);
    for (int round = 0; round < 80; ++round) {
        Printed printed = printedBy(random);
        Datasheet const reference = sheetOf(printed);
        auto slots = slotsOf(printed);
        for (int change = 0; change < 5; ++change) {
            Slot const& slot = slots[random() % slots.size()];
            auto const at = slot.text->find_last_of("123456789");
            if (at != std::string::npos) (*slot.text)[at] = static_cast<char>('1' + random() % 9);
        }
        if (random() % 2 == 0 && printed.sentences.size() > 5) printed.sentences.erase(printed.sentences.begin() + 2);
        if (random() % 2 == 0) printed.characteristics.erase(printed.characteristics.begin() + 1);
        Datasheet const candidate = sheetOf(printed);
        Comparison const forward = align(reference, candidate, {}, words());
        Comparison const backward = align(candidate, reference, {}, words());
        std::multimap<std::string, Relation> found;
        auto textsOf = [](model::Finding const& finding, bool exchanged) {
            std::string a = finding.reference ? finding.reference->text : "-";
            std::string b = finding.candidate ? finding.candidate->text : "-";
            if (exchanged) std::swap(a, b);
            return std::string(model::nameOf(finding.kind)) + "\n" + a + "\n" + b;
        };
        for (auto const& finding : backward.findings) found.emplace(textsOf(finding, true), finding.relation);
        EXPECT_EQ(forward.findings.size(), backward.findings.size()) << describe(forward) << "----\n" << describe(backward);
        for (auto const& finding : forward.findings) {
            auto const other = found.find(textsOf(finding, false));
            ASSERT_NE(other, found.end()) << describe(forward) << "----\n" << describe(backward);
            EXPECT_EQ(other->second, seenFromTheOtherSide(finding.relation, other->second));
            found.erase(other);
        }
    }
}

}  // namespace
}  // namespace standin::compare

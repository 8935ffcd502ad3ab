// What must hold of any two sheets. Every property is tried on the demo pairs; where
// the environment names a folder (STANDIN_PROPERTY_SHEETS), also on neighbouring PDFs
// of it, at most kMostSheets of them.
#include <gtest/gtest.h>

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include <fmt/format.h>

#include "compare/align.h"
#include "compare/edit_script.h"
#include "compare/text_keys.h"
#include "extractors/read_datasheet.h"
#include "model/names.h"
#include "risk/compare_datasheets.h"
#include "support/datasheet_builder.h"
#include "text/boundaries.h"

namespace standin {
namespace {

using model::Comparison;
using model::Datasheet;
using model::Finding;
using model::FindingKind;
using model::Relation;
using model::Severity;
using support::RowText;
using support::SheetBuilder;

constexpr std::size_t kMostSheets = 12;
constexpr double kSure = 0.8;

vocabulary::Vocabulary const& words() {
    static vocabulary::Vocabulary const vocabulary = *vocabulary::Vocabulary::builtIn();
    return vocabulary;
}

struct Pair {
    std::string name;
    Datasheet reference, candidate;
};

std::vector<Pair> const& pairs() {
    static std::vector<Pair> const list = [] {
        std::vector<std::pair<std::string, std::string>> files;
        std::string const demo = std::string(STANDIN_TESTDATA) + "/";
        files.emplace_back(demo + "protection/reference.pdf", demo + "protection/candidate.pdf");
        files.emplace_back(demo + "regulator/reference.pdf", demo + "regulator/candidate.pdf");
        files.emplace_back(demo + "mosfet/revision-b.pdf", demo + "mosfet/revision-c.pdf");
        files.emplace_back(demo + "protection/reference.pdf", demo + "protection-zh/reference-zh.pdf");
        if (char const* folder = std::getenv("STANDIN_PROPERTY_SHEETS"); folder != nullptr && std::filesystem::is_directory(folder)) {
            std::vector<std::string> found;
            for (auto const& entry : std::filesystem::directory_iterator(folder)) {
                if (entry.path().extension() == ".pdf") found.push_back(entry.path().string());
            }
            std::sort(found.begin(), found.end());
            if (found.size() > kMostSheets) found.resize(kMostSheets);
            for (std::size_t i = 1; i < found.size(); ++i) files.emplace_back(found[i - 1], found[i]);
        }
        std::vector<Pair> read;
        for (auto const& [reference, candidate] : files) {
            auto r = reading::readDatasheet(reference, {}, words());
            auto c = reading::readDatasheet(candidate, {}, words());
            if (r && c) read.push_back({reference + " : " + candidate, std::move(*r), std::move(*c)});
        }
        return read;
    }();
    return list;
}

Comparison compared(Datasheet const& reference, Datasheet const& candidate) {
    auto result = risk::compareDatasheets(reference, candidate, {}, words());
    EXPECT_TRUE(result);
    return result ? std::move(*result) : Comparison{};
}

std::string textOf(std::optional<model::Side> const& side) { return side ? side->text : std::string("-"); }

// Findings that say more than "no change of meaning".
std::string aboveEditorial(Comparison const& comparison) {
    std::string list;
    for (auto const& finding : comparison.findings) {
        if (finding.kind == FindingKind::Coverage || finding.severity <= Severity::Editorial) continue;
        list += fmt::format("{} {} [{}] [{}]\n", model::nameOf(finding.kind), model::nameOf(finding.relation), textOf(finding.reference), textOf(finding.candidate));
    }
    return list;
}

template <class Change>
void forEachPlace(Datasheet& sheet, Change&& change) {
    for (auto& section : sheet.sections) change(section.page, section.box);
    for (auto& table : sheet.tables) {
        for (auto& cell : table.cells) {
            int page = table.page;
            change(page, cell.box);
        }
        change(table.page, table.box);
    }
    for (auto& parameter : sheet.parameters) {
        for (auto* value : {&parameter.min, &parameter.typ, &parameter.max}) {
            int page = parameter.page;
            if (*value) change(page, (*value)->box);
        }
        change(parameter.page, parameter.box);
    }
    for (auto& pin : sheet.pins) change(pin.page, pin.box);
    for (auto& package : sheet.packages) change(package.page, package.box);
    for (auto& line : sheet.ordering) change(line.page, line.box);
    for (auto& feature : sheet.features) change(feature.page, feature.box);
    for (auto& sentence : sheet.text) {
        for (auto& place : sentence.places) change(place.page, place.box);
    }
    for (auto& figure : sheet.figures) {
        for (auto& text : figure.texts) change(text.page, text.box);
        change(figure.page, figure.box);
    }
    for (auto& furniture : sheet.furniture) {
        for (auto& place : furniture.places) change(place.page, place.box);
    }
}

TEST(SheetProperties, ThereAreSheetsToTry) { ASSERT_GE(pairs().size(), 4U); }

TEST(SheetProperties, ASheetAgainstItselfIsSilent) {
    for (auto const& pair : pairs()) EXPECT_EQ(aboveEditorial(compared(pair.reference, pair.reference)), "") << pair.name;
}

// The same sheet set on a page of another size.
TEST(SheetProperties, AnotherPageSizeChangesNothing) {
    for (auto const& pair : pairs()) {
        Datasheet larger = pair.reference;
        forEachPlace(larger, [](int&, model::Rect& box) { box = {box.x0 * 1.41F + 12, box.y0 * 1.41F + 30, box.x1 * 1.41F + 12, box.y1 * 1.41F + 30}; });
        EXPECT_EQ(aboveEditorial(compared(pair.reference, larger)), "") << pair.name;
        EXPECT_EQ(aboveEditorial(compared(larger, pair.reference)), "") << pair.name;
    }
}

// A page put in front moves everything to the next page.
TEST(SheetProperties, APageOffsetChangesNothing) {
    for (auto const& pair : pairs()) {
        Datasheet later = pair.reference;
        ++later.document.pages;
        forEachPlace(later, [](int& page, model::Rect&) { ++page; });
        EXPECT_EQ(aboveEditorial(compared(pair.reference, later)), "") << pair.name;
    }
}

// Every second pair of neighbouring sentences run together, as another program cuts them.
TEST(SheetProperties, ReflowedParagraphsChangeNothing) {
    for (auto const& pair : pairs()) {
        Datasheet flowed = pair.reference;
        std::vector<model::Sentence> text;
        for (std::size_t i = 0; i < flowed.text.size(); ++i) {
            bool const join = i % 4 == 1 && i + 1 < flowed.text.size() && flowed.text[i].section == flowed.text[i + 1].section && flowed.text[i].text.size() > 20 &&
                              flowed.text[i + 1].text.size() > 20;
            text.push_back(flowed.text[i]);
            if (!join) continue;
            ++i;
            text.back().text += " " + flowed.text[i].text;
            text.back().places.insert(text.back().places.end(), flowed.text[i].places.begin(), flowed.text[i].places.end());
        }
        flowed.text = std::move(text);
        EXPECT_EQ(aboveEditorial(compared(pair.reference, flowed)), "") << pair.name;
        EXPECT_EQ(aboveEditorial(compared(flowed, pair.reference)), "") << pair.name;
    }
}

// The last sections in front: everything that belongs to them goes along.
TEST(SheetProperties, AMovedSectionChangesNothing) {
    for (auto const& pair : pairs()) {
        Datasheet moved = pair.reference;
        if (moved.sections.size() < 4) continue;
        auto const first = moved.sections.begin() + static_cast<std::ptrdiff_t>(moved.sections.size() / 2);
        std::vector<std::string> behind;
        for (auto it = first; it != moved.sections.end(); ++it) behind.push_back(it->id);
        std::rotate(moved.sections.begin(), first, moved.sections.end());
        auto const isBehind = [&](auto const& thing) { return std::find(behind.begin(), behind.end(), thing.section) != behind.end(); };
        std::stable_partition(moved.text.begin(), moved.text.end(), isBehind);
        std::stable_partition(moved.tables.begin(), moved.tables.end(), isBehind);
        std::stable_partition(moved.parameters.begin(), moved.parameters.end(), isBehind);
        std::stable_partition(moved.figures.begin(), moved.figures.end(), isBehind);
        EXPECT_EQ(aboveEditorial(compared(pair.reference, moved)), "") << pair.name;
    }
}

// A candidate that ends equal on one side and shorter on the other lies inside; seen from
// there the other one reaches beyond.
bool mirrors(Relation forward, Relation backward) {
    if (model::mirrored(forward) == backward) return true;
    auto const reaches = [](Relation relation) { return relation == Relation::ReachesHigher || relation == Relation::ReachesLower; };
    return (reaches(forward) && backward == Relation::Inside) || (forward == Relation::Inside && reaches(backward));
}

TEST(SheetProperties, ExchangeMirrorsSurePairs) {
    for (auto const& pair : pairs()) {
        Comparison const forward = compared(pair.reference, pair.candidate);
        Comparison const backward = compared(pair.candidate, pair.reference);
        std::map<std::pair<std::string, std::string>, model::Pair const*> found;
        for (auto const& other : backward.pairs) found.emplace(std::pair(other.candidate, other.reference), &other);
        for (auto const& one : forward.pairs) {
            if (one.confidence <= kSure) continue;
            auto const other = found.find({one.reference, one.candidate});
            ASSERT_NE(other, found.end()) << pair.name << " " << one.reference << " : " << one.candidate;
            EXPECT_TRUE(mirrors(one.relation, other->second->relation))
                << pair.name << " " << one.reference << " : " << one.candidate << " " << model::nameOf(one.relation) << " / " << model::nameOf(other->second->relation);
            EXPECT_DOUBLE_EQ(one.confidence, other->second->confidence) << pair.name << " " << one.reference;
        }
        EXPECT_EQ(forward.coverage.unaccounted, backward.coverage.unaccounted) << pair.name;
    }
}

// The account holds whatever was grouped, absorbed or left out.
TEST(SheetProperties, EveryNumberAndSentenceIsComparedListedOrUnaccounted) {
    for (auto const& pair : pairs()) {
        Comparison const comparison = compared(pair.reference, pair.candidate);
        int all = 0;
        for (auto const* sheet : {&pair.reference, &pair.candidate}) all += sheet->coverage.numbers + sheet->coverage.sentences;
        EXPECT_EQ(comparison.coverage.compared + comparison.coverage.listed + comparison.coverage.unaccounted, all) << pair.name;
    }
}

std::vector<std::string> wordsOf(std::string const& text) {
    std::vector<std::string> list;
    for (auto const word : text::words(text)) list.emplace_back(word);
    return list;
}

// The script of what was removed and put in, played over the reference's words,
// gives the candidate's words, and the other way round.
TEST(SheetProperties, TheEditScriptReplayedRebuildsTheText) {
    for (auto const& pair : pairs()) {
        for (auto const& finding : compare::align(pair.reference, pair.candidate, {}, words()).findings) {
            if (finding.kind != FindingKind::Wording || !finding.reference || !finding.candidate) continue;
            auto const before = wordsOf(finding.reference->text);
            auto const after = wordsOf(finding.candidate->text);
            auto const keys = [](std::vector<std::string> const& list) {
                std::vector<compare::Key> hashed;
                for (auto const& word : list) hashed.push_back(compare::hashOf(word));
                return hashed;
            };
            std::vector<std::string> rebuilt;
            std::vector<std::string> restored;
            for (auto const& edit : compare::editScript(keys(before), keys(after))) {
                for (std::uint32_t i = 0; i < edit.count; ++i) {
                    if (edit.kind != compare::EditKind::Remove) rebuilt.push_back(after.at(edit.candidate + i));
                    if (edit.kind != compare::EditKind::Insert) restored.push_back(before.at(edit.reference + i));
                }
            }
            EXPECT_EQ(rebuilt, after) << finding.reference->text;
            EXPECT_EQ(restored, before) << finding.candidate->text;
        }
    }
}

struct Scaling {
    std::vector<RowText> rows;
    std::vector<RowText> scaled;
};

// The same values in a smaller unit, in tables and in prose.
TEST(SheetProperties, ScaledUnitsChangeNothing) {
    Scaling const scaling{
        {{.name = "Detection voltage", .symbol = "VCU", .condition = "VDD=3.5V", .min = "4.255", .typ = "4.280", .max = "4.305", .unit = "V"},
         {.name = "Detection delay", .symbol = "tCU", .min = "0.96", .typ = "1.2", .max = "1.4", .unit = "s"},
         {.name = "Supply current", .symbol = "IOPE", .max = "0.0065", .unit = "mA"},
         {.name = "Release voltage", .symbol = "VCL", .typ = "4.08", .unit = "V"}},
        {{.name = "Detection voltage", .symbol = "VCU", .condition = "VDD=3500mV", .min = "4255", .typ = "4280", .max = "4305", .unit = "mV"},
         {.name = "Detection delay", .symbol = "tCU", .min = "960", .typ = "1200", .max = "1400", .unit = "ms"},
         {.name = "Supply current", .symbol = "IOPE", .max = "6.5", .unit = "µA"},
         {.name = "Release voltage", .symbol = "VCL", .typ = "4080", .unit = "mV"}}};
    auto const sheet = [](std::vector<RowText> const& rows, std::string const& sentence) {
        SheetBuilder builder;
        builder.section(model::SectionKind::Characteristics, "Electrical characteristics").specification("Ta=25°C", rows);
        builder.section(model::SectionKind::Function, "Function").sentence(sentence).sentence("The lamp is lit while the logger listens.");
        return builder.build();
    };
    Datasheet const plain = sheet(scaling.rows, "Charging stops above 4.28 V after a delay of 1.2 s.");
    Datasheet const scaled = sheet(scaling.scaled, "Charging stops above 4280 mV after a delay of 1200 ms.");
    EXPECT_EQ(aboveEditorial(compared(plain, scaled)), "");
    EXPECT_EQ(aboveEditorial(compared(scaled, plain)), "");
    for (auto const& pair : compared(plain, scaled).pairs) EXPECT_FALSE(pair.reference.empty() || pair.candidate.empty());
}

}  // namespace
}  // namespace standin

// Worst cases: documents that repeat themselves, and documents that are long.
// Each prints the order of growth that fits best ("BigO").
#include <cstdio>
#include <string>

#include <benchmark/benchmark.h>
#include <fmt/format.h>

#include "compare/align.h"
#include "extractors/read_datasheet.h"
#include "risk/compare_datasheets.h"
#include "support/datasheet_builder.h"
#include "support/long_manual.h"
#include "support/temporary_folder.h"

namespace standin {
namespace {

vocabulary::Vocabulary const& words() {
    static auto const vocabulary = vocabulary::Vocabulary::builtIn();
    return *vocabulary;
}

void compareSheets(benchmark::State& state, model::Datasheet const& reference, model::Datasheet const& candidate) {
    for (auto _ : state) benchmark::DoNotOptimize(compare::align(reference, candidate, {}, words()));
    state.SetComplexityN(state.range(0));
}

// The same sentence over and over; the candidate says another word in each.
void equalSentences(benchmark::State& state) {
    auto const sheet = [&](char const* word) {
        support::SheetBuilder builder;
        builder.section(model::SectionKind::Function, "Operation");
        for (int i = 0; i < state.range(0); ++i) builder.sentence(fmt::format("The output of the stage is held {} until the input has settled.", word));
        return builder.build();
    };
    compareSheets(state, sheet("low"), sheet("high"));
}
BENCHMARK(equalSentences)->RangeMultiplier(2)->Range(128, 2048)->Unit(benchmark::kMillisecond)->Complexity();

// Sentences that differ in one number each, all of which are other ones there.
void nearlyEqualSentences(benchmark::State& state) {
    auto const sheet = [&](int offset) {
        support::SheetBuilder builder;
        builder.section(model::SectionKind::Function, "Operation");
        for (int i = 0; i < state.range(0); ++i) builder.sentence(fmt::format("Bit {} of the register enables the output of channel {} after reset.", i + offset, (i * 7 + offset) % 61));
        return builder.build();
    };
    compareSheets(state, sheet(0), sheet(100'000));
}
BENCHMARK(nearlyEqualSentences)->RangeMultiplier(2)->Range(128, 2048)->Unit(benchmark::kMillisecond)->Complexity();

// Rows of one name and symbol, told apart by their condition only.
void equalRows(benchmark::State& state) {
    auto const sheet = [&](int offset) {
        support::SheetBuilder builder;
        builder.section(model::SectionKind::Characteristics, "Electrical characteristics");
        std::vector<support::RowText> rows;
        for (int i = 0; i < state.range(0); ++i) {
            rows.push_back({.name = "Propagation delay", .symbol = "tPD", .condition = fmt::format("CL = {} pF", 10 + i), .typ = fmt::format("{}", 5 + i % 40 + offset), .unit = "ns"});
        }
        builder.specification("", rows);
        return builder.build();
    };
    compareSheets(state, sheet(0), sheet(1));
}
BENCHMARK(equalRows)->RangeMultiplier(2)->Range(64, 1024)->Unit(benchmark::kMillisecond)->Complexity();

// Rows without anything in common but their unit.
void strangeRows(benchmark::State& state) {
    auto const sheet = [&](char const* who) {
        support::SheetBuilder builder(who);
        builder.section(model::SectionKind::Characteristics, "Electrical characteristics");
        std::vector<support::RowText> rows;
        for (int i = 0; i < state.range(0); ++i) rows.push_back({.name = fmt::format("{} quantity number {}", who, i), .max = fmt::format("{}", i), .unit = "mA"});
        builder.specification("", rows);
        return builder.build();
    };
    compareSheets(state, sheet("QX17"), sheet("ZL99"));
}
BENCHMARK(strangeRows)->RangeMultiplier(2)->Range(64, 1024)->Unit(benchmark::kMillisecond)->Complexity();

// Two editions of a manual, files and all.
void longManuals(benchmark::State& state) {
    testing::TemporaryFolder const folder;
    std::string paths[2];
    for (int edition = 1; edition <= 2; ++edition) {
        paths[edition - 1] = folder.file(fmt::format("edition-{}.pdf", edition));
        auto const bytes = testing::longManual({.pages = static_cast<int>(state.range(0)), .edition = edition});
        auto* const file = std::fopen(paths[edition - 1].c_str(), "wb");
        if (file == nullptr) return;
        std::fwrite(bytes.data(), 1, bytes.size(), file);
        std::fclose(file);
    }
    for (auto _ : state) {
        auto const sheets = reading::readPair(paths[0], paths[1], {}, words());
        if (!sheets) break;
        benchmark::DoNotOptimize(risk::compareDatasheets(sheets->first, sheets->second, {}, words()));
    }
    state.SetComplexityN(state.range(0));
}
BENCHMARK(longManuals)->Arg(25)->Arg(50)->Arg(100)->Arg(200)->Arg(400)->Unit(benchmark::kMillisecond)->MeasureProcessCPUTime()->Complexity();

}  // namespace
}  // namespace standin

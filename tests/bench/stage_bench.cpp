// The cost of each stage over the demo pair, and over the PDFs of a folder where
// STANDIN_BENCH_FOLDER names one. Whole documents: the figures add up to about
// what `reading` and `comparing` take.
#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <memory>
#include <string>
#include <vector>

#include <benchmark/benchmark.h>

#include "compare/align.h"
#include "extractors/layout/layout.h"
#include "extractors/parameters/read_parameters.h"
#include "extractors/poppler/document_reader.h"
#include "extractors/read_datasheet.h"
#include "extractors/sections/sections.h"
#include "extractors/tables/find_tables.h"
#include "model/comparison_json.h"
#include "model/file.h"
#include "report/text_report.h"
#include "risk/compare_datasheets.h"

namespace standin {
namespace {

vocabulary::Vocabulary const& words() {
    static auto const vocabulary = vocabulary::Vocabulary::builtIn();
    return *vocabulary;
}

// A document with what each stage leaves to the next, made once.
struct Sample {
    std::string path;
    std::string bytes;
    std::vector<model::PageContent> contents;
    std::vector<model::PageLayout> layouts;
    std::vector<model::Table> tables;
    std::vector<model::Section> sections;
    model::Datasheet sheet;
};

std::vector<model::PageContent> popplerPass(std::string const& bytes) {
    std::vector<model::PageContent> contents;
    auto reader = poppler::DocumentReader::open(std::as_bytes(std::span{bytes}), {});
    if (!reader) return contents;
    for (int page = 1; page <= reader->pageCount(); ++page) {
        if (auto content = reader->readPage(page)) contents.push_back(std::move(*content));
    }
    return contents;
}

std::vector<model::PageLayout> layOutAll(std::vector<model::PageContent> const& contents) {
    std::vector<model::PageLayout> layouts;
    for (auto const& content : contents) layouts.push_back(layout::layOut(content));
    layout::markFurniture(layouts);
    return layouts;
}

std::vector<model::Table> findAllTables(std::vector<model::PageLayout> const& layouts) {
    std::vector<model::Table> tables;
    for (auto const& page : layouts) {
        for (auto& table : tables::findTables(page)) tables.push_back(std::move(table));
    }
    tables::joinContinued(tables, layouts);
    return tables;
}

Sample const* sampleOf(std::string const& path) {
    auto bytes = model::readFile(path, model::kLongestDocument);
    auto sheet = reading::readDatasheet(path, {}, words());
    if (!bytes || !sheet) return nullptr;
    static std::vector<std::unique_ptr<Sample>> all;
    auto sample = std::make_unique<Sample>();
    sample->path = path;
    sample->bytes = std::move(*bytes);
    sample->contents = popplerPass(sample->bytes);
    sample->layouts = layOutAll(sample->contents);
    sample->tables = findAllTables(sample->layouts);
    sample->sections = sections::findSections(sample->layouts);
    sample->sheet = std::move(*sheet);
    all.push_back(std::move(sample));
    return all.back().get();
}

void pagesAsCounter(benchmark::State& state, Sample const& sample) {
    state.counters["pages"] = static_cast<double>(sample.contents.size());
    state.counters["per page"] = benchmark::Counter(static_cast<double>(sample.contents.size()), benchmark::Counter::kIsIterationInvariantRate | benchmark::Counter::kInvert);
}

void popplerStage(benchmark::State& state, Sample const* sample) {
    for (auto _ : state) benchmark::DoNotOptimize(popplerPass(sample->bytes));
    pagesAsCounter(state, *sample);
}

void layoutStage(benchmark::State& state, Sample const* sample) {
    for (auto _ : state) benchmark::DoNotOptimize(layOutAll(sample->contents));
    pagesAsCounter(state, *sample);
}

void tableStage(benchmark::State& state, Sample const* sample) {
    for (auto _ : state) benchmark::DoNotOptimize(findAllTables(sample->layouts));
    pagesAsCounter(state, *sample);
}

void parameterStage(benchmark::State& state, Sample const* sample) {
    for (auto _ : state) {
        state.PauseTiming();
        auto tables = sample->tables;
        auto layouts = sample->layouts;
        state.ResumeTiming();
        benchmark::DoNotOptimize(parameters::readParameters(tables, layouts, sample->sections, &words()));
    }
    pagesAsCounter(state, *sample);
}

void wholeReading(benchmark::State& state, Sample const* sample) {
    reading::ReadOptions options;
    options.threads = 1;
    for (auto _ : state) benchmark::DoNotOptimize(reading::readDatasheet(sample->path, options, words()));
    pagesAsCounter(state, *sample);
}

void alignment(benchmark::State& state, Sample const* reference, Sample const* candidate) {
    for (auto _ : state) benchmark::DoNotOptimize(compare::align(reference->sheet, candidate->sheet, {}, words()));
}

void wholeComparison(benchmark::State& state, Sample const* reference, Sample const* candidate) {
    for (auto _ : state) benchmark::DoNotOptimize(risk::compareDatasheets(reference->sheet, candidate->sheet, {}, words()));
}

void jsonOutput(benchmark::State& state, Sample const* reference, Sample const* candidate) {
    auto const comparison = risk::compareDatasheets(reference->sheet, candidate->sheet, {}, words());
    for (auto _ : state) benchmark::DoNotOptimize(model::toJson(*comparison));
}

void addPair(Sample const* reference, Sample const* candidate) {
    auto const name = [&](char const* stage) {
        return std::string(stage) + "/" + std::filesystem::path(reference->path).stem().string() + "," + std::filesystem::path(candidate->path).stem().string();
    };
    benchmark::RegisterBenchmark(name("alignment").c_str(), alignment, reference, candidate)->Unit(benchmark::kMillisecond);
    benchmark::RegisterBenchmark(name("alignment+risk").c_str(), wholeComparison, reference, candidate)->Unit(benchmark::kMillisecond);
    benchmark::RegisterBenchmark(name("json").c_str(), jsonOutput, reference, candidate)->Unit(benchmark::kMillisecond);
}

void addSheet(Sample const* sample) {
    auto const name = [&](char const* stage) { return std::string(stage) + "/" + std::filesystem::path(sample->path).stem().string(); };
    benchmark::RegisterBenchmark(name("poppler").c_str(), popplerStage, sample)->Unit(benchmark::kMillisecond);
    benchmark::RegisterBenchmark(name("layout").c_str(), layoutStage, sample)->Unit(benchmark::kMillisecond);
    benchmark::RegisterBenchmark(name("tables").c_str(), tableStage, sample)->Unit(benchmark::kMillisecond);
    benchmark::RegisterBenchmark(name("parameters").c_str(), parameterStage, sample)->Unit(benchmark::kMillisecond);
    benchmark::RegisterBenchmark(name("reading").c_str(), wholeReading, sample)->Unit(benchmark::kMillisecond);
}

int const registered = [] {
    namespace fs = std::filesystem;
    auto const* reference = sampleOf(STANDIN_TESTDATA "/protection/reference.pdf");
    auto const* candidate = sampleOf(STANDIN_TESTDATA "/protection/candidate.pdf");
    if (reference != nullptr && candidate != nullptr) {
        addSheet(reference);
        addPair(reference, candidate);
    }
    char const* const folder = std::getenv("STANDIN_BENCH_FOLDER");
    if (folder == nullptr) return 0;
    std::vector<std::string> paths;
    for (auto const& entry : fs::directory_iterator(folder)) {
        if (entry.path().extension() == ".pdf") paths.push_back(entry.path().string());
    }
    std::sort(paths.begin(), paths.end());
    Sample const* before = nullptr;
    for (auto const& path : paths) {
        auto const* sample = sampleOf(path);
        if (sample == nullptr) continue;
        addSheet(sample);
        if (before != nullptr) addPair(before, sample);
        before = sample;
    }
    return static_cast<int>(paths.size());
}();

}  // namespace
}  // namespace standin

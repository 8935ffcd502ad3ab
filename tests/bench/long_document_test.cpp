// Bounds that hold on any machine: memory of a 400-page comparison, and CPU time
// that grows with the pages, not with their square.
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <cstdio>
#include <string>

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "extractors/read_datasheet.h"
#include "model/comparison_json.h"
#include "risk/compare_datasheets.h"
#include "support/long_manual.h"
#include "support/temporary_folder.h"

namespace standin {
namespace {

struct Cost {
    double seconds = 0;    // of CPU
    double megabytes = 0;  // at the peak
};

void compareAll(std::string const& reference, std::string const& candidate) {
    auto const vocabulary = vocabulary::Vocabulary::builtIn();
    auto const sheets = reading::readPair(reference, candidate, {}, *vocabulary);
    if (!sheets) _exit(3);
    auto const comparison = risk::compareDatasheets(sheets->first, sheets->second, {}, *vocabulary);
    if (!comparison || comparison->pairs.size() < 9) _exit(4);
    if (model::toJson(*comparison).empty()) _exit(5);
}

// In a process of its own: the peak of this one says nothing of a single run.
Cost costOf(int pages) {
    testing::TemporaryFolder const folder;
    std::string paths[2];
    for (int edition = 1; edition <= 2; ++edition) {
        paths[edition - 1] = folder.file(fmt::format("edition-{}.pdf", edition));
        auto const bytes = testing::longManual({.pages = pages, .edition = edition});
        auto* const file = std::fopen(paths[edition - 1].c_str(), "wb");
        std::fwrite(bytes.data(), 1, bytes.size(), file);
        std::fclose(file);
    }
    auto const child = ::fork();
    if (child == 0) {
        compareAll(paths[0], paths[1]);
        _exit(0);
    }
    int status = 0;
    rusage usage{};
    ::wait4(child, &status, 0, &usage);
    EXPECT_TRUE(WIFEXITED(status) && WEXITSTATUS(status) == 0) << "ended with " << status;
    auto const seconds = [](timeval const& t) { return static_cast<double>(t.tv_sec) + static_cast<double>(t.tv_usec) * 1e-6; };
    return {seconds(usage.ru_utime) + seconds(usage.ru_stime), static_cast<double>(usage.ru_maxrss) / 1024};
}

TEST(LongDocument, FourHundredPagesStayWithinMemoryAndGrowLinearly) {
    auto const hundred = costOf(100);
    auto const all = costOf(400);
    fmt::print("100 pages: {:.2f} s, {:.0f} MB; 400 pages: {:.2f} s, {:.0f} MB\n", hundred.seconds, hundred.megabytes, all.seconds, all.megabytes);
    EXPECT_LT(all.megabytes, 200);
    EXPECT_LT(all.seconds, 6 * hundred.seconds + 0.2);  // 4 is linear, 16 would be quadratic
}

}  // namespace
}  // namespace standin

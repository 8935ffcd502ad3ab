#include "record/store.h"

#include <atomic>
#include <filesystem>
#include <thread>

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/wait.h>
#include <unistd.h>

#include "model/file.h"
#include "src/record/sample_record.h"
#include "support/temporary_folder.h"

namespace standin::record {
namespace {

using model::WriteStep;
using ::testing::HasSubstr;

constexpr std::chrono::milliseconds kShortWait{100};
// Longer than any machine lets a writer starve that has its turn: what is asked there
// is whether entries are lost, not how long a person would wait.
constexpr std::chrono::milliseconds kPatientWait = std::chrono::hours(1);

class Store : public ::testing::Test {
protected:
    void SetUp() override {
        m_path = m_folder.file("evaluation.record");
        ASSERT_TRUE(createRecord(m_path, sampleRecord()));
    }

    [[nodiscard]] std::string content() const { return *model::readFile(m_path, kLongestRecord); }
    [[nodiscard]] std::size_t files() const {
        return static_cast<std::size_t>(std::distance(std::filesystem::directory_iterator(m_folder.path()), std::filesystem::directory_iterator{}));
    }

    static model::Result<Record> oneMore(Record record) { return withEntry(std::move(record), Body{decision('6', Disposition::Accepted)}, at(1, ashdown())); }

    testing::TemporaryFolder m_folder;
    std::string m_path;
};

TEST_F(Store, WritesAndReadsBack) {
    EXPECT_EQ(toText(*loadRecord(m_path)), toText(sampleRecord()));
    auto const changed = updateRecord(m_path, oneMore);
    ASSERT_TRUE(changed);
    EXPECT_EQ(content(), toText(*changed));
    EXPECT_EQ(files(), 1U);  // neither lock nor half-written files stay
}

TEST_F(Store, NeverReplacesARecordByANewOne) {
    auto const again = createRecord(m_path, sampleRecord());
    ASSERT_FALSE(again);
    EXPECT_THAT(again.error().message, HasSubstr("exists already"));
}

// The program dies right after each step of a write: the record is the old one
// or the new one, it can be read, and it can be written again.
TEST_F(Store, ACrashAtAnyStepLeavesTheOldOrTheNewRecord) {
    auto const before = content();
    auto const after = toText(*oneMore(*parseRecord(before)));
    for (auto const step : {WriteStep::Created, WriteStep::PartlyWritten, WriteStep::Written, WriteStep::Flushed, WriteStep::Renamed, WriteStep::FolderFlushed}) {
        std::filesystem::remove(m_path);
        ASSERT_TRUE(createRecord(m_path, *parseRecord(before)));
        pid_t const child = fork();
        if (child == 0) {
            Writing dying;
            dying.watch = [step](WriteStep done, std::string const&) {
                if (done == step) _exit(7);
            };
            [[maybe_unused]] auto const result = updateRecord(m_path, oneMore, dying);
            _exit(0);
        }
        int status = 0;
        ASSERT_EQ(waitpid(child, &status, 0), child);
        ASSERT_TRUE(WIFEXITED(status));
        ASSERT_EQ(WEXITSTATUS(status), 7) << "the step was never reached";
        bool const renamed = step >= WriteStep::Renamed;
        EXPECT_EQ(content(), renamed ? after : before) << "step " << static_cast<int>(step);
        ASSERT_TRUE(loadRecord(m_path));
        // The lock of a program that is gone does not stop the next one.
        Writing const impatient{kShortWait, {}};
        EXPECT_TRUE(updateRecord(m_path, oneMore, impatient));
    }
}

TEST_F(Store, ACrashWhileOpeningLeavesNoRecordOrAWholeOne) {
    for (auto const step : {WriteStep::Created, WriteStep::PartlyWritten, WriteStep::Written, WriteStep::Flushed, WriteStep::Renamed, WriteStep::FolderFlushed}) {
        std::filesystem::remove(m_path);
        pid_t const child = fork();
        if (child == 0) {
            Writing dying;
            dying.watch = [step](WriteStep done, std::string const&) {
                if (done == step) _exit(7);
            };
            [[maybe_unused]] auto const result = createRecord(m_path, sampleRecord(), dying);
            _exit(0);
        }
        int status = 0;
        ASSERT_EQ(waitpid(child, &status, 0), child);
        ASSERT_EQ(WEXITSTATUS(status), 7);
        EXPECT_EQ(std::filesystem::exists(m_path), step >= WriteStep::Renamed);
        if (step >= WriteStep::Renamed) {
            EXPECT_TRUE(loadRecord(m_path));
        }
    }
}

TEST_F(Store, TheSecondProgramSaysThatTheFirstIsAtIt) {
    auto const lock = FileLock::take(m_path, kShortWait);
    ASSERT_TRUE(lock);
    auto const before = content();
    auto const second = updateRecord(m_path, oneMore, {kShortWait, {}});
    ASSERT_FALSE(second);
    EXPECT_THAT(second.error().message, HasSubstr("another program"));
    EXPECT_EQ(content(), before);
}

TEST_F(Store, TheSecondProgramWaitsForTheFirst) {
    std::atomic<bool> held{false};
    std::thread first([&] {
        auto const lock = FileLock::take(m_path, kShortWait);
        held = true;
        std::this_thread::sleep_for(kShortWait);
    });
    while (!held) std::this_thread::yield();
    EXPECT_TRUE(updateRecord(m_path, oneMore, {kPatientWait, {}}));
    first.join();
}

// Whatever comes between, no entry is lost.
TEST_F(Store, ManyWritersLoseNoEntry) {
    constexpr int kWriters = 4;
    constexpr int kEach = 5;
    std::vector<std::thread> writers;
    for (int i = 0; i < kWriters; ++i) {
        writers.emplace_back([&] {
            for (int j = 0; j < kEach; ++j) {
                auto const written = updateRecord(m_path, oneMore, {kPatientWait, {}});
                EXPECT_TRUE(written) << written.error().message;
            }
        });
    }
    for (auto& writer : writers) writer.join();
    EXPECT_EQ(loadRecord(m_path)->entries.size(), 1U + kWriters * kEach);
}

TEST_F(Store, ARefusedChangeWritesNothing) {
    auto const before = content();
    auto const refused = updateRecord(m_path, [](Record const&) -> model::Result<Record> { return tl::unexpected(model::Error{model::ErrorKind::Usage, "no", {}, 0}); });
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().file, m_path);
    auto const forbidden = updateRecord(m_path, [](Record record) { return withEntry(std::move(record), Body{decision('2', Disposition::Accepted)}, at(1, ashdown())); });
    EXPECT_FALSE(forbidden);
    EXPECT_EQ(content(), before);
}

TEST_F(Store, ABrokenRecordIsNotWrittenOn) {
    ASSERT_TRUE(model::replaceFile(m_path, content().substr(0, content().size() - 2)));
    auto const broken = updateRecord(m_path, oneMore);
    ASSERT_FALSE(broken);
    EXPECT_EQ(broken.error().kind, model::ErrorKind::Damaged);
    EXPECT_EQ(broken.error().file, m_path);
}

}  // namespace
}  // namespace standin::record

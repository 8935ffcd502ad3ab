#include "model/durable_file.h"

#include <filesystem>
#include <vector>

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/stat.h>

#include "model/file.h"
#include "support/temporary_folder.h"

namespace standin::model {
namespace {

using ::testing::ElementsAre;

class DurableFile : public ::testing::Test {
protected:
    void SetUp() override { m_path = m_folder.file("content"); }
    [[nodiscard]] std::string content() const { return *readFile(m_path, kLongestUserFile); }

    testing::TemporaryFolder m_folder;
    std::string m_path;
};

TEST_F(DurableFile, TellsEachStepInOrder) {
    std::vector<WriteStep> steps;
    ASSERT_TRUE(replaceFile(m_path, "text", [&](WriteStep step, std::string const& beside) {
        steps.push_back(step);
        EXPECT_EQ(std::filesystem::exists(beside), step < WriteStep::Renamed);
        EXPECT_EQ(std::filesystem::exists(m_path), step >= WriteStep::Renamed);
    }));
    EXPECT_THAT(steps, ElementsAre(WriteStep::Created, WriteStep::PartlyWritten, WriteStep::Written, WriteStep::Flushed, WriteStep::Renamed, WriteStep::FolderFlushed));
    EXPECT_EQ(content(), "text");
}

TEST_F(DurableFile, KeepsThePermissionsOfWhatItReplaces) {
    ASSERT_TRUE(replaceFile(m_path, "one"));
    chmod(m_path.c_str(), 0640);
    ASSERT_TRUE(replaceFile(m_path, "two"));
    struct stat status {};
    stat(m_path.c_str(), &status);
    EXPECT_EQ(status.st_mode & 07777, 0640U);
    EXPECT_EQ(content(), "two");
}

TEST_F(DurableFile, TroubleLeavesNothingBehind) {
    EXPECT_FALSE(replaceFile((m_folder.path() / "missing" / "content").string(), "text"));
    std::filesystem::create_directories(m_path);  // a folder stands at the place
    auto const written = replaceFile(m_path, "text");
    ASSERT_FALSE(written);
    EXPECT_EQ(written.error().file, m_path);
    EXPECT_EQ(std::distance(std::filesystem::directory_iterator(m_folder.path()), std::filesystem::directory_iterator{}), 1);
}

}  // namespace
}  // namespace standin::model

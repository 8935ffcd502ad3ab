#include "model/file.h"

#include <cstdio>
#include <filesystem>
#include <string>

#include <gtest/gtest.h>

#include "support/temporary_folder.h"

namespace standin::model {
namespace {

class ReadFile : public ::testing::Test {
protected:
    std::string write(std::string const& content) {
        auto const path = m_folder.file("content");
        auto* const file = std::fopen(path.c_str(), "wb");
        std::fwrite(content.data(), 1, content.size(), file);
        std::fclose(file);
        return path;
    }

    testing::TemporaryFolder m_folder;
};

TEST_F(ReadFile, GivesEveryByte) {
    std::string content(200'000, 'x');
    content[100'000] = '\0';
    content[150'000] = '\n';
    auto const read = readFile(write(content), kLongestUserFile);
    ASSERT_TRUE(read);
    EXPECT_EQ(*read, content);
}

TEST_F(ReadFile, EmptyFileIsNoError) {
    auto const read = readFile(write(""), kLongestUserFile);
    ASSERT_TRUE(read);
    EXPECT_TRUE(read->empty());
}

TEST_F(ReadFile, StopsAtTheLimit) {
    auto const path = write("12345");
    EXPECT_TRUE(readFile(path, 5));
    auto const read = readFile(path, 4);
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().kind, ErrorKind::Usage);
    EXPECT_EQ(read.error().file, path);
}

TEST_F(ReadFile, SaysWhatCannotBeOpenedOrRead) {
    auto const missing = readFile(m_folder.file("missing"), 10);
    ASSERT_FALSE(missing);
    EXPECT_EQ(missing.error().kind, ErrorKind::Unreadable);
    auto const folder = readFile(m_folder.path().string(), 10);
    ASSERT_FALSE(folder);
    EXPECT_EQ(folder.error().kind, ErrorKind::Unreadable);
    EXPECT_NE(folder.error().message.find("folder"), std::string::npos);
}

}  // namespace
}  // namespace standin::model

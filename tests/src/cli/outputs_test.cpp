#include "cli/outputs.h"

#include <filesystem>
#include <fstream>

#include <gtest/gtest.h>

#include "support/temporary_folder.h"

namespace standin::cli {
namespace {

namespace fs = std::filesystem;

class OutputsTest : public ::testing::Test {
protected:
    [[nodiscard]] std::string path(char const* name) const { return m_folder.file(name); }

    [[nodiscard]] static std::string contentOf(std::string const& path) {
        std::ifstream file(path, std::ios::binary);
        return {std::istreambuf_iterator<char>(file), {}};
    }

    [[nodiscard]] std::size_t filesLeft() const {
        std::size_t count = 0;
        for ([[maybe_unused]] auto const& entry : fs::directory_iterator(m_folder.path())) ++count;
        return count;
    }

    testing::TemporaryFolder m_folder;
};

TEST_F(OutputsTest, FilesAppearWholeAndReplaceEarlierOnes) {
    std::ofstream(path("a.txt")) << "earlier, and longer than the new one";
    Outputs outputs;
    outputs.add(path("a.txt"), "new");
    outputs.add(path("b.txt"), std::string(100'000, 'b'));
    ASSERT_TRUE(outputs.write().has_value());
    EXPECT_EQ(contentOf(path("a.txt")), "new");
    EXPECT_EQ(contentOf(path("b.txt")).size(), 100'000U);
    EXPECT_EQ(filesLeft(), 2U);
}

TEST_F(OutputsTest, WhenOneCannotBeWrittenNoneIs) {
    std::ofstream(path("a.txt")) << "earlier";
    Outputs outputs;
    outputs.add(path("a.txt"), "new");
    outputs.add(path("no/such/folder/b.txt"), "b");
    auto const written = outputs.write();
    ASSERT_FALSE(written.has_value());
    EXPECT_NE(written.error().file.find("b.txt"), std::string::npos);
    EXPECT_EQ(contentOf(path("a.txt")), "earlier");
    EXPECT_EQ(filesLeft(), 1U);
}

TEST_F(OutputsTest, AFullDeviceIsAnError) {
    if (!fs::exists("/dev/full")) GTEST_SKIP();
    Outputs outputs;
    outputs.add("/dev/full", "content");
    EXPECT_FALSE(outputs.write().has_value());
}

}  // namespace
}  // namespace standin::cli

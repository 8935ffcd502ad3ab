// The built programs, started as a user starts them.
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>

#include <sys/wait.h>

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "cli/run.h"
#include "support/temporary_folder.h"

namespace standin::cli {
namespace {

namespace fs = std::filesystem;

std::string content(fs::path const& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

class ProgramTest : public ::testing::Test {
protected:
    // Exit status of `program` comparing the MOSFET pair with these further words.
    int compare(fs::path const& program, std::string const& words) const {
        std::string const data = STANDIN_TESTDATA "/mosfet/";
        return started(program, fmt::format("compare '{0}revision-b.pdf' '{0}revision-c.pdf' {1}", data, words));
    }
    int started(fs::path const& program, std::string const& words) const {
        std::string const line = fmt::format("'{}' {} >'{}' 2>'{}'", program.string(), words, out().string(), errors().string());
        int const status = std::system(line.c_str());
        return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
    }
    fs::path out() const { return m_folder.path() / "out"; }
    fs::path errors() const { return m_folder.path() / "errors"; }
    fs::path file(std::string const& name) const { return m_folder.path() / name; }

private:
    testing::TemporaryFolder m_folder;
};

TEST_F(ProgramTest, EndsAtOnceWithEverythingWritten) {
    EXPECT_EQ(compare(STANDIN_PROGRAM, "--json - --csv '" + file("pairs.csv").string() + "'"), kFindings);
    auto const json = content(out());
    ASSERT_GT(json.size(), 1000U);
    EXPECT_EQ(json.substr(json.size() - 2), "}\n");
    EXPECT_EQ(content(file("pairs.csv")).back(), '\n');
    EXPECT_EQ(content(errors()), "");
}

TEST_F(ProgramTest, HandsThePdfToTheProgramBeside) {
    auto const pdf = file("report.pdf");
    EXPECT_EQ(compare(STANDIN_PROGRAM, "--pdf '" + pdf.string() + "'"), kFindings);
    EXPECT_EQ(content(pdf).substr(0, 5), "%PDF-");
    EXPECT_EQ(compare(STANDIN_PROGRAM, "--pdf='" + pdf.string() + "'"), kFindings);
}

TEST_F(ProgramTest, HandsRecognitionToTheProgramBeside) {
    std::string const scan = STANDIN_TESTDATA "/features/image-only.pdf";
    ASSERT_EQ(started(STANDIN_PROGRAM, fmt::format("read '{}' --ocr eng", scan)), kNothingFound) << content(errors());
    auto const once = content(out());
    EXPECT_NE(once.find("recognised from a picture"), std::string::npos);
    ASSERT_EQ(started(STANDIN_PROGRAM, fmt::format("read '{}' --ocr=eng", scan)), kNothingFound);
    EXPECT_EQ(content(out()), once);
    EXPECT_EQ(started(STANDIN_PROGRAM, fmt::format("read '{}'", scan)), kNothingFound);
    EXPECT_NE(content(out()).find("what is printed there was not read"), std::string::npos);
    EXPECT_EQ(started(STANDIN_PROGRAM, fmt::format("compare '{0}' '{0}' --ocr eng", scan)), kFindings) << "nothing recognised is believed";
    EXPECT_NE(content(out()).find("Read by character recognition"), std::string::npos);
    std::string const key = file("a.key").string();
    std::string const record = file("scan.record").string();
    ASSERT_EQ(started(STANDIN_PROGRAM, fmt::format("record key --new '{}' --name 'R. Ashdown'", key)), kNothingFound);
    ASSERT_EQ(started(STANDIN_PROGRAM, fmt::format("record open '{0}' '{0}' -o '{1}' --key '{2}' --ocr eng", scan, record, key)), kNothingFound) << content(errors());
    EXPECT_NE(content(record).find("\"ocr\":\"eng\""), std::string::npos);
    EXPECT_EQ(started(STANDIN_PROGRAM, fmt::format("record check '{0}' --reference '{1}' --candidate '{1}'", record, scan)), kFindings)
        << "read again in the same language: " << content(errors());
}

TEST_F(ProgramTest, NamesThePackageOfALanguageThatIsMissing) {
    EXPECT_EQ(started(STANDIN_PROGRAM, "read '" STANDIN_TESTDATA "/features/plain.pdf' --ocr eng+xxx_qaa"), kTrouble);
    EXPECT_NE(content(errors()).find("install the package tesseract-ocr-xxx-qaa"), std::string::npos) << content(errors());
    EXPECT_EQ(content(errors()).find('\n'), content(errors()).size() - 1) << "one line";
    EXPECT_EQ(content(out()), "");
}

TEST_F(ProgramTest, SaysSoWhereTheProgramBesideIsMissing) {
    auto const alone = file("standin");
    fs::copy_file(STANDIN_PROGRAM, alone);
    EXPECT_EQ(compare(alone, "--pdf '" + file("report.pdf").string() + "'"), kTrouble);
    EXPECT_NE(content(errors()).find("install it again"), std::string::npos);
    EXPECT_FALSE(fs::exists(file("report.pdf")));
    EXPECT_EQ(started(alone, "read '" STANDIN_TESTDATA "/features/plain.pdf' --ocr eng"), kTrouble);
    EXPECT_NE(content(errors()).find("install it again"), std::string::npos);
    EXPECT_EQ(started(alone, "record show none.jsonl"), kTrouble);
    EXPECT_NE(content(errors()).find("install it again"), std::string::npos);
}

TEST_F(ProgramTest, HandsTheRecordToTheProgramBeside) {
    EXPECT_EQ(started(STANDIN_PROGRAM, "record show '" + file("none.jsonl").string() + "'"), kTrouble);
    EXPECT_NE(content(errors()).find("none.jsonl"), std::string::npos);
    EXPECT_EQ(content(errors()).find("install it again"), std::string::npos);
}

}  // namespace
}  // namespace standin::cli

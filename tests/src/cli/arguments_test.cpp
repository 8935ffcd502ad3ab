#include "cli/arguments.h"

#include <initializer_list>

#include <gtest/gtest.h>

namespace standin::cli {
namespace {

model::Result<Command> parse(std::initializer_list<char const*> words) {
    std::vector<char const*> argv{"standin"};
    argv.insert(argv.end(), words);
    return parseArguments(static_cast<int>(argv.size()), argv.data());
}

TEST(ParseArguments, ReadWithEveryOption) {
    auto const command = parse({"read", "a.pdf", "--text", "t", "--json", "-", "--csv", "c", "--variant", "AB", "--pages", "2-5", "--password-file", "p"});
    ASSERT_TRUE(command.has_value());
    auto const& read = std::get<ReadCommand>(*command);
    EXPECT_EQ(read.file, "a.pdf");
    EXPECT_EQ(read.text, "t");
    EXPECT_EQ(read.json, "-");
    EXPECT_EQ(read.csv, "c");
    EXPECT_EQ(read.variant, "AB");
    EXPECT_EQ(read.pages->first, 2);
    EXPECT_EQ(read.pages->last, 5);
    EXPECT_EQ(read.passwordFile, "p");
}

TEST(ParseArguments, CompareWithEveryOption) {
    auto const command = parse({"compare", "a.pdf", "b.json", "--text", "t", "--json", "j", "--html", "h", "--pdf", "d", "--csv", "-", "--reference-variant", "A", "--candidate-variant", "B",
                                "--vocabulary", "v1", "--vocabulary", "v2", "--fail-on", "hazard", "--password-file", "p"});
    ASSERT_TRUE(command.has_value());
    auto const& compare = std::get<CompareCommand>(*command);
    EXPECT_EQ(compare.reference, "a.pdf");
    EXPECT_EQ(compare.candidate, "b.json");
    EXPECT_EQ(compare.html, "h");
    EXPECT_EQ(compare.pdf, "d");
    EXPECT_EQ(compare.vocabularies, (std::vector<std::string>{"v1", "v2"}));
    EXPECT_EQ(compare.failOn, model::Severity::Hazard);
    EXPECT_EQ(compare.referenceVariant, "A");
    EXPECT_EQ(compare.candidateVariant, "B");
}

TEST(ParseArguments, DefaultsToFailingOnANote) {
    auto const command = parse({"compare", "a.pdf", "b.pdf"});
    ASSERT_TRUE(command.has_value());
    EXPECT_EQ(std::get<CompareCommand>(*command).failOn, model::Severity::Note);
}

TEST(ParseArguments, HelpAndVersionAreInformation) {
    for (auto const* word : {"--help", "--version"}) {
        auto const command = parse({word});
        ASSERT_TRUE(command.has_value()) << word;
        EXPECT_NE(std::get<Information>(*command).text.find("standin"), std::string::npos);
    }
}

TEST(ParseArguments, Check) {
    std::vector<char const*> const argv{"standin", "check", "c.pdf", "--cell", "cell.json", "--circuit=board.json", "--variant", "QX-A", "--json", "-", "--fail-on", "function", "--vocabulary", "v.json"};
    auto const command = parseArguments(static_cast<int>(argv.size()), argv.data());
    ASSERT_TRUE(command.has_value()) << command.error().message;
    auto const& check = std::get<CheckCommand>(*command);
    EXPECT_EQ(check.candidate, "c.pdf");
    EXPECT_EQ(check.cell, "cell.json");
    EXPECT_EQ(check.circuit, "board.json");
    EXPECT_EQ(check.variant, "QX-A");
    EXPECT_EQ(check.json, "-");
    EXPECT_EQ(check.failOn, model::Severity::Function);
    EXPECT_EQ(check.vocabularies, std::vector<std::string>{"v.json"});
}

struct WrongCase {
    char const* what;
    std::vector<char const*> words;
    char const* says;
};

TEST(ParseArguments, TroubleIsOneClearLine) {
    WrongCase const cases[] = {
        {"no command", {}, "--help"},
        {"unknown command", {"match", "a.pdf"}, "--help"},
        {"missing candidate", {"compare", "a.pdf"}, "CANDIDATE"},
        {"unknown option", {"read", "a.pdf", "--colour"}, "--colour"},
        {"unknown severity", {"compare", "a", "b", "--fail-on", "danger"}, "danger"},
        {"pages the wrong way round", {"read", "a", "--pages", "5-2"}, "--pages"},
        {"pages that are no numbers", {"read", "a", "--pages", "x"}, "--pages"},
        {"page nought", {"read", "a", "--pages", "0-1"}, "--pages"},
        {"an empty output", {"read", "a", "--json", ""}, "--json"},
        {"two on standard output", {"read", "a", "--json", "-", "--text", "-"}, "standard output"},
        {"two into one file", {"compare", "a", "b", "--json", "x", "--html", "x"}, "x"},
        {"recognition in no language", {"read", "a", "--ocr", ""}, "--ocr wants language codes"},
        {"a check without a cell", {"check", "a"}, "--cell"},
        {"a check of nothing", {"check", "--cell", "x"}, "CANDIDATE"},
        {"a check with an unknown severity", {"check", "a", "--cell", "x", "--fail-on", "danger"}, "danger"},
        {"a check with two outputs on standard output", {"check", "a", "--cell", "x", "--json", "-", "--csv", "-"}, "standard output"},
    };
    for (auto const& c : cases) {
        SCOPED_TRACE(c.what);
        std::vector<char const*> argv{"standin"};
        argv.insert(argv.end(), c.words.begin(), c.words.end());
        auto const command = parseArguments(static_cast<int>(argv.size()), argv.data());
        ASSERT_FALSE(command.has_value());
        EXPECT_EQ(command.error().kind, model::ErrorKind::Usage);
        EXPECT_NE(command.error().message.find(c.says), std::string::npos) << command.error().message;
        EXPECT_EQ(command.error().message.find('\n'), std::string::npos);
    }
}

}  // namespace
}  // namespace standin::cli

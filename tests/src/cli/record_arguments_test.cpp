#include "cli/record_arguments.h"

#include <initializer_list>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace standin::cli {
namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;

model::Result<RecordCommand> parse(std::initializer_list<char const*> words) {
    std::vector<char const*> argv{"record"};
    argv.insert(argv.end(), words);
    return parseRecordArguments(static_cast<int>(argv.size()), argv.data());
}

TEST(RecordArguments, OpenTakesWhatCompareTakes) {
    auto const command = parse({"open", "a.pdf", "b.pdf", "-o", "x.record", "--key", "k", "--candidate-variant", "B", "--vocabulary", "v", "--number", "S-1", "--product", "logger", "--scope", "lot 4",
                                "--valid-until", "2032-01-31", "--review-trigger", "one", "--review-trigger", "two", "--from", "old.record"});
    ASSERT_TRUE(command) << command.error().message;
    EXPECT_EQ(command->action, RecordAction::Open);
    EXPECT_EQ(command->compare.reference, "a.pdf");
    EXPECT_EQ(command->compare.candidateVariant, "B");
    EXPECT_THAT(command->compare.vocabularies, ElementsAre("v"));
    EXPECT_EQ(command->output, "x.record");
    EXPECT_EQ(command->from, "old.record");
    EXPECT_EQ(command->identification.validUntil, "2032-01-31");
    EXPECT_THAT(command->identification.reviewTriggers, ElementsAre("one", "two"));
}

TEST(RecordArguments, DecideWithEveryOption) {
    auto const command = parse({"decide", "x.record", "aaaa", "bbbb", "--disposition", "supplier-statement", "--reason", "why", "--condition", "c", "--evidence", "e1", "--evidence", "e2", "--addressee",
                                "maker", "--due", "2031-06-30", "--samples", "5 of 2 lots", "--key", "k", "--passphrase-file", "p"});
    ASSERT_TRUE(command) << command.error().message;
    EXPECT_EQ(command->action, RecordAction::Decide);
    EXPECT_THAT(command->findings, ElementsAre("aaaa", "bbbb"));
    EXPECT_EQ(command->decided.disposition, record::Disposition::SupplierStatement);
    EXPECT_EQ(command->decided.reason, "why");
    EXPECT_THAT(command->evidence, ElementsAre("e1", "e2"));
    EXPECT_EQ(command->passphraseFile, "p");
}

TEST(RecordArguments, TheOthers) {
    EXPECT_EQ(parse({"show", "x"})->action, RecordAction::Show);
    EXPECT_EQ(parse({"check", "x", "--reference", "r", "--candidate", "c", "--head", "00"})->reference, "r");
    EXPECT_EQ(parse({"sign", "x", "--role", "approver", "--key", "k"})->role, record::Role::Approver);
    EXPECT_EQ(parse({"merge", "a", "b", "-o", "c", "--key", "k"})->other, "b");
    EXPECT_EQ(parse({"report", "x", "--html", "h", "--pdf", "p"})->pdf, "p");
    EXPECT_EQ(parse({"key", "--new", "k", "--name", "R. Ashdown"})->action, RecordAction::NewKey);
    EXPECT_EQ(parse({"key", "k"})->action, RecordAction::ShowKey);
    EXPECT_THAT(parse({"result", "x", "delays", "--value", "1.2", "--value", "1.4", "--unit", "ms", "--key", "k"})->result.values, ElementsAre("1.2", "1.4"));
    auto const superseded = parse({"supersede", "x", "--by", "y", "--reason", "r", "--key", "k"});
    EXPECT_EQ(superseded->action, RecordAction::Supersede);
    EXPECT_EQ(superseded->other, "y");
    EXPECT_EQ(superseded->reason, "r");
    auto const given = parse({"distribute", "x", "--to", "Purchasing", "--to", "Stores", "--change", "CN-204", "--on", "2031-05-06", "--key", "k"});
    EXPECT_EQ(given->action, RecordAction::Distribute);
    EXPECT_THAT(given->recipients, ElementsAre("Purchasing", "Stores"));
    EXPECT_EQ(given->distributed, (record::Distributed{"", "a copy of the record", "CN-204", "2031-05-06"}));
    EXPECT_EQ(parse({"distribute", "x", "--to", "Stores", "--what", "work instruction", "--key", "k"})->distributed.what, "work instruction");
    EXPECT_EQ(parse({"result", "x", "overcharge-threshold", "--check", "overcharge-upper", "--value", "4.27", "--key", "k"})->result.check, "overcharge-upper");
    // Negative values are values, not options.
    EXPECT_THAT(parse({"result", "x", "delays", "--value", "-0.3", "--key", "k"})->result.values, ElementsAre("-0.3"));
    EXPECT_THAT(parse({"--help"})->information, HasSubstr("decide"));
    EXPECT_THAT(parse({"decide", "--help"})->information, HasSubstr("--disposition"));
}

TEST(RecordArguments, SlipsAreToldOnOneLine) {
    struct Case {
        std::initializer_list<char const*> words;
        char const* message;
    };
    Case const cases[] = {
        {{}, "subcommand"},
        {{"vanish"}, "--help"},
        {{"decide", "x", "aaaa", "--reason", "r", "--key", "k"}, "--disposition, or --confirm"},
        {{"decide", "x", "aaaa", "--disposition", "accepted", "--confirm", "--key", "k"}, "--disposition, or --confirm"},
        {{"decide", "x", "aaaa", "--disposition", "fine", "--key", "k"}, "not 'fine'"},
        {{"decide", "x", "--disposition", "accepted", "--key", "k"}, "name the findings"},
        {{"decide", "x", "aaaa", "--every-note", "--disposition", "accepted", "--key", "k"}, "name the findings"},
        {{"decide", "x", "aaaa", "--disposition", "accepted"}, "--key"},
        {{"decide", "x", "aaaa", "--disposition", "supplier-statement", "--due", "soon", "--key", "k"}, "--due"},
        {{"open", "a", "b", "--key", "k"}, "--output"},
        {{"open", "a", "b", "-o", "x", "--key", "k", "--valid-until", "2031-02-30"}, "--valid-until"},
        {{"sign", "x", "--role", "king", "--key", "k"}, "not 'king'"},
        {{"supersede", "x", "--reason", "r", "--key", "k"}, "--by"},
        {{"supersede", "x", "--by", "y", "--key", "k"}, "--reason"},
        {{"distribute", "x", "--key", "k"}, "--to"},
        {{"distribute", "x", "--to", "Stores", "--on", "tomorrow", "--key", "k"}, "--on"},
        {{"report", "x"}, "--html OUT or --pdf OUT"},
        {{"report", "x", "--html", ""}, "path"},
        {{"report", "x", "--html", "o", "--pdf", "o"}, "two outputs"},
        {{"key"}, "--new FILE"},
        {{"key", "k", "--new", "k"}, "--new FILE"},
        {{"key", "--new", "k"}, "--name"},
    };
    for (auto const& [words, message] : cases) {
        auto const command = parse(words);
        ASSERT_FALSE(command) << message;
        EXPECT_EQ(command.error().kind, model::ErrorKind::Usage);
        EXPECT_THAT(command.error().message, HasSubstr(message));
        EXPECT_EQ(command.error().message.find('\n'), std::string::npos);
    }
}

}  // namespace
}  // namespace standin::cli

#include "ui/worker/pair_worker.h"

#include <filesystem>

#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

#include "ui/support/desk_test.h"

namespace standin::ui {
namespace {

using testing::demoFile;
using testing::demoRequest;

constexpr int kLongestMs = 60000;

TEST(PairWorker, ReadsAndComparesOffTheThread) {
    PairWorker worker;
    QSignalSpy progressed(&worker, &PairWorker::progressed);
    PairPointer pair;
    QObject::connect(&worker, &PairWorker::finished, &worker, [&](PairPointer const& read) { pair = read; });
    worker.start(demoRequest());
    EXPECT_TRUE(worker.isRunning());
    ASSERT_TRUE(QTest::qWaitFor([&] { return pair != nullptr; }, kLongestMs));
    EXPECT_FALSE(worker.isRunning());
    EXPECT_GT(progressed.count(), 0);
    EXPECT_FALSE(pair->comparison.findings.empty());
    EXPECT_EQ(pair->request, demoRequest());
}

TEST(PairWorker, TellsWhatIsWrongWithAFile) {
    PairWorker worker;
    std::optional<model::Error> error;
    QObject::connect(&worker, &PairWorker::failed, &worker, [&](model::Error const& told) { error = told; });
    auto request = demoRequest();
    request.candidate = demoFile("no-such-file.pdf");
    worker.start(request);
    ASSERT_TRUE(QTest::qWaitFor([&] { return error.has_value(); }, kLongestMs));
    EXPECT_EQ(error->file, request.candidate);
    EXPECT_EQ(error->kind, model::ErrorKind::Unreadable);
}

TEST(PairWorker, IsSilentAfterCancelling) {
    PairWorker worker;
    int told = 0;
    QObject::connect(&worker, &PairWorker::finished, &worker, [&] { ++told; });
    QObject::connect(&worker, &PairWorker::failed, &worker, [&] { ++told; });
    worker.start(demoRequest());
    worker.cancel();
    EXPECT_FALSE(worker.isRunning());
    QTest::qWait(400);
    EXPECT_EQ(told, 0);
}

TEST(PairWorker, GivesOnlyTheLastOfTwoJobs) {
    PairWorker worker;
    std::vector<PairPointer> pairs;
    QObject::connect(&worker, &PairWorker::finished, &worker, [&](PairPointer const& read) { pairs.push_back(read); });
    worker.start(demoRequest());
    auto exchanged = demoRequest();
    std::swap(exchanged.reference, exchanged.candidate);
    worker.start(exchanged);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !pairs.empty(); }, kLongestMs));
    QTest::qWait(100);
    ASSERT_EQ(pairs.size(), 1U);
    EXPECT_EQ(pairs.front()->request, exchanged);
}

TEST(PairWorker, MayBeDestroyedWhileItReads) {
    auto worker = std::make_unique<PairWorker>();
    worker->start(demoRequest());
    worker.reset();
    QTest::qWait(50);  // nothing that is still queued may come
    SUCCEED();
}

TEST(ReadAndCompare, StopsWhenProgressSaysSo) {
    auto const outcome = readAndCompare(demoRequest(), [](int, int) { return false; });
    EXPECT_FALSE(outcome.has_value());
}

TEST(ReadAndCompare, NamesAVocabularyThatCannotBeRead) {
    auto request = demoRequest();
    request.vocabularies.push_back(demoFile("no-such-vocabulary.json"));
    auto const outcome = readAndCompare(request, {});
    ASSERT_FALSE(outcome.has_value());
    EXPECT_EQ(outcome.error().file, request.vocabularies.front());
}

}  // namespace
}  // namespace standin::ui

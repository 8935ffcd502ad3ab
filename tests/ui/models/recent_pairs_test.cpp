#include "ui/models/recent_pairs.h"

#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace standin::ui {
namespace {

TEST(RecentPairs, NewestFirstEachOnceAndNotTooMany) {
    QTemporaryDir const folder;
    QSettings settings(folder.filePath("settings.ini"), QSettings::IniFormat);
    for (int i = 0; i < kMostRecentPairs + 3; ++i) rememberPair(settings, {QStringLiteral("/a/r%1.pdf").arg(i), QStringLiteral("/a/c%1.pdf").arg(i), {}, {}});
    rememberPair(settings, {"/a/r5.pdf", "/a/c5.pdf", "/a/cell.json", {}});
    auto const pairs = recentPairs(settings);
    ASSERT_EQ(pairs.size(), static_cast<std::size_t>(kMostRecentPairs));
    EXPECT_EQ(pairs.front(), (RecentPair{"/a/r5.pdf", "/a/c5.pdf", "/a/cell.json", {}}));
    EXPECT_EQ(pairs.front().name(), "r5.pdf – c5.pdf");
    EXPECT_EQ(pairs[1].reference, "/a/r12.pdf");
    forgetPairs(settings);
    EXPECT_TRUE(recentPairs(settings).empty());
}

}  // namespace
}  // namespace standin::ui

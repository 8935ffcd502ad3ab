// The pairs that were opened last, newest first, kept in the settings.
#pragma once

#include <vector>

#include <QSettings>
#include <QString>

namespace standin::ui {

struct RecentPair {
    QString reference, candidate;  // absolute paths
    QString cell, circuit;         // empty: none
    bool operator==(RecentPair const&) const = default;
    // "HRN.pdf – TQL.pdf"
    [[nodiscard]] QString name() const;
};

inline constexpr int kMostRecentPairs = 10;

[[nodiscard]] std::vector<RecentPair> recentPairs(QSettings& settings);
// Moves it to the front where it is known already.
void rememberPair(QSettings& settings, RecentPair const& pair);
void forgetPairs(QSettings& settings);

}  // namespace standin::ui

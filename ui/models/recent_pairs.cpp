// Tested by tests/ui/models/recent_pairs_test.cpp.
#include "ui/models/recent_pairs.h"

#include <algorithm>

#include <QFileInfo>

namespace standin::ui {

namespace {

QString const kKey = QStringLiteral("recentPairs");

}  // namespace

QString RecentPair::name() const { return QStringLiteral("%1 – %2").arg(QFileInfo(reference).fileName(), QFileInfo(candidate).fileName()); }

std::vector<RecentPair> recentPairs(QSettings& settings) {
    std::vector<RecentPair> pairs;
    int const count = std::min(settings.beginReadArray(kKey), kMostRecentPairs);
    for (int i = 0; i < count; ++i) {
        settings.setArrayIndex(i);
        RecentPair pair{settings.value(QStringLiteral("reference")).toString(), settings.value(QStringLiteral("candidate")).toString(),
                        settings.value(QStringLiteral("cell")).toString(), settings.value(QStringLiteral("circuit")).toString()};
        if (!pair.reference.isEmpty() && !pair.candidate.isEmpty()) pairs.push_back(std::move(pair));
    }
    settings.endArray();
    return pairs;
}

void rememberPair(QSettings& settings, RecentPair const& pair) {
    auto pairs = recentPairs(settings);
    std::erase_if(pairs, [&](auto const& known) { return known.reference == pair.reference && known.candidate == pair.candidate; });
    pairs.insert(pairs.begin(), pair);
    if (pairs.size() > static_cast<std::size_t>(kMostRecentPairs)) pairs.resize(kMostRecentPairs);
    settings.remove(kKey);
    settings.beginWriteArray(kKey);
    for (std::size_t i = 0; i < pairs.size(); ++i) {
        settings.setArrayIndex(static_cast<int>(i));
        settings.setValue(QStringLiteral("reference"), pairs[i].reference);
        settings.setValue(QStringLiteral("candidate"), pairs[i].candidate);
        settings.setValue(QStringLiteral("cell"), pairs[i].cell);
        settings.setValue(QStringLiteral("circuit"), pairs[i].circuit);
    }
    settings.endArray();
}

void forgetPairs(QSettings& settings) { settings.remove(kKey); }

}  // namespace standin::ui

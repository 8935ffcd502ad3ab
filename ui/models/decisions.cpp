// A small JSON file a pair (schema standin.desk-decisions/1), written whole
// beside and renamed on every change.
//
// Tested by tests/ui/models/decisions_test.cpp.
#include "ui/models/decisions.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QJsonDocument>
#include <QJsonObject>
#include <QSaveFile>
#include <QUndoCommand>

#include "ui/models/qt_text.h"

namespace standin::ui {

namespace {

constexpr std::array<std::string_view, kDispositions.size()> kWords{"open",       "accepted",           "accepted-with-condition",
                                                                    "bench-test", "supplier-statement", "not-applicable",
                                                                    "rejected"};
constexpr qint64 kLongestFile = qint64{16} << 20;
constexpr qsizetype kHashLetters = 16;  // of each document in the file's name
QString const kSchema = QStringLiteral("standin.desk-decisions/1");

bool saysNothing(Decision const& decision) { return decision == Decision{}; }

}  // namespace

std::string_view wordOf(Disposition disposition) { return kWords[static_cast<std::size_t>(disposition)]; }

std::optional<Disposition> dispositionOf(std::string_view word) {
    for (auto const disposition : kDispositions) {
        if (wordOf(disposition) == word) return disposition;
    }
    return std::nullopt;
}

// One decision, or the typing of one remark: commands on the same finding that
// follow each other and keep the disposition are one.
class DecideCommand : public QUndoCommand {
public:
    DecideCommand(Decisions& decisions, std::string finding, Decision before, Decision after, QString const& name)
        : QUndoCommand(name), m_decisions(decisions), m_finding(std::move(finding)), m_before(std::move(before)), m_after(std::move(after)) {}

    void undo() override { m_decisions.put(m_finding, m_before); }
    void redo() override { m_decisions.put(m_finding, m_after); }
    [[nodiscard]] int id() const override { return m_before.disposition == m_after.disposition ? 1 : -1; }
    bool mergeWith(QUndoCommand const* other) override {
        auto const* next = static_cast<DecideCommand const*>(other);
        if (next->m_finding != m_finding) return false;
        m_after = next->m_after;
        return true;
    }

private:
    Decisions& m_decisions;
    std::string m_finding;
    Decision m_before, m_after;
};

Decisions::Decisions(QString folder, QObject* parent) : QObject(parent), m_folder(std::move(folder)) {}

QString Decisions::filePath() const {
    if (m_reference.empty()) return {};
    return QDir(m_folder).filePath(QStringLiteral("%1-%2.json").arg(toQt(m_reference).left(kHashLetters), toQt(m_candidate).left(kHashLetters)));
}

void Decisions::clear() {
    m_reference.clear();
    m_candidate.clear();
    m_byFinding.clear();
    m_undo.clear();
    Q_EMIT changed({});
}

void Decisions::load(std::string const& referenceSha256, std::string const& candidateSha256) {
    m_byFinding.clear();
    m_undo.clear();
    m_reference = referenceSha256;
    m_candidate = candidateSha256;
    QFile file(filePath());
    if (file.exists()) {
        auto const object = file.size() <= kLongestFile && file.open(QIODevice::ReadOnly) ? QJsonDocument::fromJson(file.readAll()).object() : QJsonObject{};
        if (object.value(QStringLiteral("schema")).toString() != kSchema) {
            QString const aside = filePath() + QStringLiteral(".unread");
            file.close();
            QFile::remove(aside);
            bool const moved = QFile::rename(filePath(), aside);
            Q_EMIT troubled(moved ? tr("The decisions kept for this pair cannot be read. The file was set aside as %1.").arg(aside)
                                  : tr("The decisions kept for this pair cannot be read: %1").arg(filePath()));
        }
        auto const decisions = object.value(QStringLiteral("decisions")).toObject();
        for (auto entry = decisions.begin(); entry != decisions.end(); ++entry) {
            auto const fields = entry.value().toObject();
            auto const disposition = dispositionOf(fromQt(fields.value(QStringLiteral("disposition")).toString()));
            Decision decision{disposition.value_or(Disposition::Open), fromQt(fields.value(QStringLiteral("remark")).toString())};
            if (!saysNothing(decision)) m_byFinding.emplace(fromQt(entry.key()), std::move(decision));
        }
    }
    Q_EMIT changed({});
}

Decision Decisions::decisionOn(std::string const& findingId) const {
    auto const found = m_byFinding.find(findingId);
    return found == m_byFinding.end() ? Decision{} : found->second;
}

int Decisions::decidedCount() const {
    int count = 0;
    for (auto const& entry : m_byFinding) count += entry.second.disposition != Disposition::Open ? 1 : 0;
    return count;
}

void Decisions::decide(std::string const& findingId, Decision const& decision, QString const& name) {
    auto before = decisionOn(findingId);
    if (before == decision) return;
    m_undo.push(new DecideCommand(*this, findingId, std::move(before), decision, name));
}

void Decisions::put(std::string const& findingId, Decision const& decision) {
    if (saysNothing(decision)) m_byFinding.erase(findingId);
    else m_byFinding[findingId] = decision;
    Q_EMIT changed(findingId);
    if (!save()) Q_EMIT troubled(tr("The decision could not be saved to %1. It is kept until this window closes; make room and decide again.").arg(filePath()));
}

bool Decisions::save() {
    if (m_reference.empty()) return true;
    QJsonObject decisions;
    for (auto const& [finding, decision] : m_byFinding) {
        decisions.insert(toQt(finding), QJsonObject{{QStringLiteral("disposition"), toQt(wordOf(decision.disposition))}, {QStringLiteral("remark"), toQt(decision.remark)}});
    }
    QJsonObject const object{{QStringLiteral("schema"), kSchema},
                             {QStringLiteral("reference"), toQt(m_reference)},
                             {QStringLiteral("candidate"), toQt(m_candidate)},
                             {QStringLiteral("decisions"), decisions}};
    if (!QDir().mkpath(m_folder)) return false;
    QSaveFile file(filePath());
    QByteArray const bytes = QJsonDocument(object).toJson();
    return file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size() && file.commit();
}

}  // namespace standin::ui

// One pool with one thread, as in ui/worker/pair_worker.cpp. Where records are
// kept is remembered by the hashes of their documents.
//
// Tested by tests/ui/models/record_test.cpp.
#include "ui/models/record_book.h"

#include <utility>

#include <QFileInfo>
#include <QMetaObject>
#include <QSettings>

#include "ui/models/qt_text.h"
#include "ui/models/words.h"
#include "ui/worker/guarded.h"

namespace standin::ui {

namespace {

constexpr qsizetype kHashLetters = 16;  // of each document
QString const kKeyFile = QStringLiteral("record/key");

QString settingOf(std::string const& reference, std::string const& candidate) {
    return QStringLiteral("record/of/%1-%2").arg(toQt(reference).left(kHashLetters), toQt(candidate).left(kHashLetters));
}

}  // namespace

RecordBook::RecordBook(Session& session, QObject* parent) : QObject(parent), m_session(session) {
    m_pool.setMaxThreadCount(1);
    m_signer.keyFile = fromQt(QSettings().value(kKeyFile).toString());
    connect(&session, &Session::pairChanged, this, &RecordBook::takePair);
    takePair();
}

RecordBook::~RecordBook() { m_pool.waitForDone(); }

bool RecordBook::isOfPair() const {
    if (!m_record || !m_session.pair()) return false;
    auto const& recorded = m_record->record.opened().comparison;
    auto const& shown = *m_session.pair();
    return recorded.reference.sha256 == shown.reference.document.sha256 && recorded.candidate.sha256 == shown.candidate.document.sha256;
}

void RecordBook::setSigner(Signer signer) {
    m_signer = std::move(signer);
    QSettings().setValue(kKeyFile, toQt(m_signer.keyFile));  // never the passphrase
    Q_EMIT signerChanged();
}

void RecordBook::take(QString const& file) {
    run([path = fromQt(file)] { return readRecord(path); }, {});
}

void RecordBook::open(NewRecord wanted) {
    if (!m_session.pair()) return;
    run([pair = m_session.pair(), wanted = std::move(wanted), signer = m_signer] { return openRecordOf(*pair, wanted, signer); }, {});
}

void RecordBook::decide(NewDecision decision) {
    if (!m_record) return;
    run([file = m_record->file, decision = std::move(decision), signer = m_signer] { return decideInRecord(file, decision, signer); }, {});
}

void RecordBook::enter(record::BenchResult result, std::vector<std::string> evidence) {
    if (!m_record) return;
    run([file = m_record->file, result = std::move(result), evidence = std::move(evidence), signer = m_signer] { return enterResult(file, result, evidence, signer); }, {});
}

void RecordBook::sign(record::Role role, QString const& note) {
    if (!m_record) return;
    run([file = m_record->file, role, words = fromQt(note), signer = m_signer] { return signRecord(file, role, words, signer); }, {});
}

void RecordBook::supersede(QString const& by, QString const& reason) {
    if (!m_record) return;
    run([file = m_record->file, other = fromQt(by), why = fromQt(reason), signer = m_signer] { return supersedeRecord(file, other, why, signer); }, {});
}

void RecordBook::distribute(record::Distributed distributed) {
    if (!m_record) return;
    run([file = m_record->file, distributed = std::move(distributed), signer = m_signer] { return distributeRecord(file, distributed, signer); }, {});
}

void RecordBook::merge(QString const& other, QString const& output) {
    if (!m_record) return;
    run([file = m_record->file, second = fromQt(other), to = fromQt(output), signer = m_signer] { return mergeRecordFiles(file, second, to, signer); }, {});
}

void RecordBook::check() {
    if (!m_record) return;
    run([file = m_record->file, pair = m_session.pair()] { return checkRecordFile(file, pair ? &pair->request : nullptr); }, {});
}

void RecordBook::report(QString const& output, RecordReport form) {
    if (!m_record) return;
    run([file = m_record->file, to = fromQt(output), form] { return reportRecord(file, to, form); }, {});
}

void RecordBook::makeKey(QString const& file, QString const& name, QString const& passphrase) {
    Signer const made{fromQt(file), fromQt(passphrase)};
    run([made, person = fromQt(name)] { return makeKeyFile(made.keyFile, person, made.passphrase); }, [this, made](RecordOutcome const&) { setSigner(made); });
}

void RecordBook::run(Job job, Done done) {
    ++m_running;
    Q_EMIT busyChanged();
    m_pool.start([this, job = std::move(job), done = std::move(done)] {
        auto outcome = guarded({}, job);
        QMetaObject::invokeMethod(
            this, [this, done, outcome = std::move(outcome)] {
                --m_running;
                Q_EMIT busyChanged();
                if (!outcome) {
                    Q_EMIT refused(errorText(outcome.error()));
                    return;
                }
                if (done) done(*outcome);
                if (outcome->record) hold(outcome->record);
                QStringList told;
                for (auto const& line : outcome->told) told += shownText(line);
                Q_EMIT finished(told);
            }, Qt::QueuedConnection);
    });
}

void RecordBook::hold(RecordPointer record) {
    m_record = std::move(record);
    auto const& comparison = m_record->record.opened().comparison;
    QSettings().setValue(settingOf(comparison.reference.sha256, comparison.candidate.sha256), QFileInfo(toQt(m_record->file)).absoluteFilePath());
    Q_EMIT changed();
}

// The record of the new pair, where one was in hand before; the one in hand
// where it is about the same documents.
void RecordBook::takePair() {
    if (!m_session.pair() || isOfPair()) return;
    m_record.reset();
    Q_EMIT changed();
    auto const& pair = *m_session.pair();
    auto const file = QSettings().value(settingOf(pair.reference.document.sha256, pair.candidate.document.sha256)).toString();
    if (!file.isEmpty() && QFileInfo::exists(file)) take(file);
}

}  // namespace standin::ui

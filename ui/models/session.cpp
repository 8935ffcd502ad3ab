// Tested by tests/ui/models/session_test.cpp.
#include "ui/models/session.h"

#include <algorithm>

#include <QFile>
#include <QFileInfo>

#include "ui/models/qt_text.h"

namespace standin::ui {

namespace {

// As far as its size tells; the watch tells what comes after.
bool isAsRead(ReadPair const& pair, DocumentSide side) {
    QFileInfo const file(toQt(pathOf(pair.request, side)));
    auto const& bytes = side == DocumentSide::Reference ? pair.referenceBytes : pair.candidateBytes;
    return file.exists() && (bytes.empty() || file.size() == static_cast<qint64>(bytes.size()));
}

}  // namespace

Session::Session(QString decisionsFolder, QObject* parent) : QObject(parent), m_decisions(std::move(decisionsFolder)), m_corrections(*this) {
    connect(&m_worker, &PairWorker::progressed, this, &Session::progressed);
    connect(&m_worker, &PairWorker::finished, this, &Session::takePair);
    connect(&m_worker, &PairWorker::failed, this, &Session::takeError);
    connect(&m_watcher, &QFileSystemWatcher::fileChanged, this, &Session::noticeChange);
}

void Session::open(PairRequest request) {
    m_request = std::move(request);
    m_error.reset();
    m_worker.start(m_request);
    setState(State::Reading);
}

void Session::readAgain() {
    if (m_state != State::Empty) open(m_request);
}

void Session::exchange() {
    if (m_state == State::Empty) return;
    auto request = m_request;
    std::swap(request.reference, request.candidate);
    std::swap(request.referenceVariant, request.candidateVariant);
    open(std::move(request));
}

void Session::cancel() {
    if (m_state != State::Reading) return;
    m_worker.cancel();
    if (m_pair) m_request = m_pair->request;
    setState(m_pair ? State::Ready : State::Empty);
}

model::Finding const* Session::currentFinding() const {
    if (!m_pair || m_currentFinding.empty()) return nullptr;
    auto const& findings = m_pair->comparison.findings;
    auto const found = std::find_if(findings.begin(), findings.end(), [this](auto const& finding) { return finding.id == m_currentFinding; });
    return found == findings.end() ? nullptr : &*found;
}

void Session::setCurrentFinding(std::string const& id) {
    if (id == m_currentFinding) return;
    m_currentFinding = id;
    Q_EMIT currentFindingChanged();
}

void Session::choosePlace(DocumentSide side, int page, model::Rect const& box) {
    if (m_pair && page >= 1 && page <= sheetOf(*m_pair, side).document.pages) Q_EMIT placeChosen(side, page, box);
}

void Session::setState(State state) {
    if (state == m_state && state != State::Reading) return;
    m_state = state;
    Q_EMIT stateChanged(state);
}

void Session::takePair(PairPointer pair) {
    // The same documents again, after a correction: decisions and undo go on.
    bool const again = m_pair && m_pair->reference.document.sha256 == pair->reference.document.sha256 && m_pair->candidate.document.sha256 == pair->candidate.document.sha256;
    m_pair = std::move(pair);
    m_drawer.setPair(m_pair);
    auto const& findings = m_pair->comparison.findings;
    bool const still = std::any_of(findings.begin(), findings.end(), [this](auto const& finding) { return finding.id == m_currentFinding; });
    if (!still) m_currentFinding = findings.empty() ? std::string{} : findings.front().id;
    if (!again) m_decisions.load(m_pair->reference.document.sha256, m_pair->candidate.document.sha256);
    watchFiles();
    setState(State::Ready);
    Q_EMIT pairChanged();
    Q_EMIT currentFindingChanged();
    for (auto const side : kSides) {
        if (!isAsRead(*m_pair, side)) Q_EMIT fileChangedOnDisk(side);
    }
}

void Session::takeError(model::Error error) {
    m_error = std::move(error);
    setState(State::Failed);
}

void Session::watchFiles() {
    if (auto const watched = m_watcher.files(); !watched.isEmpty()) m_watcher.removePaths(watched);
    m_watcher.addPaths({toQt(m_pair->request.reference), toQt(m_pair->request.candidate)});
}

void Session::noticeChange(QString const& path) {
    if (!m_pair) return;
    // An editor that writes beside and renames ends the watch.
    if (QFile::exists(path) && !m_watcher.files().contains(path)) m_watcher.addPath(path);
    auto const changed = fromQt(path);
    if (changed == m_pair->request.reference) Q_EMIT fileChangedOnDisk(DocumentSide::Reference);
    if (changed == m_pair->request.candidate) Q_EMIT fileChangedOnDisk(DocumentSide::Candidate);
}

}  // namespace standin::ui

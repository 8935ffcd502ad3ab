#include "ui/support/desk_test.h"

#include <algorithm>
#include <stdexcept>

#include <QApplication>
#include <QStandardPaths>
#include <QTest>

#include <gtest/gtest.h>

namespace standin::ui::testing {

namespace {

constexpr int kLongestReadingMs = 60000;  // also under a sanitizer

}  // namespace

std::string demoFile(std::string const& name) { return std::string(STANDIN_TESTDATA) + "/protection/" + name; }

PairRequest demoRequest() {
    PairRequest request;
    request.reference = demoFile("reference.pdf");
    request.candidate = demoFile("candidate.pdf");
    return request;
}

model::Finding const& firstFinding(Session const& session, model::FindingKind kind) {
    auto const& findings = session.pair()->comparison.findings;
    auto const found = std::find_if(findings.begin(), findings.end(), [&](auto const& finding) { return finding.kind == kind; });
    if (found == findings.end()) throw std::runtime_error("the demo pair has no such finding");
    return *found;
}

bool waitUntilRead(Session const& session) {
    return QTest::qWaitFor([&] { return session.state() == Session::State::Ready || session.state() == Session::State::Failed; }, kLongestReadingMs);
}

OpenSession::OpenSession() : m_session(std::make_unique<Session>(m_folder.filePath(QStringLiteral("decisions")))) {
    m_session->open(demoRequest());
    if (!waitUntilRead(*m_session) || !m_session->pair()) throw std::runtime_error("the demo pair was not read");
}

}  // namespace standin::ui::testing

int main(int argc, char** argv) {
    QTemporaryDir const home;
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("XDG_CONFIG_HOME", home.path().toUtf8());
    qputenv("XDG_DATA_HOME", home.path().toUtf8());
    qputenv("XDG_RUNTIME_DIR", home.path().toUtf8());
    qputenv("LC_ALL", "C.UTF-8");
    ::testing::InitGoogleTest(&argc, argv);
    QApplication application(argc, argv);
    QCoreApplication::setApplicationName(QStringLiteral("standin-desk-test"));
    QCoreApplication::setOrganizationName(QStringLiteral("standin"));
    return RUN_ALL_TESTS();
}

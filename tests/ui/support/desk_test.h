// What tests of the desk share: a program without a screen (its main() is in the
// .cpp), the demo pair, and waiting for a session.
//
//     OpenSession open;             // the demo pair, read and shown
//     FindingsModel model(*open);
#pragma once

#include <memory>
#include <string>

#include <QString>
#include <QTemporaryDir>

#include "ui/models/session.h"

namespace standin::ui::testing {

// "…/testdata/protection/reference.pdf"
[[nodiscard]] std::string demoFile(std::string const& name);
[[nodiscard]] PairRequest demoRequest();

// The first finding of a severity or kind; fails the test where there is none.
[[nodiscard]] model::Finding const& firstFinding(Session const& session, model::FindingKind kind);

// Runs the event loop until the session is neither reading nor empty.
[[nodiscard]] bool waitUntilRead(Session const& session);

class OpenSession {
public:
    OpenSession();
    Session& operator*() { return *m_session; }
    Session* operator->() { return m_session.get(); }
    [[nodiscard]] QString folder() const { return m_folder.path(); }

private:
    QTemporaryDir m_folder;
    std::unique_ptr<Session> m_session;
};

}  // namespace standin::ui::testing

// standin-desk [REFERENCE CANDIDATE]
#include <QApplication>
#include <QCommandLineParser>
#include <QStandardPaths>
#include <QTimer>

#include "ui/models/qt_text.h"
#include "ui/views/appearance.h"
#include "ui/views/main_window.h"

int main(int argc, char** argv) {
    using namespace standin::ui;
    QApplication application(argc, argv);
    QApplication::setApplicationName(QStringLiteral("standin-desk"));
    QApplication::setApplicationVersion(QStringLiteral(STANDIN_VERSION));
    QCommandLineParser parser;
    parser.addHelpOption();
    parser.addVersionOption();
    parser.addPositionalArgument(QStringLiteral("REFERENCE"), QString{});
    parser.addPositionalArgument(QStringLiteral("CANDIDATE"), QString{});
    QCommandLineOption const screenshot(QStringLiteral("screenshot"), QStringLiteral("save a picture of the window and quit"), QStringLiteral("FILE.png"));
    parser.addOption(screenshot);
    parser.process(application);
    applyAppearance(Appearance::AsSystem);
    Session session(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation));
    MainWindow window(session);
    window.resize(1440, 900);
    window.show();
    auto const files = parser.positionalArguments();
    if (files.size() == 2) {
        PairRequest request;
        request.reference = fromQt(files[0]);
        request.candidate = fromQt(files[1]);
        session.open(request);
    }
    if (parser.isSet(screenshot)) {
        QObject::connect(&session, &Session::pairChanged, &window, [&] {
            QTimer::singleShot(300, &window, [&] {
                bool const saved = window.grab().save(parser.value(screenshot));
                QApplication::exit(saved ? 0 : 2);
            });
        });
    }
    return QApplication::exec();
}

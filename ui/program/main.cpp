// standin-desk [REFERENCE CANDIDATE]: the window, its settings and language.
// `--screenshot FILE` saves a picture of the window once the pair is shown, and
// quits: for tests and the README.
#include <QApplication>
#include <QCommandLineParser>
#include <QIcon>
#include <QLibraryInfo>
#include <QLocale>
#include <QStandardPaths>
#include <QTabWidget>
#include <QTimer>
#include <QTranslator>

#include <algorithm>
#include <cstdio>
#include <string_view>

#include "ui/models/qt_text.h"
#include "ui/models/words.h"
#include "ui/views/main_window.h"
#include "ui/views/pages_view.h"
#include "ui/views/settings.h"

namespace {

using namespace standin::ui;

constexpr int kTrouble = 2;  // exit status, as for the command line
constexpr int kQuietTickMs = 50;
constexpr int kQuietTicks = 14;  // so many in a row without a picture of a page under way: the window stands still
constexpr int kScreenshotTimeoutMs = 60000;

// English plurals first; the language, where there is one, over them.
void loadTranslations(QApplication& application, QString const& language) {
    auto const locale = language.isEmpty() ? QLocale::system() : QLocale(language);
    auto const install = [&](QLocale const& wanted, QString const& name, QString const& folder) {
        auto* translator = new QTranslator(&application);
        if (translator->load(wanted, name, QStringLiteral("_"), folder)) QApplication::installTranslator(translator);
    };
    install(QLocale(QLocale::English), QStringLiteral("standin-desk"), QStringLiteral(":/i18n"));
    install(locale, QStringLiteral("qtbase"), QLibraryInfo::path(QLibraryInfo::TranslationsPath));
    if (locale.language() != QLocale::English) install(locale, QStringLiteral("standin-desk"), QStringLiteral(":/i18n"));
}

struct Screenshot {
    QString file;
    QSize size;
    int page = 0;
    bool ofPair = true;  // else of the start page
};

// Calls `then` once the window stands still.
template <typename Then>
void onceQuiet(MainWindow& window, Session& session, Then then) {
    auto* tick = new QTimer(&window);
    QObject::connect(tick, &QTimer::timeout, &window, [tick, &session, then, quiet = 0]() mutable {
        quiet = session.drawer().isIdle() ? quiet + 1 : 0;
        if (quiet < kQuietTicks) return;
        tick->stop();
        then();
    });
    tick->start(kQuietTickMs);
}

void takeScreenshot(MainWindow& window, Session& session, Screenshot const& wanted) {
    if (wanted.size.isValid()) window.resize(wanted.size);
    auto const save = [&window, wanted] {
        bool const saved = window.grab().save(wanted.file);
        QApplication::exit(saved ? 0 : kTrouble);
    };
    QObject::connect(&session, &Session::stateChanged, &window, [&window, &session, save](Session::State state) {
        if (state == Session::State::Failed) onceQuiet(window, session, save);
    });
    QObject::connect(&session, &Session::pairChanged, &window, [&window, &session, save, wanted] {
        window.pages()->setCurrentIndex(wanted.page);
        if (wanted.page == window.pages()->indexOf(window.pagesView())) window.showPlaces();
        onceQuiet(window, session, save);
    });
    if (!wanted.ofPair) onceQuiet(window, session, save);
    QTimer::singleShot(kScreenshotTimeoutMs, &window, [] { QApplication::exit(kTrouble); });
}

// Whether the command line only asks for what is printed, which needs no display.
bool onlyPrints(int argc, char** argv) {
    return std::any_of(argv + 1, argv + argc, [](std::string_view argument) {
        return argument == "-h" || argument == "--help" || argument == "--help-all" || argument == "-v" || argument == "--version";
    });
}

}  // namespace

int main(int argc, char** argv) {
    if (argc > 1 && onlyPrints(argc, argv) && !qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(argc, argv);
    QApplication::setApplicationName(QStringLiteral("standin-desk"));
    QApplication::setOrganizationName(QStringLiteral("standin"));
    QApplication::setApplicationVersion(QStringLiteral(STANDIN_VERSION));
    QApplication::setDesktopFileName(QStringLiteral("standin-desk"));
    QApplication::setWindowIcon(QIcon(QStringLiteral(":/icons/standin-desk.png")));
    auto settings = loadSettings();
    loadTranslations(application, settings.language);

    QCommandLineParser parser;
    auto const text = [](char const* english) { return QCoreApplication::translate("main", english); };
    parser.setApplicationDescription(text(QT_TRANSLATE_NOOP("main", "Compares the datasheets of a reference part and a candidate part in a window.")));
    parser.addHelpOption();
    parser.addVersionOption();
    parser.addPositionalArgument(QStringLiteral("REFERENCE"), text(QT_TRANSLATE_NOOP("main", "datasheet of the part fitted or specified today")), QStringLiteral("[REFERENCE"));
    parser.addPositionalArgument(QStringLiteral("CANDIDATE"), text(QT_TRANSLATE_NOOP("main", "datasheet of the suspected equivalent")), QStringLiteral("CANDIDATE]"));
    QCommandLineOption const cell(QStringLiteral("cell"), text(QT_TRANSLATE_NOOP("main", "cell profile")), QStringLiteral("FILE.json"));
    QCommandLineOption const circuit(QStringLiteral("circuit"), text(QT_TRANSLATE_NOOP("main", "circuit values")), QStringLiteral("FILE.json"));
    QCommandLineOption const appearance(QStringLiteral("appearance"), text(QT_TRANSLATE_NOOP("main", "system, light or dark, this time")), QStringLiteral("NAME"));
    QCommandLineOption const screenshot(QStringLiteral("screenshot"), text(QT_TRANSLATE_NOOP("main", "save a picture of the window and quit")), QStringLiteral("FILE.png"));
    QCommandLineOption const size(QStringLiteral("size"), text(QT_TRANSLATE_NOOP("main", "size of the window in pixels")), QStringLiteral("WIDTHxHEIGHT"));
    QCommandLineOption const page(QStringLiteral("page"), text(QT_TRANSLATE_NOOP("main", "page of the desk to show, from 1")), QStringLiteral("N"));
    parser.addOptions({cell, circuit, appearance, screenshot, size, page});
    parser.process(application);
    auto const files = parser.positionalArguments();
    if (files.size() == 1 || files.size() > 2) {
        std::fputs("standin-desk: give two files, the reference and the candidate, or none\n", stderr);
        return kTrouble;
    }
    if (parser.value(appearance) == QLatin1String("light")) settings.appearance = Appearance::Light;
    if (parser.value(appearance) == QLatin1String("dark")) settings.appearance = Appearance::Dark;
    applySettings(settings);

    Session session(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation) + QStringLiteral("/decisions"));
    MainWindow window(session);
    if (parser.isSet(screenshot)) {
        auto const sides = parser.value(size).split(QLatin1Char('x'));
        Screenshot wanted{parser.value(screenshot), {}, std::max(1, parser.value(page).toInt()) - 1, !files.empty()};
        if (sides.size() == 2) wanted.size = QSize(sides[0].toInt(), sides[1].toInt());
        takeScreenshot(window, session, wanted);
    }
    window.show();
    if (files.size() == 2) {
        PairRequest request;
        request.reference = fromQt(files[0]);
        request.candidate = fromQt(files[1]);
        request.cell = fromQt(parser.value(cell));
        request.circuit = fromQt(parser.value(circuit));
        session.open(std::move(request));
    }
    return QApplication::exec();
}

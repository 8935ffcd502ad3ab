// Tested by tests/ui/views/table_pages_test.cpp.
#include "ui/views/help.h"

#include <QCoreApplication>
#include <QDialog>
#include <QDialogButtonBox>
#include <QMessageBox>
#include <QPointer>
#include <QTextBrowser>
#include <QVBoxLayout>

namespace standin::ui {

namespace {

QString translated(char const* text) { return QCoreApplication::translate("help", text); }

struct Key {
    char const* keys;
    char const* does;
};

constexpr Key kKeys[] = {
    {"Ctrl+O", QT_TRANSLATE_NOOP("help", "open a pair, choose variants, cell profile and circuit")},
    {"Ctrl+Shift+X", QT_TRANSLATE_NOOP("help", "exchange reference and candidate")},
    {"F5", QT_TRANSLATE_NOOP("help", "read both documents again")},
    {"Esc", QT_TRANSLATE_NOOP("help", "cancel reading")},
    {"Alt+1 … Alt+8", QT_TRANSLATE_NOOP("help", "go to a page of the desk")},
    {"Ctrl+Down, Ctrl+Up", QT_TRANSLATE_NOOP("help", "next and previous finding, from anywhere")},
    {"Enter", QT_TRANSLATE_NOOP("help", "show the chosen row on the pages of both documents")},
    {"Ctrl+D", QT_TRANSLATE_NOOP("help", "decide on the finding; Tab goes on to the remark")},
    {"Ctrl+F", QT_TRANSLATE_NOOP("help", "find in the list or on the page")},
    {"Ctrl+Shift+F", QT_TRANSLATE_NOOP("help", "show all findings again")},
    {"F6", QT_TRANSLATE_NOOP("help", "go round: sections, list, evidence, decision")},
    {"Ctrl+Z, Ctrl+Shift+Z", QT_TRANSLATE_NOOP("help", "undo and redo decisions and corrections")},
    {"F2, Shift+F2", QT_TRANSLATE_NOOP("help", "in the parameters: correct the chosen row of the reference, of the candidate")},
    {"N, P", QT_TRANSLATE_NOOP("help", "on the pages: next and previous page")},
    {"+, -, W, G, R", QT_TRANSLATE_NOOP("help", "on the pages: larger, smaller, fit the width, whole page, turn")},
    {"Enter, Shift+Enter", QT_TRANSLATE_NOOP("help", "in the field above the pages: next and previous place that was found")},
    {"Ctrl+E", QT_TRANSLATE_NOOP("help", "export a report")},
    {"Ctrl+P", QT_TRANSLATE_NOOP("help", "print the report")},
    {"Ctrl+C", QT_TRANSLATE_NOOP("help", "copy the chosen rows or text")},
    {"F11", QT_TRANSLATE_NOOP("help", "whole screen")},
    {"Ctrl+Q", QT_TRANSLATE_NOOP("help", "quit")},
};

QString paragraph(char const* heading, char const* text) { return QStringLiteral("<h3>%1</h3><p>%2</p>").arg(translated(heading).toHtmlEscaped(), translated(text).toHtmlEscaped()); }

}  // namespace

QString helpText() {
    QString html = QStringLiteral("<h2>%1</h2>").arg(translated(QT_TRANSLATE_NOOP("help", "Working at the desk")));
    html += paragraph(QT_TRANSLATE_NOOP("help", "What stands where"),
                      QT_TRANSLATE_NOOP("help", "At the top: both documents, the verdict, what was covered, and the counts by severity. At the left: the sections of both documents as they were paired; choosing one "
                                                "lists its findings. In the middle: the findings, gravest first. Below: where the chosen finding stands on both pages, what it means, and your decision."));
    html += paragraph(QT_TRANSLATE_NOOP("help", "Severity"),
                      QT_TRANSLATE_NOOP("help", "▲ hazard: could contribute to fire, venting or burns, or defeat a protective function. ■ function: the circuit may not work, may trip, may not recover. ● margin: works, "
                                                "with another margin. ▬ note: worth knowing. · editorial: no change of meaning. Hazard findings stay listed whatever the filter; what is hidden is counted."));
    html += paragraph(QT_TRANSLATE_NOOP("help", "The limit strip"),
                      QT_TRANSLATE_NOOP("help", "Both intervals on one axis: the reference as an open bracket above, the candidate as a solid bar below, typical values as ticks. A hatched end is a bound that is not "
                                                "stated. A flag is a limit of the cell profile and points to the side that holds. The arrow points to the hazardous side."));
    html += paragraph(QT_TRANSLATE_NOOP("help", "Decisions"),
                      QT_TRANSLATE_NOOP("help", "A decision and its remark are kept with this pair of documents on this computer. They are bound to the bytes of both files: a changed file starts without decisions. "
                                                "What quality assurance signs is kept on the page Record."));
    html += paragraph(QT_TRANSLATE_NOOP("help", "The record"),
                      QT_TRANSLATE_NOOP("help", "Make your key once, or choose it. Open a new record of the pair, or take up one that was begun; it is a file of its own, with every line that needs a decision. Choose a line, "
                                                "decide, give the reason, enter it. A hazard needs two persons: the second confirms with another key. When nothing is open, author and approver sign. Check tells whether the "
                                                "record holds and what is open or lapsed. Nothing that was entered can be taken back; enter another decision instead."));
    html += paragraph(QT_TRANSLATE_NOOP("help", "The pages, and what was misread"),
                      QT_TRANSLATE_NOOP("help",
                                        "The places of findings are framed on the pages; those that change no meaning have a bar beside them. Click on a place to see what was "
                                        "read there; its partner in the other document comes into view. Drag to choose text. A row that was "
                                        "misread is corrected from there or from the list of parameters: the correction is written to a file that reports name, the comparison "
                                        "follows, and undo takes both back."));
    html += paragraph(QT_TRANSLATE_NOOP("help", "Before you rely on it"),
                      QT_TRANSLATE_NOOP("help", "The comparison covers printed documents only. It is not a test and not an approval. The cell maker's limits, local codes and licensed practice come first. Look at the page "
                                                "before you rely on a value."));
    html += QStringLiteral("<h3>%1</h3><table cellspacing=\"0\" cellpadding=\"3\">").arg(translated(QT_TRANSLATE_NOOP("help", "Keys")));
    for (auto const& key : kKeys) html += QStringLiteral("<tr><td><b>%1</b></td><td>%2</td></tr>").arg(QString::fromUtf8(key.keys), translated(key.does).toHtmlEscaped());
    return html + QStringLiteral("</table>");
}

QString aboutText() {
    return translated(QT_TRANSLATE_NOOP("help", "<h3>Standin desk %1</h3><p>Compares the datasheets of a reference part and a candidate part.</p>"
                                                "<p>Licence: GPL-3.0-or-later. There is no warranty.</p>"
                                                "<p>Made with Qt %2 (LGPL-3.0), Poppler (GPL-2.0-or-later), ICU (Unicode-3.0), Pango and Cairo (LGPL-2.1), fmt, nlohmann-json, CLI11, dtl, tl-expected and OpenSSL.</p>"
                                                "<p>The comparison covers printed documents only. It is not a test and not an approval.</p>"))
        .arg(QStringLiteral(STANDIN_VERSION), QString::fromLatin1(qVersion()));
}

void showHelp(QWidget* parent) {
    static QPointer<QDialog> window;
    if (!window) {
        window = new QDialog(parent);
        window->setAttribute(Qt::WA_DeleteOnClose);
        window->setWindowTitle(translated(QT_TRANSLATE_NOOP("help", "Help")));
        auto* text = new QTextBrowser;
        text->setHtml(helpText());
        text->setAccessibleName(translated(QT_TRANSLATE_NOOP("help", "Help")));
        auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
        QObject::connect(buttons, &QDialogButtonBox::rejected, window, &QDialog::close);
        auto* layout = new QVBoxLayout(window);
        layout->addWidget(text);
        layout->addWidget(buttons);
        int const letter = QFontMetrics(text->font()).averageCharWidth();
        window->resize(letter * 90, letter * 80);
    }
    window->show();
    window->raise();
    window->activateWindow();
}

void showAbout(QWidget* parent) { QMessageBox::about(parent, translated(QT_TRANSLATE_NOOP("help", "About the desk")), aboutText()); }

}  // namespace standin::ui

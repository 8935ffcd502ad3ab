// Tested by tests/ui/models/words_test.cpp.
#include "ui/models/words.h"

#include <QCoreApplication>
#include <QFileInfo>

#include "report/texts.h"
#include "ui/models/qt_text.h"

namespace standin::ui {

namespace {

QString translated(char const* text) { return QCoreApplication::translate("words", text); }

}  // namespace

QString severityWord(model::Severity severity) {
    switch (severity) {
        case model::Severity::Hazard: return translated(QT_TRANSLATE_NOOP("words", "hazard"));
        case model::Severity::Function: return translated(QT_TRANSLATE_NOOP("words", "function"));
        case model::Severity::Margin: return translated(QT_TRANSLATE_NOOP("words", "margin"));
        case model::Severity::Note: return translated(QT_TRANSLATE_NOOP("words", "note"));
        case model::Severity::Editorial: return translated(QT_TRANSLATE_NOOP("words", "editorial"));
    }
    return {};
}

QString severityMeaning(model::Severity severity) {
    switch (severity) {
        case model::Severity::Hazard: return translated(QT_TRANSLATE_NOOP("words", "could contribute to fire, venting or burns, or defeat a protective function"));
        case model::Severity::Function: return translated(QT_TRANSLATE_NOOP("words", "the circuit may not work, may trip, may not recover"));
        case model::Severity::Margin: return translated(QT_TRANSLATE_NOOP("words", "works, with another margin, heat, run time or accuracy"));
        case model::Severity::Note: return translated(QT_TRANSLATE_NOOP("words", "worth knowing"));
        case model::Severity::Editorial: return translated(QT_TRANSLATE_NOOP("words", "no change of meaning"));
    }
    return {};
}

QString severityMark(model::Severity severity) {
    switch (severity) {
        case model::Severity::Hazard: return QStringLiteral("▲");
        case model::Severity::Function: return QStringLiteral("■");
        case model::Severity::Margin: return QStringLiteral("●");
        case model::Severity::Note: return QStringLiteral("▬");
        case model::Severity::Editorial: return QStringLiteral("·");
    }
    return {};
}

QString kindWord(model::FindingKind kind) {
    using model::FindingKind;
    switch (kind) {
        case FindingKind::Parameter: return translated(QT_TRANSLATE_NOOP("words", "parameter"));
        case FindingKind::Table: return translated(QT_TRANSLATE_NOOP("words", "table"));
        case FindingKind::Wording: return translated(QT_TRANSLATE_NOOP("words", "wording"));
        case FindingKind::Pin: return translated(QT_TRANSLATE_NOOP("words", "pin"));
        case FindingKind::Package: return translated(QT_TRANSLATE_NOOP("words", "package"));
        case FindingKind::Ordering: return translated(QT_TRANSLATE_NOOP("words", "ordering"));
        case FindingKind::Feature: return translated(QT_TRANSLATE_NOOP("words", "mode"));
        case FindingKind::Figure: return translated(QT_TRANSLATE_NOOP("words", "figure"));
        case FindingKind::Section: return translated(QT_TRANSLATE_NOOP("words", "section"));
        case FindingKind::Document: return translated(QT_TRANSLATE_NOOP("words", "document"));
        case FindingKind::Derived: return translated(QT_TRANSLATE_NOOP("words", "derived quantity"));
        case FindingKind::Cell: return translated(QT_TRANSLATE_NOOP("words", "cell limit"));
        case FindingKind::Coverage: return translated(QT_TRANSLATE_NOOP("words", "not compared"));
    }
    return toQt(report::texts::kindText(kind));
}

QString relationWord(model::Relation relation) { return translated(std::string(report::texts::relationText(relation)).c_str()); }

QString dispositionWord(Disposition disposition) {
    switch (disposition) {
        case Disposition::Open: return translated(QT_TRANSLATE_NOOP("words", "open"));
        case Disposition::Accepted: return translated(QT_TRANSLATE_NOOP("words", "accepted"));
        case Disposition::AcceptedWithCondition: return translated(QT_TRANSLATE_NOOP("words", "accepted with a condition"));
        case Disposition::BenchTest: return translated(QT_TRANSLATE_NOOP("words", "bench test"));
        case Disposition::SupplierStatement: return translated(QT_TRANSLATE_NOOP("words", "supplier statement"));
        case Disposition::NotApplicable: return translated(QT_TRANSLATE_NOOP("words", "not applicable"));
        case Disposition::Rejected: return translated(QT_TRANSLATE_NOOP("words", "rejected"));
    }
    return {};
}

QString sideWord(DocumentSide side) {
    return side == DocumentSide::Reference ? translated(QT_TRANSLATE_NOOP("words", "reference")) : translated(QT_TRANSLATE_NOOP("words", "candidate"));
}

QString partName(model::DocumentInfo const& document) {
    if (!document.partNumbers.empty()) return shownText(document.partNumbers.front());
    if (!document.title.empty()) return shownText(document.title);
    return QFileInfo(shownText(document.file)).fileName();
}

QString documentDetail(model::DocumentInfo const& document) {
    QStringList parts;
    if (!document.revision.empty()) parts += translated(QT_TRANSLATE_NOOP("words", "rev %1")).arg(shownText(document.revision));
    parts += QCoreApplication::translate("words", "%n page(s)", nullptr, document.pages);
    if (!document.date.empty()) parts += shownText(document.date);
    if (!document.languages.empty() && document.languages.front() != "en") parts += shownText(document.languages.front());
    return parts.join(QStringLiteral(" · "));
}

QString errorText(model::Error const& error) {
    QString text = shownText(error.file);
    if (error.page > 0) text += (text.isEmpty() ? QString{} : QStringLiteral(", ")) + translated(QT_TRANSLATE_NOOP("words", "page %1")).arg(error.page);
    if (!text.isEmpty()) text += QStringLiteral(": ");
    return text + shownText(error.message);
}

}  // namespace standin::ui

// Tested by tests/ui/views/correction_dialog_test.cpp.
#include "ui/views/correcting.h"

#include <algorithm>

#include <QAction>
#include <QCoreApplication>
#include <QTableView>

#include "ui/models/words.h"
#include "ui/views/correction_dialog.h"
#include "ui/views/notice_bar.h"
#include "ui/views/pages_view.h"
#include "ui/views/parameters_page.h"

namespace standin::ui {

namespace {

QString const kNotice = QStringLiteral("corrections");

QString translated(char const* text, int count = -1) { return QCoreApplication::translate("correcting", text, nullptr, count); }

std::string parameterAt(model::Datasheet const& sheet, int page, model::Rect const& box) {
    auto const found = std::find_if(sheet.parameters.begin(), sheet.parameters.end(), [&](auto const& parameter) { return parameter.page == page && parameter.box == box; });
    return found == sheet.parameters.end() ? std::string{} : found->id;
}

void correctChosenRow(Session& session, ParametersPage& page, DocumentSide side) {
    auto* table = page.tablePage()->table();
    auto const index = table->currentIndex();
    if (!index.isValid() || !session.pair()) return;
    auto const& row = *static_cast<ParameterRow const*>(index.siblingAtColumn(0).data(ParametersModel::RowRole).value<void const*>());
    bool const reference = side == DocumentSide::Reference;
    RowCorrection start;
    start.side = side;
    start.parameter = parameterAt(sheetOf(*session.pair(), side), reference ? row.referencePage : row.candidatePage, reference ? row.referenceBox : row.candidateBox);
    if (!start.parameter.empty()) askForCorrection(session, std::move(start), &page);
}

}  // namespace

void askForCorrection(Session& session, RowCorrection start, QWidget* parent) {
    if (!session.pair() || session.state() == Session::State::Reading) return;
    auto const pair = session.pair();  // stays while the dialog is open, whatever is read meanwhile
    CorrectionDialog dialog(*pair, std::move(start), session.corrections().filePath(), parent);
    if (dialog.exec() == QDialog::Accepted && session.pair() == pair) session.corrections().correct(dialog.correction());
}

void connectCorrecting(Session& session, PagesView& pages, ParametersPage& parameters, NoticeBar& notices) {
    QObject::connect(&pages, &PagesView::correctionWanted, &pages, [&session, &pages](DocumentSide side, std::string const& parameter, int page, model::Rect const& box) {
        RowCorrection start;
        start.side = side;
        start.parameter = parameter;
        start.page = page;
        start.box = box;
        askForCorrection(session, std::move(start), &pages);
    });
    auto* table = parameters.tablePage()->table();
    for (auto const side : kSides) {
        auto const text = side == DocumentSide::Reference ? translated(QT_TRANSLATE_NOOP("correcting", "Correct the row of the &reference…")) : translated(QT_TRANSLATE_NOOP("correcting", "Correct the row of the &candidate…"));
        auto* action = new QAction(text, table);
        action->setShortcut(side == DocumentSide::Reference ? QKeySequence(Qt::Key_F2) : QKeySequence(Qt::SHIFT | Qt::Key_F2));
        action->setShortcutContext(Qt::WidgetShortcut);
        QObject::connect(action, &QAction::triggered, &parameters, [&session, &parameters, side] { correctChosenRow(session, parameters, side); });
        table->addAction(action);
    }
    table->setContextMenuPolicy(Qt::ActionsContextMenu);
    QObject::connect(&session.corrections(), &Corrections::troubled, &notices, [&notices](QString const& message) { notices.show(kNotice, message); });
    QObject::connect(&session.corrections(), &Corrections::written, &notices, [&notices](QString const& path) {
        notices.show(kNotice, translated(QT_TRANSLATE_NOOP("correcting", "The file of corrections was changed and the comparison is made anew: %1")).arg(path));
    });
    auto const tellKept = [&session, &notices] {
        int const kept = session.corrections().keptCount();
        if (kept == 0) return;
        notices.show(kNotice, translated(QT_TRANSLATE_N_NOOP("correcting", "%n correction(s) kept with this pair are not applied."), kept), translated(QT_TRANSLATE_NOOP("correcting", "Apply")),
                     [&session] { session.corrections().applyKept(); });
    };
    QObject::connect(&session, &Session::pairChanged, &notices, tellKept);
    if (session.pair()) tellKept();
}

}  // namespace standin::ui

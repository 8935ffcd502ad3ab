// The fields of a line that is chosen begin with the decision in force, or with
// what was noted on the findings page; after an entry they stand as they are.
//
// Tested by tests/ui/views/record_page_test.cpp.
#include "ui/views/record_page.h"

#include <algorithm>
#include <array>

#include <QComboBox>
#include <QFileDialog>
#include <QFileInfo>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QMenu>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QSplitter>
#include <QTextBrowser>
#include <QToolButton>
#include <QVBoxLayout>

#include "record/moment.h"
#include "ui/models/qt_text.h"
#include "ui/models/words.h"
#include "ui/views/file_line.h"
#include "ui/views/pair_form.h"
#include "ui/views/record_dialogs.h"
#include "ui/views/report_file.h"

namespace standin::ui {

namespace {

constexpr std::array kRoles{record::Role::Author, record::Role::Reviewer, record::Role::Approver};
constexpr std::array kRecordForms{ReportForm::Html, ReportForm::Pdf};
constexpr int kOutcomeLines = 5;
constexpr int kLeastSide = 44;  // of the fields, in average letters

TableColumns columns() {
    TableColumns columns;
    columns.widths = {14, 12, 6, 22, 22};
    columns.stretched = {RecordModel::Title, RecordModel::Standing};
    columns.optional = {RecordModel::Finding, RecordModel::Level};
    return columns;
}

QLineEdit* lineOf(QString const& name, QString const& placeholder) {
    auto* line = new QLineEdit;
    line->setAccessibleName(name);
    line->setPlaceholderText(placeholder);
    return line;
}

record::Disposition dispositionAt(QComboBox const* box) { return record::dispositionOf(wordOf(kDispositions[static_cast<std::size_t>(box->currentIndex())])).value_or(record::Disposition::Open); }

}  // namespace

RecordPage::RecordPage(Session& session, RecordBook& book, RecordModel& lines, QWidget* parent)
    : QWidget(parent), m_session(session), m_book(book), m_lines(lines), m_table(new TablePage(lines, columns(), tr("Lines of the record, gravest first"))), m_outcome(new QTextBrowser) {
    makeBar();
    m_outcome->setAccessibleName(tr("What was done last"));
    m_outcome->setFixedHeight(QFontMetrics(m_outcome->font()).lineSpacing() * kOutcomeLines + 12);
    m_outcome->hide();
    m_signatures = new QLabel;
    m_signatures->setTextFormat(Qt::PlainText);
    m_signatures->setWordWrap(true);
    m_signatures->setFont(fontOf(TextSize::Small));
    m_signatures->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    m_signatures->setAccessibleName(tr("Signatures and distribution"));
    auto* left = new QWidget;
    auto* leftLayout = new QVBoxLayout(left);
    leftLayout->setContentsMargins(0, 0, 0, 0);
    leftLayout->addWidget(m_table, 1);
    leftLayout->addWidget(m_signatures);
    leftLayout->addWidget(m_outcome);
    auto* splitter = new QSplitter;
    splitter->setChildrenCollapsible(false);
    splitter->addWidget(left);
    splitter->addWidget(makeSide());
    splitter->setStretchFactor(0, 3);
    splitter->setStretchFactor(1, 2);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(splitter);
    setFocusProxy(m_table->table());
    listen();
    showFields();
    showSigner();
    showRecord();
}

QString RecordPage::outcome() const { return m_outcome->isHidden() ? QString{} : m_outcome->toPlainText(); }

void RecordPage::makeBar() {
    m_new = new QPushButton(tr("Ne&w record…"));
    m_takeUp = new QPushButton(tr("&Take up…"));
    m_takeUp->setAccessibleName(tr("Take up a record that was begun"));
    m_check = new QPushButton(tr("Chec&k"));
    m_check->setAccessibleName(tr("Check whether the record holds"));
    m_more = new QToolButton;
    m_more->setText(tr("More"));
    m_more->setAccessibleName(tr("More commands on the record"));
    m_more->setPopupMode(QToolButton::InstantPopup);
    m_more->setFocusPolicy(Qt::StrongFocus);
    auto* menu = new QMenu(m_more);
    connect(menu->addAction(tr("Save its &report…")), &QAction::triggered, this, &RecordPage::askReport);
    m_result = menu->addAction(tr("Enter a &bench result…"));
    m_distribute = menu->addAction(tr("Who was &given it…"));
    m_supersede = menu->addAction(tr("S&uperseded by another record…"));
    connect(m_result, &QAction::triggered, this, &RecordPage::askResult);
    connect(m_distribute, &QAction::triggered, this, &RecordPage::askDistribute);
    connect(m_supersede, &QAction::triggered, this, &RecordPage::askSupersede);
    connect(menu->addAction(tr("&Merge a second copy…")), &QAction::triggered, this, &RecordPage::askMerge);
    m_more->setMenu(menu);
    for (auto* button : {m_new, m_takeUp, m_check}) m_table->bar()->addWidget(button);
    m_table->bar()->addWidget(m_more);
    m_table->bar()->addStretch(1);
}

QWidget* RecordPage::makeSide() {
    auto* side = new Panel;
    auto* layout = new QVBoxLayout(side);
    layout->setContentsMargins(12, 8, 12, 10);
    m_text = new QTextBrowser;
    m_text->setFrameShape(QFrame::NoFrame);
    m_text->setOpenLinks(false);
    m_text->setAccessibleName(tr("The line and what was decided on it"));
    m_text->document()->setDocumentMargin(0);
    m_text->setMinimumHeight(QFontMetrics(m_text->font()).lineSpacing() * 4);
    layout->addWidget(m_text, 1);

    m_disposition = new QComboBox;
    m_disposition->setAccessibleName(tr("Decision on the line"));
    for (auto const disposition : kDispositions) m_disposition->addItem(dispositionWord(disposition));
    m_reason = new QPlainTextEdit;
    m_reason->setAccessibleName(tr("Reason of the decision"));
    m_reason->setPlaceholderText(tr("Why; always required"));
    m_reason->setTabChangesFocus(true);
    m_reason->setFixedHeight(QFontMetrics(m_reason->font()).lineSpacing() * 2 + 12);
    m_condition = lineOf(tr("Condition"), tr("what, how it is verified, where it is written"));
    m_addressee = lineOf(tr("Asked"), tr("who is asked for a statement"));
    m_due = lineOf(tr("Due"), QStringLiteral("2031-06-30"));
    m_samples = lineOf(tr("Samples"), tr("how many of how many lots"));
    m_evidence = new FileLine(FileUse::Read, tr("File that the decision relies on"), tr("All files (*)"));
    m_fields = new QFormLayout;
    m_fields->setFieldGrowthPolicy(QFormLayout::ExpandingFieldsGrow);
    m_fields->addRow(tr("&Decision"), m_disposition);
    m_fields->addRow(tr("Reaso&n"), m_reason);
    m_fields->addRow(tr("Condition"), m_condition);
    m_fields->addRow(tr("Asked"), m_addressee);
    m_fields->addRow(tr("Due"), m_due);
    m_fields->addRow(tr("Samples"), m_samples);
    m_fields->addRow(tr("Evidence"), m_evidence);
    layout->addLayout(m_fields);
    m_decide = new QPushButton(tr("Enter the dec&ision"));
    m_confirm = new QPushButton(tr("C&onfirm"));
    m_confirm->setAccessibleName(tr("Confirm the decision in force as a second person"));
    m_confirm->setToolTip(m_confirm->accessibleName());
    auto* buttons = new QHBoxLayout;
    buttons->addStretch(1);
    buttons->addWidget(m_confirm);
    buttons->addWidget(m_decide);
    layout->addLayout(buttons);
    layout->addWidget(makeSigning());

    auto* scroll = new QScrollArea;
    scroll->setWidget(side);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    // Words of some languages are long: nothing is cut off at the right.
    int const bar = scroll->verticalScrollBar()->sizeHint().width();
    scroll->setMinimumWidth(std::max(QFontMetrics(font()).averageCharWidth() * kLeastSide, side->minimumSizeHint().width() + bar));
    return scroll;
}

QWidget* RecordPage::makeSigning() {
    auto* signing = new QWidget;
    auto* form = new QFormLayout(signing);
    form->setContentsMargins(0, 6, 0, 0);
    form->setFieldGrowthPolicy(QFormLayout::ExpandingFieldsGrow);
    m_key = new FileLine(FileUse::Read, tr("Your key"), tr("Keys (*.key);;All files (*)"));
    form->addRow(tr("Your key"), m_key);
    m_passphrase = lineOf(tr("Passphrase of the key"), tr("none"));
    m_passphrase->setEchoMode(QLineEdit::Password);
    m_newKey = new QPushButton(tr("New key…"));
    m_newKey->setAccessibleName(tr("Make a new key"));
    auto* keyRow = new QHBoxLayout;
    keyRow->addWidget(m_passphrase, 1);
    keyRow->addWidget(m_newKey);
    form->addRow(tr("Passphrase"), keyRow);
    m_role = new QComboBox;
    m_role->setAccessibleName(tr("Role in which you sign"));
    for (auto const role : kRoles) m_role->addItem(roleWord(role));
    m_note = lineOf(tr("Note to the signature"), tr("note"));
    m_sign = new QPushButton(tr("Si&gn"));
    auto* signRow = new QHBoxLayout;
    signRow->addWidget(m_role);
    signRow->addWidget(m_note, 1);
    signRow->addWidget(m_sign);
    form->addRow(tr("Sign as"), signRow);
    return signing;
}

void RecordPage::listen() {
    connect(m_new, &QPushButton::clicked, this, &RecordPage::askNewRecord);
    connect(m_takeUp, &QPushButton::clicked, this, &RecordPage::askRecord);
    connect(m_check, &QPushButton::clicked, &m_book, &RecordBook::check);
    connect(m_newKey, &QPushButton::clicked, this, &RecordPage::askKey);
    connect(m_decide, &QPushButton::clicked, this, [this] { decide(record::Stance::Own); });
    connect(m_confirm, &QPushButton::clicked, this, [this] { decide(record::Stance::Confirm); });
    connect(m_sign, &QPushButton::clicked, this, [this] { m_book.sign(kRoles[static_cast<std::size_t>(m_role->currentIndex())], m_note->text().trimmed()); });
    connect(m_disposition, &QComboBox::currentIndexChanged, this, &RecordPage::showFields);
    auto const takeSigner = [this] { m_book.setSigner({fromQt(m_key->path()), fromQt(m_passphrase->text())}); };
    connect(m_key, &FileLine::changed, this, takeSigner);
    connect(m_passphrase, &QLineEdit::textChanged, this, takeSigner);
    connect(m_table, &TablePage::chosen, this, [this](int row) {
        showLine(row);
        // A line is shown for what follows from it too; only another line is a choice.
        if (isVisible() && row != rowOfSession()) m_session.setCurrentFinding(m_lines.rowAt(row).finding);
    });
    connect(&m_session, &Session::currentFindingChanged, this, [this] {
        if (auto const row = rowOfSession(); row >= 0 && row != m_table->table()->currentIndex().row()) m_table->table()->setCurrentIndex(m_lines.index(row, RecordModel::Title));
    });
    connect(m_table, &TablePage::opened, this, [this] { m_disposition->setFocus(); });
    connect(&m_lines, &QAbstractItemModel::modelReset, this, &RecordPage::showRecord);
    connect(&m_book, &RecordBook::signerChanged, this, &RecordPage::showSigner);
    connect(&m_book, &RecordBook::busyChanged, this, &RecordPage::enableAll);
    connect(&m_book, &RecordBook::finished, this, [this](QStringList const& told) { tell(told.join(QLatin1Char('\n'))); });
    connect(&m_book, &RecordBook::refused, this, [this](QString const& why) { tell(QStringLiteral("⚠  ") + tr("Not done. %1").arg(why)); });
    connect(&m_session, &Session::pairChanged, this, &RecordPage::enableAll);
}

void RecordPage::showRecord() {
    m_table->setLine(m_lines.stateLine());
    m_signatures->setText(QStringList{m_lines.signatureLines(), m_lines.distributionLines()}.join(QLatin1Char('\n')).trimmed());
    auto const row = m_finding.empty() ? rowOfSession() : m_lines.rowOf(m_finding);
    if (m_lines.rowCount() > 0) m_table->table()->setCurrentIndex(m_lines.index(row < 0 ? 0 : row, RecordModel::Title));
    else showLine(-1);
    enableAll();
}

int RecordPage::rowOfSession() const {
    auto const* finding = m_session.currentFinding();
    return finding == nullptr ? -1 : m_lines.rowOf(finding->id);
}

void RecordPage::showLine(int row) {
    m_text->setHtml(m_lines.lineText(row));
    auto const finding = row < 0 ? std::string{} : m_lines.rowAt(row).finding;
    if (finding == m_finding) return;  // what is being typed stays
    m_finding = finding;
    for (auto* line : {m_condition, m_addressee, m_due, m_samples}) line->clear();
    m_evidence->setPath({});
    auto noted = m_session.decisions().decisionOn(finding);
    if (row >= 0) {
        auto const& read = *m_book.record();
        auto const& line = read.overview.lines[m_lines.rowAt(row).line];
        if (!line.inForce.empty()) {
            auto const& decided = *record::decisionIn(read.record.entries[line.inForce.back()]);
            noted = {dispositionOf(record::nameOf(decided.disposition)).value_or(Disposition::Open), {}};
            m_condition->setText(toQt(decided.condition));
            m_addressee->setText(toQt(decided.addressee));
            m_due->setText(toQt(decided.due));
            m_samples->setText(toQt(decided.samples));
        }
    }
    m_disposition->setCurrentIndex(static_cast<int>(noted.disposition));
    m_reason->setPlainText(toQt(noted.remark));
    showFields();
    enableAll();
}

// Only the fields that the disposition asks for.
void RecordPage::showFields() {
    auto const disposition = dispositionAt(m_disposition);
    m_fields->setRowVisible(m_condition, disposition == record::Disposition::AcceptedWithCondition);
    m_fields->setRowVisible(m_addressee, disposition == record::Disposition::SupplierStatement);
    m_fields->setRowVisible(m_due, disposition == record::Disposition::SupplierStatement);
    m_fields->setRowVisible(m_samples, disposition == record::Disposition::BenchTest);
}

void RecordPage::showSigner() {
    auto const& signer = m_book.signer();
    if (m_key->path() != toQt(signer.keyFile)) m_key->setPath(toQt(signer.keyFile));
    if (m_passphrase->text() != toQt(signer.passphrase)) m_passphrase->setText(toQt(signer.passphrase));
    enableAll();
}

void RecordPage::enableAll() {
    bool const free = !m_book.isBusy();
    bool const ready = free && m_book.record();
    bool const key = !m_book.signer().keyFile.empty();
    bool const chosen = !m_finding.empty();
    bool decided = false;
    if (auto const row = m_lines.rowOf(m_finding); row >= 0) decided = !m_book.record()->overview.lines[m_lines.rowAt(row).line].inForce.empty();
    m_new->setEnabled(free && key && m_session.pair());
    m_new->setToolTip(key ? QString{} : tr("Choose your key first, or make one."));
    m_takeUp->setEnabled(free);
    m_check->setEnabled(ready);
    m_more->setEnabled(ready);
    bool const goesOn = ready && key && m_book.record()->overview.state != record::RecordState::Superseded;
    m_decide->setEnabled(goesOn && chosen);
    m_confirm->setEnabled(goesOn && chosen && decided);
    m_sign->setEnabled(goesOn);
    m_result->setEnabled(goesOn);
    m_supersede->setEnabled(goesOn);
    m_distribute->setEnabled(ready && key);
    m_newKey->setEnabled(free);
}

void RecordPage::tell(QString const& text) {
    m_outcome->setPlainText(text);
    m_outcome->setVisible(!text.isEmpty());  // an entry shows in the table itself
}

void RecordPage::decide(record::Stance stance) {
    NewDecision decision;
    decision.stance = stance;
    auto& decided = decision.decided;
    decided.finding = m_finding;
    decided.disposition = dispositionAt(m_disposition);
    decided.reason = fromQt(m_reason->toPlainText().trimmed());
    auto const asked = [this](QLineEdit* line) { return m_fields->isRowVisible(line) ? fromQt(line->text().trimmed()) : std::string{}; };
    decided.condition = asked(m_condition);
    decided.addressee = asked(m_addressee);
    decided.due = asked(m_due);
    decided.samples = asked(m_samples);
    if (!decided.due.empty() && !record::isDate(decided.due)) {
        tell(tr("Not done. '%1' is no date such as 2031-06-30.").arg(toQt(decided.due)));
        return;
    }
    if (auto const path = m_evidence->path(); !path.isEmpty()) decision.evidence.push_back(fromQt(path));
    m_book.decide(std::move(decision));
}

void RecordPage::askNewRecord() {
    auto const& pair = *m_session.pair();
    NewRecordDialog dialog(QStringLiteral("%1/%2-%3.record").arg(lastFolder(), partName(pair.reference.document), partName(pair.candidate.document)), this);
    if (dialog.exec() == QDialog::Accepted) m_book.open(dialog.wanted());
}

void RecordPage::askRecord() {
    auto const file = QFileDialog::getOpenFileName(this, tr("Take up a record"), lastFolder(), recordFiles());
    if (file.isEmpty()) return;
    rememberFolder(file);
    m_book.take(file);
}

void RecordPage::askReport() {
    auto const name = QFileInfo(toQt(m_book.record()->file)).completeBaseName();
    auto const file = askReportFile(this, tr("Save the report of the record"), name, kRecordForms);
    if (file) m_book.report(file->path, file->form == ReportForm::Pdf ? RecordReport::Pdf : RecordReport::Html);
}

void RecordPage::askMerge() {
    auto const other = QFileDialog::getOpenFileName(this, tr("The second copy of this record"), lastFolder(), recordFiles());
    if (other.isEmpty()) return;
    auto const output = QFileDialog::getSaveFileName(this, tr("File of the merged record, a new one"), QFileInfo(other).absolutePath(), recordFiles());
    if (!output.isEmpty()) m_book.merge(other, output);
}

void RecordPage::askSupersede() {
    SupersedeDialog dialog(this);
    if (dialog.exec() == QDialog::Accepted) m_book.supersede(dialog.by(), dialog.reason());
}

void RecordPage::askDistribute() {
    DistributeDialog dialog(this);
    if (dialog.exec() == QDialog::Accepted) m_book.distribute(dialog.distributed());
}

void RecordPage::askResult() {
    ResultDialog dialog(m_book.record(), this);
    if (dialog.exec() == QDialog::Accepted) m_book.enter(dialog.result(), dialog.evidence());
}

void RecordPage::askKey() {
    KeyDialog dialog(this);
    if (dialog.exec() == QDialog::Accepted) m_book.makeKey(dialog.file(), dialog.name(), dialog.passphrase());
}

}  // namespace standin::ui

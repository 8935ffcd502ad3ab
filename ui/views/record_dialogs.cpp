// Tested by tests/ui/views/record_page_test.cpp.
#include "ui/views/record_dialogs.h"

#include <algorithm>
#include <utility>

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QRegularExpression>
#include <QSpinBox>
#include <QVBoxLayout>

#include "record/moment.h"
#include "report/finding_view.h"
#include "ui/models/qt_text.h"
#include "ui/views/file_line.h"

namespace standin::ui {

namespace {

constexpr int kMostSamples = 1'000'000;
constexpr int kTextLines = 3;

std::string typed(QLineEdit const* line) { return fromQt(line->text().trimmed()); }

}  // namespace

QString recordFiles() { return AskingDialog::tr("Records (*.record);;All files (*)"); }

AskingDialog::AskingDialog(QString const& title, QWidget* parent)
    : QDialog(parent), m_form(new QFormLayout), m_missing(new QLabel), m_buttons(new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel)) {
    setWindowTitle(title);
    m_form->setFieldGrowthPolicy(QFormLayout::ExpandingFieldsGrow);
    m_missing->setTextFormat(Qt::PlainText);
    m_missing->setWordWrap(true);
    auto* layout = new QVBoxLayout(this);
    layout->addLayout(m_form);
    layout->addWidget(m_missing);
    layout->addWidget(m_buttons);
    connect(m_buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(m_buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    resize(QFontMetrics(font()).averageCharWidth() * 84, sizeHint().height());
}

QLineEdit* AskingDialog::addLine(QString const& label, QString const& placeholder) {
    auto* line = new QLineEdit;
    line->setPlaceholderText(placeholder);
    line->setAccessibleName(QString(label).remove(QLatin1Char('&')));
    m_form->addRow(label, line);
    return line;
}

QPlainTextEdit* AskingDialog::addText(QString const& label, QString const& placeholder) {
    auto* text = new QPlainTextEdit;
    text->setTabChangesFocus(true);
    text->setPlaceholderText(placeholder);
    text->setAccessibleName(QString(label).remove(QLatin1Char('&')));
    text->setFixedHeight(QFontMetrics(text->font()).lineSpacing() * kTextLines + 12);
    m_form->addRow(label, text);
    return text;
}

FileLine* AskingDialog::addFile(QString const& label, FileLine* line) {
    m_form->addRow(label, line);
    static_cast<QLabel*>(m_form->labelForField(line))->setBuddy(line->line());
    return line;
}

void AskingDialog::setMissing(QString const& missing, QString const& otherwise) {
    m_missing->setText(missing.isEmpty() ? otherwise : missing);
    m_buttons->button(QDialogButtonBox::Ok)->setEnabled(missing.isEmpty());
}

NewRecordDialog::NewRecordDialog(QString const& proposal, QWidget* parent)
    : AskingDialog(tr("New record"), parent),
      m_file(addFile(tr("&File"), new FileLine(FileUse::WriteNew, tr("File of the new record"), recordFiles()))),
      m_from(addFile(tr("&Earlier record"), new FileLine(FileUse::Read, tr("Record whose decisions are carried over"), recordFiles()))),
      m_number(addLine(tr("N&umber"), tr("of the record in your files"))),
      m_title(addLine(tr("&Title"), tr("what it is about"))),
      m_product(addLine(tr("&Product"), tr("product and assembly"))),
      m_position(addLine(tr("P&ositions"), tr("on the assembly"))),
      m_scope(addLine(tr("&Scope"), tr("which product, lot, quantity it holds for"))),
      m_validUntil(addLine(tr("&Valid until"), QStringLiteral("2032-01-31"))),
      m_triggers(addText(tr("&Review again upon"), tr("one a line; none: the usual ones"))) {
    m_triggers->setAccessibleName(tr("What asks for a new review"));
    m_file->setPath(proposal);
    connect(m_file, &FileLine::changed, this, &NewRecordDialog::check);
    connect(m_validUntil, &QLineEdit::textChanged, this, &NewRecordDialog::check);
    check();
}

NewRecord NewRecordDialog::wanted() const {
    NewRecord wanted;
    wanted.file = fromQt(m_file->path());
    wanted.from = fromQt(m_from->path());
    wanted.identification = {typed(m_number), typed(m_title), typed(m_product), typed(m_position), typed(m_scope), typed(m_validUntil), {}};
    for (auto const& line : m_triggers->toPlainText().split(QLatin1Char('\n'), Qt::SkipEmptyParts)) wanted.identification.reviewTriggers.push_back(fromQt(line.trimmed()));
    return wanted;
}

void NewRecordDialog::check() {
    if (m_file->path().isEmpty()) setMissing(tr("Say where the record is to be written."));
    else if (!typed(m_validUntil).empty() && !record::isDate(typed(m_validUntil))) setMissing(tr("The end of validity is no date such as 2032-01-31."));
    else setMissing({});
}

KeyDialog::KeyDialog(QWidget* parent)
    : AskingDialog(tr("New key"), parent),
      m_name(addLine(tr("&Name"), tr("of the person who signs"))),
      m_file(addFile(tr("&File"), new FileLine(FileUse::WriteNew, tr("File of the new key"), tr("Keys (*.key);;All files (*)")))),
      m_passphrase(addLine(tr("&Passphrase"), tr("none: whoever has the file can sign"))),
      m_again(addLine(tr("The same &again"))) {
    m_passphrase->setEchoMode(QLineEdit::Password);
    m_again->setEchoMode(QLineEdit::Password);
    for (auto const* line : {m_name, m_passphrase, m_again}) connect(line, &QLineEdit::textChanged, this, &KeyDialog::check);
    connect(m_file, &FileLine::changed, this, &KeyDialog::check);
    check();
}

QString KeyDialog::file() const { return m_file->path(); }
QString KeyDialog::name() const { return m_name->text().trimmed(); }
QString KeyDialog::passphrase() const { return m_passphrase->text(); }

void KeyDialog::check() {
    if (auto const fault = record::nameFault(fromQt(name())); !fault.empty()) setMissing(tr("Give the name of the person who signs."));
    else if (file().isEmpty()) setMissing(tr("Say where the key is to be kept; only you will be able to read it."));
    else if (passphrase() != m_again->text()) setMissing(tr("The two passphrases differ."));
    else setMissing({});
}

SupersedeDialog::SupersedeDialog(QWidget* parent)
    : AskingDialog(tr("Superseded"), parent),
      m_by(addFile(tr("&By the record"), new FileLine(FileUse::Read, tr("Record that takes its place"), recordFiles()))),
      m_reason(addText(tr("&Reason"), tr("why; always required"))) {
    connect(m_by, &FileLine::changed, this, &SupersedeDialog::check);
    connect(m_reason, &QPlainTextEdit::textChanged, this, &SupersedeDialog::check);
    check();
}

QString SupersedeDialog::by() const { return m_by->path(); }
QString SupersedeDialog::reason() const { return m_reason->toPlainText().trimmed(); }

void SupersedeDialog::check() {
    if (by().isEmpty()) setMissing(tr("Choose the record that takes its place."));
    else if (reason().isEmpty()) setMissing(tr("Say why."));
    else setMissing({}, tr("Nothing is decided, measured or signed in this record afterwards."));
}

DistributeDialog::DistributeDialog(QWidget* parent)
    : AskingDialog(tr("Distribution"), parent),
      m_to(addLine(tr("&To"), tr("a person, a department, a list"))),
      m_what(addLine(tr("&What"))),
      m_change(addLine(tr("With &change"), tr("number of the change to drawing, parts list or work instruction"))),
      m_on(addLine(tr("&Date"), tr("2031-05-06; none: today"))) {
    m_what->setText(toQt(std::string(record::kCopyOfRecord)));
    for (auto const* line : {m_to, m_what, m_on}) connect(line, &QLineEdit::textChanged, this, &DistributeDialog::check);
    check();
}

record::Distributed DistributeDialog::distributed() const { return {typed(m_to), typed(m_what), typed(m_change), typed(m_on)}; }

void DistributeDialog::check() {
    auto const given = distributed();
    if (given.to.empty()) setMissing(tr("Say who was given it."));
    else if (given.what.empty()) setMissing(tr("Say what was given."));
    else if (!given.on.empty() && !record::isDate(given.on)) setMissing(tr("The date is no date such as 2031-05-06."));
    else setMissing({});
}

ResultDialog::ResultDialog(RecordPointer read, QWidget* parent)
    : AskingDialog(tr("Bench result"), parent),
      m_read(std::move(read)),
      m_test(new QComboBox),
      m_limit(new QComboBox),
      m_wholeLimit(new QLabel),
      m_samples(new QSpinBox),
      m_lots(new QSpinBox) {
    for (auto const& test : m_read->record.opened().tests) m_test->addItem(shownText(test.title), toQt(test.id));
    m_test->setAccessibleName(tr("Test"));
    m_limit->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);  // limits can be long sentences
    m_limit->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    m_limit->setAccessibleName(tr("Limit that the values are held against"));
    m_wholeLimit->setTextFormat(Qt::PlainText);
    m_wholeLimit->setWordWrap(true);
    m_wholeLimit->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    m_wholeLimit->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
    m_wholeLimit->setMinimumHeight(QFontMetrics(font()).lineSpacing() * kTextLines);  // a form gives a wrapped label one line too few
    m_wholeLimit->setTextInteractionFlags(Qt::TextSelectableByMouse);
    form()->addRow(tr("&Test"), m_test);
    form()->addRow(tr("&Limit"), m_limit);
    form()->addRow(QString{}, m_wholeLimit);
    m_values = addLine(tr("&Values"), tr("the extremes, or one a sample, parted by blanks"));
    m_unit = addLine(tr("&Unit"));
    m_condition = addLine(tr("&Condition"), tr("temperature, supply, load"));
    for (auto* count : {m_samples, m_lots}) {
        count->setRange(0, kMostSamples);
        count->setSpecialValueText(tr("not stated"));
    }
    form()->addRow(tr("&Samples"), m_samples);
    form()->addRow(tr("L&ots"), m_lots);
    m_samples->setAccessibleName(tr("Number of samples"));
    m_lots->setAccessibleName(tr("Number of lots"));
    m_instrument = addLine(tr("&Instrument"), tr("and its uncertainty"));
    m_note = addLine(tr("&Note"));
    m_evidence = addFile(tr("&Evidence"), new FileLine(FileUse::Read, tr("File with the measurements"), tr("All files (*)")));
    connect(m_test, &QComboBox::currentIndexChanged, this, &ResultDialog::showLimits);
    connect(m_limit, &QComboBox::currentIndexChanged, this, &ResultDialog::showLimit);
    connect(m_values, &QLineEdit::textChanged, this, &ResultDialog::check);
    showLimits();
}

record::BenchResult ResultDialog::result() const {
    record::BenchResult result;
    result.test = fromQt(m_test->currentData().toString());
    auto const limit = m_limit->currentData().toStringList();
    result.finding = fromQt(limit.value(0));
    result.check = fromQt(limit.value(1));
    static QRegularExpression const blanks(QStringLiteral("[\\s;]+"));
    for (auto const& value : m_values->text().split(blanks, Qt::SkipEmptyParts)) result.values.push_back(fromQt(value));
    result.unit = typed(m_unit);
    result.condition = typed(m_condition);
    result.samples = m_samples->value();
    result.lots = m_lots->value();
    result.instrument = typed(m_instrument);
    result.note = typed(m_note);
    return result;
}

std::vector<std::string> ResultDialog::evidence() const {
    return m_evidence->path().isEmpty() ? std::vector<std::string>{} : std::vector{fromQt(m_evidence->path())};
}

void ResultDialog::showLimits() {
    m_limit->clear();
    auto const& tests = m_read->record.opened().tests;
    auto const test = std::find_if(tests.begin(), tests.end(), [&](risk::BenchTest const& one) { return one.id == fromQt(m_test->currentData().toString()); });
    if (test != tests.end()) {
        for (auto const& limit : test->limits) m_limit->addItem(shownText(report::limitText(limit)), QStringList{toQt(limit.finding), toQt(limit.check), toQt(limit.unit)});
    }
    if (m_limit->count() == 0) m_limit->addItem(tr("no limit is stated"), QStringList{});
    check();
}

// The limit whole, for the box may cut it, and its unit, unless another was typed.
void ResultDialog::showLimit() {
    m_wholeLimit->setText(m_limit->currentText());
    if (!m_unit->text().isEmpty() && m_unit->text() != m_proposed) return;
    m_proposed = m_limit->currentData().toStringList().value(2);
    m_unit->setText(m_proposed);
}

void ResultDialog::check() {
    if (m_test->count() == 0) setMissing(tr("The record asks for no bench test."));
    else if (m_values->text().trimmed().isEmpty()) setMissing(tr("Enter what was measured."));
    else setMissing({});
}

}  // namespace standin::ui

// Tested by tests/ui/views/correction_dialog_test.cpp.
#include "ui/views/correction_dialog.h"

#include <algorithm>

#include <QCheckBox>
#include <QDate>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSettings>
#include <QVBoxLayout>

#include "ui/models/qt_text.h"
#include "ui/models/words.h"
#include "ui/views/panel.h"

namespace standin::ui {

namespace {

using corrections::Field;

QString const kAuthorSetting = QStringLiteral("corrections/author");
constexpr std::array kFields{Field::Name, Field::Symbol, Field::Condition, Field::Min, Field::Typ, Field::Max, Field::Unit};

QString fieldWord(Field field) {
    switch (field) {
        case Field::Name: return CorrectionDialog::tr("&Name");
        case Field::Symbol: return CorrectionDialog::tr("&Symbol");
        case Field::Condition: return CorrectionDialog::tr("&Condition");
        case Field::Min: return CorrectionDialog::tr("M&in");
        case Field::Typ: return CorrectionDialog::tr("&Typ");
        case Field::Max: return CorrectionDialog::tr("M&ax");
        case Field::Unit: return CorrectionDialog::tr("&Unit");
        default: return {};
    }
}

QString textOf(model::Parameter const& parameter, Field field) {
    auto const value = [](std::optional<model::Value> const& of) { return of ? toQt(of->text) : QString{}; };
    switch (field) {
        case Field::Name: return toQt(parameter.name);
        case Field::Symbol: return toQt(parameter.symbol);
        case Field::Condition: return toQt(parameter.condition);
        case Field::Min: return value(parameter.min);
        case Field::Typ: return value(parameter.typ);
        case Field::Max: return value(parameter.max);
        case Field::Unit: return toQt(parameter.unit);
        default: return {};
    }
}

QLabel* wrapped(QString const& text) {
    auto* label = new QLabel(text);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    return label;
}

}  // namespace

CorrectionDialog::CorrectionDialog(ReadPair const& pair, RowCorrection start, std::string const& file, QWidget* parent)
    : QDialog(parent), m_start(std::move(start)), m_not(new QCheckBox(tr("This is &no parameter"))), m_by(new QLineEdit), m_why(new QLineEdit), m_trouble(wrapped({})) {
    auto const& sheet = sheetOf(pair, m_start.side);
    auto const found = std::find_if(sheet.parameters.begin(), sheet.parameters.end(), [&](auto const& parameter) { return parameter.id == m_start.parameter; });
    auto const* row = found == sheet.parameters.end() ? nullptr : &*found;
    setWindowTitle(row != nullptr ? tr("Correct a row that was misread") : tr("Put in a row that was not read"));
    auto* layout = new QVBoxLayout(this);
    auto const where = tr("%1, page %2").arg(partName(sheet.document)).arg(row != nullptr ? row->page : m_start.page);
    auto* side = new QLabel(QStringLiteral("%1: %2").arg(sideWord(m_start.side), where));
    side->setTextFormat(Qt::PlainText);
    side->setFont(fontOf(TextSize::Normal, QFont::DemiBold));
    layout->addWidget(side);
    if (row != nullptr) layout->addWidget(wrapped(tr("Read: %1").arg(shownText(row->printed))));
    layout->addWidget(wrapped(tr("Write what is printed on the page; leave empty what has nothing printed.")));
    auto* form = new QFormLayout;
    for (auto const field : kFields) {
        auto* edit = new QLineEdit(row != nullptr ? textOf(*row, field) : QString{});
        m_fields.push_back({field, edit->text(), edit});
        form->addRow(fieldWord(field), edit);
        connect(edit, &QLineEdit::textChanged, this, &CorrectionDialog::check);
    }
    m_not->setVisible(row != nullptr);
    form->addRow(QString{}, m_not);
    m_by->setText(QSettings().value(kAuthorSetting).toString());
    form->addRow(tr("Corrected &by"), m_by);
    m_why->setPlaceholderText(tr("for example: the 3 was read as an 8"));
    form->addRow(tr("&Reason"), m_why);
    layout->addLayout(form);
    auto* path = wrapped(tr("Written to %1").arg(toQt(file)));
    path->setFont(fontOf(TextSize::Small));
    makeSoft(*path);
    layout->addWidget(path);
    layout->addWidget(m_trouble);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
    m_accept = buttons->addButton(tr("Correct and compare anew"), QDialogButtonBox::AcceptRole);
    layout->addWidget(buttons);
    connect(m_not, &QCheckBox::toggled, this, &CorrectionDialog::check);
    for (auto* edit : {m_by, m_why}) connect(edit, &QLineEdit::textChanged, this, &CorrectionDialog::check);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(buttons, &QDialogButtonBox::accepted, this, [this] {
        QSettings().setValue(kAuthorSetting, m_by->text().trimmed());
        accept();
    });
    resize(fontMetrics().averageCharWidth() * 76, sizeHint().height());
    check();
}

QLineEdit* CorrectionDialog::field(corrections::Field field) const {
    auto const found = std::find_if(m_fields.begin(), m_fields.end(), [field](auto const& edited) { return edited.field == field; });
    return found == m_fields.end() ? nullptr : found->edit;
}

RowCorrection CorrectionDialog::correction() const {
    auto correction = m_start;
    correction.notAParameter = m_not->isChecked();
    for (auto const& edited : m_fields) {
        auto const text = edited.edit->text().trimmed();
        if (text != edited.before.trimmed()) correction.texts.push_back({edited.field, fromQt(text)});
    }
    correction.by = fromQt(m_by->text().trimmed());
    correction.date = fromQt(QDate::currentDate().toString(Qt::ISODate));
    correction.why = fromQt(m_why->text().trimmed());
    return correction;
}

QString CorrectionDialog::trouble() const {
    auto const said = correction();
    auto const has = [&](Field field) { return !this->field(field)->text().trimmed().isEmpty(); };
    if (!said.notAParameter && said.texts.empty()) return tr("Nothing differs yet from what was read.");
    if (m_start.parameter.empty() && !has(Field::Name) && !has(Field::Symbol)) return tr("A name or a symbol is needed.");
    if (m_start.parameter.empty() && !has(Field::Min) && !has(Field::Typ) && !has(Field::Max)) return tr("A value is needed: min, typ or max.");
    if (said.by.empty()) return tr("Who corrects it is needed: it stands in every report.");
    if (said.why.empty()) return tr("A reason is needed: it stands in every report.");
    return {};
}

void CorrectionDialog::check() {
    auto const what = trouble();
    m_trouble->setText(what);
    m_accept->setEnabled(what.isEmpty());
    for (auto const& edited : m_fields) edited.edit->setEnabled(!m_not->isChecked());
}

}  // namespace standin::ui

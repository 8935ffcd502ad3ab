// Tested by tests/ui/views/main_window_test.cpp.
#include "ui/views/pair_form.h"

#include <algorithm>

#include <QDir>
#include <QDragEnterEvent>
#include <QDropEvent>
#include <QFileDialog>
#include <QFileInfo>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QMimeData>
#include <QSettings>
#include <QStandardPaths>
#include <QVBoxLayout>

#include "ui/models/qt_text.h"
#include "ui/models/words.h"
#include "ui/views/appearance.h"

namespace standin::ui {

namespace {

QString const kFolderKey = QStringLiteral("lastFolder");

// The local files of a drag; empty where it holds none.
QStringList filesOf(QMimeData const* mime) {
    QStringList files;
    for (auto const& url : mime->urls()) {
        if (url.isLocalFile()) files += url.toLocalFile();
    }
    return files;
}

QLineEdit* addFileLine(QFormLayout& form, QWidget* parent, QString const& label, QString const& filter) {
    auto* row = new QWidget;
    auto* layout = new QHBoxLayout(row);
    layout->setContentsMargins(0, 0, 0, 0);
    auto* path = new QLineEdit;
    path->setClearButtonEnabled(true);
    path->setPlaceholderText(PairForm::tr("none"));
    auto* button = new QPushButton(PairForm::tr("Choose…"));
    button->setAccessibleName(PairForm::tr("Choose a file: %1").arg(QString(label).remove(QLatin1Char('&'))));
    QObject::connect(button, &QPushButton::clicked, parent, [path, parent, label, filter] {
        auto const file = QFileDialog::getOpenFileName(parent, QString(label).remove(QLatin1Char('&')), lastFolder(), filter);
        if (file.isEmpty()) return;
        rememberFolder(file);
        path->setText(file);
    });
    layout->addWidget(path, 1);
    layout->addWidget(button);
    form.addRow(label, row);
    static_cast<QLabel*>(form.labelForField(row))->setBuddy(path);
    path->setAccessibleName(QString(label).remove(QLatin1Char('&')));
    return path;
}

}  // namespace

QString lastFolder() {
    auto const folder = QSettings().value(kFolderKey).toString();
    return folder.isEmpty() || !QDir(folder).exists() ? QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation) : folder;
}

void rememberFolder(QString const& filePath) { QSettings().setValue(kFolderKey, QFileInfo(filePath).absolutePath()); }

FileSlot::FileSlot(DocumentSide side, QWidget* parent) : Panel(parent), m_side(side), m_path(new QLineEdit), m_variantLabel(new QLabel(tr("Variant"))), m_variant(new QComboBox) {
    setSide(side);
    setAcceptDrops(true);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(16, 10, 12, 10);
    auto* who = new QLabel(side == DocumentSide::Reference ? tr("Reference: the part fitted or specified today") : tr("Candidate: the suspected equivalent"));
    who->setFont(fontOf(TextSize::Normal, QFont::Bold));
    who->setWordWrap(true);
    layout->addWidget(who);
    auto* row = new QHBoxLayout;
    m_path->setClearButtonEnabled(true);
    m_path->setPlaceholderText(tr("datasheet.pdf: choose it, or drop it here"));
    m_path->setAccessibleName(tr("File of the %1").arg(sideWord(side)));
    auto* button = new QPushButton(tr("Choose…"));
    button->setAccessibleName(tr("Choose the file of the %1").arg(sideWord(side)));
    row->addWidget(m_path, 1);
    row->addWidget(button);
    layout->addLayout(row);
    auto* variant = new QHBoxLayout;
    m_variantLabel->setBuddy(m_variant);
    m_variant->setAccessibleName(tr("Variant of the %1").arg(sideWord(side)));
    variant->addWidget(m_variantLabel);
    variant->addWidget(m_variant, 1);
    layout->addLayout(variant);
    setVariantVisible(false);
    connect(button, &QPushButton::clicked, this, &FileSlot::browse);
    connect(m_path, &QLineEdit::textChanged, this, &FileSlot::changed);
}

void FileSlot::setPath(QString const& path) { m_path->setText(path); }

void FileSlot::setVariants(std::vector<std::string> const& variants, std::string const& chosen) {
    m_variant->clear();
    m_variant->addItem(tr("none chosen"));
    for (auto const& variant : variants) m_variant->addItem(shownText(variant), toQt(variant));
    m_variant->setCurrentIndex(std::max(0, m_variant->findData(toQt(chosen))));
    setVariantVisible(!variants.empty());
}

std::string FileSlot::variant() const { return m_variant->isVisibleTo(this) ? fromQt(m_variant->currentData().toString()) : std::string{}; }

void FileSlot::setVariantVisible(bool visible) {
    m_variant->setVisible(visible);
    m_variantLabel->setVisible(visible);
}

void FileSlot::browse() {
    auto const title = m_side == DocumentSide::Reference ? tr("Choose the datasheet of the reference") : tr("Choose the datasheet of the candidate");
    auto const file = QFileDialog::getOpenFileName(this, title, lastFolder(), tr("Datasheets (*.pdf *.json);;All files (*)"));
    if (file.isEmpty()) return;
    rememberFolder(file);
    setPath(file);
}

void FileSlot::dragEnterEvent(QDragEnterEvent* event) {
    if (filesOf(event->mimeData()).size() == 1) event->acceptProposedAction();
}

void FileSlot::dropEvent(QDropEvent* event) {
    auto const files = filesOf(event->mimeData());
    if (files.size() != 1) return;
    event->acceptProposedAction();
    setPath(files.front());
}

PairForm::PairForm(QWidget* parent)
    : QWidget(parent), m_reference(new FileSlot(DocumentSide::Reference)), m_candidate(new FileSlot(DocumentSide::Candidate)), m_trouble(new QLabel), m_compare(new QPushButton(tr("C&ompare"))) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(10);
    auto* exchangeButton = new QPushButton(tr("⇅  E&xchange reference and candidate"));
    exchangeButton->setAccessibleName(tr("Exchange reference and candidate"));
    layout->addWidget(m_reference);
    layout->addWidget(exchangeButton, 0, Qt::AlignLeft);
    layout->addWidget(m_candidate);
    auto* form = new QFormLayout;
    form->setFieldGrowthPolicy(QFormLayout::ExpandingFieldsGrow);
    auto const json = tr("JSON files (*.json);;All files (*)");
    m_cell = addFileLine(*form, this, tr("Ce&ll profile"), json);
    m_circuit = addFileLine(*form, this, tr("C&ircuit"), json);
    m_vocabulary = addFileLine(*form, this, tr("Own &vocabulary"), json);
    m_corrections = addFileLine(*form, this, tr("Correctio&ns"), json);
    m_password = new QLineEdit;
    m_password->setEchoMode(QLineEdit::Password);
    m_password->setPlaceholderText(tr("none"));
    m_password->setAccessibleName(tr("Password of the documents"));
    form->addRow(tr("Pass&word"), m_password);
    layout->addLayout(form);
    m_trouble->setTextFormat(Qt::PlainText);
    m_trouble->setWordWrap(true);
    m_trouble->setFont(fontOf(TextSize::Normal, QFont::Bold));
    m_trouble->hide();
    layout->addWidget(m_trouble);
    m_compare->setDefault(true);
    layout->addWidget(m_compare, 0, Qt::AlignRight);
    connect(exchangeButton, &QPushButton::clicked, this, &PairForm::exchange);
    connect(m_reference, &FileSlot::changed, this, &PairForm::check);
    connect(m_candidate, &FileSlot::changed, this, &PairForm::check);
    connect(m_compare, &QPushButton::clicked, this, &PairForm::accepted);
    connect(m_password, &QLineEdit::returnPressed, m_compare, &QPushButton::click);
    check();
}

PairRequest PairForm::request() const {
    PairRequest request;
    request.reference = fromQt(m_reference->path());
    request.candidate = fromQt(m_candidate->path());
    request.referenceVariant = m_reference->variant();
    request.candidateVariant = m_candidate->variant();
    request.cell = fromQt(m_cell->text().trimmed());
    request.circuit = fromQt(m_circuit->text().trimmed());
    if (auto const file = m_vocabulary->text().trimmed(); !file.isEmpty()) request.vocabularies.push_back(fromQt(file));
    if (auto const file = m_corrections->text().trimmed(); !file.isEmpty()) request.corrections.push_back(fromQt(file));
    if (!m_password->text().isEmpty()) request.password = fromQt(m_password->text());
    return request;
}

void PairForm::setRequest(PairRequest const& request, PairPointer const& pair) {
    m_reference->setPath(toQt(request.reference));
    m_candidate->setPath(toQt(request.candidate));
    bool const known = pair && pair->request.reference == request.reference && pair->request.candidate == request.candidate;
    m_reference->setVariants(known ? pair->referenceVariants : std::vector<std::string>{}, request.referenceVariant);
    m_candidate->setVariants(known ? pair->candidateVariants : std::vector<std::string>{}, request.candidateVariant);
    m_cell->setText(toQt(request.cell));
    m_circuit->setText(toQt(request.circuit));
    m_vocabulary->setText(request.vocabularies.empty() ? QString{} : toQt(request.vocabularies.front()));
    m_corrections->setText(request.corrections.empty() ? QString{} : toQt(request.corrections.front()));
    m_password->setText(toQt(request.password.value_or(std::string{})));
}

void PairForm::addFiles(QStringList const& files) {
    if (files.size() >= 2) {
        m_reference->setPath(files[0]);
        m_candidate->setPath(files[1]);
    } else if (files.size() == 1) {
        (m_reference->path().isEmpty() ? m_reference : m_candidate)->setPath(files.front());
    }
}

void PairForm::setTrouble(QString const& trouble) {
    m_trouble->setText(trouble.isEmpty() ? QString{} : QStringLiteral("⚠  ") + trouble);
    m_trouble->setVisible(!trouble.isEmpty());
}

void PairForm::focusPassword() { m_password->setFocus(); }

void PairForm::exchange() {
    auto const first = m_reference->path();
    m_reference->setPath(m_candidate->path());
    m_candidate->setPath(first);
    // Which variants belong to which file is known again once it is read.
    m_reference->setVariants({}, {});
    m_candidate->setVariants({}, {});
}

void PairForm::check() { m_compare->setEnabled(!m_reference->path().isEmpty() && !m_candidate->path().isEmpty()); }

}  // namespace standin::ui

// Tested by tests/ui/views/record_page_test.cpp.
#include "ui/views/file_line.h"

#include <QFileDialog>
#include <QHBoxLayout>
#include <QPushButton>

#include "ui/views/pair_form.h"

namespace standin::ui {

FileLine::FileLine(FileUse use, QString name, QString filter, QWidget* parent) : QWidget(parent), m_use(use), m_name(std::move(name)), m_filter(std::move(filter)), m_path(new QLineEdit) {
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    m_path->setClearButtonEnabled(true);
    m_path->setPlaceholderText(tr("none"));
    m_path->setAccessibleName(m_name);
    auto* button = new QPushButton(tr("Choose…"));
    button->setAccessibleName(tr("Choose a file: %1").arg(m_name));
    layout->addWidget(m_path, 1);
    layout->addWidget(button);
    setFocusProxy(m_path);
    connect(button, &QPushButton::clicked, this, &FileLine::choose);
    connect(m_path, &QLineEdit::textChanged, this, &FileLine::changed);
}

void FileLine::choose() {
    auto const file = m_use == FileUse::Read ? QFileDialog::getOpenFileName(this, m_name, lastFolder(), m_filter)
                                             : QFileDialog::getSaveFileName(this, m_name, path().isEmpty() ? lastFolder() : path(), m_filter);
    if (file.isEmpty()) return;
    rememberFolder(file);
    setPath(file);
}

}  // namespace standin::ui

// A line for the path of a file with a button that chooses it.
#pragma once

#include <QLineEdit>
#include <QWidget>

namespace standin::ui {

enum class FileUse { Read, WriteNew };

class FileLine : public QWidget {
    Q_OBJECT

public:
    // `name` is what the file is, for the dialog and for screen readers; `filter`
    // as QFileDialog has it.
    FileLine(FileUse use, QString name, QString filter, QWidget* parent = nullptr);

    [[nodiscard]] QString path() const { return m_path->text().trimmed(); }
    void setPath(QString const& path) { m_path->setText(path); }
    // For a label's buddy.
    [[nodiscard]] QLineEdit* line() const { return m_path; }

Q_SIGNALS:
    void changed();

private:
    void choose();

    FileUse m_use;
    QString m_name, m_filter;
    QLineEdit* m_path;
};

}  // namespace standin::ui

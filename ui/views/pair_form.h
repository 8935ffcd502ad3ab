// Where a pair is chosen: both files, exchange, variants, cell profile, circuit,
// vocabulary and password. Stands on the start page and in the dialog.
#pragma once

#include <array>

#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QWidget>

#include "ui/models/session.h"
#include "ui/views/panel.h"

namespace standin::ui {

// One document: its path with a button, and its hue. Takes a dropped file.
class FileSlot : public Panel {
    Q_OBJECT

public:
    explicit FileSlot(DocumentSide side, QWidget* parent = nullptr);
    [[nodiscard]] QString path() const { return m_path->text().trimmed(); }
    void setPath(QString const& path);
    // Variants that the document is known to cover; the first entry is none.
    void setVariants(std::vector<std::string> const& variants, std::string const& chosen);
    [[nodiscard]] std::string variant() const;
    void setVariantVisible(bool visible);

Q_SIGNALS:
    void changed();

protected:
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

private:
    void browse();

    DocumentSide m_side;
    QLineEdit* m_path;
    QLabel* m_variantLabel;
    QComboBox* m_variant;
};

class PairForm : public QWidget {
    Q_OBJECT

public:
    explicit PairForm(QWidget* parent = nullptr);

    // What stands in the form now.
    [[nodiscard]] PairRequest request() const;
    // Fills the form; `pair`, where it is of the same files, gives the variants.
    void setRequest(PairRequest const& request, PairPointer const& pair);
    // Puts files where there is room: reference first.
    void addFiles(QStringList const& files);
    // What is wrong, in words, below the files; empty: nothing.
    void setTrouble(QString const& trouble);
    void focusPassword();

Q_SIGNALS:
    void accepted();

private:
    void exchange();
    void check();

    FileSlot* m_reference;
    FileSlot* m_candidate;
    QLineEdit* m_cell;
    QLineEdit* m_circuit;
    QLineEdit* m_vocabulary;
    QLineEdit* m_corrections;
    QLineEdit* m_password;
    QLabel* m_trouble;
    QPushButton* m_compare;
};

// The folder where the last file was chosen, kept in the settings.
[[nodiscard]] QString lastFolder();
void rememberFolder(QString const& filePath);

}  // namespace standin::ui

// Where a person says what stands in a row that was misread.
#pragma once

#include <vector>

#include <QDialog>

#include "ui/models/corrections.h"

class QCheckBox;
class QLabel;
class QLineEdit;
class QPushButton;

namespace standin::ui {

class CorrectionDialog : public QDialog {
    Q_OBJECT

public:
    // `start` has the side and the id of the row, or, with an empty id, the place
    // where one is put in. `file` is where it will be written.
    CorrectionDialog(ReadPair const& pair, RowCorrection start, std::string const& file, QWidget* parent = nullptr);

    // What was said; texts that were left as read are not in it.
    [[nodiscard]] RowCorrection correction() const;
    // Why it cannot be accepted yet, in words; empty: it can.
    [[nodiscard]] QString trouble() const;
    [[nodiscard]] QLineEdit* field(corrections::Field field) const;
    [[nodiscard]] QLineEdit* author() const { return m_by; }
    [[nodiscard]] QLineEdit* reason() const { return m_why; }
    [[nodiscard]] QCheckBox* notAParameter() const { return m_not; }

private:
    struct Edited {
        corrections::Field field;
        QString before;
        QLineEdit* edit;
    };
    void check();

    RowCorrection m_start;
    std::vector<Edited> m_fields;
    QCheckBox* m_not;
    QLineEdit* m_by;
    QLineEdit* m_why;
    QLabel* m_trouble;
    QPushButton* m_accept;
};

}  // namespace standin::ui

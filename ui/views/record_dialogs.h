// What the record page asks before it begins a record, makes a key, enters a bench
// result, or says what took the record's place or who was given it.
#pragma once

#include <QDialog>

#include "ui/models/record_book.h"

class QComboBox;
class QDialogButtonBox;
class QFormLayout;
class QLabel;
class QLineEdit;
class QPlainTextEdit;
class QSpinBox;

namespace standin::ui {

class FileLine;

// The name filter of record files, for file dialogs.
[[nodiscard]] QString recordFiles();

// A form with a line for what is still missing; OK waits for it.
class AskingDialog : public QDialog {
    Q_OBJECT

public:
    explicit AskingDialog(QString const& title, QWidget* parent);

protected:
    [[nodiscard]] QFormLayout* form() const { return m_form; }
    QLineEdit* addLine(QString const& label, QString const& placeholder = {});
    QPlainTextEdit* addText(QString const& label, QString const& placeholder);
    FileLine* addFile(QString const& label, FileLine* line);
    // Empty: nothing is missing, and `otherwise` stands in its place.
    void setMissing(QString const& missing, QString const& otherwise = {});

private:
    QFormLayout* m_form;
    QLabel* m_missing;
    QDialogButtonBox* m_buttons;
};

class NewRecordDialog : public AskingDialog {
    Q_OBJECT

public:
    // `proposal`: a file name for the record.
    explicit NewRecordDialog(QString const& proposal, QWidget* parent = nullptr);
    [[nodiscard]] NewRecord wanted() const;

private:
    void check();

    FileLine *m_file, *m_from;
    QLineEdit *m_number, *m_title, *m_product, *m_position, *m_scope, *m_validUntil;
    QPlainTextEdit* m_triggers;
};

class KeyDialog : public AskingDialog {
    Q_OBJECT

public:
    explicit KeyDialog(QWidget* parent = nullptr);
    [[nodiscard]] QString file() const;
    [[nodiscard]] QString name() const;
    [[nodiscard]] QString passphrase() const;

private:
    void check();

    QLineEdit* m_name;
    FileLine* m_file;
    QLineEdit *m_passphrase, *m_again;
};

class SupersedeDialog : public AskingDialog {
    Q_OBJECT

public:
    explicit SupersedeDialog(QWidget* parent = nullptr);
    [[nodiscard]] QString by() const;
    [[nodiscard]] QString reason() const;

private:
    void check();

    FileLine* m_by;
    QPlainTextEdit* m_reason;
};

class DistributeDialog : public AskingDialog {
    Q_OBJECT

public:
    explicit DistributeDialog(QWidget* parent = nullptr);
    [[nodiscard]] record::Distributed distributed() const;

private:
    void check();

    QLineEdit *m_to, *m_what, *m_change, *m_on;
};

class ResultDialog : public AskingDialog {
    Q_OBJECT

public:
    // The tests of the record in hand.
    explicit ResultDialog(RecordPointer read, QWidget* parent = nullptr);
    [[nodiscard]] record::BenchResult result() const;
    [[nodiscard]] std::vector<std::string> evidence() const;

private:
    void showLimits();
    void showLimit();
    void check();

    RecordPointer m_read;
    QComboBox *m_test, *m_limit;
    QLabel* m_wholeLimit;
    QLineEdit *m_values, *m_unit, *m_condition, *m_instrument, *m_note;
    QString m_proposed;  // unit
    QSpinBox *m_samples, *m_lots;
    FileLine* m_evidence;
};

}  // namespace standin::ui

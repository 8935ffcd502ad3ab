// The record of the pair: its lines, what is decided on each, who signs, and
// whether it holds. Commands go to the RecordBook.
#pragma once

#include "ui/models/record_model.h"
#include "ui/views/table_page.h"

class QAction;
class QComboBox;
class QFormLayout;
class QLineEdit;
class QPlainTextEdit;
class QPushButton;
class QTextBrowser;
class QToolButton;

namespace standin::ui {

class FileLine;

class RecordPage : public QWidget {
    Q_OBJECT

public:
    // All outlive the page.
    RecordPage(Session& session, RecordBook& book, RecordModel& lines, QWidget* parent = nullptr);

    [[nodiscard]] QTableView* table() const { return m_table->table(); }
    // What was done last, or why not.
    [[nodiscard]] QString outcome() const;

private:
    void makeBar();
    QWidget* makeSide();
    QWidget* makeSigning();
    void listen();
    void showRecord();
    // The row of the finding that the desk looks at, or -1.
    [[nodiscard]] int rowOfSession() const;
    void showLine(int row);
    void showFields();
    void showSigner();
    void enableAll();
    void tell(QString const& text);

    void askNewRecord();
    void askRecord();
    void askReport();
    void askMerge();
    void askSupersede();
    void askDistribute();
    void askResult();
    void askKey();
    void decide(record::Stance stance);

    Session& m_session;
    RecordBook& m_book;
    RecordModel& m_lines;
    TablePage* m_table;
    QTextBrowser* m_outcome;
    QPushButton *m_new, *m_takeUp, *m_check;
    QToolButton* m_more;
    QAction *m_result, *m_supersede, *m_distribute;
    QTextBrowser* m_text;
    QFormLayout* m_fields;
    QComboBox* m_disposition;
    QPlainTextEdit* m_reason;
    QLineEdit *m_condition, *m_addressee, *m_due, *m_samples;
    FileLine* m_evidence;
    QPushButton *m_decide, *m_confirm;
    FileLine* m_key;
    QLineEdit* m_passphrase;
    QComboBox* m_role;
    QLineEdit* m_note;
    QPushButton *m_newKey, *m_sign;
    QLabel* m_signatures;
    std::string m_finding;  // whose fields are shown
};

}  // namespace standin::ui

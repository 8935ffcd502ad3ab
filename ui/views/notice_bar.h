// Messages of the desk, in place above the pages: what happened, and the one
// thing that can be done about it.
#pragma once

#include <functional>
#include <map>

#include <QWidget>

class QVBoxLayout;

namespace standin::ui {

class NoticeBar : public QWidget {
    Q_OBJECT

public:
    explicit NoticeBar(QWidget* parent = nullptr);

    // `subject` is what the message is about: a new one takes the place of the
    // last with the same subject. Without an action there is only a close button.
    void show(QString const& subject, QString const& text, QString const& actionName = {}, std::function<void()> action = {});
    void hide(QString const& subject);
    [[nodiscard]] QString textOf(QString const& subject) const;  // empty: none

private:
    std::map<QString, QWidget*> m_notices;
    QVBoxLayout* m_layout;
};

}  // namespace standin::ui

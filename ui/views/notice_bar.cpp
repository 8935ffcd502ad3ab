// Tested by tests/ui/views/main_window_test.cpp.
#include "ui/views/notice_bar.h"

#include <QAccessible>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/views/panel.h"

namespace standin::ui {

NoticeBar::NoticeBar(QWidget* parent) : QWidget(parent), m_layout(new QVBoxLayout(this)) {
    m_layout->setContentsMargins(10, 0, 10, 0);
    m_layout->setSpacing(4);
}

void NoticeBar::show(QString const& subject, QString const& text, QString const& actionName, std::function<void()> action) {
    hide(subject);
    auto* notice = new Panel;
    auto* row = new QHBoxLayout(notice);
    row->setContentsMargins(12, 4, 6, 4);
    auto* label = new QLabel;
    label->setObjectName(QStringLiteral("text"));
    label->setTextFormat(Qt::PlainText);
    label->setText(text);
    label->setWordWrap(true);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    row->addWidget(label, 1);
    if (!actionName.isEmpty()) {
        auto* button = new QPushButton(actionName);
        row->addWidget(button);
        connect(button, &QPushButton::clicked, this, [this, subject, action = std::move(action)] {
            hide(subject);
            action();
        });
    }
    auto* close = new QPushButton(tr("Close"));
    close->setAccessibleName(tr("Close the message"));
    row->addWidget(close);
    connect(close, &QPushButton::clicked, this, [this, subject] { hide(subject); });
    m_layout->addWidget(notice);
    m_notices[subject] = notice;
    QAccessibleEvent event(label, QAccessible::Alert);
    QAccessible::updateAccessibility(&event);
}

void NoticeBar::hide(QString const& subject) {
    auto const found = m_notices.find(subject);
    if (found == m_notices.end()) return;
    found->second->hide();
    found->second->deleteLater();
    m_notices.erase(found);
}

QString NoticeBar::textOf(QString const& subject) const {
    auto const found = m_notices.find(subject);
    return found == m_notices.end() ? QString{} : found->second->findChild<QLabel*>(QStringLiteral("text"))->text();
}

}  // namespace standin::ui

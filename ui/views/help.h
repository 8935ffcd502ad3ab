// Help within the program, and what the program is made of.
#pragma once

#include <QWidget>

namespace standin::ui {

// The help window; one at a time, beside the desk.
void showHelp(QWidget* parent);
void showAbout(QWidget* parent);

// The help as rich text, in the language of the program.
[[nodiscard]] QString helpText();
[[nodiscard]] QString aboutText();

}  // namespace standin::ui

// The border between UTF-8 and QString. Nothing else converts.
#pragma once

#include <string>
#include <string_view>

#include <QString>

#include "text/visible.h"

namespace standin::ui {

// Our own texts, and those that a person typed.
[[nodiscard]] inline QString toQt(std::string_view utf8) { return QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size())); }

// Text out of a document: control and bidirectional characters are shown by number.
[[nodiscard]] inline QString shownText(std::string_view utf8) { return toQt(text::visible(utf8)); }

[[nodiscard]] inline std::string fromQt(QString const& string) { return string.toStdString(); }

}  // namespace standin::ui

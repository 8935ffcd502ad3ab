// What a person sets for the desk: appearance, size of text, language. Kept by
// QSettings; the dialog shows them.
#pragma once

#include <QDialog>
#include <QString>

#include "ui/views/appearance.h"

class QComboBox;
class QSpinBox;

namespace standin::ui {

struct DeskSettings {
    Appearance appearance = Appearance::AsSystem;
    int textPercent = 100;  // of the system's font
    QString language;       // "de", "zh_CN", "en"; empty: as the system
    bool operator==(DeskSettings const&) const = default;
};

inline constexpr int kSmallestText = 80;  // percent
inline constexpr int kLargestText = 200;

[[nodiscard]] DeskSettings loadSettings();
void saveSettings(DeskSettings const& settings);
// Appearance and text size, at once. The language needs a new start.
void applySettings(DeskSettings const& settings);

class SettingsDialog : public QDialog {
    Q_OBJECT

public:
    explicit SettingsDialog(DeskSettings const& settings, QString const& decisionsFolder, QWidget* parent = nullptr);
    [[nodiscard]] DeskSettings settings() const;

private:
    QComboBox* m_appearance;
    QSpinBox* m_text;
    QComboBox* m_language;
};

}  // namespace standin::ui

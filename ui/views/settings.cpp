// Tested by tests/ui/views/main_window_test.cpp.
#include "ui/views/settings.h"

#include <algorithm>

#include <QApplication>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QSettings>
#include <QSpinBox>

namespace standin::ui {

namespace {

QString const kAppearance = QStringLiteral("appearance");
QString const kText = QStringLiteral("textPercent");
QString const kLanguage = QStringLiteral("language");

}  // namespace

DeskSettings loadSettings() {
    QSettings const store;
    DeskSettings settings;
    auto const word = store.value(kAppearance).toString();
    if (word == QLatin1String("light")) settings.appearance = Appearance::Light;
    if (word == QLatin1String("dark")) settings.appearance = Appearance::Dark;
    settings.textPercent = std::clamp(store.value(kText, 100).toInt(), kSmallestText, kLargestText);
    settings.language = store.value(kLanguage).toString();
    return settings;
}

void saveSettings(DeskSettings const& settings) {
    QSettings store;
    auto const word = [&] {
        switch (settings.appearance) {
            case Appearance::Light: return QStringLiteral("light");
            case Appearance::Dark: return QStringLiteral("dark");
            case Appearance::AsSystem: break;
        }
        return QStringLiteral("system");
    }();
    store.setValue(kAppearance, word);
    store.setValue(kText, settings.textPercent);
    store.setValue(kLanguage, settings.language);
}

void applySettings(DeskSettings const& settings) {
    static double const systemPoints = QApplication::font().pointSizeF() > 0 ? QApplication::font().pointSizeF() : 10;
    QFont font = QApplication::font();
    font.setPointSizeF(systemPoints * settings.textPercent / 100);
    QApplication::setFont(font);
    applyAppearance(settings.appearance);
}

SettingsDialog::SettingsDialog(DeskSettings const& settings, QString const& decisionsFolder, QWidget* parent)
    : QDialog(parent), m_appearance(new QComboBox), m_text(new QSpinBox), m_language(new QComboBox) {
    setWindowTitle(tr("Settings"));
    m_appearance->addItem(tr("as the system"), static_cast<int>(Appearance::AsSystem));
    m_appearance->addItem(tr("light"), static_cast<int>(Appearance::Light));
    m_appearance->addItem(tr("dark"), static_cast<int>(Appearance::Dark));
    m_appearance->setCurrentIndex(m_appearance->findData(static_cast<int>(settings.appearance)));
    m_text->setRange(kSmallestText, kLargestText);
    m_text->setSingleStep(10);
    m_text->setSuffix(QStringLiteral(" %"));
    m_text->setValue(settings.textPercent);
    m_language->addItem(tr("as the system"), QString{});
    m_language->addItem(QStringLiteral("English"), QStringLiteral("en"));
    m_language->addItem(QStringLiteral("Deutsch"), QStringLiteral("de"));
    m_language->addItem(QStringLiteral("中文"), QStringLiteral("zh_CN"));
    m_language->setCurrentIndex(std::max(0, m_language->findData(settings.language)));
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel);
    auto* folder = new QLabel(decisionsFolder);
    folder->setTextFormat(Qt::PlainText);
    folder->setWordWrap(true);
    folder->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    auto* layout = new QFormLayout(this);
    layout->addRow(tr("&Appearance"), m_appearance);
    layout->addRow(tr("Size of &text"), m_text);
    layout->addRow(tr("&Language (from the next start)"), m_language);
    layout->addRow(tr("Decisions are kept in"), folder);
    layout->addRow(buttons);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
}

DeskSettings SettingsDialog::settings() const {
    return {static_cast<Appearance>(m_appearance->currentData().toInt()), m_text->value(), m_language->currentData().toString()};
}

}  // namespace standin::ui

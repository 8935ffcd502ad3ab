// Tested by tests/ui/views/appearance_test.cpp (contrast of every text colour).
#include "ui/views/appearance.h"

#include <QApplication>
#include <QPainter>
#include <QProxyStyle>
#include <QStyleOption>

namespace standin::ui {

namespace {

Colours const kLight{.ground = QColor(0xf1f0ec),
                     .paper = QColor(0xfdfdfb),
                     .ink = QColor(0x1d2430),
                     .soft = QColor(0x5a6372),
                     .edge = QColor(0xd5d2c8),
                     .chosen = QColor(0xe4e9f0),
                     .reference = QColor(0x2f4d6b),
                     .candidate = QColor(0x955708),
                     .referenceTint = QColor(0xcfdcec),
                     .candidateTint = QColor(0xf8e8cc)};
Colours const kDark{.ground = QColor(0x15181c),
                    .paper = QColor(0x1e2228),
                    .ink = QColor(0xe8e6e0),
                    .soft = QColor(0xa7adb8),
                    .edge = QColor(0x3a4049),
                    .chosen = QColor(0x2c3644),
                    .reference = QColor(0x9dbddd),
                    .candidate = QColor(0xe2a553),
                    .referenceTint = QColor(0x2b4562),
                    .candidateTint = QColor(0x4c3510)};

QPalette paletteOf(Colours const& c) {
    QPalette palette;
    palette.setColor(QPalette::Window, c.ground);
    palette.setColor(QPalette::WindowText, c.ink);
    palette.setColor(QPalette::Base, c.paper);
    palette.setColor(QPalette::AlternateBase, c.ground);
    palette.setColor(QPalette::Text, c.ink);
    palette.setColor(QPalette::PlaceholderText, c.soft);
    palette.setColor(QPalette::Button, c.ground);
    palette.setColor(QPalette::ButtonText, c.ink);
    palette.setColor(QPalette::BrightText, c.ink);
    palette.setColor(QPalette::ToolTipBase, c.paper);
    palette.setColor(QPalette::ToolTipText, c.ink);
    palette.setColor(QPalette::Highlight, c.chosen);
    palette.setColor(QPalette::HighlightedText, c.ink);
    palette.setColor(QPalette::Link, c.reference);
    palette.setColor(QPalette::LinkVisited, c.reference);
    palette.setColor(QPalette::Light, c.paper);
    palette.setColor(QPalette::Midlight, c.edge);
    palette.setColor(QPalette::Mid, c.edge);
    palette.setColor(QPalette::Dark, c.soft);
    palette.setColor(QPalette::Shadow, c.soft);
    for (auto const role : {QPalette::Text, QPalette::WindowText, QPalette::ButtonText}) palette.setColor(QPalette::Disabled, role, c.soft);
    return palette;
}

bool isDark(QPalette const& palette) { return palette.color(QPalette::Base).lightness() < 128; }

// Fusion draws the outline of a check box darker than the window: on a dark one nobody sees it.
class DeskStyle : public QProxyStyle {
public:
    DeskStyle() : QProxyStyle(QStringLiteral("Fusion")) {}

    void drawPrimitive(PrimitiveElement element, QStyleOption const* option, QPainter* painter, QWidget const* widget) const override {
        QProxyStyle::drawPrimitive(element, option, painter, widget);
        if (element != PE_IndicatorCheckBox && element != PE_IndicatorItemViewItemCheck) return;
        painter->save();
        painter->setPen(QPen(coloursFor(option->palette).soft, 1));
        painter->setBrush(Qt::NoBrush);
        painter->drawRect(option->rect.adjusted(0, 0, -1, -1));
        painter->restore();
    }
};

}  // namespace

void applyAppearance(Appearance appearance) {
    // The palette that the desktop gave, before ours was set.
    static bool const systemIsDark = isDark(QGuiApplication::palette());
    bool const dark = appearance == Appearance::Dark || (appearance == Appearance::AsSystem && systemIsDark);
    QApplication::setStyle(new DeskStyle);  // the application's from here on
    QApplication::setPalette(paletteOf(dark ? kDark : kLight));
}

Colours const& coloursFor(QPalette const& palette) { return isDark(palette) ? kDark : kLight; }

}  // namespace standin::ui

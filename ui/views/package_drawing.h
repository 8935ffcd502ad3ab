// A package with its pins, drawn as a scheme from above: numbers inside, names
// outside, pins that differ in bold with a sign.
#pragma once

#include <QWidget>

#include "ui/models/pins_model.h"

namespace standin::ui {

class PackageDrawing : public QWidget {
    Q_OBJECT

public:
    PackageDrawing(PinsModel const& pins, DocumentSide side, QWidget* parent = nullptr);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    PinsModel const& m_pins;
    DocumentSide m_side;
};

// How many pins stand at the left, bottom, right and top, counted against the
// clock from the top left, for a package of `pins` pins; `name` tells those with
// pins on four sides.
struct PinSides {
    int left = 0, bottom = 0, right = 0, top = 0;
    bool operator==(PinSides const&) const = default;
};
[[nodiscard]] PinSides pinSides(int pins, QString const& name);

}  // namespace standin::ui

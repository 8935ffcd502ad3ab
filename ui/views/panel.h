// A sheet of paper on the ground of the window: what every page of the desk
// lays its parts on. With a hue it carries a bar of that colour at its left.
#pragma once

#include <optional>

#include <QFrame>
#include <QLabel>

#include "ui/models/document_side.h"

namespace standin::ui {

class Panel : public QFrame {
    Q_OBJECT

public:
    explicit Panel(QWidget* parent = nullptr);
    // The bar tells whose panel it is.
    void setSide(DocumentSide side);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    std::optional<DocumentSide> m_side;
};

// A line of text that is cut with "…" where it has no room; the tool tip then
// holds all of it. Plain text always: it may come out of a document.
class CutLabel : public QLabel {
    Q_OBJECT

public:
    explicit CutLabel(QWidget* parent = nullptr);
    // Smaller letters down to `smallest` before anything is cut.
    void setSmallest(QFont const& smallest) { m_smallest = smallest; }
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    [[nodiscard]] QFont fitting() const;

    std::optional<QFont> m_smallest;
};

enum class TextSize { Small, Normal, Large, Huge };
// Sizes relative to the program's font, so that all text grows together.
[[nodiscard]] QFont fontOf(TextSize size, QFont::Weight weight = QFont::Normal);

// Lesser text: takes the soft ink of the palette, also when it changes.
void makeSoft(QWidget& widget);

}  // namespace standin::ui

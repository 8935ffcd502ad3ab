// How the desk looks: one set of colours for light and dark, kept in the
// palette. The reference is slate and the candidate ochre everywhere; severity
// is told by word and shape (severity_mark.h), never by colour.
#pragma once

#include <QColor>
#include <QPalette>
#include <QWidget>

#include "ui/models/document_side.h"

namespace standin::ui {

struct Colours {
    QColor ground;  // of the window
    QColor paper;   // of lists and panels
    QColor ink;     // text
    QColor soft;    // lesser text
    QColor edge;    // frames and rules
    QColor chosen;  // behind the chosen row
    QColor reference, candidate;          // text, bars and frames of a side
    QColor referenceTint, candidateTint;  // behind marked words of a side

    [[nodiscard]] QColor of(DocumentSide side) const { return side == DocumentSide::Reference ? reference : candidate; }
    [[nodiscard]] QColor tintOf(DocumentSide side) const { return side == DocumentSide::Reference ? referenceTint : candidateTint; }
};

enum class Appearance { AsSystem, Light, Dark };

// Sets style and palette of the whole program. Call once before the first window
// and again when the setting changes.
void applyAppearance(Appearance appearance);

// The colours that fit a palette: dark where its base is dark.
[[nodiscard]] Colours const& coloursFor(QPalette const& palette);
[[nodiscard]] inline Colours const& coloursFor(QWidget const& widget) { return coloursFor(widget.palette()); }

}  // namespace standin::ui

// Where a finding stands: both places with their surroundings, one above the
// other, the place framed.
#pragma once

#include <array>
#include <optional>

#include <QImage>
#include <QTimer>
#include <QWidget>

#include "ui/models/session.h"
#include "ui/views/panel.h"

class QLabel;

namespace standin::ui {

// The part of a page around a place, as large as there is room for.
class PageCutting : public QWidget {
    Q_OBJECT

public:
    PageCutting(PageDrawer& drawer, DocumentSide side, QWidget* parent = nullptr);
    ~PageCutting() override;
    // Page 0: nothing. `text` is what was read there, for screen readers and for
    // pages that cannot be drawn.
    void setPlace(int page, model::Rect const& box, QString const& text);
    [[nodiscard]] bool isDrawn() const { return m_wish == m_drawn && !m_image.isNull(); }
    // The place on the widget; empty where nothing is shown.
    [[nodiscard]] QRectF frame() const;

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    void wish();

    PageDrawer& m_drawer;
    DocumentSide m_side;
    int m_page = 0;
    model::Rect m_box;
    QString m_text;
    bool m_failed = false;
    PictureWish m_wish;   // what fits the widget now
    PictureWish m_drawn;  // what the image shows
    model::Rect m_shown;  // that part of the page
    QImage m_image;
    QTimer m_later;
};

class EvidenceView : public QWidget {
    Q_OBJECT

public:
    // Shows the session's current finding; `session` outlives the view.
    explicit EvidenceView(Session& session, QWidget* parent = nullptr);
    [[nodiscard]] PageCutting* cutting(DocumentSide side) const { return m_sides[indexOf(side)].cutting; }

private:
    struct Side {
        Panel* panel = nullptr;
        CutLabel* head = nullptr;
        PageCutting* cutting = nullptr;
    };
    void refresh();

    Session& m_session;
    std::array<Side, 2> m_sides;
};

}  // namespace standin::ui

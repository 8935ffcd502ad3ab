// The pages of one document, one below the other: scrolling, zoom, turning,
// marks over places, and texts that are chosen by dragging.
//
// Pictures come from the PageDrawer; until one is there the page is blank paper,
// or shows the picture of another size stretched.
#pragma once

#include <list>
#include <set>

#include <QAbstractScrollArea>
#include <QImage>
#include <QTimer>

#include "ui/models/page_stack.h"
#include "ui/models/read_places.h"
#include "ui/worker/page_drawer.h"

namespace standin::ui {

// Findings have thin frames, the one that is looked at a thick one; what was found or
// clicked has a dashed frame in ink. Those that change no meaning are many and stand
// line under line: they have a pale bar beside them, which leaves the print alone.
enum class MarkStyle { Finding, Editorial, Current, Pointed };

struct PageMark {
    int page = 0;
    model::Rect box;
    MarkStyle style = MarkStyle::Finding;
};

class PageCanvas : public QAbstractScrollArea {
    Q_OBJECT

public:
    enum class Fit { Width, Page, Free };

    PageCanvas(PageDrawer& drawer, DocumentSide side, QWidget* parent = nullptr);
    ~PageCanvas() override;

    // Blank until the drawer has the pages of the new document.
    void setPlaces(ReadPlaces places);
    [[nodiscard]] ReadPlaces const& places() const { return m_places; }
    void setMarks(std::vector<PageMark> marks);

    void setFit(Fit fit);
    [[nodiscard]] Fit fit() const { return m_fit; }
    // Keeps what stands in the middle.
    void setZoom(double pixelsPerPoint);
    void zoomBy(double factor) { setZoom(m_stack.zoom() * factor); }
    void turn();
    [[nodiscard]] PageStack const& stack() const { return m_stack; }

    // From 1; 0: no pages.
    [[nodiscard]] int currentPage() const;
    void goToPage(int page);
    // Brings a place into view, in the middle where it is not in view already.
    void showPlace(int page, model::Rect const& box);

    void choose(std::vector<std::size_t> places);
    [[nodiscard]] QString chosenText() const { return m_places.joined(m_chosen); }

    // Bytes of the pictures that are kept.
    [[nodiscard]] std::size_t pictureBytes() const;
    // The picture of a page as it would be painted now, sharp, is there.
    [[nodiscard]] bool isSharp(int page) const;
    [[nodiscard]] QRect placeOnViewport(int page, model::Rect const& box) const;

Q_SIGNALS:
    void pageChanged(int page);
    void zoomChanged(double pixelsPerPoint);
    void clicked(int page, standin::model::Point point);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;
    void scrollContentsBy(int dx, int dy) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    struct Kept {
        int page = 0;
        double scale = 0;  // pixels a point
        QImage image;
    };

    void takePages();
    void takePicture(PictureWish const& wish, PicturePointer const& picture);
    void refit();
    void arrangeScrolling();
    void wish();
    void chooseBetween(QPointF from, QPointF to);
    [[nodiscard]] double pictureScale(int page) const;
    [[nodiscard]] Kept const* bestPicture(int page) const;
    [[nodiscard]] std::pair<int, int> visiblePages() const;
    [[nodiscard]] QPointF offset() const;
    void paintPage(QPainter& painter, int page);
    void paintMarks(QPainter& painter, int page);

    PageDrawer& m_drawer;
    DocumentSide m_side;
    PageStack m_stack;
    ReadPlaces m_places;
    std::vector<PageMark> m_marks;
    std::vector<std::size_t> m_chosen;
    std::list<Kept> m_kept;  // looked at last first
    std::set<int> m_failed;  // pages that cannot be drawn
    std::optional<QPointF> m_pressed;  // in the stack
    bool m_dragging = false;
    Fit m_fit = Fit::Width;
    int m_toldPage = 0;
    QTimer m_wish;  // scrolling and resizing come in bursts
};

}  // namespace standin::ui

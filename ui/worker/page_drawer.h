// Draws pages of both documents off the main thread, one thread a document.
//
// Each view tells what it would show now, nearest first; what it no longer wishes
// is dropped before it is drawn.
//
//     connect(&drawer, &PageDrawer::drawn, …);
//     drawer.setPair(pair);
//     drawer.want(view, {{DocumentSide::Reference, 3, box, 1.5}});
#pragma once

#include <memory>
#include <vector>

#include <QObject>
#include <QThreadPool>

#include "model/page_picture.h"
#include "ui/worker/read_pair.h"

namespace standin::ui {

struct PictureWish {
    DocumentSide side = DocumentSide::Reference;
    int page = 0;              // from 1
    model::Rect box;           // points of the page as displayed
    double pixelsPerPoint = 1;
    bool operator==(PictureWish const&) const = default;
};

using PicturePointer = std::shared_ptr<model::Picture const>;

// Lives in one thread (the main one); all signals come in that thread.
class PageDrawer : public QObject {
    Q_OBJECT

public:
    explicit PageDrawer(QObject* parent = nullptr);
    // Waits for the two pictures that may be under way.
    ~PageDrawer() override;

    // Forgets all wishes and opens both documents. Each answers by opened() or failed().
    void setPair(PairPointer pair);

    // The pages' boxes; empty until opened() came.
    [[nodiscard]] std::vector<model::Rect> const& pageBoxes(DocumentSide side) const { return m_boxes[indexOf(side)]; }
    // Why a document has no pictures; empty: it has, or will have.
    [[nodiscard]] std::string const& trouble(DocumentSide side) const { return m_trouble[indexOf(side)]; }

    // Takes the place of what `client` wished before; an empty list gives up all.
    // A view calls it with an empty list when it is hidden or destroyed.
    void want(QObject const* client, std::vector<PictureWish> wishes);
    // Wishes that wait to be drawn, of all clients.
    [[nodiscard]] std::size_t waiting() const;
    // No wish waits, no picture is under way, and all that was drawn has been told.
    [[nodiscard]] bool isIdle() const;

Q_SIGNALS:
    void opened(standin::ui::DocumentSide side);
    void drawn(standin::ui::PictureWish const& wish, standin::ui::PicturePointer const& picture);
    // A page that cannot be drawn (page > 0), or a whole document (page 0).
    void failed(standin::ui::DocumentSide side, int page, QString const& why);

private:
    struct Work;
    void start(DocumentSide side);
    void run(std::shared_ptr<Work> const& work, DocumentSide side);
    void open(std::shared_ptr<Work> const& work, DocumentSide side);
    void draw(std::shared_ptr<Work> const& work, PictureWish const& wish);
    // Runs `tell` in the drawer's thread while `work` is still the work at hand.
    template <typename Tell>
    void post(std::shared_ptr<Work> const& work, Tell tell);

    QThreadPool m_pool;
    std::shared_ptr<Work> m_work;  // of the pair at hand
    std::array<std::vector<model::Rect>, 2> m_boxes;
    std::array<std::string, 2> m_trouble;
};

}  // namespace standin::ui

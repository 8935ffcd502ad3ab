// A job a document runs while there is something to draw, and takes one wish at
// a time: what is on the list then is what is visible then. A new pair gets a new
// Work; a job of the old one finds `stopped` and ends.
//
// Tested by tests/ui/worker/page_drawer_test.cpp.
#include "ui/worker/page_drawer.h"

#include <algorithm>
#include <exception>
#include <mutex>
#include <optional>

#include <QMetaObject>

#include "extractors/poppler/page_picture.h"

namespace standin::ui {

namespace {

constexpr int kThreads = 2;  // one a document

}  // namespace

struct PageDrawer::Work {
    struct Wished {
        QObject const* client = nullptr;
        std::vector<PictureWish> wishes;
    };
    struct Document {
        // Only the job of this document touches it, and there is one at most.
        std::unique_ptr<poppler::PagePicture> pictures;
        // Below: under the mutex.
        bool running = false;
        bool openTried = false;
        std::optional<PictureWish> underWay;
    };

    PairPointer pair;
    std::mutex mutex;
    bool stopped = false;
    std::vector<Wished> wished;  // who asked last stands first
    std::array<Document, 2> documents;
    std::size_t posted = 0;  // told by the pool, not yet heard

    // The first wish for a document, taken off the list. Under the mutex.
    std::optional<PictureWish> take(DocumentSide side) {
        for (auto& entry : wished) {
            auto const found = std::find_if(entry.wishes.begin(), entry.wishes.end(), [side](auto const& wish) { return wish.side == side; });
            if (found == entry.wishes.end()) continue;
            auto const wish = *found;
            entry.wishes.erase(found);
            return wish;
        }
        return std::nullopt;
    }
};

PageDrawer::PageDrawer(QObject* parent) : QObject(parent) { m_pool.setMaxThreadCount(kThreads); }

PageDrawer::~PageDrawer() {
    setPair(nullptr);
    m_pool.waitForDone();
}

void PageDrawer::setPair(PairPointer pair) {
    if (m_work) {
        std::lock_guard const lock(m_work->mutex);
        m_work->stopped = true;
        m_work->wished.clear();
    }
    m_work.reset();
    for (auto& boxes : m_boxes) boxes.clear();
    for (auto& trouble : m_trouble) trouble.clear();
    if (!pair) return;
    m_work = std::make_shared<Work>();
    m_work->pair = std::move(pair);
    start(DocumentSide::Reference);
    start(DocumentSide::Candidate);
}

void PageDrawer::want(QObject const* client, std::vector<PictureWish> wishes) {
    if (!m_work) return;
    {
        std::lock_guard const lock(m_work->mutex);
        auto& wished = m_work->wished;
        std::erase_if(wished, [client](auto const& entry) { return entry.client == client; });
        for (auto const& document : m_work->documents) {
            if (document.underWay) std::erase(wishes, *document.underWay);
        }
        if (wishes.empty()) return;
        wished.insert(wished.begin(), Work::Wished{client, std::move(wishes)});
    }
    start(DocumentSide::Reference);
    start(DocumentSide::Candidate);
}

std::size_t PageDrawer::waiting() const {
    if (!m_work) return 0;
    std::lock_guard const lock(m_work->mutex);
    std::size_t count = 0;
    for (auto const& entry : m_work->wished) count += entry.wishes.size();
    return count;
}

bool PageDrawer::isIdle() const {
    if (waiting() > 0) return false;
    if (!m_work) return true;
    std::lock_guard const lock(m_work->mutex);
    if (m_work->posted > 0) return false;
    return std::none_of(m_work->documents.begin(), m_work->documents.end(), [](auto const& document) { return document.running; });
}

void PageDrawer::start(DocumentSide side) {
    {
        std::lock_guard const lock(m_work->mutex);
        auto& document = m_work->documents[indexOf(side)];
        if (document.running) return;
        document.running = true;
    }
    m_pool.start([this, work = m_work, side] { run(work, side); });
}

template <typename Tell>
void PageDrawer::post(std::shared_ptr<Work> const& work, Tell tell) {
    {
        std::lock_guard const lock(work->mutex);
        ++work->posted;
    }
    QMetaObject::invokeMethod(
        this, [this, work, tell = std::move(tell)] {
            {
                std::lock_guard const lock(work->mutex);
                --work->posted;
            }
            if (work == m_work) tell();
        }, Qt::QueuedConnection);
}

// In the pool from here on.
void PageDrawer::run(std::shared_ptr<Work> const& work, DocumentSide side) {
    auto& document = work->documents[indexOf(side)];
    while (true) {
        std::optional<PictureWish> wish;
        bool opens = false;
        {
            std::lock_guard const lock(work->mutex);
            opens = !document.openTried;
            document.openTried = true;
            if (!opens && !work->stopped) wish = work->take(side);
            document.underWay = wish;
            if (work->stopped || (!opens && !wish)) {
                document.running = false;
                return;
            }
        }
        try {
            if (opens) open(work, side);
            else draw(work, *wish);
        } catch (std::exception const& exception) {  // out of memory: the page stays white
            auto const why = QString::fromUtf8(exception.what());
            post(work, [this, side, page = wish ? wish->page : 0, why] { Q_EMIT failed(side, page, why); });
        }
    }
}

void PageDrawer::open(std::shared_ptr<Work> const& work, DocumentSide side) {
    auto const& bytes = side == DocumentSide::Reference ? work->pair->referenceBytes : work->pair->candidateBytes;
    auto const fail = [&](std::string why) {
        post(work, [this, side, why = std::move(why)] {
            m_trouble[indexOf(side)] = why;
            Q_EMIT failed(side, 0, QString::fromStdString(why));
        });
    };
    if (bytes.empty()) {
        fail(tr("This document was opened from what was read of it before; open its PDF to see the pages.").toStdString());
        return;
    }
    auto pictures = poppler::PagePicture::open(bytes, work->pair->request.password);
    if (!pictures) {
        fail(pictures.error().message);
        return;
    }
    std::vector<model::Rect> boxes;
    for (int page = 1; page <= (*pictures)->pageCount(); ++page) boxes.push_back((*pictures)->pageBox(page).value_or(model::Rect{}));
    work->documents[indexOf(side)].pictures = std::move(*pictures);
    post(work, [this, side, boxes = std::move(boxes)] {
        m_boxes[indexOf(side)] = boxes;
        Q_EMIT opened(side);
    });
}

void PageDrawer::draw(std::shared_ptr<Work> const& work, PictureWish const& wish) {
    auto const& pictures = work->documents[indexOf(wish.side)].pictures;
    if (!pictures) return;  // opened() was answered by failed()
    auto picture = pictures->render(wish.page, wish.box, wish.pixelsPerPoint);
    if (!picture) {
        post(work, [this, wish, why = QString::fromStdString(picture.error().message)] { Q_EMIT failed(wish.side, wish.page, why); });
        return;
    }
    post(work, [this, wish, shared = std::make_shared<model::Picture const>(std::move(*picture))] { Q_EMIT drawn(wish, shared); });
}

}  // namespace standin::ui

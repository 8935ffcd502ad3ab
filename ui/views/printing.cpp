// Tested by tests/ui/views/table_pages_test.cpp (to a file).
#include "ui/views/printing.h"

#include <algorithm>

#include <QCoreApplication>
#include <QImage>
#include <QPainter>
#include <QPrinter>

#include "extractors/poppler/page_picture.h"
#include "ui/models/qt_text.h"

namespace standin::ui {

namespace {

constexpr double kPointsAnInch = 72;
constexpr int kMostDotsAnInch = 300;

}  // namespace

model::Result<void> printPages(std::string pdf, QPrinter& printer) {
    auto pages = poppler::PagePicture::open(std::move(pdf), std::nullopt);
    if (!pages) return tl::unexpected(pages.error());
    QPainter painter;
    if (!painter.begin(&printer)) {
        auto const message = QCoreApplication::translate("printing", "cannot be printed: the printer did not start; check it and try again");
        return tl::unexpected(model::Error{model::ErrorKind::Unreadable, fromQt(message), {}, 0});
    }
    int const first = printer.fromPage() > 0 ? printer.fromPage() : 1;
    int const last = printer.toPage() > 0 ? std::min(printer.toPage(), (*pages)->pageCount()) : (*pages)->pageCount();
    double const scale = std::min(printer.resolution(), kMostDotsAnInch) / kPointsAnInch;
    for (int page = first; page <= last; ++page) {
        auto const box = (*pages)->pageBox(page);
        if (!box) return tl::unexpected(box.error());
        auto const picture = (*pages)->render(page, *box, scale);
        if (!picture) return tl::unexpected(picture.error());
        if (page > first) printer.newPage();
        QImage const image(picture->rgb.data(), picture->width, picture->height, picture->width * 3, QImage::Format_RGB888);
        QRectF target(QPointF(), QSizeF(image.size()).scaled(painter.viewport().size(), Qt::KeepAspectRatio));
        target.moveCenter(QRectF(painter.viewport()).center());
        painter.drawImage(target, image);
    }
    painter.end();
    return {};
}

}  // namespace standin::ui

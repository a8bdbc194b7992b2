#include "app/print/print_report.h"

#include <algorithm>
#include <cmath>

#include <QPainter>
#include <QPrinter>

#include "app/print/layout/layout.h"
#include "app/print/paint.h"

namespace headcap::app::print {

namespace {

constexpr double kPictureDpi = 300;

QSizeF paperOf(const QPrinter& printer) {
    return printer.pageLayout().fullRectPoints().size();
}

// Page numbers from 0, in the order they are to be printed.
std::vector<std::size_t> pagesToPrint(const QPrinter& printer, std::size_t count) {
    const auto clamped = [count](int page) {
        return static_cast<std::size_t>(std::clamp(page, 1, static_cast<int>(count)));
    };
    const bool all = printer.printRange() != QPrinter::PageRange || printer.fromPage() == 0;
    const std::size_t first = all ? 1 : clamped(printer.fromPage());
    const std::size_t last = all ? count : std::max(first, clamped(printer.toPage()));
    std::vector<std::size_t> pages;
    for (std::size_t page = first; page <= last; ++page) {
        pages.push_back(page - 1);
    }
    if (printer.pageOrder() == QPrinter::LastPageFirst) {
        std::reverse(pages.begin(), pages.end());
    }
    return pages;
}

} // namespace

Sheet sheetFor(const QPrinter& printer) {
    const auto distance = [paper = paperOf(printer)](Sheet sheet) {
        const QSizeF size = pageSetup(sheet).size();
        return std::hypot(size.width() - paper.width(), size.height() - paper.height());
    };
    return distance(Sheet::letter) < distance(Sheet::a4) ? Sheet::letter : Sheet::a4;
}

PrintOutcome printReport(const core::Document& document, const PhotoLookup& photos,
                         QPrinter& printer, const PdfProgress& progress) {
    printer.setFullPage(true);
    const Pages pages = layOut(document, pageSetup(sheetFor(printer)));
    PrintOutcome outcome;
    const auto paintPicture = [&](QPainter& painter, const Picture& picture) {
        const QString path = photos ? photos(picture.photograph) : QString();
        const auto image = readPhoto(path, pixelsOf(picture, kPictureDpi));
        if (image) {
            paintPhoto(painter, areaOf(picture, image->size()), *image);
        } else {
            outcome.absent.push_back({picture.photograph, picture.figure, image.error()});
            paintAbsence(painter, picture, sentence(image.error()));
        }
    };

    QPainter painter;
    if (!painter.begin(&printer)) {
        outcome.isComplete = false;
        return outcome;
    }
    const QSizeF paper = paperOf(printer);
    const double fit =
        std::min({1.0, paper.width() / pages.size.width(), paper.height() / pages.size.height()});
    const double scale = fit * printer.resolution() / 72.0;
    painter.scale(scale, scale);
    const auto wanted = pagesToPrint(printer, pages.pages.size());
    for (const std::size_t page : wanted) {
        if (outcome.pages > 0 && !printer.newPage()) {
            outcome.isComplete = false;
            return outcome;
        }
        paintPage(painter, pages.pages[page], paintPicture);
        ++outcome.pages;
        if (progress && !progress(outcome.pages, static_cast<int>(wanted.size()))) {
            outcome.isComplete = false;
            outcome.wasStopped = true;
            printer.abort();
            return outcome;
        }
    }
    return outcome;
}

} // namespace headcap::app::print

#include <algorithm>
#include <iterator>
#include <utility>

#include "app/print/layout/blocks.h"
#include "app/print/layout/page_setup.h"
#include "app/print/layout/row_slabs.h"
#include "app/print/layout/types.h"

namespace headcap::app::print {

namespace {

constexpr double kColumnHeight = mm(100); // an upright picture in half a page
constexpr double kLeastShare = 0.6;       // of its size: no picture is set smaller to stand level
constexpr double kFullHeight = mm(190);
constexpr double kAboveCaption = 4;
constexpr double kRightFigure = kBlockWidth - kFigureWidth;

const RowStyle kCaptionRow{kCaption.leading, kAboveCaption, 0, 10, 2};

SetText captionOf(const core::Figure& figure, double width) {
    const QString number = QStringLiteral("Figure %1").arg(figure.number);
    return setText({core::Run{number.toStdString(), core::Run::Style::bold},
                    core::Run{"\u2002" + figure.caption}},
                   kCaption, width);
}

struct Place {
    const core::Figure* figure = nullptr;
    double left = 0;
    double width = 0;
    QSizeF size{};
};

// Two side by side are as high as the lower of them, so that they can be compared.
void setLevel(std::vector<Place>& places) {
    double lowest = kFullHeight;
    double highest = 0;
    for (const Place& place : places) {
        lowest = std::min(lowest, place.size.height());
        highest = std::max(highest, place.size.height());
    }
    if (places.size() > 1 && lowest >= highest * kLeastShare) {
        for (Place& place : places) {
            place.size *= lowest / place.size.height();
        }
    }
}

// Pictures hang from one line, each with its caption below it. A caption of very many lines goes
// below the whole row, where it may be parted.
std::vector<Slab> figureRow(Flow& flow, const std::vector<Place>& places) {
    Slab pictures;
    pictures.clearsSide = true;
    std::vector<Cell> captions;
    bool isLong = false;
    double lowest = 0;
    for (const Place& place : places) {
        const QSizeF size = place.size;
        pictures.marks.emplace_back(
            Picture{{{place.left, 0}, size}, place.figure->photograph, place.figure->number});
        pictures.height = std::max(pictures.height, size.height());
        SetText caption = captionOf(*place.figure, place.width);
        noteSigns(flow, caption.signsWithoutFace);
        isLong = isLong || caption.lines.size() > kCaptionRow.wholeUpTo;
        lowest = std::max(lowest, size.height() + kAboveCaption + caption.height());
        captions.push_back({place.left, std::move(caption)});
    }
    std::vector<Slab> slabs{std::move(pictures)};
    if (isLong) {
        slabs.front().keepWithNext = true;
        std::vector<Slab> below = rowSlabs(captions, kCaptionRow);
        std::move(below.begin(), below.end(), std::back_inserter(slabs));
        return slabs;
    }
    slabs.front().height = lowest;
    for (std::size_t i = 0; i < places.size(); ++i) {
        const double top = places[i].size.height() + kAboveCaption;
        for (const TextLine& line : captions[i].text.lines) {
            slabs.front().marks.push_back(moved(line, {captions[i].left, top}));
        }
    }
    return slabs;
}

bool isColumn(const core::Figure& figure) {
    return figure.width == core::FigureWidth::column;
}

} // namespace

QSizeF printedSize(const core::Figure& figure, double share) {
    const bool column = isColumn(figure);
    const QSizeF room =
        QSizeF(column ? kFigureWidth : kBlockWidth, column ? kColumnHeight : kFullHeight) * share;
    if (figure.widthPx <= 0 || figure.heightPx <= 0) {
        return {room.width(), room.width() * 2 / 3};
    }
    return QSizeF(static_cast<double>(figure.widthPx), static_cast<double>(figure.heightPx))
        .scaled(room, Qt::KeepAspectRatio);
}

// A block of two rows shows one thing: its rows are not parted.
void addBlock(Flow& flow, const core::Figures& figures, double gap) {
    const auto& all = figures.figures;
    const auto placed = [&](const core::Figure& figure, double left, double width) {
        return Place{&figure, left, width, printedSize(figure, flow.figureShare)};
    };
    std::vector<std::vector<Slab>> rows;
    for (std::size_t i = 0; i < all.size(); ++i) {
        std::vector<Place> places;
        if (!isColumn(all[i])) {
            places.push_back(placed(all[i], 0, kTextWidth));
        } else {
            places.push_back(placed(all[i], 0, kFigureWidth));
            if (i + 1 < all.size() && isColumn(all[i + 1])) {
                ++i;
                places.push_back(placed(all[i], kRightFigure, kFigureWidth));
            }
        }
        setLevel(places);
        rows.push_back(figureRow(flow, places));
    }
    for (std::size_t i = 0; i < rows.size(); ++i) {
        if (rows.size() == 2 && i == 0) {
            rows[i].back().keepWithNext = true;
        }
        append(flow, std::move(rows[i]), gap);
        gap = kLine;
    }
}

} // namespace headcap::app::print

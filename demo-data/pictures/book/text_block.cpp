#include "demo-data/pictures/book/text_block.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace headcap::demo {
namespace {

// One leaf's edge after another, each a little darker or lighter.
void drawEdges(Surface& surface, const QRectF& box, bool outwardsLeft, Seed seed) {
    const Noise wear{mixed(seed, 3), 9, 0.4};
    const auto [first, last] = surface.rowsOf(box.top(), box.bottom());
    for (int y = first; y < last; ++y) {
        const RowPlace place = surface.placeOf(y);
        const auto row = surface.colours(y);
        const auto relief = surface.relief(y);
        for (std::size_t i = 0; i < row.size(); ++i) {
            const double x = place.x + static_cast<double>(i) * place.step;
            if (x < box.left() || x > box.right()) {
                continue;
            }
            const double out = outwardsLeft ? box.right() - x : x - box.left();
            const double leaf = (out + 0.1 * static_cast<double>(wear.at(3, place.y))) / 0.26;
            const auto edge = static_cast<float>(leaf - std::floor(leaf));
            const float tone = chanceAt(seed, static_cast<int>(std::floor(leaf)), 2);
            const float bright = (0.84F + 0.12F * tone) * (edge < 0.3F ? 0.80F : 1.0F) *
                                 (1 - 0.25F * static_cast<float>(out / std::max(1.0, box.width())));
            row[i] = qRgb(static_cast<int>(bright * 236), static_cast<int>(bright * 220),
                          static_cast<int>(bright * 186));
            relief[i] = 0;
        }
    }
}

} // namespace

Surface drawOpenBook(const OpenBook& book, const BindingView& binding, double scale) {
    Surface surface{QRectF{QPointF{}, book.size()}, scale};
    coverWith(surface, skinOf(binding.binding), binding.seed);
    const double top = book.square;
    const double tall = book.page.height();
    const double fold = book.square + book.left() + book.page.width();
    drawEdges(surface, {book.square, top, fold - book.square, tall}, true, mixed(binding.seed, 7));
    drawEdges(surface, {fold, top, book.page.width() + book.right(), tall}, false,
              mixed(binding.seed, 8));
    surface.light();
    return surface;
}

void curveTowardsFold(Surface& page, bool foldAtRight) {
    const double width = page.window().width();
    std::vector<float> factors(static_cast<std::size_t>(page.width())); // alike in every row
    const RowPlace first = page.placeOf(0);
    for (std::size_t i = 0; i < factors.size(); ++i) {
        const double x = first.x + static_cast<double>(i) * first.step;
        const double off = foldAtRight ? width - x : x;
        const double dark =
            0.66 * std::exp(-off / 3.2) + (foldAtRight ? 0.24 : 0.13) * std::exp(-off / 17);
        const double bright =
            (foldAtRight ? 0.02 : 0.045) * std::exp(-std::pow((off - 30) / 18, 2));
        factors[i] = static_cast<float>(1 - dark + bright);
    }
    for (int y = 0; y < page.height(); ++y) {
        const auto row = page.colours(y);
        for (std::size_t i = 0; i < row.size(); ++i) {
            const float factor = factors[i];
            row[i] = toned(row[i], {factor, factor * 0.995F, factor * 0.985F}, 1);
        }
    }
}

} // namespace headcap::demo

// The front board.
#include <algorithm>
#include <cmath>
#include <vector>

#include "demo-data/pictures/book/binding.h"
#include "demo-data/pictures/book/leaf.h"
#include "demo-data/pictures/book/line_shape.h"
#include "demo-data/pictures/matter/ornament.h"
#include "demo-data/pictures/matter/type.h"

namespace headcap::demo {
namespace {

constexpr double kRounding = 2.2; // of the corners

QImage drawnMask(const Surface& surface, const std::function<void(QPainter&)>& draw) {
    QImage mask = surface.mask();
    surface.paintOn(mask, [&](QPainter& painter) {
        painter.setPen(Qt::white);
        painter.setBrush(Qt::NoBrush);
        draw(painter);
    });
    return mask;
}

// Marbled sides leave the leather at the spine and the corners.
void addSides(Surface& surface, const BindingView& view) {
    if (!view.binding.contains("marbled")) {
        return;
    }
    Surface paper{surface.window(), surface.scale()};
    coverWithMarble(paper, surface.window(), view.binding.at("marbled"), view.seed);
    const double spine = view.width() * 0.19;
    const double corner = view.binding.value("corners", true) ? view.width() * 0.21 : 0;
    for (int y = 0; y < surface.height(); ++y) {
        const RowPlace place = surface.placeOf(y);
        const auto row = surface.colours(y);
        const auto relief = surface.relief(y);
        const auto from = paper.colours(y);
        const double toEdge = std::min(place.y, view.height() - place.y);
        for (std::size_t i = 0; i < row.size(); ++i) {
            const double x = place.x + static_cast<double>(i) * place.step;
            const double in = std::min(x - spine, (view.width() - x) + toEdge - corner);
            if (in > 0) {
                row[i] = from[i];
                relief[i] = 0.02F;
                if (in < 0.5) {
                    row[i] = toned(row[i], {0.5F, 0.45F, 0.4F}, static_cast<float>(0.5 - in));
                }
            } else {
                relief[i] += 0.10F;
            }
        }
    }
}

void addTooling(Surface& surface, const BindingView& view) {
    const double w = view.width();
    const double h = view.height();
    if (view.binding.value("fillets", false)) {
        gild(surface,
             drawnMask(surface,
                       [&](QPainter& p) {
                           for (const double in : {5.0, 6.4}) {
                               p.setPen(QPen(Qt::white, in < 6 ? 0.55 : 0.3));
                               p.drawRect(QRectF(in, in, w - 2 * in, h - 2 * in));
                           }
                           p.setPen(Qt::white);
                           const double side = w * 0.10;
                           for (const QPointF& at :
                                {QPointF{9, 9}, QPointF{w - 9 - side, 9}, QPointF{9, h - 9 - side},
                                 QPointF{w - 9 - side, h - 9 - side}}) {
                               drawFlowers(p, QRectF(at, QSizeF{side, side}));
                           }
                       }),
             mixed(view.seed, 60), 0.80F);
    }
    if (view.binding.value("blind", false)) {
        pressBlind(surface,
                   drawnMask(surface,
                             [&](QPainter& p) {
                                 for (const double in : {w * 0.07, w * 0.085, w * 0.24}) {
                                     p.setPen(QPen(Qt::white, 0.5));
                                     p.drawRect(QRectF(in, in, w - 2 * in, h - 2 * in));
                                 }
                                 p.setPen(Qt::white);
                                 const double band = w * 0.10;
                                 drawArabesque(p, {w * 0.26, w * 0.11, w * 0.48, band}, view.seed);
                                 drawArabesque(p, {w * 0.26, h - w * 0.11 - band, w * 0.48, band},
                                               view.seed + 1);
                             }),
                   0.10F);
    }
    if (const auto stamp = view.binding.find("stamp"); stamp != view.binding.end()) {
        gild(surface,
             drawnMask(surface,
                       [&](QPainter& p) {
                           const double side = w * 0.34;
                           if (*stamp == "rose") {
                               drawCompassRose(p, {w / 2, h * 0.46}, side / 2);
                           } else if (*stamp == "ship") {
                               drawShip(p, {w / 2 - side / 2, h * 0.46 - side / 2, side, side});
                           } else {
                               drawArabesque(p,
                                             {w / 2 - side * 0.7, h * 0.46 - side * 0.2, side * 1.4,
                                              side * 0.4},
                                             4);
                           }
                       }),
             mixed(view.seed, 61), 0.85F);
    }
}

void addTitle(Surface& surface, const BindingView& view) {
    const auto title = view.binding.find("cover_title");
    if (title == view.binding.end()) {
        return;
    }
    const QImage mask = drawnMask(surface, [&](QPainter& p) {
        double y = view.height() * view.binding.value("cover_title_at", 0.22);
        for (const Json& line : *title) {
            const Face face{view.width() * 0.075, false, false, 0.35};
            const QString text = QString::fromStdString(line.get<std::string>());
            p.fillPath(setLine(text, face, (view.width() - widthOf(text, face)) / 2, y, 3),
                       Qt::white);
            y += face.size * 1.3;
        }
    });
    if (view.binding.value("cover_title_inked", false)) {
        pressBlind(surface, mask, 0.0F);
        pressBlind(surface, mask, 0.01F);
        return;
    }
    gild(surface, mask, mixed(view.seed, 62), 0.9F);
}

// Edges and corners lose their surface first, and then show the board.
void addWear(Surface& surface, const BindingView& view) {
    const bool rubbed = view.has("rubbed");
    const bool corners = view.has("corners");
    const bool toned_corners = view.wasDone("corners");
    const bool cloth = view.binding.value("cover", std::string{}) == "cloth";
    std::vector<float> rough(static_cast<std::size_t>(surface.width()));
    for (int y = 0; y < surface.height(); ++y) {
        const RowPlace place = surface.placeOf(y);
        std::ranges::fill(rough, 0.0F);
        addWearing(rough, place, mixed(view.seed, 70));
        const auto row = surface.colours(y);
        const auto relief = surface.relief(y);
        const double toEdge = std::min(place.y, view.height() - place.y);
        for (std::size_t i = 0; i < row.size(); ++i) {
            const double x = place.x + static_cast<double>(i) * place.step;
            const double fore = view.width() - x;
            const auto edge = static_cast<float>(std::min(toEdge, fore));
            const auto corner = static_cast<float>(std::hypot(toEdge, fore));
            float bare =
                rubbed ? 1.25F * std::exp(-edge / 1.3F) + 0.14F + 0.45F * rough[i] - 0.34F : -1;
            if (rubbed && bare > 0) {
                const Tone raw = cloth ? Tone{0.62F, 0.62F, 0.50F} : Tone{0.66F, 0.50F, 0.34F};
                row[i] = blended(row[i], raw, std::min(0.75F, bare));
                relief[i] -= 0.02F * std::min(1.0F, bare);
            }
            const float lost = 1 - corner / (7.5F + 3.0F * rough[i]);
            if (lost > 0 && corners) {
                const float share = std::min(1.0F, lost * 5);
                row[i] = blended(
                    row[i], {0.56F + 0.06F * rough[i], 0.49F + 0.05F * rough[i], 0.40F}, share);
                relief[i] -= 0.25F * share;
            } else if (lost > 0 && toned_corners) {
                const float share = std::min(1.0F, lost * 5);
                row[i] = blended(row[i], {0.36F, 0.23F, 0.15F}, share * 0.85F);
                relief[i] -= 0.03F * share;
            }
        }
    }
}

void addScratches(Surface& surface, const BindingView& view) {
    if (!view.has("scratched")) {
        return;
    }
    Dice dice{mixed(view.seed, 80)};
    const QImage mask = drawnMask(surface, [&](QPainter& p) {
        for (int i = 0; i < 26; ++i) {
            const QPointF at{dice.roll() * view.width(), dice.roll() * view.height()};
            const double angle = dice.between(-0.7, 0.9);
            const double length = dice.between(3, 26);
            p.setPen(QPen(Qt::white, dice.between(0.08, 0.3)));
            p.drawPolyline(brokenLine(at, at + QPointF{std::cos(angle), std::sin(angle)} * length,
                                      0.03, static_cast<Seed>(i)));
        }
    });
    for (int y = 0; y < surface.height(); ++y) {
        const auto row = surface.colours(y);
        const auto relief = surface.relief(y);
        const uchar* in = mask.constScanLine(y);
        for (std::size_t x = 0; x < row.size(); ++x) {
            if (in[x] != 0) {
                const float share = static_cast<float>(in[x]) / 255.0F;
                row[x] = blended(row[x], {0.70F, 0.56F, 0.40F}, 0.45F * share);
                relief[x] -= 0.06F * share;
            }
        }
    }
}

void addStains(Surface& surface, const BindingView& view) {
    if (!view.has("stained")) {
        return;
    }
    const Noise shape{mixed(view.seed, 85), 16};
    const QPointF middle{view.width() * 0.63, view.height() * 0.68};
    for (int y = 0; y < surface.height(); ++y) {
        const RowPlace place = surface.placeOf(y);
        const auto row = surface.colours(y);
        for (std::size_t i = 0; i < row.size(); ++i) {
            const double x = place.x + static_cast<double>(i) * place.step;
            const double off =
                std::hypot(x - middle.x(), place.y - middle.y()) / (view.width() * 0.2) +
                0.4 * static_cast<double>(shape.at(x, place.y));
            const auto in = static_cast<float>(0.30 / (1 + std::exp((off - 1) * 16)) +
                                               0.28 * std::exp(-std::pow((off - 1) / 0.05, 2)));
            row[i] = toned(row[i], {0.45F, 0.36F, 0.30F}, in);
        }
    }
}

// The groove of the joint at the left, and a joint that is split.
void addJoint(Surface& surface, const BindingView& view) {
    const bool split = view.has("joint");
    const bool mended = view.wasDone("joint") || view.wasDone("reback");
    const QPolygonF crack = brokenLine({1.6, 0}, {1.6, view.height()}, 0.015, mixed(view.seed, 90));
    for (int y = 0; y < surface.height(); ++y) {
        const RowPlace place = surface.placeOf(y);
        const auto row = surface.colours(y);
        const auto relief = surface.relief(y);
        const double at = nearnessTo(crack, {1.6, place.y}).distance;
        for (std::size_t i = 0; i < row.size(); ++i) {
            const double x = place.x + static_cast<double>(i) * place.step;
            relief[i] -= static_cast<float>(1.2 * std::exp(-std::pow((x - 3.2) / 2.2, 2)));
            if (mended && x < 7.5 + 0.5 * std::sin(place.y * 0.4)) {
                row[i] = blended(row[i], {0.30F, 0.185F, 0.12F}, 0.80F);
            }
            if (split) {
                const double off = std::abs(x - 1.6 + at);
                row[i] = toned(row[i], {0.12F, 0.10F, 0.08F},
                               static_cast<float>(0.9 * std::exp(-off * off / 0.10)));
                if (off > 0.4 && off < 1.3) {
                    row[i] = blended(row[i], {0.68F, 0.53F, 0.37F}, 0.45F);
                }
            }
        }
    }
}

void roundCorners(Surface& surface, const BindingView& view) {
    const Noise rough{mixed(view.seed, 95), 2.5};
    const double pixel = 1 / surface.scale();
    const bool blunt = view.has("corners");
    for (int y = 0; y < surface.height(); ++y) {
        const RowPlace place = surface.placeOf(y);
        const auto row = surface.colours(y);
        const auto relief = surface.relief(y);
        const double toEdge = std::min(place.y, view.height() - place.y);
        for (std::size_t i = 0; i < row.size(); ++i) {
            const double x = place.x + static_cast<double>(i) * place.step;
            const double fore = view.width() - x;
            const double r =
                kRounding * (blunt ? 1.5 + 0.6 * static_cast<double>(rough.at(x, place.y)) : 1);
            double out = -std::min({toEdge, fore, x + 4});
            if (toEdge < r && fore < r) {
                out = std::hypot(r - toEdge, r - fore) - r;
            }
            out += 0.14 * static_cast<double>(rough.at(x, place.y)) + 0.12;
            // The edge turns down and away from the lamp.
            relief[i] +=
                static_cast<float>(std::min(0.0, (out > -0.9 ? -(out + 0.9) * 0.35 : 0.0)));
            row[i] = cutOut(row[i], static_cast<float>(std::clamp(out / pixel + 0.5, 0.0, 1.0)));
        }
    }
}

} // namespace

Surface drawBoard(const BindingView& view, double pixelsPerMm) {
    Surface surface{QRectF{0, 0, view.width(), view.height()}, pixelsPerMm};
    coverWith(surface, skinOf(view.binding), view.seed);
    addSides(surface, view);
    addTooling(surface, view);
    addTitle(surface, view);
    addStains(surface, view);
    addScratches(surface, view);
    addWear(surface, view);
    addJoint(surface, view);
    roundCorners(surface, view);
    surface.light();
    return surface;
}

} // namespace headcap::demo

// Tears, losses, wormholes, creases; and the tissue, fills and guards that mend them.
#include <algorithm>
#include <cmath>
#include <vector>

#include "demo-data/pictures/book/harm.h"
#include "demo-data/pictures/book/leaf.h"
#include "demo-data/pictures/book/line_shape.h"
#include "demo-data/pictures/matter/type.h"

namespace headcap::demo {
namespace {

// Calls `touch` for each pixel within `reach` of a line.
template <class Touch>
void along(Surface& surface, const QPolygonF& line, double reach, Touch touch) {
    const QRectF box = line.boundingRect().adjusted(-reach, -reach, reach, reach);
    const auto [first, last] = surface.rowsOf(box.top(), box.bottom());
    const double left = surface.window().left();
    const int from =
        std::clamp(static_cast<int>((box.left() - left) * surface.scale()), 0, surface.width());
    const int to = std::clamp(static_cast<int>((box.right() - left) * surface.scale()) + 1, 0,
                              surface.width());
    for (int y = first; y < last; ++y) {
        const RowPlace place = surface.placeOf(y);
        const auto row = surface.colours(y);
        const auto relief = surface.relief(y);
        for (int x = from; x < to; ++x) {
            const QPointF at{place.x + x * place.step, place.y};
            const Nearness near = nearnessTo(line, at);
            if (std::abs(near.distance) <= reach) {
                touch(row[static_cast<std::size_t>(x)], relief[static_cast<std::size_t>(x)], near,
                      at);
            }
        }
    }
}

void showTear(Surface& surface, const QPolygonF& line, double gap, Seed seed) {
    const Noise fibres{mixed(seed, 2), 0.25, 0.9};
    const double pixel = 1 / surface.scale();
    along(surface, line, 9,
          [&](QRgb& pixelColour, float& relief, const Nearness& near, const QPointF& at) {
              const double open = gap * std::pow(1 - near.along, 1.6) + 0.04;
              const double off = std::abs(near.distance) - open;
              const auto fibre = static_cast<double>(fibres.at(at.x(), at.y()));
              relief += static_cast<float>((near.distance > 0 ? 0.16 : -0.05) *
                                           std::exp(-std::abs(near.distance) / 2.6) *
                                           (1 - near.along * 0.6));
              if (off < 0) {
                  pixelColour =
                      cutOut(pixelColour,
                             static_cast<float>(std::clamp(-off / pixel + 0.3, 0.0, 1.0)) * 0.97F);
              } else if (near.distance > 0 && off < 0.55 + 0.35 * fibre) {
                  pixelColour = blended(pixelColour, {0.97F, 0.94F, 0.87F}, 0.55F);
              } else if (near.distance < 0) {
                  pixelColour = toned(pixelColour, {0.40F, 0.34F, 0.28F},
                                      static_cast<float>(0.55 * std::exp(-off / 0.55)));
              }
          });
}

// A strip of tissue whose edges were torn, over the closed tear.
void showMend(Surface& surface, const QPolygonF& line, Seed seed) {
    const Noise edge{mixed(seed, 3), 0.7};
    const Noise fibres{mixed(seed, 4), 0.2, 1.6};
    along(surface, line, 6,
          [&](QRgb& pixelColour, float& relief, const Nearness& near, const QPointF& at) {
              const double off = std::abs(near.distance);
              const double half = 3.4 + 0.9 * static_cast<double>(edge.at(at.x(), at.y()));
              const double cover = std::clamp((half - off) / 0.9, 0.0, 1.0);
              const double fibre = 0.5 + 0.5 * static_cast<double>(fibres.at(at.x(), at.y()));
              pixelColour = blended(pixelColour, {0.95F, 0.92F, 0.84F},
                                    static_cast<float>(cover * (0.15 + 0.17 * fibre)));
              relief += static_cast<float>(cover * 0.02);
              pixelColour = toned(pixelColour, {0.45F, 0.36F, 0.27F},
                                  static_cast<float>(0.36 * std::exp(-off * off / 0.012)));
          });
}

QImage lossMask(const Surface& surface, const Harm& harm, double grow) {
    QPolygonF corners;
    for (const Json& corner : harm.what.at("points")) {
        corners << pointOf(corner);
    }
    const QPolygonF ring = brokenRing(corners, 0.16, harm.seed);
    QImage mask = surface.mask();
    surface.paintOn(mask, [&](QPainter& painter) {
        painter.setBrush(Qt::white);
        painter.setPen(grow > 0 ? QPen(Qt::white, grow * 2) : QPen(Qt::NoPen));
        painter.drawPolygon(ring);
    });
    return mask;
}

// Is the place on the leaf at all? A loss at an edge reaches beyond it.
bool isOnLeaf(const QPointF& at, const QSizeF& leaf) {
    return at.x() > 0.5 && at.y() > 0.5 && at.x() < leaf.width() - 0.5 &&
           at.y() < leaf.height() - 0.5;
}

void showLoss(Surface& surface, const Harm& harm) {
    const QImage hole = lossMask(surface, harm, 0);
    const QImage rim = lossMask(surface, harm, 0.5);
    const QImage wide = lossMask(surface, harm, 1.6);
    for (int y = 0; y < surface.height(); ++y) {
        const auto row = surface.colours(y);
        const auto relief = surface.relief(y);
        for (std::size_t x = 0; x < row.size(); ++x) {
            const auto share = [&](const QImage& mask) {
                return static_cast<float>(mask.constScanLine(y)[x]) / 255.0F;
            };
            const float gone = share(hole);
            row[x] = toned(row[x], {0.80F, 0.68F, 0.52F}, 0.35F * (share(wide) - gone));
            row[x] = blended(row[x], {0.95F, 0.91F, 0.83F}, 0.45F * (share(rim) - gone));
            row[x] = cutOut(row[x], gone);
            relief[x] += 0.06F * (share(wide) - gone);
        }
    }
}

// New paper, a little lighter than the leaf, with its bevel lying over the edge.
void showFill(Surface& surface, const Harm& harm) {
    const QImage hole = lossMask(surface, harm, 0);
    const QImage bevel = lossMask(surface, harm, 1.3);
    const Tone fill =
        toneOf(QColor(QString::fromStdString(harm.what.value("fill", std::string{"#ece3cc"}))));
    const Noise cloud{mixed(harm.seed, 7), 3};
    const Noise fibre{mixed(harm.seed, 8), 0.5, 0.15};
    std::vector<float> bright(static_cast<std::size_t>(surface.width()));
    for (int y = 0; y < surface.height(); ++y) {
        const RowPlace place = surface.placeOf(y);
        std::ranges::fill(bright, 1.0F);
        cloud.addTo(bright, place, 0.018F);
        fibre.addTo(bright, place, 0.02F);
        const auto row = surface.colours(y);
        const auto relief = surface.relief(y);
        for (std::size_t x = 0; x < row.size(); ++x) {
            const float in = static_cast<float>(hole.constScanLine(y)[x]) / 255.0F;
            const float over = static_cast<float>(bevel.constScanLine(y)[x]) / 255.0F;
            const QPointF at{place.x + static_cast<double>(x) * place.step, place.y};
            if (over <= 0 || !isOnLeaf(at, harm.leaf)) {
                continue;
            }
            const Tone here{fill.red * bright[x], fill.green * bright[x], fill.blue * bright[x]};
            row[x] = blended(row[x], here, 0.38F * (over - in));
            if (in > 0) {
                const auto part = [&](float value) {
                    return static_cast<int>(std::min(1.0F, value) * 255.0F * in);
                };
                const QRgb kept = cutOut(row[x], in);
                row[x] = qRgba(qRed(kept) + part(here.red), qGreen(kept) + part(here.green),
                               qBlue(kept) + part(here.blue),
                               std::min(255, qAlpha(kept) + qRound(255 * in)));
            }
            relief[x] += 0.035F * over;
        }
    }
}

void fillWith(Surface& surface, const QImage& mask, const Tone& tone, float share, float relief) {
    for (int y = 0; y < surface.height(); ++y) {
        const auto row = surface.colours(y);
        const auto heights = surface.relief(y);
        const uchar* in = mask.constScanLine(y);
        for (std::size_t x = 0; x < row.size(); ++x) {
            if (in[x] != 0) {
                const float cover = static_cast<float>(in[x]) / 255.0F;
                row[x] = blended(row[x], tone, share * cover);
                heights[x] += relief * cover;
            }
        }
    }
}

} // namespace

void addTear(Surface& surface, const Harm& harm) {
    const QPolygonF line =
        brokenLine(pointOf(harm.what.at("from")), pointOf(harm.what.at("to")), 0.13, harm.seed);
    if (harm.isTreated && harm.what.value("mended", true)) {
        showMend(surface, line, harm.seed);
    } else {
        showTear(surface, line, harm.what.value("gap", 0.9), harm.seed);
    }
}

void addLoss(Surface& surface, const Harm& harm) {
    if (harm.isTreated && harm.what.value("mended", true)) {
        showFill(surface, harm);
    } else {
        showLoss(surface, harm);
    }
}

void addWorm(Surface& surface, const Harm& harm) {
    Dice dice{harm.seed};
    const QPointF middle = pointOf(harm.what.at("at"));
    QPainterPath holes;
    for (int i = 0; i < harm.what.value("count", 5); ++i) {
        const QPointF at = middle + QPointF{dice.between(-16, 16), dice.between(-22, 22)};
        holes.addEllipse(at, dice.between(0.4, 0.65), dice.between(0.4, 0.7));
        if (dice.roll() < 0.3) {
            QPainterPath track(at);
            track.cubicTo(at + QPointF{dice.between(-2, 2), 1},
                          at + QPointF{dice.between(-3, 3), 2.5},
                          at + QPointF{dice.between(-3, 3), dice.between(2.5, 6.5)});
            QPainterPathStroker gnawed;
            gnawed.setWidth(0.85);
            gnawed.setCapStyle(Qt::RoundCap);
            holes.addPath(gnawed.createStroke(track));
        }
    }
    holes.setFillRule(Qt::WindingFill);
    QImage mask = surface.mask();
    surface.paintOn(mask, [&](QPainter& p) { p.fillPath(holes, Qt::white); });
    QImage rim = surface.mask();
    surface.paintOn(rim, [&](QPainter& p) {
        p.setBrush(Qt::white);
        p.setPen(QPen(Qt::white, 0.7));
        p.drawPath(holes);
    });
    fillWith(surface, rim, {0.55F, 0.43F, 0.30F}, 0.35F, 0);
    for (int y = 0; y < surface.height(); ++y) {
        const auto row = surface.colours(y);
        for (std::size_t x = 0; x < row.size(); ++x) {
            row[x] = cutOut(row[x], static_cast<float>(mask.constScanLine(y)[x]) / 255.0F);
        }
    }
}

void addCrease(Surface& surface, const Harm& harm) {
    const QPolygonF line =
        brokenLine(pointOf(harm.what.at("from")), pointOf(harm.what.at("to")), 0.02, harm.seed);
    const float left = harm.isTreated ? 0.35F : 1.0F;
    along(surface, line, 7,
          [&](QRgb& pixelColour, float& relief, const Nearness& near, const QPointF&) {
              relief += left * static_cast<float>(0.34 * std::exp(-std::abs(near.distance) / 1.6));
              pixelColour = toned(pixelColour, {0.62F, 0.52F, 0.40F},
                                  left * static_cast<float>(0.34 * std::exp(-near.distance *
                                                                            near.distance / 0.05)));
          });
}

void addGuard(Surface& surface, const Harm& harm) {
    const double wide = harm.what.value("width", 9.0);
    const bool right = harm.what.value("right", false);
    const QRectF strip{right ? harm.leaf.width() - wide : 0.0, 2, wide, harm.leaf.height() - 4};
    QImage mask = surface.mask();
    surface.paintOn(mask, [&](QPainter& p) { p.fillRect(strip, Qt::white); });
    fillWith(surface, mask, {0.95F, 0.93F, 0.87F}, 0.42F, 0.04F);
}

// Pressure-sensitive tape gone brown; a stain where it has been taken off.
void addTape(Surface& surface, const Harm& harm) {
    const QPointF at = pointOf(harm.what.at("at"));
    const QPointF size = pointOf(harm.what.at("size"));
    QImage mask = surface.mask();
    surface.paintOn(mask, [&](QPainter& p) {
        p.translate(at);
        p.rotate(harm.what.value("turn", 0.0));
        p.fillRect(QRectF(0, 0, size.x(), size.y()), Qt::white);
    });
    const float left = harm.isTreated ? harm.what.value("left", 0.3F) : 1.0F;
    for (int y = 0; y < surface.height(); ++y) {
        const auto row = surface.colours(y);
        const auto relief = surface.relief(y);
        for (std::size_t x = 0; x < row.size(); ++x) {
            const float in = static_cast<float>(mask.constScanLine(y)[x]) / 255.0F;
            if (in > 0) {
                row[x] = toned(row[x], {0.86F, 0.66F, 0.36F}, 0.72F * in * left);
                relief[x] += harm.isTreated ? 0 : 0.12F * in;
            }
        }
    }
}

void addPlateMark(Surface& surface, const Harm& harm) {
    const double margin = harm.what.value("margin", 8.0);
    const QRectF box = QRectF(QPointF{}, harm.leaf).adjusted(margin, margin, -margin, -margin);
    for (int y = 0; y < surface.height(); ++y) {
        const RowPlace place = surface.placeOf(y);
        const auto relief = surface.relief(y);
        for (std::size_t x = 0; x < relief.size(); ++x) {
            const double px = place.x + static_cast<double>(x) * place.step;
            const double in = std::min(
                {px - box.left(), box.right() - px, place.y - box.top(), box.bottom() - place.y});
            relief[x] -= static_cast<float>(0.14 / (1 + std::exp(-in / 0.22)));
        }
    }
}

// The words that say a leaf is a facsimile, printed in its margin.
void addStatement(Surface& surface, const Harm& harm) {
    const Face face{harm.what.value("size", 2.6), true, false, 0};
    const QString words = QString::fromStdString(harm.what.at("text").get<std::string>());
    const QPointF at = pointOf(harm.what.at("at"));
    QImage mask = surface.mask();
    surface.paintOn(mask, [&](QPainter& p) {
        p.fillPath(setLine(words, face, at.x(), at.y(), harm.seed), Qt::white);
    });
    for (int y = 0; y < surface.height(); ++y) {
        const auto row = surface.colours(y);
        for (std::size_t x = 0; x < row.size(); ++x) {
            row[x] = toned(row[x], {0.16F, 0.15F, 0.15F},
                           static_cast<float>(mask.constScanLine(y)[x]) / 255.0F * 0.9F);
        }
    }
}

} // namespace headcap::demo

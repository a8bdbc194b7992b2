// The spine, upright before the camera: a round back with raised bands, its labels, its caps and
// joints; whole, torn or lacking, and rebacked with the old leather laid back.
#include <algorithm>
#include <cmath>
#include <vector>

#include "demo-data/pictures/book/binding.h"
#include "demo-data/pictures/book/line_shape.h"
#include "demo-data/pictures/matter/ornament.h"
#include "demo-data/pictures/matter/type.h"

namespace headcap::demo {
namespace {

constexpr double kBandHeight = 1.5;

int bandsOf(const BindingView& view) {
    return view.binding.value("bands", 5);
}

double bandAt(const BindingView& view, int band) {
    return view.height() * (0.03 + 0.92 * (band + 1) / (bandsOf(view) + 1.0));
}

QImage drawnMask(const Surface& surface, const std::function<void(QPainter&)>& draw) {
    QImage mask = surface.mask();
    surface.paintOn(mask, [&](QPainter& painter) {
        painter.setPen(Qt::white);
        painter.setBrush(Qt::NoBrush);
        draw(painter);
    });
    return mask;
}

struct Panel {
    double top;
    double bottom;
};

Panel panelOf(const BindingView& view, int panel) {
    const double top = panel == 0 ? 0 : bandAt(view, panel - 1) + 2.2;
    const double bottom = panel >= bandsOf(view) ? view.height() : bandAt(view, panel) - 2.2;
    return {top, bottom};
}

void addBands(Surface& surface, const BindingView& view) {
    for (int y = 0; y < surface.height(); ++y) {
        const RowPlace place = surface.placeOf(y);
        float rise = 0;
        for (int band = 0; band < bandsOf(view); ++band) {
            const double off = (place.y - bandAt(view, band)) / 1.9;
            rise += static_cast<float>(kBandHeight * std::exp(-off * off * off * off));
        }
        for (float& relief : surface.relief(y)) {
            relief += rise;
        }
    }
}

void addLabels(Surface& surface, const BindingView& view) {
    for (const Json& label : view.binding.value("labels", Json::array())) {
        const Panel panel = panelOf(view, label.value("panel", 1));
        const double in = kBesideSpine + 1.3;
        const QRectF box{in, panel.top + 0.4, view.thickness() - 2.6,
                         panel.bottom - panel.top - 0.8};
        const Tone tone =
            toneOf(QColor(QString::fromStdString(label.value("colour", std::string{"#6d1f1b"}))));
        const bool direct = !label.contains("colour");
        const Noise uneven{mixed(view.seed, 41), 3};
        const auto [first, last] = surface.rowsOf(box.top(), box.bottom());
        for (int y = first; y < last && !direct; ++y) {
            const RowPlace place = surface.placeOf(y);
            const auto row = surface.colours(y);
            for (std::size_t i = 0; i < row.size(); ++i) {
                const double x = place.x + static_cast<double>(i) * place.step;
                if (x > box.left() && x < box.right()) {
                    const float bright = 1 + 0.08F * uneven.at(x, place.y);
                    row[i] = blended(row[i],
                                     {tone.red * bright, tone.green * bright, tone.blue * bright},
                                     0.95F);
                }
            }
        }
        const QImage letters = drawnMask(surface, [&](QPainter& p) {
            p.setPen(QPen(Qt::white, 0.35));
            p.drawLine(box.topLeft() + QPointF{0, 1}, box.topRight() + QPointF{0, 1});
            p.drawLine(box.bottomLeft() - QPointF{0, 1}, box.bottomRight() - QPointF{0, 1});
            const Json& lines = label.at("lines");
            const double pitch = (box.height() - 2) / (static_cast<double>(lines.size()) + 0.4);
            double y = box.top() + 1 + pitch * 0.95;
            for (const Json& line : lines) {
                const QString text = QString::fromStdString(line.get<std::string>());
                Face face{std::min(pitch * 0.86, 5.2), false, false, 0.15};
                const double most = box.width() * 0.88;
                face.size *= std::min(1.0, most / widthOf(text, face));
                p.fillPath(setLine(text, face, box.center().x() - widthOf(text, face) / 2, y, 2),
                           Qt::white);
                y += pitch;
            }
        });
        gild(surface, letters, mixed(view.seed, 42), 0.92F);
    }
}

void addGold(Surface& surface, const BindingView& view) {
    if (!view.binding.value("gilt_spine", false)) {
        return;
    }
    gild(surface,
         drawnMask(surface,
                   [&](QPainter& p) {
                       for (int panel = 0; panel <= bandsOf(view); ++panel) {
                           const Panel at = panelOf(view, panel);
                           const QRectF box{kBesideSpine + 1.5, at.top + 0.8, view.thickness() - 3,
                                            at.bottom - at.top - 1.6};
                           p.setPen(QPen(Qt::white, 0.3));
                           p.drawLine(box.topLeft(), box.topRight());
                           p.drawLine(box.bottomLeft(), box.bottomRight());
                           const bool labelled = std::ranges::any_of(
                               view.binding.value("labels", Json::array()),
                               [&](const Json& label) { return label.value("panel", 1) == panel; });
                           if (!labelled && box.height() > 8) {
                               const double side = std::min(box.width(), box.height()) * 0.62;
                               p.setPen(Qt::white);
                               drawFlowers(p, {box.center().x() - side / 2,
                                               box.center().y() - side / 2, side, side});
                           }
                       }
                   }),
         mixed(view.seed, 43), 0.72F);
}

void addWear(Surface& surface, const BindingView& view) {
    const bool rotted = view.has("red rot");
    const bool rubbed = view.has("rubbed");
    std::vector<float> rough(static_cast<std::size_t>(surface.width()));
    for (int y = 0; y < surface.height(); ++y) {
        const RowPlace place = surface.placeOf(y);
        std::ranges::fill(rough, 0.0F);
        addWearing(rough, place, mixed(view.seed, 51));
        const auto row = surface.colours(y);
        const auto relief = surface.relief(y);
        float onBand = 0;
        for (int band = 0; band < bandsOf(view); ++band) {
            onBand = std::max(onBand, static_cast<float>(std::exp(
                                          -std::pow((place.y - bandAt(view, band)) / 1.4, 2))));
        }
        for (std::size_t i = 0; i < row.size(); ++i) {
            const float bare = (rubbed ? 0.35F * onBand - 0.28F + 0.55F * rough[i] : -1.0F);
            if (bare > 0) {
                row[i] = blended(row[i], {0.64F, 0.47F, 0.31F}, std::min(0.7F, bare * 1.3F));
            }
            if (rotted && rough[i] > 0.18F) {
                const float share = std::min(0.8F, (rough[i] - 0.18F) * 1.6F);
                row[i] = blended(row[i], {0.53F, 0.31F, 0.20F}, 0.75F * share);
                relief[i] -= 0.12F * share;
            }
        }
    }
}

// What is under the leather: linings, the backs of the gatherings, sewing.
void showUnder(Surface& surface, const QImage& mask, const BindingView& view) {
    const Noise dirt{mixed(view.seed, 61), 5};
    const Noise fine{mixed(view.seed, 62), 0.5, 2.5};
    for (int y = 0; y < surface.height(); ++y) {
        const RowPlace place = surface.placeOf(y);
        const auto row = surface.colours(y);
        const auto relief = surface.relief(y);
        const uchar* in = mask.constScanLine(y);
        for (std::size_t i = 0; i < row.size(); ++i) {
            if (in[i] == 0) {
                continue;
            }
            const double x = place.x + static_cast<double>(i) * place.step;
            const float share = static_cast<float>(in[i]) / 255.0F;
            const double fold = x / 2.1 - std::floor(x / 2.1);
            const auto back = static_cast<float>(std::sin(fold * 3.14159265));
            const float bright =
                0.52F + 0.22F * back + 0.10F * dirt.at(x, place.y) + 0.06F * fine.at(x, place.y);
            row[i] = blended(row[i], {bright * 1.04F, bright * 0.92F, bright * 0.72F}, share);
            relief[i] = relief[i] * (1 - share) + share * (0.35F * back - 0.7F);
        }
    }
}

void addLosses(Surface& surface, const BindingView& view) {
    const double left = kBesideSpine;
    const double right = kBesideSpine + view.thickness();
    QPolygonF gone;
    QImage mask = surface.mask();
    const auto cut = [&](const QPolygonF& corners, Seed salt) {
        surface.paintOn(mask, [&](QPainter& p) {
            p.setPen(Qt::NoPen);
            p.setBrush(Qt::white);
            p.drawPolygon(brokenRing(corners, 0.14, mixed(view.seed, salt)));
        });
    };
    bool any = false;
    if (view.has("headcap")) {
        cut({{left - 1, -6},
             {right + 1, -6},
             {right - 1, view.height() * 0.055},
             {(left + right) / 2, view.height() * 0.085},
             {left + 2, view.height() * 0.03}},
            71);
        any = true;
    }
    if (view.has("tailcap")) {
        cut({{left - 1, view.height() + 6},
             {right + 1, view.height() + 6},
             {right - 3, view.height() * 0.955},
             {left + 3, view.height() * 0.925}},
            72);
        any = true;
    }
    if (view.has("spine lacking")) {
        cut({{left, view.height() * 0.38},
             {right, view.height() * 0.33},
             {right, view.height() * 1.03},
             {left, view.height() * 1.03}},
            73);
        any = true;
    }
    if (any) {
        showUnder(surface, mask, view);
    }
}

// New leather over the whole back; the old laid down on it again, as much as was left.
void addReback(Surface& surface, const BindingView& view) {
    if (!view.wasDone("reback")) {
        return;
    }
    const double left = kBesideSpine + 2.2;
    const double right = kBesideSpine + view.thickness() - 2.2;
    const bool lacked = std::ranges::any_of(view.binding.at("harm"),
                                            [](const Json& one) { return one == "spine lacking"; });
    QImage old = surface.mask();
    surface.paintOn(old, [&](QPainter& p) {
        p.setPen(Qt::NoPen);
        p.setBrush(Qt::white);
        const double foot = lacked ? 0.36 : 0.93;
        QPolygonF piece;
        constexpr int kSteps = 16;
        for (int i = 0; i <= kSteps; ++i) {
            piece << QPointF{left, view.height() * (0.05 + (foot - 0.05) * i / kSteps)};
        }
        for (int i = kSteps; i >= 0; --i) {
            piece << QPointF{right, view.height() * (0.06 + (foot - 0.035) * i / kSteps)};
        }
        p.drawPolygon(brokenRing(piece, 0.07, mixed(view.seed, 81)));
    });
    Surface fresh{surface.window(), surface.scale()};
    Skin skin = skinOf(view.binding);
    skin.tone = toneOf(
        QColor(QString::fromStdString(view.binding.value("new_leather", std::string{"#4a2e1e"}))));
    skin.mottle = 0.035F;
    skin.sprinkled = false;
    coverWith(fresh, skin, mixed(view.seed, 82));
    for (int y = 0; y < surface.height(); ++y) {
        const auto row = surface.colours(y);
        const auto relief = surface.relief(y);
        const auto newRow = fresh.colours(y);
        const auto newRelief = fresh.relief(y);
        const RowPlace place = surface.placeOf(y);
        const uchar* keep = old.constScanLine(y);
        for (std::size_t i = 0; i < row.size(); ++i) {
            const double x = place.x + static_cast<double>(i) * place.step;
            const bool beyond = x < 3.5 + std::sin(place.y * 0.5) * 0.3 ||
                                x > surface.window().right() - 3.5 - std::sin(place.y * 0.43) * 0.3;
            if (beyond) {
                continue;
            }
            const float share = 1 - static_cast<float>(keep[i]) / 255.0F;
            row[i] = blended(row[i],
                             {static_cast<float>(qRed(newRow[i])) / 255.0F,
                              static_cast<float>(qGreen(newRow[i])) / 255.0F,
                              static_cast<float>(qBlue(newRow[i])) / 255.0F},
                             share);
            relief[i] = relief[i] * (1 - share) + newRelief[i] * share + 0.14F * (1 - share);
        }
    }
}

void addJoints(Surface& surface, const BindingView& view) {
    const bool split = view.has("joint");
    for (const double at : {kBesideSpine - 1.2, kBesideSpine + view.thickness() + 1.2}) {
        const bool leftOne = at < kBesideSpine;
        const QPolygonF crack = brokenLine({at, -2}, {at, view.height() * (leftOne ? 1.02 : 0.4)},
                                           0.012, mixed(view.seed, leftOne ? 91 : 92));
        for (int y = 0; y < surface.height(); ++y) {
            const RowPlace place = surface.placeOf(y);
            const auto row = surface.colours(y);
            const auto relief = surface.relief(y);
            for (std::size_t i = 0; i < row.size(); ++i) {
                const double x = place.x + static_cast<double>(i) * place.step;
                if (std::abs(x - at) > 4) {
                    continue;
                }
                relief[i] -= static_cast<float>(0.9 * std::exp(-std::pow((x - at) / 1.3, 2)));
                if (split) {
                    const double off = std::abs(nearnessTo(crack, {x, place.y}).distance);
                    row[i] = toned(row[i], {0.08F, 0.07F, 0.06F},
                                   static_cast<float>(std::exp(-off * off / 0.09)));
                    if (off > 0.35 && off < 0.9) {
                        row[i] = blended(row[i], {0.66F, 0.50F, 0.34F}, 0.4F);
                    }
                }
            }
        }
    }
}

// The back is round: light slides off to either side, the boards fall away, and the caps turn in
// over head and tail.
void addRoundness(Surface& surface, const BindingView& view) {
    const double middle = surface.window().width() / 2;
    for (int y = 0; y < surface.height(); ++y) {
        const RowPlace place = surface.placeOf(y);
        const auto row = surface.colours(y);
        const double toEnd = std::min(place.y, view.height() - place.y);
        for (std::size_t i = 0; i < row.size(); ++i) {
            const double x = place.x + static_cast<double>(i) * place.step;
            const double u = (x - middle) / (view.thickness() / 2);
            double bright = (u < 0 ? 0.62 : 0.40) - 0.12 * (std::abs(u) - 1);
            double in = toEnd;
            if (std::abs(u) < 1) {
                const double facing = std::cos(u * 1.15 + 0.38);
                bright = 0.40 + 0.68 * std::max(0.0, facing) +
                         0.10 * std::exp(-std::pow((u + 0.34) / 0.16, 2));
                in -= 0.7 + 1.5 * u * u;
            }
            bright *= 1 - 0.5 * std::exp(-std::max(0.0, in) / 1.1);
            const auto factor = static_cast<float>(bright);
            row[i] = toned(row[i], {factor, factor, factor}, 1);
            row[i] = cutOut(row[i],
                            static_cast<float>(std::clamp(0.5 - in * surface.scale(), 0.0, 1.0)));
        }
    }
}

} // namespace

Surface drawSpine(const BindingView& view, double pixelsPerMm) {
    Surface surface{QRectF{0, 0, view.thickness() + 2 * kBesideSpine, view.height()}, pixelsPerMm};
    coverWith(surface, skinOf(view.binding), mixed(view.seed, 5));
    addLabels(surface, view);
    addGold(surface, view);
    addWear(surface, view);
    addReback(surface, view);
    addLosses(surface, view);
    addBands(surface, view);
    addJoints(surface, view);
    surface.light(0.75F);
    addRoundness(surface, view);
    return surface;
}

} // namespace headcap::demo

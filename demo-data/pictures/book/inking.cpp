// Ink on paper: masks of each ink, their edges roughened as ink squeezes out under a press, with
// the bite of the type, show-through from the other side, and the burn of iron-gall ink.
#include <algorithm>
#include <vector>

#include "demo-data/pictures/book/leaf.h"
#include "demo-data/pictures/matter/matter.h"

namespace headcap::demo {
namespace {

struct Inking {
    Ink ink;
    Tone tone;
    float strength;
    float bite;   // millimetres that the type pressed in
    double rough; // millimetres that its edge wanders
};

std::vector<Inking> inkingsOf(const Json& matter) {
    std::vector<Inking> inkings;
    if (matter.contains("map")) {
        inkings.push_back({Ink::black, {0.17F, 0.15F, 0.14F}, 0.86F, 0, 0.012});
    }
    if (matter.contains("title")) {
        inkings.push_back({Ink::red, {0.66F, 0.17F, 0.12F}, 0.88F, 0.02F, 0.05});
    }
    if (matter.contains("title") || matter.contains("prose") || matter.contains("music")) {
        inkings.push_back({Ink::black, {0.13F, 0.115F, 0.10F}, 0.93F, 0.02F, 0.045});
    }
    if (matter.contains("accounts")) {
        inkings.push_back({Ink::red, {0.74F, 0.42F, 0.38F}, 0.55F, 0, 0.02});
        inkings.push_back({Ink::ironGall, {0.30F, 0.20F, 0.13F}, 0.9F, 0, 0.02});
    }
    return inkings;
}

QImage maskOf(const Surface& surface, const LeafView& view, const Json& matter, Ink ink,
              bool mirrored) {
    QImage mask = surface.mask();
    const QSizeF size = leafSize(view.leaf);
    surface.paintOn(mask, [&](QPainter& painter) {
        if (mirrored) {
            painter.translate(size.width(), 0);
            painter.scale(-1, 1);
        }
        painter.setPen(Qt::white);
        drawMatter(painter, matter, size, ink, view.seed);
    });
    return mask;
}

// A mean over a square, by sums along rows and columns.
void soften(QImage& mask, int radius) {
    if (radius < 1) {
        return;
    }
    const int width = mask.width();
    const int height = mask.height();
    const auto span = static_cast<unsigned>(2 * radius + 1);
    std::vector<uchar> line(static_cast<std::size_t>(std::max(width, height)));
    for (int y = 0; y < height; ++y) {
        uchar* row = mask.scanLine(y);
        unsigned sum = static_cast<unsigned>(radius) * row[0];
        for (int x = 0; x <= radius; ++x) {
            sum += row[std::min(x, width - 1)];
        }
        for (int x = 0; x < width; ++x) {
            line[static_cast<std::size_t>(x)] = static_cast<uchar>(sum / span);
            sum += row[std::min(x + radius + 1, width - 1)];
            sum -= row[std::max(x - radius, 0)];
        }
        std::copy_n(line.begin(), width, row);
    }
    std::vector<unsigned> sums(static_cast<std::size_t>(width), 0);
    const QImage before = mask;
    for (int y = -radius; y < height; ++y) {
        const uchar* in = before.constScanLine(std::min(y + radius, height - 1));
        const uchar* out = before.constScanLine(std::clamp(y - radius - 1, 0, height - 1));
        const bool full = y > -radius;
        uchar* row = y >= 0 ? mask.scanLine(y) : nullptr;
        for (int x = 0; x < width; ++x) {
            auto& sum = sums[static_cast<std::size_t>(x)];
            if (!full) {
                sum = span * in[x];
            } else {
                sum = sum + in[x] - out[x];
            }
            if (row != nullptr) {
                row[x] = static_cast<uchar>(std::min(255U, sum / span));
            }
        }
    }
}

void press(Surface& surface, const QImage& mask, const Inking& inking, Seed seed) {
    const auto columns = static_cast<std::size_t>(surface.width());
    std::vector<float> aside(columns);
    std::vector<float> down(columns);
    std::vector<float> body(columns);
    const auto reach = static_cast<float>(inking.rough * surface.scale());
    const Noise wanderX{mixed(seed, 31), 0.14};
    const Noise wanderY{mixed(seed, 32), 0.14};
    const Noise thin{mixed(seed, 33), 0.22};
    const Noise uneven{mixed(seed, 34), 21};
    for (int y = 0; y < surface.height(); ++y) {
        const RowPlace place = surface.placeOf(y);
        std::ranges::fill(aside, 0.0F);
        std::ranges::fill(down, 0.0F);
        std::ranges::fill(body, inking.strength);
        wanderX.addTo(aside, place, reach);
        wanderY.addTo(down, place, reach);
        thin.addTo(body, place, 0.10F);
        uneven.addTo(body, place, 0.07F);
        const auto row = surface.colours(y);
        const auto relief = surface.relief(y);
        for (std::size_t x = 0; x < columns; ++x) {
            const int fromX =
                std::clamp(qRound(static_cast<float>(x) + aside[x]), 0, surface.width() - 1);
            const int fromY =
                std::clamp(qRound(static_cast<float>(y) + down[x]), 0, surface.height() - 1);
            const uchar ink = mask.constScanLine(fromY)[fromX];
            if (ink != 0) {
                const float share = static_cast<float>(ink) / 255.0F;
                row[x] = toned(row[x], inking.tone, share * std::min(1.0F, body[x]));
                relief[x] -= inking.bite * share;
            }
        }
    }
}

void tint(Surface& surface, const QImage& mask, const Tone& tone, float strength) {
    for (int y = 0; y < surface.height(); ++y) {
        const uchar* in = mask.constScanLine(y);
        const auto row = surface.colours(y);
        for (std::size_t x = 0; x < row.size(); ++x) {
            if (in[x] != 0) {
                row[x] = toned(row[x], tone, strength * static_cast<float>(in[x]) / 255.0F);
            }
        }
    }
}

void layWash(Surface& surface, const LeafView& view, const Json& matter) {
    QImage wash(surface.image().size(), QImage::Format_RGB32);
    wash.fill(Qt::white);
    surface.paintOn(wash, [&](QPainter& painter) {
        drawMatter(painter, matter, leafSize(view.leaf), Ink::wash, view.seed);
    });
    std::vector<float> body(static_cast<std::size_t>(surface.width()));
    const Noise pool{mixed(view.seed, 35), 3.5};
    for (int y = 0; y < surface.height(); ++y) {
        std::ranges::fill(body, 0.62F);
        pool.addTo(body, surface.placeOf(y), 0.22F);
        const auto* in = reinterpret_cast<const QRgb*>(wash.constScanLine(y));
        const auto row = surface.colours(y);
        for (std::size_t x = 0; x < row.size(); ++x) {
            if (in[x] != 0xffffffffU) {
                row[x] = toned(row[x],
                               {static_cast<float>(qRed(in[x])) / 255.0F,
                                static_cast<float>(qGreen(in[x])) / 255.0F,
                                static_cast<float>(qBlue(in[x])) / 255.0F},
                               body[x]);
            }
        }
    }
}

} // namespace

void printMatter(Surface& surface, const LeafView& view) {
    const Json matter = view.leaf.value("matter", Json::object());
    if (const auto other = view.leaf.find("through"); other != view.leaf.end()) {
        for (const Inking& inking : inkingsOf(*other)) {
            if (inking.ink != Ink::red) {
                QImage mask = maskOf(surface, view, *other, inking.ink, true);
                soften(mask, static_cast<int>(0.18 * surface.scale()));
                const float burn = other->value("strength", 0.10F);
                tint(surface, mask, {0.45F, 0.36F, 0.28F}, burn);
            }
        }
    }
    if (matter.contains("map")) {
        layWash(surface, view, matter);
    }
    for (const Inking& inking : inkingsOf(matter)) {
        const QImage mask = maskOf(surface, view, matter, inking.ink, false);
        if (inking.ink == Ink::ironGall) {
            QImage halo = mask;
            soften(halo, static_cast<int>(0.55 * surface.scale()));
            soften(halo, static_cast<int>(0.45 * surface.scale()));
            tint(surface, halo, {0.70F, 0.50F, 0.30F}, matter.value("burn", 0.9F));
        }
        press(surface, mask, inking, mixed(view.seed, static_cast<Seed>(inking.ink)));
    }
}

} // namespace headcap::demo

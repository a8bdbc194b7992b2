// Foxing, tide lines, stains, mould, the marks of thumbs.
#include <algorithm>
#include <cmath>
#include <vector>

#include "demo-data/pictures/book/harm.h"
#include "demo-data/pictures/book/leaf.h"

namespace headcap::demo {
namespace {

struct Spot {
    QPointF at;
    double radius;
    float strength;
};

// A round spot, uneven, darker in its middle.
void addSpot(Surface& surface, const Spot& spot, const Tone& tone, const Noise& uneven,
             bool darkRim) {
    const double reach = spot.radius * 2.4;
    const auto [first, last] = surface.rowsOf(spot.at.y() - reach, spot.at.y() + reach);
    const double scale = surface.scale();
    const int left =
        std::max(0, static_cast<int>((spot.at.x() - reach - surface.window().left()) * scale));
    const int right =
        std::min(surface.width(),
                 static_cast<int>((spot.at.x() + reach - surface.window().left()) * scale) + 1);
    for (int y = first; y < last; ++y) {
        const RowPlace place = surface.placeOf(y);
        const auto row = surface.colours(y);
        for (int x = left; x < right; ++x) {
            const double px = place.x + x * place.step;
            const double off = std::hypot(px - spot.at.x(), place.y - spot.at.y()) / spot.radius *
                               (1 + 0.35 * static_cast<double>(uneven.at(px, place.y)));
            double share = std::exp(-off * off * 1.3);
            if (darkRim) {
                share = 0.55 / (1 + std::exp((off - 1) * 14)) +
                        0.5 * std::exp(-std::pow((off - 0.97) / 0.07, 2));
            }
            row[static_cast<std::size_t>(x)] = toned(row[static_cast<std::size_t>(x)], tone,
                                                     spot.strength * static_cast<float>(share));
        }
    }
}

double fadedBy(const Harm& harm) {
    return harm.isTreated ? harm.what.value("left", 1.0) : 1.0;
}

} // namespace

void addFoxing(Surface& surface, const Harm& harm) {
    Dice dice{harm.seed};
    const double amount = harm.what.value("amount", 0.5);
    const int count = static_cast<int>(amount * harm.leaf.width() * harm.leaf.height() / 260);
    const Noise uneven{mixed(harm.seed, 1), 0.8};
    const Noise where{mixed(harm.seed, 2), 42};
    const auto faded = static_cast<float>(fadedBy(harm));
    for (int i = 0; i < count; ++i) {
        const QPointF at{dice.roll() * harm.leaf.width(), dice.roll() * harm.leaf.height()};
        const double size = 0.25 + 1.7 * std::pow(dice.roll(), 3.2);
        const auto strength = static_cast<float>(dice.between(0.12, 0.5)) * faded;
        if (where.at(at.x(), at.y()) + 0.45F > static_cast<float>(dice.roll())) {
            addSpot(surface, {at, size, strength}, {0.74F, 0.50F, 0.28F}, uneven, false);
        }
    }
}

void addTideLine(Surface& surface, const Harm& harm) {
    const std::string edge = harm.what.value("edge", std::string{"foot"});
    const double depth = harm.what.value("depth", 50.0);
    const auto strength = harm.what.value("strength", 1.0F) * static_cast<float>(fadedBy(harm));
    const auto columns = static_cast<std::size_t>(surface.width());
    std::vector<float> front(columns);
    const Noise wide{mixed(harm.seed, 1), 33};
    const Noise lobes{mixed(harm.seed, 2), 9};
    const Noise fine{mixed(harm.seed, 3), 2.2};
    for (int y = 0; y < surface.height(); ++y) {
        const RowPlace place = surface.placeOf(y);
        std::ranges::fill(front, 0.0F);
        wide.addTo(front, place, static_cast<float>(depth * 0.30));
        lobes.addTo(front, place, 3.4F);
        fine.addTo(front, place, 0.7F);
        const auto row = surface.colours(y);
        for (std::size_t i = 0; i < columns; ++i) {
            const double x = place.x + static_cast<double>(i) * place.step;
            const double in = edge == "foot"   ? harm.leaf.height() - place.y
                              : edge == "head" ? place.y
                              : edge == "fore" ? harm.leaf.width() - x
                                               : std::hypot(x, harm.leaf.height() - place.y);
            float share = 0;
            for (const auto& [part, weight] : {std::pair{1.0, 1.0F}, std::pair{0.62, 0.5F}}) {
                const auto past =
                    static_cast<float>(in - depth * part) - front[i] * static_cast<float>(part);
                if (past < 0) {
                    share += weight * (0.10F + 0.42F * std::exp(past / 3.2F));
                } else {
                    share += weight * 0.52F * std::exp(-past * past / 0.5F);
                }
            }
            row[i] = toned(row[i], {0.74F, 0.58F, 0.38F}, std::min(0.8F, share * 0.62F) * strength);
        }
    }
}

void addStain(Surface& surface, const Harm& harm) {
    const QColor colour(QString::fromStdString(harm.what.value("colour", std::string{"#8a6a44"})));
    const Noise uneven{mixed(harm.seed, 1), harm.what.value("radius", 12.0) * 0.6};
    addSpot(surface,
            {pointOf(harm.what.at("at")), harm.what.value("radius", 12.0),
             harm.what.value("strength", 0.5F) * static_cast<float>(fadedBy(harm))},
            toneOf(colour), uneven, harm.what.value("rim", true));
}

void addMould(Surface& surface, const Harm& harm) {
    Dice dice{harm.seed};
    const QPointF middle = pointOf(harm.what.at("at"));
    const double reach = harm.what.value("radius", 30.0);
    const Noise uneven{mixed(harm.seed, 1), 0.7};
    const auto faded = static_cast<float>(fadedBy(harm));
    addSpot(surface, {middle, reach, 0.34F * faded}, {0.74F, 0.62F, 0.66F},
            Noise{mixed(harm.seed, 2), 12}, false);
    const int count = static_cast<int>(reach * reach * 0.55);
    for (int i = 0; i < count; ++i) {
        const double angle = dice.roll() * 6.2831853;
        const double off = reach * std::sqrt(dice.roll()) * 1.25;
        const QPointF at = middle + QPointF{std::cos(angle), std::sin(angle)} * off;
        const bool green = dice.roll() < 0.3;
        addSpot(surface,
                {at, dice.between(0.25, 1.1), static_cast<float>(dice.between(0.2, 0.65)) * faded},
                green ? Tone{0.42F, 0.46F, 0.36F} : Tone{0.36F, 0.30F, 0.36F}, uneven, false);
    }
}

void addThumbing(Surface& surface, const Harm& harm) {
    Dice dice{harm.seed};
    const bool right = harm.what.value("outer_right", true);
    const Noise uneven{mixed(harm.seed, 1), 7};
    const auto strength = harm.what.value("strength", 0.3F) * (harm.isTreated ? 0.6F : 1.0F);
    for (int i = 0; i < 22; ++i) {
        const double in = dice.between(1, 20) * dice.roll();
        const double up = dice.between(2, 60) * dice.roll();
        addSpot(surface,
                {{right ? harm.leaf.width() - in : in, harm.leaf.height() - up},
                 dice.between(9, 20),
                 strength * static_cast<float>(dice.between(0.04, 0.14))},
                {0.50F, 0.43F, 0.34F}, uneven, false);
    }
}

} // namespace headcap::demo

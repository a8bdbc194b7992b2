// Handmade paper: fibres, the marks of the mould, edges worn and browned, and cockling.
#include <algorithm>
#include <cmath>
#include <vector>

#include "demo-data/pictures/book/leaf.h"

namespace headcap::demo {
namespace {

constexpr double kChainShadow = 2; // mm beside a chain line; further off nothing is seen of it

struct Sheet {
    QSizeF size;
    Tone tone;
    float browned;
    float soiled;
    float cockled;
    bool laid;
};

Sheet sheetOf(const LeafView& view) {
    const Json paper = view.leaf.value("paper", Json::object());
    const bool washed = view.isTreated && paper.value("washed", false);
    const bool cleaned = view.isTreated && paper.value("cleaned", true);
    const float browned = paper.value("browned", 0.4F);
    const float soiled = paper.value("soiled", 0.3F);
    const float cockled = paper.value("cockled", 0.5F);
    return {leafSize(view.leaf),
            toneOf(QColor(QString::fromStdString(paper.value("tone", std::string{"#ebe1c9"})))),
            washed ? browned * 0.45F : browned,
            washed    ? soiled * 0.3F
            : cleaned ? soiled * 0.55F
                      : soiled,
            view.isTreated ? cockled * 0.4F : cockled,
            paper.value("laid", true)};
}

void addMouldMarks(std::span<float> row, const RowPlace& place, Seed seed) {
    const Noise sway{mixed(seed, 6), 60};
    const double y = place.y + 0.35 * static_cast<double>(sway.at(3, place.y));
    const auto laid = 0.010F * static_cast<float>(std::sin(y * 2 * 3.14159265 / 0.98));
    const double shift = 11 + 0.4 * static_cast<double>(sway.at(9, place.y));
    for (std::size_t i = 0; i < row.size(); ++i) {
        const double x = place.x + static_cast<double>(i) * place.step + shift;
        const double off = x - 25.4 * std::round(x / 25.4);
        row[i] += laid;
        if (std::abs(off) < kChainShadow) {
            row[i] += 0.014F * static_cast<float>(std::exp(-off * off / 0.5));
        }
    }
}

// How much of the sheet there is at each pixel: its edges are not quite straight.
void addEdges(std::span<float> cover, std::span<float> near, const RowPlace& place,
              const Sheet& sheet, Seed seed) {
    std::vector<float> wear(cover.size(), 0);
    Noise{mixed(seed, 8), 14}.addTo(wear, place, 0.32F);
    Noise{mixed(seed, 9), 1.6}.addTo(wear, place, 0.13F);
    Noise{mixed(seed, 10), 0.35}.addTo(wear, place, 0.06F);
    const auto width = static_cast<float>(sheet.size.width());
    const auto fromHead = static_cast<float>(std::min(place.y, sheet.size.height() - place.y));
    const auto sharp = static_cast<float>(1 / place.step);
    for (std::size_t i = 0; i < cover.size(); ++i) {
        const auto x = static_cast<float>(place.x + static_cast<double>(i) * place.step);
        const float off = std::min({x, width - x, fromHead});
        near[i] = off;
        cover[i] = std::clamp((off - 0.35F - wear[i]) * sharp + 0.5F, 0.0F, 1.0F);
    }
}

// What is left of an edge's darkness at a distance; nothing where it can't be seen.
float fading(float distance, float reach) {
    return distance > 5 * reach ? 0.0F : std::exp(-distance / reach);
}

} // namespace

void makePaper(Surface& surface, const LeafView& view) {
    const Sheet sheet = sheetOf(view);
    const Seed seed = view.seed;
    const auto columns = static_cast<std::size_t>(surface.width());
    std::vector<float> bright(columns);
    std::vector<float> cover(columns);
    std::vector<float> near(columns);
    std::vector<float> dirt(columns);
    const Noise cloud{mixed(seed, 1), 11};
    const Noise flock{mixed(seed, 2), 2.3};
    const Noise fibre{mixed(seed, 3), 0.55, 0.16};
    const Noise fibreUp{mixed(seed, 4), 0.16, 0.55};
    const Noise bump{mixed(seed, 5), 0.33};
    const Noise cockle{mixed(seed, 12), 46, 30};
    const Noise ripple{mixed(seed, 13), 17, 24};
    for (int y = 0; y < surface.height(); ++y) {
        const RowPlace place = surface.placeOf(y);
        std::ranges::fill(bright, 1.0F);
        std::ranges::fill(dirt, 0.0F);
        cloud.addTo(bright, place, 0.012F);
        flock.addTo(bright, place, 0.012F);
        fibre.addTo(bright, place, 0.018F);
        fibreUp.addTo(bright, place, 0.014F);
        if (sheet.laid) {
            addMouldMarks(bright, place, seed);
        }
        addEdges(cover, near, place, sheet, seed);
        Noise{mixed(seed, 14), 38}.addTo(dirt, place, 0.6F);
        Noise{mixed(seed, 15), 6}.addTo(dirt, place, 0.4F);
        auto relief = surface.relief(y);
        bump.addTo(relief, place, 0.0035F);
        cockle.addTo(relief, place, 1.1F * sheet.cockled);
        ripple.addTo(relief, place, 0.28F * sheet.cockled);
        auto row = surface.colours(y);
        for (std::size_t x = 0; x < columns; ++x) {
            const float brown = sheet.browned * (0.16F + 0.75F * fading(near[x], 7.0F));
            const float soil = sheet.soiled * std::max(0.0F, dirt[x] + 0.25F) *
                               (0.12F + 0.5F * fading(near[x], 22.0F));
            const float red = sheet.tone.red * bright[x] * (1 - 0.16F * brown) * (1 - 0.45F * soil);
            const float green =
                sheet.tone.green * bright[x] * (1 - 0.30F * brown) * (1 - 0.47F * soil);
            const float blue =
                sheet.tone.blue * bright[x] * (1 - 0.52F * brown) * (1 - 0.50F * soil);
            const auto part = [&](float value) {
                return qRound(std::clamp(value, 0.0F, 1.0F) * cover[x] * 255);
            };
            row[x] = qRgba(part(red), part(green), part(blue), qRound(cover[x] * 255));
        }
    }
}

} // namespace headcap::demo

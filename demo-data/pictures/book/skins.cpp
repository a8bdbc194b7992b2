#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

#include "demo-data/pictures/book/binding.h"

namespace headcap::demo {
namespace {

QRgb solid(const Tone& tone, float bright) {
    const auto part = [&](float value) {
        return qRound(std::clamp(value * bright, 0.0F, 1.0F) * 255.0F);
    };
    return qRgb(part(tone.red), part(tone.green), part(tone.blue));
}

void addPebbles(std::span<float> relief, const RowPlace& place, const Skin& skin, Seed seed) {
    std::vector<float> bumps(relief.size(), 0);
    Noise{mixed(seed, 1), skin.cell}.addTo(bumps, place, 1);
    std::vector<float> finer(relief.size(), 0);
    Noise{mixed(seed, 2), skin.cell * 0.47}.addTo(finer, place, 1);
    for (std::size_t i = 0; i < relief.size(); ++i) {
        relief[i] -=
            skin.grain * (1 - std::abs(bumps[i])) + skin.grain * 0.6F * (1 - std::abs(finer[i]));
    }
}

void addWeave(std::span<float> relief, std::span<float> bright, const RowPlace& place, Seed seed) {
    constexpr double kPitch = 0.42;
    const Noise slub{mixed(seed, 3), 6, 0.5};
    const double down = place.y / kPitch;
    const int row = static_cast<int>(std::floor(down));
    const auto rowWave = static_cast<float>(std::sin(down * 2 * 3.14159265));
    for (std::size_t i = 0; i < relief.size(); ++i) {
        const double across = (place.x + static_cast<double>(i) * place.step) / kPitch;
        const auto wave = static_cast<float>(std::sin(across * 2 * 3.14159265));
        const bool over = (static_cast<int>(std::floor(across)) + row) % 2 == 0;
        const float thread = over ? wave : rowWave;
        relief[i] += 0.018F * thread;
        bright[i] += 0.05F * thread;
    }
    slub.addTo(bright, place, 0.04F);
}

} // namespace

bool BindingView::has(const char* harm) const {
    const Json& list = binding.contains(isTreated ? "harm_after" : "harm")
                           ? binding.at(isTreated ? "harm_after" : "harm")
                           : binding.at("harm");
    return std::ranges::any_of(list, [&](const Json& one) { return one == harm; });
}

bool BindingView::wasDone(const char* repair) const {
    const Json done = binding.value("done", Json::array());
    return isTreated && std::ranges::any_of(done, [&](const Json& one) { return one == repair; });
}

Skin skinOf(const Json& binding) {
    const std::string cover = binding.value("cover", std::string{"calf"});
    const Tone tone =
        toneOf(QColor(QString::fromStdString(binding.at("colour").get<std::string>())));
    if (cover == "calf") {
        return {tone, 0.012F, 0.34, 0.07F, binding.value("sprinkled", false), false};
    }
    if (cover == "goat") {
        return {tone, 0.05F, 1.05, 0.045F, false, false};
    }
    if (cover == "sheep") {
        return {tone, 0.02F, 0.5, 0.085F, false, false};
    }
    if (cover == "vellum") {
        return {tone, 0.006F, 0.4, 0.045F, false, false};
    }
    if (cover == "cloth") {
        return {tone, 0, 1, 0.03F, false, true};
    }
    return {tone, 0.008F, 0.3, 0.06F, false, false};
}

void coverWith(Surface& surface, const Skin& skin, Seed seed) {
    const auto columns = static_cast<std::size_t>(surface.width());
    std::vector<float> bright(columns);
    const Noise wide{mixed(seed, 11), 70};
    const Noise middle{mixed(seed, 12), 13};
    const Noise small{mixed(seed, 13), 1.7};
    const Noise pores{mixed(seed, 14), 0.22};
    for (int y = 0; y < surface.height(); ++y) {
        const RowPlace place = surface.placeOf(y);
        std::ranges::fill(bright, 1.0F);
        wide.addTo(bright, place, skin.mottle);
        middle.addTo(bright, place, skin.mottle * 0.45F);
        small.addTo(bright, place, skin.mottle * 0.5F);
        pores.addTo(bright, place, skin.woven ? 0.02F : 0.05F);
        const auto relief = surface.relief(y);
        if (skin.woven) {
            addWeave(relief, bright, place, seed);
        } else {
            addPebbles(relief, place, skin, seed);
        }
        const auto row = surface.colours(y);
        for (std::size_t x = 0; x < columns; ++x) {
            row[x] = solid(skin.tone, bright[x]);
        }
        if (skin.sprinkled) {
            std::vector<float> drops(columns, 0);
            Noise{mixed(seed, 15), 0.55}.addTo(drops, place, 1);
            Noise{mixed(seed, 16), 1.3}.addTo(drops, place, 0.55F);
            for (std::size_t x = 0; x < columns; ++x) {
                if (drops[x] > 0.78F) {
                    row[x] = toned(row[x], {0.42F, 0.38F, 0.36F},
                                   std::min(1.0F, (drops[x] - 0.78F) * 3));
                }
            }
        }
    }
}

void coverWithMarble(Surface& surface, const QRectF& box, const Json& palette, Seed seed) {
    std::vector<Tone> tones;
    for (const Json& colour : palette) {
        tones.push_back(toneOf(QColor(QString::fromStdString(colour.get<std::string>()))));
    }
    const Noise swirl{mixed(seed, 21), 26};
    const Noise eddy{mixed(seed, 22), 9};
    const Noise vein{mixed(seed, 23), 2.6};
    const Noise body{mixed(seed, 24), 0.5};
    const auto [first, last] = surface.rowsOf(box.top(), box.bottom());
    std::vector<float> bend(static_cast<std::size_t>(surface.width()));
    std::vector<float> fine(bend.size());
    for (int y = first; y < last; ++y) {
        const RowPlace place = surface.placeOf(y);
        std::ranges::fill(bend, 0.0F);
        std::ranges::fill(fine, 1.0F);
        swirl.addTo(bend, place, 9);
        eddy.addTo(bend, place, 3.4F);
        vein.addTo(bend, place, 0.55F);
        body.addTo(fine, place, 0.05F);
        const auto row = surface.colours(y);
        const auto relief = surface.relief(y);
        for (std::size_t i = 0; i < row.size(); ++i) {
            const double x = place.x + static_cast<double>(i) * place.step;
            if (x < box.left() || x > box.right()) {
                continue;
            }
            // Drawn through with a comb: tongues that point one way, then the other.
            const double tooth = x / 5.5 - std::floor(x / 5.5);
            const double comb = 4.2 * std::abs(tooth - 0.5);
            const double at = (place.y + static_cast<double>(bend[i]) + comb) / 2.3;
            const double whole = std::floor(at);
            const auto pick = static_cast<std::size_t>(chanceAt(seed, static_cast<int>(whole), 3) *
                                                       static_cast<float>(tones.size()));
            const Tone& tone = tones[std::min(pick, tones.size() - 1)];
            const double edge = std::min(at - whole, 1 - (at - whole));
            const float dark = edge < 0.07 ? 0.80F : 1.0F;
            row[i] = solid(tone, fine[i] * dark);
            relief[i] = 0;
        }
    }
}

void addWearing(std::span<float> row, const RowPlace& place, Seed seed) {
    std::vector<float> aside(row.size(), 0);
    std::vector<float> down(row.size(), 0);
    Noise{mixed(seed, 1), 2.3}.addTo(aside, place, 1.1F);
    Noise{mixed(seed, 2), 0.7}.addTo(aside, place, 0.4F);
    Noise{mixed(seed, 3), 2.6}.addTo(down, place, 1.1F);
    Noise{mixed(seed, 4), 0.6}.addTo(down, place, 0.4F);
    Noise{mixed(seed, 5), 17}.addTo(row, place, 0.35F);
    const Noise patch{mixed(seed, 6), 6.1};
    const Noise scrap{mixed(seed, 7), 1.5};
    const Noise grain{mixed(seed, 8), 0.37};
    for (std::size_t i = 0; i < row.size(); ++i) {
        const double x = place.x + static_cast<double>(i) * place.step;
        const auto ax = static_cast<double>(aside[i]);
        const auto ay = static_cast<double>(down[i]);
        row[i] += 0.62F * patch.at(x + 2 * ax, place.y + 2 * ay) +
                  0.34F * scrap.at(x + ax, place.y + ay) +
                  0.20F * grain.at(x + 0.5 * ay, place.y + 0.5 * ax);
    }
}

void gild(Surface& surface, const QImage& mask, Seed seed, float left) {
    std::vector<float> worn(static_cast<std::size_t>(surface.width()));
    std::vector<float> glint(worn.size());
    for (int y = 0; y < surface.height(); ++y) {
        const RowPlace place = surface.placeOf(y);
        std::ranges::fill(worn, 0.0F);
        std::ranges::fill(glint, 1.0F);
        Noise{mixed(seed, 1), 1.1}.addTo(worn, place, 0.6F);
        Noise{mixed(seed, 2), 12}.addTo(worn, place, 0.6F);
        Noise{mixed(seed, 3), 0.3}.addTo(glint, place, 0.22F);
        Noise{mixed(seed, 4), 25}.addTo(glint, place, 0.18F);
        const auto row = surface.colours(y);
        const auto relief = surface.relief(y);
        const uchar* in = mask.constScanLine(y);
        for (std::size_t x = 0; x < row.size(); ++x) {
            if (in[x] == 0) {
                continue;
            }
            const float share = static_cast<float>(in[x]) / 255.0F;
            relief[x] -= 0.05F * share;
            const float gold = std::clamp((left * 2 - 1 - worn[x]) * 4 + 0.5F, 0.0F, 1.0F);
            row[x] = toned(row[x], {0.6F, 0.55F, 0.5F}, 0.5F * share);
            row[x] = blended(row[x], {0.80F * glint[x], 0.63F * glint[x], 0.30F * glint[x]},
                             share * gold * 0.92F);
        }
    }
}

void pressBlind(Surface& surface, const QImage& mask, float depth) {
    for (int y = 0; y < surface.height(); ++y) {
        const auto row = surface.colours(y);
        const auto relief = surface.relief(y);
        const uchar* in = mask.constScanLine(y);
        for (std::size_t x = 0; x < row.size(); ++x) {
            const float share = static_cast<float>(in[x]) / 255.0F;
            if (share > 0) {
                relief[x] -= depth * share;
                row[x] = toned(row[x], {0.62F, 0.60F, 0.58F}, 0.55F * share);
            }
        }
    }
}

} // namespace headcap::demo

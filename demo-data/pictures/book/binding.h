// A binding: its boards and spine in leather, vellum, cloth or marbled paper, tooled, worn and
// broken, and as it is after repair.
#pragma once

#include "demo-data/loader/moment.h"
#include "demo-data/pictures/base/surface.h"

namespace headcap::demo {

struct BindingView {
    const Json& binding;
    Seed seed;
    bool isTreated = false;

    [[nodiscard]] double width() const { return binding.at("size").at(0).get<double>(); }
    [[nodiscard]] double height() const { return binding.at("size").at(1).get<double>(); }
    [[nodiscard]] double thickness() const { return binding.at("size").at(2).get<double>(); }
    // Whether it has this harm as it is seen.
    [[nodiscard]] bool has(const char* harm) const;
    // Whether this has been done to it.
    [[nodiscard]] bool wasDone(const char* repair) const;
};

struct Skin {
    Tone tone;
    float grain = 0.03F;  // height of its grain in millimetres
    double cell = 0.7;    // its size
    float mottle = 0.10F; // how uneven its colour is
    bool sprinkled = false;
    bool woven = false;
};

[[nodiscard]] Skin skinOf(const Json& binding);
// Covers the whole surface with a skin.
void coverWith(Surface& surface, const Skin& skin, Seed seed);
void coverWithMarble(Surface& surface, const QRectF& box, const Json& palette, Seed seed);
// How worn each pixel of a row is, about nothing: in patches, ragged at their edges.
void addWearing(std::span<float> row, const RowPlace& place, Seed seed);
// Gold in the painter's white, as much of it as wear has left.
void gild(Surface& surface, const QImage& mask, Seed seed, float left = 0.85F);
// Pressed in without gold.
void pressBlind(Surface& surface, const QImage& mask, float depth);

// The front board, its spine edge at the left.
[[nodiscard]] Surface drawBoard(const BindingView& view, double pixelsPerMm);
// The spine upright, with a little of either board beside it.
[[nodiscard]] Surface drawSpine(const BindingView& view, double pixelsPerMm);
inline constexpr double kBesideSpine = 9;

} // namespace headcap::demo

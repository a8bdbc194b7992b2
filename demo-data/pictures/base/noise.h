// Smooth noise over a plane of millimetres, from whole numbers alone: the same everywhere and every
// time, and the same at any resolution, so that a detail shows what the whole view shows.
#pragma once

#include <cstdint>
#include <span>
#include <string_view>

namespace headcap::demo {

using Seed = std::uint32_t;

[[nodiscard]] Seed seedOf(std::string_view name);
[[nodiscard]] Seed mixed(Seed seed, Seed with);

// From 0 to 1.
[[nodiscard]] float chanceAt(Seed seed, int x, int y);

// Chance in a row, for scattering things.
class Dice {
public:
    explicit Dice(Seed seed) : m_seed(seed) {}
    [[nodiscard]] double roll() { return static_cast<double>(chanceAt(m_seed, m_at++, 7)); }
    [[nodiscard]] double between(double low, double high) { return low + (high - low) * roll(); }

private:
    Seed m_seed;
    int m_at = 0;
};

// A row of pixels: where its first lies, and how far one is from the next, in millimetres.
struct RowPlace {
    double x = 0;
    double step = 0.1;
    double y = 0;
};

class Noise {
public:
    Noise(Seed seed, double cellX, double cellY) : m_seed(seed), m_cellX(cellX), m_cellY(cellY) {}
    Noise(Seed seed, double cell) : Noise(seed, cell, cell) {}

    // From -1 to 1.
    [[nodiscard]] float at(double x, double y) const;
    // Adds the noise times `amount` to each pixel of a row.
    void addTo(std::span<float> row, const RowPlace& place, float amount) const;

private:
    [[nodiscard]] float lattice(int ix, int iy, float fy) const;

    Seed m_seed;
    double m_cellX;
    double m_cellY;
};

} // namespace headcap::demo

#include "demo-data/pictures/base/noise.h"

#include <algorithm>
#include <cmath>

namespace headcap::demo {
namespace {

constexpr Seed scrambled(Seed h) {
    h ^= h >> 16;
    h *= 0x7feb352dU;
    h ^= h >> 15;
    h *= 0x846ca68bU;
    h ^= h >> 16;
    return h;
}

constexpr float eased(float t) {
    return t * t * (3.0F - 2.0F * t);
}

} // namespace

Seed seedOf(std::string_view name) {
    Seed hash = 2166136261U;
    for (const char c : name) {
        hash = (hash ^ static_cast<unsigned char>(c)) * 16777619U;
    }
    return scrambled(hash);
}

Seed mixed(Seed seed, Seed with) {
    return scrambled(seed ^ (with * 0x9e3779b9U));
}

float chanceAt(Seed seed, int x, int y) {
    const Seed h = scrambled(seed ^ (static_cast<Seed>(x) * 0x8da6b343U) ^
                             (static_cast<Seed>(y) * 0xd8163841U));
    return static_cast<float>(h >> 8) * (1.0F / 16777216.0F);
}

float Noise::lattice(int ix, int iy, float fy) const {
    const float above = chanceAt(m_seed, ix, iy);
    const float below = chanceAt(m_seed, ix, iy + 1);
    return 2.0F * (above + (below - above) * fy) - 1.0F;
}

float Noise::at(double x, double y) const {
    const double cx = std::floor(x / m_cellX);
    const double cy = std::floor(y / m_cellY);
    const float fy = eased(static_cast<float>(y / m_cellY - cy));
    const float fx = eased(static_cast<float>(x / m_cellX - cx));
    const float left = lattice(static_cast<int>(cx), static_cast<int>(cy), fy);
    const float right = lattice(static_cast<int>(cx) + 1, static_cast<int>(cy), fy);
    return left + (right - left) * fx;
}

void Noise::addTo(std::span<float> row, const RowPlace& place, float amount) const {
    const double cy = std::floor(place.y / m_cellY);
    const float fy = eased(static_cast<float>(place.y / m_cellY - cy));
    const double step = place.step / m_cellX;
    double at = place.x / m_cellX;
    int cell = static_cast<int>(std::floor(at));
    float left = lattice(cell, static_cast<int>(cy), fy);
    std::size_t i = 0;
    while (i < row.size()) {
        const float right = lattice(cell + 1, static_cast<int>(cy), fy);
        const double here = at + static_cast<double>(i) * step;
        const double left_over = static_cast<double>(cell) + 1.0 - here;
        const auto count = std::max<std::size_t>(
            1, std::min(row.size() - i, static_cast<std::size_t>(std::ceil(left_over / step))));
        const float t0 = static_cast<float>(here - static_cast<double>(cell));
        const float dt = static_cast<float>(step);
        const float scaledLeft = amount * left;
        const float rise = amount * (right - left);
        for (std::size_t k = 0; k < count; ++k) {
            const float t = std::min(1.0F, t0 + dt * static_cast<float>(k));
            row[i + k] += scaledLeft + rise * eased(t);
        }
        i += count;
        const int next = static_cast<int>(std::floor(at + static_cast<double>(i) * step));
        left = next == cell + 1 ? right : lattice(next, static_cast<int>(cy), fy);
        cell = next;
    }
}

} // namespace headcap::demo

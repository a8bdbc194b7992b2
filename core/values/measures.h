// Lengths, areas, masses and volumes: exact integers of a unit small enough that every figure of
// the trade is exact (1/16 in is 1,587,500 nm). People see mm, cm, in, g, ml: measure_text.h.
#pragma once

#include "core/values/quantity.h"

namespace headcap::core {

// Nanometres.
class Length : public Quantity<Length> {
public:
    constexpr Length() = default;
    [[nodiscard]] static constexpr Length nanometres(std::int64_t n) { return fromCount(n); }
    [[nodiscard]] static constexpr Length micrometres(std::int64_t n) {
        return fromCount(n * 1'000);
    }
    [[nodiscard]] static constexpr Length millimetres(std::int64_t n) {
        return fromCount(n * 1'000'000);
    }

private:
    friend class Quantity<Length>;
    explicit constexpr Length(std::int64_t n) : Quantity(n) {}
};

// Square micrometres.
class Area : public Quantity<Area> {
public:
    constexpr Area() = default;
    [[nodiscard]] static constexpr Area squareMicrometres(std::int64_t n) { return fromCount(n); }
    [[nodiscard]] static constexpr Area squareMillimetres(std::int64_t n) {
        return fromCount(n * 1'000'000);
    }

private:
    friend class Quantity<Area>;
    explicit constexpr Area(std::int64_t n) : Quantity(n) {}
};

// Micrograms.
class Mass : public Quantity<Mass> {
public:
    constexpr Mass() = default;
    [[nodiscard]] static constexpr Mass micrograms(std::int64_t n) { return fromCount(n); }
    [[nodiscard]] static constexpr Mass milligrams(std::int64_t n) { return fromCount(n * 1'000); }
    [[nodiscard]] static constexpr Mass grams(std::int64_t n) { return fromCount(n * 1'000'000); }

private:
    friend class Quantity<Mass>;
    explicit constexpr Mass(std::int64_t n) : Quantity(n) {}
};

// Microlitres.
class Volume : public Quantity<Volume> {
public:
    constexpr Volume() = default;
    [[nodiscard]] static constexpr Volume microlitres(std::int64_t n) { return fromCount(n); }
    [[nodiscard]] static constexpr Volume millilitres(std::int64_t n) {
        return fromCount(n * 1'000);
    }

private:
    friend class Quantity<Volume>;
    explicit constexpr Volume(std::int64_t n) : Quantity(n) {}
};

// The area of a rectangle, rounded down to whole square micrometres.
[[nodiscard]] constexpr Area areaOf(Length width, Length height) {
    return Area::squareMicrometres((width.count() / 1'000) * (height.count() / 1'000));
}

} // namespace headcap::core

// What every exact quantity of the house shares: a signed 64-bit count of one unit, sums,
// differences, order, and multiplication by a whole number. No quantity converts to a number or to
// another quantity by itself, and none is made from a bare number.
#pragma once

#include <compare>
#include <concepts>
#include <cstdint>

namespace headcap::core {

template <class Self>
class Quantity {
public:
    constexpr Quantity() = default;

    // The count in the quantity's own unit, for keeping and for arithmetic that names its unit.
    [[nodiscard]] constexpr std::int64_t count() const { return m_count; }
    [[nodiscard]] constexpr bool isZero() const { return m_count == 0; }
    [[nodiscard]] constexpr bool isNegative() const { return m_count < 0; }
    [[nodiscard]] static constexpr Self fromCount(std::int64_t count) { return Self{count}; }

    friend constexpr Self operator+(Self a, Self b) {
        return Self::fromCount(a.count() + b.count());
    }
    friend constexpr Self operator-(Self a, Self b) {
        return Self::fromCount(a.count() - b.count());
    }
    friend constexpr Self operator-(Self a) { return Self::fromCount(-a.count()); }
    friend constexpr Self& operator+=(Self& a, Self b) { return a = a + b; }
    friend constexpr Self& operator-=(Self& a, Self b) { return a = a - b; }
    template <std::integral N>
    friend constexpr Self operator*(Self a, N times) {
        return Self::fromCount(a.count() * static_cast<std::int64_t>(times));
    }
    friend constexpr bool operator==(Quantity, Quantity) = default;
    friend constexpr auto operator<=>(Quantity, Quantity) = default;

protected:
    explicit constexpr Quantity(std::int64_t count) : m_count(count) {}

private:
    std::int64_t m_count = 0;
};

} // namespace headcap::core

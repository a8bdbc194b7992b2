#include "core/values/fraction.h"

#include "core/values/contract.h"

namespace headcap::core {
namespace {

// The sum of two products of such terms still has room in 128 bits.
constexpr Wide kMostTerm = std::numeric_limits<std::int64_t>::max();

Wide commonMeasure(Wide a, Wide b) {
    while (b != 0) {
        const Wide rest = a % b;
        a = b;
        b = rest;
    }
    return a;
}

} // namespace

Fraction::Fraction(std::int64_t numerator, std::int64_t denominator) {
    HEADCAP_CONTRACT(denominator > 0);
    *this = lowest(numerator, denominator);
}

Fraction Fraction::lowest(Wide numerator, Wide denominator) {
    const bool isNegative = numerator < 0;
    Wide above = isNegative ? -numerator : numerator;
    const Wide measure = commonMeasure(above, denominator);
    above /= measure;
    denominator /= measure;
    while (above > kMostTerm || denominator > kMostTerm) {
        above /= 2;
        denominator /= 2;
    }
    Fraction made;
    made.m_numerator = static_cast<std::int64_t>(isNegative ? -above : above);
    made.m_denominator = static_cast<std::int64_t>(std::max<Wide>(denominator, 1));
    return made;
}

Fraction Fraction::times(std::int64_t above, std::int64_t below) const {
    HEADCAP_CONTRACT(below > 0);
    return lowest(static_cast<Wide>(m_numerator) * above, static_cast<Wide>(m_denominator) * below);
}

Fraction Fraction::plus(const Fraction& other) const {
    return lowest(static_cast<Wide>(m_numerator) * other.m_denominator +
                      static_cast<Wide>(other.m_numerator) * m_denominator,
                  static_cast<Wide>(m_denominator) * other.m_denominator);
}

std::int64_t Fraction::of(std::int64_t count) const {
    return clampedCount(nearest(static_cast<Wide>(m_numerator) * count, m_denominator));
}

} // namespace headcap::core

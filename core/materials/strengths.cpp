#include "core/materials/strengths.h"

#include "core/values/wide.h"

#include <limits>

namespace headcap::core {
namespace {

constexpr std::int64_t kWhole = 1'000'000;     // parts per million
constexpr std::int64_t kMgInMlOfWhole = 1'000; // at 1 g/ml, w/v and w/w are the same figure

template <class T>
using OrProblem = tl::expected<T, StrengthProblem>;

// a · b / c to the nearest whole; all above nothing.
OrProblem<std::int64_t> share(std::int64_t a, std::int64_t b, std::int64_t c) {
    const Wide nearest = core::nearest(static_cast<Wide>(a) * b, c);
    if (nearest > std::numeric_limits<std::int64_t>::max()) {
        return tl::unexpected(StrengthProblem::tooMuch);
    }
    return static_cast<std::int64_t>(nearest);
}

Unit measureOf(StrengthBasis basis) {
    return basis == StrengthBasis::weightInWeight ? Unit::gram : Unit::millilitre;
}

OrProblem<std::int64_t> toWeightInVolume(const Strength& from, const Densities& densities) {
    switch (from.basis) {
    case StrengthBasis::weightInVolume:
        return from.partsPerMillion;
    case StrengthBasis::weightInWeight:
        return densities.solution ? share(from.partsPerMillion, *densities.solution, kMgInMlOfWhole)
                                  : tl::unexpected(StrengthProblem::densityUnknown);
    case StrengthBasis::volumeInVolume:
        return densities.solute ? share(from.partsPerMillion, *densities.solute, kMgInMlOfWhole)
                                : tl::unexpected(StrengthProblem::densityUnknown);
    }
    return tl::unexpected(StrengthProblem::densityUnknown);
}

bool isAbove(const std::optional<std::int64_t>& density) {
    return !density || *density > 0;
}

} // namespace

OrProblem<Strength> inBasis(const Strength& strength, StrengthBasis to,
                            const Densities& densities) {
    if (strength.partsPerMillion <= 0 || !isAbove(densities.solution) ||
        !isAbove(densities.solute)) {
        return tl::unexpected(StrengthProblem::notAbove);
    }
    if (strength.basis == to) {
        return strength;
    }
    auto parts = toWeightInVolume(strength, densities);
    if (parts && to != StrengthBasis::weightInVolume) {
        const auto& by =
            to == StrengthBasis::weightInWeight ? densities.solution : densities.solute;
        parts = by ? share(*parts, kMgInMlOfWhole, *by)
                   : tl::unexpected(StrengthProblem::densityUnknown);
    }
    if (!parts) {
        return tl::unexpected(parts.error());
    }
    if (to != StrengthBasis::weightInVolume && *parts > kWhole) {
        return tl::unexpected(StrengthProblem::beyondWhole);
    }
    return Strength{*parts, to};
}

OrProblem<Dilution> diluted(const Strength& stock, const Strength& wanted, Amount total,
                            const Densities& ofStock) {
    if (stock.partsPerMillion <= 0 || wanted.partsPerMillion <= 0 || total.count <= 0) {
        return tl::unexpected(StrengthProblem::notAbove);
    }
    if (total.unit != measureOf(wanted.basis)) {
        return tl::unexpected(StrengthProblem::otherMeasure);
    }
    const auto from = inBasis(stock, wanted.basis, ofStock);
    if (!from) {
        return tl::unexpected(from.error());
    }
    if (wanted.partsPerMillion > from->partsPerMillion) {
        return tl::unexpected(StrengthProblem::strongerThanStock);
    }
    const auto taken = share(total.count, wanted.partsPerMillion, from->partsPerMillion);
    if (!taken) {
        return tl::unexpected(taken.error());
    }
    return Dilution{{*taken, total.unit}, {total.count - *taken, total.unit}};
}

OrProblem<Amount> soluteIn(Amount solvent, const Strength& wanted) {
    if (solvent.count <= 0 || wanted.partsPerMillion <= 0) {
        return tl::unexpected(StrengthProblem::notAbove);
    }
    if (solvent.unit != measureOf(wanted.basis)) {
        return tl::unexpected(StrengthProblem::otherMeasure);
    }
    if (wanted.basis == StrengthBasis::weightInVolume) {
        // µl at 1,000 µg to the whole of each.
        const auto solute = share(solvent.count, wanted.partsPerMillion, kWhole / 1'000);
        return solute.map([](std::int64_t count) { return Amount{count, Unit::gram}; });
    }
    if (wanted.partsPerMillion >= kWhole) {
        return tl::unexpected(StrengthProblem::beyondWhole);
    }
    const auto solute =
        share(solvent.count, wanted.partsPerMillion, kWhole - wanted.partsPerMillion);
    return solute.map([&](std::int64_t count) { return Amount{count, solvent.unit}; });
}

} // namespace headcap::core

#include "core/materials/permanence.h"

#include <limits>

#include "core/values/wide.h"

namespace headcap::core {
namespace {

constexpr std::int64_t kCarbonateMgMol = 100'087; // IUPAC standard atomic weights: 100.087 g/mol
constexpr std::int64_t kMethodsLimitPpm = 20'000;

} // namespace

tl::expected<AlkaliReserve, TitrationProblem> alkaliReserve(const BackTitration& t) {
    if (t.paper.count() <= 0 || t.acid.count() <= 0 || t.alkali.count() < 0 || t.acidMmolL <= 0 ||
        t.alkaliMmolL <= 0) {
        return tl::unexpected(TitrationProblem::notAbove);
    }
    // µl · mmol/l = nmol
    const Wide left = static_cast<Wide>(t.acid.count()) * t.acidMmolL -
                      static_cast<Wide>(t.alkali.count()) * t.alkaliMmolL;
    if (left < 0) {
        return tl::unexpected(TitrationProblem::moreAlkaliThanAcid);
    }
    // nmol a µg is mol a kg · 1e-3 · 1e6: thousandths of mol a kg are nmol · 1,000 a µg.
    const Wide reserve = nearest(left * 1'000, t.paper.count());
    const Wide carbonate = nearest(left * kCarbonateMgMol, static_cast<Wide>(2) * t.paper.count());
    if (carbonate > std::numeric_limits<std::int64_t>::max() ||
        reserve > std::numeric_limits<std::int64_t>::max()) {
        return tl::unexpected(TitrationProblem::tooMuch);
    }
    const auto ppm = static_cast<std::int64_t>(carbonate);
    return AlkaliReserve{static_cast<std::int64_t>(reserve), ppm, ppm < kMethodsLimitPpm};
}

std::vector<PermanenceFault> permanenceFaults(std::optional<std::int64_t> phHundredths,
                                              std::optional<std::int64_t> reserveMmolKg) {
    std::vector<PermanenceFault> faults;
    if (phHundredths && *phHundredths < kLeastPhHundredths) {
        faults.push_back(PermanenceFault::phTooLow);
    }
    if (phHundredths && *phHundredths > kMostPhHundredths) {
        faults.push_back(PermanenceFault::phTooHigh);
    }
    if (reserveMmolKg && *reserveMmolKg < kLeastReserveMmolKg) {
        faults.push_back(PermanenceFault::reserveTooLow);
    }
    return faults;
}

} // namespace headcap::core

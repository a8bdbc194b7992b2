// Whether paper that stays in a book is permanent by ISO 9706: pH of a cold extract 7.5 to 10, and
// an alkali reserve that neutralises at least 0.4 mol of acid a kilogram (2 % as calcium
// carbonate). The reserve by back titration: acid in excess is boiled with the paper, and what is
// left of it is titrated with alkali.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include <tl/expected.hpp>

#include "core/values/measures.h"

namespace headcap::core {

inline constexpr std::int64_t kLeastPhHundredths = 750;
inline constexpr std::int64_t kMostPhHundredths = 1'000;
inline constexpr std::int64_t kLeastReserveMmolKg = 400;

struct BackTitration {
    Mass paper;
    Volume acid;
    std::int64_t acidMmolL = 100; // 0.1 N hydrochloric acid
    Volume alkali;
    std::int64_t alkaliMmolL = 100; // 0.1 N sodium hydroxide
};

enum class TitrationProblem {
    notAbove,           // a weight, a volume or a strength of nothing
    moreAlkaliThanAcid, // the paper would have given acid
    tooMuch,
};

struct AlkaliReserve {
    std::int64_t mmolKg = 0;         // of acid neutralised
    std::int64_t carbonatePpm = 0;   // as CaCO3, by weight of the paper: 20,000 is 2 %
    bool isNearMethodsLimit = false; // under about 2 % one drop tells: repeat, and say so
};

[[nodiscard]] tl::expected<AlkaliReserve, TitrationProblem>
alkaliReserve(const BackTitration& titration);

enum class PermanenceFault { phTooLow, phTooHigh, reserveTooLow };

// What is known of a paper; what is not known is no fault here.
[[nodiscard]] std::vector<PermanenceFault>
permanenceFaults(std::optional<std::int64_t> phHundredths,
                 std::optional<std::int64_t> reserveMmolKg);

} // namespace headcap::core

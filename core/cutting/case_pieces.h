// The measures of a case, which leather bindings and boxes share.
#pragma once

#include "core/cutting/pieces_of_work.h"

namespace headcap::core {

struct CaseSizes {
    Length boardWidth, height, spineWidth, coverWidth, coverHeight;
};

[[nodiscard]] CaseSizes caseSizes(const MeasuredBook& book, const WorkHouseValues& house);

// A part of a length, to the tenth of a millimetre.
[[nodiscard]] constexpr Length perMille(Length whole, int share) {
    constexpr std::int64_t kTenth = 100'000;
    return Length::nanometres((whole.count() / 1'000 * share + kTenth / 2) / kTenth * kTenth);
}

} // namespace headcap::core

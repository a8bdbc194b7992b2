// Amounts as they are said at a bench, where a share of a sheet need not be exact.
#pragma once

#include "core/values/amount.h"

namespace headcap::core {

// As parseAmount; but a share of a sheet or a piece that thousandths can't hold is taken to the
// nearest: "1/3 sheet".
[[nodiscard]] tl::expected<Amount, TextError> parseAmountNearly(std::string_view text);

} // namespace headcap::core

// How long a lot is fit: by its own date, or from when it was opened or mixed by its material's
// shelf life. Prepared adhesives change with age (TRADE B); the margin for "near" is a house value.
#pragma once

#include <optional>

#include "core/materials/material.h"

namespace headcap::core {

enum class LotAge { keeps, fresh, nearDate, overdue };

// The last day it is good; nothing where it keeps, or its time has not begun.
[[nodiscard]] std::optional<Day> goodUntilOf(const Lot& lot, const Material* material);

// Near: in the last fifth of a shelf life, at least two days and at most thirty before its end.
[[nodiscard]] LotAge ageOf(const Lot& lot, const Material* material, Day on);

} // namespace headcap::core

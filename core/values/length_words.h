// Lengths of what was measured by hand, as one says them.
#pragma once

#include <string>

#include "core/values/measures.h"

namespace headcap::core {

// To half a millimetre: no book is measured finer, and inches come to odd fractions.
[[nodiscard]] Length toHalfMillimetre(Length length);

// In inches where it is a whole number of sixteenths of one and of no half millimetres, as only
// an inch rule gives it: "8 1/4 in"; in millimetres else. Exact: it reads back as the same length.
[[nodiscard]] std::string asMeasured(Length length);

} // namespace headcap::core

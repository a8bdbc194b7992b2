// Amounts as a binder says and writes them: "9 l", "half a sheet", "2½ skins". The exact figure of
// the ledger is toText(Amount).
#pragma once

#include <string>
#include <string_view>

#include "core/values/amount.h"

namespace headcap::core {

// Nothing rounded: "9 l", "24 cm", "half a sheet", "a quarter of a skin", "117¾ sheets", "0.02 of a
// skin". What one piece is called is the material's: "skin" of leather.
[[nodiscard]] std::string amountWords(Amount amount, std::string_view piece = "piece");

// What is left on a shelf, where nobody counts hundredths of a sheet: to the next quarter from one
// on, and said to be so: "about 36¼ sheets".
[[nodiscard]] std::string aboutWords(Amount amount, std::string_view piece = "piece");

} // namespace headcap::core

// Money in minor units with its currency (ISO 4217). Sums are of one currency; nothing converts.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include <tl/expected.hpp>

#include "core/values/text_error.h"

namespace headcap::core {

struct Money {
    std::int64_t minor = 0;
    std::string currency = "EUR"; // ISO 4217 alphabetic code

    friend bool operator==(const Money&, const Money&) = default;
};

// Reads "1250", "1 250.50", "1250,5" in the currency given; a code before or after wins ("USD 20").
// Currencies of two decimals, but for those without (JPY, ISK, KRW): from memory of ISO 4217.
[[nodiscard]] tl::expected<Money, TextError> parseMoney(std::string_view text,
                                                        std::string_view currency);

// "1,250.50 EUR": the thousands parted, as it is read again.
[[nodiscard]] std::string toText(const Money& money);

// The sum, or nothing where the currencies differ.
[[nodiscard]] std::optional<Money> sum(const Money& a, const Money& b);

} // namespace headcap::core

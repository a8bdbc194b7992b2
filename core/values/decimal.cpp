#include "core/values/decimal.h"

#include "core/values/contract.h"
#include "core/values/number_scan.h"

namespace headcap::core {

tl::expected<std::int64_t, TextError> parseDecimal(std::string_view text, int places) {
    const auto number = scanNumber(text, {});
    if (!number) {
        return tl::unexpected(number.error());
    }
    if (number->length != text.size()) {
        return tl::unexpected(TextError{TextProblem::trailing, number->length});
    }
    return wholeCount(*number, powerOfTen(places)).map_error([](TextProblem problem) {
        return TextError{problem, 0};
    });
}

std::string decimalText(std::int64_t count, int places) {
    HEADCAP_CONTRACT(places >= 0 && places <= 18);
    const bool negative = count < 0;
    // Through unsigned, so that the most negative count has its text too.
    const std::uint64_t size =
        negative ? 0 - static_cast<std::uint64_t>(count) : static_cast<std::uint64_t>(count);
    std::string digits = std::to_string(size);
    const auto after = static_cast<std::size_t>(places);
    if (digits.size() <= after) {
        digits.insert(0, after + 1 - digits.size(), '0');
    }
    std::string text = digits.substr(0, digits.size() - after);
    std::string decimals = digits.substr(digits.size() - after);
    decimals.erase(decimals.find_last_not_of('0') + 1);
    if (!decimals.empty()) {
        text += '.' + decimals;
    }
    return negative ? '-' + text : text;
}

} // namespace headcap::core

#include "core/values/measure_text.h"

#include <algorithm>
#include <array>
#include <cstdint>

#include "core/values/decimal.h"
#include "core/values/unit_text.h"

namespace headcap::core {
namespace {

struct LengthUnit {
    std::string_view name;
    std::int64_t nanometres;
};

constexpr std::int64_t kInch = 25'400'000; // exact since the international yard of 1959
constexpr std::array<LengthUnit, 16> kUnits = {{
    {"mm", 1'000'000},
    {"cm", 10'000'000},
    {"m", 1'000'000'000},
    {"\u00B5m", 1'000}, // micro sign
    {"\u03BCm", 1'000}, // Greek mu
    {"um", 1'000},
    {"nm", 1},
    {"in", kInch},
    {"inch", kInch},
    {"inches", kInch},
    {"\"", kInch},
    {"\u2033", kInch}, // double prime
    {"\u201D", kInch}, // the closing quote that word processors make of "
    {"''", kInch},
    {"ft", 12 * kInch},
    {"'", 12 * kInch},
}};

} // namespace

tl::expected<Length, TextError> parseLength(std::string_view text) {
    const auto read = splitNumberAndUnit(text);
    if (!read) {
        return tl::unexpected(read.error());
    }
    if (read->unit.empty() && read->number.isFraction) {
        return tl::unexpected(TextError{TextProblem::unitMissing, read->unitAt});
    }
    const std::string_view unit = read->unit.empty() ? "mm" : read->unit;
    const auto known = std::ranges::find_if(
        kUnits, [&](const LengthUnit& candidate) { return sameLetters(candidate.name, unit); });
    if (known == kUnits.end()) {
        return tl::unexpected(TextError{TextProblem::unitUnknown, read->unitAt});
    }
    if (read->number.numerator < 0) {
        return tl::unexpected(TextError{TextProblem::outOfRange, read->numberAt});
    }
    const auto count = wholeCount(read->number, known->nanometres);
    if (!count) {
        return tl::unexpected(TextError{count.error(), read->numberAt});
    }
    return Length::nanometres(*count);
}

std::string toText(Length length) {
    return decimalText(length.count(), 6) + " mm";
}

} // namespace headcap::core

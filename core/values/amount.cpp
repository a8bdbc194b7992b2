#include "core/values/amount.h"

#include <algorithm>
#include <array>

#include "core/values/amount_nearly.h"
#include "core/values/decimal.h"
#include "core/values/unit_text.h"

namespace headcap::core {
namespace {

struct AmountUnit {
    std::string_view name;
    Unit unit;
    std::int64_t count; // of the unit's exact count
};

// Symbols differ by case alone nowhere here: "L" and "l", "ML" and "ml" are read alike.
constexpr std::array kUnits = std::to_array<AmountUnit>({
    {"g", Unit::gram, 1'000'000},
    {"gram", Unit::gram, 1'000'000},
    {"grams", Unit::gram, 1'000'000},
    {"gramme", Unit::gram, 1'000'000},
    {"grammes", Unit::gram, 1'000'000},
    {"kg", Unit::gram, 1'000'000'000},
    {"mg", Unit::gram, 1'000},
    {"\u00B5g", Unit::gram, 1},
    {"\u03BCg", Unit::gram, 1},
    {"ug", Unit::gram, 1},
    {"ml", Unit::millilitre, 1'000},
    {"cc", Unit::millilitre, 1'000},
    {"cm3", Unit::millilitre, 1'000},
    {"cm\u00B3", Unit::millilitre, 1'000},
    {"cl", Unit::millilitre, 10'000},
    {"dl", Unit::millilitre, 100'000},
    {"l", Unit::millilitre, 1'000'000},
    {"litre", Unit::millilitre, 1'000'000},
    {"litres", Unit::millilitre, 1'000'000},
    {"liter", Unit::millilitre, 1'000'000},
    {"liters", Unit::millilitre, 1'000'000},
    {"\u00B5l", Unit::millilitre, 1},
    {"\u03BCl", Unit::millilitre, 1},
    {"ul", Unit::millilitre, 1},
    {"mm2", Unit::squareMillimetre, 1'000'000},
    {"mm\u00B2", Unit::squareMillimetre, 1'000'000},
    {"cm2", Unit::squareMillimetre, 100'000'000},
    {"cm\u00B2", Unit::squareMillimetre, 100'000'000},
    {"dm2", Unit::squareMillimetre, 10'000'000'000},
    {"dm\u00B2", Unit::squareMillimetre, 10'000'000'000},
    {"m2", Unit::squareMillimetre, 1'000'000'000'000},
    {"m\u00B2", Unit::squareMillimetre, 1'000'000'000'000},
    {"in2", Unit::squareMillimetre, 645'160'000},
    {"in\u00B2", Unit::squareMillimetre, 645'160'000},
    {"sq in", Unit::squareMillimetre, 645'160'000},
    {"m", Unit::metre, 1'000'000'000},
    {"metre", Unit::metre, 1'000'000'000},
    {"metres", Unit::metre, 1'000'000'000},
    {"meter", Unit::metre, 1'000'000'000},
    {"meters", Unit::metre, 1'000'000'000},
    {"cm", Unit::metre, 10'000'000},
    {"mm", Unit::metre, 1'000'000},
    {"in", Unit::metre, 25'400'000},
    {"inch", Unit::metre, 25'400'000},
    {"inches", Unit::metre, 25'400'000},
    {"sheet", Unit::sheet, 1'000},
    {"sheets", Unit::sheet, 1'000},
    {"sh", Unit::sheet, 1'000},
    {"piece", Unit::piece, 1'000},
    {"pieces", Unit::piece, 1'000},
    {"pc", Unit::piece, 1'000},
    {"pcs", Unit::piece, 1'000},
    {"skin", Unit::piece, 1'000},
    {"skins", Unit::piece, 1'000},
    {"hide", Unit::piece, 1'000},
    {"hides", Unit::piece, 1'000},
});

// To the nearest count, halves up; the number and the count are small.
std::optional<std::int64_t> nearestCount(const ScannedNumber& number, std::int64_t perUnit) {
    std::int64_t product = 0;
    if (number.numerator < 0 || __builtin_mul_overflow(number.numerator, perUnit, &product) ||
        __builtin_add_overflow(product, number.denominator / 2, &product)) {
        return std::nullopt;
    }
    return product / number.denominator;
}

tl::expected<Amount, TextError> parse(std::string_view text, bool takesNearest) {
    const auto read = splitNumberAndUnit(text);
    if (!read) {
        return tl::unexpected(read.error());
    }
    if (read->unit.empty()) {
        return tl::unexpected(TextError{TextProblem::unitMissing, read->unitAt});
    }
    const auto known = std::ranges::find_if(kUnits, [&](const AmountUnit& candidate) {
        return sameLetters(candidate.name, read->unit);
    });
    if (known == kUnits.end()) {
        return tl::unexpected(TextError{TextProblem::unitUnknown, read->unitAt});
    }
    const auto count = wholeCount(read->number, known->count);
    if (count) {
        return Amount{*count, known->unit};
    }
    const bool isShare = known->unit == Unit::sheet || known->unit == Unit::piece;
    const auto nearest = takesNearest && isShare && read->number.isFraction
                             ? nearestCount(read->number, known->count)
                             : std::nullopt;
    if (nearest && *nearest > 0) {
        return Amount{*nearest, known->unit};
    }
    return tl::unexpected(TextError{count.error(), read->numberAt});
}

} // namespace

tl::expected<Amount, TextError> parseAmount(std::string_view text) {
    return parse(text, false);
}

tl::expected<Amount, TextError> parseAmountNearly(std::string_view text) {
    return parse(text, true);
}

namespace {

constexpr std::int64_t kManySquareMillimetres = 10'000'000'000;  // 100 cm²
constexpr std::int64_t kManySquareCentimetres = 100'000'000'000; // a tenth of a square metre

// In the unit that keeps the figure short; exact in each.
std::string areaText(std::int64_t count) {
    const std::int64_t size = count < 0 ? -count : count;
    return size >= kManySquareCentimetres   ? decimalText(count, 12) + " m\u00B2"
           : size >= kManySquareMillimetres ? decimalText(count, 8) + " cm\u00B2"
                                            : decimalText(count, 6) + " mm\u00B2";
}

} // namespace

std::string toText(Amount amount) {
    const bool one = amount.count == 1'000 || amount.count == -1'000;
    switch (amount.unit) {
    case Unit::gram:
        return decimalText(amount.count, 6) + " g";
    case Unit::millilitre:
        return decimalText(amount.count, 3) + " ml";
    case Unit::squareMillimetre:
        return areaText(amount.count);
    case Unit::metre:
        return decimalText(amount.count, 9) + " m";
    case Unit::sheet:
        return decimalText(amount.count, 3) + (one ? " sheet" : " sheets");
    case Unit::piece:
        break;
    }
    return decimalText(amount.count, 3) + (one ? " piece" : " pieces");
}

std::optional<Amount> sum(Amount a, Amount b) {
    Amount total{0, a.unit};
    if (a.unit != b.unit || __builtin_add_overflow(a.count, b.count, &total.count)) {
        return std::nullopt;
    }
    return total;
}

} // namespace headcap::core

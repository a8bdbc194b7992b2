#include "core/values/amount_words.h"

#include <algorithm>
#include <array>

#include "core/values/decimal.h"

namespace headcap::core {
namespace {

constexpr std::int64_t kWhole = 1'000; // of a sheet, of a piece

struct Fraction {
    std::int64_t thousandths;
    std::string_view words; // before "a sheet"
    std::string_view sign;  // after a whole number
};

constexpr std::array kFractions = std::to_array<Fraction>({
    {100, "a tenth of", ""},
    {125, "an eighth of", "⅛"},
    {250, "a quarter of", "¼"},
    {333, "a third of", "⅓"},
    {375, "three eighths of", "⅜"},
    {500, "half", "½"},
    {625, "five eighths of", "⅝"},
    {667, "two thirds of", "⅔"},
    {750, "three quarters of", "¾"},
    {875, "seven eighths of", "⅞"},
});

std::string ofPieces(std::int64_t count, std::string_view one) {
    const std::int64_t part = count % kWhole;
    const auto known = std::ranges::find(kFractions, part, &Fraction::thousandths);
    if (count < kWhole && count > 0) {
        const std::string share =
            known == kFractions.end() ? decimalText(count, 3) + " of" : std::string{known->words};
        return share + " a " + std::string{one};
    }
    const bool isSigned = known != kFractions.end() && !known->sign.empty();
    const std::string number = isSigned ? std::to_string(count / kWhole) + std::string{known->sign}
                                        : decimalText(count, 3);
    return number + " " + std::string{one} + (count == kWhole ? "" : "s");
}

std::string ofMetres(std::int64_t nanometres) {
    return nanometres >= 1'000'000'000 ? decimalText(nanometres, 9) + " m"
           : nanometres >= 10'000'000  ? decimalText(nanometres, 7) + " cm"
                                       : decimalText(nanometres, 6) + " mm";
}

std::string_view nameOfOne(Unit unit, std::string_view piece) {
    return unit == Unit::sheet ? "sheet" : piece;
}

} // namespace

std::string amountWords(Amount amount, std::string_view piece) {
    if (amount.count <= 0) {
        return toText(amount); // nothing, or what an entry of the ledger takes out
    }
    switch (amount.unit) {
    case Unit::gram:
        return amount.count >= 1'000'000'000 ? decimalText(amount.count, 9) + " kg"
                                             : toText(amount);
    case Unit::millilitre:
        return amount.count >= 1'000'000 ? decimalText(amount.count, 6) + " l" : toText(amount);
    case Unit::squareMillimetre:
        return toText(amount);
    case Unit::metre:
        return ofMetres(amount.count);
    case Unit::sheet:
    case Unit::piece:
        break;
    }
    return ofPieces(amount.count, nameOfOne(amount.unit, piece));
}

std::string aboutWords(Amount amount, std::string_view piece) {
    const bool isCounted = amount.unit == Unit::sheet || amount.unit == Unit::piece;
    if (!isCounted || amount.count < kWhole) {
        return amountWords(amount, piece);
    }
    constexpr std::int64_t kQuarter = kWhole / 4;
    const std::int64_t over = amount.count % kQuarter;
    const Amount near{amount.count - over + (over * 2 < kQuarter ? 0 : kQuarter), amount.unit};
    return (near == amount ? "" : "about ") + amountWords(near, piece);
}

} // namespace headcap::core

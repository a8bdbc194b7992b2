#include "core/materials/conversion.h"

#include "core/values/wide.h"

#include <limits>

namespace headcap::core {
namespace {

// Products of three counts: µm² of a sheet times its thousandths times mg/m².
struct Ratio {
    Wide numerator = 1;
    Wide denominator = 1;
};

using Factor = tl::expected<Ratio, ConversionProblem>;

Factor areaOfSheet(const LotMeasures& lot) {
    if (!lot.sheetWidth || !lot.sheetHeight || lot.sheetWidth->count() <= 0 ||
        lot.sheetHeight->count() <= 0) {
        return tl::unexpected(ConversionProblem::sheetSizeUnknown);
    }
    const std::int64_t area = areaOf(*lot.sheetWidth, *lot.sheetHeight).count();
    return Ratio{area, 1'000}; // µm² of a thousandth
}

Factor weightOfArea(const LotMeasures& lot) {
    if (lot.grammageMgM2 <= 0) {
        return tl::unexpected(ConversionProblem::weightUnknown);
    }
    return Ratio{lot.grammageMgM2, 1'000'000'000}; // µg of a µm²: mg/m² is 1e-9 of it
}

// From a unit to µm²; its reverse is the way back.
Factor toArea(Unit unit, const LotMeasures& lot) {
    switch (unit) {
    case Unit::squareMillimetre:
        return Ratio{};
    case Unit::sheet:
        return areaOfSheet(lot);
    case Unit::gram:
        return weightOfArea(lot).map([](const Ratio& r) {
            return Ratio{r.denominator, r.numerator};
        });
    case Unit::millilitre:
    case Unit::metre:
    case Unit::piece:
        break;
    }
    return tl::unexpected(ConversionProblem::otherKind);
}

} // namespace

LotMeasures measuresOf(const Lot& lot, const Material& kind) {
    return {.sheetWidth = lot.sheetWidth,
            .sheetHeight = lot.sheetHeight,
            .grammageMgM2 = kind.grammageMgM2};
}

tl::expected<Amount, ConversionProblem> converted(Amount amount, Unit to, const LotMeasures& lot) {
    if (amount.unit == to) {
        return amount;
    }
    const Factor there = toArea(amount.unit, lot);
    const Factor back = toArea(to, lot);
    if (!there || !back) {
        return tl::unexpected(there ? back.error() : there.error());
    }
    Wide above = 0;
    Wide below = 0;
    if (__builtin_mul_overflow(static_cast<Wide>(amount.count),
                               there->numerator * back->denominator, &above)) {
        return tl::unexpected(ConversionProblem::tooMuch);
    }
    below = there->denominator * back->numerator;
    const Wide count = nearest(above, below);
    if (count > std::numeric_limits<std::int64_t>::max() ||
        count < std::numeric_limits<std::int64_t>::min()) {
        return tl::unexpected(ConversionProblem::tooMuch);
    }
    if (count == 0 && amount.count != 0) {
        return tl::unexpected(ConversionProblem::tooLittle);
    }
    return Amount{static_cast<std::int64_t>(count), to};
}

tl::expected<Amount, ConversionProblem> asCounted(Amount amount, const Lot& lot,
                                                  const Material& kind) {
    return converted(amount, kind.unit, measuresOf(lot, kind));
}

} // namespace headcap::core

// House values as people read and write them.
#include "core/cutting/house_figures.h"
#include "core/values/decimal.h"
#include "core/values/measure_text.h"

namespace headcap::core {
namespace {

// Beyond these no figure of a bench lies.
constexpr Length kMostLength = Length::millimetres(500);
constexpr std::int64_t kMostPerMille = 5'000;

// "50 %" or "50" as a whole number of 10^-places per cent.
std::optional<std::int64_t> share(std::string_view text, int places) {
    while (!text.empty() && (text.back() == '%' || text.back() == ' ')) {
        text.remove_suffix(1);
    }
    const auto value = parseDecimal(text, places);
    return value && *value >= 0 ? std::optional{*value} : std::nullopt;
}

} // namespace

std::string textOf(const HouseFigure& figure, CuttingHouse house) {
    if (figure.length != nullptr) {
        return toText(figure.length(house));
    }
    return figure.perMille != nullptr ? decimalText(figure.perMille(house), 1) + " %"
                                      : decimalText(figure.ppm(house), 4) + " %";
}

bool put(const HouseFigure& figure, std::string_view text, CuttingHouse& house) {
    if (figure.length != nullptr) {
        const auto length = parseLength(text);
        if (!length || length->isNegative() || *length > kMostLength) {
            return false;
        }
        figure.length(house) = *length;
        return true;
    }
    if (figure.perMille != nullptr) {
        const auto value = share(text, 1);
        if (!value || *value > kMostPerMille) {
            return false;
        }
        figure.perMille(house) = static_cast<int>(*value);
        return true;
    }
    const auto value = share(text, 4);
    if (!value || *value > kMostPerMille * 1'000) {
        return false;
    }
    figure.ppm(house) = *value;
    return true;
}

} // namespace headcap::core

#include "core/materials/leaf_weight.h"

#include <optional>

#include "core/values/amount.h"
#include "core/values/decimal.h"
#include "core/values/measure_text.h"
#include "core/values/wide.h"

namespace headcap::core {
namespace {

constexpr std::int64_t kHeaviestMgM2 = 3'000'000; // of a board
constexpr int kPlaces = 3;

std::string_view trimmed(std::string_view text) {
    const std::size_t first = text.find_first_not_of(' ');
    if (first == std::string_view::npos) {
        return {};
    }
    return text.substr(first, text.find_last_not_of(' ') - first + 1);
}

tl::unexpected<TextError> no(TextProblem problem) {
    return tl::unexpected(TextError{problem, 0});
}

// "250 x 175 mm", "250 × 175": the unit said last is that of both.
std::optional<std::pair<Length, Length>> parseSize(std::string_view text) {
    for (const std::string_view by : {"×", "x", "X"}) {
        const std::size_t at = text.find(by);
        if (at == std::string_view::npos) {
            continue;
        }
        const auto height = parseLength(trimmed(text.substr(at + by.size())));
        std::string_view first = trimmed(text.substr(0, at));
        const auto width = parseLength(first);
        if (!width || !height) {
            return std::nullopt;
        }
        return std::pair{*width, *height};
    }
    return std::nullopt;
}

} // namespace

std::int64_t weightOfLeaf(Mass mass, Length width, Length height) {
    constexpr std::int64_t kMgM2OfUgNm2 = 1'000'000'000'000'000;
    const Wide area = static_cast<Wide>(width.count()) * height.count();
    return area <= 0 ? 0
                     : clampedCount(nearest(static_cast<Wide>(mass.count()) * kMgM2OfUgNm2, area));
}

tl::expected<std::int64_t, TextError> parseLeafWeight(std::string_view text) {
    text = trimmed(text);
    if (text.empty()) {
        return no(TextProblem::empty);
    }
    std::int64_t weight = 0;
    if (const std::size_t of = text.find(" of "); of != std::string_view::npos) {
        const auto amount = parseAmount(trimmed(text.substr(0, of)));
        const auto size = parseSize(text.substr(of + 4));
        if (!amount || amount->unit != Unit::gram || !size) {
            return no(TextProblem::notANumber);
        }
        weight = weightOfLeaf(Mass::micrograms(amount->count), size->first, size->second);
    } else {
        for (const std::string_view unit : {"g/m²", "g/m2", "gsm"}) {
            if (text.ends_with(unit)) {
                text.remove_suffix(unit.size());
                break;
            }
        }
        const auto number = parseDecimal(trimmed(text), kPlaces);
        if (!number) {
            return tl::unexpected(number.error());
        }
        weight = *number;
    }
    if (weight <= 0 || weight > kHeaviestMgM2) {
        return no(TextProblem::outOfRange);
    }
    return weight;
}

std::string leafWeightText(std::int64_t mgM2) {
    return decimalText(mgM2, kPlaces) + " g/m²";
}

} // namespace headcap::core

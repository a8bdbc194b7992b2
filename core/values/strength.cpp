#include "core/values/strength.h"

#include <algorithm>
#include <array>
#include <optional>
#include <string>

#include "core/values/decimal.h"
#include "core/values/unit_text.h"

namespace headcap::core {
namespace {

struct RatioUnit {
    std::string_view name;
    std::int64_t partsPerMillion;
};
struct BasisName {
    std::string_view name;
    StrengthBasis basis;
};
struct FullUnit {
    std::string_view name;
    std::int64_t partsPerMillion;
    StrengthBasis basis;
};

constexpr auto kRatios = std::to_array<RatioUnit>({
    {"%", 10'000},
    {"per cent", 10'000},
    {"percent", 10'000},
    {"\u2030", 1'000}, // per mille
    {"ppm", 1},
});
constexpr auto kBases = std::to_array<BasisName>({
    {"w/v", StrengthBasis::weightInVolume},
    {"m/v", StrengthBasis::weightInVolume},
    {"w/w", StrengthBasis::weightInWeight},
    {"m/m", StrengthBasis::weightInWeight},
    {"v/v", StrengthBasis::volumeInVolume},
});
// Spellings that carry their basis in themselves.
constexpr auto kFull = std::to_array<FullUnit>({
    {"g/l", 1'000, StrengthBasis::weightInVolume},
    {"mg/ml", 1'000, StrengthBasis::weightInVolume},
    {"g/100ml", 10'000, StrengthBasis::weightInVolume},
    {"g/100g", 10'000, StrengthBasis::weightInWeight},
    {"g/kg", 1'000, StrengthBasis::weightInWeight},
    {"ml/l", 1'000, StrengthBasis::volumeInVolume},
    {"ml/100ml", 10'000, StrengthBasis::volumeInVolume},
});

struct Scale {
    std::int64_t partsPerMillion;
    StrengthBasis basis;
};

std::optional<Scale> fullUnit(std::string_view unit) {
    std::string tight(unit);
    std::erase(tight, ' ');
    const auto found =
        std::ranges::find_if(kFull, [&](const FullUnit& f) { return sameLetters(f.name, tight); });
    return found == kFull.end() ? std::nullopt
                                : std::optional(Scale{found->partsPerMillion, found->basis});
}

// "% w/v", "% (w/v)": the ratio, then its basis.
tl::expected<Scale, TextError> ratioAndBasis(std::string_view unit, std::size_t at) {
    const auto ratio = std::ranges::find_if(kRatios, [&](const RatioUnit& r) {
        return sameLetters(r.name, unit.substr(0, r.name.size()));
    });
    if (ratio == kRatios.end()) {
        return tl::unexpected(TextError{TextProblem::unitUnknown, at});
    }
    const std::string_view rest = unit.substr(ratio->name.size());
    std::string_view basis = trimmed(rest);
    const std::size_t basisAt = at + ratio->name.size() + blanksAtHead(rest);
    if (basis.empty()) {
        return tl::unexpected(TextError{TextProblem::unitMissing, basisAt});
    }
    if (basis.starts_with('(') && basis.ends_with(')')) {
        basis = trimmed(basis.substr(1, basis.size() - 2));
    }
    const auto known = std::ranges::find_if(
        kBases, [&](const BasisName& b) { return sameLetters(b.name, basis); });
    if (known == kBases.end()) {
        return tl::unexpected(TextError{TextProblem::unitUnknown, basisAt});
    }
    return Scale{ratio->partsPerMillion, known->basis};
}

} // namespace

tl::expected<Strength, TextError> parseStrength(std::string_view text) {
    const auto read = splitNumberAndUnit(text);
    if (!read) {
        return tl::unexpected(read.error());
    }
    if (read->unit.empty()) {
        return tl::unexpected(TextError{TextProblem::unitMissing, read->unitAt});
    }
    const auto full = fullUnit(read->unit);
    const auto scale =
        full ? tl::expected<Scale, TextError>(*full) : ratioAndBasis(read->unit, read->unitAt);
    if (!scale) {
        return tl::unexpected(scale.error());
    }
    const auto parts = wholeCount(read->number, scale->partsPerMillion);
    if (!parts) {
        return tl::unexpected(TextError{parts.error(), read->numberAt});
    }
    // More than the whole is no share of it; a weight in a volume may pass 100 %.
    const bool isShare = scale->basis != StrengthBasis::weightInVolume;
    if (*parts < 0 || (isShare && *parts > 1'000'000)) {
        return tl::unexpected(TextError{TextProblem::outOfRange, read->numberAt});
    }
    return Strength{*parts, scale->basis};
}

std::string toText(const Strength& strength) {
    const auto basis = std::ranges::find(kBases, strength.basis, &BasisName::basis);
    return decimalText(strength.partsPerMillion, 4) + " % " + std::string(basis->name);
}

} // namespace headcap::core

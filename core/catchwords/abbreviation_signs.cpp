#include "core/catchwords/abbreviation_signs.h"

#include <array>

namespace headcap::core {
namespace {

using Spellings = std::span<const std::u32string_view>;
constexpr std::u32string_view kNasalSpellings[] = {U"", U"m", U"n", U"mm", U"nn", U"ue", U"en"};
constexpr std::u32string_view kStrokeSpellings[] = {U"", kAnyLetters};
constexpr std::u32string_view kAndSpellings[] = {U"et", U"und", U"uund", U"and", U"i", U"e", U"en"};
constexpr std::u32string_view kPerSpellings[] = {U"per", U"par", U"por", U"pro", U"pre"};
constexpr std::u32string_view kConSpellings[] = {U"con", U"com", U"cum", U"us"};
constexpr std::u32string_view kUsSpellings[] = {U"us", U"os", U"s"};
constexpr std::u32string_view kQuodSpellings[] = {U"quod", U"que", U"quam", U"quae"};
constexpr std::u32string_view kUeSpellings[] = {U"ue", U"us", U"ed", U"m", U"et", U"z", U""};
constexpr std::u32string_view kDeSpellings[] = {U"de", U"d", U"uod"};

constexpr std::array<Spellings, kSignEnd - kNasal> kSpellings = {
    kNasalSpellings, kStrokeSpellings, kAndSpellings, kPerSpellings, kConSpellings,
    kUsSpellings,    kQuodSpellings,   kUeSpellings,  kDeSpellings};

} // namespace

std::span<const std::u32string_view> expansionsOf(char32_t sign) {
    if (sign < kNasal || sign >= kSignEnd)
        return {};
    return kSpellings[sign - kNasal];
}

} // namespace headcap::core

#include "core/values/length_words.h"

#include <numeric>

#include <fmt/format.h>

#include "core/values/measure_text.h"

namespace headcap::core {
namespace {

constexpr std::int64_t kHalfMillimetre = 500'000;
constexpr std::int64_t kSixteenths = 16;
constexpr std::int64_t kSixteenth = 25'400'000 / kSixteenths; // nm

} // namespace

Length toHalfMillimetre(Length length) {
    return Length::nanometres((length.count() + kHalfMillimetre / 2) / kHalfMillimetre *
                              kHalfMillimetre);
}

std::string asMeasured(Length length) {
    const std::int64_t nm = length.count();
    if (nm <= 0 || nm % kSixteenth != 0 || nm % kHalfMillimetre == 0) {
        return toText(length);
    }
    const std::int64_t whole = nm / kSixteenth / kSixteenths;
    const std::int64_t over = nm / kSixteenth % kSixteenths;
    if (over == 0) {
        return fmt::format("{} in", whole);
    }
    const std::int64_t shared = std::gcd(over, kSixteenths);
    const std::string part = fmt::format("{}/{} in", over / shared, kSixteenths / shared);
    return whole == 0 ? part : fmt::format("{} {}", whole, part);
}

} // namespace headcap::core

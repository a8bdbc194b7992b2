#include "core/treatment/line_conditions.h"

#include <algorithm>
#include <array>

#include "core/values/decimal.h"
#include "core/values/strength.h"

namespace headcap::core::line {
namespace {

constexpr std::int64_t kColdestTenths = -400; // freezers
constexpr std::int64_t kHottestTenths = 2500; // finishing tools

bool ends(std::string_view& word, std::string_view unit) {
    if (!word.ends_with(unit)) {
        return false;
    }
    word.remove_suffix(unit.size());
    return true;
}

// A number with its unit, in one word or in two.
struct Measured {
    std::string_view number;
    std::size_t words = 0;
};

template <std::size_t N>
std::optional<Measured> measured(const Words& words, std::size_t at,
                                 const std::array<std::string_view, N>& units) {
    if (!isFree(words, at)) {
        return std::nullopt;
    }
    for (const std::string_view unit : units) {
        std::string_view joined = words[at].lower;
        if (ends(joined, unit) && !joined.empty()) {
            return Measured{joined, 1};
        }
        if (isFree(words, at + 1) && words[at + 1].lower == unit) {
            return Measured{words[at].lower, 2};
        }
    }
    return std::nullopt;
}

// "22C": what a room or a bath has, and two figures; "2C" may be a leaf.
bool isRoomTemperature(std::string_view lower) {
    const auto isDigit = [](char c) { return c >= '0' && c <= '9'; };
    return lower.size() == 3 && lower[0] >= '1' && lower[0] <= '6' && isDigit(lower[1]) &&
           lower[2] == 'c';
}

std::size_t takeTemperature(Words& words, std::size_t at, Conditions& read) {
    static constexpr std::array<std::string_view, 4> kUnits{"°c", "°C", "deg", "degrees"};
    auto found = measured(words, at, kUnits);
    if (!found && isFree(words, at) && isRoomTemperature(words[at].lower)) {
        found = Measured{std::string_view{words[at].lower}.substr(0, 2), 1};
    }
    const auto tenths = found ? parseDecimal(found->number, 1) : parseDecimal("", 1);
    if (!tenths || read.temperatureTenthsC || *tenths < kColdestTenths ||
        *tenths > kHottestTenths) {
        return 0;
    }
    read.temperatureTenthsC = *tenths;
    return found->words;
}

// "55 % RH", "55% RH", "RH 55 %".
std::size_t takeHumidity(Words& words, std::size_t at, Conditions& read) {
    static constexpr std::array<std::string_view, 1> kPercent{"%"};
    if (isFree(words, at) && words[at].lower.ends_with("%rh") && !read.humidityPercent) {
        const std::string_view figures =
            std::string_view{words[at].lower}.substr(0, words[at].lower.size() - 3);
        const auto joined = parseDecimal(figures, 0);
        if (joined && *joined >= 0 && *joined <= 100) {
            read.humidityPercent = *joined;
            return 1;
        }
    }
    const bool leads = isFree(words, at) && words[at].lower == "rh";
    const std::size_t from = leads ? at + 1 : at;
    const auto found = measured(words, from, kPercent);
    const auto percent = found ? parseDecimal(found->number, 0) : parseDecimal("", 0);
    if (!percent || read.humidityPercent || *percent < 0 || *percent > 100) {
        return 0;
    }
    const std::size_t after = from + found->words;
    if (!leads && !(isFree(words, after) && words[after].lower == "rh")) {
        return 0;
    }
    read.humidityPercent = *percent;
    return leads ? after - at : after + 1 - at;
}

std::size_t takeConcentration(Words& words, std::size_t at, Conditions& read) {
    std::string text;
    for (std::size_t end = at; end < at + 3 && isFree(words, end); ++end) {
        text += (text.empty() ? "" : " ") + words[end].lower;
        const auto strength = read.concentration.empty() ? parseStrength(text) : parseStrength("");
        if (strength) {
            read.concentration = toText(*strength);
            return end + 1 - at;
        }
    }
    return 0;
}

// Only where it is said what it is: "under 6 kg", "at 2 bar".
std::size_t takePressure(Words& words, std::size_t at, Conditions& read) {
    static constexpr std::array<std::string_view, 3> kUnits{"kg", "bar", "kpa"};
    const bool isLead =
        isFree(words, at) && (words[at].lower == "under" || words[at].lower == "at");
    const auto found = isLead ? measured(words, at + 1, kUnits) : std::nullopt;
    if (!found || !read.pressure.empty() || !parseDecimal(found->number, 3)) {
        return 0;
    }
    const Word& last = words[at + found->words];
    read.pressure = found->words == 2 ? std::string{found->number} + " " + std::string{last.text}
                                      : std::string{last.text};
    return 1 + found->words;
}

// "grain along", "grain across the spine".
std::size_t takeGrain(Words& words, std::size_t at, Conditions& read) {
    if (!isFree(words, at) || words[at].lower != "grain" || read.grain != GrainAtSpine::notSaid ||
        !isFree(words, at + 1)) {
        return 0;
    }
    if (words[at + 1].lower == "along" || words[at + 1].lower == "across") {
        read.grain = words[at + 1].lower == "along" ? GrainAtSpine::along : GrainAtSpine::across;
    } else {
        return 0;
    }
    const bool namesSpine =
        isFree(words, at + 3) && words[at + 2].lower == "the" && words[at + 3].lower == "spine";
    return namesSpine ? 4 : 2;
}

} // namespace

Conditions takeConditions(Words& words) {
    Conditions read;
    for (std::size_t at = 0; at < words.size();) {
        std::size_t length = takeTemperature(words, at, read);
        length = length > 0 ? length : takeHumidity(words, at, read);
        length = length > 0 ? length : takeConcentration(words, at, read);
        length = length > 0 ? length : takePressure(words, at, read);
        length = length > 0 ? length : takeGrain(words, at, read);
        if (length > 0) {
            take(words, at, at + length, LinePart::condition);
            takeLeads(words, at, {"at"});
        }
        at += std::max<std::size_t>(length, 1);
    }
    return read;
}

} // namespace headcap::core::line

#include "core/treatment/line_durations.h"

#include <algorithm>
#include <array>

#include "core/values/decimal.h"

namespace headcap::core::line {
namespace {

constexpr std::int64_t kLongest = 31LL * 24 * 60;

struct TimeUnit {
    std::string_view name;
    std::int64_t minutes;
};
constexpr std::array kUnits = std::to_array<TimeUnit>({{"minutes", 1},
                                                       {"minute", 1},
                                                       {"mins", 1},
                                                       {"min", 1},
                                                       {"'", 1},
                                                       {"hours", 60},
                                                       {"hour", 60},
                                                       {"hrs", 60},
                                                       {"hr", 60},
                                                       {"h", 60},
                                                       {"days", 24 * 60},
                                                       {"day", 24 * 60}});

// Parts of one, and numbers as they are said.
struct SaidNumber {
    std::string_view name;
    std::string_view figures;
};
constexpr std::array kNumbers = std::to_array<SaidNumber>(
    {{"½", "0.5"},    {"1/2", "0.5"},   {"¼", "0.25"},     {"1/4", "0.25"},  {"¾", "0.75"},
     {"3/4", "0.75"}, {"one", "1"},     {"two", "2"},      {"three", "3"},   {"four", "4"},
     {"five", "5"},   {"six", "6"},     {"seven", "7"},    {"eight", "8"},   {"nine", "9"},
     {"ten", "10"},   {"twelve", "12"}, {"fifteen", "15"}, {"twenty", "20"}, {"thirty", "30"},
     {"forty", "40"}, {"fifty", "50"}});

constexpr std::array kRounds = std::to_array<std::string_view>(
    {"baths", "rinses", "changes", "washes", "times", "coats", "goes", "rounds", "sprayings"});

constexpr std::int64_t kLeastBare = 5; // "45m": less may be metres

std::optional<std::int64_t> unitOf(std::string_view word) {
    const auto found = std::ranges::find(kUnits, word, &TimeUnit::name);
    return found == kUnits.end() ? std::nullopt : std::optional{found->minutes};
}

// "1.5" of sixty minutes, to the nearest minute.
std::optional<std::int64_t> times(std::string_view number, std::int64_t unit) {
    constexpr std::int64_t kThousand = 1000;
    const auto said = std::ranges::find(kNumbers, number, &SaidNumber::name);
    number = said == kNumbers.end() ? number : said->figures;
    const auto thousandths = parseDecimal(number, 3);
    if (!thousandths || *thousandths < 0 || *thousandths > kLongest * kThousand) {
        return std::nullopt;
    }
    const std::int64_t minutes = (*thousandths * unit + kThousand / 2) / kThousand;
    return minutes <= kLongest ? std::optional{minutes} : std::nullopt;
}

// "20min", "45m", "1.5h", "1h20", "1h20min", "2h10m".
std::optional<std::int64_t> joined(std::string_view word) {
    const std::size_t number = word.find_first_not_of("0123456789.,");
    if (number == 0 || number == std::string_view::npos) {
        return std::nullopt;
    }
    if (const auto unit = unitOf(word.substr(number))) {
        return times(word.substr(0, number), *unit);
    }
    if (word.substr(number) == "m") {
        const auto bare = parseDecimal(word.substr(0, number), 0);
        return bare && *bare >= kLeastBare ? times(word.substr(0, number), 1) : std::nullopt;
    }
    if (word[number] != 'h') {
        return std::nullopt;
    }
    std::string_view rest = word.substr(number + 1);
    for (const std::string_view unit : {std::string_view{"min"}, std::string_view{"m"}}) {
        if (rest.ends_with(unit)) {
            rest.remove_suffix(unit.size());
            break;
        }
    }
    const auto hours = times(word.substr(0, number), 60);
    const auto minutes = parseDecimal(rest, 0);
    if (!hours || !minutes || *minutes < 0 || *minutes > 59) {
        return std::nullopt;
    }
    return *hours + *minutes;
}

std::optional<Duration> spoken(const Words& words, std::size_t at) {
    if (stands(words, at, {"half", "an", "hour"})) {
        return Duration{30, 3};
    }
    if (stands(words, at, {"three", "quarters", "of", "an", "hour"})) {
        return Duration{45, 5};
    }
    if (stands(words, at, {"quarter", "of", "an", "hour"})) {
        return Duration{15, 4};
    }
    if (stands(words, at, {"an", "hour", "and", "a", "half"})) {
        return Duration{90, 5};
    }
    if (stands(words, at, {"an", "hour"})) {
        return Duration{60, 2};
    }
    return std::nullopt;
}

// "3", "three"; never a part of one.
std::optional<std::int64_t> roundsOf(std::string_view number) {
    constexpr std::int64_t kMost = 50;
    const auto said = std::ranges::find(kNumbers, number, &SaidNumber::name);
    const auto count = parseDecimal(said == kNumbers.end() ? number : said->figures, 0);
    return count && *count > 1 && *count <= kMost ? std::optional{*count} : std::nullopt;
}

// "3x25min", "3×25 min".
std::optional<Duration> repeatedInOneWord(const Words& words, std::size_t at) {
    const std::string_view word = words[at].lower;
    for (const std::string_view sign : {std::string_view{"x"}, std::string_view{"×"}}) {
        const std::size_t cut = word.find(sign);
        const auto count =
            cut == std::string_view::npos ? std::nullopt : roundsOf(word.substr(0, cut));
        if (!count) {
            continue;
        }
        const std::string_view each = word.substr(cut + sign.size());
        if (const auto minutes = joined(each)) {
            return Duration{*count * *minutes, 1};
        }
        const auto unit = isFree(words, at + 1) ? unitOf(words[at + 1].lower) : std::nullopt;
        const auto minutes = unit ? times(each, *unit) : std::nullopt;
        if (minutes) {
            return Duration{*count * *minutes, 2};
        }
    }
    return std::nullopt;
}

} // namespace

std::optional<Duration> repeatedAt(const Words& words, std::size_t at) {
    if (!isFree(words, at)) {
        return std::nullopt;
    }
    if (const auto read = repeatedInOneWord(words, at)) {
        return read;
    }
    const auto count = roundsOf(words[at].lower);
    if (!count || !isFree(words, at + 1)) {
        return std::nullopt;
    }
    const std::string_view next = words[at + 1].lower;
    const bool isTimes = next == "x" || next == "×";
    if (!isTimes && std::ranges::find(kRounds, next) == kRounds.end()) {
        return std::nullopt;
    }
    std::size_t from = at + 2;
    const bool isOf =
        isFree(words, from) && (words[from].lower == "of" || words[from].lower == "à");
    from += isOf ? 1 : 0;
    const auto each = timeAt(words, from);
    if (!each) {
        return std::nullopt;
    }
    const std::size_t end = from + each->words;
    const bool isEach = stands(words, end, {"each"});
    if (!isTimes && !isOf && !isEach) {
        return std::nullopt;
    }
    return Duration{*count * each->minutes, end - at + (isEach ? 1U : 0U)};
}

std::size_t wholeWordsAt(const Words& words, std::size_t at) {
    for (const auto& said : {std::vector<std::string>{"all", "told"},
                             {"in", "all"},
                             {"all", "in"},
                             {"altogether"},
                             {"in", "total"},
                             {"total"}}) {
        if (stands(words, at, said)) {
            return said.size();
        }
    }
    return 0;
}

std::optional<Duration> timeAt(const Words& words, std::size_t at) {
    if (!isFree(words, at)) {
        return std::nullopt;
    }
    if (const auto read = spoken(words, at)) {
        return read;
    }
    std::optional<Duration> read;
    bool hours = false;
    if (const auto minutes = joined(words[at].lower)) {
        read = Duration{*minutes, 1};
        hours = words[at].lower.ends_with('h');
    } else if (isFree(words, at + 1)) {
        const auto unit = unitOf(words[at + 1].lower);
        const auto counted = unit ? times(words[at].lower, *unit) : std::nullopt;
        if (!counted) {
            return std::nullopt;
        }
        read = Duration{*counted, 2};
        hours = *unit == 60;
    }
    if (read && hours) {
        // "1 h 20 min", "1 h 20".
        const std::size_t next = at + read->words;
        const std::int64_t further =
            (isFree(words, next) ? joined(words[next].lower) : std::nullopt).value_or(60);
        const bool minuteWord = isFree(words, next + 1) && unitOf(words[next + 1].lower) == 1;
        const auto bare =
            isFree(words, next) ? parseDecimal(words[next].lower, 0) : parseDecimal("", 0);
        if (further < 60) {
            return Duration{read->minutes + further, read->words + 1};
        }
        if (bare && *bare >= 0 && *bare < 60 &&
            (minuteWord || next + 1 == words.size() || wholeWordsAt(words, next + 1) > 0)) {
            return Duration{read->minutes + *bare, read->words + (minuteWord ? 2U : 1U)};
        }
    }
    return read;
}

} // namespace headcap::core::line

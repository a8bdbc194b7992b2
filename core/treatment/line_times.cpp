#include "core/treatment/line_times.h"

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

constexpr std::array kSettingWords = std::to_array<std::string_view>(
    {"set",    "sets",    "setting", "nip",     "nips",     "nipping", "dry",     "dries",
     "dried",  "drying",  "weight",  "weights", "press",    "pressed", "presses", "pressing",
     "nipped", "freezer", "frozen",  "left",    "blotters", "felts"});
constexpr std::array kFillers =
    std::to_array<std::string_view>({"for", "over", "about", "another", "further", "under", "in"});

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

constexpr Minutes kOvernight{12 * 60}; // a house value: from evening to morning
constexpr std::int64_t kLeastBare = 5; // "45m": less may be metres

struct Read {
    std::int64_t minutes = 0;
    std::size_t words = 0;
};

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

bool free(const Words& words, std::size_t at) {
    return at < words.size() && !words[at].taken;
}

std::optional<Read> spoken(const Words& words, std::size_t at) {
    if (stands(words, at, {"half", "an", "hour"})) {
        return Read{30, 3};
    }
    if (stands(words, at, {"three", "quarters", "of", "an", "hour"})) {
        return Read{45, 5};
    }
    if (stands(words, at, {"quarter", "of", "an", "hour"})) {
        return Read{15, 4};
    }
    if (stands(words, at, {"an", "hour", "and", "a", "half"})) {
        return Read{90, 5};
    }
    if (stands(words, at, {"an", "hour"})) {
        return Read{60, 2};
    }
    return std::nullopt;
}

// "all told": the time before it is the whole.
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

std::optional<Read> timeAt(const Words& words, std::size_t at) {
    if (!free(words, at)) {
        return std::nullopt;
    }
    if (const auto read = spoken(words, at)) {
        return read;
    }
    std::optional<Read> read;
    bool hours = false;
    if (const auto minutes = joined(words[at].lower)) {
        read = Read{*minutes, 1};
        hours = words[at].lower.ends_with('h');
    } else if (free(words, at + 1)) {
        const auto unit = unitOf(words[at + 1].lower);
        const auto counted = unit ? times(words[at].lower, *unit) : std::nullopt;
        if (!counted) {
            return std::nullopt;
        }
        read = Read{*counted, 2};
        hours = *unit == 60;
    }
    if (read && hours) {
        // "1 h 20 min", "1 h 20".
        const std::size_t next = at + read->words;
        const std::int64_t further =
            (free(words, next) ? joined(words[next].lower) : std::nullopt).value_or(60);
        const bool minuteWord = free(words, next + 1) && unitOf(words[next + 1].lower) == 1;
        const auto bare =
            free(words, next) ? parseDecimal(words[next].lower, 0) : parseDecimal("", 0);
        if (further < 60) {
            return Read{read->minutes + further, read->words + 1};
        }
        if (bare && *bare >= 0 && *bare < 60 &&
            (minuteWord || next + 1 == words.size() || wholeWordsAt(words, next + 1) > 0)) {
            return Read{read->minutes + *bare, read->words + (minuteWord ? 2U : 1U)};
        }
    }
    return read;
}

struct Found {
    Read read{};
    std::size_t at = 0;
    bool isSetting = false;
    std::size_t wholeWords = 0; // "all told", after it
    bool isEach = false;        // of several: "25 min each"
};

std::vector<Found> allTimes(const Words& words) {
    std::vector<Found> all;
    for (std::size_t at = 0; at < words.size(); ++at) {
        if (stands(words, at, {"overnight"}) && isSettingAt(words, at)) {
            all.push_back({{kOvernight.count(), 1}, at, true});
        }
        if (const auto read = timeAt(words, at)) {
            const std::size_t end = at + read->words;
            all.push_back({*read, at, isSettingAt(words, at), wholeWordsAt(words, end),
                           stands(words, end, {"each"}) || stands(words, end, {"apiece"})});
            at = end - 1;
        }
    }
    return all;
}

// The one that says the whole, else the first that is not of each of several, else the first.
const Found* workTime(const std::vector<Found>& all, const Words& words) {
    const auto isWork = [&](const Found& one) {
        const Word& unit = words[one.at + one.read.words - 1];
        return !one.isSetting && !unit.lower.starts_with("day");
    };
    const Found* best = nullptr;
    for (const Found& one : all) {
        const auto rank = [](const Found& of) { return of.wholeWords > 0 ? 2 : of.isEach ? 0 : 1; };
        if (isWork(one) && (best == nullptr || rank(one) > rank(*best))) {
            best = &one;
        }
    }
    return best;
}

} // namespace

bool isSettingAt(const Words& words, std::size_t at) {
    const auto isBetween = [](const Word& word) {
        return word.part == LinePart::condition ||
               std::ranges::find(kFillers, word.lower) != kFillers.end();
    };
    while (at > 0 && isBetween(words[at - 1])) {
        --at;
    }
    return at > 0 && std::ranges::find(kSettingWords, words[at - 1].lower) != kSettingWords.end();
}

Times takeTimes(Words& words) {
    Times times;
    const std::vector<Found> all = allTimes(words);
    if (const Found* work = workTime(all, words)) {
        times.work = Minutes{work->read.minutes};
        take(words, work->at, work->at + work->read.words + work->wholeWords, LinePart::minutes);
        takeLeads(words, work->at, {"for", "about", "took"});
    }
    const auto sets = std::ranges::find(all, true, &Found::isSetting);
    if (sets != all.end()) {
        times.sets = Minutes{sets->read.minutes};
        take(words, sets->at, sets->at + sets->read.words, LinePart::setting);
        takeLeads(words, sets->at,
                  {"for", "about", "took", "set", "sets", "setting", "dries", "drying"});
    }
    return times;
}

} // namespace headcap::core::line

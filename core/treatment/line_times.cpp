#include "core/treatment/line_times.h"

#include <algorithm>
#include <array>

#include "core/treatment/line_durations.h"

namespace headcap::core::line {
namespace {

constexpr std::array kSettingWords = std::to_array<std::string_view>(
    {"set",    "sets",    "setting", "nip",     "nips",     "nipping", "dry",     "dries",
     "dried",  "drying",  "weight",  "weights", "press",    "pressed", "presses", "pressing",
     "nipped", "freezer", "frozen",  "left",    "blotters", "felts"});
constexpr std::array kFillers = std::to_array<std::string_view>(
    {"for", "over", "about", "another", "further", "under", "in", "between", "boards", "the"});

constexpr Minutes kOvernight{12 * 60}; // a house value: from evening to morning

struct Found {
    Duration read{};
    std::size_t at = 0;
    bool isSetting = false;
    std::size_t wholeWords = 0; // "all told", after it
    bool isEach = false;        // of several: "25 min each"
    bool isRepeated = false;    // "3 x 25 min", all of them
};

std::vector<Found> allTimes(const Words& words) {
    std::vector<Found> all;
    for (std::size_t at = 0; at < words.size(); ++at) {
        if (stands(words, at, {"overnight"}) && isSettingAt(words, at)) {
            all.push_back({{kOvernight.count(), 1}, at, true});
        }
        if (const auto whole = repeatedAt(words, at)) {
            all.push_back({.read = *whole, .at = at, .isRepeated = true});
            at += whole->words - 1;
        } else if (const auto read = timeAt(words, at)) {
            const std::size_t end = at + read->words;
            all.push_back({*read, at, isSettingAt(words, at), wholeWordsAt(words, end),
                           stands(words, end, {"each"}) || stands(words, end, {"apiece"})});
            at = end - 1;
        }
    }
    return all;
}

bool isWork(const Found& one, const Words& words) {
    return !one.isSetting && !words[one.at + one.read.words - 1].lower.starts_with("day");
}

int rankOf(const Found& one) {
    return one.wholeWords > 0 ? 3 : one.isEach ? 0 : one.isRepeated ? 1 : 2;
}

// The one that says the whole, else the first that is not of each of several, else the first.
const Found* workTime(const std::vector<Found>& all, const Words& words) {
    const Found* best = nullptr;
    for (const Found& one : all) {
        if (isWork(one, words) && (best == nullptr || rankOf(one) > rankOf(*best))) {
            best = &one;
        }
    }
    return best;
}

// Those that may as well be the time of work.
std::vector<Minutes> asLikely(const std::vector<Found>& all, const Found& chosen,
                              const Words& words) {
    std::vector<Minutes> others;
    for (const Found& one : all) {
        const bool isAsLikely =
            rankOf(one) == rankOf(chosen) || (one.isRepeated && chosen.wholeWords == 0);
        const bool isOther =
            isWork(one, words) && isAsLikely && one.read.minutes != chosen.read.minutes;
        if (isOther) {
            others.emplace_back(one.read.minutes);
        }
    }
    return others;
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

void pressInstead(Words& words, Times& times) {
    constexpr Minutes kAlsoLong{4 * 60}; // more than a hand is at a press
    const bool isSaidToBeWork = std::ranges::any_of(words, [](const Word& word) {
        return word.part == LinePart::minutes && word.lower == "took";
    });
    if (!times.work || isSaidToBeWork || (times.sets && *times.work < kAlsoLong)) {
        return;
    }
    times.sets = times.work;
    times.work.reset();
    times.others.clear();
    for (Word& word : words) {
        word.part = word.part == LinePart::minutes ? LinePart::setting : word.part;
    }
}

Times takeTimes(Words& words) {
    Times times;
    const std::vector<Found> all = allTimes(words);
    if (const Found* work = workTime(all, words)) {
        times.work = Minutes{work->read.minutes};
        times.others = asLikely(all, *work, words);
        times.isOfEach = work->isEach;
        if (!work->isEach && !work->isRepeated) {
            take(words, work->at, work->at + work->read.words + work->wholeWords,
                 LinePart::minutes);
            takeLeads(words, work->at, {"for", "about", "took"});
        }
    }
    // "nip 10 min then press overnight": it has set when the longest is over.
    const auto sets = std::ranges::max_element(all, {}, [](const Found& one) {
        return one.isSetting ? one.read.minutes : std::int64_t{-1};
    });
    if (sets != all.end() && sets->isSetting) {
        times.sets = Minutes{sets->read.minutes};
        take(words, sets->at, sets->at + sets->read.words, LinePart::setting);
        takeLeads(words, sets->at,
                  {"for", "about", "took", "set", "sets", "setting", "dries", "drying"});
    }
    return times;
}

} // namespace headcap::core::line

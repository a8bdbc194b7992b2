#include "core/treatment/line_when.h"

#include <algorithm>
#include <array>
#include <charconv>

#include "core/treatment/line_times.h"
#include "core/values/spoken_time.h"

namespace headcap::core::line {
namespace {

constexpr Minutes kHour{60};
constexpr Minutes kHalfDay{12 * 60};
constexpr Minutes kDay{24 * 60};

std::optional<int> wholeNumber(std::string_view text) {
    int number = 0;
    const auto read = std::from_chars(text.data(), text.data() + text.size(), number);
    const bool isAll = read.ec == std::errc{} && read.ptr == text.data() + text.size();
    return isAll && !text.empty() ? std::optional{number} : std::nullopt;
}

// A time of the clock: "9", "9:20", "14.40", "2pm".
struct ClockTime {
    Minutes at{0};
    bool isClear = false; // with its minutes, or am or pm: no number of leaves
    bool hasHalf = false; // am or pm was said
};

std::optional<ClockTime> clockTime(std::string_view word) {
    ClockTime time;
    const bool isPm = word.ends_with("pm");
    if (isPm || word.ends_with("am")) {
        time.isClear = time.hasHalf = true;
        word.remove_suffix(2);
    }
    const std::size_t point = word.find_first_of(":.");
    const auto hour = wholeNumber(word.substr(0, point));
    std::optional<int> minute = 0;
    if (point != std::string_view::npos) {
        const std::string_view rest = word.substr(point + 1);
        minute = rest.size() == 2 ? wholeNumber(rest) : std::nullopt;
        time.isClear = true;
    }
    const int most = time.hasHalf ? 12 : 23;
    if (!hour || *hour < 0 || *hour > most || !minute || *minute < 0 || *minute > 59) {
        return std::nullopt;
    }
    time.at = *hour * kHour + Minutes{*minute};
    if (time.hasHalf) {
        time.at += *hour == 12 ? (isPm ? Minutes{0} : -kHalfDay) : (isPm ? kHalfDay : Minutes{0});
    }
    return time;
}

// A bench works by day: "1:15 to 2" is after noon.
void setByDay(ClockTime& begins, ClockTime& ends) {
    if (!begins.hasHalf && !ends.hasHalf && begins.at >= kHour && begins.at < 7 * kHour) {
        begins.at += kHalfDay;
    }
    if (begins.hasHalf == ends.hasHalf || !ends.hasHalf) {
        while (ends.at < begins.at && !ends.hasHalf && ends.at + kHalfDay < kDay) {
            ends.at += kHalfDay;
        }
    } else if (begins.at + kHalfDay < ends.at) { // "2 to 3pm"
        begins.at += kHalfDay;
    }
}

struct Span {
    ClockTime begins, ends;
    std::size_t words = 0;
};

std::optional<Span> soundSpan(std::string_view from, std::string_view to, std::size_t words) {
    const auto begins = clockTime(from);
    const auto ends = clockTime(to);
    if (!begins || !ends || !(begins->isClear || ends->isClear)) {
        return std::nullopt;
    }
    Span span{*begins, *ends, words};
    setByDay(span.begins, span.ends);
    return span.begins.at < span.ends.at ? std::optional{span} : std::nullopt;
}

// An amount has a unit after it: "0.40 to 1.20 g".
bool isAmount(const Words& words, std::size_t at) {
    constexpr auto kUnits = std::to_array<std::string_view>(
        {"g", "ml", "mm", "mm2", "mm²", "m", "cm", "%", "kg", "l", "sheets", "sheet", "°c"});
    return at < words.size() && std::ranges::find(kUnits, words[at].lower) != kUnits.end();
}

std::optional<Span> spanAt(const Words& words, std::size_t at) {
    constexpr auto kTill = std::to_array<std::string_view>({"to", "till", "until", "-", "–"});
    if (!isFree(words, at)) {
        return std::nullopt;
    }
    const std::string& word = words[at].lower;
    for (const std::string_view dash : {std::string_view{"-"}, std::string_view{"–"}}) {
        if (const std::size_t cut = word.find(dash); cut != std::string::npos && cut > 0) {
            const std::string_view text{word};
            const auto span = soundSpan(text.substr(0, cut), text.substr(cut + dash.size()), 1);
            return isAmount(words, at + 1) ? std::nullopt : span;
        }
    }
    const bool isTill = isFree(words, at + 2) &&
                        std::ranges::find(kTill, words[at + 1].lower) != kTill.end() &&
                        !words[at + 1].taken;
    return isTill && !isAmount(words, at + 3) ? soundSpan(word, words[at + 2].lower, 3)
                                              : std::nullopt;
}

struct SaidDay {
    Day day;
    std::size_t words = 0;
};

// So many words from `at` as one phrase; nothing where they are not all free.
std::optional<std::string> phraseAt(const Words& words, std::size_t at, std::size_t count) {
    std::string phrase;
    for (std::size_t i = at; i < at + count; ++i) {
        if (!isFree(words, i)) {
            return std::nullopt;
        }
        phrase += (phrase.empty() ? "" : " ") + words[i].lower;
    }
    return phrase;
}

std::optional<Day> dayOf(const Words& words, std::size_t at, std::size_t count, Day today) {
    const auto phrase = phraseAt(words, at, count);
    const auto day = phrase ? parseDay(*phrase, today) : tl::unexpected(TextError{});
    return day ? std::optional{*day} : std::nullopt;
}

// "on Monday", "last Monday": days are read forward from today, and the log looks back.
std::optional<Day> lastWeekday(const Words& words, std::size_t at, Day today) {
    const auto day = dayOf(words, at + 1, 1, today);
    const int ahead = day ? daysBetween(today, *day) : -1;
    if (ahead < 0 || ahead > 6 || words[at + 1].lower.starts_with("to")) { // today, tomorrow
        return std::nullopt;
    }
    const bool isToday = ahead == 0 && words[at].lower == "on";
    return isToday ? *day : Day{std::chrono::sys_days{*day} - std::chrono::days{7}};
}

// A day of two words or three begins with its number; figures alone may be anything else.
bool beginsADay(const Words& words, std::size_t at) {
    const auto isLetter = [](char c) { return c >= 'a' && c <= 'z'; };
    return words[at].lower.size() <= 2 && wholeNumber(words[at].lower) && at + 1 < words.size() &&
           std::ranges::all_of(words[at + 1].lower, isLetter);
}

std::optional<SaidDay> dayAt(const Words& words, std::size_t at, Day today) {
    if (!isFree(words, at)) {
        return std::nullopt;
    }
    const std::string& word = words[at].lower;
    if (word == "yesterday" || word == "today") {
        return SaidDay{*parseDay(word, today), 1};
    }
    if (const auto iso = dayFromIso(word)) {
        return SaidDay{*iso, 1};
    }
    if (word == "on" || word == "last") {
        if (const auto day = lastWeekday(words, at, today)) {
            return SaidDay{*day, 2};
        }
    }
    for (const std::size_t count : {std::size_t{3}, std::size_t{2}}) {
        const auto day =
            beginsADay(words, at) ? dayOf(words, at, count, today) : std::optional<Day>{};
        if (day) {
            return SaidDay{*day, count};
        }
    }
    return std::nullopt;
}

// "4pm", "4 pm", "9:30", "9" from here on, and how many words that is.
std::optional<std::pair<Minutes, std::size_t>> clockFrom(const Words& words, std::size_t at) {
    if (!isFree(words, at)) {
        return std::nullopt;
    }
    if (isFree(words, at + 1) && (words[at + 1].lower == "am" || words[at + 1].lower == "pm")) {
        const auto parted = clockTime(words[at].lower + words[at + 1].lower);
        return parted ? std::optional{std::pair{parted->at, std::size_t{2}}} : std::nullopt;
    }
    const auto time = clockTime(words[at].lower);
    return time ? std::optional{std::pair{time->at, std::size_t{1}}} : std::nullopt;
}

} // namespace

std::optional<SetsTill> takeSetsTill(Words& words, const std::optional<Day>& today) {
    for (std::size_t at = 1; at + 1 < words.size(); ++at) {
        const bool isTill =
            isFree(words, at) && (words[at].lower == "until" || words[at].lower == "till");
        if (!isTill || !isSettingAt(words, at)) {
            continue;
        }
        SetsTill till;
        std::size_t next = at + 1;
        if (today && isFree(words, next)) {
            // "tomorrow", "Tuesday": what sets is over ahead.
            const bool isNamed = wholeNumber(words[next].lower.substr(0, 1)) == std::nullopt;
            if (const auto day = isNamed ? dayOf(words, next, 1, *today) : std::nullopt) {
                till.day = day;
                ++next;
            }
        }
        const auto clock = clockFrom(words, next);
        if (!clock) {
            continue;
        }
        till.at = clock->first;
        take(words, at, next + clock->second, LinePart::setting);
        takeLeads(words, at, {"sets", "dries", "drying", "setting"});
        return till;
    }
    return std::nullopt;
}

When takeWhen(Words& words, const std::optional<Day>& today) {
    When when;
    for (std::size_t at = 0; at < words.size(); ++at) {
        if (const auto span = when.begins ? std::nullopt : spanAt(words, at)) {
            when.begins = span->begins.at;
            when.ends = span->ends.at;
            take(words, at, at + span->words, LinePart::when);
            takeLeads(words, at, {"from", "between"});
            at += span->words - 1;
            continue;
        }
        const auto said = today && !when.day ? dayAt(words, at, *today) : std::nullopt;
        if (said) {
            when.day = said->day;
            take(words, at, at + said->words, LinePart::when);
            takeLeads(words, at, {"on"});
            at += said->words - 1;
        }
    }
    return when;
}

} // namespace headcap::core::line

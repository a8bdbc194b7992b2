// The day that is meant.
#include <algorithm>
#include <array>
#include <cstdlib>
#include <optional>

#include "core/values/english.h"
#include "core/values/month_names.h"
#include "core/values/small_letters.h"
#include "core/values/spoken_time.h"
#include "core/values/spoken_words.h"

namespace headcap::core {
namespace {

using spoken::Word;

constexpr std::array<std::string_view, 7> kWeekdays{"sunday",   "monday", "tuesday", "wednesday",
                                                    "thursday", "friday", "saturday"};

// Of small letters, of a name that may begin with a capital.
bool isBeginning(std::string_view word, std::string_view name) {
    return inSmallLetters(name).starts_with(word);
}

// A name by three letters or more of its beginning.
template <std::size_t N>
std::optional<unsigned> beginningOf(const std::array<std::string_view, N>& names,
                                    std::string_view word) {
    if (word.size() < 3) {
        return std::nullopt;
    }
    for (std::size_t i = 0; i < N; ++i) {
        if (isBeginning(word, names[i])) {
            return static_cast<unsigned>(i);
        }
    }
    return std::nullopt;
}

Day after(Day day, int days) {
    return Day{std::chrono::sys_days{day} + std::chrono::days{days}};
}

using Read = tl::expected<Day, TextError>;

Read checked(int year, int month, int day, std::size_t at) {
    const Day made{std::chrono::year{year}, std::chrono::month{static_cast<unsigned>(month)},
                   std::chrono::day{static_cast<unsigned>(day)}};
    if (month < 1 || day < 1 || year < 1 || year > 9999 || !made.ok()) {
        return tl::unexpected(TextError{TextProblem::outOfRange, at});
    }
    return made;
}

Read nearest(int month, int day, Day today, std::size_t at) {
    std::optional<Day> best;
    const int year = static_cast<int>(today.year());
    for (int y = year - 1; y <= year + 1; ++y) {
        const auto made = checked(y, month, day, at);
        if (made &&
            (!best || std::abs(daysBetween(today, *made)) < std::abs(daysBetween(today, *best)))) {
            best = *made;
        }
    }
    if (!best) {
        return tl::unexpected(TextError{TextProblem::outOfRange, at});
    }
    return *best;
}

// "today", "tomorrow", "fri".
std::optional<Day> namedDay(const std::string& word, Day today) {
    if (word == "today") {
        return today;
    }
    if (word == "tomorrow") {
        return after(today, 1);
    }
    if (word == "yesterday") {
        return after(today, -1);
    }
    if (const auto weekday = beginningOf(kWeekdays, word)) {
        const auto now = std::chrono::weekday{std::chrono::sys_days{today}}.c_encoding();
        return after(today, static_cast<int>((*weekday + 7 - now) % 7));
    }
    return std::nullopt;
}

// So many days, weeks, months or years on from today; the last of a month that has fewer days.
Read moved(Day today, int count, const Word& unit) {
    const std::string_view name = unit.text;
    if (name.starts_with("day") || name.starts_with("week")) {
        return after(today, name.starts_with("week") ? 7 * count : count);
    }
    if (!name.starts_with("month") && !name.starts_with("year")) {
        return tl::unexpected(TextError{TextProblem::unitUnknown, unit.at});
    }
    const Day on = today + std::chrono::months{name.starts_with("year") ? 12 * count : count};
    return on.ok() ? on : Day{on.year() / on.month() / std::chrono::last};
}

// Nothing where the words name a day of the calendar.
std::optional<Read> relativeDay(const std::vector<Word>& words, Day today) {
    if (words.size() == 1) {
        const auto named = namedDay(words.front().text, today);
        return named ? std::optional{Read{*named}} : std::nullopt;
    }
    const bool isAhead = words.front().text == "in" && words.size() == 3;
    const bool isBack = words.size() == 3 && words[2].text == "ago";
    if (!isAhead && !isBack) {
        return std::nullopt;
    }
    const Word& count = words[isAhead ? 1 : 0];
    if (!count.isNumber()) {
        return Read{tl::unexpected(TextError{TextProblem::notANumber, count.at})};
    }
    return moved(today, isAhead ? count.number() : -count.number(), words[isAhead ? 2 : 1]);
}

int fullYear(const Word& word) {
    return word.text.size() == 2 ? 2000 + word.number() : word.number();
}

// "14th March", "Thursday 14 March" without what says nothing more.
void dropParticles(std::vector<Word>& words) {
    std::erase_if(words, [](const Word& w) {
        return w.text == "st" || w.text == "nd" || w.text == "rd" || w.text == "th" ||
               w.text == "of" || w.text == "the";
    });
    if (words.size() > 1 && beginningOf(kWeekdays, words.front().text)) {
        words.erase(words.begin());
    }
}

// By its number or its name.
tl::expected<int, TextError> monthOf(const Word& word) {
    if (word.isNumber()) {
        return word.number();
    }
    const auto named = beginningOf(kMonthNames, word.text);
    return named ? tl::expected<int, TextError>{static_cast<int>(*named) + 1}
                 : tl::unexpected(TextError{TextProblem::malformed, word.at});
}

// Two words, or three: "14 March", "March 14", "14.3.2031", "2031-03-14".
Read calendarDay(const std::vector<Word>& words, Day today) {
    const std::size_t at = words.front().at;
    if (words.size() == 3 && words[0].text.size() == 4 && words[0].isNumber()) {
        const auto month = beginningOf(kMonthNames, words[1].text);
        return checked(words[0].number(), month ? static_cast<int>(*month) + 1 : words[1].number(),
                       words[2].number(), at);
    }
    const std::size_t monthAt = words[0].isNumber() ? 1 : 0;
    const Word& dayWord = words[1 - monthAt];
    const auto month = monthOf(words[monthAt]);
    if (!month) {
        return tl::unexpected(month.error());
    }
    if (!dayWord.isNumber()) {
        return tl::unexpected(TextError{TextProblem::notANumber, dayWord.at});
    }
    if (words.size() == 2) {
        return nearest(*month, dayWord.number(), today, at);
    }
    if (!words[2].isNumber()) {
        return tl::unexpected(TextError{TextProblem::trailing, words[2].at});
    }
    return checked(fullYear(words[2]), *month, dayWord.number(), at);
}

} // namespace

tl::expected<Day, TextError> parseDay(std::string_view text, Day today) {
    const auto split = spoken::wordsOf(text, " .,/-\t");
    if (!split) {
        return tl::unexpected(split.error());
    }
    std::vector<Word> words = *split;
    if (const auto relative = relativeDay(words, today)) {
        return *relative;
    }
    dropParticles(words);
    if (words.size() > 3) {
        return tl::unexpected(TextError{TextProblem::trailing, words[3].at});
    }
    if (words.size() < 2) {
        const std::size_t at = words.empty() ? 0 : words.front().at;
        return tl::unexpected(TextError{TextProblem::malformed, at});
    }
    return calendarDay(words, today);
}

std::string toText(Day day) {
    return dayText(day);
}

} // namespace headcap::core

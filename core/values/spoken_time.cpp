#include "core/values/spoken_time.h"

#include <array>
#include <cctype>
#include <cstdlib>
#include <optional>
#include <vector>

namespace headcap::core {
namespace {

constexpr std::array<std::string_view, 12> kMonths{"january",   "february", "march",    "april",
                                                   "may",       "june",     "july",     "august",
                                                   "september", "october",  "november", "december"};
constexpr std::array<std::string_view, 7> kWeekdays{"sunday",   "monday", "tuesday", "wednesday",
                                                    "thursday", "friday", "saturday"};

// A run of figures or of letters; everything else parts them.
struct Word {
    std::string text; // lower case
    std::size_t at;
    [[nodiscard]] bool isNumber() const {
        return std::isdigit(static_cast<unsigned char>(text.front())) != 0;
    }
    // -1 for what no date holds.
    [[nodiscard]] int number() const { return text.size() > 6 ? -1 : std::atoi(text.c_str()); }
};

bool isLetter(char c) {
    return std::isalpha(static_cast<unsigned char>(c)) != 0;
}
bool isFigure(char c) {
    return std::isdigit(static_cast<unsigned char>(c)) != 0;
}

tl::expected<std::vector<Word>, TextError> wordsOf(std::string_view text,
                                                   std::string_view between) {
    std::vector<Word> words;
    for (std::size_t at = 0; at < text.size();) {
        const auto same = isFigure(text[at]) ? isFigure : isLetter;
        std::size_t end = at;
        std::string word;
        while (end < text.size() && same(text[end])) {
            word += static_cast<char>(std::tolower(static_cast<unsigned char>(text[end])));
            ++end;
        }
        if (!word.empty()) {
            words.push_back({std::move(word), at});
            at = end;
        } else if (between.find(text[at]) != std::string_view::npos) {
            ++at;
        } else {
            return tl::unexpected(TextError{TextProblem::malformed, at});
        }
    }
    if (words.empty()) {
        return tl::unexpected(TextError{TextProblem::empty, 0});
    }
    return words;
}

// A name by three letters or more of its beginning.
template <std::size_t N>
std::optional<unsigned> beginningOf(const std::array<std::string_view, N>& names,
                                    std::string_view word) {
    if (word.size() < 3) {
        return std::nullopt;
    }
    for (std::size_t i = 0; i < N; ++i) {
        if (names[i].substr(0, word.size()) == word) {
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

std::optional<Read> relativeDay(const std::vector<Word>& words, Day today) {
    const std::string& first = words.front().text;
    if (words.size() == 1) {
        if (first == "today") {
            return today;
        }
        if (first == "tomorrow") {
            return after(today, 1);
        }
        if (first == "yesterday") {
            return after(today, -1);
        }
        if (const auto weekday = beginningOf(kWeekdays, first)) {
            const auto now = std::chrono::weekday{std::chrono::sys_days{today}}.c_encoding();
            return after(today, static_cast<int>((*weekday + 7 - now) % 7));
        }
        return std::nullopt;
    }
    const bool isAhead = first == "in" && words.size() == 3;
    const bool isBack = words.size() == 3 && words[2].text == "ago";
    if (!isAhead && !isBack) {
        return std::nullopt;
    }
    const Word& count = words[isAhead ? 1 : 0];
    const std::string& unit = words[isAhead ? 2 : 1].text;
    if (!count.isNumber()) {
        return Read{tl::unexpected(TextError{TextProblem::notANumber, count.at})};
    }
    const int n = isAhead ? count.number() : -count.number();
    if (unit.starts_with("day")) {
        return after(today, n);
    }
    if (unit.starts_with("week")) {
        return after(today, 7 * n);
    }
    auto months = std::chrono::months{0};
    if (unit.starts_with("month")) {
        months = std::chrono::months{n};
    } else if (unit.starts_with("year")) {
        months = std::chrono::months{12 * n};
    } else {
        return Read{tl::unexpected(TextError{TextProblem::unitUnknown, words.back().at})};
    }
    Day moved = today + months;
    if (!moved.ok()) {
        moved = Day{moved.year() / moved.month() / std::chrono::last};
    }
    return moved;
}

int fullYear(const Word& word) {
    return word.text.size() == 2 ? 2000 + word.number() : word.number();
}

} // namespace

tl::expected<Day, TextError> parseDay(std::string_view text, Day today) {
    const auto split = wordsOf(text, " .,/-\t");
    if (!split) {
        return tl::unexpected(split.error());
    }
    std::vector<Word> words = *split;
    if (const auto relative = relativeDay(words, today)) {
        return *relative;
    }
    // "14th March", "Thursday 14 March".
    std::erase_if(words, [](const Word& w) {
        return w.text == "st" || w.text == "nd" || w.text == "rd" || w.text == "th" ||
               w.text == "of" || w.text == "the";
    });
    if (words.size() > 1 && beginningOf(kWeekdays, words.front().text)) {
        words.erase(words.begin());
    }
    if (words.empty()) {
        return tl::unexpected(TextError{TextProblem::malformed, 0});
    }
    if (words.size() > 3) {
        return tl::unexpected(TextError{TextProblem::trailing, words[3].at});
    }
    if (words.size() < 2) {
        return tl::unexpected(TextError{TextProblem::malformed, words.front().at});
    }
    const std::size_t at = words.front().at;
    if (words.size() == 3 && words[0].text.size() == 4 && words[0].isNumber()) {
        const auto month = beginningOf(kMonths, words[1].text);
        return checked(words[0].number(), month ? static_cast<int>(*month) + 1 : words[1].number(),
                       words[2].number(), at);
    }
    const std::size_t monthAt = words[0].isNumber() ? 1 : 0;
    const Word& monthWord = words[monthAt];
    const Word& dayWord = words[1 - monthAt];
    int month = monthWord.isNumber() ? monthWord.number() : 0;
    if (!monthWord.isNumber()) {
        const auto named = beginningOf(kMonths, monthWord.text);
        if (!named) {
            return tl::unexpected(TextError{TextProblem::malformed, monthWord.at});
        }
        month = static_cast<int>(*named) + 1;
    }
    if (!dayWord.isNumber()) {
        return tl::unexpected(TextError{TextProblem::notANumber, dayWord.at});
    }
    if (words.size() == 3) {
        if (!words[2].isNumber()) {
            return tl::unexpected(TextError{TextProblem::trailing, words[2].at});
        }
        return checked(fullYear(words[2]), month, dayWord.number(), at);
    }
    return nearest(month, dayWord.number(), today, at);
}

tl::expected<Minutes, TextError> parseMinutes(std::string_view text) {
    const auto split = wordsOf(text, " :\t");
    if (!split) {
        return tl::unexpected(split.error());
    }
    const bool hasColon = text.find(':') != std::string_view::npos;
    int total = 0;
    bool afterHours = false;
    for (std::size_t i = 0; i < split->size(); ++i) {
        const Word& count = (*split)[i];
        if (!count.isNumber()) {
            return tl::unexpected(TextError{TextProblem::notANumber, count.at});
        }
        if (count.number() < 0) {
            return tl::unexpected(TextError{TextProblem::tooLarge, count.at});
        }
        const Word* unit =
            i + 1 < split->size() && !(*split)[i + 1].isNumber() ? &(*split)[i + 1] : nullptr;
        const bool isHours = unit != nullptr ? unit->text.starts_with("h")
                                             : hasColon && i == 0 && split->size() == 2;
        if (unit != nullptr && !isHours && !unit->text.starts_with("m")) {
            return tl::unexpected(TextError{TextProblem::unitUnknown, unit->at});
        }
        if (i > 0 && (!afterHours || isHours)) {
            return tl::unexpected(TextError{TextProblem::trailing, count.at});
        }
        if (afterHours && count.number() > 59) {
            return tl::unexpected(TextError{TextProblem::outOfRange, count.at});
        }
        total += isHours ? 60 * count.number() : count.number();
        afterHours = isHours;
        i += unit != nullptr ? 1 : 0;
    }
    return Minutes{total};
}

std::string toText(Day day) {
    std::string month{kMonths[static_cast<unsigned>(day.month()) - 1]};
    month.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(month.front())));
    return std::to_string(static_cast<unsigned>(day.day())) + " " + month + " " +
           std::to_string(static_cast<int>(day.year()));
}

std::string toText(Minutes minutes) {
    const auto all = minutes.count();
    const auto hours = all / 60;
    const auto rest = all % 60;
    if (hours == 0) {
        return std::to_string(rest) + " min";
    }
    const std::string text = std::to_string(hours) + " h";
    return rest == 0 ? text : text + " " + std::to_string(rest) + " min";
}

} // namespace headcap::core

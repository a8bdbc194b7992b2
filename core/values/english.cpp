#include "core/values/english.h"

#include <fmt/format.h>

#include "core/values/contract.h"
#include "core/values/month_names.h"

namespace headcap::core {

std::string dayText(Day day) {
    HEADCAP_CONTRACT(day.ok());
    return fmt::format("{} {} {}", static_cast<unsigned>(day.day()),
                       kMonthNames[static_cast<unsigned>(day.month()) - 1],
                       static_cast<int>(day.year()));
}

std::string counted(std::size_t count, std::string_view one, std::string_view many) {
    return fmt::format("{} {}", count, count == 1 ? one : many);
}

std::string listed(const std::vector<std::string>& things) {
    std::string text;
    for (std::size_t i = 0; i < things.size(); ++i) {
        if (i > 0) {
            text += i + 1 == things.size() ? " and " : ", ";
        }
        text += things[i];
    }
    return text;
}

std::string sentence(std::string_view text) {
    constexpr std::string_view kBlanks = " \t\r\n";
    const std::size_t begin = text.find_first_not_of(kBlanks);
    if (begin == std::string_view::npos) {
        return {};
    }
    text = text.substr(begin, text.find_last_not_of(kBlanks) - begin + 1);
    const bool ended = text.ends_with('.') || text.ends_with('!') || text.ends_with('?') ||
                       text.ends_with(':') || text.ends_with("…");
    return ended ? std::string{text} : std::string{text} + ".";
}

std::string capitalised(std::string_view text) {
    std::string raised{text};
    if (!raised.empty() && raised.front() >= 'a' && raised.front() <= 'z') {
        raised.front() = static_cast<char>(raised.front() - 'a' + 'A');
    }
    return raised;
}

std::string minutesText(Minutes minutes) {
    const auto whole = minutes.count();
    if (whole < 60) {
        return fmt::format("{} min", whole);
    }
    return whole % 60 == 0 ? fmt::format("{} h", whole / 60)
                           : fmt::format("{} h {} min", whole / 60, whole % 60);
}

} // namespace headcap::core

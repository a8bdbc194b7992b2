#include "core/treatment/line_denial.h"

#include <array>

namespace headcap::core::line {
bool deniesTechnique(const Words& words) {
    constexpr auto kDenials =
        std::to_array<std::string_view>({"not", "never", "no", "without", "didn't", "undone"});
    constexpr auto kOfDoing =
        std::to_array<std::string_view>({"done", "needed", "possible", "necessary", "begun"});
    constexpr std::size_t kReach = 3;
    for (std::size_t at = 0; at < words.size(); ++at) {
        if (words[at].taken || !isOneOf(kDenials, words[at].lower)) {
            continue;
        }
        if (words[at].lower == "not" && at + 1 < words.size() &&
            isOneOf(kOfDoing, words[at + 1].lower)) {
            return true;
        }
        for (std::size_t i = at + 1; i < words.size() && i <= at + kReach; ++i) {
            if (words[i].part == LinePart::technique) {
                return true;
            }
            if (words[i].taken) {
                break;
            }
        }
    }
    return false;
}

bool speaksOfPause(const Words& words) {
    constexpr auto kPauses =
        std::to_array<std::string_view>({"lunch", "break", "dinner", "tea", "pause"});
    for (std::size_t at = 0; at < words.size(); ++at) {
        if (isOneOf(kPauses, words[at].lower) || stands(words, at, {"no", "work"})) {
            return true;
        }
    }
    return false;
}

} // namespace headcap::core::line

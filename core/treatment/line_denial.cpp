#include "core/treatment/line_denial.h"

#include <array>

namespace headcap::core::line {
bool speaksOfIntent(const Words& words) {
    constexpr auto kIntends = std::to_array<std::string_view>(
        {"needs", "need", "needed", "planned", "plan", "wants", "want", "will", "shall", "should",
         "must", "todo", "tomorrow"});
    constexpr auto kBefore =
        std::to_array<std::string_view>({"as", "where", "if", "until", "till"});
    for (std::size_t at = 0; at < words.size(); ++at) {
        const bool isAsNeeded = at > 0 && isOneOf(kBefore, words[at - 1].lower);
        if ((!words[at].taken && isOneOf(kIntends, words[at].lower) && !isAsNeeded) ||
            stands(words, at, {"to", "do"})) {
            return true;
        }
    }
    return false;
}

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

bool speaksOfMixing(const Words& words) {
    constexpr auto kMixed =
        std::to_array<std::string_view>({"mixed", "mixing", "cooked", "cooking", "mix"});
    return std::ranges::any_of(
        words, [&](const Word& word) { return !word.taken && isOneOf(kMixed, word.lower); });
}

bool speaksOfStriking(const Words& words) {
    constexpr auto kStruck = std::to_array<std::string_view>(
        {"struck", "strike", "undo", "undone", "delete", "deleted"});
    return !words.empty() && isOneOf(kStruck, words.front().lower);
}

} // namespace headcap::core::line

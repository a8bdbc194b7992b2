// How the journal says that an act was taken back or done again.
#pragma once

#include <string_view>

namespace headcap::core {

inline constexpr std::string_view kUndoneWord = "Undone: ";
inline constexpr std::string_view kDoneAgainWord = "Done again: ";

// The act itself, in the sentence of an entry that may be its reversal.
[[nodiscard]] constexpr std::string_view actIn(std::string_view sentence) {
    for (const std::string_view word : {kUndoneWord, kDoneAgainWord}) {
        if (sentence.starts_with(word)) {
            return sentence.substr(word.size());
        }
    }
    return sentence;
}

} // namespace headcap::core

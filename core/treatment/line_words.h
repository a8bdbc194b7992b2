// A line of the bench log as words, each with its place in the line and what it has been taken
// for. Inside of the line's reader.
#pragma once

#include <algorithm>
#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "core/treatment/step_line.h"

namespace headcap::core::line {

struct Word {
    std::size_t begin = 0; // with the marks around it
    std::size_t end = 0;
    std::string_view text; // without them
    std::string lower;     // ASCII letters lowered
    LinePart part = LinePart::description;
    std::size_t group = 0; // words of one part said apart: the first use, the second
    bool taken = false;
    bool hasComma = false; // after it
};

using Words = std::vector<Word>;

[[nodiscard]] Words split(std::string_view line);

[[nodiscard]] inline bool isFree(const Words& words, std::size_t at) {
    return at < words.size() && !words[at].taken;
}

// Whether the words from `at` are these, none of them taken.
[[nodiscard]] bool stands(const Words& words, std::size_t at, const std::vector<std::string>& said);
[[nodiscard]] std::vector<std::string> wordsOf(std::string_view phrase);

template <class List>
[[nodiscard]] bool isOneOf(const List& list, std::string_view word) {
    return std::ranges::find(list, word) != std::ranges::end(list);
}

void take(Words& words, std::size_t from, std::size_t to, LinePart part, std::size_t group = 0);

// Takes the untaken words before `at` that lead into a part: "with" a lot, "by" a person.
void takeLeads(Words& words, std::size_t at, const std::vector<std::string_view>& leads);

} // namespace headcap::core::line

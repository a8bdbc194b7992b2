// Lots, and materials in words, with their amounts, in a line of the log. An amount belongs to the
// lot beside it; one that stands beside none is left in the description. Inside of the line's
// reader.
#pragma once

#include <cstddef>
#include <optional>
#include <string_view>
#include <vector>

#include "core/treatment/line_words.h"

namespace headcap::core::line {

// A label carries its number alone, or with a sign or a word before it: "#26-014", "LOT:26-014".
[[nodiscard]] std::string_view numberOnLabel(std::string_view word);

// Of a name that stands in the words from `from` to `end`: the amount on the one side or the other,
// and how far the two reach together.
struct AmountBeside {
    std::optional<Amount> amount{};
    std::size_t begin = 0;
    std::size_t end = 0;
};
[[nodiscard]] AmountBeside amountBeside(const Words& words, std::size_t from, std::size_t end);

// Pieces cut for the job are taken by their number: "26-003 2 pieces".
[[nodiscard]] std::vector<LineUse> takeMaterials(Words& words, const LineContext& context);

} // namespace headcap::core::line

// Amounts in a line of the log: beside what they are of, on the one side or the other. Inside of
// the line's reader.
#pragma once

#include <cstddef>
#include <optional>

#include "core/treatment/line_words.h"

namespace headcap::core::line {

struct AmountAt {
    Amount amount;
    std::size_t begin = 0;
    std::size_t end = 0;
};

// Read from these words on: "0.4 g", "1 1/2 sheets"; no side of "30 mm x 240 mm".
[[nodiscard]] std::optional<AmountAt> amountAt(const Words& words, std::size_t at);
// Whose last word stands just before `at`, and no comma between.
[[nodiscard]] std::optional<AmountAt> amountBefore(const Words& words, std::size_t at);
// "30 mm x 240 mm", "strip 30 x 240 mm": the area of what was cut off.
[[nodiscard]] std::optional<AmountAt> areaAt(const Words& words, std::size_t at);
// A bare number beside a lot counted by the sheet or the piece: "25-008 1", "26-015 3/4".
[[nodiscard]] std::optional<AmountAt> countAt(const Words& words, std::size_t at, Unit unit);

// Of a name that stands in the words from `from` to `end`: the amount on the one side or the other,
// and how far the two reach together.
struct AmountBeside {
    std::optional<Amount> amount{};
    std::size_t begin = 0;
    std::size_t end = 0;
};
[[nodiscard]] AmountBeside amountBeside(const Words& words, std::size_t from, std::size_t end);

} // namespace headcap::core::line

// Earlier work that a line names without doing it anew: "lifted old spine lining" names a lining
// and says that one came off; "checked sewing" sews nothing. Inside of the line's reader.
#pragma once

#include <cstddef>
#include <optional>

#include "core/treatment/line_words.h"

namespace headcap::core::line {

// "cut away old sewing": the words that say it came off, and what is named after them.
struct TakenOff {
    std::size_t at = 0;
    std::size_t length = 0; // of what says it, "old" not among them
    bool isTape = false;
    bool isAdhesive = false;
};

[[nodiscard]] std::optional<TakenOff> oldWorkTakenOff(const Words& words);

// Of the name of a technique, with nothing that says it was done: "sewing broken" is a finding.
enum class Named { asDone, asTakenOff, asSomethingElse };

struct NamedWork {
    Named as = Named::asDone;
    TakenOff takenOff{};
};

[[nodiscard]] NamedWork namedWork(const Words& words, std::size_t at, std::size_t length);

// "old washing stains": what was there already.
[[nodiscard]] bool isAfterOld(const Words& words, std::size_t at);

// "cleaned up bench": at the words of a technique, and how many they are.
[[nodiscard]] bool isOfTheWorkshop(const Words& words, std::size_t at, std::size_t length);

} // namespace headcap::core::line

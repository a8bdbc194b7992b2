// A text parted into figures and words, for the readers of spoken_time.h. Inside of them.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include <tl/expected.hpp>

#include "core/values/text_error.h"

namespace headcap::core::spoken {

// A run of figures or of letters; everything else parts them.
struct Word {
    std::string text; // lower case
    std::size_t at;
    [[nodiscard]] bool isNumber() const { return text.front() >= '0' && text.front() <= '9'; }
    // -1 for what no date holds.
    [[nodiscard]] int number() const;
};

// The words of the text, between which only the marks named may stand.
[[nodiscard]] tl::expected<std::vector<Word>, TextError> wordsOf(std::string_view text,
                                                                 std::string_view between);

} // namespace headcap::core::spoken

#include "core/values/unit_text.h"

#include <algorithm>

#include "core/values/small_letters.h"

namespace headcap::core {

bool sameLetters(std::string_view a, std::string_view b) {
    return std::ranges::equal(a, b, {}, smallLetter, smallLetter);
}

tl::expected<NumberAndUnit, TextError> splitNumberAndUnit(std::string_view text) {
    const std::size_t head = blanksAtHead(text);
    const std::string_view body = trimmed(text);
    if (body.empty()) {
        return tl::unexpected(TextError{TextProblem::empty, 0});
    }
    const auto number = scanNumber(body, {.fractions = true, .groups = true});
    if (!number) {
        return tl::unexpected(TextError{number.error().problem, head + number.error().at});
    }
    NumberAndUnit read{*number, body.substr(number->length), head, head + number->length};
    const std::size_t blanks = blanksAtHead(read.unit);
    read.unit.remove_prefix(blanks);
    read.unitAt += blanks;
    if (read.unit.size() > 1 && read.unit.ends_with('.')) {
        read.unit.remove_suffix(1);
    }
    return read;
}

} // namespace headcap::core

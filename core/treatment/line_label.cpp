#include "core/treatment/line_label.h"

#include <algorithm>

namespace headcap::core {
namespace {

bool isBlank(char c) {
    return c == ' ' || c == '\t';
}

} // namespace

std::string_view numberOnLabel(std::string_view word) {
    for (const std::string_view lead : {"#", "lot:", "LOT:", "Lot:"}) {
        if (word.starts_with(lead)) {
            word.remove_prefix(lead.size());
        }
    }
    return word;
}

const Lot* lotOnLabel(std::string_view word, const Shelf& shelf) {
    const std::string_view number = numberOnLabel(word);
    return number.empty() ? nullptr : shelf.numbered(number);
}

Dropped dropInto(std::string_view text, std::size_t at, const Lot& lot) {
    at = std::min(at, text.size());
    std::string before{text.substr(0, at)};
    std::string_view after = text.substr(at);
    if (!before.empty() && !isBlank(before.back())) {
        before += ' ';
    }
    before += lot.number + ' ';
    while (!after.empty() && isBlank(after.front())) {
        after.remove_prefix(1);
    }
    return {before + std::string{after}, before.size()};
}

} // namespace headcap::core

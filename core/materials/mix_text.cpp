#include "core/materials/mix_text.h"

#include <algorithm>

#include "core/values/amount.h"

namespace headcap::core {
namespace {

constexpr std::string_view kBlank = " \t\n";

std::string_view trimmed(std::string_view text) {
    const auto first = text.find_first_not_of(kBlank);
    return first == std::string_view::npos
               ? std::string_view{}
               : text.substr(first, text.find_last_not_of(kBlank) - first + 1);
}

// Where a part ends: a semicolon, or a comma that stands in no number ("12,5 g").
std::size_t endOfPart(std::string_view text, std::size_t from) {
    for (std::size_t at = from; at < text.size(); ++at) {
        const bool isDecimal = text[at] == ',' && at + 1 < text.size() && text[at + 1] >= '0' &&
                               text[at + 1] <= '9' && at > from && text[at - 1] >= '0' &&
                               text[at - 1] <= '9';
        if (text[at] == ';' || (text[at] == ',' && !isDecimal)) {
            return at;
        }
    }
    return text.size();
}

} // namespace

tl::expected<std::vector<MixPart>, MixTextError> parseMixParts(std::string_view text,
                                                               const Shelf& shelf) {
    std::vector<MixPart> parts;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = endOfPart(text, at);
        const std::string_view part = trimmed(text.substr(at, end - at));
        if (!part.empty()) {
            const auto space = std::min(part.find_first_of(kBlank), part.size());
            const Lot* lot = shelf.numbered(part.substr(0, space));
            if (lot == nullptr) {
                return tl::unexpected(MixTextError{MixTextProblem::lotUnknown, at});
            }
            const auto amount = parseAmount(trimmed(part.substr(space)));
            if (!amount) {
                return tl::unexpected(MixTextError{MixTextProblem::amountUnread, at});
            }
            parts.push_back({.source = lot->id, .amount = *amount});
        }
        at = end + 1;
    }
    if (parts.empty()) {
        return tl::unexpected(MixTextError{});
    }
    return parts;
}

} // namespace headcap::core

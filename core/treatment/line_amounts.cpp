#include "core/treatment/line_amounts.h"

#include <algorithm>
#include <array>

#include "core/values/amount_nearly.h"
#include "core/values/measure_text.h"

namespace headcap::core::line {
namespace {

bool startsNumber(std::string_view word) {
    return !word.empty() &&
           ((word.front() >= '0' && word.front() <= '9') || word.starts_with("½") ||
            word.starts_with("¼") || word.starts_with("¾"));
}

bool isTimes(const Words& words, std::size_t at) {
    return at < words.size() && (words[at].lower == "x" || words[at].lower == "×");
}

} // namespace

std::optional<AmountAt> amountAt(const Words& words, std::size_t at) {
    if (!isFree(words, at) || !startsNumber(words[at].text) || (at > 0 && isTimes(words, at - 1))) {
        return std::nullopt;
    }
    std::string text;
    std::optional<AmountAt> found;
    for (std::size_t end = at; end < at + 3 && isFree(words, end); ++end) {
        text += (text.empty() ? "" : " ") + std::string{words[end].text};
        if (const auto amount = parseAmountNearly(text)) {
            found = AmountAt{*amount, at, end + 1};
        }
        if (words[end].hasComma) {
            break;
        }
    }
    return found && isTimes(words, found->end) ? std::nullopt : found;
}

std::optional<AmountAt> amountBefore(const Words& words, std::size_t at) {
    std::optional<AmountAt> longest;
    if (at > 0 && words[at - 1].hasComma) {
        return longest;
    }
    for (std::size_t length = 1; length <= 3 && length <= at; ++length) {
        const auto read = amountAt(words, at - length);
        if (read && read->end == at) {
            longest = read;
        }
    }
    return longest;
}

std::optional<AmountAt> areaAt(const Words& words, std::size_t at) {
    constexpr auto kCut = std::to_array<std::string_view>({"strip", "piece", "patch", "of"});
    const std::size_t begin = at;
    while (isFree(words, at) && isOneOf(kCut, words[at].lower)) {
        ++at;
    }
    std::vector<std::string> sides;
    std::string unit;
    for (int side = 0; side < 2; ++side) {
        if (!isFree(words, at) || !startsNumber(words[at].text)) {
            return std::nullopt;
        }
        sides.emplace_back(words[at].text);
        const std::size_t letters = sides.back().find_first_not_of("0123456789.,");
        if (letters != std::string::npos) {
            unit = sides.back().substr(letters);
            sides.back().resize(letters);
        } else if (isFree(words, at + 1) && !isTimes(words, at + 1)) {
            unit = words[++at].lower;
        }
        ++at;
        if (side == 0 && (!isFree(words, at) || !isTimes(words, at++))) {
            return std::nullopt;
        }
    }
    const auto width = parseLength(sides[0] + ' ' + unit);
    const auto height = parseLength(sides[1] + ' ' + unit);
    if (!width || !height || width->count() <= 0 || height->count() <= 0) {
        return std::nullopt;
    }
    return AmountAt{Amount::of(areaOf(*width, *height)), begin, at};
}

std::optional<AmountAt> countAt(const Words& words, std::size_t at, Unit unit) {
    if ((unit != Unit::sheet && unit != Unit::piece) || !isFree(words, at)) {
        return std::nullopt;
    }
    const auto amount = parseAmountNearly(std::string{words[at].text} +
                                          (unit == Unit::sheet ? " sheet" : " piece"));
    const char next =
        isFree(words, at + 1) && !words[at + 1].text.empty() ? words[at + 1].lower.front() : ' ';
    const bool isOfWhatFollows =
        !words[at].hasComma &&
        ((next >= 'a' && next <= 'z') || next == '%' || next == '\'' || isTimes(words, at + 1));
    return amount && !isOfWhatFollows ? std::optional{AmountAt{*amount, at, at + 1}} : std::nullopt;
}

AmountBeside amountBeside(const Words& words, std::size_t from, std::size_t end) {
    const bool of = from > 0 && isFree(words, from - 1) && words[from - 1].lower == "of";
    if (const auto before = amountBefore(words, of ? from - 1 : from)) {
        return {before->amount, before->begin, end};
    }
    const bool isParted = end > from && words[end - 1].hasComma;
    const auto after = isParted ? std::nullopt : amountAt(words, end);
    return after ? AmountBeside{after->amount, from, after->end} : AmountBeside{{}, from, end};
}

} // namespace headcap::core::line

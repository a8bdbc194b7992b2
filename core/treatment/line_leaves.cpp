#include "core/treatment/line_leaves.h"

#include "core/treatment/line_places.h"
#include "core/values/roman.h"

namespace headcap::core::line {
namespace {

// Drops up to `most` digits from the head; how many there were.
std::size_t dropDigits(std::string_view& text, std::size_t most) {
    std::size_t n = 0;
    while (n < most && n < text.size() && isDigit(text[n])) {
        ++n;
    }
    text.remove_prefix(n);
    return n;
}

bool dropSide(std::string_view& text) {
    for (const std::string_view side : {"r", "v"}) {
        if (text.starts_with(side)) {
            text.remove_prefix(side.size());
            return true;
        }
    }
    return false;
}

// One letter up to four times ("Aa", "AAA"), or signs that printers used for preliminaries.
bool dropSignature(std::string_view& text) {
    std::size_t n = 0;
    while (n < text.size() && n < 4 && isLetter(text[n]) &&
           (text[n] | 0x20) == (text.front() | 0x20)) {
        ++n;
    }
    if (n > 0) {
        text.remove_prefix(n);
        return true;
    }
    bool any = false;
    for (bool more = true; more;) {
        more = false;
        for (const std::string_view sign : {"π", "χ", "*", "†", "‡", "§", "¶", "☞"}) {
            if (text.starts_with(sign)) {
                text.remove_prefix(sign.size());
                any = more = true;
            }
        }
    }
    return any;
}

bool dropLeaf(std::string_view& text) {
    std::string_view rest = text;
    dropDigits(rest, 2);
    if (!dropSignature(rest) || dropDigits(rest, 2) == 0) {
        return false;
    }
    dropSide(rest);
    text = rest;
    return true;
}

bool dropDash(std::string_view& text) {
    for (const std::string_view dash : {"-", "–"}) {
        if (text.starts_with(dash)) {
            text.remove_prefix(dash.size());
            return true;
        }
    }
    return false;
}

} // namespace

bool isAfterHead(std::string_view text) {
    if (isLeafWord(text)) {
        return true;
    }
    constexpr std::string_view kRoman = "IVXLCDMivxlcdm";
    if (text.size() > 1 && text.find_first_not_of(kRoman) == std::string_view::npos &&
        romanNumber(text)) {
        return true;
    }
    std::string_view rest = text;
    if (dropDigits(rest, 5) > 0) {
        dropSide(rest);
        if (dropDash(rest)) {
            if (dropDigits(rest, 5) == 0) {
                return false;
            }
            dropSide(rest);
        }
        return rest.empty();
    }
    // A gathering: a letter or two, a range of them.
    if (rest.empty() || rest.front() < 'A' || rest.front() > 'Z' || !dropSignature(rest)) {
        return false;
    }
    return rest.empty() || (dropDash(rest) && dropSignature(rest) && rest.empty());
}

bool isGatherings(std::string_view text) {
    const std::size_t dash = text.find_first_of("-\xE2");
    std::string_view rest = dash == std::string_view::npos ? std::string_view{} : text.substr(dash);
    return isGathering(text.substr(0, dash)) && dropDash(rest) && isGathering(rest);
}

bool isGathering(std::string_view text) {
    if (text.empty() || text.size() > 3 || text.front() < 'A' || text.front() > 'Z') {
        return false;
    }
    std::string_view rest = text;
    return dropSignature(rest) && rest.empty();
}

bool isHeadAndNumber(std::string_view lower) {
    for (const std::string_view head : {"fol", "pp", "ff", "pl", "f", "p"}) {
        if (lower.starts_with(head)) {
            std::string_view rest = lower.substr(head.size());
            if (rest.starts_with('.')) {
                rest.remove_prefix(1);
            }
            return !rest.empty() && isDigit(rest.front()) && isAfterHead(rest);
        }
    }
    return false;
}

bool isLeafWord(std::string_view text) {
    std::string_view rest = text;
    // "x2" and "3x25" are counts, not gathering x.
    std::string_view times = text;
    dropDigits(times, 2);
    if (times.size() > 1 && times.front() == 'x' && isDigit(times[1])) {
        return false;
    }
    if (!dropLeaf(rest)) {
        return false;
    }
    if (rest.empty()) {
        return true;
    }
    if (rest.starts_with('.')) { // "C1.8": a leaf and its conjugate
        rest.remove_prefix(1);
        return dropDigits(rest, 2) > 0 && rest.empty();
    }
    if (!dropDash(rest)) {
        return false;
    }
    std::string_view number = rest;
    if (dropDigits(number, 2) > 0) {
        dropSide(number);
        if (number.empty()) {
            return true;
        }
    }
    return dropLeaf(rest) && rest.empty();
}

} // namespace headcap::core::line

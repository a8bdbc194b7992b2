#include "core/treatment/line_words.h"

#include <algorithm>

#include "core/values/small_letters.h"

namespace headcap::core::line {
namespace {

constexpr std::string_view kBlanks = " \t\n\r";

bool isMark(char c) {
    return std::string_view{",;:.!?()"}.find(c) != std::string_view::npos;
}

} // namespace

Words split(std::string_view line) {
    Words words;
    std::size_t at = line.find_first_not_of(kBlanks);
    while (at != std::string_view::npos) {
        const std::size_t end = std::min(line.find_first_of(kBlanks, at), line.size());
        std::string_view text = line.substr(at, end - at);
        while (!text.empty() && isMark(text.front())) {
            text.remove_prefix(1);
        }
        const bool hasComma = text.ends_with(',');
        while (!text.empty() && isMark(text.back())) {
            text.remove_suffix(1);
        }
        words.push_back({.begin = at,
                         .end = end,
                         .text = text,
                         .lower = inSmallLetters(text),
                         .hasComma = hasComma});
        at = line.find_first_not_of(kBlanks, end);
    }
    return words;
}

std::vector<std::string> wordsOf(std::string_view phrase) {
    std::vector<std::string> all;
    for (const Word& word : split(phrase)) {
        all.push_back(word.lower);
    }
    return all;
}

bool stands(const Words& words, std::size_t at, const std::vector<std::string>& said) {
    if (said.empty() || at + said.size() > words.size()) {
        return false;
    }
    for (std::size_t i = 0; i < said.size(); ++i) {
        if (words[at + i].taken || words[at + i].lower != said[i]) {
            return false;
        }
    }
    return true;
}

void take(Words& words, std::size_t from, std::size_t to, LinePart part, std::size_t group) {
    for (std::size_t i = from; i < to; ++i) {
        words[i].taken = true;
        words[i].part = part;
        words[i].group = group;
    }
}

void takeLeads(Words& words, std::size_t at, const std::vector<std::string_view>& leads) {
    const LinePart part = words[at].part;
    const std::size_t group = words[at].group;
    while (at > 0 && !words[at - 1].taken &&
           std::ranges::find(leads, words[at - 1].lower) != leads.end()) {
        --at;
        take(words, at, at + 1, part, group);
    }
}

} // namespace headcap::core::line

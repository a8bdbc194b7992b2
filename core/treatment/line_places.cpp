#include "core/treatment/line_places.h"

#include <algorithm>
#include <array>

#include "core/treatment/line_leaves.h"

namespace headcap::core::line {
namespace {

constexpr std::array kPartsOfABook = std::to_array<std::string_view>({"upper outer joint",
                                                                      "lower outer joint",
                                                                      "upper inner hinge",
                                                                      "lower inner hinge",
                                                                      "front free endpaper",
                                                                      "back free endpaper",
                                                                      "upper board",
                                                                      "lower board",
                                                                      "front board",
                                                                      "back board",
                                                                      "rear board",
                                                                      "both boards",
                                                                      "boards",
                                                                      "upper cover",
                                                                      "lower cover",
                                                                      "front cover",
                                                                      "back cover",
                                                                      "covers",
                                                                      "upper joint",
                                                                      "lower joint",
                                                                      "front joint",
                                                                      "back joint",
                                                                      "both joints",
                                                                      "joints",
                                                                      "upper hinge",
                                                                      "lower hinge",
                                                                      "front hinge",
                                                                      "back hinge",
                                                                      "both hinges",
                                                                      "hinges",
                                                                      "upper pastedown",
                                                                      "lower pastedown",
                                                                      "front pastedown",
                                                                      "back pastedown",
                                                                      "both pastedowns",
                                                                      "pastedowns",
                                                                      "front endpapers",
                                                                      "back endpapers",
                                                                      "front endpaper",
                                                                      "back endpaper",
                                                                      "pastedown",
                                                                      "vellum cover",
                                                                      "front flyleaf",
                                                                      "back flyleaf",
                                                                      "front endleaf",
                                                                      "back endleaf",
                                                                      "title page",
                                                                      "title-page",
                                                                      "title leaf",
                                                                      "frontispiece",
                                                                      "text block",
                                                                      "textblock",
                                                                      "fore edge",
                                                                      "fore-edge",
                                                                      "head edge",
                                                                      "tail edge",
                                                                      "headcap",
                                                                      "tailcap",
                                                                      "headband",
                                                                      "tailband",
                                                                      "spine label",
                                                                      "spine piece",
                                                                      "title piece",
                                                                      "spine",
                                                                      "label",
                                                                      "upper corners",
                                                                      "lower corners",
                                                                      "all corners",
                                                                      "corners",
                                                                      "half-title",
                                                                      "half title"});

constexpr std::array kLeafHeads = std::to_array<std::string_view>(
    {"f",       "ff",       "fol",  "fols",      "folio",      "folios", "leaf",
     "leaves",  "p",        "pp",   "page",      "pages",      "pl",     "plate",
     "plates",  "map",      "maps", "gathering", "gatherings", "quire",  "quires",
     "section", "sections", "vol",  "volume",    "sig",        "sigs"});

constexpr std::array kTies = std::to_array<std::string_view>({"and", "&", "to", "-", "–"});

// "A4 paper": a size, not a leaf.
bool isPaperSize(const Words& words, std::size_t at) {
    constexpr std::array kSized =
        std::to_array<std::string_view>({"paper", "sheet", "sheets", "card", "size", "board"});
    return at + 1 < words.size() && isOneOf(kSized, words[at + 1].lower);
}

// "cleaned title and boards": the title leaf, and no label of that name.
bool isTitle(const Words& words, std::size_t at) {
    constexpr auto kOther =
        std::to_array<std::string_view>({"label", "piece", "block", "lettering", "was", "is"});
    if (words[at].taken || words[at].lower != "title") {
        return false;
    }
    const bool isAfter = at == 0 || words[at - 1].taken || isOneOf(kTies, words[at - 1].lower) ||
                         words[at - 1].lower == "the";
    return isAfter && (at + 1 == words.size() || !isOneOf(kOther, words[at + 1].lower));
}

// "pressed between boards": those of the press.
bool isOfThePress(const Words& words, std::size_t at) {
    const std::size_t before = at > 1 && words[at - 1].lower == "the" ? at - 1 : at;
    return before > 0 && words[before - 1].lower == "between" && words[at].lower == "boards";
}

// After a leaf without its side: "r & v", "recto and verso"; how many words.
std::size_t bothSidesAt(const Words& words, std::size_t at) {
    const bool isBoth = isFree(words, at + 2) && isFree(words, at) && isFree(words, at + 1) &&
                        isOneOf(kTies, words[at + 1].lower) &&
                        (words[at].lower == "r" || words[at].lower == "recto") &&
                        (words[at + 2].lower == "v" || words[at + 2].lower == "verso");
    const std::string_view leaf = at > 0 ? words[at - 1].text : std::string_view{};
    return isBoth && isLeafWord(leaf) && isDigit(leaf.back()) ? 3 : 0;
}

// "A-F"; "A and B", "A to D", "A, B", which no article could be.
std::size_t gatheringsAt(const Words& words, std::size_t at) {
    if (isGatherings(words[at].text)) {
        return 1;
    }
    constexpr auto kChosen =
        std::to_array<std::string_view>({"option", "options", "part", "parts"});
    if (!isGathering(words[at].text) || (at > 0 && isOneOf(kChosen, words[at - 1].lower))) {
        return 0;
    }
    const bool isTied = isFree(words, at + 1) && isOneOf(kTies, words[at + 1].lower);
    const std::size_t next = at + (isTied ? 2U : 1U);
    const bool isListed = isFree(words, next) && (isTied || words[at].hasComma);
    return isListed && isGathering(words[next].text) ? next + 1 - at : 0;
}

// How many words from `at` make one place; 0: none.
std::size_t placeAt(const Words& words, std::size_t at) {
    if (isOfThePress(words, at)) {
        return 0;
    }
    for (const std::string_view part : kPartsOfABook) {
        const auto said = wordsOf(part);
        if (stands(words, at, said)) {
            return said.size();
        }
    }
    const Word& word = words[at];
    if (word.taken) {
        return 0;
    }
    if (isTitle(words, at)) {
        return 1;
    }
    if (const std::size_t length = gatheringsAt(words, at)) {
        return length;
    }
    if (word.lower == "board" && isFree(words, at + 1) &&
        (words[at + 1].text == "I" || words[at + 1].text == "II")) {
        return 2;
    }
    if (isOneOf(kLeafHeads, word.lower) && at + 1 < words.size() && !words[at + 1].taken &&
        isAfterHead(words[at + 1].text)) {
        return 2;
    }
    const bool counted = !word.text.empty() && std::ranges::all_of(word.text, isDigit);
    if (counted && at + 1 < words.size() && !words[at + 1].taken &&
        (words[at + 1].lower == "plates" || words[at + 1].lower == "maps")) {
        return 2;
    }
    if (isHeadAndNumber(word.lower) || (isLeafWord(word.text) && !isPaperSize(words, at))) {
        return 1;
    }
    return 0;
}

// After a first place: "and K6", "to 14", ", 9v"; after gatherings, "to D".
std::size_t furtherAt(const Words& words, std::size_t at, bool afterHead) {
    if (at >= words.size() || words[at].taken) {
        return 0;
    }
    if (isOneOf(kTies, words[at].lower)) {
        if (at + 1 >= words.size() || words[at + 1].taken) {
            return 0;
        }
        if (const std::size_t n = placeAt(words, at + 1)) {
            return n + 1;
        }
        const std::string_view next = words[at + 1].text;
        if (isGathering(next) && isGathering(words[at - 1].text)) {
            return 2;
        }
        const bool number = isAfterHead(next) && (afterHead || isDigit(next.front()));
        const bool counted =
            !words[at + 1].hasComma && at + 2 < words.size() && !words[at + 2].taken &&
            isLetter(words[at + 2].text.empty() ? ' ' : words[at + 2].text.front());
        return number && !counted ? 2 : 0;
    }
    // "p. 223, 224": a number after a comma goes with the head before it, unless it counts.
    if (words[at - 1].hasComma && afterHead && isAfterHead(words[at].text) &&
        (at + 1 == words.size() || words[at].hasComma || words[at + 1].taken ||
         isOneOf(kTies, words[at + 1].lower))) {
        return 1;
    }
    return placeAt(words, at);
}

} // namespace

std::string takePlaces(Words& words, std::string_view whole) {
    std::string places;
    std::size_t group = 0;
    for (std::size_t at = 0; at < words.size();) {
        std::size_t length = placeAt(words, at);
        if (length == 0) {
            ++at;
            continue;
        }
        std::size_t end = at + length;
        const bool afterHead = isOneOf(kLeafHeads, words[at].lower);
        while ((length = furtherAt(words, end, afterHead)) > 0) {
            end += length;
        }
        const char* last = words[end - 1].text.data() + words[end - 1].text.size();
        const std::size_t from = static_cast<std::size_t>(words[at].text.data() - whole.data());
        const std::size_t to = static_cast<std::size_t>(last - whole.data());
        places += (places.empty() ? "" : ", ") + std::string{whole.substr(from, to - from)};
        if (const std::size_t sides = bothSidesAt(words, end)) {
            places += "r and " + std::string{words[end - 1].text} + 'v';
            end += sides;
        }
        take(words, at, end, LinePart::place, group++);
        takeLeads(words, at, {"at", "on", "in", "to", "of", "from", "into", "the", "round"});
        at = end;
    }
    return places;
}

} // namespace headcap::core::line

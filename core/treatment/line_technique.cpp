#include "core/treatment/line_technique.h"

#include <algorithm>
#include <array>

#include "core/treatment/line_leaves.h"
#include "core/treatment/line_old_work.h"
#include "core/treatment/line_places.h"

namespace headcap::core::line {
namespace {

struct Said {
    const Technique* technique = nullptr;
    std::size_t at = 0;
    std::size_t words = 0;  // of the phrase
    std::size_t length = 0; // in the line, with what stands between them
};

constexpr std::array kArticles = std::to_array<std::string_view>({"the", "a", "an", "its"});
constexpr std::array kSides = std::to_array<std::string_view>(
    {"upper", "lower", "front", "back", "rear", "both", "all", "inner", "outer"});
constexpr std::array kSmall = std::to_array<std::string_view>({"label", "piece"});

std::string textOf(const Words& words, std::size_t from, std::size_t to) {
    std::string phrase;
    for (std::size_t i = from; i < to; ++i) {
        phrase += (phrase.empty() ? "" : " ") + std::string{words[i].text};
    }
    return phrase;
}

// "upper" in "reattached upper board" is kept by the place that the words name; where they name
// none with it, it would be lost.
bool keepsSides(const Words& words, std::size_t from, std::size_t to,
                const std::vector<std::string>& said) {
    const std::string phrase = textOf(words, from, to);
    Words inside = split(phrase);
    (void)takePlaces(inside, phrase);
    return std::ranges::all_of(inside, [&](const Word& word) {
        return !isOneOf(kSides, word.lower) || isOneOf(said, word.lower) ||
               word.part == LinePart::place;
    });
}

// How many words of the line the phrase takes up from `at`, with articles and sides between its
// words: "repaired the upper joint" says "repaired joint"; 0: it does not stand there.
std::size_t lengthAt(const Words& words, std::size_t at, const std::vector<std::string>& said) {
    std::size_t next = at;
    for (std::size_t i = 0; i < said.size(); ++i) {
        while (i > 0 && next < words.size() && !words[next].taken && words[next].lower != said[i] &&
               (isOneOf(kArticles, words[next].lower) || isOneOf(kSides, words[next].lower))) {
            ++next;
        }
        if (next >= words.size() || words[next].taken || words[next].lower != said[i]) {
            return 0;
        }
        ++next;
    }
    return next - at == said.size() || keepsSides(words, at, next, said) ? next - at : 0;
}

// The first phrase in the line, the longest of those that begin there.
Said firstSaid(const Words& words, std::span<const Technique> techniques,
               std::vector<std::string> Technique::*phrases) {
    std::vector<std::pair<const Technique*, std::vector<std::string>>> all;
    for (const Technique& technique : techniques) {
        for (const std::string& phrase : technique.*phrases) {
            all.emplace_back(&technique, wordsOf(phrase));
        }
    }
    for (std::size_t at = 0; at < words.size(); ++at) {
        Said best;
        for (const auto& [technique, said] : all) {
            const std::size_t length = said.size() > best.words ? lengthAt(words, at, said) : 0;
            if (length > 0) {
                best = {technique, at, said.size(), length};
            }
        }
        if (best.technique != nullptr) {
            return best;
        }
    }
    return {};
}

// One letter left out, one too many, or two that changed places, within the word: what a hand does
// in haste. Another letter in place of one makes too many other words.
bool isSlipOf(std::string_view typed, std::string_view word) {
    constexpr std::size_t kShortest = 6;
    if (word.size() < kShortest || typed.empty() || typed.front() != word.front() ||
        typed.back() != word.back()) {
        return false;
    }
    const auto [differs, meant] = std::ranges::mismatch(typed, word);
    const std::string_view rest{differs, typed.end()};
    const std::string_view wanted{meant, word.end()};
    if (rest.size() + 1 == wanted.size()) {
        return wanted.substr(1) == rest;
    }
    if (rest.size() == wanted.size() + 1) {
        return rest.substr(1) == wanted;
    }
    return rest.size() == wanted.size() && rest.size() > 2 && rest[0] == wanted[1] &&
           rest[1] == wanted[0] && rest.substr(2) == wanted.substr(2);
}

// Of words that say a technique by themselves.
Said slipped(const Words& words, std::span<const Technique> techniques) {
    for (std::size_t at = 0; at < words.size(); ++at) {
        for (const Technique& technique : techniques) {
            const bool isSlip =
                !words[at].taken &&
                std::ranges::any_of(technique.said, [&](const std::string& said) {
                    return said.find(' ') == std::string::npos && isSlipOf(words[at].lower, said);
                });
            if (isSlip) {
                return {&technique, at, 1, 1};
            }
        }
    }
    return {};
}

const Technique* shipped(std::span<const Technique> techniques, std::string_view key) {
    const auto found = std::ranges::find(techniques, key, &Technique::key);
    return found == techniques.end() ? nullptr : &*found;
}

Said removing(const TakenOff& off, std::span<const Technique> techniques) {
    const std::string_view key = off.isTape       ? "removing_tape"
                                 : off.isAdhesive ? "adhesive_removing"
                                                  : "removing";
    return {shipped(techniques, key), off.at, off.length, off.length};
}

// Named, with nothing that says it was done: a lining that was lifted is no lining made.
Said namedAlone(const Words& words, std::span<const Technique> techniques) {
    const Said named = firstSaid(words, techniques, &Technique::named);
    if (named.technique == nullptr) {
        return slipped(words, techniques);
    }
    const NamedWork work = namedWork(words, named.at, named.length);
    switch (named.technique->kind == StepKind::treatment ? work.as : Named::asDone) {
    case Named::asTakenOff:
        return removing(work.takenOff, techniques);
    case Named::asSomethingElse:
        return {};
    default:
        return named;
    }
}

// "backed B2", "backed the folded map": a sheet is lined, no spine is backed.
bool isOfLeaves(const Words& words, const Said& said) {
    constexpr auto kBetween = std::to_array<std::string_view>(
        {"the", "a", "folded", "folding", "loose", "torn", "large", "whole"});
    constexpr auto kLeaves = std::to_array<std::string_view>(
        {"leaf",  "leaves", "plate", "plates", "pl",    "map",        "maps",
         "chart", "charts", "plan",  "plans",  "title", "title-page", "frontispiece",
         "print", "prints", "fol",   "ff",     "pp",    "table",      "tables"});
    if (said.length != 1 || words[said.at].lower != "backed") {
        return false;
    }
    std::size_t next = said.at + 1;
    while (isFree(words, next) && isOneOf(kBetween, words[next].lower)) {
        ++next;
    }
    return isFree(words, next) &&
           (isOneOf(kLeaves, words[next].lower) || isLeafWord(words[next].text) ||
            isHeadAndNumber(words[next].lower));
}

} // namespace

const Technique* takeTechnique(Words& words, std::span<const Technique> techniques) {
    Said said = firstSaid(words, techniques, &Technique::said);
    const auto off = oldWorkTakenOff(words);
    const bool isOff = off && (said.technique == nullptr || off->at < said.at ||
                               (off->at == said.at && off->length > said.length));
    if (isOff) {
        said = removing(*off, techniques);
    } else if (said.technique == nullptr) {
        said = namedAlone(words, techniques);
    } else if (isOfTheWorkshop(words, said.at, said.length) || isAfterOld(words, said.at)) {
        said = {};
    } else if (isOfLeaves(words, said)) {
        said.technique = shipped(techniques, "lining_leaves");
    }
    if (said.technique != nullptr) {
        take(words, said.at, said.at + said.length, LinePart::technique);
    }
    return said.technique;
}

PlaceInTechnique placeInTechnique(const Words& words) {
    // "put back board" is no back board.
    constexpr auto kBefore = std::to_array<std::string_view>({"put", "laid", "set"});
    PlaceInTechnique found;
    std::string phrase;
    std::string_view before;
    for (const Word& word : words) {
        const bool isOfVerb = word.lower == "back" && isOneOf(kBefore, before);
        before = word.lower;
        if (word.part == LinePart::technique && !isOfVerb) {
            phrase += (phrase.empty() ? "" : " ") + std::string{word.text};
            found.isOfItsOwn =
                found.isOfItsOwn || isOneOf(kSides, word.lower) || isOneOf(kSmall, word.lower);
        }
    }
    Words inside = split(phrase);
    found.place = takePlaces(inside, phrase);
    if (found.place == "pastedown") { // a book has two
        found.place.clear();
    }
    return found;
}

} // namespace headcap::core::line

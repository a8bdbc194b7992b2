#include "core/treatment/line_known_places.h"

#include <algorithm>
#include <array>

#include "core/treatment/line_leaves.h"
#include "core/treatment/line_places.h"

namespace headcap::core::line {
namespace {

struct Candidate {
    const KnownPlace* place = nullptr;
    std::vector<std::string> said{};
    bool isReadAnyway = false;
};

// A stretch of words and what it says as the job words it.
struct Stretch {
    std::size_t words = 0;
    std::string text{};
    std::string head{}; // "SR " of "SR 11"
};

std::vector<std::string> wordsSaid(const std::string& text) {
    auto said = wordsOf(text);
    if (said.size() > 1 && said.front() == "the") {
        said.erase(said.begin());
    }
    return said;
}

std::vector<Candidate> candidatesOf(const std::vector<KnownPlace>& places) {
    std::vector<Candidate> all;
    for (const KnownPlace& place : places) {
        Words inside = split(place.text);
        (void)takePlaces(inside, place.text);
        all.push_back({&place, wordsSaid(place.text), std::ranges::all_of(inside, &Word::taken)});
    }
    return all;
}

bool isOfTechnique(const Word& word) {
    return word.taken && word.part == LinePart::technique;
}

// How many words it takes up here, "the" between its own passed over, at least one of them not
// taken yet; 0: it does not stand here.
std::size_t lengthAt(const Words& words, std::size_t at, const Candidate& one) {
    bool isFree = false;
    bool isOver = false;
    std::size_t next = at;
    for (std::size_t i = 0; i < one.said.size(); ++i, ++next) {
        while (i > 0 && next < words.size() && !words[next].taken && words[next].lower == "the" &&
               one.said[i] != "the") {
            ++next;
        }
        if (next >= words.size() || words[next].lower != one.said[i] ||
            (words[next].taken && !isOfTechnique(words[next]))) {
            return 0;
        }
        isFree = isFree || !words[next].taken;
        isOver = isOver || words[next].taken;
    }
    return isFree && (isOver || !one.isReadAnyway) ? next - at : 0;
}

std::string headOf(const std::string& text) {
    const std::size_t blank = text.rfind(' ');
    return blank == std::string::npos ? std::string{} : text.substr(0, blank + 1);
}

Stretch longestAt(const Words& words, std::size_t at, const std::vector<Candidate>& candidates) {
    Stretch longest;
    for (const Candidate& one : candidates) {
        const std::size_t length = lengthAt(words, at, one);
        if (length > longest.words) {
            longest = {length, one.place->text, headOf(one.place->text)};
        }
    }
    return longest;
}

// The numbers of one word: "11", "11,12", "11–13"; nothing where a place with the head and one of
// them is not known.
std::string numbersKnown(std::string_view word, const std::string& head,
                         const std::vector<Candidate>& candidates) {
    const auto isKnown = [&](std::string_view number) {
        const auto said = wordsOf(head + std::string{number});
        return std::ranges::any_of(candidates,
                                   [&](const Candidate& one) { return one.said == said; });
    };
    std::string text;
    while (!head.empty() && !word.empty()) {
        std::size_t digits = 0;
        while (digits < word.size() && isDigit(word[digits])) {
            ++digits;
        }
        if (digits == 0 || !isKnown(word.substr(0, digits))) {
            return {};
        }
        text += word.substr(0, digits);
        word.remove_prefix(digits);
        const bool hasDash = word.starts_with("–") || word.starts_with('-');
        const bool goesOn = hasDash || word.starts_with(',');
        if (goesOn) {
            text += hasDash ? "–" : ", ";
            word.remove_prefix(word.starts_with("–") ? std::string_view{"–"}.size() : 1);
        }
        if (goesOn == word.empty()) {
            return {};
        }
    }
    return text;
}

// "SR" and a word with numbers that no place names just so: "SR 11–12", "SR 11,12".
Stretch headAndNumbersAt(const Words& words, std::size_t at,
                         const std::vector<Candidate>& candidates) {
    for (const Candidate& one : candidates) {
        const std::string head = headOf(one.place->text);
        const auto said = wordsOf(head);
        const std::size_t next = at + said.size();
        if (!said.empty() && stands(words, at, said) && next < words.size() && !words[next].taken) {
            const std::string numbers = numbersKnown(words[next].text, head, candidates);
            if (!numbers.empty()) {
                return {said.size() + 1, head + numbers, head};
            }
        }
    }
    return {};
}

Stretch placeAt(const Words& words, std::size_t at, const std::vector<Candidate>& candidates) {
    Stretch found = longestAt(words, at, candidates);
    return found.words > 0 ? found : headAndNumbersAt(words, at, candidates);
}

// After a first place, with what ties it: ", 12", "and SR 19", "to 15".
Stretch furtherAt(const Words& words, std::size_t at, const Stretch& before,
                  const std::vector<Candidate>& candidates) {
    constexpr auto kTies = std::to_array<std::string_view>({"and", "&", "to", "-", "–"});
    const bool isTied = at < words.size() && !words[at].taken &&
                        std::ranges::find(kTies, words[at].lower) != kTies.end();
    const bool isRange = isTied && words[at].lower != "and" && words[at].lower != "&";
    const std::size_t from = isTied ? at + 1 : at;
    if (from >= words.size() || words[from].taken || (!isTied && !words[at - 1].hasComma)) {
        return {};
    }
    Stretch further = placeAt(words, from, candidates);
    if (further.words == 0) {
        const std::string numbers = numbersKnown(words[from].text, before.head, candidates);
        further = numbers.empty() ? Stretch{} : Stretch{1, before.head + numbers, before.head};
    }
    if (further.words == 0) {
        return {};
    }
    const bool isSame = !before.head.empty() && further.head == before.head;
    const std::string text = isSame ? further.text.substr(further.head.size()) : further.text;
    further.words += isTied ? 1 : 0;
    further.text = (isRange ? (isSame ? "–" : " to ") : ", ") + text;
    return further;
}

} // namespace

KnownPlaces takeKnownPlaces(Words& words, const std::vector<KnownPlace>& places) {
    KnownPlaces found;
    if (places.empty()) {
        return found;
    }
    const auto candidates = candidatesOf(places);
    std::size_t group = 0;
    for (std::size_t at = 0; at < words.size();) {
        Stretch stretch = placeAt(words, at, candidates);
        if (stretch.words == 0) {
            ++at;
            continue;
        }
        std::size_t end = at + stretch.words;
        std::string text = stretch.text;
        for (Stretch next = furtherAt(words, end, stretch, candidates); next.words > 0;
             next = furtherAt(words, end, stretch, candidates)) {
            end += next.words;
            text += next.text;
            stretch.head = next.head;
        }
        found.text += (found.text.empty() ? "" : ", ") + text;
        for (std::size_t i = at; i < end; ++i) {
            found.isOverTechnique = found.isOverTechnique || words[i].taken;
            if (!words[i].taken) {
                take(words, i, i + 1, LinePart::place, group);
            }
        }
        if (words[at].part == LinePart::place) {
            takeLeads(words, at, {"at", "on", "in", "to", "of", "from", "into", "the", "round"});
        }
        ++group;
        at = end;
    }
    return found;
}

} // namespace headcap::core::line

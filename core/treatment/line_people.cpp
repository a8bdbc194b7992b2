#include "core/treatment/line_people.h"

#include <algorithm>
#include <array>

namespace headcap::core::line {
namespace {

struct Named {
    const Person* person = nullptr;
    std::size_t words = 0;
};

// The person whose whole name stands here.
Named wholeName(const Words& words, std::size_t at, std::span<const Person> people) {
    Named named;
    for (const Person& person : people) {
        const auto said = wordsOf(person.name);
        if (said.size() > named.words && stands(words, at, said)) {
            named = {&person, said.size()};
        }
    }
    return named;
}

// The one person with this word in the name, or these initials; nobody where there are two.
const Person* oneWord(const Word& word, std::span<const Person> people) {
    const Person* found = nullptr;
    for (const Person& person : people) {
        const auto names = wordsOf(person.name);
        const auto initials = wordsOf(person.initials);
        if (std::ranges::find(names, word.lower) != names.end() ||
            (initials.size() == 1 && initials.front() == word.lower)) {
            if (found != nullptr) {
                return nullptr;
            }
            found = &person;
        }
    }
    return found;
}

const Person* exactInitials(const Word& word, std::span<const Person> people) {
    const auto found = std::ranges::find_if(people, [&](const Person& person) {
        return person.initials.size() > 1 && person.initials == word.text;
    });
    return found == people.end() || word.taken ? nullptr : &*found;
}

std::optional<Id<Person>> takeNamed(Words& words, std::size_t at, const Named& named) {
    take(words, at, at + named.words, LinePart::person);
    takeLeads(words, at, {"by"});
    return named.person->id;
}

// A name with its capital, where one puts a name: first, last, or tied to another.
const Person* tiedName(const Words& words, std::size_t at, std::span<const Person> people) {
    constexpr auto kTies = std::to_array<std::string_view>({"and", "&", "with"});
    constexpr std::size_t kShortest = 3;
    const Word& word = words[at];
    const bool hasCapital = !word.text.empty() && word.text[0] >= 'A' && word.text[0] <= 'Z';
    const bool isTied = at == 0 || at + 1 == words.size() ||
                        std::ranges::find(kTies, words[at - 1].lower) != kTies.end();
    return !word.taken && hasCapital && isTied && word.text.size() >= kShortest
               ? oneWord(word, people)
               : nullptr;
}

std::optional<Id<Person>> takePerson(Words& words, std::span<const Person> people) {
    for (std::size_t at = 1; at < words.size(); ++at) {
        if (words[at].taken || words[at - 1].taken || words[at - 1].lower != "by") {
            continue;
        }
        Named named = wholeName(words, at, people);
        if (named.person == nullptr) {
            named = {oneWord(words[at], people), 1};
        }
        if (named.person != nullptr) {
            return takeNamed(words, at, named);
        }
    }
    if (words.empty()) {
        return std::nullopt;
    }
    for (const std::size_t at : {std::size_t{0}, words.size() - 1}) {
        if (const Person* person = exactInitials(words[at], people)) {
            return takeNamed(words, at, {person, 1});
        }
    }
    for (std::size_t at = 0; at < words.size(); ++at) {
        const Named named = wholeName(words, at, people);
        if (named.person != nullptr && (at == 0 || at + named.words == words.size())) {
            return takeNamed(words, at, named);
        }
    }
    return std::nullopt;
}

} // namespace

Who takePeople(Words& words, std::span<const Person> people) {
    Who who{.person = takePerson(words, people)};
    for (std::size_t at = 0; at < words.size(); ++at) {
        const Person* person = tiedName(words, at, people);
        if (person == nullptr) {
            continue;
        }
        if (!who.person) {
            who.person = takeNamed(words, at, {person, 1});
        } else if (*who.person != person->id) {
            who.areSeveral = true;
        }
    }
    return who;
}

} // namespace headcap::core::line

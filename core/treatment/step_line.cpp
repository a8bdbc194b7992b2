#include "core/treatment/step_line.h"

#include <algorithm>
#include <array>

#include "core/treatment/line_conditions.h"
#include "core/treatment/line_denial.h"
#include "core/treatment/line_known_places.h"
#include "core/treatment/line_materials.h"
#include "core/treatment/line_people.h"
#include "core/treatment/line_places.h"
#include "core/treatment/line_substances.h"
#include "core/treatment/line_times.h"
#include "core/treatment/line_when.h"
#include "core/treatment/line_words.h"

namespace headcap::core {
namespace {

using line::isOneOf;
using line::Words;

struct Said {
    const Technique* technique = nullptr;
    std::size_t at = 0;
    std::size_t words = 0;  // of the phrase
    std::size_t length = 0; // in the line, with what stands between them
};

constexpr std::array kArticles = std::to_array<std::string_view>({"the", "a", "an", "its"});
constexpr std::array kSides = std::to_array<std::string_view>(
    {"upper", "lower", "front", "back", "rear", "both", "all", "inner", "outer"});

std::string textOf(const Words& words, std::size_t from, std::size_t to) {
    std::string phrase;
    for (std::size_t i = from; i < to; ++i) {
        phrase += (phrase.empty() ? "" : " ") + std::string{words[i].text};
    }
    return phrase;
}

// "upper" in "reattached upper board" is kept by the place that the words name; where they name
// none with it, it would be lost.
bool keepsSides(const Words& words, std::size_t from, std::size_t to) {
    const std::string phrase = textOf(words, from, to);
    Words inside = line::split(phrase);
    (void)line::takePlaces(inside, phrase);
    return std::ranges::all_of(inside, [](const line::Word& word) {
        return !isOneOf(kSides, word.lower) || word.part == LinePart::place;
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
    return next - at == said.size() || keepsSides(words, at, next) ? next - at : 0;
}

// The first phrase in the line, the longest of those that begin there.
Said firstSaid(const Words& words, std::span<const Technique> techniques,
               std::vector<std::string> Technique::*phrases) {
    std::vector<std::pair<const Technique*, std::vector<std::string>>> all;
    for (const Technique& technique : techniques) {
        for (const std::string& phrase : technique.*phrases) {
            all.emplace_back(&technique, line::wordsOf(phrase));
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

const Technique* takeTechnique(Words& words, std::span<const Technique> techniques) {
    Said said = firstSaid(words, techniques, &Technique::said);
    if (said.technique == nullptr) {
        said = firstSaid(words, techniques, &Technique::named);
    }
    if (said.technique != nullptr) {
        line::take(words, said.at, said.at + said.length, LinePart::technique);
    }
    return said.technique;
}

// A part of the book that the technique's own words name: "lined spine", "reattached upper board".
struct InTechnique {
    std::string place;
    bool hasSide = false;
};

InTechnique placeInTechnique(const Words& words) {
    InTechnique found;
    std::string phrase;
    for (const line::Word& word : words) {
        if (word.part == LinePart::technique) {
            phrase += (phrase.empty() ? "" : " ") + std::string{word.text};
            found.hasSide = found.hasSide || isOneOf(kSides, word.lower);
        }
    }
    Words inside = line::split(phrase);
    found.place = line::takePlaces(inside, phrase);
    if (found.place == "pastedown") { // a book has two
        found.place.clear();
    }
    return found;
}

bool isRest(LinePart part) {
    return part == LinePart::description || part == LinePart::unknownLot;
}

// "and" between two parts says nothing by itself: it goes with the second.
void takeTies(Words& words) {
    constexpr auto kTies = std::to_array<std::string_view>({"and", "&", "then", "plus"});
    for (std::size_t i = 1; i + 1 < words.size(); ++i) {
        if (isOneOf(kTies, words[i].lower) && !words[i].taken && !isRest(words[i - 1].part) &&
            !isRest(words[i + 1].part)) {
            line::take(words, i, i + 1, words[i + 1].part, words[i + 1].group);
        }
    }
}

std::string restOf(const Words& words, std::string_view whole) {
    std::string rest;
    for (std::size_t i = 0; i < words.size(); ++i) {
        if (!isRest(words[i].part)) {
            continue;
        }
        // A comma after a word is kept only where the rest goes on.
        const bool runsOn = i + 1 < words.size() && isRest(words[i + 1].part);
        std::string_view text = whole.substr(words[i].begin, words[i].end - words[i].begin);
        while (!runsOn && !text.empty() &&
               std::string_view{",;:"}.find(text.back()) != std::string_view::npos) {
            text.remove_suffix(1);
        }
        if (!text.empty()) {
            rest += (rest.empty() ? "" : " ") + std::string{text};
        }
    }
    return rest;
}

std::vector<LineSpan> spansOf(const Words& words) {
    std::vector<LineSpan> spans;
    std::size_t group = 0;
    for (const line::Word& word : words) {
        const bool same = !spans.empty() && spans.back().part == word.part && group == word.group;
        if (same) {
            spans.back().end = word.end;
        } else {
            spans.push_back({word.part, word.begin, word.end, word.group});
            group = word.group;
        }
    }
    return spans;
}

// Of the job's own words, of what names places in any book, and of the words of the technique.
std::string placeOf(Words& words, std::string_view text, const line::KnownPlaces& known) {
    std::string place = line::takePlaces(words, text);
    const InTechnique inside = placeInTechnique(words);
    if (!known.text.empty()) {
        place = place.empty() ? known.text : known.text + ", " + place;
    }
    if (place.empty() || inside.place.empty()) {
        return place + inside.place;
    }
    return inside.hasSide && !known.isOverTechnique ? inside.place + ", " + place : place;
}

// Of the whole place, or of the job's own words in it: "A1" of "SR 11, A1" is a leaf there. None
// where its parts belong to several lines.
std::optional<Id<ProposalLine>> lineOf(const StepLine& read, const std::string& known,
                                       const std::vector<KnownPlace>& places) {
    auto line = lineAt(places, read.technique, read.place);
    if (line || known.empty()) {
        return line;
    }
    line = lineAt(places, read.technique, known);
    for (const std::string& one : placesListed(read.place)) {
        const auto other = lineAt(places, read.technique, one);
        if (other && other != line) {
            return std::nullopt;
        }
    }
    return line;
}

} // namespace

StepLine readStepLine(std::string_view text, const LineContext& context) {
    Words words = line::split(text);
    StepLine read;
    line::Conditions conditions = line::takeConditions(words);
    read.temperatureTenthsC = conditions.temperatureTenthsC;
    read.humidityPercent = conditions.humidityPercent;
    read.concentration = std::move(conditions.concentration);
    read.pressure = std::move(conditions.pressure);
    read.grainAtSpine = conditions.grain;
    read.uses = line::takeMaterials(words, context);
    read.setsTill = line::takeSetsTill(words, context.today);
    const line::When when = line::takeWhen(words, context.today);
    read.day = when.day;
    read.begins = when.begins;
    read.ends = when.ends;
    const line::Times times = line::takeTimes(words);
    read.minutes = times.work;
    if (!read.minutes && when.begins && when.ends) {
        read.minutes = *when.ends - *when.begins;
    }
    read.sets = times.sets;
    if (const Technique* technique = takeTechnique(words, context.techniques)) {
        read.technique = technique->key;
        read.kind = technique->kind;
    }
    line::takeSubstances(words, read.kind, context.shelf, read.uses);
    const line::KnownPlaces known = line::takeKnownPlaces(words, context.places);
    const line::Who who = line::takePeople(words, context.people);
    read.person = who.person;
    read.namesSeveral = who.areSeveral;
    read.place = placeOf(words, text, known);
    read.part = volumeIn(context.places, read.place);
    read.line = lineOf(read, known.text, context.places);
    takeTies(words);
    read.isDenied = !read.technique.empty() && line::deniesTechnique(words);
    read.description = restOf(words, text);
    read.spans = spansOf(words);
    return read;
}

std::vector<std::string> materialsWithoutLot(const StepLine& line) {
    std::vector<std::string> all;
    for (const LineUse& use : line.uses) {
        if (!use.lot) {
            all.push_back(use.material);
        }
    }
    return all;
}

bool namesNoMaterial(const StepLine& line, std::span<const Technique> techniques) {
    const auto technique = std::ranges::find(techniques, line.technique, &Technique::key);
    return technique != techniques.end() && technique->adds && line.uses.empty();
}

} // namespace headcap::core

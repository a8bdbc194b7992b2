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
#include "core/treatment/line_technique.h"
#include "core/treatment/line_times.h"
#include "core/treatment/line_when.h"
#include "core/treatment/line_words.h"

namespace headcap::core {
namespace {

using line::isOneOf;
using line::Words;

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

// "12 guards": the figure says nothing without what it counts.
bool isCounted(const Words& words, std::size_t at) {
    return words[at].part == LinePart::technique && words[at].lower.ends_with('s') && at > 0 &&
           !words[at - 1].taken &&
           std::ranges::all_of(words[at - 1].text, [](char c) { return c >= '0' && c <= '9'; }) &&
           !words[at - 1].text.empty();
}

std::string restOf(const Words& words, std::string_view whole) {
    std::string rest;
    for (std::size_t i = 0; i < words.size(); ++i) {
        if (!isRest(words[i].part) && !isCounted(words, i)) {
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
    const line::PlaceInTechnique inside = line::placeInTechnique(words);
    if (!known.text.empty()) {
        place = place.empty() ? known.text : known.text + ", " + place;
    }
    if (place.empty() || inside.place.empty()) {
        return place + inside.place;
    }
    return inside.isOfItsOwn && !known.isOverTechnique ? inside.place + ", " + place : place;
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
    line::Times times = line::takeTimes(words);
    if (const Technique* technique = line::takeTechnique(words, context.techniques)) {
        read.technique = technique->key;
        read.kind = technique->kind;
    }
    if (read.technique == "pressing") {
        line::pressInstead(words, times);
    }
    read.minutes = times.work;
    read.otherMinutes = times.others;
    read.minutesAreOfEach = times.isOfEach;
    read.sets = times.sets;
    if (!read.minutes && when.begins && when.ends) {
        read.minutes = *when.ends - *when.begins;
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
    line::takeWasted(words, read.kind, context.shelf, read.uses);
    read.isDenied =
        !read.technique.empty() && (line::deniesTechnique(words) || line::speaksOfIntent(words));
    read.isPause = read.technique.empty() && read.place.empty() && read.uses.empty() &&
                   line::speaksOfPause(words);
    read.isMixing = read.technique.empty() && read.place.empty() && line::speaksOfMixing(words);
    read.isStriking = read.technique.empty() && line::speaksOfStriking(words);
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
    return technique != techniques.end() && technique->adds &&
           std::ranges::all_of(line.uses, &LineUse::isWasted);
}

} // namespace headcap::core

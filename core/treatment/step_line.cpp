#include "core/treatment/step_line.h"

#include <algorithm>
#include <array>

#include "core/treatment/line_conditions.h"
#include "core/treatment/line_materials.h"
#include "core/treatment/line_people.h"
#include "core/treatment/line_places.h"
#include "core/treatment/line_times.h"
#include "core/treatment/line_words.h"

namespace headcap::core {
namespace {

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

template <class List>
bool isOneOf(const List& list, std::string_view word) {
    return std::ranges::find(list, word) != list.end();
}

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
Said firstSaid(const Words& words, const std::vector<Technique>& techniques,
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

const Technique* takeTechnique(Words& words, const std::vector<Technique>& techniques) {
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
    return found;
}

bool isRest(LinePart part) {
    return part == LinePart::description || part == LinePart::unknownLot;
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

std::string roleOf(MaterialClass kind) {
    switch (kind) {
    case MaterialClass::paper:
        return "paper";
    case MaterialClass::tissue:
        return "repair tissue";
    case MaterialClass::board:
        return "board";
    case MaterialClass::leather:
        return "leather";
    case MaterialClass::vellum:
        return "vellum";
    case MaterialClass::cloth:
        return "cloth";
    case MaterialClass::thread:
        return "thread";
    case MaterialClass::adhesiveDry:
    case MaterialClass::adhesivePrepared:
        return "adhesive";
    case MaterialClass::solvent:
        return "solvent";
    case MaterialClass::consolidant:
        return "consolidant";
    case MaterialClass::ink:
        return "ink";
    case MaterialClass::consumable:
        break;
    }
    return "consumable";
}

MaterialUse useFrom(const LineUse& said, const Step& step, const LineContext& context,
                    IdSource& ids) {
    MaterialUse use{.id = ids.next<MaterialUse>(),
                    .job = step.job,
                    .step = step.id,
                    .lot = said.lot,
                    .material = said.material,
                    .amount = said.amount,
                    .place = step.place};
    const Material* kind = said.lot ? context.shelf.materialOf(*said.lot) : nullptr;
    if (kind != nullptr) {
        fillFrom(use, *kind);
    }
    return use;
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
    read.uses = line::takeMaterials(words, context.shelf);
    const line::Times times = line::takeTimes(words);
    read.minutes = times.work;
    read.sets = times.sets;
    if (const Technique* technique = takeTechnique(words, context.techniques)) {
        read.technique = technique->key;
        read.kind = technique->kind;
    }
    read.person = line::takePerson(words, context.people);
    read.place = line::takePlaces(words, text);
    const InTechnique inside = placeInTechnique(words);
    if (read.place.empty()) {
        read.place = inside.place;
    } else if (inside.hasSide) {
        read.place = inside.place + ", " + read.place;
    }
    read.description = restOf(words, text);
    read.spans = spansOf(words);
    return read;
}

void fillFrom(MaterialUse& use, const Material& kind) {
    use.role = roleOf(kind.kind);
    use.stays = kind.kind != MaterialClass::solvent && kind.kind != MaterialClass::consumable;
    use.removal = kind.removal;
}

LoggedStep stepFrom(const StepLine& line, const Id<Job>& job, const Id<Person>& who, Instant now,
                    const LineContext& context, IdSource& ids) {
    const Minutes minutes = line.minutes.value_or(Minutes{0});
    LoggedStep logged{.step = Step{.id = ids.next<Step>(),
                                   .job = job,
                                   .part = std::nullopt,
                                   .at = now - minutes,
                                   .who = line.person.value_or(who),
                                   .kind = line.kind,
                                   .technique = line.technique,
                                   .place = line.place,
                                   .description = line.description,
                                   .minutes = minutes,
                                   .line = std::nullopt,
                                   .corrects = std::nullopt,
                                   .struckBy = std::nullopt}};
    Step& step = logged.step;
    step.temperatureTenthsC = line.temperatureTenthsC;
    step.humidityPercent = line.humidityPercent;
    step.concentration = line.concentration;
    step.pressure = line.pressure;
    if (line.sets) {
        step.setsUntil = now + *line.sets;
    }
    const auto known = std::ranges::find(context.techniques, line.technique, &Technique::key);
    if (known != context.techniques.end()) {
        step.reversibility = known->reversibility;
        step.undoing = known->undoing;
    }
    if (step.kind == StepKind::removal) {
        step.removed = step.description;
    }
    for (const LineUse& said : line.uses) {
        logged.uses.push_back(useFrom(said, step, context, ids));
    }
    return logged;
}

} // namespace headcap::core
